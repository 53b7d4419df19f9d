"""The same bits everywhere: what the syntax of the pure floors may not hold."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.style.tree import name, pure_files, syntax

EXACT_IN_C = {"sqrt", "fsum", "hypot", "isfinite", "floor", "ceil", "degrees", "radians", "pi"}
CLOCK = {"now", "today", "utcnow"}


def faults(tree: ast.Module) -> Iterator[str]:
    for node in ast.walk(tree):
        if (fault := arithmetic_fault(node) or math_fault(node) or clock_fault(node)) is not None:
            yield f"line {getattr(node, 'lineno', '?')}: {fault}"


def arithmetic_fault(node: ast.AST) -> str | None:
    if isinstance(node, ast.BinOp | ast.AugAssign) and isinstance(node.op, ast.Pow):
        return "`**` differs between machines: write x * x, or exact.sqrt"
    if isinstance(node, ast.Call) and isinstance(node.func, ast.Name) and node.func.id in {"sum", "pow"}:
        return f"`{node.func.id}(` hides what is added from the working: write the loop"
    return None


def math_fault(node: ast.AST) -> str | None:
    if isinstance(node, ast.ImportFrom) and node.module == "math":
        asked = {alias.name for alias in node.names} - EXACT_IN_C
    elif isinstance(node, ast.Attribute) and isinstance(node.value, ast.Name) and node.value.id == "math":
        asked = {node.attr} - EXACT_IN_C
    else:
        return None

    return f"math.{', '.join(sorted(asked))} differs between machines: use mechanics/exact.py" if asked else None


def clock_fault(node: ast.AST) -> str | None:
    reads = (
        isinstance(node, ast.Attribute) and node.attr in CLOCK
        and isinstance(node.value, ast.Name | ast.Attribute)
        and (node.value.id if isinstance(node.value, ast.Name) else node.value.attr) in {"date", "datetime"}
    )
    return "there is no clock on the pure floors: take the day as an argument" if reads else None


@pytest.mark.parametrize("path", pure_files(), ids=name)
def test_the_arithmetic_gives_the_same_bits_on_every_machine(path: Path) -> None:
    assert not (found := list(faults(syntax(path)))), f"{name(path)}: {found}"


@pytest.mark.parametrize("text", [
    "y = x ** 2", "x **= 2", "y = sum(z)", "y = pow(x, 2)", "import math\ny = math.sin(x)", "from math import cos",
    "from datetime import date\nd = date.today()", "import datetime\nd = datetime.datetime.now()",
])
def test_each_rule_finds_what_it_forbids(text: str) -> None:
    assert list(faults(ast.parse(text)))


@pytest.mark.parametrize("text", [
    "from math import sqrt, hypot", "import math\ny = math.pi", "f(**named)", "day = world.today", "y = x * x",
])
def test_no_rule_forbids_what_is_exact(text: str) -> None:
    assert not list(faults(ast.parse(text)))
