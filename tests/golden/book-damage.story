A disk lost a page of the book, and nothing in the file's structure shows it: only the words of one panel are gone. The check
finds it and says what to do; the export gives all the rest.

=== copy examples/harbour-lights.sheet
=== file reed-song.sheet
routine  "Reed Song"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
=== run landdrill book add club.season harbour-lights.sheet reed-song.sheet 2> added.txt > added.txt; (echo; echo 'panel 2026-06-13 "Osier Shield"'; for i in $(seq 200); do echo "  # a long remark, number $i"; done; echo "  element 1: 7 7 7 7 7") > osier.sheet; landdrill book add club.season reed-song.sheet osier.sheet; landdrill book check club.season
=== output
Reed Song, duet-free
                                     version  value set
  routine                            1        kingfisher-2026  already there
  panel    2026-06-13  Osier Shield  1        kingfisher-2026  added
club.season: ok
=== errors
landdrill: 1 added, 0 new versions, 1 already there
=== exit 0
=== run at=$(grep -abo 'number 199' club.season | cut -d: -f1); dd if=/dev/zero of=club.season bs=1 seek=$((at / 4096 * 4096)) count=4096 conv=notrunc status=none; landdrill book check club.season
=== errors
landdrill: club.season: the file is damaged (no longer what was kept: the panel 2026-06-13 "Osier Shield" of Reed Song)
  hint: put it aside and go on with your last copy; landdrill book check 'club.season' says more
  or go back to your latest backup: landdrill book restore club.season BACKUP
  what can still be read: landdrill book export club.season --all > saved.sheet
=== exit 3
=== run landdrill book score club.season
=== errors
landdrill: club.season: the file is damaged (no longer what was kept: the panel 2026-06-13 "Osier Shield" of Reed Song)
  hint: put it aside and go on with your last copy; landdrill book check 'club.season' says more
=== exit 3
=== run landdrill book score club.season harbour
=== output
routine         date        panel      estimate  recorded  difference  announced
Harbour Lights  2026-05-09  Tarn Open  237.2000  209.7167    -27.4833   209.7167
=== exit 0
=== run landdrill book export club.season
=== errors
landdrill: club.season: the file is damaged (no longer what was kept: the panel 2026-06-13 "Osier Shield" of Reed Song)
  hint: put it aside and go on with your last copy; landdrill book check 'club.season' says more
=== exit 3
=== run landdrill book export club.season --all > saved.sheet; grep -e ^routine -e ^panel saved.sheet; landdrill book add new.season saved.sheet
=== output
routine "Harbour Lights"
panel 2026-05-09 "Tarn Open"
routine "Reed Song"
Harbour Lights, duet-free
                                             version  value set
  routine                                    1        kingfisher-2026  added
  run      2026-04-14  Tuesday               1        kingfisher-2026  added
  run      2026-05-07  Last before the meet  1        kingfisher-2026  added
  panel    2026-05-09  Tarn Open             1        kingfisher-2026  added

Reed Song, duet-free
               version  value set
  routine      1        kingfisher-2026  added
=== errors
landdrill: club.season: the file is damaged (no longer what was kept: the panel 2026-06-13 "Osier Shield" of Reed Song)
  hint: put it aside and go on with your last copy; landdrill book check 'club.season' says more
landdrill: what can be read was printed all the same; not there:
  the panel 2026-06-13 "Osier Shield" of Reed Song
landdrill: 5 added, 0 new versions, 0 already there
=== exit 0
=== run landdrill book backup club.season copy.season; echo "exit $?"; test -e copy.season
=== output
exit 3
=== errors
landdrill: club.season: the file is damaged (no longer what was kept: the panel 2026-06-13 "Osier Shield" of Reed Song)
  hint: put it aside and go on with your last copy; landdrill book check 'club.season' says more
=== exit 1
=== run dd if=/dev/zero of=club.season bs=4096 seek=1 count=60 conv=notrunc status=none; landdrill book export club.season --all
=== errors
landdrill: club.season: the file is damaged (database disk image is malformed)
  hint: put it aside and go on with your last copy; sqlite3 'club.season' 'PRAGMA quick_check' lists the damage, sqlite3 'club.season' .recover saves what can still be read
=== exit 3
