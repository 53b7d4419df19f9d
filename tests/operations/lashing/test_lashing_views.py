"""Views of lashed loads put together by hand: every point where it belongs, every lashing named."""

import math

import pytest

from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.drawing import Arrow, Drawing, Line, Point, Polyline, Role, Text, points_of
from checklist_app.operations.lashing.lashing_told import beneath, together
from checklist_app.operations.lashing.lashing_views import views
from checklist_app.operations.lashing.shown import Deck, Shown
from checklist_app.operations.lettering import Box
from checklist_app.operations.svg import HATCH_PX, ROOM_BELOW_PX, fitted, svg, written
from tests.operations.lashing.drawn import BASE, CASES, CG, EIGHT, FOUR, PALLET, PLAIN, SIZE, mirrored, tie_down

NAMES = ("From the right side", "From above", "From behind")


def seen(shown: Shown, name: str) -> Drawing:
    whole = views(shown)
    return next(view for view in (whole, *whole.others) if view.name == name)


def members(drawing: Drawing, label: str) -> list[tuple[Point, Point]]:
    return [(one.start, one.end) for one in drawing.parts
            if isinstance(one, Line) and f"lashing_strength[{label}]" in one.about]


def words(drawing: Drawing) -> list[str]:
    return [leaf.words for leaf in drawing.leaves() if isinstance(leaf, Text)]


@pytest.mark.parametrize("case", CASES)
def test_a_lashed_load_is_seen_from_three_sides_and_the_bars_come_first_of_the_others(case: str) -> None:
    whole = views(CASES[case])
    bars = ["Held against needed"] if CASES[case].bars else []
    assert [whole.name, *(view.name for view in whole.others)] == [NAMES[0], *bars, *NAMES[1:]]
    assert [view.to_scale for view in whole.others] == [name != "Held against needed" for name in (*bars, *NAMES[1:])]


def test_each_lashing_runs_from_the_load_to_its_anchor_in_every_view() -> None:
    for tied in FOUR:
        ((at, anchor),) = tied.ends
        shown = PLAIN._replace(tied=FOUR)
        assert members(seen(shown, NAMES[0]), tied.label) == [((at.x, at.z), (anchor.x, anchor.z))]
        assert members(seen(shown, NAMES[1]), tied.label) == [((at.x, at.y), (anchor.x, anchor.y))]
        assert members(seen(shown, NAMES[2]), tied.label) == [((-at.y, at.z), (-anchor.y, anchor.z))]


def test_a_tie_down_goes_over_the_top() -> None:
    behind = members(seen(PLAIN._replace(tied=(tie_down("1", 0.2),)), NAMES[2]), "1")
    assert ((-0.4, 1.25), (0.4, 1.25)) in behind and len(behind) == 3


def test_a_loop_is_not_drawn_across_the_load_as_if_it_pulled_there() -> None:
    loop = tie_down("1", 0.2)._replace(kind=Kind.LOOP)
    assert len(members(seen(PLAIN._replace(tied=(loop,)), NAMES[2]), "1")) == 3
    heavy = [one for one in seen(PLAIN._replace(tied=(loop,)), NAMES[2]).parts
             if isinstance(one, Line) and one.role is Role.MEMBER]
    assert len(heavy) == 2


@pytest.mark.parametrize("name", NAMES[1:])
def test_mirrored_lashings_give_the_mirrored_picture(name: str) -> None:
    """Left and right: y in the view from above, x in the one from behind."""
    one, other = PLAIN._replace(tied=FOUR[:1]), PLAIN._replace(tied=(mirrored(FOUR[0]),))
    turn = (1.0, -1.0) if name == NAMES[1] else (-1.0, 1.0)
    ((start, end),), ((start_m, end_m),) = members(seen(one, name), "1"), members(seen(other, name), "1")
    for here, there in ((start, start_m), (end, end_m)):
        assert (here[0] * turn[0], here[1] * turn[1]) == there


def test_lengths_are_true_to_one_scale() -> None:
    drawing = seen(CASES["four"], NAMES[0])
    view, _ = fitted(drawing, 390.0)
    outlines = [[view.at(point) for point in points_of(one)] for one in drawing.parts
                if isinstance(one, Polyline) and one.role is Role.OUTLINE]
    wide = [max(x for x, _ in each) - min(x for x, _ in each) for each in outlines]
    assert wide[0] / view.scale == pytest.approx(PALLET.x) and wide[-1] / view.scale == pytest.approx(SIZE.x)
    assert max(y for each in outlines for _, y in each) == pytest.approx(view.at((0.0, -PALLET.z))[1])


