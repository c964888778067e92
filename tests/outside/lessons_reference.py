#!/usr/bin/env python3
"""Runs lessons_reference.R and compares what it says with the kept file, number by number.

  lessons_reference.py lessons_reference.csv      exit 77 (not run) where R is not installed

Regenerate the kept file with: Rscript tests/outside/lessons_reference.R > tests/outside/lessons_reference.csv
"""
import pathlib
import shutil
import subprocess
import sys

sys.dont_write_bytecode = True  # the source tree stays as it is
from agreement_reference import NOT_RUN, same  # noqa: E402

SCRIPT = pathlib.Path(__file__).with_suffix(".R")


def main():
    if shutil.which("Rscript") is None:
        print("NOT RUN: the reference values were not made again, R is not installed (apt-get install r-base-core)")
        return NOT_RUN
    fresh = subprocess.run(["Rscript", str(SCRIPT)], capture_output=True, text=True, check=True).stdout.splitlines()
    kept = pathlib.Path(sys.argv[1]).read_text().splitlines()
    differences = [f"line {i}: kept {a!r}, R says {b!r}"
                   for i, (a, b) in enumerate(zip(kept, fresh), 1) if not same(a, b)]
    if len(kept) != len(fresh):
        differences.append(f"{len(kept)} lines are kept, R says {len(fresh)}")
    print("\n".join(differences[:20]) if differences else f"{len(kept)} lines are what R says")
    return 1 if differences else 0


if __name__ == "__main__":
    sys.exit(main())
