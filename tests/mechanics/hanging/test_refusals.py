"""What is no load on slings is refused, in words a rigger can act on; nothing that is no number passes."""

import math
from collections.abc import Callable

import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import Rigging, rigging
from checklist_app.mechanics.hanging.bounds import carried_by_opposite_pairs, opposite_pairs
from checklist_app.mechanics.hanging.four_bars import bars
from checklist_app.mechanics.hanging.margin import (
    couple_that_slackens_knm,
    faces,
    push_that_slackens_kn,
    rise_before_it_goes_over_m,
)
from checklist_app.mechanics.hanging.running_sling import depth_needed_m, hung_on_running_sling
from checklist_app.mechanics.hanging.running_turn import (
    rocking_radius_m,
    runs_out,
    share_where_it_sticks,
    turned_by_lever_deg,
    turned_by_rise_deg,
)
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.hanging.sharing import shared_by_stiffness
from checklist_app.mechanics.hanging.stiffness import couple_for_one_degree_nm, turning_stiffness_knm_per_rad
from checklist_app.mechanics.hanging.two_hooks import couple_that_slackens_one_knm, hung_from_two_hooks
from checklist_app.mechanics.hanging.two_lines import share_on_first_line
from tests.mechanics.hanging.bodies import box, pair, vec

LEVEL = (1.0, 0.0)
ORIGIN = vec(0, 0, 0)
NAN = math.nan


def two_hooks(**changed: object) -> object:
    given = {
        "span_m": 1.0, "cg_along_m": 0.5, "cg_below_m": 0.4, "legs_m": (1.5, 1.5), "right_hook": (0.4, 0.0),
        "stands": LEVEL, **changed,
    }
    return hung_from_two_hooks(bars(**given))  # type: ignore[arg-type]