def test_the_load_stands_on_its_feet_and_they_on_the_pallet() -> None:
    outlines = [one.points for one in seen(PLAIN, NAMES[0]).parts
                if isinstance(one, Polyline) and one.role is Role.OUTLINE]
    pallet, left, right, load = outlines
    assert pallet[0] == (-PALLET.x / 2.0, -PALLET.z) and pallet[2][1] == 0.0
    assert left[0] == (-BASE[0] / 2.0, 0.0) and right[2][0] == pytest.approx(BASE[0] / 2.0)
    assert load[0][1] == left[2][1] > 0.0 and load[2] == (SIZE.x / 2.0, SIZE.z)


def test_it_tips_over_the_edge_of_its_feet_where_they_bear() -> None:
    """The one of which least is withstood is forwards; a soft edge bears farther in."""
    edge = BASE[0] / 2.0 - PLAIN.soft_m
    wedge = next(one for one in seen(PLAIN, NAMES[0]).parts
                 if isinstance(one, Polyline) and "tipping[forwards]" in one.about)
    assert wedge.points[0] == pytest.approx((edge, 0.0))
    above = next(one for one in seen(PLAIN, NAMES[1]).parts
                 if isinstance(one, Polyline) and "tipping[forwards]" in one.about)
    assert sum(x for x, _ in above.points) / 4.0 == pytest.approx(edge)
    assert "tips here first" in words(seen(PLAIN, NAMES[0])) and "tips here first" not in words(seen(PLAIN, NAMES[2]))


def test_on_the_deck_it_tips_over_the_edge_of_the_pallet() -> None:
    bars = tuple(bar._replace(on_deck=True) for bar in PLAIN.bars)
    wedge = next(one for one in seen(PLAIN._replace(bars=bars), NAMES[0]).parts
                 if isinstance(one, Polyline) and "tipping[forwards]" in one.about)
    assert wedge.points[0] == pytest.approx((PALLET.x / 2.0, -PALLET.z))


def test_the_push_points_where_least_is_left() -> None:
    for way, across in (("forwards", 1.0), ("rearwards", -1.0)):
        bars = tuple(bar._replace(worst=0.5) if bar.direction.value == way and bar.tips else bar for bar in PLAIN.bars)
        drawing = seen(PLAIN._replace(bars=bars), NAMES[0])
        (push,) = [one for one in drawing.parts if isinstance(one, Arrow)]
        assert math.copysign(1.0, push.end[0] - push.start[0]) == across
        assert any(each.startswith(f"pushed {way}, ") for each in words(drawing))


def test_the_centre_of_gravity_has_its_plumb_line_and_where_it_may_lie() -> None:
    drawing = seen(PLAIN, NAMES[0])
    plumb = [one for one in drawing.parts if isinstance(one, Line) and one.role in (Role.PLUMB, Role.PLUMB_ON)]
    assert {x for line in plumb for x, _ in (line.start, line.end)} == {CG.x}
    ups = [z for line in plumb for _, z in (line.start, line.end)]
    assert drawing.hook == (CG.x, max(ups)) and max(ups) > SIZE.z and min(ups) == -PALLET.z
    (where,) = [one for one in drawing.parts if isinstance(one, Polyline) and one.role is Role.WORST]
    assert where.points[0] == (-0.02, 0.72) and where.points[2] == (0.18, 0.92)
    exact = seen(PLAIN._replace(cg_range=None), NAMES[0])
    assert not [one for one in exact.parts if isinstance(one, Polyline) and one.role is Role.WORST]


def test_a_headboard_near_by_is_drawn_and_one_far_off_is_said() -> None:
    def board(headboard_x_m: float) -> bool:
        drawing = seen(PLAIN._replace(deck=Deck(headboard_x_m, 13.6, 2.48)), NAMES[0])
        assert f"headboard {headboard_x_m - SIZE.x / 2.0:.2f} m before the load" in words(drawing)
        return any("behind_headboard_m" in getattr(one, "about", ()) for one in drawing.parts)

    assert board(1.0) and not board(9.0)
    (low, high) = seen(PLAIN._replace(deck=Deck(9.0, 13.6, 2.48)), NAMES[0]).bounds()
    assert high[0] - low[0] < 3.0


def test_every_lashing_is_numbered_in_every_view_and_listed_from_above() -> None:
    shown = CASES["eight unlike"]
    for name in NAMES[:2]:
        said = words(seen(shown, name))
        assert all(any(part.strip() == tied.number for each in said for part in each.split(","))
                   or f"{tied.number}: " in "".join(said) for tied in shown.tied), name
    listed = words(seen(shown, NAMES[1]))
    for tied in shown.tied:
        assert any(each.startswith(f"{tied.number}: {tied.pull_dan:.0f} daN, {tied.used}") for each in listed)
    assert any(each.endswith(", governs") for each in listed)
    assert "headboard, forwards: 2000 daN" in listed


