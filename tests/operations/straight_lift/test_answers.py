"""What the answers do: don't know, spread, trial, gear added up, heights, class, state of the gear."""

from dataclasses import replace

import pytest

from checklist_app.mechanics.lift_class import LiftClass
from checklist_app.operations.check import Limit, State, Verdict, utilisation
from checklist_app.operations.evaluate import assess
from checklist_app.operations.gear import Gear, GearState, make
from checklist_app.operations.graph import Day, DontKnow, NotUsed
from checklist_app.operations.straight_lift.entries import EyesGiven
from checklist_app.operations.task import Measured
from checklist_app.operations.usable import usable
from tests.operations.straight_lift.lifts import TABLE, hoist, lift, pick_point, shackle, sling

SIDES = ("left", "right")


def test_with_the_centre_of_gravity_unknown_along_the_picks_each_leg_carries_all_and_the_trial_tells_the_tilt() -> None:
    """EN 818-6: asymmetric and not assessed, one leg carries all."""
    ev = assess(TABLE, lift(cg_x_m=DontKnow()), with_spread=False)
    for side in SIDES:
        assert utilisation(ev.check(f"sling_strength[{side}]").outcome) == 0.5
    tilt = ev.check("tilt_along")
    assert tilt.found_at_trial and tilt.verdict is Verdict.CLOSE


def test_what_the_unknown_does_not_move_is_not_left_to_the_trial() -> None:
    """A crosswise tilt of 26° is over limit whether or not somebody knows the centre of gravity lengthwise."""
    tilt = assess(TABLE, lift(cg_x_m=DontKnow(), cg_y_m=0.2)).check("tilt_across")
    assert not tilt.found_at_trial and tilt.verdict is Verdict.OVER


def test_with_its_height_unknown_the_centre_of_gravity_may_lie_anywhere_in_the_body() -> None:
    inside = assess(TABLE, lift(cg_z_m=DontKnow(), top_z_m=-0.1), with_spread=False)
    above = assess(TABLE, lift(cg_z_m=DontKnow(), top_z_m=0.2), with_spread=False)
    assert inside.check("stability").verdict is Verdict.WITHIN
    assert above.check("stability").verdict is Verdict.OVER


def test_a_centre_of_gravity_that_may_lie_on_the_line_of_the_picks_is_over_limit() -> None:
    ev = assess(TABLE, lift(cg_z_m=Measured(-0.09, "by eye")))
    assert ev.check("stability").nominal_verdict is Verdict.WITHIN
    assert ev.check("stability").verdict is Verdict.OVER


def test_the_worst_tilt_before_the_trial_reads_close_and_says_that_the_trial_will_tell() -> None:
    ev = assess(TABLE, lift(cg_y_m=Measured(0.0, "trial")))
    tilt = ev.check("tilt_across")
    assert tilt.outcome == Limit(0.0, 3.0)
    assert tilt.worst[0] == pytest.approx(4.289, abs=1e-3)
    assert tilt.trial_will_tell and tilt.verdict is Verdict.CLOSE


@pytest.mark.parametrize("tilt_deg, verdict", [
    (Measured(1.0, "inclinometer"), Verdict.WITHIN), (Measured(1.9, "inclinometer"), Verdict.CLOSE),
    (Measured(2.9, "inclinometer"), Verdict.OVER), (Measured(2.6, "spirit level"), Verdict.OVER),
    (Measured(3.5, "inclinometer"), Verdict.OVER),
])
def test_after_the_trial_the_measured_tilt_with_its_instrument_stands_in_its_place(
    tilt_deg: Measured, verdict: Verdict
) -> None:
    trial = {"hook_load_kg": 1000.0, "tilt_along_deg": tilt_deg, "tilt_across_deg": 0.0}
    ev = assess(TABLE, lift(cg_x_m=Measured(0.5, "by eye"), trials=(trial,)))
    assert ev.check("tilt_along").verdict is verdict


