"""What is read at a trial lift, row by row: how far it was lifted, what it weighs, how it hangs."""

from enum import Enum

from checklist_app.operations import settings
from checklist_app.operations.graph import Entry, NotUsed, Obtained


class LowEnd(Enum):
    """Which end hangs low, so that a tilt has a side."""

    LEFT = "left end"
    RIGHT = "right end"
    LEVEL = "neither, it hangs level"


class LowSide(Enum):
    """Which side hangs low: front is where crosswise counts below 0."""

    FRONT = "front side"
    REAR = "rear side"
    LEVEL = "neither, it hangs level"


LOAD_CELL_HOW = (Obtained("load cell", "read on a load cell", relative=settings.LOAD_CELL_READING.value),)
TILT_HOW = (
    Obtained("inclinometer", "read on an inclinometer", plus_minus=settings.INCLINOMETER.value),
    Obtained("spirit level", "by spirit level or plumb line", plus_minus=settings.SPIRIT_LEVEL.value),
)
NOT_SAID = NotUsed("nobody said which")

TRIAL = (
    Entry("lifted_mm", "lifted", float, "mm", 1.0, 500.0, (10.0, 50.0)),
    Entry("held_s", "held", float, "s", 0.0, 3600.0, (30.0, 300.0)),
    Entry("hook_load_kg", "hook load", float, "kg", 0.0, 200_000.0, (200.0, 5000.0), LOAD_CELL_HOW, may_be_none=True),
    Entry("tilt_along_deg", "tilt lengthwise", float, "°", 0.0, 90.0, (0.0, 3.0), TILT_HOW),
    Entry("tilt_across_deg", "tilt crosswise", float, "°", 0.0, 90.0, (0.0, 3.0), TILT_HOW),
    Entry("low_end", "which end hangs low", LowEnd, default=NOT_SAID),
    Entry("low_side", "which side hangs low", LowSide, default=NOT_SAID),
)
