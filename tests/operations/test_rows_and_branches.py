"""Rows, branches, and the ways to have no value: what settles, what refuses, what waits."""

from collections.abc import Mapping
from typing import Any

import pytest

from checklist_app.operations.check import Check, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.graph import CannotAssess, DontKnow, Missing, NotApplicable, NotUsed, Range, Waits
from checklist_app.operations.task import Key, Task, row_labels
from tests.operations.toy import table

TABLE = table("""
@dont_know("height")
def height_unknown(mass: float) -> Range:
    return Range(0.0, 1.0, 2.0)
@each("leg")
def reach(length: float, ring: float | None) -> float:
    return length + (ring or 0.0)
@across("leg")
def share(reach: tuple[float, ...]) -> tuple[float, ...]:
    whole = 0.0
    for one in reach:
        whole = whole + one
    return tuple(one / whole for one in reach)
def rings(ring: tuple[float, ...]) -> float:
    return ring[0] + ring[1]
def rings_if_any(ring: tuple[float | None, ...]) -> int:
    return len([one for one in ring if one is not None])
@each("side")
def towards(side: Side, mass: float) -> float:
    return mass if side is Side.NORTH else -mass
def slope(height: float) -> float:
    if height > 10.0:
        raise OutOfRangeError("height", height, "up to 10 m", "HOUSE_SETTING")
    return height
@when("drop", way=Way.ONE)
def drop_one(mass: float) -> float:
    return mass
@when("drop", way=Way.TWO)
def drop_two(height: float) -> float:
    return height
@when("guess", height=Known.YES)
def guess_known(height: float) -> str:
    return "known"
@when("guess", height=Known.NO)
def guess_unknown() -> str:
    return "not known"
@each("leg")
@check("leg", unit="m")
def leg_check(share: float) -> Strength:
    return Strength(share, 1.0)
@check("slope", unit="m")
def slope_check(slope: float) -> Limit:
    return Limit(slope, 1.5)
def used(checks: tuple[Check, ...]) -> float:
    return max(highest_utilisation(one) for one in checks)
def broken(mass: float) -> float:
    return mass / 0.0 if mass == 13.0 else mass
""")
LEFT: Mapping[str, Any] = {"length": 1.0, "ring": NotUsed("no ring here")}
RIGHT: Mapping[str, Any] = {"length": 3.0, "ring": 0.5}


def task(left: Mapping[str, Any] = LEFT, right: Mapping[str, Any] = RIGHT, **answers: Any) -> Task:
    given = {"mass": 100.0, "height": 1.0, **answers}
    whole = Task({Key(name): value for name, value in given.items() if value is not None})
    return whole.with_row("leg", "left", left).with_row("leg", "right", right)


def run(**changes: Any) -> Evaluation:
    return assess(TABLE, task(**changes))


def test_each_row_takes_its_own_and_all_rows_share() -> None:
    ev = run()
    assert (ev["reach[left]"], ev["reach[right]"]) == (1.0, 3.5)
    assert ev["share[left]"] + ev["share[right]"] == pytest.approx(1.0)


def test_fixed_rows_are_always_there() -> None:
    assert (run()["towards[north]"], run()["towards[south]"]) == (100.0, -100.0)


def test_a_branch_that_is_not_taken_never_waits() -> None:
    way = TABLE.entries["way"].kind
    assert run(way=way("one"), height=None)["drop"] == 100.0
    assert run(way=way("two"))["drop"] == 1.0
    assert [str(reason) for reason in run(height=None)["drop"].reasons] == ["way"]


def test_a_branch_hangs_on_whether_an_entry_is_known() -> None:
    assert run()["guess"] == "known"
    assert run(height=DontKnow())["guess"] == "not known"
    assert isinstance(run(height=None)["guess"], Waits)


def test_not_used_is_accepted_only_where_none_is_taken() -> None:
    assert run()["rings_if_any"] == 1
    refused = run()["rings"]
    assert isinstance(refused, CannotAssess)
    assert refused.reasons == ("a row is not used: no ring here",)


def test_what_is_missing_is_named_with_its_row_and_its_key() -> None:
    waits = run(left={"length": 1.0})["reach[left]"]
    assert isinstance(waits, Waits)
    (reason,) = waits.reasons
    assert reason == "ring, left" and isinstance(reason, Missing) and reason.key == "ring[left]"


@pytest.mark.parametrize("count, told", [
    (0, "two legs"), (1, "two legs"), (3, "three legs"), (4, "four legs"),
])
def test_another_number_of_rows_is_said_in_words_and_never_a_crash(count: int, told: str) -> None:
    whole = Task({Key("mass"): 100.0, Key("height"): 1.0})
    for number in range(count):
        whole = whole.with_row("leg", str(number), LEFT)
    ev = assess(TABLE, whole)
    checks = [check for check in ev.checks if check.quantity == "leg_check"]
    assert len(checks) == count
    assert all(told in str(check.stopped) for check in checks)
    assert all(check.verdict is (Verdict.CANNOT if count > 2 else Verdict.WAITING) for check in checks)


def test_a_refusal_of_a_clause_is_cannot_be_assessed_in_its_words() -> None:
    ev = run(height=11.0)
    assert ev.check("slope_check").verdict is Verdict.CANNOT
    assert ev.check("slope_check").stopped is not None
    assert "height is 11" in str(ev["slope"]) and "up to 10 m" in str(ev["slope"])


def test_a_fault_of_ours_is_not_dressed_up_as_a_refusal() -> None:
    with pytest.raises(ZeroDivisionError):
        run(mass=13.0)


def test_not_used_settles_then_a_refusal_then_waiting() -> None:
    both = table("""
def refuses(mass: float) -> float:
    raise CannotAssess("no")
def gone(mass: float) -> float:
    raise NotApplicable("not here")
def one(refuses: float, height: float) -> float: ...
def two(refuses: float, height: float, gone: float) -> float: ...
""")
    ev = assess(both, Task({Key("mass"): 1.0}))
    assert isinstance(ev["one"], CannotAssess) and ev["one"].reasons == ("no",)
    assert isinstance(ev["two"], NotApplicable) and ev["two"].reasons == ("not here",)


def test_dont_know_without_a_published_worst_case_cannot_be_assessed() -> None:
    found = run(mass=DontKnow())["broken"]
    assert isinstance(found, CannotAssess) and "no worst case is published" in str(found)


def test_dont_know_is_tried_throughout_even_without_spread() -> None:
    ev = assess(TABLE, task(height=DontKnow()), with_spread=False)
    check = ev.check("slope_check")
    assert (check.outcome[0], check.worst[0]) == (1.0, 2.0)  # type: ignore[index]
    assert check.verdict is Verdict.OVER and check.unknown == ("height",)


def test_what_needs_the_finished_checks_sees_their_worst() -> None:
    ev = assess(TABLE, task(left={**LEFT, "length": Range(0.5, 1.0, 2.0)}))
    check: Check = ev.check("leg_check[left]")
    assert ev["used"] >= check.worst[0] > check.outcome[0]  # type: ignore[index]


def test_two_rows_of_one_name_are_refused() -> None:
    with pytest.raises(ValueError, match="two rows left"):
        task().with_row("leg", "left", {})


def test_rows_made_on_two_devices_keep_apart() -> None:
    assert list(row_labels(["3-left", "1-left", "2-right"]).values()) == ["left", "right", "3-left"]
    assert row_labels(["a"]) == {"a": "a"}
