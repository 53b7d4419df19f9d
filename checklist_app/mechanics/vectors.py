"""A point in metres, in the load's own axes: x lengthwise, y crosswise, z upwards as the load stands."""

from typing import NamedTuple


class Vec(NamedTuple):
    """A point of the load."""

    x: float
    y: float
    z: float
