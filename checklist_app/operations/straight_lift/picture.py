"""The lift to scale, hung as it will hang: what is known so far, as side view, end view and plan."""

from checklist_app.mechanics.vectors import Vec, length, less, times
from checklist_app.operations.check import Check, governs
from checklist_app.operations.drawing import Drawing
from checklist_app.operations.graph import Waits
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.hung import HOOK, Hung, Leg, as_it_hangs, corners
from checklist_app.operations.straight_lift.labels import governing_words, leg_highest, leg_percent, of_a_hook
from checklist_app.operations.straight_lift.views import ABOVE, views


def picture(
    down: Vec | None, hung_cg: Vec | None, hung_eye: tuple[Vec | None, ...], cg_x_m: float | None,
    cg_y_m: float | None, cg_z_m: float | None, eye_at: tuple[Vec | None, ...], hooks_apart_m: float | None,
    hooks_rise_m: float | None, bottom_z_m: float | None, top_z_m: float | None, lift_height_m: float | None,
    underside_below_hook_m: float | None, highest_hook_m: float | None, hook_height_m: float | None,
    fittings_m: float | None, leg_m: tuple[float | None, ...], leg_angle_deg: tuple[float | None, ...],
    leg_load_t: tuple[float | None, ...], hung_tilt_along_deg: float | None, hung_tilt_across_deg: float | None,
    wind_z_m: float | None, wind_force_kn: float | None, swing_out_m: float | None, leg: tuple[str, ...],
    hook: tuple[str, ...], rig: Rig, checks: tuple[Check, ...],
) -> Drawing:
    """What is known so far, around the legs; without legs there is nothing to draw."""
    eyes = tuple(eye for eye in hung_eye if eye is not None)
    if down is None or hung_cg is None or not eyes or len(eyes) != len(leg):
        raise Waits("eyes, legs and centre of gravity")
    body = _body(eye_at, (cg_x_m, cg_y_m, cg_z_m), (bottom_z_m, top_z_m))
    hooks = _hooks(eyes, hooks_apart_m, hooks_rise_m)
    deciding = governs(checks)
    legs = tuple(
        Leg(label, hooks[place] if len(hooks) > 1 else HOOK, eye, long_m, angle_deg, pull_t,
            leg_percent(checks, label), leg_highest(checks, label), governing_words(deciding, label))
        for place, (label, eye, long_m, angle_deg, pull_t) in enumerate(
            zip(leg, eyes, leg_m, leg_angle_deg, leg_load_t, strict=True))
    )
    free_m = highest_hook_m - hook_height_m if highest_hook_m is not None and hook_height_m is not None else None

    return views(Hung(
        legs, hooks, hung_cg, tuple(as_it_hangs(corner, body[0], hung_cg, down) for corner in body[1:]),
        underside_below_hook_m, lift_height_m, free_m, fittings_m or 0.0, hung_tilt_along_deg, hung_tilt_across_deg,
        deciding.quantity if deciding is not None else "", governing_words(deciding, None), _heavy(deciding, hook),
        _pushed_at(body, wind_z_m, hung_cg, down) if wind_force_kn is not None else None, wind_force_kn, swing_out_m,
        rig is Rig.RUNNING,
    ))


def _body(
    eye_at: tuple[Vec | None, ...], cg: tuple[float | None, ...], heights: tuple[float | None, ...]
) -> tuple[Vec, ...]:
    """The centre of gravity and the corners of the load in its own axes; nothing while a height is missing."""
    eyes = [eye for eye in eye_at if eye is not None]
    known = [number for number in (*cg, *heights) if number is not None]
    if len(known) < 5 or len(eyes) < len(eye_at):
        return ()
    middle = Vec(known[0], known[1], known[2])

    return (middle, *corners(eyes, middle, known[3], known[4]))


def _pushed_at(body: tuple[Vec, ...], wind_z_m: float | None, hung_cg: Vec, down: Vec) -> Vec | None:
    """Where a gust pushes: over or under the centre of gravity."""
    if not body or wind_z_m is None:
        return None

    return as_it_hangs(body[0]._replace(z=wind_z_m), body[0], hung_cg, down)


def _hooks(eyes: tuple[Vec, ...], apart_m: float | None, rise_m: float | None) -> tuple[Vec, ...]:
    """One hook, or the second one in the upright plane of the two eyes."""
    if apart_m is None or rise_m is None or len(eyes) != 2:
        return (HOOK,)
    run = less(eyes[1], eyes[0])._replace(z=0.0)
    long = length(run)
    way = times(run, apart_m / long) if long > 0.0 else Vec(apart_m, 0.0, 0.0)

    return HOOK, way._replace(z=rise_m)


def _heavy(deciding: Check | None, hook: tuple[str, ...]) -> tuple[int, ...]:
    """Which hooks decide, by their places."""
    if deciding is None:
        return ()
    if of_a_hook(deciding):
        return tuple(place for place, label in enumerate(hook) if label == deciding.row)

    return (0,) if deciding.quantity in ABOVE else ()
