"""Every example in a docstring of the engineering floor runs, and every function names a registered source."""

import doctest
import importlib
import inspect
import pkgutil
import re
from collections.abc import Callable, Iterator
from types import ModuleType

import pytest

from checklist_app import mechanics
from checklist_app.mechanics.sources import SOURCES

MODULES = [importlib.import_module(f"{mechanics.__name__}.{m.name}") for m in pkgutil.iter_modules(mechanics.__path__)]
PLAIN = {"errors", "exact", "gravity", "sources", "vectors"}


def clauses() -> Iterator[tuple[str, Callable[..., object]]]:
    for module in MODULES:
        short = module.__name__.rpartition(".")[2]
        if short not in PLAIN:
            for name, function in vars(module).items():
                if inspect.isfunction(function) and function.__module__ == module.__name__ and name[0] != "_":
                    yield f"{short}.{name}", function


CLAUSES = dict(clauses())


@pytest.mark.parametrize("module", MODULES, ids=lambda m: m.__name__)
def test_the_examples_run(module: ModuleType) -> None:
    assert doctest.testmod(module).failed == 0


@pytest.mark.parametrize("name", CLAUSES)
def test_a_clause_names_a_registered_source_and_shows_an_example(name: str) -> None:
    text = inspect.getdoc(CLAUSES[name]) or ""
    block = re.search(r"Source:\n((?: +.*\n)+)", text)
    named = re.findall(r"\b[A-Z][A-Z0-9]*(?:_[A-Z0-9]+)+\b|\bPLATE\b|\bLOLER\b", block.group(1)) if block else []
    assert named and all(key in SOURCES for key in named), f"{name}: {named}"
    assert "Returns:" in text and ">>>" in text


@pytest.mark.parametrize("name", CLAUSES)
def test_every_number_taken_has_its_unit_in_brackets(name: str) -> None:
    text = inspect.getdoc(CLAUSES[name]) or ""
    for parameter in inspect.signature(CLAUSES[name]).parameters.values():
        told = re.search(rf"^ +{parameter.name}: (.*)", text, re.MULTILINE)
        assert told, f"{name}: say what {parameter.name} is"
        if parameter.annotation is float:
            assert re.search(r"\[[^]]+\]", told.group(1)), f"{name}: unit of {parameter.name}"


@pytest.mark.parametrize("key", SOURCES)
def test_a_source_says_what_it_is_and_how_it_was_seen(key: str) -> None:
    source = SOURCES[key]
    assert source.title and source.publisher and source.status.value in source.words()
