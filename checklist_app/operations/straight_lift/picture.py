"""The lift to scale, hung as it will hang, seen square to the plane of the two legs."""

from typing import NamedTuple

from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.check import Check
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
from checklist_app.operations.graph import Waits
from checklist_app.operations.straight_lift.labels import degrees, leg_percent, metres, tonnes

BEYOND_EYES, EYE_RADIUS_M, HOOK_RADIUS_M = 0.2, 0.03, 0.06
ROPE_M = 4.0 * HOOK_RADIUS_M
ARC_SHARE, PLUMB_BELOW, BESIDE_M, LINE = 0.35, 0.12, 0.08, 1.25


class View(NamedTuple):
    """The plane of the legs: eyes at (0, 0) and (span, 0), hook and centre of gravity in it; and how the load lies."""

    span_m: float
    level_m: float
    rise_m: float
    cg_along_m: float
    cg_beside_m: float
    cg_off_m: float
    legs_upright: float
    legs_aside: float
    hook_along_m: float
    hook_off_m: float
    plumb_m: float
    facing: float

    def seen(self, along_m: float, off_m: float) -> Point:
        """A point of the plane from the hook, as it hangs: to the right, and upwards."""
        to_along, to_off = along_m - self.hook_along_m, off_m - self.hook_off_m
        plumb_along = (self.hook_along_m - self.cg_along_m) / self.plumb_m
        plumb_off = (self.hook_off_m + self.cg_off_m) / self.plumb_m
        across = to_along * plumb_off - to_off * plumb_along
        return self.facing * across, to_along * plumb_along + to_off * plumb_off

    def of_load(self, level_m: float, up_m: float) -> Point:
        """A point of the load beside its centre of gravity: level from the left eye, and over it."""
        along = (level_m * self.level_m + up_m * self.rise_m) / self.span_m
        over = (up_m * self.level_m - level_m * self.rise_m) / self.span_m
        off = self.legs_upright * over - self.legs_aside * self.cg_beside_m
        return self.seen(along, off)


def view(
    span_m: float, level_m: float, rise_m: float, cg_along_m: float, cg_beside_m: float, cg_off_m: float,
    legs_upright: float, legs_aside: float, hook_along_m: float, hook_off_m: float, plumb_m: float, run_x_m: float,
) -> View:
    """Everything needed to see the lift square to its legs, from the side where lengthwise runs to the right."""
    return View(
        span_m, level_m, rise_m, cg_along_m, cg_beside_m, cg_off_m, legs_upright, legs_aside, hook_along_m,
        hook_off_m, plumb_m, -1.0 if run_x_m < 0.0 else 1.0,
    )


def picture(
    view: View | None, cg_level_m: float | None, eye_at: tuple[Vec | None, ...], bottom_z_m: float | None,
    top_z_m: float | None, lift_height_m: float | None, underside_below_hook_m: float | None,
    highest_hook_m: float | None, hook_height_m: float | None, fittings_m: float | None,
    leg_m: tuple[float | None, ...], leg_angle_deg: tuple[float | None, ...],
    leg_load_t: tuple[float | None, ...], hung_tilt_along_deg: float | None, hung_tilt_across_deg: float | None,
    leg: tuple[str, ...], checks: tuple[Check, ...],
) -> Drawing:
    """What is known so far, around the legs; without legs there is nothing to draw."""
    if view is None or cg_level_m is None or eye_at[0] is None:
        raise Waits("eyes, legs and centre of gravity")
    eyes = view.seen(0.0, 0.0), view.seen(view.span_m, 0.0)
    cg = view.seen(view.cg_along_m, -view.cg_off_m)
    parts: list[Primitive] = [
        *_body(view, cg_level_m, eye_at[0].z, bottom_z_m, top_z_m),
        *_floor(eyes, underside_below_hook_m, lift_height_m),
        *_plumb_line(cg, underside_below_hook_m),
        *_above(fittings_m, highest_hook_m, hook_height_m),
        *_span(eyes, view.span_m),
    ]
    for label, eye, long_m, angle_deg, pull_t in zip(leg, eyes, leg_m, leg_angle_deg, leg_load_t, strict=True):
        outwards = -1.0 if eye == min(eyes) else 1.0
        parts += _leg(outwards, label, eye, long_m, angle_deg, pull_t, leg_percent(checks, label))
    parts += _tilts(cg, hung_tilt_along_deg, hung_tilt_across_deg)

    return Drawing(_told(leg, leg_angle_deg, leg_load_t, hung_tilt_along_deg), (0.0, 0.0), tuple(parts))


def _body(
    view: View, cg_level_m: float, left_eye_z_m: float, bottom_z_m: float | None, top_z_m: float | None
) -> list[Primitive]:
    """Outline between underside and highest part; its ends are not known and stand a little beyond the eyes."""
    if bottom_z_m is None or top_z_m is None:
        return []
    left, right = min(0.0, cg_level_m), max(view.level_m, cg_level_m)
    beyond = BEYOND_EYES * (right - left) + EYE_RADIUS_M
    low, high = bottom_z_m - left_eye_z_m, top_z_m - left_eye_z_m
    ends = ((left - beyond, low), (right + beyond, low), (right + beyond, high), (left - beyond, high))
    outline = tuple(view.of_load(level_m, up_m) for level_m, up_m in ends)

    return [Polyline(outline, Role.OUTLINE, closed=True, about=("bottom_z_m", "top_z_m"))]


