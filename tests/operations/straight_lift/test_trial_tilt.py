"""A tilt read at the trial against the plan: with the end and the side that hung low, and without."""

from math import radians, tan
from typing import Any

import pytest

from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import assess
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.straight_lift.trial_entries import LowEnd, LowSide
from tests.operations.straight_lift.lifts import TABLE, lift

LEFT_LOW, RIGHT_LOW, LEVEL = LowEnd.LEFT, LowEnd.RIGHT, LowEnd.LEVEL


def hung(**read: Any) -> dict[str, Any]:
    """One trial as it was read; what nobody said is left out."""
    told = {"hook_load_kg": 1000.0, "tilt_along_deg": 0.0, "tilt_across_deg": 0.0, **read}
    return {name: value for name, value in told.items() if value is not None}


@pytest.mark.parametrize("planned_deg, read_deg, end, verdict", [
    (4.3, 4.3, LEFT_LOW, Verdict.WITHIN), (4.3, 4.3, RIGHT_LOW, Verdict.OVER), (4.3, 4.3, None, Verdict.WITHIN),
    (4.3, 4.3, DontKnow(), Verdict.OVER), (-4.3, 4.3, RIGHT_LOW, Verdict.WITHIN), (-4.3, 4.3, LEFT_LOW, Verdict.OVER),
    (1.0, 1.0, RIGHT_LOW, Verdict.WITHIN), (1.2, 1.2, RIGHT_LOW, Verdict.CLOSE),
    (4.3, 4.3, LEVEL, Verdict.OVER), (0.0, 0.3, LEVEL, Verdict.WITHIN), (0.0, 4.0, LEVEL, Verdict.OVER),
])
def test_a_load_that_hangs_as_much_to_the_other_end_does_not_agree_once_the_end_is_told(
    planned_deg: float, read_deg: float, end: object, verdict: Verdict
) -> None:
    """The hook is 0.866 m over the eyes, the centre of gravity 0.4 m below: off by 1.266 m × tan of the tilt.

    Nearer to the left eye the left end hangs low.
    """
    off_m = 1.266 * tan(radians(planned_deg))
    ev = assess(TABLE, lift(cg_x_m=0.5 - off_m, trials=(hung(tilt_along_deg=read_deg, low_end=end),)))
    assert ev.check("tilt_agrees").verdict is verdict
    assert ev["planned_tilt_along_deg"] == pytest.approx(planned_deg, abs=0.05)


@pytest.mark.parametrize("side, verdict", [
    (LowSide.FRONT, Verdict.WITHIN), (LowSide.REAR, Verdict.OVER), (None, Verdict.WITHIN),
    (LowSide.LEVEL, Verdict.OVER), (DontKnow(), Verdict.OVER),
])
def test_the_side_counts_crosswise_too(side: object, verdict: Verdict) -> None:
    """The centre of gravity 0.03 m to the front of the eyes, 0.4 m below them, and so 4.3° low at the front."""
    ev = assess(TABLE, lift(cg_y_m=-0.03, trials=(hung(tilt_across_deg=4.3, low_side=side),)))
    assert ev.check("tilt_agrees").verdict is verdict
    assert ev["planned_tilt_across_deg"] == pytest.approx(4.29, abs=0.05)