@pytest.mark.parametrize("call, words", [
    (lambda: rigging([], [], ORIGIN), "number of legs is 0; allowed: one to four"),
    (lambda: rigging([ORIGIN] * 5, [1.0] * 5, ORIGIN), "number of legs is 5"),
    (lambda: rigging([ORIGIN], [1.0, 1.0], ORIGIN), "number of legs is 2; allowed: one to four, each with its pick"),
    (lambda: rigging([ORIGIN], [0.0], ORIGIN), "length of a leg is 0"),
    (lambda: rigging([ORIGIN], [NAN], ORIGIN), "length of a leg is nan"),
    (lambda: rigging([vec(0, NAN, 0)], [1.0], ORIGIN), "a pick point or the centre of gravity"),
    (lambda: rigging([ORIGIN], [1.0], vec(0, 0, math.inf)), "a pick point or the centre of gravity"),
    (lambda: settled(pair((0, 0, -0.4), (0.4, 0.5))), "span is open; allowed: legs that reach each other"),
    (lambda: settled(rigging([ORIGIN], [1.0], vec(0, 0, 1))), "hook over the centre of gravity is 0"),
    (lambda: shared_by_stiffness(box((0, 0, -0.3)), 0.0, [1.0] * 4), "load on the hook is 0"),
    (lambda: shared_by_stiffness(box((0, 0, -0.3)), 20.0, [1.0] * 3), "number of stiffnesses is 3"),
    (lambda: shared_by_stiffness(box((0, 0, -0.3)), 20.0, [1.0, 1.0, NAN, 1.0]), "stiffness of a leg is nan"),
    (lambda: shared_by_stiffness(box((0, 0, -0.3)), 20.0, [1e12] * 4), "allowed: what a real leg has"),
    (lambda: opposite_pairs(settled(pair((0, 0, -0.4), (1.0, 1.0)))), "number of legs is 2; allowed: four"),
    (lambda: carried_by_opposite_pairs(settled(one_inside())), "four picks is one within the others"),
    (lambda: faces(settled(pair((0, 0, -0.4), (1.0, 1.0))), [0]), "no pyramid"),
    (lambda: couple_that_slackens_knm(10.0, -0.1), "inside of the legs is -0.1"),
    (lambda: couple_that_slackens_knm(NAN, 0.1), "load on the hook is nan"),
    (lambda: push_that_slackens_kn(10.0, 0.3, NAN), "allowed: a push more than 0.30 m off"),
    (lambda: rise_before_it_goes_over_m(1.0, 1.1), "what is left of the depth is -0.1"),
    (lambda: turning_stiffness_knm_per_rad(settled(box((0, 0, -0.3))), 10.0, [0.0] * 4), "stiffness of a leg is 0"),
    (lambda: two_hooks(span_m=NAN), "distance between the picks is nan"),
    (lambda: two_hooks(legs_m=(1.5, -1.0)), "length of a leg is -1"),
    (lambda: two_hooks(cg_below_m=NAN), "place of a hook or of the centre of gravity is nan"),
    (lambda: two_hooks(right_hook=(-0.1, 0.0)), "right hook to the right of the left is -0.1"),
    (lambda: two_hooks(stands=(0.0, 1.0)), "right pick to the right of the left is 0"),
    (lambda: two_hooks(right_hook=(9.0, 0.0)), "no balance; allowed: hooks, legs and picks that close"),
    (lambda: couple_that_slackens_one_knm(two_hooks(), NAN), "load on the hooks is nan"),  # type: ignore[arg-type]
    (lambda: couple_for_one_degree_nm(NAN, 1.0), "load on the hook is nan"),
    (lambda: rocking_radius_m(0.0, 1.2, 20.0), "left part of the sling is 0"),
    (lambda: rocking_radius_m(1.2, 1.2, 90.0), "part of the sling from vertical is 90"),
    (lambda: rocking_radius_m(1.2, 1.2, NAN), "part of the sling from vertical is nan"),
    (lambda: share_where_it_sticks(180.0), "angle between the parts is 180"),
    (lambda: share_where_it_sticks(NAN), "angle between the parts is nan"),
    (lambda: runs_out(1.0, 2.4, 0.0, 0.2), "below the picks .* is 0.2; allowed: more than 0.23 m"),
    (lambda: turned_by_lever_deg(1.0, 2.4, 0.0, 0.4, NAN), "lever of the weight is nan"),
    (lambda: turned_by_rise_deg(1.0, 2.4, 0.0, 0.4, -0.1), "rise of the swing is -0.1"),
    (lambda: turned_by_rise_deg(1.0, 2.4, 0.0, -0.1, 0.001), "below the picks"),
    (lambda: hung_on_running_sling(1.0, 0.9, 0.0, 0.4), "longer than the distance between the picks is -0.1"),
    (lambda: hung_on_running_sling(1.0, 2.4, NAN, 0.4), "place of the centre of gravity is nan"),
    (lambda: depth_needed_m(0.5, 0.0), "hook over the line through the picks is 0"),
    (lambda: share_on_first_line((1.0, 1.0), (1.0, 1.0), 61.0), "tilt is 61"),
    (lambda: share_on_first_line((1.0, 1.0), (1.0, 1.0), NAN), "tilt is nan"),
    (lambda: share_on_first_line((-0.1, 1.0), (1.0, 1.0), 0.0), "first pick from the centre of gravity is -0.1"),
    (lambda: share_on_first_line((1.0, 1.0), (9.0, 9.0), 30.0), "share of the first line"),
])
def test_it_refuses_and_says_why(call: Callable[[], object], words: str) -> None:
    with pytest.raises(OutOfRangeError, match=words):
        call()


def one_inside() -> Rigging:
    picks = [vec(1, 0, 0), vec(-1, 1, 0), vec(-1, -1, 0), vec(0, 0, 0)]
    return rigging(picks, [2.0, 2.2, 2.2, 1.7], vec(0, 0, -0.4))


def test_a_leg_longer_than_can_be_tight_is_slack_and_the_load_hangs_on_the_other() -> None:
    hang = settled(pair((0, 0, -0.4), (3.0, 1.0)))
    assert hang.shares == pytest.approx((0.0, 1.0)) and hang.tight == (False, True)
    assert hang.slacks_m[0] > 0.1
    assert hang.angles_deg[1] == pytest.approx(0.0, abs=1e-9)
