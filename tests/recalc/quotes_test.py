"""The quotes of the example jobs, and of variations of one: every formula cell recalculated by the office suite (with its
stored results spoiled first) shows what the program wrote. Called with the seambook executable and the source root."""
import re
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

import recalc
from cells import read_cells

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
FOLDER = tempfile.TemporaryDirectory()
LENGTH_240 = "{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, count: 4}"

# The first joint of the bracket, each time changed in another way.
VARIATIONS = {
    "leg": "{weld: fillet, leg: 4.5 mm, thickness: 8 mm, length: 240 mm, count: 4}",
    "throat": "{weld: fillet, throat: 3.5 mm, thickness: 8 mm, length: 240 mm, count: 4}",
    "inches": '{weld: fillet, leg: 3/16 in, thickness: 5/16 in, length: 9-1/2 in, count: 4}',
    "two_sides": "{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, count: 4, sides: 2}",
    "intermittent": "{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, count: 4, element: 50 mm, gap_e: 40 mm}",
    "upward": "{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, count: 4, position: PF}",
    "tube": "{weld: fillet, leg: 5 mm, thickness: 8 mm, outside_diameter: 76.1 mm, count: 4}",
    "bevel": "{weld: single_bevel, thickness: 8 mm, length: 240 mm, count: 4, groove_angle: 45 deg, gap: 3 mm}",
    "named": "{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm, count: 4, procedure: CG-F4, passes: 2}",
    "unequal_legs": "{weld: fillet, legs: [6 mm, 8 mm], gap: 1 mm, thickness: 10 mm, length: 240 mm, procedure: CG-F6}",
    "deep_throat": "{weld: fillet, throat: 4 mm, deep_throat: 5 mm, thickness: 10 mm, length: 240 mm, procedure: CG-F6}",
    "square_both": "{weld: square, thickness: 6 mm, length: 240 mm, sides: 2, procedure: CG-S4}",
    "partial_v": "{weld: single_v, thickness: 16 mm, depth: 8 mm, length: 240 mm, procedure: CG-V15, backing: temporary}",
    "root_cap": "{weld: single_v, thickness: 12 mm, length: 240 mm, procedure: CG-V15, back_excess: {width: 5 mm, height: 1 mm}}",
    "share": "{weld: single_v, thickness: 12 mm, length: 240 mm, procedure: CG-V15, excess: 10 %}",
    "double_v": "{weld: double_v, thickness: 20 mm, length: 240 mm, procedure: CG-V15}",
    "uneven_double_v": "{weld: double_v, thickness: 24 mm, depth: [12 mm, 10 mm], root_face: 2 mm, length: 240 mm, procedure: CG-V15}",
    "double_bevel": "{weld: double_bevel, thickness: 20 mm, length: 240 mm, procedure: CG-V15, reinforce: 5 mm}",
    "single_u": "{weld: single_u, thickness: 30 mm, length: 240 mm, procedure: CG-V15}",
    "double_u": "{weld: double_u, thickness: 40 mm, length: 240 mm, procedure: CG-V15}",
    "single_j": "{weld: single_j, thickness: 30 mm, length: 240 mm, procedure: CG-V15, reinforce: 6 mm}",
    "double_j": "{weld: double_j, thickness: 40 mm, depth: [14 mm, 12 mm], length: 240 mm, procedure: CG-V15}",
    "flare_bevel": "{weld: flare_bevel, thickness: 8 mm, radius: 12 mm, length: 240 mm, procedure: CG-V15}",
    "flare_v": "{weld: flare_v, thickness: 8 mm, radius: 12 mm, depth: 8 mm, gap: 1 mm, length: 240 mm, procedure: CG-V15, "
               "excess: {height: 1 mm}}",
    "plug": "{weld: plug, thickness: [8 mm, 12 mm], diameter: 18 mm, count: 6, procedure: CG-V15}",
    "slot": "{weld: slot, thickness: [8 mm, 12 mm], width: 14 mm, length: 40 mm, count: 3, procedure: CG-V15}",
    "overlay": "{weld: overlay, thickness: 20 mm, width: 60 mm, layers: 2, layer_height: 3 mm, length: 240 mm, procedure: CG-V15}",
    "gouged_deep": "{weld: gouged, thickness: 20 mm, depth: 10 mm, width: 12 mm, length: 240 mm, procedure: CG-V15}",
    "gouged_shallow": "{weld: gouged, thickness: 20 mm, depth: 4 mm, width: 12 mm, length: 240 mm, procedure: CG-V15}",
    "branch": "{weld: fillet, leg: 5 mm, thickness: 8 mm, outside_diameter: 60.3 mm, branch_on: 114.3 mm, branch_angle: 60 deg}",
    "around": "{weld: fillet, leg: 5 mm, thickness: 8 mm, around: [60 mm, 40 mm], corner_radius: 5 mm}",
    "staggered": "{weld: fillet, leg: 5 mm, thickness: 8 mm, length: 600 mm, element: 50 mm, pitch: 150 mm, sides: 2, layout: staggered}",
    "preheated": "{weld: fillet, leg: 8 mm, thickness: [20 mm, 30 mm], length: 240 mm, count: 4, base_metal: S460, "
                 "procedure: CG-F8, preheat: 130 degC, interpass_max: 220 degC}",
    "preheated_butt": "{weld: single_v, thickness: 30 mm, length: 240 mm, base_metal: S460, preheat: 300 degF, passes: "
                      "[{procedure: CG-V8, role: root}, {procedure: CG-V15}], heat_input_max: 2 kJ/mm}",
    "preheat_outside": "{weld: fillet, leg: 4 mm, thickness: [8 mm, 40 mm], length: 240 mm, base_metal: S460, "
                       "procedure: CG-F4, preheat: none}",
    "two_procedures": "{weld: fillet, leg: 6 mm, thickness: 8 mm, length: 240 mm, count: 4, "
                      "passes: [{procedure: CG-F3}, {procedure: CG-F4, count: 2}]}",
}

