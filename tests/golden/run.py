#!/usr/bin/env python3
"""Runs the stories of this folder: each says why it is told, brings its files, and shows what the program answers.

    run.py                      all stories
    run.py score-many           one of them
    run.py --accept score-many  writes what the program answers now into that one story

A story is made of sections, each headed by a line that starts with `===`:

    why it is told, in a paragraph, before the first section
    === file duet.sheet         a file of the story's own
    === copy examples/a.sheet   a file of the repository
    === run landdrill check duet.sheet
    === output                  what the command prints, exactly; absent when nothing
    === errors                  the same for standard error
    === exit 1

There may be several commands, each with its answer. They run in bash, in a fresh folder. What differs from machine to
machine is replaced: <here>, <repository>, <version>, <time>.
"""
import argparse
import difflib
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

HERE = pathlib.Path(__file__).resolve().parent
REPOSITORY = HERE.parent.parent
HEADING = re.compile(r"^=== (file|copy|run|output|errors|exit)(?: (.*))?$")
NO_NEWLINE = "\\ no newline at the end\n"


class Section:
    def __init__(self, kind, argument, body=""):
        self.kind, self.argument, self.body = kind, argument, body

    def text(self):
        heading = f"=== {self.kind}" + (f" {self.argument}" if self.argument else "") + "\n"
        return heading + self.body


def read_story(path):
    why, sections = "", []
    for line in path.read_text(encoding="utf-8").splitlines(keepends=True):
        heading = HEADING.match(line.rstrip("\n"))
        if heading:
            sections.append(Section(heading.group(1), heading.group(2) or ""))
        elif sections:
            sections[-1].body += line
        else:
            why += line
    if not why.strip():
        sys.exit(f"{path.name}: the story does not say why it is told")
    return why, sections


def ordinary_user(program):
    """A prefix that runs a command as somebody who is not root, or None when that cannot be had."""
    if os.geteuid() != 0:
        return ""
    prefix = "setpriv --reuid=65534 --regid=65534 --clear-groups"
    try:
        tried = subprocess.run(f"{prefix} {program} --version", shell=True, capture_output=True, check=False)
    except OSError:
        return None
    return prefix if tried.returncode == 0 else None


class Teller:
    def __init__(self, program, version):
        self.program = pathlib.Path(program).resolve()
        self.version = version
        self.ordinary = ordinary_user(self.program)

    def environment(self, folder):
        kept = {name: value for name, value in os.environ.items()
                if name not in ("LANDDRILL_VALUES", "XDG_DATA_HOME", "NO_COLOR", "COLUMNS", "CI")}
        return kept | {"PATH": f"{self.program.parent}:{os.environ['PATH']}", "LC_ALL": "C.UTF-8", "TERM": "dumb",
                       "HOME": str(folder), "REPOSITORY": str(REPOSITORY),
                       "BUILD": str(self.program.parent.parent), "ORDINARY": self.ordinary or ""}

    def plain(self, raw, folder):
        text = raw.decode("utf-8", errors="backslashreplace")
        for path, name in ((folder, "<here>"), (REPOSITORY, "<repository>")):
            text = text.replace(str(path), name)
        text = re.sub(r"20\d\d-\d\d-\d\dT\d\d:\d\d:\d\dZ", "<time>", text)
        text = re.sub(r"20\d\d-\d\d-\d\d \d\d:\d\d UTC", "<time>", text)
        text = re.sub(rf"(landdrill ){re.escape(self.version)}\b", r"\1<version>", text)
        return text if text.endswith("\n") or not text else text + "\n" + NO_NEWLINE

    def tell(self, sections):
        """The sections with the answers that the program gives now."""
        told = []
        with tempfile.TemporaryDirectory(prefix="landdrill-story-") as name:
            folder = pathlib.Path(name).resolve()
            folder.chmod(0o777)
            for section in sections:
                if section.kind in ("output", "errors", "exit"):
                    continue
                told.append(section)
                if section.kind == "file":
                    place = folder / section.argument
                    place.parent.mkdir(parents=True, exist_ok=True)
                    place.write_text(section.body, encoding="utf-8")
                elif section.kind == "copy":
                    source = REPOSITORY / section.argument
                    copy = shutil.copytree if source.is_dir() else shutil.copy
                    copy(source, folder / source.name)
                else:
                    told += self.answer(section.argument, folder)
        return told

    def answer(self, command, folder):
        done = subprocess.run(["bash", "-c", command], cwd=folder, env=self.environment(folder), capture_output=True,
                              stdin=subprocess.DEVNULL, timeout=300, check=False)
        answers = []
        if done.stdout:
            answers.append(Section("output", "", self.plain(done.stdout, folder)))
        if done.stderr:
            answers.append(Section("errors", "", self.plain(done.stderr, folder)))
        return answers + [Section("exit", str(done.returncode))]


def whole(why, sections):
    return why + "".join(section.text() for section in sections)


def main():
    parser = argparse.ArgumentParser(description="Runs the stories of this folder.")
    parser.add_argument("stories", nargs="*", help="their names; all when none is given")
    parser.add_argument("--program", default=REPOSITORY / "build" / "landdrill")
    parser.add_argument("--version", help="of the program; read from CMakeLists.txt when not given")
    parser.add_argument("--sanitized", action="store_true", help="leave out stories that limit the program's memory")
    parser.add_argument("--accept", metavar="NAME", help="rewrite this one story with what the program answers now")
    options = parser.parse_args()
    if options.accept and os.environ.get("CI") == "true":
        sys.exit("a story is accepted by somebody who read it, never by a machine")
    version = options.version or re.search(r"project\(\w+ VERSION ([\d.]+)",
                                           (REPOSITORY / "CMakeLists.txt").read_text()).group(1)
    teller = Teller(options.program, version)
    names = [options.accept] if options.accept else options.stories or sorted(p.stem for p in HERE.glob("*.story"))
    failed = skipped = 0
    for name in names:
        path = HERE / f"{name}.story"
        why, sections = read_story(path)
        if options.sanitized and any("ulimit" in section.argument for section in sections):
            print(f"skipped: {name}: a sanitized program needs more memory than any other")
            skipped += 1
            continue
        if teller.ordinary is None and any("$ORDINARY" in section.argument for section in sections):
            print(f"skipped: {name}: the program cannot be run as an ordinary user from here")
            skipped += 1
            continue
        expected, told = whole(why, sections), whole(why, teller.tell(sections))
        if options.accept:
            path.write_text(told, encoding="utf-8")
            print(f"accepted: {name}")
        elif told != expected:
            failed += 1
            print(f"FAILED: {name}")
            sys.stdout.writelines(difflib.unified_diff(expected.splitlines(keepends=True), told.splitlines(keepends=True),
                                                       f"{name}.story", "as the program answers now"))
    print(f"{len(names) - failed - skipped} stories as told, {failed} not, {skipped} skipped")
    return 1 if failed or not names else 0


if __name__ == "__main__":
    sys.exit(main())
