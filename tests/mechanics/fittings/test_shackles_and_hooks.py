"""Shackles, hooks and links against printed tables and charts."""

import pytest

from checklist_app.mechanics.fittings import hooks, shackle_sizes, shackles
from checklist_app.mechanics.fittings.hooks import HookLoading
from checklist_app.mechanics.fittings.shackles import Form, Pin, PinUse

SIZES = "published, shackle catalogue to EN 13889 and RR-C-271"
SIDE = "published, shackle makers' charts"


@pytest.mark.parametrize("body_mm, printed_t", [
    pytest.param(6, 0.5, id=f"{SIZES}: 6 mm, 0.5 t"), pytest.param(13, 2.0, id=f"{SIZES}: 13 mm, 2 t"),
    pytest.param(16, 3.25, id=f"{SIZES}: 16 mm, 3.25 t"), pytest.param(19, 4.75, id=f"{SIZES}: 19 mm, 4.75 t"),
    pytest.param(28, 9.5, id=f"{SIZES}: 28 mm, 9.5 t"), pytest.param(45, 25.0, id=f"{SIZES}: 45 mm, 25 t"),
])
def test_size_of_a_shackle(body_mm: int, printed_t: float) -> None:
    assert shackle_sizes.en_13889_wll_t(body_mm) == printed_t
    assert shackle_sizes.marking_fits_size(printed_t, body_mm)
    assert not shackle_sizes.marking_fits_size(printed_t + 0.01, body_mm)


def test_a_thicker_shackle_carries_more_on_a_thicker_pin() -> None:
    """By_hand: the printed columns rise together, and every pin is thicker than its body."""
    rows = list(shackle_sizes.EN_13889_SIZES.items())
    assert rows == sorted(rows)
    assert all(pin > body for body, (_, pin, _) in rows)
    for column in range(3):
        assert [row[column] for _, row in rows] == sorted(row[column] for _, row in rows)


@pytest.mark.parametrize("body_mm, pin_mm, higher_tensile, printed_t", [
    pytest.param(13, 15, False, 1.0, id="published, Lloyd's Register CLAME Table 8.5.1: mild 13/15, 1.0 t"),
    pytest.param(26, 30, False, 4.0, id="published, same table: mild 26/30, 4.0 t"),
    pytest.param(26, 29, False, 3.2, id="by_hand, a pin too thin for the row takes the row below"),
    pytest.param(26, 29, True, 6.3, id="published, same table: higher tensile 26/29, 6.3 t"),
    pytest.param(15, 17, True, 2.0, id="published, same table: higher tensile 15/17, 2.0 t"),
])
def test_dee_of_a_ship(body_mm: int, pin_mm: int, higher_tensile: bool, printed_t: float) -> None:
    assert shackle_sizes.lloyds_dee_swl_t(body_mm, pin_mm, higher_tensile) == printed_t


@pytest.mark.parametrize("aside_deg, printed_t", [
    pytest.param(0.0, 4.75, id=f"{SIDE}: 4.75 t in line"),
    pytest.param(5.0, 4.75, id="published, WAC 296-155-33905: in line to 5°"),
    pytest.param(5.1, 3.325, id="published, WAC 296-155-33905: the next step begins"),
    pytest.param(30.0, 3.325, id="derived, steps: 30° is 70 %, no line between"),
    pytest.param(45.0, 3.325, id=f"{SIDE}: 4.75 t at 45°, 3.325 t"),
    pytest.param(60.0, 2.375, id="derived, steps: 60° is 50 %"),
    pytest.param(90.0, 2.375, id=f"{SIDE}: 4.75 t at 90°, 2.375 t"),
])
def test_shackle_pulled_aside(aside_deg: float, printed_t: float) -> None:
    assert 4.75 * shackles.side_load_factor(aside_deg, Form.BOW, Pin.SCREW) == pytest.approx(printed_t)


def test_published_a_dee_or_a_round_pin_stays_in_line() -> None:
    """Shackle makers' charts: the shares are for screw and bolt pins; a dee is for one leg in line."""
    assert shackles.side_load_factor(4.0, Form.DEE, Pin.BOLT) == 1.0
    assert shackles.side_load_factor(4.0, Form.BOW, Pin.ROUND) == 1.0


@pytest.mark.parametrize("use", [
    pytest.param(PinUse.HOME, id="published, WAC 296-155-33905: fully engaged, shoulder in contact"),
    pytest.param(PinUse.CHOKING_EYE, id="published, WAC 296-155-33905: pin in the choking eye"),
])
def test_pin_that_is_used_as_it_should(use: PinUse) -> None:
    assert shackles.pin_use_factor(use) == 1.0


@pytest.mark.parametrize("degrees_c, printed", [
    pytest.param(200.0, 1.0, id=f"{SIZES}: to 200 °C, 100 %"), pytest.param(300.0, 0.9, id=f"{SIZES}: to 300 °C, 90 %"),
    pytest.param(400.0, 0.75, id=f"{SIZES}: to 400 °C, 75 %"),
    pytest.param(-20.0, 1.0, id="published, instructions to EN 13889: from −20 °C"),
])
def test_shackle_in_heat(degrees_c: float, printed: float) -> None:
    assert shackles.shackle_temperature_factor(degrees_c, -20.0) == printed


def test_published_hook_in_its_bowl_with_two_legs_within_45_degrees() -> None:
    """ASME B30.10 as an inspector restates it: 45° from the hook's axis, 90° between two legs."""
    assert hooks.legs_in_hook_factor(2, 45.0) == 1.0
    assert hooks.hook_loading_factor(HookLoading.BOWL) == 1.0


def test_published_link_gathers_legs_up_to_120_degrees() -> None:
    """An inspector's note: links, rings and bow shackles to 120°, 60° on either side."""
    assert hooks.master_link_factor(120.0) == 1.0


def test_a_link_hangs_free_only_if_wider_than_the_hook() -> None:
    """EN 818-6 as makers restate it (by_hand)."""
    assert hooks.link_hangs_free(60.1, 60.0)
    assert not hooks.link_hangs_free(60.0, 60.0)


def test_published_two_slings_gather_in_a_bow_up_to_120_degrees() -> None:
    """Shackle makers' charts to EN 13889; a dee takes one leg in line."""
    assert shackles.gathered_legs_factor(Form.BOW, 2, 120.0) == 1.0
    assert shackles.gathered_legs_factor(Form.DEE, 1, 0.0) == 1.0
