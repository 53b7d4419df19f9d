"""From where a thing is looked at: points in space to points on the paper, and the outline of what is seen."""

from collections.abc import Iterable
from typing import NamedTuple

from checklist_app.mechanics.vectors import Vec, cross, dot
from checklist_app.operations.drawing import Point

UPRIGHT = Vec(0.0, 0.0, 1.0)


class Look(NamedTuple):
    """From where it is looked at: what lies to the right, and what upwards."""

    right: Vec
    up: Vec

    def at(self, place: Vec) -> Point:
        """A point of the thing on the paper."""
        return dot(place, self.right), dot(place, self.up)

    def near(self, place: Vec) -> float:
        """How far before the paper a point lies; below 0 behind it [m]."""
        return dot(place, cross(self.right, self.up))


FROM_THE_FRONT = Look(Vec(1.0, 0.0, 0.0), UPRIGHT)
FROM_THE_RIGHT = Look(Vec(0.0, 1.0, 0.0), UPRIGHT)
FROM_ABOVE = Look(Vec(1.0, 0.0, 0.0), Vec(0.0, 1.0, 0.0))


def silhouette(points: Iterable[Point]) -> tuple[Point, ...]:
    """The points that others lie between, once round, from the lowest left one.

    Example:
        >>> silhouette([(0.0, 0.0), (1.0, 0.0), (0.5, 0.5), (1.0, 1.0), (0.0, 1.0)])
        ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))
    """
    ordered = sorted(set(points), key=lambda point: (point[0], point[1]))
    if len(ordered) < 3:
        return tuple(ordered)
    below, above = _bent(ordered), _bent(ordered[::-1])

    return (*below[:-1], *above[:-1])


def _bent(points: Iterable[Point]) -> list[Point]:
    kept: list[Point] = []
    for point in points:
        while len(kept) >= 2 and _turn(kept[-2], kept[-1], point) <= 1e-12:
            kept.pop()
        kept.append(point)
    return kept


def _turn(a: Point, b: Point, c: Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
