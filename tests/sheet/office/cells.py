# Reads workbooks with openpyxl, a reader that has nothing to do with ours.
# cells.py FILE...: a line of JSON for each file: the value of every defined name, every error, the order list.
import json
import sys

from openpyxl import load_workbook


def cells_of(book):
    names = book.defined_names
    # Before 3.1 the names were a list, since then they are a dictionary.
    found = names.definedName if hasattr(names, "definedName") else names.values()
    cells = {}
    for one in found:
        if not one.name.startswith("_xlnm."):
            ((title, at),) = one.destinations
            cells[one.name] = book[title][at.replace("$", "")]
    return cells


def read(path):
    book = load_workbook(path, data_only=True)
    names = {name: cell.value for name, cell in cells_of(book).items()}
    cells = [cell for sheet in book for row in sheet.iter_rows() for cell in row]
    errors = [f"{cell.parent.title}!{cell.coordinate} {cell.value}" for cell in cells if cell.data_type == "e"]
    sheets = {sheet.title: [[cell.value for cell in row] for row in sheet.iter_rows()] for sheet in book if sheet.title == "Order"}
    frozen = {sheet.title: sheet.freeze_panes for sheet in book}
    return {"names": names, "errors": errors, "titles": book.sheetnames, "order": sheets.get("Order", []), "frozen": frozen}


for path in sys.argv[1:]:
    print(json.dumps(read(path)))
