"""The load lashed on its vehicle, to scale: what is known so far."""

from collections.abc import Mapping

from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.operations.check import Check
from checklist_app.operations.drawing import Drawing
from checklist_app.operations.gear import Pallet, Vehicle
from checklist_app.operations.graph import Range
from checklist_app.operations.lashing.choices import BlockedBy, Blocks, Lies
from checklist_app.operations.lashing.lashed import Blocked
from checklist_app.operations.lashing.lashing_picture import body, deck, held, lashings, stopped
from checklist_app.operations.lashing.lashing_views import views
from checklist_app.operations.lashing.legs import End


def picture(
    length_m: float | None, width_m: float | None, height_m: float | None, stands: Stands | None,
    base_length_m: float | None, base_width_m: float | None, edge_gives_m: float | None, pallet: Pallet | None,
    pallet_lies: Lies | None,
    vehicle: Vehicle | None, behind_headboard_m: float | None, cg_x_m: float | None, cg_y_m: float | None,
    cg_z_m: float | None, put_on: tuple[Kind | None, ...],
    near_end: tuple[End | None, ...], far_end_there: tuple[End | None, ...],
    lashing_pull_dan: tuple[float | None, ...], blocked: tuple[Blocked | None, ...],
    blocked_by: tuple[BlockedBy | None, ...], blocks: tuple[Blocks | None, ...], lashing: tuple[str, ...],
    checks: tuple[Check, ...], spreads: Mapping[str, Range],
) -> Drawing:
    """Side, bars, from above, from behind; without the size of the load there is nothing to draw."""
    load = body((length_m, width_m, height_m), (base_length_m, base_width_m), edge_gives_m, stands, pallet, pallet_lies)
    tied = lashings(lashing, put_on, near_end, far_end_there, lashing_pull_dan, checks)
    stops = stopped(blocked, blocked_by, blocks)
    load = load._replace(deck=deck(vehicle, behind_headboard_m))

    return views(held(load, (cg_x_m, cg_y_m, cg_z_m), tied, stops, checks, spreads))
