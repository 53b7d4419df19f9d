"""Equilibrium, mirror image and scale; and energy minimisation as an independent oracle."""

import math
import random

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy.optimize import minimize

from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.graph import Stopped
from checklist_app.operations.straight_lift.entries import EyesGiven
from checklist_app.operations.task import Key, Measured, Task
from tests.operations.straight_lift.lifts import TABLE, lift, pick_point

SIDES = ("left", "right")


def geometries() -> st.SearchStrategy[dict[str, float]]:
    return st.fixed_dictionaries({
        "apart": st.floats(0.4, 2.0), "left": st.floats(0.8, 2.5), "right": st.floats(0.8, 2.5),
        "share": st.floats(0.3, 0.7), "aside": st.floats(-0.15, 0.15), "below": st.floats(0.2, 0.8),
        "higher": st.floats(-0.15, 0.15),
    })


def hung(g: dict[str, float], scale: float = 1.0, mirror: bool = False) -> Task:
    """One geometry by coordinates; mirrored, left and right are changed over."""
    a, b = (0.0, 0.0), (g["apart"], g["higher"])
    cg_x = g["share"] * g["apart"]
    legs = [g["left"], g["right"]]
    if mirror:
        a, b, cg_x = (-b[0], b[1]), (-a[0], a[1]), -cg_x
        legs.reverse()
    points = [{"eye_x_m": scale * x, "eye_y_m": 0.0, "eye_z_m": scale * z} for x, z in (a, b)]
    left, right = ({**point, "leg_length_m": scale * leg} for point, leg in zip(points, legs, strict=True))

    return lift(
        left, right, eyes_given=EyesGiven.COORDINATES, cg_x_m=scale * cg_x, cg_y_m=scale * g["aside"],
        cg_z_m=-scale * g["below"], bottom_z_m=-scale * 2.0, top_z_m=scale * 0.5,
    )


def tight(g: dict[str, float]) -> Evaluation:
    """Assessed; geometries whose legs hardly reach each other, or where one is slack, are none of the matter here."""
    ev = assess(TABLE, hung(g), with_spread=False)
    assume(not isinstance(ev["leg_share[left]"], Stopped) and ev["hook_off_m"] > 0.05)

    return ev


def hook_in_space(ev: Evaluation) -> np.ndarray:
    """By vectors: a foot on the line through the eyes, and from there straight away from the centre of gravity."""
    left, right, cg = (np.array(point) for point in (ev["eye_at[left]"], ev["eye_at[right]"], cg_of(ev)))
    along = (right - left) / np.linalg.norm(right - left)
    away = left + np.dot(cg - left, along) * along - cg

    return np.asarray(left + ev["hook_along_m"] * along + ev["hook_off_m"] * away / np.linalg.norm(away))


def cg_of(ev: Evaluation) -> tuple[float, ...]:
    return ev["cg_x_m"], ev["cg_y_m"], ev["cg_z_m"]


@settings(max_examples=150)
@given(geometries())
def test_the_pulls_of_the_legs_hold_the_load_and_nothing_else(g: dict[str, float]) -> None:
    ev = tight(g)
    hook, cg = hook_in_space(ev), np.array(cg_of(ev))
    ways = [hook - np.array(ev[f"eye_at[{side}]"]) for side in SIDES]
    pulls = [ev[f"leg_tension_kn[{side}]"] / ev[f"leg_m[{side}]"] for side in SIDES]
    held = pulls[0] * ways[0] + pulls[1] * ways[1]
    plumb = hook - cg
    assert held == pytest.approx(ev["gross_load_kn"] * plumb / np.linalg.norm(plumb), abs=1e-9)
    for side, way in zip(SIDES, ways, strict=True):
        assert np.linalg.norm(way) == pytest.approx(ev[f"leg_m[{side}]"], abs=1e-9)


@settings(max_examples=100)
@given(geometries())
def test_angles_and_tilts_are_those_of_the_vectors_in_space(g: dict[str, float]) -> None:
    ev = tight(g)
    hook, cg = hook_in_space(ev), np.array(cg_of(ev))
    plumb = (hook - cg) / np.linalg.norm(hook - cg)
    for side in SIDES:
        way = (hook - np.array(ev[f"eye_at[{side}]"])) / ev[f"leg_m[{side}]"]
        assert ev[f"leg_angle_deg[{side}]"] == pytest.approx(turned(np.dot(way, plumb)), abs=1e-5)
        assert ev[f"eye_angle_deg[{side}]"] == pytest.approx(turned(way[2]), abs=1e-5)
    assert ev["hung_tilt_along_deg"] == pytest.approx(math.degrees(math.atan2(plumb[0], plumb[2])), abs=1e-9)
    assert ev["hung_tilt_across_deg"] == pytest.approx(math.degrees(math.atan2(plumb[1], plumb[2])), abs=1e-9)


def turned(cosine: float) -> float:
    return math.degrees(math.acos(max(-1.0, min(1.0, cosine))))


