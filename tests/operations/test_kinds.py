"""Kinds are plain data with sensible ranges; facts are read as typed; gear waits for what nobody entered."""

import re
from typing import Any

import pytest

from checklist_app.operations import fields
from checklist_app.operations.colours import sling_colour
from checklist_app.operations.fields import Fault, Field, FieldType, read
from checklist_app.operations.gear import CLASSES, GearState, Rating, Shackle, Sling, kinds_of, make
from checklist_app.operations.graph import Waits
from checklist_app.operations.kind import Kind, lacks
from checklist_app.operations.kinds import KINDS, REGISTERS

SLING = {"wll_t": "2", "length_m": "1,50", "marked": "yes", "origin": "bought", "mass_kg": "1.4"}
STEPS = [{"up_to_deg": "30", "wll_t": "2.5"}, {"up_to_deg": "45", "wll_t": "2"}]
EYE = {"ratings": STEPS, "reach_m": "0.052", "marked": "yes", "origin": "bought"}


def every_field(kind: Kind) -> list[Field]:
    return [one for field in kind.fields for one in (field, *field.columns)]


@pytest.mark.parametrize("kind", KINDS.values(), ids=KINDS.keys())
def test_every_field_has_words_and_every_number_a_unit_and_a_range(kind: Kind) -> None:
    assert kind.register in REGISTERS and re.fullmatch(r"[a-z_]+/[0-9]+", kind.schema)
    assert set(kind.older) == set(range(1, kind.version)), "each older version needs its way up"
    for field in every_field(kind):
        assert field.words and field.name.isidentifier()
        if field.type is FieldType.NUMBER:
            assert field.unit and field.low is not None and field.high is not None and field.low < field.high
            assert field.usual is not None and field.low <= field.usual[0] < field.usual[1] <= field.high
        assert (field.type is FieldType.CHOICE) == bool(field.choices)
        assert (field.type is FieldType.ROWS) == bool(field.columns)
    names = [field.name for field in kind.fields]
    assert len(names) == len(set(names))


def test_every_kind_of_the_path_is_there() -> None:
    assert set(KINDS) == {
        "flat_sling", "round_sling", "chain_sling", "wire_rope_sling", "shackle", "hook", "master_link", "eye", "hoist",
        "load_cell", "own_beam", "gear_set", "load", "person", "place", "web_lashing", "chain_lashing", "rope_lashing",
        "mat", "pallet", "vehicle",
    }
    assert {"gear", "machine"} == {KINDS[name].register for name in CLASSES if name in KINDS}


def test_an_older_version_is_brought_up_step_by_step() -> None:
    kind = Kind("rope", "rope", "ropes", "gear", (Field("length_m", "length"),), version=3, older={
        1: lambda facts: {"length_mm": facts["laenge_mm"]},
        2: lambda facts: {"length_m": str(float(facts["length_mm"]) / 1000.0)},
    })
    facts: Any = {"laenge_mm": "1500"}
    for version in range(1, kind.version):
        facts = kind.older[version](facts)
    assert fields.check(kind, facts) == {} and facts == {"length_m": "1.5"}


@pytest.mark.parametrize("kind, facts, at", [
    ("flat_sling", SLING, []),
    ("flat_sling", {}, ["length_m", "marked", "origin", "wll_t"]),
    ("flat_sling", {**SLING, "wll_t": "200"}, ["wll_t"]),
    ("flat_sling", {**SLING, "length_m": "1,250"}, ["length_m"]),
    ("flat_sling", {**SLING, "fibre": "wool"}, ["fibre"]),
    ("flat_sling", {**SLING, "colour": "red"}, ["colour"]),
    ("flat_sling", {**SLING, "marked": "perhaps"}, ["marked"]),
    ("eye", EYE, []),
    ("eye", {**EYE, "ratings": []}, ["ratings"]),
    ("eye", {**EYE, "ratings": "2 t"}, ["ratings"]),
    ("eye", {**EYE, "ratings": [{"up_to_deg": "x", "wll_t": "1"}]}, ["ratings/0/up_to_deg"]),
    ("eye", {**EYE, "ratings": [{"wll_t": "1"}, 7]}, ["ratings/0/up_to_deg", "ratings/1"]),
    ("eye", {**EYE, "ratings": [*STEPS, {"up_to_deg": "60", "wll_t": "3"}]}, ["ratings"]),
    ("eye", {**EYE, "ratings": [*STEPS, {"up_to_deg": "45", "wll_t": "1"}]}, ["ratings"]),
    ("place", {"name": "shed", "room_height_m": "85"}, ["room_height_m"]),
    ("person", {"name": "A", "capacities": [{"capacity": "king", "until": "2027-01-01"}]}, ["capacities/0/capacity"]),
    ("person", {"name": "A", "capacities": [{"capacity": "rigger", "until": "soon"}]}, ["capacities/0/until"]),
])
def test_what_is_wrong_is_told_at_its_field(kind: str, facts: dict[str, Any], at: list[str]) -> None:
    assert sorted(fields.check(KINDS[kind], facts)) == at


