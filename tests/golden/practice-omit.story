A mistyped mark of a list is corrected, and a session that should not count is left out until it counts again.

=== copy examples/harbour-lights.sheet
=== file marks.csv
trainee,session,date,meet,routine,element,mark
Robin,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,1,7.50
Robin,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,2,2.75
Robin,2026-05-11,2026-05-09,Tarn Open,Harbour Lights,3,7.25
=== run landdrill book add club.season harbour-lights.sheet > added.txt 2>&1; landdrill practice add club.season marks.csv > added.txt 2>&1; sed -i 's/2,2.75/2,6.75/' marks.csv; landdrill practice add club.season marks.csv
=== errors
marks.csv:3:56: error: found 6.75 for element 2; expected 2.75, as the book has it of Robin on 2026-05-10 [contradiction]
  Robin,2026-05-10,2026-05-09,Tarn Open,Harbour Lights,2,6.75
                                                         ^~~~
  hint: --correct puts it in its place; marks of another practice need another session
landdrill: nothing was added of a list that has errors
=== exit 1
=== run landdrill practice add club.season marks.csv --correct; landdrill practice export club.season | cut -d, -f7,8
=== output
trainee  started     lines  marked
Robin    2026-05-10      2       2  1 corrected, 1 already there
Robin    2026-05-11      1       1  already there
element,mark
1,7.50
2,6.75
3,7.25
=== errors
landdrill: 0 marks added, 1 corrected, 2 already there
=== exit 0
=== run landdrill practice omit club.season --name robin --session 1; landdrill practice list club.season; landdrill practice export club.season | cut -d, -f7,8; landdrill practice report club.season --name Robin --session 1
=== output
Left out: session 1 of Robin, 2026-05-10. Its marks are kept; `landdrill practice include` brings it back
trainee  session  started     lines  marked
Robin          1  2026-05-10      2       2  left out
Robin          2  2026-05-11      1       1
element,mark
3,7.25
=== errors
landdrill practice report: found --session 1; expected the number or the day of a finished session: see `landdrill practice list`
=== exit 2
=== run landdrill practice omit club.season --name Robin --session 1
=== errors
landdrill practice omit: found --session 1; expected the number or the day of a session of hers: see `landdrill practice list`
=== exit 2
=== run landdrill practice include club.season --name Robin --session 2026-05-10 --format json; landdrill practice export club.season | cut -d, -f7,8
=== output
{
  "format": 1,
  "report": "practice include",
  "trainee": "Robin",
  "number": 1,
  "started": "<time>",
  "left_out": false
}
element,mark
1,7.50
2,6.75
3,7.25
=== exit 0
=== run landdrill practice include club.season --name Robin
=== errors
landdrill practice include: --session NUMBER|DATE is missing: which session?
=== exit 2
=== run landdrill practice omit club.season --name Robin --session 2 --format json > out.json; landdrill practice include club.season --name Robin --session 2
=== output
Counts again: session 2 of Robin, 2026-05-11
=== exit 0