@settings(max_examples=100)
@given(geometries())
def test_a_mirrored_lift_gives_mirrored_pulls_angles_and_tilt(g: dict[str, float]) -> None:
    ev, other = tight(g), assess(TABLE, hung(g, mirror=True), with_spread=False)
    for name in ("leg_tension_kn", "leg_angle_deg", "eye_angle_deg"):
        assert ev[f"{name}[left]"] == pytest.approx(other[f"{name}[right]"], rel=1e-9, abs=1e-9)
        assert ev[f"{name}[right]"] == pytest.approx(other[f"{name}[left]"], rel=1e-9, abs=1e-9)
    assert ev["hung_tilt_along_deg"] == pytest.approx(-other["hung_tilt_along_deg"], abs=1e-9)
    assert ev["hung_tilt_across_deg"] == pytest.approx(other["hung_tilt_across_deg"], abs=1e-9)


@settings(max_examples=100)
@given(geometries(), st.floats(0.3, 10.0))
def test_a_lift_twice_as_large_hangs_alike(g: dict[str, float], scale: float) -> None:
    ev, other = tight(g), assess(TABLE, hung(g, scale=scale), with_spread=False)
    for side in SIDES:
        assert ev[f"leg_share[{side}]"] == pytest.approx(other[f"leg_share[{side}]"], rel=1e-9)
        assert ev[f"leg_angle_deg[{side}]"] == pytest.approx(other[f"leg_angle_deg[{side}]"], abs=1e-9)
    assert ev["plumb_m"] * scale == pytest.approx(other["plumb_m"], rel=1e-9)


@settings(max_examples=60)
@given(geometries(), st.floats(0.1, 20.0))
def test_twice_the_mass_pulls_twice_as_hard(g: dict[str, float], times: float) -> None:
    ev = tight(g)
    other = assess(TABLE, lift_of_mass(g, 1000.0 * times), with_spread=False)
    for side in SIDES:
        assert other[f"leg_tension_kn[{side}]"] == pytest.approx(times * ev[f"leg_tension_kn[{side}]"], rel=1e-9)


def lift_of_mass(g: dict[str, float], mass_kg: float) -> Task:
    return hung(g).changed({Key("mass_kg"): Measured(mass_kg, plus_minus=0.0)})


def lowest_hook(eyes: list[np.ndarray], legs: list[float], cg: np.ndarray) -> tuple[np.ndarray, list[float]]:
    """Hook and pulls by minimising energy: legs as stiff springs that only pull, weight 1, in the load's axes.

    E(H) = Σ ½ k max(0, |H − P| − L)² − |H − G|; the load hangs so that E is least.
    """
    stiff = 1e4

    def energy(hook: np.ndarray) -> float:
        stretch = [max(0.0, float(np.linalg.norm(hook - eye)) - leg) for eye, leg in zip(eyes, legs, strict=True)]
        return 0.5 * stiff * sum(s * s for s in stretch) - float(np.linalg.norm(hook - cg))

    def slope(hook: np.ndarray) -> np.ndarray:
        way = (hook - cg) / np.linalg.norm(hook - cg)
        pulls = np.zeros(3)
        for eye, leg in zip(eyes, legs, strict=True):
            long = float(np.linalg.norm(hook - eye))
            pulls += stiff * max(0.0, long - leg) * (hook - eye) / long
        return np.asarray(pulls - way)

    start = (eyes[0] + eyes[1]) / 2.0 + np.array([0.0, 0.0, 1.0])
    found = minimize(energy, start, jac=slope, method="BFGS", options={"gtol": 1e-9, "maxiter": 2000}).x
    pulls = [stiff * max(0.0, float(np.linalg.norm(found - e)) - leg) for e, leg in zip(eyes, legs, strict=True)]

    return found, pulls


def test_pulls_and_tilt_agree_with_energy_minimisation_at_200_random_geometries() -> None:
    r, done = random.Random(200), 0
    while done < 200:
        points = [
            (-r.uniform(0.3, 0.9), r.uniform(-0.1, 0.1), r.uniform(-0.1, 0.1)),
            (r.uniform(0.3, 0.9), r.uniform(-0.1, 0.1), r.uniform(-0.1, 0.1)),
        ]
        legs = [r.uniform(1.0, 2.2), r.uniform(1.0, 2.2)]
        cg = (r.uniform(-0.25, 0.25), r.uniform(-0.15, 0.15), -r.uniform(0.25, 0.8))
        ev = assess(TABLE, by_points(points, legs, cg), with_spread=False)
        if isinstance(ev["leg_share[left]"], Stopped) or min(ev[f"leg_share[{s}]"] for s in SIDES) < 0.05:
            continue
        hook, pulls = lowest_hook([np.array(p) for p in points], legs, np.array(cg))
        plumb = hook - np.array(cg)
        assert [ev["leg_share[left]"], ev["leg_share[right]"]] == pytest.approx(pulls, rel=2e-3, abs=1e-3)
        assert ev["hung_tilt_along_deg"] == pytest.approx(math.degrees(math.atan2(plumb[0], plumb[2])), abs=0.05)
        assert ev["hung_tilt_across_deg"] == pytest.approx(math.degrees(math.atan2(plumb[1], plumb[2])), abs=0.05)
        done += 1


def by_points(points: list[tuple[float, ...]], legs: list[float], cg: tuple[float, ...]) -> Task:
    left, right = (
        {"carrier": pick_point(x_m=x, y_m=y, z_m=z), "leg_length_m": leg}
        for (x, y, z), leg in zip(points, legs, strict=True)
    )
    x, y, z = cg

    return lift(
        left, right, eyes_given=EyesGiven.PICK_POINTS, cg_x_m=x, cg_y_m=y, cg_z_m=z, bottom_z_m=-2.0, top_z_m=0.5
    )