def test_the_top_of_a_load_lies_over_its_underside() -> None:
    state = {"state": "whole", "mass_kg": "900", "mass_how": "weighed"}
    facts = {"name": "pump", "bottom_z_m": "0.5", "top_z_m": "0.2", "build_states": [state]}
    assert list(fields.check(KINDS["load"], facts)) == ["top_z_m"]


@pytest.mark.parametrize("type_, given, value", [
    (FieldType.TEXT, "  two   words ", "two words"), (FieldType.WHOLE, "7", 7), (FieldType.FLAG, "no", False),
    (FieldType.FLAG, True, True), (FieldType.DATE, "2027-01-31", "2027-01-31"), (FieldType.NUMBER, 2, 2.0),
    (FieldType.NUMBER, "", None), (FieldType.TEXT, None, None),
])
def test_each_type_is_read(type_: FieldType, given: Any, value: Any) -> None:
    assert read(Field("a", "a", type_), given) == value


@pytest.mark.parametrize("type_, given", [
    (FieldType.TEXT, 5), (FieldType.TEXT, "x" * 301), (FieldType.WHOLE, "7.5"), (FieldType.FLAG, "maybe"),
    (FieldType.DATE, "31.1.2027"), (FieldType.DATE, "2027-02-29"), (FieldType.DATE, 20270131),
    (FieldType.NUMBER, True), (FieldType.NUMBER, float("nan")), (FieldType.NUMBER, [1]), (FieldType.ROWS, {"a": 1}),
])
def test_what_does_not_fit_its_type_is_a_fault_in_words(type_: FieldType, given: Any) -> None:
    found = read(Field("a", "the question", type_), given)
    assert isinstance(found, Fault) and found.words.endswith(".")


def test_gear_reads_its_facts_and_waits_for_what_is_missing() -> None:
    sling = make("flat_sling", "F-11", {**SLING, "length_m": ""})
    assert isinstance(sling, Sling) and sling.wll_t == 2.0 and sling.mass_kg == 1.4
    with pytest.raises(Waits, match="length on the tag of F-11"):
        _ = sling.length_m
    with pytest.raises(AttributeError, match="no reach_m"):
        _ = sling.reach_m  # type: ignore[attr-defined]


def test_a_fact_that_cannot_be_read_never_counts() -> None:
    sling = make("flat_sling", "F-11", {**SLING, "wll_t": "1,250"})
    assert "two ways" in sling.faults["wll_t"]
    with pytest.raises(Waits, match="WLL on the tag or plate of F-11"):
        _ = sling.wll_t


def test_gear_is_frozen_and_equal_by_its_facts() -> None:
    one, other = make("shackle", "S-1", {"wll_t": 2.0}), make("shackle", "S-1", {"wll_t": "2"})
    assert one == other and one != make("shackle", "S-1", {"wll_t": "3"})
    with pytest.raises(AttributeError, match="S-1 is frozen"):
        one.wll_t = 9.0


def test_ratings_are_rows_of_angle_and_wll() -> None:
    assert make("eye", "E-1", EYE).ratings == (Rating(30.0, 2.5), Rating(45.0, 2.0))  # type: ignore[attr-defined]


def test_a_rated_pick_point_waits_for_its_evidence_and_an_unrated_one_has_no_steps() -> None:
    with pytest.raises(Waits, match="evidence for the rating of bracket"):
        _ = make("pick_point", "bracket", {"ratings": STEPS}).ratings  # type: ignore[attr-defined]
    assert make("pick_point", "bracket", {}).ratings == ()  # type: ignore[attr-defined]


def test_an_entry_may_take_several_kinds() -> None:
    assert kinds_of(Sling) == ("flat_sling", "round_sling", "chain_sling", "wire_rope_sling")
    assert kinds_of(Shackle | Sling)[:3] == ("shackle", "flat_sling", "round_sling")


def test_own_built_gear_lists_the_proofs_it_has_not_got() -> None:
    beam = KINDS["own_beam"]
    assert lacks(beam, {"origin": "bought"}) == ()
    assert lacks(beam, {"origin": "own-built", "drawing_ref": "KSY-014"}) == (
        "design check", "proof test", "declaration of conformity",
    )


def test_state_is_no_fact_and_typed_in_gear_has_none() -> None:
    state = GearState("in service", ("bent",), "2027-01-01", True)
    assert make("hook", "K-1", {"wll_t": "1"}).state is None
    assert make("hook", "K-1", {"wll_t": "1"}, state).state == state


@pytest.mark.parametrize("wll_t, colour", [
    (1.0, "violet"), (2.0, "green"), (3.0, "yellow"), (4.0, "grey"), (5.0, "red"), (6.0, "brown"), (8.0, "blue"),
    (10.0, "orange"), (12.0, "orange"), (1.5, None), (0.5, None), (9.0, None),
])
def test_sling_colours_are_those_of_the_standard(wll_t: float, colour: str | None) -> None:
    assert sling_colour(wll_t) == colour
