"""Trials put the centre of gravity on a line and then on a point; adopting it changes the plan and voids."""
import re
from dataclasses import replace

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.answer import answer
from checklist_app.checklists.finding import finding
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.refusals import refusals
from checklist_app.checklists.running import running
from checklist_app.mechanics.hanging.body import rigging
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.straight_lift.as_hung import AsHung, as_hung, read
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.trial_found import changes_together
from tests.checklists.shop import Shop
from tests.checklists.yard import RIGGER, SUPERVISOR, TASK, Yard, request, sent, sign

TRIAL = f"/tasks/{TASK}/trial"
TRUE_CG = Vec(0.05, 0.0, 0.80)
EYES = (Vec(-0.30, 0.0, 1.60), Vec(0.30, 0.0, 1.60))


@pytest.fixture
def released() -> Yard:
    yard = Yard().ready()
    sign(yard, "release", SUPERVISOR)
    return yard


def hung(yard: Yard, legs_m: tuple[float, float], row: str) -> Yard:
    """A trial written down through its page, as the true load would hang on these legs."""
    for side, leg_m in zip(("1-left", "2-right"), legs_m, strict=True):
        yard.say(f"leg/{side}/leg_length_m", values.number(f"{leg_m:.2f}", "m", "tape"))
    sent(yard, TRIAL, act="add")
    hang = settled(rigging(EYES, legs_m, TRUE_CG))
    along, across = hang.tilt_along_deg, hang.tilt_across_deg
    for name, tilt in (("tilt_along_deg", along), ("tilt_across_deg", across)):
        yard.say(f"trial/{row}/{name}", values.number(f"{abs(tilt):.1f}", "°", "inclinometer"))
    yard.say(f"trial/{row}/low_end", values.choice("left end" if along > 0 else "right end"))
    return yard


def page(yard: Yard) -> str:
    given = answer(request(yard, TRIAL), yard.world)
    assert given.status == 200
    return given.html


def test_a_trial_keeps_the_rig_it_hung_in(released: Yard) -> None:
    sent(released, TRIAL, act="add")
    now = running(released.world, TASK)
    kept = now.folded.values[("trial", "01-1", "as_hung")]["text"]
    assert kept == "-300 0 1600 1560; 300 0 1600 1560; off 32 10" == as_hung(now.evaluation)
    rig = read(kept)
    assert rig is not None and rig.legs_m == (1.56, 1.56) and rig.eyes == EYES


@pytest.mark.parametrize("text", ["", "two slings", "0 0 0 1; off 1", "0 0 0 -5; off 1 1", "0 0 0 0; off 1 1",
                                  "0 0 1 2; 1 1; off 1 1", "off 1 1", "0 0 0 1; off -1 1", "0 0 0 1; on 1 1"])
def test_a_text_that_is_no_rig_is_none(text: str) -> None:
    assert read(text) is None


def test_one_trial_puts_it_on_a_line_at_the_height_known_before(released: Yard) -> None:
    hung(released, (1.5, 1.5), "01-1")
    found = finding(running(released.world, TASK))
    assert found is not None and [each.name for each in found.adopt] == ["cg_x_m", "cg_y_m"]
    x = found.adopt[0]
    assert abs(float(x.text) - TRUE_CG.x) <= float(x.plus_minus) < 0.1
    assert "if it lies 0.95 m high, as known before" in page(released)


def test_two_that_hang_differently_find_the_height_that_nobody_knew(released: Yard) -> None:
    released.say("cg_z_m", values.dont_know())
    hung(released, (1.42, 1.56), "01-1")
    hung(released, (1.56, 1.42), "02-2")
    found = finding(running(released.world, TASK))
    assert found is not None and [each.name for each in found.adopt] == ["cg_x_m", "cg_y_m", "cg_z_m"]
    for each, true in zip(found.adopt, TRUE_CG, strict=True):
        assert abs(float(each.text) - true) <= float(each.plus_minus)
    assert "By trials 1 and 2 the centre of gravity lies" in page(released)


def test_a_height_known_better_than_two_trials_tell_it_stays(released: Yard) -> None:
    hung(released, (1.42, 1.56), "01-1")
    hung(released, (1.56, 1.42), "02-2")
    found = finding(running(released.world, TASK))
    assert found is not None and [each.name for each in found.adopt] == ["cg_x_m", "cg_y_m"]
    assert "too much alike to tell the height better than it was known" in page(released)


