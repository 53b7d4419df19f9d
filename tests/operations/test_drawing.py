"""A drawing is to scale; back ends know lines, polylines and texts only."""

import math
import re
import xml.etree.ElementTree as ElementTree

import pytest

from checklist_app.operations.drawing import (
    Anchor,
    Arc,
    Arrow,
    Dimension,
    Drawing,
    Line,
    Polyline,
    Primitive,
    Role,
    Text,
    leaves,
)
from checklist_app.operations.evaluate import assess
from checklist_app.operations.graph import Waits
from checklist_app.operations.svg import CLASSES, svg
from checklist_app.operations.task import Task
from tests.operations.some_lifts import some_lifts
from tests.operations.straight_lift.lifts import TABLE, lift

LEG = Line((0.0, 0.0), (-0.6, -0.8), Role.MEMBER, ("sling_strength[left]",))
PARTS: tuple[Primitive, ...] = (
    LEG,
    Dimension((-0.6, -0.8), (0.6, -0.8), "1.20 m", 0.1, ("eyes_apart_m",)),
    Text((0.0, -0.4), "A & <B>", Role.TEXT, Anchor.MIDDLE),
    Line((-1.0, -2.0), (1.0, -2.0), Role.GROUND),
)
PICTURE = Drawing('One "lift" & its load', (0.0, 0.0), PARTS)


def parsed(text: str) -> ElementTree.Element:
    return ElementTree.fromstring(text)


def member(tree: ElementTree.Element, about: str) -> ElementTree.Element:
    return next(one for one in tree if about in one.get("data-about", "").split() and one.tag.endswith("line"))


def angle_from_vertical_deg(line: ElementTree.Element) -> float:
    x1, y1, x2, y2 = (float(line.get(name, "nan")) for name in ("x1", "y1", "x2", "y2"))
    return math.degrees(math.atan2(abs(x2 - x1), abs(y2 - y1)))


def length_px(line: ElementTree.Element) -> float:
    x1, y1, x2, y2 = (float(line.get(name, "nan")) for name in ("x1", "y1", "x2", "y2"))
    return math.dist((x1, y1), (x2, y2))


def test_an_arc_goes_round_its_centre_from_angle_to_angle() -> None:
    (arc,) = leaves(Arc((1.0, 2.0), 0.5, -90.0, 0.0, Role.ANGLE))
    assert isinstance(arc, Polyline) and not arc.closed
    assert arc.points[0] == pytest.approx((1.0, 1.5)) and arc.points[-1] == pytest.approx((1.5, 2.0))
    assert all(math.dist(point, (1.0, 2.0)) == pytest.approx(0.5) for point in arc.points)


def test_a_dimension_has_its_line_aside_its_heads_and_its_words() -> None:
    found = list(leaves(Dimension((0.0, 0.0), (2.0, 0.0), "2.00 m", 0.3, ("span",))))
    assert Line((0.0, 0.3), (2.0, 0.3), Role.MEASURE, ("span",)) in found
    assert [each.words for each in found if isinstance(each, Text)] == ["2.00 m"]
    assert len([each for each in found if isinstance(each, Polyline) and each.closed]) == 2
    assert all(each.about == ("span",) for each in found)


def test_a_dimension_of_no_length_is_no_crash() -> None:
    assert list(leaves(Dimension((1.0, 1.0), (1.0, 1.0), "0.00 m", 0.3)))


def test_an_arrow_points_at_its_end() -> None:
    line, head = leaves(Arrow((0.0, 0.0), (0.0, -1.0), Role.FINE, 0.1))
    assert line == Line((0.0, 0.0), (0.0, -1.0), Role.FINE)
    assert isinstance(head, Polyline) and head.points[0] == (0.0, -1.0)
    assert all(point[1] >= -1.0 for point in head.points)


def test_every_role_has_a_class() -> None:
    assert set(CLASSES) == set(Role)


