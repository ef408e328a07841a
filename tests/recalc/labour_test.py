"""Quotes by both labour methods, with every labour element, tests, waiting and work of the job as a whole: all formula cells
recalculated by the office suite, and cells changed on the sheet against a run with the changed file. Called with the
seambook executable and the source root."""
import json
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

import recalc
from cells import read_cells, rewrite
from changed import find_cell, totals
from office import office_recalculated

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
FOLDER = Path(tempfile.mkdtemp())
BASIS = "basis: assumption, source: invented for a test"

# element: (by what it is counted, what one takes)
ELEMENTS = [
    ("edge_preparation", "edge_metre", "time: 4 min/m"),
    ("cleaning", "metre", "time: 3 min/m"),
    ("cleaning", "tack", "time: 0.1 min"),
    ("dressing", "pass_metre", "time: 0.8 min/m"),
    ("dressing", "start", "time: 0.05 min"),
    ("straightening", "share", "share: 6 %"),
    ("pickling", "weld_metre", "time: 1.5 min/m"),
    ("pickling", "joint", "time: 30 min, attended: false"),
    ("visual_inspection", "weld_metre", "time: 1 min/m, grade: inspector"),
    ("visual_inspection", "weld_element", "time: 0.2 min"),
    ("ultrasonic", "weld_metre", "time: 12 min/m, grade: inspector"),
    ("repair", "share", "share: 2.2 %, multiple: 4"),
    ("waiting", "interpass", "time: 6 min"),
    ("papers", "weldment", "time: 12 min"),
    ("handling", "part", "time: 0.7 min"),
    ("dimensional_inspection", "turn", "time: 2 min, grade: inspector"),
    ("packing", "kg", "time: 0.08 min/kg"),
]
LABOUR = "labour_elements:\n" + "".join(f"  - {{element: {e}, per: {p}, {t}, {BASIS}}}\n" for e, p, t in ELEMENTS) + f"""\
job_elements:
  - {{element: drawing_review, per: drawing, time: 25 min, {BASIS}}}
  - {{element: take_off, per: joint_line, time: 2 min, {BASIS}}}
  - {{element: papers, per: job, time: 35 min, paid: per lot, {BASIS}}}
  - {{element: consumable_preparation, per: job, time: 90 min, paid: per lot, attended: false, {BASIS}}}
"""
GRADE = f"labour:\n  - {{name: inspector, wage: 44 EUR/h, burden: 38 %, {BASIS}}}\n"
JOINT = "{weld: single_v, thickness: 8 mm, length: 300 mm}"
TESTED = "{weld: single_v, thickness: 8 mm, length: 300 mm, access: 120 %, inspection: [{method: UT, extent: 40 %}]}"
ONE_OFFS = "one_offs:\n  - {what: welding fixture, time: 6 h, price: 90 EUR}\nweldments:"
LEFT_OUT = ("    start:", "    interpass_cleaning:", "  personal:", "  personal_covers:", "  - {element: dressing")
FACTOR = ("labour_method: operating_factor\nfactor_covers: [arc, starts, interpass_cleaning, dressing]\n"
          "factor_definition: the share of clocked hours in which an arc burns\n")

# name: (file, text there, text instead, (sheet, row's words, column's heading), new cell value)
CHANGES = {
    "minutes of an element": ("rates/shop.yaml", "per: metre, time: 3 min/m", "per: metre, time: 4.5 min/m",
                              ("Rates", ("cleaning per metre", "time"), "value"), 4.5),
    "wage of another grade": ("rates/shop.yaml", "wage: 44 EUR/h", "wage: 52 EUR/h",
                              ("Rates", ("labour inspector", "wage"), "value"), 52),
    "share": ("rates/shop.yaml", "share: 6 %", "share: 9 %", ("Rates", ("straightening per share", "share"), "value"), 9),
    "multiple": ("rates/shop.yaml", "multiple: 4", "multiple: 5", ("Rates", ("repair per share", "multiple"), "value"), 5),
    "minutes per mass": ("rates/shop.yaml", "time: 0.08 min/kg", "time: 0.2 min/kg",
                         ("Rates", ("packing per kg", "time"), "value"), 0.2),
    "extent": ("jobs/bracket.yaml", "extent: 40 %", "extent: 75 %", ("Labour", ("bracket", "4"), "UT extent (%)"), 75),
    "work for a lot": ("rates/shop.yaml", "time: 35 min", "time: 55 min", ("Rates", ("papers per job", "time"), "value"), 55),
    "work once": ("jobs/bracket.yaml", "time: 6 h", "time: 7 h", ("Job work", ("welding fixture",), "time of one (min)"), 420),
    "length": ("jobs/bracket.yaml", "length: 300 mm", "length: 450 mm", ("Joints", ("bracket", "4"), "joint line (mm)"), 450),
}
CHANGES_BY_FACTOR = {
    "operating factor": ("rates/shop.yaml", "operating_factor: 36 %", "operating_factor: 28 %",
                         ("Rates", ("process 135", "operating factor"), "value"), 28),
}


