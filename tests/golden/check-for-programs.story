What is wrong with a sheet, for programs: each message has its place and, where a hint leaves one word only, what goes
there; several sheets are one line each, also those with mistakes; and one line of a score with all below it.

=== copy examples/harbour-lights.sheet
=== file heron.sheet
routine "Heron"
event  solo-free
values kingfisher-2026
element 1 hybrid "Heron"
  parts thrust-mid, spin-180, split-hodl
  expect 7.00
=== run landdrill check heron.sheet --format json
=== output
{
  "format": 1,
  "report": "check",
  "file": "heron.sheet",
  "routine": "Heron",
  "ok": false,
  "value_set_found": true,
  "errors": 1,
  "warnings": 0,
  "doubts": 0,
  "messages": [
    {
      "severity": "error",
      "code": "unknown-part",
      "file": "heron.sheet",
      "line": 5,
      "column": 31,
      "found": "the part \"split-hodl\"",
      "expected": "a part of kingfisher-2026",
      "hint": "the nearest is split-hold",
      "fix": {
        "line": 5,
        "column": 31,
        "length": 10,
        "replacement": "split-hold"
      },
      "text": "  parts thrust-mid, spin-180, split-hodl"
    }
  ]
}
=== exit 1
=== run landdrill check heron.sheet harbour-lights.sheet --format json
=== output
{"format":1,"report":"check","file":"heron.sheet","routine":"Heron","ok":false,"value_set_found":true,"errors":1,"warnings":0,"doubts":0,"messages":[{"severity":"error","code":"unknown-part","file":"heron.sheet","line":5,"column":31,"found":"the part \"split-hodl\"","expected":"a part of kingfisher-2026","hint":"the nearest is split-hold","fix":{"line":5,"column":31,"length":10,"replacement":"split-hold"},"text":"  parts thrust-mid, spin-180, split-hodl"}]}
{"format":1,"report":"check","file":"harbour-lights.sheet","routine":"Harbour Lights","ok":true,"value_set_found":true,"errors":0,"warnings":0,"doubts":0,"messages":[]}
=== exit 1
=== run landdrill score heron.sheet harbour-lights.sheet --format json | cut -c1-160
=== output
{"format":1,"report":"score","file":"heron.sheet","errors":1,"warnings":0,"doubts":0,"messages":[{"severity":"error","code":"unknown-part","file":"heron.sheet",
{"format":1,"report":"score","file":"harbour-lights.sheet","routine":"Harbour Lights","event":"Duet, free routine","values":{"set":"Kingfisher club league","edi
=== errors
heron.sheet:5:31: error: found the part "split-hodl"; expected a part of kingfisher-2026 [unknown-part]
    parts thrust-mid, spin-180, split-hodl
                                ^~~~~~~~~~
  hint: the nearest is split-hold
=== exit 0
=== run landdrill explain harbour-lights.sheet element 2 difficulty --format json | head -24
=== output
{
  "format": 1,
  "report": "explain",
  "build_up": {
    "what": "difficulty",
    "path": "element 2 difficulty",
    "label": "declared difficulty",
    "rule": "base + sum(parts) + 0.1 * max(0, families - 2) = 0.5 + 3.3 + 0.1 * max(0, 4 - 2)",
    "value": "4.00",
    "remark": null,
    "rows": [
      {
        "table": "kinds",
        "row": "hybrid",
        "line": 2,
        "status": "invented",
        "source": "invented for the Kingfisher demo league"
      }
    ],
    "below": [
      {
        "what": "part",
        "path": "element 2 thrust-high",
        "label": "thrust-high",
=== exit 0
