"""Lays what R found about the season's judges beside what `book judges --format csv` says; ends with 1 where they differ.

  landdrill book judges club.season --format csv | same_agreement.py r/agreement.csv
"""
import csv
import sys

NAMES = ["alpha_interval", "icc(2,1)", "w", "spearman", "kendall", "kappa", "bias"]
theirs = {}
with open(sys.argv[1], newline="") as file:
    for row in list(csv.reader(file))[1:]:
        theirs[row[0]] = ([float(x) for x in row[1:8]], [float(x) for x in row[8:15]])
ours = {}
for row in csv.DictReader(sys.stdin):
    if row["kind"] not in NAMES and row["number"] not in NAMES:
        continue
    if (row["judge"], row["other"]) not in (("", ""), ("1", "2"), ("1", "")) or row["kind"]:
        continue
    marked = 0 if row["marked"] == "Execution" else 1
    ours.setdefault(row["date"] + " " + row["meet"], {}).setdefault((marked, row["number"]), row["value"])
compared = worst = 0
for meet, views in theirs.items():
    for marked, numbers in enumerate(views):
        for name, number in zip(NAMES, numbers):
            worst = max(worst, abs(float(ours[meet][marked, name]) - number))
            compared += 1
print(f"  {compared} numbers of {len(theirs)} meets agree to {worst:.1e}")
sys.exit(0 if compared and worst < 2e-6 else 1)
