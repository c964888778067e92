The coach has a frame of the rules without the catalogue's values: what must she look up for this sheet, and what does she
do with it?

=== copy examples/tarn-declaration.sheet
=== run landdrill values missing tarn-declaration.sheet
=== output
tarn-declaration.sheet: Undercurrent
To fill in, in declared-2024, before this sheet can be scored:
table   row                          column
panels  solo-technical execution     weight
panels  solo-technical choreography  weight
panels  solo-technical performance   weight
panels  solo-technical transitions   weight
parts   solo-1                       value
parts   solo-2                       value
parts   solo-3                       value
parts   solo-4                       value
parts   solo-5                       value

To fill them in:
  landdrill values copy declared-2024 my-set
      a set of your own; name it in the sheet: values my-set
  landdrill values fill my-set LIST.csv --write
      with a code and a value on each line of LIST.csv
  landdrill values edit my-set panels "solo-technical execution" weight VALUE
=== exit 1
=== run landdrill values missing tarn-declaration.sheet --format csv
=== output
table,row,column
panels,solo-technical execution,weight
panels,solo-technical choreography,weight
panels,solo-technical performance,weight
panels,solo-technical transitions,weight
parts,solo-1,value
parts,solo-2,value
parts,solo-3,value
parts,solo-4,value
parts,solo-5,value
=== exit 1
=== run landdrill values missing tarn-declaration.sheet --set declared-2024 --format json
=== output
{
  "format": 1,
  "report": "values missing",
  "file": "tarn-declaration.sheet",
  "routine": "Undercurrent",
  "set": "declared-2024",
  "gaps": [
    {
      "table": "panels",
      "row": "solo-technical execution",
      "column": "weight"
    },
    {
      "table": "panels",
      "row": "solo-technical choreography",
      "column": "weight"
    },
    {
      "table": "panels",
      "row": "solo-technical performance",
      "column": "weight"
    },
    {
      "table": "panels",
      "row": "solo-technical transitions",
      "column": "weight"
    },
    {
      "table": "parts",
      "row": "solo-1",
      "column": "value"
    },
    {
      "table": "parts",
      "row": "solo-2",
      "column": "value"
    },
    {
      "table": "parts",
      "row": "solo-3",
      "column": "value"
    },
    {
      "table": "parts",
      "row": "solo-4",
      "column": "value"
    },
    {
      "table": "parts",
      "row": "solo-5",
      "column": "value"
    }
  ]
}
=== exit 1
=== file ada.sheet
routine "Ada"
event   figure-evening
values  kingfisher-2026
element 1 figure "Heron"
  parts  fig-heron
  expect 7
element 2 figure "Otter"
  parts  fig-otter
  expect 7
element 3 figure "Reed"
  parts  fig-reed
  expect 7
element 4 figure "Weir"
  parts  fig-weir
  expect 7
=== run landdrill values missing ada.sheet
=== output
ada.sheet: Ada
kingfisher-2026 has every value that this sheet needs.
=== exit 0
=== run landdrill values missing ada.sheet --values .
=== output
ada.sheet: Ada
kingfisher-2026 has every value that this sheet needs.
=== exit 0
=== run landdrill values import kingfisher-2026 --season s >/dev/null; landdrill values missing ada.sheet --season s
=== output
ada.sheet: Ada
kingfisher-2026 has every value that this sheet needs.
=== exit 0
