"""The table counts three legs where they lie evenly round the hook; else what each really pulls decides."""

from checklist_app.operations.check import Verdict
from checklist_app.operations.evaluate import assess
from tests.operations.straight_lift.lifts import TABLE, sling
from tests.operations.straight_lift.rigged import three

# On a circle of 0.6 m round the centre of gravity, at 200°, 340° and 90°: all three at one angle from vertical.
UNEVEN = {"left": {"eye_x_m": -0.5638, "eye_y_m": -0.2052}, "right": {"eye_x_m": 0.5638, "eye_y_m": -0.2052},
          "middle": {"eye_x_m": 0.0, "eye_y_m": 0.6}}


def test_evenly_round_the_hook_the_table_counts() -> None:
    """Seen from above the legs go off at 207°, 333° and 90°: 117°, 127° and 117° between them, EN 818-6 within 15°."""
    ev = assess(TABLE, three(every={"sling": sling(0.45)}))
    assert ev["legs_alike"] is True
    assert ev.check("pair_strength").verdict is Verdict.OVER


def test_two_legs_on_one_side_and_one_on_the_other_are_judged_by_what_each_pulls() -> None:
    """140°, 110° and 110° between them; the angles from vertical alone would let the table count."""
    ev = assess(TABLE, three(UNEVEN, every={"sling": sling(2.0)}, cg_x_m=0.0, cg_y_m=0.0))
    angles = [ev[f"leg_angle_deg[{leg}]"] for leg in ("left", "right", "middle")]
    assert ev["legs_alike"] is False and max(angles) - min(angles) < 0.1
    pair = ev.check("pair_strength")
    assert pair.verdict is Verdict.NOT_APPLICABLE and "seen from above" in str(pair.stopped)
    assert ev.governs is not None and ev.governs.name.startswith("sling_strength")
