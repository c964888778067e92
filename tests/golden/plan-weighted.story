Plans where elements are weighted by difficulty together: the published technical routine, uncertain base marks, more programmes than can be tried, and odds.

=== file quiet-cove.sheet
routine "Quiet Cove"
event   solo-technical
values  routines-2013
swimmers 2
element 1 required "Opening"
  parts  solo-1
  expect 7.8
  option "closer to the edge"
    parts  solo-1
    expect 8.1
element 2 required "Turns"
  parts  solo-2
  expect 7.5
element 3 required "Swordfish"
  parts  solo-3
  expect 7.9
  option "slower"
    parts  solo-3
    expect 8.2
element 4 required "Rise"
  parts  solo-4
  expect 7.2
element 5 required "Spin"
  parts  solo-5
  expect 7.0
  optional
element 6 required "Close"
  parts  solo-6
  expect 7.7
impression execution 7.8, overall-impression 7.9
=== file reed-evening.sheet
routine "Reed Evening"
event   figure-evening
values  kingfisher-2026
element 1 hybrid "Heron"
  difficulty 2.6
  expect 7.25
  slip   20%
  option "low"
    difficulty 1.9
    expect 7.75
    slip   0%
  option "never held"
    difficulty 3.4
    expect 8.00
    slip   100%
element 2 hybrid "Otter"
  difficulty 2.2
  expect 7.50
  optional
element 3 hybrid "Ripple"
  difficulty 1.8
  expect 6.75
  slip   5%
  option "slow"
    difficulty 1.5
    expect 7.00
=== run landdrill plan quiet-cove.sheet | sed '/^Take care/,$d'
=== output
Quiet Cove
==========
Solo, technical routine - by the values of Routines 2013-2021, edition 2013-2021
10 values behind it: 3 from memory, not checked; 7 published.

For the highest expected total
no.  element                      swim it                           difficulty
> 1  Opening, Required element    closer to the edge (not as              3.30
                                  written)
  2  Turns, Required element      as written                              3.10
> 3  Swordfish, Required element  slower (not as written)                 2.50
  4  Rise, Required element       as written                              2.90
  5  Spin, Required element       as written                              3.00
  6  Close, Required element      as written                              3.20

                       expected  time
this programme          77.5444
without these changes   77.1578

> changed. Together the changes bring +0.3866 points.
Proved: no other choice within the limits does better.
Note: the sheet has no tempo: the plan does not look at the time of
      solo-technical.

What each limit costs
limit                                by                 used  one more  one less
solo-technical: exactly 6 required   quotas.csv line 2     6    0.0000   +0.4889
elements with a part of solo-2013
one more: what the best programme would gain if the most allowed were one more;
one less: if the least asked for were one less.

The next best
   what differs                behind, points
2  3 as written                        0.1666
3  1 as written                        0.2200
4  1 as written, 3 as written          0.3866

How sure that is, among these
  - 1 Opening, closer to the edge: another of these is better from a mark of 7.7
    or less (8.1 expected).
  - 3 Swordfish, slower: another of these is better from a mark of 7.8 or less
    (8.2 expected).
  - Base marks and expected marks drawn from what they rest on: it is the best
    of these in 120 of 200 draws, number 2 (3 as written) in 35.

What the rules would object to
  - line 4: found 2 swimmers; expected exactly 1 in solo-technical

Values that are from no rule book
  - 3 from memory, not checked: panels solo-technical elements, solo-technical
    execution, solo-technical overall-impression

Values from <repository>/tables/data/routines-2013
=== exit 0
=== run landdrill plan quiet-cove.sheet --limit "required most 5" --format csv | grep -E '^(limit|conflict)'
=== output
limit,,,solo-technical: exactly 6 required elements with a part of solo-2013,,,,,,,quotas.csv line 2,6,6,0,,
limit,,,at most 5 required elements,,,,,,,the command line,,5,0,,
conflict,,,solo-technical: at least 6 required elements with a part of solo-2013 (quotas.csv line 2),,,,,,,,,,,,
conflict,,,at most 5 required elements (the command line),,,,,,,,,,,,
=== exit 0
=== run landdrill plan reed-evening.sheet --ignore-limits | sed '/^Take care/,$d'
=== output
Reed Evening
============
Figure evening - by the values of Kingfisher club league, edition 2026
1 value behind it: all invented.

