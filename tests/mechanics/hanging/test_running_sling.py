"""One sling running free over the hook."""

import math
import random

import numpy as np
import pytest
from scipy.optimize import brentq, minimize_scalar

from checklist_app.mechanics.hanging.running_sling import depth_needed_m, hung_on_running_sling


def test_by_hand_depth_a_running_sling_needs() -> None:
    """Half span 0.5 m, sling 2.4 m: hook 1.090871 m over the picks, depth c²/b = 0.229175 m."""
    hang = hung_on_running_sling(1.0, 2.4, 0.0, 0.3)
    assert hang.hook_off_m == pytest.approx(1.090871, rel=1e-5)
    assert depth_needed_m(0.5, hang.hook_off_m) == pytest.approx(0.229175, rel=1e-5)
    assert hang.depth_needed_m == pytest.approx(0.229175, rel=1e-5)
    assert hang.upright and not hung_on_running_sling(1.0, 2.4, 0.0, 0.229).upright


def test_published_a_running_sling_never_holds_a_load_at_or_above_its_picks() -> None:
    """Acta Mechanica 2023: sudden change of the hanging direction, no way to hang a load from a crane."""
    for below_m in (0.0, -0.1, -0.5):
        for aside_m in (0.0, 0.05, -0.2):
            assert not hung_on_running_sling(1.0, 2.4, aside_m, below_m).upright


def test_running_slings_hang_where_the_energy_is_least() -> None:
    r, done = random.Random(22), 0
    while done < 60:
        span, aside, below = r.uniform(0.5, 2.0), r.uniform(-0.1, 0.1), r.uniform(0.3, 1.0)
        sling = span * r.uniform(1.6, 3.0)
        hang = hung_on_running_sling(span, sling, aside, below)
        if not hang.upright:
            continue
        a, c = sling / 2.0, span / 2.0
        b = math.sqrt(a * a - c * c)

        def height(turn: float, a: float = a, b: float = b, at: tuple[float, float] = (aside, below)) -> float:
            return -math.hypot(a * math.sin(turn) - at[0], b * math.cos(turn) + at[1])

        best = minimize_scalar(height, bounds=(-1.3, 1.3), method="bounded", options={"xatol": 1e-11}).x
        assert hang.hook_along_m == pytest.approx(a * math.sin(best), abs=1e-5)
        assert sum(hang.parts_m) == pytest.approx(sling, rel=1e-12)
        assert alike(hang.hook_along_m, hang.hook_off_m, c, (aside, -below))
        done += 1


def alike(along: float, off: float, c: float, cg: tuple[float, float]) -> bool:
    """The plumb line halves the angle between the two parts."""
    hook = np.array([along, off])
    ways = [np.array(point) - hook for point in ((-c, 0.0), (c, 0.0), cg)]
    left, right, down = (way / np.linalg.norm(way) for way in ways)
    return bool(abs(np.dot(left, down) - np.dot(right, down)) < 1e-9)


def test_the_boundary_of_a_running_sling_off_centre_is_where_its_balance_ends() -> None:
    """Just less deep than needed at the balance there, a small turn lets the load down."""
    def spare(below_m: float) -> float:
        hang = hung_on_running_sling(1.0, 2.4, 0.0, below_m)
        return below_m - hang.depth_needed_m

    assert brentq(spare, 0.1, 0.5) == pytest.approx(0.25 / 1.0908712114635715, abs=1e-9)
