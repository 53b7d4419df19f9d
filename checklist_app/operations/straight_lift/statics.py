"""How the load hangs, and what each leg then pulls."""

from checklist_app.mechanics import angle_limits, attitude, leg_tension, weight
from checklist_app.mechanics.exact import atan2_deg, sqrt
from checklist_app.operations.gear import Eye, Hook, LoadCell, MasterLink, Shackle, Sling
from checklist_app.operations.graph import Known, NotApplicable, across, at_nominal, each, when
from checklist_app.operations.settings import DYNAMIC_FACTOR


@when("rigging_mass_kg", rigging_kg=Known.YES)
def rigging_as_entered(rigging_kg: float) -> float:
    """Mass of the rigging, as entered."""
    return rigging_kg


@when("rigging_mass_kg", rigging_kg=Known.NO)
def rigging_by_gear(
    load_cell: LoadCell | None, hook_fitting: Shackle | Hook | MasterLink | None, sling: tuple[Sling, ...],
    top_fitting: tuple[Shackle | Hook | None, ...], bottom_fitting: tuple[Shackle | Hook | None, ...],
    eye: tuple[Eye | None, ...],
) -> float:
    """Mass of the rigging, added up from the gear."""
    total_kg = 0.0
    for item in (load_cell, hook_fitting, *sling, *top_fitting, *bottom_fitting, *eye):
        if item is not None:
            total_kg = total_kg + item.mass_kg

    return total_kg


def gross_mass_kg(mass_kg: float, rigging_mass_kg: float) -> float:
    """Mass on the hook: load and rigging."""
    return weight.gross_mass_kg(mass_kg, rigging_mass_kg)


def dynamic_factor() -> float:
    """In normal hoisting the rated load contains it: a setting of the house."""
    return DYNAMIC_FACTOR.value


def gross_load_t(gross_mass_kg: float, dynamic_factor: float) -> float:
    """Load on the hook, in the unit of the plates."""
    return weight.gross_load_t(gross_mass_kg, dynamic_factor)


def gross_load_kn(gross_load_t: float) -> float:
    """Load on the hook, as a force."""
    return weight.weight_kn(gross_load_t)


def plumb_along_m(hook_along_m: float, cg_along_m: float) -> float:
    """From the centre of gravity to the hook, along the line through the eyes."""
    return hook_along_m - cg_along_m


def plumb_off_m(hook_off_m: float, cg_off_m: float) -> float:
    """From the centre of gravity to the hook, off the line through the eyes."""
    return hook_off_m + cg_off_m


def plumb_m(plumb_along_m: float, plumb_off_m: float) -> float:
    """Centre of gravity below the hook."""
    return sqrt(plumb_along_m * plumb_along_m + plumb_off_m * plumb_off_m)


def plumb_up_m(
    plumb_along_m: float, plumb_off_m: float, legs_upright: float, level_m: float, rise_m: float, span_m: float
) -> float:
    """Of the plumb line, the part that is upright in the load."""
    return attitude.upward_share_m(plumb_along_m, plumb_off_m, legs_upright, (level_m, rise_m, span_m))


def plumb_level_m(
    plumb_along_m: float, plumb_off_m: float, legs_upright: float, level_m: float, rise_m: float, span_m: float
) -> float:
    """Of the plumb line, the part that is level in the load, towards the right eye."""
    return attitude.level_share_m(plumb_along_m, plumb_off_m, legs_upright, (level_m, rise_m, span_m))


def plumb_aside_m(plumb_off_m: float, legs_aside: float) -> float:
    """Of the plumb line, the part square to the eyes."""
    return -plumb_off_m * legs_aside


def hung_tilt_along_deg(
    plumb_level_m: float, plumb_aside_m: float, plumb_up_m: float, run_x_m: float, run_y_m: float, level_m: float
) -> float:
    """Tilt lengthwise as it will hang; below 0 the right end hangs low."""
    return attitude.tilt_deg((plumb_level_m * run_x_m + plumb_aside_m * run_y_m) / level_m, plumb_up_m)


def hung_tilt_across_deg(
    plumb_level_m: float, plumb_aside_m: float, plumb_up_m: float, run_x_m: float, run_y_m: float, level_m: float
) -> float:
    """Tilt crosswise as it will hang."""
    return attitude.tilt_deg((plumb_level_m * run_y_m - plumb_aside_m * run_x_m) / level_m, plumb_up_m)


