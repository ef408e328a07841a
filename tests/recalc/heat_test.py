"""A quote with a preheated joint: cells changed on the sheet and recalculated by the office suite give the price and the
preheat by method B of a run with the changed file, or the reason why it is not computed. Called with the seambook
executable and the source root."""
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
JOB, SHOP, MATERIALS, CARBON = "jobs/bracket.yaml", "rates/shop.yaml", "rates/materials.yaml", "rates/procedures-carbon.yaml"
JOINT = "{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, count: 4}"
HEATED = ("{weld: fillet, leg: 8 mm, thickness: [20 mm, 30 mm], length: 240 mm, count: 4, base_metal: S460, procedure: CG-F8, "
          "preheat: 130 degC, interpass_max: 220 degC}")
ASKED = ("Heat", ("bracket", "1"), "preheat by method B (°C)")

# name: (file, text there, text instead, (sheet, row's words, column's heading), new cell value)
CHANGES = {
    "preheat": (JOB, "preheat: 130 degC", "preheat: 160 degC", ("Heat", ("bracket", "1"), "preheat (°C)"), 160),
    "preheat as warm as the shop": (JOB, "preheat: 130 degC", "preheat: 15 degC", ("Heat", ("bracket", "1"), "preheat (°C)"), 15),
    "soak width": (SHOP, "soak_width: 75 mm", "soak_width: 110 mm", ("Rates", ("preheating", "soak width"), "value"), 110),
    "attended": (SHOP, "attended: 50 %", "attended: 80 %", ("Rates", ("preheating", "attended share"), "value"), 80),
    "room": (SHOP, "room: 20 degC", "room: 5 degC", ("Rates", ("preheating", "room temperature"), "value"), 5),
    "fuel": (SHOP, "fuel: 0.14 EUR/kWh", "fuel: 0.3 EUR/kWh", ("Rates", ("preheating", "fuel"), "value"), 0.3),
    "hydrogen": (MATERIALS, "price: 2.40 EUR/kg, pack: 15 kg, hydrogen: 5 ml/100g", "price: 2.40 EUR/kg, pack: 15 kg, hydrogen: 9 ml/100g",
                 ("Rates", ("filler G3Si1-1.2", "hydrogen"), "value"), 9),
    "hydrogen outside": (MATERIALS, "price: 2.40 EUR/kg, pack: 15 kg, hydrogen: 5 ml/100g",
                         "price: 2.40 EUR/kg, pack: 15 kg, hydrogen: 25 ml/100g", ("Rates", ("filler G3Si1-1.2", "hydrogen"), "value"), 25),
    "carbon": (MATERIALS, "carbon: 0.17 %", "carbon: 0.2 %", ("Rates", ("base metal S460", "carbon"), "value"), 0.2),
    "carbon outside": (MATERIALS, "carbon: 0.17 %", "carbon: 0.01 %", ("Rates", ("base metal S460", "carbon"), "value"), 0.01),
    "little heat": (CARBON, "current: 290 A, voltage: 29 V", "current: 290 A, voltage: 9 V", ("Rates", ("procedure CG-F8", "voltage"), "value"), 9),
}


def run(folder, *words):
    done = subprocess.run([SEAMBOOK, *words, folder / JOB, "--rates", folder / "rates", "--date", "2026-05-04"],
                          capture_output=True, text=True, timeout=120, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout


def write_shop(folder, old="", new=""):
    shutil.copytree(ROOT / "rates", folder / "rates")
    (folder / "jobs").mkdir()
    job = (ROOT / JOB).read_text()
    assert JOINT in job
    (folder / JOB).write_text(job.replace(JOINT, HEATED))
    if not old:
        return
    for path in (folder / JOB, *(folder / "rates").glob("*.yaml")):
        text = path.read_text()
        if old in text:
            assert text.count(old) == 1, f"'{old}' stands {text.count(old)} times"
            return path.write_text(text.replace(old, new))
    raise AssertionError(old)


class Heat(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        (FOLDER / "sheet").mkdir()
        write_shop(FOLDER / "sheet")
        run(FOLDER / "sheet", "quote", "--out", FOLDER / "sheet/out")
        book = FOLDER / "sheet/out/bracket-quote.xlsx"
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
        words = set()
        for (name, change), sheets in zip(CHANGES.items(), self.results):
            with self.subTest(name):
                (FOLDER / name).mkdir()
                write_shop(FOLDER / name, change[1], change[2])
                again = json.loads(run(FOLDER / name, "estimate", "--json"))["jobs"][0]
                prices = sorted((float(p["quantity"]), p["unit_price"], p["total"]) for p in again["price"])
                for mine, fresh in zip(totals(sheets), prices, strict=True):
                    for a, b in zip(mine, fresh):
                        self.assertAlmostEqual(a, b, places=6)
                sheet, reference = find_cell(sheets, ASKED)
                shown, heat = sheets[sheet][reference].value, again["joints"][0]["heat"]
                if "preheat_asked_C" in heat:
                    self.assertAlmostEqual(shown, heat["preheat_asked_C"], places=6)
                else:
                    self.assertEqual(shown, "not computed: " + heat["preheat_not_computed"])
                    words.add(shown)
        self.assertEqual(len(words), 3)  # outside by hydrogen, by CET and by heat input


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
