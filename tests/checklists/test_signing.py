"""Who signs, what keeps everybody from signing, and what a signature leaves behind."""
from dataclasses import replace

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.answer import Verified, answer
from checklist_app.checklists.authority import belongs, statement_of
from checklist_app.checklists.entry import make
from checklist_app.checklists.holds import HoldState, SignOff, hold_states
from checklist_app.checklists.holds import _missing as missing_of
from checklist_app.checklists.ink import shown
from checklist_app.checklists.refusals import refusals
from checklist_app.checklists.running import running
from checklist_app.checklists.signers import MayNot, may_sign
from checklist_app.mechanics.lift_class import LiftClass
from tests.checklists.yard import (
    DAY,
    PLANNER,
    RIGGER,
    RUN_OUT,
    SECOND,
    SUPERVISOR,
    TASK,
    Yard,
    person,
    request,
    sent,
    sign,
)

RELEASE = f"/tasks/{TASK}/holds/release"


def states(yard: Yard) -> tuple[HoldState, ...]:
    return hold_states(yard.world, running(yard.world, TASK))


def first(yard: Yard, hold: int = 0) -> tuple[str, ...]:
    now = running(yard.world, TASK)
    found = hold_states(yard.world, now)
    return tuple(each.words for each in refusals(yard.world, now, found[hold], found[:hold]))


def who(yard: Yard, name: str, hold: int = 0) -> str:
    """The capacity in which somebody signs, or why he does not."""
    now = running(yard.world, TASK)
    try:
        return may_sign(now, hold_states(yard.world, now)[hold], person(name), yard.today).capacity
    except MayNot as words:
        return str(words)


def heavier(yard: Yard, sling: str = "1.1") -> Yard:
    """Slings so small that the lift is no longer routine."""
    for row, name in (("1-left", "R-1"), ("2-right", "R-2")):
        yard.item("gear", name, "round_sling", {"wll_t": sling, "length_m": "1.50", "mass_kg": "1.3", "marked": "yes",
                                                "origin": "bought"})
        yard.pick(f"leg/{row}/sling", f"gear/{name}")
    return yard


def test_nothing_stands_against_signing_a_lift_that_is_ready() -> None:
    assert first(Yard().ready()) == ()


@pytest.mark.parametrize(("path", "value", "words"), [
    ("zone_closed", values.tick("no"), "The zone is closed. Nobody is beneath, nobody between load and wall: no"),
    ("zone_closed", values.tick("cannot_see"), "nobody between load and wall: cannot see it"),
    ("zone_closed", values.withdrawn(), "nobody between load and wall: not answered"),
    ("hook_over", values.choice("to one side of it"), "Where is the hook: to one side of it"),
    ("day", values.date("2026-11-24"),
     "The day of this task is 24 November 2026, today is 25 November 2026: confirm it"),
    ("mass_kg", values.number("9000", "kg", "weighed"), "hoist: over limit"),
    ("mass_kg", values.number("1,250", "kg", "weighed"), "mass of the load cannot be read"),
    ("mass_kg", values.number("nan", "kg", "weighed"), "mass of the load cannot be read"),
    ("leg/1-left/hitch", values.choice("choked"), "left sling, by its own pull: waiting"),
    ("leg/1-left/eye", values.withdrawn(), "left eye, at its angle: waiting"),
    ("leg/1-left/sling_felt", values.tick("no"), "left sling: not looked at and felt"),
    ("leg/3-mid", values.row("present"), "cannot be assessed"),
])
def test_what_stands_against_it_is_said_and_nobody_signs(path: str, value: values.Value, words: str) -> None:
    yard = Yard().ready()
    yard.say(path, value)
    assert any(words in each for each in first(yard)), first(yard)
    for name in (RIGGER, SUPERVISOR, SECOND):
        assert sign(yard, "release", name).status == 409
    assert not states(yard)[0].sign_offs


