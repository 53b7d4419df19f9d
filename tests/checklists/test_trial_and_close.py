"""The trial as rows, what it weighed adopted, and the four ways in which a task ends."""
from dataclasses import replace

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.answer import answer
from checklist_app.checklists.closing import ABANDONED, COMPLETED, STOPPED, UNSIGNED
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.running import running
from checklist_app.checklists.trials import adopted_mass_kg, next_row, trials
from tests.checklists.yard import RIGGER, SUPERVISOR, TASK, Yard, request, sent, sign

TRIAL, MOVE, CLOSE = (f"/tasks/{TASK}/{stage}" for stage in ("trial", "move", "close-out"))


@pytest.fixture
def released() -> Yard:
    yard = Yard().ready()
    sign(yard, "release", SUPERVISOR)
    return yard


@pytest.fixture
def landed(released: Yard) -> Yard:
    released.trial()
    sign(released, "trial_accepted", SUPERVISOR)
    return released.ticked("move", "close-out")


def page(yard: Yard, path: str) -> str:
    given = answer(request(yard, path), yard.world)
    assert given.status == 200
    return given.html


def test_the_trial_is_behind_the_release_and_then_written_down_row_by_row() -> None:
    yard = Yard().ready()
    assert "Held: release" in page(yard, TRIAL) and 'aria-disabled="true"' in page(yard, TRIAL)
    sign(yard, "release", SUPERVISOR)
    assert "Held" not in page(yard, TRIAL) and "Write down a trial lift" in page(yard, TRIAL)
    assert sent(yard, TRIAL, act="add").location == f"{TRIAL}?step=lifted.01-1"
    given = sent(yard, f"{TRIAL}?step=lifted.01-1", **{
        "trial/01-1/lifted_mm": "50", "trial/01-1/hook_load_kg": "", "trial/01-1/hook_load_kg.not_used": "yes",
        "trial/01-1/tilt_along_deg": "1,2", "trial/01-1/tilt_along_deg.how": "inclinometer"})
    assert given.status == 303 and len(given.keep) == 3
    (found,) = trials(running(yard.world, TASK))
    assert (found.number, found.lifted, found.hook_load, found.tilt_along) == ("1", "50 mm", "no load cell", "1.2°")
    assert "planned 898 kg" in page(yard, TRIAL)


def test_ten_trials_come_in_their_order(released: Yard) -> None:
    for _ in range(11):
        sent(released, TRIAL, act="add")
    now = running(released.world, TASK)
    assert [each.number for each in trials(now)] == [str(number) for number in range(1, 12)]
    assert next_row(now) == "12-12"


def test_adopting_a_trial_takes_the_rigging_off_and_voids_what_was_signed(released: Yard) -> None:
    released.trial()
    released.say("trial/01-1/hook_load_kg", values.number("920", "kg", "load cell"))
    now = running(released.world, TASK)
    assert adopted_mass_kg(now, "01-1") == "912"  # 920 less 8.1 of slings, fittings and eyes, rounded up
    assert "Adopt trial 1: the load has 912 kg" in page(released, TRIAL)
    sent(released, TRIAL, act="adopt")
    now = running(released.world, TASK)
    assert now.folded.values[("mass_kg",)] == values.number("912", "kg", "weighed")
    (signed,) = hold_states(released.world, now)[0].sign_offs
    assert signed.void == ("mass of the load changed: 890 kg from the register to 912 kg, weighed",)


def test_the_load_cell_does_not_weigh_itself(released: Yard) -> None:
    released.pick("load_cell", "gear/C-1")
    released.trial()
    released.say("trial/01-1/hook_load_kg", values.number("920", "kg", "load cell"))
    assert adopted_mass_kg(running(released.world, TASK), "01-1") == "912"


def test_without_a_load_cell_there_is_nothing_to_adopt(released: Yard) -> None:
    released.trial()
    assert adopted_mass_kg(running(released.world, TASK), "01-1") == ""
    assert "Adopt trial" not in page(released, TRIAL)
    assert not sent(released, TRIAL, act="adopt").keep


