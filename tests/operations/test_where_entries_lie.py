"""A drawing may ask where the entries may lie; nothing else may."""

import pytest

from checklist_app.operations.evaluate import assess
from checklist_app.operations.graph import DontKnow, Range
from checklist_app.operations.table import TableError
from checklist_app.operations.task import Key, Measured, Task
from tests.operations.toy import table

MASS = '''
@dont_know("height")
def unknown_height(mass: float) -> Range:
    return Range(0.0, mass, 2.0 * mass)

@check("mass", unit="kg")
def heavy(mass: float, height: float) -> Strength:
    return Strength(mass, 10.0)
'''
DRAWN = '''
from collections.abc import Mapping

def picture(mass: float | None, checks: tuple[Check, ...], spreads: Mapping[str, Range]) -> Drawing:
    return Drawing(repr(dict(spreads)), (0.0, 0.0))
'''


def label(answers: dict[Key, object], with_spread: bool = True) -> str:
    found = assess(table(MASS + DRAWN), Task(answers), with_spread).picture
    assert found is not None and not isinstance(found, Exception)
    return found.label


def test_a_measured_number_lies_within_its_spread() -> None:
    told = label({Key("mass"): Measured(4.0, plus_minus=0.5), Key("height"): Measured(1.0, plus_minus=0.25)})
    assert told == repr({"mass": Range(3.5, 4.0, 4.5), "height": Range(0.75, 1.0, 1.25)})


def test_what_nobody_knows_lies_where_it_is_published() -> None:
    told = label({Key("mass"): Measured(4.0, plus_minus=0.0), Key("height"): DontKnow()})
    assert repr(Range(0.0, 4.0, 8.0)) in told


def test_what_is_exact_and_what_is_missing_lies_nowhere_else() -> None:
    assert label({Key("mass"): 4.0}) == "{}"
    assert label({Key("mass"): Measured(4.0, plus_minus=0.5), Key("height"): DontKnow()}, with_spread=False) != "{}"


@pytest.mark.parametrize("source", [
    "def other(spreads: Mapping[str, Range]) -> float:\n    return 1.0",
    "def other(spreads: Mapping[str, Range], checks: tuple[Check, ...]) -> float:\n    return 1.0",
    "def other(spreads: float, checks: tuple[Check, ...]) -> Drawing:\n    return Drawing('', (0.0, 0.0))",
])
def test_only_a_drawing_may_ask(source: str) -> None:
    with pytest.raises(TableError, match="spreads: Mapping"):
        table(MASS + "\nfrom collections.abc import Mapping\n" + source)
