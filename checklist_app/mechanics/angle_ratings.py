"""Ratings that go down with the angle of the pull: steps, never a line between them."""

from collections.abc import Sequence

from checklist_app.mechanics.errors import OutOfRangeError


def wll_at_angle_t(name: str, ratings: Sequence[tuple[float, float]], angle_deg: float, source: str) -> float:
    """WLL of the first step that reaches the angle.

        WLL(β) = WLL of the smallest step with β ≤ up to

    Source:
        PLATE for an eye, PICK_POINT_EVIDENCE for what it stands on; DIN_580 and BS_4278 print such steps.

    Args:
        name: what is rated, in words.
        ratings: steps of (up to angle [°], WLL [t]).
        angle_deg: angle of the pull from the axis of the eye [°].
        source: key of the source.

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: If no step reaches the angle.

    Example:
        >>> wll_at_angle_t("eye", ((0.0, 1.2), (45.0, 0.86)), 20.0, "PLATE")
        0.86
    """
    if not 0.0 <= angle_deg <= 180.0:
        raise OutOfRangeError("angle of the pull", angle_deg, "0 to 180°", source)
    for up_to_deg, wll_t in sorted(ratings):
        if angle_deg <= up_to_deg:
            return wll_t

    furthest = f"pull up to {max(up_to for up_to, _ in ratings):.4g}° from its axis" if ratings else "a rated eye"
    raise OutOfRangeError(f"pull on the {name}", f"{angle_deg:.1f}° from its axis", furthest, source)
