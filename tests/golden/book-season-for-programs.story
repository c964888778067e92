What a season teaches, for a spreadsheet and for another program; and what it makes of the next estimate.

=== file spring.sheet
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

run 2026-03-31 "In the long pool"
  element 4: low-height medium, travel medium, off-vertical medium, late-count medium, flexed-foot small

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
  element 1: 7.75 7.75 7.50 7.75 7.50
  element 2 base: 6.75 7.00 6.75 7.00 6.75
  element 3: 7.25 7.50 7.50 7.50 7.75
  element 4: 7.50 7.50 7.50 7.75 7.25
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x2
  penalty: deck-time
=== file summer.sheet
routine  "Reed Song"
event    duet-free
values   kingfisher-2026

element 1 lift "Heron"
  parts  stand-feet, rise-high, half-turn
  expect 7.50
element 2 hybrid "Undertow"
  parts  thrust-high, spin-360, split-hold
  expect 7.75
element 3 hybrid "Weathervane"
  parts  twist-full, leg-hold-8, spin-360, split-open
  expect 7.75
element 4 hybrid "Slack Water"
  parts  arch-knee, side-hold, leg-switch, spin-180
  expect 7.75

impression choreography 7.50, performance 7.75, transitions 7.25

run 2026-03-31 "In the long pool"
  element 4: low-height medium, travel medium, off-vertical medium, late-count medium, flexed-foot small

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
  element 1: 7.75 7.75 7.50 7.75 7.50
  element 2 base: 6.75 7.00 6.75 7.00 6.75
  element 3: 7.25 7.50 7.50 7.50 7.75
  element 4: 7.50 7.50 7.50 7.75 7.25
  choreography: 7.50 7.75 7.50 7.25 7.50
  performance: 7.75 8.00 7.50 7.75 7.75
  transitions: 7.00 7.25 7.25 7.50 7.00
  sync: small x2
  penalty: deck-time

panel 2026-06-13 "Osier Shield"
  element 1: 7.50 7.75 7.50 7.75 7.75
  element 2: 7.50 7.50 7.25 7.75 7.50
  element 3: 7.50 7.50 7.25 7.75 7.50
  element 4: 7.50 7.75 7.50 7.75 7.50
  choreography: 7.50 7.75 7.50 7.50 7.50
  performance: 7.75 8.00 7.75 7.75 7.75
  transitions: 7.25 7.25 7.25 7.50 7.25
  sync: none
  penalty: none

panel 2026-07-04 "Kingfisher Final"
  element 1: 7.75 7.75 7.50 7.75 7.50
  element 2: 7.50 7.50 7.50 7.75 7.50
  element 3: 7.50 7.75 7.50 7.75 7.50
  element 4: 7.50 7.50 7.25 7.75 7.50
  choreography: 7.75 7.75 7.50 7.50 7.75
  performance: 7.75 8.00 7.75 8.00 7.75
  transitions: 7.25 7.50 7.25 7.50 7.25
  sync: small x1
  penalty: none
=== run landdrill book add club.season spring.sheet 2>&1 >/dev/null && landdrill book add club.season summer.sheet 2>&1 >/dev/null
=== output
landdrill: 4 added, 0 new versions, 0 already there
landdrill: 2 added, 2 new versions, 2 already there
landdrill: Reed Song, duet-free was changed and is version 2; panels stay with the version that they were swum as:
  2026-04-11 "Heron Cup": version 1
  2026-05-09 "Tarn Open": version 1
