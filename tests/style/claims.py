#!/usr/bin/env python3
"""Fails where a report claims something that no test or simulation holds.

  claims.py            every claiming sentence of the stories and of the kept answers stands in claims.csv, where a test
                       that is there holds it
  claims.py --self     check that the check can fail
  claims.py --list     the sentences that claim something, with how often they are said

A sentence claims something where one of the words below is in it. In claims.csv, `*` stands for whatever varies.
"""
import collections
import csv
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
CLAIMS = re.compile(
    r"\b(chance|times? in|per cent|likely|proved|clearly|higher|lower|better|best|interval|may be|usually|on average|"
    r"agree|rank|alike|scatters?|less than|more than|brings?|steady|steadier|closer|furthest)\b|%")
# What explains a word or a table, or repeats what was typed, claims nothing of a routine.
EXPLAINS = re.compile(
    r"^(values from|time: |how far judges' marks scatter:|chance of the base mark|sync errors expected|penalties expected|"
    r"lifts|throws|breath-hold)|^(?!to (reach|beat) )[a-z0-9(), -]+: |^deductions are taken", re.I)
TEST = re.compile(r"^(?:TEST|TEST_P|TEST_F|RC_GTEST_PROP)\(\s*(\w+)\s*,\s*(\w+)", re.M)
CTEST = re.compile(r"add_test\(NAME (\S+)")


def outputs():
    """(name, text) of everything that a person was shown."""
    for story in sorted((ROOT / "tests/golden").glob("*.story")):
        for part in re.split(r"^=== ", story.read_text(errors="replace"), flags=re.M):
            head, _, body = part.partition("\n")
            if head.startswith("output"):
                yield story.name, body


def sentences(text):
    """Bullets and paragraphs, each line joined, cut into sentences; no tables."""
    units, now = [], None
    for line in text.splitlines() + [""]:
        bullet = re.match(r"^ *- (.*)$", line)
        if bullet or not line.strip() or re.search(r"\S {2,}\S", line):
            units.append(now)
            now = bullet.group(1) if bullet else None
        else:
            now = line.strip() if now is None else now + " " + line.strip()
    for unit in filter(None, units):
        if unit.startswith(("{", "}", "[", '"')):
            continue
        for sentence in re.split(r"(?<=[.:]) (?=[A-Z])", unit):
            if sentence.endswith("."):
                yield sentence


def claiming():
    said = collections.defaultdict(list)
    for name, text in outputs():
        for sentence in sentences(text):
            if CLAIMS.search(sentence) and not EXPLAINS.search(sentence):
                said[sentence].append(name)
    return said


def as_pattern(sentence):
    return re.compile("^" + ".*".join(re.escape(piece) for piece in sentence.split("*")) + "$")


def tests():
    names = set()
    for path in (ROOT / "tests").rglob("*.cpp"):
        names |= {f"{suite}.{name}" for suite, name in TEST.findall(path.read_text(errors="replace"))}
    for path in (ROOT / "tests").rglob("CMakeLists.txt"):
        names |= set(CTEST.findall(path.read_text()))
    return names


def complaints(said, rows, known):
    patterns = [(as_pattern(row["sentence"]), row) for row in rows]
    for sentence in sorted(said):
        if not any(pattern.match(sentence) for pattern, _ in patterns):
            yield f"{said[sentence][0]}: nothing in claims.csv holds: {sentence}"
    for row in rows:
        for test in row["held by"].split():
            if test not in known:
                yield f"claims.csv: {test} is no test: {row['sentence']}"


def main(arguments):
    said = claiming()
    if "--list" in arguments:
        for sentence, names in sorted(said.items()):
            print(len(names), sentence)
        return 0
    with open(ROOT / "tests/style/claims.csv", newline="") as file:
        rows = list(csv.DictReader(file))
    known = tests()
    if "--self" in arguments:
        some = dict(list(said.items())[:3])
        some["Judge 7 is better than all."] = ["made-up.story"]
        broken = list(complaints(some, rows + [{"sentence": "x", "held by": "No.Test"}], known))
        return 0 if len(broken) == 2 else 1
    found = list(complaints(said, rows, known))
    print("\n".join(found) if found else f"claims: {len(said)} sentences, each held by a test")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
