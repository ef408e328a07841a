#!/usr/bin/env python3
"""A batch gives the same bytes whatever the number of threads, the time zone, the locale; shards of a list give together
what one run gives; names that clash are told of; progress is shown on a terminal alone.

Usage: batch_test.py SEAMBOOK ROOT
"""
import difflib
import hashlib
import json
import os
import pathlib
import pty
import subprocess
import sys
import tempfile

program, root = sys.argv[1], pathlib.Path(sys.argv[2])
faults = 0


def expect(what, good, seen=""):
    global faults
    if not good:
        faults += 1
        print(f"{what}: {seen}"[:3000])


def run(*words, text=None, folder=root, **environment):
    done = subprocess.run([program, *map(str, words)], input=text, capture_output=True, text=True, cwd=folder,
                          env={**os.environ, **environment})
    return done.returncode, done.stdout, done.stderr


def files(folder):
    return {path.name: hashlib.sha256(path.read_bytes()).hexdigest() for path in sorted(pathlib.Path(folder).iterdir())}


def differing(seen):
    """The lines that differ between runs."""
    words = ["\n".join(map(str, (done, names))).split("\\n") for done, names in seen]
    return [list(difflib.unified_diff(words[0], other, lineterm="", n=0)) for other in words[1:]]


def shop(folder):
    """A rate book and jobs of unlike size: sound ones, faulty ones, ones with warnings."""
    folder = pathlib.Path(folder)
    (folder / "rates").symlink_to(root / "rates")
    bracket = (root / "jobs/bracket.yaml").read_text()
    jobs = []
    for number in range(9):
        text = bracket.replace("job: bracket", f"job: bracket {number}").replace("parts: 7", f"parts: {number + 2}")
        if number % 5 == 3:
            text = text.replace("leg: 5 mm", "leg: 5 furlongs")
        if number % 5 == 4:
            text = text.replace("leg: 5 mm", "leg: 2 mm")
        if number == 0:  # the first takes longest
            joint = "      - {weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, count: 4}\n"
            text = text.replace(joint, joint * 30)
        path = folder / f"{number:02}.yaml"
        path.write_text(text)
        jobs.append(path.name)
    jobs.append("missing.yaml")
    return folder, jobs


def same_whatever_the_threads(folder, jobs):
    for verb, form in (("check", ["--strict", "--verbose"]), ("check", ["--json"]), ("estimate", []),
                       ("estimate", ["--json"]), ("quote", ["--strict"]), ("quote", ["--json"])):
        seen = []
        for threads in (1, 2, 5):
            with tempfile.TemporaryDirectory() as out:
                where = ["--out", out] if verb == "quote" else []
                done = run(verb, "--date", "2026-05-04", "--jobs", threads, *form, *where, *jobs, folder=folder)
                done = (done[0], *(words.replace(out, "OUT") for words in done[1:]))
                seen.append((done, files(out)))
        expect(f"{verb} {form} depends on --jobs", seen[0] == seen[1] == seen[2], differing(seen))
        expect(f"{verb} {form}: exit code", seen[0][0][0] == 3, seen[0][0])
        if form == ["--json"]:
            document = json.loads(seen[0][0][1])
            expect(f"{verb}: jobs", len(document["jobs"]) == 7, [job.get("file") for job in document["jobs"]])
            expect(f"{verb}: places", any(d["file"] == "03.yaml" and d["line"] for d in document["diagnostics"]))
        if form == ["--strict"]:
            expect("workbooks", len(seen[0][1]) == 6, seen[0][1])


def compare_adds_up(folder):
    """The sum over the jobs of a list does not depend on the threads; a shard gives none."""
    cabinet = (root / "jobs/wash-down-cabinet.yaml").read_text()
    names = [f"cabinet-{number}" for number in range(3)]
    for name in names:
        (folder / f"{name}.yaml").write_text(cabinet.replace("job: wash-down-cabinet", f"job: {name}"))
    jobs = [f"{name}.yaml" for name in names]
    seen = []
    for words in (["--jobs", 1], ["--jobs", 3], ["--shard", "1/2"]):
        with tempfile.TemporaryDirectory() as out:
            code, printed, said = run("compare", "--json", "--date", "2026-05-04", *words, "--out", out, *jobs,
                                      folder=folder)
            expect(f"compare {words}", code == 0, said)
            seen.append((json.loads(printed.replace(out, "OUT")), files(out)))
    expect("compare depends on --jobs", seen[0] == seen[1])
    expect("together", len(seen[0][0]["together"]) == 1 and len(seen[0][1]) == 3, seen[0][1])
    expect("a shard's part", seen[2][0]["together"] == [] and len(seen[2][1]) == 2, seen[2][1])


def messages_stand_together(folder, jobs):
    _, _, said = run("check", "--jobs", 4, *jobs, folder=folder)
    order = [line.split(":")[0] for line in said.splitlines() if line.startswith("0")]
    expect("order of messages", order == sorted(order) and "03.yaml" in order, said)


