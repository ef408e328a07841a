"""Cells of different kinds changed in a written quote and recalculated by the office suite: the totals are those of a run
with the changed job or rate book, and the lines that the sheet gives to paste back make such a run. Called with the seambook executable and the source root."""
import json
import re
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
PRICES = "rates/prices.yaml"

# The bracket and its book with every line of the price policy.
EVERY_LINE = [
    (JOB, "quantities: [1, 10, 50]", "quantities: [1, 12, 50]"),
    (JOB, "job: bracket", "job: bracket\nexpedite: true\nlearning: true\nrisk: first_off\nfreight: by_mass"),
    (JOB, "    bought: 38 EUR each\n", "    free_issue: true\n    free_issue_value: 64 EUR\n"),
    (SHOP, "  margin: 18 %", "  margin: 18 %\n  list_rounding: 5 EUR\n  tax_rate: 19 %"),
]
OWN_FREIGHT = [(JOB, "job: bracket", "job: bracket\nfreight: 14 EUR each")]

AT_ONCE = 8  # workbooks that one call of the office suite takes

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

# The same, on top of a policy.
POLICY_CHANGES = {
    "contingency of a class": (EVERY_LINE, PRICES, "contingency: 12 %", "contingency: 9 %",
                               ("Rates", ("risk class first_off", "contingency"), "value"), 9),
    "learning rate": (EVERY_LINE, PRICES, "rate: 92 %", "rate: 88 %", ("Rates", ("learning", "rate"), "value"), 88),
    "premium for haste": (EVERY_LINE, SHOP, "expedite: 30 %", "expedite: 45 %", ("Rates", ("prices", "expedite"), "value"), 45),
    "price of a freight": (EVERY_LINE, PRICES, "price: 95 EUR", "price: 131 EUR", ("Rates", ("freight", "price up to 250 kg"), "value"), 131),
    "mass, into the next freight": (EVERY_LINE, JOB, "mass: 18 kg", "mass: 24 kg", ("Weldments", ("bracket",), "net mass (kg)"), 24),
    "tax rate": (EVERY_LINE, SHOP, "tax_rate: 19 %", "tax_rate: 7 %", ("Rates", ("prices", "tax rate"), "value"), 7),
    "step of the price list": (EVERY_LINE, SHOP, "list_rounding: 5 EUR", "list_rounding: 25 EUR",
                               ("Rates", ("prices", "list rounding"), "value"), 25),
    "share for free-issue material": (EVERY_LINE, SHOP, "free_issue_handling: 5 %", "free_issue_handling: 8 %",
                                      ("Rates", ("prices", "free-issue handling"), "value"), 8),
    "value of free-issue material": (EVERY_LINE, JOB, "free_issue_value: 64 EUR", "free_issue_value: 90 EUR",
                                     ("Weldments", ("bracket",), "value of free-issue material (EUR)"), 90),
    "freight of the job's own": (OWN_FREIGHT, JOB, "freight: 14 EUR each", "freight: 19.5 EUR each",
                                 ("Cost", ("freight as stated (EUR)",), 1), 19.5),
}

# Changed together with all of CHANGES in one more sheet.
QUANTITY = (("Cost", ("quantity",), "for 10"), 12)


def folder_with(name, replacements):
    """Job and rate book in a folder of their own, with these replacements."""
    folder = FOLDER / name
    shutil.copytree(ROOT / "rates", folder / "rates")
    (folder / "jobs").mkdir()
    shutil.copy(ROOT / JOB, folder / JOB)
    for file, old, new in replacements:
        text = (folder / file).read_text()
        assert text.count(old) == 1, f"{name}: '{old}' stands {text.count(old)} times in {file}"
        (folder / file).write_text(text.replace(old, new))
    return folder


def pasted(folder, place, line):
    """Writes a line that the sheet gives to where it says."""
    name, _, number = place.partition(":")
    path = folder.joinpath(*Path(name).parts[-2:])
    lines = path.read_text().split("\n")
    key = line.split(":")[0]
    at = int(number) - 1 if number else next(i for i, text in enumerate(lines) if text.startswith(f"{key}:"))
    changed, times = re.subn(rf"\b{key}: (\[[^]]*\]|[^,}}]*)", lambda _: line, lines[at])
    assert times == 1, f"{place}: '{line}' fits {times} times in '{lines[at]}'"
    lines[at] = changed
    path.write_text("\n".join(lines))


def rerun(name, replacements):
    return priced(folder_with(name, replacements))