@pytest.mark.parametrize("cg_x_m, cg_y_m, measured, verdict", [
    (0.5, 0.0, (0.0, 0.0), Verdict.WITHIN), (0.5, 0.0, (1.9, 1.9), Verdict.WITHIN),
    (0.5, 0.0, (2.5, 0.0), Verdict.CLOSE),
    (0.7, 0.0, (0.0, 0.0), Verdict.OVER), (0.5, 0.2, (0.0, 0.0), Verdict.OVER), (0.5, 1.5, (0.0, 0.0), Verdict.OVER),
    (DontKnow(), 0.0, (0.0, 0.0), Verdict.NOT_APPLICABLE),
])
def test_a_load_that_hangs_otherwise_than_planned_has_another_geometry_than_the_strengths(
    cg_x_m: object, cg_y_m: float, measured: tuple[float, float], verdict: Verdict
) -> None:
    along, across = measured
    trial = {"hook_load_kg": 1000.0, "tilt_along_deg": along, "tilt_across_deg": across}
    task = lift(cg_x_m=cg_x_m, cg_y_m=cg_y_m, trials=(trial,))
    assert assess(TABLE, task).check("tilt_agrees").verdict is verdict


def test_before_the_trial_there_is_no_tilt_to_compare() -> None:
    assert assess(TABLE, lift()).check("tilt_agrees").verdict is Verdict.NOT_APPLICABLE


def test_the_last_trial_counts() -> None:
    first = {"hook_load_kg": 1200.0, "tilt_along_deg": 5.0, "tilt_across_deg": 0.0}
    last = {"hook_load_kg": 1000.0, "tilt_along_deg": 0.5, "tilt_across_deg": 0.0}
    assert assess(TABLE, lift(trials=(first, last))).verdict is Verdict.WITHIN
    assert assess(TABLE, lift(trials=(last, first))).verdict is Verdict.OVER


def test_a_trial_without_its_tilt_waits_for_it() -> None:
    ev = assess(TABLE, lift(trials=({"hook_load_kg": 1000.0},)))
    assert ev.check("tilt_along").verdict is Verdict.WAITING


@pytest.mark.parametrize("hook_load_kg, verdict", [
    (1000.0, Verdict.WITHIN), (1030.0, Verdict.WITHIN), (1031.0, Verdict.OVER),
    (Measured(1009.0, "load cell"), Verdict.WITHIN), (Measured(1011.0, "load cell"), Verdict.OVER),
    (Measured(1040.0, "load cell"), Verdict.OVER),
    (NotUsed("no load cell"), Verdict.NOT_APPLICABLE),
])
def test_a_hook_load_above_the_plan_means_another_mass_or_something_that_holds_it(
    hook_load_kg: object, verdict: Verdict
) -> None:
    trial = {"hook_load_kg": hook_load_kg, "tilt_along_deg": 0.0, "tilt_across_deg": 0.0}
    assert assess(TABLE, lift(trials=(trial,))).check("mass_agrees").verdict is verdict


def test_the_contingency_is_the_upper_end_of_the_mass_and_nothing_else() -> None:
    check = assess(TABLE, lift(mass_kg=Measured(1000.0, "weighed"))).check("hoist_strength")
    assert utilisation(check.outcome) == pytest.approx(0.2) and utilisation(check.worst) == pytest.approx(0.206)
    assert check.drivers == ("mass_kg",)


@pytest.mark.parametrize("how, away, worst", [
    ("estimate", 0.0, 0.25), ("plate", 10.0, 0.21), ("plate", 400.0, 0.28), ("weighed", 5.0, 0.201),
])
def test_an_own_margin_widens_a_contingency_and_narrows_it_only_for_what_was_weighed(
    how: str, away: float, worst: float
) -> None:
    check = assess(TABLE, lift(mass_kg=Measured(1000.0, how, away))).check("hoist_strength")
    assert utilisation(check.worst) == pytest.approx(worst)


@pytest.mark.parametrize("how, factor", [
    ("weighed", 1.03), ("plate", 1.05), ("drawing", 1.05), ("dry mass", 1.10), ("sister", 1.15), ("calculated", 1.15),
    ("estimate", 1.25),
])
def test_how_the_mass_is_known_sets_its_contingency(how: str, factor: float) -> None:
    check = assess(TABLE, lift(mass_kg=Measured(1000.0, how))).check("hoist_strength")
    assert utilisation(check.worst) == pytest.approx(0.2 * factor)


def test_the_leg_is_sling_and_fittings_where_it_was_not_measured() -> None:
    by_gear = {"leg_length_m": None, "sling": sling(length_m=0.6), "bottom_fitting": shackle(2.0, 0.08, "S-2")}
    ev = assess(TABLE, lift(both=by_gear, eyes_apart_m=0.8, cg_x_m=0.4), with_spread=False)
    assert ev["leg_m[left]"] == pytest.approx(0.68)
    assert ev["leg_angle_deg[left]"] == pytest.approx(36.03, abs=0.005)


