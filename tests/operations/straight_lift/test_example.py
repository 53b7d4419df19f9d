"""The complete example of the operation is accepted, comes out, and says what it rests on."""

from checklist_app.operations.assumed import assumptions
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.inline import from_json
from checklist_app.operations.straight_lift import EXAMPLE, TABLE
from checklist_app.operations.task import Measured, Task
from tests.operations.straight_lift.lifts import lift

NAMES = (
    "edge", "temperature", "chemicals_resisted", "slip", "hoist_strength", "load_cell_strength",
    "hook_fitting_strength", "sling_strength", "pair_strength", "top_fitting_strength", "bottom_fitting_strength",
    "eye_strength", "eye_marking", "carrier_strength", "leg_angle", "stability", "tilt_along", "tilt_across",
    "tilt_agrees", "headroom", "room", "mass_agrees", "eye_stays_in", "hook_hoist_strength",
    "hook_load_cell_strength", "hook_plumb", "hook_hoist_usable", "hook_load_cell_usable", "push_stability",
    "legs_carry", "leg_upright", "angle_agrees", "sharing", "wind_stability", "wind_tilt", "wind_limit",
    "swing_limit", "swing_stability", "side_room", "hook_together", "running_depth", "running_holds", "running_push",
    "running_sway", "running_wind", "stiff", "zone", "tag_line_pull", "tag_line_reach", "hoist_usable",
    "load_cell_usable", "hook_fitting_usable", "sling_usable", "top_fitting_usable", "bottom_fitting_usable",
    "eye_usable",
)


def example() -> Task:
    return from_json(TABLE, EXAMPLE)


def test_the_example_comes_out_without_anything_missing() -> None:
    ev = assess(TABLE, example())
    assert ev.verdict in (Verdict.WITHIN, Verdict.CLOSE)
    told = {check.verdict for check in ev.checks}
    assert told <= {Verdict.WITHIN, Verdict.CLOSE, Verdict.NOT_APPLICABLE}


def test_the_names_of_the_checks_are_these_and_no_other() -> None:
    assert TABLE.checks == NAMES


def test_the_length_of_a_sling_by_its_tag_is_an_assumption_and_only_where_it_is_used() -> None:
    by_tag = [line for line in assumptions(assess(TABLE, example())) if "tag says" in line]
    measured = [line for line in assumptions(assess(TABLE, lift())) if "tag says" in line]
    assert len(by_tag) == 2 and all("0 ± 0.02 (house value)" in line for line in by_tag)
    assert measured == []


def test_a_mass_that_was_weighed_says_how_far_it_may_lie_off() -> None:
    ev = assess(TABLE, lift(mass_kg=Measured(1000.0, "weighed")))
    (line,) = [line for line in assumptions(ev) if "mass of the load" in line]
    assert "weighed, up to 1030 kg (house value)" in line


def test_a_margin_that_an_estimate_may_not_claim_is_told_with_what_is_taken_instead() -> None:
    ev = assess(TABLE, lift(mass_kg=Measured(1000.0, "estimate", 0.0)))
    (line,) = [line for line in assumptions(ev) if "mass of the load" in line]
    assert "± 0 kg; all the same up to 1250 kg (house value)" in line
