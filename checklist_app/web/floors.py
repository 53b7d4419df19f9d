"""The floors that travel to the phone, as one zip under a name that holds the digest of what is in it.

`python -m checklist_app.engine.build floors` compiles them; its zip counts only while it was made from these very
sources and this very engine. Otherwise the sources themselves are sent and compiled on the phone: slower, never stale.
"""

import hashlib
import io
import zipfile
from collections.abc import Mapping
from functools import cache
from pathlib import Path

from checklist_app.shipped import shipped

PACKAGE = Path(__file__).resolve().parent.parent
TRAVELLING = ("mechanics", "operations", "checklists")
ALONE = ("__init__.py", "shipped.py")
LONG_AGO = (1980, 1, 1, 0, 0, 0)
FLOORS = "engine"
VENDORED = "vendor/pyodide"


@cache
def floor_files() -> dict[str, bytes]:
    """Modules, procedures and templates by their names in the zip."""
    found = [PACKAGE / name for name in ALONE]
    for floor in TRAVELLING:
        found += [path for path in (PACKAGE / floor).rglob("*") if path.suffix in {".py", ".toml"}]
    files = {path.relative_to(PACKAGE.parent).as_posix(): path.read_bytes() for path in found}
    templates = shipped("templates")
    for path in (templates / "checklist").rglob("*.html"):
        files[f"templates/{path.relative_to(templates).as_posix()}"] = path.read_bytes()

    return dict(sorted(files.items()))


@cache
def engine_name() -> str:
    """Digest of the engine's files, short."""
    return hashlib.sha256((shipped("static") / VENDORED / "CHECKSUMS").read_bytes()).hexdigest()[:12]


@cache
def digest_of_sources() -> str:
    """Digest of every file that travels and of the engine that runs it, short."""
    total = hashlib.sha256(engine_name().encode())
    for name, data in floor_files().items():
        total.update(f"\0{name}\0{len(data)}\0".encode() + data)

    return total.hexdigest()[:12]


def built_name() -> str:
    """Name of the compiled zip that fits these sources."""
    return f"floors-{digest_of_sources()}.zip"


def source_name() -> str:
    """Name of the zip of the sources themselves."""
    return f"floors-{digest_of_sources()}-source.zip"


def current_name() -> str:
    """What the phone is told to fetch: the compiled zip if it fits, else the sources."""
    built = shipped("static") / FLOORS / f"{built_name()}.gz"

    return built_name() if built.is_file() else source_name()


@cache
def source_zip() -> bytes:
    """The sources as a zip."""
    return zipped(floor_files())


def zipped(files: Mapping[str, bytes]) -> bytes:
    """Stored and not deflated, in order, with one date: the same files give the same bytes."""
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w", zipfile.ZIP_STORED) as opened:
        for name in sorted(files):
            member = zipfile.ZipInfo(name, LONG_AGO)
            member.create_system = 3
            opened.writestr(member, files[name])

    return out.getvalue()