=== exit 0
=== run landdrill book lessons club.season reed --event duet-free --format csv
=== output
of,code,lessons,raw,raw_low,raw_high,shrunk,shrunk_low,shrunk_high,weight,spread,days
all,,16,-0.166667,-0.26043,-0.072903,-0.166667,-0.26043,-0.072903,1,0.217307,4
kind,hybrid,12,-0.270833,-0.39779,-0.143877,-0.268155,-0.394593,-0.141716,0.986975,0.128732,4
kind,lift,4,0.145833,0.079532,0.212134,0.137798,0.066928,0.208668,0.961918,0.041667,4
family,flexibility,12,-0.270833,-0.39779,-0.143877,-0.267235,-0.395141,-0.139329,0.969701,0.128732,4
family,spins,12,-0.270833,-0.39779,-0.143877,-0.267235,-0.395141,-0.139329,0.969701,0.128732,4
family,airborne,8,-0.229167,-0.267446,-0.190888,-0.225715,-0.273538,-0.177893,0.95523,0.038576,4
family,rises,4,0.145833,0.079532,0.212134,0.120302,0.032573,0.20803,0.914297,0.041667,4
family,stands,4,0.145833,0.079532,0.212134,0.120302,0.032573,0.20803,0.914297,0.041667,4
family,thrusts,4,-0.354167,-0.685671,-0.022662,-0.336847,-0.655186,-0.018508,0.914297,0.208333,4
family,turns,4,0.145833,0.079532,0.212134,0.120302,0.032573,0.20803,0.914297,0.041667,4
family,twists,4,-0.229167,-0.295468,-0.162866,-0.22256,-0.304913,-0.140207,0.914297,0.041667,4
family,connections,2,-0.458333,,,-0.409982,-1.757183,0.937218,0.842124,0.294628,2
fault,flexed-foot,4,-0.229167,-0.295468,-0.162866,-0.229167,-0.295468,-0.162866,0,0.041667,4
fault,late-count,4,-0.229167,-0.295468,-0.162866,-0.229167,-0.295468,-0.162866,0,0.041667,4
fault,low-height,4,-0.229167,-0.295468,-0.162866,-0.229167,-0.295468,-0.162866,0,0.041667,4
fault,off-vertical,4,-0.229167,-0.295468,-0.162866,-0.229167,-0.295468,-0.162866,0,0.041667,4
fault,travel,4,-0.229167,-0.295468,-0.162866,-0.229167,-0.295468,-0.162866,0,0.041667,4
=== exit 0
=== run landdrill book lessons club.season --sheet summer.sheet --colour never | sed -n '/as expected/,/How to/p'
=== output
Reed Song, as expected and calibrated
                       expected        calibrated
element        kind    mark    points    mark    points
1 Heron        lift    7.50   17.2500  7.6378   17.5669
2 Undertow     hybrid  7.75   20.9250  7.4818   20.2009
3 Weathervane  hybrid  7.75   25.5750  7.4818   24.6899
4 Slack Water  hybrid  7.75   20.9250  7.4818   20.2009
-------------------------------------------------------
Total                        159.6750          157.6586
Calibrated, the estimate is 157.6586 instead of 159.6750 (-2.0164).
Calibrated marks are rounded to 4 decimal places, not to the panel's step: they
stand for the mean of a panel. Marks of the whole routine stay as they are.

What panels gave, less what you expected (marks)
                elements  days  on average  95 % interval   to go by
all                   16     4       -0.17  -0.26 to -0.07     -0.17
by kind
  hybrid              12     4       -0.27  -0.40 to -0.14     -0.27
  lift                 4     4       +0.15  +0.08 to +0.21     +0.14
by family
  flexibility         12     4       -0.27  -0.40 to -0.14     -0.27
  spins               12     4       -0.27  -0.40 to -0.14     -0.27
  airborne             8     4       -0.23  -0.27 to -0.19     -0.23
  rises                4     4       +0.15  +0.08 to +0.21     +0.12
  stands               4     4       +0.15  +0.08 to +0.21     +0.12
  thrusts              4     4       -0.35  -0.69 to -0.02     -0.34
  turns                4     4       +0.15  +0.08 to +0.21     +0.12
  twists               4     4       -0.23  -0.30 to -0.16     -0.22
  connections          2     2       -0.46                     -0.41
by fault
  flexed-foot          4     4       -0.23  -0.30 to -0.16     -0.23
  late-count           4     4       -0.23  -0.30 to -0.16     -0.23
  low-height           4     4       -0.23  -0.30 to -0.16     -0.23
  off-vertical         4     4       -0.23  -0.30 to -0.16     -0.23
  travel               4     4       -0.23  -0.30 to -0.16     -0.23

