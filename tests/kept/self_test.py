"""Checks that run.py fails where it must, and only there; called by `run.py --self`.

The sayings are checked on a small answer of their own; the rest on a copy of what is kept, in which something is changed.
"""
import os
import pathlib
import shutil
import subprocess
import sys
import tempfile

import run

HERE = pathlib.Path(__file__).resolve().parent
ASKED = ["score-old-machine.*", "book-score.csv", "values-show-set.csv", "tidy-old-machine.sheet"]
JSON = '{"total": "70.0000", "chance": "0.50342187654321", "lines": [{"mark": "7.50", "of": 5}]}'
WHERE = """Values from /club/pond-2026
There is another pond-2026, which does not count; --values FOLDER
chooses it:
  - /program/pond-2026
"""
SHEET = "element 1: 7.25 7.50\n"


def sayings():
    """What an answer says then and now, and whether that is the same."""
    yield "an added key is nothing", "a.json", JSON, JSON.replace("[{", '[{"new": 1, '), True
    yield "a key that went is noticed", "a.json", JSON, JSON.replace('"of": 5', '"off": 5'), False
    yield "another last digit is noticed", "a.json", JSON, JSON.replace("70.0000", "70.0001"), False
    yield "so is one digit fewer", "a.json", JSON, JSON.replace("70.0000", "70.000"), False
    yield "and a number in place of a text", "a.json", JSON, JSON.replace('"7.50"', "7.50"), False
    yield "another line is noticed", "a.json", JSON, JSON.replace("}]", "}, {}]"), False
    yield "the thirteenth digit of a chance is nothing", "a.json", JSON, JSON.replace("4321", "4389"), True
    yield "nor that it is left away", "a.json", JSON, JSON.replace("654321", "6543"), True
    yield "the eleventh is noticed", "a.json", JSON, JSON.replace("7654321", "7664321"), False
    yield "what is no JSON is noticed", "a.json", JSON, "exit 1\n", False
    yield "an added column is nothing", "a.csv", "code,value\na,0.5\n", "code,new,value\na,x,0.5\n", True
    yield "another value is noticed", "a.csv", "code,value\na,0.5\n", "code,value\na,0.50\n", False
    yield "another row is noticed", "a.csv", "code,value\na,0.5\n", "code,value\na,0.5\nb,\n", False
    yield "the width of a column is nothing", "a.txt", "total  70.0000\n", "total\n    70.0000\n", True
    yield "the folder of the values is nothing", "a.txt", "a 1\n=== exit 0\n", "a 1\n\n" + WHERE + "=== exit 0\n", True
    yield "a word behind it is noticed", "a.txt", "a 1\n=== exit 0\n", "a 1\n\n" + WHERE + "b\n=== exit 0\n", False
    yield "another word is noticed", "a.txt", "total  70.0000\n", "total  70.0001\n", False
    yield "the blanks in a sheet are nothing", "a.sheet", SHEET, "  " + SHEET.replace(": ", ":  "), True
    yield "its lines are not", "a.sheet", SHEET, SHEET.replace(": ", ":\n"), False


def rows():
    """A row of differs.md, what is said now, and whether that is the same."""
    yield "a row says of a value that it is another", ("a.json", 'total = "70.0000"', 'total = "70.1"'), JSON.replace("70.0000", "70.1"), True
    yield "and of no more than that value", ("a.json", 'total = "70.0000"', 'total = "70.1"'), JSON.replace("70.0000", "70.2"), False
    yield "a row renames a key", ("a.json", ".mark", ".given"), JSON.replace("mark", "given"), True
    yield "its value stays", ("a.json", ".mark", ".given"), JSON.replace("mark", "given").replace("7.50", "7.25"), False
    yield "a row lets a key go", ("a.json", ".of", "gone"), JSON.replace(', "of": 5', ""), True
    yield "a row is of no other answer", ("b*", ".of", "gone"), JSON.replace(', "of": 5', ""), False


