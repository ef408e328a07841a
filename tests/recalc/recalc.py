#!/usr/bin/env python3
"""Does a workbook show what its formulas say?

recalc.py compare [--second] A.xlsx ...
    Spoils every stored result in a copy, has the office suite recalculate it and compares the outcome with what the
    workbook shows: numbers to 1e-9, texts exactly. --second: Gnumeric too, numbers to 0.01. Exit code 1 on any
    difference, on an error value, and when there is no formula at all.
recalc.py set IN.xlsx OUT.xlsx Sheet!C5=12.5 ... [--print Sheet!C7 ...]
    Changes cells, recalculates, writes the workbook with the new results to OUT and prints the cells asked for as JSON.
"""
import argparse
import json
import sys
import tempfile
from pathlib import Path

from cells import read_cells, rewrite, unescaped
from office import office_recalculated, second_engine, second_recalculated

SHOWN_DIFFERENCES = 20


def formula_cells(sheets):
    return {(sheet, reference): cell for sheet, cells in sheets.items()
            for reference, cell in cells.items() if cell.formula}


def spoiled(value):
    return "spoiled" if isinstance(value, str) else (value or 0.0) * 3 + 987654.321


def spoil(source, target):
    changes = {}
    for (sheet, reference), cell in formula_cells(read_cells(source)).items():
        changes.setdefault(sheet, {})[reference] = spoiled(cell.value)
    rewrite(source, target, changes)


def agree(shown, computed, absolute, relative):
    if isinstance(shown, str) or isinstance(computed, str):
        if isinstance(shown, float) or isinstance(computed, float):
            return False
        return shown == computed or (shown or "") == unescaped(computed or "")
    shown, computed = shown or 0.0, computed or 0.0
    return abs(shown - computed) <= max(absolute, relative * max(abs(shown), abs(computed)))


def is_error(cell):
    return cell.error or (isinstance(cell.value, str) and (cell.value.startswith("Err:") or cell.value in ERRORS))


ERRORS = {"#NAME?", "#VALUE!", "#DIV/0!", "#REF!", "#N/A", "#NUM!", "#NULL!"}


def differences(stored, computed, absolute=1e-9, relative=1e-9):
    """Lines of complaint, one a cell."""
    found = []
    for (sheet, reference), cell in stored.items():
        other = computed.get(sheet, {}).get(reference)
        place = f"{sheet}!{reference}"
        if other is None:
            found.append(f"{place}: shows {cell.value!r}, nothing computed, ={cell.text}")
        elif is_error(cell) or is_error(other):
            found.append(f"{place}: shows {cell.value!r}, error {other.value!r}, ={cell.text}")
        elif not agree(cell.value, other.value, absolute, relative):
            found.append(f"{place}: shows {cell.value!r}, recalculated {other.value!r}, ={cell.text}")
    return found


def report(path, engine, stored, found):
    print(f"{path}: {len(stored)} formula cells compared with {engine}, {len(found)} differ")
    for line in found[:SHOWN_DIFFERENCES]:
        print("  " + line)
    if len(found) > SHOWN_DIFFERENCES:
        print(f"  and {len(found) - SHOWN_DIFFERENCES} more")
    if not stored:
        print("  there is no formula in this workbook")
    return bool(found) or not stored


def compare(paths, second):
    bad = False
    with tempfile.TemporaryDirectory() as folder:
        broken, fixed = Path(folder, "spoiled"), Path(folder, "recalculated")
        broken.mkdir()
        copies = [broken / f"{number}.xlsx" for number in range(len(paths))]
        for path, copy in zip(paths, copies):
            spoil(path, copy)
        for path, result in zip(paths, office_recalculated(copies, fixed)):
            stored = formula_cells(read_cells(path))
            bad |= report(path, "the office suite", stored, differences(stored, read_cells(result)))
        if second:
            bad |= compare_second(paths, copies, folder)
    return 1 if bad else 0


def compare_second(paths, copies, folder):
    if second_engine() is None:
        print("no second engine: ssconvert is not installed", file=sys.stderr)
        return True
    bad, target = False, Path(folder, "second")
    target.mkdir()
    for path, copy in zip(paths, copies):
        stored = formula_cells(read_cells(path))
        computed = read_cells(second_recalculated(copy, target))
        bad |= report(path, "Gnumeric", stored, differences(stored, computed, absolute=0.01, relative=1e-9))
    return bad


def place_of(text):
    sheet, mark, reference = text.rpartition("!")
    if not mark:
        raise SystemExit(f"'{text}' is no cell; write Sheet!C5")
    return sheet.strip("'"), reference.replace("$", "")


def changes_of(settings):
    changes = {}
    for setting in settings:
        place, mark, value = setting.partition("=")
        if not mark:
            raise SystemExit(f"'{setting}' sets nothing; write Sheet!C5=12.5")
        sheet, reference = place_of(place)
        try:
            changes.setdefault(sheet, {})[reference] = float(value)
        except ValueError:
            changes.setdefault(sheet, {})[reference] = value
    return changes


def set_and_recalculate(source, target, settings, asked):
    changes = changes_of(settings)
    before = read_cells(source)
    for sheet, cells in changes.items():
        for reference in cells:
            if sheet in before and reference in before[sheet] and before[sheet][reference].formula:
                raise SystemExit(f"{sheet}!{reference} holds a formula; set the cells it draws on")
    with tempfile.TemporaryDirectory() as folder:
        edited, broken = Path(folder, "edited.xlsx"), Path(folder, "spoiled.xlsx")
        rewrite(source, edited, changes)
        spoil(edited, broken)
        computed = read_cells(office_recalculated([broken], Path(folder, "recalculated"))[0])
        results = {}
        for sheet, reference in formula_cells(before):
            results.setdefault(sheet, {})[reference] = computed[sheet][reference].value
        rewrite(edited, target, results)
    values = {place: computed[place_of(place)[0]][place_of(place)[1]].value for place in asked}
    print(json.dumps(values, ensure_ascii=False, indent=1))
    return 0


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    commands = parser.add_subparsers(dest="command", required=True)
    comparing = commands.add_parser("compare")
    comparing.add_argument("--second", action="store_true")
    comparing.add_argument("paths", nargs="+")
    setting = commands.add_parser("set")
    setting.add_argument("source")
    setting.add_argument("target")
    setting.add_argument("settings", nargs="+")
    setting.add_argument("--print", nargs="+", default=[], dest="asked")
    given = parser.parse_args()
    if given.command == "compare":
        return compare(given.paths, given.second)
    return set_and_recalculate(given.source, given.target, given.settings, given.asked)


if __name__ == "__main__":
    sys.exit(main())
