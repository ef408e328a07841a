"""What leaves the shop with --customer-only: one page of plain numbers. Every part of the file is walked for a figure, a name, a
formula or a link from which hours or margin could be read. Called with the seambook executable and the source root."""
import json
import re
import subprocess
import sys
import tempfile
import unittest
import zipfile
from pathlib import Path
from xml.etree import ElementTree

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
FOLDER = tempfile.TemporaryDirectory()
MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
SHEET = "xl/worksheets/sheet1.xml"
PARTS = {"[Content_Types].xml", "_rels/.rels", "docProps/app.xml", "docProps/core.xml", "xl/workbook.xml", "xl/styles.xml",
         "xl/theme/theme1.xml", "xl/_rels/workbook.xml.rels", SHEET}
PRINTED = ("quantity", "unit_price", "pieces", "one_offs", "expedite", "freight", "supplement", "list_rounding", "total", "tax",
           "total_with_tax")
SHOP_WORDS = re.compile(r"hour|margin|mark-up|contingency|labour|overhead|floor|learning|\barc\b|\bcost\b", re.IGNORECASE)


def run(*words):
    done = subprocess.run([SEAMBOOK, *map(str, words)], capture_output=True, text=True, timeout=120, check=False)
    assert done.returncode == 0, done.stderr
    return done.stdout


def texts_of(book, sheet=SHEET):
    page = ElementTree.fromstring(book.read(sheet))
    return "\n".join(t.text or "" for t in page.iter(f"{MAIN}t"))


def quotes():
    """Each example job: its priced figures, its customer's file."""
    jobs = sorted((ROOT / "jobs").glob("*.yaml")) + sorted((ROOT / "jobs").glob("*/*.yaml"))
    for job in jobs:
        out = Path(FOLDER.name, job.stem)
        document = json.loads(run("quote", job, "--customer-only", "--json", "--out", out, "--date", "2026-05-04"))
        files = sorted(out.iterdir())
        assert [f.name for f in files] == [f"{job.stem}-quote-customer.xlsx"], files
        yield job, document["jobs"][0], zipfile.ZipFile(files[0])


class CustomerOnly(unittest.TestCase):
    def test_the_terminal_shows_the_price_and_no_doubt(self):
        shown = run("quote", ROOT / "jobs/bracket.yaml", "--customer-only", "--out", Path(FOLDER.name, "text"), "--date", "2026-05-04")
        self.assertIn("157.66", shown)
        self.assertNotIn("in doubt", shown)

    @classmethod
    def setUpClass(cls):
        cls.quotes = list(quotes())
        assert len(cls.quotes) >= 12

    def test_the_file_has_no_other_part(self):
        for job, _, book in self.quotes:
            with self.subTest(job.name):
                self.assertEqual(set(book.namelist()) - PARTS, set())
                for name in book.namelist():
                    self.assertNotRegex(book.read(name).decode(), r'TargetMode="External"|externalLink|definedName name="(?!_xlnm)')

    def test_one_sheet_and_nothing_hidden(self):
        for job, _, book in self.quotes:
            with self.subTest(job.name):
                workbook = ElementTree.fromstring(book.read("xl/workbook.xml"))
                sheets = workbook.findall(f".//{MAIN}sheet")
                self.assertEqual([(s.get("name"), s.get("state")) for s in sheets], [("Quote", None)])
                page = ElementTree.fromstring(book.read(SHEET))
                self.assertIsNone(page.find(f".//{MAIN}f"), "a formula")
                self.assertFalse([e for e in page.iter() if e.get("hidden") not in (None, "0")])
                self.assertNotIn("legacyDrawing", book.read(SHEET).decode())

    def test_properties_say_title_and_shop_alone(self):
        for job, figures, book in self.quotes:
            with self.subTest(job.name):
                core = ElementTree.fromstring(book.read("docProps/core.xml"))
                said = {e.tag.split("}")[1]: e.text for e in core if e.text}
                self.assertEqual(set(said) - {"title", "creator", "lastModifiedBy", "created", "modified"}, set())
                self.assertEqual(said["title"], f"Quote {figures['job']}")

    def test_every_number_is_a_printed_one(self):
        for job, figures, book in self.quotes:
            with self.subTest(job.name):
                prices = figures["price"] + [p for option in figures.get("options", []) for p in option["price"]]
                allowed = {round(price[key], 4) for price in prices for key in PRINTED if key in price}
                page = ElementTree.fromstring(book.read(SHEET))
                numbers = [float(c.find(f"{MAIN}v").text) for c in page.iter(f"{MAIN}c")
                           if c.get("t") != "inlineStr" and c.find(f"{MAIN}v") is not None]
                self.assertGreaterEqual(len(numbers), 4 * len(figures["price"]))
                self.assertEqual({n for n in numbers if round(n, 4) not in allowed}, set())

    def test_no_text_tells_of_hours_or_margin(self):
        for job, figures, book in self.quotes:
            with self.subTest(job.name):
                text = texts_of(book)
                self.assertNotRegex(text, SHOP_WORDS)
                secret = [figures["totals"]["cost"]["total"], figures["totals"]["floor_min"] / 60]
                secret += [price[key] for price in figures["price"] for key in ("unit_cost", "cost", "left")]
                for figure in secret:
                    self.assertNotIn(f"{figure:.2f}", text)

    def test_what_is_looked_for_would_be_found(self):
        # The whole quote of the same job holds what the customer's file must not.
        out = Path(FOLDER.name, "whole")
        run("quote", ROOT / "jobs/bracket.yaml", "--out", out, "--date", "2026-05-04")
        book = zipfile.ZipFile(out / "bracket-quote.xlsx")
        self.assertRegex(texts_of(book, "xl/worksheets/sheet2.xml"), SHOP_WORDS)
        self.assertIsNotNone(ElementTree.fromstring(book.read(SHEET)).find(f".//{MAIN}f"))
        self.assertTrue(set(book.namelist()) - PARTS)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1], verbosity=2)
