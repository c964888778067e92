Nothing is changed when the set could no longer be used, or when there is no such cell.

=== run landdrill values copy kingfisher-2026 my-2026 >/dev/null; landdrill values edit my-2026 parts spin-720 value much
=== errors
my-2026/parts.csv:12:46: error: found "much"; expected a number in the column "value" [bad-number]
  spin-720,spins,Spin down through 720 degrees,much,"typed in, value was 1.4 before",memory
                                               ^~~~
  hint: leave the cell empty while the number is not known
landdrill: nothing was changed: with that, my-2026 could not be used
=== exit 1
=== run landdrill values edit my-2026 parts spin-720 family spinns
=== errors
my-2026/parts.csv:12:10: error: found "spinns"; expected a code of families.csv [unknown-name]
  spin-720,spinns,Spin down through 720 degrees,1.4,invented for the Kingfisher demo league,invented
           ^~~~~~
  hint: the nearest is spins
landdrill: nothing was changed: with that, my-2026 could not be used
=== exit 1
=== run landdrill values edit my-2026 prats spin-720 value 1
=== errors
landdrill: my-2026: it has no table "prats"
  hint: the nearest is parts
=== exit 2
=== run landdrill values edit my-2026 parts spin-730 value 1
=== errors
landdrill: my-2026 parts: it has no row "spin-730"
  hint: the nearest are spin-720, spin-180, spin-360
=== exit 2
=== run landdrill values edit my-2026 parts spin-720 worth 1
=== errors
landdrill: my-2026 parts: it has no column "worth"
  hint: there are code, family, title, value, source, status
=== exit 2
=== run landdrill values edit my-2026 quotas 'duet-free' most 9
=== output
my-2026 quotas duet-free: most 7 -> 9
  its source is now "typed in, most was 7 before"
  its status is now "memory"
=== exit 0
=== run landdrill values import kingfisher-2026 --season s >/dev/null; landdrill values edit kingfisher-2026 parts spin-720 value much --season s; landdrill values history kingfisher-2026 --season s
=== output
no.  at                    edit
  1  <time>  imported
=== errors
s/kingfisher-2026/parts.csv:12:46: error: found "much"; expected a number in the column "value" [bad-number]
  spin-720,spins,Spin down through 720 degrees,much,"typed in, value was 1.4 before",memory
                                               ^~~~
  hint: leave the cell empty while the number is not known
landdrill: nothing was changed: with that, kingfisher-2026 could not be used
=== exit 0
=== run diff -r my-2026 $REPOSITORY/tables/data/kingfisher-2026
=== output
diff -r my-2026/quotas.csv <repository>/tables/data/kingfisher-2026/quotas.csv
14c14
< duet-free,,,6,9,"typed in, most was 7 before",memory
---
> duet-free,,,6,7,invented for the Kingfisher demo league,invented
=== exit 1
=== run landdrill values edit my-2026 parts spin-720 value -1
=== errors
my-2026/parts.csv:12:46: error: found "-1"; expected a number not below 0 in the column "value" [out-of-range]
  spin-720,spins,Spin down through 720 degrees,-1,"typed in, value was 1.4 before",memory
                                               ^~
landdrill: nothing was changed: with that, my-2026 could not be used
=== exit 1
