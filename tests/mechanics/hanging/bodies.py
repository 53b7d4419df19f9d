"""Loads that the tests of this folder hang up."""

from checklist_app.mechanics.hanging.body import Rigging, rigging
from checklist_app.mechanics.vectors import Vec

TONNE_N = 9806.65
CORNERS = ((0.6, 0.4, 0.0), (0.6, -0.4, 0.0), (-0.6, -0.4, 0.0), (-0.6, 0.4, 0.0))


def vec(*numbers: float) -> Vec:
    return Vec(*(float(number) for number in numbers))


def pair(cg: tuple[float, float, float], legs_m: tuple[float, float]) -> Rigging:
    """Two picks a metre apart."""
    return rigging([vec(-0.5, 0, 0), vec(0.5, 0, 0)], legs_m, vec(*cg))


def box(cg: tuple[float, float, float], legs_m: tuple[float, ...] = (1.5, 1.5, 1.5, 1.5)) -> Rigging:
    """Four picks at the corners of 1.2 × 0.8 m."""
    return rigging([vec(*corner) for corner in CORNERS], legs_m, vec(*cg))