def test_two_that_cannot_both_be_true_are_said_to_disagree(released: Yard) -> None:
    hung(released, (1.5, 1.5), "01-1")
    hung(released, (1.42, 1.5), "02-2")
    released.say("trial/02-2/low_end", values.choice("left end"))
    found = finding(running(released.world, TASK))
    assert found is not None and [each.name for each in found.adopt] == ["cg_x_m", "cg_y_m"]
    assert any("One of them was read or written down wrong" in line for line in found.told)


def test_the_change_that_is_told_hangs_it_level(released: Yard) -> None:
    hung(released, (1.5, 1.5), "01-1")
    found = finding(running(released.world, TASK))
    assert found is not None and "it hangs level" in found.changes[0]
    told = re.match(r"Make the (left|right) leg (\d+) mm (longer|shorter)", found.changes[0])
    assert told is not None
    by_m = int(told[2]) / 1000 * (1 if told[3] == "longer" else -1)
    legs = [1.5 + (by_m if side == told[1] else 0.0) for side in ("left", "right")]
    x, y = (float(each.text) for each in found.adopt)
    assert abs(settled(rigging(EYES, legs, Vec(x, y, 0.95))).tilt_deg) < 0.2
    assert "Lower it before anything is changed." in page(released)


def test_a_tilt_without_a_side_tells_nothing_and_asks(released: Yard) -> None:
    hung(released, (1.5, 1.5), "01-1")
    released.say("trial/01-1/low_end", {"type": "withdrawn"})
    found = finding(running(released.world, TASK))
    assert found is not None and not found.adopt and "Which end hung low?" in found.waits
    for unsaid in (values.not_used(), values.dont_know()):
        released.say("trial/01-1/low_end", unsaid)
        asked_again = finding(running(released.world, TASK))
        assert asked_again is not None and "Which end hung low?" in asked_again.waits
    released.say("trial/01-1/low_end", values.choice("neither, it hangs level"))
    found = finding(running(released.world, TASK))
    assert found is not None and not found.adopt and "is not level" in found.waits


def test_adopting_changes_the_plan_and_voids_what_was_signed(released: Yard) -> None:
    hung(released, (1.5, 1.5), "01-1")
    given = sent(released, TRIAL, act="adopt_cg")
    assert [entry.path for entry in given.keep] == [("cg_x_m",), ("cg_y_m",)]
    now = running(released.world, TASK)
    assert now.folded.values[("cg_x_m",)]["how"] == "trial" and now.folded.values[("cg_x_m",)]["plus_minus"]
    (signed,) = hold_states(released.world, now)[0].sign_offs
    assert any("centre of gravity, lengthwise changed" in reason for reason in signed.void)
    assert "The plan has these figures now." in page(released)
    assert "Adopt trial 1: " not in page(released) and not sent(released, TRIAL, act="adopt_cg").keep


def test_an_auditor_only_looks_and_no_trial_adopts_nothing(released: Yard) -> None:
    assert not sent(released, TRIAL, RIGGER, act="adopt_cg").keep


def test_a_trial_of_another_rig_is_not_accepted(released: Yard) -> None:
    """What hung level on other legs says nothing of these: it is lifted anew, whatever the plan says."""
    released.trial()
    for side in ("1-left", "2-right"):
        released.say(f"leg/{side}/leg_length_m", values.number("1.56", "m", "tape"))
    sent(released, TRIAL, act="add")
    released.trial("02-2")
    released.say("trial/02-2/as_hung", values.choice("-300 0 1600 1560; 300 0 1600 1560; off 32 10"))
    assert first(released) == [] and "Eyes or legs were changed" not in page(released)
    released.say("leg/1-left/leg_length_m", values.number("1.58", "m", "tape"))
    assert "Eyes or legs were changed since trial 2: lift it a little again, and write it down" in first(released)
    assert "Eyes or legs were changed since trial 2. It says nothing of the rig as it is now" in page(released)
    released.say("leg/1-left/leg_length_m", values.number("1.56", "m", "tape"))
    assert first(released) == []


