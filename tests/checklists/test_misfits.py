"""What is no answer to its question is signed by nobody, however it came."""
from collections.abc import Callable
from copy import deepcopy
from typing import Any

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.pages.close_out import course
from checklist_app.checklists.refusals import refusals
from checklist_app.checklists.running import running
from tests.checklists.yard import LOAD, SUPERVISOR, TASK, Yard, sign


def first(yard: Yard) -> tuple[str, ...]:
    """What stands against signing release."""
    now = running(yard.world, TASK)
    found = hold_states(yard.world, now)
    return tuple(each.words for each in refusals(yard.world, now, found[0], ()))


def load(rated: str, **facts: Any) -> dict[str, Any]:
    """The pump, its pick points rated otherwise."""
    made = deepcopy(LOAD) | facts
    for row in made["pick_ratings"]:
        row["wll_t"] = rated
    return made


def another_load(yard: Yard) -> None:
    yard.item("load", "L-2", "load", load("0.2", name="Pump 300"))
    yard.pick("load", "load/L-2")


def the_load_with_new_figures(yard: Yard) -> None:
    yard.item("load", "L-1", "load", load("0.2"))
    yard.pick("load", "load/L-1")


def a_point_of_another_load(yard: Yard) -> None:
    yard.item("load", "L-2", "load", load("9"))
    yard.pick("leg/1-left/carrier", "load/L-2", "left")


def one_sling_for_both_legs(yard: Yard) -> None:
    yard.pick("leg/2-right/sling", "gear/R-1")


def a_sling_for_a_load(yard: Yard) -> None:
    yard.pick("load", "gear/R-3")


def a_load_for_a_place(yard: Yard) -> None:
    yard.pick("place", "load/L-1")


@pytest.mark.parametrize(("change", "words"), [
    (another_load, "what carries the eye, left cannot be read: This is a point of another load"),
    (the_load_with_new_figures, "what carries the eye, right cannot be read: The load was picked anew"),
    (a_point_of_another_load, "what carries the eye, left cannot be read: This is a point of another load"),
    (one_sling_for_both_legs, "right sling cannot be read: R-1 stands in 2 places of the kit"),
    (a_sling_for_a_load, "Which load cannot be read: This is an answer to another question"),
    (a_load_for_a_place, "Where is it lifted cannot be read: This is an answer to another question"),
])
def test_what_was_picked_must_belong_where_it_stands(change: Callable[[Yard], None], words: str) -> None:
    yard = Yard().ready()
    assert first(yard) == ()
    change(yard)
    assert any(each.startswith(words) for each in first(yard)), first(yard)
    assert sign(yard, "release", SUPERVISOR).status == 409


@pytest.mark.parametrize(("path", "value"), [
    ("zone_closed", values.not_used()), ("zone_closed", values.dont_know()), ("zone_closed", values.choice("yes")),
    ("zone_closed", values.number("1", "yes")), ("hook_over", values.tick("yes")), ("hook_over", values.dont_know()),
    ("mass_known", values.choice("I am sure")), ("signaller", values.dont_know()), ("signaller", values.tick("yes")),
    ("load", values.dont_know()), ("build_state", values.dont_know()), ("build_state", values.choice("no such")),
    ("leg/1-left/sling_felt", values.choice("yes")), ("leg/1-left/sling_felt", values.not_used()),
    ("landing", values.tick("yes")), ("loose_pipes", values.choice("yes")),
])
def test_an_answer_of_another_kind_answers_nothing(path: str, value: values.Value) -> None:
    yard = Yard().ready()
    yard.say(path, value)
    assert any("cannot be read" in each for each in first(yard)), first(yard)
    assert sign(yard, "release", SUPERVISOR).status == 409


def test_a_lift_is_completed_only_by_ticks() -> None:
    yard = Yard().ready()
    yard.ticked("move", "close-out")
    assert course(yard.world, running(yard.world, TASK)).missing == ()
    yard.say("secured", values.not_used())
    assert len(course(yard.world, running(yard.world, TASK)).missing) == 1
