An official in training marks what a recorded panel marked. She pauses, goes on another day, goes back once, and sees at the
end how she compares; her sessions are kept.

=== copy examples/harbour-lights.sheet
=== run landdrill book add club.season harbour-lights.sheet > added.txt 2>&1; landdrill practice start club.season tarn --name Robin --lines 6 --seed 3 <<< $'7.25\n7.3\n?\nb\n7.5\np'
=== output
6 of 6 lines to mark. A mark, or b back, s skip, p pause, ? help.

1 of 6   Harbour Lights, 2026-05-09 Tarn Open
  2 Undertow, hybrid, difficulty 4.00
  thrust-high, spin-720, split-hold x2, join-foot
  your mark: 
2 of 6   Harbour Lights, 2026-05-09 Tarn Open
  3 Weathervane, hybrid, difficulty 3.30
  twist-full, leg-hold-8, spin-360, split-open
  your mark:   found "7.3"; expected a mark from 0 to 10 in steps of 0.25, or b, s, p or ?
  your mark:   a mark from 0 to 10 in steps of 0.25, such as 7.25 or 7,25
  b  back to the line before
  s  leave this line out
  p  pause: your marks are kept, and you can go on from here
  your mark: 
1 of 6   Harbour Lights, 2026-05-09 Tarn Open
  2 Undertow, hybrid, difficulty 4.00
  thrust-high, spin-720, split-hold x2, join-foot
  you gave 7.25: Enter leaves it
  your mark: 
2 of 6   Harbour Lights, 2026-05-09 Tarn Open
  3 Weathervane, hybrid, difficulty 3.30
  twist-full, leg-hold-8, spin-360, split-open
  your mark: 
paused: landdrill practice start club.season --name Robin --session 1 goes on from here
=== exit 0
=== run printf '8\n7\n6,75\ns\n7.75\n' | landdrill practice start club.season tarn --name Robin
=== output
Going on with session 1 of <time>
5 of 6 lines to mark. A mark, or b back, s skip, p pause, ? help.

2 of 6   Harbour Lights, 2026-05-09 Tarn Open
  3 Weathervane, hybrid, difficulty 3.30
  twist-full, leg-hold-8, spin-360, split-open
  your mark: 
3 of 6   Harbour Lights, 2026-05-09 Tarn Open
  6 Beacon, hybrid, difficulty 4.10
  thrust-top, twist-fast, spin-1080
  your mark: 
4 of 6   Harbour Lights, 2026-05-09 Tarn Open
  Choreography and music
  your mark: 
5 of 6   Harbour Lights, 2026-05-09 Tarn Open
  Performance
  your mark: 
6 of 6   Harbour Lights, 2026-05-09 Tarn Open
  Transitions
  your mark: 
Practice of Robin, <time>: 5 marked, 1 not

  - On average you marked 0.28 higher than the panel; with 5 marks that may be
    chance.

Your marks beside the panel's
element            swum                    you  panel    off  judges
2 Undertow         Harbour Lights,        7.50   6.83  +0.67  6.75 7.00 6.50
                   2026-05-09 Tarn                            7.00 6.75
                   Open
3 Weathervane      Harbour Lights,        8.00   7.42  +0.58  7.25 7.50 7.50
                   2026-05-09 Tarn                            7.25 7.75
                   Open
6 Beacon           Harbour Lights,        7.00   6.67  +0.33  6.50 6.75 7.00
                   2026-05-09 Tarn                            6.25 6.75
                   Open
Choreography and   Harbour Lights,        6.75   7.50  -0.75  7.50 7.75 7.50
music              2026-05-09 Tarn                            7.25 7.50
                   Open
Performance        Harbour Lights,     skipped   7.75         7.75 8.00 7.50
                   2026-05-09 Tarn                            7.75 7.75
                   Open
Transitions        Harbour Lights,        7.75   7.17  +0.58  7.00 7.25 7.25
                   2026-05-09 Tarn                            7.50 7.00
                   Open

How you mark
bias              +0.28 marks (-0.45 to +1.02; above the panel is +)
how far off       0.58 marks on average, whichever way
within one step   0 %, within two 20 %
same order        0.00 (-0.88 to 0.88; 1 ranks as the panel does, 0 as chance
                  would)
use of the scale  you 6.75 to 8.00, the panel 6.67 to 7.50
steadiness        off by 0.63 in the first half, 0.56 in the second

Where you are off
where         marks  you are  95 % interval    off
choreography      1    -0.75                  0.75
transitions       1    +0.58                  0.58
hybrid            3    +0.53  +0.10 to +0.96  0.53

Where nothing is said of it above, a difference between these may be chance.

