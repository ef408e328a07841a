"""One job of 500 joints, written as YAML, as tables and as workbooks: `estimate --json` and `quote --json` print the same figures for
each, and a quote against one made from another form finds that nothing moved. Called with the seambook executable and the source
root."""
import csv
import io
import json
import re
import shutil
import subprocess
import sys
import tempfile
import unittest
import zipfile
from pathlib import Path
from random import Random

import openpyxl

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
ROWS = 500
HEADINGS = ["id", "mark", "weld", "leg", "thickness", "length", "outside_diameter", "element", "pitch", "count", "sides", "after",
            "position", "purge", "convexity", "preheat"]
WORDS = {"id", "mark", "weld", "after", "position", "purge"}
UNITS = {"leg": "mm", "length": "mm", "outside_diameter": "mm", "element": "mm", "pitch": "mm", "convexity": "%", "preheat": "degC"}


def joint(random, number):
    """Keys of one joint; sizes as numbers in the units above, thickness as one number or two."""
    made = {"id": f"J{number:03}", "mark": random.choice(['rib, "left"', "knee; upper", "Träger – Stütze", "1/8 plate"])}
    weld = random.choice(["fillet", "fillet", "fillet", "tube", "square", "single_v"])
    thickness = random.choice([6, 8, 10, 12.5])
    if weld in ("fillet", "tube"):
        made |= {"weld": "fillet", "leg": random.choice([3, 3.5, 4, 5]),
                 "thickness": [thickness, random.choice([6, 8, 10])] if random.random() < 0.4 else thickness}
        made |= {"outside_diameter": random.choice([42.4, 60.3, 88.9])} if weld == "tube" else {}
        made |= {"convexity": random.choice([5, 12.5])} if random.random() < 0.2 else {}
    else:
        made |= {"weld": weld, "thickness": 3 if weld == "square" else thickness}
    if weld != "tube":
        made["length"] = random.randint(200, 24000) / 10
    if weld == "fillet" and made["length"] > 600 and random.random() < 0.2:
        made |= {"element": 40, "pitch": 120.5}
    elif weld == "fillet" and random.random() < 0.3:
        made["sides"] = 2
    if random.random() < 0.5:
        made["count"] = random.randint(1, 9)
    if number > 2 and random.random() < 0.2:
        made["after"] = [f"J{number - 1:03}"] if random.random() < 0.5 else [f"J{number - 2:03}", f"J{number - 1:03}"]
    if random.random() < 0.2:
        made["purge"] = random.random() < 0.5
    if random.random() < 0.1:
        made["preheat"] = 120
    return made


def amount(key, value):
    """As an author writes it."""
    if isinstance(value, list):
        return " / ".join(f"{part:g} mm" for part in value) if key == "thickness" else " ".join(value)
    if isinstance(value, bool):
        return str(value).lower()
    if key in WORDS or key in ("count", "sides"):
        return str(value)
    return f"{value:g} {UNITS.get(key, 'mm')}" if key != "length" else f"{value:.1f} mm"


def yaml_value(key, value):
    if isinstance(value, list):
        return "[" + ", ".join(f"{part:g} mm" if key == "thickness" else part for part in value) + "]"
    return json.dumps(value, ensure_ascii=False) if key == "mark" else amount(key, value)


def job(joints_from=""):
    return f"format: 1\njob: deck\nquantities: [1, 5]\nweldments:\n  - {{name: deck, parts: 120, mass: 900 kg, base_metal: S235, process: 135, bought: 300 EUR each{joints_from}}}\n"


def as_yaml(joints):
    lines = [job().rstrip("\n}"), ", joints: ["]
    rows = ["{" + ", ".join(f"{key}: {yaml_value(key, value)}" for key, value in made.items()) + "}" for made in joints]
    return lines[0] + lines[1] + ",\n    ".join(rows) + "]}\n"


def as_csv(joints, separator=",", mark=b"", line_end="\n"):
    out = io.StringIO()
    write = csv.writer(out, delimiter=separator, lineterminator=line_end)
    headings = HEADINGS[::-1]
    write.writerow(headings)
    for made in joints:
        write.writerow([amount(key, made[key]) if key in made else "" for key in headings])
    return mark + out.getvalue().encode()


def as_workbook(joints):
    """Numbers as numbers, with their units in the headings or in the format of the cell."""
    book = openpyxl.Workbook()
    book.active.title = "Notes"
    book.active["A1"] = "nothing to weld here"
    sheet = book.create_sheet("Joints of the deck")
    sheet.append([f"{key} ({UNITS[key]})" if key in UNITS and key not in ("pitch", "convexity") else key for key in HEADINGS])
    for made in joints:
        row = [made.get(key) for key in HEADINGS]
        for at, key in enumerate(HEADINGS):
            if isinstance(row[at], list) or key == "thickness":
                row[at] = amount(key, made[key]) if key in made else None
            elif key == "convexity" and row[at] is not None:
                row[at] /= 100
        sheet.append(row)
        sheet.cell(sheet.max_row, HEADINGS.index("pitch") + 1).number_format = '0.0" mm"'
        sheet.cell(sheet.max_row, HEADINGS.index("convexity") + 1).number_format = "0.00%"
    out = io.BytesIO()
    book.save(out)
    return out.getvalue()


