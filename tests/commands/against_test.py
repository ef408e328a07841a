"""`quote --against`: a quote printed as JSON, then changed files; causes add up to the new total and land where they belong,
also with a take-off beside the job and several jobs. Called with the seambook executable and the source root."""
import json
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
FOLDER = Path(tempfile.mkdtemp())
TAKEOFF = 'id,weld,leg,thickness,length\nA,fillet,5 mm,8 mm,240 mm\nB,fillet,5 mm,8 mm,120 mm\n'
JOB = """format: 1
job: beam
quantities: [2, 20]
weldments:
  - {name: beam, parts: 3, base_metal: S235, process: 135, bought: 38 EUR each, joints_from: beam.csv}
"""


def quote(*words, code=0):
    done = subprocess.run([SEAMBOOK, "quote", *words, "--rates", "rates", "--out", "out", "--force", "--date", "2026-05-18"], cwd=FOLDER,
                          capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == code, f"{words}: exit {done.returncode}\n{done.stdout}{done.stderr}"
    return done


def changes(job="beam.yaml", past="past.json"):
    printed = json.loads(quote(job, "--json", "--against", past).stdout)["jobs"][0]
    return printed["changes"], printed["price"][0]["total"]


class Against(unittest.TestCase):
    def setUp(self):
        shutil.copytree(ROOT / "rates", FOLDER / "rates", dirs_exist_ok=True)
        (FOLDER / "beam.yaml").write_text(JOB)
        (FOLDER / "beam.csv").write_text(TAKEOFF)
        shutil.copy(ROOT / "jobs/bracket.yaml", FOLDER / "bracket.yaml")
        (FOLDER / "past.json").write_text(quote("beam.yaml", "bracket.yaml", "--json").stdout)

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(FOLDER)

    def sums(self, found, total):
        amounts = {cause: entry["amount"] for entry in found["causes"] for cause in entry["causes"]}
        self.assertAlmostEqual(found["past"]["total"] + sum(amounts.values()), total, places=6)
        return amounts

    def test_nothing_changed(self):
        found, total = changes()
        self.assertEqual(set(self.sums(found, total).values()), {0})
        self.assertEqual(found["items"], [])

    def test_a_longer_seam_of_the_takeoff_is_scope(self):
        (FOLDER / "beam.csv").write_text(TAKEOFF.replace("240 mm", "420 mm"))
        found, total = changes()
        amounts = self.sums(found, total)
        self.assertGreater(amounts.pop("scope"), 0)
        self.assertEqual(set(amounts.values()), {0})
        self.assertIn({"cause": "scope", "of": "beam/A", "figure": "joint line", "before": "240 mm", "now": "420 mm"}, found["items"])

    def test_all_together_add_up(self):
        (FOLDER / "beam.csv").write_text(TAKEOFF.replace("240 mm", "420 mm"))
        (FOLDER / "beam.yaml").write_text(JOB.replace("[2, 20]", "[5, 20]"))
        shop = FOLDER / "rates/shop.yaml"
        shop.write_text(shop.read_text().replace("rate: 54 EUR/h", "rate: 58 EUR/h"))
        found, total = changes()
        amounts = self.sums(found, total)
        for cause in ("scope", "quantity", "rates"):
            self.assertNotEqual(amounts[cause], 0)
        self.assertEqual(amounts["program version"], 0)

    def test_another_printed_total_is_the_programs(self):
        past = json.loads((FOLDER / "past.json").read_text())
        past["jobs"][0]["price"][0]["total"] += 3.21
        (FOLDER / "past.json").write_text(json.dumps(past))
        found, total = changes()
        self.assertAlmostEqual(self.sums(found, total)["program version"], -3.21)

    def test_several_jobs_each_find_their_own(self):
        printed = json.loads(quote("beam.yaml", "bracket.yaml", "--json", "--against", "past.json").stdout)["jobs"]
        self.assertEqual([job["job"] for job in printed], ["beam", "bracket"])
        for job in printed:
            self.assertEqual(job["changes"]["past"]["total"], job["price"][0]["total"])

    def test_the_terminal_shows_the_causes(self):
        out = quote("beam.yaml", "--against", "past.json").stdout
        for words in ("since the previous quote", "program version", "quantity", "now, for 2"):
            self.assertIn(words, out)

    def test_refused(self):
        (FOLDER / "one.json").write_text(quote("beam.yaml", "--json").stdout)
        self.assertIn("one.json: error: holds no job bracket", quote("bracket.yaml", "--against", "one.json", code=1).stderr)
        for path in (FOLDER / "rates").glob("*.yaml"):
            path.write_text(path.read_text().replace("EUR", "CHF"))
        (FOLDER / "beam.yaml").write_text(JOB.replace("EUR", "CHF"))
        self.assertIn("is in EUR, the rate book now in CHF", quote("beam.yaml", "--against", "one.json", code=1).stderr)
        quote("beam.yaml", "--against", "none.json", code=3)
        quote("-", "--against", "-", code=2)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
