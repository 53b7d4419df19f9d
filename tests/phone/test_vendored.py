"""What is vendored for the phone is what its lists say, and what the floors need is in it."""

import gzip
import hashlib
import json
import re
import subprocess
import zipfile
from io import BytesIO
from pathlib import Path

import pytest

from checklist_app.shipped import shipped
from checklist_app.web.floors import VENDORED, floor_files, source_zip
from tests.phone.node_phone import NodePhone, compiled_floors
from tests.style.test_arrows import imports
from tests.style.tree import PACKAGE, ROOT, pure_files

FOLDER = shipped("static") / VENDORED
PINS = json.loads((PACKAGE / "engine" / "pins.json").read_text())
SUMS = dict(reversed(line.split("  ")) for line in (FOLDER / "CHECKSUMS").read_text().splitlines())
LICENCES = {"pyodide": "Mozilla Public License Version 2.0", "python": "PYTHON SOFTWARE FOUNDATION LICENSE",
            "jinja2": "Copyright 2007 Pallets", "markupsafe": "Copyright 2010 Pallets"}
READ_AND_NOT_MISSED = {
    "_pydatetime", "_threading_local", "argparse", "doctest", "encodings.mbcs", "importlib.metadata", "pprint",
    "py_compile", "statistics", "tarfile", "tracemalloc",
}
MOST_BYTES_OVER_THE_AIR = 4_000_000


@pytest.mark.parametrize("name", SUMS)
def test_the_pressed_files_hold_what_the_checksums_say(name: str) -> None:
    inside = gzip.decompress((FOLDER / f"{name}.gz").read_bytes())
    assert hashlib.sha256(inside).hexdigest() == SUMS[name]


def test_the_smaller_form_holds_the_same(node: str, tmp_path: Path) -> None:
    subprocess.run([node, PACKAGE / "engine" / "unpressed.mjs", FOLDER, tmp_path], check=True)
    for name, sum_ in SUMS.items():
        assert hashlib.sha256((tmp_path / name).read_bytes()).hexdigest() == sum_


def test_no_file_lies_there_that_no_list_names() -> None:
    papers = {"README.md", "CHECKSUMS", "modules.txt", "not-kept.txt", *(f"LICENSE-{name}.txt" for name in LICENCES)}
    assert {path.name for path in FOLDER.iterdir()} == papers | {name + end for name in SUMS for end in (".br", ".gz")}


def test_the_engine_stays_small_enough_for_a_yard() -> None:
    assert sum(path.stat().st_size for path in FOLDER.glob("*.br")) <= MOST_BYTES_OVER_THE_AIR


@pytest.mark.parametrize("name", LICENCES)
def test_every_part_brings_its_licence(name: str) -> None:
    text = (FOLDER / f"LICENSE-{name}.txt").read_text(encoding="utf-8")
    assert LICENCES[name] in text
    assert len(text) > 1000


def test_everything_that_is_built_from_is_pinned_to_its_bytes() -> None:
    papers = (FOLDER / "README.md").read_text()
    assert re.fullmatch(r"\d+\.\d+\.\d+", PINS["pyodide"]["version"])
    assert re.fullmatch(r"sha512-[A-Za-z0-9+/]{86}==", PINS["pyodide"]["integrity"])
    for name, pin in {"pyodide": PINS["pyodide"], **PINS["packages"]}.items():
        assert re.search(rf"{name}\W+(?:tag )?{re.escape(pin['version'])}", papers, re.I), name
    for pin in PINS["packages"].values():
        assert re.fullmatch(r"[0-9a-f]{64}", pin["sha256"])


def test_what_was_not_kept_was_read_by_somebody(phone: NodePhone) -> None:
    """A line that is new after an upgrade stands here until somebody has read who wants it."""
    wanted = [line.partition(":")[0] for line in (FOLDER / "not-kept.txt").read_text().splitlines()]
    assert set(phone.ask({"do": "import", "modules": wanted})["absent"]) == READ_AND_NOT_MISSED


def test_every_module_that_the_floors_import_is_on_the_phone(phone: NodePhone) -> None:
    """Also those that are imported inside a function, on a path that no other test may take there."""
    named = {module for path in pure_files() for _, module in imports(path)}
    modules = {name if whole(name) else name.rpartition(".")[0] for name in named}
    assert len(modules) > 20
    assert phone.ask({"do": "import", "modules": sorted(modules)})["absent"] == []


def whole(name: str) -> bool:
    """Whether this names a module, and not something in one."""
    own = ROOT.joinpath(*name.split("."))
    return "." not in name or own.is_dir() or own.with_suffix(".py").is_file()


def test_the_sources_are_zipped_the_same_each_time_and_hold_nothing_else() -> None:
    first = source_zip()
    source_zip.cache_clear()
    assert source_zip() == first
    with zipfile.ZipFile(BytesIO(first)) as opened:
        assert opened.namelist() == sorted(floor_files())
        folders = {"/".join(name.split("/")[:2]) for name in opened.namelist()}
    assert folders == {
        "checklist_app/__init__.py", "checklist_app/shipped.py", "checklist_app/mechanics", "checklist_app/operations",
        "checklist_app/checklists", "templates/checklist",
    }


def test_compiled_floors_are_the_same_each_time_and_answer_as_the_sources_do(
    node: str, phone: NodePhone, tmp_path: Path
) -> None:
    made = [compiled_floors(tmp_path / number) for number in ("1", "2")]
    assert made[0] == made[1]
    with zipfile.ZipFile(BytesIO(made[0])) as opened:
        assert not [name for name in opened.namelist() if name.endswith((".py", ".html"))]

    from_sources = NodePhone(node, tmp_path, source_zip())
    request = {"method": "GET", "path": "/assess", "today": "2026-11-25", "device": "d", "salt": "s",
               "at": "2026-11-25T08:00:00Z"}
    asked = {"do": "answer", "request": request}
    assert from_sources.ask(asked) == phone.ask(asked)
    assert phone.ask(asked)["status"] == 200
    from_sources.close()
