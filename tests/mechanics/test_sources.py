"""Sources say what they are and how far they were seen; what is from memory only ever refuses."""

import pytest

from checklist_app.mechanics import shackles
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.exact import cos
from checklist_app.mechanics.slings import en_modes, us_modes
from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.sources import SOURCES, Source, Status


@pytest.mark.parametrize("key", SOURCES)
def test_a_source_says_what_it_is_and_how_it_was_seen(key: str) -> None:
    source = SOURCES[key]
    assert source.title and source.publisher and source.status.value in source.words()
    assert key == key.upper()


def test_a_restated_standard_says_whose_words_were_read() -> None:
    assert "read, as restated by a sling maker's instruction for use" in SOURCES["EN_1492_1"].words()


def test_a_source_without_a_year_or_an_edition_has_no_empty_places() -> None:
    assert Source("Title", "", "Publisher", "", Status.DERIVED).words() == "Title, Publisher (derived)"


def test_what_is_from_memory_takes_away_and_never_gives() -> None:
    from_memory = {key for key, source in SOURCES.items() if source.status is Status.FROM_MEMORY}
    assert from_memory == {"HOOK_TWO_LEGS", "PARALLEL_6_DEG", "DOUBLE_WRAP"}
    assert all(shackles.hook_wll_t(2.0, angle) <= 2.0 for angle in (0.0, 45.0, 90.0))
    with pytest.raises(OutOfRangeError, match="more in a bow shackle") as refused:
        shackles.hook_wll_t(2.0, 90.1)
    assert refused.value.source == "HOOK_TWO_LEGS"


def test_what_counts_as_parallel_from_memory_allows_no_more_than_statics() -> None:
    for angle_deg in (0.0, 3.0, 6.0, 6.1, 44.0):
        assert en_modes.basket_factor(angle_deg) <= 2.0 * cos(angle_deg / 57.29577951308232)


def test_a_second_wrap_from_memory_adds_nothing() -> None:
    for modes in (en_modes, us_modes):
        assert modes.single_leg_factor(Hitch.DOUBLE_WRAPPED_CHOKED) == modes.single_leg_factor(Hitch.CHOKED)
        assert modes.single_leg_factor(Hitch.DOUBLE_WRAPPED_BASKET) == modes.single_leg_factor(Hitch.BASKET)
