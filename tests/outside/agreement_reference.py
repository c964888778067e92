#!/usr/bin/env python3
"""Runs agreement_reference.R and compares what it says with the kept file, number by number.

  agreement_reference.py agreement_reference.csv      exit 77 (not run) where R, psych or vcd are not installed

Regenerate the kept file with: Rscript tests/outside/agreement_reference.R > tests/outside/agreement_reference.csv
"""
import math
import pathlib
import shutil
import subprocess
import sys

NOT_RUN = 77
SCRIPT = pathlib.Path(__file__).with_suffix(".R")
INSTALL = "apt-get install r-base-core r-cran-psych r-cran-vcd"


def missing():
    """What R lacks, or ''."""
    if shutil.which("Rscript") is None:
        return "R"
    probe = 'for (p in c("psych", "vcd")) if (!requireNamespace(p, quietly = TRUE)) cat(p, "")'
    return subprocess.run(["Rscript", "-e", probe], capture_output=True, text=True, check=True).stdout.strip()


def same(kept, fresh):
    """Number by number: the last digits may differ between processors."""
    if kept == fresh:
        return True
    (*name, kept), (*other, fresh) = kept.split(","), fresh.split(",")
    kept, fresh = kept.split(), fresh.split()
    if name != other or len(kept) != len(fresh):
        return False
    return all(a == b or close(a, b) for a, b in zip(kept, fresh))


def close(kept, fresh):
    try:
        return math.isclose(float(kept), float(fresh), rel_tol=1e-9, abs_tol=1e-9)
    except ValueError:  # `-`: no number
        return False


def compare(script, kept_file, lacking, install):
    """What R says now against the kept file; the exit code."""
    if lacking:
        print(f"NOT RUN: the reference values were not made again, {lacking} is not installed ({install})")
        return NOT_RUN
    fresh = subprocess.run(["Rscript", str(script)], capture_output=True, text=True, check=True).stdout.splitlines()
    kept = pathlib.Path(kept_file).read_text().splitlines()
    differences = [f"line {i}: kept {a!r}, R says {b!r}"
                   for i, (a, b) in enumerate(zip(kept, fresh), 1) if not same(a, b)]
    if len(kept) != len(fresh):
        differences.append(f"{len(kept)} lines are kept, R says {len(fresh)}")
    print("\n".join(differences[:20]) if differences else f"{len(kept)} lines are what R says")
    return 1 if differences else 0


if __name__ == "__main__":
    sys.exit(compare(SCRIPT, sys.argv[1], missing(), INSTALL))
