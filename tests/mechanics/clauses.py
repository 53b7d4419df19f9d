"""The clause functions of the engineering floor, taken from its modules."""

import importlib
import inspect
import pkgutil
from collections.abc import Callable, Iterator

from checklist_app import mechanics

PLAIN = {"errors", "exact", "gravity", "sources", "vectors"}


def clauses() -> Iterator[tuple[str, Callable[..., object]]]:
    """Each by `module.function`."""
    for short in sorted({module.name for module in pkgutil.iter_modules(mechanics.__path__)} - PLAIN):
        module = importlib.import_module(f"{mechanics.__name__}.{short}")
        for name, function in vars(module).items():
            if inspect.isfunction(function) and function.__module__ == module.__name__ and name[0] != "_":
                yield f"{short}.{name}", function


CLAUSES = dict(clauses())
