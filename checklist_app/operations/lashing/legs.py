"""The legs that one lashing holds with."""

from dataclasses import dataclass
from typing import NamedTuple

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.lashed_body import Pull, Strand
from checklist_app.mechanics.vectors import Vec


class End(NamedTuple):
    """Where a leg leaves the load, or its pallet, and where it is made fast."""

    at: Vec
    anchor: Vec


@dataclass(frozen=True, eq=False)
class Legs:
    """What one lashing holds with: strands of a steady pull, or legs that pull as much as they must.

    `drawn_dan` is what a tie-down was drawn with, which may be more than counts."""

    label: str
    from_body: Body
    to_body: Body
    strands: tuple[Strand, ...]
    pulls: tuple[Pull, ...]
    breaks_dan: float
    drawn_dan: float = 0.0