How to read it
=== exit 0
=== run landdrill book lessons club.season --sheet summer.sheet --format csv
=== output
routine,line,element,kind,mark,points,calibrated_mark,calibrated_points
Reed Song,element,1 Heron,lift,7.5,17.2500,7.6378,17.5669
Reed Song,element,2 Undertow,hybrid,7.75,20.9250,7.4818,20.2009
Reed Song,element,3 Weathervane,hybrid,7.75,25.5750,7.4818,24.6899
Reed Song,element,4 Slack Water,hybrid,7.75,20.9250,7.4818,20.2009
Reed Song,total,,,,159.6750,,157.6586
=== exit 0
=== run landdrill book lessons club.season --sheet summer.sheet --from 2026-06-01 --format json
=== output
{
  "format": 1,
  "report": "book lessons",
  "sentences": [
    "On average panels gave 0.13 less than you expected, on 8 elements on 2 days: too little to tell whether they will again.",
    "Whether calibrating would have helped cannot be tested yet: no day has 8 marked elements before it."
  ],
  "days": 2,
  "claims": [],
  "back_test": {
    "verdict": "untested",
    "tested": 0,
    "days": 0,
    "error_before": null,
    "error_after": null,
    "better": null,
    "better_low": null,
    "better_high": null
  },
  "warnings": [
    "All of it is from 2 days, fewer than 3: strict or kind panels on so few days would look the same."
  ],
  "estimate": {
    "routine": "Reed Song",
    "elements": [
      {
        "element": "1 Heron",
        "kind": "lift",
        "mark": "7.5",
        "points": "17.2500",
        "calibrated_mark": "7.6647",
        "calibrated_points": "17.6288"
      },
      {
        "element": "2 Undertow",
        "kind": "hybrid",
        "mark": "7.75",
        "points": "20.9250",
        "calibrated_mark": "7.5284",
        "calibrated_points": "20.3267"
      },
      {
        "element": "3 Weathervane",
        "kind": "hybrid",
        "mark": "7.75",
        "points": "25.5750",
        "calibrated_mark": "7.5284",
        "calibrated_points": "24.8437"
      },
      {
        "element": "4 Slack Water",
        "kind": "hybrid",
        "mark": "7.75",
        "points": "20.9250",
        "calibrated_mark": "7.5284",
        "calibrated_points": "20.3267"
      }
    ],
    "total": "159.6750",
    "calibrated_total": "158.1259",
    "change": "-1.5491",
    "may_be_chance": true
  },
  "biases": [
    {
      "of": "all",
      "code": null,
      "lessons": 8,
      "raw": "-0.125",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.125",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "1",
      "spread": "0.183658",
      "days": 2
    },
    {
      "of": "kind",
      "code": "hybrid",
      "lessons": 6,
      "raw": "-0.222222",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.221561",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0.996587",
      "spread": "0.043033",
      "days": 2
    },
    {
      "of": "kind",
      "code": "lift",
      "lessons": 2,
      "raw": "0.166667",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "0.164683",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0.989831",
      "spread": "0",
      "days": 2
    },
    {
      "of": "family",
      "code": "flexibility",
      "lessons": 6,
      "raw": "-0.222222",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.13141",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0.043033",
      "days": 2
    },
    {
      "of": "family",
      "code": "spins",
      "lessons": 6,
      "raw": "-0.222222",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.13141",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0.043033",
      "days": 2
    },
    {
      "of": "family",
      "code": "airborne",
      "lessons": 4,
      "raw": "-0.208333",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.13141",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0.048113",
      "days": 2
    },
    {
      "of": "family",
      "code": "rises",
      "lessons": 2,
      "raw": "0.166667",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.13141",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0",
      "days": 2
    },
    {
      "of": "family",
      "code": "stands",
      "lessons": 2,
      "raw": "0.166667",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.13141",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0",
      "days": 2
    },
    {
      "of": "family",
      "code": "thrusts",
      "lessons": 2,
      "raw": "-0.25",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.13141",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0",
      "days": 2
    },
    {
      "of": "family",
      "code": "turns",
      "lessons": 2,
      "raw": "0.166667",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.13141",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0",
      "days": 2
    },
    {
      "of": "family",
      "code": "twists",
      "lessons": 2,
      "raw": "-0.208333",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.13141",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0.058926",
      "days": 2
    },
    {
      "of": "fault",
      "code": "flexed-foot",
      "lessons": 2,
      "raw": "-0.208333",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.208333",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0.058926",
      "days": 2
    },
    {
      "of": "fault",
      "code": "late-count",
      "lessons": 2,
      "raw": "-0.208333",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.208333",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0.058926",
      "days": 2
    },
    {
      "of": "fault",
      "code": "low-height",
      "lessons": 2,
      "raw": "-0.208333",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.208333",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0.058926",
      "days": 2
    },
    {
      "of": "fault",
      "code": "off-vertical",
      "lessons": 2,
      "raw": "-0.208333",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.208333",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0.058926",
      "days": 2
    },
    {
      "of": "fault",
      "code": "travel",
      "lessons": 2,
      "raw": "-0.208333",
      "raw_low": null,
      "raw_high": null,
      "shrunk": "-0.208333",
      "shrunk_low": null,
      "shrunk_high": null,
      "weight": "0",
      "spread": "0.058926",
      "days": 2
    }
  ]
}
=== exit 0
=== run landdrill values copy kingfisher-2026 sets/other >/dev/null && landdrill book lessons club.season --sheet summer.sheet --values sets --set other | cmp <(landdrill book lessons club.season --sheet summer.sheet) -
=== exit 0
=== run landdrill values import kingfisher-2026 --season club.season && landdrill book lessons club.season --sheet summer.sheet --season club.season | cmp <(landdrill book lessons club.season --sheet summer.sheet) -
=== output
kingfisher-2026: 229 rows are in club.season
=== exit 0
=== run landdrill book progress club.season --format csv
=== output
routine,event,version,routine_versions,set,date,what,title,declared,credited,mark,marked,of,base_marks,elements,impression,sync,penalties,total,announced
Reed Song,duet-free,1,2,kingfisher-2026,2026-03-31,run,In the long pool,12.3,12.3,7.75,1,4,0,,,,,,
Reed Song,duet-free,1,2,kingfisher-2026,2026-04-11,panel,Heron Cup,12.3,12.3,7.458333,4,4,0,91.4417,74.7500,0.4,0,165.7917,
Reed Song,duet-free,1,2,kingfisher-2026,2026-05-09,panel,Tarn Open,12.3,8.8,7.375,4,4,1,66.0500,74.7500,0.2,0.5,140.1000,
Reed Song,duet-free,2,2,kingfisher-2026,2026-06-13,panel,Osier Shield,11,11,7.5625,4,4,0,83.1083,75.0000,0,0,158.1083,
Reed Song,duet-free,2,2,kingfisher-2026,2026-07-04,panel,Kingfisher Final,11,11,7.5625,4,4,0,83.1583,76.1667,0.1,0,159.2250,
=== exit 0
=== run landdrill book progress club.season --event duet-free --until 2026-04-30 --format json --colour never
=== output
{
  "format": 1,
  "report": "book progress",
  "routines": [
    {
      "routine": "Reed Song",
      "event": "duet-free",
      "event_title": "Duet, free routine",
      "sentences": [],
      "warnings": [
        "One panel only: there is no course to see yet."
      ],
      "versions": [
        {
          "version": 1,
          "routine_versions": 2,
          "kept_at": "<time>",
          "set": "kingfisher-2026",
          "elements": 4,
          "declared": "12.3",
          "points": [
            {
              "date": "2026-03-31",
              "what": "run",
              "title": "In the long pool",
              "declared": "12.3",
              "credited": "12.3",
              "mark": "7.75",
              "marked": 1,
              "of": 4,
              "base_marks": 0,
              "elements": null,
              "impression": null,
              "sync": null,
              "penalties": null,
              "total": null,
              "announced": null
            },
            {
              "date": "2026-04-11",
              "what": "panel",
              "title": "Heron Cup",
              "declared": "12.3",
              "credited": "12.3",
              "mark": "7.458333",
              "marked": 4,
              "of": 4,
              "base_marks": 0,
              "elements": "91.4417",
              "impression": "74.7500",
              "sync": "0.4",
              "penalties": "0",
              "total": "165.7917",
              "announced": null
            }
          ]
        }
      ]
    }
  ]
}
=== exit 0
