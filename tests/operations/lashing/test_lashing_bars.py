"""The bars: four ways, sliding and tipping, the weaker face of two, and never better than they are."""

import pytest

from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.operations.check import Strength
from checklist_app.operations.drawing import Drawing, Line, Role, Text
from checklist_app.operations.graph import CannotAssess, NotApplicable, Waits
from checklist_app.operations.lashing.lashing_bars import NEEDED, WIDE, bars, chart, figure
from checklist_app.operations.svg import svg
from tests.operations.lashing.drawn import check, checks

FORWARD = Direction.FORWARD


def one(quantity: str, have: float, worst: float | None = None) -> tuple[object, ...]:
    outcome = Strength(100.0, 100.0 * have)
    return (check(quantity, FORWARD, outcome, Strength(100.0, 100.0 * (have if worst is None else worst))),)


def lengths(drawing: Drawing) -> list[float]:
    return [part.end[0] for part in drawing.parts if isinstance(part, Line) and part.role is Role.MEMBER]


def test_each_way_has_a_bar_for_sliding_and_one_for_tipping() -> None:
    told = bars(checks())
    assert [(bar.direction, bar.tips) for bar in told] == [(way, tips) for way in Direction for tips in (False, True)]
    assert all(bar.words.endswith(bar.direction.value) for bar in told)


@pytest.mark.parametrize("load, pallet, weaker", [(1.4, 1.2, "pallet slides"), (1.1, 1.2, "load slides")])
def test_of_two_faces_the_weaker_one_is_shown(load: float, pallet: float, weaker: str) -> None:
    (bar,) = bars((*one("sliding", load), *one("deck_sliding", pallet)))  # type: ignore[arg-type]
    assert bar.words == f"{weaker} forwards" and bar.worst == pytest.approx(min(load, pallet))


def test_a_face_of_which_nobody_can_tell_is_not_hidden_by_one_that_holds() -> None:
    waiting = check("deck_sliding", FORWARD, Waits("deck"), Waits("deck"))
    (bar,) = bars((*one("sliding", 1.4), waiting))  # type: ignore[arg-type]
    assert bar.verdict == "waiting" and bar.worst is None
    none = check("deck_sliding", FORWARD, NotApplicable("no pallet"), NotApplicable("no pallet"))
    (bar,) = bars((*one("sliding", 1.4), none))  # type: ignore[arg-type]
    assert bar.worst == pytest.approx(1.4)


def test_the_worst_is_shown_and_a_refusal_at_the_worst_gives_no_figure() -> None:
    (bar,) = bars(one("tipping", 1.4, 0.9))  # type: ignore[arg-type]
    assert figure(bar) == "0.90 ×, over limit" and bar.times == pytest.approx(1.4)
    refused = check("tipping", FORWARD, Strength(100.0, 140.0), CannotAssess("no feet"))
    (bar,) = bars((refused,))
    assert figure(bar) == "cannot be assessed" and not lengths(chart((bar,)))


@pytest.mark.parametrize("have, said, reach", [
    (0.5, "0.50 ×, over limit", NEEDED / 2.0), (1.0, "1.00 ×, over limit", NEEDED),
    (1.5, "1.50 ×", 1.5 * NEEDED), (7.0, "7.00 ×", WIDE), (40.0, "10 × or more", WIDE),
    (0.9999, "0.99 ×, over limit", None),
])
def test_a_bar_is_as_long_as_it_says_and_never_rounded_up(have: float, said: str, reach: float | None) -> None:
    told = bars(one("tipping", have))  # type: ignore[arg-type]
    assert figure(told[0]) == said
    (long,) = lengths(chart(told))
    assert long == pytest.approx(reach if reach is not None else have * NEEDED)
    assert (long < NEEDED) is (have < 1.0)


def test_a_bar_carries_its_verdict_by_fill_and_by_word() -> None:
    told = bars((*one("tipping", 0.8), *one("sliding", 1.2)))  # type: ignore[arg-type]
    drawn = svg(chart(told), 390, None, {bar.check: bar.verdict for bar in told})
    assert "d-sling-core-over" in drawn and "0.80 ×, over limit" in drawn and "1.20 ×, close to limit" in drawn
    said = [leaf.words for leaf in chart(told).leaves() if isinstance(leaf, Text)]
    assert "needed" in said and "load tips forwards" in said


def test_what_is_needed_is_marked_in_every_row() -> None:
    told = bars(checks())
    marks = [part for part in chart(told).parts if isinstance(part, Line) and part.role is Role.OUTLINE]
    assert len(marks) == len(told) and {mark.start[0] for mark in marks} == {NEEDED}


def test_the_chart_in_words_names_every_way() -> None:
    label = chart(bars(checks())).label
    assert all(f"tips {way.value}" in label and f"slides {way.value}" in label for way in Direction)
