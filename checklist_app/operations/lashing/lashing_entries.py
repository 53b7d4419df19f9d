"""What is asked of each lashing and each block. A lashing runs from the load, or its pallet, down to its anchor."""

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.operations.gear import Lashing
from checklist_app.operations.graph import Entry, Group, NotUsed
from checklist_app.operations.lashing.choices import BlockedBy, Blocks, Edges, FarEnd, Passes, Tensioned
from checklist_app.operations.obtained import ANGLE_HOW
from checklist_app.operations.settings import TAPE
from checklist_app.operations.task import Measured

NOT_READ = NotUsed("not read")
MOST = 16


def _point(name: str, words: str) -> tuple[Entry, ...]:
    """Three coordinates of one end, whose spread is that of `points_off_m`."""
    return (
        Entry(f"{name}_x_m", f"{words}, forwards", float, "m", -20.0, 20.0, (-3.0, 3.0)),
        Entry(f"{name}_y_m", f"{words}, to the left", float, "m", -5.0, 5.0, (-1.3, 1.3)),
        Entry(f"{name}_z_m", f"{words}, height", float, "m", -2.0, 6.0, (-0.3, 3.0)),
    )


LASHING = (
    Entry("lashing_item", "lashing", Lashing),
    Entry("put_on", "how it is put on", Kind),
    Entry("from_body", "it holds", Body),
    Entry("to_body", "and is made fast to", Body),
    *_point("at", "where it leaves the load"),
    *_point("anchor", "its anchor"),
    Entry("far_end", "its other end", FarEnd),
    *_point("far_at", "where the other end leaves the load"),
    *_point("far_anchor", "the other anchor"),
    Entry("passes", "how it passes the pallet", Passes, default=Passes.ELSEWHERE),
    Entry("anchor_dan", "rating of its anchor", float, "daN", 20.0, 50_000.0, (200.0, 10_000.0),
          hint="From the plate at the ring, or the drawing of the pallet. The weaker one where there are two."),
    Entry("held_dan", "what it is hooked to on the load carries", float, "daN", 20.0, 100_000.0, (200.0, 20_000.0),
          may_be_none=True, hint="Eye, lug or foot. None where it only lies over or round the load."),
    Entry("tensioned", "how its tension is known", Tensioned),
    Entry("tension_dan", "tension read", float, "daN", 10.0, 5_000.0, (50.0, 1_500.0)),
    Entry("edges", "where it bends", Edges),
    Entry("slope_read_deg", "angle to the deck, as read", float, "°", 0.0, 90.0, (5.0, 90.0), ANGLE_HOW,
          may_be_none=True, default=NOT_READ, hint="By an inclinometer laid on it."),
    Entry("heading_read_deg", "angle to the length of the vehicle, as read", float, "°", 0.0, 90.0, (0.0, 90.0),
          ANGLE_HOW, may_be_none=True, default=NOT_READ, hint="Seen from above, the smaller angle."),
)
BLOCK = (
    Entry("blocked_by", "what blocks it", BlockedBy),
    Entry("blocks", "which way it keeps the load from moving", Blocks),
    Entry("block_on", "it is fast to", Body),
    Entry("block_dan", "what it holds", float, "daN", 10.0, 100_000.0, (100.0, 20_000.0),
          hint="From the plate of the headboard, or worked out for bolts and timber."),
    Entry("block_x_m", "where it touches, forwards", float, "m", -20.0, 20.0, (-3.0, 3.0)),
    Entry("block_y_m", "where it touches, to the left", float, "m", -5.0, 5.0, (-1.3, 1.3)),
    Entry("block_z_m", "where it touches, height", float, "m", 0.0, 5.0, (0.02, 1.5),
          hint="Over the face that it stands on. A low block adds almost nothing against tipping."),
)
GROUPS = (
    Entry("ends_off_m", "ends of the lashings higher than measured", float, "m", -0.2, 0.2, (-0.05, 0.05),
          default=Measured(0.0, plus_minus=TAPE.value)),
    Group("direction", "directions", fixed=Direction),
    Group("lashing", "lashings", LASHING, at_most=MOST),
    Group("block", "blocks", BLOCK, at_most=8),
)
