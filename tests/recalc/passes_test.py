"""Quotes of joints with root, fill, cap and back passes, gouging, electrodes, fluxes and wear parts, by the tests' own
procedures: every formula cell recalculated by the office suite shows what the program wrote, and a changed cell gives what a
run with the changed job gives. Called with the seambook executable and the source root."""
import json
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

import recalc
from cells import read_cells, rewrite
from office import office_recalculated

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
FOLDER = Path(tempfile.mkdtemp())

GROOVE = ("weld: single_v, thickness: 12 mm, gap: 2 mm, root_face: 1 mm, groove_angle: 60 deg, length: 1 m, "
          "excess: {width: 15 mm, height: 1.5 mm}")
JOINTS = {
    "root": GROOVE + ", passes: [{procedure: ROOT, role: root}, {procedure: FILL}, {procedure: CAP, role: cap, count: 2}]",
    "counted": GROOVE + ", passes: [{procedure: ROOT, role: root}, {procedure: FILL, count: 3}, {procedure: CAP, role: cap}]",
    "nothing": GROOVE + ", passes: [{procedure: ROOT, role: root, count: 2}, {procedure: FILL}, {procedure: CAP, role: cap, count: 8}]",
    "gouged": GROOVE + ", backgouge: {depth: 4 mm, width: 8 mm}, passes: [{procedure: ROOT, role: root}, {procedure: FILL}, "
                       "{procedure: FILL, role: back}]",
    "groove": GROOVE + ", backgouge: true, procedure: FILL",
    "stick": "weld: fillet, leg: 6 mm, thickness: 10 mm, length: 1200 mm, procedure: STICK",
    "tubular": "weld: fillet, leg: 8 mm, thickness: 12 mm, length: 800 mm, position: PF, procedure: TUBULAR",
    "deposit": "weld: fillet, leg: 8 mm, thickness: 12 mm, length: 2 m, procedure: SUB-D",
    "wire": "weld: fillet, leg: 8 mm, thickness: 12 mm, length: 2 m, passes: 1, procedure: SUB-W",
}
# A cell of the joints page: (joint, heading, text in the job, text instead, new value). Each leaves another number of passes,
# and the last one nothing to compute them from.
CHANGES = [
    ("root", "cap height (mm)", "height: 1.5 mm", "height: 4 mm", 4),
    ("gouged", "width gouged (mm)", "width: 8 mm", "width: 13 mm", 13),
    ("gouged", "root gap (mm)", "gap: 2 mm", "gap: 4.5 mm", 4.5),
    ("root", "passes given", "role: cap, count: 2", "role: cap, count: 9", 9),
]


def job_of(names, changed=("", "", "")):
    name, old, new = changed
    lines = ["format: 1", "job: passes", "quantities: [1, 10]", "weldments:",
             "  - {name: frame, parts: 2, base_metal: S235, free_issue: true, joints: ["]
    for joint in names:
        words = JOINTS[joint].replace(old, new) if joint == name else JOINTS[joint]
        lines.append(f"      {{id: {joint}, {words}}},")
    return "\n".join(lines) + "]}\n"


def run(*words):
    done = subprocess.run([SEAMBOOK, *map(str, words)], capture_output=True, text=True, timeout=120, check=False)
    if done.returncode != 0:
        raise AssertionError(f"{words}: exit {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


def quoted(name, text):
    """The workbook and the prices of a job."""
    job = FOLDER / f"{name}.yaml"
    job.write_text(text)
    common = ("--rates", FOLDER / "rates", "--date", "2026-05-04")
    run("quote", job, "--out", FOLDER / name, *common)
    found = json.loads(run("estimate", job, "--json", *common))["jobs"][0]
    return next((FOLDER / name).glob("*.xlsx")), found


def cell_under(sheet, row_words, heading):
    """The cell below a heading in the row that names the joint and, where there are several, holds a number."""
    columns = [r.rstrip("0123456789") for r, c in sheet.items() if c.value == heading]
    rows = [r[1:] for r, c in sheet.items() if r.startswith("B") and c.value == row_words]
    found = [f"{c}{r}" for c in columns for r in rows if f"{c}{r}" in sheet]
    assert found, (row_words, heading)
    return found[-1]


class Passes(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        shutil.copytree(ROOT / "rates", FOLDER / "rates", ignore=shutil.ignore_patterns("with-*"))
        shutil.copy(ROOT / "tests/estimate/passes_rates.yaml", FOLDER / "rates/passes.yaml")
        cls.book, cls.original = quoted("passes", job_of(JOINTS))

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(FOLDER)

    def test_recalculated_cells_agree(self):
        self.assertEqual(recalc.compare([self.book], second=recalc.second_engine() is not None), 0)

    def test_sheet_and_rerun_agree(self):
        sheets = read_cells(self.book)
        edited, wanted = [], []
        for number, (joint, heading, old, new, value) in enumerate(CHANGES):
            reference = cell_under(sheets["Joints"], joint, heading)
            self.assertFalse(sheets["Joints"][reference].formula, reference)
            changed, spoiled = FOLDER / f"edited-{number}.xlsx", FOLDER / f"spoiled-{number}.xlsx"
            rewrite(self.book, changed, {"Joints": {reference: float(value)}})
            recalc.spoil(changed, spoiled)
            edited.append(spoiled)
            wanted.append(quoted(f"rerun-{number}", job_of(JOINTS, (joint, old, new)))[1])
        for path, fresh, change in zip(office_recalculated(edited, FOLDER / "out"), wanted, CHANGES):
            with self.subTest(change[0] + ", " + change[1]):
                self.assertNotEqual(fresh["price"], self.original["price"])
                numbers = [c.value for c in read_cells(path)["Quote"].values() if isinstance(c.value, float)]
                for price in fresh["price"]:
                    for key in ("unit_price", "total"):
                        self.assertTrue(any(abs(x - price[key]) < 1e-6 for x in numbers), (key, price[key], numbers))


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
