"""Two picks: the load in the plane of its two legs, where every line is one length a pencil can follow.

Lengths count along and off the line through the eyes, from the left one; the load rolls about that line until its
centre of gravity hangs in the plane of the legs.
"""

from checklist_app.mechanics import attitude, stability, suspension
from checklist_app.mechanics.exact import sqrt
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.graph import NotApplicable, across, when
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import SEVERAL


def run_x_m(eye_at: tuple[Vec, ...], two_picks: bool) -> float:
    """From the left eye to the right, lengthwise."""
    left, right = eye_at

    return right.x - left.x


def run_y_m(eye_at: tuple[Vec, ...], two_picks: bool) -> float:
    """From the left eye to the right, crosswise."""
    left, right = eye_at

    return right.y - left.y


def rise_m(eye_at: tuple[Vec, ...], two_picks: bool) -> float:
    """Right eye over the left."""
    left, right = eye_at

    return right.z - left.z


def level_m(run_x_m: float, run_y_m: float) -> float:
    """Level distance between the eyes."""
    return suspension.level_between_eyes_m(run_x_m, run_y_m)


def span_m(level_m: float, rise_m: float) -> float:
    """Straight distance between the eyes."""
    return sqrt(level_m * level_m + rise_m * rise_m)


def cg_level_m(
    cg_x_m: float, cg_y_m: float, eye_at: tuple[Vec, ...], run_x_m: float, run_y_m: float, level_m: float
) -> float:
    """Centre of gravity from the left eye, level, towards the right eye."""
    left, _ = eye_at

    return ((cg_x_m - left.x) * run_x_m + (cg_y_m - left.y) * run_y_m) / level_m


def cg_up_m(cg_z_m: float, eye_at: tuple[Vec, ...], two_picks: bool) -> float:
    """Centre of gravity over the left eye."""
    left, _ = eye_at

    return cg_z_m - left.z


def cg_along_m(cg_level_m: float, cg_up_m: float, level_m: float, rise_m: float, span_m: float) -> float:
    """Centre of gravity along the line through the eyes."""
    return suspension.cg_along_pick_line_m(cg_level_m, cg_up_m, level_m, rise_m, span_m)


@when("cg_below_m", rig=(Rig.TWO_LEGS, Rig.TWO_HOOKS, Rig.RUNNING))
def cg_below_line(cg_level_m: float, cg_up_m: float, level_m: float, rise_m: float, span_m: float) -> float:
    """Centre of gravity below the line through the eyes."""
    return stability.cg_below_pick_line_m(cg_level_m, cg_up_m, level_m, rise_m, span_m)


@when("cg_below_m", rig=Rig.ONE_LEG)
def cg_below_eye(cg_z_m: float, eye_at: tuple[Vec, ...]) -> float:
    """Centre of gravity below the one eye."""
    (eye,) = eye_at

    return eye.z - cg_z_m


@when("cg_below_m", rig=SEVERAL)
def no_line_to_roll_about() -> float:
    """Three picks or more hold the load from rolling; what a push does is looked at instead."""
    raise NotApplicable("three picks or more: the push that slackens a leg is looked at instead")


def cg_beside_m(
    cg_x_m: float, cg_y_m: float, eye_at: tuple[Vec, ...], run_x_m: float, run_y_m: float, level_m: float
) -> float:
    """Centre of gravity beside the upright plane through the eyes."""
    left, _ = eye_at

    return suspension.cg_beside_pick_line_m(cg_x_m - left.x, cg_y_m - left.y, run_x_m, run_y_m, level_m)


def cg_off_m(cg_below_m: float, cg_beside_m: float) -> float:
    """Centre of gravity from the line through the eyes."""
    return sqrt(cg_below_m * cg_below_m + cg_beside_m * cg_beside_m)


def hook_along_m(span_m: float, leg_m: tuple[float, ...], hook: tuple[str, ...], two_legs: bool) -> float:
    """Hook along the line through the eyes; a second hook would make it another lift."""
    left, right = leg_m

    return suspension.hook_along_pick_line_m(span_m, left, right)


def hook_off_m(leg_m: tuple[float, ...], hook_along_m: float) -> float:
    """Hook from the line through the eyes."""
    left, _ = leg_m

    return suspension.hook_off_pick_line_m(left, hook_along_m)


@across("leg")
def hook_from_eye_m(hook_along_m: float, span_m: float, leg: tuple[str, ...]) -> tuple[float, ...]:
    """From each eye to the hook, along the line through the eyes."""
    return hook_along_m, hook_along_m - span_m


def legs_upright(cg_below_m: float, cg_off_m: float) -> float:
    """How upright the plane of the legs stands in the load."""
    return attitude.legs_upright(cg_below_m, cg_off_m)


def legs_aside(cg_beside_m: float, cg_off_m: float) -> float:
    """How far the plane of the legs leans over in the load."""
    return attitude.legs_aside(cg_beside_m, cg_off_m)