class Small:
    """Something kept that is one answer."""

    def __init__(self, text):
        self.text = text

    def answer(self, _):
        return self.text


def same(name, then, now, table=()):
    return not run.differences(Small(then), name, table, now)


def saying_complaints():
    wrong = [what for what, name, then, now, is_same in sayings() if same(name, then, now) != is_same]
    for what, row, now, is_same in rows():
        table = [run.Row(*row, "0.3.0", "a test")]
        if same("a.json", JSON, now, table) != is_same:
            wrong.append(what)
    needless = run.Row("a.json", 'total = "70.0000"', 'total = "70.1"', "0.3.0", "a test")
    if run.needed(type("Kept", (Small,), {"rows": [needless]})(JSON), needless, {"a.json": JSON}):
        wrong.append("a row that is not needed is noticed")
    return wrong


# ---- with the program, on a copy of what is kept ----

def replace(path, old, new):
    text = path.read_text(encoding="utf-8")
    assert old in text, f"{path} has no {old}"
    path.write_text(text.replace(old, new, 1), encoding="utf-8")


def nothing(_):
    pass


def other_number(folder):
    replace(folder / "answers" / "score-old-machine.csv", "70.", "71.")


def other_word(folder):
    replace(folder / "answers" / "score-old-machine.txt", "Old Machine", "New Machine")


def needless_row(folder):
    with (folder / "differs.md").open("a", encoding="utf-8") as table:
        table.write("| `score-old-machine.*` | `nobody says this` | `nor this` | 0.3.0 | a test |\n")


def written_over(folder):
    folder.chmod(0o777)
    replace(folder / "asked.txt", "landdrill book score club.season --format csv", f"touch {folder}/club.season-journal; landdrill book score club.season --format csv")


def read_only(folder):
    for path in [*folder.rglob("*"), folder, folder.parent]:
        path.chmod(0o555 if path.is_dir() else 0o444)


def ordinary_user(program):
    """What makes a command that of somebody whom a read-only folder stops; nothing where that cannot be had."""
    prefix = "setpriv --reuid=65534 --regid=65534 --clear-groups".split() if os.geteuid() == 0 else []
    tries = [[*prefix, program, "--version"], [*prefix, sys.executable, "-B", HERE / "run.py", "--help"]]
    return prefix if all(subprocess.run(one, capture_output=True, check=False).returncode == 0 for one in tries) else []


def printed(program, change):
    """What the check prints of a copy of what is kept, after the change; nothing when it passes."""
    with tempfile.TemporaryDirectory(prefix="landdrill-kept-self-") as place:
        pathlib.Path(place).chmod(0o755)
        copy = pathlib.Path(place) / "kept"
        shutil.copytree(HERE, copy, ignore=shutil.ignore_patterns("__pycache__"))
        for asked in sorted(copy.glob("*/asked.txt")):
            change(asked.parent)
        command = [sys.executable, "-B", HERE / "run.py", "--kept", copy, "--program", program, *ASKED]
        done = subprocess.run([*ordinary_user(program), *command], capture_output=True, text=True, check=False)
    return done.stdout + done.stderr if done.returncode else ""


def copy_complaints(program):
    """Each change, and what the check has to say of it."""
    changes = [(nothing, ""), (read_only, ""), (other_number, "score-old-machine.csv is another answer now"),
               (other_word, "score-old-machine.txt is another answer now"), (needless_row, "a row that is not needed"),
               (written_over, "what is kept was written over")]
    for change, complaint in changes:
        found = printed(program, change)
        if complaint not in found or bool(complaint) != bool(found):
            yield f"{change.__name__}: expected {complaint or 'no complaint'}, found:\n{found}"


def main(program):
    wrong = [*saying_complaints(), *copy_complaints(program)]
    print("".join(f"FAILED: {what}\n" for what in wrong), end="")
    print(f"{len(list(sayings())) + len(list(rows())) + 8} checks of the check, {len(wrong)} failed")
    return 1 if wrong else 0
