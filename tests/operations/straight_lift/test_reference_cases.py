"""Tensions and tilt at the attitude the load hangs in, against worked cases and common practice."""

import pytest

from checklist_app.operations.check import Strength, Verdict, utilisation
from checklist_app.operations.evaluate import assess
from checklist_app.operations.straight_lift.labels import percent
from tests.operations.straight_lift.lifts import TABLE, lift, shackle, sling


@pytest.mark.parametrize("cg_x_m, cg_z_m, left_m, right_m, tilt_deg, left_n, right_n", [
    pytest.param(0.5, -0.4, 1.0, 1.0, 0.0, 5661.871, 5661.871, id="derived, A1: centred"),
    pytest.param(0.65, -0.4, 1.0, 1.0, -6.75696, 4468.714, 6776.377, id="derived, A2: 0.15 m to the right"),
    pytest.param(0.65, -0.4, 1.1, 0.8, 6.5788, 4225.9, 7040.8, id="derived, A3: legs 1.10 and 0.80 m too"),
])
def test_it_hangs_and_pulls_as_statics_says(
    cg_x_m: float, cg_z_m: float, left_m: float, right_m: float, tilt_deg: float, left_n: float, right_n: float
) -> None:
    """1000 kg, picks at ± 0.5 m; our own statics, once by energy minimisation and once by a physics engine."""
    task = lift({"leg_length_m": left_m}, {"leg_length_m": right_m}, cg_x_m=cg_x_m, cg_z_m=cg_z_m)
    ev = assess(TABLE, task, with_spread=False)
    found = (ev["leg_tension_kn[left]"] * 1000.0, ev["leg_tension_kn[right]"] * 1000.0)
    assert found == pytest.approx((left_n, right_n), rel=1e-4)
    assert ev["hung_tilt_along_deg"] == pytest.approx(tilt_deg, rel=1e-4, abs=1e-9)


def test_derived_a4_above_the_eyes_it_would_hang_by_the_plane_of_the_legs_but_two_picks_turn_over() -> None:
    """G 0.05 m right and 0.3 m above the picks, legs 1.2 m: in the plane of the legs 4640.592 and 6125.604 N, tilt
    3.61751°. In space nothing holds it: over limit, and the attitude found is the one it turns over into."""
    ev = assess(TABLE, lift(both={"leg_length_m": 1.2}, cg_x_m=0.55, cg_z_m=0.3, top_z_m=0.5), with_spread=False)
    assert ev.check("stability").verdict is Verdict.OVER
    assert ev.verdict is Verdict.OVER
    assert abs(ev["hung_tilt_across_deg"]) + abs(ev["hung_tilt_along_deg"]) > 90.0


def test_derived_a6_legs_that_hang_it_level() -> None:
    """Legs 1.08282 and 0.934077 m hang the load of A2 level, pulls 0.4376167 and 0.7010766 of its weight."""
    task = lift({"leg_length_m": 1.08282}, {"leg_length_m": 0.934077}, cg_x_m=0.65)
    ev = assess(TABLE, task, with_spread=False)
    assert (ev["leg_share[left]"], ev["leg_share[right]"]) == pytest.approx((0.4376167, 0.7010766), rel=1e-5)
    assert ev["hung_tilt_along_deg"] == pytest.approx(0.0, abs=1e-4)


@pytest.mark.parametrize("mass_kg, wll_t, eyes_apart_m, ratio, shown, verdict", [
    pytest.param(1000.0, 1.0, 1.0, 1.0 / 1.4, "71 %", Verdict.WITHIN, id="P2: 1 t on two 1 t straps, steep"),
    pytest.param(1000.0, 1.0, 1.6, 1.0, "100 %", Verdict.CLOSE, id="P2: the same beyond 45°"),
    pytest.param(4500.0, 4.0, 1.0, 4.5 / 5.6, "80 %", Verdict.CLOSE, id="P2: 4.5 t on two of 4 t, steep"),
    pytest.param(4500.0, 4.0, 1.6, 1.125, "113 %", Verdict.OVER, id="P2: the same beyond 45°"),
])
def test_common_practice_without_source_two_straps(
    mass_kg: float, wll_t: float, eyes_apart_m: float, ratio: float, shown: str, verdict: Verdict
) -> None:
    """Common practice, no source: "a tonne to spare" is there only for steep legs."""
    task = lift(
        both={"sling": sling(wll_t)}, mass_kg=mass_kg, eyes_apart_m=eyes_apart_m, cg_x_m=eyes_apart_m / 2.0,
        hook_fitting=shackle(8.5),
    )
    pair = assess(TABLE, task, with_spread=False).check("pair_strength")
    assert utilisation(pair.outcome) == pytest.approx(ratio, rel=1e-12)
    assert percent(utilisation(pair.outcome) or 0.0) == shown
    assert pair.verdict is verdict


def test_common_practice_without_source_the_pair_governs_over_its_legs_when_steep() -> None:
    """P1, P2: nominal 1,000 kg on the slings, straight, 30° from vertical: 71 % by the table, 58 % by its own pull."""
    ev = assess(TABLE, lift(both={"sling": sling(1.0)}), with_spread=False)
    own = utilisation(ev.check("sling_strength[left]").outcome)
    assert own == pytest.approx(0.57735, rel=1e-5)
    assert ev.governs is not None and ev.governs.name == "pair_strength"
    assert ev.verdict is Verdict.WITHIN


@pytest.mark.parametrize("more", [
    pytest.param({"rigging_kg": 1.0}, id="with 1 kg of rigging"),
    pytest.param({"mass_kg": 1030.0}, id="with 3 % more mass"),
])
def test_common_practice_without_source_flat_legs_are_over_with_anything_added(more: dict[str, float]) -> None:
    flat = {"eyes_apart_m": 1.6, "cg_x_m": 0.8, **more}
    ev = assess(TABLE, lift(both={"sling": sling(1.0)}, **flat), with_spread=False)
    assert ev.check("pair_strength").verdict is Verdict.OVER
    assert ev.verdict is Verdict.OVER


@pytest.mark.parametrize("below_m, verdict", [
    pytest.param(0.30, Verdict.WITHIN, id="hung from above its centre of gravity"),
    pytest.param(0.03, Verdict.CLOSE, id="just above"),
    pytest.param(0.0, Verdict.OVER, id="eyes level with it"),
    pytest.param(-0.10, Verdict.OVER, id="eyes below it"),
])
def test_common_practice_without_source_two_picks_level_with_the_centre_of_gravity_turn_over(
    below_m: float, verdict: Verdict
) -> None:
    """P8, its two-pick part."""
    ev = assess(TABLE, lift(cg_z_m=-below_m), with_spread=False)
    assert ev.check("stability").verdict is verdict
    assert (ev.verdict is Verdict.OVER) == (verdict is Verdict.OVER)


def test_published_gross_load_counts_the_rigging() -> None:
    """0027/ND: 4.50 t and 0.35 t of rigging are 4.85 t on the hook, in normal hoisting with no factor on top."""
    ev = assess(TABLE, lift(mass_kg=4500.0, rigging_kg=350.0), with_spread=False)
    assert ev.check("hoist_strength").outcome == Strength(4.85, 5.0)
