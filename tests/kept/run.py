#!/usr/bin/env python3
"""Asks the program what earlier versions were asked, and compares its answers with those that they gave.

    run.py                           every question of every version that is kept here
    run.py book-score.txt 'plan-*'   some of them, also by a pattern
    run.py --then                    without differs.md: what the program of that version has to pass
    run.py --self                    checks that this check can fail, and where it must not

README.md says what is kept here, what counts as the same answer, and how to write down what differs on purpose.
"""
import argparse
import concurrent.futures
import csv
import difflib
import fnmatch
import hashlib
import io
import json
import os
import pathlib
import re
import subprocess
import sys
import tempfile
from decimal import Decimal, InvalidOperation
from typing import NamedTuple

HERE = pathlib.Path(__file__).resolve().parent
REPOSITORY = HERE.parent.parent
TIME = re.compile(r"20\d\d-\d\d-\d\d(?:T\d\d:\d\d:\d\dZ| \d\d:\d\d UTC)")
WHOLE = re.compile(r"\[.*\]\((.*)\)")
# The last words of a report, and `values_place` for programs, since 0.3.0: folders, and so another text on every
# machine.
WHERE_FROM = re.compile(r"^Values from .*\n(?:There (?:is|are) (?:another|others) .*\n(?:(?!===|  - ).*\n)*(?:  - .*\n)+)?", re.M)
SURE_DIGITS = 12  # of chances and statistics; what is exact never has more
NOUGHT = Decimal("1e-14")  # what a sum of them may leave where nothing should be left


class Row(NamedTuple):
    """A row of differs.md."""
    answers: str
    old: str
    new: str
    since: str
    why: str

    def concerns(self, name):
        return fnmatch.fnmatch(name, self.answers)


# ---- what an answer says, apart from its layout ----

def flat(place, value):
    """`lines[2].mark = "7.50"` for every value of a JSON document, and how many there are in each list."""
    if isinstance(value, dict):
        return [line for key, inner in value.items() if key != "values_place"
                for line in flat(f"{place}.{key}" if place else key, inner)]
    if isinstance(value, list):
        inner = [line for number, item in enumerate(value, 1) for line in flat(f"{place}[{number}]", item)]
        return [f"{place}[] = {len(value)}"] + inner
    if value is None:
        return [f"{place} = null"]
    return [f'{place} = "{value}"' if isinstance(value, str) and not isinstance(value, Digits) else f"{place} = {value}"]


class Digits(str):
    """A number of a JSON document, as it stands there."""


def rows_of(text):
    heading, *rows = list(csv.reader(io.StringIO(text))) or [[]]
    return [dict(zip(heading, (Digits(cell) for cell in row), strict=True)) for row in rows]


def said(name, text):
    """What an answer says, in order: lines `place = value`; of a sheet its lines; of a text one line of all words."""
    if name.endswith(".json"):
        return flat("", json.loads(text, parse_float=Digits, parse_int=Digits))
    if name.endswith(".csv"):
        return flat("", rows_of(text))
    if name.endswith(".sheet"):
        return [" ".join(line.split()) for line in text.splitlines()]
    return [" ".join(WHERE_FROM.sub("", text).split())]


def replaced(line, row):
    start = "" if row.old.startswith(".") else r"(?<!\S)"
    return re.sub(start + re.escape(row.old) + r"(?!\S)", lambda _: row.new, line)


def expected(kept, name, rows):
    """What the program should say now: what was said then, but for the rows."""
    lines = said(name, kept.answer(name))
    for row in rows:
        whole = WHOLE.fullmatch(row.new)
        if whole:
            lines = said(name, (kept.folder / whole.group(1)).read_text(encoding="utf-8"))
        elif row.new == "gone":
            lines = [line for line in lines if replaced(line, row) == line]
        else:
            lines = [replaced(line, row) for line in lines]
    return lines


# ---- when two answers are the same ----

def agree(old, new):
    """Exactly, or as far as the digits of a chance are sure."""
    if old == new:
        return True
    try:
        was, now = Decimal(old.strip('"')), Decimal(new.strip('"'))
    except InvalidOperation:
        return False
    if old.count('"') != new.count('"') or len(was.as_tuple().digits) <= SURE_DIGITS:
        return False
    return abs(was - now) <= max(Decimal(1).scaleb(was.adjusted() - SURE_DIGITS + 1), NOUGHT)


def differences(kept, name, rows, present):
    """Lines that tell what is another now; none when the answer is the same."""
    then = expected(kept, name, [row for row in rows if row.concerns(name)])
    try:
        now = said(name, present)
    except ValueError as trouble:
        return [f"{trouble}\n", present]
    if name.endswith((".txt", ".sheet")):
        return [] if then == now else list(difflib.unified_diff(in_pieces(then), in_pieces(now), "then", "now"))
    values = dict(line.split(" = ", 1) for line in now)
    return [f"- {line}\n+ {place} = {values[place]}\n" if place in values else f"- {line}\n"
            for line in then for place, value in [line.split(" = ", 1)]
            if place not in values or not agree(value, values[place])]


def in_pieces(lines):
    return [piece + "\n" for line in lines for piece in re.findall(r"\S+(?: \S+){,7}", line)]


# ---- what is kept ----

