"""How far a load is from going over: figures worked out beforehand, and the statics said another way."""

import math

import numpy as np
import pytest
from scipy.optimize import brentq

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import Hang, rigging
from checklist_app.mechanics.hanging.margin import (
    couple_that_slackens_knm,
    faces,
    push_that_slackens_kn,
    rise_before_it_goes_over_m,
)
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.hanging.sharing import shared_by_stiffness
from checklist_app.mechanics.hanging.stiffness import turning_stiffness_knm_per_rad
from tests.mechanics.hanging.bodies import TONNE_N, box, pair, vec

TONNE_KN = TONNE_N / 1000.0
ASIDE = 0.3


def above_its_picks() -> Hang:
    """Eyes 1 m apart, centre of gravity (0.05, +0.3), legs 1.2 m as seen square to them; doubled, so that it stays."""
    leg_m = math.hypot(1.2, ASIDE)
    picks = [vec(x, y, 0) for x in (-0.5, 0.5) for y in (-ASIDE, ASIDE)]
    return settled(rigging(picks, [leg_m] * 4, vec(0.05, 0, 0.3)))


def test_by_hand_couple_that_slackens_a_leg() -> None:
    """M = W h sin α = 2785.8 N·m, tilt −3.61751°; a physics engine held at 0.9 M and went over at 1.07 M."""
    hang = above_its_picks()
    (right,) = (face for face in faces(hang, range(4)) if face.legs == (2, 3))
    assert hang.tilt_along_deg == pytest.approx(-3.61751, rel=1e-5)
    assert right.goes_over
    assert 1000.0 * couple_that_slackens_knm(TONNE_KN, right.inside_m) == pytest.approx(2785.8, rel=1e-4)


def test_two_legs_seen_square_to_them_have_the_same_margin() -> None:
    below = settled(pair((0.05, 0, -0.3), (1.2, 1.2)))
    nearest = faces(below, (0, 1))[0]
    to_right_leg = math.radians(below.angles_deg[1])
    assert nearest.legs == (1,) and not nearest.goes_over
    assert nearest.inside_m == pytest.approx(below.plumb_m * math.sin(to_right_leg), rel=1e-12)


@pytest.mark.parametrize("off_cg_m", [0.35, 0.5, 1.0, 3.0])
def test_a_push_that_slackens_balances_about_the_hook(off_cg_m: float) -> None:
    """The resultant of weight and push, at its height, then runs through the hook along the face."""
    hang = above_its_picks()
    inside_m = faces(hang, range(4))[0].inside_m
    push_kn = push_that_slackens_kn(10.0, inside_m, off_cg_m)

    def past(push: float) -> float:
        return push * off_cg_m - math.hypot(10.0, push) * inside_m

    assert push_kn == pytest.approx(brentq(past, 0.0, 1e4, xtol=1e-12), rel=1e-9)


def test_no_push_near_the_centre_of_gravity_slackens_a_leg() -> None:
    with pytest.raises(OutOfRangeError, match=r"nearer to it no push slackens a leg"):
        push_that_slackens_kn(10.0, 0.3, 0.3)


def test_the_rise_is_that_of_turning_about_the_hook_into_the_face() -> None:
    hang = above_its_picks()
    inside_m = faces(hang, range(4))[0].inside_m
    turned = math.asin(inside_m / hang.plumb_m)
    assert rise_before_it_goes_over_m(hang.plumb_m, inside_m) == pytest.approx(
        hang.plumb_m * (1.0 - math.cos(turned)), rel=1e-9
    )


def test_by_hand_a_load_dropped_into_its_slings_that_turned_over_in_a_physics_engine_had_no_such_margin() -> None:
    """Four legs of 1.5 m, centre of gravity 0.3 m above the picks, dropped 0.15 m: it went over."""
    hang = settled(box((0.0, 0.0, 0.3)))
    nearest = faces(hang, range(4))[0]
    assert nearest.goes_over
    assert rise_before_it_goes_over_m(hang.plumb_m, nearest.inside_m) < 0.15


def test_two_legs_resist_rolling_with_the_depth_below_their_picks() -> None:
    hang = settled(pair((0.15, 0, -0.4), (1.1, 0.8)))
    least, most = turning_stiffness_knm_per_rad(hang, 10.0, [1e9, 1e9])
    line = faces(hang, (0, 1))
    slope = hang.eyes[1].z - hang.eyes[0].z
    depth_m = hang.plumb_m + hang.eyes[0].z - slope * hang.eyes[0].x / (hang.eyes[1].x - hang.eyes[0].x)
    assert len(line) == 2
    assert least == pytest.approx(10.0 * depth_m, rel=1e-6)
    assert most == pytest.approx(10.0 * hang.plumb_m, rel=1e-6)


@pytest.mark.parametrize("stiffness", [60.0, 300.0, 2000.0, 1e6])
def test_stiffness_is_the_curvature_of_the_energy(stiffness: float) -> None:
    """W times how fast the plumb line through the hook moves back, by turning the load a little with a couple."""
    what, load_kn = box((0.1, -0.05, 0.2)), 20.0
    hang = shared_by_stiffness(what, load_kn, [stiffness] * 4)
    least, most = turning_stiffness_knm_per_rad(hang, load_kn, [stiffness] * 4)
    picks, cg = np.array(what.picks), np.array(what.cg)

    def hook_for(down: np.ndarray) -> np.ndarray:
        """The hook in the load when gravity pulls along `down`: Newton on the springs alone."""
        hook = np.array(hang.hook)
        for _ in range(40):
            ways = hook - picks
            far = np.linalg.norm(ways, axis=1)
            units = ways / far[:, None]
            pulls = stiffness * np.maximum(0.0, far - 1.5)
            held = sum(
                (np.outer(u, u) * (stiffness if p > 0 else 0.0) + p / f * (np.eye(3) - np.outer(u, u)))
                for u, p, f in zip(units, pulls, far, strict=True)
            )
            hook = hook - np.linalg.solve(held, pulls @ units + load_kn * down)
        return hook

    upright = np.array(hang.upright)
    across = np.linalg.svd(upright[None, :])[2][1:]
    step, found = 1e-4, np.zeros((2, 2))
    for column in range(2):
        couple = []
        for sign in (1.0, -1.0):
            turned = upright + sign * step * across[column]
            turned /= np.linalg.norm(turned)
            lever = hook_for(-turned) - cg
            couple.append(load_kn * (np.dot(lever, upright) * turned - lever))
        found[:, column] = across @ (couple[0] - couple[1]) / (2.0 * step)
    assert (least, most) == pytest.approx(tuple(np.linalg.eigvalsh((found + found.T) / 2.0)), rel=1e-4)


def test_soft_slings_take_stiffness_away() -> None:
    what = box((0.0, 0.0, 0.2))
    by_stiffness = [
        turning_stiffness_knm_per_rad(shared_by_stiffness(what, 20.0, [k] * 4), 20.0, [k] * 4)[0]
        for k in (60.0, 300.0, 2000.0, 1e6)
    ]
    assert by_stiffness == sorted(by_stiffness)
    assert by_stiffness[-1] == pytest.approx(20.0 * settled(what).plumb_m, rel=1e-3)