def with_shared_strings(workbook):
    """The same with its texts in the part that cells share, some of them in two runs, as spreadsheet programs write them."""
    texts = []

    def share(found):
        texts.append(found[1])
        return f't="s"><v>{len(texts) - 1}</v>'

    def item(text):
        half = len(text) // 2
        runs = "&" not in text and len(text) > 5
        plain = f'<t xml:space="preserve">{text}</t>'
        return f'<si><r><t xml:space="preserve">{text[:half]}</t></r><r><rPr><b/></rPr><t xml:space="preserve">{text[half:]}</t></r></si>' if runs else f"<si>{plain}</si>"

    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(workbook)) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            text = old.read(name).decode()
            if name.startswith("xl/worksheets/"):
                text = re.sub(r't="inlineStr"><is><t[^>]*>([^<]*)</t></is>', share, text)
            if name == "xl/_rels/workbook.xml.rels":
                kind = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/sharedStrings"
                text = text.replace("</Relationships>", f'<Relationship Id="rId99" Type="{kind}" Target="sharedStrings.xml"/></Relationships>')
            new.writestr(name, text)
        new.writestr("xl/sharedStrings.xml", '<sst xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' + "".join(map(item, texts)) + "</sst>")
    assert len(texts) > ROWS
    return out.getvalue()


def figures(value):
    """Without what tells the files apart."""
    if isinstance(value, dict):
        return {key: figures(part) for key, part in value.items() if key not in ("input_hash", "inputs", "file", "line", "column", "sheet", "where", "hash")}
    return [figures(part) for part in value] if isinstance(value, list) else value


class FiveHundred(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.folder = Path(tempfile.mkdtemp())
        # Without ranges nothing is in doubt and no sampling takes its time.
        shutil.copytree(ROOT / "rates", cls.folder / "rates", ignore=shutil.ignore_patterns("ranges.yaml"))
        joints = [joint(Random(f"{number}"), number) for number in range(1, ROWS + 1)]
        assert sum("after" in made for made in joints) > 50 and sum("element" in made for made in joints) > 20
        workbook = as_workbook(joints)
        takeoffs = {"comma.csv": as_csv(joints), "semicolon.csv": as_csv(joints, ";", b"\xef\xbb\xbf", "\r\n"), "tab.csv": as_csv(joints, "\t"),
                    "inline.xlsx": workbook, "shared.xlsx": with_shared_strings(workbook)}
        for name, content in takeoffs.items():
            (cls.folder / name).write_bytes(content)
        cls.jobs = ["yaml.yaml"]
        (cls.folder / "yaml.yaml").write_text(as_yaml(joints))
        for name in takeoffs:
            sheet = ", joints_sheet: Joints of the deck" if name.endswith("x") else ""
            cls.jobs.append(name + ".yaml")
            (cls.folder / cls.jobs[-1]).write_text(job(f", joints_from: {name}{sheet}"))

    @classmethod
    def tearDownClass(cls):
        shutil.rmtree(cls.folder)

    def run_on(self, *words):
        done = subprocess.run([SEAMBOOK, *words, "--date", "2026-05-18", "--quiet"], cwd=self.folder, capture_output=True, text=True,
                              timeout=300, check=False)
        self.assertEqual(done.returncode, 0, done.stderr[:2000])
        return json.loads(done.stdout)

    def test_estimates_are_the_same_figure_for_figure(self):
        printed = {name: figures(self.run_on("estimate", name, "--json"))["jobs"] for name in self.jobs}
        self.assertIn("J500", json.dumps(printed["yaml.yaml"]))
        for name in self.jobs[1:]:
            with self.subTest(name):
                self.assertEqual(printed[name], printed["yaml.yaml"])

    def test_a_quote_against_another_form_moves_nothing(self):
        past = subprocess.run([SEAMBOOK, "quote", "shared.xlsx.yaml", "--json", "--date", "2026-05-18", "--quiet"], cwd=self.folder,
                              capture_output=True, timeout=600, check=True).stdout
        (self.folder / "past.json").write_bytes(past)
        now = self.run_on("quote", "comma.csv.yaml", "--json", "--force", "--against", "past.json")["jobs"][0]
        self.assertEqual(now["changes"]["past"]["total"], now["price"][0]["total"])
        self.assertEqual(sum(abs(entry["amount"]) for entry in now["changes"]["causes"]), 0)
        self.assertEqual(now["price"], json.loads(past)["jobs"][0]["price"])


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