def write_shop(folder, by_factor):
    """The example shop with all labour elements, and the bracket with tests and one-offs."""
    shutil.copytree(ROOT / "rates", folder / "rates", ignore=shutil.ignore_patterns("with-*"))
    (folder / "jobs").mkdir()
    shop = (folder / "rates/shop.yaml").read_text()
    shop = "".join(line for line in shop.splitlines(True) if not line.startswith("#")) + LABOUR
    shop = shop.replace("labour:\n", GRADE, 1)
    if by_factor:
        shop = "".join(line for line in shop.splitlines(True) if not line.startswith(LEFT_OUT))
        shop = shop.replace("    gas_loss: 110 %\n", "    gas_loss: 110 %\n    operating_factor: 35 %\n") + FACTOR
        before, of_135 = shop.split("- process: 135\n", 1)
        shop = before + "- process: 135\n" + of_135.replace("operating_factor: 35 %", "operating_factor: 36 %", 1)
    (folder / "rates/shop.yaml").write_text(shop)
    job = (ROOT / "jobs/bracket.yaml").read_text()
    assert JOINT in job and "\nweldments:" in job
    job = job.replace(JOINT, TESTED).replace("weldments:", ONE_OFFS, 1).replace("parts: 7\n", "parts: 7\n    turns: 2\n")
    (folder / "jobs/bracket.yaml").write_text(job)


def run(folder, *words):
    done = subprocess.run([SEAMBOOK, *words, folder / "jobs/bracket.yaml", "--rates", folder / "rates", "--date", "2026-05-04"],
                          capture_output=True, text=True, timeout=120, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout


def prices_of(folder):
    prices = json.loads(run(folder, "estimate", "--json"))["jobs"][0]["price"]
    return sorted((float(p["quantity"]), p["unit_price"], p["total"]) for p in prices)


class Labour(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        for name in ("elements", "factor"):
            (FOLDER / name).mkdir()
            write_shop(FOLDER / name, name == "factor")
            run(FOLDER / name, "quote", "--out", FOLDER / name / "out")
        cls.books = {name: FOLDER / name / "out/bracket-quote.xlsx" for name in ("elements", "factor")}

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(FOLDER)

    def test_recalculated_cells_agree(self):
        self.assertEqual(recalc.compare(list(self.books.values()), second=recalc.second_engine() is not None), 0)

    def test_every_element_has_its_column(self):
        words = {str(cell.value) for sheet in ("Labour", "Weldments")
                 for cell in read_cells(self.books["elements"])[sheet].values()}
        for element, _, _ in ELEMENTS:
            if element != "waiting":
                self.assertIn(f"{element.replace('_', ' ')} (min)", words)
        self.assertIn("waiting, unattended (min)", words)

    def test_method_is_said_on_the_sheet(self):
        cells = read_cells(self.books["factor"])["Labour"]
        self.assertIn("in which an arc burns", str(cells["A3"].value))

    def check_changes(self, method, changes):
        sheets = read_cells(self.books[method])
        spoiled = []
        for number, (_, _, _, place, value) in enumerate(changes.values()):
            sheet, reference = find_cell(sheets, place)
            self.assertFalse(sheets[sheet][reference].formula, f"{sheet}!{reference} is a formula")
            edited, path = FOLDER / f"{method}-{number}.xlsx", FOLDER / f"{method}-spoiled-{number}.xlsx"
            rewrite(self.books[method], edited, {sheet: {reference: float(value)}})
            recalc.spoil(edited, path)
            spoiled.append(path)
        original = totals(sheets)
        for (name, change), path in zip(changes.items(), office_recalculated(spoiled, FOLDER / "computed")):
            with self.subTest(name):
                folder = FOLDER / f"{method}-{name}"
                folder.mkdir()
                write_shop(folder, method == "factor")
                file, old, new, _, _ = change
                text = (folder / file).read_text()
                self.assertEqual(text.count(old), 1, name)
                (folder / file).write_text(text.replace(old, new))
                changed, again = totals(read_cells(path)), prices_of(folder)
                self.assertNotEqual(changed, original)
                self.assertEqual(len(changed), len(again))
                for mine, fresh in zip(changed, again):
                    for a, b in zip(mine, fresh):
                        self.assertAlmostEqual(a, b, places=6)

    def test_sheet_and_rerun_agree_by_elements(self):
        self.check_changes("elements", CHANGES)

    def test_sheet_and_rerun_agree_by_factor(self):
        self.check_changes("factor", CHANGES_BY_FACTOR)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
