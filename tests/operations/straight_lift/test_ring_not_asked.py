"""How the ring of an eye lies to the pull, where nobody was asked: the lower rating counts, or it waits."""

import pytest

from checklist_app.mechanics.fittings.eye_marking import PullPlane
from checklist_app.operations.check import Check, Strength, Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.gear import Gear, make
from checklist_app.operations.graph import DontKnow
from tests.operations.straight_lift.lifts import TABLE, lift
from tests.operations.straight_lift.rigged import one

STAMPED = {"reach_m": 0.05, "mass_kg": 0.5}
RATED = [{"up_to_deg": 60.0, "wll_t": 2.0}]
BOTH = make("eye", "E", {**STAMPED, "ratings": RATED, "ratings_across": [{"up_to_deg": 60.0, "wll_t": 0.5}]})
ALONG = make("eye", "E", {**STAMPED, "ratings": RATED})
DIN = "DIN 580 or DIN 582, 2010 and later"
COLLAR = "BS 4278 collar eyebolt, metric thread"


def marked(marking: str, stamped_t: float) -> Gear:
    return make("eye", "E", {**STAMPED, "ratings": RATED, "thread": "M20", "marking": marking, "stamped_t": stamped_t})


def of(eye: Gear, name: str = "eye_strength", **said: object) -> Check:
    return assess(TABLE, lift(both={"eye": eye, **said}), with_spread=False).check(f"{name}[left]")


@pytest.mark.parametrize("said, wll_t", [
    ({}, 0.5), ({"eye_turned": PullPlane.ACROSS}, 0.5), ({"eye_turned": PullPlane.IN_PLANE}, 2.0),
    ({"eye_turned": DontKnow()}, 0.5),
])
def test_of_an_eye_that_is_rated_both_ways_the_lower_counts_until_somebody_says(
    said: dict[str, object], wll_t: float
) -> None:
    outcome = of(BOTH, **said).outcome
    assert isinstance(outcome, Strength) and outcome.capacity == wll_t


def test_where_across_is_rated_higher_not_asking_takes_the_other() -> None:
    higher = make("eye", "E", {**STAMPED, "ratings": RATED, "ratings_across": [{"up_to_deg": 60.0, "wll_t": 3.0}]})
    outcome = of(higher).outcome
    assert isinstance(outcome, Strength) and outcome.capacity == 2.0


def test_an_eye_without_a_rating_across_is_judged_along_its_ring_and_the_record_says_so() -> None:
    outcome = of(ALONG).outcome
    assert isinstance(outcome, Strength) and outcome.capacity == 2.0
    assert of(ALONG, eye_turned=PullPlane.ACROSS).verdict is Verdict.CANNOT
    assert "unrated across, along it" in TABLE.entries["eye_turned"].default.reason


def test_by_its_marking_din_holds_any_direction_to_45_and_a_collar_eyebolt_waits_for_the_word() -> None:
    """DIN 580: 0.86 t for M20 to 45°, any direction to the ring; BS 4278: in its plane only, turned by shims."""
    outcome = of(marked(DIN, 1.2), "eye_marking").outcome
    assert isinstance(outcome, Strength) and outcome.capacity == 0.86
    waits = of(marked(COLLAR, 1.6), "eye_marking")
    assert waits.verdict is Verdict.WAITING and "ring of the eye, along the pull or across it" in str(waits.stopped)
    assert of(marked(COLLAR, 1.6), "eye_marking", eye_turned=PullPlane.IN_PLANE).computed


def test_in_line_nobody_needs_to_ask() -> None:
    straight = assess(TABLE, one({"eye": marked(COLLAR, 1.6)}), with_spread=False).check("eye_marking[left]")
    assert straight.computed


def test_over_the_table_the_refusal_is_told_and_not_a_question() -> None:
    gone = of(marked("US metric machinery eyebolt with shoulder", 1.2), "eye_marking", leg_length_m=0.55)
    assert gone.verdict is Verdict.CANNOT
