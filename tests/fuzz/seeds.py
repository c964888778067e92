#!/usr/bin/env python3
"""Writes the sheets that fuzzing starts from: seeds.py FOLDER. Examples of language.md, and the malformed sheets."""
import pathlib
import re
import shutil
import sys

root = pathlib.Path(__file__).resolve().parents[2]
folder = pathlib.Path(sys.argv[1])
folder.mkdir(parents=True, exist_ok=True)
language = (root / "grammar/language.md").read_text(encoding="utf-8")
for number, example in enumerate(re.findall(r"```sheet\S*\n(.*?)```", language, flags=re.S)):
    (folder / f"language-{number}.sheet").write_text(example, encoding="utf-8")
for sheet in (root / "tests/bad/sheets").rglob("*.sheet"):
    if sheet.stat().st_size < 4096:
        shutil.copy(sheet, folder / f"bad-{sheet.name}")