def test_a_sling_may_be_two_hundredths_longer_or_shorter_than_its_tag() -> None:
    ev = assess(TABLE, lift(both={"leg_length_m": None}))
    angle = ev.check("leg_angle[left]")
    assert angle.worst[0] > angle.outcome[0]
    assert {"sling_off_tag[left]", "sling_off_tag[right]"} <= set(angle.drivers)
    assert ev.check("tilt_along").worst[0] > 1.0


def test_rigging_is_added_up_from_the_gear_where_nobody_weighed_it() -> None:
    ev = assess(TABLE, lift(rigging_kg=None, load_cell=load_cell()), with_spread=False)
    assert ev["rigging_mass_kg"] == pytest.approx(3.0 + 2.0 + 2 * 1.0 + 2 * 0.5)
    assert ev.check("hoist_strength").outcome[0] == pytest.approx(1.008)


def load_cell(state: GearState | None = None, **facts: object) -> Gear:
    return make("load_cell", "C-1", {"wll_t": 3.0, "reach_m": 0.3, "mass_kg": 3.0, **facts}, state)


def test_a_hoist_whose_plate_counts_its_own_hook_carries_that_too() -> None:
    counts = hoist(hook_counts=True, hook_mass_kg=20.0)
    assert assess(TABLE, lift(hoist=counts), with_spread=False).check("hoist_strength").outcome[0] == 1.02
    unweighed = assess(TABLE, lift(hoist=hoist(hook_counts=True)), with_spread=False).check("hoist_strength")
    assert unweighed.verdict is Verdict.WAITING and "mass of its own hook" in str(unweighed.stopped)


def test_headroom_counts_the_load_as_it_hangs_the_legs_and_every_fitting_up_to_the_saddle() -> None:
    ev = assess(TABLE, lift(load_cell=load_cell()), with_spread=False)
    assert ev["hook_height_m"] == pytest.approx(0.3 + 0.9 + 0.8660254 + 0.3 + 0.1)
    assert ev.check("headroom").outcome[1] == pytest.approx(3.0 - 2.4660254)
    assert ev.check("room").outcome[1] == pytest.approx(4.0 - (0.3 + 1.1))


@pytest.mark.parametrize("left_m, verdict", [
    (0.31, Verdict.WITHIN), (0.29, Verdict.CLOSE), (0.21, Verdict.CLOSE), (0.19, Verdict.OVER), (-0.5, Verdict.OVER),
])
@pytest.mark.parametrize("name", ["headroom", "room"])
def test_headroom_is_close_below_30_centimetres_and_over_below_20(name: str, left_m: float, verdict: Verdict) -> None:
    needed = {"headroom": 0.3 + 0.9 + 0.8660254 + 0.1, "room": 0.3 + 1.1}[name]
    entry = {"headroom": "highest_hook_m", "room": "room_height_m"}[name]
    ev = assess(TABLE, lift(**{entry: needed + left_m}), with_spread=False)
    assert ev.check(name).verdict is verdict


def test_a_tilted_load_reaches_lower_than_a_level_one() -> None:
    level, tilted = (assess(TABLE, lift(cg_x_m=x), with_spread=False) for x in (0.5, 0.56))
    assert tilted["underside_below_hook_m"] > level["underside_below_hook_m"]


def test_eyes_come_from_the_pick_points_of_the_load() -> None:
    left, right = ({"carrier": pick_point(x_m=x, y_m=0.0, z_m=1.2)} for x in (-0.5, 0.5))
    task = lift(
        left, right, eyes_given=EyesGiven.PICK_POINTS, eyes_apart_m=None, right_eye_higher_m=None, cg_x_m=0.0,
        cg_z_m=0.8, bottom_z_m=0.0, top_z_m=1.4,
    )
    ev = assess(TABLE, task, with_spread=False)
    assert ev["leg_angle_deg[left]"] == pytest.approx(30.0) and ev.verdict is Verdict.WITHIN
    assert ev["hook_height_m"] == pytest.approx(0.3 + 1.2 + 0.8660254 + 0.1 + 0.05)


