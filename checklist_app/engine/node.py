"""What only Node can do here: run the engine at build time, and press files with brotli."""

import json
import subprocess
from collections.abc import Iterable
from pathlib import Path
from typing import Any

HERE = Path(__file__).parent
ROOT = HERE.parents[1]
DEMO_DATA = ROOT / "demo_data"
SHOP = ROOT / "tests" / "checklists"


def imported(engine: Path, packages: Path, floors: Path) -> dict[str, Any]:
    """Files of the library and of the packages that a walk through every page imports; what those want beside."""
    out = run("imported.mjs", engine, packages, floors, SHOP, DEMO_DATA)

    return json.loads(out.splitlines()[-1])


def compiled(engine: Path, folder: Path, modules: Iterable[str], out: Path) -> dict[str, bytes]:
    """Bytecode of these modules of a folder, made by that very engine, so that its version fits."""
    out.mkdir(parents=True, exist_ok=True)
    listed = out / "modules.json"
    listed.write_text(json.dumps(list(modules)))
    run("compiled.mjs", engine, folder, listed, out)

    return {path.relative_to(out).as_posix(): path.read_bytes() for path in sorted(out.rglob("*.pyc"))}


def templates(engine: Path, floors: Path, out: Path) -> None:
    """The floors' templates as modules, made by the engine's own Jinja2."""
    run("templates.mjs", engine, floors, out)


def pressed(folder: Path, out: Path) -> None:
    """Every file as .br and .gz, and the list of what they hold."""
    out.mkdir(parents=True, exist_ok=True)
    print(run("pressed.mjs", folder, out), end="")


def unpressed(folder: Path, out: Path) -> Path:
    """The files as they were before."""
    run("unpressed.mjs", folder, out)

    return out


def run(script: str, *arguments: Path) -> str:
    done = subprocess.run(["node", HERE / script, *arguments], check=True, stdout=subprocess.PIPE, text=True)

    return done.stdout
