"""Rows that follow an answer, and questions that are asked only after others."""
from collections.abc import Mapping

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.conditions import condition, may_be_asked
from checklist_app.checklists.entry import Entry, make
from checklist_app.checklists.fold import Folded, fold
from checklist_app.checklists.following import followed
from checklist_app.checklists.places import places
from checklist_app.checklists.procedure import Procedure, read

TEXT = """
name = "toy"
version = 2
operation = "straight_lift"
words = "Toy"
stage = [{ name = "kit", words = "Kit", where = "here", step = [
  { name = "rig", words = "Rig", prompt = [{ choice = "rig", choices = ["one", "two"] }] },
  { name = "leg", words = "leg", group = "leg", prompt = [
    { choice = "hitch", choices = ["straight", "choked"] },
    { number = "bend", only_for = ["hitch!=straight", "rig=two|three"] },
  ] },
] }]
hold = []
[follow.leg]
answer = "rig"
rows = { one = ["1-left"], two = ["1-left", "2-right_rear"] }
"""


def said(path: str, text: str, number: int, replaces: tuple[str, ...] = ()) -> Entry:
    return make(("task", "t-1"), path.split("/"), values.choice(text), replaces, "p-1", "d-1", number,
                "2026-11-25T08:00:00Z")


def stands(*answers: tuple[str, str]) -> tuple[Procedure, Folded]:
    procedure = read(TEXT)
    entries = [said(path, text, number + 1) for number, (path, text) in enumerate(answers)]
    return procedure, followed(procedure, fold(entries))


def names(procedure: Procedure, folded: Folded) -> list[str]:
    return [place.name for place in places(procedure, folded)]


def test_without_an_answer_there_are_no_rows() -> None:
    assert names(*stands()) == ["rig"]


def test_an_answer_that_the_procedure_does_not_know_gives_no_rows() -> None:
    procedure, folded = stands(("rig", "seven"), ("leg/1-left/hitch", "choked"))
    assert names(procedure, folded) == ["rig"] and ("leg", "1-left", "hitch") not in folded.values


def test_two_answers_give_no_rows_until_somebody_settles_them() -> None:
    assert names(*stands(("rig", "one"), ("rig", "two"))) == ["rig"]


def test_the_rows_follow_the_answer_and_nobody_made_them() -> None:
    procedure, folded = stands(("rig", "two"))
    assert [place.name for place in places(procedure, folded) if place.prompt.name == "hitch"] == [
        "leg/1-left/hitch", "leg/2-right_rear/hitch"]
    assert {place.label for place in places(procedure, folded)} == {"", "left", "right rear"}


def test_a_single_leg_needs_no_name() -> None:
    assert {place.label for place in places(*stands(("rig", "one")))} == {""}


def test_what_stands_in_a_row_that_is_gone_is_left_out_and_comes_back_with_it() -> None:
    procedure = read(TEXT)
    two, choked = said("rig", "two", 1), said("leg/2-right_rear/hitch", "choked", 2)
    one = said("rig", "one", 3, (two.digest,))
    back = said("rig", "two", 4, (one.digest,))
    path = ("leg", "2-right_rear", "hitch")
    assert path not in followed(procedure, fold([two, choked, one])).values
    assert followed(procedure, fold([two, choked, one, back])).values[path]["text"] == "choked"


def test_a_disagreement_in_a_row_that_is_gone_holds_nobody_up() -> None:
    path = "leg/2-right_rear/hitch"
    _, gone = stands(("rig", "one"), (path, "choked"), (path, "straight"))
    _, there = stands(("rig", "two"), (path, "choked"), (path, "straight"))
    assert not gone.disputed and tuple(path.split("/")) in there.disputed


CONDITIONS: Mapping[str, Mapping[str, bool]] = {
    "hitch=choked|basket": {"choked": True, "basket": True, "straight": False, "": False},
    "edge_mm!=not used": {"given": True, "don't know": True, "not used": False, "": False},
    "top_fitting|bottom_fitting=shackle": {"shackle": True, "hook": False, "not used": False, "": False},
}


@pytest.mark.parametrize("text", CONDITIONS)
def test_a_condition_is_met_by_what_was_said_and_never_by_nothing(text: str) -> None:
    for given, met in CONDITIONS[text].items():
        assert condition(text).holds(given) is met, given


@pytest.mark.parametrize(("rig", "hitch", "asked"), [
    ("two", "choked", True), ("two", "straight", False), ("one", "choked", False)])
def test_a_question_is_asked_while_every_one_of_its_conditions_holds(rig: str, hitch: str, asked: bool) -> None:
    procedure, folded = stands(("rig", rig), ("leg/1-left/hitch", hitch))
    bend = next(place for place in places(procedure, folded) if place.name == "leg/1-left/bend")
    assert may_be_asked(bend, folded) is asked
