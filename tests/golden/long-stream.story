Memory stays flat: a hundred megabytes of sheets in a stream, under a limit that a tenth of them would break if kept.

=== file ada.sheet
routine "Ada"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 7
element 2 figure "Otter"
  parts  fig-otter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
=== run (python3 -c 'print("# " + "x" * 10000)'; cat ada.sheet) > a; for i in $(seq 100); do cat a; done > b; (ulimit -v 60000; for i in $(seq 100); do cat b; done | landdrill score - --format csv 2>/dev/null) | tail -n +2 | sort | uniq -c | sed 's/^ *//'
=== output
10000 standard input,Ada,Figure evening,6.50,70.0000,,,
=== exit 0
