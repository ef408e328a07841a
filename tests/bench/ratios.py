#!/usr/bin/env python3
"""How long large work takes, as ratios to what the libraries alone take for its input and output, and to other ways.

    ratios.py SEAMBOOK [--joints N] [--jobs N] [--office-joints N]

Programs beside SEAMBOOK in `tests/` (bare, estimate_bench) are used where they were built; else their ratio is left out.
"""
import argparse
import html
import json
import os
import re
import resource
import subprocess
import sys
import tempfile
import time
import zipfile
from pathlib import Path

from big_jobs import job_text

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT / "tests/recalc"))
from office import office_recalculated  # noqa: E402

COMMON = ["--rates", str(ROOT / "rates"), "--date", "2026-05-11", "--quiet"]
SHOWN = "{:58} {:>10} {:>10} {:>8}  {}"


def run(*command):
    """Processor seconds and peak MB of one program; its output is thrown away."""
    with subprocess.Popen(command, stdout=subprocess.DEVNULL, stderr=subprocess.PIPE) as child:
        said = child.stderr.read().decode(errors="replace")
        _, status, used = os.wait4(child.pid, 0)
        child.returncode = os.waitstatus_to_exitcode(status)
    if child.returncode != 0:
        sys.exit(f"{' '.join(map(str, command))} ended with {child.returncode}: {said}")
    return used.ru_utime + used.ru_stime, used.ru_maxrss / 1024


def least(times, *command):
    """Of several runs the least time and the greatest memory: other work on the machine only adds to time."""
    runs = [run(*command) for _ in range(times)]
    return min(r[0] for r in runs), max(r[1] for r in runs)


def seconds(work):
    began = time.monotonic()
    work()
    return time.monotonic() - began


def child_seconds(work):
    """Processor seconds of the programs that `work` runs."""
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    work()
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def show(what, ours, other, ratio, aim):
    print(SHOWN.format(what, f"{ours:.2f} s", f"{other:.2f} s", f"{ratio:.2f}", aim), flush=True)


CELL = re.compile(rb'<c r="([A-Z]+)(\d+)"[^>]*?(?:/>|>(?:<is><t[^>]*>(.*?)</t></is>|(?:<f>(.*?)</f>)?<v>(.*?)</v>)</c>)', re.S)


def cell_list(workbook, path):
    """The cells of a workbook as `bare cells` reads them; gives how many there are."""
    counts = {"number": 0, "string": 0, "formula": 0}
    columns = {}
    with zipfile.ZipFile(workbook) as parts, open(path, "w", encoding="utf-8") as out:
        names = re.findall(r'<sheet name="([^"]+)"', parts.read("xl/workbook.xml").decode())
        for number, name in enumerate(names, 1):
            out.write(f"\t{html.unescape(name)}\n")
            for column, row, text, formula, value in CELL.findall(parts.read(f"xl/worksheets/sheet{number}.xml")):
                at = f"{int(row) - 1}\t{columns.setdefault(column, column_number(column))}"
                if formula:
                    kind, held = "formula", f"{plain(value)}\t={plain(formula)}"
                else:
                    kind, held = ("number", plain(value)) if value else ("string", plain(text))
                if held:
                    counts[kind] += 1
                    out.write(f"{kind[0]}\t{at}\t{held}\n")
    return counts


def column_number(letters):
    number = 0
    for letter in letters:
        number = number * 26 + letter - 64
    return number - 1


def plain(xml):
    return html.unescape(xml.decode()).replace("\t", " ").replace("\n", " ")


def large_job(seambook, bare, folder, joints):
    job = folder / "large.yaml"
    job.write_text(job_text("large", joints, 1))
    estimate, memory = least(2, seambook, "estimate", job, "--json", *COMMON)
    if not bare.exists():
        print(f"(1) (2) left out: {bare} is not built (estimate {estimate:.2f} s)")
        return
    events, _ = least(3, bare, "events", job)
    show(f"(1) estimate --json, {joints:,} joints / parser's events", estimate, events, estimate / events, f"<= 2.0; {memory:.0f} MB")
    quote, memory = run(seambook, "quote", job, "--out", folder / "out", "--force", *COMMON)
    counts = cell_list(folder / "out/large-quote.xlsx", folder / "cells")
    cells = float(subprocess.run([bare, "cells", folder / "cells", folder / "bare.xlsx"], capture_output=True, text=True, check=True).stdout)
    print(f"    cells: {counts}; the spreadsheet library alone {cells:.2f} s")
    show("(2) quote / estimate --json and the same cells", quote, estimate + cells, quote / (estimate + cells),
         f"<= 1.6; {memory:.0f} MB of <= 400")


def many_jobs(seambook, folder, count):
    names = []
    for number in range(count):
        names.append(folder / f"job-{number:04}.yaml")
        names[-1].write_text(job_text(f"job-{number:04}", 30, number))
    half = count // 2

    def start(threads, some):
        # pylint: disable-next=consider-using-with
        return subprocess.Popen([seambook, "estimate", "--json", "--jobs", str(threads), *COMMON, *some], stdout=subprocess.DEVNULL)

    def finish(*children):
        if any([child.wait() for child in children]):
            sys.exit("a run over many jobs failed")

    one, two = [], []
    for _ in range(3):
        one.append(seconds(lambda: finish(start(2, names))))
        two.append(seconds(lambda: finish(start(1, names[:half]), start(1, names[half:]))))
    show(f"(3) {count:,} jobs: two processes / --jobs 2 (by the clock)", min(two), min(one), min(two) / min(one), ">= 0.9")


def passes(program):
    if not program.exists():
        print(f"(4) left out: {program} is not built")
        return
    done = subprocess.run([program, "--benchmark_filter=plain", "--benchmark_format=json"], capture_output=True, text=True, check=True)
    for entry in json.loads(done.stdout)["benchmarks"]:
        print(f"(4) {entry['name']}: {1e-6 / entry['per_pass']:.1f} million passes a second  (aim >= 5)")


def office(seambook, folder, joints):
    job = folder / "office.yaml"
    job.write_text(job_text("office", joints, 2))
    whole = run(seambook, "quote", job, "--out", folder / "out", "--force", *COMMON)[0]
    estimate = least(3, seambook, "estimate", job, "--json", *COMMON)[0]
    (folder / "recalculated").mkdir()
    try:
        took = child_seconds(lambda: office_recalculated([folder / "out/office-quote.xlsx"], folder / "recalculated"))
    except FileNotFoundError:
        print("(5) left out: no office suite (soffice)")
        return
    show(f"(5) recalculation of {joints:,} joints / whole quote", took, whole, took / whole, ">= 1")
    show("(5) recalculation / estimate --json, reading and writing included", took, estimate, took / estimate, ">= 10")


def main():
    words = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    words.add_argument("seambook", type=Path)
    words.add_argument("--joints", type=int, default=50_000)
    words.add_argument("--jobs", type=int, default=2_000)
    words.add_argument("--office-joints", type=int, default=3_000)
    given = words.parse_args()
    seambook = given.seambook.resolve()
    tools = seambook.parent / "tests"
    print(f"load of the machine {os.getloadavg()[0]:.1f}, {os.cpu_count()} processors")
    print(SHOWN.format("", "first", "second", "ratio", "aim"))
    with tempfile.TemporaryDirectory() as made:
        folder = Path(made)
        large_job(seambook, tools / "bare", folder, given.joints)
        many_jobs(seambook, folder, given.jobs)
        passes(tools / "estimate_bench")
        office(seambook, folder, given.office_joints)


if __name__ == "__main__":
    main()
