A new edition of the values: what changed, and what does it do to our routine?

=== copy examples/harbour-lights.sheet
=== run landdrill values copy kingfisher-2026 next >/dev/null; landdrill values edit next parts spin-720 value 1.6 >/dev/null; landdrill values edit next penalties bottom points 4 --source 'rule book 2027' --status published > /dev/null
=== exit 0
=== run landdrill values compare kingfisher-2026 next
=== output
From kingfisher-2026 to next

table      row       change   column  before                after
parts      spin-720  changed  value   1.4                   1.6
parts      spin-720  changed  source  invented for the      typed in, value was
                                      Kingfisher demo       1.4 before
                                      league
parts      spin-720  changed  status  invented              memory
penalties  bottom    changed  points  2                     4
penalties  bottom    changed  source  invented for the      rule book 2027
                                      Kingfisher demo
                                      league
penalties  bottom    changed  status  invented              published
=== exit 0
=== run landdrill values compare kingfisher-2026 next harbour-lights.sheet
=== output
From kingfisher-2026 to next

table      row       change   column  before                after
parts      spin-720  changed  value   1.4                   1.6
parts      spin-720  changed  source  invented for the      typed in, value was
                                      Kingfisher demo       1.4 before
                                      league
parts      spin-720  changed  status  invented              memory
penalties  bottom    changed  points  2                     4
penalties  bottom    changed  source  invented for the      rule book 2027
                                      Kingfisher demo
                                      league
penalties  bottom    changed  status  invented              published

What that does to the difficulty of Harbour Lights (harbour-lights.sheet)

line                        before     after   change
2 Undertow                  4.00      4.20    +0.20
difficulty, all elements   22.35     22.55    +0.20
total, as estimated       237.2000  238.6000  +1.4000
=== exit 0
=== run landdrill values compare kingfisher-2026 next harbour-lights.sheet --option 2=safer --runs none | tail -3
=== output
penalties  bottom    changed  status  invented              published

Nothing in Harbour Lights (harbour-lights.sheet) is worth more or less.
=== exit 0
=== run landdrill values compare kingfisher-2026 next harbour-lights.sheet --format csv
=== output
table,row,change,column,before,after
parts,spin-720,changed,value,1.4,1.6
parts,spin-720,changed,source,invented for the Kingfisher demo league,"typed in, value was 1.4 before"
parts,spin-720,changed,status,invented,memory
penalties,bottom,changed,points,2,4
penalties,bottom,changed,source,invented for the Kingfisher demo league,rule book 2027
penalties,bottom,changed,status,invented,published
sheet,2 Undertow,moved,difficulty,4.00,4.20
sheet,"difficulty, all elements",moved,difficulty,22.35,22.55
sheet,"total, as estimated",moved,difficulty,237.2000,238.6000
=== exit 0
=== run landdrill values compare kingfisher-2026 kingfisher-2026
=== output
From kingfisher-2026 to kingfisher-2026: no value differs.
=== exit 0
=== run landdrill values import kingfisher-2026 --season s >/dev/null; landdrill values compare kingfisher-2026 ./next --season s --format csv | head -2
=== output
table,row,change,column,before,after
parts,spin-720,changed,value,1.4,1.6
=== exit 0
=== run landdrill values compare next kingfisher-2026 --values . --format json | head -6
=== output
{
  "format": 1,
  "report": "values compare",
  "before": "next",
  "after": "kingfisher-2026",
  "sheet": null,
=== exit 0
=== run sed -i '/^spin-720,/d' next/parts.csv; landdrill values compare kingfisher-2026 next harbour-lights.sheet
=== errors
harbour-lights.sheet:22:23: error: found the part "spin-720"; expected a part of next [unknown-part]
    parts  thrust-high, spin-720, split-hold x2, join-foot
                        ^~~~~~~~
  hint: the nearest are spin-180, spin-360, spin-1080
harbour-lights.sheet:74:37: error: found the part "spin-720"; expected a part of next [unknown-part]
      parts  thrust-high, twist-half, spin-720
                                      ^~~~~~~~
  hint: the nearest are spin-180, spin-360, spin-1080
harbour-lights.sheet:98:72: error: found a lost part "spin-720"; expected a part of element 2 [not-lost]
    element 2: travel medium, off-vertical large, low-height large, lost spin-720  # a lost part: base mark
                                                                         ^~~~~~~~
  hint: element 2 has thrust-high, split-hold, join-foot
landdrill: harbour-lights.sheet cannot be priced from next
=== exit 1
