"""Friction: published exercises, statics, and numerical integration (scipy) as an oracle of its own."""

from math import cosh, degrees, exp, radians, sinh, tan

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad, solve_ivp
from scipy.optimize import linprog

from checklist_app.mechanics.slings import slip, wrap
from checklist_app.mechanics.slings.slip import Contact, Face
from checklist_app.mechanics.slings.wrap import Stop


@pytest.mark.parametrize("coefficient, turns, printed, relative", [
    pytest.param(0.25, 2.5, 50.754, 1e-5, id="published exercise: 2.5 turns, friction 0.25; 2000 N held by about 40 N"),
    pytest.param(0.3, 0.5, 2.566, 3e-4, id="published exercise: half a turn, friction 0.3: 2.6"),
    pytest.param(0.3, 2.0, 43.376, 3e-4, id="published exercise: two turns, friction 0.3: about 44"),
])
def test_capstan(coefficient: float, turns: float, printed: float, relative: float) -> None:
    ratio = wrap.capstan_ratio(coefficient, 360.0 * turns)
    assert ratio == pytest.approx(printed, rel=relative)
    integrated = solve_ivp(lambda _, pull: coefficient * pull, (0.0, radians(360.0 * turns)), [1.0], rtol=1e-10)
    assert ratio == pytest.approx(integrated.y[0][-1], rel=1e-6)


def test_published_capstan_holds_2000_n_by_about_40_n() -> None:
    assert 2000.0 / wrap.capstan_ratio(0.25, 900.0) == pytest.approx(39.4057, abs=5e-5)


def test_derived_noose_on_a_shaft_against_integration() -> None:
    """Pull 10 kN, friction 0.15, noose 270°: 7.069 kN without decay, 5.068 kN with; scipy integrates the same noose."""
    even_kn = wrap.noose_hold_even_kn(10.0, 0.15, 270.0)
    decaying_kn = wrap.noose_hold_kn(10.0, 0.15, 270.0)
    assert (even_kn, decaying_kn) == pytest.approx((7.068583, 5.068088), rel=1e-6)
    assert decaying_kn == pytest.approx(quad(lambda a: 0.15 * 10.0 * exp(-0.15 * a), 0.0, radians(270.0))[0], rel=1e-9)


@given(st.floats(0.0, 5.0), st.floats(0.0, 720.0))
def test_no_friction_secures_a_noose_on_a_smooth_shaft(coefficient: float, wrap_deg: float) -> None:
    assert wrap.noose_hold_kn(10.0, coefficient, wrap_deg) <= 10.0
    assert not wrap.choke_holds_upright(Stop.NONE)


def test_a_noose_on_a_collar_shoulder_or_lug_carries() -> None:
    assert all(wrap.choke_holds_upright(stop) for stop in Stop if stop is not Stop.NONE)


@pytest.mark.parametrize("coefficient", [0.0, 0.1, 0.15, 0.4, 1.0])
def test_derived_rolling_in_a_basket_against_the_hyperbolic_tangent(coefficient: float) -> None:
    half_turn = coefficient * radians(180.0) / 2.0
    expected = 10.0 * 0.5 / 2.0 * sinh(half_turn) / cosh(half_turn)
    assert wrap.basket_roll_couple_knm(10.0, 0.5, coefficient) == pytest.approx(expected, abs=1e-12)


def test_derived_rolling_in_a_basket_at_015() -> None:
    """0.116 W D, and the same by a linear programme over the two upright pulls."""
    couple = wrap.basket_roll_couple_knm(1.0, 1.0, 0.15)
    assert couple == pytest.approx(0.116, abs=5e-4)
    ratio = wrap.capstan_ratio(0.15, 180.0)
    best = linprog([-0.5, 0.5], A_eq=[[1.0, 1.0]], b_eq=[1.0], A_ub=[[1.0, -ratio]], b_ub=[0.0])
    assert couple == pytest.approx(-best.fun, rel=1e-9)


@pytest.mark.parametrize("coefficient, printed_deg", [
    pytest.param(0.1, 5.7106, id="derived, tan: 0.1 slides from 5.7106°"),
    pytest.param(0.2, 11.3099, id="derived, tan: 0.2 slides from 11.3099°"),
    pytest.param(0.3, 16.6992, id="derived, tan: 0.3 slides from 16.6992°"),
    pytest.param(0.4, 21.8014, id="derived, tan: 0.4 slides from 21.8014°"),
])
def test_slope_of_slip(coefficient: float, printed_deg: float) -> None:
    assert slip.slides_from_deg(coefficient) == pytest.approx(printed_deg, abs=5e-5)


@given(st.floats(0.0, 40.0), st.floats(-40.0, 40.0))
def test_friction_needed_is_the_worse_of_the_two_slings(lean_deg: float, slope_deg: float) -> None:
    both = [abs(tan(radians(lean_deg + sign * slope_deg))) for sign in (-1.0, 1.0)]
    assert slip.friction_needed(lean_deg, slope_deg) == pytest.approx(max(both), abs=1e-12)


def test_common_practice_a_level_smooth_load_at_30_degrees_needs_058() -> None:
    """Common practice, no source (statics confirms): neither chain nor webbing is credited with that much."""
    needed = slip.friction_needed(30.0, 0.0)
    assert needed == pytest.approx(0.577, abs=5e-4)
    assert all(slip.friction_coefficient(contact, face) < needed for contact in Contact for face in Face)


def test_published_rule_of_60_degrees_from_the_load_is_not_enough_on_a_smooth_one() -> None:
    """Canadian Centre for Occupational Health and Safety: double basket at 60° or more from the load against slipping.
    By statics that is 30° from vertical; no friction of the tables holds it, and the check asks for more."""
    assert slip.friction_needed(90.0 - 60.0, 0.0) > max(slip.PUBLISHED.values())


def test_common_practice_only_a_measured_friction_tells_webbing_from_chain() -> None:
    """Common practice, no source: both 0.1 dry and 0 with oil by name; measured, webbing stays where chain slides."""
    for face in Face:
        assert slip.friction_coefficient(Contact.WEBBING_ON_STEEL, face) == slip.friction_coefficient(
            Contact.STEEL_ON_STEEL, face
        )
    needed = slip.friction_needed(12.0, 0.0)
    assert slip.friction_coefficient(Contact.STEEL_ON_STEEL, Face.DRY_AND_CLEAN) < needed < slip.measured_friction(0.25)


@pytest.mark.parametrize("contact, face, printed", [
    pytest.param(Contact.STEEL_ON_STEEL, Face.DRY_AND_CLEAN, 0.1, id="from memory, CSS Code Annex 13: steel dry 0.1"),
    pytest.param(Contact.STEEL_ON_STEEL, Face.OIL_OR_WATER, 0.0, id="from memory, CSS Code Annex 13: steel wet 0"),
    pytest.param(Contact.STEEL_ON_TIMBER, Face.DRY_AND_CLEAN, 0.3, id="published, CSS Code: steel on timber 0.3"),
    pytest.param(Contact.WEBBING_ON_STEEL, Face.DRY_AND_CLEAN, 0.1, id="house setting: webbing as steel"),
])
def test_friction_by_name(contact: Contact, face: Face, printed: float) -> None:
    assert slip.friction_coefficient(contact, face) == printed


def test_what_is_from_memory_stays_below_what_was_read() -> None:
    """CTU Code: smooth metal on smooth metal 0.2; the slope it holds is degrees(atan 0.2)."""
    assert slip.friction_coefficient(Contact.STEEL_ON_STEEL, Face.DRY_AND_CLEAN) <= 0.2
    assert slip.slides_from_deg(0.2) > degrees(0.1)
