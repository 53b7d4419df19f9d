"""An eye in the two planes a pull can lie in: where nobody said which, the one in which it carries less."""

from collections.abc import Callable
from typing import Any

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.fittings.eye_marking import PullPlane
from checklist_app.operations.graph import Missing, Waits

Rows = tuple[Any, ...]


def ratings_that_count(in_plane: Rows, across: Rows | None, turned: PullPlane | None) -> tuple[Rows, ...]:
    """The eye's own ratings to look into; the lowest counts."""
    if not across or turned is PullPlane.IN_PLANE:
        return (in_plane,)

    return (across,) if turned is PullPlane.ACROSS else (in_plane, across)


def lower_of_planes_t(wll_t: Callable[[PullPlane], float], turned: PullPlane | None, row: str) -> float:
    """WLL in the plane that was said; said by nobody, the lower of both, and waiting where only one of them is allowed.

    Raises:
        OutOfRangeError: If the eye may not be pulled so in any plane, or in the one that was said.
    """
    if turned is not None:
        return wll_t(turned)
    in_plane_t = wll_t(PullPlane.IN_PLANE)
    try:
        across_t = wll_t(PullPlane.ACROSS)
    except OutOfRangeError:
        raise Waits(Missing(f"ring of the eye, along the pull or across it, {row}", f"eye_turned[{row}]")) from None

    return in_plane_t if in_plane_t <= across_t else across_t
