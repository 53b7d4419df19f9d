"""A signature by hand is a short list of whole numbers, and nothing else gets in."""
import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checklist_app.checklists import ink
from checklist_app.checklists.canonical import canonical

strokes = st.lists(
    st.lists(st.tuples(st.integers(0, ink.WIDE), st.integers(0, ink.HIGH)), min_size=1, max_size=8)
    .map(lambda points: [number for point in points for number in point]),
    min_size=1, max_size=8)


@given(strokes)
def test_what_was_drawn_comes_back_and_becomes_a_path(drawn: list[list[int]]) -> None:
    made = ink.made(json.dumps(drawn), "", "salt")
    assert made is not None
    read = ink.read(made[1])
    assert read is not None and [list(stroke) for stroke in read.strokes] == drawn
    assert read.path.count("M") == len(drawn)


def test_a_typed_name_does_the_same_without_a_drag() -> None:
    made = ink.made("", "  Agata Rusk ", "salt")
    assert made is not None and ink.shown(made[1]) == {"path": "", "typed": "Agata Rusk"}


@pytest.mark.parametrize("drawn", [
    "", "not json", "[[1]]", "[[1,2,3]]", "[[331,0]]", "[[0,131]]", "[[-1,0]]", "[[1.5,2]]", "[[true,2]]", '[["a",1]]',
    "{}", "[]", "[" * 8000, json.dumps([[0, 0]] * 201), json.dumps([[0, 0] * 3001]),
])
def test_what_is_no_signature_is_none(drawn: str) -> None:
    assert ink.made(drawn, "", "salt") is None


@pytest.mark.parametrize("part", [
    None, b"", b"\xff", b"[]", canonical({"form": "ink/2", "typed": "x"}), canonical({"form": "ink/1"}),
    canonical({"form": "ink/1", "strokes": [["<script>", 1]]}), canonical({"form": "ink/1", "typed": 5}),
])
def test_a_part_that_is_no_signature_shows_none(part: bytes | None) -> None:
    assert ink.shown(part) is None
