"""The files that the style tests read."""

import ast
from functools import cache
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PACKAGE = ROOT / "checklist_app"
TEMPLATES = ROOT / "templates"
STATIC = ROOT / "static"
PURE_FLOORS = ("mechanics", "operations", "checklists")


def python_files(folder: Path) -> list[Path]:
    return sorted(path for path in folder.rglob("*.py") if "__pycache__" not in path.parts)


def pure_files() -> list[Path]:
    return [path for floor in PURE_FLOORS for path in python_files(PACKAGE / floor)]


def name(path: Path) -> str:
    return path.relative_to(ROOT).as_posix()


def lines(path: Path) -> int:
    return len(path.read_text(encoding="utf-8").splitlines())


@cache
def syntax(path: Path) -> ast.Module:
    return ast.parse(path.read_text(encoding="utf-8"), filename=str(path))
