"""Damaged take-offs, tables in tests/refused/takeoff and workbooks made by damaged.py: what `check` says of each, to the letter,
stands beside the tables as NAME.told. Called with the seambook executable and the source root; a third word `--write` writes the
.told files anew, to be looked at."""
import shutil
import subprocess
import sys
import tempfile
import unittest
from pathlib import Path

from damaged import DAMAGED

SEAMBOOK, ROOT = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve()
REFUSED = ROOT / "tests/refused/takeoff"
JOB = """format: 1
job: frame
weldments:
  - {{name: frame, parts: 3, base_metal: S235, process: 135, bought: 38 EUR each, joints_from: {}{}}}
"""
SPRING_STEEL = """format: 1
base_metals:
  - {name: "1.4310", group: "8.1", cleanliness: stainless, density: 7.9 g/cm3, price: 4.60 EUR/kg, yield: 84 %, basis: assumption, source: invented}
"""


def told_of(name, content, sheet=""):
    """Exit code and what `check` says of a job that draws on the take-off."""
    with tempfile.TemporaryDirectory() as folder:
        shutil.copytree(ROOT / "rates", Path(folder, "rates"))
        Path(folder, "rates/spring-steel.yaml").write_text(SPRING_STEEL)
        Path(folder, name).write_bytes(content)
        Path(folder, "job.yaml").write_text(JOB.format(name, sheet))
        done = subprocess.run([SEAMBOOK, "check", "job.yaml", "--quiet"], cwd=folder, capture_output=True, timeout=60, check=False)
    return done.returncode, done.stderr.decode()


def damaged_takeoffs():
    tables = [(path.name, path.read_bytes()) for path in sorted(REFUSED.glob("*.csv"))]
    return tables + [(make.__name__ + ".xlsx", make()) for make in DAMAGED]


class Refused(unittest.TestCase):
    def test_each_is_refused_in_the_words_that_stand_beside_it(self):
        takeoffs = damaged_takeoffs()
        self.assertGreaterEqual(len(takeoffs), 20)
        for name, content in takeoffs:
            with self.subTest(name):
                code, told = told_of(name, content)
                self.assertEqual(code, 1, told)
                self.assertEqual(told, (REFUSED / (name + ".told")).read_text())

    def test_no_word_stands_beside_nothing(self):
        names = {name + ".told" for name, _ in damaged_takeoffs()}
        self.assertEqual({path.name for path in REFUSED.glob("*.told")}, names)


if __name__ == "__main__":
    if sys.argv[3:] == ["--write"]:
        for takeoff, content in damaged_takeoffs():
            (REFUSED / (takeoff + ".told")).write_text(told_of(takeoff, content)[1])
    else:
        unittest.main(argv=sys.argv[:1])
