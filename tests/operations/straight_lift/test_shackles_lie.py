"""How shackles are pulled and what sits on their pins: the share that is left, what is refused, what old inputs get."""

from typing import Any

import pytest

from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.operations.check import Strength, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import Gear, make
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.straight_lift.choices import Gathered, OnPin, ShacklePull
from tests.operations.straight_lift.lifts import TABLE, hook, lift, shackle

STOPS = (Verdict.CANNOT, Verdict.OVER)


def bow(**facts: Any) -> Gear:
    known = {"wll_t": 2.0, "reach_m": 0.1, "mass_kg": 1.0, "form": "bow", "pin": "screw pin", **facts}
    return make("shackle", "B-1", {name: fact for name, fact in known.items() if fact is not None})


def lying(slot: str = "bottom_fitting", fitting: Gear | None = None, **answers: Any) -> Evaluation:
    return assess(TABLE, lift(both={slot: fitting or bow(), **answers}), with_spread=False)


def carries_t(ev: Evaluation, name: str) -> float:
    outcome = ev.check(name).outcome
    assert isinstance(outcome, Strength), outcome
    return outcome.capacity


@pytest.mark.parametrize("slot", ["top_fitting", "bottom_fitting"])
@pytest.mark.parametrize("pull, share", [
    pytest.param(None, 1.0, id="not asked, as before"), pytest.param(ShacklePull.IN_LINE, 1.0, id="in line"),
    pytest.param(ShacklePull.ASLANT, 0.7, id="published, makers' charts: 45°, 70 %"),
    pytest.param(ShacklePull.ASIDE, 0.5, id="published, makers' charts: 90°, 50 %"),
])
def test_a_pull_aside_takes_its_step(slot: str, pull: ShacklePull | None, share: float) -> None:
    answers = {} if pull is None else {"shackle_pull": pull}
    assert carries_t(lying(slot, **answers), f"{slot[:-8]}_fitting_strength[left]") == pytest.approx(2.0 * share)


def test_across_its_body_no_table_allows_a_pull() -> None:
    found = lying(shackle_pull=ShacklePull.ACROSS).check("bottom_fitting_strength[left]")
    assert found.verdict is Verdict.CANNOT and "plane of its body" in str(found.stopped)


@pytest.mark.parametrize("facts, words", [
    ({"form": "dee"}, "dee shackle"), ({"pin": "round pin"}, "round pin"),
])
def test_a_dee_and_a_round_pin_take_no_pull_aside(facts: dict[str, str], words: str) -> None:
    found = lying(fitting=bow(**facts), shackle_pull=ShacklePull.ASLANT).check("bottom_fitting_strength[left]")
    assert found.verdict is Verdict.CANNOT and words in str(found.stopped)


@pytest.mark.parametrize("fact", ["form", "pin"])
def test_a_pull_aside_waits_for_the_form_and_the_pin_of_the_shackle(fact: str) -> None:
    found = lying(fitting=bow(**{fact: None}), shackle_pull=ShacklePull.ASIDE).check("bottom_fitting_strength[left]")
    assert found.verdict is Verdict.WAITING and fact in str(found.stopped)
    assert lying(fitting=bow(**{fact: None}), shackle_pull=ShacklePull.IN_LINE).check(
        "bottom_fitting_strength[left]").computed


@pytest.mark.parametrize("on_pin, passes", [
    (None, True), (OnPin.ONE, True), (OnPin.NOOSE_EYE, True), (OnPin.RUNS, False), (OnPin.SEVERAL, False),
])
def test_nothing_runs_over_a_pin_and_one_part_sits_on_it(on_pin: OnPin | None, passes: bool) -> None:
    """WAC 296-155-33905 for the choking eye; EM 385-1-1 for several legs."""
    answers = {} if on_pin is None else {"shackle_pin": on_pin}
    assert lying(**answers).check("bottom_fitting_strength[left]").computed is passes


@pytest.mark.parametrize("name", ["shackle_pull", "shackle_pin"])
def test_what_nobody_knows_of_a_shackle_cannot_be_assessed(name: str) -> None:
    found = lying(**{name: DontKnow()}).check("bottom_fitting_strength[left]")
    assert found.verdict is Verdict.CANNOT and "is not known" in str(found.stopped)
    assert not TABLE.may_not_know(name)


def test_a_hook_is_looked_at_for_itself() -> None:
    ev = lying(fitting=hook(2.0), shackle_pull=ShacklePull.ASIDE, shackle_pin=OnPin.SEVERAL)
    assert carries_t(ev, "bottom_fitting_strength[left]") == 2.0


@pytest.mark.parametrize("gathered, passes", [(None, True), (Gathered.IN_BOW, True), (Gathered.ON_PIN, False)])
def test_two_legs_gather_in_the_bow_and_never_on_the_pin(gathered: Gathered | None, passes: bool) -> None:
    """EM 385-1-1, 15.E.06: no multiple legs on the pin."""
    changes = {} if gathered is None else {"hook_shackle": gathered}
    found = assess(TABLE, lift(hook_fitting=shackle(), **changes), with_spread=False).check("hook_fitting_strength")
    assert found.computed is passes


@pytest.mark.parametrize("fitting, words", [
    (bow(form="dee"), "a dee is for one"), (hook(), "two legs straight in a hook"),
])
def test_two_parts_that_lie_apart_gather_in_a_bow_at_the_bottom_too(fitting: Gear, words: str) -> None:
    """As at the top: a sling laid double through its fitting leaves it in two parts, here 100° apart."""
    ev = lying(fitting=fitting, hitch=Hitch.DOUBLED, part_angle_deg=50.0, stop=Stop.COLLAR)
    found = ev.check("bottom_fitting_strength[left]")
    assert found.verdict is Verdict.CANNOT and words in str(found.stopped)


@pytest.mark.parametrize("pull", [None, *ShacklePull])
@pytest.mark.parametrize("on_pin", [None, *OnPin])
def test_no_answer_about_a_shackle_makes_a_lift_looser_than_none(
    pull: ShacklePull | None, on_pin: OnPin | None
) -> None:
    said = {name: value for name, value in (("shackle_pull", pull), ("shackle_pin", on_pin)) if value is not None}
    before, after = lying(), lying(**said)
    for check in before.checks:
        now = after.check(check.name)
        if isinstance(check.outcome, Strength) and isinstance(now.outcome, Strength):
            assert now.outcome.capacity <= check.outcome.capacity, check.name
        else:
            assert now.verdict.rank >= check.verdict.rank, check.name
