"""What is an entry, what is none, and what must come again after an update."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checklist_app.checklists import values
from checklist_app.checklists.canonical import canonical, digest
from checklist_app.checklists.entry import LARGEST_ENTRY_BYTES, Entry, TooNew, Unusable, make, read, trusted

TASK = ("task", "t-1")
AT = "2026-11-25T08:00:00Z"


def an_entry(value=None, **other) -> Entry:
    given = {"about": TASK, "path": ("mass_kg",), "value": value or values.number("2,400", "kg", "plate"),
             "replaces": (), "author": "p-1", "device": "d-1", "counter": 1, "at": AT}
    return make(**(given | other))


BODY = json.loads(an_entry().data)


def test_an_entry_is_its_bytes_and_known_by_their_digest():
    entry = an_entry()
    assert entry.digest == digest(entry.data)
    assert read(entry.data) == trusted(entry.data) == entry
    assert (entry.about, entry.path, entry.value["text"], entry.author) == (TASK, ("mass_kg",), "2,400", "p-1")
    assert entry.subject == "task/t-1" and entry.type == "number"


def test_another_device_time_or_counter_is_another_entry():
    assert len({an_entry().digest, an_entry(counter=2).digest, an_entry(device="d-2").digest}) == 3


def test_what_it_replaces_is_named_once_and_in_order():
    names = [digest(b"2"), digest(b"1"), digest(b"2")]
    assert an_entry(replaces=names).replaces == tuple(sorted(set(names)))


@pytest.mark.parametrize("change", [
    {"about": ["task"]}, {"about": ["task", "t 1"]}, {"about": "task"}, {"about": ["task", "t-1", "x"]},
    {"path": []}, {"path": ["a", "b", "c", "d"]}, {"path": ["a/b"]}, {"path": ["x" * 65]}, {"path": [1]},
    {"replaces": ["abc"]}, {"replaces": [digest(b"2"), digest(b"1")] if digest(b"2") > digest(b"1") else [3]},
    {"replaces": [digest(b"1")] * 2}, {"replaces": "0" * 64}, {"replaces": [f"{n:064d}" for n in range(101)]},
    {"author": ""}, {"author": None}, {"device": "a\n"}, {"counter": 0}, {"counter": True}, {"counter": "1"},
    {"at": "2026-11-25 08:00:00Z"}, {"at": "2026-11-25T08:00:00+01:00"}, {"at": "٢٠٢٦-11-25T08:00:00Z"},
    {"form": 0}, {"form": True}, {"form": "1"}, {"extra": 1},
    {"value": []}, {"value": {}}, {"value": {"type": 3}}, {"value": {"type": "number", "text": "2"}},
    {"value": {"type": "number", "text": 2, "unit": "kg"}}, {"value": {"type": "number", "text": "2", "unit": None}},
    {"value": {"type": "tick", "text": "perhaps"}}, {"value": {"type": "text", "part": "abc"}},
    {"value": {"type": "pick", "subject": "L-07", "version": digest(b"1")}},
    {"value": {"type": "pick", "subject": "gear/L-07", "version": "1"}},
    {"value": {"type": "dont_know", "part": 7}}, {"value": {"type": "row", "text": "maybe"}},
])
def test_what_is_no_entry_is_refused_in_words(change):
    with pytest.raises(Unusable) as caught:
        read(canonical(BODY | change))
    assert not isinstance(caught.value, TooNew)
    assert len(str(caught.value)) > 10


@pytest.mark.parametrize("name", sorted(BODY))
def test_an_entry_lacks_none_of_its_names(name):
    with pytest.raises(Unusable):
        read(canonical({key: value for key, value in BODY.items() if key != name}))


@pytest.mark.parametrize("change", [{"form": 2}, {"value": {"type": "hologram", "part": digest(b"1")}}])
def test_what_a_later_version_made_is_asked_to_come_again(change):
    with pytest.raises(TooNew):
        read(canonical(BODY | change))


def test_a_name_in_a_value_that_nobody_knows_yet_is_kept():
    value = values.number("2655", "kg", "weighed") | {"of": [digest(b"trial")]}
    assert read(an_entry(value).data).value["of"] == [digest(b"trial")]


@pytest.mark.parametrize("data", [b"[" * 8000, b"{" * 8000, b"", b"null", b"[]", b'"x"', b"\x00", b"7"])
def test_nonsense_is_refused_and_never_crashes(data):
    with pytest.raises(Unusable):
        read(data)


def test_an_entry_has_a_size_that_a_phone_sends_in_one_go():
    fits = LARGEST_ENTRY_BYTES - len(an_entry(values.choice("")).data)
    assert len(an_entry(values.choice("x" * fits)).data) == LARGEST_ENTRY_BYTES
    with pytest.raises(Unusable, match="8192 bytes"):
        an_entry(values.choice("x" * (fits + 1)))


def test_a_figure_with_a_fraction_has_no_place_in_an_entry():
    with pytest.raises(Unusable, match="as text"):
        an_entry({"type": "number", "text": 2.4, "unit": "t"})


ANYTHING = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(),
    lambda inner: st.lists(inner, max_size=3) | st.dictionaries(st.text(max_size=3), inner, max_size=3), max_leaves=8)


@given(st.sampled_from(sorted(BODY)), ANYTHING)
def test_whatever_stands_in_a_field_is_an_entry_or_refused_in_words(name, value):
    data = json.dumps(BODY | {name: value}, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    try:
        entry = read(data.encode("utf-8", "surrogatepass"))
    except Unusable as error:
        assert str(error)
    else:
        assert entry.data.decode() == data


def test_free_text_is_a_part_whose_salt_keeps_it_from_being_guessed():
    name, data = values.words_part("the paint is off", "0" * 32)
    other, _ = values.words_part("the paint is off", "1" * 32)
    assert name == digest(data) and name != other
    assert values.words(data) == "the paint is off"
    assert values.words(None) == values.words(b"\xff") == values.words(b"[]") == ""


@pytest.mark.parametrize("value", [
    values.number("2,400", "kg", "plate", "10"), values.choice("straight"), values.tick("cannot_see"),
    values.date("2026-11-25"), values.text(digest(b"1")), values.photo(digest(b"1")),
    values.pick("gear/L-07", digest(b"1"), "east"), values.dont_know(), values.not_used(digest(b"1")),
    values.row("present"), values.withdrawn(), values.version("flat_sling/1", digest(b"1")),
    values.custody("in service", "2026-01-01"), values.quarantine("2026-01-01"), values.release(),
    values.examination("passed", "2026-01-01", "2027-01-01"),
], ids=lambda value: value["type"])
def test_every_constructor_makes_a_value_that_is_taken(value):
    assert an_entry(value).value == value


def test_an_answer_typed_with_a_mark_apart_has_the_same_bytes_as_with_the_letter():
    assert an_entry(values.choice("e\u0301")).digest == an_entry(values.choice("é")).digest
