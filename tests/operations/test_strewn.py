"""Corners strewn over the entries are even, and tell what each entry does; a step of a rating within reach is found."""

from itertools import combinations

import pytest

from checklist_app.operations.check import Strength, Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.graph import Range
from checklist_app.operations.strewn import corners, tendency
from checklist_app.operations.task import Key, Task
from tests.operations.toy import table


@pytest.mark.parametrize("count", [2, 7, 25, 33])
def test_each_two_entries_meet_at_all_four_corners_equally_often(count: int) -> None:
    rows = list(corners(count))
    for one, other in combinations(range(count), 2):
        met = [(row[one], row[other]) for row in rows]
        assert [met.count(pair) for pair in ((0, 0), (0, 2), (2, 0), (2, 2))] == [len(rows) // 4] * 4


def test_what_two_entries_do_together_does_not_pass_for_what_one_does() -> None:
    rows = [[end - 1.0 for end in row] for row in corners(5)]
    slopes, rest = tendency([3.0 * row[0] - row[1] + 0.5 * row[2] * row[3] + 7.0 for row in rows], 5)
    assert slopes == pytest.approx((3.0, -1.0, 0.0, 0.0, 0.0))
    assert rest == pytest.approx(0.5)


ENTRIES = 'ENTRIES = tuple(Entry(name, name, float, "m") for name in "abc")\n'
RATED = """
def angle(a: float, b: float, c: float) -> float:
    return 40.0 + a + b + c
@check("pull", unit="t")
def pull(a: float, angle: float) -> Strength:
    return Strength(0.9 - 0.05 * a, 2.0 if angle <= 42.5 else 1.0)
"""


def test_a_lower_rating_that_only_three_entries_together_reach_is_found_just_beyond_its_edge() -> None:
    """By hand: beyond 42.5° with b = c = 1 is a from 0.5, where the demand is 0.9 − 0.025 = 0.875."""
    entries = {Key(name): Range(-1.0, 0.0, 1.0) for name in "abc"}
    found = assess(table(RATED, entries=ENTRIES), Task(entries)).check("pull").worst
    assert isinstance(found, Strength)
    assert found.capacity == 1.0 and found.demand == pytest.approx(0.875, abs=0.001)


REFUSED = """
def shared(a: float, b: float, c: float) -> float:
    if a * b * c > 0.9 and a > 0.9 and b > 0.9:
        raise CannotAssess("all three at their high ends")
    return a + b + c
@check("one", unit="m")
def one(shared: float) -> Limit:
    return Limit(shared, 50.0)
@check("other", unit="m")
def other(shared: float) -> Limit:
    return Limit(-shared, 50.0)
"""


def test_what_is_refused_in_one_corner_is_refused_for_each_check_that_hangs_on_it() -> None:
    ev = assess(table(REFUSED, entries=ENTRIES), Task({Key(name): Range(-1.0, 0.0, 1.0) for name in "abc"}))
    assert [check.verdict for check in ev.checks] == [Verdict.CANNOT, Verdict.CANNOT]
