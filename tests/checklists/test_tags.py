"""The stamped tag: what an item may carry stands on it, also where its rating hangs on the angle of the pull."""

from typing import Any

import pytest

from checklist_app.checklists.checked import note
from checklist_app.checklists.register import Item, State
from checklist_app.checklists.tags import tag
from checklist_app.operations.check import Check, Clause, Limit

STEPS = [{"up_to_deg": "0", "wll_t": "1.20"}, {"up_to_deg": "45", "wll_t": "0.86"}]


def item(**facts: Any) -> Item:
    state = State(custody="in service", quarantined=(), since="", due="2027-01-01", overdue=False, due_soon=False)
    return Item("gear", "N-41", "eye", "v", "eye/1", facts, state, "N-41", (), ())


@pytest.mark.parametrize("facts, wll", [
    ({"ratings": STEPS}, "0.86"), ({"ratings": STEPS[:1]}, "1.2"), ({"wll_t": "2", "ratings": STEPS}, "2"),
    ({"ratings": STEPS, "ratings_across": [{"up_to_deg": "45", "wll_t": "0.50"}]}, "0.5"),
    ({"ratings": [*STEPS, {"up_to_deg": "60", "wll_t": "not read"}]}, ""), ({}, ""),
])
def test_an_eye_shows_what_it_carries_whichever_way_it_is_pulled(facts: dict[str, Any], wll: str) -> None:
    assert tag(item(**facts)).wll == wll


def test_the_steps_of_its_rating_stand_beside() -> None:
    assert tag(item(ratings=STEPS)).words.endswith("1.20 t up to 0°, 0.86 t up to 45°")


def test_a_measured_tilt_says_so_beside_its_figure_and_a_planned_one_does_not() -> None:
    clause = Clause("tilt lengthwise", "°", close=1.0, trial_tells=True)
    measured, planned = (Check("tilt_along", "tilt_along", None, clause, Limit(1.2, 3.0, how), Limit(1.4, 3.0, how))
                         for how in (True, False))
    assert note(measured) == "1.2 of 3.0°, measured at the trial, up to 1.4°"
    assert note(planned) == "1.2 of 3.0°, up to 1.4°"
