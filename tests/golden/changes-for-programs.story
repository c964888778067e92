What a command changed is told to programs too, and several sets or sheets stand one a line.

=== file rough.sheet
routine   "Reeds"
event open
=== file wrong.sheet
routin "Reeds"
=== run landdrill tidy rough.sheet --format json
=== output
{
  "format": 1,
  "report": "tidy",
  "file": "rough.sheet",
  "tidy": false,
  "text": "routine \"Reeds\"\nevent    open\n",
  "errors": 0,
  "warnings": 0,
  "doubts": 0,
  "messages": []
}
=== exit 0
=== run landdrill tidy rough.sheet wrong.sheet --check --format json
=== output
{"format":1,"report":"tidy","file":"rough.sheet","tidy":false,"text":"routine \"Reeds\"\nevent    open\n","errors":0,"warnings":0,"doubts":0,"messages":[]}
{"format":1,"report":"tidy","file":"wrong.sheet","tidy":false,"text":null,"errors":1,"warnings":0,"doubts":0,"messages":[{"severity":"error","code":"unknown-keyword","file":"wrong.sheet","line":1,"column":1,"found":"\"routin\"","expected":"a keyword such as routine, element, parts, run or panel","hint":"the nearest keyword is routine","fix":{"line":1,"column":1,"length":6,"replacement":"routine"},"text":"routin \"Reeds\""}]}
=== exit 1
=== run landdrill values copy kingfisher-2026 mine --format json
=== output
{
  "format": 1,
  "report": "values copy",
  "set": "kingfisher-2026",
  "written_into": "mine",
  "name": "mine"
}
=== exit 0
=== run landdrill values edit mine parts spin-720 value 1,5 --format json
=== output
{
  "format": 1,
  "report": "values edit",
  "set": "mine",
  "changes": [
    {
      "table": "parts",
      "row": "spin-720",
      "change": "changed",
      "column": "value",
      "before": "1.4",
      "after": "1.5"
    },
    {
      "table": "parts",
      "row": "spin-720",
      "change": "changed",
      "column": "source",
      "before": "invented for the Kingfisher demo league",
      "after": "typed in, value was 1.4 before"
    },
    {
      "table": "parts",
      "row": "spin-720",
      "change": "changed",
      "column": "status",
      "before": "invented",
      "after": "memory"
    }
  ]
}
=== exit 0
=== run landdrill values edit mine parts spin-720 value 1.5 --format json
=== output
{
  "format": 1,
  "report": "values edit",
  "set": "mine",
  "changes": []
}
=== exit 0
=== run landdrill values check mine kingfisher-2026 --format json
=== output
{"format":1,"report":"values check","set":"mine","can_be_used":true,"to_fill_in":0,"errors":0,"warnings":0,"doubts":0,"messages":[]}
{"format":1,"report":"values check","set":"kingfisher-2026","can_be_used":true,"to_fill_in":0,"errors":0,"warnings":0,"doubts":0,"messages":[]}
=== exit 0
=== run landdrill values import mine kingfisher-2026 --season s --format json; landdrill values import mine --season s --format json
=== output
{"format":1,"report":"values import","set":"mine","season":"s","rows":229,"already_there":false}
{"format":1,"report":"values import","set":"kingfisher-2026","season":"s","rows":229,"already_there":false}
{
  "format": 1,
  "report": "values import",
  "set": "mine",
  "season": "s",
  "rows": 229,
  "already_there": true
}
=== exit 0
=== run landdrill values edit mine parts spin-720 value 1.6 --season s --format json; landdrill values undo mine --season s --format json; landdrill values redo mine --season s --format json
=== output
{
  "format": 1,
  "report": "values edit",
  "set": "mine",
  "changes": [
    {
      "table": "parts",
      "row": "spin-720",
      "change": "changed",
      "column": "value",
      "before": "1.5",
      "after": "1.6"
    },
    {
      "table": "parts",
      "row": "spin-720",
      "change": "changed",
      "column": "source",
      "before": "typed in, value was 1.4 before",
      "after": "typed in, value was 1.5 before"
    }
  ]
}
{
  "format": 1,
  "report": "values undo",
  "set": "mine",
  "changes": [
    {
      "table": "parts",
      "row": "spin-720",
      "change": "changed",
      "column": "value",
      "before": "1.6",
      "after": "1.5"
    },
    {
      "table": "parts",
      "row": "spin-720",
      "change": "changed",
      "column": "source",
      "before": "typed in, value was 1.5 before",
      "after": "typed in, value was 1.4 before"
    }
  ]
}
{
  "format": 1,
  "report": "values redo",
  "set": "mine",
  "changes": [
    {
      "table": "parts",
      "row": "spin-720",
      "change": "changed",
      "column": "value",
      "before": "1.5",
      "after": "1.6"
    },
    {
      "table": "parts",
      "row": "spin-720",
      "change": "changed",
      "column": "source",
      "before": "typed in, value was 1.4 before",
      "after": "typed in, value was 1.5 before"
    }
  ]
}
=== exit 0
=== run landdrill values export mine out --season s --format json
=== output
{
  "format": 1,
  "report": "values export",
  "set": "mine",
  "written_into": "out",
  "name": "out"
}
=== exit 0
=== run landdrill values remove mine --season s --format json
=== output
{
  "format": 1,
  "report": "values remove",
  "set": "mine",
  "season": "s"
}
=== exit 0
=== run landdrill book backup s copy --format json; landdrill book restore s copy --format json; landdrill book restore new copy --format json; landdrill book check new --format json
=== output
{
  "format": 1,
  "report": "book backup",
  "book": "s",
  "backup": "copy"
}
{
  "format": 1,
  "report": "book restore",
  "book": "s",
  "backup": "copy",
  "is_new": false
}
{
  "format": 1,
  "report": "book restore",
  "book": "new",
  "backup": "copy",
  "is_new": true
}
{
  "format": 1,
  "report": "book check",
  "book": "new",
  "sound": true,
  "damage": null
}
=== exit 0
