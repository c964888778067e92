#!/usr/bin/env python3
"""Fails when a name stands in the anonymous namespaces of two files of one folder, or of one and in a header there.

A unity build compiles several files of a target together: a name that stands in two of them is an error there, or
worse, a neighbour's overload is chosen silently; and it hides the one of the header from the files behind it. Nor may
two classes of a namespace have one name, wherever they stand: the linker takes the functions of either for both. What is the same is to be written once, what is not is to be called
otherwise.

  anonymous_names.py            check the tree
  anonymous_names.py --self     check that the check can fail
"""
import collections
import pathlib
import re
import sys

ROOT = pathlib.Path(__file__).resolve().parents[2]
# Folders whose files belong to the target of another one.
BELONGS_TO = {"engine/cli/commands": "engine/cli", "engine/report/pages": "engine/report",
              "engine/choosing/search": "engine/choosing", "engine/judging/statistics": "engine/judging"}
NO_CODE = re.compile(r'//[^\n]*|/\*.*?\*/|^[ \t]*#(?:\\\n|[^\n])*|R"\((?:.*?)\)"|"(?:\\.|[^"\\\n])*"'
                     r"|(?<![0-9a-fA-F])'(?:\\.|[^'\\])+'", re.S | re.M)
CLOSING = {"(": ")", "[": "]", "{": "}"}


def code_of(text):
    """The same text, every line in its place, without comments, directives and what is quoted."""
    return NO_CODE.sub(lambda found: re.sub(r"[^\n]", " ", found.group()), text)


def end_of(code, at):
    """Behind the bracket that closes the one at `at`."""
    open_ones = []
    for i in range(at, len(code)):
        if code[i] in CLOSING:
            open_ones.append(CLOSING[code[i]])
        elif open_ones and code[i] == open_ones[-1]:
            open_ones.pop()
            if not open_ones:
                return i + 1
    return len(code)


def is_function(flat):
    """Whether it begins like one: variables have a value behind =, or a comma behind what they are made of."""
    if re.match(r"(?:enum|class|struct|union|namespace)\b", flat):
        return False
    before, bracket, behind = re.sub(r"operator\W+?\(", "operator(", flat).partition("()")
    return bracket != "" and "=" not in before + behind and ("," not in behind or ":" in behind)


def declarations(code, at, end):
    """(place, flat, whole) of each between two places: flat is without templates and what stands in brackets."""
    first, flat = at, ""
    while at < end:
        sign = code[at]
        if sign in CLOSING:
            behind = end_of(code, at)
            flat += sign + CLOSING[sign]
            at = behind
            last = sign == "{" and is_function(plain(flat)) and code[at:end].lstrip()[:1] not in (",", "{")
        else:
            flat += sign
            at += 1
            last = sign == ";"
        if last:
            blank = len(code[first:at]) - len(code[first:at].lstrip())
            yield first + blank, plain(flat), code[first:at]
            first, flat = at, ""


def plain(flat):
    """'template <class A> const std::map<A, B>& x()' -> 'const std::map& x()'."""
    flat = re.sub(r"<=>|<<|<=|>=|->", " ", flat)
    while re.search(r"<[^<>]*>", flat):
        flat = re.sub(r"<[^<>]*>", "", flat)
    flat = re.sub(r"\[\[\]\]|\b(?:template|inline|static|__extension__)\b", " ", flat)
    return re.sub(r"^\s*(?:[A-Z_]{4,}\(\)\s*)*", "", flat)


def names_in(flat, whole):
    """The names that one declaration makes; none for a member of a class that is declared before."""
    if found := re.match(r"(?:using|namespace) (\w+) =", flat):
        return [found.group(1)]
    if flat.startswith(("using ", "friend ")):
        return []
    if found := re.match(r"(enum class |enum |class |struct |union )(\w+)[^({]*[{;]", flat):
        numbered = re.findall(r"(\w+)\s*(?:=[^,}]*)?(?=[,}])", whole[whole.index("{"):]) if found[1] == "enum " else []
        return [found[2]] + numbered
    names = []
    for part in flat.rstrip(";").split(",") if not is_function(flat) else [flat]:
        declared = re.match(r"[^=({\[]*?([:\w]+)\s*(?:[=({\[]|$)", part.strip())
        if declared and "::" not in declared.group(1) and declared.group(1) != "operator":
            names.append(declared.group(1).strip(":"))
    return names


def anonymous_names(text):
    """(name, line), in the order of the file."""
    code = code_of(text)
    for opened in re.finditer(r"\bnamespace\s*\{", code):
        start = opened.end()
        for place, flat, whole in declarations(code, start, end_of(code, start - 1) - 1):
            for name in names_in(flat, whole):
                yield name, code.count("\n", 0, place) + 1


def header_names(text):
    """The functions that a header declares in a namespace with a name."""
    code = code_of(text)
    for opened in re.finditer(r"\bnamespace\s+[\w:]+\s*\{", code):
        start = opened.end()
        for _, flat, whole in declarations(code, start, end_of(code, start - 1) - 1):
            if is_function(flat.rstrip(";")):
                yield from names_in(flat, whole)


