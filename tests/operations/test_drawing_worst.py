"""The attitude at the worst of the spread lies dashed behind the stated one, and is left out where nothing moves."""

from checklist_app.operations.drawing import Drawing, Line, Polyline, Role, Text, points_of
from checklist_app.operations.drawing_worst import with_worst
from checklist_app.operations.evaluate import assess
from checklist_app.operations.svg import svg
from checklist_app.operations.task import Measured
from tests.operations.straight_lift.lifts import TABLE, lift

LEG, MOVED = Line((0.0, 0.0), (1.0, -1.0), Role.MEMBER, ("a",)), Line((0.0, 0.0), (1.2, -1.0), Role.MEMBER, ("a",))
FLOOR, LOWER = Line((-1.0, -2.0), (1.0, -2.0), Role.GROUND), Line((-1.0, -2.5), (1.0, -2.5), Role.GROUND)


def drawing(*parts: Line, name: str = "", others: tuple[Drawing, ...] = ()) -> Drawing:
    return Drawing("A lift.", (0.0, 0.0), parts, name, others=others)


def dashed(found: Drawing) -> list[Line | Polyline]:
    return [leaf for leaf in found.leaves() if isinstance(leaf, Line | Polyline) and leaf.role is Role.WORST]


def test_what_moved_is_drawn_dashed_and_said_in_words() -> None:
    found = with_worst(drawing(LEG, FLOOR), drawing(MOVED, LOWER), "sling")
    assert [points_of(leaf) for leaf in dashed(found)] == [(MOVED.start, MOVED.end)]
    assert found.note == "Dashed: where sling is worst." and found.note in found.label
    assert found.parts[1:3] == (LEG, FLOOR)
    assert [leaf.words for leaf in found.leaves() if isinstance(leaf, Text)] == ["dashed: at its worst"]


def test_what_did_not_move_is_not_drawn_twice() -> None:
    near = Line((0.0, 0.0), (1.005, -1.0), Role.MEMBER, ("a",))
    stated = drawing(LEG, FLOOR)
    assert with_worst(stated, drawing(near, LOWER), "sling") == stated


def test_each_view_gets_what_lies_behind_it() -> None:
    stated = drawing(LEG, name="side", others=(drawing(FLOOR, name="end"), drawing(LEG, name="plan")))
    worst = drawing(LEG, name="side", others=(drawing(LOWER, name="end"), drawing(MOVED, name="plan")))
    found = with_worst(stated, worst, "sling")
    assert not dashed(found) and not dashed(found.others[0]) and len(dashed(found.others[1])) == 1


def test_a_lift_of_which_little_is_known_shows_where_it_may_hang() -> None:
    found = assess(TABLE, lift(cg_x_m=Measured(0.5, "by eye"))).picture
    assert isinstance(found, Drawing) and len(dashed(found)) >= 3
    assert "d-worst" in svg(found, 390) and "Dashed: where" in found.label


def test_a_lift_that_is_exactly_known_has_one_attitude() -> None:
    found = assess(TABLE, lift()).picture
    assert isinstance(found, Drawing) and not dashed(found) and not found.note


def test_without_spread_there_is_no_worst_attitude() -> None:
    found = assess(TABLE, lift(cg_x_m=Measured(0.5, "by eye")), with_spread=False).picture
    assert isinstance(found, Drawing) and not dashed(found)
