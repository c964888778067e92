Numbers beyond what can be kept exact are refused, not rounded.

=== file big.sheet
routine "Ada"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  difficulty 8000000000000
  expect 7
element 2 figure "Otter"
  difficulty 8000000000000
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
=== run landdrill score big.sheet
=== errors
big.sheet:1:10: error: found a score too large to stay exact; expected one below 9000000000000 [too-large]
  routine "Ada"
           ^~~
  hint: look at the difficulties of the sheet and the weights of the set
landdrill: not scored: mend the sheet first
=== exit 1
=== run landdrill score big.sheet --brief
=== output
file              routine         difficulty    estimate       panel      change
big.sheet         not scored: 1 error
=== errors
big.sheet:1:10: error: found a score too large to stay exact; expected one below 9000000000000 [too-large]
  routine "Ada"
           ^~~
  hint: look at the difficulties of the sheet and the weights of the set
landdrill: not scored: mend the sheet first
=== exit 1
