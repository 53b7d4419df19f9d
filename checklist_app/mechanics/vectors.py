"""Points and directions in metres: x lengthwise, y crosswise, z upwards, in the load's own axes."""

from typing import NamedTuple

from checklist_app.mechanics import exact


class Vec(NamedTuple):
    """A point, or a step from one point to another."""

    x: float
    y: float
    z: float


UPWARDS = Vec(0.0, 0.0, 1.0)


def between(start: Vec, end: Vec) -> Vec:
    """The step from one point to another."""
    return Vec(end.x - start.x, end.y - start.y, end.z - start.z)


def moved(start: Vec, direction: Vec, distance: float) -> Vec:
    """The point that lies a distance along a direction."""
    return Vec(
        start.x + distance * direction.x, start.y + distance * direction.y, start.z + distance * direction.z
    )


def scaled(step: Vec, factor: float) -> Vec:
    """A step made longer or shorter."""
    return Vec(factor * step.x, factor * step.y, factor * step.z)


def dot(a: Vec, b: Vec) -> float:
    """How far a reaches along b, times the length of b."""
    return a.x * b.x + a.y * b.y + a.z * b.z


def cross(a: Vec, b: Vec) -> Vec:
    """The direction at right angles to both, as long as their parallelogram is large."""
    return Vec(a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x)


def length(step: Vec) -> float:
    """Length of a step.

    Example:
        >>> length(Vec(2.0, 3.0, 6.0))
        7.0
    """
    return exact.sqrt(step.x * step.x + step.y * step.y + step.z * step.z)
