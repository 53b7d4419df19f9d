"""A point in metres, in the load's own axes: x lengthwise, y crosswise, z upwards as the load stands."""

from typing import NamedTuple

from checklist_app.mechanics import exact

# Three directions count as lying in one plane when the volume they span is this small a share of what it could be.
FLAT = 1e-9


class Vec(NamedTuple):
    """A point of the load."""

    x: float
    y: float
    z: float


def plain(point: Vec) -> Vec:
    """The point in bare numbers, without a working."""
    return Vec(float(point[0]), float(point[1]), float(point[2]))


def less(a: Vec, b: Vec) -> Vec:
    """From b to a."""
    return Vec(a[0] - b[0], a[1] - b[1], a[2] - b[2])


def stepped(a: Vec, far: float, way: Vec) -> Vec:
    """From a, so far along a way."""
    return Vec(a[0] + far * way[0], a[1] + far * way[1], a[2] + far * way[2])


def times(a: Vec, factor: float) -> Vec:
    """A vector so many times as long."""
    return Vec(a[0] * factor, a[1] * factor, a[2] * factor)


def dot(a: Vec, b: Vec) -> float:
    """Scalar product."""
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2]


def cross(a: Vec, b: Vec) -> Vec:
    """Vector product."""
    return Vec(a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])


def length(a: Vec) -> float:
    """Length of a vector."""
    return exact.sqrt(a[0] * a[0] + a[1] * a[1] + a[2] * a[2])


def made_of(a: Vec, b: Vec, c: Vec, whole: Vec) -> Vec | None:
    """How much of a, b and c adds up to the whole; None where the three lie in one plane."""
    bc = cross(b, c)
    volume = dot(a, bc)
    if not abs(volume) > FLAT * length(a) * length(b) * length(c):
        return None

    return Vec(dot(whole, bc) / volume, dot(whole, cross(c, a)) / volume, dot(whole, cross(a, b)) / volume)
