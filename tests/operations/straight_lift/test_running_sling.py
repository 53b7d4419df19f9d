"""One sling that runs over the hook: assessed where it is stable, stopped with its number where it is not."""

import math
import random

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import minimize_scalar

from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.operations.check import State, Verdict
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import make
from checklist_app.operations.graph import NotUsed
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.entries import EyesGiven
from checklist_app.operations.task import Key, Measured, Task
from tests.operations.straight_lift.lifts import TABLE, hoist, lift, shackle, sling
from tests.operations.straight_lift.on_the_way import TRAVELS, WIND
from tests.operations.straight_lift.rigged import running

PASSED = (Verdict.WITHIN, Verdict.CLOSE)
G = 9.80665


def nominal(task: Task) -> Evaluation:
    return assess(TABLE, task, with_spread=False)


def reason(task: Task, name: str = "sling_strength[left]") -> str:
    return str(nominal(task).check(name).stopped)


def limit(task: Task, name: str) -> tuple[float, float]:
    outcome = nominal(task).check(name).outcome
    assert isinstance(outcome, tuple), outcome
    return float(outcome[0]), float(outcome[1])


def told(task: Task, name: str) -> State:
    outcome = nominal(task).check(name).outcome
    assert isinstance(outcome, State), outcome
    return outcome


def test_by_hand_a_load_that_hangs_deep_gets_all_its_figures() -> None:
    """Parts of 1.2 m, half span 0.5 m: β 24.62°, W/(2 cos β) = 0.55 t in each; hook 1.0909 m over the eyes, depth
    0.25/1.0909 = 0.2292 m; rocking point 1.44/1.0909 = 1.32 m below the hook, 0.2708 m below it is the centre of
    gravity: 9806.65 × 0.2708 × π/180 = 46.36 N·m."""
    ev = nominal(running())
    assert [ev[f"running_share[{label}]"] for label in ("left", "right")] == pytest.approx([0.5500190982] * 2)
    assert ev["included_angle_deg"] == pytest.approx(2.0 * math.degrees(math.asin(0.5 / 1.2)))
    assert limit(running(), "running_depth") == pytest.approx((0.229175, 0.5), abs=1e-6)
    assert ev["turns_by_nm"] == pytest.approx(46.36, abs=0.01)
    assert ev.verdict in PASSED and ev.check("stability").verdict is Verdict.WITHIN
    words = told(running(), "running_holds").words
    for part in ("49° between its parts", "0.55 t", "46 N·m turn it 1°", "two slings would take 272 N·m", "4.90 kN·m",
                 "hands off"):
        assert part in words, words


def test_both_parts_are_held_against_what_one_pulls_while_the_sling_sticks() -> None:
    """Pulls of which one is e^(0.3 × wrap) times the other, and that hold 1 t together."""
    ev = nominal(running())
    gamma = math.radians(ev["included_angle_deg"])
    ratio = math.exp(0.3 * (math.pi - gamma))
    share = ratio / math.sqrt(1.0 + ratio * ratio + 2.0 * ratio * math.cos(gamma))
    assert [ev[f"leg_load_t[{label}]"] for label in ("left", "right")] == pytest.approx([share] * 2, rel=1e-9)
    weak = running({"sling": make("round_sling", "R-1", {
        "wll_t": 0.7, "length_m": 2.4, "mass_kg": 1.0, "thickness_mm": 20.0})})
    assert nominal(weak).check("sling_strength[left]").verdict is Verdict.OVER


def test_the_hook_stands_where_the_load_is_lowest() -> None:
    r = random.Random(8)
    for _ in range(25):
        span, e = r.uniform(0.6, 1.4), r.uniform(-0.02, 0.02)
        long, d = span * r.uniform(1.6, 2.6), r.uniform(0.5, 0.9)
        ev = nominal(running(
            eyes_apart_m=span, running_m=long, cg_x_m=span / 2.0 + e, cg_z_m=-d, bottom_z_m=-1.2,
            highest_hook_m=9.0, room_height_m=9.0,
            every={"sling": make("round_sling", "R-1", {
                "wll_t": 2.0, "length_m": long, "mass_kg": 1.0, "thickness_mm": 20.0})},
        ))
        a, b = long / 2.0, math.sqrt(long * long - span * span) / 2.0

        def height(at: float, a: float = a, b: float = b, e: float = e, d: float = d) -> float:
            return -math.hypot(a * math.sin(at) - e, b * math.cos(at) + d)

        at = minimize_scalar(height, bounds=(-1.4, 1.4), method="bounded", options={"xatol": 1e-11}).x
        tilt = math.degrees(math.atan2(a * math.sin(at) - e, b * math.cos(at) + d))
        assert ev["hung_tilt_along_deg"] == pytest.approx(tilt, abs=1e-3)
        assert ev["leg_m[left]"] + ev["leg_m[right]"] == pytest.approx(long, rel=1e-12)
        assert ev["leg_angle_deg[left]"] == pytest.approx(ev["leg_angle_deg[right]"], abs=1e-6)


