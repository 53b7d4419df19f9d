"""A phone without a screen: the vendored engine in Node, with the floors that the server would send."""

import base64
import gzip
import json
import subprocess
from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import Any

from checklist_app.engine.build import build_floors
from checklist_app.shipped import shipped
from checklist_app.web.floors import VENDORED, built_name

HERE = Path(__file__).parent


class NodePhone:
    """Asked by the same messages as the page's worker."""

    def __init__(self, node: str, folder: Path, floors: bytes, visit: str = "first") -> None:
        (folder / "floors.zip").write_bytes(floors)
        scripts = shipped("static") / "js"
        self._process = subprocess.Popen(
            [node, HERE / "node_phone.mjs", scripts, laid_out(folder / "engine"), folder / "floors.zip",
             HERE / "assessed.py", visit],
            stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True, encoding="utf-8",
        )

    def ask(self, message: Mapping[str, Any]) -> dict[str, Any]:
        assert self._process.stdin is not None and self._process.stdout is not None
        self._process.stdin.write(json.dumps(message) + "\n")
        self._process.stdin.flush()
        line = self._process.stdout.readline()
        assert line, "the phone died, see above"
        return dict(json.loads(line))

    def load(self, entries: Iterable[bytes], parts: Mapping[str, bytes]) -> None:
        said = self.ask({"do": "load", "entries": [data.decode() for data in entries],
                         "parts": [[name, base64.b64encode(data).decode()] for name, data in parts.items()]})
        assert said["ok"], said

    def close(self) -> None:
        self._process.communicate(timeout=20)


def laid_out(folder: Path) -> Path:
    """The engine's files as the browser sees them."""
    folder.mkdir()
    for path in (shipped("static") / VENDORED).glob("*.gz"):
        (folder / path.name.removesuffix(".gz")).write_bytes(gzip.decompress(path.read_bytes()))

    return folder


def compiled_floors(folder: Path) -> bytes:
    """The zip of the release build, made now from the sources as they are."""
    build_floors(folder / "build", folder / "built")

    return gzip.decompress((folder / "built" / f"{built_name()}.gz").read_bytes())
