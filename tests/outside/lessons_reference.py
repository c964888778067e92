#!/usr/bin/env python3
"""Runs lessons_reference.R and compares what it says with the kept file, number by number.

  lessons_reference.py lessons_reference.csv      exit 77 (not run) where R is not installed

Regenerate the kept file with: Rscript tests/outside/lessons_reference.R > tests/outside/lessons_reference.csv
"""
import pathlib
import shutil
import sys

sys.dont_write_bytecode = True  # the source tree stays as it is
from agreement_reference import compare  # noqa: E402

SCRIPT = pathlib.Path(__file__).with_suffix(".R")

if __name__ == "__main__":
    lacking = "R" if shutil.which("Rscript") is None else ""
    sys.exit(compare(SCRIPT, sys.argv[1], lacking, "apt-get install r-base-core"))
