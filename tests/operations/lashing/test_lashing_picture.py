"""The picture of both operations from their entries: what is known is drawn, whatever else waits."""

import copy
from typing import Any

import pytest

from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.drawing import Drawing, Line, Point, Polyline, Role, Text
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.graph import Waits
from checklist_app.operations.inline import from_json
from checklist_app.operations.lashing.choices import Tensioned
from checklist_app.operations.svg import svg
from checklist_app.operations.words import FIXED, demand_said
from tests.operations.lashing.lashed_tasks import PALLET, four, on_pallet, tie_down

KINDS = ("pallet_lashing", "vehicle_lashing")
OVER_THE_TOP: dict[str, Any] = {
    "put_on": "tie-down over the top", "far_end": "the same, on the other side",
    "tensioned": "by hand, as the label says", "edges": "edge guards at every edge",
    "held_dan": {"not_used": "it lies over the load"},
    "at_x_m": 0.2, "at_y_m": 0.4, "at_z_m": 1.25, "anchor_x_m": 0.2, "anchor_y_m": 1.1, "anchor_z_m": -0.15,
}


def example(kind: str) -> dict[str, Any]:
    return copy.deepcopy(dict(OPERATIONS[kind].example))


def evaluated(kind: str, data: dict[str, Any], spread: bool = False) -> Evaluation:
    return assess(OPERATIONS[kind].table, from_json(OPERATIONS[kind].table, data), spread)


def drawn(kind: str, data: dict[str, Any], spread: bool = False) -> Drawing:
    found = evaluated(kind, data, spread).picture
    assert isinstance(found, Drawing), found
    return found


def words(drawing: Drawing) -> list[str]:
    return [leaf.words for leaf in drawing.leaves() if isinstance(leaf, Text)]


def view(drawing: Drawing, name: str) -> Drawing:
    return next(each for each in (drawing, *drawing.others) if each.name == name)


def ends(drawing: Drawing, row: str) -> list[tuple[Point, Point]]:
    return [(one.start, one.end) for one in drawing.parts
            if isinstance(one, Line) and any(name == f"at_x_m[{row}]" for name in one.about)]


@pytest.mark.parametrize("kind", KINDS)
def test_the_example_shows_each_lashing_where_it_was_entered(kind: str) -> None:
    data = example(kind)
    drawing = drawn(kind, data)
    for row in data["lashings"]:
        assert ends(drawing, row["label"]) == [
            ((row["at_x_m"], row["at_z_m"]), (row["anchor_x_m"], row["anchor_z_m"]))]
        assert ends(view(drawing, "From above"), row["label"]) == [
            ((row["at_x_m"], row["at_y_m"]), (row["anchor_x_m"], row["anchor_y_m"]))]


@pytest.mark.parametrize("kind", KINDS)
def test_pull_and_use_are_those_of_the_checks(kind: str) -> None:
    ev = evaluated(kind, example(kind))
    assert isinstance(ev.picture, Drawing)
    said = words(view(ev.picture, "From above"))
    for number, row in enumerate(ev.plan.rows("lashing"), 1):
        pull = f"{ev[f'lashing_pull_dan[{row}]']:.0f} daN"
        assert any(pull in each for each in said), (pull, said)
        assert any(f"{number} {row}" in each for each in said)


@pytest.mark.parametrize("kind", KINDS)
def test_the_bars_are_those_of_the_checks(kind: str) -> None:
    ev = evaluated(kind, example(kind), spread=True)
    assert isinstance(ev.picture, Drawing)
    said = words(view(ev.picture, "Held against needed"))
    worst = ev.check("tipping[to the left]").worst
    assert f"{int(100.0 * worst[1] / worst[0]) / 100.0:.2f} ×" in said  # type: ignore[index]
    assert sum("tips" in each or "slides" in each for each in said) == 8


def test_the_centre_of_gravity_may_lie_within_its_spread() -> None:
    dashed = [one for one in drawn("pallet_lashing", example("pallet_lashing"), True).parts
              if isinstance(one, Polyline) and one.role is Role.WORST and "cg_z_m" in one.about]
    assert dashed[0].points[0] == pytest.approx((0.0, 0.59)) and dashed[0].points[2] == pytest.approx((0.06, 0.65))
    assert not [one for one in drawn("pallet_lashing", example("pallet_lashing")).parts
                if isinstance(one, Polyline) and one.role is Role.WORST]


def test_what_nobody_knows_may_lie_anywhere_that_is_published() -> None:
    data = example("pallet_lashing")
    data["entries"]["cg_z_m"] = "don't know"
    (dashed,) = [one for one in drawn("pallet_lashing", data).parts
                 if isinstance(one, Polyline) and one.role is Role.WORST and "cg_z_m" in one.about]
    assert dashed.points[2][1] == pytest.approx(1.25) and dashed.points[0][1] < 0.05


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("name", ["length_m", "width_m", "height_m"])
def test_without_the_size_of_the_load_the_drawing_waits(kind: str, name: str) -> None:
    data = example(kind)
    del data["entries"][name]
    found = evaluated(kind, data).picture
    assert isinstance(found, Waits) and "length, width and height" in str(found)


