"""The one text of a value, and everything that has none."""

import json
from functools import reduce

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checklist_app.checklists.canonical import NotCanonical, as_typed, canonical, digest, parse

PLAIN = st.recursive(
    st.none() | st.booleans() | st.integers(-(2**53) + 1, 2**53 - 1)
    | st.text(st.characters(exclude_categories=["Cs"])),
    lambda inner: st.lists(inner, max_size=3)
    | st.dictionaries(st.from_regex(r"[a-z][a-z0-9_]{0,5}", fullmatch=True), inner, max_size=3),
    max_leaves=6,
)


def nested(depth: int) -> object:
    value: object = "core"
    for _ in range(depth):
        value = [value]
    return value


@given(PLAIN)
def test_what_is_written_is_read_back_and_written_the_same(value):
    try:
        data = canonical(value)
    except NotCanonical:
        return
    assert parse(data) == value
    assert canonical(parse(data)) == data


@pytest.mark.parametrize(("value", "data"), [
    ({"b": 1, "a": [True, None, "é"]}, '{"a":[true,null,"é"],"b":1}'),
    ({"text": 'say "no"\n\u2028'}, '{"text":"say \\"no\\"\\n\u2028"}'),
    (0, "0"),
    (2**53 - 1, "9007199254740991"),
])
def test_the_text_is_exactly_this(value, data):
    assert canonical(value) == data.encode()


@pytest.mark.parametrize(("value", "says"), [
    (1.0, "float"), (float("nan"), "float"), (2**53, "larger than"), (-(2**53), "larger than"),
    ({"Key": 1}, "plain name"), ({"10": 1}, "plain name"), ({"__proto__": 1}, "plain name"), ({1: 1}, "plain name"),
    ("\ud800", "half a character"), (b"x", "bytes"), ({"a\n": 1}, "plain name"), (nested(9), "deep"),
])
def test_what_no_two_languages_agree_on_is_refused_in_words(value, says):
    with pytest.raises(NotCanonical, match=says):
        canonical(value)


def test_eight_deep_is_still_allowed():
    assert parse(canonical(nested(8))) == nested(8)


def test_a_text_under_names_counts_as_a_level_like_anything_else():
    eight = reduce(lambda inner, _: {"a": inner}, range(8), "text")
    assert parse(canonical(eight)) == eight
    with pytest.raises(NotCanonical, match="deep"):
        canonical({"a": eight})


@pytest.mark.parametrize("data", [
    b'{"a":1.0}', b'{"a":-0}', b'{"a":1e3}', b'{"b":1,"a":2}', b'{"a":1,"a":1}', b'{"a": 1}', b"\xef\xbb\xbf{}",
    b'"\\u0041"', b'"\\ud800"', b"NaN", b"Infinity", b"\xff", b"", b"[" * 8000, b"[" * 8000 + b"]" * 8000,
    b"9" * 5000, b"1e999", b'{"a":1}\n',
])
def test_bytes_written_in_any_other_way_are_refused_and_never_crash(data):
    with pytest.raises(NotCanonical):
        parse(data)


def test_a_letter_typed_in_two_ways_becomes_one_text_where_it_is_made():
    assert as_typed("e\u0301") == as_typed("é") == "é"
    assert parse(canonical("e\u0301")) == "e\u0301", "bytes that were made once are never composed again"


def test_the_digest_is_the_published_one():
    """FIPS 180-4, example for the message "abc" (NIST, SHA-256 examples)."""
    assert digest(b"abc") == "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"


def test_canonical_text_is_json_that_anybody_reads():
    value = {"text": "2,400", "unit": "kg", "more": [1, False, None]}
    assert json.loads(canonical(value)) == value
