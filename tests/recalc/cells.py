"""The cells of an .xlsx file: read them, or change some and leave every other byte of the file's parts as it was."""
import re
import xml.etree.ElementTree as ET
import zipfile
from dataclasses import dataclass
from xml.sax.saxutils import escape

MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"
RELATION = "{http://schemas.openxmlformats.org/officeDocument/2006/relationships}id"


@dataclass
class Cell:
    value: object  # float, str, or None for an empty cell
    formula: bool = False
    text: str = ""  # of the formula; empty where the file shares one formula among cells
    error: bool = False


def unescaped(text):
    """The format writes characters it cannot hold, and text that looks like that, as _x005F_ and the like."""
    return re.sub(r"_x([0-9A-Fa-f]{4})_", lambda match: chr(int(match[1], 16)), text)


def sheet_parts(archive):
    """Sheet names in order, each with the name of its part in the archive."""
    relations = ET.fromstring(archive.read("xl/_rels/workbook.xml.rels"))
    target = {entry.get("Id"): entry.get("Target") for entry in relations}
    book = ET.fromstring(archive.read("xl/workbook.xml"))
    parts = {}
    for sheet in book.iter(MAIN + "sheet"):
        name = target[sheet.get(RELATION)].lstrip("/")
        parts[sheet.get("name")] = name if name.startswith("xl/") else "xl/" + name
    return parts


def rich_text(element):
    return "".join(part.text or "" for part in element.iter(MAIN + "t"))


def shared_texts(archive):
    if "xl/sharedStrings.xml" not in archive.namelist():
        return []
    root = ET.fromstring(archive.read("xl/sharedStrings.xml"))
    return [unescaped(rich_text(entry)) for entry in root.iter(MAIN + "si")]


def cell_of(element, shared):
    kind, formula = element.get("t", "n"), element.find(MAIN + "f")
    stored = element.findtext(MAIN + "v")
    value = None
    if kind == "inlineStr":
        value = unescaped(rich_text(element))
    elif kind == "s":
        value = shared[int(stored)]
    elif kind in ("str", "e"):
        value = stored or ""  # formulas' results are not escaped by all who write them
    elif stored:
        value = float(stored)
    text = "" if formula is None else formula.text or ""
    return Cell(value, formula is not None, text, kind == "e")


def read_cells(path):
    """{sheet: {"C5": Cell}} of all cells that hold something."""
    with zipfile.ZipFile(path) as archive:
        shared = shared_texts(archive)
        return {
            name: {element.get("r"): cell_of(element, shared)
                   for element in ET.fromstring(archive.read(part)).iter(MAIN + "c")}
            for name, part in sheet_parts(archive).items()
        }


def cell_xml(reference, attributes, formula, value):
    """One cell; the style stays, the type follows the value."""
    attributes = re.sub(r' (?:t|r)="[^"]*"', "", attributes)
    if isinstance(value, str) and formula:
        kind, content = ' t="str"', f"<v>{escape(value)}</v>"
    elif isinstance(value, str):
        kind, content = ' t="inlineStr"', f'<is><t xml:space="preserve">{escape(value)}</t></is>'
    elif value is None:
        kind, content = "", ""
    else:
        kind, content = "", f"<v>{value!r}</v>"
    return f'<c r="{reference}"{attributes}{kind}>{formula}{content}</c>'


def rewrite(source, target, changes):
    """Copies the workbook with other values: {sheet: {"C5": value}}. A formula stays and gets another cached value.
    Raises KeyError when a cell to change is not in the file."""
    cell = re.compile(r'<c((?: [\w:]+="[^"]*")*?)(?:/>|>(.*?)</c>)', re.S)
    with zipfile.ZipFile(source) as old, zipfile.ZipFile(target, "w", zipfile.ZIP_DEFLATED) as new:
        wanted = {part: dict(changes.get(name, {})) for name, part in sheet_parts(old).items()}
        unknown = set(changes) - set(sheet_parts(old))
        if unknown:
            raise KeyError(f"no sheet {sorted(unknown)}")
        for entry in old.infolist():
            data = old.read(entry.filename)
            left = wanted.get(entry.filename)
            if left:
                def changed(match):
                    reference = re.search(r' r="([A-Z]+[0-9]+)"', match[1])[1]
                    if reference not in left:
                        return match[0]
                    formula = re.search(r"<f[ >].*?</f>|<f[^>]*/>", match[2] or "", re.S)
                    return cell_xml(reference, match[1], formula[0] if formula else "", left.pop(reference))
                data = cell.sub(changed, data.decode()).encode()
                if left:
                    raise KeyError(f"no cell {sorted(left)} in {entry.filename}")
            new.writestr(entry, data)
