#!/usr/bin/env python3
"""An invented shop's week for `plan`: 4 stations, 6 welders, about 400 operations of 40 orders, written to a folder and, when
the executable is given, planned; says how long it took and how far the plan is from what no plan comes below.

    shop_week.py FOLDER [SEAMBOOK [WORD ...]]     further words go to `plan`, such as --seconds 10
"""
import json
import random
import resource
import shutil
import subprocess
import sys
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
WHY = "basis: assumption, source: generated"
ORDERS, JOINTS = 40, 9
CARBON = "filler: G3Si1-1.0, feed: solid 1.0, gas: M21, cleanliness: carbon"
STAINLESS = "filler: 308LSi-1.0, feed: solid 1.0, gas: M12, cleanliness: stainless"
STATIONS = [("W1", "[135]", '["1"]', CARBON), ("W2", "[135]", '["1", "8"]', CARBON),
            ("W3", "[135, 141]", '["8"]', STAINLESS), ("W4", "[135, 141]", '["1", "8"]', STAINLESS)]
WELDERS = {"V1": [(135, "1", 20)], "V2": [(135, "1", 20), (135, "8", 6)], "V3": [(135, "1", 10), (141, "8", 6)],
           "V4": [(135, "8", 20), (141, "8", 10)], "V5": [(141, "8", 6), (135, "8", 6)], "V6": [(135, "1", 6), (135, "8", 10)]}
# Base metal, procedure, leg, thickness.
SEAMS = {"carbon": [("S235", "CG-F3", 3, 4), ("S235", "CG-F4", 4, 6), ("S235", "CG-F5", 5, 8), ("S235", "CG-F6", 6, 10)],
         "stainless": [("1.4301", "SG-F3", 3, 4), ("1.4301", "SG-F4", 4, 6), ("1.4301", "ST-F2", 2, 2), ("1.4301", "ST-F4", 4, 5)]}
CHANGES = [("papers", "job", 5), ("fixture", "weldment", 10), ("spool", "filler", 5), ("gas", "gas", 5), ("torch", "process", 8)]


def stations():
    lines = ["format: 1", "stations:"]
    for name, processes, groups, mounted in STATIONS:
        lines.append(f"  - {{name: {name}, processes: {processes}, groups: {groups}, mounted: {{process: 135, {mounted}}}, {WHY}}}")
    lines.append("change_tasks:")
    for name, when, minutes in CHANGES:
        lines.append(f"  - {{name: {name}, when: {when}, time: {minutes} min, {WHY}}}")
    lines.append(f"  - {{name: clean down, when: cleanliness, from: [carbon], to: [stainless], time: 30 min, {WHY}}}")
    lines.append("welders:")
    for stamp, ranges in WELDERS.items():
        held = ", ".join(f'{{process: {process}, groups: ["{group}"], thickness: [1 mm, {most} mm], positions: [PA, PB]}}'
                         for process, group, most in ranges)
        lines.append(f"  - {{stamp: {stamp}, grade: welder, qualifications: [{held}]}}")
    return "\n".join(lines) + "\n"


def calendar():
    return (f"format: 1\nshifts:\n  - {{name: day, days: [Mon, Tue, Wed, Thu, Fri], start: 06:00, end: 15:00, "
            f"breaks: [{{at: 09:00, time: 15 min}}, {{at: 12:00, time: 30 min}}], clear_up: 10 min, {WHY}}}\n"
            f"overtime: {{shifts: [day], most: 2 h, premium: 50 %, {WHY}}}\n")


def job(number, draw):
    kind = draw.choice(["carbon", "carbon", "stainless"])
    lines = ["format: 1", f"job: order-{number:02}", "finish: F1", f"due: 2026-05-{draw.choice([12, 13, 14, 15, 15])}",
             "qualified: true", "weldments:", "  - name: frame", "    parts: 4", "    free_issue: true", "    joints:"]
    for j in range(JOINTS):
        metal, procedure, leg, thickness = draw.choice(SEAMS[kind])
        after = f", after: [J{draw.randint(1, j)}]" if j and draw.random() < 0.5 else ""
        lines.append(f'      - {{id: J{j + 1}, weld: fillet, leg: {leg} mm, thickness: {thickness} mm, base_metal: "{metal}", '
                     f"length: {draw.randint(10, 50) * 10} mm, count: {draw.randint(1, 4)}, position: PB, procedure: {procedure}, "
                     f"passes: 1{after}}}")
    return "\n".join(lines) + "\n"


def write_week(folder):
    shutil.copytree(ROOT / "rates", folder / "rates", ignore=shutil.ignore_patterns("with-*"), dirs_exist_ok=True)
    (folder / "rates/stations.yaml").write_text(stations())
    (folder / "rates/calendar.yaml").write_text(calendar())
    draw = random.Random(20260511)
    names = []
    for number in range(1, ORDERS + 1):
        names.append(folder / f"order-{number:02}.yaml")
        names[-1].write_text(job(number, draw))
    return names


def plan_week(folder, names, seambook, words):
    began = time.monotonic()
    done = subprocess.run([seambook, "plan", *names, "--rates", folder / "rates", "--date", "2026-05-11", "--out", folder / "out",
                           "--force", "--quiet", "--json", *words], capture_output=True, text=True, check=False)
    took = time.monotonic() - began
    used = resource.getrusage(resource.RUSAGE_CHILDREN).ru_utime
    if done.returncode != 0:
        sys.exit(done.stderr)
    plan = json.loads(done.stdout)
    steps = [step for station in plan["stations"] for step in station["steps"]]
    print(f"{len(steps)} operations, {took:.1f} s, of the processor {used:.1f} s")
    for level in plan["levels"]:
        print(f"  {level['name']}: {level['value']:.0f}, no plan below {level['bound']:.0f}")
    for other in plan["plans"]:
        print(f"  {other['name']}: undone {other['cannot_be_done']}, late {other['late_min']:.0f} min, set-ups {other['change_min']:.0f} min, "
              f"done {other['finish']}")
    for entry in plan["blocked"][:3]:
        print(f"  {entry['what']}: {entry['kind']}: {entry['reason']}")


def main():
    folder = Path(sys.argv[1])
    folder.mkdir(parents=True, exist_ok=True)
    names = write_week(folder)
    if len(sys.argv) > 2:
        plan_week(folder, names, Path(sys.argv[2]).resolve(), sys.argv[3:])


if __name__ == "__main__":
    main()
