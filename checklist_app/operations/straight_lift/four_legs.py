"""How four legs share a stiff load: nobody knows their true lengths, so a rule is chosen, and the record says which."""

from itertools import combinations

from checklist_app.mechanics import leg_tension
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.exact import let, sqrt
from checklist_app.mechanics.hanging import bounds, taut
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.graph import CannotAssess, across, when
from checklist_app.operations.straight_lift.as_hang import as_hang
from checklist_app.operations.straight_lift.choices import ShareRule
from checklist_app.operations.straight_lift.even_plane import even_plane

PUSHING = -1e-9
FOUR_THIRDS = 4.0 / 3.0
Rows = tuple[float, ...]
Three = tuple[int, int, int]


@when("share_by_rule", share_rule=ShareRule.ANY_LENGTH)
@across("leg")
def worst_of_any_length(
    hung_eye: tuple[Vec, ...], eye_drop_m: tuple[float, ...], taut_m: tuple[float, ...], four_legs: tuple[str, ...]
) -> tuple[float, ...]:
    """The most each leg can pull, whatever the true lengths: it is reached when one of the others hangs slack."""
    worst = _worst_threes(hung_eye, eye_drop_m, taut_m)

    return tuple(
        _share_in(three, leg, name, (hung_eye, eye_drop_m, taut_m))
        for leg, (three, name) in enumerate(zip(worst, four_legs, strict=True))
    )


def _worst_threes(eyes: tuple[Vec, ...], drops: Rows, longs: Rows) -> tuple[Three, ...]:
    """For each leg the three legs among which it pulls most, if those alone carry."""
    most, found = [-1.0] * 4, [(0, 1, 2)] * 4
    for three in combinations(range(4), 3):
        i, j, k = three
        areas = (_area(eyes[j], eyes[k]), _area(eyes[k], eyes[i]), _area(eyes[i], eyes[j]))
        lever = areas[0] * drops[i] + areas[1] * drops[j] + areas[2] * drops[k]
        if not abs(lever) > 0.0:
            continue
        pulls = [area / lever for area in areas]
        if not min(pulls) >= PUSHING * max(pulls):
            continue
        for leg, pull in zip(three, pulls, strict=True):
            if pull * longs[leg] > most[leg]:
                most[leg], found[leg] = pull * longs[leg], three
        (idle,) = {0, 1, 2, 3} - {i, j, k}
        if most[idle] < 0.0:
            most[idle], found[idle] = 0.0, three
    if not min(most) >= 0.0:
        raise OutOfRangeError(
            "the load on any three of its legs", "out of balance", "a plumb line that passes between the eyes",
            "STATICS_HANGING_BODY",
        )

    return tuple(found)


def _area(one: Vec, other: Vec) -> float:
    return float(one.x) * float(other.y) - float(one.y) * float(other.x)


def _share_in(three: Three, leg: int, name: str, hung: tuple[tuple[Vec, ...], Rows, Rows]) -> float:
    """Pull of one leg among three that carry all; nothing for the one that is not among them."""
    eyes, drops, longs = hung
    if leg not in three:
        return 0.0
    at = three.index(leg)
    i, j, k = leg, three[(at + 1) % 3], three[(at + 2) % 3]
    own = let(f"area_{name}", taut.area_m2(eyes[j].x, eyes[j].y, eyes[k].x, eyes[k].y))
    second = let(f"second_area_{name}", taut.area_m2(eyes[k].x, eyes[k].y, eyes[i].x, eyes[i].y))
    third = let(f"third_area_{name}", taut.area_m2(eyes[i].x, eyes[i].y, eyes[j].x, eyes[j].y))
    lever = let(f"lever_{name}", own * drops[i] + second * drops[j] + third * drops[k])
    share = taut.share_of_three(own, longs[i], lever)

    return share if share > 0.0 else 0.0


@when("share_by_rule", share_rule=ShareRule.DIAGONALS)
@across("leg")
def worst_of_diagonals(
    hung_eye: tuple[Vec, ...], eye_drop_m: tuple[float, ...], taut_m: tuple[float, ...], four_legs: tuple[str, ...]
) -> tuple[float, ...]:
    """Each diagonal in turn carries all, as two legs would."""
    shares = [0.0] * 4
    for pair in bounds.opposite_pairs(as_hang(hung_eye, taut_m, 1.0)):
        first, second = _pair_alone(pair, (hung_eye, eye_drop_m, taut_m), four_legs[pair[0]])
        shares[pair[0]], shares[pair[1]] = first, second

    return tuple(shares)


def _pair_alone(pair: tuple[int, int], hung: tuple[tuple[Vec, ...], Rows, Rows], name: str) -> tuple[float, float]:
    """Where the plumb line does not pass between the two, the nearer one carries all."""
    eyes, drops, longs = hung
    i, j = pair
    run_x, run_y = eyes[j].x - eyes[i].x, eyes[j].y - eyes[i].y
    run = let(f"diagonal_{name}", sqrt(run_x * run_x + run_y * run_y))
    near = let(f"first_reach_{name}", -(eyes[i].x * run_x + eyes[i].y * run_y) / run)
    far = let(f"second_reach_{name}", (eyes[j].x * run_x + eyes[j].y * run_y) / run)
    if near < 0.0:
        return longs[i] / drops[i], 0.0
    if far < 0.0:
        return 0.0, longs[j] / drops[j]

    return (
        leg_tension.share_of_leg(longs[i], drops[i], near, drops[j], far),
        leg_tension.share_of_leg(longs[j], drops[j], far, drops[i], near),
    )


@when("share_by_rule", share_rule=ShareRule.THREE)
@across("leg")
def three_of_four(
    hung_eye: tuple[Vec, ...], eye_drop_m: tuple[float, ...], taut_m: tuple[float, ...], legs_alike: bool,
    four_legs: tuple[str, ...],
) -> tuple[float, ...]:
    """All four give alike, and what three of them could carry is all that counts: four thirds of the even share.

    The table that credits three is for legs that lie alike; elsewhere two that come tight carry more than half as much
    again.
    """
    if not legs_alike:
        raise CannotAssess("three legs are credited where the legs lie within 15° of each other: choose another rule")
    plane = even_plane(hung_eye)
    shares = []
    for eye, drop, long_m in zip(hung_eye, eye_drop_m, taut_m, strict=True):
        if not drop > 0.0:
            raise OutOfRangeError("an eye", "level with the hook", "every eye below the hook", "STATICS_HANGING_BODY")
        shares.append(FOUR_THIRDS * taut.even_share(plane, eye.x, eye.y) * long_m / drop)

    return tuple(shares)


def two_would_carry(hung_eye: tuple[Vec, ...], taut_m: tuple[float, ...], four_legs: tuple[str, ...]) -> float:
    """Most that a leg would pull if two diagonal legs alone came tight, as a share of the load."""
    pairs = bounds.carried_by_opposite_pairs(as_hang(hung_eye, taut_m, 1.0))

    return max(share for pair in pairs for share in pair.shares)