@pytest.mark.parametrize("cg_z_m, lies", [(-0.2, "0.20 m below"), (0.1, "0.10 m above"), (0.0, "0.00 m above")])
def test_a_load_that_does_not_hang_deep_enough_is_stopped_with_the_depth_it_wants(cg_z_m: float, lies: str) -> None:
    ev = nominal(running(cg_z_m=cg_z_m))
    assert ev.check("running_depth").verdict is Verdict.OVER and ev.verdict is Verdict.OVER
    assert f"lies {lies} the eyes" in reason(running(cg_z_m=cg_z_m))
    assert "more than 0.23 m below them: take two slings" in reason(running(cg_z_m=cg_z_m))


def test_a_doubt_about_the_height_counts() -> None:
    sure, doubtful = (
        assess(TABLE, running(cg_z_m=Measured(-0.31, how))).check("running_depth").verdict
        for how in ("drawing", "by eye")
    )
    assert (sure, doubtful) == (Verdict.WITHIN, Verdict.OVER)


def test_it_turns_under_a_push_many_times_as_far_as_on_two_slings() -> None:
    """5 % of the load 0.7 m over its centre of gravity: M/W = 0.035 m; two slings: asin(0.035/1.5909) = 1.26°."""
    turned, most = limit(running(), "running_push")
    assert most == 10.0 and turned > 5.0 * math.degrees(math.asin(0.035 / 1.5909))
    assert nominal(running(top_z_m=0.9)).check("running_push").verdict is Verdict.OVER
    assert nominal(lift()).check("running_push").verdict is Verdict.NOT_APPLICABLE


def test_all_of_a_swing_can_go_into_turning() -> None:
    """A stop from a walk lifts it L (1 − cos A); on a sling that runs this little height turns it far."""
    task = running(**TRAVELS)
    ev = nominal(task)
    rise = ev["hang_line_m"] * (1.0 - math.cos(math.radians(ev["swing_deg"])))
    assert ev["sway_rise_m"] == pytest.approx(rise, rel=1e-9)
    assert ev.check("running_sway").verdict is Verdict.OVER
    assert nominal(running(**TRAVELS | {"travel_speed_m_s": 0.05})).check("running_sway").verdict in PASSED
    leaning, _ = limit(running(**TRAVELS | {"travel_speed_m_s": 0.6}), "running_push")
    assert leaning > limit(running(), "running_push")[0]


def test_a_gust_turns_it_too() -> None:
    low, high = (limit(running(**WIND | {"side_area_z_m": z_m}), "running_wind")[0] for z_m in (-0.45, 0.1))
    assert 0.0 < low < high


@pytest.mark.parametrize("changes, words", [
    ({"every": {"hitch": Hitch.BASKET, "part_angle_deg": 0.0}}, "goes straight from each of its ends"),
    ({"every": {"top_fitting": shackle()}}, "no fitting at the top"),
    ({"running_m": 0.9, "every": {"sling": sling(2.0, 0.9)}}, "does not reach from eye to eye"),
    ({"running_m": 2.9}, "not what it is by its tag"),
])
def test_what_is_no_running_sling_is_said(changes: dict[str, object], words: str) -> None:
    assert words in reason(running(**changes))  # type: ignore[arg-type]


def test_two_slings_do_not_run() -> None:
    task = running().changed({Key("sling", "right"): sling(2.0, 2.4, "R-2")})
    assert "pick the same sling for both parts" in reason(task)


def test_its_length_is_waited_for_or_added_up() -> None:
    waiting = running(running_m=None)
    assert nominal(waiting).check("running_depth").verdict is Verdict.WAITING
    by_tag = nominal(running({"bottom_fitting": shackle(4.75, 0.1)}, running_m=NotUsed("added up")))
    assert by_tag["over_hook_m"] == pytest.approx(2.6)


def test_the_one_sling_weighs_once() -> None:
    """One sling of 1 kg, two eyes of 0.5 kg, a shackle of 2 kg on the hook."""
    assert nominal(running(rigging_kg=NotUsed("added up")))["rigging_mass_kg"] == pytest.approx(4.0)


