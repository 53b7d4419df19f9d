"""What a lift weighed and found is offered to the register before the task is closed; a supervisor keeps it."""
import pytest

from checklist_app.checklists import values
from checklist_app.checklists.answer import answer
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.running import running
from checklist_app.operations.task import Key, Measured
from tests.checklists.yard import RIGGER, SUPERVISOR, TASK, Yard, request, sent, sign

CLOSE = f"/tasks/{TASK}/close-out"


@pytest.fixture
def found() -> Yard:
    yard = Yard().ready()
    yard.say("mass_kg", values.number("912", "kg", "weighed"))
    yard.say("cg_x_m", values.number("0.05", "m", "trial", "0.058"))
    sign(yard, "release", SUPERVISOR)
    yard.trial()
    sign(yard, "trial_accepted", SUPERVISOR)
    return yard.ticked("move", "close-out")


def page(yard: Yard, who: str) -> str:
    return answer(request(yard, CLOSE, who), yard.world).html


def test_what_differs_from_the_register_is_offered(found: Yard) -> None:
    shown = page(found, SUPERVISOR)
    assert "mass of the load: 912 kg, before 890 kg" in shown and "Keep it for this load" in shown
    assert "0.05 m ± 58 mm, before 0.01 m" in shown


def test_nothing_new_is_not_offered() -> None:
    yard = Yard().ready()
    assert "not in the register yet" not in page(yard, SUPERVISOR)
    yard.say("mass_kg", values.number("1200", "kg", "estimate"))
    assert "not in the register yet" not in page(yard, SUPERVISOR)


def test_a_supervisor_keeps_it_with_evidence_and_spread(found: Yard) -> None:
    given = sent(found, CLOSE, SUPERVISOR, act="finding")
    assert [(entry.about, entry.path) for entry in given.keep] == [(("load", "L-1"), ("version",))]
    load = found.world.item("load", "L-1")
    assert load is not None and not load.disputed
    state, other = load.facts["build_states"]
    assert (state["mass_kg"], state["mass_how"], state["mass_on"]) == ("912", "weighed", "2026-11-25")
    assert (state["cg_x_m"], state["cg_z_m"], state["cg_how"], state["cg_off_m"]) == ("0.05", "0.95", "trial", "0.0580")
    assert TASK in state["mass_evidence"] and TASK in state["cg_evidence"]
    assert other["mass_kg"] == "600" and "not in the register yet" not in page(found, SUPERVISOR)


def test_the_next_task_starts_from_it_with_its_spread(found: Yard) -> None:
    sent(found, CLOSE, SUPERVISOR, act="finding")
    found.pick("load", "load/L-1")
    found.say("cg_x_m", {"type": "withdrawn"})
    now = running(found.world, TASK)
    assert now.task.answers[Key("cg_x_m")] == Measured(0.05, "trial", 0.058)


def test_keeping_it_voids_no_signature_of_this_task(found: Yard) -> None:
    sent(found, CLOSE, SUPERVISOR, act="finding")
    now = running(found.world, TASK)
    assert all(not each.void for state in hold_states(found.world, now) for each in state.sign_offs)


def test_a_rigger_is_told_who_can_keep_it(found: Yard) -> None:
    shown = page(found, RIGGER)
    assert "Keep it for this load" not in shown and "A supervisor can keep it" in shown
    assert not sent(found, CLOSE, RIGGER, act="finding").keep
