"""Which library a test really calls: by the names it uses, those of its module's functions, and of what it imports."""

import ast
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path
from types import CodeType, ModuleType
from typing import Any

LIBRARIES = {"mpmath": "mpmath", "scipy": "scipy", "sympy": "sympy", "mujoco": "MuJoCo", "pint": "pint"}
TESTS = Path(__file__).resolve().parents[2]


def libraries(module: ModuleType, function: Callable[..., Any]) -> list[str]:
    """The libraries that a test, or anything of its own that it uses, calls."""
    known = imported(Path(str(module.__file__)))
    names = used(function, module)

    return list(dict.fromkeys(known[name] for name in sorted(names) if name in known))


def used(function: Callable[..., Any], module: ModuleType) -> set[str]:
    """Every global name in a function, and in the functions and classes of its module that it names."""
    seen: set[str] = set()
    todo = set(names_of(function.__code__))
    while todo:
        name = todo.pop()
        seen.add(name)
        found = vars(module).get(name)
        if getattr(found, "__module__", None) == module.__name__:
            inner = [found] if hasattr(found, "__code__") else [
                each for each in vars(found).values() if hasattr(each, "__code__")]
            todo |= {each for one in inner for each in names_of(one.__code__)} - seen
    return seen


def names_of(code: CodeType) -> Iterator[str]:
    yield from code.co_names
    for inner in code.co_consts:
        if isinstance(inner, CodeType):
            yield from names_of(inner)


@cache
def imported(path: Path) -> dict[str, str]:
    """Names in a file that lead to a library, by what they lead to; a file of ours is looked into."""
    found: dict[str, str] = {}
    for node in ast.parse(path.read_text(encoding="utf-8")).body:
        for name, source in _names(node):
            top = source.split(".")[0]
            if top in LIBRARIES:
                found[name] = LIBRARIES[top]
            elif top == "tests":
                inner = imported(TESTS.joinpath(*source.split(".")).with_suffix(".py"))
                found |= dict.fromkeys([name] if inner else [], next(iter(inner.values()), ""))
    return found


def _names(node: ast.stmt) -> Iterator[tuple[str, str]]:
    if isinstance(node, ast.Import):
        yield from ((alias.asname or alias.name.split(".")[0], alias.name) for alias in node.names)
    elif isinstance(node, ast.ImportFrom) and node.module:
        yield from ((alias.asname or alias.name, node.module) for alias in node.names)