def test_a_long_list_names_the_ones_used_most_and_says_where_the_others_are() -> None:
    said = [text.words for text in beneath(CASES["eight unlike"], (0.0, 0.0), (), 3)]
    assert said == ["8: 797 daN, 80 %, governs", "7: 726 daN, 73 %", "6: 655 daN, 66 %",
                    "5 more, used less"]


def test_lashings_of_which_the_same_is_said_stand_in_one_line() -> None:
    said = [text.words for text in beneath(PLAIN._replace(tied=FOUR), (0.0, 0.0), (), 3)]
    assert said == ["1–4: 640 daN, 66 %"]
    assert together(["10", "2", "1", "3"]) == "1–3, 10"


def test_rows_that_have_names_are_numbered_and_named_from_above() -> None:
    named = tuple(each._replace(label=f"left_{n}", number=str(n)) for n, each in enumerate(FOUR, 1))
    listed = words(seen(PLAIN._replace(tied=named), NAMES[1]))
    assert "1 left 1, 2 left 2" in listed and "3 left 3, 4 left 4" in listed


def test_sixteen_lashings_share_their_numbers_and_the_ones_used_most_are_told() -> None:
    shown = CASES["sixteen with names"]
    above = words(seen(shown, NAMES[1]))
    assert "numbered in the order of their rows" in above and "6 more, used less" in above
    assert len([each for each in above if "daN, " in each and "pushed" not in each]) == 10
    for name in NAMES:
        numbers = [each for each in words(seen(shown, name)) if each.replace("–", "").replace(", ", "").isdecimal()]
        assert 0 < len(numbers) <= 8, numbers


def test_without_lashings_and_without_numbers_there_is_a_picture_all_the_same() -> None:
    assert "no lashings" in words(views(PLAIN))
    bare = CASES["numbers to come"]
    assert len(members(views(bare), "1")) == 1 and not [each for each in words(views(bare)) if "daN" in each]
    assert "0.00" not in views(Shown(Vec(1.0, 1.0, 1.0))).label


@pytest.mark.parametrize("case", CASES)
@pytest.mark.parametrize("width, tallest", [(390, None), (390, 0.72), (360, 0.72), (760, None)])
def test_no_words_lie_on_words_on_hatching_or_off_the_paper(case: str, width: int, tallest: float | None) -> None:
    """The other views are never kept low: they stand among the words of the page."""
    whole = views(CASES[case])
    for drawing in (whole, *whole.others):
        width = width if drawing is whole else 390
        view, height = fitted(drawing, float(width), tallest if drawing is whole else None)
        puts = written(drawing, view, height)
        assert len(puts) == len(words(drawing))
        grounds = [[view.at(point) for point in points_of(leaf)] for leaf in drawing.leaves()
                   if leaf.role is Role.GROUND]
        hatched = [Box(left, -low - 2.0 - HATCH_PX, right, -low) for (left, low), (right, _) in grounds]
        for number, put in enumerate(puts):
            assert not any(put.box.covers(other.box) for other in puts[:number]), (drawing.name, put.text.words)
            assert not any(put.box.covers(box) for box in hatched), (drawing.name, put.text.words)
            assert put.box.left >= 0.0 and put.box.right <= width, (drawing.name, put.text.words)
            assert put.box.low >= -height - ROOM_BELOW_PX and put.box.high <= 0.0


@pytest.mark.parametrize("case", CASES)
def test_the_screen_draws_it_with_the_load_no_smaller_than_a_thumb(case: str) -> None:
    drawing = views(CASES[case])
    view, _ = fitted(drawing, 390.0, 0.72)
    assert min(CASES[case].size.x, CASES[case].size.z) * view.scale > 40.0 or CASES[case].size.x < 0.6
    assert svg(drawing, 390, None, {}).startswith("<svg ") and "NaN" not in svg(drawing, 390, None, {})


def test_eight_lashings_lie_before_and_behind_the_load() -> None:
    """What is on the far side is drawn before the load, so that the load covers it."""
    parts = seen(PLAIN._replace(tied=EIGHT), NAMES[0]).parts
    load = max(n for n, one in enumerate(parts) if isinstance(one, Polyline) and "length_m" in one.about)
    left, right = (next(n for n, one in enumerate(parts) if isinstance(one, Line)
                        and f"lashing_strength[{label}]" in one.about) for label in ("1", "2"))
    assert left < load < right
