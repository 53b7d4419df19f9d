"""Side, end and plan of attitudes put together by hand: every point where it belongs, every leg named, one scale."""

import math

import pytest

from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.drawing import Arc, Dimension, Drawing, Line, Polyline, Role, Text
from checklist_app.operations.looks import silhouette
from checklist_app.operations.straight_lift.hung import Hung, Leg, as_it_hangs, corners
from checklist_app.operations.straight_lift.views import views
from checklist_app.operations.svg import ROOM_BELOW_PX, fitted, svg, written

HOOK = Vec(0.0, 0.0, 0.0)
NAMES = ("left front", "right front", "left rear", "right rear")
EYES = tuple(Vec(x, y, -1.2) for y in (-0.45, 0.45) for x in (-0.9, 0.9))
CG = Vec(0.0, 0.0, -1.5)


def leg(label: str, eye: Vec, hook: Vec = HOOK, governs: str = "", share: float = 0.3) -> Leg:
    long = math.dist(hook, eye)
    beta = math.degrees(math.acos((hook.z - eye.z) / long))
    return Leg(label, hook, eye, long, beta, share, f"up to {share * 100:.0f} %", share, governs)


def hung(legs: tuple[Leg, ...], hooks: tuple[Vec, ...] = (HOOK,), **more: object) -> Hung:
    box = corners([each.eye for each in legs], CG, -2.0, -1.0)
    return Hung(legs, hooks, CG, box, 2.0, 0.3, 0.8, 0.2, 0.0, 0.0)._replace(**more)


FOUR = hung(tuple(leg(name, eye, share=0.3 + n / 100) for n, (name, eye) in enumerate(zip(NAMES, EYES, strict=True))))
TRIANGLE = {"left": Vec(-0.6, -0.3, -1.2), "right": Vec(0.6, -0.3, -1.2), "middle": Vec(0.0, 0.6, -1.2)}
THREE = hung(tuple(leg(name, eye) for name, eye in TRIANGLE.items()))
ONE = hung((leg("leg", Vec(0.0, 0.0, -1.2)),))
APART = (HOOK, Vec(2.4, 0.0, 0.2))
PAIR = (leg("left", Vec(0.2, 0.0, -1.1)), leg("right", Vec(2.1, 0.0, -1.1), APART[1]))
HOOKS = hung(PAIR, APART, cg=Vec(1.1, 0.0, -1.5))
TWO = hung((leg("left", Vec(-0.5, 0.0, -1.0)), leg("right", Vec(0.5, 0.0, -1.0))))
RIGS = {"one": ONE, "two": TWO, "three": THREE, "four": FOUR, "hooks": HOOKS}


def members(drawing: Drawing, label: str) -> Line:
    (found,) = [one for one in drawing.parts if isinstance(one, Line) and f"sling_strength[{label}]" in one.about]
    return found


def words(drawing: Drawing) -> list[str]:
    return [leaf.words for leaf in drawing.leaves() if isinstance(leaf, Text)]


@pytest.mark.parametrize("rig", RIGS)
def test_a_lift_has_the_views_it_needs(rig: str) -> None:
    drawing = views(RIGS[rig])
    plan = ["Plan"] if rig in ("three", "four", "hooks") else []
    assert [view.name for view in (drawing, *drawing.others)] == ["Side view", "End view", *plan]


@pytest.mark.parametrize("rig", RIGS)
def test_every_leg_is_drawn_in_every_view_from_its_hook_to_its_eye(rig: str) -> None:
    side, end, *plan = (views(RIGS[rig]), *views(RIGS[rig]).others)
    for each in RIGS[rig].legs:
        assert members(side, each.label) == Line(
            (each.hook.x, each.hook.z), (each.eye.x, each.eye.z), members(side, each.label).role,
            (f"sling_strength[{each.label}]", f"leg_length_m[{each.label}]"))
        assert members(end, each.label).end == (each.eye.y, each.eye.z)
        assert all(members(view, each.label).end == (each.eye.x, each.eye.y) for view in plan)