@at_nominal
@when("planned_tilt_along_deg", cg_x_m=Known.YES)
def tilt_along_as_planned(hung_tilt_along_deg: float) -> float:
    """Tilt lengthwise as planned, without a side."""
    return abs(hung_tilt_along_deg)


@when("planned_tilt_along_deg", cg_x_m=Known.NO)
def no_tilt_planned() -> float:
    """Nothing was planned that a trial could contradict."""
    raise NotApplicable(
        "the centre of gravity is not known along the picks, so no tilt was planned; each leg is taken to carry all"
    )


@at_nominal
def planned_tilt_across_deg(hung_tilt_across_deg: float) -> float:
    """Tilt crosswise as planned, without a side."""
    return abs(hung_tilt_across_deg)


@each("leg")
def eye_drop_m(
    hook_from_eye_m: float, hook_off_m: float, plumb_along_m: float, plumb_off_m: float, plumb_m: float
) -> float:
    """Eye below the hook, as it hangs."""
    return leg_tension.eye_drop_m(hook_from_eye_m, hook_off_m, plumb_along_m, plumb_off_m, plumb_m)


@across("leg")
def eye_reach_m(
    hook_from_eye_m: tuple[float, ...], hook_off_m: float, plumb_along_m: float, plumb_off_m: float, plumb_m: float
) -> tuple[float, ...]:
    """Eye from the plumb line, outwards; below 0 the plumb line does not pass between the eyes."""
    left, right = hook_from_eye_m

    return (
        leg_tension.eye_reach_m(left, hook_off_m, plumb_along_m, plumb_off_m, plumb_m),
        -leg_tension.eye_reach_m(right, hook_off_m, plumb_along_m, plumb_off_m, plumb_m),
    )


@when("leg_share", cg_x_m=Known.NO)
@across("leg")
def leg_share_unknown(leg: tuple[str, ...]) -> tuple[float, ...]:
    """Nobody knows where along the picks the centre of gravity is: each leg in turn carries all."""
    return tuple(leg_tension.one_leg_carries_all() for _ in leg)


@when("leg_share", cg_x_m=Known.YES)
@across("leg")
def leg_share_by_statics(
    leg_m: tuple[float, ...], eye_drop_m: tuple[float, ...], eye_reach_m: tuple[float, ...]
) -> tuple[float, ...]:
    """Pull in a leg as a share of the load."""
    (left_m, right_m), (left_drop_m, right_drop_m), (left_reach_m, right_reach_m) = leg_m, eye_drop_m, eye_reach_m

    return (
        leg_tension.share_of_leg(left_m, left_drop_m, left_reach_m, right_drop_m, right_reach_m),
        leg_tension.share_of_leg(right_m, right_drop_m, right_reach_m, left_drop_m, left_reach_m),
    )


@each("leg")
def leg_tension_kn(leg_share: float, gross_load_kn: float) -> float:
    """Pull in a leg, as a force."""
    return leg_share * gross_load_kn


@each("leg")
def leg_load_t(leg_share: float, gross_load_t: float) -> float:
    """Pull in a leg, in the unit of the labels."""
    return leg_share * gross_load_t


@each("leg")
def leg_angle_deg(eye_reach_m: float, eye_drop_m: float) -> float:
    """Leg from vertical, as it hangs."""
    return leg_tension.angle_from_vertical_deg(eye_reach_m, eye_drop_m)


@each("leg")
def pull_up_m(
    hook_from_eye_m: float, hook_off_m: float, legs_upright: float, level_m: float, rise_m: float, span_m: float
) -> float:
    """Of a leg, the part along its eye's axis, which stands upright in the load."""
    return attitude.upward_share_m(hook_from_eye_m, hook_off_m, legs_upright, (level_m, rise_m, span_m))


@each("leg")
def eye_angle_deg(leg_m: float, pull_up_m: float) -> float:
    """Pull on the eye from its own axis."""
    square = leg_m * leg_m - pull_up_m * pull_up_m

    return atan2_deg(sqrt(square) if square > 0.0 else 0.0, pull_up_m)


def included_angle_deg(leg_angle_deg: tuple[float, ...]) -> float:
    """Angle between the two legs."""
    left_deg, right_deg = leg_angle_deg

    return left_deg + right_deg


@at_nominal
def legs_alike(leg_angle_deg: tuple[float, ...]) -> bool:
    """Whether the tabulated factor of a symmetric load applies; as entered, and then throughout the spread."""
    left_deg, right_deg = leg_angle_deg

    return angle_limits.legs_alike(left_deg, right_deg)
