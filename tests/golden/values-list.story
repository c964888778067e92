Which sets are there, and where do they come from? In a folder of one's own, in a season file, for programs. Of two sets
of one name it is said which counts.

=== run landdrill values copy kingfisher-2026 sets/ours-2026 >/dev/null; landdrill values copy springboard-later sets/dive >/dev/null; printf 'x' >> sets/dive/panels.csv; landdrill values list --values sets --format csv | head -3
=== output
name,title,edition,rows,edits,place,hidden
dive,has errors: see values check,,7,,<here>/sets/dive,
ours-2026,Kingfisher club league,2026,229,,<here>/sets/ours-2026,
=== exit 0
=== run landdrill values copy springboard-later dive-2 >/dev/null; landdrill values list | grep -E 'dive-2|place'
=== output
name                title                   edition                  rows  place
dive-2              Springboard diving,     later than 2000             6      2
=== exit 0
=== run landdrill values copy kingfisher-2026 kingfisher-2026 >/dev/null; LANDDRILL_VALUES=sets:/nowhere landdrill values list --values sets | sed -n '/^Places/,$p'
=== output
Places of sets: the first that is found counts
  1. the folders that --values names
     sets
  2. the folder of the sheet (here: the one where you are), and values/ in it
  3. the folders that LANDDRILL_VALUES names
     /nowhere
  4. your own folder
     <here>/.local/share/landdrill/values
  5. the sets that come with the program
     <repository>/tables/data

There are 2 sets called kingfisher-2026. The first one here counts, the other
does not:
  - <here>/kingfisher-2026
  - <repository>/tables/data/kingfisher-2026
=== exit 0
=== run landdrill values list --format csv | grep ^kingfisher
=== output
kingfisher-2026,Kingfisher club league,2026,229,,<here>/kingfisher-2026,<repository>/tables/data/kingfisher-2026
=== exit 0
=== run landdrill values import kingfisher-2026 --season club.season >/dev/null; landdrill values list --season club.season
=== output
name             title                   edition  rows  edits
kingfisher-2026  Kingfisher club league  2026      229      0

With --season, sets come from that file alone: club.season
=== exit 0
=== run landdrill values list --season club.season --format json
=== output
{
  "format": 1,
  "report": "values list",
  "sets": [
    {
      "name": "kingfisher-2026",
      "title": "Kingfisher club league",
      "edition": "2026",
      "rows": 229,
      "edits": 0,
      "place": "club.season",
      "hidden": []
    }
  ]
}
=== exit 0
