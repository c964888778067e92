#!/usr/bin/env python3
"""Lays the totals of a batch (CSV on standard input) beside those of other programs (sheet,estimate,recorded in
ten-thousandths) and says how many agree to the last place. Ends with 1 unless all of them do."""
import csv
import sys


def ten_thousandths(text):
    if not text:
        return ""
    whole, _, places = text.partition(".")
    return str(int(whole + places.ljust(4, "0")))


def main():
    ours = {}
    for row in csv.DictReader(sys.stdin):
        sheet = int(row["routine"].split()[-1])
        ours[sheet] = (ten_thousandths(row["estimate"]), ten_thousandths(row["recorded"]))
    all_agree = bool(ours)
    for name in sys.argv[1:]:
        with open(name, newline="", encoding="ascii") as file:
            theirs = {int(sheet): (estimate, recorded) for sheet, estimate, recorded in csv.reader(file)}
        agree = sum(ours.get(sheet) == totals for sheet, totals in theirs.items())
        print(f"  {name.rsplit('/', 1)[-1]}: {agree} of {len(ours)} sheets agree, estimate and recorded total")
        all_agree = all_agree and agree == len(ours) == len(theirs)
    return 0 if all_agree else 1


if __name__ == "__main__":
    sys.exit(main())
