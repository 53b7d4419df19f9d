"""What must hold of any load on slings: balance, mirror image, order of legs, size, mass; and the planar solution."""

import math
from dataclasses import replace
from itertools import permutations

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from checklist_app.mechanics import attitude, leg_tension, stability, suspension
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.hanging.body import Hang, Rigging, rigging
from checklist_app.mechanics.hanging.bounds import carried_by_opposite_pairs, most_of_any_length
from checklist_app.mechanics.hanging.margin import faces
from checklist_app.mechanics.hanging.settling import settled
from checklist_app.mechanics.hanging.sharing import shared_by_stiffness
from checklist_app.mechanics.vectors import Vec
from tests.mechanics.hanging.bodies import vec

STIFF = 3000.0


def near(middle: float, apart: float) -> st.SearchStrategy[float]:
    return st.floats(middle - apart, middle + apart)


@st.composite
def loads(draw: st.DrawFn, legs: int | None = None) -> Rigging:
    """Picks about the corners, legs near enough alike, centre of gravity below or above."""
    corners = [(0.7, 0.4), (0.7, -0.4), (-0.7, -0.4), (-0.7, 0.4)][: legs or draw(st.integers(2, 4))]
    picks = [vec(x + draw(near(0, 0.2)), y + draw(near(0, 0.2)), draw(near(0, 0.15))) for x, y in corners]
    lengths = [draw(near(1.7, 0.3)) for _ in picks]
    cg = vec(draw(near(0, 0.4)), draw(near(0, 0.2)), draw(near(-0.3, 0.5)))
    return rigging(picks, lengths, cg)


def hung(what: Rigging) -> Hang:
    try:
        return settled(what)
    except OutOfRangeError as refused:
        assert "reach each other" in str(refused)
        assume(False)
        raise


def sums(hang: Hang) -> tuple[float, float, float]:
    per_m = hang.pulls_per_m
    return (
        math.fsum(p * eye.x for p, eye in zip(per_m, hang.eyes, strict=True)),
        math.fsum(p * eye.y for p, eye in zip(per_m, hang.eyes, strict=True)),
        math.fsum(p * -eye.z for p, eye in zip(per_m, hang.eyes, strict=True)),
    )


@settings(max_examples=200)
@given(loads())
def test_what_can_be_checked_with_a_pencil_comes_out(what: Rigging) -> None:
    """Level pulls cancel, upright ones carry the load, and all legs run to the hook, so moments cancel too."""
    hang = hung(what)
    assert sums(hang) == pytest.approx((0.0, 0.0, 1.0), abs=1e-9)
    assert min(hang.shares) >= 0.0
    for pick, leg_m, way, slack in zip(what.picks, what.legs_m, hang.ways, hang.slacks_m, strict=True):
        assert math.dist(pick, hang.hook) <= leg_m + 1e-9
        assert slack == pytest.approx(leg_m - math.dist(pick, hang.hook), abs=1e-12)
        assert way == pytest.approx(tuple(h - p for h, p in zip(hang.hook, pick, strict=True)), abs=1e-9)
    assert all(share == 0.0 or tight for share, tight in zip(hang.shares, hang.tight, strict=True))
    assert math.dist(hang.hook, what.cg) == pytest.approx(hang.plumb_m, rel=1e-12)


@settings(max_examples=150)
@given(loads(), st.floats(30.0, 1e5))
def test_legs_that_stretch_balance_too(what: Rigging, stiffness: float) -> None:
    hung(what)
    hang = shared_by_stiffness(what, 10.0, [stiffness] * len(what.legs_m))
    assert sums(hang) == pytest.approx((0.0, 0.0, 1.0), abs=1e-9)
    for share, slack, tight in zip(hang.shares, hang.slacks_m, hang.tight, strict=True):
        assert (share > 0.0) == (slack < 0.0) == tight
        assert 10.0 * share == pytest.approx(max(0.0, -slack) * stiffness, rel=1e-6, abs=1e-9)


