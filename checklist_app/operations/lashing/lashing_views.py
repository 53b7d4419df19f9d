"""A lashed load to scale: from the side, from above and from behind, with the bars beside it."""

from collections.abc import Iterator, Sequence
from dataclasses import replace

from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.vectors import Vec, dot, stepped
from checklist_app.operations.check import Verdict
from checklist_app.operations.drawing import (
    Anchor,
    Arc,
    Arrow,
    Drawing,
    Line,
    Point,
    Polyline,
    Primitive,
    Role,
    Text,
)
from checklist_app.operations.lashing import lashing_told as told
from checklist_app.operations.lashing.lashing_bars import chart
from checklist_app.operations.lashing.lashing_ground import box, ground, standing
from checklist_app.operations.lashing.shown import Shown, Tied
from checklist_app.operations.looks import FROM_ABOVE, FROM_THE_FRONT, UPRIGHT, Look
from checklist_app.operations.words import figure

FROM_BEHIND = Look(Vec(0.0, -1.0, 0.0), UPRIGHT)
SIDE, ABOVE, BEHIND = "From the right side", "From above", "From behind"
FRONT, FRONT_HIGH = "front", 0.85
SIDE_NOTE, ABOVE_NOTE = "Front at the right.", "Front at the right, left side at the top."
RANGE_NOTE = "Dashed round the centre of gravity: where it may lie."
ROWS, MOST_ROWS, ALIKE, MOST_LETTERS = 3, 6, 0.5, 21
CG = ("cg_x_m", "cg_y_m", "cg_z_m")
ENDS = tuple(f"{end}_{axis}_m" for end in ("at", "anchor", "far_at", "far_anchor") for axis in "xyz")
ARROW, EDGE, HEAD, STOP = 6.0, 1.6, 1.6, 2.4
OVER_LOAD, OVER_NUMBERS, BELOW_NUMBERS = 1.5, 8.0, 1.6


def views(shown: Shown) -> Drawing:
    """The view from the side, with the bars and the other two beside it."""
    below = [*told.names(shown), *(told.block(stop) for stop in shown.stops)]
    front = [told.headboard(shown)] if shown.deck is not None else []
    side = _view(shown, FROM_THE_FRONT, SIDE, SIDE_NOTE, front, ROWS)
    above = _view(shown, FROM_ABOVE, ABOVE, ABOVE_NOTE, below, MOST_ROWS)
    behind = _view(shown, FROM_BEHIND, BEHIND, "")
    charts = (chart(shown.bars),) if any(bar.verdict != Verdict.WAITING.words for bar in shown.bars) else ()

    return replace(side, label=told.drawing(shown), others=(*charts, above, behind))


def _view(
    shown: Shown, look: Look, name: str, note: str, more: Sequence[str] = (), rows: int | None = None
) -> Drawing:
    """Far lashings, ground, body, near lashings, then what is marked on them; `rows` of a list of lashings below."""
    near = [each for each in shown.tied if look is FROM_ABOVE or _nearness(each, look) >= 0.0]
    far = [each for each in shown.tied if each not in near]
    parts: list[Primitive] = [*ground(shown, look), *_lashings(shown, far, look)]
    parts += [*standing(shown, look), *_lashings(shown, near, look), *_stops(shown, look), *_edge(shown, look)]
    parts += [*_centre(shown, look), *_push(shown, look), *_numbers(shown, look)]
    hook = _hook(shown, look)
    (left, low), (_, high) = Drawing("", hook, tuple(parts)).bounds()
    if look is FROM_THE_FRONT:
        before = shown.size.x / 2.0 + shown.unit_m(look)
        parts.append(Text((before, FRONT_HIGH * shown.size.z), FRONT, Role.TEXT_SOFT))
        parts += [Line((hook[0], high), hook, Role.PLUMB)] if shown.cg is not None and high > hook[1] else []
        hook = (hook[0], high)
    if rows is not None:
        parts += told.beneath(shown, (left, low), more, rows, BELOW_NUMBERS if look is FROM_ABOVE else told.FIRST_LINE)
    noted = f"{note} {RANGE_NOTE}".strip() if shown.cg_range is not None else note

    return Drawing(f"{name}: {told.drawing(shown)}", hook, tuple(parts), name, noted)


def _hook(shown: Shown, look: Look) -> Point:
    """Where the plumb line comes in: over the centre of gravity, at the top of the load."""
    if look is FROM_ABOVE:
        return 0.0, 0.0
    across = look.at(shown.cg)[0] if shown.cg is not None else 0.0

    return across, shown.size.z


