"""The cone of friction as 64 directions that lie on it: never more than the cone, 0.12 % less at most."""

from bisect import bisect_left

from checklist_app.mechanics import exact

TURNS = 64
EIGHTH = TURNS // 8
TURN = 2.0 * exact.PI / TURNS
COS = tuple(exact.cos(k * TURN) for k in range(EIGHTH + 1))
SIN = tuple(exact.sin(k * TURN) for k in range(EIGHTH + 1))
BETWEEN = tuple(exact.sin((k + 0.5) * TURN) / exact.cos((k + 0.5) * TURN) for k in range(EIGHTH))


def nearest_direction(x: float, y: float) -> tuple[float, float]:
    """The one of 64 level directions that lies nearest to a given one.

        (cos t, sin t), t a whole number of 64ths of a turn

    Source:
        STATICS_LASHED_BODY.

    Args:
        x: of the direction [any unit].
        y: of the direction [same unit].

    Returns:
        Its two shares [-]; forwards where there is no direction.

    Example:
        >>> nearest_direction(-3.0, 0.01)
        (-1.0, 0.0)
    """
    a, b = abs(x), abs(y)
    if a >= b:
        k = bisect_left(BETWEEN, b / a) if a > 0.0 else 0
        along, aside = COS[k], SIN[k]
    else:
        k = bisect_left(BETWEEN, a / b)
        along, aside = SIN[k], COS[k]
    return (-along if x < 0.0 else along), (-aside if y < 0.0 else aside)
