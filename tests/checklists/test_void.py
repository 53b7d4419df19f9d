"""A sign-off is void exactly when what is there is not what was signed, and every reason is a sentence."""
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from checklist_app.checklists import values
from checklist_app.checklists.holds import HoldState, hold_states, void_words
from checklist_app.checklists.running import running
from checklist_app.checklists.void import judged_otherwise
from tests.checklists.yard import PLANNER, RIGGER, SECOND, SUPERVISOR, TASK, Yard, sign


def states(yard: Yard) -> tuple[HoldState, ...]:
    return hold_states(yard.world, running(yard.world, TASK))


def void(yard: Yard, hold: int = 0) -> tuple[str, ...]:
    found = states(yard)[hold].sign_offs
    assert found
    return tuple(reason for each in found for reason in each.void)


@pytest.fixture
def released() -> Yard:
    yard = Yard().ready()
    assert sign(yard, "release", SUPERVISOR).status == 303
    assert states(yard)[0].open
    return yard


def test_a_fresh_sign_off_is_not_void(released: Yard) -> None:
    assert void(released) == () and states(released)[0].signed


def test_a_changed_sling_voids_with_a_sentence_and_taking_it_back_heals(released: Yard) -> None:
    released.pick("leg/2-right/sling", "gear/R-3")
    assert void(released) == ("right sling changed: R-2 to R-3",)
    assert void_words(states(released)) == ("1 sign-off void: right sling changed: R-2 to R-3",)
    assert not states(released)[0].open
    released.pick("leg/2-right/sling", "gear/R-2")
    assert void(released) == () and states(released)[0].open


def test_signing_again_heals_too(released: Yard) -> None:
    released.pick("leg/2-right/sling", "gear/R-3")
    released.say("leg/2-right/sling_felt", values.tick("no"))
    released.say("leg/2-right/sling_felt", values.tick("yes"))
    assert sign(released, "release", SUPERVISOR).status == 303
    assert void(released) == () and len(states(released)[0].sign_offs) == 1


def test_the_same_answer_given_again_voids_nothing(released: Yard) -> None:
    released.say("lift_height_m", values.number("0.5", "m", "tape"), SECOND)
    released.text("signaller", "Dunja Fell", SECOND)
    assert void(released) == ()


def test_a_weaker_sling_says_both_the_change_and_what_became_worse(released: Yard) -> None:
    released.pick("leg/2-right/sling", "gear/R-4")
    said = void(released)
    assert said[0] == "right sling changed: R-2 to R-4"
    assert any("sling, by its own pull" in each and "within limit became" in each for each in said[1:])


def test_a_row_added_voids_and_its_removal_heals(released: Yard) -> None:
    released.say("leg/3-mid", values.row("present"))
    assert "mid leg changed: no answer to present" in void(released)
    released.say("leg/3-mid", values.row("absent"))
    assert void(released) == ()


def test_two_answers_void_and_settling_on_the_signed_one_heals(released: Yard) -> None:
    released.say("lift_height_m", values.number("0.9", "m", "tape"), SECOND, replaces=())
    assert void(released)[0] == "height of the underside over the floor, at the highest moment: two answers stand"
    released.say("lift_height_m", values.number("0.5", "m", "tape"), RIGGER)
    assert void(released) == ()


def test_quarantine_voids_by_name_and_a_release_by_another_person_heals(released: Yard) -> None:
    released.put(("gear", "R-1"), ("quarantine",), values.quarantine("2026-11-25"), RIGGER)
    assert void(released) == ("R-1: in quarantine: no reason given",)
    released.put(("gear", "R-1"), ("quarantine",), values.release(), RIGGER)
    assert void(released), "his own release counts for nothing"
    released.put(("gear", "R-1"), ("quarantine",), values.release(), SUPERVISOR)
    assert void(released) == ()


def test_an_earlier_due_date_voids(released: Yard) -> None:
    released.put(("gear", "E-2"), ("examination",), values.examination("ok", "2026-11-01", "2026-11-20"), SUPERVISOR)
    assert "E-2: overdue since 2026-11-20" in void(released)


def test_a_corrected_rating_in_the_register_does_not_touch_what_was_picked(released: Yard) -> None:
    released.item("gear", "R-1", "round_sling", {"wll_t": "0.1", "length_m": "1.50", "mass_kg": "1.3", "marked": "yes",
                                                 "origin": "bought"})
    assert void(released) == ()
    released.pick("leg/1-left/sling", "gear/R-1")
    assert any(each.startswith("left sling, by its own pull") for each in void(released))