@pytest.mark.parametrize("rig", ["three", "four", "hooks"])
def test_the_plan_says_pull_and_use_of_every_leg(rig: str) -> None:
    said = words(views(RIGS[rig]).others[1])
    for each in RIGS[rig].legs:
        assert each.label in said and f"{each.pull_t:.2f} t" in said and each.used in said


def test_the_side_view_of_many_legs_says_the_one_used_most_on_each_side() -> None:
    said = words(views(FOUR))
    assert "left rear" in said and "right rear" in said and "left front" not in said
    assert any(each.startswith("β ") for each in said)


@pytest.mark.parametrize("rig", RIGS)
def test_the_drawing_in_words_says_every_leg_and_every_hook(rig: str) -> None:
    label = views(RIGS[rig]).label
    assert ("two hooks" if rig == "hooks" else "one hook") in label
    for each in RIGS[rig].legs:
        assert f"{each.label} leg at {each.angle_deg:.1f}° from vertical pulls {each.pull_t:.2f} t" in label


def test_what_governs_is_heavier_and_says_so() -> None:
    legs = tuple(each._replace(governs="eye governs") if each.label == "right rear" else each for each in FOUR.legs)
    drawing = views(FOUR._replace(legs=legs))
    for view in (drawing, *drawing.others):
        heavy = [each.label for each in legs if members(view, each.label).role is Role.GOVERNS]
        assert heavy == ["right rear"]
    assert "eye governs" in words(drawing) and "eye governs" in words(drawing.others[1])
    assert "d-sling-governs" in svg(drawing, 390) and "d-sling-governs" not in svg(views(FOUR), 390)


@pytest.mark.parametrize("name, said", [
    ("hoist_strength", "hoist governs"), ("tilt_along", "planned tilt 0.0°, governs"),
    ("headroom", "0.80 m free, governs"),
])
def test_what_governs_and_is_no_leg_says_so_where_it_is(name: str, said: str) -> None:
    heavy_hooks = (0,) if name == "hoist_strength" else ()
    drawing = views(FOUR._replace(governs=name, governs_words="hoist governs", heavy_hooks=heavy_hooks))
    assert said in words(drawing)
    heavy = [one for one in drawing.parts if isinstance(one, Line | Arc) and one.role is Role.GOVERNS]
    assert bool(heavy) is (name == "hoist_strength")


def test_long_words_of_what_governs_stand_below_each_other() -> None:
    """So that they leave a small load its room."""
    legs = tuple(each._replace(governs="sling stays where it lies governs") for each in TWO.legs[:1]) + TWO.legs[1:]
    said = words(views(TWO._replace(legs=legs)))
    assert "sling stays where" in said and "it lies governs" in said


def test_between_two_hooks_no_plumb_line_falls_from_either() -> None:
    assert not [one for one in views(HOOKS).parts if isinstance(one, Line) and one.role is Role.PLUMB]
    bows = [one for one in views(HOOKS).parts if isinstance(one, Arc) and "hoist_strength" in one.about]
    assert [bow.centre[0] for bow in bows] == [0.0, 2.4]


def test_two_legs_that_lie_across_the_load_are_seen_at_their_true_length() -> None:
    across = hung((leg("left", Vec(0.3, -0.5, -1.0)), leg("right", Vec(-0.3, 0.5, -1.0))))
    for each in across.legs:
        line = members(views(across), each.label)
        assert math.dist(line.start, line.end) == pytest.approx(each.length_m)


@pytest.mark.parametrize("lifted, free, broken", [(0.3, 0.8, 0), (4.0, 0.8, 2), (0.3, 9.0, 2), (4.0, 9.0, 4)])
def test_heights_far_greater_than_the_lift_are_broken_off_and_still_say_their_length(
        lifted: float, free: float, broken: int) -> None:
    drawing = views(FOUR._replace(lift_height_m=lifted, free_m=free))
    assert f"{lifted:.2f} m" in words(drawing) and f"{free:.2f} m free" in words(drawing)
    usual = [one for one in views(FOUR).parts if isinstance(one, Line) and one.role is Role.FINE]
    found = [one for one in drawing.parts if isinstance(one, Line) and one.role is Role.FINE]
    assert len(found) - len(usual) == broken
    (low, high) = drawing.bounds()
    assert high[1] - low[1] < 5.0


