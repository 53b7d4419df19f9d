"""The pages travel: they are answered in a Python that has nothing but the standard library and Jinja2."""
import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[2]
ALONE = """
import importlib.abc, sys
class Refused(importlib.abc.MetaPathFinder):
    def find_spec(self, name, path=None, target=None):
        if name.split(".")[0] in {"flask", "werkzeug", "peewee", "marshmallow", "reportlab", "PIL", "sqlite3"}:
            raise ImportError(f"{name} does not travel")
sys.meta_path.insert(0, Refused())
try:
    import flask
except ImportError:
    pass
else:
    raise SystemExit("the ban does not work")
from tests.checklists.pages_checked import faults
from tests.checklists.lashed import PALLET, VEHICLE, lash
from tests.checklists.shop import Shop
from checklist_app.checklists.answer import addresses
shop = Shop()
task = shop.begin()
shop.rig(task)
lift = {"task": task, "slot": "leg.1-left.sling", "name": "sling_strength.left", "hold": "release"}
lashed = {"slot": "pallet", "name": "lashing_strength.1"}
tasks = (lift, {"task": lash(shop, VEHICLE), "hold": "hand_over", **lashed},
         {"task": lash(shop, PALLET), "hold": "lashed", **lashed})
seen = 0
for address in addresses():
    answered = set()
    for named in tasks:
        path = "/gear/R-21/quarantine" if address.startswith("/gear/<") else address
        for name, text in named.items():
            path = path.replace(f"<{name}>", text)
        if "<" in path:
            continue
        for fragment in (False, True):
            given = shop.get(path, fragment=fragment)
            answered.add(given.status)
            if given.status not in (200, 303, 404, 409):
                raise SystemExit(f"{path}: {given.status}")
            seen += given.status != 404
    if answered == {404}:
        raise SystemExit(f"{address}: no task has it")
print(seen, "answers")
"""


def test_every_page_is_answered_where_flask_and_the_database_cannot_be_imported() -> None:
    alone = [sys.executable, "-W", "error", "-c", ALONE]
    done = subprocess.run(alone, cwd=ROOT, capture_output=True, text=True, timeout=120)

    assert done.returncode == 0, done.stderr
    assert int(done.stdout.split()[0]) >= 30