def _nearness(tied: Tied, look: Look) -> float:
    return max(look.near(stepped(at, 1.0, anchor)) for at, anchor in tied.ends) if tied.ends else 0.0


def _lashings(shown: Shown, tied: list[Tied], look: Look) -> Iterator[Primitive]:
    """Each end from the load to its anchor; a tie-down goes over the top, loop and spring round the load."""
    unit = shown.unit_m(look)
    for each in tied:
        role = Role.GOVERNS if each.governs else Role.MEMBER
        about = (each.check or f"lashing_strength[{each.label}]", *(f"{name}[{each.label}]" for name in ENDS))
        across = [look.at(at) for at, _ in each.ends]
        if len(across) == 2 and each.kind is Kind.TIE_DOWN:
            yield Line(across[0], across[1], role, about)
        elif len(across) == 2:
            yield Line(across[0], across[1], Role.FINE, about)
        for at, anchor in each.ends:
            yield Line(look.at(at), look.at(anchor), role, about)
        yield from (Arc(look.at(anchor), 0.3 * unit, 0.0, 360.0, Role.SOLID) for _, anchor in each.ends)


def _stops(shown: Shown, look: Look) -> Iterator[Primitive]:
    """A wedge that shows where it touches, and a square where it is looked at along its push."""
    unit = shown.unit_m(look)
    for stop in shown.stops:
        touch, away = look.at(stop.at), look.at(stop.keeps_from.way)
        if away == (0.0, 0.0):
            corners = box((touch[0] - unit, touch[1] - unit), (touch[0] + unit, touch[1] + unit))
        else:
            back = (touch[0] + STOP * unit * away[0], touch[1] + STOP * unit * away[1])
            side = (1.2 * unit * away[1], 1.2 * unit * abs(away[0]))
            corners = (touch, (back[0] + side[0], back[1] + side[1]), (back[0] - side[0], back[1] - side[1]))
        yield Polyline(corners, Role.SOLID, closed=True)


def _edge(shown: Shown, look: Look) -> Iterator[Primitive]:
    """The edge that it goes over first: what it would turn about."""
    over = shown.tips_over
    if over is None or shown.base is None:
        return
    unit, way = shown.unit_m(look), over.direction.way
    on_pallet = over.on_deck and shown.pallet is not None
    long, wide = (shown.pallet.x, shown.pallet.y) if on_pallet and shown.pallet else shown.base
    soft = 0.0 if on_pallet else shown.soft_m
    reach = (wide if over.direction.is_sideways else long) / 2.0 - soft
    middle = Vec(way.x * reach, way.y * reach, shown.ground_z_m if on_pallet else 0.0)
    if look is FROM_ABOVE:
        half = (long if over.direction.is_sideways else wide) / 2.0
        along = Vec(abs(way.y) * half, abs(way.x) * half, 0.0)
        low, high = (look.at(stepped(middle, side, along)) for side in (-1.0, 1.0))
        thick = 0.35 * unit
        yield Polyline(box((low[0] - thick, low[1] - thick), (high[0] + thick, high[1] + thick)), Role.SOLID, True,
                       (over.check,))
    elif look.at(way) != (0.0, 0.0):
        at = look.at(middle)
        foot = at[1] - EDGE * unit
        yield Polyline((at, (at[0] - unit, foot), (at[0] + unit, foot)), Role.SOLID, True, (over.check,))
        wide = max(abs(look.at(body)[0]) for body in (shown.size, shown.pallet or shown.size))
        outside = ((wide / 2.0 + unit) * look.at(way)[0], at[1])
        yield Text(outside, "tips here first", Role.TEXT_SOFT, _outwards(look.at(way)), about=(over.check,))


def _outwards(way: Point) -> Anchor:
    return Anchor.END if way[0] < 0.0 else Anchor.START


def _centre(shown: Shown, look: Look) -> Iterator[Primitive]:
    """The plumb line through the centre of gravity, and where that may lie."""
    if shown.cg is None:
        return
    at, radius = look.at(shown.cg), 0.6 * shown.unit_m(look)
    if look is not FROM_ABOVE:
        yield Line((at[0], shown.size.z), at, Role.PLUMB)
        yield Line(at, (at[0], shown.ground_z_m), Role.PLUMB_ON)
    if shown.cg_range is not None:
        low, high = sorted(map(look.at, shown.cg_range))
        if high != low:
            yield Polyline(box(low, high), Role.WORST, True, CG)
    yield Arc(at, radius, 0.0, 360.0, Role.SOLID, CG)
    yield Line((at[0] - 1.6 * radius, at[1]), (at[0] + 1.6 * radius, at[1]), Role.FINE)
    yield Line((at[0], at[1] - 1.6 * radius), (at[0], at[1] + 1.6 * radius), Role.FINE)


