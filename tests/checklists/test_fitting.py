"""How the eyes are given: only what fits the number of legs is offered, and an older answer says why it does not."""
import pytest

from checklist_app.checklists.running import running
from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.straight_lift.choices import EYES_FIT, EyesGiven, Rig
from tests.checklists.pages_checked import faults
from tests.checklists.shop import Shop
from tests.operations.straight_lift.lifts import TABLE, lift
from tests.operations.straight_lift.rigged import four, one, three, two_hooks

EYES = "/tasks/{}/numbers?step=eyes"
LIFTS = {Rig.ONE_LEG: one, Rig.TWO_LEGS: lift, Rig.THREE_LEGS: three, Rig.FOUR_LEGS: four, Rig.TWO_HOOKS: two_hooks}
PLACED = {"eyes_apart_m": 1.2, "eyes_across_m": 0.8, "right_eye_higher_m": 0.0}


@pytest.mark.parametrize("rig", LIFTS)
@pytest.mark.parametrize("given", [EyesGiven.DISTANCE, EyesGiven.RECTANGLE])
def test_what_is_offered_is_what_is_not_refused(rig: Rig, given: EyesGiven) -> None:
    told = assess(TABLE, LIFTS[rig](eyes_given=given, **PLACED), with_spread=False).check("leg_angle[left]" if (
        rig is not Rig.FOUR_LEGS) else "leg_angle[left_front]")
    assert ((told.verdict is Verdict.CANNOT) is (given not in EYES_FIT[rig])), told.stopped
    assert {EyesGiven.PICK_POINTS, EyesGiven.COORDINATES} <= set(EYES_FIT[rig])


@pytest.mark.parametrize("rig", list(Rig))
def test_the_page_offers_only_the_answers_that_fit(rig: Rig) -> None:
    shop = Shop()
    page = shop.get(EYES.format(shop.begin(load="BF-9", state="bare", rig=rig.value))).html
    offered = {each for each in EyesGiven if f'name="eyes_given" value="{each.value}"' in page}

    assert offered == set(EYES_FIT[rig]) and faults(page) == []


def test_an_older_answer_that_does_not_fit_any_more_says_why_and_is_not_chosen() -> None:
    shop = Shop()
    task = shop.begin(load="BF-9", state="bare", rig=Rig.FOUR_LEGS.value)
    shop.post(EYES.format(task), {"eyes_given": "rectangle"})
    assert "A rectangle places four eyes" not in shop.get(EYES.format(task)).html
    shop.post(f"/tasks/{task}/kit/rig", {"rig": Rig.THREE_LEGS.value})
    page = shop.get(EYES.format(task)).html

    assert "A rectangle places four eyes, and this load is slung otherwise: three legs on one hook." in page
    assert 'value="rectangle"' not in page and faults(page) == []
    assert running(shop.world, task).evaluation.verdict is not Verdict.WITHIN
    shop.post(EYES.format(task), {"eyes_given": "coordinates"})
    assert "places four eyes" not in shop.get(EYES.format(task)).html
