"""Shackles, hooks, links and eyes get as hot as the slings: their tables count, or it is said that there is none."""

from typing import Any

import pytest

from checklist_app.operations.check import Strength, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import make
from checklist_app.operations.graph import DontKnow
from tests.operations.straight_lift.lifts import NONE, TABLE, hook, lift, shackle
from tests.operations.straight_lift.rigged import link

CHAIN = make("chain_sling", "C", {
    "wll_t": 2.0, "length_m": 1.0, "mass_kg": 1.0, "grade": "grade 8", "size_mm": 8.0
})


def at(degrees_c: Any, **changes: Any) -> Evaluation:
    legs = {"sling": CHAIN, "bottom_fitting": shackle(2.0), "eye": NONE, **changes.pop("legs", {})}
    return assess(TABLE, lift(both=legs, sling_temperature_c=degrees_c, **changes), with_spread=False)


def capacity(ev: Evaluation, name: str) -> float:
    outcome = ev.check(name).outcome
    assert isinstance(outcome, Strength), outcome
    return outcome.capacity


@pytest.mark.parametrize("degrees_c, share", [
    (None, 1.0), (-20.0, 1.0), (200.0, 1.0), (201.0, 0.9), (300.0, 0.9), (301.0, 0.75), (400.0, 0.75),
])
def test_a_shackle_keeps_what_the_table_to_en_13889_leaves_it(degrees_c: float | None, share: float) -> None:
    """A maker's table to EN 13889 and RR-C-271: to 200 °C 100 %, to 300 °C 90 %, to 400 °C 75 %."""
    ev = at(degrees_c)
    assert capacity(ev, "bottom_fitting_strength[left]") == pytest.approx(2.0 * share)
    assert capacity(ev, "hook_fitting_strength") == pytest.approx(4.75 * share)


@pytest.mark.parametrize("degrees_c", [-21.0, 401.0])
def test_outside_its_table_a_shackle_is_not_assessed(degrees_c: float) -> None:
    found = at(degrees_c).check("bottom_fitting_strength[left]")
    assert found.verdict is Verdict.CANNOT and "temperature of the shackle" in str(found.stopped)


@pytest.mark.parametrize("legs, gathers, name, kind", [
    ({"bottom_fitting": hook()}, shackle(), "bottom_fitting_strength[left]", "hooks"),
    ({"top_fitting": hook()}, shackle(), "top_fitting_strength[right]", "hooks"),
    ({}, link(), "hook_fitting_strength", "master links"), ({}, hook(), "hook_fitting_strength", "hooks"),
])
def test_of_hooks_and_links_nothing_is_at_hand_beyond_the_first_step(
    legs: dict[str, Any], gathers: Any, name: str, kind: str
) -> None:
    """From memory, stricter only: grade 8 parts keep their WLL to 200 °C; beyond it nothing was read for them."""
    assert at(200.0, legs=legs, hook_fitting=gathers).check(name).computed
    for degrees_c in (201.0, -21.0):
        found = at(degrees_c, legs=legs, hook_fitting=gathers).check(name)
        assert found.verdict is Verdict.CANNOT and f"is at hand for {kind}" in str(found.stopped)


def test_an_eye_is_for_20_below_to_200_degrees() -> None:
    """DIN 580, ISO 3266."""
    eye = make("eye", "E", {"ratings": [{"up_to_deg": 60.0, "wll_t": 2.0}], "reach_m": 0.05, "mass_kg": 0.5})
    assert capacity(at(200.0, legs={"eye": eye}), "eye_strength[left]") == 2.0
    assert at(201.0, legs={"eye": eye}).check("eye_strength[left]").verdict is Verdict.CANNOT


def frosty(kind: str, coldest_c: float | None, **facts: Any) -> Any:
    stated = {} if coldest_c is None else {"coldest_c": coldest_c}
    return make(kind, "F", {"wll_t": 2.0, "reach_m": 0.1, "mass_kg": 1.0, **facts, **stated})


@pytest.mark.parametrize("kind", ["shackle", "hook"])
@pytest.mark.parametrize("stated_c, degrees_c, holds", [
    (None, -20.0, True), (None, -21.0, False), (-40.0, -40.0, True), (-40.0, -41.0, False), (0.0, -1.0, False),
])
def test_in_frost_a_fitting_carries_down_to_what_its_own_maker_states(
    kind: str, stated_c: float | None, degrees_c: float, holds: bool
) -> None:
    found = at(degrees_c, legs={"bottom_fitting": frosty(kind, stated_c)}).check("bottom_fitting_strength[left]")
    assert found.computed is holds


@pytest.mark.parametrize("stated_c, holds", [(None, False), (-40.0, True)])
def test_an_eye_and_a_link_carry_in_frost_by_their_own_figure(stated_c: float | None, holds: bool) -> None:
    eye = frosty("eye", stated_c, ratings=[{"up_to_deg": 60.0, "wll_t": 2.0}])
    ev = at(-30.0, legs={"eye": eye, "bottom_fitting": NONE}, hook_fitting=frosty("master_link", stated_c))
    for name in ("eye_strength[left]", "hook_fitting_strength"):
        assert ev.check(name).computed is holds, name


def test_a_figure_that_no_maker_states_is_not_read() -> None:
    assert "coldest_c" in make("shackle", "F", {"wll_t": 2.0, "coldest_c": "-90"}).faults


def test_nobody_is_offered_not_to_know_a_temperature_for_which_no_rule_names_a_worst() -> None:
    assert not TABLE.may_not_know("sling_temperature_c")
    assert TABLE.may_not_know("stopping_m") and TABLE.may_not_know("cg_x_m")


def test_where_nobody_knows_how_hot_it_gets_the_slings_say_so_and_the_fittings_stay_as_rated() -> None:
    ev = at(DontKnow())
    assert ev.verdict is Verdict.CANNOT and ev.check("temperature[left]").verdict is Verdict.CANNOT
    assert capacity(ev, "bottom_fitting_strength[left]") == 2.0
