"""The order in which jobs are named changes nothing but the order in which they are told of: each job's workbook has the same bytes
and its JSON the same text, alone, in any order and beside a faulty job. Called with the seambook executable and the source root."""
import itertools
import json
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
JOBS = ["bracket", "pipe-set", "wash-down-cabinet"]


class JobOrder(unittest.TestCase):
    def setUp(self):
        kept = tempfile.TemporaryDirectory()
        self.addCleanup(kept.cleanup)
        self.out = Path(kept.name)
        self.faulty = self.out / "faulty.yaml"
        self.faulty.write_text("format: 1\njob: faulty\nweldments: [{name: w, joints: [{weld: fillet, leg: x}]}]\n")

    def made(self, verb, jobs, code=0):
        folder = self.out / "made"
        words = [SEAMBOOK, verb, *(ROOT / f"jobs/{job}.yaml" if job in JOBS else job for job in jobs), "--json", "--date", "2026-05-11"]
        if verb != "estimate":
            words += ["--out", folder, "--force"]
        done = subprocess.run(words, capture_output=True, text=True, check=False, timeout=300)
        self.assertEqual(done.returncode, code, done.stderr)
        told = [(job["job"], json.dumps(job)) for job in json.loads(done.stdout)["jobs"]]
        books = {path.name: path.read_bytes() for path in folder.glob("*.xlsx")}
        for path in folder.glob("*.xlsx"):
            path.unlink()
        return told, books

    def same_in_any_order(self, verb, jobs=JOBS):
        alone, books = {}, {}
        for job in jobs:
            told, made = self.made(verb, [job])
            alone |= dict(told)
            books |= made
        self.assertEqual(len(alone), len(jobs))
        orders = list(itertools.permutations(jobs))
        for order in orders if verb == "estimate" else orders[1::2]:
            with self.subTest(verb=verb, order=order):
                told, made = self.made(verb, order)
                self.assertEqual([name for name, _ in told], [json.loads(alone[job])["job"] for job in order])
                self.assertEqual(dict(told), alone)
                self.assertEqual(made, books)
        told, _ = self.made(verb, [jobs[1], self.faulty, jobs[0]], code=1)
        self.assertEqual(dict(told), {job: alone[job] for job in (jobs[1], jobs[0])})

    def test_estimate(self):
        self.same_in_any_order("estimate")

    def test_quote(self):
        self.same_in_any_order("quote")

    def test_compare(self):
        self.same_in_any_order("compare", JOBS[1:])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
