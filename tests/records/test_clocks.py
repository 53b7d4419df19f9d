"""Clocks are told and never believed: nothing is ordered by them, and one that is far off is marked."""

import random
from datetime import UTC, datetime
from pathlib import Path

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.entry import Entry, make
from checklist_app.checklists.fold import fold
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.running import running
from checklist_app.checklists.statement import evaluation
from checklist_app.operations.report import report
from checklist_app.records.clocks import skew_s
from checklist_app.records.course import in_order
from checklist_app.records.record import build
from tests.records.yard import DAY, Lift, yard

NOW = datetime(2026, 11, 25, 12, tzinfo=UTC)
YEARS = ("1999-12-31T23:59:59Z", "2026-11-25T08:00:00Z", "2026-11-25T12:00:00Z", "2031-07-01T00:00:00Z")


class Skewed(Lift):
    """A lift whose phones disagree wildly about the time."""

    chance = random.Random(4)

    @property
    def at(self) -> str:
        return self.chance.choice(YEARS)


def planned(folder: Path, kind: type[Lift]) -> Lift:
    lift = kind(yard(folder))
    lift.plan().stop_points()
    for text, device in (("0.30", "d2"), ("0.40", "d3"), ("0.35", "d2")):
        lift.device, lift.counter = device, lift.counter + 10
        lift.say("lift_height_m", values.number(text, "m", "tape"))
    return lift


def what_stands(lift: Lift) -> tuple[object, ...]:
    now = running(lift.world, lift.id)
    states = [(state.hold.name, state.signed, state.void) for state in hold_states(lift.world, now)]
    return now.folded.values, list(now.folded.disputed), states, evaluation(report(now.operation, now.evaluation))


def test_what_stands_is_the_same_whatever_the_clocks_say(tmp_path: Path) -> None:
    right, wrong = planned(tmp_path / "right", Lift), planned(tmp_path / "wrong", Skewed)
    assert what_stands(right) == what_stands(wrong)
    assert wrong.world.entries(("task", wrong.id))[-1].value["text"] == "0.35"
    right.store.close()
    wrong.store.close()


def said(text: str, counter: int, at: str, device: str = "d-1", replaces: tuple[str, ...] = ()) -> Entry:
    return make(("task", "t"), ("mass_kg",), values.number(text, "kg"), replaces, "p-1", device, counter, at)


def test_what_happened_is_told_in_the_order_of_replacing_and_counting() -> None:
    first = said("1", 1, YEARS[3])
    second = said("2", 2, YEARS[0])
    other = said("3", 1, YEARS[0], "d-2", (second.digest,))
    for given in ([first, second, other], [other, second, first], [second, other, first]):
        assert in_order(given) == [first, second, other]
    assert [entry.value["text"] for entry in fold([first, second, other]).heads[("mass_kg",)]] == ["1", "3"]


def test_a_phone_that_counted_twice_loses_nothing_of_the_course() -> None:
    """Each of the two would have to come before the other."""
    one = said("1", 5, YEARS[1])
    two = said("2", 4, YEARS[1], replaces=(one.digest,))
    assert set(in_order([one, two])) == {one, two}


def test_a_change_after_the_signature_is_told_though_the_phone_that_made_it_is_slow(tmp_path: Path) -> None:
    lift = Lift(yard(tmp_path / "data"))
    lift.plan().stop_points()
    lift.sign("release", "agata-rusk")
    lift.minute = 60  # seven hours behind
    lift.say("lift_height_m", values.number("0.35", "m", "tape"))
    lift.say("closing", {"type": "closing", "text": "abandoned", "part": lift_words(lift)}, replaces=False)
    told = [event["words"] for event in build(lift.world, lift.id)["events"]]
    assert [words for words in told if "0.35 m" in words] == told[-2:-1]
    lift.store.close()


def lift_words(lift: Lift) -> str:
    name, data = values.words_part("no crane today", "salt")
    lift.store.keep([], {name: data}, lift.device, f"{DAY}T09:00:00Z")
    return name


@pytest.mark.parametrize(("at", "clock", "doubt"), [
    ("2026-11-25T11:59:00Z", "", ""), ("2026-11-20T11:59:00Z", "", ""),
    ("2026-11-25T12:05:00Z", "", "the phone's clock was 5 minutes ahead of the server's"),
    ("2026-11-25T11:59:00Z", "the phone's clock was 2 hours behind the server's",
     "the phone's clock was 2 hours behind the server's"),
])
def test_an_entry_timed_by_a_clock_that_is_far_off_is_taken_and_marked(
        tmp_path: Path, at: str, clock: str, doubt: str) -> None:
    store = yard(tmp_path / "data")
    made = make(("gear", "R-21"), ("quarantine",), values.quarantine(DAY), (), "milo-harke", "d-1", 1, at)
    store.put("d-1", [{"body": made.data.decode()}], "2026-11-25T12:00:00Z", vouched=True, clock=clock)
    (arrival,) = [one for one in store.arrivals(("gear", "R-21")) if one.entry.digest == made.digest]
    assert (arrival.doubt, arrival.counts) == (doubt, True)
    store.close()


@pytest.mark.parametrize(("told", "skew"), [
    ("2026-11-25T14:05:00Z", 7500), ("2026-11-25T11:58:30Z", -90), (None, 0), ("", 0), (7, 0), ("soon", 0),
    ("2026-99-99T00:00:00Z", 0), ("9999-12-31T23:59:59Z", 251596670399),
])
def test_how_far_a_clock_is_off(told: object, skew: int) -> None:
    assert skew_s(told, NOW) == skew or skew > 10**9 < skew_s(told, NOW)
