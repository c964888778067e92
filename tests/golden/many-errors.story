A thousand messages are enough for anybody; the rest is counted.

=== run for i in $(seq 1200); do printf 'routine "R"\nevent x\nvalues kingfisher-2026\n'; done > r; landdrill check r 2>e | sort | uniq -c | sed 's/^ *//'; grep -c error: e; tail -1 e
=== output
1200 r: R: 1 error
1000
landdrill: and 200 more messages, not shown
=== exit 0
