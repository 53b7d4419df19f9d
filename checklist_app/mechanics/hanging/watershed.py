"""How far a load must be lifted before it falls over to the other side: up to where it balances on two of its picks."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import Hang
from checklist_app.mechanics.vectors import Vec, dot, length, less, stepped

SOURCE = "STATICS_SLACKENING"
IN_ONE_PLACE = 1e-9


def plumb_on_its_head_m(hang: Hang, first: int, second: int) -> float:
    """Centre of gravity below the hook with the load balanced over two of its picks, the other legs slack.

        h₂ = √((s − g)² + (b − c)²); s, g along the line through the picks, b, c off it: hook and centre of gravity

    Source:
        STATICS_SLACKENING; the least push lets it fall back or right over.

    Args:
        hang: the load as it hangs.
        first: one leg, by number.
        second: the other leg.

    Returns:
        h₂ [m].

    Raises:
        OutOfRangeError: If the two picks are in one place.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> from checklist_app.mechanics.hanging.settling import settled
        >>> picks = [Vec(0.6, 0.4, 0.0), Vec(0.6, -0.4, 0.0), Vec(-0.6, -0.4, 0.0), Vec(-0.6, 0.4, 0.0)]
        >>> round(plumb_on_its_head_m(settled(rigging(picks, [1.5] * 4, Vec(0.0, 0.0, 0.3))), 0, 3), 4)
        0.8748
    """
    pick, line = hang.eyes[first], less(hang.eyes[second], hang.eyes[first])
    square = dot(line, line)
    if not square > IN_ONE_PLACE:
        raise OutOfRangeError("two picks", "in one place", "picks apart", SOURCE)
    to_hook, to_cg = less(Vec(0.0, 0.0, 0.0), pick), less(Vec(0.0, 0.0, -hang.plumb_m), pick)
    hook_along, cg_along = dot(to_hook, line) / square, dot(to_cg, line) / square
    off = length(stepped(to_hook, -hook_along, line)) - length(stepped(to_cg, -cg_along, line))
    along = (hook_along - cg_along) * exact.sqrt(square)

    return exact.sqrt(along * along + off * off)


def rise_to_the_watershed_m(hang: Hang, first: int, second: int) -> float:
    """How far the centre of gravity has to rise for the load to go over two of its picks.

        r = h − h₂

    A fall of a corner of less than that, slack taken up unevenly, does not turn it over. Until the plumb line lies
    between the two legs alone takes less (`rise_before_it_goes_over_m`), and from there it still falls back.

    Source:
        STATICS_SLACKENING; in a physics engine loads let go on this side fell back, on the other went over.

    Args:
        hang: the load as it hangs.
        first: one leg, by number.
        second: the other leg.

    Returns:
        r [m], 0 or more.

    Raises:
        OutOfRangeError: If the two picks are in one place.

    Example:
        >>> from checklist_app.mechanics.hanging.body import rigging
        >>> from checklist_app.mechanics.hanging.settling import settled
        >>> picks = [Vec(0.6, 0.4, 0.0), Vec(0.6, -0.4, 0.0), Vec(-0.6, -0.4, 0.0), Vec(-0.6, 0.4, 0.0)]
        >>> round(rise_to_the_watershed_m(settled(rigging(picks, [1.5] * 4, Vec(0.0, 0.0, 0.3))), 0, 3), 4)
        0.1405
    """
    return max(0.0, hang.plumb_m - plumb_on_its_head_m(hang, first, second))
