"""How the load hangs, and what each leg then pulls."""

from checklist_app.mechanics import angle_limits, leg_tension, suspension, vectors, weight
from checklist_app.mechanics.exact import atan2_deg, sqrt
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Eye, Hook, LoadCell, Shackle, Sling
from checklist_app.operations.graph import CannotAssess, Known, across, at_nominal, each, when
from checklist_app.operations.settings import DYNAMIC_FACTOR

SMALLEST = 1e-9


@when("rigging_mass_kg", rigging_kg=Known.YES)
def rigging_as_entered(rigging_kg: float) -> float:
    """Mass of the rigging, as entered."""
    return rigging_kg


@when("rigging_mass_kg", rigging_kg=Known.NO)
def rigging_by_gear(
    load_cell: LoadCell | None, hook_fitting: Shackle | Hook | None, sling: tuple[Sling, ...],
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


def gross_load_t(gross_mass_kg: float) -> float:
    """Load on the hook, in the unit of the plates."""
    return weight.gross_load_t(gross_mass_kg, DYNAMIC_FACTOR.value)


def gross_load_kn(gross_load_t: float) -> float:
    """Load on the hook, as a force."""
    return weight.weight_kn(gross_load_t)


def plumb(cg: Vec, hook_at: Vec) -> Vec:
    """From the centre of gravity to the hook: true upright, in the load's axes."""
    return vectors.between(cg, hook_at)


def plumb_m(plumb: Vec) -> float:
    """Centre of gravity below the hook."""
    return vectors.length(plumb)


def upright(plumb: Vec, plumb_m: float) -> Vec:
    """True upright, of length 1."""
    return Vec(plumb.x / plumb_m, plumb.y / plumb_m, plumb.z / plumb_m)


def hung_tilt_along_deg(plumb: Vec) -> float:
    """Tilt lengthwise as it will hang; below 0 the right end hangs low."""
    return suspension.tilt_deg(plumb.x, plumb.z)


def hung_tilt_across_deg(plumb: Vec) -> float:
    """Tilt crosswise as it will hang."""
    return suspension.tilt_deg(plumb.y, plumb.z)


@each("leg")
def eye_drop_m(eye_at: Vec, hook_at: Vec, upright: Vec) -> float:
    """Eye below the hook, as it hangs."""
    return vectors.dot(vectors.between(eye_at, hook_at), upright)


def level(pick_line: Vec, upright: Vec) -> Vec:
    """True level in the plane of the legs, from the left leg to the right, of length 1."""
    along = vectors.moved(pick_line, upright, -vectors.dot(pick_line, upright))
    size = vectors.length(along)
    if not size > SMALLEST:
        raise CannotAssess("one eye hangs straight above the other")

    return Vec(along.x / size, along.y / size, along.z / size)


@across("leg")
def eye_reach_m(eye_at: tuple[Vec, ...], hook_at: Vec, level: Vec) -> tuple[float, ...]:
    """Eye from the plumb line, outwards; below 0 the plumb line does not pass between the eyes."""
    left, right = eye_at

    return vectors.dot(vectors.between(left, hook_at), level), vectors.dot(vectors.between(hook_at, right), level)


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
def eye_angle_deg(eye_at: Vec, hook_at: Vec) -> float:
    """Pull on the eye from its own axis, which stands upright in the load."""
    pull = vectors.between(eye_at, hook_at)

    return atan2_deg(sqrt(pull.x * pull.x + pull.y * pull.y), pull.z)


def included_angle_deg(leg_angle_deg: tuple[float, ...]) -> float:
    """Angle between the two legs."""
    left_deg, right_deg = leg_angle_deg

    return left_deg + right_deg


@at_nominal
def legs_alike(leg_angle_deg: tuple[float, ...]) -> bool:
    """Whether the tabulated factor of a symmetric load applies; as entered, and then throughout the spread."""
    left_deg, right_deg = leg_angle_deg

    return angle_limits.legs_alike(left_deg, right_deg)
