"""The published procedures: what they ask, how much at a time, and what their holds cover."""
from enum import Enum

import pytest

from checklist_app.checklists.conditions import condition
from checklist_app.checklists.procedure import Procedure, newest, procedures
from checklist_app.checklists.scope import binds
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.gear import is_gear, kinds_of
from checklist_app.operations.straight_lift.choices import HOOKS, LEGS

EVERY = tuple(procedures().values())


def test_a_new_straight_lift_begins_with_the_highest_version() -> None:
    assert newest("straight_lift").key == max(key for key in procedures() if key.startswith("straight_lift/"))


@pytest.mark.parametrize("procedure", EVERY, ids=lambda each: each.key)
def test_no_step_asks_more_than_nine_things(procedure: Procedure) -> None:
    """The three coordinates of a point stand in one line and are one thing."""
    steps = [step for stage in procedure.stages for step in stage.steps]
    things = [{prompt.line or prompt.name for prompt in step.prompts} for step in steps]

    assert steps and all(1 <= len(each) <= 9 for each in things)


@pytest.mark.parametrize("procedure", EVERY, ids=lambda each: each.key)
def test_each_name_is_asked_once_in_its_group(procedure: Procedure) -> None:
    names = [(prompt.group, prompt.name) for prompt in procedure.prompts()]

    assert len(names) == len(set(names))


@pytest.mark.parametrize("procedure", EVERY, ids=lambda each: each.key)
def test_a_hold_stands_before_a_stage_and_covers_only_what_comes_earlier(procedure: Procedure) -> None:
    order = [stage.name for stage in procedure.stages]

    for hold in procedure.holds:
        assert set(hold.stages) == set(order[:order.index(hold.before)])


def test_the_trial_hold_covers_the_tilt_and_the_release_does_not() -> None:
    lift = newest("straight_lift")
    release, accepted = lift.hold("release"), lift.hold("trial_accepted")

    assert release is not None and accepted is not None
    assert {"tilt_along", "tilt_across"} <= set(accepted.checks)
    assert not {"tilt_along", "tilt_across"} & set(release.checks)


def test_a_procedure_knows_no_stage_that_it_has_not() -> None:
    assert newest("straight_lift").hold("lunch") is None


def test_the_holds_of_the_newest_version_name_every_check_of_the_operation() -> None:
    lift = newest("straight_lift")
    release, accepted = lift.hold("release"), lift.hold("trial_accepted")
    every = set(OPERATIONS["straight_lift"].table.checks)

    assert release is not None and accepted is not None
    assert set(accepted.checks) == every
    assert every - set(release.checks) == {"tilt_along", "tilt_across", "tilt_agrees", "mass_agrees"}


@pytest.mark.parametrize("key", ["straight_lift/1", "straight_lift/2", "straight_lift/3"])
def test_a_published_version_names_no_check_that_the_operation_has_lost(key: str) -> None:
    every = set(OPERATIONS["straight_lift"].table.checks)

    assert all(set(hold.checks) <= every for hold in procedures()[key].holds)


def test_the_rows_of_legs_and_hooks_follow_each_answer_about_the_rig_as_the_operation_wants_them() -> None:
    lift = newest("straight_lift")

    for group, wanted in (("leg", LEGS), ("hook", HOOKS)):
        rows = lift.follows[group].rows
        assert lift.follows[group].answer == "rig"
        for rig, (least, most) in wanted.items():
            assert least <= len(rows.get(rig.value, ())) <= most, (group, rig)


def test_every_condition_is_about_a_question_of_the_same_procedure_with_that_answer() -> None:
    """A misspelt answer would hide a question for good."""
    lift, entries = newest("straight_lift"), OPERATIONS["straight_lift"].table.entries
    for prompt in lift.prompts():
        for each in map(condition, prompt.only_for):
            for name in each.names:
                assert lift.prompt(name) is not None, (prompt.name, name)
                kind = entries[name].kind if name in entries else None
                if isinstance(kind, type) and issubclass(kind, Enum):
                    assert set(each.wanted) <= {str(answer.value) for answer in kind}, (prompt.name, each.wanted)
                elif kind is not None and is_gear(kind):
                    assert set(each.wanted) <= {*kinds_of(kind), "not used"}, (prompt.name, each.wanted)


def test_every_note_on_an_answer_is_on_one_that_there_is() -> None:
    entries = OPERATIONS["straight_lift"].table.entries
    for prompt in newest("straight_lift").prompts():
        if prompt.notes:
            assert set(prompt.notes) <= {str(answer.value) for answer in entries[prompt.name].kind}, prompt.name


def test_a_release_covers_every_answer_about_what_how_and_where_it_is_slung() -> None:
    lift = newest("straight_lift")
    release = lift.hold("release")
    assert release is not None

    for stage in ("what", "kit", "numbers"):
        for prompt in lift.stage(stage).prompts():
            path = (prompt.group, "1-left", prompt.name) if prompt.group else (prompt.name,)
            assert binds(lift, release, path), path
            if prompt.felt:
                assert binds(lift, release, (*path[:-1], f"{prompt.name}_felt")), path
