"""Every clause of slings, fittings and lashing stands in a test of its own package, with figures and with a refusal."""

import importlib
import inspect
import pkgutil
from pathlib import Path

import pytest

from checklist_app.mechanics import fittings, lashing, slings

HERE = Path(__file__).resolve().parent


def clauses() -> list[tuple[str, str, str, bool]]:
    """Package, module, function, whether it can refuse."""
    found = []
    for package in (slings, fittings, lashing):
        for module in pkgutil.iter_modules(package.__path__):
            loaded = importlib.import_module(f"{package.__name__}.{module.name}")
            for name, function in vars(loaded).items():
                if inspect.isfunction(function) and function.__module__ == loaded.__name__ and name[0] != "_":
                    refuses = "Raises:" in (inspect.getdoc(function) or "")
                    found.append((package.__name__.rpartition(".")[2], module.name, name, refuses))
    return found


def written(package: str, which: str) -> str:
    return "\n".join(path.read_text(encoding="utf-8") for path in sorted((HERE / package).glob(which)))


@pytest.mark.parametrize("package, module, name, refuses", clauses())
def test_a_clause_has_its_figures_and_its_refusal(package: str, module: str, name: str, refuses: bool) -> None:
    figures = [path for path in (HERE / package).glob("test_*.py") if path.name != "test_refusals.py"]
    assert any(f"{module}.{name}(" in path.read_text(encoding="utf-8") for path in figures) or (
        module in {"en_modes", "us_modes"} and f"modes.{name}(" in written(package, "test_modes.py")
    ), f"no test with figures calls {module}.{name}"
    if refuses:
        assert f"{module}.{name}(" in written(package, "test_refusals.py"), f"no refusal of {module}.{name} is tested"
