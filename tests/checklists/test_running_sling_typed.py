"""A sling that runs over the hook is typed once, and is both its parts in the assessment and in the task."""

from checklist_app.checklists.assess_form import sections
from checklist_app.checklists.assessing import assessed
from checklist_app.checklists.example import example
from checklist_app.checklists.procedure import newest
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.straight_lift import TABLE
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.task import Key

SLING = "leg/1-left/sling"


def typed(**changes: str) -> dict[str, str]:
    """The example of the page, on one sling of 3 m over the hook, its centre of gravity 0.62 m below the eyes."""
    return {
        **example(), "rig": Rig.RUNNING.value, "running_m": "3.0", "over_hook_mm": "60", "cg_z_m": "-0.62",
        f"{SLING}.length_m": "3.0", f"{SLING}.thickness_mm": "18", **changes,
    }


def test_what_is_typed_once_is_both_parts() -> None:
    found = assessed(typed(), "2026-11-28")
    assert not found.faults
    assert found.task.answers[Key("sling", "right")] is found.task.answers[Key("sling", "left")]
    ev = assess(TABLE, found.task)
    assert ev.check("running_depth").verdict is Verdict.WITHIN
    assert ev.check("sling_strength[right]").computed and ev.check("running_push").computed


def test_the_page_asks_for_the_whole_sling_and_for_no_length_of_a_leg() -> None:
    asked = {ask.name for section in sections(typed(), {}) for ask in section.asks}
    assert {"running_m", "over_hook_mm"} <= asked
    assert not any(name.endswith(("leg_length_m", "2-right/sling.kind", "2-right/hitch")) for name in asked)
    other = {ask.name for section in sections(example(), {}) for ask in section.asks}
    assert not {"running_m", "over_hook_mm"} & other


def test_two_hooks_that_travel_are_asked_how_far_one_gets_ahead() -> None:
    way = {"way": "indoors, the hook travels with it"}
    for rig, wanted in ((Rig.TWO_HOOKS, True), (Rig.TWO_LEGS, False)):
        asked = {ask.name for section in sections({**example(), **way, "rig": rig.value}, {}) for ask in section.asks}
        assert ("out_of_step_m" in asked) is wanted


def test_only_the_newest_procedure_asks_what_the_new_rigs_need() -> None:
    asked = {prompt.name for stage in newest("straight_lift").stages for step in stage.steps for prompt in step.prompts}
    assert {"running_m", "over_hook_mm", "out_of_step_m"} <= asked
