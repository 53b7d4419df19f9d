"""Runs inside the stock engine at build time: opens every page, then says which modules that took."""
import sys
from importlib import import_module

from checklist_app.checklists import phone
from checklist_app.checklists.answer import addresses
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.describe import describe
from checklist_app.operations.evaluate import assess
from checklist_app.operations.inline import from_json
from checklist_app.operations.report import as_text, report
from tests.checklists.lashed import lash
from tests.checklists.shop import Shop

# Imported late, on paths that no walk takes: without them a fault would hide behind a missing module.
LATE = ("jinja2.debug", "_strptime", "encodings.idna", "encodings.cp437", "encodings.latin_1", "encodings.ascii",
        "traceback", "decimal", "datetime", "zipfile", "bisect", "heapq", "copy", "string", "hashlib", "struct",
        "unicodedata", "importlib.resources", "importlib.util", phone.__name__)


def kept() -> dict[str, list[str]]:
    """Files of the library and of the packages that were imported by now."""
    for late in LATE:
        import_module(late)
    open_every_page()
    assess_every_operation()
    library = next(path for path in sys.path if path.endswith(".zip"))

    return {"stdlib": imported_from(library), "packages": imported_from("/packages")}


def open_every_page() -> None:
    shop = Shop()
    task = shop.begin()
    shop.rig(task)
    lashed = lash(shop)
    for named in ({"task": task, "slot": "leg.1-left.sling", "name": "sling_strength.left", "hold": "release"},
                  {"task": lashed, "slot": "pallet", "name": "lashing_strength.1", "hold": "hand_over"}):
        for address in addresses():
            path = "/gear/R-21/quarantine" if address.startswith("/gear/<") else address
            for name, text in named.items():
                path = path.replace(f"<{name}>", text)
            for fragment in (False, True):
                shop.get(path, fragment=fragment)


def assess_every_operation() -> None:
    for operation in OPERATIONS.values():
        describe(operation)
        as_text(report(operation, assess(operation.table, from_json(operation.table, operation.example))))


def imported_from(root: str) -> list[str]:
    found = (getattr(module, "__file__", None) or "" for module in list(sys.modules.values()))

    return sorted({name[len(root) + 1:] for name in found if name.startswith(f"{root}/")})
