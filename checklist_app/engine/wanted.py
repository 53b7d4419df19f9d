"""Runs inside the stock engine after the walk: imports inside the kept modules of what was not kept."""
import ast
import sys
import zipfile
from collections.abc import Iterator
from pathlib import Path


def module(name: str) -> str:
    return name.removesuffix(".py").replace("/", ".").removesuffix(".__init__")


def imports(source: bytes) -> Iterator[str]:
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom) and node.module and not node.level:
            yield node.module


def wanted(kept: dict[str, list[str]]) -> dict[str, list[str]]:
    """What a late import would not find, and who wants it: to be read by a person at every upgrade."""
    library = zipfile.ZipFile(next(path for path in sys.path if path.endswith(".zip")))
    sources = {name: library.read(name) for name in kept["stdlib"]}
    sources |= {name: Path("/packages", name).read_bytes() for name in kept["packages"]}
    stock = {module(name) for name in library.namelist() if name.endswith(".py")}
    missing = stock - {module(name) for name in sources} - set(sys.builtin_module_names)
    found: dict[str, set[str]] = {}
    for name, source in sources.items():
        for one in set(imports(source)) & missing:
            found.setdefault(one, set()).add(module(name))

    return {one: sorted(by) for one, by in sorted(found.items())}
