"""The lift to scale, hung as it will hang: what is known so far, as side view, end view and plan."""

from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.check import Check, governs
from checklist_app.operations.drawing import Drawing
from checklist_app.operations.graph import Waits
from checklist_app.operations.straight_lift.hung import Hung, Leg, as_it_hangs, corners
from checklist_app.operations.straight_lift.labels import governing_words, leg_highest, leg_percent
from checklist_app.operations.straight_lift.views import views

HOOK = Vec(0.0, 0.0, 0.0)


def picture(
    down: Vec | None, plumb_m: float | None, cg_x_m: float | None, cg_y_m: float | None, cg_z_m: float | None,
    eye_at: tuple[Vec | None, ...], bottom_z_m: float | None, top_z_m: float | None, lift_height_m: float | None,
    underside_below_hook_m: float | None, highest_hook_m: float | None, hook_height_m: float | None,
    fittings_m: float | None, leg_m: tuple[float | None, ...], leg_angle_deg: tuple[float | None, ...],
    leg_load_t: tuple[float | None, ...], hung_tilt_along_deg: float | None, hung_tilt_across_deg: float | None,
    leg: tuple[str, ...], checks: tuple[Check, ...],
) -> Drawing:
    """What is known so far, around the legs; without legs there is nothing to draw."""
    eyes = tuple(eye for eye in eye_at if eye is not None)
    if down is None or plumb_m is None or cg_x_m is None or cg_y_m is None or cg_z_m is None or len(eyes) != len(leg):
        raise Waits("eyes, legs and centre of gravity")
    cg, hung_cg = Vec(cg_x_m, cg_y_m, cg_z_m), Vec(0.0, 0.0, -plumb_m)
    body = corners(eyes, cg, bottom_z_m, top_z_m) if bottom_z_m is not None and top_z_m is not None else ()
    deciding = governs(checks)
    legs = tuple(
        Leg(label, HOOK, as_it_hangs(eye, cg, hung_cg, down), long_m, angle_deg, pull_t, leg_percent(checks, label),
            leg_highest(checks, label), governing_words(deciding, label))
        for label, eye, long_m, angle_deg, pull_t in zip(leg, eyes, leg_m, leg_angle_deg, leg_load_t, strict=True)
    )
    free_m = highest_hook_m - hook_height_m if highest_hook_m is not None and hook_height_m is not None else None

    return views(Hung(
        legs, (HOOK,), hung_cg, tuple(as_it_hangs(corner, cg, hung_cg, down) for corner in body),
        underside_below_hook_m, lift_height_m, free_m, fittings_m or 0.0, hung_tilt_along_deg, hung_tilt_across_deg,
        deciding.quantity if deciding is not None else "", governing_words(deciding, None),
    ))
