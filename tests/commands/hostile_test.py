"""Hostile files are refused: exit code 1, a complaint with place and advice, at most 2 s of processor time and 300 MB, no control
characters on the terminal. As a job, a rate book, a day file, a take-off, an order of work, earlier results. Sanitizers slow the
program and keep memory of their own, so only what it says is looked at there. Other work on the machine makes a run slower, never
quicker: the quickest of three counts. Called with the seambook executable and the source
root; a third argument chooses cases by a part of their name and prints what each took."""
import os
import re
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

import hostile_files as hostile

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
WANTED = sys.argv[3] if len(sys.argv) > 3 else None
SANITIZED = b"__asan_init" in SEAMBOOK.read_bytes()
SECONDS, MEGABYTES = 2, 300
# The parser itself takes longer for what is no fault until the limit of values is reached.
SLOW = {"many more than five million values": 8}
BRACKET, RATES = ROOT / "jobs/bracket.yaml", ROOT / "rates"


def write_apart(function_of, path):
    """In a process of its own: what this one has held counts as its children's memory."""
    child = os.fork()
    if child == 0:
        path.write_bytes(function_of())
        os._exit(0)
    assert os.waitpid(child, 0)[1] == 0


class Hostile(unittest.TestCase):
    def setUp(self):
        kept = tempfile.TemporaryDirectory()
        self.addCleanup(kept.cleanup)
        self.folder = Path(kept.name)

    def run_once(self, words):
        with open(self.folder / "errors", "wb") as errors:
            program = subprocess.Popen([SEAMBOOK, *map(str, words)], cwd=self.folder, stdin=subprocess.DEVNULL,
                                       stdout=subprocess.DEVNULL, stderr=errors)
            _, status, used = os.wait4(program.pid, 0)
            program.returncode = os.waitstatus_to_exitcode(status)
        said = (self.folder / "errors").read_bytes()
        return program.returncode, said, used.ru_utime + used.ru_stime, used.ru_maxrss / 1024

    def refused(self, name, words, pattern):
        code, said, seconds, megabytes = self.run_once(words)
        if WANTED is not None:
            print(f"{seconds:6.2f} s {megabytes:5.0f} MB  {words[0]} {name}: {said[:300].decode(errors='replace')}")
        self.assertEqual(code, 1, said[:2000])
        self.assertRegex(said.decode(), pattern)
        self.assertIsNone(re.search(rb"[\x00-\x09\x0b-\x1f\x7f]|\xe2\x80\xae", said), "a control character on the terminal")
        self.assertLess(len(said), 2 << 20)
        self.assertEqual(sorted(path.suffix for path in self.folder.rglob("*.xlsx")), [])
        if SANITIZED:
            return
        most = SLOW.get(name, SECONDS)
        for _ in range(2):
            if seconds >= most:
                seconds = min(seconds, self.run_once(words)[2])
        self.assertLess(seconds, most)
        self.assertLess(megabytes, MEGABYTES)

    def each(self, cases, path, words, place=True):
        path.parent.mkdir(exist_ok=True)
        for name, function_of, pattern in cases if place else cases[::4]:  # the same reader reads them all
            if WANTED is not None and WANTED not in name:
                continue
            with self.subTest(name):
                write_apart(function_of, path)
                self.refused(name, words, pattern if place else r": error: ")

    def test_as_a_job(self):
        self.each(hostile.ALL, self.folder / "hostile.yaml", ["check", "hostile.yaml", "--rates", RATES])

    def test_as_a_rate_book(self):
        self.each(hostile.ALL, self.folder / "rates/hostile.yaml", ["check", BRACKET, "--rates", "rates"], place=False)

    def test_as_a_day_file(self):
        self.each(hostile.ALL, self.folder / "hostile.yaml", ["plan", BRACKET, "--rates", RATES, "--day", "hostile.yaml"], place=False)
        self.each(hostile.CSV, self.folder / "hostile.csv", ["plan", BRACKET, "--rates", RATES, "--day", "hostile.csv"], place=False)

    def test_as_a_take_off(self):
        (self.folder / "job.yaml").write_bytes(hostile.JOB.replace(b"joints:", b"joints_from: hostile.csv"))
        self.each(hostile.CSV, self.folder / "hostile.csv", ["check", "job.yaml", "--rates", RATES])

    def test_as_an_order_of_work(self):
        self.each(hostile.CSV, self.folder / "hostile.csv", ["plan", BRACKET, "--rates", RATES, "--order", "hostile.csv"], place=False)

    def test_as_earlier_results(self):
        path = self.folder / "hostile.json"
        self.each(hostile.JSON, path, ["plan", BRACKET, "--rates", RATES, "--date", "2026-05-11", "--from", path.name])
        self.each(hostile.JSON, path, ["plan", BRACKET, "--rates", RATES, "--date", "2026-05-11", "--verify", path.name])
        self.each(hostile.JSON, path, ["quote", BRACKET, "--rates", RATES, "--against", path.name])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
