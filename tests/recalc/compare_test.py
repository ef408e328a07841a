"""A comparison: every formula cell recalculated by the office suite shows what the program wrote, and inputs of
different kinds changed in the sheet give the decision of a run with the changed job or rate book. Called with the
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
from changed import find_cell, letters_and_row
from office import office_recalculated
from recalc import spoil

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
FOLDER = Path(tempfile.mkdtemp())
JOB = "jobs/wash-down-cabinet.yaml"
SHOP, CELL, STAINLESS = "rates/shop.yaml", "rates/investment.yaml", "rates/procedures-stainless.yaml"

# name: (file, text there, text instead, (sheet, row's words, column's heading), new cell value)
CHANGES = {
    "labour rate": (SHOP, "rate: 54 EUR/h", "rate: 61.5 EUR/h", ("Rates", ("labour welder", "rate"), "value"), 61.5),
    "close fit-up": (SHOP, "fit_up_extra: 2.5 min/m", "fit_up_extra: 1 min/m", ("Rates", ("process 521", "close fit-up"), "value"), 1),
    "finish": (SHOP, "match grain\", time: 16 min/m", "match grain\", time: 24 min/m", ("Rates", ("finish F4", "time"), "value"), 24),
    "finish after laser": (SHOP, "after: [{process: 521, time: 8 min/m}]", "after: [{process: 521, time: 3 min/m}]",
                           ("Rates", ("finish F4", "time after 521"), "value"), 3),
    "price of the cell": (CELL, "price: 24000 EUR", "price: 8000 EUR",
                          ("Rates", ("hand-held laser cell", "laser set with torch and feeder and chiller"), "value"), 8000),
    "yearly cost": (CELL, "price: 1900 EUR", "price: 300 EUR",
                    ("Rates", ("hand-held laser cell", "safety officer's hours and yearly checks"), "value"), 300),
    "life": (CELL, "life_years: 6", "life_years: 9", ("Rates", ("hand-held laser cell", "life in years"), "value"), 9),
    "first year": (CELL, "first_year: 70 %", "first_year: 40 %", ("Rates", ("hand-held laser cell", "first year"), "value"), 40),
    "interest": (CELL, "interest: 6 %", "interest: 3.5 %", ("Rates", ("hand-held laser cell", "interest"), "value"), 3.5),
    "avoidable rate": (CELL, "avoidable_rate: 36 EUR/h", "avoidable_rate: 50 EUR/h",
                       ("Rates", ("hand-held laser cell", "avoidable rate"), "value"), 50),
    "metres of a scenario": (CELL, "metres: 130 %", "metres: 1000 %", ("Rates", ("scenario good", "metres"), "value"), 1000),
    "orders a year": (JOB, "per_year: 4", "per_year: 60", ("Decision", ("orders a year",), 1), 60),
    "count of a joint": (JOB, "length: 60 mm, count: 4,", "length: 60 mm, count: 9,", ("Joints", ("cabinet", "C04"), "joints per weldment"), 9),
}


def run_compare(root, out, *more):
    done = subprocess.run([SEAMBOOK, "compare", root / JOB, "--rates", root / "rates", "--out", out, "--date", "2026-05-04", *more],
                          capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout


def decision(sheets):
    """By scenario: fixed cost, saved, break-even, paid back, present value, off the page."""
    cells, rows = sheets["Decision"], {}
    for reference, cell in cells.items():
        letters, row = letters_and_row(reference)
        if letters == "A":
            rows[str(cell.value)] = row
    wanted = ["fixed cost a year (EUR)", "saved a year, all families (EUR)", "break-even (m a year, same mix)",
              "paid back after (years)", "the same with interest (years)", "net present value over the life (EUR)"]
    return [[cells[f"{column}{rows[words]}"].value for words in wanted] for column in "BCD"]


def decision_of_a_run(out):
    found = []
    for s in json.loads(out)["jobs"][0]["scenarios"]:
        numbers = [s["fixed_per_year"], s["saved_per_year"], s["break_even_m_per_year"], s["payback_years"],
                   s["discounted_payback_years"], s["present_value"]]
        found.append(["never" if n is None else n for n in numbers])
    return found


class Comparison(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        run_compare(ROOT, FOLDER / "out")
        cls.book = FOLDER / "out/wash-down-cabinet-compare.xlsx"
        sheets = read_cells(cls.book)
        cls.original = decision(sheets)
        spoiled = []
        for number, change in enumerate(CHANGES.values()):
            sheet, reference = find_cell(sheets, change[3])
            assert not sheets[sheet][reference].formula, f"{sheet}!{reference} is a formula"
            edited, path = FOLDER / f"edited-{number}.xlsx", FOLDER / f"spoiled-{number}.xlsx"
            rewrite(cls.book, edited, {sheet: {reference: float(change[4])}})
            spoil(edited, path)
            spoiled.append(path)
        cls.results = [read_cells(path) for path in office_recalculated(spoiled, FOLDER / "recalculated")]

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(FOLDER)

    def test_recalculated_cells_agree(self):
        self.assertEqual(recalc.compare([self.book], second=recalc.second_engine() is not None), 0)

    def test_sheet_and_rerun_agree(self):
        for (name, change), sheets in zip(CHANGES.items(), self.results):
            with self.subTest(name):
                file, old, new, _, _ = change
                root = FOLDER / name
                shutil.copytree(ROOT / "rates", root / "rates")
                (root / "jobs").mkdir()
                shutil.copy(ROOT / JOB, root / JOB)
                text = (root / file).read_text()
                self.assertEqual(text.count(old), 1, f"'{old}' in {file}")
                (root / file).write_text(text.replace(old, new))
                fresh, mine = decision_of_a_run(run_compare(root, root / "out", "--json")), decision(sheets)
                self.assertNotEqual(mine, self.original)
                for a, b in zip([x for row in mine for x in row], [x for row in fresh for x in row]):
                    if isinstance(a, str) or isinstance(b, str):
                        self.assertEqual(a, b)
                    else:
                        self.assertAlmostEqual(a, b, delta=1e-9 * max(abs(a), abs(b), 1))


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
