"""How cold fittings may get: what makers agree on, and what one of them states for his own."""

import pytest

from checklist_app.mechanics.fittings import cold, din_eyes, shackles


@pytest.mark.parametrize("stated_c, coldest_c", [
    pytest.param(None, -20.0, id="published, instructions to EN 13889: not outside −20 to 200 °C without the maker"),
    pytest.param(-40.0, -40.0, id="published, ASME B30.26-1.6.1: below −40 °C the maker is asked"),
    pytest.param(-60.0, -60.0, id="published, a maker's shackles for frost: till −60 °C"),
    pytest.param(0.0, 0.0, id="by_hand: a maker who states less than the standard binds too"),
])
def test_lowest_temperature_of_a_fitting(stated_c: float | None, coldest_c: float) -> None:
    assert cold.coldest_c(stated_c) == coldest_c


def test_down_to_it_a_fitting_keeps_its_wll() -> None:
    """By hand: the range of the table, begun lower."""
    assert shackles.shackle_temperature_factor(-40.0, cold.coldest_c(-40.0)) == 1.0
    assert din_eyes.eye_temperature_factor(-40.0, cold.coldest_c(-40.0)) == 1.0
