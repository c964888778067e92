#!/usr/bin/env python3
"""Fails when an include goes against the one direction of the layers, or the pure core reaches for the world.

grammar <- tables <- engine <- engine/report <- engine/cli; tables/store sees only tables (and grammar below it);
only engine/cli sees tables/store; the files directly in engine/ see no streams, files, clock or randomness.

  layers.py            check the tree
  layers.py --self     check that the check can fail
"""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
INCLUDE = re.compile(r'^\s*#\s*include\s*([<"])([^>"]+)[>"]', re.M)

# layer -> the layers it may include
MAY_SEE = {
    "grammar": {"grammar"},
    "tables": {"grammar", "tables"},
    "tables/store": {"grammar", "tables", "tables/store"},
    "engine": {"grammar", "tables", "engine"},
    "engine/report": {"grammar", "tables", "engine", "engine/report"},
    "engine/cli": {"grammar", "tables", "tables/store", "engine", "engine/report", "engine/cli"},
}
WORLD = {"iostream", "fstream", "sstream", "ostream", "istream", "cstdio", "stdio.h", "filesystem", "chrono", "ctime",
         "random", "thread", "locale", "unistd.h"}
# layer -> system headers it may not include
FORBIDDEN = {"grammar": WORLD, "engine": WORLD}
# A chance comes from a bell curve and is never part of a score: these files deal in chances, all others in decimals.
DEALS_IN_CHANCES = {"binary", "figures",
                    "odds", "mark_odds", "spreads", "total_odds", "weighted_scatter", "forecast", "compare", "plan",
                    "plan_odds", "plan_reach", "plan_reach_grid", "plan_tighten", "plan_programme_odds", "plan_search",
                    "agreement",
                    "panel_view",
                    "agreement_limits", "intraclass", "krippendorff", "concordance", "kappa", "rank_correlation",
                    "sample", "quantile", "panel_words", "panel_words_agreement",
                    "lessons", "draw_together", "learning", "back_test", "progress", "practice",
                    "practice_report", "calibrated_estimate", "season_progress"}
ONLY_IN = {"sqlite3.h": "tables/store", "CLI/CLI.hpp": "engine/cli"}


def layer_of(path):
    """'tables/store/season.h' -> 'tables/store'; None outside the layers."""
    parts = pathlib.PurePosixPath(path).parts
    for length in (2, 1):
        layer = "/".join(parts[:length])
        if len(parts) > length and layer in MAY_SEE:
            return layer
    return None


def complaints(path, text):
    layer = layer_of(path)
    if layer is None:
        return
    for mark, name in INCLUDE.findall(text):
        seen = layer_of(name) if mark == '"' else None
        if mark == '"' and "/" in name and seen is not None and seen not in MAY_SEE[layer]:
            yield f"{path}: includes {name}: {layer} may only see {', '.join(sorted(MAY_SEE[layer]))}"
        if name in FORBIDDEN.get(layer, ()):
            yield f"{path}: includes <{name}>: {layer} knows no files, streams, clock or chance"
        if name in ONLY_IN and layer != ONLY_IN[name]:
            yield f"{path}: includes {name}: only {ONLY_IN[name]} may"
    chances = pathlib.PurePosixPath(path).stem in DEALS_IN_CHANCES
    if layer == "engine" and not chances and re.search(r"\b(double|float)\b", re.sub(r"//.*", "", text)):
        yield f"{path}: binary floating point in the engine: numbers are exact decimals"


def sources():
    for folder in ("grammar", "tables", "engine"):
        for path in sorted((ROOT / folder).rglob("*")):
            if path.suffix in (".h", ".cpp", ".inc"):
                yield path


def self_check():
    bad = [("grammar/a.cpp", '#include "tables/load.h"'), ("engine/a.cpp", '#include "engine/report/text.h"'),
           ("tables/a.cpp", "#include <sqlite3.h>"), ("engine/a.h", "#include <chrono>"),
           ("engine/report/a.cpp", '#include "tables/store/season.h"'), ("engine/a.cpp", "double x;"),
           ("engine/score.cpp", "float x;")]
    good = [("engine/cli/a.cpp", '#include "tables/store/season.h"'), ("engine/a.cpp", "// double the marks"),
            ("engine/odds.cpp", "double x;")]
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
