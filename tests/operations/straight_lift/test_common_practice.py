"""What riggers of heavy engines say, and what the checks make of it. Common practice, no source."""

import pytest

from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.slings.slip import Face
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.operations.check import Verdict, utilisation
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import make
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.task import Measured, Task
from tests.operations.straight_lift.lifts import TABLE, hoist, lift, sling
from tests.operations.straight_lift.rigged import four, two_hooks

CHOKED = {"hitch": Hitch.CHOKED, "choke_angle_deg": 135.0, "stop": Stop.COLLAR}


def nominal(task: Task) -> Evaluation:
    return assess(TABLE, task, with_spread=False)


def table_share(task: Task) -> float:
    return utilisation(nominal(task).check("pair_strength").outcome) or 0.0


@pytest.mark.parametrize("mass_kg, wll_t, apart_m, share", [
    pytest.param(1000.0, 1.0, 1.0, 1.0 / 1.4, id="1 t on two of 1 t, to 45°: 71 %"),
    pytest.param(1000.0, 1.0, 1.6, 1.0, id="1 t on two of 1 t, over 45°: 100 %"),
    pytest.param(4500.0, 4.0, 1.0, 4.5 / 5.6, id="4.5 t on two of 4 t, to 45°: 80 %"),
    pytest.param(4500.0, 4.0, 1.6, 1.125, id="4.5 t on two of 4 t, over 45°: 112.5 %"),
])
def test_a_tonne_to_spare_is_there_only_for_plumb_legs(
    mass_kg: float, wll_t: float, apart_m: float, share: float
) -> None:
    task = lift(both={"sling": sling(wll_t)}, mass_kg=mass_kg, eyes_apart_m=apart_m, cg_x_m=apart_m / 2.0)
    assert table_share(task) == pytest.approx(share)


def test_the_rigging_s_own_mass_takes_the_last_of_it() -> None:
    task = lift(both={"sling": sling(1.0)}, rigging_kg=20.0, eyes_apart_m=1.6, cg_x_m=0.8)
    assert nominal(task).check("pair_strength").verdict is Verdict.OVER


@pytest.mark.parametrize("apart_m, share", [
    pytest.param(1.0, 1.0 / 1.12, id="choked, to 45°: 1.12 t, 89 %"),
    pytest.param(1.6, 1.25, id="choked, over 45°: 0.8 t, 125 %"),
])
def test_choked_the_pair_carries_a_fifth_less(apart_m: float, share: float) -> None:
    task = lift(both=CHOKED | {"sling": sling(1.0)}, eyes_apart_m=apart_m, cg_x_m=apart_m / 2.0)
    assert table_share(task) == pytest.approx(share)


def test_on_separate_hooks_straight_over_the_eyes_each_strap_carries_half() -> None:
    """1 t on two straps of 1 t with a hook over each: 50 %."""
    ev = nominal(two_hooks(every={"sling": sling(1.0)}, cg_x_m=0.6))
    for side in ("left", "right"):
        assert utilisation(ev.check(f"sling_strength[{side}]").outcome) == pytest.approx(0.5)
        assert utilisation(ev.check(f"hook_hoist_strength[{side}]").outcome) == pytest.approx(0.1)


def basket(kind: str, **changes: object) -> Task:
    facts = {"wll_t": 2.0, "length_m": 1.0, "mass_kg": 1.0, "fibre": "polyester", "grade": "grade 8"}
    known = {"flat_sling": ("wll_t", "length_m", "mass_kg", "fibre"), "chain_sling": (
        "wll_t", "length_m", "mass_kg", "grade")}[kind]
    own = {"sling": make(kind, "S", {name: facts[name] for name in known}), "hitch": Hitch.BASKET,
           "part_angle_deg": 0.0, "stop": Stop.NONE, "face": Face.DRY_AND_CLEAN}
    return lift(both={**own, **changes}, cg_z_m=-0.4)


def test_chain_slides_and_webbing_grips_only_where_somebody_measured_it() -> None:
    """Legs at 30° on a level load need friction 0.58; the published values are alike, so webbing gets no credit."""
    for kind in ("flat_sling", "chain_sling"):
        slip = nominal(basket(kind)).check("slip[left]")
        assert slip.outcome[:2] == (pytest.approx(0.5774, abs=1e-4), 0.1) and slip.verdict is Verdict.OVER
    assert nominal(basket("flat_sling", friction=0.7)).check("slip[left]").verdict is Verdict.WITHIN
    assert nominal(basket("chain_sling", friction=0.15)).check("slip[left]").verdict is Verdict.OVER
    oily = nominal(basket("flat_sling", face=Face.OIL_OR_WATER)).check("slip[left]")
    assert oily.outcome[1] == 0.0 and oily.verdict is Verdict.OVER
    held = nominal(basket("flat_sling", stop=Stop.SHOULDER)).check("slip[left]")
    assert held.verdict is Verdict.NOT_APPLICABLE


def test_without_the_flywheel_the_eyes_are_shifted_to_keep_it_level() -> None:
    """1 t with the centre of gravity 0.2 m nearer the free end once the flywheel is off: other picks level it."""
    as_built, without_flywheel = lift(), lift(cg_x_m=0.7)
    assert nominal(as_built).check("tilt_along").verdict is Verdict.WITHIN
    assert nominal(without_flywheel).check("tilt_along").verdict is Verdict.OVER
    shifted = lift(cg_x_m=0.5)
    assert nominal(shifted)["hung_tilt_along_deg"] == pytest.approx(0.0, abs=1e-9)


def test_top_heavy_it_turns_over_on_two_picks_and_has_a_margin_on_four() -> None:
    """Cast iron over aluminium: the centre of gravity lies high."""
    assert nominal(lift(cg_z_m=0.1)).check("stability").verdict is Verdict.OVER
    on_four = nominal(four(cg_z_m=0.2, top_z_m=1.0))
    assert on_four.check("stability").verdict is Verdict.NOT_APPLICABLE
    assert on_four.check("push_stability").computed and on_four["slack_couple_knm"] > 0.0
    over_the_hook = nominal(four(cg_z_m=1.5, bottom_z_m=-0.5, top_z_m=2.5))
    assert over_the_hook.verdict not in (Verdict.WITHIN, Verdict.CLOSE)


@pytest.mark.parametrize("rig", [Rig.TWO_LEGS, Rig.FOUR_LEGS])
def test_from_the_top_on_a_hook_it_goes_only_where_the_roof_is_high_enough(rig: Rig) -> None:
    low = {"highest_hook_m": 2.0, "room_height_m": 2.4}
    task = lift(**low) if rig is Rig.TWO_LEGS else four(**low)
    assert nominal(task).check("headroom").verdict is Verdict.OVER


def test_the_large_engine_with_its_gearbox_is_too_much_for_the_shed_s_hoist() -> None:
    ev = assess(TABLE, lift(mass_kg=Measured(4500.0, "estimate"), hoist=hoist(5.0)))
    assert ev.check("hoist_strength").nominal_verdict is Verdict.CLOSE
    assert ev.check("hoist_strength").verdict is Verdict.OVER
