"""Side view, end view and plan of one lift, to scale, from the points of it as it hangs."""

from collections.abc import Iterator

from checklist_app.mechanics.vectors import length, less
from checklist_app.operations.drawing import (
    Anchor,
    Arc,
    Dimension,
    Drawing,
    Line,
    Point,
    Polyline,
    Primitive,
    Role,
    Text,
)
from checklist_app.operations.looks import FROM_ABOVE, Look, silhouette
from checklist_app.operations.straight_lift import told
from checklist_app.operations.straight_lift.heights import floor, free_above
from checklist_app.operations.straight_lift.hung import HOOK, Hung, Leg, beside, square_to
from checklist_app.operations.straight_lift.labels import degrees, metres
from checklist_app.operations.straight_lift.way_views import moved_aside

EYE_RADIUS_M, HOOK_RADIUS_M = 0.03, 0.06
ROPE_M = 4.0 * HOOK_RADIUS_M
ARC_SHARE, PLUMB_BELOW, BESIDE_M = 0.35, 0.12, 0.08
CG = ("cg_x_m", "cg_y_m", "cg_z_m")
EYES = ("eye_strength", "carrier_strength")
HOIST, ALL_LEGS = ("hoist_strength",), "pair_strength"
RUNS = ("running_depth", "running_push", "running_holds")
ABOVE = ("hoist_strength", "load_cell_strength", "hook_fitting_strength")
SIDE, END, PLAN = "Side view", "End view", "Plan"
END_NOTE = "From the right end. The load is drawn a little wider than its eyes stand."


def views(hung: Hung) -> Drawing:
    """The view from the side, with the others beside it: the end, and for more than two legs or hooks the plan."""
    look = square_to(hung.legs)
    others = [end(hung, beside(look))]
    if len(hung.legs) > 2 or len(hung.hooks) > 1:
        others.append(plan(hung))

    return Drawing(told.drawing(hung), (0.0, 0.0), tuple(side(hung, look)), SIDE, others=tuple(others))


def side(hung: Hung, look: Look) -> Iterator[Primitive]:
    """Everything, seen square to two legs or from the front."""
    yield from _body(hung, look)
    yield from floor(hung, look)
    yield from _plumb(hung, look)
    yield from _above(hung, look)
    yield from free_above(hung, look)
    yield from _legs(hung, look)
    if len(hung.legs) == 2:
        yield from _arcs(hung.legs, look)
        yield _between(hung.legs[0], hung.legs[1], look, "eyes_apart_m")
    yield from told.beside_legs(hung, look, BESIDE_M)
    yield from _tilt(hung, look, hung.tilt_along_deg, "tilt_along")


def end(hung: Hung, look: Look) -> Drawing:
    """Seen along the load: what tilts crosswise."""
    parts = [
        *_body(hung, look), *floor(hung, look, measured=False), *_plumb(hung, look), *_above(hung, look, worded=False),
        *_legs(hung, look), *_tilt(hung, look, hung.tilt_across_deg, "tilt_across"), *moved_aside(hung, look),
    ]
    tilt = f", tilt crosswise {degrees(abs(hung.tilt_across_deg))}" if hung.tilt_across_deg is not None else ""

    words = f"The same seen from the right end{tilt}{told.moved(hung)}."

    return Drawing(words, (0.0, 0.0), tuple(parts), END, END_NOTE)


def plan(hung: Hung) -> Drawing:
    """Seen from above: every leg by itself."""
    look, legs = FROM_ABOVE, hung.legs
    parts: list[Primitive] = [*_body(hung, look), *_legs(hung, look), *_centre(hung, look, worded=False)]
    parts += [Arc(look.at(hook), HOOK_RADIUS_M, 0.0, 360.0, Role.FINE) for hook in hung.hooks]
    if len(legs) == 4:
        parts.append(_between(legs[2], legs[3], look, "eyes_apart_m"))
        parts.append(_between(legs[0], legs[2], look, "eyes_across_m"))
    parts += told.at_eyes(hung, look, BESIDE_M)

    return Drawing(f"The same from above: {told.legs(hung)}.", (0.0, 0.0), tuple(parts), PLAN, "Front at the foot.")


def _body(hung: Hung, look: Look) -> Iterator[Primitive]:
    """Its outline between underside and highest part."""
    if hung.corners:
        outline = silhouette(look.at(corner) for corner in hung.corners)
        yield Polyline(outline, Role.OUTLINE, closed=True, about=("bottom_z_m", "top_z_m"))


def _plumb(hung: Hung, look: Look) -> Iterator[Primitive]:
    """From the hook through the centre of gravity; between two hooks only what goes on below."""
    cg = look.at(hung.cg)
    below = min(cg[1], -(hung.underside_m or 0.0)) - PLUMB_BELOW
    if len(hung.hooks) == 1:
        yield Line((0.0, 0.0), (0.0, cg[1]), Role.PLUMB)
    else:
        yield Line((cg[0], max(look.at(hook)[1] for hook in hung.hooks)), cg, Role.PLUMB_ON)
    yield Line(cg, (cg[0], below), Role.PLUMB_ON)
    yield from _centre(hung, look)


