"""Words of a drawing keep off lines and off each other, at every width and at every shape of lift."""

import math

import pytest
from reportlab.pdfbase.ttfonts import TTFont

from checklist_app.operations import letters
from checklist_app.operations.drawing import Anchor, Drawing, Line, Point, Polyline, Role, Text, points_of
from checklist_app.operations.evaluate import assess
from checklist_app.operations.lettering import Box, Put, Setting, crosses, lettering
from checklist_app.operations.svg import HATCH_PX, ROOM_BELOW_PX, fitted, written
from checklist_app.shipped import shipped
from tests.operations.some_lifts import some_lifts
from tests.operations.straight_lift.lifts import TABLE, lift

SIZES = dict.fromkeys(Role, 10.0)
PLAIN = Setting(SIZES, lambda text: 5.0 * len(text.words))
NARROW = lift(both={"leg_length_m": 3.0}, highest_hook_m=8.0, room_height_m=9.0)


def same(point: Point) -> Point:
    return point


def covered(put: Put, drawing: Drawing, scale: float, x: float, y: float) -> list[str]:
    """The lines that run through a line of words; y counts downwards in the view."""
    found = []
    for leaf in drawing.leaves():
        if isinstance(leaf, Line | Polyline):
            places = [(x + point[0] * scale, -(y - point[1] * scale)) for point in points_of(leaf)]
            ends = zip(places, places[1:] + places[:1] * getattr(leaf, "closed", False), strict=False)
            if any(crosses(put.box, *each) for each in ends):
                found.append(leaf.role.value)
    return found


@pytest.mark.parametrize("width, tallest", [(390, None), (390, 0.72), (360, 0.72), (760, None)])
def test_no_words_of_a_lift_lie_on_other_words_or_on_a_leg(width: int, tallest: float | None) -> None:
    for task in [*some_lifts(8, seed=5), NARROW, lift()]:
        drawing = assess(TABLE, task, with_spread=False).picture
        assert isinstance(drawing, Drawing)
        view, height = fitted(drawing, float(width), tallest)
        puts = written(drawing, view, height)
        for number, put in enumerate(puts):
            assert not any(put.box.covers(other.box) for other in puts[:number]), put.text.words
            assert "member" not in covered(put, drawing, view.scale, view.x, view.y), put.text.words


@pytest.mark.parametrize("task", [lift(), NARROW], ids=["usual", "narrow"])
def test_a_usual_and_a_narrow_lift_have_no_words_on_any_line(task: object) -> None:
    drawing = assess(TABLE, task, with_spread=False).picture  # type: ignore[arg-type]
    assert isinstance(drawing, Drawing)
    view, height = fitted(drawing, 390.0)
    faults = {put.text.words: covered(put, drawing, view.scale, view.x, view.y)
              for put in written(drawing, view, height)}
    assert not any(faults.values()), faults


@pytest.mark.parametrize("width, tallest", [(390, None), (390, 0.72), (760, None)])
def test_no_words_of_a_lift_lie_on_the_hatching(width: int, tallest: float | None) -> None:
    low = lift(lift_height_m=0.05, both={"leg_length_m": 2.4}, highest_hook_m=8.0, room_height_m=9.0)
    for task in [*some_lifts(8, seed=11), NARROW, low, lift()]:
        drawing = assess(TABLE, task, with_spread=False).picture
        assert isinstance(drawing, Drawing)
        view, height = fitted(drawing, float(width), tallest)
        (ground,) = [leaf for leaf in drawing.leaves() if leaf.role is Role.GROUND]
        (left, top), (right, _) = (view.at(point) for point in points_of(ground))
        hatching = Box(left, -top - 2.0 - HATCH_PX, right, -top)
        for put in written(drawing, view, height):
            assert not put.box.covers(hatching), put.text.words


def test_words_in_columns_stand_side_by_side_and_keep_together() -> None:
    parts = (Text((0.0, 0.0), "one"), Text((0.0, 0.0), "two", along=6.0), Text((0.0, 0.0), "three", lower=1.0))
    puts = {put.text.words: put for put in lettering(Drawing("", (0.0, 0.0), parts), same, PLAIN)}
    assert puts["two"].x - puts["one"].x == 60.0 and puts["two"].y == puts["one"].y
    assert puts["three"].x == puts["one"].x


def test_all_words_are_there_and_stand_on_the_paper() -> None:
    drawing = assess(TABLE, NARROW, with_spread=False).picture
    assert isinstance(drawing, Drawing)
    view, height = fitted(drawing, 360.0, 0.72)
    puts = written(drawing, view, height)
    said = sorted(leaf.words for leaf in drawing.leaves() if isinstance(leaf, Text))
    assert sorted(put.text.words for put in puts) == said
    assert all(Box(0.0, -height - ROOM_BELOW_PX, 360.0, 0.0).holds(put.box) for put in puts)


def test_words_that_cover_nothing_stay_where_they_are() -> None:
    (put,) = lettering(Drawing("", (0.0, 0.0), (Text((7.0, 3.0), "free"),)), same, PLAIN)
    assert put.x == 7.0 and put.y == pytest.approx(3.0 - 0.35 * 10.0)


def test_words_at_one_point_move_together() -> None:
    wall = Line((3.0, -50.0), (3.0, 50.0), Role.MEMBER)
    parts = (wall, *(Text((0.0, 0.0), words, lower=float(row)) for row, words in enumerate(("pull", "angle"))))
    above, below = sorted(lettering(Drawing("", (0.0, 0.0), parts), same, PLAIN), key=lambda put: -put.y)
    assert above.x == below.x > 3.0
    assert above.y - below.y == pytest.approx(13.0)


def test_words_on_the_left_of_a_leg_do_not_jump_over_it() -> None:
    wall = Line((3.0, -500.0), (3.0, 500.0), Role.MEMBER)
    drawing = Drawing("", (0.0, 0.0), (wall, Text((0.0, 0.0), "left", anchor=Anchor.END)))
    (put,) = lettering(drawing, same, PLAIN)
    assert put.box.right < 3.0


@pytest.mark.parametrize("start, end, through", [
    ((-1.0, 1.0), (3.0, 1.0), True), ((1.0, -1.0), (1.0, 3.0), True), ((-1.0, -1.0), (3.0, 3.0), True),
    ((0.5, 0.5), (0.6, 0.6), True), ((-1.0, 2.5), (3.0, 2.5), False), ((-1.0, 1.5), (2.0, 4.5), False),
    ((3.0, 0.0), (3.0, 2.0), False),
])
def test_whether_a_line_comes_into_a_rectangle(start: Point, end: Point, through: bool) -> None:
    assert crosses(Box(0.0, 0.0, 2.0, 2.0), start, end) is through


def test_widths_of_letters_are_those_of_the_face() -> None:
    face = TTFont("Measured", str(shipped("static") / "fonts" / "sofia-sans-bold.ttf"), asciiReadable=0).face
    for letter, wide in letters.WIDE.items():
        assert math.isclose(face.getCharWidth(ord(letter)), wide, abs_tol=5.01), letter
    assert letters.width("1.05 t", 1000.0) == sum(letters.WIDE[each] for each in "1.05 t")
