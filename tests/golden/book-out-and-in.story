Whatever sheets a club has, with remarks above, below and between: the whole book as text changes nothing when it is added again, tidied or
not, and makes the same book of an empty one.

=== copy examples/age-group-2009.sheet
=== copy examples/figure-session.sheet
=== copy examples/figure-sums.sheet
=== copy examples/free-1996.sheet
=== copy examples/free-2013.sheet
=== copy examples/harbour-lights.sheet
=== copy examples/solo-ripple.sheet
=== copy examples/springboard-2000.sheet
=== copy examples/springboard-later.sheet
=== copy examples/team-technical.sheet
=== copy examples/technical-2013.sheet
=== run landdrill book add club.season *.sheet > added.txt 2>&1; mkdir out; landdrill book export club.season --all > out/all.sheet; landdrill tidy out/all.sheet > out/tidied.sheet; grep -c ^routine out/all.sheet
=== output
11
=== exit 0
=== run landdrill book add club.season out/all.sheet > added.txt; landdrill book add club.season out/tidied.sheet > added.txt
=== errors
landdrill: 0 added, 0 new versions, 26 already there
landdrill: 0 added, 0 new versions, 26 already there
=== exit 0
=== run landdrill book add new.season out/all.sheet > added.txt 2>&1; landdrill book export new.season --all | diff - out/all.sheet && echo the same
=== output
the same
=== exit 0
