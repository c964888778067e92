Another program reads the score: amounts are strings, so that they stay exact.

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
panel 2026-05-09 "Tarn Open"
  element 1: 7 7.25 7 7 7
  element 2: 7 7 7 7 7
  element 3: 6.5 6.75 7 7 7
  element 4: 8 7 7 7 7
=== run landdrill score ada.sheet --format json
=== output
{
  "format": 1,
  "report": "score",
  "file": "ada.sheet",
  "routine": "Ada",
  "event": "Figure evening",
  "values": {
    "set": "Kingfisher club league",
    "edition": "2026",
    "rows_used": {
      "invented": [
        "panels figure-evening execution",
        "kinds figure",
        "parts fig-heron",
        "parts fig-otter",
        "parts fig-reed",
        "parts fig-weir"
      ]
    }
  },
  "panel": "2026-05-09 Tarn Open",
  "total": "70.0000",
  "recorded_total": "69.8205",
  "difference": "-0.1795",
  "announced": null,
  "announced_difference": null,
  "so_far": "70.0000",
  "recorded_so_far": "69.8205",
  "declared": "6.50",
  "credited": "6.50",
  "recorded_credited": "6.50",
  "elements": [
    {
      "number": 1,
      "title": "Heron",
      "kind": "Figure",
      "option": null,
      "declared": "1.60",
      "credited": "1.60",
      "base_mark": false,
      "mark": "7.00",
      "points": null,
      "left": "7.3846",
      "rests_on": "expected",
      "recorded_credited": "1.60",
      "recorded_base_mark": false,
      "recorded_mark": "7.00",
      "recorded_points": null,
      "difference": null,
      "worst": false
    },
    {
      "number": 2,
      "title": "Otter",
      "kind": "Figure",
      "option": null,
      "declared": "1.20",
      "credited": "1.20",
      "base_mark": false,
      "mark": "7.00",
      "points": null,
      "left": "5.5385",
      "rests_on": "expected",
      "recorded_credited": "1.20",
      "recorded_base_mark": false,
      "recorded_mark": "7.00",
      "recorded_points": null,
      "difference": null,
      "worst": false
    },
    {
      "number": 3,
      "title": "Reed",
      "kind": "Figure",
      "option": null,
      "declared": "1.40",
      "credited": "1.40",
      "base_mark": false,
      "mark": "7.00",
      "points": null,
      "left": "6.4615",
      "rests_on": "expected",
      "recorded_credited": "1.40",
      "recorded_base_mark": false,
      "recorded_mark": "6.9167",
      "recorded_points": null,
      "difference": null,
      "worst": true
    },
    {
      "number": 4,
      "title": "Weir",
      "kind": "Figure",
      "option": null,
      "declared": "2.30",
      "credited": "2.30",
      "base_mark": false,
      "mark": "7.00",
      "points": null,
      "left": "10.6154",
      "rests_on": "expected",
      "recorded_credited": "2.30",
      "recorded_base_mark": false,
      "recorded_mark": "7.00",
      "recorded_points": null,
      "difference": null,
      "worst": false
    }
  ],
  "elements_together": {
    "estimate": "70.0000",
    "recorded": "69.8205",
    "difference": "-0.1795"
  },
  "impression": [],
  "sync": {
    "estimate": null,
    "recorded": null,
    "difference": null
  },
  "penalties": {
    "estimate": null,
    "recorded": null,
    "difference": null
  },
  "panel_marks": [
    {
      "line": "1 Heron",
      "judge": 1,
      "mark": "7.00",
      "state": "dropped as lowest",
      "filled": false
    },
    {
      "line": "1 Heron",
      "judge": 2,
      "mark": "7.25",
      "state": "dropped as highest",
      "filled": false
    },
    {
      "line": "1 Heron",
      "judge": 3,
      "mark": "7.00",
      "state": "kept",
      "filled": false
    },
    {
      "line": "1 Heron",
      "judge": 4,
      "mark": "7.00",
      "state": "kept",
      "filled": false
    },
    {
      "line": "1 Heron",
      "judge": 5,
      "mark": "7.00",
      "state": "kept",
      "filled": false
    },
    {
      "line": "2 Otter",
      "judge": 1,
      "mark": "7.00",
      "state": "dropped as lowest",
      "filled": false
    },
    {
      "line": "2 Otter",
      "judge": 2,
      "mark": "7.00",
      "state": "kept",
      "filled": false
    },
    {
      "line": "2 Otter",
      "judge": 3,
      "mark": "7.00",
      "state": "kept",
      "filled": false
    },
    {
      "line": "2 Otter",
      "judge": 4,
      "mark": "7.00",
      "state": "kept",
      "filled": false
    },
    {
      "line": "2 Otter",
      "judge": 5,
      "mark": "7.00",
      "state": "dropped as highest",
      "filled": false
    },
    {
      "line": "3 Reed",
      "judge": 1,
      "mark": "6.50",
      "state": "dropped as lowest",
      "filled": false
    },
    {
      "line": "3 Reed",
      "judge": 2,
      "mark": "6.75",
      "state": "kept",
      "filled": false
    },
    {
      "line": "3 Reed",
      "judge": 3,
      "mark": "7.00",
      "state": "kept",
      "filled": false
    },
    {
      "line": "3 Reed",
      "judge": 4,
      "mark": "7.00",
      "state": "kept",
      "filled": false
    },
    {
      "line": "3 Reed",
      "judge": 5,
      "mark": "7.00",
      "state": "dropped as highest",
      "filled": false
    },
    {
      "line": "4 Weir",
      "judge": 1,
      "mark": "8.00",
      "state": "dropped as highest",
      "filled": false
    },
    {
      "line": "4 Weir",
      "judge": 2,
      "mark": "7.00",
      "state": "dropped as lowest",
      "filled": false
    },
    {
      "line": "4 Weir",
      "judge": 3,
      "mark": "7.00",
      "state": "kept",
      "filled": false
    },
    {
      "line": "4 Weir",
      "judge": 4,
      "mark": "7.00",
      "state": "kept",
      "filled": false
    },
    {
      "line": "4 Weir",
      "judge": 5,
      "mark": "7.00",
      "state": "kept",
      "filled": false
    }
  ],
  "total_expected": "70.0000",
  "missing": [],
  "bridge": {
    "from": "70",
    "to": "69.8205",
    "steps": [
      {
        "cause": "execution",
        "element": 3,
        "label": "3 Reed",
        "before": "7.0000",
        "after": "6.9167",
        "change": "-0.1795",
        "reached": "69.8205"
      }
    ],
    "by_cause": {
      "difficulty": "0",
      "execution": "-0.1795",
      "impression": "0",
      "sync": "0",
      "penalty": "0"
    }
  },
  "objections": {
    "errors": 0,
    "warnings": 0,
    "doubts": 0,
    "messages": []
  },
  "time": {
    "counts": 0,
    "under_counts": 0,
    "longest_under_counts": 0,
    "seconds": null,
    "under_seconds": null,
    "longest_under_seconds": null,
    "under_per_cent": null,
    "longest_starts_at": 0,
    "items": [
      {
        "element": 1,
        "counts": 0,
        "under_counts": 0,
        "seconds": null,
        "under_seconds": null
      },
      {
        "element": 2,
        "counts": 0,
        "under_counts": 0,
        "seconds": null,
        "under_seconds": null
      },
      {
        "element": 3,
        "counts": 0,
        "under_counts": 0,
        "seconds": null,
        "under_seconds": null
      },
      {
        "element": 4,
        "counts": 0,
        "under_counts": 0,
        "seconds": null,
        "under_seconds": null
      }
    ]
  },
  "cautions": [],
  "estimate_build_up": {
    "what": "total",
    "path": "total",
    "label": "Total",
    "rule": "70.0000",
    "value": "70.0000",
    "remark": null,
    "rows": [],
    "below": [
      {
        "what": "element",
        "path": "element 1",
        "label": "Heron",
        "rule": "(21 / 3) x 1.60, weighed with the others",
        "value": null,
        "remark": null,
        "rows": [
          {
            "table": "panels",
            "row": "figure-evening execution",
            "line": 29,
            "status": "invented",
            "source": "invented for the Kingfisher demo league"
          }
        ],
        "below": [
          {
            "what": "difficulty",
            "path": "element 1 difficulty",
            "label": "declared difficulty",
            "rule": "sum(parts) = 1.6",
            "value": "1.60",
            "remark": null,
            "rows": [
              {
                "table": "kinds",
                "row": "figure",
                "line": 3,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "part",
                "path": "element 1 fig-heron",
                "label": "fig-heron",
                "rule": null,
                "value": "1.60",
                "remark": "Heron: one leg raised, bent and stretched again",
                "rows": [
                  {
                    "table": "parts",
                    "row": "fig-heron",
                    "line": 79,
                    "status": "invented",
                    "source": "invented for the Kingfisher demo league"
                  }
                ],
                "below": []
              }
            ]
          },
          {
            "what": "mark",
            "path": "element 1 mark",
            "label": "mark",
            "rule": null,
            "value": "7.00",
            "remark": "expected on the sheet",
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          },
          {
            "what": "weight",
            "path": "element 1 weight",
            "label": "weight",
            "rule": null,
            "value": "10",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          }
        ]
      },
      {
        "what": "element",
        "path": "element 2",
        "label": "Otter",
        "rule": "(21 / 3) x 1.20, weighed with the others",
        "value": null,
        "remark": null,
        "rows": [
          {
            "table": "panels",
            "row": "figure-evening execution",
            "line": 29,
            "status": "invented",
            "source": "invented for the Kingfisher demo league"
          }
        ],
        "below": [
          {
            "what": "difficulty",
            "path": "element 2 difficulty",
            "label": "declared difficulty",
            "rule": "sum(parts) = 1.2",
            "value": "1.20",
            "remark": null,
            "rows": [
              {
                "table": "kinds",
                "row": "figure",
                "line": 3,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "part",
                "path": "element 2 fig-otter",
                "label": "fig-otter",
                "rule": null,
                "value": "1.20",
                "remark": "Otter: tuck turn backwards and lay out",
                "rows": [
                  {
                    "table": "parts",
                    "row": "fig-otter",
                    "line": 80,
                    "status": "invented",
                    "source": "invented for the Kingfisher demo league"
                  }
                ],
                "below": []
              }
            ]
          },
          {
            "what": "mark",
            "path": "element 2 mark",
            "label": "mark",
            "rule": null,
            "value": "7.00",
            "remark": "expected on the sheet",
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          },
          {
            "what": "weight",
            "path": "element 2 weight",
            "label": "weight",
            "rule": null,
            "value": "10",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          }
        ]
      },
      {
        "what": "element",
        "path": "element 3",
        "label": "Reed",
        "rule": "(21 / 3) x 1.40, weighed with the others",
        "value": null,
        "remark": null,
        "rows": [
          {
            "table": "panels",
            "row": "figure-evening execution",
            "line": 29,
            "status": "invented",
            "source": "invented for the Kingfisher demo league"
          }
        ],
        "below": [
          {
            "what": "difficulty",
            "path": "element 3 difficulty",
            "label": "declared difficulty",
            "rule": "sum(parts) = 1.4",
            "value": "1.40",
            "remark": null,
            "rows": [
              {
                "table": "kinds",
                "row": "figure",
                "line": 3,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "part",
                "path": "element 3 fig-reed",
                "label": "fig-reed",
                "rule": null,
                "value": "1.40",
                "remark": "Reed: one leg raised and lowered on the back",
                "rows": [
                  {
                    "table": "parts",
                    "row": "fig-reed",
                    "line": 78,
                    "status": "invented",
                    "source": "invented for the Kingfisher demo league"
                  }
                ],
                "below": []
              }
            ]
          },
          {
            "what": "mark",
            "path": "element 3 mark",
            "label": "mark",
            "rule": null,
            "value": "7.00",
            "remark": "expected on the sheet",
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          },
          {
            "what": "weight",
            "path": "element 3 weight",
            "label": "weight",
            "rule": null,
            "value": "10",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          }
        ]
      },
      {
        "what": "element",
        "path": "element 4",
        "label": "Weir",
        "rule": "(21 / 3) x 2.30, weighed with the others",
        "value": null,
        "remark": null,
        "rows": [
          {
            "table": "panels",
            "row": "figure-evening execution",
            "line": 29,
            "status": "invented",
            "source": "invented for the Kingfisher demo league"
          }
        ],
        "below": [
          {
            "what": "difficulty",
            "path": "element 4 difficulty",
            "label": "declared difficulty",
            "rule": "sum(parts) = 2.3",
            "value": "2.30",
            "remark": null,
            "rows": [
              {
                "table": "kinds",
                "row": "figure",
                "line": 3,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "part",
                "path": "element 4 fig-weir",
                "label": "fig-weir",
                "rule": null,
                "value": "2.30",
                "remark": "Weir: split, walk out over the back",
                "rows": [
                  {
                    "table": "parts",
                    "row": "fig-weir",
                    "line": 86,
                    "status": "invented",
                    "source": "invented for the Kingfisher demo league"
                  }
                ],
                "below": []
              }
            ]
          },
          {
            "what": "mark",
            "path": "element 4 mark",
            "label": "mark",
            "rule": null,
            "value": "7.00",
            "remark": "expected on the sheet",
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          },
          {
            "what": "weight",
            "path": "element 4 weight",
            "label": "weight",
            "rule": null,
            "value": "10",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          }
        ]
      },
      {
        "what": "weighted",
        "path": "elements",
        "label": "Elements together",
        "rule": "((21 / 3) x 1.6 + (21 / 3) x 1.2 + (21 / 3) x 1.4 + (21 / 3) x 2.3) / (1.6 + 1.2 + 1.4 + 2.3) x 10, rounded half-up to 4 places",
        "value": "70.0000",
        "remark": null,
        "rows": [
          {
            "table": "panels",
            "row": "figure-evening execution",
            "line": 29,
            "status": "invented",
            "source": "invented for the Kingfisher demo league"
          }
        ],
        "below": []
      }
    ]
  },
  "recorded_build_up": {
    "what": "total",
    "path": "total",
    "label": "Total",
    "rule": "69.8205",
    "value": "69.8205",
    "remark": null,
    "rows": [],
    "below": [
      {
        "what": "element",
        "path": "element 1",
        "label": "Heron",
        "rule": "(21 / 3) x 1.60, weighed with the others",
        "value": null,
        "remark": null,
        "rows": [
          {
            "table": "panels",
            "row": "figure-evening execution",
            "line": 29,
            "status": "invented",
            "source": "invented for the Kingfisher demo league"
          }
        ],
        "below": [
          {
            "what": "difficulty",
            "path": "element 1 difficulty",
            "label": "declared difficulty",
            "rule": "sum(parts) = 1.6",
            "value": "1.60",
            "remark": null,
            "rows": [
              {
                "table": "kinds",
                "row": "figure",
                "line": 3,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "part",
                "path": "element 1 fig-heron",
                "label": "fig-heron",
                "rule": null,
                "value": "1.60",
                "remark": "Heron: one leg raised, bent and stretched again",
                "rows": [
                  {
                    "table": "parts",
                    "row": "fig-heron",
                    "line": 79,
                    "status": "invented",
                    "source": "invented for the Kingfisher demo league"
                  }
                ],
                "below": []
              }
            ]
          },
          {
            "what": "mark",
            "path": "element 1 mark",
            "label": "mark",
            "rule": "mean of 3 kept marks: 21.00 / 3",
            "value": "7.00",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "judge",
                "path": "element 1 judge 1",
                "label": "judge 1",
                "rule": null,
                "value": "7.00",
                "remark": "dropped: lowest",
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 1 judge 2",
                "label": "judge 2",
                "rule": null,
                "value": "7.25",
                "remark": "dropped: highest",
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 1 judge 3",
                "label": "judge 3",
                "rule": null,
                "value": "7.00",
                "remark": null,
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 1 judge 4",
                "label": "judge 4",
                "rule": null,
                "value": "7.00",
                "remark": null,
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 1 judge 5",
                "label": "judge 5",
                "rule": null,
                "value": "7.00",
                "remark": null,
                "rows": [],
                "below": []
              }
            ]
          },
          {
            "what": "weight",
            "path": "element 1 weight",
            "label": "weight",
            "rule": null,
            "value": "10",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          }
        ]
      },
      {
        "what": "element",
        "path": "element 2",
        "label": "Otter",
        "rule": "(21 / 3) x 1.20, weighed with the others",
        "value": null,
        "remark": null,
        "rows": [
          {
            "table": "panels",
            "row": "figure-evening execution",
            "line": 29,
            "status": "invented",
            "source": "invented for the Kingfisher demo league"
          }
        ],
        "below": [
          {
            "what": "difficulty",
            "path": "element 2 difficulty",
            "label": "declared difficulty",
            "rule": "sum(parts) = 1.2",
            "value": "1.20",
            "remark": null,
            "rows": [
              {
                "table": "kinds",
                "row": "figure",
                "line": 3,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "part",
                "path": "element 2 fig-otter",
                "label": "fig-otter",
                "rule": null,
                "value": "1.20",
                "remark": "Otter: tuck turn backwards and lay out",
                "rows": [
                  {
                    "table": "parts",
                    "row": "fig-otter",
                    "line": 80,
                    "status": "invented",
                    "source": "invented for the Kingfisher demo league"
                  }
                ],
                "below": []
              }
            ]
          },
          {
            "what": "mark",
            "path": "element 2 mark",
            "label": "mark",
            "rule": "mean of 3 kept marks: 21.00 / 3",
            "value": "7.00",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "judge",
                "path": "element 2 judge 1",
                "label": "judge 1",
                "rule": null,
                "value": "7.00",
                "remark": "dropped: lowest",
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 2 judge 2",
                "label": "judge 2",
                "rule": null,
                "value": "7.00",
                "remark": null,
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 2 judge 3",
                "label": "judge 3",
                "rule": null,
                "value": "7.00",
                "remark": null,
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 2 judge 4",
                "label": "judge 4",
                "rule": null,
                "value": "7.00",
                "remark": null,
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 2 judge 5",
                "label": "judge 5",
                "rule": null,
                "value": "7.00",
                "remark": "dropped: highest",
                "rows": [],
                "below": []
              }
            ]
          },
          {
            "what": "weight",
            "path": "element 2 weight",
            "label": "weight",
            "rule": null,
            "value": "10",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          }
        ]
      },
      {
        "what": "element",
        "path": "element 3",
        "label": "Reed",
        "rule": "(20.75 / 3) x 1.40, weighed with the others",
        "value": null,
        "remark": null,
        "rows": [
          {
            "table": "panels",
            "row": "figure-evening execution",
            "line": 29,
            "status": "invented",
            "source": "invented for the Kingfisher demo league"
          }
        ],
        "below": [
          {
            "what": "difficulty",
            "path": "element 3 difficulty",
            "label": "declared difficulty",
            "rule": "sum(parts) = 1.4",
            "value": "1.40",
            "remark": null,
            "rows": [
              {
                "table": "kinds",
                "row": "figure",
                "line": 3,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "part",
                "path": "element 3 fig-reed",
                "label": "fig-reed",
                "rule": null,
                "value": "1.40",
                "remark": "Reed: one leg raised and lowered on the back",
                "rows": [
                  {
                    "table": "parts",
                    "row": "fig-reed",
                    "line": 78,
                    "status": "invented",
                    "source": "invented for the Kingfisher demo league"
                  }
                ],
                "below": []
              }
            ]
          },
          {
            "what": "mark",
            "path": "element 3 mark",
            "label": "mark",
            "rule": "mean of 3 kept marks: 20.75 / 3",
            "value": "6.9167",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "judge",
                "path": "element 3 judge 1",
                "label": "judge 1",
                "rule": null,
                "value": "6.50",
                "remark": "dropped: lowest",
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 3 judge 2",
                "label": "judge 2",
                "rule": null,
                "value": "6.75",
                "remark": null,
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 3 judge 3",
                "label": "judge 3",
                "rule": null,
                "value": "7.00",
                "remark": null,
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 3 judge 4",
                "label": "judge 4",
                "rule": null,
                "value": "7.00",
                "remark": null,
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 3 judge 5",
                "label": "judge 5",
                "rule": null,
                "value": "7.00",
                "remark": "dropped: highest",
                "rows": [],
                "below": []
              }
            ]
          },
          {
            "what": "weight",
            "path": "element 3 weight",
            "label": "weight",
            "rule": null,
            "value": "10",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          }
        ]
      },
      {
        "what": "element",
        "path": "element 4",
        "label": "Weir",
        "rule": "(21 / 3) x 2.30, weighed with the others",
        "value": null,
        "remark": null,
        "rows": [
          {
            "table": "panels",
            "row": "figure-evening execution",
            "line": 29,
            "status": "invented",
            "source": "invented for the Kingfisher demo league"
          }
        ],
        "below": [
          {
            "what": "difficulty",
            "path": "element 4 difficulty",
            "label": "declared difficulty",
            "rule": "sum(parts) = 2.3",
            "value": "2.30",
            "remark": null,
            "rows": [
              {
                "table": "kinds",
                "row": "figure",
                "line": 3,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "part",
                "path": "element 4 fig-weir",
                "label": "fig-weir",
                "rule": null,
                "value": "2.30",
                "remark": "Weir: split, walk out over the back",
                "rows": [
                  {
                    "table": "parts",
                    "row": "fig-weir",
                    "line": 86,
                    "status": "invented",
                    "source": "invented for the Kingfisher demo league"
                  }
                ],
                "below": []
              }
            ]
          },
          {
            "what": "mark",
            "path": "element 4 mark",
            "label": "mark",
            "rule": "mean of 3 kept marks: 21.00 / 3",
            "value": "7.00",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": [
              {
                "what": "judge",
                "path": "element 4 judge 1",
                "label": "judge 1",
                "rule": null,
                "value": "8.00",
                "remark": "dropped: highest",
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 4 judge 2",
                "label": "judge 2",
                "rule": null,
                "value": "7.00",
                "remark": "dropped: lowest",
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 4 judge 3",
                "label": "judge 3",
                "rule": null,
                "value": "7.00",
                "remark": null,
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 4 judge 4",
                "label": "judge 4",
                "rule": null,
                "value": "7.00",
                "remark": null,
                "rows": [],
                "below": []
              },
              {
                "what": "judge",
                "path": "element 4 judge 5",
                "label": "judge 5",
                "rule": null,
                "value": "7.00",
                "remark": null,
                "rows": [],
                "below": []
              }
            ]
          },
          {
            "what": "weight",
            "path": "element 4 weight",
            "label": "weight",
            "rule": null,
            "value": "10",
            "remark": null,
            "rows": [
              {
                "table": "panels",
                "row": "figure-evening execution",
                "line": 29,
                "status": "invented",
                "source": "invented for the Kingfisher demo league"
              }
            ],
            "below": []
          }
        ]
      },
      {
        "what": "weighted",
        "path": "elements",
        "label": "Elements together",
        "rule": "((21 / 3) x 1.6 + (21 / 3) x 1.2 + (20.75 / 3) x 1.4 + (21 / 3) x 2.3) / (1.6 + 1.2 + 1.4 + 2.3) x 10, rounded half-up to 4 places",
        "value": "69.8205",
        "remark": null,
        "rows": [
          {
            "table": "panels",
            "row": "figure-evening execution",
            "line": 29,
            "status": "invented",
            "source": "invented for the Kingfisher demo league"
          }
        ],
        "below": []
      }
    ]
  },
  "values_place": {
    "name": "kingfisher-2026",
    "folder": "<repository>/tables/data/kingfisher-2026",
    "season": null,
    "hidden": []
  }
}
=== exit 0
