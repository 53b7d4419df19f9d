"""A phone's evaluation is held against the server's: equal, equal but for the last digit, or an alarm."""

import copy
from datetime import UTC, datetime
from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checklist_app.checklists.canonical import canonical, parse
from checklist_app.checklists.parity import claim
from checklist_app.records.key_tables import Comparison
from checklist_app.records.notices import NoticeBoard
from checklist_app.records.parity import NoClaim, compare, judged, same_to_the_twelfth_digit
from checklist_app.records.world import DatabaseWorld
from tests.records.yard import DAY, Lift, yard

NOON = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)


@pytest.fixture(scope="module")
def lift(tmp_path_factory: pytest.TempPathFactory) -> Lift:
    made = Lift(yard(tmp_path_factory.mktemp("yard") / "data")).plan().stop_points()
    yield made
    made.store.close()


@pytest.fixture
def said(lift: Lift) -> dict:
    """What a phone says, as it comes off the wire."""
    return parse(canonical(claim(lift.world, lift.id)))


def kept(lift: Lift) -> list[Comparison]:
    return list(Comparison.select().order_by(Comparison.at, Comparison.outcome).execute(lift.store.database))


@pytest.fixture(autouse=True)
def empty(lift: Lift) -> None:
    Comparison.delete().execute(lift.store.database)


def first_strength(said: dict) -> dict:
    return next(check for check in said["evaluation"]["checks"] if check.get("utilisation"))


def test_the_same_is_equal_and_kept_as_a_line_without_its_text(lift: Lift, said: dict) -> None:
    assert said["evaluation"]["checks"], "something is compared"
    assert compare(lift.store, said, "d-1", "floors-1", NOON) == "equal"
    compare(lift.store, said, "d-1", "floors-1", NOON)
    (row,) = kept(lift)
    assert (row.outcome, row.task, row.device, row.code, row.said, row.words) == (
        "equal", lift.id, "d-1", "floors-1", None, "")


def unit_of_the_twelfth(text: str, units: int) -> str:
    number = Decimal(text)
    return str(number + units * Decimal(1).scaleb(number.adjusted() - 11))


def test_one_unit_of_the_twelfth_digit_is_noted_and_alarms_nobody(lift: Lift, said: dict) -> None:
    check = first_strength(said)
    check["utilisation"] = unit_of_the_twelfth(check["utilisation"], 1)
    assert compare(lift.store, said, "d-1", "", NOON) == "small"
    assert NoticeBoard(lift.store).notices(DatabaseWorld(lift.store, DAY)).notes == {}
    assert "utilisation" in kept(lift)[0].words


def two_units(said: dict) -> None:
    check = first_strength(said)
    check["utilisation"] = unit_of_the_twelfth(check["utilisation"], 2)


def another_verdict(said: dict) -> None:
    first_strength(said)["verdict"] = "over limit"


def verdict_with_a_small_difference(said: dict) -> None:
    check = first_strength(said)
    check["utilisation"] = unit_of_the_twelfth(check["utilisation"], 1)
    said["evaluation"]["verdict"] = "over limit"


def one_check_less(said: dict) -> None:
    said["evaluation"]["checks"].pop()


def not_a_number(said: dict) -> None:
    first_strength(said)["utilisation"] = "nan"


def other_working(said: dict) -> None:
    first_strength(said)["working"] = ["2 + 2 = 5"]


@pytest.mark.parametrize("tampered", [two_units, another_verdict, verdict_with_a_small_difference, one_check_less,
                                      not_a_number, other_working])
def test_anything_else_is_an_alarm_on_the_task_and_kept_whole(lift: Lift, said: dict, tampered) -> None:
    before = copy.deepcopy(said)
    tampered(said)
    assert said != before
    assert compare(lift.store, said, "d-1", "floors-1", NOON) == "differs"
    (row,) = kept(lift)
    assert parse(bytes(row.said)) == said and parse(bytes(row.found)) == before["evaluation"] and row.words
    (words,) = NoticeBoard(lift.store).notices(DatabaseWorld(lift.store, DAY)).notes[lift.id]
    assert "something else than the server" in words


@pytest.mark.parametrize("nonsense", [
    None, [], {}, {"form": "parity/1"}, {"form": "parity/2"},
    {"form": "parity/1", "task": "t-1", "day": DAY, "inputs": [], "gear": [], "evaluation": {}},
    {"form": "parity/1", "task": "t-1", "day": DAY, "inputs": [{}], "gear": [{}], "evaluation": {}},
    {"form": "parity/1", "task": "t-1", "day": "", "inputs": [1], "gear": [2], "evaluation": {"x": 1.5}},
])
def test_what_cannot_be_evaluated_is_refused(lift: Lift, nonsense) -> None:
    with pytest.raises(NoClaim):
        compare(lift.store, nonsense, "d-1", "", NOON)
    assert kept(lift) == []


@pytest.mark.parametrize(("one", "other", "same"), [
    ("1", "1", True), ("1.23456789012", "1.23456789013", True), ("1.23456789012", "1.23456789014", False),
    ("123456789012", "123456789013", True), ("123456789012", "123456789014", False), ("9.99999999999", "10", True),
    ("0", "1e-300", False), ("0", "0.0", True), ("1", "-1", False), ("1e300", "1.00000000001e300", True),
    ("nan", "nan", False), ("inf", "inf", False), ("1", "over limit", False), ("", "", False), ("1", "1 kN", False),
])
def test_the_twelfth_digit(one: str, other: str, same: bool) -> None:
    assert same_to_the_twelfth_digit(one, other) is same
    assert same_to_the_twelfth_digit(other, one) is same


@given(st.dictionaries(st.sampled_from(["a", "b"]), st.text() | st.lists(st.text(max_size=3), max_size=3), max_size=2),
       st.dictionaries(st.sampled_from(["a", "b"]), st.text() | st.lists(st.text(max_size=3), max_size=3), max_size=2))
def test_equal_means_equal_bytes(one: dict, other: dict) -> None:
    assert (judged(one, other)[0] == "equal") == (canonical(one) == canonical(other))
