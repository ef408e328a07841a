"""Very large and very small numbers in every number of a job: each command refuses them at their place or gives finite figures, in
JSON and in each cell. Called with the seambook executable and the source root."""
import json
import re
import subprocess
import sys
import tempfile
import unittest
import zipfile
from pathlib import Path

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
JOB = """format: 1
job: x
quantities: [{quantity}]
weldments:
  - name: w
    count: {weldments}
    parts: {parts}
    turns: {turns}
    mass: {mass} kg
    base_metal: S235
    process: 135
    bought: {{what: b, kind: base_metal, price: {price} EUR each}}
    joints:
      - {{weld: fillet, leg: {leg} mm, thickness: {thickness} mm, length: {length} mm, count: {count}, gap: {gap} mm, procedure: CG-F5}}
      - {{weld: fillet, leg: 3 mm, thickness: 4 mm, length: 600 mm, element: {element} mm, pitch: {pitch} mm}}
      - {{weld: single_v, thickness: {groove} mm, length: 300 mm, groove_angle: {angle} deg, passes: {passes}, procedure: CG-V8}}
      - {{weld: fillet, leg: 3 mm, thickness: 3 mm, outside_diameter: {tube} mm}}
"""
PLAIN = {"quantity": 2, "weldments": 1, "parts": 3, "turns": 1, "mass": 8, "price": 9, "leg": 5, "thickness": 8, "length": 240, "count": 1, "gap": 1,
         "element": 40, "pitch": 150, "groove": 8, "angle": 60, "passes": 2, "tube": 42.4}
COUNTS = ("quantity", "weldments", "parts", "turns", "count", "passes")
LARGE_COUNTS = ("1000000", "1000000000")
LARGE = ("1" + "0" * 15, "1" + "0" * 300)
SMALL = ("0." + "0" * 8 + "1", "0." + "0" * 299 + "1")
UNREADABLE = {"1e300": "an exponent in a number", "1E-300": "an exponent in a number", "0x1F": "not decimal", "0o17": "not decimal",
              "017": "leading zero", ".inf": "a number was expected", "inf": "a number was expected", "nan": "a number was expected",
              "1_000": "between thousands", "1'000": "between thousands", "1.000.000": "two points", "-1": "negative", "+1": "sign"}


def numbers_in(value):
    if isinstance(value, dict):
        value = list(value.values())
    if isinstance(value, list):
        return [number for part in value for number in numbers_in(part)]
    return [value] if isinstance(value, (int, float)) else []


class Extremes(unittest.TestCase):
    def setUp(self):
        kept = tempfile.TemporaryDirectory()
        self.addCleanup(kept.cleanup)
        self.folder = Path(kept.name)
        self.done = 0

    def run_on(self, verb, changed):
        (self.folder / "job.yaml").write_text(JOB.format(**PLAIN | changed))
        return subprocess.run([SEAMBOOK, *verb, "job.yaml", "--rates", ROOT / "rates", "--date", "2026-05-11", "--json"], cwd=self.folder,
                              capture_output=True, text=True, check=False, timeout=120)

    def finite_or_refused(self, verb, changed):
        with self.subTest(verb=verb, changed={key: value[:30] for key, value in changed.items()}):
            done = self.run_on(verb, changed)
            self.assertIn(done.returncode, (0, 1), done.stderr)
            if done.returncode == 1:
                self.assertRegex(done.stderr, r"job.yaml:\d+:\d+: error: ")
                return
            self.done += 1
            self.assertNotRegex(done.stdout, r"\b(nan|inf|NaN|Infinity)\b")
            found = numbers_in(json.loads(done.stdout))
            self.assertGreater(len(found), 10)
            for path in self.folder.glob("out/*.xlsx"):
                with zipfile.ZipFile(path) as book:
                    cells = "".join(book.read(name).decode() for name in book.namelist() if "worksheets/sheet" in name and "rels" not in name)
                self.assertIsNone(re.search(r"<v>-?(nan|inf|#)", cells, re.I))
                path.unlink()

    def each_value(self, verb):
        for key in PLAIN:
            for value in (LARGE_COUNTS if key in COUNTS else LARGE + SMALL)[::1 if verb == ["estimate"] else 2]:
                self.finite_or_refused(verb, {key: value})
        everything = {key: "1000000" if key in COUNTS else "1" + "0" * 14 for key in PLAIN if key not in ("leg", "groove", "angle", "passes", "tube", "thickness")}
        self.finite_or_refused(verb, everything)
        self.assertGreater(self.done, 10)

    def test_estimate(self):
        self.each_value(["estimate"])

    def test_quote(self):
        self.each_value(["quote"])

    def test_numbers_that_are_not_plain_are_refused_with_advice(self):
        for text, words in UNREADABLE.items():
            for key in ("length", "count"):
                with self.subTest(text=text, key=key):
                    done = self.run_on(["estimate"], {key: text})
                    self.assertEqual(done.returncode, 1)
                    self.assertRegex(done.stderr, rf"job.yaml:14:\d+: error: '{key}': .*{re.escape(words)}.*; ")


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