@pytest.mark.parametrize(("path", "value", "words"), [
    (("quarantine",), values.quarantine(DAY), "R-1 is in quarantine: no reason given"),
    (("examination",), values.examination("ok", "2026-06-01", "2026-11-24"), "R-1 is overdue since 2026-11-24"),
    (("custody",), values.custody("incoming", DAY), "R-1 is incoming"),
    (("custody",), values.custody("scrapped", DAY), "R-1 is scrapped"),
])
def test_gear_that_is_not_fit_for_use_is_signed_by_nobody(
        path: tuple[str, ...], value: values.Value, words: str) -> None:
    yard = Yard().ready()
    yard.put(("gear", "R-1"), path, value, SUPERVISOR)
    assert words in first(yard)
    assert sign(yard, "release", SUPERVISOR).status == 409


def test_own_built_gear_without_its_proofs_is_signed_by_nobody() -> None:
    yard = Yard().ready()
    yard.item("gear", "S-3", "shackle", {"wll_t": "2", "reach_m": "0.06", "mass_kg": "0.7", "marked": "yes",
                                         "origin": "own-built", "drawing_ref": "D-1"})
    yard.pick("leg/1-left/bottom_fitting", "gear/S-3")
    assert any("bottom fitting status: over limit" in each for each in first(yard)), first(yard)
    assert sign(yard, "release", SUPERVISOR).status == 409


def test_two_answers_are_settled_before_anybody_signs() -> None:
    yard = Yard().ready()
    yard.say("lift_height_m", values.number("0.6", "m", "tape"), SECOND, replaces=())
    assert any(each.endswith("two answers stand") for each in first(yard))
    assert sign(yard, "release", SUPERVISOR).status == 409


def test_while_it_is_stopped_nobody_signs() -> None:
    yard = Yard().ready()
    yard.say("stop", {"type": "stop"})
    assert first(yard) == ("It is stopped: a supervisor goes on first",)
    assert sign(yard, "release", SUPERVISOR).status == 409 and not states(yard)[0].sign_offs


