#!/usr/bin/env python3
"""Fails when an include goes against the one direction of the rooms, or a room reaches for what it must not know.

  layers.py            check the tree
  layers.py --self     check that the check can fail
"""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]', re.M)

# room -> the other rooms that it may include
MAY_SEE = {
    "grammar": set(),
    "tables": {"grammar"},
    "tables/store": {"grammar", "tables"},
    "engine/routine": {"grammar", "tables"},
    "engine/score": {"grammar", "tables", "engine/routine"},
    "engine/chances": {"grammar", "tables", "engine/routine", "engine/score"},
    "engine/choosing/search": {"tables"},
    "engine/choosing": {"grammar", "tables", "engine/routine", "engine/score", "engine/chances",
                        "engine/choosing/search"},
    "engine/judging/statistics": {"tables"},
    "engine/judging": {"grammar", "tables", "engine/routine", "engine/score", "engine/judging/statistics"},
}
PURE = {"grammar", "tables", *(room for room in MAY_SEE if room.startswith("engine/"))}
MAY_SEE |= {
    "engine/files": {"grammar", "tables", "engine/routine", "engine/score"},
    "engine/season": {*PURE, "tables/store", "engine/files"},
    "engine/report": PURE,
    "engine/cli": {*PURE, "tables/store", "engine/files", "engine/season", "engine/report"},
}
DOOR = "engine/landdrill.h"  # the public one: what other programs may include, and nobody here
MAY_SEE[DOOR] = {*PURE, "engine/report"}
WORLD = {"iostream", "fstream", "sstream", "ostream", "istream", "cstdio", "stdio.h", "filesystem", "ctime", "random",
         "thread", "locale", "unistd.h"}
# room -> system headers that it may not include
FORBIDDEN = {room: WORLD for room in {*PURE, "engine/season"} if room != "tables"}
# <chrono> has the calendar, which is pure, and the clocks, which are not.
CLOCK = re.compile(r"\b\w+_clock\b|\bnow\s*\(|\bstd::time\s*\(")
# A score is an exact decimal. Chances and statistics are binary floating point, and these rooms alone know them.
EXACT = {"engine/routine", "engine/score", "engine/choosing/search"}
ONLY_IN = {"sqlite3.h": "tables/store", "CLI/CLI.hpp": "engine/cli"}


def room_of(path):
    """'tables/store/season.h' -> 'tables/store'; None outside the rooms."""
    if path == DOOR:
        return DOOR
    parts = pathlib.PurePosixPath(path).parts
    for length in (3, 2, 1):
        room = "/".join(parts[:length])
        if len(parts) > length and room in MAY_SEE:
            return room
    return None


def complaints(path, text):
    room = room_of(path)
    if room is None:
        yield f"{path}: stands in no room"
        return
    for mark, name in INCLUDE.findall(text):
        seen = room_of(name) if mark == '"' and "/" in name else None
        if seen is not None and seen != room and seen not in MAY_SEE[room]:
            yield f"{path}: includes {name}: {room} may only see {', '.join(sorted(MAY_SEE[room])) or 'itself'}"
        if name in FORBIDDEN.get(room, ()):
            yield f"{path}: includes <{name}>: {room} knows no files, streams, clock or chance"
        if name in ONLY_IN and room != ONLY_IN[name]:
            yield f"{path}: includes {name}: only {ONLY_IN[name]} may"
    code = re.sub(r"//.*", "", text)
    if (room in PURE or room == "engine/season") and CLOCK.search(code):
        yield f"{path}: looks at a clock: {room} is told the day"
    if room in EXACT and re.search(r"\b(double|float)\b", code):
        yield f"{path}: binary floating point in {room}: its numbers are exact decimals"


def sources():
    for folder in ("grammar", "tables", "engine"):
        for path in sorted((ROOT / folder).rglob("*")):
            if path.suffix in (".h", ".cpp", ".inc"):
                yield path


def self_check():
    bad = [("grammar/a.cpp", '#include "tables/load.h"'), ("engine/score/a.cpp", '#include "engine/report/render.h"'),
           ("tables/a.cpp", "#include <sqlite3.h>"), ("engine/routine/a.h", "#include <ctime>"),
           ("grammar/a.cpp", "auto t = std::chrono::system_clock::now();"), ("tables/a.cpp", "using Clock::now; now ();"),
           ("engine/report/a.cpp", '#include "tables/store/season.h"'), ("engine/score/a.cpp", "double x;"),
           ("engine/routine/a.cpp", '#include "engine/score/score.h"'), ("engine/a.cpp", ""),
           ("engine/choosing/search/a.cpp", '#include "engine/routine/routine.h"'),
           ("engine/judging/a.cpp", '#include "engine/chances/odds.h"'),
           ("engine/files/a.cpp", '#include "tables/store/season.h"'), ("engine/season/a.cpp", "#include <filesystem>"),
           ("engine/season/a.cpp", '#include "engine/cli/call.h"'), (DOOR, '#include "engine/files/value_sets.h"'),
           ("engine/cli/a.cpp", '#include "engine/landdrill.h"')]
    good = [("grammar/calendar.cpp", "#include <chrono>"), ("engine/cli/a.cpp", "steady_clock::now()"),
            (DOOR, '#include "engine/report/page.h"'),
            ("engine/season/a.cpp", '#include "tables/store/season.h"'), ("engine/score/a.cpp", "// double the marks"),
            ("engine/chances/odds.cpp", "double x;"), ("engine/choosing/a.cpp", '#include "engine/chances/odds.h"')]
    ok = all(list(complaints(*case)) for case in bad) and not any(list(complaints(*case)) for case in good)
    print("layers: the check can fail" if ok else "layers: the check is broken")
    return 0 if ok else 1


def main():
    if "--self" in sys.argv:
        return self_check()
    found = [line for path in sources() for line in complaints(path.relative_to(ROOT).as_posix(), path.read_text())]
    print("\n".join(found) if found else f"layers: {sum(1 for _ in sources())} files, one direction")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
