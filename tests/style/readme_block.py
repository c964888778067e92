#!/usr/bin/env python3
"""The list of commands in README.md is what `landdrill help --markdown` prints.

  readme_block.py --program build/landdrill           fails when it is not
  readme_block.py --program build/landdrill --write   writes it there
"""
import argparse
import pathlib
import re
import subprocess
import sys

README = pathlib.Path(__file__).resolve().parents[2] / "README.md"
BLOCK = re.compile(r"(<!-- commands: [^\n]*-->\n)(.*?)(<!-- end of commands -->)", re.S)


def main():
    parser = argparse.ArgumentParser()
    parser.add_argument("--program", required=True)
    parser.add_argument("--write", action="store_true")
    options = parser.parse_args()
    block = subprocess.run([options.program, "help", "--markdown"], capture_output=True, text=True, check=True).stdout
    before = README.read_text(encoding="utf-8")
    if not BLOCK.search(before):
        sys.exit("README.md has no place for the list of commands")
    after = BLOCK.sub(lambda found: found.group(1) + "\n" + block + "\n" + found.group(3), before)
    if options.write:
        README.write_text(after, encoding="utf-8")
    elif after != before:
        sys.exit("README.md shows other commands than `landdrill help --markdown`: tests/style/readme_block.py --write")
    return 0


if __name__ == "__main__":
    sys.exit(main())