def _floor(
    eyes: tuple[Point, Point], underside_below_hook_m: float | None, lift_height_m: float | None
) -> list[Primitive]:
    if underside_below_hook_m is None or lift_height_m is None:
        return []
    (left, _), (right, _) = eyes
    wide = 0.6 * abs(right - left) + 0.2
    under = -underside_below_hook_m
    floor = under - lift_height_m
    ends = (min(left, right) - wide, max(left, right) + wide)
    parts: list[Primitive] = [Line((ends[0], floor), (ends[1], floor), Role.GROUND)]
    if lift_height_m > 0.0:
        start, end = (ends[0], floor), (ends[0], under)
        parts.append(Dimension(start, end, metres(lift_height_m), about=("lift_height_m",)))

    return parts


def _plumb_line(cg: Point, underside_below_hook_m: float | None) -> list[Primitive]:
    below = min(cg[1], -(underside_below_hook_m or 0.0)) - PLUMB_BELOW
    arm = EYE_RADIUS_M * 1.6

    return [
        Line((0.0, 0.0), (0.0, cg[1]), Role.PLUMB),
        Line((0.0, cg[1]), (0.0, below), Role.PLUMB_ON),
        Arc(cg, EYE_RADIUS_M, 0.0, 360.0, Role.SOLID, ("cg_x_m", "cg_y_m", "cg_z_m")),
        Line((cg[0] - arm, cg[1]), (cg[0] + arm, cg[1]), Role.FINE),
        Line((cg[0], cg[1] - arm), (cg[0], cg[1] + arm), Role.FINE),
        Text((cg[0] + 1.5 * arm, cg[1]), "centre of gravity", Role.TEXT_SOFT, about=("cg_x_m", "cg_y_m", "cg_z_m")),
    ]


def _above(
    fittings_m: float | None, highest_hook_m: float | None, hook_height_m: float | None
) -> list[Primitive]:
    """From where the legs meet up to the hook's saddle, and what is left above it."""
    saddle = fittings_m or 0.0
    parts: list[Primitive] = [
        Arc((0.0, saddle + HOOK_RADIUS_M), HOOK_RADIUS_M, -200.0, 90.0, Role.MEMBER, ("hoist_strength",)),
        Line((0.0, saddle + 2.0 * HOOK_RADIUS_M), (0.0, saddle + ROPE_M), Role.MEMBER, ("hoist_strength",)),
    ]
    if saddle > 0.0:
        parts.append(Line((0.0, 0.0), (0.0, saddle), Role.MEMBER, ("hook_fitting_strength",)))
    if highest_hook_m is not None and hook_height_m is not None and highest_hook_m > hook_height_m:
        left_m = highest_hook_m - hook_height_m
        top = (0.0, saddle + left_m)
        parts.append(Dimension((0.0, saddle), top, f"{metres(left_m)} free", aside=0.5, about=("headroom",)))

    return parts


def _span(eyes: tuple[Point, Point], span_m: float) -> list[Primitive]:
    about = ("eye_strength", "carrier_strength")
    circles = [Arc(eye, EYE_RADIUS_M, 0.0, 360.0, Role.SOLID, about) for eye in eyes]

    return [*circles, Dimension(min(eyes), max(eyes), metres(span_m), aside=-0.12, about=("eyes_apart_m",))]


def _leg(
    outwards: float, label: str, eye: Point, long_m: float | None, angle_deg: float | None, pull_t: float | None,
    used: str,
) -> list[Primitive]:
    anchor = Anchor.END if outwards < 0.0 else Anchor.START
    about, angle_about = (f"sling_strength[{label}]",), (f"leg_angle[{label}]",)
    parts: list[Primitive] = [Line((0.0, 0.0), eye, Role.MEMBER, (*about, f"leg_length_m[{label}]"))]
    if angle_deg is not None and angle_deg > 0.5:
        radius, turned = ARC_SHARE * (long_m or 1.0), -90.0 + (angle_deg if eye[0] > 0.0 else -angle_deg)
        parts.append(Arc((0.0, 0.0), radius, -90.0, turned, Role.ANGLE, angle_about))
    told = (
        (tonnes(pull_t) if pull_t is not None else "", Role.TEXT_BIG, about),
        (used, Role.TEXT, about),
        (degrees(angle_deg) if angle_deg is not None else "", Role.TEXT_ANGLE, angle_about),
        (f"{label} {metres(long_m)}" if long_m is not None else "", Role.TEXT_SOFT, (f"leg_length_m[{label}]",)),
    )
    beside = (eye[0] + BESIDE_M * outwards, 0.0)
    lines = [each for each in told if each[0]]
    parts += [Text(beside, words, role, anchor, LINE * n, shows) for n, (words, role, shows) in enumerate(lines)]

    return parts


def _tilts(cg: Point, along_deg: float | None, across_deg: float | None) -> list[Primitive]:
    told = (("tilt", along_deg, "tilt_along"), ("crosswise", across_deg, "tilt_across"))
    at = (cg[0] + 2.4 * EYE_RADIUS_M, cg[1])

    return [
        Text(at, f"{words} {degrees(abs(angle))}", Role.TEXT_SOFT, Anchor.START, LINE * line, (about,))
        for line, (words, angle, about) in enumerate(told, 1)
        if angle is not None
    ]


def _told(
    leg: tuple[str, ...], angles: tuple[float | None, ...], pulls: tuple[float | None, ...], tilt_deg: float | None
) -> str:
    """The drawing in words, for who cannot see it."""
    legs = [
        f"{label} leg at {degrees(angle)} from vertical" + (f" pulls {tonnes(pull)}" if pull is not None else "")
        for label, angle, pull in zip(leg, angles, pulls, strict=True)
        if angle is not None
    ]
    tilt = [f"tilt lengthwise {degrees(abs(tilt_deg))}"] if tilt_deg is not None else []

    return "The load on one hook, as it will hang: " + "; ".join(legs + tilt) + "."
