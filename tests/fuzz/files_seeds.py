#!/usr/bin/env python3
"""Writes what files_fuzz starts from: files_seeds.py FOLDER. Two files each, with a NUL byte between them: a sheet, and
the next one, whole or from its second line on."""
import pathlib
import sys

root = pathlib.Path(__file__).resolve().parents[2]
folder = pathlib.Path(sys.argv[1])
folder.mkdir(parents=True, exist_ok=True)
sheets = sorted(path for place in ("examples", "tests/bad/sheets") for path in (root / place).rglob("*.sheet"))
texts = [text for text in (path.read_bytes() for path in sheets) if len(text) < 2000]
for number, (one, other) in enumerate(zip(texts, texts[1:])):
    (folder / f"whole-{number}").write_bytes(one + b"\0" + other)
    (folder / f"cut-{number}").write_bytes(one + b"\0" + other.partition(b"\n")[2])