def test_photos_remarks_and_trials_void_nothing(released: Yard) -> None:
    released.photo("zone_photo")
    released.photo("rigged_photo")
    released.text("odd", "nothing")
    released.trial(tilt="9")
    assert void(released) == ()


def test_a_trial_voids_what_was_accepted_before_it(released: Yard) -> None:
    released.trial()
    assert sign(released, "trial_accepted", SUPERVISOR).status == 303
    assert states(released)[1].open
    released.say("trial/01-1/tilt_along_deg", values.number("2.5", "°", "inclinometer"))
    assert void(released) == ()
    assert void(released, 1)[0] == (
        "trial 1, tilt lengthwise changed: 0.4°, read on an inclinometer to 2.5°, read on an inclinometer")


def test_adopting_what_the_trial_weighed_voids_the_release(released: Yard) -> None:
    released.say("mass_kg", values.number("905", "kg", "weighed"))
    assert void(released) == ("mass of the load changed: 890 kg from the register to 905 kg, weighed",)


def test_an_update_of_the_app_voids_nothing_and_says_what_it_judges_otherwise(released: Yard) -> None:
    now = running(released.world, TASK)
    (signed,) = states(released)[0].sign_offs
    assert judged_otherwise(now, signed.statement) == ()
    older = [{**check, "verdict": "close to limit"} if check["name"] == "hoist_strength" else check
             for check in signed.statement["evaluation"]["checks"]]
    evaluation = {**signed.statement["evaluation"], "checks": older}
    assert judged_otherwise(now, {**signed.statement, "evaluation": evaluation}) == (
        "hoist: signed as close to limit, this version says within limit",)


def test_a_signature_for_one_shift_ends_with_the_day_and_is_not_void(released: Yard) -> None:
    released.today = "2026-11-26"
    state = states(released)[0]
    assert state.signed and not state.open and not state.void
    assert state.expired.startswith("Signed on 25 November 2026, for that day only")


def test_every_statement_can_be_evaluated_again_from_itself_alone(released: Yard) -> None:
    from checklist_app.checklists.again import evaluated_statement
    from checklist_app.checklists.authority import statement_of
    from checklist_app.checklists.canonical import canonical
    from checklist_app.checklists.statement import evaluation

    (signed,) = states(released)[0].sign_offs
    kept = statement_of(signed.entry, released.world)
    assert kept is not None and canonical(kept) == released.parts[signed.entry.value["statement"]]
    assert evaluation(evaluated_statement(kept).report) == kept["evaluation"]
    assert kept["meaning"].startswith("I looked at load, gear, numbers and zone.")
    assert {row["entry"] for row in kept["inputs"]} <= {entry.digest for entry in released.entries}


change = st.sampled_from([
    "photo", "trial", "remark", "mass", "mass back", "sling", "sling back", "quarantine", "free", "tick", "tick back",
    "row", "row back", "same",
])


@settings(max_examples=25)
@given(st.lists(change, max_size=6))
def test_void_exactly_when_what_is_there_is_not_what_was_signed(changes: list[str]) -> None:
    yard = Yard().ready()
    yard.say("mass_kg", values.number("890", "kg", "weighed"))
    sign(yard, "release", SUPERVISOR)
    differs = dict.fromkeys(("mass", "sling", "tick", "row", "quarantine"), False)
    for what in changes:
        name, back = what.removesuffix(" back"), what.endswith(" back")
        if name in differs:
            differs[name] = not back
        if name == "mass":
            yard.say("mass_kg", values.number("890" if back else "905", "kg", "weighed"))
        elif name == "sling":
            yard.pick("leg/2-right/sling", "gear/R-2" if back else "gear/R-3")
        elif name == "tick":
            yard.say("zone_closed", values.tick("yes" if back else "no"))
        elif name == "row":
            yard.say("leg/3-mid", values.row("absent" if back else "present"))
        elif name == "quarantine":
            yard.put(("gear", "E-1"), ("quarantine",), values.quarantine("2026-11-25"), RIGGER)
        elif name == "free":
            differs["quarantine"] = False
            yard.put(("gear", "E-1"), ("quarantine",), values.release(), PLANNER)
        elif name == "photo":
            yard.photo("zone_photo")
        elif name == "trial":
            yard.trial(tilt="7")
        elif name == "remark":
            yard.text("odd", what)
        else:
            yard.say("zone_closed", yard_value(yard, "zone_closed"), SECOND)
    assert bool(void(yard)) == any(differs.values())


def yard_value(yard: Yard, path: str) -> values.Value:
    return running(yard.world, TASK).folded.values[(path,)]
