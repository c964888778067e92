#!/usr/bin/env python3
"""Every malformed sheet of sheets/meaning gives exactly the message beside it, and holds one mistake.

    meaning.py --program build/landdrill                        all of them
    meaning.py --program build/landdrill --accept part-unknown  writes what is said now into that one message
"""
import argparse
import difflib
import os
import pathlib
import re
import subprocess
import sys

SHEETS = pathlib.Path(__file__).resolve().parent / "sheets" / "meaning"
COMPLAINT = re.compile(r"^\S+?:\d+:\d+: (?:error|warning): ", re.MULTILINE)
LEAST = 100


def said(program, name):
    environment = {key: value for key, value in os.environ.items() if key != "LANDDRILL_VALUES"}
    done = subprocess.run([program, "check", f"{name}.sheet"], cwd=SHEETS, env=environment, capture_output=True,
                          timeout=60, check=False)
    # Which sets come with the program is not the matter of these sheets.
    return re.sub(r"(the sets that were found: pond-2026), .*", r"\1, ...", done.stderr.decode("utf-8")), done.returncode


def wrong_with(message, code, expected):
    if code != 1:
        return f"ended with {code}, not 1\n"
    if len(COMPLAINT.findall(message)) != 1:
        return f"more or less than one mistake:\n{message}"
    difference = difflib.unified_diff(expected.splitlines(True), message.splitlines(True), "expected", "said now")
    return "".join(difference)


def main():
    parser = argparse.ArgumentParser(description="Runs the malformed sheets whose mistakes are of meaning.")
    parser.add_argument("--program", default=pathlib.Path(__file__).resolve().parents[2] / "build" / "landdrill")
    parser.add_argument("--accept", metavar="NAME")
    options = parser.parse_args()
    if options.accept and os.environ.get("CI") == "true":
        sys.exit("a message is accepted by somebody who read it, never by a machine")
    program = pathlib.Path(options.program).resolve()
    if options.accept:
        (SHEETS / f"{options.accept}.message").write_text(said(program, options.accept)[0], encoding="utf-8")
        return 0
    names = sorted(path.stem for path in SHEETS.glob("*.sheet"))
    failed = 0
    for name in names:
        path = SHEETS / f"{name}.message"
        fault = wrong_with(*said(program, name), path.read_text(encoding="utf-8") if path.exists() else "")
        if fault:
            failed += 1
            print(f"FAILED: {name}: {fault}")
    print(f"{len(names) - failed} of {len(names)} malformed sheets give their message")
    return 1 if failed or len(names) < LEAST else 0


if __name__ == "__main__":
    sys.exit(main())