def _centre(hung: Hung, look: Look, worded: bool = True) -> Iterator[Primitive]:
    cg, arm = look.at(hung.cg), EYE_RADIUS_M * 1.6
    yield Arc(cg, EYE_RADIUS_M, 0.0, 360.0, Role.SOLID, CG)
    yield Line((cg[0] - arm, cg[1]), (cg[0] + arm, cg[1]), Role.FINE)
    yield Line((cg[0], cg[1] - arm), (cg[0], cg[1] + arm), Role.FINE)
    if worded:
        at = (cg[0] + 1.5 * arm, cg[1])
        yield Text(at, "centre of", Role.TEXT_SOFT, lower=0.0, about=CG)
        yield Text(at, "gravity", Role.TEXT_SOFT, lower=1.2, about=CG)


def _above(hung: Hung, look: Look, worded: bool = True) -> Iterator[Primitive]:
    """From where the legs meet up to the saddle of the hook, for each hook."""
    for place, hook in enumerate(hung.hooks):
        heavy = Role.GOVERNS if place in hung.heavy_hooks else Role.MEMBER
        across, up = look.at(hook)
        saddle = up + hung.saddle_m
        rope = (across, saddle + 2.0 * HOOK_RADIUS_M), (across, saddle + ROPE_M)
        yield Arc((across, saddle + HOOK_RADIUS_M), HOOK_RADIUS_M, -200.0, 90.0, heavy, HOIST)
        yield Line(*rope, heavy, HOIST)
        if hung.saddle_m > 0.0:
            yield Line((across, up), (across, saddle), heavy, ("hook_fitting_strength",))
    if worded and hung.governs_words and (hung.heavy_hooks or hung.governs == ALL_LEGS):
        across, up = look.at(hung.hooks[max(hung.heavy_hooks, default=0)])
        yield Text((across + 3.0 * HOOK_RADIUS_M, up + hung.saddle_m), hung.governs_words, about=(hung.governs,))


def _legs(hung: Hung, look: Look) -> Iterator[Primitive]:
    """The legs, those behind first, so that the nearer ones lie over them."""
    for leg in sorted(hung.legs, key=lambda leg: look.near(leg.eye)):
        here = leg.governs and not hung.heavy_hooks
        role = Role.GOVERNS if here or hung.governs == ALL_LEGS else Role.MEMBER
        about = (f"sling_strength[{leg.label}]", f"leg_length_m[{leg.label}]")
        yield Line(look.at(leg.hook), look.at(leg.eye), role, about)
    if hung.runs:
        yield from _over_the_hook(hung, look)
    yield from (Arc(look.at(leg.eye), EYE_RADIUS_M, 0.0, 360.0, Role.SOLID, EYES) for leg in hung.legs)


def _over_the_hook(hung: Hung, look: Look) -> Iterator[Primitive]:
    """The one sling goes round the hook, from part to part."""
    role = Role.GOVERNS if hung.governs in RUNS or any(leg.governs for leg in hung.legs) else Role.MEMBER
    at = look.at(HOOK)
    yield Arc(at, 0.8 * HOOK_RADIUS_M, 0.0, 180.0, role, RUNS)


def _arcs(legs: tuple[Leg, ...], look: Look) -> Iterator[Primitive]:
    for leg in legs:
        if leg.angle_deg is not None and leg.angle_deg > 0.5:
            at, eye = look.at(leg.hook), look.at(leg.eye)
            turned = -90.0 + (leg.angle_deg if eye[0] > at[0] else -leg.angle_deg)
            radius = ARC_SHARE * (leg.length_m or 1.0)
            yield Arc(at, radius, -90.0, turned, Role.ANGLE, (f"leg_angle[{leg.label}]",))


def _between(one: Leg, other: Leg, look: Look, about: str) -> Dimension:
    """The true distance of two eyes, at their line."""
    ends = sorted((look.at(one.eye), look.at(other.eye)))
    return Dimension(ends[0], ends[1], metres(length(less(other.eye, one.eye))), aside=-0.12, about=(about,))


def _tilt(hung: Hung, look: Look, tilt_deg: float | None, about: str) -> Iterator[Primitive]:
    """The planned tilt as seen in this view."""
    if tilt_deg is not None:
        cg: Point = look.at(hung.cg)
        under = min((point[1] for point in map(look.at, hung.corners)), default=cg[1])
        at = (cg[0] + 2.4 * EYE_RADIUS_M, (cg[1] + 2.0 * under) / 3.0)
        governs = ", governs" if hung.governs == about else ""
        yield Text(at, f"planned tilt {degrees(abs(tilt_deg))}{governs}", Role.TEXT_SOFT, Anchor.START, about=(about,))