def test_an_empty_task_is_signed_by_nobody() -> None:
    yard = Yard()
    yard.say("begin", {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"})
    assert len(first(yard)) > 5
    assert sign(yard, "release", SUPERVISOR).status == 409


def test_the_trial_is_accepted_only_after_release_and_with_what_was_read() -> None:
    yard = Yard().ready()
    assert first(yard, 1) == ("Release is not signed", "No trial lift is written down")
    sign(yard, "release", SUPERVISOR)
    yard.say("trial/01-1", values.row("present"))
    said = first(yard, 1)
    assert "trial 1, tilt lengthwise: not answered" in said and "trial 1, lifted: not answered" in said
    yard.trial(tilt="3.4")
    assert "tilt lengthwise: over limit" in first(yard, 1)
    yard.trial("02-2", tilt="0.5")
    assert first(yard, 1) == ()


def test_a_routine_lift_is_signed_by_its_rigger_and_marked_so() -> None:
    yard = Yard().ready()
    assert states(yard)[0].lift_class is LiftClass.ROUTINE
    assert sign(yard, "release", RIGGER).location == f"/tasks/{TASK}/trial"
    (signed,) = states(yard)[0].standing
    assert (signed.capacity, signed.statement["own_work"]) == ("rigger", True)


def test_a_rigger_who_could_not_see_something_does_not_sign_his_own_lift() -> None:
    yard = Yard().ready()
    yard.say("loose_shaft", values.tick("cannot_see"))
    assert first(yard) == ()
    assert "could not be seen: a supervisor who did not rig it signs" in who(yard, RIGGER)
    assert who(yard, SUPERVISOR) == "supervisor"


def test_a_non_routine_lift_is_signed_by_a_supervisor_who_did_not_rig_it() -> None:
    yard = heavier(Yard().ready(), "0.75")
    assert states(yard)[0].lift_class is LiftClass.NON_ROUTINE, states(yard)[0].seen.report["class"]
    assert who(yard, SUPERVISOR) == "supervisor"
    assert who(yard, PLANNER) == ("Rhona Pike is not a supervisor. Here a supervisor, not the rigger signs.")
    assert "answered" in who(yard, RIGGER) and "Another person signs" in who(yard, RIGGER)
    yard.say("zone_closed", values.tick("yes"), SECOND)
    assert who(yard, SECOND).startswith("Owen Thrale answered The zone is closed")
    assert sign(yard, "release", SECOND).status == 422 and not states(yard)[0].sign_offs


def test_a_complex_lift_takes_planner_and_supervisor_two_persons_neither_the_rigger() -> None:
    yard = heavier(Yard().ready(), "0.69")
    assert states(yard)[0].lift_class is LiftClass.COMPLEX and first(yard) == ()
    assert sign(yard, "release", SECOND).location == RELEASE
    assert not states(yard)[0].signed
    assert "has signed here already" in who(yard, SECOND)
    assert sign(yard, "release", SUPERVISOR).location == f"/tasks/{TASK}/trial"
    assert states(yard)[0].open and {each.capacity for each in states(yard)[0].standing} == {"planner", "supervisor"}


def test_a_capacity_that_has_run_out_signs_nothing() -> None:
    yard = Yard().ready()
    assert who(yard, RUN_OUT) == "Benno Clay was supervisor until 24 November 2026. The register must be renewed first."
    assert sign(yard, "release", RUN_OUT).status == 422 and not states(yard)[0].sign_offs


def test_an_auditor_who_holds_a_capacity_signs_nothing() -> None:
    """The register of people may still say that he was a supervisor before."""
    yard = Yard().ready()
    now = running(yard.world, TASK)
    auditor = replace(person(SUPERVISOR), role="auditor")
    with pytest.raises(MayNot, match="reads records and signs nothing"):
        may_sign(now, states(yard)[0], auditor, yard.today)
    given = answer(replace(request(yard, RELEASE, RIGGER, act="sign", signer=SUPERVISOR, typed="x",
                                   shown=states(yard)[0].seen.fingerprint), verified=Verified(auditor, "pin")),
                   yard.world)
    assert given.status == 422 and not given.keep


def test_the_strictest_class_that_was_signed_says_who_is_missing() -> None:
    """A later version of the app may see the class otherwise; who signed for less does not make it less."""
    entry = make(("task", TASK), ("holds", "release", "supervisor"), values.withdrawn(), (), SUPERVISOR, "d-1", 1,
                 f"{DAY}T08:00:00Z")
    signed = [SignOff(entry, {"lift_class": name, "capacity": "supervisor"}, ()) for name in ("complex", "routine")]
    assert [each.capacities for each in missing_of(signed, LiftClass.ROUTINE)] == [("planner",)]


def test_the_supervisor_signs_on_the_riggers_phone_and_the_entry_is_his() -> None:
    yard = Yard().ready()
    given = sign(yard, "release", SUPERVISOR, signed_in=RIGGER, ink="[[1,2,30,40]]", typed="")
    (entry,) = given.keep
    assert (entry.author, entry.device, entry.value["how"]) == (SUPERVISOR, f"d-{RIGGER}", "pin")
    assert shown(yard.parts[entry.value["ink"]]) == {"path": "M1 2L30 40", "typed": ""}
    signed = statement_of(entry, yard.world)
    assert signed is not None and belongs(entry, signed)
    assert signed["person"] == {"id": SUPERVISOR, "name": "Agata Rusk"} and signed["device"] == f"d-{RIGGER}"


@pytest.mark.parametrize(("form", "pin_of", "words"), [
    ({}, "", "Enter the PIN of the one who signs."),
    ({"signer": SECOND}, SUPERVISOR, "Enter the PIN of the one who signs."),
    ({"signer": ""}, SUPERVISOR, "Choose who it is."),
    ({"typed": ""}, SUPERVISOR, "Draw the signature, or type the name."),
    ({"typed": "", "ink": "[[999,1]]"}, SUPERVISOR, "Draw the signature, or type the name."),
])
def test_a_form_that_lacks_something_is_shown_again_with_the_fault_at_its_field(
        form: dict[str, str], pin_of: str, words: str) -> None:
    yard = Yard().ready()
    filled = {"act": "sign", "signer": SUPERVISOR, "typed": "Agata Rusk", "shown": states(yard)[0].seen.fingerprint}
    given = sent(yard, RELEASE, RIGGER, pin_of, **{**filled, **form})
    assert given.status == 422 and words in given.html and not given.keep


def test_a_wrong_pin_is_said_at_its_field() -> None:
    yard = Yard().ready()
    shown_now = states(yard)[0].seen.fingerprint
    asked = request(yard, RELEASE, act="sign", signer=SUPERVISOR, typed="Agata Rusk", shown=shown_now)
    given = answer(replace(asked, pin_fault="This PIN is not right."), yard.world)
    assert given.status == 422 and "This PIN is not right." in given.html and not given.keep


def test_what_was_drawn_is_still_there_after_a_fault() -> None:
    yard = Yard().ready()
    filled = {"act": "sign", "signer": "", "shown": states(yard)[0].seen.fingerprint, "ink": "[[1,2,30,40]]"}
    assert 'value="[[1,2,30,40]]"' in sent(yard, RELEASE, **filled).html
    assert "<script>" not in sent(yard, RELEASE, **{**filled, "ink": '[["<script>"]]'}).html


def test_what_changed_while_somebody_looked_is_not_signed() -> None:
    yard = Yard().ready()
    before = states(yard)[0].seen.fingerprint
    yard.pick("leg/2-right/sling", "gear/R-3")
    given = sign(yard, "release", SUPERVISOR, shown=before)
    assert given.status == 409 and "Something changed while you looked" in given.html and not given.keep


def test_sent_back_with_words_waits_for_the_rigger_until_he_says_it_is_put_right() -> None:
    yard = Yard().ready()
    assert sent(yard, RELEASE, SUPERVISOR, act="send_back", words="").status == 422
    sent(yard, RELEASE, SUPERVISOR, act="send_back", words="Turn the left eye")
    assert len(states(yard)[0].sent_back) == 1
    page = answer(request(yard, RELEASE), yard.world).html
    assert "Sent back by Agata Rusk." in page and "Turn the left eye" in page
    sent(yard, RELEASE, RIGGER, act="ask_again")
    assert not states(yard)[0].sent_back


def test_a_signature_takes_up_what_was_sent_back() -> None:
    yard = Yard().ready()
    sent(yard, RELEASE, SUPERVISOR, act="send_back", words="Turn the left eye")
    assert len(sign(yard, "release", SUPERVISOR).keep) == 2
    assert not states(yard)[0].sent_back and states(yard)[0].open


def test_a_sign_off_that_differs_from_its_statement_counts_for_nothing() -> None:
    yard = Yard().ready()
    (entry,) = sign(yard, "release", SUPERVISOR).keep
    yard.entries.remove(entry)
    for author, device, path in ((SECOND, entry.device, entry.path), (SUPERVISOR, "d-other", entry.path),
                                 (SUPERVISOR, entry.device, ("holds", "trial_accepted", "supervisor"))):
        yard.entries.append(make(entry.about, path, entry.value, (), author, device, 900, entry.at))
        assert not any(state.sign_offs for state in states(yard))
        yard.entries.pop()
    yard.parts.pop(entry.value["statement"])
    yard.entries.append(entry)
    assert not states(yard)[0].sign_offs


def test_a_sign_off_without_the_capacity_counts_for_nothing() -> None:
    yard = Yard().ready()
    sign(yard, "release", SUPERVISOR)
    assert states(yard)[0].open
    rows = [{"capacity": "supervisor", "until": "2026-11-24"}]
    yard.item("person", SUPERVISOR, "person", {"name": "Agata Rusk", "capacities": rows})
    assert not states(yard)[0].sign_offs
