"""The load as it hangs, in the shape that the clauses for pyramids and pairs of legs take."""

from checklist_app.mechanics.hanging.body import Hang
from checklist_app.mechanics.vectors import Vec, plain

HOOK, UP = Vec(0.0, 0.0, 0.0), Vec(0.0, 0.0, 1.0)


def as_hang(eyes: tuple[Vec, ...], taut_m: tuple[float, ...], plumb_m: float) -> Hang:
    """Eyes seen from the hook in hanging axes, in bare numbers; what each leg pulls is left open."""
    nothing = (0.0,) * len(eyes)

    return Hang(
        hook=HOOK, upright=UP, plumb_m=float(plumb_m), eyes=tuple(plain(eye) for eye in eyes),
        distances_m=tuple(float(long_m) for long_m in taut_m), slacks_m=nothing, shares=nothing,
        tight=(True,) * len(eyes),
    )