def priced(folder):
    done = subprocess.run([SEAMBOOK, "estimate", folder / JOB, "--json", "--date", "2026-05-04"], capture_output=True, text=True,
                          timeout=60, check=False)
    assert done.returncode == 0, done.stderr
    prices = json.loads(done.stdout)["jobs"][0]["price"]
    return sorted((float(p["quantity"]), p["unit_price"], p["total"], *([p["total_with_tax"]] if "tax" in p else [])) for p in prices)


def quoted(replacements, name):
    folder = folder_with(name, replacements)
    subprocess.run([SEAMBOOK, "quote", folder / JOB, "--out", folder / "out", "--date", "2026-05-04"], check=True, capture_output=True,
                   timeout=60)
    return folder / "out/bracket-quote.xlsx"


class ChangedCells(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.cases = {name: ([], *change) for name, change in CHANGES.items()} | POLICY_CHANGES
        books, spoiled = {}, []
        cls.originals = []
        for number, (base, *change) in enumerate(cls.cases.values()):
            book = books.setdefault(str(base), quoted(base, f"base-{number}") if str(base) not in books else None)
            sheets = read_cells(book)
            cls.originals.append(totals(sheets))
            sheet, reference = find_cell(sheets, change[3])
            assert not sheets[sheet][reference].formula, f"{sheet}!{reference} is a formula"
            edited, path = FOLDER / f"edited-{number}.xlsx", FOLDER / f"spoiled-{number}.xlsx"
            rewrite(book, edited, {sheet: {reference: float(change[4])}})
            spoil(edited, path)
            spoiled.append(path)
        together, book = {}, books[str([])]
        sheets = read_cells(book)
        for place, value in [(change[3], change[4]) for change in CHANGES.values()] + [QUANTITY]:
            sheet, reference = find_cell(sheets, place)
            together.setdefault(sheet, {})[reference] = float(value)
        rewrite(book, FOLDER / "edited-all.xlsx", together)
        spoil(FOLDER / "edited-all.xlsx", FOLDER / "spoiled-all.xlsx")
        cls.changed_cells = sum(len(cells) for cells in together.values())
        spoiled.append(FOLDER / "spoiled-all.xlsx")
        results = []
        for at in range(0, len(spoiled), AT_ONCE):
            results += [read_cells(path) for path in office_recalculated(spoiled[at:at + AT_ONCE], FOLDER / "out")]
        cls.results, cls.together = results[:-1], results[-1]

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(FOLDER)

    def test_sheet_and_rerun_agree(self):
        for (name, (base, file, old, new, *_)), sheets, original in zip(self.cases.items(), self.results, self.originals):
            with self.subTest(name):
                changed, again = totals(sheets), rerun(name, [*base, (file, old, new)])
                self.assertEqual(len(changed), len(again))
                self.assertNotEqual(changed, original)
                for mine, fresh in zip(changed, again):
                    self.assertEqual(len(mine), len(fresh))
                    for a, b in zip(mine, fresh):
                        self.assertAlmostEqual(a, b, places=6)

    def test_a_changed_rate_is_said(self):
        self.assertEqual(self.results[0]["Rates"]["C3"].value, "differs from the rate book")
        self.assertEqual(self.results[0]["Cost"]["B3"].value, "changed: 1 values differ from the job file or the rate book")

    def test_lines_pasted_back_give_what_the_sheet_gives(self):
        cells, folder = self.together["Edits"], folder_with("pasted", [])
        first = next(int(r[1:]) for r, cell in cells.items() if r[0] == "E" and cell.value == "line for the file") + 1
        listed = 0
        while cells[f"E{first + listed}"].value:
            pasted(folder, cells[f"A{first + listed}"].value, cells[f"E{first + listed}"].value)
            listed += 1
        self.assertEqual(listed, self.changed_cells)
        self.assertIn(f"{listed} values differ", cells["B3"].value)
        changed, again = totals(self.together), priced(folder)
        self.assertEqual(len(changed), len(again))
        for mine, fresh in zip(changed, again):
            for a, b in zip(mine, fresh):
                self.assertAlmostEqual(a, b, places=6)

    def test_every_input_cell_stands_among_the_edits(self):
        text = {cell.text for cell in self.together["Edits"].values()}
        for change in CHANGES.values():
            sheet, reference = find_cell(self.together, change[3])
            self.assertTrue({f"{sheet}!{reference}", f"'{sheet}'!{reference}"} & text)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