def test_an_older_input_that_says_nothing_of_the_sling_is_not_assessed() -> None:
    assert nominal(lift(rig=Rig.RUNNING)).verdict not in PASSED


ROPE = {"wll_t": 2.0, "length_m": 2.4, "mass_kg": 1.0, "diameter_mm": 14.0, "core": "steel",
        "termination": "steel ferrule"}
CHAIN = {"wll_t": 2.0, "length_m": 2.4, "mass_kg": 1.0, "grade": "grade 8", "size_mm": 8.0}


@pytest.mark.parametrize("kind, facts, over_mm, carries_t", [
    ("wire_rope_sling", ROPE, 200.0, 2.0 * (1.0 - 0.5 / math.sqrt(200.0 / 14.0)) / 0.9),
    ("chain_sling", CHAIN, 60.0, 2.0), ("chain_sling", CHAIN, 24.0, 1.4),
])
def test_what_it_is_bent_over_counts(kind: str, facts: dict[str, object], over_mm: float, carries_t: float) -> None:
    ev = nominal(running({"sling": make(kind, "X-1", facts)}, over_hook_mm=over_mm))
    assert ev["sling_carries_t[left]"] == pytest.approx(carries_t)


def test_a_wire_rope_over_a_thin_pin_and_a_thick_sling_over_a_thin_hook_are_refused() -> None:
    assert "bend" in reason(running({"sling": make("wire_rope_sling", "X-1", ROPE)}, over_hook_mm=14.0)) or (
        nominal(running({"sling": make("wire_rope_sling", "X-1", ROPE)}, over_hook_mm=14.0))["sling_carries_t[left]"]
        < 2.0
    )
    assert "radius of the edge" in reason(running(over_hook_mm=30.0))


@given(
    span=st.floats(0.4, 2.0), part=st.floats(1.02, 3.0), e=st.floats(-0.3, 0.3), d=st.floats(-0.5, 1.5),
    mass=st.floats(100.0, 4000.0), wll=st.sampled_from((0.5, 1.0, 2.0, 5.0)),
)
@settings(max_examples=150, deadline=None)
def test_never_within_while_statics_says_otherwise(
    span: float, part: float, e: float, d: float, mass: float, wll: float
) -> None:
    """Written another way: the least depth at which a level load is lowest under the middle; pulls of two lines."""
    long = span * part
    round_sling = make("round_sling", "R-1", {"wll_t": wll, "length_m": long, "mass_kg": 1.0, "thickness_mm": 20.0})
    task = running(
        {"sling": round_sling}, eyes_apart_m=span, running_m=long, cg_x_m=span / 2.0 + e, cg_z_m=-d, mass_kg=mass,
        bottom_z_m=-1.6, top_z_m=0.6, highest_hook_m=9.0, room_height_m=9.0, hoist=hoist(5.0),
    )
    ev = nominal(task)
    if ev.verdict not in PASSED:
        return
    a, b = long / 2.0, math.sqrt(long * long - span * span) / 2.0
    flat = [-math.hypot(a * math.sin(at), b * math.cos(at) + d) for at in (-1e-2, 0.0, 1e-2)]
    assert d > 0.0 and flat[1] < min(flat[0], flat[2]), "in the middle it is not lowest"
    half = math.asin(span / long)
    assert mass / 1000.0 <= 2.0 * wll * math.cos(half) * (1.0 + 1e-9), "both parts together hold less"
    assert math.degrees(half) <= 60.0 + 1e-9 or abs(e) > 0.0


def test_eyes_by_coordinates_and_a_sling_across_the_load_hang_in_their_plane() -> None:
    """The same lift turned by 90° about the upright: tilts change places."""
    own = {"left": (0.0, 0.0, 0.0), "right": (0.0, 1.0, 0.0)}
    task = running(
        eyes_given=EyesGiven.COORDINATES, eyes_apart_m=None, right_eye_higher_m=None, cg_x_m=0.0, cg_y_m=0.51
    )
    for label, point in own.items():
        for axis, value in zip("xyz", point, strict=True):
            task = task.changed({Key(f"eye_{axis}_m", label): Measured(value, plus_minus=0.0)})
    turned, straight = nominal(task), nominal(running(cg_x_m=0.51))
    assert turned["hung_tilt_across_deg"] == pytest.approx(straight["hung_tilt_along_deg"], rel=1e-9)
    assert turned["turns_by_nm"] == pytest.approx(straight["turns_by_nm"], rel=1e-9)
