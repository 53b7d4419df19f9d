"""Angles between the legs as they hang, and whether they lie alike enough for a table of symmetric loads."""

from itertools import combinations

from checklist_app.mechanics import angle_limits
from checklist_app.mechanics.exact import atan2_deg, sqrt
from checklist_app.mechanics.slings import legs
from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.vectors import Vec, cross, dot
from checklist_app.operations.gear import Hook, Shackle
from checklist_app.operations.graph import NotApplicable, across, at_nominal, each, when
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import ON_ONE_HOOK, SEVERAL

ON_ONE = (Rig.TWO_LEGS, Rig.RUNNING)
IN_TWO_PARTS = tuple(hitch for hitch in Hitch if hitch.is_basket)


@when("included_angle_deg", rig=ON_ONE)
def angle_between_two(leg_angle_deg: tuple[float, ...]) -> float:
    """Angle between the two legs."""
    left_deg, right_deg = leg_angle_deg

    return left_deg + right_deg


@when("included_angle_deg", rig=Rig.ONE_LEG)
def one_leg_in_line() -> float:
    """One leg pulls in line."""
    return 0.0


@when("included_angle_deg", rig=SEVERAL)
def widest_between_legs(hung_eye: tuple[Vec, ...]) -> float:
    """Angle between the two legs that lie furthest apart."""
    widest = 0.0
    for one, other in combinations(hung_eye, 2):
        square = cross(one, other)
        angle = atan2_deg(
            sqrt(square.x * square.x + square.y * square.y + square.z * square.z), dot(one, other)
        )
        widest = angle if angle > widest else widest

    return widest


@when("included_angle_deg", rig=Rig.TWO_HOOKS)
def nothing_gathers() -> float:
    """Each leg hangs from a hook of its own."""
    raise NotApplicable("two hooks: nothing gathers the legs")


@when("part_off_deg", hitch=IN_TWO_PARTS)
@each("leg")
def parts_lie_apart(part_angle_deg: float) -> float:
    """Each of the two parts from the line of the leg."""
    return abs(part_angle_deg)


@when("part_off_deg", hitch=tuple(hitch for hitch in Hitch if not hitch.is_basket))
@each("leg")
def goes_up_in_one() -> float:
    """A leg in one part."""
    return 0.0


@across("leg")
def spread_at_top_deg(
    part_off_deg: tuple[float, ...], top_fitting: tuple[Shackle | Hook | None, ...]
) -> tuple[float, ...]:
    """How far the parts of each leg lie off its line where legs meet: nothing where a fitting gathers them first."""
    return tuple(
        off if fitting is None else 0.0 for off, fitting in zip(part_off_deg, top_fitting, strict=True)
    )


def gathered_angle_deg(included_angle_deg: float, spread_at_top_deg: tuple[float, ...]) -> float:
    """Most that two parts can lie apart where they meet: nobody asks in which plane the parts of a leg spread."""
    most = second = 0.0
    for off in spread_at_top_deg:
        most, second = (off, most) if off > most else (most, off if off > second else second)
    of_one = 2.0 * most
    of_two = included_angle_deg + most + second

    return of_one if of_one >= of_two else of_two


@when("hook_parts_deg", rig=Rig.TWO_HOOKS)
@across("hook")
def parts_on_each_hook(spread_at_top_deg: tuple[float, ...], hook: tuple[str, ...]) -> tuple[float, ...]:
    """Angle between the two parts of the one leg on each hook."""
    return tuple(2.0 * off for off in spread_at_top_deg)


@when("hook_parts_deg", rig=ON_ONE_HOOK)
@across("hook")
def no_second_hook() -> tuple[float, ...]:
    """The one hook is looked at with what gathers the legs."""
    raise NotApplicable("one hook")


@at_nominal
@when("legs_alike", rig=ON_ONE)
def two_legs_alike(leg_angle_deg: tuple[float, ...]) -> bool:
    """Whether the tabulated factor of a symmetric load applies; as entered, and then throughout the spread."""
    left_deg, right_deg = leg_angle_deg

    return angle_limits.legs_alike(left_deg, right_deg)


@at_nominal
@when("legs_alike", rig=Rig.THREE_LEGS)
def three_legs_alike(leg_angle_deg: tuple[float, ...], hung_eye: tuple[Vec, ...]) -> bool:
    """The same, and seen from above they lie evenly round the hook: else two of three pull like a pair."""
    round_the_hook = [atan2_deg(eye.y, eye.x) for eye in hung_eye]

    return legs.leg_angles_alike(leg_angle_deg) and legs.plan_angles_alike(round_the_hook)


@at_nominal
@when("legs_alike", rig=Rig.FOUR_LEGS)
def several_legs_alike(leg_angle_deg: tuple[float, ...]) -> bool:
    """Whether the tabulated factor of a symmetric load applies; as entered, and then throughout the spread."""
    return legs.leg_angles_alike(leg_angle_deg)


@when("legs_alike", rig=(Rig.ONE_LEG, Rig.TWO_HOOKS))
def no_legs_together() -> bool:
    """The table is for legs that meet in one hook."""
    raise NotApplicable("no legs that meet in one hook: the table is for those")


@at_nominal
@each("leg")
def planned_leg_angle_deg(leg_angle_deg: float) -> float:
    """Leg from vertical, as planned: what an angle read on the sling is held against."""
    return leg_angle_deg
