Files without a routine: empty, only comments, only a panel.

=== file empty.sheet
=== file comment.sheet
# later
=== file panel.sheet
panel 2026-05-09 "Tarn Open"
  element 1: 7 7.25 7 7 7
  element 2: 7 7 7 7 7
  element 3: 6.5 6.75 7 7 7
  element 4: 8 7 7 7 7
=== run landdrill check empty.sheet
=== output
empty.sheet: 1 error
=== errors
empty.sheet: error: found no routine in it; expected a line such as `routine "Harbour Lights"` [missing-line]
=== exit 1
=== run landdrill check comment.sheet
=== output
comment.sheet: 1 error
=== errors
comment.sheet: error: found no routine in it; expected a line such as `routine "Harbour Lights"` [missing-line]
=== exit 1
=== run landdrill check panel.sheet
=== output
panel.sheet: 1 error
=== errors
panel.sheet:1:1: error: found "panel" before any routine; expected a routine above it [misplaced]
  panel 2026-05-09 "Tarn Open"
  ^~~~~
  hint: a sheet starts with: routine "Harbour Lights"
=== exit 1
=== run landdrill score empty.sheet
=== errors
empty.sheet: error: found no routine in it; expected a line such as `routine "Harbour Lights"` [missing-line]
landdrill: not scored: mend the sheet first
=== exit 1
=== run landdrill check - < /dev/null
=== output
standard input: 1 error
=== errors
standard input: error: found no routine in it; expected a line such as `routine "Harbour Lights"` [missing-line]
=== exit 1