def class_names(text):
    """(namespace, name) of the classes that are made in namespaces with a name."""
    code = code_of(text)
    for opened in re.finditer(r"\bnamespace\s+([\w:]+)\s*\{", code):
        start = opened.end()
        for _, flat, _ in declarations(code, start, end_of(code, start - 1) - 1):
            if found := re.match(r"(?:enum class|enum|class|struct|union) (\w+)\b(?!::)[^(;:]*(?::[^;]*)?\{", flat):
                yield opened[1], found[1]


def complaints(files):
    """`files`: [(path, text)]."""
    classes = collections.defaultdict(set)
    for path, text in files:
        for name in class_names(text):
            classes[name].add(path)
    for (space, name), places in sorted(classes.items()):
        if len(places) > 1:
            yield f"{space}::{name} is a class in each of " + ", ".join(sorted(places))
    headers = collections.defaultdict(dict)  # (folder, name) -> path
    for path, text in files:
        folder = pathlib.PurePosixPath(path).parent.as_posix()
        if path.endswith(".h"):
            headers.update({(BELONGS_TO.get(folder, folder), name): path for name in [*header_names(text), *(name for _, name in class_names(text))]})
    known = collections.defaultdict(dict)  # (folder, name) -> {path: line}
    for path, text in files:
        folder = pathlib.PurePosixPath(path).parent.as_posix()
        folder = BELONGS_TO.get(folder, folder)
        for name, line in anonymous_names(text):
            known[folder, name].setdefault(path, line)
    for (folder, name), places in sorted(known.items()):
        if len(places) > 1:
            yield f"{folder}: {name} stands in " + ", ".join(f"{path}:{line}" for path, line in places.items())
        elif (folder, name) in headers:
            (path, line), = places.items()
            yield f"{path}:{line}: {name} is called as something in {headers[folder, name]}"


def sources():
    for folder in ("grammar", "tables", "engine"):
        for path in sorted((ROOT / folder).rglob("*.cpp")) + sorted((ROOT / folder).rglob("*.h")):
            yield path.relative_to(ROOT).as_posix(), path.read_text(encoding="utf-8")


def self_check():
    first = """namespace landdrill {
namespace {
using Does = Step::Does;
constexpr char quote = '"', sign = '{';  // int comment() {
enum Field { date, mark = 2 };
enum class Size { small };
struct Stretch { int longest = 0; };
const Exact hundred(whole(100)), one{1'000};
template <class Row>
std::map<int, Row> rows_of(const Row& row) { int local = 0; return {{local, row}}; }
bool operator==(const Stretch& a, const Stretch& b) { return a.longest == b.longest; }
class Dice {
 public:
  Dice(int seed);
};
Dice::Dice(int seed) : state_{seed}, other_(seed) {}
const auto last = [](int a) { return a; };
}  // namespace
int open() { return 0; }
}
"""
    expected = ["Does", "quote", "sign", "Field", "date", "mark", "Size", "Stretch", "hundred", "one", "rows_of",
                "Dice", "last"]
    found = [name for name, _ in anonymous_names(first)]
    other = "namespace {\nint {}() { return 0; }\n}\n"
    ok = found == expected and all(list(complaints([("engine/a.cpp", first),
                                                    (f"engine/b.cpp", other.replace("{}()", name + "()"))]))
                                   for name in expected)
    ok = ok and list(complaints([("engine/cli/a.cpp", other.replace("{}", "same")),
                                 ("engine/cli/commands/a.cpp", other.replace("{}", "same"))]))
    header = "namespace landdrill {\nint depth;\nclass A { int open(); };\nint {}();\n}\n"
    ok = ok and all(list(complaints([("engine/a.cpp", first), ("engine/b.h", header.replace("{}", name))])) ==
                    [] for name in ("open", "print", "deep"))
    ok = ok and list(complaints([("engine/a.cpp", first), ("engine/b.h", header.replace("{}", "rows_of"))]))
    one = "namespace landdrill {\nclass Mark final : Base {\n  int a;\n};\nnamespace {\nstruct Hidden {};\n}\n}\n"
    ok = ok and len(list(complaints([("engine/a.h", one), ("tables/b.h", one)]))) == 1
    for name in ("open", "small", "comment", "longest", "local", "state_", "other_", "seed"):
        ok = ok and not list(complaints([("engine/a.cpp", first),
                                         ("engine/b.cpp", other.replace("{}", name))]))
    ok = ok and not list(complaints([("engine/a.cpp", first), ("tables/a.cpp", first)]))
    print("anonymous_names: the check can fail" if ok else f"anonymous_names: the check is broken: {found}")
    return 0 if ok else 1


def main():
    if "--self" in sys.argv:
        return self_check()
    files = list(sources())
    found = list(complaints(files))
    print("\n".join(found) if found else f"anonymous_names: {len(files)} files, each name in one file of its folder")
    return 1 if found else 0


if __name__ == "__main__":
    sys.exit(main())
