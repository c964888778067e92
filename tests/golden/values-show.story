What does the set say? All of it, one table, one row, for a spreadsheet and for programs.

=== run landdrill values show springboard-later
=== output
springboard-later

set.csv line 2

column   value                               meaning
title    Springboard diving, seven judges,   the name of the set as it is
         two high and two low dropped        printed
edition  later than 2000                     the edition of the rules, such as a
                                             year
note     The later rule: the sum of the      what a reader has to know about the
         three middle awards x DD.           set
source   secondary: 6.5 7 7 7.5 7.5 8 8 at   where the fact is from
         DD 2.8 gives 61.6
status   published                           how far it can be trusted

families.csv: the families of parts and their limits

code   most in element  most in routine  status     title                  kinds
dives                                    published  Dives by their degree  dive
                                                    of difficulty

code   source
dives  secondary: 6.5 7 7 7.5 7.5 8 8 at DD 2.8 gives 61.6

parts.csv: the parts of elements and what they are worth

code    family  title                   value  source                  status
dd-2.8  dives   A dive of degree of       2.8  secondary: 6.5 7 7 7.5  published
                difficulty 2.8                 7.5 8 8 at DD 2.8
                                               gives 61.6

kinds.csv: the kinds of element and how their difficulty is worked out

code  base  least parts  most parts  most same  places  rounding  caution
dive   gap                        1          1       1  half-up

code  status     title  formula     source
dive  published  Dive   sum(parts)  the degree of difficulty is stated for each
                                    dive; no base mark in these rules, so it
                                    stays empty

events.csv: the events, their swimmers and their time

code         least swimmers  most swimmers  seconds  tolerance  status
springboard               1              1                      published

code         title             source
springboard  Springboard, 3 m  secondary: 6.5 7 7 7.5 7.5 8 8 at DD 2.8 gives
                               61.6

panels.csv: who marks what, and how marks become points

event        aspect  kind  per      judges  drop high  drop low  combine  step
springboard  award         element       7          2         2  sum       0.5

event        aspect  kind  least  most  use               weight  places
springboard  award             0    10  times-difficulty       1       2

event        aspect  kind  rounding  missing  missing step  status     title
springboard  award         half-up   refuse                 published  Awards

event        aspect  kind  source
springboard  award         secondary: 6.5 7 7 7.5 7.5 8 8 at DD 2.8 gives 61.6:
                           two high and two low dropped, sum of 3 x DD

Still to fill in: 1 gap.
=== exit 0
=== run landdrill values show kingfisher-2026 penalties
=== output
kingfisher-2026

penalties.csv: points off for breaking a rule
in every row: source invented for the Kingfisher demo league; status invented

code             title                                              points  most
overtime         Over the time limit                                   1       1
undertime        Under the time limit                                  1       1
deck-time        Too long on deck before the start                     0.5     1
bottom           Use of the bottom of the pool                         2
held-edge        Held the edge of the pool                             1
omitted-part     Part of a required element left out by one            0.5     4
                 swimmer
omitted-element  Element left out                                      2
wrong-order      Elements out of the declared order                    1
missing-swimmer  Team with fewer swimmers than entered                 0.5     4
restart          Stopped and started again                             2       1
=== exit 0
=== run landdrill values show kingfisher-2026 parts spin-720
=== output
parts.csv line 12: spin-720

column  value                                meaning
code    spin-720                             what the sheet writes for the part
family  spins                                the family it belongs to
title   Spin down through 720 degrees        the part in words
value   1.4                                  what it is worth; empty: a gap to
                                             fill in
source  invented for the Kingfisher demo     where the fact is from
        league
status  invented                             how far it can be trusted
=== exit 0
=== run landdrill values show kingfisher-2026 panels duet-free execution
=== output
panels.csv line 11: duet-free execution

column        value                             meaning
event         duet-free                         the event that is marked
aspect        execution                         what the panel marks: execution,
                                                choreography ...
kind          -                                 for this kind of element only;
                                                empty: every kind
title         Execution                         the aspect in words
per           element                           marked for each element, or once
                                                for the routine
judges        5                                 judges of the panel
drop_high     1                                 highest marks that do not count
drop_low      1                                 lowest marks that do not count
combine       mean                              what is made of the kept marks
step          0.25                              from one mark to the next
least         0                                 the least mark
most          10                                the highest mark
use           times-difficulty                  how the marks become points
weight        1                                 what the rule multiplies by;
                                                empty: a gap to fill in
places        4                                 decimal places of the points;
                                                empty: 4
rounding      half-up                           how the points are rounded;
                                                empty: half-up
missing       mean                              when a judge is missing: an
                                                error, the mean of the others,
                                                or fewer marks; empty: refuse
missing_step  0.25                              the step to which that mean is
                                                rounded
source        invented for the Kingfisher demo  where the fact is from
              league
status        invented                          how far it can be trusted
=== exit 0
=== run landdrill values show kingfisher-2026 sync --format csv
=== output
code,title,points,source,status
small,Small difference in time or line,0.1,invented for the Kingfisher demo league,invented
clear,Clear difference that anyone sees,0.5,invented for the Kingfisher demo league,invented
major,One swimmer does something else,2,invented for the Kingfisher demo league,invented
=== exit 0
=== run landdrill values show kingfisher-2026 sync small --format json
=== output
{
  "format": 1,
  "report": "values show",
  "name": "kingfisher-2026",
  "set": "kingfisher-2026",
  "sync": [
    {
      "code": "small",
      "title": "Small difference in time or line",
      "points": "0.1",
      "source": "invented for the Kingfisher demo league",
      "status": "invented"
    }
  ]
}
=== exit 0
=== run landdrill values copy kingfisher-2026 sets/ours >/dev/null; landdrill values show ours sync small --values sets
=== output
sync.csv line 2: small

column  value                                meaning
code    small                                what the sheet writes for the class
                                             of sync error
title   Small difference in time or line     the class in words
points  0.1                                  points taken off for each; empty: a
                                             gap to fill in
source  invented for the Kingfisher demo     where the fact is from
        league
status  invented                             how far it can be trusted
=== exit 0
