#!/usr/bin/env python3
"""Fails when a source file or a header under src needs something included before it, or the compiler warns. The builds
that CI makes are unity builds and would not tell. A header that its own source file includes first is shown by that."""
import json
import os
import re
import shlex
import subprocess
import sys
import tempfile
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
SOURCES = ROOT / "src"


def commands():
    """Of each source file, what the preset compiles it with, without writing anything."""
    subprocess.run(["cmake", "--preset", "tidy"], cwd=ROOT, check=True, stdout=subprocess.DEVNULL)
    found = {}
    for entry in json.loads((ROOT / "build/tidy/compile_commands.json").read_text()):
        path = Path(entry["file"])
        if SOURCES not in path.parents:
            continue
        words = shlex.split(entry["command"])
        words[words.index("-o"):words.index("-o") + 2] = []
        found[path] = [word for word in words if word not in ("-c", str(path))] + ["-fsyntax-only"]
    return found


def shown_by_source(header):
    source = header.with_suffix(".cpp")
    first = re.search(r'^#include "(.*)"', source.read_text(), re.MULTILINE) if source.exists() else None
    return first is not None and first.group(1) == str(header.relative_to(SOURCES))


def main():
    of_source = commands()
    headers = [header for header in sorted(SOURCES.rglob("*.hpp")) if not shown_by_source(header)]
    with tempfile.TemporaryDirectory() as folder:
        tasks = [words + [str(path)] for path, words in sorted(of_source.items())]
        for number, header in enumerate(headers):
            only = Path(folder) / f"{number}.cpp"
            only.write_text(f'#include "{header.relative_to(SOURCES)}"\n')
            tasks.append(next(iter(of_source.values())) + [str(only)])
        with ThreadPoolExecutor(os.cpu_count()) as pool:
            done = list(pool.map(lambda words: subprocess.run(words, cwd=ROOT, check=False).returncode, tasks))
    print(f"{len(of_source)} source files and {len(headers)} headers by themselves, {sum(code != 0 for code in done)} not alone")
    sys.exit(any(done))


if __name__ == "__main__":
    main()
