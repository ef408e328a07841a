"""`new`: what it writes runs as it is through check, estimate, quote and plan, nothing is overwritten, and the template it writes can
be filled in and read. Called with the seambook executable and the source root."""
import io
import json
import os
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

import openpyxl

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
DATE = ["--date", "2026-05-18"]


class New(unittest.TestCase):
    def setUp(self):
        self.folder = Path(tempfile.mkdtemp())
        self.home = Path(tempfile.mkdtemp())  # without a rate book of the user

    def tearDown(self):
        shutil.rmtree(self.folder)
        shutil.rmtree(self.home)

    def run_it(self, *words, code=0):
        done = subprocess.run([SEAMBOOK, *words], cwd=self.folder, capture_output=True, text=True, timeout=300, check=False,
                              env={**os.environ, "HOME": str(self.home), "XDG_CONFIG_HOME": str(self.home)})
        self.assertEqual(done.returncode, code, f"{words}\n{done.stdout}{done.stderr}")
        return done

    def files(self):
        return {path.relative_to(self.folder).as_posix(): path.read_bytes() for path in self.folder.rglob("*") if path.is_file()}

    def run_through(self, job, warnings=0):
        """The job through all commands; gives its price for one."""
        checked = json.loads(self.run_it("check", job, "--json").stdout)
        self.assertEqual(len([d for d in checked["diagnostics"] if d["level"] != "note"]), warnings, checked["diagnostics"])
        estimated = json.loads(self.run_it("estimate", job, "--json", *DATE).stdout)["jobs"][0]
        self.run_it("quote", job, *DATE)
        self.run_it("plan", job, "--seconds", "0.2", *DATE)
        self.run_it("explain", job)
        self.assertEqual(len([name for name in self.files() if name.startswith("out/") and name.endswith(".xlsx")]), 2)
        return estimated

    def test_a_new_shop_runs_as_it_is(self):
        for units, currency in (("metric", "EUR"), ("us", "USD")):
            with self.subTest(units):
                told = self.run_it("new", "shop", "--units", units).stdout
                self.assertIn("seambook check shop/first-job.yaml", told)
                estimated = self.run_through("shop/first-job.yaml")
                self.assertEqual(estimated["currency"], currency)
                self.assertEqual(len(estimated["joints"]), 5)
                shutil.rmtree(self.folder / "shop")
                shutil.rmtree(self.folder / "out")

    def test_the_first_job_is_explained_line_by_line(self):
        self.run_it("new", "shop")
        for name, content in self.files().items():
            self.assertIn(b"# ", content, name)
            self.assertLessEqual(len(content.splitlines()), 80, name)

    def test_nothing_is_overwritten(self):
        self.run_it("new", "shop")
        before = self.files()
        refused = self.run_it("new", "shop", "--units", "us", code=1)
        self.assertIn("shop/rates holds a rate book already; nothing was written", refused.stderr)
        self.assertEqual(self.files(), before)
        shutil.rmtree(self.folder / "shop/rates")
        refused = self.run_it("new", "shop", code=1)
        self.assertIn("shop/first-job.yaml exists and was left as it is; nothing was written", refused.stderr)
        self.assertEqual(set(self.files()), {"shop/first-job.yaml"})
        self.run_it("new", "--takeoff", "t.xlsx")
        template = (self.folder / "t.xlsx").read_bytes()
        self.assertIn("t.xlsx exists and was left as it is", self.run_it("new", "--takeoff", "t.xlsx", "--units", "us", code=1).stderr)
        self.assertEqual((self.folder / "t.xlsx").read_bytes(), template)
        self.run_it("new", "--takeoff", "t.csv", code=1)
        self.assertNotIn("t.csv", self.files())

    def test_what_the_system_refuses_ends_with_3(self):
        (self.folder / "file").write_text("")
        self.run_it("new", "file/shop", code=3)
        self.run_it("new", "--from-takeoff", "none.csv", code=3)
        self.assertEqual(set(self.files()), {"file"})

    def test_the_example_of_the_template_is_read_as_it_is(self):
        for units, metal in (("metric", "S235"), ("us", "A36")):
            with self.subTest(units):
                shutil.rmtree(self.folder / "shop", ignore_errors=True)
                self.run_it("new", "shop", "--units", units)
                self.run_it("new", "--takeoff", "shop/list.xlsx", "--units", units)
                (self.folder / "shop/list.yaml").write_text(
                    f"format: 1\njob: list\nweldments:\n  - {{name: rest, parts: 5, mass: 14 kg, base_metal: {metal}, "
                    f"base_metal_by: mass, joints_from: list.xlsx, joints_sheet: Example}}\n")
                taken = self.run_through("shop/list.yaml")
                self.assertEqual([joint["id"] for joint in taken["joints"]], [f"rest/J{number}" for number in range(1, 6)])
                written = json.loads(self.run_it("estimate", "shop/first-job.yaml", "--json", *DATE).stdout)["jobs"][0]
                for a, b in list(zip(taken["joints"], written["joints"]))[:3]:
                    self.assertEqual(a["arc_min"], b["arc_min"])
                shutil.rmtree(self.folder / "shop")
                shutil.rmtree(self.folder / "out")

    def test_a_filled_in_template_becomes_a_job(self):
        self.run_it("new", "--takeoff", "list of 12.xlsx")
        book = openpyxl.load_workbook(self.folder / "list of 12.xlsx")
        sheet = book["Joints"]
        heads = {cell.value: cell.column for cell in sheet[1]}
        for row in range(2, 14):
            filled = {"id": f"0{row}", "weld": "fillet", "leg (mm)": 4, "thickness (mm)": "6 / 8", "length (mm)": 100.5 * row, "count": row}
            for head, value in filled.items():
                sheet.cell(row, heads[head]).value = value
        book.save(self.folder / "list of 12.xlsx")
        told = self.run_it("new", "--from-takeoff", "list of 12.xlsx").stdout
        self.assertIn("list of 12.yaml", told)
        self.assertIn("rates/shop.yaml", told)
        taken = self.run_through("list of 12.yaml")
        self.assertEqual([joint["id"] for joint in taken["joints"]], [f"list of 12/0{row}" for row in range(2, 14)])
        # One station and one welder: the first order there is cannot be bettered, so nothing is searched.
        planned = json.loads(self.run_it("plan", "list of 12.yaml", "--json", "--out", "again", *DATE).stdout)
        self.assertTrue(all(level["proved"] for level in planned["levels"]), planned["levels"])

    def test_a_job_around_a_table_elsewhere_takes_it_along_and_keeps_the_rate_book_there(self):
        self.run_it("new", "shop", "--units", "us")
        (self.folder / "Deck 4.csv").write_text("id,weld,leg,thickness,length\nJ1,fillet,3/16 in,1/4 in,10 in\n")
        rates = {name: content for name, content in self.files().items() if "rates/" in name}
        self.run_it("new", "--from-takeoff", "Deck 4.csv", "shop/deck")
        self.assertEqual({name: content for name, content in self.files().items() if "rates/" in name}, rates)
        self.assertEqual((self.folder / "shop/deck/Deck 4.csv").read_bytes(), (self.folder / "Deck 4.csv").read_bytes())
        self.run_through("shop/deck/Deck 4.yaml")
        self.run_it("new", "--from-takeoff", "Deck 4.csv", "shop/deck", code=1)

    def test_faults_of_a_take_off_are_told_and_the_job_is_written(self):
        (self.folder / "deck.csv").write_text("id,weld,leg,thickness,length\nJ1,fillet,3 mn,8 mm,240 mm\n")
        told = self.run_it("new", "--from-takeoff", "deck.csv", code=1)
        self.assertIn("deck.csv:2:11: error: 'leg': unknown unit 'mn'; did you mean 'mm'?", told.stderr)
        self.assertIn("deck.yaml", self.files())

    def test_columns_of_the_template_admit_what_they_should(self):
        self.run_it("new", "--takeoff", "t.xlsx", *DATE)
        self.run_it("new", "--takeoff", "again.xlsx", *DATE)
        self.assertEqual((self.folder / "t.xlsx").read_bytes(), (self.folder / "again.xlsx").read_bytes())
        self.run_it("new", "--takeoff", "us.xlsx", "--units", "us")
        for name, number_column in (("t.xlsx", "leg (mm)"), ("us.xlsx", None)):
            with self.subTest(name):
                book = openpyxl.load_workbook(io.BytesIO((self.folder / name).read_bytes()))
                self.assertEqual(book.sheetnames, ["Joints", "Example", "Columns"])
                sheet = book["Joints"]
                letters = {cell.value: cell.column_letter for cell in sheet[1]}
                rules = {str(rule.sqref).split(":")[0][:-1]: rule for rule in sheet.data_validations.dataValidation}
                self.assertEqual(set(rules), set(letters.values()))
                self.assertEqual(rules[letters["weld"]].type, "list")
                self.assertIn("double_bevel", rules[letters["weld"]].formula1)
                self.assertEqual((rules[letters["sides"]].type, rules[letters["sides"]].formula2), ("whole", "2"))
                # Names and inches stay as they are typed.
                for head in ("id", "base_metal", "after", "thickness (mm)" if number_column else "leg (in)"):
                    self.assertEqual(sheet[letters[head] + "2"].number_format, "@")
                if number_column:
                    self.assertEqual(rules[letters[number_column]].type, "decimal")

    NEEDED = {"pitch": "element", "gap_e": "element", "branch_on": "outside_diameter"}
    # Names of a rate book, and what needs more of one than `new` writes.
    NAMES = {"backgouge", "preheat", "id", "mark", "note", "weld", "after", "alternatives", "procedure", "base_metal", "finish",
             "grade"}

    def examples(self, book):
        """The examples of the sheet Columns by heading, but for NAMES."""
        sheet = openpyxl.load_workbook(self.folder / book)["Columns"]
        rows = [(row[0].value, row[1].value) for row in sheet.iter_rows(min_row=5)]
        return {head: words.rsplit(": ", 1)[1] for head, words in rows
                if ": " in words and head.split(" ")[0] not in self.NAMES and " or " not in words.rsplit(": ", 1)[1]}

    def faulty_columns(self, weld, examples):
        """A row for each example, alone beside the weld and what it needs; the headings at whose own field there is a complaint."""
        heads = list(examples)
        lines = [",".join(["id", "weld", *heads])]
        starts = []
        for row, head in enumerate(heads):
            needed = self.NEEDED.get(head.split(" ")[0])
            fields = [examples[h] if h == head or h.split(" ")[0] == needed else "" for h in heads]
            before = ",".join([f"J{row}", weld, *fields[:row]]) + ","
            starts.append(len(before) + 1)
            lines.append(before + ",".join(fields[row:]))
        (self.folder / "t.csv").write_text("\n".join(lines) + "\n")
        told = json.loads(self.run_it("check", "t.yaml", "--json", code=1).stdout)["diagnostics"]
        at = {(d["line"], d["column"]) for d in told if d["level"] == "error" and d["file"].endswith("t.csv")}
        return {head for row, head in enumerate(heads) if (row + 2, starts[row]) in at}

    def test_every_example_of_a_column_may_stand_below_its_heading(self):
        for units, unit in (("metric", "mm"), ("us", "in")):
            with self.subTest(units):
                self.run_it("new", "shop", "--units", units)
                shutil.move(self.folder / "shop/rates", self.folder / "rates")
                self.run_it("new", "--takeoff", f"{units}.xlsx", "--units", units)
                (self.folder / "t.yaml").write_text("format: 1\njob: t\nweldments: [{name: t, base_metal: "
                                                    f"{'S235' if unit == 'mm' else 'A36'}, joints_from: t.csv}}]\n")
                examples = self.examples(f"{units}.xlsx")
                self.assertGreaterEqual(len(examples), 35)
                lengths = [head for head in examples if head.endswith(f"({unit})")]
                self.assertEqual(lengths, [head for head in examples if "(" in head])
                for head in lengths:
                    self.assertNotRegex(examples[head], "[a-z]", head)
                if unit == "in":
                    self.assertNotRegex(" ".join(examples.values()), "mm|degC")
                welds = ["fillet", "single_v", "double_bevel", "single_u", "single_bevel", "plug", "slot", "overlay", "flare_v"]
                faulty = set(examples).intersection(*(self.faulty_columns(weld, examples) for weld in welds))
                self.assertEqual(faulty, set())
                spoiled = {**examples, lengths[0]: "6 of them"}
                self.assertEqual({lengths[0]}, set(examples).intersection(*(self.faulty_columns(weld, spoiled) for weld in welds)))
                shutil.rmtree(self.folder / "shop")
                shutil.rmtree(self.folder / "rates")


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
