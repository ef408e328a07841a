"""Finding a cell of a written workbook by the words of its row and the heading of its column."""


def letters_and_row(reference):
    letters = "".join(c for c in reference if c.isalpha())
    return letters, int(reference[len(letters):])


def find_cell(sheets, place):
    """The cell in the row that begins with these words, under the heading (the nearest one above), or in the column with
    that number."""
    sheet, words, heading = place
    cells = sheets[sheet]
    columns = sorted({letters_and_row(r)[0] for r in cells}, key=lambda c: (len(c), c))
    for row in sorted({letters_and_row(r)[1] for r in cells}):
        if [str(cells[f"{c}{row}"].value) for c in columns[:len(words)] if f"{c}{row}" in cells] != list(words):
            continue
        if isinstance(heading, int):
            return sheet, f"{columns[heading]}{row}"
        for column in columns:
            above = [cells[f"{column}{r}"].value for r in range(row, 0, -1) if f"{column}{r}" in cells]
            if heading in above and f"{column}{row}" in cells:
                return sheet, f"{column}{row}"
    raise AssertionError(f"no cell at {place}")


def totals(sheets):
    """Quantity, unit price, total and (where there is one) total with tax, off the customer's page."""
    cells = sheets["Quote"]
    headings = {str(cell.value): letters_and_row(reference) for reference, cell in cells.items()}
    column = {words: at for heading, at in headings.items() for words in ("unit price", "total", "total with tax")
              if heading.startswith(words + " (")}
    found, row = [], column["unit price"][1] + 1
    while f"A{row}" in cells and isinstance(cells[f"A{row}"].value, float):
        found.append((cells[f"A{row}"].value, *(cells[f"{letters}{row}"].value for letters, _ in column.values())))
        row += 1
    return sorted(found)
