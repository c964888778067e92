The club's book of the season: sheets and lists of marks go in, nothing is overwritten, and everything comes out again: listed,
as sheets, scored as it was then, backed up and restored.

=== file reed-song.sheet
# Everything in it is invented.
routine  "Reed Song"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50
element 2 hybrid "Undertow"
  parts  thrust-high, spin-720, split-hold x2, join-foot
  expect 7.50
element 3 hybrid "Weathervane"
  parts  twist-full, leg-hold-8, spin-360, split-open
  expect 7.75
element 4 hybrid "Slack Water"
  parts  arch-knee, side-hold, leg-switch, spin-180
  expect 7.75

impression choreography 7.50, performance 7.75, transitions 7.25

panel 2026-04-11 "Heron Cup"
  element 1: 7.50 7.75 7.50 7.75 7.50
  element 2: 7.00 7.25 7.25 7.50 7.25
  element 3: 7.50 7.50 7.25 7.75 7.50
  element 4: 7.50 7.25 7.50 7.75 7.50
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x4
  penalty: none
=== file tarn.csv
Date;Competition;Routine;Element;Judge;Mark;Base
2026-05-09;Tarn Open;Reed Song;1;1;7,75;
2026-05-09;Tarn Open;Reed Song;1;2;7,75;
2026-05-09;Tarn Open;Reed Song;1;3;7,50;
2026-05-09;Tarn Open;Reed Song;1;J4;7,75;
2026-05-09;Tarn Open;Reed Song;1;5;-;
2026-05-09;Tarn Open;Reed Song;2;1;6,75;yes
2026-05-09;Tarn Open;Reed Song;2;2;7,00;yes
2026-05-09;Tarn Open;Reed Song;2;3;6,75;yes
2026-05-09;Tarn Open;Reed Song;2;4;7,00;yes
2026-05-09;Tarn Open;Reed Song;2;5;6,75;yes
=== run landdrill book add club.season reed-song.sheet
=== output
Reed Song, duet-free
                                  version  value set
  routine                         1        kingfisher-2026  added
  panel    2026-04-11  Heron Cup  1        kingfisher-2026  added
=== errors
landdrill: 2 added, 0 new versions, 0 already there
=== exit 0
=== run landdrill book add club.season reed-song.sheet --format csv
=== output
routine,event,what,date,title,version,of_version,routine_versions,set,kept_at,did
Reed Song,duet-free,routine,,,1,,1,kingfisher-2026,,already there
Reed Song,duet-free,panel,2026-04-11,Heron Cup,1,1,1,kingfisher-2026,,already there
=== errors
landdrill: 0 added, 0 new versions, 2 already there
=== exit 0
=== run landdrill book add club.season tarn.csv
=== output
Reed Song, duet-free
                                version  value set
  panel  2026-05-09  Tarn Open  1        kingfisher-2026  added
=== errors
landdrill: 1 added, 0 new versions, 0 already there
=== exit 0
=== run landdrill book export club.season reed > again.sheet; landdrill tidy --check again.sheet; landdrill book add club.season again.sheet
=== output
Reed Song, duet-free
                                  version  value set
  routine                         1        kingfisher-2026  already there
  panel    2026-04-11  Heron Cup  1        kingfisher-2026  already there
  panel    2026-05-09  Tarn Open  1        kingfisher-2026  already there
=== errors
landdrill: 0 added, 0 new versions, 3 already there
=== exit 0
=== run sed -i 's/expect 7.50/expect 7.25/' reed-song.sheet && landdrill book add club.season reed-song.sheet
=== output
Reed Song, duet-free
                                  version  of routine
  routine                         2                    new version
  panel    2026-04-11  Heron Cup  1        1 of 2      already there
=== errors
landdrill: 0 added, 1 new version, 1 already there
landdrill: Reed Song, duet-free was changed and is version 2; panels stay with the version that they were swum as:
  2026-04-11 "Heron Cup": version 1
=== exit 0
=== run landdrill book list club.season
=== output
Reed Song, duet-free
                                  version  of routine
  routine                         2 of 2
  panel    2026-04-11  Heron Cup  1        1 of 2
  panel    2026-05-09  Tarn Open  1        1 of 2
