"""How a task may be closed, and what stands against it."""
import pytest

from checklist_app.checklists.closing import ABANDONED, CLOSINGS, COMPLETED, STOPPED, UNSIGNED, Course, fault, possible

ALL = {"stopped": False, "signed": True, "landed": True, "missing": ()}


def open_ones(**course: object) -> set[str]:
    return {each.text for each in possible(Course(**{**ALL, **course})) if not each.why_not}  # type: ignore[arg-type]


@pytest.mark.parametrize(("course", "closings"), [
    ({}, {COMPLETED}),
    ({"signed": False}, {UNSIGNED}),
    ({"landed": False}, {ABANDONED}),
    ({"signed": False, "landed": False}, {ABANDONED}),
    ({"stopped": True}, {STOPPED, UNSIGNED}),
    ({"stopped": True, "landed": False}, {STOPPED, ABANDONED}),
    ({"missing": ("How did it go",)}, {COMPLETED}),
])
def test_only_what_is_true_can_be_chosen(course: dict[str, object], closings: set[str]) -> None:
    assert open_ones(**course) == closings


@pytest.mark.parametrize("text", [ABANDONED, STOPPED, UNSIGNED])
def test_whatever_is_not_completed_says_why(text: str) -> None:
    course = Course(stopped=text == STOPPED, signed=False, landed=text == UNSIGNED, missing=())
    assert fault(text, "", course) == "Say why, in a sentence."
    assert fault(text, "The wind got up", course) == ""


def test_an_unknown_closing_and_a_false_one_are_refused_in_words() -> None:
    assert fault("finished", "", Course(**ALL)) == "Choose how it ended."  # type: ignore[arg-type]
    assert "supervisor" in fault(COMPLETED, "", Course(True, True, True, ()))
    assert len(CLOSINGS) == 4


def test_completed_names_the_first_thing_that_is_missing() -> None:
    assert fault(COMPLETED, "", Course(False, True, True, ("Slings slack, then hook off", "x"))) == (
        "First: Slings slack, then hook off.")