def same_in_other_places(folder, jobs):
    """Time zones, locales and the order of the jobs change no byte of a workbook or of a job's JSON."""
    seen, documents = [], []
    for zone, tongue, order in (("UTC", "C", jobs), ("Pacific/Kiritimati", "de_DE.UTF-8", jobs),
                                ("America/St_Johns", "C.UTF-8", jobs[::-1])):
        with tempfile.TemporaryDirectory() as out:
            _, printed, _ = run("quote", "--json", "--date", "2026-05-04", "--out", out, *order, folder=folder, TZ=zone,
                                LC_ALL=tongue, LANG=tongue)
            seen.append(files(out))
            documents.append(sorted(json.dumps(job) for job in json.loads(printed.replace(out, "OUT"))["jobs"]))
    expect("workbooks by zone, locale, order", seen[0] == seen[1] == seen[2], seen)
    expect("JSON by zone, locale, order", documents[0] == documents[1] == documents[2])


def shards_make_the_whole(folder, jobs):
    clashing = jobs + ["again.yaml"]  # the name of the second job, in another shard
    (folder / "again.yaml").write_text((folder / "01.yaml").read_text().replace("bracket 1", "BRACKET 1"))
    common = ["quote", "--date", "2026-05-04", "--json"]
    with tempfile.TemporaryDirectory() as whole, tempfile.TemporaryDirectory() as parts:
        _, all_jobs, _ = run(*common, "--out", whole, *clashing, folder=folder)
        documents = []
        for shard in (1, 2, 3):
            _, printed, _ = run(*common, "--out", parts, "--shard", f"{shard}/3", *clashing, folder=folder)
            documents.append(json.loads(printed.replace(parts, "OUT")))
        expect("files of the shards", files(whole) == files(parts) and len(files(whole)) == 7, files(parts))
        wanted = json.loads(all_jobs.replace(whole, "OUT"))
        united = [job for document in documents for job in document["jobs"]]
        place = {name: at for at, name in enumerate(clashing)}
        united.sort(key=lambda job: place[job["file"]])
        expect("JSON of the shards", united == wanted["jobs"])
        told = [json.dumps(d) for document in documents for d in document["diagnostics"]]
        expect("messages of the shards", sorted(told) == sorted(json.dumps(d) for d in wanted["diagnostics"]), told)
        expect("the clash is told", any("01.yaml goes by the same name, but for upper and lower case" in words
                                        for words in told), told)
    code, printed, _ = run("check", "--shard", "40/40", *jobs, folder=folder)
    expect("a shard without jobs", (code, printed) == (0, ""), (code, printed))


def clashes(folder):
    text = (folder / "01.yaml").read_text()
    names = {"a": "Träger/1", "b": "TRÄGER-1", "c": "Träger 1", "d": "other"}
    for file, name in names.items():
        (folder / f"{file}.yaml").write_text(text.replace("job: bracket 1", f"job: {name}"))
    with tempfile.TemporaryDirectory() as out:
        code, _, said = run("quote", "--out", out, *(f"{file}.yaml" for file in names), folder=folder)
        expect("two clash with the first", code == 1 and said.count("goes by the same name") == 2, said)
        expect("the first and the other are there", set(files(out)) == {"Träger-1-quote.xlsx", "other-quote.xlsx"},
               files(out))


def standard_input(folder):
    with tempfile.TemporaryDirectory() as out:
        code, _, said = run("quote", "--out", out, "02.yaml", "-", text=(folder / "01.yaml").read_text(), folder=folder)
        expect("standard input in a list", code == 0 and len(files(out)) == 2, said)


def progress(folder, jobs):
    _, _, said = run("check", *jobs, folder=folder)
    expect("no progress in a pipe", "\r" not in said and "\x1b" not in said, said)
    reader, writer = pty.openpty()
    words = [program, "check", "--jobs", "1", *jobs]
    child = subprocess.Popen(words, stdout=subprocess.PIPE, stderr=writer, cwd=folder,
                             env={**os.environ, "TERM": "xterm", "NO_COLOR": "1"})
    os.close(writer)
    seen = b""
    while True:
        try:
            piece = os.read(reader, 65536)
        except OSError:
            break
        if not piece:
            break
        seen += piece
    child.communicate()
    expect("progress on a terminal", b"\r3 of 10 jobs done" in seen and b"\r\x1b[K03.yaml" in seen, seen)


with tempfile.TemporaryDirectory() as name:
    folder, jobs = shop(name)
    same_whatever_the_threads(folder, jobs)
    messages_stand_together(folder, jobs)
    same_in_other_places(folder, jobs)
    compare_adds_up(folder)
    clashes(folder)
    standard_input(folder)
    progress(folder, jobs)
    shards_make_the_whole(folder, jobs)
sys.exit(1 if faults else 0)
