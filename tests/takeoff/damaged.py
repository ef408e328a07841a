"""Take-offs as .xlsx that something has damaged, each made by a function here; what they must make the program say stands
beside the damaged tables in tests/refused/takeoff, as NAME.xlsx.told."""
import datetime
import io
import zipfile

import openpyxl
from openpyxl.utils import get_column_letter

HEADINGS = ["id", "weld", "leg", "thickness", "length", "element", "pitch", "base_metal", "note"]
GOOD = ["A1", "fillet", "5 mm", "8 mm", "240 mm", None, None, "S235", None]


def book(*rows, headings=HEADINGS, sheet="Joints"):
    made = openpyxl.Workbook()
    made.active.title = sheet
    made.active.append(headings)
    for row in rows:
        made.active.append(row)
    return made


def saved(made):
    out = io.BytesIO()
    made.save(out)
    return out.getvalue()


def changed(bytes_, part, edit):
    """The workbook with one of its parts edited, or with a new one."""
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(bytes_)) as old, zipfile.ZipFile(out, "w", zipfile.ZIP_DEFLATED) as new:
        for name in old.namelist():
            text = old.read(name)
            new.writestr(name, edit(text.decode()) if name == part else text)
        if part not in old.namelist():
            new.writestr(part, edit(""))
    return out.getvalue()


SHEET = "xl/worksheets/sheet1.xml"


def dates():
    day = datetime.datetime
    made = book(GOOD, ["A2", "fillet", "5 mm", day(2026, 2, 3), "600 mm", day(2026, 5, 2), day(1950, 1, 1), "S235", None],
                [day(2026, 10, 8), "fillet", "5 mm", "8 mm", "240 mm", None, None, day(2026, 4, 1, 6, 30), None])
    return saved(made)


def names():
    return saved(book([4711081547110815, "fillet", "5 mm", "8 mm", "240 mm", None, None, 1.4310, None],
                      [8, "fillet", "5 mm", "8 mm", "240 mm", None, None, 1.431, None]))


def formulas():
    made = book(GOOD, ["A2", "fillet", "5 mm", "8 mm", "=D2*2", None, None, "S235", None])
    made.active["C4"], made.active["B4"], made.active["C4"].data_type = "#REF!", "fillet", "e"
    return saved(made)


def merged():
    made = book(GOOD, ["A2", "fillet", "5 mm", "8 mm", "240 mm", None, None, "S235", None], ["A3", "fillet", "5 mm", None, "240 mm"])
    made.active.merge_cells("D3:D4")
    return saved(made)


def beside():
    made = book(GOOD)
    made.active["L2"] = "ask Mara"
    made.active["L3"] = "and again"
    return saved(made)


def units():
    made = book(["A1", "fillet", 5, 8, 240, None, None, "S235", None], ["A2", "fillet", 5, "8,5 mm", "0.24 m", None, None, "S235", None],
                headings=["id", "weld", "leg (mm)", "thickness", "length [mn]", "element", "pitch", "base_metal", "note"])
    made.active["C2"].number_format = '0.0" kg"'
    made.active["C3"].number_format = "0 %"
    made.active["D2"].number_format = '0.0" mm"'
    return saved(made)


def below():
    made = book()
    made.active["A1"] = "Take-off of the lower deck"
    made.active["A3"] = "id"
    made.active["B3"] = "weld"
    return saved(made)


def hidden():
    made = book(GOOD)
    made.create_sheet("Notes")
    made["Joints"].sheet_state = made["Notes"].sheet_state = "hidden"
    made.create_sheet("Chart").sheet_state = "visible"
    return changed(saved(made), "xl/workbook.xml", lambda text: text.replace('name="Chart" sheetId="3" state="visible"', 'name="Chart" sheetId="3" state="hidden"'))


def empty():
    return saved(openpyxl.Workbook())


def locked():
    return b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + bytes(600)


def no_workbook():
    return b"id,weld,leg\nA1,fillet,5 mm\n"


def open_document():
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as made:
        made.writestr("mimetype", "application/vnd.oasis.opendocument.spreadsheet")
        made.writestr("content.xml", "<x/>")
    return out.getvalue()


def cut_off():
    return saved(book(GOOD))[:2000]


def bomb():
    return changed(saved(book(GOOD)), SHEET, lambda text: text.replace("<sheetData>", "<sheetData>" + " " * (40 << 20)))


def tall_text():
    """Within the ratio, beyond the size: letters that pack ten to one."""
    from random import Random
    words = "".join(Random(7).choices("abcdefgh", k=1 << 16))
    return changed(saved(book(GOOD)), SHEET, lambda text: text.replace("<sheetData>", "<sheetData><!--" + "".join(words[i % 999:] for i in range(560)) + "-->"))


def many_parts():
    out = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(saved(book(GOOD)))) as old, zipfile.ZipFile(out, "w") as new:
        for name in old.namelist():
            new.writestr(name, old.read(name))
        for i in range(2100):
            new.writestr(f"xl/extra{i}.xml", "")
    return out.getvalue()


def entities():
    head = '<!DOCTYPE worksheet [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;">]>'
    return changed(saved(book(GOOD)), SHEET, lambda text: head + text)


def lost_text():
    """A cell refers to a text that is not there."""
    return changed(saved(book(GOOD)), SHEET, lambda text: text.replace('t="inlineStr"><is><t>5 mm</t></is>', 't="s"><v>3</v>'))


def cells_astray():
    return changed(saved(book(GOOD)), SHEET, lambda text: text.replace('r="C2"', 'r="A2"'))


def far_cell():
    made = book(GOOD)
    made.active[f"{get_column_letter(16384)}2"] = "x"
    return saved(made)


def control_character():
    return changed(saved(book(GOOD)), SHEET, lambda text: text.replace("5 mm", "5 _x0007_mm"))


DAMAGED = [dates, names, formulas, merged, beside, units, below, hidden, empty, locked, no_workbook, open_document, cut_off, bomb,
           tall_text, many_parts, entities, lost_text, cells_astray, far_cell, control_character]
