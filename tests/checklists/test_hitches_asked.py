"""What a hitch waits for is asked: a basket that waits for what nobody is asked can never be signed."""

import pytest

from checklist_app.checklists.conditions import condition
from checklist_app.checklists.procedure import newest
from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.slings.slip import Face
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.operations.evaluate import assess
from checklist_app.operations.graph import Waits
from tests.operations.straight_lift.lifts import TABLE, lift

GIVEN = {"choke_angle_deg": 130.0, "part_angle_deg": 5.0, "face": Face.DRY_AND_CLEAN, "stop": Stop.NONE}
ASKED = {
    prompt.name: prompt.only_for
    for stage in newest("straight_lift").stages for step in stage.steps for prompt in step.prompts
}


@pytest.mark.parametrize("hitch", Hitch)
def test_what_a_hitch_waits_for_is_asked(hitch: Hitch) -> None:
    for left_out in GIVEN:
        given = {name: value for name, value in GIVEN.items() if name != left_out}
        checks = assess(TABLE, lift(both={"hitch": hitch, **given}), with_spread=False).checks
        waited = {
            getattr(why, "key", "").partition("[")[0]
            for check in checks if isinstance(check.outcome, Waits) for why in check.outcome.reasons
        }
        assert waited <= {left_out}
        for name in waited:
            assert all(condition(text).holds(hitch.value) for text in ASKED[name])