@settings(max_examples=150)
@given(loads(legs=2))
def test_two_legs_hang_as_in_their_plane(what: Rigging) -> None:
    """The formulas of two legs, line by line, against the same load in space."""
    hang = hung(what)
    a, b = what.picks
    assume(min(hang.shares) > 1e-6)
    run_x, run_y, rise, span = b.x - a.x, b.y - a.y, b.z - a.z, math.dist(a, b)
    level = suspension.level_between_eyes_m(run_x, run_y)
    cg = vec(what.cg.x - a.x, what.cg.y - a.y, what.cg.z - a.z)
    beside = suspension.cg_beside_pick_line_m(cg.x, cg.y, run_x, run_y, level)
    along_level = (cg.x * run_x + cg.y * run_y) / level
    along = suspension.cg_along_pick_line_m(along_level, cg.z, level, rise, span)
    below = stability.cg_below_pick_line_m(along_level, cg.z, level, rise, span)
    cg_off = math.hypot(below, beside)
    assume(cg_off > 1e-3)
    hook_along = suspension.hook_along_pick_line_m(span, *what.legs_m)
    hook_off = suspension.hook_off_pick_line_m(what.legs_m[0], hook_along)
    plumb_along, plumb_off = hook_along - along, hook_off + cg_off
    plumb = math.hypot(plumb_along, plumb_off)
    froms = hook_along, hook_along - span
    drops = [leg_tension.eye_drop_m(from_eye, hook_off, plumb_along, plumb_off, plumb) for from_eye in froms]
    reach_a = leg_tension.eye_reach_m(hook_along, hook_off, plumb_along, plumb_off, plumb)
    reach_b = -leg_tension.eye_reach_m(hook_along - span, hook_off, plumb_along, plumb_off, plumb)
    upright, aside = attitude.legs_upright(below, cg_off), attitude.legs_aside(beside, cg_off)
    lie = attitude.level_share_m(plumb_along, plumb_off, upright, (level, rise, span))
    up = attitude.upward_share_m(plumb_along, plumb_off, upright, (level, rise, span))
    tilt = attitude.tilt_deg((lie * run_x - plumb_off * aside * run_y) / level, up)
    shares = (
        leg_tension.share_of_leg(what.legs_m[0], drops[0], reach_a, drops[1], reach_b),
        leg_tension.share_of_leg(what.legs_m[1], drops[1], reach_b, drops[0], reach_a),
    )
    assert hang.plumb_m == pytest.approx(plumb, abs=1e-9)
    assert hang.drops_m == pytest.approx(drops, abs=1e-9)
    assert hang.reaches_m == pytest.approx((reach_a, reach_b), abs=1e-9)
    assert hang.shares == pytest.approx(shares, abs=1e-9)
    assert turned_less(hang.tilt_along_deg, tilt) == pytest.approx(0.0, abs=1e-6)


def turned_less(a: float, b: float) -> float:
    return (a - b + 180.0) % 360.0 - 180.0


@settings(max_examples=60)
@given(loads(legs=4))
def test_the_order_of_the_legs_is_nothing_to_the_load(what: Rigging) -> None:
    one = shared_by_stiffness(what, 10.0, [STIFF] * 4) if hung(what) else None
    assert one is not None
    for order in list(permutations(range(4)))[::5]:
        other = rigging([what.picks[leg] for leg in order], [what.legs_m[leg] for leg in order], what.cg)
        hang = shared_by_stiffness(other, 10.0, [STIFF] * 4)
        assert hang.shares == pytest.approx([one.shares[leg] for leg in order], abs=1e-7)
        assert hang.upright == pytest.approx(one.upright, abs=1e-7)


@settings(max_examples=60)
@given(loads(), st.sampled_from((0, 1)))
def test_a_mirrored_load_hangs_mirrored(what: Rigging, axis: int) -> None:
    def mirrored(point: Vec) -> Vec:
        return vec(*(-part if place == axis else part for place, part in enumerate(point)))

    hung(what)
    stiff = [STIFF] * len(what.legs_m)
    one = shared_by_stiffness(what, 10.0, stiff)
    other = shared_by_stiffness(
        replace(what, picks=tuple(mirrored(pick) for pick in what.picks), cg=mirrored(what.cg)), 10.0, stiff
    )
    assert other.shares == pytest.approx(one.shares, abs=1e-7)
    assert other.upright == pytest.approx(mirrored(one.upright), abs=1e-7)


