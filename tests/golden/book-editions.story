The club changes a value in the middle of the season. The book keeps both editions, and says what was swum under which.

=== file spring.sheet
routine  "Reed Song"
event    duet-free
values   club

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn

panel 2026-04-11 "Heron Cup"
  element 1: 7.50 7.75 7.50 7.75 7.50
=== file low-water.sheet
routine  "Low Water"
event    solo-free
values   club

element 1 hybrid "Undertow"
  parts  thrust-high, spin-720, split-hold x2, join-foot

run 2026-04-12 "Tuesday"
  element 1: travel small
=== run landdrill values copy kingfisher-2026 sets/club > copied.txt; landdrill book add club.season spring.sheet low-water.sheet --values sets 2> added.txt > added.txt; sed -i '/^rise-high/s/,0.7,/,0.8,/' sets/club/parts.csv; sed -i 's/2026-04-11 "Heron Cup"/2026-06-13 "Osier Shield"/' spring.sheet; landdrill book add club.season spring.sheet --values sets
=== output
Reed Song, duet-free
                                     version  of routine
  routine                            2                    new version
  panel    2026-06-13  Osier Shield  1        2 of 2      added
=== errors
landdrill: 1 added, 1 new version, 0 already there
=== exit 0
=== run landdrill book editions club.season | sed "s/$(date -u +%F)/(that day)/"
=== output
no.  value set  edition  kept        routines  versions  runs  panels
  1  club       2026     (that day)         2         2     1       1
  2  club       2026     (that day)         1         1     0       1
=== exit 0
=== run landdrill book editions club.season osier --format csv
=== output
number,set,title,edition,kept_at,first_for,routines,versions,runs,panels
2,club,Kingfisher club league,2026,<time>,Reed Song,1,1,0,1
=== exit 0
=== run landdrill book editions club.season club --from 2026-05-01 --until 2026-12-31 --event duet-free --format json
=== output
{
  "format": 1,
  "report": "book editions",
  "editions": [
    {
      "number": 2,
      "set": "club",
      "title": "Kingfisher club league",
      "edition": "2026",
      "kept_at": "<time>",
      "first_for": "Reed Song",
      "routines": 1,
      "versions": 1,
      "runs": 0,
      "panels": 1
    }
  ]
}
=== exit 0
=== run landdrill book editions club.season nowhere
=== errors
landdrill: the book has nothing with "nowhere" in its title
=== exit 0
=== run sed -i '/^spin-720/s/,1.4,/,1.6,/' sets/club/parts.csv; landdrill book add club.season low-water.sheet --values sets 2>&1 | tail -1; landdrill book editions club.season --format csv | cut -d, -f1,7-; landdrill book list club.season low --format csv | cut -d, -f3-9
=== output
landdrill: 0 added, 2 new versions, 0 already there
number,routines,versions,runs,panels
1,2,2,1,1
2,1,1,0,1
3,1,1,0,0
what,date,title,version,of_version,routine_versions,set
routine,,,2 of 2,,2,club
run,2026-04-12,Tuesday,2 of 2,1,2,club
=== exit 0
=== run sed -i 's/2026-06-13 "Osier Shield"/2026-04-11 "Heron Cup"/; s/7.75 7.50$/7.75 7.75/' spring.sheet; landdrill book add club.season spring.sheet --values sets 2>&1 | tail -3; landdrill book editions club.season --format csv | cut -d, -f1,7-
=== output
landdrill: the panel of 2026-04-11 "Heron Cup" of Reed Song was kept before: 1 of its 5 marks is another now
landdrill: the panel of 2026-04-11 "Heron Cup" has new words; it stays with version 1 of Reed Song, as which it was swum
  hint: if it was version 3 that was swum: landdrill book swum-as club.season 3 'Reed Song Heron Cup' --event duet-free --from 2026-04-11 --until 2026-04-11
number,routines,versions,runs,panels
1,2,2,1,1
2,1,1,0,1
3,2,2,0,0
=== exit 0