def first(yard: Yard) -> list[str]:
    """What comes before the signature under the trial, but for the release, which each change voids."""
    now = running(yard.world, TASK)
    states = hold_states(yard.world, now)
    return [each.words for each in refusals(yard.world, now, states[1], ())]


ROWS = ("1-left_front", "2-right_front", "3-left_rear", "4-right_rear")
CORNERS = tuple(Vec(x, y, 0.36) for x, y in ((-0.8, -0.45), (0.8, -0.45), (-0.8, 0.45), (0.8, 0.45)))


@pytest.mark.parametrize(("cg", "changed"), [
    (Vec(0.12, 0.0, 0.24), [1, 3]), (Vec(0.0, -0.06, 0.24), [0, 1]), (Vec(0.10, 0.05, 0.24), [0, 1, 3]),
])
def test_four_legs_are_levelled_by_the_legs_of_one_end_together(cg: Vec, changed: list[int]) -> None:
    """One leg alone of four goes slack, or lifts a corner."""
    rig = AsHung(CORNERS, (2.0, 2.0, 2.0, 2.0), 0.01, 0.01)
    by_m = changes_together(rig, cg)
    away = [leg for leg, each in enumerate(by_m) if abs(each) >= 0.003]
    assert len(away) == len(changed) and (len(away) > 2 or away in (changed, sorted({0, 1, 2, 3} - set(changed))))
    legs_m = [2.0 + round(each, 3) for each in by_m]
    assert settled(rigging(CORNERS, legs_m, cg)).tilt_deg < 0.1 < settled(rigging(CORNERS, rig.legs_m, cg)).tilt_deg


def test_four_legs_are_told_as_pairs_and_by_their_names() -> None:
    shop = Shop()
    task = shop.begin(load="BF-9", state="bare", rig=Rig.FOUR_LEGS.value)
    for row in ROWS:
        kit = f"/tasks/{task}/kit/leg.{row}"
        shop.post(f"{kit}.sling", {"pick": "gear/C4-81"})
        shop.post(f"{kit}.carrier", {f"leg/{row}/carrier": f"load/BF-9@{row[2:].replace('_', ' ')}"})
        for slot in ("top_fitting", "bottom_fitting", "eye"):
            shop.post(f"{kit}.{slot}", {"not_used": "yes"})
    shop.post(f"/tasks/{task}/numbers?step=legs", {"legs_given": "lengths"})
    shop.post(f"/tasks/{task}/trial", {"act": "add"})
    tilts = {f"trial/01-1/{name}": text for name, text in (
        ("tilt_along_deg", "3.6"), ("tilt_along_deg.how", "inclinometer"), ("low_end", "right end"),
        ("tilt_across_deg", "0.0"), ("tilt_across_deg.how", "inclinometer"), ("low_side", "neither, it hangs level"))}
    shop.post(f"/tasks/{task}/trial?step=lifted.01-1", tilts)
    found = finding(running(shop.world, task))
    assert found is not None
    (told,) = found.changes
    assert re.fullmatch(r"Make the (left|right) front leg (\d+) mm (longer|shorter) and the \1 rear leg \2 mm \3,"
                        " and it hangs level[.]", told), told
    assert "planned 0.6°" in shop.get(f"/tasks/{task}/trial?step=lifted.01-1").html


def test_what_a_trial_tells_stands_there_with_the_last_reading(released: Yard) -> None:
    """Nobody has to leave the page to see what was just read beside the plan."""
    hung(released, (1.5, 1.5), "01-1")
    form = {"trial/01-1/low_side": ("neither, it hangs level",)}
    given = answer(replace(request(released, f"{TRIAL}?step=lifted.01-1"), method="POST", fragment=True, form=form),
                   released.world)
    assert given.status == 200 and 'id="trial-found" hx-swap-oob="true"' in given.html
    assert "By trial 1 the centre of gravity lies" in given.html
    assert 'id="trial-found" aria-labelledby' in page(released)


def test_two_hooks_say_that_a_trial_tells_nothing_here() -> None:
    shop = Shop()
    task = shop.begin(rig=Rig.TWO_HOOKS.value)
    shop.post(f"/tasks/{task}/trial", {"act": "add"})
    found = finding(running(shop.world, task))
    assert found is not None and found.waits.startswith("On two hooks nothing is worked out from a trial here")
