What the commands of choosing answer where there is little to choose: passages alone, elements that nobody marks by themselves, one option or none, and marks that do not scatter.

=== file passing.sheet
routine "Only Passing"
event   figure-evening
values  kingfisher-2026
passage "Across"
  counts 16 surface
=== file whole.sheet
routine "As a Whole"
event   solo-free
values  routines-2013
element 1 required "Turn"
  parts solo-1
  option "other"
    parts solo-2
impression execution 7.8, artistic-impression 7.9, difficulty 8
=== file one.sheet
routine "One Way"
event   figure-evening
values  kingfisher-2026
element 1 hybrid "Heron"
  difficulty 2.6
  expect 7.25
  slip   100%
element 2 hybrid "Otter"
  difficulty 1.5
  expect 7.75
=== run landdrill plan passing.sheet --ignore-limits | tail -n +5
=== output
For the highest expected total

                expected  25 % are lower  time
this programme    0.0000             0.0

No change makes it better than it is.
Proved: no other choice within the limits does better.

There is no other choice within the limits.

What the rules would object to
  - line 2: found 0 figure elements with a part of figures; expected exactly 4
    in figure-evening
  - line 2: found 0 elements; expected exactly 4 in figure-evening

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
=== run landdrill plan passing.sheet | tail -n +5
=== output
No programme keeps all limits
This cannot be met by any choice:
  - figure-evening: at least 4 elements (quotas.csv line 36)
Loosen one of them, give an element another option, let one be left out
(--optional NUMBER), or plan without the event's limits (--ignore-limits).

Values from <repository>/tables/data/kingfisher-2026
=== exit 0
=== run landdrill compare passing.sheet
=== errors
landdrill compare: something is missing in "Only Passing":
  - no element has an option to compare with: add `option "title"` below the
    element, with its own lines: parts, expect, slip
=== exit 1
=== run landdrill train passing.sheet | sed '/^What the rules/,$d'
=== output
Only Passing
============
Figure evening - by the values of Kingfisher club league, edition 2026

Expected total, as the routine is: 0.0000. There is nothing in it that could be
marked better.

=== exit 0
=== run landdrill forecast passing.sheet --day 0 | sed -n '/^Total/p'
=== output
Total                   0.00  0.0   0.0   0.0   0.0   0.0
=== exit 0
=== run landdrill plan whole.sheet | sed -n '/^For/,/^Proved/p'
=== output
For the highest expected total
no.  element                 swim it     difficulty
  1  Turn, Required element  as written        3.30

                expected  time
this programme   79.0000

No change makes it better than it is.
Proved: no other choice within the limits does better.
=== exit 0
=== run landdrill compare whole.sheet
=== errors
landdrill compare: something is missing in "As a Whole":
  - element 1 gets no mark of its own in this event: its options score the same
=== exit 1
=== run landdrill plan one.sheet --ignore-limits | sed '/^Values/,$d'
=== output
One Way
=======
Figure evening - by the values of Kingfisher club league, edition 2026
1 value behind it: all invented.

For the highest expected total
no.  element        swim it     difficulty
  1  Heron, Hybrid  as written        2.60
  2  Otter, Hybrid  as written        1.50

                expected  25 % are lower  time
this programme   76.2500            74.6

No change makes it better than it is.
Proved: no other choice within the limits does better.

There is no other choice within the limits.

What the rules would object to
  - line 2: found 0 figure elements with a part of figures; expected exactly 4
    in figure-evening
  - line 2: found 2 elements; expected exactly 4 in figure-evening

=== exit 0
=== run landdrill compare one.sheet
=== errors
landdrill compare: something is missing in "One Way":
  - no element has an option to compare with: add `option "title"` below the
    element, with its own lines: parts, expect, slip
=== exit 1
=== run landdrill forecast one.sheet --spread 0 --day 0 | sed -n '/^line/,/^On average/p'
=== output
line          mark  base mark   mean   5 %  25 %  50 %  75 %  95 %
Figure marks                   76.25  76.3  76.3  76.3  76.3  76.3
------------------------------------------------------------------
Total                          76.25  76.3  76.3  76.3  76.3  76.3

One time in twenty the total is below 76.3, one time in twenty above 76.3; half
the time it lies between 76.3 and 76.3.
On average it is 76.25, and usually about 0.00 off that (standard deviation).
=== exit 0
=== run landdrill plan one.sheet --ignore-limits --target 74.4 --spread 0 --day 0 | sed -n '/^this/,/^Proved/p'
=== output
this programme   76.2500           100 %            76.3

No change makes it better than it is.
Proved: no other choice within the limits does better by as much as 0.5 per
=== exit 0
