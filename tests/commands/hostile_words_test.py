"""Words of an author stay words: in every workbook they become no formula, header code, sheet name, defined name or link; what looks
like an escape of the format survives; a terminal gets no control characters. A job and rate book with hostile words must give the
same workbook as one with harmless words, but for the words. Called with the seambook executable and the source root."""
import html
import re
import shutil
import subprocess
import sys
import tempfile
import unittest
import zipfile
from pathlib import Path

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
HOSTILE = ["=1+1", "=cmd|' /C calc'!A0", "@SUM(1,1)", "+1-1", "-2+3", "{=A1}", "=HYPERLINK(\"x\",\"y\")", "&G&Z&F &D &\"Wingdings\"&99x",
           "&&P", "a&b<c>d\"e'f", "]]><x/>", "_x0041_ and _x000A_ and _x005F_", "_xLNM.Print_Area", "Quote'!A1:[b]*?/\\", "'=1'", "=\"\"&A1",
           "http://example.invalid/", "internal:Rates!A1", "%s%n%d{}{0}", "\u200bzero", "\U0001f600 高さ Träger", "=" * 300, "x" * 2000, "Rates",
           "History", "R1C1", "A1", "TRUE", "1e5", "'", "#REF!", "=-@+"]
# Keys of the job that hold words; the names of joints and weldments must differ.
JOB = """format: 1
job: {0}
title: {1}
revision: {2}
customer: {3}
drawing: {4}
quantities: [1, 5]
inclusions: [{5}, {6}]
exclusions: [{7}]
assumptions: [{8}]
qualifications: [{9}]
untaxed: {10}
one_offs:
  - {{what: {11}, price: 12 EUR}}
options:
  - {{name: {12}, text: {13}, bought: {{what: {14}, kind: outside, price: 6 EUR each}}}}
weldments:
  - name: {15}
    parts: 2
    mass: 8 kg
    base_metal: S235
    process: 135
    bought: {{what: {16}, kind: base_metal, price: 9 EUR each}}
    joints:
      - {{id: {17}, mark: {18}, weld: fillet, leg: 5 mm, thickness: 8 mm, length: 240 mm}}
      - {{id: {19}, weld: fillet, leg: 4 mm, thickness: 8 mm, length: 400 mm, after: [{17}]}}
"""
FIELDS = 20


def in_yaml(word):
    return '"' + word.replace("\\", "\\\\").replace('"', '\\"') + '"'


def unescaped(text):
    """Text of the format: XML's entities, then its own escapes of characters."""
    return re.sub(r"_x([0-9A-Fa-f]{4})_", lambda code: chr(int(code[1], 16)), html.unescape(text))


class Book:
    def __init__(self, path):
        with zipfile.ZipFile(path) as parts:
            self.parts = {name: parts.read(name).decode() for name in parts.namelist() if name.endswith((".xml", ".rels"))}
        book = self.parts["xl/workbook.xml"]
        self.sheets = [html.unescape(name) for name in re.findall(r'<sheet name="([^"]*)"', book)]
        self.names = re.findall(r'<definedName name="([^"]*)"[^>]*>([^<]*)<', book)
        texts = [*re.findall(r"<si>(.*?)</si>", self.parts.get("xl/sharedStrings.xml", ""), re.S),
                 *re.findall(r"<is>(.*?)</is>", "".join(self.parts.values()), re.S)]
        self.texts = {unescaped("".join(re.findall(r"<t[^>]*>(.*?)</t>", text, re.S))) for text in texts}

    def all(self, pattern):
        return [found for name in sorted(self.parts) if name.startswith("xl/worksheets/") for found in re.findall(pattern, self.parts[name], re.S)]


def header_codes(text):
    return re.findall(r'&(?:"[^"]*"|\d+|.)', html.unescape(text).replace("&&", ""))