# Lines of a job, and replacements in the rate book: every line of the price policy on, in both ways there are.
EVERY_LINE = "expedite: true\nlearning: true\nrisk: first_off\n"
SUPPLIED = ("    bought: 38 EUR each\n", "    free_issue: true\n    free_issue_value: 64 EUR\n")
POLICIES = {
    "every-line": (EVERY_LINE + "freight: by_mass\n", [("shop.yaml", "  margin: 18 %", "  margin: 18 %\n  list_rounding: 5 EUR\n  tax_rate: 19 %"),
                                                      ("prices.yaml", "  rate: 92 %", "  rate: 92 %\n  holds_at: 5")]),
    "other-ways": (EVERY_LINE + "freight: 12 EUR each\n",
                   [("shop.yaml", "  margin: 18 %", "  markup: 22 %\n  list_rounding: 0.05 EUR\n  tax_rate: 7.7 %"),
                    ("shop.yaml", "in_rate: true", "added: 60 %"),
                    ("prices.yaml", "model: cumulative_average", "model: unit"), ("prices.yaml", "with_margin: false", "with_margin: true")]),
    "options": (EVERY_LINE + "options:\n  - {name: painted, bought: {what: paint, kind: outside, price: 9 EUR each}, one_offs: "
                "[{what: mask, time: 1 h, price: 5 EUR}]}\n  - {name: bare, leaves_out: bracket}\n", []),
    "untaxed": ("untaxed: reverse charge\nfreight: 80 EUR per lot\n", [("shop.yaml", "  margin: 18 %", "  margin: 18 %\n  tax_rate: 19 %")]),
}


def run(*words):
    done = subprocess.run([SEAMBOOK, *map(str, words)], capture_output=True, text=True, timeout=120, check=False)
    if done.returncode != 0:
        raise AssertionError(f"{words}: exit {done.returncode}\n{done.stdout}{done.stderr}")
    return done.stdout


def varied_jobs():
    text = (ROOT / "jobs/bracket.yaml").read_text()
    assert LENGTH_240 in text
    paths = []
    for name, joint in VARIATIONS.items():
        path = Path(FOLDER.name, f"bracket-{name}.yaml")
        path.write_text(text.replace(LENGTH_240, joint).replace("job: bracket", f"job: bracket-{name}"))
        paths.append(path)
    return paths


def policy_books(out):
    """Quotes of the bracket, one for each policy, each with a rate book of its own."""
    text = (ROOT / "jobs/bracket.yaml").read_text().replace(*SUPPLIED)
    for name, (lines, replacements) in POLICIES.items():
        folder = Path(FOLDER.name, name)
        shutil.copytree(ROOT / "rates", folder / "rates")
        for file, old, new in replacements:
            rates = (folder / "rates" / file).read_text()
            assert rates.count(old) == 1, (file, old)
            (folder / "rates" / file).write_text(rates.replace(old, new))
        (folder / "job.yaml").write_text(text.replace("job: bracket", f"job: bracket-{name}").replace("drawing:", lines + "drawing:"))
        run("quote", folder / "job.yaml", "--out", out, "--date", "2026-05-04")
    return sorted(out.glob("*.xlsx"))