def test_legs_named_right_and_left_are_believed_in_either_order() -> None:
    there = lift({"leg_length_m": 1.1}, {"leg_length_m": 0.9}, cg_x_m=0.6, right_eye_higher_m=0.1)
    back = replace(there, rows={"leg": ("right", "left")})
    ev, turned = assess(TABLE, there, with_spread=False), assess(TABLE, back, with_spread=False)
    for name in ("leg_tension_kn[left]", "leg_tension_kn[right]", "leg_angle_deg[left]", "hung_tilt_along_deg"):
        assert ev[name] == pytest.approx(turned[name], rel=1e-12)


@pytest.mark.parametrize("changes, expected", [
    ({}, LiftClass.ROUTINE),
    ({"hoist": hoist(1.25)}, LiftClass.NON_ROUTINE),
    ({"hoist": hoist(1.05)}, LiftClass.COMPLEX),
    ({"mass_kg": Measured(1000.0, "estimate")}, LiftClass.NON_ROUTINE),
    ({"mass_kg": Measured(1000.0, "sister")}, LiftClass.ROUTINE),
    ({"cg_x_m": DontKnow()}, LiftClass.NON_ROUTINE),
])
def test_the_class_follows_the_worst_utilisation_and_what_is_known(
    changes: dict[str, object], expected: LiftClass
) -> None:
    assert assess(TABLE, lift(**changes))["lift_class"] is expected


GOOD = GearState(custody="in service", due="2027-01-31", marked=True)


@pytest.mark.parametrize("state, holds, words", [
    (GOOD, True, "in service, marked, next examination due 31 January 2027"),
    (GearState("in service", ("cut at the eye",), "2027-01-31", True), False, "in quarantine: cut at the eye"),
    (GearState("at repair", (), "2027-01-31", True), False, "is at repair"),
    (GearState("incoming", (), "", True), False, "is incoming; no examination is entered"),
    (GearState("in service", (), "2026-11-24", True), False, "its examination was due 24 November 2026"),
    (GearState("in service", (), "2026-11-25", True), True, "due 25 November 2026"),
    (GearState("in service", (), "2027-01-31", False), False, "its marking cannot be read"),
    (GearState("in service", (), "2027-01-31", True, ("proof test",), "own-built"), False,
     "own-built, and it lacks proof test"),
])
def test_gear_may_be_used_or_not_in_one_sentence(state: GearState, holds: bool, words: str) -> None:
    found = usable(sling(state=state), Day("2026-11-25"))
    assert found.holds is holds and found.reason.startswith("R-1") and words in found.reason


@pytest.mark.parametrize("until, verdict", [("2026-11-25", Verdict.WITHIN), ("2026-11-24", Verdict.OVER)])
def test_a_load_cell_is_calibrated_on_the_day_or_over_limit(until: str, verdict: Verdict) -> None:
    cell = load_cell(GOOD, calibrated_until=until)
    assert assess(TABLE, lift(load_cell=cell), with_spread=False).check("load_cell_usable").verdict is verdict


def test_gear_out_of_date_makes_the_whole_lift_over_limit() -> None:
    late = sling(state=GearState("in service", (), "2026-10-01", True))
    ev = assess(TABLE, lift({"sling": late}), with_spread=False)
    assert ev.verdict is Verdict.OVER and ev.governs is not None and ev.governs.name == "sling_usable[left]"
    assert ev.check("sling_usable[left]").outcome == State(False, "R-1: its examination was due 1 October 2026")


def test_what_was_typed_in_is_assessed_and_marked_as_nothing_to_sign() -> None:
    check = assess(TABLE, lift(), with_spread=False).check("sling_usable[left]")
    assert check.verdict is Verdict.NOT_APPLICABLE and "cannot be signed" in str(check.stopped)


def test_symmetric_as_entered_stays_symmetric_throughout_the_spread() -> None:
    """Alike as entered, up to 25° apart in the spread: the table judges every sample, its factor 1.0 included."""
    task = lift(both={"sling": sling(1.0)}, mass_kg=1010.0, eyes_apart_m=1.3, cg_x_m=Measured(0.65, "by eye"))
    pair = assess(TABLE, task).check("pair_strength")
    assert pair.outcome[1] == pytest.approx(1.4) and pair.worst[1] == pytest.approx(1.0)
    assert pair.verdict is Verdict.OVER


def test_a_lift_that_is_not_symmetric_as_entered_is_not_judged_by_the_table_anywhere_in_the_spread() -> None:
    task = lift({"leg_length_m": 0.84}, {"leg_length_m": 1.15}, cg_x_m=Measured(0.33, "by eye"))
    assert assess(TABLE, task).check("pair_strength").verdict is Verdict.NOT_APPLICABLE
