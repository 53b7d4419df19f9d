"""The table that the app shows is what the tests compare, and it holds enough of what others published."""

from collections import Counter
from collections.abc import Iterator

import pytest

from tests.mechanics.compared import Compared, values
from tests.mechanics.proofs import kept
from tests.mechanics.recorded import HOW, LIBRARY, Recorder, Row, whose

WRITE = "write it anew: python -m tests.mechanics.proofs"


def partly(config: pytest.Config) -> bool:
    """Whether only some tests of a file were asked for: then "the same card" may be one that nobody named."""
    named = any("::" in each for each in config.args)
    return bool(config.option.keyword) or named or config.option.markexpr != "not long"


def of_topics(rows: list[Row], topics: set[str]) -> Iterator[Row]:
    return (row for row in rows if row.topic in topics)


def test_the_table_is_what_the_tests_compare(recorder: Recorder, pytestconfig: pytest.Config) -> None:
    if partly(pytestconfig):
        return
    now = recorder.rows()
    there = list(of_topics(kept(), {row.topic for row in now}))
    for new, old in ((now, there), (there, now)):
        differ = [f"{row.source}: {row.case}" for row in new if row not in set(old)]
        assert not differ, f"{WRITE}; {differ[:3]}"


def test_at_least_a_hundred_cases_were_published_or_come_from_a_reference_library() -> None:
    count = Counter(row.how for row in kept())
    assert count["published"] + count[LIBRARY] >= 100
    assert set(count) <= {*HOW.values(), LIBRARY}


def test_every_line_says_whose_figure_it_is_and_what_was_compared() -> None:
    for row in kept():
        assert row.topic and row.source and row.ours, row


@pytest.mark.parametrize("compared, told", [
    ([Compared("8.3997", "==", "8.4 ± 5.0e-03")], ("8.3997", "8.4", "0.0003")),
    ([Compared("8.4", "==", "8.4 ± 5.0e-03")], ("8.4", "8.4", "none")),
    ([Compared("(1.0, 2.5)", "==", "approx((1.0 ± 1.0e-06, 2.4 ± 1.0e-06))")], ("1, 2.5", "1, 2.4", "0.1")),
    ([Compared("<LegRule.TWO: 'two'>", "is", "<LegRule.TWO: 'two'>")], ("two", "two", "none")),
    ([Compared("((3.0 / 2.0) - 1.0)", "<=", "0.5")], ("0.5", "at most 0.5", "")),
    ([Compared("(1.0, 2....0)", "==", "(1.0 ± 1.0....0e-06)")], ("1 comparison", "", "all hold")),
    ([Compared("1.0", "==", "1.0 ± 1.0e-09")] * 4, ("4 comparisons", "", "each within 1e-09")),
])
def test_a_comparison_is_told_in_few_words(compared: list[Compared], told: tuple[str, str, str]) -> None:
    assert values(compared) == told


def test_the_same_card_is_the_one_that_was_named_before() -> None:
    last: dict[str, str] = {}
    assert whose("EN 1492 table: green 2 t", last) == ("EN 1492 table", "green 2 t")
    assert whose("sling card of a rope maker, 60°: 1.155", last) == ("sling card of a rope maker", "60°: 1.155")
    assert whose("same card, 45°: 1.414", last) == ("sling card of a rope maker", "45°: 1.414")
    assert whose("same table, 45°: 1.4", last) == ("EN 1492 table", "45°: 1.4")
    assert whose("2000 kg, 45°: 1414 kg", last) == ("worked out from statics", "2000 kg, 45°: 1414 kg")
    assert whose("49 CFR 393.110: 5 ft", last) == ("49 CFR 393.110", "5 ft")
    assert whose("no source: choked, 89 %", last) == ("common practice", "choked, 89 %")
