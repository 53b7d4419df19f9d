"""Build what the phone computes with, in a checkout: `python -m checklist_app.engine.build [floors]`.

Without a word, all: fetches the pinned packages, keeps what the walk through every page imports, writes
`static/vendor/pyodide/`.
`floors`: compiles our own floors with the engine that lies there, writes `static/engine/`. No network is used for that.
Both need Node; what comes out is the same byte for byte on every machine.
"""

import shutil
import sys
import tempfile
from pathlib import Path
from typing import Any

from checklist_app.checklists.render import COMPILED as COMPILED_TEMPLATES
from checklist_app.engine import fetch, node
from checklist_app.engine.zips import unpacked, written
from checklist_app.web.floors import built_name, floor_files

ROOT = Path(__file__).resolve().parents[2]
VENDORED = ROOT / "static" / "vendor" / "pyodide"
FLOORS = ROOT / "static" / "engine"
TAKEN_OVER = ("pyodide.mjs", "pyodide.asm.js", "pyodide.asm.wasm")


def main(what: list[str]) -> None:
    with tempfile.TemporaryDirectory() as scratch:
        if what != ["floors"]:
            build_engine(Path(scratch) / "engine")
        build_floors(Path(scratch) / "floors", FLOORS)


def build_engine(work: Path) -> None:
    """The interpreter as it is published, and of its library and of the packages only what is imported."""
    stock = fetch.pyodide(work)
    packages = fetch.packages(work)
    sources = {"stdlib": unpacked(stock / "python_stdlib.zip", work / "stdlib"), "packages": packages}
    lay_floors(work / "floors")
    kept = node.imported(stock, packages, work / "floors")
    made = work / "made"
    made.mkdir()
    for name, folder in sources.items():
        written(made / f"{name}.zip", node.compiled(stock, folder, kept[name], work / f"{name}-compiled"))
    for name in TAKEN_OVER:
        shutil.copyfile(stock / name, made / name)
    (made / "pyodide-lock.json").write_text(fetch.empty_lock(stock))
    node.pressed(made, VENDORED)
    note(kept)


def note(kept: dict[str, Any]) -> None:
    """What was kept, and what the kept modules may import late and was not kept: read it at every upgrade."""
    files = sorted(kept["stdlib"] + kept["packages"])
    (VENDORED / "modules.txt").write_text("".join(f"{name}\n" for name in files))
    wanted = (f"{one}: {', '.join(by)}\n" for one, by in kept["wanted"].items())
    (VENDORED / "not-kept.txt").write_text("".join(wanted))


def build_floors(work: Path, out: Path) -> None:
    """Our floors as bytecode of the engine that lies there, named by the digest of their sources and of the engine."""
    sources = work / "sources"
    lay_floors(sources)
    engine = node.unpressed(VENDORED, work / "engine")
    node.templates(engine, sources, sources / COMPILED_TEMPLATES)
    modules = sorted(path.relative_to(sources).as_posix() for path in sources.rglob("*.py"))
    files = node.compiled(engine, sources, modules, work / "compiled")
    files |= {name: data for name, data in floor_files().items() if name.endswith(".toml")}
    made = work / "made"
    made.mkdir()
    written(made / built_name(), files)
    shutil.rmtree(out, ignore_errors=True)
    node.pressed(made, out)


def lay_floors(folder: Path) -> None:
    for name, data in floor_files().items():
        path = folder / name
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(data)


if __name__ == "__main__":
    main(sys.argv[1:])
