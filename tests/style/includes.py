#!/usr/bin/env python3
"""Fails when a file uses a type of the project that no header it includes itself defines.

A source file may rely on its own header (engine/score/panel.cpp on engine/score/panel.h) for what stands there. A type
that is only named, as `struct Call;`, needs no header. A header may pass another on, so that one include is enough for who
uses it: `#include "tables/store/kept_blocks.h"  // IWYU pragma: export`.

  includes.py          check the tree
  includes.py --mend   add the missing includes, to be sorted by the formatter
  includes.py --self   check that the check can fail
"""
import collections
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
COMMENT_OR_TEXT = re.compile(r'//[^\n]*|/\*.*?\*/|R"(\w*)\(.*?\)\1"|"(?:\\.|[^"\\\n])*"|\'(?:\\.|[^\'\\\n])\'', re.S)
INCLUDE = re.compile(r'^#include "([^"]+)"', re.M)
EXPORT = re.compile(r'^#include "([^"]+)" +// IWYU pragma: export$', re.M)
DEFINES = re.compile(r"^(?:template <[^\n]*>\s*\n?)?(?:(?:struct|class|union|enum|enum class) (?:\[\[\w+\]\] )?(\w+)"
                     r"(?: final)?(?= ?(?:[:{]|\n))|using (\w+) =)", re.M)

INSIDE = re.compile(r"^ +(?:struct|class|enum class|enum|using) (\w+)", re.M)


def code_of(text):
    kept = INCLUDE.findall(text)
    return COMMENT_OR_TEXT.sub('""', INCLUDE.sub("", text)), kept


def definitions(headers):
    """Type -> the header that defines it, for the types that one header alone defines, and nothing inside a class."""
    places, inside = collections.defaultdict(set), set()
    for path, text in headers.items():
        code = code_of(text)[0]
        inside |= set(INSIDE.findall(code))
        for names in DEFINES.findall(code):
            places[next(filter(None, names))].add(path)
    return {name: next(iter(paths)) for name, paths in places.items() if len(paths) == 1 and name not in inside}


def missing(path, text, types, texts):
    """The headers that define a type this file uses and that neither it nor its own header includes."""
    code, included = code_of(text)
    own = str(pathlib.PurePosixPath(path).with_suffix(".h"))
    if own in included:
        included = included + code_of(texts.get(own, ""))[1]
    included = list(included)
    for header in included:  # those that are passed on come behind, and pass on theirs
        included += [name for name in EXPORT.findall(texts.get(header, "")) if name not in included]
    names = set(re.findall(r"(?<![.\w])(?<!->)\b([A-Z]\w+)\b", code))
    named_only = set(re.findall(r"^(?:struct|class) (\w+);", code, re.M))
    own_names = {next(filter(None, found)) for found in DEFINES.findall(code)}
    own_names |= set(re.findall(r"(?:class|typename|struct|enum|enum class|using|concept)(?:\.\.\.)? (\w+)", code)) - named_only
    found = collections.defaultdict(list)
    for name in sorted(names - own_names - named_only):
        header = types.get(name)
        if header and header != path and header not in included:
            found[header].append(name)
    return found


def read_tree():
    texts = {}
    for folder in ("grammar", "tables", "engine"):
        for path in sorted((ROOT / folder).rglob("*")):
            if path.suffix in (".h", ".cpp"):
                texts[path.relative_to(ROOT).as_posix()] = path.read_text(encoding="utf-8")
    return texts


def mend(path, headers):
    lines = (ROOT / path).read_text(encoding="utf-8").split("\n")
    last = max((i for i, line in enumerate(lines) if line.startswith("#include")), default=None)
    if last is None:
        last = next(i for i, line in enumerate(lines) if line.startswith("#pragma once"))
        lines.insert(last + 1, "")
        last += 1
    elif not lines[last].startswith('#include "'):
        lines.insert(last + 1, "")
        last += 1
    lines[last + 1:last + 1] = [f'#include "{header}"' for header in sorted(headers)]
    (ROOT / path).write_text("\n".join(lines), encoding="utf-8")


def self_check():
    texts = {"a/mark.h": "struct Mark {\n};\n", "a/use.cpp": '#include "a/use.h"\nMark m;\n', "a/use.h": "",
             "a/good.cpp": '#include "a/good.h"\nMark m;\n', "a/good.h": '#include "a/mark.h"\n',
             "a/name.h": "struct Mark;\nvoid f(const Mark&);  // Mark\n",
             "a/door.h": '#include "a/mark.h"  // IWYU pragma: export\n', "a/guest.cpp": '#include "a/door.h"\nMark m;\n',
             "a/hall.h": '#include "a/mark.h"\n', "a/stray.cpp": '#include "a/hall.h"\nMark m;\n'}
    types = definitions({path: text for path, text in texts.items() if path.endswith(".h")})
    ok = (missing("a/use.cpp", texts["a/use.cpp"], types, texts) == {"a/mark.h": ["Mark"]} and
          missing("a/stray.cpp", texts["a/stray.cpp"], types, texts) == {"a/mark.h": ["Mark"]} and
          not missing("a/guest.cpp", texts["a/guest.cpp"], types, texts) and
          not missing("a/good.cpp", texts["a/good.cpp"], types, texts) and
          not missing("a/name.h", texts["a/name.h"], types, texts))
    print("includes: the check can fail" if ok else "includes: the check is broken")
    return 0 if ok else 1


def main():
    if "--self" in sys.argv:
        return self_check()
    texts = read_tree()
    types = definitions({path: text for path, text in texts.items() if path.endswith(".h")})
    failed = 0
    for path, text in texts.items():
        headers = missing(path, text, types, texts)
        if headers and "--mend" in sys.argv:
            mend(path, headers)
        for header, names in headers.items():
            failed += 1
            print(f"{path}: uses {', '.join(names)} without including {header}")
    if not failed:
        print(f"includes: {len(texts)} files, each with what it uses")
    return 1 if failed else 0


if __name__ == "__main__":
    sys.exit(main())
