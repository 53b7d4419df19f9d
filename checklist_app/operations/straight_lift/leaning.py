"""What a leg takes more because the pull leans in the load: wind off its centre of gravity, or a swing on two hooks.

On one hook a swing carries hook, legs and load along as one, so only the wind leans the pull. Two hooks keep the load
level as it swings between them.
"""

from itertools import combinations

from checklist_app.mechanics import exact
from checklist_app.mechanics.exact import let, sqrt
from checklist_app.mechanics.hanging import bounds, taut
from checklist_app.mechanics.sway import leaning
from checklist_app.mechanics.vectors import Vec, cross, dot, plain
from checklist_app.operations.graph import across, by_search, when
from checklist_app.operations.straight_lift.as_hang import as_hang
from checklist_app.operations.straight_lift.choices import Rig, ShareRule
from checklist_app.operations.straight_lift.even_plane import even_plane
from checklist_app.operations.straight_lift.four_legs import FOUR_THIRDS
from checklist_app.operations.straight_lift.rigs import ON_ONE_HOOK
from checklist_app.operations.straight_lift.ways import INDOORS, OUTDOORS

Rows = tuple[float, ...]


@when("leaning_slope", way=OUTDOORS)
def leans_outdoors(leaning_in_wind: float) -> float:
    """How far the pull leans in the load, as a slope."""
    return leaning_in_wind


@when("leaning_slope", way=INDOORS)
def leans_indoors(leaning_in_swing: float) -> float:
    """How far the pull leans in the load, as a slope."""
    return leaning_in_swing


@when("leaning_in_wind", rig=ON_ONE_HOOK)
def wind_leans_it(wind_over_cg_m: float, wind_swing_deg: float, plumb_m: float) -> float:
    """The wind pushes over or under the centre of gravity."""
    return leaning.leaning_slope(abs(wind_over_cg_m), wind_swing_deg, plumb_m)


@when("leaning_in_wind", rig=Rig.TWO_HOOKS)
def wind_leans_two_lines(swing_deg: float) -> float:
    """Wind and swing lean both hoist lines."""
    return _slope(swing_deg)


@when("leaning_in_swing", rig=ON_ONE_HOOK)
def swing_leans_nothing() -> float:
    """On one hook it swings with its legs."""
    return 0.0


@when("leaning_in_swing", rig=Rig.TWO_HOOKS)
def swing_leans_two_lines(swing_deg: float) -> float:
    """The swing leans both hoist lines."""
    return _slope(swing_deg)


def _slope(swing_deg: float) -> float:
    angle_rad = swing_deg / exact.RAD_IN_DEG

    return exact.sin(angle_rad) / exact.cos(angle_rad)


@when("leaning_share", rig=Rig.ONE_LEG)
@across("leg")
def one_leg_leans(leg: tuple[str, ...]) -> Rows:
    """One leg has everything already."""
    return tuple(0.0 for _ in leg)


@when("leaning_share", rig=(Rig.TWO_LEGS, Rig.RUNNING))
@across("leg")
def two_legs_lean(leaning_slope: float, leg_m: Rows, eye_drop_m: Rows, eye_reach_m: Rows) -> Rows:
    """What each of two legs takes more where the pull leans towards it."""
    (left_m, right_m), (left_drop_m, right_drop_m), (left_reach_m, right_reach_m) = leg_m, eye_drop_m, eye_reach_m

    return (
        leaning.more_in_one_of_two(leaning_slope, left_m, left_drop_m, left_reach_m, right_drop_m, right_reach_m),
        leaning.more_in_one_of_two(leaning_slope, right_m, right_drop_m, right_reach_m, left_drop_m, left_reach_m),
    )


@when("leaning_share", rig=Rig.THREE_LEGS)
@across("leg")
def three_legs_lean(leaning_slope: float, seen_from_hook: tuple[Vec, ...], taut_m: Rows) -> Rows:
    """What each of three legs takes more where the pull leans towards it."""
    a, b, c = seen_from_hook
    lever = let("lever", dot(a, cross(b, c)))

    return tuple(
        leaning.more_in_one_of_three(leaning_slope, long_m, other, third, lever)
        for long_m, other, third in zip(taut_m, (b, c, a), (c, a, b), strict=True)
    )


@when("leaning_share", rig=Rig.FOUR_LEGS)
@across("leg")
def four_legs_lean(leaning_by_rule: Rows) -> Rows:
    """What each of four legs takes more, by the rule that was chosen."""
    return leaning_by_rule


