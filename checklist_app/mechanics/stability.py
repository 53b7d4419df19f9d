"""Whether a load on two picks stays upright: only a centre of gravity below the line through them holds it."""

from checklist_app.mechanics import vectors
from checklist_app.mechanics.vectors import Vec


def cg_below_pick_line_m(cg: Vec, left_eye: Vec, up: Vec) -> float:
    """Depth of the centre of gravity below the line through the two eyes, as the load stands.

        t = (A − G) · k, and the load resists rolling about that line with W t

    Source:
        STATICS_TWO_PICKS; PURDUE_RIGGING says the same of the angle formed by the slings, for three picks or more.

    Args:
        cg: G, in the load's axes [m].
        left_eye: A, in the load's axes [m].
        up: k, upwards at right angles to the line through the eyes, of length 1 [-].

    Returns:
        t [m]; at 0 and below the load turns over.

    Example:
        >>> cg_below_pick_line_m(Vec(0.5, 0.0, -0.4), Vec(0.0, 0.0, 0.0), Vec(0.0, 0.0, 1.0))
        0.4
    """
    return vectors.dot(vectors.between(cg, left_eye), up)
