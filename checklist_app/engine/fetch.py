"""The pinned packages, by the ordinary clients of their registries, each held against its digest."""

import base64
import hashlib
import json
import subprocess
import sys
import tarfile
from pathlib import Path

from checklist_app.engine.zips import unpacked

PINS = json.loads((Path(__file__).parent / "pins.json").read_text())
# Packages with a part in C are taken for one fixed platform; that part is left out, its Python takes over.
PLATFORM = ("--platform", "manylinux2014_x86_64", "--implementation", "cp", "--python-version", "313",
            "--abi", "cp313", "--abi", "none")


class NotWhatWasPinned(Exception):
    """A package is not the one that was looked at when it was pinned."""


def pyodide(work: Path) -> Path:
    """The unpacked npm package."""
    pin = PINS["pyodide"]
    work.mkdir(parents=True, exist_ok=True)
    subprocess.run(["npm", "pack", "--silent", f"pyodide@{pin['version']}"], cwd=work, check=True,
                   stdout=subprocess.DEVNULL)
    archive = work / f"pyodide-{pin['version']}.tgz"
    found = "sha512-" + base64.b64encode(hashlib.sha512(archive.read_bytes()).digest()).decode()
    refuse_other("pyodide", found, pin["integrity"])
    with tarfile.open(archive) as opened:
        opened.extractall(work / "npm", filter="data")

    return work / "npm" / "package"


def packages(work: Path) -> Path:
    """The pure Python packages that the pages need, in one folder."""
    for name, pin in PINS["packages"].items():
        subprocess.run([sys.executable, "-m", "pip", "download", "--quiet", "--no-deps", "--only-binary", ":all:",
                        *PLATFORM, "--dest", work / "wheels", f"{name}=={pin['version']}"], check=True)
        wheel = next((work / "wheels").glob(f"{name}-{pin['version']}-*.whl"))
        refuse_other(name, hashlib.sha256(wheel.read_bytes()).hexdigest(), pin["sha256"])
        unpacked(wheel, work / "packages")
    for compiled in (work / "packages").rglob("*.so"):
        compiled.unlink()

    return work / "packages"


def empty_lock(stock: Path) -> str:
    """The list of packages that the loader always asks for: of this engine, and with no package in it."""
    info = json.loads((stock / "pyodide-lock.json").read_text())["info"]

    return json.dumps({"info": info, "packages": {}}, sort_keys=True)


def refuse_other(name: str, found: str, pinned: str) -> None:
    if found != pinned:
        raise NotWhatWasPinned(f"{name}: {found} came, {pinned} is pinned")