@by_search
@when("leaning_by_rule", share_rule=ShareRule.ANY_LENGTH)
@across("leg")
def any_length_leans(
    leaning_slope: float, hung_eye: tuple[Vec, ...], taut_m: Rows, leg_share: Rows, four_legs: tuple[str, ...]
) -> Rows:
    """Over all threes that could carry while the pull leans, the most, less what each leg has at rest."""
    eyes, slope, most = [plain(eye) for eye in hung_eye], float(leaning_slope), [float(share) for share in leg_share]
    for three in combinations(range(4), 3):
        a, b, c = (eyes[leg] for leg in three)
        lever = dot(a, cross(b, c))
        if not abs(lever) > 0.0:
            continue
        worst = []
        for other, third in ((b, c), (c, a), (a, b)):
            square = cross(other, third)
            level = sqrt(square.x * square.x + square.y * square.y)
            worst.append(-square.z / lever + slope * level / abs(lever))
        if min(worst) >= 0.0:
            for leg, pull in zip(three, worst, strict=True):
                most[leg] = max(most[leg], pull * float(taut_m[leg]))

    return tuple(pull - float(share) for pull, share in zip(most, leg_share, strict=True))


@by_search
@when("leaning_by_rule", share_rule=ShareRule.DIAGONALS)
@across("leg")
def diagonals_lean(
    leaning_slope: float, hung_eye: tuple[Vec, ...], taut_m: Rows, eye_drop_m: Rows, four_legs: tuple[str, ...]
) -> Rows:
    """Each diagonal in turn carries all, as two legs would, the pull leaning along it."""
    more = [0.0] * 4
    for i, j in bounds.opposite_pairs(as_hang(hung_eye, taut_m, 1.0)):
        run_x, run_y = hung_eye[j].x - hung_eye[i].x, hung_eye[j].y - hung_eye[i].y
        run = sqrt(run_x * run_x + run_y * run_y)
        near = abs(hung_eye[i].x * run_x + hung_eye[i].y * run_y) / run
        far = abs(hung_eye[j].x * run_x + hung_eye[j].y * run_y) / run
        for own, reach, other, away in ((i, near, j, far), (j, far, i, near)):
            more[own] = leaning.more_in_one_of_two(
                leaning_slope, taut_m[own], eye_drop_m[own], reach, eye_drop_m[other], away
            )

    return tuple(more)


@by_search
@when("leaning_by_rule", share_rule=ShareRule.THREE)
@across("leg")
def three_of_four_lean(
    leaning_slope: float, hung_eye: tuple[Vec, ...], taut_m: Rows, eye_drop_m: Rows, leg_share: Rows,
    four_legs: tuple[str, ...],
) -> Rows:
    """Four thirds of the even share with the pull leaning lengthwise and crosswise: what both add, one square to the
    other."""
    added = []
    for step_x, step_y in ((leaning_slope, 0.0), (0.0, leaning_slope)):
        worst = [0.0] * 4
        for way in (-1.0, 1.0):
            leant = [Vec(eye.x + way * step_x * eye.z, eye.y + way * step_y * eye.z, eye.z) for eye in hung_eye]
            plane = even_plane(tuple(leant))
            for leg, (eye, drop, long_m) in enumerate(zip(leant, eye_drop_m, taut_m, strict=True)):
                share = FOUR_THIRDS * (plane[0] + plane[1] * eye.x + plane[2] * eye.y) * long_m / drop
                worst[leg] = max(worst[leg], share - leg_share[leg])
        added.append(worst)

    return tuple(sqrt(along * along + across * across) for along, across in zip(*added, strict=True))


@when("leaning_arm_m", way=OUTDOORS)
@across("leg")
def arm_of_wind_and_load(eye_over_cg_m: Rows, wind_over_cg_m: float) -> Rows:
    """From each eye to the farther of wind and centre of gravity, upright."""
    return tuple(max(abs(over_m), abs(over_m - wind_over_cg_m)) for over_m in eye_over_cg_m)


@when("leaning_arm_m", way=INDOORS)
@across("leg")
def arm_of_the_load(eye_over_cg_m: Rows) -> Rows:
    """From each eye to the centre of gravity, upright."""
    return tuple(abs(over_m) for over_m in eye_over_cg_m)


@across("leg")
def eye_over_cg_m(cg_below_left_hook_m: float, left_pick: Vec, picks_rise_m: float) -> Rows:
    """Each eye over the centre of gravity, as it hangs from two hooks."""
    left_m = cg_below_left_hook_m + left_pick.z

    return left_m, left_m + picks_rise_m


@when("leaning_share", rig=Rig.TWO_HOOKS)
@across("leg")
def two_hooks_lean(
    leaning_slope: float, leaning_arm_m: Rows, seen_from_hook: tuple[Vec, ...], picks_run_m: float,
    picks_rise_m: float, taut_m: Rows,
) -> Rows:
    """What each leg takes more, by the moments about the other eye."""
    (left, right), (left_m, right_m), (left_arm_m, right_arm_m) = seen_from_hook, taut_m, leaning_arm_m
    left_lever = let("lever_left", abs(picks_run_m * left.z - picks_rise_m * left.x))
    right_lever = let("lever_right", abs(picks_rise_m * right.x - picks_run_m * right.z))

    return (
        taut.share_by_moments(left_m, leaning_slope * right_arm_m, left_lever),
        taut.share_by_moments(right_m, leaning_slope * left_arm_m, right_lever),
    )
