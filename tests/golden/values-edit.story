The coach changes one value in her own set, and sees the total move and the report say why. The sets that come with the
program are never changed.

=== copy examples/harbour-lights.sheet
=== run landdrill values copy kingfisher-2026 my-2026
=== output
kingfisher-2026 is written into my-2026. In a sheet beside it, the line is
  values my-2026
=== exit 0
=== run landdrill score harbour-lights.sheet --brief --set my-2026
=== output
file              routine         difficulty    estimate       panel      change
…ur-lights.sheet  Harbour Lights     22.35      237.2000    209.7167    -27.4833
=== exit 0
=== run landdrill values edit my-2026 parts spin-720 value 1,5 --why 'the new catalogue'
=== output
my-2026 parts spin-720: value 1.4 -> 1.5
  its source is now "typed in, value was 1.4 before: the new catalogue"
  its status is now "memory"
=== exit 0
=== run landdrill score harbour-lights.sheet --brief --set my-2026
=== output
file              routine         difficulty    estimate       panel      change
…ur-lights.sheet  Harbour Lights     22.45      237.9000    209.7167    -28.1833
=== exit 0
=== run landdrill score harbour-lights.sheet --set my-2026 | tail -4
=== output
    rise-high, half-turn, thrust-high, split-hold, join-foot, and 35 more
  - 1 from memory, not checked: parts spin-720

Values from <here>/my-2026
=== exit 0
=== run landdrill explain harbour-lights.sheet element 2 difficulty --set my-2026 | tail -3
=== output
Where the values of my-2026 are from
  [1] invented: invented for the Kingfisher demo league
  [2] memory: typed in, value was 1.4 before: the new catalogue
=== exit 0
=== run landdrill values edit my-2026 parts spin-720 value 1.5
=== output
my-2026 parts spin-720: value is 1.5 already
=== exit 0
=== run landdrill values edit my-2026 panels 'duet-free execution' weight 0.8 --source 'league letter' --status published --values .
=== output
my-2026 panels duet-free execution: weight 1 -> 0.8
  its source is now "league letter"
  its status is now "published"
=== exit 0
=== run landdrill values edit my-2026 set '' title 'My league'
=== output
my-2026 set: title Kingfisher club league -> My league
=== exit 0
=== run landdrill values edit my-2026 parts spin-720 value ''
=== output
my-2026 parts spin-720: value 1.5 -> nothing
  its source is now "typed in, value was 1.5 before"
  its status is now "memory"
=== exit 0
=== run diff my-2026/parts.csv $REPOSITORY/tables/data/kingfisher-2026/parts.csv
=== output
12c12
< spin-720,spins,Spin down through 720 degrees,,"typed in, value was 1.5 before",memory
---
> spin-720,spins,Spin down through 720 degrees,1.4,invented for the Kingfisher demo league,invented
=== exit 1
=== run landdrill values edit kingfisher-2026 parts spin-720 value 1.5
=== errors
landdrill: kingfisher-2026: it comes with the program and is not changed
  hint: make a set of your own first: landdrill values copy kingfisher-2026 my-set
=== exit 3