@pytest.mark.parametrize("kind", KINDS)
def test_every_other_entry_may_be_missing(kind: str) -> None:
    """Whatever is missing, what is there is drawn; of a lashing without its ends the others stay."""
    for name in example(kind)["entries"]:
        data = example(kind)
        del data["entries"][name]
        if name not in ("length_m", "width_m", "height_m"):
            assert len([row for row in data["lashings"] if ends(drawn(kind, data), row["label"])]) == 4, name
    for name in example(kind)["lashings"][0]:
        data = example(kind)
        if name != "label":
            del data["lashings"][0][name]
            left = len([row for row in data["lashings"] if ends(drawn(kind, data), row["label"])])
            assert left == (3 if name.startswith(("at_", "anchor_")) and name.endswith("_m") else 4), name


@pytest.mark.parametrize("kind", KINDS)
def test_a_load_without_lashings_and_one_of_bare_size_are_drawn(kind: str) -> None:
    data = example(kind)
    data["lashings"] = []
    assert "no lashings" in words(drawn(kind, data))
    data["entries"] = {name: data["entries"][name] for name in ("length_m", "width_m", "height_m")}
    bare = drawn(kind, data)
    assert [each.name for each in bare.others] == ["From above", "From behind"]


def test_a_tie_down_whose_other_end_is_mirrored_goes_over_the_top() -> None:
    data = example("vehicle_lashing")
    data["lashings"][0] |= OVER_THE_TOP
    behind = ends(view(drawn("vehicle_lashing", data), "From behind"), data["lashings"][0]["label"])
    assert ((-0.4, 1.25), (0.4, 1.25)) in behind and ((0.4, 1.25), (1.1, -0.15)) in behind


def test_a_block_is_drawn_over_the_face_it_stands_on_and_said() -> None:
    data = example("vehicle_lashing")
    data["blocks"] = [{"label": "1", "blocked_by": "chock or timber, nailed or screwed", "blocks": "rearwards",
                       "block_on": "the deck", "block_dan": 800, "block_x_m": -0.9, "block_y_m": 0.0, "block_z_m": 0.1}]
    drawing = drawn("vehicle_lashing", data)
    touches = [one.points[0] for one in drawing.parts if isinstance(one, Polyline) and one.role is Role.SOLID]
    assert any(point == pytest.approx((-0.9, 0.1 - 0.15)) for point in touches)
    assert "chock or timber, rearwards: 800 daN" in words(view(drawing, "From above"))


def test_the_pallet_lies_with_its_longer_side_along_the_longer_side_of_the_feet() -> None:
    data = example("pallet_lashing")
    data["entries"]["base_length_m"], data["entries"]["base_width_m"] = 0.7, 1.3
    del data["entries"]["pallet_lies"]
    parts = drawn("pallet_lashing", data).parts
    outlines = [one for one in parts if isinstance(one, Polyline) and "pallet" in one.about]
    assert outlines[0].points[2][0] == pytest.approx(0.6)


@pytest.mark.parametrize("kind", KINDS)
def test_what_is_over_limit_looks_so_without_colour_too(kind: str) -> None:
    data = example(kind)
    data["lashings"] = []
    ev = evaluated(kind, data)
    assert isinstance(ev.picture, Drawing)
    verdicts = {check.name: check.verdict.words for check in ev.checks}
    bars = svg(view(ev.picture, "Held against needed"), 390, None, verdicts)
    assert "d-sling-core-over" in bars and ", over limit" in bars


@pytest.mark.parametrize("kind", KINDS)
def test_the_entry_in_hand_is_drawn_in_chalk(kind: str) -> None:
    row = example(kind)["lashings"][1]["label"]
    drawing = drawn(kind, example(kind))
    assert "d-now" in svg(drawing, 390, f"anchor_x_m[{row}]") and "d-now" in svg(drawing, 390, "cg_z_m")
    assert "d-now" not in svg(drawing, 390, "mass_kg")


def test_the_drawing_rounds_a_pull_as_its_check_does() -> None:
    """Over its rating both round up: 502.4 of 500 daN is 503 of 500 in the check, and 503 daN in the drawing."""
    tied = tie_down(tensioned=Tensioned.MEASURED, tension_dan=502.4, anchor_dan=500.0)
    ev = assess(PALLET, on_pallet((*four(), tied)), with_spread=False)
    check = ev.check("lashing_strength[5]")
    assert isinstance(ev.picture, Drawing)
    text = " ".join(words(ev.picture))

    assert demand_said(check).replace(FIXED, " ") == "503 of 500 daN"
    assert "503 daN" in text and "502 daN" not in text
