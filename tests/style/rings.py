#!/usr/bin/env python3
"""Fails when files of one folder include each other in a ring, by their stems: panel.h and panel.cpp are one.

What stands in a ring can only be understood, tested and moved as a whole. It is opened by giving what both sides share,
mostly a struct, a header of its own.

  rings.py            check the tree
  rings.py --self     check that the check can fail
"""
import collections
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
INCLUDE = re.compile(r'^\s*#\s*include\s*"([^"]+)"', re.M)


def included_stems(files):
    """{path: text} -> folder -> stem -> stems of the same folder that it includes."""
    folders = collections.defaultdict(lambda: collections.defaultdict(set))
    for path, text in files.items():
        path = pathlib.PurePosixPath(path)
        stems = folders[path.parent.as_posix()]
        for name in map(pathlib.PurePosixPath, INCLUDE.findall(text)):
            if name.parent == path.parent and name.stem != path.stem:
                stems[path.stem].add(name.stem)
    return folders


def ring_in(stems):
    """A shortest ring, as the stems on the way round; empty when there is none."""
    best = []
    for start in sorted(stems):
        came_from, look_at = {start: None}, collections.deque([start])
        while look_at:
            stem = look_at.popleft()
            if start in stems.get(stem, ()):
                way = [stem]
                while came_from[way[-1]] is not None:
                    way.append(came_from[way[-1]])
                if not best or len(way) < len(best):
                    best = way[::-1]
                break
            for after in sorted(stems.get(stem, ())):
                if after not in came_from:
                    came_from[after] = stem
                    look_at.append(after)
    return best


def complaints(files):
    for folder, stems in sorted(included_stems(files).items()):
        if ring := ring_in(stems):
            yield f"{folder}: a ring: {' -> '.join([*ring, ring[0]])}"


def read_tree():
    return {path.relative_to(ROOT).as_posix(): path.read_text(encoding="utf-8") for folder in ("grammar", "tables", "engine")
            for path in sorted((ROOT / folder).rglob("*")) if path.suffix in (".h", ".cpp", ".inc")}


def self_check():
    ring = {"a/one.cpp": '#include "a/one.h"\n#include "a/two.h"\n', "a/two.h": '#include "a/three.h"\n', "a/two.cpp": "",
            "a/three.cpp": '#include "a/one.h"\n'}
    free = {"a/one.cpp": '#include "a/one.h"\n#include "a/two.h"\n', "a/two.h": '#include "b/one.h"\n',
            "b/one.h": '#include "a/one.h"\n'}
    ok = list(complaints(ring)) == ["a: a ring: one -> two -> three -> one"] and not list(complaints(free))
    print("rings: the check can fail" if ok else "rings: the check is broken")
    return 0 if ok else 1


def main():
    if "--self" in sys.argv:
        return self_check()
    files = read_tree()
    found = list(complaints(files))
    print("\n".join(found) if found else f"rings: {len(files)} files, none")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
