"""Where the hook can be on a sling that runs over it: on an ellipse whose foci are the picks.

Counted *along* the line through the picks from its middle, towards the right pick, and *off* it, upwards; by the
tangent of half the angle φ from the middle, hook at (a sin φ, b cos φ). The centre of gravity is at (e, −d).
"""

from typing import NamedTuple

from checklist_app.mechanics import exact

MARKS = 48
WIDEST = 0.9999
HALVINGS = 80
STILL = 1e-15


class Turned(NamedTuple):
    """The load with the hook at one place of the ellipse, the plumb line square to the ellipse there.

    `lever_m`: how far to the side of the plumb line the centre of gravity is; a couple of the load times that turns the
    load so far. `rise_m`: how much higher it is than at rest. `firm_m`: its depth below the point it rocks about; at 0
    or less no couple holds it.
    """

    turned_deg: float
    lever_m: float
    rise_m: float
    firm_m: float


class Ellipse:
    """The places of the hook: c half the span, a half the sling, e and d the centre of gravity along and below."""

    def __init__(self, c: float, a: float, e: float, d: float) -> None:
        self.c, self.a, self.e, self.d = c, a, e, d
        self.b = exact.sqrt(a * a - c * c)

    @staticmethod
    def turn(half: float) -> tuple[float, float]:
        """Sine and cosine of an angle by the tangent of its half."""
        part = 1.0 / (1.0 + half * half)
        return 2.0 * half * part, (1.0 - half * half) * part

    def slope(self, half: float) -> float:
        """Half the rate at which the square of the depth below the hook changes with φ; nothing in balance."""
        sin, cos = self.turn(half)
        return self.c * self.c * sin * cos - self.e * self.a * cos - self.d * self.b * sin

    def balances(self) -> list[float]:
        """Every balance with the hook above the picks."""
        found: list[float] = []
        marks = [WIDEST * (2.0 * mark / MARKS - 1.0) for mark in range(MARKS + 1)]
        slopes = [self.slope(half) for half in marks]
        for low, high, before, after in zip(marks, marks[1:], slopes, slopes[1:], strict=False):
            if before == 0.0:
                found.append(low)
            elif before * after < 0.0:
                found.append(self._between(low, high, before < 0.0))
        return found

    def _between(self, low: float, high: float, below_first: bool) -> float:
        half, small = 0.5 * (low + high), STILL * self.a * self.a
        for _ in range(HALVINGS):
            slope = self.slope(half)
            if abs(slope) <= small or not low < half < high:
                break
            if (slope < 0.0) == below_first:
                low = half
            else:
                high = half
            half = 0.5 * (low + high)
        return half

    def rest(self, half: float) -> tuple[float, float, float]:
        """The plumb line at rest, level and up in the load, and the depth of the centre of gravity below the hook."""
        level, up, _ = self._square(half)
        along, off = self._plumb(half)
        return level, up, along * level + off * up

    def turned(self, rest: tuple[float, float, float], half: float) -> Turned:
        """The load turned until the hook is there, against how it hangs at rest."""
        (rest_level, rest_up, rest_m), (level, up, round_m) = rest, self._square(half)
        along, off = self._plumb(half)
        depth_m = along * level + off * up
        return Turned(
            abs(exact.atan2_deg(rest_level * up - rest_up * level, rest_level * level + rest_up * up)),
            abs(along * up - off * level), rest_m - depth_m, depth_m - round_m,
        )

    def turning_rate(self, half: float) -> float:
        """How much the load turns for each step of the hook along the ellipse [rad]."""
        sin, cos = self.turn(half)
        square = self.a * self.a * cos * cos + self.b * self.b * sin * sin
        return 2.0 * self.a * self.b / (square * (1.0 + half * half))

    def _plumb(self, half: float) -> tuple[float, float]:
        """From the centre of gravity to the hook."""
        sin, cos = self.turn(half)
        return self.a * sin - self.e, self.b * cos + self.d

    def _square(self, half: float) -> tuple[float, float, float]:
        """Outwards square to the ellipse, and its radius there: N³ / (a b), N² = a² cos² + b² sin²."""
        sin, cos = self.turn(half)
        square = self.a * self.a * cos * cos + self.b * self.b * sin * sin
        size = exact.sqrt(square)
        return self.b * sin / size, self.a * cos / size, square * size / (self.a * self.b)