class Words(unittest.TestCase):
    def setUp(self):
        kept = tempfile.TemporaryDirectory()
        self.addCleanup(kept.cleanup)
        self.folder = Path(kept.name)

    def rates(self, words):
        folder = self.folder / "rates"
        shutil.copytree(ROOT / "rates", folder, dirs_exist_ok=True)
        for file, old, word in (("shop.yaml", "Quillmarsh Fabrication (fictional)", words[0]), ("stations.yaml", "ST-1", words[1]),
                                ("stations.yaml", "swap the gas", words[2]), ("stations.yaml", "ST-2", words[3])):
            path = folder / file
            text = path.read_text()
            self.assertIn(f": {old}", text)
            path.write_text(text.replace(f": {old}", f": {in_yaml(word)}").replace(f"source: {in_yaml(word)}", "source: own"))

    def made(self, words, verb, book_words):
        self.rates(book_words)
        (self.folder / "job.yaml").write_text(JOB.format(*map(in_yaml, words)))
        out = self.folder / "out"
        shutil.rmtree(out, ignore_errors=True)
        done = subprocess.run([SEAMBOOK, *verb, "job.yaml", "--rates", "rates", "--out", out, "--date", "2026-05-11"], cwd=self.folder,
                              capture_output=True, check=False, timeout=120)
        self.assertEqual(done.returncode, 0, done.stderr.decode())
        for said in (done.stdout, done.stderr):
            self.assertIsNone(re.search(rb"[\x00-\x09\x0b-\x1f\x7f]|\xe2\x80[\x8e\x8f\xa8-\xae]", said))
        files = list(out.iterdir())
        self.assertEqual(len(files), 1)
        return Book(files[0])

    def same_but_for_words(self, verb):
        harmless = self.made([f"word{n}" for n in range(FIELDS)], verb, [f"shop{n}" for n in range(4)])
        for first in range(0, len(HOSTILE), 8):
            words = [HOSTILE[(first + n) % len(HOSTILE)] for n in range(FIELDS)]
            words[0] = words[0][:200]
            shop = [HOSTILE[(first + 5 + n) % len(HOSTILE)][:100] + (f" {n}" if n else "") for n in range(4)]
            with self.subTest(words=[word[:20] for word in words]):
                self.compare(self.made(words, verb, shop), harmless, words)

    def compare(self, book, harmless, words):
        self.assertEqual(len(book.sheets), len(harmless.sheets))
        self.assertEqual(len({name.lower() for name in book.sheets}), len(book.sheets))
        for name in book.sheets:
            self.assertTrue(0 < len(name) <= 31 and not re.search(r"[\[\]:*?/\\]|^'|'$", name), name)
        self.assertEqual(sorted(name for name, _ in book.names), sorted(name for name, _ in harmless.names))
        self.assertEqual(set(book.parts), set(harmless.parts))
        pattern = r"<f[ >].*?</f>"
        for ours, theirs in zip(book.all(pattern), harmless.all(pattern), strict=True):
            for ours_sheet, theirs_sheet in zip(book.sheets, harmless.sheets):
                ours = ours.replace(html.escape(ours_sheet.replace("'", "''"), quote=False), theirs_sheet)
            self.assertEqual(ours.replace("'", ""), theirs.replace("'", ""))
        for kind in ("Header", "Footer"):
            ours, theirs = (of.all(rf"<odd{kind}>(.*?)</odd{kind}>") for of in (book, harmless))
            self.assertEqual([header_codes(text) for text in ours], [header_codes(text) for text in theirs])
        for tag in ("<hyperlink", "externalLink", "ddeLink", "oleObject", "vbaProject"):
            self.assertNotIn(tag, "".join(book.parts.values()))
        found = "\n".join(book.texts)
        shown = words[:1] if "Day" in book.sheets else words[17:18] if "Families" in book.sheets else words[:2] + words[5:6] + words[13:14]
        for word in shown:
            self.assertIn(word, found)

    def test_quote(self):
        self.same_but_for_words(["quote"])

    def test_customers_page(self):
        self.same_but_for_words(["quote", "--customer-only"])

    def test_comparison(self):
        self.same_but_for_words(["compare"])

    def test_plan(self):
        self.same_but_for_words(["plan"])

    def test_terminal(self):
        evil = "a\x1b[31m\x07b\u202e\r.yaml"
        (self.folder / evil).write_text("format: 1\njob: 1\nx: 2\n")
        (self.folder / ("rates" + evil)).mkdir()
        for words in (["check", evil], ["check", "none" + evil], ["check", evil, "--rates", "rates" + evil], ["check", "a.yaml", "--rates", "no" + evil],
                      ["explain", ROOT / "jobs/bracket.yaml", evil, "--rates", ROOT / "rates"], ["qu" + evil], ["check", "--" + evil],
                      ["quote", ROOT / "jobs/bracket.yaml", "--date", evil], ["quote", ROOT / "jobs/bracket.yaml", "--against", evil],
                      ["quote", ROOT / "jobs/bracket.yaml", "--out", f"{evil}/{evil}"], ["quote", ROOT / "jobs/bracket.yaml", "--out", "out" + evil],
                      ["plan", ROOT / "jobs/bracket.yaml", "--day", evil], ["plan", ROOT / "jobs/bracket.yaml", "--now", evil]):
            with self.subTest(words=words):
                done = subprocess.run([SEAMBOOK, *map(str, words)], cwd=self.folder, capture_output=True, check=False, timeout=60)
                for said in (done.stdout, done.stderr):
                    self.assertIsNone(re.search(rb"[\x00-\x09\x0b-\x1f\x7f]|\xe2\x80[\x8e\x8f\xa8-\xae]", said), said)


if __name__ == "__main__":
    unittest.main(argv=sys.argv[:1])
