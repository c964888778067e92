#!/usr/bin/env python3
"""Fails when the program is no C++20 to another compiler than the one that built it.

  other_compiler.py BUILD [COMPILER]     check what BUILD/compile_commands.json compiles of the program; clang++ unless said
  other_compiler.py --self [COMPILER]    check that the check can fail
"""
import concurrent.futures
import json
import os
import pathlib
import shlex
import subprocess
import sys
import tempfile

ROOT = pathlib.Path(__file__).resolve().parents[2]
# What the other compiler need not know: how to optimise, where the answer goes, which compiler caches it.
WITH_VALUE = ("-o", "-MF", "-MT", "-MQ")


def arguments(command):
    """The same command line, from its first option on, for the language alone."""
    words = shlex.split(command)
    words = words[next(i for i, word in enumerate(words) if word.startswith(("-D", "-I"))):]
    kept, skip = [], False
    for word in words:
        if not skip and word not in WITH_VALUE and word not in ("-c", "-MD") and not word.startswith(("-O", "-f", "-W")):
            kept.append(word)
        skip = word in WITH_VALUE
    return kept + ["-fsyntax-only", "-Werror"]


def complaint(compiler, entry):
    found = subprocess.run([compiler, *arguments(entry["command"])], cwd=entry["directory"], capture_output=True, text=True)
    return "" if found.returncode == 0 else f"{entry['file']}:\n{found.stderr[:4000]}"


def complaints(compiler, entries):
    with concurrent.futures.ThreadPoolExecutor(os.cpu_count()) as pool:
        return [text for text in pool.map(lambda entry: complaint(compiler, entry), entries) if text]


def of_program(entry, build):
    """Whether it is of the rooms, by its path in the tree or in the build folder."""
    path = pathlib.Path(entry["file"])
    for base in (build, ROOT):
        if path.is_relative_to(base):
            return path.relative_to(base).parts[0] in ("grammar", "tables", "engine")
    return False


def self_check(compiler):
    with tempfile.TemporaryDirectory() as folder:
        def entry(name, text):
            path = pathlib.Path(folder, name)
            path.write_text(text, encoding="utf-8")
            return {"directory": folder, "file": str(path), "command": f"g++ -I. -O2 -std=c++20 -o a.o -c {path}"}
        good = entry("good.cpp", "struct Mark { int tenths = 0; };\nMark mark{72};\n")
        bad = entry("bad.cpp", "void f() { auto [a, b] = (int[2]){1, 2}; [a] {}(); return 1; }\n")
        ok = not complaints(compiler, [good]) and complaints(compiler, [good, bad])
    print("other_compiler: the check can fail" if ok else "other_compiler: the check is broken")
    return 0 if ok else 1


def main():
    words = sys.argv[1:]
    compiler = words[1] if len(words) > 1 else "clang++"
    if words[0] == "--self":
        return self_check(compiler)
    build = pathlib.Path(words[0]).resolve()
    entries = json.loads((build / "compile_commands.json").read_text(encoding="utf-8"))
    entries = [entry for entry in entries if of_program(entry, build)]
    found = complaints(compiler, entries)
    print("\n".join(found) if found else f"other_compiler: {compiler} reads all {len(entries)} units")
    return 1 if found or not entries else 0


if __name__ == "__main__":
    sys.exit(main())