=== exit 0
=== run landdrill book list club.season reed song --all --event duet-free --from 2026-05-01 --until 2026-05-31 --format csv
=== output
routine,event,what,date,title,version,of_version,routine_versions,set,kept_at,did
Reed Song,duet-free,panel,2026-05-09,Tarn Open,1,1,2,kingfisher-2026,<time>,
=== exit 0
=== run landdrill book list club.season heron --format json
=== output
{
  "format": 1,
  "report": "book list",
  "entries": [
    {
      "routine": "Reed Song",
      "event": "duet-free",
      "what": "panel",
      "date": "2026-04-11",
      "title": "Heron Cup",
      "version": "1",
      "of_version": 1,
      "routine_versions": 2,
      "set": "kingfisher-2026",
      "kept_at": "<time>",
      "did": null
    }
  ]
}
=== exit 0
=== run landdrill book export club.season tarn
=== output
# Everything in it is invented.
routine "Reed Song"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50
element 2 hybrid "Undertow"
  parts  thrust-high, spin-720, split-hold x2, join-foot
  expect 7.50
element 3 hybrid "Weathervane"
  parts  twist-full, leg-hold-8, spin-360, split-open
  expect 7.75
element 4 hybrid "Slack Water"
  parts  arch-knee, side-hold, leg-switch, spin-180
  expect 7.75

impression choreography 7.50, performance 7.75, transitions 7.25

panel 2026-04-11 "Heron Cup"
  element 1: 7.50 7.75 7.50 7.75 7.50
  element 2: 7.00 7.25 7.25 7.50 7.25
  element 3: 7.50 7.50 7.25 7.75 7.50
  element 4: 7.50 7.25 7.50 7.75 7.50
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x4
  penalty: none

panel 2026-05-09 "Tarn Open"
  element 1: 7.75 7.75 7.50 7.75 -
  element 2 base: 6.75 7.00 6.75 7.00 6.75
=== exit 0
=== run landdrill book export club.season --event duet-free --from 2026-04-01 --until 2026-04-30 --all | grep -e expect -e panel
=== output
  expect 7.50
  expect 7.50
  expect 7.75
  expect 7.75
panel 2026-04-11 "Heron Cup"
panel 2026-05-09 "Tarn Open"
=== exit 0
=== run landdrill book score club.season
=== output
routine    date        panel      estimate  recorded  difference
Reed Song  2026-04-11  Heron Cup  168.7500  165.7917     -2.9583
Reed Song  2026-05-09  Tarn Open  168.7500

  - Reed Song, 2026-05-09 Tarn Open, no total: elements 3 and 4 have no marks,
    nor have choreography, performance and transitions
=== exit 0
=== run landdrill book score club.season --event duet-free --from 2026-05-01 --until 2026-05-31 --format csv
=== output
routine,event,what,date,title,set,estimate,recorded,difference,announced,note
Reed Song,duet-free,panel,2026-05-09,Tarn Open,kingfisher-2026,168.7500,,,,"no total: elements 3 and 4 have no marks, nor have choreography, performance and transitions"
=== exit 0
=== run landdrill book backup club.season backup.season && landdrill book check backup.season
=== output
backed up to backup.season
backup.season: ok
=== exit 0
=== run landdrill book backup club.season backup.season
=== errors
landdrill: backup.season: there is a file of this name already
  hint: name a new file for the backup
=== exit 3
=== run sed -i 's/expect 7.75/expect 7.00/' reed-song.sheet && landdrill book add club.season reed-song.sheet >/dev/null; landdrill book restore club.season backup.season; landdrill book list club.season | head -3
=== output
club.season is again what it was in backup.season
Reed Song, duet-free
                                  version  of routine
  routine                         2 of 2
=== errors
landdrill: 0 added, 1 new version, 1 already there
landdrill: Reed Song, duet-free was changed and is version 3; panels stay with the version that they were swum as:
  2026-04-11 "Heron Cup": version 1
=== exit 0
=== run landdrill values copy kingfisher-2026 sets/other >/dev/null && landdrill book add other.season reed-song.sheet --values sets --set other
=== output
Reed Song, duet-free
                                  version  value set
  routine                         1        other      added
  panel    2026-04-11  Heron Cup  1        other      added
=== errors
landdrill: 2 added, 0 new versions, 0 already there
=== exit 0
=== run landdrill values import kingfisher-2026 --season sets.season && landdrill book add third.season reed-song.sheet --season sets.season
=== output
kingfisher-2026: 229 rows are in sets.season
Reed Song, duet-free
                                  version  value set
  routine                         1        kingfisher-2026  added
  panel    2026-04-11  Heron Cup  1        kingfisher-2026  added
=== errors
landdrill: 2 added, 0 new versions, 0 already there
=== exit 0