def _push(shown: Shown, look: Look) -> Iterator[Primitive]:
    """Which way it is pushed where least is left, and how hard: over the load, from above beside it."""
    push = shown.pushed
    if push is None:
        return
    way, unit, size = look.at(push.direction.way), shown.unit_m(look), shown.size
    if way == (0.0, 0.0):
        return
    if look is FROM_ABOVE:
        bodies = [size, *([shown.pallet] if shown.pallet is not None else [])]
        reach = [0.5 * (body.y if push.direction.is_sideways else body.x) for body in bodies]
        reach += [dot(stop.at, push.direction.way) + STOP * unit for stop in shown.stops]
        start = (way[0] * (max(reach) + unit), way[1] * (max(reach) + unit))
    else:
        middle = look.at(shown.cg)[0] if shown.cg is not None else 0.0
        before = _before_load_m(shown, look)
        numbered = any(abs(look.at(anchor)[0]) < before for each in shown.tied for _, anchor in each.ends)
        start = (middle + unit * way[0], size.z + (OVER_NUMBERS if numbered else OVER_LOAD) * unit)
    end = (start[0] + ARROW * unit * way[0], start[1] + ARROW * unit * way[1])
    yield Arrow(start, end, Role.ANGLE, HEAD * unit, (push.check,))
    if look is not FROM_ABOVE:
        over = push.times is not None and push.times < 1.0
        need = f", {figure(push.need_dan, 'daN', up=over)} daN" if push.need_dan is not None else ""
        words = f"pushed {push.direction.value}{need}"
        yield Text((start[0], start[1] + unit), words, Role.TEXT_ANGLE, _outwards(way), -0.4, (push.check,))


def _numbers(shown: Shown, look: Look) -> Iterator[Primitive]:
    """Each lashing's number where it is anchored, once where several ends come together; before the load over it."""
    unit = shown.unit_m(look)
    before, near = _before_load_m(shown, look), ALIKE * unit
    places = _places(shown, look, near)
    room = MOST_LETTERS * (2 if look is FROM_ABOVE else 1)
    while len(places) > 1 and len(" ".join(told.together(names) for _, _, names in places)) > room:
        near = 2.0 * near
        places = _places(shown, look, near)
    for foot, top, names in places:
        side, words = -1.0 if foot[0] < 0.0 else 1.0, told.together(names)
        if look is FROM_ABOVE:
            up = 1.0 if foot[1] > 0.0 else -1.0
            edge = max(abs(foot[1]), *_edges(shown))
            yield Text((foot[0], up * (edge + unit)), words, Role.TEXT, Anchor.MIDDLE, -0.4 * up)
        elif abs(foot[0]) < before:
            yield Text((top[0], max(top[1], shown.size.z) + 0.5 * unit), words, Role.TEXT, Anchor.MIDDLE, -0.4)
        else:
            yield Text((foot[0] + side * unit, foot[1]), words, Role.TEXT, _outwards((side, 0.0)), -0.5)


def _places(shown: Shown, look: Look, near: float) -> list[tuple[Point, Point, list[str]]]:
    """Where lashings are anchored: foot and top of the first that comes there, and the numbers of all so near to it."""
    places: list[tuple[Point, Point, list[str]]] = []
    for each in shown.tied:
        for at, anchor in each.ends:
            foot = look.at(anchor)
            known = next((names for place, _, names in places if _close(place, foot, near)), None)
            if known is None:
                places.append((foot, look.at(at), [each.number]))
            elif each.number not in known:
                known.append(each.number)
    return places


def _edges(shown: Shown) -> list[float]:
    """How far to one side load, pallet and deck reach, so that numbers stand outside them."""
    wide = [shown.size.y, *([shown.pallet.y] if shown.pallet is not None else [])]
    wide += [shown.deck.width_m] if shown.deck is not None else []

    return [each / 2.0 for each in wide]


def _before_load_m(shown: Shown, look: Look) -> float:
    """What is anchored no farther out than this is seen before the load."""
    return abs(look.at(shown.size)[0]) / 2.0 + shown.unit_m(look)


def _close(one: Point, other: Point, near: float) -> bool:
    return abs(one[0] - other[0]) <= near and abs(one[1] - other[1]) <= near


