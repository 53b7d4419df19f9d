"""Every function of the engineering floor says what it computes, in which units, after whom, by example."""

import ast
import doctest
import importlib
import re
from pathlib import Path

import pytest

from checklist_app.mechanics.sources import SOURCES
from tests.style.tree import PACKAGE, name, pure_files, python_files, syntax

# Plumbing of the floor: no clause stands behind it.
WITHOUT_A_CLAUSE = {"__init__", "errors", "exact", "sources", "vectors"}
KEY = re.compile(r"\b[A-Z][A-Z0-9]*(?:_[A-Z0-9]+)+\b|\bPLATE\b|\bLOLER\b")
SECTION = re.compile(r"^ *(Source|Args|Returns|Raises|Example|Assumes):$", re.MULTILINE)


def clauses() -> list[tuple[Path, ast.FunctionDef]]:
    topics = [path for path in python_files(PACKAGE / "mechanics") if path.stem not in WITHOUT_A_CLAUSE]
    return [
        (path, node)
        for path in topics
        for node in syntax(path).body
        if isinstance(node, ast.FunctionDef) and not node.name.startswith("_")
    ]


def sections(text: str) -> dict[str, str]:
    pieces = SECTION.split(text)
    return {"formula": pieces[0], **dict(zip(pieces[1::2], pieces[2::2], strict=True))}


def told(value: object) -> str:
    return f"{name(value[0])}:{value[1].name}" if isinstance(value, tuple) else str(value)


@pytest.mark.parametrize("clause", clauses(), ids=told)
def test_a_clause_function_says_all_that_a_reader_with_the_standard_needs(clause: tuple[Path, ast.FunctionDef]) -> None:
    _, function = clause
    said = sections(ast.get_docstring(function) or "")
    assert {"Source", "Returns", "Example"} <= said.keys(), "write Source:, Returns: and Example: into the docstring"
    assert ">>>" in said["Example"], "the example must run: write >>>"
    if returns_number(function):
        assert re.search(r"^ {4,}\S.*", said["formula"], re.MULTILINE), "write the formula, indented, under line one"
        assert "[" in said["Returns"], "write the unit of what is returned in [ ]"


@pytest.mark.parametrize("clause", clauses(), ids=told)
def test_every_argument_is_told_with_its_unit(clause: tuple[Path, ast.FunctionDef]) -> None:
    _, function = clause
    said = sections(ast.get_docstring(function) or "").get("Args", "")
    for argument in (*function.args.args, *function.args.kwonlyargs):
        line = re.search(rf"^ *{argument.arg}: (.*(?:\n {{8,}}.*)*)", said, re.MULTILINE)
        assert line, f"say under Args what {argument.arg} is"
        if "float" in ast.unparse(argument.annotation or ast.Constant(None)):
            assert "[" in line.group(1), f"write the unit of {argument.arg} in [ ]"


@pytest.mark.parametrize("clause", clauses(), ids=told)
def test_every_source_is_registered(clause: tuple[Path, ast.FunctionDef]) -> None:
    _, function = clause
    keys = KEY.findall(sections(ast.get_docstring(function) or "").get("Source", ""))
    assert keys, "name at least one key of mechanics/sources.py"
    assert not (unknown := set(keys) - SOURCES.keys()), f"register in mechanics/sources.py: {sorted(unknown)}"


def sources_of_checks() -> list[tuple[Path, ast.Call]]:
    return [
        (path, node)
        for path in python_files(PACKAGE / "operations")
        for node in ast.walk(syntax(path))
        if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id == "check"
    ]


def test_every_check_names_a_registered_source() -> None:
    named = {
        (name(path), word.value.value)
        for path, call in sources_of_checks()
        for word in call.keywords
        if word.arg == "source" and isinstance(word.value, ast.Constant)
    }
    unknown = {where for where in named if where[1] not in SOURCES}
    assert not unknown, f"register in mechanics/sources.py: {sorted(unknown)}"


def test_no_source_is_kept_that_nobody_uses() -> None:
    text = "\n".join(path.read_text(encoding="utf-8") for path in pure_files() if path.stem != "sources")
    idle = sorted(key for key in SOURCES if not re.search(rf"\b{key}\b", text))
    assert not idle, f"take these out of mechanics/sources.py, or cite them where their figure stands: {idle}"


@pytest.mark.parametrize("path", [path for path in pure_files() if ">>>" in path.read_text(encoding="utf-8")], ids=name)
def test_every_example_runs(path: Path) -> None:
    module = importlib.import_module(".".join(path.relative_to(PACKAGE.parent).with_suffix("").parts))
    result = doctest.testmod(module, optionflags=doctest.ELLIPSIS)
    assert result.attempted and not result.failed, f"{name(path)}: {result}"


def returns_number(function: ast.FunctionDef) -> bool:
    return ast.unparse(function.returns or ast.Constant(None)) in {"float", "tuple[float, ...]", "tuple[float, float]"}
