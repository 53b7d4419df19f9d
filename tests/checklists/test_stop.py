"""Stop is one tap by anybody; going on takes a supervisor with a reason, and what was signed does not carry over."""
import pytest

from checklist_app.checklists import values
from checklist_app.checklists.answer import answer
from checklist_app.checklists.entry import make
from checklist_app.checklists.holds import HoldState, hold_states
from checklist_app.checklists.running import NotBegun, running, under_way
from checklist_app.checklists.stops import stops
from tests.checklists.yard import DAY, RIGGER, RUN_OUT, SECOND, SUPERVISOR, TASK, Yard, request, sent, sign

STOP, GO_ON = f"/tasks/{TASK}/stop", f"/tasks/{TASK}/go-on"


def states(yard: Yard) -> tuple[HoldState, ...]:
    return hold_states(yard.world, running(yard.world, TASK))


def stopped(yard: Yard) -> bool:
    return bool(stops(running(yard.world, TASK).folded))


def stop(yard: Yard, who: str = RIGGER) -> None:
    assert sent(yard, STOP, who, stop="yes").location == STOP


def go_on(yard: Yard, who: str = SUPERVISOR, reason: str = "The zone is clear again") -> int:
    return sent(yard, GO_ON, RIGGER, who, signer=who, reason=reason).status


@pytest.fixture
def accepted() -> Yard:
    yard = Yard().ready()
    sign(yard, "release", SUPERVISOR)
    yard.trial()
    sign(yard, "trial_accepted", SUPERVISOR)
    assert all(state.open for state in states(yard))
    return yard


def test_one_tap_stops_and_a_second_tap_adds_nothing(accepted: Yard) -> None:
    stop(accepted)
    count = len(accepted.entries)
    stop(accepted)
    assert stopped(accepted) and len(accepted.entries) == count
    page = answer(request(accepted, STOP), accepted.world).html
    assert "Stopped" in page and "by Milo Harke" in page and "Lower the load to the last safe place." in page


def test_why_can_wait_and_voids_nothing(accepted: Yard) -> None:
    stop(accepted)
    given = sent(accepted, STOP, act="why", stop_why="it hangs crooked", stop_note="to the left")
    assert given.status == 303 and {entry.path for entry in given.keep} == {("stop_why",), ("stop_note",)}
    assert not any(state.void for state in states(accepted))
    assert "it hangs crooked" in answer(request(accepted, GO_ON), accepted.world).html


def test_while_it_is_stopped_nobody_signs(accepted: Yard) -> None:
    stop(accepted)
    assert sign(accepted, "trial_accepted", SUPERVISOR).status == 409


def test_going_on_voids_what_was_not_used_up_and_leaves_what_was(accepted: Yard) -> None:
    stop(accepted)
    assert "1 sign-off will be void" in answer(request(accepted, STOP), accepted.world).html
    assert go_on(accepted) == 303 and not stopped(accepted)
    release, trial = states(accepted)
    assert release.open and not release.void
    assert [reason.endswith("it needs a new sign-off") for reason in trial.void[0].void] == [True]
    assert sign(accepted, "trial_accepted", SUPERVISOR).status == 303
    assert all(state.open for state in states(accepted))


def test_before_the_trial_is_accepted_going_on_voids_the_release() -> None:
    yard = Yard().ready()
    sign(yard, "release", SUPERVISOR)
    stop(yard)
    assert go_on(yard) == 303
    assert states(yard)[0].void and not states(yard)[0].open


def test_after_landing_going_on_voids_nothing(accepted: Yard) -> None:
    accepted.say("landed", values.tick("yes"))
    stop(accepted)
    assert go_on(accepted) == 303
    assert all(state.open for state in states(accepted))


def test_a_later_stop_does_not_bring_back_what_the_first_one_voided(accepted: Yard) -> None:
    stop(accepted)
    go_on(accepted)
    stop(accepted, SECOND)
    assert stopped(accepted)
    go_on(accepted, SECOND)
    assert states(accepted)[1].void and not stopped(accepted)


@pytest.mark.parametrize(("who", "reason", "words"), [
    (RIGGER, "clear", "Milo Harke is not a supervisor today."),
    (RUN_OUT, "clear", "Benno Clay is not a supervisor today."),
    (SUPERVISOR, "", "Say in a few words why work may go on."),
])
def test_only_a_supervisor_with_a_reason_goes_on(accepted: Yard, who: str, reason: str, words: str) -> None:
    stop(accepted)
    given = sent(accepted, GO_ON, RIGGER, who, signer=who, reason=reason)
    assert given.status == 422 and words in given.html and not given.keep and stopped(accepted)


def test_two_people_stop_and_one_going_on_that_saw_both_ends_both(accepted: Yard) -> None:
    stop(accepted)
    accepted.say("stop", {"type": "stop"}, SECOND, replaces=())
    assert len(stops(running(accepted.world, TASK).folded)) == 2
    go_on(accepted)
    assert not stopped(accepted)


def test_a_stop_that_the_supervisor_did_not_see_still_stands(accepted: Yard) -> None:
    stop(accepted)
    given = answer(request(accepted, GO_ON, RIGGER, SUPERVISOR, signer=SUPERVISOR, reason="clear"), accepted.world)
    accepted.say("stop", {"type": "stop"}, SECOND, replaces=())
    accepted.entries.extend(given.keep)
    accepted.parts.update(given.parts)
    assert stopped(accepted)


@pytest.mark.parametrize("value", [
    values.withdrawn(), values.tick("no"), {"type": "go_on", "part": "0" * 64}, values.choice("gone on"),
])
def test_nothing_a_rigger_says_ends_a_stop(accepted: Yard, value: values.Value) -> None:
    stop(accepted)
    accepted.say("stop", value, RIGGER)
    assert stopped(accepted)


@pytest.mark.parametrize("value", [values.withdrawn(), values.choice("none"), {"type": "stop"}])
def test_nothing_but_a_signature_takes_the_place_of_a_signature(accepted: Yard, value: values.Value) -> None:
    accepted.say("holds/release/supervisor", value, RIGGER)
    assert states(accepted)[0].open


def test_a_second_beginning_changes_nothing_and_a_task_without_one_breaks_no_page(accepted: Yard) -> None:
    about = ("task", "t-d-x-7")
    begin = {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"}
    accepted.entries.append(make(about, ("begin",), begin, (), RIGGER, "d-x", 7, f"{DAY}T08:00:00Z"))
    other = {**begin, "procedure": "none/9"}
    accepted.entries.append(make(about, ("begin",), other, (), RIGGER, "d-y", 9, f"{DAY}T08:00:00Z"))
    accepted.entries.append(make(("task", "t-z"), ("begin",), other, (), RIGGER, "d-y", 10, f"{DAY}T08:00:00Z"))
    assert running(accepted.world, "t-d-x-7").procedure.key == "straight_lift/1"
    with pytest.raises(NotBegun):
        running(accepted.world, "t-z")
    assert {now.id for now in under_way(accepted.world)} == {TASK, "t-d-x-7"}
    assert answer(request(accepted, "/tasks/t-z"), accepted.world).status == 404
