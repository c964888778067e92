A season file that is not there, is something else, is damaged, read-only or in use: a clear sentence, exit code 3, and
nothing lost.

=== run landdrill values list --season nowhere.season
=== errors
landdrill: nowhere.season: there is no such file
  hint: import a value set or add a sheet to make one
=== exit 3
=== run echo 'Dear diary' > diary.txt; landdrill values list --season diary.txt
=== errors
landdrill: diary.txt: it is not a season file, nor any other database
  hint: name a file that was made as a season file
=== exit 3
=== run landdrill values import kingfisher-2026 --season diary.txt; cat diary.txt
=== output
Dear diary
=== errors
landdrill: diary.txt: it is not a season file, nor any other database
  hint: name a file that was made as a season file
=== exit 0
=== run landdrill values list --season .
=== errors
landdrill: .: it is a folder, not a season file
  hint: name a file in it
=== exit 3
=== run landdrill values import kingfisher-2026 --season s >/dev/null; landdrill values undo nobody-2026 --season s; landdrill values history kingfisher --season s
=== errors
landdrill: s: it holds no value set "nobody-2026"
  hint: it holds kingfisher-2026
landdrill: s: it holds no value set "kingfisher"
  hint: the nearest is kingfisher-2026
=== exit 3
=== run chmod 444 s; $ORDINARY landdrill values edit kingfisher-2026 sync small points 0.2 --season s
=== errors
landdrill: s: it is read-only, so nothing can be changed in it
  hint: allow writing to it (chmod u+w 's'), or work on a copy
=== exit 3
=== run $ORDINARY landdrill values list --season s
=== output
name             title                   edition  rows  edits
kingfisher-2026  Kingfisher club league  2026      229      0

With --season, sets come from that file alone: s
=== exit 0
=== run chmod 644 s; head -c 9000 s > cut; landdrill values show kingfisher-2026 sync --season cut
=== errors
landdrill: cut: the file is damaged (database disk image is malformed)
  hint: put it aside and go on with your last copy; sqlite3 'cut' 'PRAGMA quick_check' lists the damage, sqlite3 'cut' .recover saves what can still be read
=== exit 3
=== run landdrill values import kingfisher-2026 --season /proc/nowhere/s
=== errors
landdrill: /proc/nowhere/s: there is no folder /proc/nowhere
  hint: make the folder first
=== exit 3
=== run landdrill values import nowhere --season new.season 2>&1 | sed 's/ in .*/ in .../; s/found are .*/found are .../'
=== output
landdrill: the value set "nowhere": no folder of that name with a set.csv in ...
  hint: the sets that were found are ...
=== exit 0
=== run python3 -c 'import sqlite3; sqlite3.connect("s").execute("pragma user_version=99")'; landdrill values list --season s
=== errors
landdrill: s: it was written by a newer landdrill (season file version 99, this program reads up to 5)
  hint: use the newer program; nothing was changed
=== exit 3
