"""What must hold of any lashed load: more never holds less, mirrored is mirrored, forces balance."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing import changes, holding, prepared, slide_3d, tip_3d
from checklist_app.mechanics.lashing.demands import TiltRule, demand
from checklist_app.mechanics.lashing.lashed_body import Block, LashedBody, Pull, Stands, Strand, Stretch, lashed_body
from checklist_app.mechanics.lashing.prepared import Tension, Withstood
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Direction, Transport
from checklist_app.mechanics.vectors import Vec
from tests.mechanics.lashing.arranged import FORWARD, LEFT, REAR, RIGHT, corners

STOPS = 1e-6
WAYS = st.sampled_from((FORWARD, REAR, LEFT, RIGHT))
number = st.floats


@st.composite
def pulls(draw: st.DrawFn) -> Pull:
    sx, sy = draw(st.sampled_from((1.0, -1.0))), draw(st.sampled_from((1.0, -1.0)))
    at = Vec(sx * draw(number(0.0, 0.6)), sy * draw(number(0.0, 0.4)), draw(number(0.1, 1.6)))
    anchor = Vec(sx * draw(number(0.7, 1.8)), sy * draw(number(0.0, 1.4)), 0.0)
    return Pull(at, anchor, draw(number(200.0, 2500.0)), draw(st.sampled_from((Stretch.WEB, Stretch.CHAIN))))


@st.composite
def tie_downs(draw: st.DrawFn) -> tuple[Strand, Strand]:
    """Both strands alike, about the middle: together they press within the base."""
    x, y, out = draw(number(-0.5, 0.5)), draw(number(0.1, 0.4)), draw(number(0.0, 0.9))
    up, force = draw(number(0.8, 1.5)), draw(number(100.0, 600.0))
    one, other = (Strand(Vec(x, s * y, up), Vec(x, s * (y + out), 0.0), force, 1250.0) for s in (1.0, -1.0))
    return one, other


@st.composite
def bodies(draw: st.DrawFn) -> LashedBody:
    strands = [strand for pair in draw(st.lists(tie_downs(), max_size=2)) for strand in pair]
    block = Block(Vec(0.6, 0.0, draw(number(0.0, 0.4))), REAR, draw(number(100.0, 2000.0)))
    blocks = [block] if draw(st.booleans()) else []
    cg = Vec(draw(number(-0.2, 0.2)), draw(number(-0.15, 0.15)), draw(number(0.4, 1.1)))
    return lashed_body(
        draw(number(300.0, 4000.0)), cg, corners(0.6, 0.4), draw(st.sampled_from(Stands)),
        draw(st.lists(pulls(), max_size=4)), strands, blocks,
    )


def slides(body: LashedBody, way: Vec, friction: float) -> Withstood:
    found = slide_3d.slides_at(prepared.prepared(body), way, 1.0, friction, 0.9, True)
    assert found is not None
    return found


def tips(body: LashedBody, way: Vec) -> Withstood:
    found = tip_3d.tips_at(prepared.prepared(body), way, 1.0, Tension.STF, 0.9)
    assert found is not None
    return found


@settings(max_examples=30, deadline=None)
@given(bodies(), WAYS, number(0.0, 0.6), pulls())
def test_one_more_direct_lashing_never_holds_less(body: LashedBody, way: Vec, friction: float, more: Pull) -> None:
    with_more = changes.with_more(body, [more])
    assert slides(with_more, way, friction).push >= slides(body, way, friction).push - STOPS
    assert tips(with_more, way).push >= tips(body, way).push - STOPS


@settings(max_examples=30, deadline=None)
@given(bodies(), WAYS, number(0.0, 0.6), tie_downs())
def test_one_more_tie_down_within_the_base_never_holds_less(
    body: LashedBody, way: Vec, friction: float, more: tuple[Strand, Strand]
) -> None:
    with_more = changes.with_more(body, strands=more)
    assert slides(with_more, way, friction).push >= slides(body, way, friction).push - STOPS
    assert tips(with_more, way).push >= tips(body, way).push - STOPS


@settings(max_examples=30, deadline=None)
@given(bodies(), st.sampled_from(Direction), number(0.0, 0.6), pulls())
def test_the_first_direct_lashing_does_not_take_the_full_friction_away(
    body: LashedBody, direction: Direction, friction: float, more: Pull
) -> None:
    asked = demand(RuleSet.EN, Transport.ROAD, direction, True, TiltRule.PAIRS)
    bare = replace(body, pulls=())
    before = holding.held(RuleSet.EN, holding.Ways(prepared.prepared(bare)), asked, friction)
    after = holding.held(RuleSet.EN, holding.Ways(prepared.prepared(changes.with_more(bare, [more]))), asked, friction)
    assert all(b.have >= a.have - STOPS for a, b in zip(before, after, strict=True))


@settings(max_examples=30, deadline=None)
@given(bodies(), WAYS, number(0.0, 0.6))
def test_mirrored_is_mirrored(body: LashedBody, way: Vec, friction: float) -> None:
    """Left and right changed, front and back left alone."""
    def turn(point: Vec) -> Vec:
        return changes.mirrored(point, across=True)
    mirror = lashed_body(
        body.weight_dan, turn(body.cg), [(at.x, -at.y) for at in body.base], body.stands,
        [Pull(turn(pull.at), turn(pull.anchor), pull.most_dan, pull.stretch) for pull in body.pulls],
        [Strand(turn(each.at), turn(each.anchor), each.tension_dan, each.half_lc_dan) for each in body.strands],
        [Block(turn(block.at), turn(block.towards), block.most_dan) for block in body.blocks],
    )
    assert slides(mirror, turn(way), friction).push == pytest.approx(slides(body, way, friction).push, abs=STOPS)
    assert tips(mirror, turn(way)).push == pytest.approx(tips(body, way).push, abs=STOPS)


@settings(max_examples=30, deadline=None)
@given(bodies(), WAYS)
def test_at_the_push_that_tips_it_all_moments_hold(body: LashedBody, way: Vec) -> None:
    """Equilibrium by hand: about every edge of the base what holds down is at least what lifts; pulls in range."""
    found = tips(body, way)
    forces = [(Vec(0.0, 0.0, 0.0), Vec(0.0, 0.0, 0.0))]
    for pull, force in zip(body.pulls, found.pulls, strict=True):
        assert -1e-6 <= force <= pull.most_dan * (1.0 + 1e-6)
        forces.append((pull.at, along(pull.at, pull.anchor, force)))
    forces += [(each.at, along(each.at, each.anchor, 0.9 * each.tension_dan)) for each in body.strands]
    weight = body.weight_dan
    forces.append((body.cg, Vec(way.x * found.push * weight, way.y * found.push * weight, -weight)))
    held = max(block.most_dan for block in body.blocks) if body.blocks else 0.0
    for a, b in zip(body.base, (*body.base[1:], body.base[0]), strict=True):
        out = Vec(b.y - a.y, a.x - b.x, 0.0)
        size = (out.x * out.x + out.y * out.y) ** 0.5
        pressing = sum(
            (-f.z * ((a.x - p.x) * out.x + (a.y - p.y) * out.y) - (f.x * out.x + f.y * out.y) * p.z) / size
            for p, f in forces
        )
        blocks = sum(held * block.at.z * max(0.0, -(block.towards.x * out.x + block.towards.y * out.y) / size)
                     for block in body.blocks)
        assert pressing + blocks >= -1e-3 * weight


def along(at: Vec, anchor: Vec, force: float) -> Vec:
    reach = (anchor.x - at.x, anchor.y - at.y, anchor.z - at.z)
    far = sum(each * each for each in reach) ** 0.5
    return Vec(*(force * each / far for each in reach))


@settings(max_examples=30, deadline=None)
@given(bodies(), WAYS, number(0.0, 0.6), number(0.1, 10.0))
def test_weight_and_every_force_so_many_times_changes_nothing(
    body: LashedBody, way: Vec, friction: float, times: float
) -> None:
    scaled = lashed_body(
        times * body.weight_dan, body.cg, [(at.x, at.y) for at in body.base], body.stands,
        [Pull(pull.at, pull.anchor, times * pull.most_dan, pull.stretch) for pull in body.pulls],
        [Strand(each.at, each.anchor, times * each.tension_dan, times * each.half_lc_dan) for each in body.strands],
        [Block(block.at, block.towards, times * block.most_dan) for block in body.blocks],
    )
    assert slides(scaled, way, friction).push == pytest.approx(slides(body, way, friction).push, abs=STOPS)


@settings(max_examples=30, deadline=None)
@given(number(0.0, 0.85), number(0.01, 0.1), number(0.05, 0.6), WAYS)
def test_a_steeper_tie_down_never_holds_less(out: float, less_out: float, friction: float, way: Vec) -> None:
    def held(reach: float) -> tuple[float, float]:
        strands = [Strand(Vec(0.0, s * 0.3, 1.2), Vec(0.0, s * (0.3 + reach), 0.0), 350.0, 1250.0) for s in (1.0, -1.0)]
        body = lashed_body(981.0, Vec(0.0, 0.0, 0.8), corners(0.5, 0.4), Stands.FEET, (), strands)
        return slides(body, way, friction).push, tips(body, way).push
    flat, steep = held(out + less_out), held(out)
    assert steep[0] >= flat[0] - 1e-9 and steep[1] >= flat[1] - 1e-9


@settings(max_examples=30, deadline=None)
@given(bodies(), WAYS, number(0.0, 0.6))
def test_it_never_promises_more_than_the_formula_and_settles(body: LashedBody, way: Vec, friction: float) -> None:
    try:
        found = slides(body, way, friction)
    except OutOfRangeError:
        pytest.fail("the sharing did not settle")
    assert 0.0 <= found.push <= found.straight
    for pull, force in zip(body.pulls, found.pulls, strict=True):
        assert -1e-6 <= force <= pull.most_dan * (1.0 + 1e-6)
