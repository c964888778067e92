#!/usr/bin/env python3
"""Fails when a word of the table in DEVELOPERS.md (coach's word, file, function) does not lead to the line that decides it:
the file's name has to contain the word, and the file has to define the function.

  coach_words.py           check the tree
  coach_words.py --self    check that the check can fail
"""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
ROW = re.compile(r"^\| ([a-z ]+) \| `([\w./]+)` \| `(\w+)` \|$", re.M)
FEWEST = 5


def rows_of(text):
    return ROW.findall(text)


def defines(code, function):
    """At the beginning of a line, also as a member, with its body behind it: no call, no declaration."""
    return re.search(rf"^\w[\w:<>&*, ]*?[ :]{function}\([^;{{}}]*\{{", code, re.M) is not None


def complaints(rows, files):
    if len(rows) < FEWEST:
        yield f"found {len(rows)} words in DEVELOPERS.md: this check no longer understands the table"
    for word, path, function in rows:
        if word.replace(" ", "_") not in pathlib.PurePosixPath(path).stem:
            yield f"{word}: the name of {path} does not say it"
        if path not in files:
            yield f"{word}: there is no file {path}"
        elif not defines(files[path], function):
            yield f"{word}: {path} does not define {function}"


def read_files(rows):
    return {path: (ROOT / path).read_text(encoding="utf-8") for _, path, _ in rows if (ROOT / path).is_file()}


def self_check():
    table = "| coach's word | file | function |\n|---|---|---|\n| base mark | `a/base_mark.cpp` | `credit` |\n"
    row = rows_of(table)
    inside = "void credit(Shown& shown,\n            const Kind& kind) {\n}\n"
    good = [list(complaints(row * FEWEST, {"a/base_mark.cpp": code}))
            for code in (inside, "inline bool Mark::credit() const {\n}\n")]
    bad = [list(complaints(*case)) for case in (
        (row, {"a/base_mark.cpp": inside}), (row * FEWEST, {}),
        (row * FEWEST, {"a/base_mark.cpp": "void credit(Shown& shown);\nvoid other() {\n  credit(shown);\n}\n"}),
        ([("tie", "a/base_mark.cpp", "credit")] * FEWEST, {"a/base_mark.cpp": inside}))]
    ok = all(bad) and not any(good)
    print("coach_words: the check can fail" if ok else "coach_words: the check is broken")
    return 0 if ok else 1


def main():
    if "--self" in sys.argv:
        return self_check()
    rows = rows_of((ROOT / "DEVELOPERS.md").read_text(encoding="utf-8"))
    found = list(complaints(rows, read_files(rows)))
    print("\n".join(found) if found else f"coach_words: {len(rows)} words, each the name of the file that decides it")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
