"""`seambook explain` on every example job, followed by hand: every step works out to its printed result from the
numbers printed above it, in its printed unit, and has a source; every input says where it was written, and something
is written there. Called with the seambook executable and the source root."""
import ast
import math
import re
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

from by_hand import PLACE, Calculator, Fault, follow
from dimensions import check_units
from places import agrees

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
JOBS = sorted(p for p in (ROOT / "jobs").rglob("*.yaml") if "rates" not in p.relative_to(ROOT / "jobs").parts)

FIRST_JOINT = "{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, count: 4}"

# Made while a job is read, from more than the number at the place: the saddle line of a branch, whose curve is told in
# words above the numbers. The joint says so by this key.
DERIVED = {"line": "branch_on:"}
SADDLE = re.compile(r"x: s cos θ - r cos t sin θ with s: \(z - r cos t cos θ\)/sin θ; r ([\d.]+) mm, R ([\d.]+) mm, θ ([\d.]+)°")

SOUND = """joint bracket/1: fillet
  leg           5  mm     leg z, jobs/bracket.yaml:13:29
  convexity    10  %      convexity, rates/shop.yaml:38:14: allowances, convexity (assumption: starting values)
  joints        2         joints, jobs/bracket.yaml:13:75
  section = leg*leg*(1+convexity)/2 = 5*5*(1+0.1)/2 = 13.75 mm²
      section of weld metal [plane geometry]
  third = section*joints/3 = 13.75*2/3 = 9.166666667 mm²
      a third [third of the sections]
"""


def explained(*words):
    done = subprocess.run([SEAMBOOK, "explain", *map(str, words)], cwd=ROOT, capture_output=True, text=True,
                          timeout=120, check=False)
    if done.returncode != 0:
        raise AssertionError(f"{words}: exit {done.returncode}\n{done.stderr}")
    return done.stdout


def saddle(r, around, angle, pieces=200000):
    """Length of the curve whose points are told in words, as a chain of many short pieces."""
    def point(t):
        z = math.sqrt(max(around ** 2 - (r * math.sin(t)) ** 2, 0))
        s = (z - r * math.cos(t) * math.cos(angle)) / math.sin(angle)
        return s * math.cos(angle) - r * math.cos(t) * math.sin(angle), r * math.sin(t), z
    points = [point(2 * math.pi * k / pieces) for k in range(pieces + 1)]
    return sum(math.dist(a, b) for a, b in zip(points, points[1:]))


def variations():
    """Joints of other kinds, by name: those whose quotes the office suite recalculates."""
    tree = ast.parse((ROOT / "tests/recalc/quotes_test.py").read_text(encoding="utf-8"))
    for node in tree.body:
        if isinstance(node, ast.Assign) and ast.unparse(node.targets[0]) == "VARIATIONS":
            return ast.literal_eval(node.value)
    raise AssertionError("no VARIATIONS")


