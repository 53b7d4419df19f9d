"""For each clause and check of a running sling, and of two hooks that travel, a lift in which it alone decides."""

from collections.abc import Callable, Mapping
from typing import Any

from checklist_app.mechanics.hanging.running_ellipse import Turned
from checklist_app.mechanics.hanging.running_sling import hung_on_running_sling
from checklist_app.operations.gear import make
from checklist_app.operations.task import Task
from tests.operations.straight_lift.lifts import hoist, lift
from tests.operations.straight_lift.on_the_way import TRAVELS, WIND
from tests.operations.straight_lift.rigged import running, two_hooks

WEAK = {"sling": make("round_sling", "R-1", {"wll_t": 0.715, "length_m": 2.4, "mass_kg": 1.0, "thickness_mm": 20.0})}
SHALLOW = running(cg_z_m=-0.2)
TALL = running(top_z_m=0.9)
SWAYS = running(**TRAVELS | {"travel_speed_m_s": 0.15, "stopping_m": 0.01})
BLOWN = running(**WIND | {"gust_m_s": 6.5, "side_area_z_m": 0.1, "side_area_m2": 3.0})
LEANS = running(cg_x_m=0.53)
TOGETHER: dict[str, Any] = {**TRAVELS, "out_of_step_m": 0.02}
HALF_SPARE = two_hooks(each_hook={"hook_hoist": hoist(0.93)}, **TOGETHER)
FAST = two_hooks(**TOGETHER | {"travel_speed_m_s": 0.6, "stopping_m": 0.1})

RUNNING_CLAUSES: Mapping[str, tuple[Callable[..., Any], Task]] = {
    "hanging.running_sling.depth_needed_m": (lambda *_: 0.0, SHALLOW),
    "hanging.running_sling.hung_on_running_sling": (lambda *_: hung_on_running_sling(1.0, 2.4, 0.0, 0.5), LEANS),
    "hanging.running_turn.share_where_it_sticks": (lambda *_: 0.1, running(WEAK)),
    "hanging.running_turn.turned_by_lever_deg": (lambda *_: 0.0, TALL),
    "hanging.running_turn.turned_by_rise_deg": (lambda *_: 0.0, SWAYS),
    "sway.stopping.rise_of_swing_m": (lambda *_: 0.0, SWAYS),
    "sway.two_machines.share_of_rating": (lambda: 1.0, HALF_SPARE),
    "sway.two_machines.shorter_line_m": (lambda *_: 1e6, FAST),
    "sway.two_machines.swing_of_two_deg": (lambda *_: 0.0, FAST),
}
RUNNING_SHOWN = {
    "hanging.running_turn.rocking_radius_m": (running(), "turns_by_nm", 0.0),
    "hanging.running_turn.runs_out": (running(), "run_out_knm", Turned(0.0, 0.0, 0.0, 0.0)),
    "hanging.stiffness.couple_for_one_degree_nm": (lift(), "turns_by_nm", 0.0),
    "hanging.two_hooks.couple_that_slackens_one_knm": (two_hooks(), "hooks_slack_knm", 0.0),
}
RUNNING_CHECKS: Mapping[str, Task] = {
    "running_depth": SHALLOW,
    "running_push": TALL,
    "running_sway": SWAYS,
    "running_wind": BLOWN,
    "hook_together": HALF_SPARE,
}
# How stiffly it hangs, and what the sling does: told, decided by the others.
RUNNING_TELLS = {"stiff", "running_holds"}
