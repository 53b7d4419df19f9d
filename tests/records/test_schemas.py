"""The schemas at the door say the same as the pure floors: of an entry, and of every kind's fields."""

import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checklist_app.checklists import values
from checklist_app.checklists.canonical import NotCanonical, canonical
from checklist_app.checklists.entry import Unusable, make, read
from checklist_app.operations.fields import FieldType, read_all
from checklist_app.operations.kinds import KINDS
from checklist_app.records.schemas import EntrySchema, document_faults
from checklist_app.records.store import Store
from tests.records.brought import AT, batch, some

BODY = json.loads(some(1)[0].data)
KIND_NAMES = sorted(KINDS)
ANSWERS = st.sampled_from([
    "", "2", "2,5", "1,250", "NaN", "1e99", "-3", "yes", "no", "bought", "2026-11-25", "2026-02-30", "plate", "bow",
    "x" * 400, 7, 2.5, True, None, [], {}, ["x"], [{}], [{"up_to_deg": "45", "wll_t": "2"}],
    [{"capacity": "rigger", "until": "2027-01-01"}], [{"capacity": "king", "until": "soon"}]])
SOUND = {"wll_t": "2", "length_m": "2", "marked": "yes", "origin": "bought"}


@given(st.sampled_from(sorted(BODY)), ANSWERS | st.text(max_size=5) | st.integers(-2, 2))
def test_whatever_the_pure_floor_takes_for_an_entry_the_schema_takes_too(name, value):
    body = BODY | {name: value}
    try:
        read(canonical(body))
    except (Unusable, NotCanonical):
        return
    assert EntrySchema().validate(body) == {}


@pytest.mark.parametrize("change", [{"extra": 1}, {"form": 2}, {"about": ["task"]}, {"replaces": ["x"]}, {"counter": 0},
                                    {"author": "a b"}, {"path": []}, {"at": "today"}, {"value": "2"}])
def test_the_schema_refuses_what_is_no_entry(change):
    assert set(EntrySchema().validate(BODY | change)) == set(change)


def asked_facts(kind):
    """Facts with one answer, good or not, for each field of a kind, and perhaps one that it does not have."""
    return st.fixed_dictionaries({}, optional={field.name: ANSWERS for field in kind.fields} | {"colour": ANSWERS})


@given(st.sampled_from(KIND_NAMES).flatmap(lambda name: st.tuples(st.just(name), asked_facts(KINDS[name]))))
def test_for_every_kind_the_schema_and_the_fields_find_the_same_faults(asked):
    name, facts = asked
    _, faults = read_all(KINDS[name].fields, facts)
    assert set(document_faults(KINDS[name], facts)) == {fault.partition("/")[0] for fault in faults}, facts


@pytest.mark.parametrize("name", KIND_NAMES)
def test_every_field_that_must_be_answered_is_missed_by_the_schema(name):
    required = {field.name for field in KINDS[name].fields if field.required}
    assert required and set(document_faults(KINDS[name], {})) == required


@pytest.mark.parametrize("name", KIND_NAMES)
def test_every_field_refuses_what_it_cannot_mean(name):
    for field in KINDS[name].fields:
        wrong = {"x": 1} if field.type in (FieldType.TEXT, FieldType.ROWS) else "nothing of the kind"
        assert field.name in document_faults(KINDS[name], {field.name: wrong}), field.name


def test_a_version_whose_document_is_not_complete_is_kept_and_counts_for_nothing(store: Store):
    for number, facts in enumerate(({"wll_t": "2"}, SOUND), 1):
        part, data = values.document_part("flat_sling/1", facts, "1")
        about, value = ("gear", f"L-{number}"), values.version("flat_sling/1", part)
        entry = make(about, ("version",), value, (), "p-1", "d-1", number, AT)
        store.put("d-1", batch(entry, parts={part: data.decode()}), AT)
    (incomplete,), (complete,) = store.arrivals(("gear", "L-1")), store.arrivals(("gear", "L-2"))
    assert not incomplete.counts and "length_m, marked, origin" in incomplete.doubt
    assert complete.counts and complete.doubt == ""
