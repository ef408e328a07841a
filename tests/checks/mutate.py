#!/usr/bin/env python3
"""mutate.py BUILD [--sample N] [--seed S] [--minutes M] [--folder DIR]: do the tests notice when an operator, a condition or a constant of src/trade or
src/quote is another? BUILD is a tree with the built library. One program is compiled that holds every mutant (tests/checks/mutate.hpp);
a mutant is chosen when it runs. First each test file runs alone to see which mutants it reaches; then each mutant of the sample
runs the files that reach it, quickest first, until one fails. Prints the score and the survivors; nothing in the source tree changes."""
import argparse
import os
import random
import re
import shutil
import subprocess
import sys
import tempfile
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
MUTATED = ("src/trade", "src/quote")
REBUILT = ("src/estimate", "src/quote")  # what takes src/trade in
TESTS = ("tests/trade/*", "tests/tables/*", "tests/quote/*", "tests/estimate/shop_*")
HELPERS = ("tests/report/quoted.cpp", "tests/read/complaints.cpp")
OPERATORS = {"+": "Plus", "-": "Minus", "*": "Times", "/": "Over", "<": "Less", "<=": "LessEqual", ">": "Greater", ">=": "GreaterEqual",
             "==": "Equal", "!=": "Unequal"}
# Places where a call cannot stand, or where words are put together.
SKIPPED = re.compile(r"^\s*(#|//|template|using|case |enum|namespace|static_assert|requires)|constexpr|operator|static const|std::array|fmt::|\"")
TOKEN = re.compile(r"(?<= )(?P<op>==|!=|<=|>=|[-+*/<>])(?= |$)|\b(?P<call>min|max)\((?=[^()]*(?:\([^()]*\)[^()]*)*,)|"
                   r"(?P<if>\bif) \((?P<cond>[^;={}]*)\)(?= \{$| return| continue| break|$)|(?<=[ (,])(?P<number>\d+(?:\.\d+)?)(?=[ ),;])")


class Mutants:
    def __init__(self):
        self.lines = {}

    def add(self, path, number, what, line):
        self.lines[len(self.lines) + 1] = f"{path}:{number}: {what}: {line.strip()}"
        return len(self.lines)

    def of_line(self, path, number, line):
        def changed(found):
            if found["op"]:
                me = self.add(path, number, found["op"], line)
                op = found["op"]
                return f"{op} seambook_mutant::{OPERATORS[op]}<{me}>{{}} {op}"
            if found["call"]:
                if line[:found.start()].endswith("::") or line[:found.start()].endswith("."):
                    return found[0]
                me = self.add(path, number, found["call"], line)
                return f"seambook_mutant::{'least_of' if found['call'] == 'min' else 'most_of'}<{me}>("
            if found["if"]:
                if found["cond"].count("(") != found["cond"].count(")"):
                    return found[0]
                me = self.add(path, number, "if", line)
                return f"if (seambook_mutant::flipped<{me}>(static_cast<bool>({found['cond']})))"
            me = self.add(path, number, found["number"], line)
            return f"seambook_mutant::constant<{me}>({found['number']})"

        code, mark, comment = line.partition("  // ")
        return TOKEN.sub(changed, code) + mark + comment

    def of_file(self, path):
        depth, out, table = 0, [], False
        for number, line in enumerate((ROOT / path).read_text().splitlines(), 1):
            table = table or bool(re.match(r"\s*(inline )?constexpr .*(=|\{)", line) and "(" not in line.split("=")[0])
            inside = depth > namespaces_open(out)
            if inside and not table and not SKIPPED.search(line):
                line = self.of_line(path, number, line)
            if table and line.rstrip().endswith(";"):
                table = False
            depth += line.count("{") - line.count("}")
            out.append(line)
        return "\n".join(out) + "\n"


def namespaces_open(lines):
    text = "\n".join(line for line in lines if re.match(r"(namespace|\}  // namespace)", line))
    return text.count("{") - text.count("}")


