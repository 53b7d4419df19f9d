"""Mass and centre of gravity from parts and scales, through the page; nothing is answered before it is taken over."""
from urllib.parse import urlencode

import pytest

from checklist_app.checklists.running import running
from checklist_app.checklists.worked_out import EVIDENCE, Faults, by_parts, by_scales, by_two_scales
from checklist_app.operations.task import Key, Measured
from tests.checklists.pages_checked import faults
from tests.checklists.shop import Shop

OFF = {"scale_off": "2", "place_off": "5"}
TWO = {"by": "two", "first": "600", "second": "400", "apart": "2.0", "at": "-0.5", "go": "3", **OFF}
RAISED = {"raised": "648.4898", "angle": "10", "angle_off": "0.1", "support_z": "0.2"}
MORE = {"by": "more", "go": "3", **OFF, "kg1": "100", "x1": "0", "y1": "0", "kg2": "100", "x2": "0", "y2": "2",
        "kg3": "200", "x3": "3", "y3": "1"}
PARTS = {"by": "parts", "go": "3", "mass_off": "5", "place_off": "20", "what1": "engine", "kg1": "300", "x1": "0",
         "y1": "0", "z1": "0.6", "what2": "oil", "l2": "100", "of2": "engine, gear or hydraulic oil", "x2": "2",
         "y2": "0", "z2": "0.2"}


@pytest.fixture
def shop() -> Shop:
    return Shop()


@pytest.fixture
def address(shop: Shop) -> str:
    return f"/tasks/{shop.begin()}/work-out"


def test_two_scales_by_hand() -> None:
    """600 and 400 kg, 2 m apart: 0.8 m from the first (moments); the raised end by the example of tilted weighing."""
    found = by_two_scales({**TWO, **RAISED})
    x, z = found.cg
    assert (found.mass_kg, found.highest_kg, found.mass_how) == (1000.0, 1004.0, "weighed")
    assert (x.name, round(x.at_m, 9), z.name, round(z.at_m, 3)) == ("cg_x_m", 0.3, "cg_z_m", 0.75)
    assert x.off_m >= 0.006 and z.off_m > 0.05


def test_three_scales_by_hand() -> None:
    """100, 100 and 200 kg: moments over mass give 1.5 and 1.0 m."""
    found = by_scales(MORE)
    assert found.mass_kg == 400.0
    assert [(each.name, each.at_m) for each in found.cg] == [("cg_x_m", 1.5), ("cg_y_m", 1.0)]
    assert "3 scales: 100 kg at 0.00, 0.00 m" in found.evidence


def test_parts_and_fluids_by_hand() -> None:
    """300 kg and 100 l of oil of 840 to 900 kg/m³: 387 kg, at 2 × 87 / 387 m; as heavy as both may be."""
    found = by_parts(PARTS, 3)
    assert round(found.mass_kg, 6) == 387.0 and found.cg[0].at_m == pytest.approx(2 * 87 / 387)
    assert found.highest_kg == pytest.approx(387 + 15 + 4.35) and found.mass_how == "calculated"


@pytest.mark.parametrize(("typed", "field"), [
    ({**TWO, "first": "x"}, "first"), ({**TWO, "scale_off": ""}, "scale_off"), ({**TWO, "apart": "0"}, "apart"),
    ({**TWO, "first": "0", "second": "0"}, "first"), ({**TWO, "second": "1"}, "first"),
    ({**TWO, "raised": "650"}, "angle"),
])
def test_what_two_scales_cannot_say_stands_at_its_field(typed: dict[str, str], field: str) -> None:
    with pytest.raises(Faults) as found:
        by_two_scales(typed)
    assert field in found.value.by_field


@pytest.mark.parametrize(("typed", "field"), [
    ({**PARTS, "z1": ""}, "z1"), ({**PARTS, "of2": ""}, "of2"), ({**PARTS, "kg2": "5"}, "l2"),
    ({**PARTS, "kg1": "0"}, "kg1"), ({**PARTS, "mass_off": "0"}, "mass_off"),
    ({"by": "parts", "mass_off": "5", "place_off": "20"}, "kg1"),
    ({**PARTS, "kg1": "-300"}, "kg1"), ({**PARTS, "kg1": "nan"}, "kg1"),
])
def test_a_part_that_says_too_little_or_too_much_stands_at_its_field(typed: dict[str, str], field: str) -> None:
    with pytest.raises(Faults) as found:
        by_parts(typed, 3)
    assert field in found.value.by_field


def test_a_missing_third_scale_is_asked_for() -> None:
    with pytest.raises(Faults, match="needed"):
        by_scales({name: text for name, text in MORE.items() if not name.endswith("3")})


@pytest.mark.parametrize("typed", [{}, {"by": "parts"}, {"by": "two"}, {"by": "more"}, TWO, MORE, PARTS,
                                   {**PARTS, "rows": "12"}, {"by": "else"}, {**TWO, "first": "x"}])
def test_looking_keeps_nothing(shop: Shop, address: str, typed: dict[str, str]) -> None:
    given = shop.get(f"{address}?{urlencode(typed).replace('+', ' ').replace('%2C', ',')}")
    assert given.status == 200 and not given.keep and faults(given.html) == []


def test_it_is_found_from_the_numbers_and_taken_over_with_its_readings(shop: Shop, address: str) -> None:
    task = address.split("/")[2]
    assert f'href="{address}"' in shop.get(f"/tasks/{task}/numbers?step=mass").html
    assert "Mass 1000 kg, at most 1030 kg." in shop.get(f"{address}?{urlencode({**TWO, **RAISED})}").html
    given = shop.post(address, {**TWO, **RAISED})
    assert given.location == f"/tasks/{task}/numbers?step=mass"
    assert [entry.path for entry in given.keep] == [("mass_kg",), ("cg_x_m",), ("cg_z_m",), (EVIDENCE,)]
    now = running(shop.world, task)
    assert now.task.answers[Key("mass_kg")] == Measured(1000.0, "weighed", 30.0) and not now.faults
    x = now.task.answers[Key("cg_x_m")]
    assert isinstance(x, Measured) and (x.value, x.how) == (0.3, "scales") and x.plus_minus is not None
    page = shop.get(f"/tasks/{task}/numbers?step=mass").html
    assert "Two scales: 600 and 400 kg" in page and "by weighing on scales" in page and faults(page) == []


def test_a_form_that_cannot_be_read_takes_nothing_over(shop: Shop, address: str) -> None:
    given = shop.post(address, {**TWO, "first": "1,250"})
    assert given.status == 422 and not given.keep and 'value="1,250"' in given.html and "two ways" in given.html
