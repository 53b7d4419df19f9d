"""What somebody should mind although it holds: on the check's card, at the hold point, and in no verdict."""
from checklist_app.checklists.checks_view import live
from checklist_app.checklists.running import running
from tests.checklists.pages_checked import faults
from tests.checklists.yard import TASK, Yard, sent

STEEP = "steeper than 15° on a common hook suits a stud"


def test_steep_legs_are_told_on_their_cards_and_at_the_hold_point() -> None:
    """Legs of 1.56 m to eyes 0.6 m apart: 11° from vertical."""
    yard = Yard().ready()
    row = next(row for row in live(running(yard.world, TASK)).rows if row.id == "leg_upright.left")

    assert (row.figure, row.verdict) == ("caution", "within limit")
    assert row.note.startswith("hangs 1") and STEEP in row.note
    page = sent(yard, f"/tasks/{TASK}/holds/release").html
    assert f"Leg not too steep, left, right: {STEEP}" in page and faults(page) == []
    assert STEEP in sent(yard, f"/tasks/{TASK}/checks").html
