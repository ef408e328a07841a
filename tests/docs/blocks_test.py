#!/usr/bin/env python3
"""Every block of commands and YAML in the guides is run: `sh` by a shell in a copy of the examples, `console` likewise
and its output held against what is printed, whole YAML files by the program, fragments put into a job, a rate book or a
day and then read by the program.
usage: blocks_test.py SEAMBOOK ROOT"""
import json
import os
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile

sys.path.insert(0, str(pathlib.Path(__file__).resolve().parent.parent / "schema"))
import yaml_core

GUIDES = ("README.md", "jobs/README.md", "rates/README.md")
LANGUAGES = ("sh", "console", "yaml", "")  # without a language: tables of usage, for people

LARGE = ("brewhouse-platform.yaml", "wash-down-cabinet.yaml")  # left out of the copy: planning them takes long
STEEL = {"base_metal": "S235", "free_issue": True}  # somebody must say what the metal costs

program, root = pathlib.Path(sys.argv[1]).resolve(), pathlib.Path(sys.argv[2]).resolve()
faults, ran = [], {}


def fault(where, what):
    faults.append(where)
    print(f"FAULT: {where}: {what}")


def blocks(path):
    """Line, language and text of each fenced block."""
    begun = None
    for number, line in enumerate((root / path).read_text().splitlines(), 1):
        if line.startswith("```"):
            if begun:
                yield begun[0], begun[1], "\n".join(begun[2]) + "\n"
                begun = None
            else:
                begun = (number, line[3:].strip(), [])
        elif begun:
            begun[2].append(line)


def shell(command, folder):
    environment = {**os.environ, "PATH": f"{folder / 'bin'}:{os.environ['PATH']}", "LC_ALL": "C.UTF-8", "COLUMNS": "240"}
    return subprocess.run(["bash", "-euc", command], cwd=folder, env=environment, capture_output=True, text=True)


def run_commands(where, text, folder):
    if "./setup.sh" in text:
        return  # installs packages: tests/checks/bare_root.sh does that
    done = shell(text, folder)
    if done.returncode != 0:
        fault(where, f"exit code {done.returncode}: {done.stderr[-600:]}")


def run_console(where, text, folder):
    """`$ command`, then lines that must come in this order; what stands between them may be left out by `...`."""
    command, *wanted = text.splitlines()
    done = shell(command.removeprefix("$ "), folder)
    printed = (done.stdout + done.stderr).splitlines()
    at, skipping = 0, False
    for line in wanted:
        if line.strip() == "...":
            skipping = True
            continue
        found = next((i for i in range(at, len(printed)) if printed[i].rstrip() == line.rstrip()), None)
        if found is None or (found != at and not skipping and at > 0):
            return fault(where, f"not printed here: {line!r}; there is {printed[at:at + 2]}")
        at, skipping = found + 1, False


def check_with(where, folder, name, job, *options):
    path = folder / "jobs" / name
    path.write_text(job if isinstance(job, str) else json.dumps({"format": 1, **job}, indent=1))
    done = subprocess.run([program, "check", path, *options], capture_output=True, text=True, cwd=folder)
    if done.returncode != 0:
        fault(where, done.stderr[-800:])


def properties(topic):
    schema = json.loads(subprocess.run([program, "schema", topic], capture_output=True, text=True).stdout)
    return set(schema["properties"])


def merged_rates(folder, part):
    """The rate book with `part` in it: lists are added to, sections and entries take the place of those that stood."""
    book = {}
    for path in sorted((root / "rates").glob("*.yaml")):
        for key, value in yaml_core.load(path.read_text()).items():
            book[key] = book[key] + value if isinstance(book.get(key), list) else value
    for key, value in part.items():
        if isinstance(value, list) and key != "closed":
            names = [entry.get("name", entry) for entry in value]
            value = [entry for entry in book.get(key, []) if entry.get("name", entry) not in names] + value
        book[key] = value
    target = pathlib.Path(tempfile.mkdtemp(dir=folder))
    (target / "all.yaml").write_text(json.dumps({"format": 1, **book}, indent=1))
    return target


def run_yaml(where, text, folder, keys):
    value = yaml_core.load(text)
    plate = {"weld": "fillet", "leg": "5 mm", "thickness": "8 mm", "length": "400 mm"}
    if isinstance(value, list):
        check_with(where, folder, "block.yaml", {"job": "block", "weldments": [
            {"name": "plate", **STEEL, "joints": value}]})
    elif "job" in value:
        check_with(where, folder, "block.yaml", text)
        example = root / f"jobs/{value['job']}.yaml"
        if example.exists() and yaml_core.load(example.read_text()) != value:
            fault(where, f"is not as {example.name} is")
    elif "format" in value and keys["day"] >= set(value):
        (folder / "day.yaml").write_text(text)
        done = subprocess.run([program, "plan", root / "jobs/pipe-set.yaml", "--date", "2026-05-11", "--day", "day.yaml", "--out", "day"],
                              capture_output=True, text=True, cwd=folder)
        if done.returncode != 0:
            fault(where, done.stderr[-800:])
    elif keys["job"] >= set(value):
        optional = [{"name": option["name"], "option": option["name"], **STEEL, "joints": [plate]}
                    for option in value.get("options", []) if "bought" not in option]
        check_with(where, folder, "block.yaml", {"job": "block", **value, "weldments": [
            {"name": "plate", **STEEL, "joints": [plate]}, *optional]})
    elif keys["rates"] >= set(value):
        check_with(where, folder, "bracket.yaml", (root / "jobs/bracket.yaml").read_text(), "--rates",
                   merged_rates(folder, value))
    else:
        fault(where, f"keys of no file: {sorted(value)}")


def main():
    keys = {topic: properties(topic) for topic in ("job", "day", "rates")}
    for guide in GUIDES:
        with tempfile.TemporaryDirectory() as scratch:
            folder = pathlib.Path(scratch)
            for name in ("jobs", "rates"):
                shutil.copytree(root / name, folder / name, ignore=shutil.ignore_patterns(*LARGE))
            (folder / "bin").mkdir()
            (folder / "bin/seambook").symlink_to(program)
            for line, language, text in blocks(guide):
                where = f"{guide}:{line}"
                if language not in LANGUAGES:
                    fault(where, f"a block of '{language}', which nothing tests")
                if language == "yaml":
                    run_yaml(where, text, folder, keys)
                    if name := re.match(r"# (\S+\.yaml)\n", text):  # later blocks may use it
                        (folder / name[1]).write_text(text)
                elif language == "sh":
                    run_commands(where, text, folder)
                elif language == "console":
                    run_console(where, text, folder)
                ran[language] = ran.get(language, 0) + 1
    print(", ".join(f"{number} blocks of {language or 'plain text'}" for language, number in ran.items()))
    print(f"{len(faults)} faults")
    sys.exit(1 if faults or ran.get("yaml", 0) < 15 or ran.get("sh", 0) < 6 else 0)


main()
