#!/usr/bin/env python3
"""Fails when something a user can type or read has no test, example or line of documentation.

Each command, each option of each command and each exit code needs a story in tests/golden; each keyword of the sheet
language a line in grammar/language.md and an example; each diagnostic a test or message that shows its code; each
table and column of a value set a line in tables/data/README.md or a file that has it.

  coverage.py            check the tree
  coverage.py --self     check that the check can fail
"""
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]


def read(path):
    return (ROOT / path).read_text(encoding="utf-8", errors="replace")


def all_text(*patterns):
    return "\n".join(path.read_text(encoding="utf-8", errors="replace")
                     for pattern in patterns for path in sorted(ROOT.glob(pattern)) if path.is_file())


def command_options(table):
    """'values show' -> {'--format', ...}, read from the text of the command table."""
    names = dict(re.findall(r'constexpr OptionRow (\w+)\s*=?\s*{\s*"(--[\w-]+)"', table))
    commands = {}
    body = table[table.index("const std::vector<Command> sheet_commands = "):]
    for words, rest in re.findall(r'\{\s*"([a-z]+(?: [a-z-]+)?)",\s*"[a-z](.*?)(?=\{\s*"[a-z]+(?: [a-z-]+)?",\s*"[a-z]|\Z)', body, re.S):
        if words.startswith("landdrill"):  # an example
            continue
        commands[words] = {names[row] for row in re.findall(r"&(\w+)", rest) if row in names}
    return commands


def commands_run(stories):
    """The command lines of all stories, one for each call of the program."""
    runs = re.findall(r"^=== run (.*)$", stories, re.M)
    return [call for run in runs for call in re.findall(r"landdrill ([^|;&]*)", run)]


def missing_in_stories(commands, stories, exits):
    calls = commands_run(stories)
    for words, options in commands.items():
        mine = [call for call in calls if call.startswith(words)]
        if not mine:
            yield f"no story runs `landdrill {words}`"
        for option in sorted(options):
            if mine and not any(re.search(rf"{option}\b", call) for call in mine):
                yield f"no story runs `landdrill {words} {option}`"
    for code in exits:
        if not re.search(rf"^=== exit {code}$", stories, re.M):
            yield f"no story ends with {code}"


def missing_words(keywords, language, examples):
    for word in keywords:
        if not re.search(rf"\b{word}\b", language):
            yield f"grammar/language.md does not speak of the keyword {word}"
        if not re.search(rf"^\s*{word}\b", examples, re.M):
            yield f"no example has a line that starts with {word}"


def missing_diagnostics(names, shown):
    for name in names:
        code = name.replace("_", "-")
        if not re.search(rf"\[{code}\]|Problem::{name}\b", shown):
            yield f"no test, message or story shows the diagnostic {code}"


def said_twice(names):
    """Two rooms that cannot see each other could both have a code of one name."""
    return [f"two lists have the diagnostic {name}" for name in sorted(set(names)) if names.count(name) > 1]


def missing_tables(tables, documentation):
    for table in tables:
        if not re.search(rf"\b{table}(\.csv)?\b", documentation):
            yield f"tables/data/README.md does not speak of the table {table}"


def complaints():
    table = all_text("engine/cli/command_rows.h", "engine/cli/rows_of_*.cpp", "engine/cli/command_table.cpp")
    commands = command_options(table)
    keywords = re.findall(r"^KEYWORD\((\w+)", read("grammar/word_list.inc"), re.M)
    lists = all_text(*(f"{room}/**/*problems.inc" for room in ("grammar", "tables", "engine")))
    names = re.findall(r"^DIAGNOSTIC\((\w+)", lists, re.M)
    tables = re.findall(r'^    \{"(\w+)", "', read("tables/columns.cpp"), re.M)
    counts = {"commands": len(commands), "keywords": len(keywords), "diagnostics": len(names), "tables": len(tables)}
    for what, count in counts.items():
        if count == 0:
            yield f"found no {what}: this check no longer understands the tree"
    yield from missing_in_stories(commands, all_text("tests/golden/*.story"), re.findall(r'^    \{"(\d)", "', table, re.M))
    yield from missing_words(keywords, read("grammar/language.md"), all_text("examples/*.sheet"))
    yield from missing_diagnostics(names, all_text("tests/golden/*.story", "tests/bad/**/*.message", "tests/bad/**/message*",
                                                   "tests/unit/**/*.cpp"))
    yield from said_twice(names)
    yield from missing_tables(tables, read("tables/data/README.md"))


def self_check():
    story = "=== run landdrill score a --brief\n=== exit 0\n"
    caught = [list(missing_in_stories({"score": {"--brief", "--full"}}, story, ["0"])),
              list(missing_in_stories({"check": set()}, story, ["0"])), list(missing_in_stories({}, story, ["3"])),
              list(missing_words(["tempo"], "tempo", "# tempo")), list(missing_words(["tempo"], "", "tempo 3")),
              list(missing_diagnostics(["too_long"], "[too-large]")), said_twice(["a", "b", "a"]),
              list(missing_tables(["parts"], "counterparts"))]
    passed = [*missing_in_stories({"score": {"--brief"}}, story, ["0"]), *missing_words(["tempo"], "tempo", " tempo 3"),
              *missing_diagnostics(["too_long"], "[too-long]"), *said_twice(["a", "b"]),
              *missing_tables(["parts"], "parts.csv")]
    ok = all(caught) and not passed
    print("coverage: the check can fail" if ok else "coverage: the check is broken")
    return 0 if ok else 1


def main():
    if "--self" in sys.argv:
        return self_check()
    found = list(complaints())
    print("\n".join(found) if found else "coverage: every command, option, keyword, diagnostic and table is shown somewhere")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
