A season file keeps sets with the history of every change: import, change, look, undo, redo, export, remove. A value and
what is said of its source are one change.

=== copy examples/harbour-lights.sheet
=== run landdrill values import kingfisher-2026 --season club.season --why 'start of the season'
=== output
kingfisher-2026: 229 rows are in club.season
=== exit 0
=== run landdrill values import kingfisher-2026 --season club.season
=== output
kingfisher-2026 is in club.season already
=== exit 0
=== run landdrill values edit kingfisher-2026 parts spin-720 value 1.5 --season club.season --why 'new catalogue'
=== output
kingfisher-2026 parts spin-720: value 1.4 -> 1.5
  its source is now "typed in, value was 1.4 before: new catalogue"
  its status is now "memory"
=== exit 0
=== run landdrill score harbour-lights.sheet --brief --season club.season
=== output
file              routine         difficulty    estimate       panel      change
…ur-lights.sheet  Harbour Lights     22.45      237.9000    209.7167    -28.1833
=== exit 0
=== run landdrill values history kingfisher-2026 --season club.season
=== output
no.  at                    edit
  1  <time>  imported (start of the season)
  4  <time>  parts spin-720: value 1.4 to 1.5 (new catalogue)
=== exit 0
=== run landdrill values undo kingfisher-2026 --season club.season
=== output
undone: kingfisher-2026 parts spin-720: value 1.5 -> 1.4
=== exit 0
=== run landdrill values export kingfisher-2026 out --season club.season; diff -r out $REPOSITORY/tables/data/kingfisher-2026
=== output
kingfisher-2026 is written into out. In a sheet beside it, the line is
  values out
=== exit 0
=== run landdrill values redo kingfisher-2026 --season club.season
=== output
done again: kingfisher-2026 parts spin-720: value 1.4 -> 1.5
=== exit 0
=== run landdrill values redo kingfisher-2026 --season club.season
=== errors
landdrill: kingfisher-2026: there is no undone edit to bring back
=== exit 3
=== run landdrill values list --season club.season
=== output
name             title                   edition  rows  edits
kingfisher-2026  Kingfisher club league  2026      229      1

With --season, sets come from that file alone: club.season
=== exit 0
=== run landdrill values history kingfisher-2026 --season club.season --format csv
=== output
number,at,table,row,column,before,after,why,undone
1,<time>,imported,,,,,start of the season,
2,<time>,parts,spin-720,source,invented for the Kingfisher demo league,"typed in, value was 1.4 before: new catalogue",goes with the change of value,
3,<time>,parts,spin-720,status,invented,memory,goes with the change of value,
4,<time>,parts,spin-720,value,1.4,1.5,new catalogue,
5,<time>,parts,spin-720,value,1.5,1.4,undo of 4,
6,<time>,parts,spin-720,status,memory,invented,undo of 3,
7,<time>,parts,spin-720,source,"typed in, value was 1.4 before: new catalogue",invented for the Kingfisher demo league,undo of 2,
8,<time>,parts,spin-720,source,invented for the Kingfisher demo league,"typed in, value was 1.4 before: new catalogue",redo of 2,
9,<time>,parts,spin-720,status,invented,memory,redo of 3,
10,<time>,parts,spin-720,value,1.4,1.5,redo of 4,
=== exit 0
=== run landdrill values export kingfisher-2026 out --season club.season
=== errors
landdrill: out: there is something of that name already
  hint: give the name of a new folder
=== exit 3
=== run landdrill values undo kingfisher-2026 --season club.season; landdrill values undo kingfisher-2026 --season club.season
=== output
undone: kingfisher-2026 parts spin-720: value 1.5 -> 1.4
=== errors
landdrill: kingfisher-2026: there is no edit to undo
=== exit 3
=== run landdrill values copy kingfisher-2026 sets/kingfisher-2026 >/dev/null; landdrill values edit sets/kingfisher-2026 sync small points 0.2 >/dev/null; landdrill values import kingfisher-2026 --values sets --season club.season
=== errors
landdrill: club.season: it holds another value set "kingfisher-2026" already
  hint: replace it (that can be undone; 0 edits stand in it), or import under another name
=== exit 3
=== run landdrill values import kingfisher-2026 --values sets --season club.season --replace
=== output
kingfisher-2026: 229 rows are in club.season
=== exit 0
=== run landdrill values history kingfisher-2026 --season club.season
=== output
no.  at                    edit
  1  <time>  imported (start of the season)
  4  <time>  parts spin-720: value 1.4 to 1.5 (new          undone
                           catalogue)
  5  <time>  parts spin-720: value 1.5 to 1.4 (undo of 4)
 10  <time>  parts spin-720: value 1.4 to 1.5 (redo of 4)
 11  <time>  parts spin-720: value 1.5 to 1.4 (undo of 4)
 14  <time>  replaced
=== exit 0
=== run landdrill values remove kingfisher-2026 --season club.season
=== output
kingfisher-2026 is no longer in club.season
=== exit 0
=== run landdrill values list --season club.season
=== output
No value sets.

With --season, sets come from that file alone: club.season
=== exit 0