@pytest.mark.parametrize("free", [0.0, -0.4, math.nan])
def test_no_free_height_is_drawn_where_there_is_none(free: float) -> None:
    parts = views(FOUR._replace(free_m=free)).parts
    assert not [one for one in parts if isinstance(one, Dimension) and "headroom" in one.about]


def test_the_body_is_turned_as_the_load_hangs() -> None:
    """Hung over by 10° lengthwise: up in the load's axes is (sin 10°, 0, cos 10°)."""
    s, c = math.sin(math.radians(10.0)), math.cos(math.radians(10.0))
    cg = Vec(1.0, 0.2, 0.4)
    at = as_it_hangs(Vec(2.0, 0.2, 0.4), cg, Vec(0.0, 0.0, -1.5), Vec(-s, 0.0, -c))
    assert at == pytest.approx((c, 0.0, -1.5 + s))
    assert as_it_hangs(cg, cg, Vec(0.0, 0.0, -1.5), Vec(-s, 0.0, -c)) == pytest.approx((0.0, 0.0, -1.5))


@pytest.mark.parametrize("down", [Vec(0.0, 0.0, -1.0), Vec(0.6, 0.0, -0.8), Vec(0.0, -0.6, -0.8), Vec(-1.0, 0.0, 0.0)])
def test_turning_keeps_every_distance(down: Vec) -> None:
    points = [Vec(0.3, 0.1, 0.2), Vec(-1.0, 0.7, 0.0), Vec(0.0, 0.0, 2.0)]
    cg, hung_cg = Vec(0.1, 0.2, 0.3), Vec(0.0, 0.0, -2.0)
    turned = [as_it_hangs(point, cg, hung_cg, down) for point in points]
    for one, other, a, b in zip(points, points[1:], turned, turned[1:], strict=False):
        assert math.dist(one, other) == pytest.approx(math.dist(a, b))
    up = as_it_hangs(Vec(cg.x - down.x, cg.y - down.y, cg.z - down.z), cg, hung_cg, down)
    assert up == pytest.approx((0.0, 0.0, -1.0))


def test_the_outline_goes_once_round_what_is_seen() -> None:
    (body,) = [one for one in views(FOUR).parts if isinstance(one, Polyline) and one.role is Role.OUTLINE]
    assert len(body.points) == 4
    assert silhouette(((0.0, 0.0), (1.0, 0.0), (1.0, 0.0))) == ((0.0, 0.0), (1.0, 0.0))


@pytest.mark.parametrize("rig", RIGS)
@pytest.mark.parametrize("width, tallest", [(390, None), (390, 0.72), (760, None)])
def test_no_words_lie_on_words_or_leave_the_paper_in_any_view(rig: str, width: int, tallest: float | None) -> None:
    for drawing in (views(RIGS[rig]), *views(RIGS[rig]).others):
        view, height = fitted(drawing, float(width), tallest)
        puts = written(drawing, view, height)
        for number, put in enumerate(puts):
            assert not any(put.box.covers(other.box) for other in puts[:number]), (drawing.name, put.text.words)
            assert put.box.left >= 0.0 and put.box.right <= width
            assert put.box.low >= -height - ROOM_BELOW_PX and put.box.high <= 0.0


def test_a_lift_of_which_no_heights_and_no_pulls_are_known_is_drawn_all_the_same() -> None:
    bare = Hung(tuple(Leg(each.label, each.hook, each.eye) for each in FOUR.legs), (HOOK,), CG)
    drawing = views(bare)
    assert members(drawing, "left rear") and not [one for one in words(drawing) if " t" in one]
