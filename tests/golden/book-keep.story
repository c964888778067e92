The book as a file: a backup that cannot be made is explained, a restore onto the wrong name is seen, and a file that was only
half written is told how to go back.

=== file low-water.sheet
routine  "Low Water"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50

run 2026-04-05 "Long pool"
  element 1: clean
=== run landdrill book add club.season low-water.sheet 2>/dev/null >/dev/null; landdrill book backup club.season copies/may.season
=== errors
landdrill: copies/may.season: there is no folder <here>/copies
  hint: make the folder first
=== exit 3
=== run mkdir copies; landdrill book backup club.season copies
=== errors
landdrill: copies: it is a folder
  hint: name the new file in it, such as copies/club.season
=== exit 3
=== run landdrill book backup club.season copies/may.season && landdrill book restore clab.season copies/may.season
=== output
backed up to copies/may.season
clab.season was not there: it is a new file now, as it was in copies/may.season
=== exit 0
=== run landdrill book restore club.season club.season
=== errors
landdrill: club.season: it is the season file itself
  hint: name the backup
=== exit 3
=== run head -c 20000 club.season > half.season; landdrill book restore june.season half.season; ls june.season
=== errors
landdrill: half.season: the file is damaged (database disk image is malformed)
  hint: put it aside and go on with your last copy; sqlite3 'half.season' 'PRAGMA quick_check' lists the damage, sqlite3 'half.season' .recover saves what can still be read
ls: cannot access 'june.season': No such file or directory
=== exit 2
=== run landdrill book check half.season
=== errors
landdrill: half.season: the file is damaged (database disk image is malformed)
  hint: put it aside and go on with your last copy; sqlite3 'half.season' 'PRAGMA quick_check' lists the damage, sqlite3 'half.season' .recover saves what can still be read
  or go back to your latest backup: mv half.season half.season.damaged && landdrill book restore half.season BACKUP
=== exit 3
=== run mv half.season half.season.damaged && landdrill book restore half.season copies/may.season && landdrill book check half.season
=== output
half.season was not there: it is a new file now, as it was in copies/may.season
half.season: ok
=== exit 0
=== run echo 'not a book' > text.season; landdrill book check text.season
=== errors
landdrill: text.season: it is not a season file, nor any other database
  hint: name a file that was made as a season file
=== exit 3
=== run landdrill book score club.season
=== errors
landdrill: no panel has seen it: there are run-throughs alone, which `landdrill book progress` shows
=== exit 0
=== run landdrill book list club.season --from 2026-05-01 --until 2026-04-01
=== errors
landdrill book list: found --from 2026-05-01 and --until 2026-04-01; expected --until to be the same day or later
=== exit 2
=== run landdrill book list club.season --event solo-free
=== errors
landdrill: the book has no routine in the event solo-free; it has duet-free
=== exit 0
