"""What would make it hold: the smallest change of one thing; every answer is put to the checks again."""

from collections.abc import Callable, Sequence
from typing import TypeVar

from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.lashing.lashed_body import Block, LashedBody, Pull, Strand, lashed_body
from checklist_app.mechanics.vectors import Vec

SOURCE = "STATICS_LASHING"
T = TypeVar("T")


def smallest_number(holds: Callable[[int], bool], most: int) -> int | None:
    """The smallest number of something, from none, with which it holds; each is tried, for more may not be better.

    Source:
        STATICS_LASHED_BODY.

    Args:
        holds: whether it holds with so many.
        most: how many there are to be had.

    Returns:
        How many; None where all of them are not enough.

    Raises:
        OutOfRangeError: If there are fewer than none.

    Example:
        >>> smallest_number(lambda n: n * 0.3 >= 1.0, most=8), smallest_number(lambda n: False, most=8)
        (4, None)
    """
    if most < 0:
        raise OutOfRangeError("lashings to be had", most, "0 or more", SOURCE)

    return next((number for number in range(most + 1) if holds(number)), None)


def first_that_holds(candidates: Sequence[T], holds: Callable[[T], bool]) -> T | None:
    """The first of some changes, ordered by effort, with which it holds: a mat, another height, a chock.

    Source:
        STATICS_LASHED_BODY.

    Args:
        candidates: changes, the least effort first.
        holds: whether it holds with that one.

    Returns:
        The change; None where none is enough.

    Example:
        >>> first_that_holds([0.9, 1.2, 1.5], lambda height: height > 1.0)
        1.2
    """
    return next((candidate for candidate in candidates if holds(candidate)), None)


def friction_needed(
    weight_dan: float, push: float, downward: float, pressed_dan: float, blocked_dan: float
) -> float:
    """Friction that would hold what lies under its tie-downs: is there a mat that has it?

        μ = (c G − FB) / (cz G + k sin α Σ FT / fs)

    Source:
        EN_12195_1 5.4.2, solved for μ.

    Args:
        weight_dan: G [daN], above 0.
        push: c [-], 0 or more.
        downward: cz [-], above 0 up to 1.
        pressed_dan: what tie-downs press with, safety factor taken off [daN], 0 or more.
        blocked_dan: FB [daN], 0 or more.

    Returns:
        μ [-]; 0 where blocks hold it alone.

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> round(friction_needed(981.0, 0.8, 1.0, 560.0, 0.0), 3)
        0.509
    """
    required_positive("weight of the load", weight_dan, SOURCE)
    for name, value in (("coefficient of acceleration", push), ("what tie-downs press with", pressed_dan),
                        ("what blocks hold", blocked_dan)):
        required_not_negative(name, value, SOURCE)
    if not 0.0 < downward <= 1.0:
        raise OutOfRangeError("share of the weight that remains", downward, "above 0, 1 at most", SOURCE)

    return max(0.0, push * weight_dan - blocked_dan) / (downward * weight_dan + pressed_dan)


def cg_must_be_below_m(push: float, downward: float, to_edge_m: float) -> float:
    """How low the centre of gravity must lie that the load stands by itself: lay the engine flat, or widen its base.

        d < cz b / c

    Source:
        EN_12195_1; at equality it is liable to tip.

    Args:
        push: c [-], above 0.
        downward: cz [-], above 0 up to 1.
        to_edge_m: b [m], above 0.

    Returns:
        d, to stay below [m].

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> round(cg_must_be_below_m(0.8, 1.0, 0.35), 4)
        0.4375
    """
    required_positive("coefficient of acceleration", push, SOURCE)
    required_positive("centre of gravity to edge", to_edge_m, SOURCE)
    if not 0.0 < downward <= 1.0:
        raise OutOfRangeError("share of the weight that remains", downward, "above 0, 1 at most", SOURCE)

    return downward * to_edge_m / push


def with_more(
    body: LashedBody, pulls: Sequence[Pull] = (), strands: Sequence[Strand] = (), blocks: Sequence[Block] = ()
) -> LashedBody:
    """The same load with more to hold it.

    Source:
        STATICS_LASHED_BODY.

    Args:
        body: the load as it is held.
        pulls: more legs of direct lashings.
        strands: more ends of tie-downs.
        blocks: more blocks.

    Returns:
        The load, held by all of them.

    Raises:
        OutOfRangeError: If one of them has no length or no strength.

    Example:
        >>> from checklist_app.mechanics.lashing.lashed_body import Stands, lashed_body
        >>> feet = [(0.5, 0.3), (-0.5, 0.3), (0.5, -0.3), (-0.5, -0.3)]
        >>> body = lashed_body(981.0, Vec(0.0, 0.0, 0.8), feet, Stands.FEET)
        >>> len(with_more(body, blocks=[Block(Vec(0.5, 0.0, 0.1), Vec(-1.0, 0.0, 0.0), 400.0)]).blocks)
        1
    """
    return lashed_body(
        body.weight_dan, body.cg, [(corner.x, corner.y) for corner in body.base], body.stands,
        (*body.pulls, *pulls), (*body.strands, *strands), (*body.blocks, *blocks),
    )


def mirrored(point: Vec, across: bool) -> Vec:
    """A point on the other side: the second lashing of a pair.

    Source:
        STATICS_LASHED_BODY.

    Args:
        point: attachment or anchor [m].
        across: left and right changed; else front and back.

    Returns:
        The point on the other side.

    Example:
        >>> mirrored(Vec(0.4, 0.3, 1.1), across=True)
        Vec(x=0.4, y=-0.3, z=1.1)
    """
    return Vec(point[0], -point[1], point[2]) if across else Vec(-point[0], point[1], point[2])
