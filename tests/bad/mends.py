#!/usr/bin/env python3
"""What a message offers to put in the place of what is underlined mends that very mistake, in every malformed sheet.

    mends.py --program build/landdrill
"""
import argparse
import json
import os
import pathlib
import subprocess
import sys
import tempfile

SHEETS = pathlib.Path(__file__).resolve().parent / "sheets"
LEAST = 20


def messages_of(program, folder, text):
    environment = {key: value for key, value in os.environ.items() if key != "LANDDRILL_VALUES"}
    with tempfile.NamedTemporaryFile(dir=folder, suffix=".sheet") as file:
        file.write(text)
        file.flush()
        done = subprocess.run([program, "check", "--format", "json", pathlib.Path(file.name).name], cwd=folder,
                              env=environment, capture_output=True, timeout=60, check=False)
    lines = done.stdout.decode("utf-8")
    try:
        sheets = [json.loads(lines)]
    except json.JSONDecodeError:
        sheets = [json.loads(line) for line in lines.splitlines()]
    return [message for sheet in sheets for message in sheet["messages"]]


def mended(text, fix):
    lines = text.decode("utf-8", "surrogateescape").split("\n")
    line, first = lines[fix["line"] - 1], fix["column"] - 1
    lines[fix["line"] - 1] = line[:first] + fix["replacement"] + line[first + fix["length"]:]
    return "\n".join(lines).encode("utf-8", "surrogateescape")


def key(message):
    return message["code"], message["line"], message["column"], message["found"]


def main():
    parser = argparse.ArgumentParser(description="Applies every mend that the malformed sheets are offered.")
    parser.add_argument("--program", default=pathlib.Path(__file__).resolve().parents[2] / "build" / "landdrill")
    program = pathlib.Path(parser.parse_args().program).resolve()
    offered = failed = 0
    for path in sorted(SHEETS.glob("*/*.sheet")):
        text = path.read_bytes()
        for message in messages_of(program, path.parent, text):
            if message["fix"] is None:
                continue
            offered += 1
            after = mended(text, message["fix"])
            if key(message) in [key(one) for one in messages_of(program, path.parent, after)]:
                failed += 1
                print(f"FAILED: {path.stem}: still {message['found']} with {message['fix']['replacement']}")
    print(f"{offered - failed} of {offered} mends take their message away")
    return 1 if failed or offered < LEAST else 0


if __name__ == "__main__":
    sys.exit(main())
