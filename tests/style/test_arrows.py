"""Imports point downwards only: cli → web → records → checklists → operations → mechanics."""

import ast
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.style.tree import PACKAGE, name, pure_files, python_files, syntax

FLOORS = (
    "shipped", "mechanics", "operations", "checklists", "records", "web", "demo", "engine", "commands", "cli",
    "__main__",
)
TEMPLATE_ENGINE = {"jinja2", "markupsafe"}
IMPURE = {
    "asyncio", "cmath", "ctypes", "http", "multiprocessing", "os", "random", "secrets", "socket", "sqlite3", "ssl",
    "statistics", "subprocess", "tempfile", "threading", "time", "urllib", "uuid",
}
ONLY_TEXT = ("urllib.parse",)


def imports(path: Path) -> Iterator[tuple[int, str]]:
    for node in ast.walk(syntax(path)):
        if isinstance(node, ast.Import):
            yield from ((node.lineno, alias.name) for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            yield from imported_from(path, node)


def imported_from(path: Path, node: ast.ImportFrom) -> Iterator[tuple[int, str]]:
    package = path.relative_to(PACKAGE.parent).parent.parts
    base = ".".join((*package[: len(package) - node.level + 1], node.module or "")) if node.level else node.module or ""
    for alias in node.names:
        yield node.lineno, f"{base.rstrip('.')}.{alias.name}"


def floor(parts: tuple[str, ...]) -> int | None:
    inside = parts[1] if len(parts) > 1 else ""
    return FLOORS.index(inside) if inside in FLOORS else None


@pytest.mark.parametrize("path", python_files(PACKAGE), ids=name)
def test_no_import_points_upwards(path: Path) -> None:
    here = floor(path.relative_to(PACKAGE.parent).with_suffix("").parts)
    upwards = [
        f"line {line}: {module}"
        for line, module in imports(path)
        if module.startswith("checklist_app.")
        and here is not None
        and (there := floor(tuple(module.split(".")))) is not None
        and there > here
    ]
    assert not upwards, f"{name(path)} imports from a floor above it; move the shared thing down: {upwards}"


@pytest.mark.parametrize("path", pure_files(), ids=name)
def test_the_pure_floors_need_only_the_standard_library_and_jinja(path: Path) -> None:
    tops = {(line, module.split(".")[0]) for line, module in imports(path) if not module.startswith(ONLY_TEXT)}
    allowed = set(sys.stdlib_module_names) - IMPURE | TEMPLATE_ENGINE | {"checklist_app"}
    foreign = sorted(f"line {line}: {top}" for line, top in tops if top not in allowed)
    assert not foreign, f"{name(path)} travels to the phone and must stay pure; pass the value in instead: {foreign}"


def test_every_part_of_the_package_has_its_floor() -> None:
    parts = {path.stem if path.is_file() else path.name for path in PACKAGE.iterdir()}
    unknown = parts - set(FLOORS) - {"__init__", "__pycache__", "static", "templates", "demo_data"}
    assert not unknown, f"say in FLOORS on which floor these stand: {sorted(unknown)}"
