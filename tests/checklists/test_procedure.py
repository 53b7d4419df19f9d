"""The published procedures: what they ask, how much at a time, and what their holds cover."""
import pytest

from checklist_app.checklists.procedure import Procedure, newest, procedures

EVERY = tuple(procedures().values())


def test_a_new_straight_lift_begins_with_the_highest_version() -> None:
    assert newest("straight_lift").key == max(key for key in procedures() if key.startswith("straight_lift/"))


@pytest.mark.parametrize("procedure", EVERY, ids=lambda each: each.key)
def test_no_step_asks_more_than_nine_things(procedure: Procedure) -> None:
    steps = [step for stage in procedure.stages for step in stage.steps]

    assert steps and all(1 <= len(step.prompts) <= 9 for step in steps)


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
