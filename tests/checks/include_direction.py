#!/usr/bin/env python3
"""include_direction.py ROOT: what may include what under ROOT/src, and how long a file may be.

A folder includes itself and the folders before it in the flow; a library is seen only where it is meant to be, and in no
header; no file has more than 300 lines. Prints each fault as file:line: words, and exits 1 when there is one.
"""

import re
import sys
from pathlib import Path

FLOW = "basics text read trace resolve trade estimate sequence schedule compare quote report commands".split()
LONGEST_FILE = 300

# First part of a library's include name: where its sources may stand, as patterns over paths below src.
LIBRARIES = {
    "yaml-cpp": r"text/",
    "pugixml": r"text/sheet_[^/]*\.cpp$",
    "zip": r"text/zip_part\.cpp$",
    "boost": r"basics/digraph\.cpp$|estimate/like_rows\.cpp$",  # graphs; a hash of rows
    "xlsxwriter": r"report/xlsx[^/]*$",
    "spdlog": r"commands/|main\.cpp$",
    "CLI": r"commands/|main\.cpp$",
    "nlohmann": r"report/|commands/",
    "fmt": r"",
}
POSIX = re.compile(r"(sys/\w+|unistd|fcntl|signal|poll|sched|locale|wctype|dirent|pwd|termios)\.h$")
STANDARD = re.compile(r"[a-z_0-9]+$")
INCLUDE = re.compile(r'\s*#\s*include\s*([<"])([^">]+)[">]')


def quoted_fault(path: Path, name: str, src: Path) -> str | None:
    """What is wrong with #include "name" in src/path, if anything."""
    parts = name.split("/")
    if len(parts) != 2 or parts[0] not in FLOW:
        return f'"{name}" is not written as "folder/file" with a folder of the flow'
    if not (src / name).is_file():
        return f'"{name}" is not there'
    own = path.parts[0]
    if own in FLOW and FLOW.index(parts[0]) > FLOW.index(own):
        return f'"{name}": {own} stands before {parts[0]} in the flow and may not include it'
    return None


def angled_fault(path: Path, name: str) -> str | None:
    """What is wrong with #include <name> in src/path, if anything."""
    if STANDARD.match(name):
        return None
    if path.suffix == ".hpp":
        return f"<{name}>: a header includes only our own headers and the standard library's"
    if POSIX.match(name):
        return None
    library = re.split(r"[/.]", name)[0]
    if library not in LIBRARIES:
        return f"<{name}> belongs to no library that this project uses"
    if not re.match(LIBRARIES[library], path.as_posix()):
        return f"<{name}> may not be included here"
    return None


def faults_of(file: Path, src: Path) -> list[str]:
    lines = file.read_text(encoding="utf-8").splitlines()
    found = []
    if len(lines) > LONGEST_FILE:
        found.append(f"{file}:{len(lines)}: {len(lines)} lines; {LONGEST_FILE} at most")
    if not file.is_relative_to(src):
        return found
    path = file.relative_to(src)
    if path.parts[0] not in FLOW and path.as_posix() != "main.cpp":
        found.append(f"{file}:1: the folder is not in the flow")
    for number, line in enumerate(lines, 1):
        if include := INCLUDE.match(line):
            quote, name = include.groups()
            fault = quoted_fault(path, name, src) if quote == '"' else angled_fault(path, name)
            if fault:
                found.append(f"{file}:{number}: {fault}")
    return found


def main() -> int:
    root = Path(sys.argv[1])
    files = sorted(f for top in ("src", "tests") for f in (root / top).rglob("*.[ch]pp"))
    found = [fault for file in files for fault in faults_of(file, root / "src")]
    print("\n".join(found) if found else f"{len(files)} files, no fault")
    return 1 if found or not files else 0


if __name__ == "__main__":
    sys.exit(main())
