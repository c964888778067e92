What cannot be right is not added, and of a list or several sheets nothing is added then. Where it is in the list, is said.

=== file reed-song.sheet
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
=== file no-mark.csv
date,meet,routine,element,judge,points
2026-05-09,Tarn Open,Reed Song,1,1,7.75
=== file wrong.csv
date;meet;routine;element;judge;mark
2026-05-09;Tarn Open;Reed Song;1;1;7,75
2026-05-09;Tarn Open;Reed Song;9;1;7,75
2026-02-30;Tarn Open;Reed Song;1;1;7,75
2026-05-09;Tarn Open;Reed Song;1;1;7,50
2026-05-09;Tarn Open;Reed Song;2;first;7,50
2026-05-09;Tarn Open;Reed Song;2;2;good
=== file unknown.csv
date;meet;routine;element;judge;mark
2026-05-09;Tarn Open;Reed Song;9;1;7,75
2026-05-09;Tarn Open;Reed Song;1;1;17,75
2026-05-09;Tarn Open;Reed Sogn;1;1;7,75
=== file halves.csv
date,meet,routine,element,judge,mark
2026-05-09,Tarn Open,Reed Song,1,1,7,75
2026-05-09,"Tarn Open,Reed Song,1,2,7.75
=== file two-names.sheet
routine "Reed  song"
event   duet-free
values  kingfisher-2026
element 1 lift "Heron"
  parts stand-feet, rise-high, half-turn
=== file broken.sheet
routine "Broken"
event   duet-free
values  kingfisher-2026
element 1 lift "Heron"
  parts stand-feet, rise-hihg
=== run landdrill book add club.season reed-song.sheet broken.sheet
=== errors
broken.sheet:5:21: error: found the part "rise-hihg"; expected a part of kingfisher-2026 [unknown-part]
    parts stand-feet, rise-hihg
                      ^~~~~~~~~
  hint: the nearest are rise-high, rise-mid
landdrill: nothing was added to the book
=== exit 1
=== run landdrill book list club.season
=== errors
landdrill: club.season: there is no such file
  hint: import a value set or add a sheet to make one
=== exit 3
=== run landdrill book add club.season reed-song.sheet >/dev/null
=== errors
landdrill: 1 added, 0 new versions, 0 already there
=== exit 0
=== run landdrill book add club.season no-mark.csv
=== errors
no-mark.csv:1:33: warning: found a column "points", which is not read; expected date, meet, routine, event, element, judge, mark or base [unread-column]
  date,meet,routine,element,judge,points
                                  ^~~~~~
no-mark.csv:1:1: error: found no column for the mark; expected one that is called mark [missing-column]
  date,meet,routine,element,judge,points
  ^~~~
  hint: a list starts with a heading such as date,meet,routine,element,judge,mark
landdrill: nothing was added to the book
=== exit 1
=== run landdrill book add club.season wrong.csv
=== errors
wrong.csv:4:1: error: found "2026-02-30"; expected a day of the calendar written year-month-day, such as 2026-05-09 [bad-date]
  2026-02-30;Tarn Open;Reed Song;1;1;7,75
  ^~~~~~~~~~
wrong.csv:5:36: error: found a second mark of judge 1 for element 1; expected one; the first is on line 2 [repeated]
  2026-05-09;Tarn Open;Reed Song;1;1;7,50
                                     ^~~~
wrong.csv:6:34: error: found the judge "first"; expected the number of her seat, 1 to 99 [bad-number]
  2026-05-09;Tarn Open;Reed Song;2;first;7,50
                                   ^~~~~
wrong.csv:7:36: error: found "good"; expected a mark such as 7.25, or - [bad-number]
  2026-05-09;Tarn Open;Reed Song;2;2;good
                                     ^~~~
landdrill: nothing was added to the book
=== exit 1
=== run landdrill book add club.season unknown.csv
=== errors
unknown.csv:2:32: error: found element 9; expected an element of "Reed Song": 1, 2, 3, 4 [unknown-element]
  2026-05-09;Tarn Open;Reed Song;9;1;7,75
                                 ^
unknown.csv:3:32: error: found 1 mark; expected 5, one for each judge of execution [wrong-judges]
  2026-05-09;Tarn Open;Reed Song;1;1;17,75
                                 ^
  hint: write - for a judge who is missing
unknown.csv:3:36: error: found the mark 17.75; expected a mark from 0 to 10 for execution [out-of-range]
  2026-05-09;Tarn Open;Reed Song;1;1;17,75
                                     ^~~~~