Against each judge: 2026-05-09 Tarn Open, elements of duet-free
judge    marks  you are  95 % interval   apart
judge 1      3    +0.67  +0.31 to +1.03   0.67
judge 2      3    +0.42  +0.06 to +0.78   0.42
judge 3      3    +0.50  -0.74 to +1.74   0.50
judge 4      3    +0.67  +0.31 to +1.03   0.67
judge 5      3    +0.42  -0.30 to +1.13   0.42
=== exit 0
=== run landdrill practice report club.season --name Robin --format csv
=== output
trainee,started,routine,panel,line,kind,mark,late,kept,off,corrected,again
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,2,hybrid,7.50,no,6.83,+0.67,no,no
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,3,hybrid,8.00,no,7.42,+0.58,no,no
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,6,hybrid,7.00,no,6.67,+0.33,no,no
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,choreography,choreography,6.75,no,7.50,-0.75,no,no
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,performance,performance,,no,7.75,,no,no
Robin,<time>,Harbour Lights,2026-05-09 Tarn Open,transitions,transitions,7.75,no,7.17,+0.58,no,no
=== exit 0
=== run landdrill practice report club.season --name Robin --format json | sed -n '/"summary"/,$p'
=== output
  "summary": {
    "marked": 5,
    "skipped": 1,
    "late": 0,
    "corrected": 0,
    "again": 0,
    "meets": 1,
    "bias": "0.283333",
    "bias_low": "-0.450516",
    "bias_high": "1.017183",
    "difference": "0.583333",
    "within_one": "0",
    "within_two": "0.2",
    "order": "0",
    "spread": "0.518411",
    "panel_spread": "0.361325",
    "first_half": "0.625",
    "second_half": "0.555556"
  },
  "where": [
    {
      "by": "kind",
      "name": "choreography",
      "marks": 1,
      "bias": "-0.75",
      "difference": "0.75",
      "bias_low": null,
      "bias_high": null,
      "more_than_chance": false
    },
    {
      "by": "kind",
      "name": "transitions",
      "marks": 1,
      "bias": "0.583333",
      "difference": "0.583333",
      "bias_low": null,
      "bias_high": null,
      "more_than_chance": false
    },
    {
      "by": "kind",
      "name": "hybrid",
      "marks": 3,
      "bias": "0.527778",
      "difference": "0.527778",
      "bias_low": "0.096849",
      "bias_high": "0.958707",
      "more_than_chance": false
    }
  ],
  "judges": [
    {
      "panel": "2026-05-09 Tarn Open",
      "event": "duet-free",
      "of": "elements",
      "judge": 1,
      "marks": 3,
      "bias": "0.666667",
      "difference": "0.666667",
      "bias_low": "0.308112",
      "bias_high": "1.025221"
    },
    {
      "panel": "2026-05-09 Tarn Open",
      "event": "duet-free",
      "of": "elements",
      "judge": 2,
      "marks": 3,
      "bias": "0.416667",
      "difference": "0.416667",
      "bias_low": "0.058112",
      "bias_high": "0.775221"
    },
    {
      "panel": "2026-05-09 Tarn Open",
      "event": "duet-free",
      "of": "elements",
      "judge": 3,
      "marks": 3,
      "bias": "0.5",
      "difference": "0.5",
      "bias_low": "-0.742069",
      "bias_high": "1.742069"
    },
    {
      "panel": "2026-05-09 Tarn Open",
      "event": "duet-free",
      "of": "elements",
      "judge": 4,
      "marks": 3,
      "bias": "0.666667",
      "difference": "0.666667",
      "bias_low": "0.308112",
      "bias_high": "1.025221"
    },
    {
      "panel": "2026-05-09 Tarn Open",
      "event": "duet-free",
      "of": "elements",
      "judge": 5,
      "marks": 3,
      "bias": "0.416667",
      "difference": "0.416667",
      "bias_low": "-0.300442",
      "bias_high": "1.133775"
    }
  ]
}
=== exit 0
=== run for mark in 1 2 3 4 5; do echo 7; done | landdrill practice start club.season --name Robin --lines 5 --seed 4 --weak --event duet-free --from 2026-01-01 --until 2026-12-31 --colour never --new > second.txt; landdrill practice report club.season --name Robin --curve --colour never
=== output
Practice of Robin over time: the shorter the bar, the closer to the panel

   session               marks   bias   95 % interval   off  in a step
1  <time>      5  +0.28  -0.45 to +1.02  0.58        0 %  ======
2  <time>      4  -0.48  -1.18 to +0.23  0.52       25 %  =====
=== exit 0
=== run landdrill practice report club.season --name Robin --curve --format csv
=== output
trainee,started,marked,bias,difference,within_one,order,number
Robin,<time>,5,+0.28,0.58,0.00,0.00,1
Robin,<time>,4,-0.48,0.52,0.25,,2
=== exit 0
=== run landdrill practice start club.season --name Sam --lines 1 --seconds 1 --seed 1 < <(sleep 3)
=== output
1 of 1 line to mark. A mark, or b back, s skip, p pause, ? help.

1 of 1   Harbour Lights, 2026-05-09 Tarn Open
  3 Weathervane, hybrid, difficulty 3.30
  twist-full, leg-hold-8, spin-360, split-open
  your mark (1 s): 
  the time is up

Practice of Sam, <time>: 0 marked, 1 not

  - 0 marks: too few to say much; mark at least 5

Your marks beside the panel's
element        swum                          you  panel  judges
3 Weathervane  Harbour Lights,          too late   7.42  7.25 7.50 7.50 7.25
               2026-05-09 Tarn Open                      7.75
=== exit 0
