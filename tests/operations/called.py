"""Which clauses of the engineering floor an operation calls, read from its modules."""

import ast
from collections.abc import Iterable, Iterator
from pathlib import Path
from types import ModuleType

FLOOR = "checklist_app.mechanics."
# Arithmetic and points: no clause stands behind them.
PLAIN = {"exact", "vectors"}


def called(modules: Iterable[ModuleType]) -> set[str]:
    """Each by module and function, as `slings.choke.choke_angle_factor`."""
    paths = [Path(module.__file__ or "") for module in modules]
    return {name for path in paths for name in _in_file(path) if name.partition(".")[0] not in PLAIN}


def _in_file(path: Path) -> Iterator[str]:
    tree = ast.parse(path.read_text("utf-8"))
    modules = {
        alias.asname or alias.name: f"{node.module}.{alias.name}".removeprefix(FLOOR).removeprefix(FLOOR[:-1] + ".")
        for node in ast.walk(tree) if isinstance(node, ast.ImportFrom) and f"{node.module}.".startswith(FLOOR)
        for alias in node.names
    }
    for node in ast.walk(tree):
        if not (isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name)):
            continue
        if node.value.id in modules and node.attr.islower():
            yield f"{modules[node.value.id]}.{node.attr}"
