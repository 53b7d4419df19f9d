"""The table is proved at import: what does not fit together never reaches a task."""

import pytest

from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.operation import Operation
from checklist_app.operations.quantity import TableError
from tests.operations.toy import table

REFUSED = {
    "a name twice": (["def a(mass: float) -> float: ...", "def a() -> float: ..."], "a is there twice"),
    "the name of an entry": (["def mass() -> float: ..."], "mass is there twice"),
    "the name of a group": (["def leg() -> float: ..."], "leg is there twice"),
    "two worst cases": ([
        "@dont_know('mass')\ndef m1() -> float: ...\n@dont_know('mass')\ndef m2() -> float: ..."
    ], "mass has two worst cases"),
    "an unknown parameter": (["def a(nowhere: float) -> float: ..."], "needs nowhere, which is neither"),
    "no annotation of a parameter": (["def a(mass) -> float: ..."], "say what mass is"),
    "no annotation of the result": (["def a(mass: float): ..."], "say what it returns"),
    "a circle": (["def a(b: float) -> float: ...\ndef b(a: float) -> float: ..."], "circle: a → b → a"),
    "a circle through itself": (["def a(a: float) -> float: ..."], "circle: a → a"),
    "a circle through a worst case": ([
        "@dont_know('mass')\ndef worst(twice: float) -> Range: ...\ndef twice(mass: float) -> float: ..."
    ], "circle"),
    "a circle in one branch only": ([
        "@when('a', way=Way.ONE)\ndef a1(b: float) -> float: ...\n@when('a', way=Way.TWO)\ndef a2() -> float: ...\n"
        "def b(a: float) -> float: ..."
    ], "circle"),
    "one row where there are two": (["def total(length: float) -> float: ..."], "length is one value per row"),
    "all rows where there is one": ([
        "@each('leg')\ndef half(length: tuple[float, ...]) -> float: ..."
    ], "length is one value"),
    "another type at the other end": ([
        "def a(mass: float) -> str: ...\ndef b(a: float) -> float: ..."
    ], "a is str, not float"),
    "an entry of another kind": (["def a(way: float) -> str: ..."], "way is Way, not float"),
    "a row of another kind": (["@each('side')\ndef a(side: str) -> float: ..."], "side is Side, not str"),
    "no such group": (["@each('arm')\ndef half(length: float) -> float: ..."], "no group arm"),
    "one value across rows": (["@across('leg')\ndef half(mass: float) -> float: ..."], "returns a tuple"),
    "rows without across": (["def halves(mass: float) -> tuple[float, ...]: ..."], "returns a tuple"),
    "a branch missing": (["@when('a', way=Way.ONE)\ndef a1() -> float: ..."], "exactly one branch"),
    "a branch twice": ([
        "@when('a', way=Way.ONE)\ndef a1() -> float: ...\n@when('a', way=(Way.ONE, Way.TWO))\ndef a2() -> float: ..."
    ], "exactly one branch"),
    "half of what is known": (["@when('a', mass=Known.NO)\ndef a1() -> float: ..."], "exactly one branch"),
    "a branch on a number": (["@when('a', mass=1.0)\ndef a1() -> float: ..."], "a branch hangs on a choice"),
    "a branch on a quantity": ([
        "def b() -> Way: ...\n@when('a', b=Way.ONE)\ndef a1() -> float: ...\n@when('a', b=Way.TWO)\n"
        "def a2() -> float: ..."
    ], "must hang on one entry"),
    "branches on two entries": ([
        "@when('a', way=Way.ONE)\ndef a1() -> float: ...\n@when('a', mass=Known.NO)\ndef a2() -> float: ..."
    ], "must hang on one entry"),
    "a branch of the task on a row": ([
        "@when('a', ring=Known.YES)\ndef a1() -> float: ...\n@when('a', ring=Known.NO)\ndef a2() -> float: ..."
    ], "answered per row"),
    "a branch and a plain way": ([
        "@when('a', way=Way.ONE)\ndef a1() -> float: ...\ndef a() -> float: ..."
    ], "a is there twice"),
    "a check without its decorator": (["def a(mass: float) -> Strength: ..."], "both @check and"),
    "a decorator without a check": (["@check('a')\ndef a(mass: float) -> float: ..."], "both @check and"),
    "several checks in one": ([
        "@across('leg')\ndef a(mass: float) -> tuple[Strength, ...]: ..."
    ], "use @each for rows"),
    "a check that is held": ([
        "@at_nominal\n@check('a')\ndef a(mass: float) -> Strength: ..."
    ], "not @at_nominal"),
    "a worst case of nothing": (["@dont_know('nowhere')\ndef worst() -> Range: ..."], "not an entry"),
    "a worst case of another kind": (["@dont_know('mass')\ndef worst() -> str: ..."], "a Range or a value of mass"),
    "a worst case elsewhere": (["@dont_know('length')\ndef worst() -> Range: ..."], "found where length is entered"),
    "checks in a check": ([
        "@check('a')\ndef a(checks: tuple[Check, ...]) -> Limit: ..."
    ], "for a quantity of the task, no check"),
    "what comes after the checks, before them": ([
        "def used(checks: tuple[Check, ...]) -> float: ...\n@check('a')\ndef a(used: float) -> Limit: ..."
    ], "there only after the checks"),
}


@pytest.mark.parametrize("sources, told", REFUSED.values(), ids=REFUSED.keys())
def test_what_does_not_fit_is_refused_with_its_reason(sources: list[str], told: str) -> None:
    with pytest.raises(TableError, match=told):
        table(*sources)


def test_when_hangs_on_just_one_entry() -> None:
    with pytest.raises(TypeError, match="just one entry"):
        table("@when('a', way=Way.ONE, mass=Known.NO)\ndef a1() -> float: ...")


def test_a_circle_through_branches_that_never_meet_is_none() -> None:
    built = table("""
@when('reach', way=Way.ONE)
def reach_from_depth(depth: float) -> float: ...
@when('reach', way=Way.TWO)
def reach_given(mass: float) -> float: ...
@when('depth', way=Way.ONE)
def depth_given(height: float) -> float: ...
@when('depth', way=Way.TWO)
def depth_from_reach(reach: float) -> float: ...
""")
    assert set(built.ways) == {"reach", "depth"}


def test_imported_and_private_functions_are_no_quantities() -> None:
    built = table("from statistics import mean\ndef _own(x): return x\ndef double(mass: float) -> float: return mass")
    assert set(built.ways) == {"double"}


@pytest.mark.parametrize("operation", OPERATIONS.values(), ids=OPERATIONS.keys())
def test_an_operation_misses_a_check_that_got_lost(operation: Operation) -> None:
    for name in operation.checks:
        without = tuple(other for other in operation.checks if other != name)
        with pytest.raises(TableError, match=f"checks not named: {name}"):
            Operation(operation.name, operation.words, operation.table, operation.example, without)
    with pytest.raises(TableError, match="checks lost: gone"):
        Operation(operation.name, operation.words, operation.table, operation.example, (*operation.checks, "gone"))
