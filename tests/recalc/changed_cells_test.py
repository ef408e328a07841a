"""Cells of different kinds changed in a written quote and recalculated by the office suite: the totals are those of a run
with the changed job or rate book. Called with the seambook executable and the source root."""
import json
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

from cells import read_cells, rewrite
from changed import find_cell, totals
from office import office_recalculated
from recalc import spoil

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
FOLDER = Path(tempfile.mkdtemp())
JOB = "jobs/bracket.yaml"
SHOP = "rates/shop.yaml"
MATERIALS = "rates/materials.yaml"
CARBON = "rates/procedures-carbon.yaml"

# name: (file, text there, text instead, (sheet, row's words, column's heading), new cell value)
CHANGES = {
    "labour rate": (SHOP, "rate: 54 EUR/h", "rate: 61.5 EUR/h", ("Rates", ("labour welder", "rate"), "value"), 61.5),
    "margin": (SHOP, "margin: 18 %", "margin: 22.5 %", ("Rates", ("prices", "margin"), "value"), 22.5),
    "minimum charge": (SHOP, "minimum_charge: 120 EUR", "minimum_charge: 900 EUR", ("Rates", ("prices", "minimum charge"), "value"), 900),
    "fit-up per part": (SHOP, "fit_up_per_part: 2 min", "fit_up_per_part: 3.5 min", ("Rates", ("allowances", "fit-up per part"), "value"), 3.5),
    "personal allowance": (SHOP, "personal: 12 %", "personal: 15 %", ("Rates", ("allowances", "personal"), "value"), 15),
    "filler price": (MATERIALS, "diameter: 1.2 mm, density: 7.85 g/cm3, price: 2.40", "diameter: 1.2 mm, density: 7.85 g/cm3, price: 3.1",
                     ("Rates", ("filler G3Si1-1.2", "price"), "value"), 3.1),
    "wire feed": (CARBON, "wire_feed: 7.5 m/min", "wire_feed: 8.1 m/min", ("Rates", ("procedure CG-F5", "wire feed"), "value"), 8.1),
    "count of a joint": (JOB, "length: 240 mm, count: 4", "length: 240 mm, count: 7", ("Joints", ("bracket", "1"), "joints per weldment"), 7),
    "length of an intermittent line": (JOB, "length: 600 mm", "length: 750 mm", ("Joints", ("bracket", "3"), "joint line (mm)"), 750),
    "pitch": (JOB, "pitch: 150 mm", "pitch: 75 mm", ("Joints", ("bracket", "3"), "pitch, centre to centre (mm)"), 75),
    "diameter": (JOB, "outside_diameter: 42.4 mm", "outside_diameter: 60.3 mm", ("Joints", ("bracket", "6"), "outside diameter (mm)"), 60.3),
    "parts": (JOB, "parts: 7", "parts: 11", ("Weldments", ("bracket",), "parts"), 11),
    "bought price": (JOB, "bought: 38 EUR each", "bought: 44.25 EUR each", ("Weldments", ("bracket", "base metal"), "price (EUR)"), 44.25),
}


def rerun(name, change):
    file, old, new, _, _ = change
    folder = FOLDER / name
    shutil.copytree(ROOT / "rates", folder / "rates")
    (folder / "jobs").mkdir()
    shutil.copy(ROOT / JOB, folder / JOB)
    text = (folder / file).read_text()
    assert text.count(old) == 1, f"{name}: '{old}' stands {text.count(old)} times in {file}"
    (folder / file).write_text(text.replace(old, new))
    done = subprocess.run([SEAMBOOK, "estimate", folder / JOB, "--json", "--date", "2026-05-04"], capture_output=True, text=True,
                          timeout=60, check=False)
    assert done.returncode == 0, done.stderr
    prices = json.loads(done.stdout)["jobs"][0]["price"]
    return sorted((float(p["quantity"]), p["unit_price"], p["total"]) for p in prices)


class ChangedCells(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        subprocess.run([SEAMBOOK, "quote", ROOT / JOB, "--rates", ROOT / "rates", "--out", FOLDER / "out", "--date", "2026-05-04"],
                       check=True, capture_output=True, timeout=60)
        book = FOLDER / "out/bracket-quote.xlsx"
        sheets = read_cells(book)
        cls.original = totals(sheets)
        spoiled = []
        for number, change in enumerate(CHANGES.values()):
            sheet, reference = find_cell(sheets, change[3])
            assert not sheets[sheet][reference].formula, f"{sheet}!{reference} is a formula"
            edited, path = FOLDER / f"edited-{number}.xlsx", FOLDER / f"spoiled-{number}.xlsx"
            rewrite(book, edited, {sheet: {reference: float(change[4])}})
            spoil(edited, path)
            spoiled.append(path)
        cls.results = [read_cells(path) for path in office_recalculated(spoiled, FOLDER / "out")]

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(FOLDER)

    def test_sheet_and_rerun_agree(self):
        for (name, change), sheets in zip(CHANGES.items(), self.results):
            with self.subTest(name):
                changed, again = totals(sheets), rerun(name, change)
                self.assertEqual(len(changed), len(again))
                self.assertNotEqual(changed, self.original)
                for mine, fresh in zip(changed, again):
                    for a, b in zip(mine, fresh):
                        self.assertAlmostEqual(a, b, places=6)

    def test_a_changed_rate_is_said(self):
        self.assertEqual(self.results[0]["Rates"]["C3"].value, "differs from the rate book")
        self.assertEqual(self.results[0]["Cost"]["B3"].value, "differs from the rate book")


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