class Kept:
    """What one version left here."""

    def __init__(self, folder, rows=None):
        self.folder = folder
        self.questions = dict(line.split(None, 1) for line in (folder / "asked.txt").read_text(encoding="utf-8").splitlines()
                              if line and not line.startswith("#"))
        self.rows = read_rows(folder / "differs.md") if rows is None else rows
        self.copied = {path: content for path, content in self.files().items() if path.parts[0] not in ("answers", "differs")}
        season = self.copied[pathlib.Path("club.season")]
        self.times = {time.decode() for time in re.findall(TIME.pattern.encode(), season)}

    def answer(self, name):
        return (self.folder / "answers" / name).read_text(encoding="utf-8")

    def files(self):
        return {path.relative_to(self.folder): path.read_bytes() for path in self.folder.rglob("*") if path.is_file()}

    def digest(self):
        return hashlib.sha256(repr(sorted(self.files().items())).encode()).digest()

    def timeless(self, text):
        """Moments that are not kept are those of today."""
        def of_now(found):
            start = found.group().replace(" ", "T", 1).removesuffix(" UTC")
            return found.group() if any(time.startswith(start) for time in self.times) else "<now>"
        return TIME.sub(of_now, text)


def read_rows(path):
    rows = []
    for line in path.read_text(encoding="utf-8").splitlines():
        cells = [cell.strip().strip("`") for cell in line.strip("| ").split(" | ")]
        if line.startswith("| `") and len(cells) == 5:
            rows.append(Row(*cells))
        elif line.startswith("| `"):
            sys.exit(f"{path}: found {len(cells)} cells, expected 5: {line}")
    return rows


def ask(kept, program, name):
    """The answer to a question, asked in a copy of everything that may be written in."""
    with tempfile.TemporaryDirectory(prefix="landdrill-kept-") as place:
        for path, content in kept.copied.items():
            copy = pathlib.Path(place) / path
            copy.parent.mkdir(parents=True, exist_ok=True)
            copy.write_bytes(content)
        left_out = ("NO_COLOR", "COLUMNS", "CI")
        environment = {key: value for key, value in os.environ.items() if key not in left_out} | {
            "PATH": f"{program.parent}:{os.environ['PATH']}", "HOME": place, "LC_ALL": "C.UTF-8", "TERM": "dumb", "TZ": "UTC",
            "LANDDRILL_VALUES": "values", "LANDDRILL_TODAY": "2026-12-31"}
        done = subprocess.run(["bash", "-c", kept.questions[name]], cwd=place, env=environment, capture_output=True,
                              stdin=subprocess.DEVNULL, timeout=600, check=False)
    return kept.timeless(told(name, done))


def told(name, done):
    output, errors = (text.decode("utf-8", errors="backslashreplace") for text in (done.stdout, done.stderr))
    if name.endswith(".txt"):
        return output + (f"=== errors\n{errors}" if errors else "") + f"=== exit {done.returncode}\n"
    return output if done.returncode == 0 else f"exit {done.returncode}\n{output}{errors}"


# ---- the check ----

def check(kept, program, patterns):
    names = [name for name in kept.questions if any(fnmatch.fnmatch(name, pattern) for pattern in patterns)]
    before = kept.digest()
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        answers = dict(zip(names, pool.map(lambda name: ask(kept, program, name), names)))
    complaints = [f"{name} is another answer now, to: {kept.questions[name]}\n" + "".join(lines)
                  for name in names for lines in [differences(kept, name, kept.rows, answers[name])] if lines]
    complaints += [f"differs.md has a row that is not needed: {row.answers}: {row.old}\n" for row in kept.rows
                   if all(name in names for name in kept.questions if row.concerns(name)) and not needed(kept, row, answers)]
    if kept.digest() != before:
        complaints.append("what is kept was written over\n")
    print("".join(f"FAILED {kept.folder.name}: {complaint}" for complaint in complaints), end="")
    on_purpose = sum(bool(differences(kept, name, [], answers[name])) for name in names)
    print(f"{kept.folder.name}: {len(names)} answers, {on_purpose} of them another on purpose, {len(complaints)} complaints")
    return not complaints and bool(names)


def needed(kept, row, answers):
    others = [other for other in kept.rows if other is not row]
    return any(row.concerns(name) and differences(kept, name, others, answer) for name, answer in answers.items())


def main():
    parser = argparse.ArgumentParser(description="Compares the program's answers with those of earlier versions.")
    parser.add_argument("answers", nargs="*", default=["*"], help="their names, or patterns of them; all when none is given")
    parser.add_argument("--program", type=pathlib.Path, default=REPOSITORY / "build" / "landdrill")
    parser.add_argument("--kept", type=pathlib.Path, default=HERE, help="the folder with what is kept")
    parser.add_argument("--then", action="store_true", help="expect what was said then, whatever differs.md says")
    parser.add_argument("--self", action="store_true", help="check that this check can fail")
    options = parser.parse_args()
    program = options.program.resolve()
    if options.self:
        import self_test
        return self_test.main(program)
    folders = sorted(path.parent for path in options.kept.glob("*/asked.txt"))
    done = [check(Kept(folder, [] if options.then else None), program, options.answers) for folder in folders]
    return 0 if done and all(done) else 1


if __name__ == "__main__":
    sys.exit(main())
