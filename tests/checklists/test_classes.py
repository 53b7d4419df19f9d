"""Who must sign follows from the class of the lift."""
import pytest

from checklist_app.checklists.classes import needed_words, still_needed
from checklist_app.mechanics.lift_class import LiftClass

ROUTINE, NON_ROUTINE, COMPLEX = LiftClass


def test_a_routine_lift_is_signed_by_its_rigger_or_by_a_supervisor() -> None:
    assert still_needed(ROUTINE, [("p-r", "rigger")]) == ()
    assert still_needed(ROUTINE, [("p-s", "supervisor")]) == ()
    assert len(still_needed(ROUTINE, [])) == 1


def test_a_non_routine_lift_takes_a_supervisor_and_never_the_rigger() -> None:
    (needed,) = still_needed(NON_ROUTINE, [("p-r", "rigger"), ("p-p", "planner")])
    assert needed.capacities == ("supervisor",) and not needed.rigger_may
    assert still_needed(NON_ROUTINE, [("p-s", "supervisor")]) == ()


@pytest.mark.parametrize(("signed", "left"), [
    ([], 2),
    ([("p-1", "planner")], 1),
    ([("p-1", "planner"), ("p-1", "supervisor")], 1),
    ([("p-1", "planner"), ("p-2", "supervisor")], 0),
    ([("p-1", "planner"), ("p-1", "supervisor"), ("p-2", "planner")], 0),
    ([("p-1", "supervisor"), ("p-2", "supervisor")], 1),
])
def test_a_complex_lift_takes_two_persons_however_many_signatures_one_of_them_gives(
        signed: list[tuple[str, str]], left: int) -> None:
    assert len(still_needed(COMPLEX, signed)) == left
    assert len(still_needed(COMPLEX, signed[::-1])) == left


def test_every_class_says_who_signs() -> None:
    assert "must not be the rigger" in needed_words(NON_ROUTINE)
    assert "Two persons" in needed_words(COMPLEX)
    assert "rigger signs in his own name" in needed_words(ROUTINE)