unknown.csv:4:22: error: found the routine "Reed Sogn"; expected a routine of the book [unknown-name]
  2026-05-09;Tarn Open;Reed Sogn;1;1;7,75
                       ^~~~~~~~~
  hint: the nearest is Reed Song
landdrill: nothing was added to the book
=== exit 1
=== run landdrill book add club.season halves.csv
=== errors
halves.csv:2:38: error: found 7 cells; expected 6, as the heading has [cell-count]
  2026-05-09,Tarn Open,Reed Song,1,1,7,75
                                       ^~
  hint: a decimal comma splits a cell: write 7.25, or put it in quotation marks
halves.csv:3:12: error: found a quotation mark that does not close its cell; expected a closing one before the next cell [unclosed-quote]
  2026-05-09,"Tarn Open,Reed Song,1,2,7.75
             ^
landdrill: nothing was added to the book
=== exit 1
=== run landdrill book add club.season two-names.sheet
=== errors
landdrill: found the routine "Reed  song"; expected "Reed Song", as it is spelled elsewhere
  hint: write the title in one way
landdrill: nothing was added to the book
=== exit 1
=== run landdrill book add club.season reed-song.sheet no-mark.csv
=== errors
landdrill book add: add the sheets first, then the lists of marks
=== exit 2
=== run landdrill book add club.season nowhere.csv
=== errors
landdrill: nowhere.csv: there is no such file
  hint: check the spelling and the folder
=== exit 3
=== run landdrill book add club.season reed-song.sheet reed-song.sheet
=== output
Reed Song, duet-free
               version  value set
  routine      1        kingfisher-2026  already there
  routine      1        kingfisher-2026  already there
=== errors
landdrill: 0 added, 0 new versions, 2 already there
=== exit 0
=== run landdrill book list club.season heron
=== errors
landdrill: the book has nothing with "heron" in its title
=== exit 0
=== run landdrill book list club.season --from 2026-02-30
=== errors
landdrill book list: found the date "2026-02-30"; expected a day written year-month-day, such as 2026-05-09
=== exit 2
=== run landdrill book list club.season --format csv | wc -l
=== output
2
=== exit 0
=== run cp club.season half.season && truncate -s 20000 half.season && landdrill book check half.season
=== errors
landdrill: half.season: the file is damaged (database disk image is malformed)
  hint: put it aside and go on with your last copy; sqlite3 'half.season' 'PRAGMA quick_check' lists the damage, sqlite3 'half.season' .recover saves what can still be read
  or go back to your latest backup: mv half.season half.season.damaged && landdrill book restore half.season BACKUP
=== exit 3
=== run cp club.season page.season && dd if=/dev/zero of=page.season bs=4096 seek=9 count=3 conv=notrunc status=none && landdrill book check page.season 2>&1 | sed 's/Page [0-9]*:/Page N:/'; exit ${PIPESTATUS[0]}
=== output
landdrill: page.season: the file is damaged (Page N: btreeInitPage() returns error code 11)
  hint: put it aside and go on with your last copy; sqlite3 'page.season' 'PRAGMA quick_check' lists the damage, sqlite3 'page.season' .recover saves what can still be read
  or go back to your latest backup: landdrill book restore page.season BACKUP
  what can still be read: landdrill book export page.season --all > saved.sheet
=== exit 3
=== run printf 'no season' > letter.season && landdrill book check letter.season
=== errors
landdrill: letter.season: it is not a season file, nor any other database
  hint: name a file that was made as a season file
=== exit 3
=== run landdrill book restore club.season half.season; landdrill book check club.season
=== output
club.season: ok
=== errors
landdrill: half.season: the file is damaged (database disk image is malformed)
  hint: put it aside and go on with your last copy; sqlite3 'half.season' 'PRAGMA quick_check' lists the damage, sqlite3 'half.season' .recover saves what can still be read
=== exit 0
=== run landdrill book check nowhere.season
=== errors
landdrill: nowhere.season: there is no such file
  hint: import a value set or add a sheet to make one
=== exit 3
=== run landdrill book backup nowhere.season copy.season
=== errors
landdrill: nowhere.season: there is no such file
  hint: import a value set or add a sheet to make one
=== exit 3
=== run landdrill book restore club.season nowhere.season
=== errors
landdrill: nowhere.season: there is no such file
  hint: import a value set or add a sheet to make one
=== exit 3
