"""Spreadsheet programs made to recalculate a workbook whose stored results may be wrong."""
import os
import shutil
import subprocess
import tempfile
from pathlib import Path

# The office suite believes stored results unless told otherwise (0 is "always recalculate").
SETTINGS = """<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="ODFRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>
"""
TIMEOUT = int(os.environ.get("RECALC_TIMEOUT", "600"))  # seconds, for one call


def office_recalculated(paths, folder):
    """Writes each workbook, recalculated, to `folder` under its own name. The names must differ."""
    with tempfile.TemporaryDirectory() as profile:  # of its own, so that runs beside each other do not meet
        settings = Path(profile, "user", "registrymodifications.xcu")
        settings.parent.mkdir()
        settings.write_text(SETTINGS)
        command = ["soffice", "--headless", "--norestore", f"-env:UserInstallation=file://{profile}",
                   "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", str(folder), *map(str, paths)]
        done = subprocess.run(command, capture_output=True, text=True, timeout=TIMEOUT, check=False)
    results = [Path(folder, Path(path).name) for path in paths]
    missing = [str(result) for result in results if not result.exists()]
    if missing:
        raise RuntimeError(f"the office suite wrote no {missing}: {done.stdout}{done.stderr}")
    return results


def second_engine():
    return shutil.which("ssconvert")


def second_recalculated(path, folder):
    result = Path(folder, Path(path).name)
    subprocess.run([second_engine(), "--recalc", str(path), str(result)], capture_output=True, timeout=TIMEOUT, check=True)
    return result