For the highest expected total
no.  element         swim it                difficulty
> 1  Heron, Hybrid   low (not as written)         1.90
  2  Otter, Hybrid   as written                   2.20
> 3  Ripple, Hybrid  slow (not as written)        1.50

                       expected  25 % are lower  time
this programme          74.5089            73.0
without these changes   71.9812            70.5

> changed. Together the changes bring +2.5277 points.
Proved: no other choice within the limits does better.

The next best
   what differs               25 % are lower  behind, points
2  2 leave out                          72.6          0.3177
3  1 never held                         72.3          0.6994
4  3 as written                         72.1          0.9070
5  1 as written                         71.3          1.7033
6  2 leave out, 3 as written            71.0          1.7347

How sure that is, among these
  - With every base mark a quarter likelier or rarer it would still be best.
  - 1 Heron, low: another of these is better from a mark of 7.50 or less (7.75
    expected), or a base mark in 71 % or more of performances (0 % expected).
  - 2 Otter, as written: another of these is better from a mark of 7.25 or less
    (7.50 expected).
  - 3 Ripple, slow: another of these is better from a mark of 6.50 or less (7.00
    expected), or a base mark in 42 % or more of performances (0 % expected).
  - Base marks and expected marks drawn from what they rest on: it is the best
    of these in 57 of 200 draws, number 2 (2 leave out) in 67.

What the rules would object to
  - line 2: found 0 figure elements with a part of figures; expected exactly 4
    in figure-evening
  - line 2: found 3 elements; expected exactly 4 in figure-evening

Values that are from no rule book
  - 1 invented: panels figure-evening execution

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
=== run landdrill plan reed-evening.sheet --ignore-limits --seconds 300 --aim 25% --limit "hybrid most 2" | sed -n '/^this/,/^What the/p'
=== output
this programme                                74.1912         72.6225
without these changes, which breaks a limit   71.9812         70.4545

> changed. Without the changes a limit is broken; they bring +2.1680 points; the
expected total changes by +2.2100 points.
Proved: no other choice within the limits does better by as much as 0.04 points.

What each limit costs
limit                      by   used  one more  one less
at most 2 hybrid elements  you     2   +0.3835         -
one more: what the best programme would gain if the most allowed were one more;
one less: if the least asked for were one less.

The next best
   what differs                expected  25 % are lower  behind, points
2  3 as written                 72.7742         71.0135          1.6090
3  1 never held                 72.5000         70.8333          1.7892
4  1 as written                 71.3933         69.7917          2.8308
5  1 never held, 3 as written   70.3940         68.6594          3.9631
6  1 as written, 3 as written   70.1447         68.4470          4.1755

How sure that is, among these
  - With every base mark a quarter likelier or rarer, judges a quarter further
    apart, or no good or bad days it would still be best.

What the rules would object to
=== exit 0
=== run (sed -n '1,/figure-evening/p' reed-evening.sheet; echo 'values kingfisher-2026'; for i in 1 2 3 4 5 6 7 8 9; do printf 'element %s hybrid\n difficulty 2.%s\n expect 7.5\n slip %s%%\n' $i $i $i; for c in 1 2 3 4 5; do printf ' option "way %s"\n  difficulty %s.%s\n  expect %s\n  slip %s%%\n' $c $((c % 3 + 1)) $i 8.$((c * 25 % 4 * 25)) $((c * 3)); done; done) > many.sheet; landdrill plan many.sheet --ignore-limits --format csv --seconds 60 | grep -E '^(programme|proved|not)'
=== output
programme,1,,,,87.5,86.1235,,,,,,,,,
programme,2,,,,86.997831,85.6774,,,0.5022,,,,,,
programme,3,,,,86.982142,85.6092,,,0.5179,,,,,,
programme,4,,,,86.966432,85.5914,,,0.5336,,,,,,
programme,5,,,,86.950794,85.5914,,,0.5492,,,,,,
programme,6,,,,86.935179,85.5856,,,0.5648,,,,,,
not proved,,,,,,,,,0,,,,,,
=== exit 0
