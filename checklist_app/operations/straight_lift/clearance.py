"""Heights as the load hangs: its body is known between underside and highest part, at the eyes and at the middle."""

from collections.abc import Iterator

from checklist_app.mechanics import headroom, vectors
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Hook, LoadCell, Shackle
from checklist_app.operations.graph import CannotAssess, at_nominal


@at_nominal
def body_is_sound(bottom_z_m: float, top_z_m: float, cg_z_m: float) -> bool:
    """Whether heights were mixed up: the centre of gravity of a body lies between its underside and its top."""
    return bottom_z_m < top_z_m and bottom_z_m <= cg_z_m <= top_z_m


def underside_below_hook_m(
    eye_at: tuple[Vec, ...], cg: Vec, hook_at: Vec, upright: Vec, bottom_z_m: float, top_z_m: float,
    body_is_sound: bool,
) -> float:
    """Lowest point of the load below the hook, as it hangs."""
    if not body_is_sound:
        raise CannotAssess("the centre of gravity does not lie between the underside and the highest part of the load")
    depths = _depths(eye_at, cg, hook_at, upright, bottom_z_m, top_z_m)
    lowest = next(depths)
    for depth in depths:
        lowest = depth if depth > lowest else lowest

    return lowest


def top_below_hook_m(
    eye_at: tuple[Vec, ...], cg: Vec, hook_at: Vec, upright: Vec, bottom_z_m: float, top_z_m: float,
    body_is_sound: bool,
) -> float:
    """Highest point of the load below the hook, as it hangs."""
    if not body_is_sound:
        raise CannotAssess("the centre of gravity does not lie between the underside and the highest part of the load")
    depths = _depths(eye_at, cg, hook_at, upright, bottom_z_m, top_z_m)
    highest = next(depths)
    for depth in depths:
        highest = depth if depth < highest else highest

    return highest


def fittings_m(load_cell: LoadCell | None, hook_fitting: Shackle | Hook | None) -> float:
    """From the hook's saddle down to where the legs meet."""
    total_m = 0.0
    for item in (load_cell, hook_fitting):
        if item is not None:
            total_m = total_m + item.reach_m

    return total_m


def hook_height_m(lift_height_m: float, underside_below_hook_m: float, fittings_m: float) -> float:
    """Hook's saddle over the floor, at the highest moment."""
    return headroom.hook_height_m(lift_height_m, underside_below_hook_m, fittings_m)


def top_height_m(lift_height_m: float, underside_below_hook_m: float, top_below_hook_m: float) -> float:
    """Highest part of the load over the floor, at the highest moment."""
    return lift_height_m + underside_below_hook_m - top_below_hook_m


def _depths(
    eye_at: tuple[Vec, ...], cg: Vec, hook_at: Vec, upright: Vec, bottom_z_m: float, top_z_m: float
) -> Iterator[float]:
    for point in (*eye_at, cg):
        for z_m in (bottom_z_m, top_z_m):
            yield vectors.dot(vectors.between(Vec(point.x, point.y, z_m), hook_at), upright)