@settings(max_examples=60)
@given(loads(), st.floats(0.2, 20.0))
def test_a_load_twice_as_large_hangs_alike(what: Rigging, scale: float) -> None:
    hang = hung(what)
    grown = rigging(
        [vec(*(scale * part for part in pick)) for pick in what.picks], [scale * leg for leg in what.legs_m],
        vec(*(scale * part for part in what.cg)),
    )
    other = hung(grown)
    assert other.upright == pytest.approx(hang.upright, abs=1e-6)
    assert scale * hang.plumb_m == pytest.approx(other.plumb_m, rel=1e-6)


@settings(max_examples=100)
@given(loads(), st.floats(1.0, 30.0), st.floats(1.01, 3.0))
def test_a_heavier_load_pulls_harder_where_it_pulls_most(what: Rigging, load_kn: float, times: float) -> None:
    hung(what)
    stiff = [STIFF] * len(what.legs_m)
    light, heavy = shared_by_stiffness(what, load_kn, stiff), shared_by_stiffness(what, times * load_kn, stiff)
    assert times * max(heavy.shares) > max(light.shares)


def wild(most: float) -> st.SearchStrategy[float]:
    return st.floats(-most, most) | st.sampled_from((0.0, 1.0, -1.0, 1e-9))


@settings(max_examples=150)
@given(st.data(), st.integers(1, 4))
def test_the_wildest_rigging_is_in_balance_or_refused(data: st.DataObject, legs: int) -> None:
    picks = [vec(*(data.draw(wild(50.0)) for _ in range(3))) for _ in range(legs)]
    lengths = [data.draw(st.floats(1e-3, 100.0)) for _ in picks]
    what = rigging(picks, lengths, vec(*(data.draw(wild(50.0)) for _ in range(3))))
    try:
        hangs = settled(what), shared_by_stiffness(what, 10.0, [STIFF] * legs)
    except OutOfRangeError:
        return
    for hang in hangs:
        assert sums(hang) == pytest.approx((0.0, 0.0, 1.0), abs=1e-8)
        assert min(hang.shares) >= 0.0


@settings(max_examples=100)
@given(loads(legs=4))
def test_no_sharing_by_stiffness_exceeds_what_a_leg_can_come_to_carry(what: Rigging) -> None:
    hung(what)
    hang = shared_by_stiffness(what, 10.0, [STIFF] * 4)
    try:
        most_of_any_length(hang)
    except OutOfRangeError as refused:
        assert "no three of them" in str(refused) and abs(hang.tilt_deg) > 60.0, "a plate that hangs on its edge"
        return
    assert all(share <= most + 1e-9 for share, most in zip(hang.shares, most_of_any_length(hang), strict=True))


@settings(max_examples=60)
@given(near(0, 0.3), near(0, 0.2))
def test_two_opposite_legs_alone_never_carry_less_than_three_can(cg_x: float, cg_y: float) -> None:
    """On a rectangle hanging level the rule of the two diagonal legs is the stricter one."""
    hook, corners = (cg_x, cg_y, 1.2), [vec(0.7 * x, 0.4 * y, 0) for x, y in ((1, 1), (1, -1), (-1, -1), (-1, 1))]
    hang = settled(rigging(corners, [math.dist(hook, corner) for corner in corners], vec(cg_x, cg_y, -0.3)))
    most = most_of_any_length(hang)
    for pair in carried_by_opposite_pairs(hang):
        for leg, share in zip(pair.legs, pair.shares, strict=True):
            assert share >= most[leg] - 1e-9 or share == 0.0


@settings(max_examples=60)
@given(loads())
def test_a_load_that_all_its_legs_hold_has_its_centre_of_gravity_inside_them(what: Rigging) -> None:
    hang = hung(what)
    held = [leg for leg, share in enumerate(hang.shares) if share > 1e-6]
    assume(len(held) >= 2)
    assert all(face.inside_m >= -1e-9 for face in faces(hang, held))
