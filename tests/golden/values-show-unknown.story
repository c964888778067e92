A set, a table or a row that is not there: the nearest that is.

=== run landdrill values show kingfihser-2026 2>&1 | sed 's/ in .*/ in .../'
=== output
landdrill: the value set "kingfihser-2026": no folder of that name with a set.csv in ...
  hint: the nearest is kingfisher-2026
=== exit 0
=== run landdrill values show kingfisher-2026 prats
=== errors
landdrill values show: found "prats"; expected a table
  hint: the nearest is parts
=== exit 2
=== run landdrill values show kingfisher-2026 parts spin-730
=== errors
landdrill values show: found "spin-730"; expected a row of parts in kingfisher-2026
  hint: the nearest are spin-720, spin-180, spin-360
=== exit 2
=== run landdrill values show kingfisher-2026 sync tiny
=== errors
landdrill values show: found "tiny"; expected a row of sync in kingfisher-2026
  hint: there is small, clear, major
=== exit 2
=== run landdrill values show springboard-later parts
=== output
springboard-later

parts.csv: the parts of elements and what they are worth

code    family  title                   value  source                  status
dd-2.8  dives   A dive of degree of       2.8  secondary: 6.5 7 7 7.5  published
                difficulty 2.8                 7.5 8 8 at DD 2.8
                                               gives 61.6
=== exit 0
=== run landdrill values show ./nowhere
=== errors
landdrill: nowhere: there is no such folder
=== exit 3
