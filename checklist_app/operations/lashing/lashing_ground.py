"""What a load stands on in a view: deck with its headboard or floor, pallet, feet, and the load's own outline."""

from collections.abc import Iterator
from dataclasses import replace

from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.drawing import Line, Point, Polyline, Primitive, Role
from checklist_app.operations.lashing.shown import Deck, Shown
from checklist_app.operations.looks import FROM_ABOVE, FROM_THE_FRONT, Look

BEYOND, NEAR_BY, BOARD_HIGH, CUT_DEEP = 4.0, 0.15, 0.8, 3.0
FOOT_HIGH, FOOT_LONG = 0.06, 0.16
SIZE = ("length_m", "width_m", "height_m")


def box(low: Point, high: Point) -> tuple[Point, ...]:
    """An upright rectangle between two corners."""
    return low, (high[0], low[1]), high, (low[0], high[1])


def standing(shown: Shown, look: Look) -> Iterator[Primitive]:
    """Pallet, feet and load."""
    size, foot = shown.size, FOOT_HIGH * shown.size.z if shown.base is not None else 0.0
    if shown.pallet is not None:
        yield _block(shown.pallet, -shown.pallet.z, 0.0, look, ("pallet",))
    if look is FROM_ABOVE:
        yield _block(size, foot, size.z, look, SIZE)
        yield from _feet(shown, look, foot, Role.FINE)
    else:
        yield from _feet(shown, look, foot, Role.OUTLINE)
        yield _block(size, foot, size.z, look, SIZE)


def ground(shown: Shown, look: Look) -> Iterator[Primitive]:
    """The deck with its headboard, or the floor; what lies far off is cut off."""
    left, right = _reach(shown, look)
    if shown.deck is None:
        if look is not FROM_ABOVE:
            yield Line((left, shown.ground_z_m), (right, shown.ground_z_m), Role.GROUND)
        return
    if look is FROM_THE_FRONT or look is FROM_ABOVE:
        yield from _deck(shown, shown.deck, look, left, right)
    else:
        half = shown.deck.width_m / 2.0
        yield Line((-half, shown.ground_z_m), (half, shown.ground_z_m), Role.GROUND)


def _deck(shown: Shown, deck: Deck, look: Look, left: float, right: float) -> Iterator[Primitive]:
    """Lengthwise: its end and its headboard where they are near by."""
    unit, half = shown.unit_m(look), deck.width_m / 2.0
    end, front = deck.headboard_x_m - deck.length_m, deck.headboard_x_m
    near = NEAR_BY * (right - left)
    start = min(end, right) if end >= left - near else left
    stop = max(front, left) if front <= right + near else right
    low = shown.ground_z_m
    if look is FROM_ABOVE:
        yield from (Line((start, side), (stop, side), Role.FINE) for side in (-half, half))
        if start == end:
            yield Line((end, -half), (end, half), Role.FINE)
        low, high = -half, half
        cut = low, high
    else:
        cut = low - CUT_DEEP * unit, low
        yield Line((start, low), (stop, low), Role.GROUND)
        high = low + BOARD_HIGH * shown.size.z
    if stop == front:
        yield Polyline(box((front, low), (front + 0.5 * unit, high)), Role.SOLID, True, ("behind_headboard_m",))
    else:
        yield from _cut(stop, *cut, unit)
    if start != end:
        yield from _cut(start, *cut, unit)


def _cut(across: float, low: float, high: float, unit: float) -> Iterator[Primitive]:
    """A broken line: it goes on beyond the drawing."""
    middle, bent = (low + high) / 2.0, 0.8 * unit
    yield Polyline(((across, low), (across, middle - bent), (across + bent, middle - bent / 3.0),
                    (across - bent, middle + bent / 3.0), (across, middle + bent), (across, high)), Role.FINE)


def _reach(shown: Shown, look: Look) -> tuple[float, float]:
    """How far to both sides something of the load, its pallet or its lashings is."""
    across = [look.at(point)[0] for point in shown.points]
    beyond = BEYOND * shown.unit_m(look)

    return min(across) - beyond, max(across) + beyond


def _block(size: Vec, low: float, high: float, look: Look, about: tuple[str, ...]) -> Polyline:
    """A body that stands in the middle, seen square."""
    one, other = (look.at(Vec(side * size.x / 2.0, side * size.y / 2.0, z)) for side, z in ((-1.0, low), (1.0, high)))
    left, right = sorted((one[0], other[0]))
    under, over = sorted((one[1], other[1]))

    return Polyline(box((left, under), (right, over)), Role.OUTLINE, True, about)


def _feet(shown: Shown, look: Look, high: float, role: Role) -> Iterator[Primitive]:
    """Feet at the ends of what it stands on, or one full face."""
    if shown.base is None:
        return
    long, wide = shown.base
    about = ("base_length_m", "base_width_m")
    if look is FROM_ABOVE or not shown.on_feet:
        yield replace(_block(Vec(long, wide, high), 0.0, high, look, about), role=role)
        return
    half = (long if look is FROM_THE_FRONT else wide) / 2.0
    foot = FOOT_LONG * 2.0 * half
    for left in (-half, half - foot):
        yield Polyline(box((left, 0.0), (left + foot, high)), role, True, about)
