#!/usr/bin/env python3
"""Writes what table_fuzz starts from: table_seeds.py FOLDER. The first byte says which part reads it (table_fuzz.cpp)."""
import pathlib
import sys

root = pathlib.Path(__file__).resolve().parents[2]
folder = pathlib.Path(sys.argv[1])
folder.mkdir(parents=True, exist_ok=True)

tables = ["set", "families", "parts", "kinds", "events", "quotas", "panels", "faults", "sync", "penalties"]
csv, formula, fill, load = 0, 1, 2, 3
formulas = ["base + sum(parts) + 0.1 * max(0, families - 2)", "-(1 - (2 - 3)) / min(1, count(spins), 2)",
            "round(sum(spins) / count(parts), 2)", "round(base / 7, 3, half-even)", "((((1))))", "1 / (base - 0.5)"]
lists = ["Code;Wert\r\nspin-720;0,9\r\n", "spin-720,0.9\n", "0.9\tspin-720", "code,value\nspin-720,0,9\n"]


def put(name, which, text):
    (folder / name).write_bytes(bytes([which]) + text)


for number, text in enumerate(formulas):
    put(f"formula-{number}", formula, text.encode())
for number, text in enumerate(lists):
    put(f"list-{number}", fill, text.encode())
for file in (root / "tests/bad/tables").glob("*/*.csv"):
    text = file.read_bytes()
    if len(text) < 4096 and file.stem in tables:
        put(f"{file.parent.name}-{file.stem}", load + tables.index(file.stem), text)
        put(f"{file.parent.name}-{file.stem}-csv", csv, text)
