Somebody else is writing into the season file: the edit waits a little, then says so and changes nothing.

=== run landdrill values import kingfisher-2026 --season s >/dev/null
=== exit 0
=== run (python3 -c 'import sqlite3,time; c=sqlite3.connect("s",isolation_level=None); c.execute("begin exclusive"); open("held","w"); time.sleep(20)' & echo $! > pid); for try in $(seq 200); do test -e held && break; sleep 0.1; done; landdrill values edit kingfisher-2026 sync small points 0.2 --season s; kill $(cat pid)
=== errors
landdrill: s: another program is using it and keeps it locked
  hint: nothing was changed; close the other program, or wait until it is done, and try again
=== exit 0
=== run landdrill values history kingfisher-2026 --season s
=== output
no.  at                    edit
  1  <time>  imported
=== exit 0
