"""Where something can be: between two corners, and a little beyond."""

from typing import NamedTuple

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.graph import CannotAssess
from checklist_app.operations.settings import END_BEYOND


class Room(NamedTuple):
    """Between which two corners an end may lie; x forwards, y to the left, z upwards [m]."""

    low: Vec
    high: Vec


def required_there(words: str, at: Vec, body: Body, room: Room | None) -> None:
    """Refuse a point where nothing of that body can be."""
    if room is None:
        return
    beyond_m = END_BEYOND.value
    for way, value_m, low_m, high_m in zip(("forwards", "to the left", "up"), at, *room, strict=True):
        if not low_m - beyond_m <= value_m <= high_m + beyond_m:
            raise CannotAssess(
                f"{words} {value_m:.2f} m {way}, and {body.value} is between {low_m:.2f} and {high_m:.2f} m there"
            )
