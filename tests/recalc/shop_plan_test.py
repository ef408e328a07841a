"""A shop's plan: every formula cell recalculated by the office suite shows what the program wrote, and the minutes that the
stations' lists sum up are those of the plan's JSON. Called with the seambook executable and the source root."""
import json
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

import recalc
from cells import read_cells

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
FOLDER = tempfile.TemporaryDirectory()
SHOPS = {
    "2026-05-11": ["jobs/brewhouse-platform.yaml", "jobs/pipe-set.yaml", "jobs/wash-down-cabinet.yaml"],
    "2026-06-01": [f"jobs/saltbriar/{name}.yaml" for name in ("hinge-set", "ramp", "subframe", "tool-enclosure")],
    "2026-09-07": [f"jobs/marlgannet/{name}.yaml" for name in ("bracket-repair", "coolant-manifold", "coolant-tank", "machine-base")],
}


def planned(date, jobs):
    """The plan's JSON and its workbook. A second of search: what is planned does not matter here."""
    out = Path(FOLDER.name, date)
    done = subprocess.run([SEAMBOOK, "plan", *(ROOT / job for job in jobs), "--date", date, "--out", out, "--json", "--seconds", "1"],
                          capture_output=True, text=True, timeout=120, check=False)
    assert done.returncode == 0, done.stderr
    return json.loads(done.stdout), out / f"plan-{date}.xlsx"


class ShopPlan(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.plans = {date: planned(date, jobs) for date, jobs in SHOPS.items()}

    @classmethod
    def tearDownClass(cls):
        FOLDER.cleanup()

    def test_recalculated_cells_agree(self):
        books = [book for _, book in self.plans.values()]
        for book in books:
            self.assertTrue(any(cell.formula for cells in read_cells(book).values() for cell in cells.values()), book.name)
        self.assertEqual(recalc.compare(books, second=recalc.second_engine() is not None), 0)

    def test_lists_sum_up_to_the_plan(self):
        for plan, book in self.plans.values():
            sheets = read_cells(book)
            for station in plan["stations"]:
                if not station["steps"]:
                    continue
                cells = sheets[f"List {station['station']}"]
                sums = [cell.value for cell in cells.values() if cell.formula]
                change, labour = station["change_min"], sum(step["labour_min"] for step in station["steps"])
                arc = sum(step["arc_min"] for step in station["steps"])
                with self.subTest(book=book.name, station=station["station"]):
                    self.assertEqual(len(sums) % 3, 0)
                    for column, wanted in enumerate((change, labour, arc)):
                        self.assertAlmostEqual(sum(sums[column::3]), wanted, delta=0.05)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