@pytest.mark.parametrize("width", [390, 700])
def test_lengths_and_angles_keep_their_proportions(width: int) -> None:
    tree = parsed(svg(PICTURE, width))
    assert angle_from_vertical_deg(member(tree, "sling_strength[left]")) == pytest.approx(36.87, abs=0.05)
    spans = [one for one in tree if one.get("class") == "d-measure" and one.get("y1") == one.get("y2")]
    long_px = length_px(member(tree, "sling_strength[left]"))
    assert max(length_px(one) for one in spans) == pytest.approx(1.2 * long_px, abs=0.1)


@pytest.mark.parametrize("width", [320, 390, 600, 900])
def test_all_stays_inside_the_view_box(width: int) -> None:
    for task in some_lifts(6, seed=3):
        found = assess(TABLE, task, with_spread=False).picture
        assert isinstance(found, Drawing)
        tree = parsed(svg(found, width))
        _, _, wide, high = (float(part) for part in tree.get("viewBox", "").split())
        assert wide == width and 0.2 * width < high < 1.2 * width
        for x, y in places(tree):
            assert -0.01 <= x <= wide + 0.01 and -0.01 <= y <= high + 0.01


def places(tree: ElementTree.Element) -> list[tuple[float, float]]:
    found: list[tuple[float, float]] = []
    for one in tree:
        found += [(float(x), float(y)) for x, y in re.findall(r"(-?[\d.]+),(-?[\d.]+)", one.get("points", ""))]
        for x, y in (("x1", "y1"), ("x2", "y2"), ("x", "y")):
            if x in one.attrib:
                found.append((float(one.attrib[x]), float(one.attrib[y])))
    return found


def test_on_a_desk_the_hook_hangs_at_56_per_cent() -> None:
    leg = member(parsed(svg(PICTURE, 700)), "sling_strength[left]")
    assert float(leg.get("x1", 0)) == pytest.approx(0.56 * 700, abs=0.01)


def test_the_sling_lines_stand_at_the_angles_that_were_assessed() -> None:
    for task in some_lifts(9, seed=11):
        ev = assess(TABLE, task, with_spread=False)
        assert isinstance(ev.picture, Drawing)
        tree = parsed(svg(ev.picture, 390))
        for label in ("left", "right"):
            drawn = angle_from_vertical_deg(member(tree, f"sling_strength[{label}]"))
            assert drawn == pytest.approx(ev[f"leg_angle_deg[{label}]"], abs=0.1)


def test_it_says_what_it_shows_and_escapes_what_it_is_told() -> None:
    text = svg(PICTURE, 390)
    tree = parsed(text)
    assert tree.get("role") == "img" and tree.get("aria-label") == 'One "lift" & its load'
    assert "A &amp; &lt;B&gt;" in text
    assert "style=" not in text and "<script" not in text and "http" not in text


def test_the_entry_in_hand_is_drawn_in_chalk_and_no_other() -> None:
    plain, focused = svg(PICTURE, 390), svg(PICTURE, 390, focus="eyes_apart_m")
    assert "d-now" not in plain and "d-text-chalk" not in plain
    assert focused.count("d-text-chalk") == 1 and focused.count("d-now") >= 1
    assert svg(PICTURE, 390, focus="mass_kg") == plain


@pytest.mark.parametrize("verdict, classes", [
    ("within limit", "d-sling-thin"), ("close to limit", "d-sling-core"), ("over limit", "d-sling-core-over"),
])
def test_a_member_is_filled_by_its_verdict(verdict: str, classes: str) -> None:
    assert classes in svg(PICTURE, 390, verdicts={"sling_strength[left]": verdict})
    assert "d-sling-core" not in svg(PICTURE, 390, verdicts={"another": verdict})


def test_without_legs_the_drawing_waits() -> None:
    assert isinstance(assess(TABLE, Task()).picture, Waits)


def test_the_drawing_comes_before_everything_is_known() -> None:
    found = assess(TABLE, lift(mass_kg=None, hoist=None, room_height_m=None), with_spread=False).picture
    assert isinstance(found, Drawing) and "pulls" not in found.label


def test_a_drawing_is_taken_apart_once_however_often_a_back_end_asks() -> None:
    assert PICTURE.leaves() is PICTURE.leaves()
    assert PICTURE.leaves() == tuple(leaf for part in PICTURE.parts for leaf in leaves(part))
