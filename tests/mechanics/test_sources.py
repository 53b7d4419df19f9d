"""Sources say what they are and how far they were seen; what is from memory only ever refuses."""

import pytest

from checklist_app.mechanics import shackles
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.exact import cos
from checklist_app.mechanics.fittings import bs_eyes, us_eyes
from checklist_app.mechanics.hanging import running_turn
from checklist_app.mechanics.slings import en_modes, slip, temperature
from checklist_app.mechanics.slings.kinds import RuleSet
from checklist_app.mechanics.slings.slip import Contact, Face
from checklist_app.mechanics.slings.temperature import Fibre
from checklist_app.mechanics.sources import SOURCES, Source, Status
from checklist_app.mechanics.sway import two_machines


@pytest.mark.parametrize("key", SOURCES)
def test_a_source_says_what_it_is_and_how_it_was_seen(key: str) -> None:
    source = SOURCES[key]
    assert source.title and source.publisher and source.status.value in source.words()
    assert key == key.upper()


def test_a_restated_standard_says_whose_words_were_read() -> None:
    assert "read, as restated by a sling maker's instruction for use" in SOURCES["EN_1492_1"].words()


def test_a_source_without_a_year_or_an_edition_has_no_empty_places() -> None:
    assert Source("Title", "", "Publisher", "", Status.DERIVED).words() == "Title, Publisher (derived)"


def test_each_source_from_memory_has_its_proof_below_that_it_takes_away_and_never_gives() -> None:
    from_memory = {key for key, source in SOURCES.items() if source.status is Status.FROM_MEMORY}
    assert from_memory == {
        "HOOK_TWO_LEGS", "PARALLEL_6_DEG", "HMPE_60_C", "CSS_ANNEX_13", "ASME_B30_26_STEPS", "BS_4278_45_DEG",
        "BS_7121_TANDEM",
        # lashing: their proofs stand in tests/mechanics/lashing
        "EN_12195_1_FS_OTHER", "CTU_STATES", "CTU_CHAPTER_5", "CSS_ANNEX_13_MORE", "UK_1_G", "CFR_393_TEN_FEET",
    }


def test_two_legs_in_a_hook_from_memory_only_ever_refuse() -> None:
    assert all(shackles.hook_wll_t(2.0, angle) <= 2.0 for angle in (0.0, 45.0, 90.0))
    with pytest.raises(OutOfRangeError, match="more in a bow shackle") as refused:
        shackles.hook_wll_t(2.0, 90.1)
    assert refused.value.source == "HOOK_TWO_LEGS"


def test_the_quarter_that_two_machines_keep_from_memory_is_more_than_was_read() -> None:
    """Read, Queensland code: rated for a fifth more than its share."""
    assert two_machines.share_of_rating() < 1.0 / 1.2


def test_the_friction_on_a_hook_from_memory_only_ever_adds_to_a_pull() -> None:
    for angle_deg in (0.0, 40.0, 90.0, 119.0):
        assert running_turn.share_where_it_sticks(angle_deg) >= 0.5 / cos(angle_deg / 2.0 / 57.29577951308232)


def test_what_counts_as_parallel_from_memory_allows_no_more_than_statics() -> None:
    for angle_deg in (0.0, 3.0, 6.0, 6.1, 44.0):
        assert en_modes.basket_factor(angle_deg) <= 2.0 * cos(angle_deg / 57.29577951308232)


def test_the_heat_of_hmpe_from_memory_stays_under_what_was_read() -> None:
    """Read: −50 to 70 °C."""
    with pytest.raises(OutOfRangeError, match="-40 to 60 °C"):
        temperature.fibre_temperature_factor(Fibre.HMPE, 61.0, RuleSet.EN)


def test_the_friction_of_steel_from_memory_stays_under_what_was_read() -> None:
    """Read, CTU Code: smooth metal on smooth metal 0.2."""
    assert slip.friction_coefficient(Contact.STEEL_ON_STEEL, Face.DRY_AND_CLEAN) < 0.2


def test_the_steps_of_shoulder_eyebolts_from_memory_stay_under_the_charts_that_were_read() -> None:
    chart = ((5.0, 1.0), (15.0, 0.80), (30.0, 0.65), (45.0, 0.30), (90.0, 0.25))
    assert all(us_eyes.shoulder_factor(angle_deg) <= share for angle_deg, share in chart)


def test_the_end_of_the_pair_table_from_memory_only_refuses() -> None:
    with pytest.raises(OutOfRangeError, match="0 to 90°") as refused:
        bs_eyes.collar_pair_wll_t(20, 90.1)
    assert refused.value.source == "BS_4278_45_DEG"
