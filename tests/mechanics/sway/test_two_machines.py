"""Two hooks that travel with one load: what each may carry, and how far it swings whichever starts or stops first."""

import math
import random

import mujoco
import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.sway.two_machines import share_of_rating, shorter_line_m, swing_of_two_deg

LINE, SPEED, AHEAD_S = 3.5, 0.3, 0.3
MODEL = """<mujoco><option timestep="0.002" gravity="0 0 -9.80665" integrator="implicitfast"/><worldbody>
<body name="one" mocap="true" pos="0 0 0"><site name="h1"/></body>
<body name="other" mocap="true" pos="1.2 0 0"><site name="h2"/></body>
<body pos="0.6 0 -3.9"><freejoint/><inertial pos="-0.2 0 0" mass="1000" diaginertia="80 120 120"/>
<site name="p1" pos="-0.6 0 0.4"/><site name="p2" pos="0.6 0 0.4"/></body></worldbody><tendon>
<spatial limited="true" range="0 3.5" solreflimit="0.01 1"><site site="h1"/><site site="p1"/></spatial>
<spatial limited="true" range="0 3.5" solreflimit="0.01 1"><site site="h2"/><site site="p2"/></spatial>
</tendon></mujoco>"""


def test_published_each_of_two_cranes_is_rated_for_a_fifth_more_than_its_share() -> None:
    """Queensland mobile crane code, 14.3.2; the quarter that is kept here, from memory, is stricter."""
    assert share_of_rating() <= 1.0 / 1.2
    assert share_of_rating() == 0.75


def test_by_hand_the_line_ends_at_the_eyes() -> None:
    """2 m and the shorter leg of 1.4 m; from 1 m/s on 3 m: cos A = 1 − 1/(2 × 9.80665 × 3), A = 10.58°."""
    assert shorter_line_m(2.0, (1.5, 1.4)) == pytest.approx(3.4)
    assert swing_of_two_deg(1.0, 3.0) == pytest.approx(math.degrees(math.acos(1.0 - 1.0 / (6.0 * 9.80665))))


def farthest_deg(starts: tuple[float, float], stops: tuple[float, float]) -> float:
    """Either line from vertical at its worst, the hooks set going and stopped dead at their own moments."""
    model = mujoco.MjModel.from_xml_string(MODEL)
    data, worst = mujoco.MjData(model), 0.0
    for _ in range(5000):
        for hook in (0, 1):
            going = min(max(data.time - starts[hook], 0.0), stops[hook] - starts[hook])
            data.mocap_pos[hook] = [1.2 * hook + SPEED * going, 0.0, 0.0]
        mujoco.mj_step(model, data)
        for hook in (0, 1):
            way = data.site(f"p{hook + 1}").xpos - data.site(f"h{hook + 1}").xpos
            worst = max(worst, math.degrees(math.atan2(abs(way[0]), -way[2])))
    return worst


def test_no_order_of_starts_and_stops_swings_it_farther_in_a_physics_engine() -> None:
    """mujoco, no damping: twice the dead stop, and what the hooks being out of step lean a line by at rest."""
    r, most = random.Random(12), 2.0 * swing_of_two_deg(SPEED, LINE)
    leans = math.degrees(math.atan2(SPEED * AHEAD_S, LINE))
    found = []
    for _ in range(10):
        starts = (0.2, 0.2 + r.uniform(-0.2, AHEAD_S - 0.2))
        stop = r.uniform(2.5, 6.0)
        ahead = max(0.0, starts[1] - starts[0]), max(0.0, starts[0] - starts[1])
        stops = (stop, stop + r.uniform(ahead[0] - AHEAD_S, AHEAD_S - ahead[1]))
        if max(abs((stops[0] - starts[0]) - (stops[1] - starts[1])), abs(starts[0] - starts[1])) <= AHEAD_S:
            found.append(farthest_deg(starts, stops))
    assert len(found) > 5
    assert max(found) <= most + leans
    assert max(found) > 0.4 * most


@pytest.mark.parametrize("call, words", [
    (lambda: shorter_line_m(-0.1, (1.0, 1.0)), "hook below its trolley is -0.1"),
    (lambda: shorter_line_m(1.0, (1.0, math.nan)), "eye below its hook is nan"),
    (lambda: swing_of_two_deg(1.0, 0.0), "line is 0"),
    (lambda: swing_of_two_deg(9.0, 1.0), "swing it beyond level"),
])
def test_it_refuses_and_says_why(call: object, words: str) -> None:
    with pytest.raises(OutOfRangeError, match=words):
        call()  # type: ignore[operator]