def rates_in_customary_units():
    folder = Path(FOLDER.name, "customary-rates")
    shutil.copytree(ROOT / "rates", folder)
    shop = folder / "shop.yaml"
    text = shop.read_text()
    assert text.count("\nterms: iso\n") == 1
    shop.write_text(text.replace("\nterms: iso\n", "\nterms: aws\n"))
    return folder


class Quotes(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.out = Path(FOLDER.name, "out")
        jobs = sorted((ROOT / "jobs").glob("*.yaml"))
        run("quote", *jobs, *varied_jobs(), "--rates", ROOT / "rates", "--out", cls.out, "--date", "2026-05-04")
        cls.books = sorted(cls.out.glob("*.xlsx"))
        assert len(cls.books) == len(jobs) + len(VARIATIONS)
        shops = sorted((ROOT / "jobs").glob("*/*.yaml"))  # each beside its own rates
        run("quote", *shops, "--out", cls.out / "shops", "--date", "2026-05-04")
        cls.books += sorted((cls.out / "shops").glob("*.xlsx"))
        cls.books += policy_books(cls.out / "policies")
        assert len(cls.books) == len(jobs) + len(VARIATIONS) + len(shops) + len(POLICIES) and shops

        # Temperatures in degrees Fahrenheit, the one unit with a zero of its own.
        heated = [path for path in varied_jobs() if "preheat" in path.name]
        run("quote", *heated, "--rates", rates_in_customary_units(), "--out", cls.out / "customary", "--date", "2026-05-04")
        cls.books += sorted((cls.out / "customary").glob("*.xlsx"))

    def test_recalculated_cells_agree(self):
        self.assertEqual(recalc.compare(self.books, second=recalc.second_engine() is not None), 0)

    def test_no_preheat_shows_outside_the_range_of_method_b(self):
        """What the office suite makes of the cells, whether computed, none, or not computed."""
        seen = {}
        for name in ("preheated", "preheated_butt", "preheat_outside"):
            sheet = read_cells(self.out / f"bracket-{name}-quote.xlsx")["Heat"]
            column = next(r.rstrip("0123456789") for r, c in sheet.items() if c.value == "preheat by method B (°C)")
            seen[name] = [c.value for r, c in sorted(sheet.items()) if r.rstrip("0123456789") == column]
        self.assertTrue(any(isinstance(v, float) and 80 < v < 200 for v in seen["preheated"]), seen)
        self.assertTrue(any(str(v).startswith("not computed: heat input outside") for v in seen["preheat_outside"]), seen)
        self.assertFalse(any(isinstance(v, float) for v in seen["preheat_outside"]), seen)

    def test_same_bytes_again(self):
        again = Path(FOLDER.name, "again")
        run("quote", ROOT / "jobs/bracket.yaml", "--rates", ROOT / "rates", "--out", again, "--date", "2026-05-04")
        self.assertEqual((again / "bracket-quote.xlsx").read_bytes(), (self.out / "bracket-quote.xlsx").read_bytes())

    def test_customer_page_tells_no_hours_and_no_margin(self):
        for book in self.books:
            words = " ".join(str(cell.value) + " " + str(cell.text) for cell in read_cells(book)["Quote"].values())
            self.assertIsNone(re.search(r"hour|margin|mark-up|contingency|labour|floor|\barc\b", words, re.IGNORECASE), words)

    def test_user_text_is_no_formula(self):
        hostile = "job: bracket\ntitle: '=1+1'\ncustomer: '+cmd|x'\nrevision: '@SUM(1)'"
        text = (ROOT / "jobs/bracket.yaml").read_text().replace("job: bracket", hostile, 1)
        path = Path(FOLDER.name, "hostile.yaml")
        path.write_text(text)
        run("quote", path, "--rates", ROOT / "rates", "--out", Path(FOLDER.name, "hostile"), "--date", "2026-05-04")
        cells = read_cells(Path(FOLDER.name, "hostile/bracket-quote.xlsx"))["Quote"].values()
        for wanted in ("=1+1", "+cmd|x", "@SUM(1)"):
            self.assertTrue(any(c.value == wanted and not c.formula for c in cells), wanted)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