def compile_all(folder, sources, jobs):
    flags = ["-std=c++20", "-O0", "-w", "-I", str(folder / "src"), "-include", str(ROOT / "tests/checks/mutate.hpp"), "-DFMT_SHARED",
             "-ffp-contract=off", f'-DSEAMBOOK_ROOT="{ROOT}"', '-DSEAMBOOK_VERSION="0"']
    compiler = [os.environ.get("CXX", "g++")]
    running, objects = [], []
    for at, source in enumerate(sources):
        objects.append(folder / f"{at}.o")
        if objects[-1].exists():
            continue
        while len(running) >= jobs:
            assert running.pop(0).wait() == 0, "a mutated file does not compile"
        running.append(subprocess.Popen([*compiler, *flags, "-c", str(source), "-o", str(objects[-1])]))
    for process in running:
        assert process.wait() == 0, "a mutated file does not compile"
    return objects


def build(folder, build_tree, jobs):
    mutants = Mutants()
    shutil.copytree(ROOT / "src", folder / "src", dirs_exist_ok=True)
    for part in MUTATED:
        for path in sorted((ROOT / part).glob("*pp")):
            (folder / path.relative_to(ROOT)).write_text(mutants.of_file(path.relative_to(ROOT)))
    unities = []
    for part in REBUILT:
        unities.append(folder / f"{Path(part).name}.cpp")
        unities[-1].write_text("".join(f'#include "{path}"\n' for path in sorted((folder / part).glob("*.cpp"))))
    tests = [path for part in TESTS for path in sorted(ROOT.glob(f"{part}.cpp"))]
    objects = compile_all(folder, [ROOT / "tests/main.cpp", *unities, *tests, *(ROOT / helper for helper in HELPERS)], jobs)
    library = next(Path(build_tree).rglob("libseambook_core.a"))
    program = folder / "mutants"
    subprocess.run(["g++", *map(str, objects), str(library), "-lyaml-cpp", "-lspdlog", "-lfmt", "-lxlsxwriter", "-lzip", "-lpugixml", "-o", str(program)], check=True)
    return mutants, program, [path for path in tests if "TEST_CASE" in path.read_text()]


def run(program, test, mutant, reached=None, seconds=120):
    extra = {"MUTANT": str(mutant)} | ({"MUTANTS_REACHED": str(reached)} if reached else {})
    began = time.monotonic()
    try:
        code = subprocess.run([program, f"--source-file={test}", "--abort-after=1"], env=os.environ | extra, cwd=ROOT, timeout=seconds,
                              stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL, check=False).returncode
    except subprocess.TimeoutExpired:
        code = -1
    return code, time.monotonic() - began


def main():
    words = argparse.ArgumentParser(description=__doc__)
    words.add_argument("build")
    words.add_argument("--sample", type=int, default=0)
    words.add_argument("--seed", type=int, default=1)
    words.add_argument("--minutes", type=float, default=20)
    words.add_argument("--jobs", type=int, default=2)
    words.add_argument("--folder", type=Path, help="kept, and what is compiled in it is not compiled again")
    given = words.parse_args()
    with tempfile.TemporaryDirectory() as kept:
        folder = given.folder or Path(kept)
        mutants, program, tests = build(folder, given.build, given.jobs)
        reaching, took = {}, {}
        for test in tests:
            code, took[test] = run(program, test, 0, folder / "reached")
            if code != 0:
                print(f"left out: {test} fails alone, without any mutant")
                continue
            for mutant in map(int, (folder / "reached").read_text().split()):
                reaching.setdefault(mutant, []).append(test)
        chosen = sorted(reaching)
        random.Random(given.seed).shuffle(chosen)
        chosen = chosen[:given.sample or None]
        ends = time.monotonic() + given.minutes * 60
        killed, survivors = 0, []
        for mutant in chosen:
            if time.monotonic() > ends:
                break
            if any(run(program, test, mutant, seconds=10 + 5 * took[test])[0] != 0 for test in sorted(reaching[mutant], key=took.get)):
                killed += 1
            else:
                survivors.append(mutant)
                print("survives", mutants.lines[mutant], flush=True)
    tried = killed + len(survivors)
    print(f"{len(mutants.lines)} mutants, {len(reaching)} reached, {tried} tried: {killed} killed, {100 * killed / max(tried, 1):.1f} %")
    print("never reached:", *(f"\n  {line}" for mutant, line in mutants.lines.items() if mutant not in reaching))
    return 0


if __name__ == "__main__":
    sys.exit(main())