def test_going_up_is_behind_the_hold_and_setting_down_is_not(released: Yard) -> None:
    held = page(released, MOVE)
    assert "Held: trial accepted" in held and "way_clear" not in held and 'name="landed"' in held
    assert 'name="landed"' in page(released, f"{MOVE}?step=way")
    released.trial()
    sign(released, "trial_accepted", SUPERVISOR)
    assert 'name="way_clear"' in page(released, MOVE)
    released.pick("leg/2-right/sling", "gear/R-3")
    void = page(released, MOVE)
    assert "2 sign-offs void: right sling changed: R-2 to R-3." in void and 'name="landed"' in void
    assert "Lower to the last safe place." in void and 'name="way_clear"' not in void


def test_a_lift_that_went_as_signed_is_completed(landed: Yard) -> None:
    given = sent(landed, CLOSE, act="close", closing=COMPLETED)
    rig, entry = given.keep
    assert (rig.about, rig.path, rig.value["task"]) == (("load", "L-1"), ("last_rig",), TASK)
    assert (entry.path, entry.value) == (("closing",), {"type": "closing", "text": COMPLETED})
    closed = page(landed, CLOSE)
    assert "Completed" in closed and "Closed by Milo Harke" in closed
    assert sign(landed, "release", SUPERVISOR).status == 409


@pytest.mark.parametrize(("text", "said", "words"), [
    (COMPLETED, "", "Not every sign-off stands."),
    (UNSIGNED, "no time", "It does not stand on its landing place yet."),
    (STOPPED, "wind", "Nobody has stopped it"),
    (ABANDONED, "", "Say why, in a sentence."),
    ("", "", "Choose how it ended."),
    ("finished", "x", "Choose how it ended."),
])
def test_a_closing_that_is_not_true_is_refused_in_words(released: Yard, text: str, said: str, words: str) -> None:
    given = sent(released, CLOSE, act="close", closing=text, words=said)
    assert given.status == 422 and words in given.html and not given.keep
    assert said in given.html


def test_a_refused_lift_is_abandoned_with_its_reason() -> None:
    yard = Yard().planned()
    yard.say("mass_kg", values.number("9000", "kg", "weighed"))
    given = sent(yard, CLOSE, act="close", closing=ABANDONED, words="Too heavy for the hoist")
    assert given.status == 303 and "Too heavy for the hoist" in page(yard, CLOSE)


def test_a_stopped_lift_that_was_landed_is_closed_as_stopped(landed: Yard) -> None:
    sent(landed, f"/tasks/{TASK}/stop", stop="yes")
    assert sent(landed, CLOSE, act="close", closing=COMPLETED).status == 422
    assert sent(landed, CLOSE, act="close", closing=STOPPED, words="A sling slipped").status == 303


def test_what_was_moved_on_a_void_sign_off_is_not_completed(landed: Yard) -> None:
    landed.pick("leg/2-right/sling", "gear/R-3")
    assert sent(landed, CLOSE, act="close", closing=COMPLETED).status == 422
    assert sent(landed, CLOSE, act="close", closing=UNSIGNED, words="Changed the sling on the way").status == 303


def test_what_was_seen_is_kept_with_or_without_a_load_cell(landed: Yard) -> None:
    given = sent(landed, f"{CLOSE}?step=found", RIGGER, seen_hook_load_kg="", **{
        "seen_hook_load_kg.not_used": "yes", "seen_tilt_deg": "1.5", "went": "something was different",
        "odd": "It turned a little"})
    assert given.status == 303
    assert {entry.path[0] for entry in given.keep} == {"seen_hook_load_kg", "seen_tilt_deg", "went", "odd"}


def test_an_answer_at_close_out_opens_the_closing_that_waited_for_it(released: Yard) -> None:
    """Without the page being fetched anew: what somebody began to write below stays."""
    released.trial()
    sign(released, "trial_accepted", SUPERVISOR)
    released.ticked("move")
    assert "First: how did it go" in page(released, CLOSE).lower().replace("first:", "First:")
    asked = replace(request(released, CLOSE, went="as planned"), fragment=True)
    given = answer(asked, released.world)
    assert [entry.path for entry in given.keep] == [("went",)]
    ways = given.html[given.html.index('id="closing-ways" hx-swap-oob="true"'):]
    assert "First:" not in ways and 'name="words"' not in given.html
    completed = ways[ways.index('value="completed"'):ways.index("Completed.")]
    assert "disabled" not in completed