class ByHand(unittest.TestCase):
    def test_every_job(self):
        self.assertGreaterEqual(len(JOBS), 4)
        for job in JOBS:
            with self.subTest(job=job.name):
                text = explained(job.relative_to(ROOT))
                worked = follow(text, check_units)
                joints = len(re.findall(r"^joint [^/\n]+/\S+: ", text, re.MULTILINE))
                self.assertGreater(joints, 0)
                self.assertGreaterEqual(len([n for n in worked["names"] if n.startswith("joint_cost")]), joints)
                self.assertGreaterEqual(worked["steps"], 30 * joints)
                self.assertIn("unit_price", worked["names"])
                self.check_places(worked["origins"])
                print(f"{job.relative_to(ROOT)}: {worked['steps']} steps and {worked['inputs']} inputs in "
                      f"{worked['blocks']} blocks")

    def test_other_kinds_of_joints(self):
        bracket = (ROOT / "jobs/bracket.yaml").read_text(encoding="utf-8")
        self.assertIn(FIRST_JOINT, bracket)
        self.assertGreater(len(variations()), 8)
        with tempfile.TemporaryDirectory() as folder:
            for name, joint in variations().items():
                with self.subTest(joint=name):
                    job = Path(folder, f"{name}.yaml")
                    job.write_text(bracket.replace(FIRST_JOINT, joint), encoding="utf-8")
                    worked = follow(explained(job, "--rates", ROOT / "rates"), check_units)
                    self.check_places(worked["origins"])
                    if "branch_on" in joint:
                        self.check_saddle(job, worked)

    def check_saddle(self, job, worked):
        r, around, angle = map(float, SADDLE.search(explained(job, "--rates", ROOT / "rates")).groups())
        line = [value for name, _, value, _ in worked["origins"] if name == "line"]
        self.assertAlmostEqual(line[0], saddle(r, around, math.radians(angle)), delta=1e-4)

    def check_places(self, origins):
        """Each origin is a place in a file that is there; where a number is written, it is the one that is printed."""
        held = 0
        for name, origin, value, unit in set(origins):
            if origin.startswith("sum over "):
                continue
            place = PLACE.search(origin)
            self.assertIsNotNone(place, origin)
            file, line, column = ROOT / place.group(1), int(place.group(2)), int(place.group(3))
            lines = file.read_text(encoding="utf-8").split("\n")
            self.assertLessEqual(line, len(lines), origin)
            written = lines[line - 1][column - 1:]
            self.assertTrue(written.strip(), origin)
            found = agrees(written, value, unit)
            derived = name in DERIVED and DERIVED[name] in lines[line - 1]
            self.assertTrue(found is not False or derived, f"{origin}: {value} {unit}, written {written[:30]}")
            held += found is True
        self.assertGreater(held, 0.7 * len(set(origins)))

    def test_a_joint_alone_reads_as_in_the_whole(self):
        job = JOBS[0].relative_to(ROOT)
        whole = explained(job)
        heading = next(line for line in whole.split("\n") if line.startswith("joint "))
        name = heading.removeprefix("joint ").split(":")[0]
        self.assertIn(explained(job, name).strip(), whole)


class TheCheckItself(unittest.TestCase):
    def test_sound_text_is_followed(self):
        worked = follow(SOUND, check_units)
        self.assertEqual((worked["steps"], worked["inputs"]), (2, 3))

    def test_each_planted_fault_is_found(self):
        for what, old, new in [
            ("wrong result", "= 13.75 mm²", "= 13.76 mm²"),
            ("wrong last digit", "9.166666667", "9.166666665"),
            ("wrong number", "5*5*(1+0.1)/2", "5*6*(1+0.1)/2"),
            ("wrong formula", "leg*leg*(1+convexity)/2", "leg*leg*(1+convexity)"),
            ("name from nowhere", "leg*leg*(1", "leg*throat*(1"),
            ("no source", " [plane geometry]", ""),
            ("no origin", ", jobs/bracket.yaml:13:29", ""),
            ("wrong unit of a result", "13.75 mm²", "13.75 mm"),
            ("wrong unit of an input", "5  mm  ", "5  kg  "),
            ("unknown unit", "13.75 mm²", "13.75 ells²"),
            ("result not printed", "= 5*5*(1+0.1)/2 = 13.75 mm²", ""),
        ]:
            with self.subTest(what):
                self.assertIn(old, SOUND)
                with self.assertRaises((Fault, ValueError)):
                    follow(SOUND.replace(old, new), check_units)

    def test_places(self):
        for written, value, unit, expected in [
            ("5 mm, thickness: 8", 5, "mm", True), ("5 mm, thickness: 8", 5.1, "mm", False),
            ("3/16 in", 4.7625, "mm", True), ("9-1/2 in,", 9.5, "in", True), ("35 cfh", 35, "ft³/h", True),
            ("12 %", 12, "%", True), ("2.40 EUR/kg", 2.4, "EUR/kg", True), ("{weld: fillet", 1, "", None),
            ("5, thick", 5, "mm", None), ("4}", 4, "", True), ("4}", 5, "", False)]:
            with self.subTest(written):
                self.assertIs(agrees(written, value, unit), expected)

    def test_arithmetic(self):
        for text, value in [("2-3-4", -5), ("2^3*2", 16), ("(-2)^2", 4), ("IF(1<2,MIN(7,8),9)", 7), ("8/2/2", 2),
                            ("ROUNDUP(6*0.999999999,0)+INT(2.9)+ROUND(1.005,2)", 9.01), ("TAN(RADIANS(90/2))", 1)]:
            self.assertAlmostEqual(Calculator(text, {}).work(), value, places=12)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
