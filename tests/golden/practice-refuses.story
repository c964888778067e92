What a practice session cannot do is said before anything is asked.

=== copy examples/harbour-lights.sheet
=== run landdrill book add club.season harbour-lights.sheet > added.txt 2>&1; landdrill practice start club.season
=== errors
landdrill practice start: --name NAME is missing: whose marks are these?
=== exit 2
=== run landdrill practice start club.season --name Robin --lines none
=== errors
landdrill practice start: found --lines none; expected a whole number, 1 or more
=== exit 2
=== run landdrill practice start club.season nowhere --name Robin
=== errors
landdrill practice start: the book has no panel of that to mark: see `landdrill book list`
=== exit 2
=== run landdrill practice start club.season --name Robin --from yesterday
=== errors
landdrill practice start: found the date "yesterday"; expected a day written year-month-day, such as 2026-05-09
=== exit 2
=== run landdrill practice report club.season --name Robin
=== errors
landdrill practice report: Robin has no finished session in this book
=== exit 2
=== run landdrill practice start none.season --name Robin
=== errors
landdrill: none.season: there is no such file
  hint: import a value set or add a sheet to make one
=== exit 3
