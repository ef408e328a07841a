"""The sample workbook as a file: well formed, text stays text, and the checker of formulas catches what it should.
Called with the seambook executable (its neighbour, the test program, writes the sample) and the root of the sources."""
import os
import subprocess
import sys
import tempfile
import unittest
import xml.etree.ElementTree as ET
import zipfile
from pathlib import Path

import recalc
from cells import read_cells, rewrite

BUILD = Path(sys.argv[1]).resolve().parent if len(sys.argv) > 1 else Path.cwd()
FOLDER = tempfile.TemporaryDirectory()
SAMPLE = Path(FOLDER.name, "sample.xlsx")


def test_program():
    for folder in (BUILD, BUILD / "tests"):
        if (folder / "seambook_tests").exists():
            return folder / "seambook_tests"
    raise SystemExit(f"no seambook_tests beside {sys.argv[1:]}")


def write_sample(path, zone):
    environment = {**os.environ, "SEAMBOOK_SAMPLE": str(path), "TZ": zone}
    done = subprocess.run([test_program(), "--no-skip", "--test-case=the sample workbook for the office suite"],
                          env=environment, capture_output=True, text=True, timeout=60, check=False)
    if done.returncode != 0 or done.stderr:
        raise SystemExit(f"no sample: {done.stdout}{done.stderr}")


def with_part(source, target, part, old, new):
    with zipfile.ZipFile(source) as archive, zipfile.ZipFile(target, "w") as changed:
        for entry in archive.infolist():
            data = archive.read(entry.filename)
            if entry.filename == part:
                assert old in data, f"{old} is not in {part}"
                data = data.replace(old, new)
            changed.writestr(entry, data)
    return target


class File(unittest.TestCase):
    def test_same_bytes_in_another_time_zone(self):
        other = Path(FOLDER.name, "other.xlsx")
        write_sample(other, "Pacific/Kiritimati")
        self.assertEqual(SAMPLE.read_bytes(), other.read_bytes())

    def test_every_part_is_well_formed(self):
        with zipfile.ZipFile(SAMPLE) as archive:
            for name in archive.namelist():
                ET.fromstring(archive.read(name))

    def test_text_stays_text(self):
        cells = read_cells(SAMPLE)["Rates"]
        for reference, text in {"A10": "=1+1", "A11": "_x0041_ & <b>", "A12": "+A1", "A13": "@x"}.items():
            self.assertEqual((cells[reference].value, cells[reference].formula), (text, False))

    def test_page_and_protection(self):
        with zipfile.ZipFile(SAMPLE) as archive:
            rates, cost = (archive.read(f"xl/worksheets/sheet{number}.xml").decode() for number in (1, 2))
            book = archive.read("xl/workbook.xml").decode()
        self.assertIn("<sheetProtection", rates)
        self.assertIn('orientation="landscape"', cost)
        self.assertIn('fitToHeight="0"', cost)
        self.assertIn('<dataValidations count="3">', rates)
        self.assertIn("Bracket &amp;&amp; frame", rates)
        self.assertIn("'Cost page'!$1:$3", book)
        self.assertIn('<definedName name="Labour_rate">Rates!$B$4</definedName>', book)


class Recalculation(unittest.TestCase):
    def test_sample_agrees(self):
        self.assertEqual(recalc.compare([SAMPLE], second=recalc.second_engine() is not None), 0)

    def test_wrong_result_is_caught(self):
        wrong = Path(FOLDER.name, "wrong.xlsx")
        rewrite(SAMPLE, wrong, {"Cost page": {"G11": read_cells(SAMPLE)["Cost page"]["G11"].value + 1e-6}})
        self.assertEqual(recalc.compare([wrong], second=False), 1)

    def test_error_value_is_caught(self):
        broken = with_part(SAMPLE, Path(FOLDER.name, "broken.xlsx"), "xl/worksheets/sheet2.xml", b"<f>SUM(G4:G8)</f>",
                           b"<f>NOSUCHFUNCTION(G4:G8)</f>")
        self.assertEqual(recalc.compare([broken], second=False), 1)

    def test_no_formula_is_caught(self):
        self.assertTrue(recalc.report("x", "y", {}, []))

    def test_changed_rate_reaches_the_price(self):
        changed = Path(FOLDER.name, "changed.xlsx")
        recalc.set_and_recalculate(SAMPLE, changed, ["Rates!B4=108"], ["Cost page!G11"])
        before, after = (read_cells(path)["Cost page"]["G11"].value for path in (SAMPLE, changed))
        self.assertAlmostEqual(after, 2 * before, places=9)  # all of the sample's cost is labour
        self.assertTrue(read_cells(changed)["Cost page"]["G11"].formula)


if __name__ == "__main__":
    with FOLDER:
        write_sample(SAMPLE, "America/Los_Angeles")
        unittest.main(argv=sys.argv[:1], verbosity=1)
