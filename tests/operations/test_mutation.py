"""Each clause and each check in turn says the best it could; one named lift then comes out otherwise, so it counts.

The lists are taken from the modules: a new clause or check without a case here fails.
"""

import copy
import dataclasses
import importlib
from collections.abc import Callable, Mapping
from typing import Any

import pytest

from checklist_app.mechanics.lift_class import LiftClass
from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.operations.check import Limit, State, Strength
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import GearState, make
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.table import Table
from checklist_app.operations.task import Measured, Task
from tests.mechanics.clauses import CLAUSES
from tests.operations.straight_lift.lifts import TABLE, eye, hoist, hook, lift, pick_point, shackle, sling

HUGE = 1e6
LATE = GearState("in service", (), "2026-10-01", True)


def late(kind: str, **facts: Any) -> Any:
    return make(kind, "late", {"wll_t": 9.0, "reach_m": 0.1, "length_m": 1.0, "mass_kg": 1.0, **facts}, LATE)


LATE_EYE = make("eye", "late", {"ratings": [{"up_to_deg": 60.0, "wll_t": 9.0}], "reach_m": 0.1, "mass_kg": 1.0}, LATE)
HEAVY = {"hook_load_kg": 1200.0, "tilt_along_deg": 0.0, "tilt_across_deg": 0.0}
STEEP_PAIR = lift(both={"sling": sling(1.0)}, mass_kg=1500.0)
FLAT_PAIR = lift(both={"sling": sling(1.0)}, mass_kg=1010.0, eyes_apart_m=1.6, cg_x_m=0.8)
TOO_FLAT = lift(eyes_apart_m=1.75, cg_x_m=0.875, highest_hook_m=50.0, room_height_m=50.0)
SLANTING = lift(right_eye_higher_m=-0.2, cg_z_m=-0.08)
UNLIKE_LEGS = lift({"leg_length_m": 0.8544, "sling": sling(0.5)}, {"leg_length_m": 1.063}, cg_x_m=0.3)
ASIDE = lift(cg_y_m=0.05)
LEVEL = {"hook_load_kg": 1000.0, "tilt_along_deg": 0.0, "tilt_across_deg": 0.0}
ROLLED = lift(both={"eye": eye((40.0, 4.0), (90.0, 0.1))}, cg_y_m=0.3, trials=(LEVEL,))
LEANING = lift(cg_x_m=0.65)

CLAUSE_CASES: Mapping[str, tuple[Callable[..., Any], Task]] = {
    "weight.gross_mass_kg": (lambda *_: 1.0, lift(rigging_kg=200.0, hoist=hoist(1.1))),
    "weight.gross_load_t": (lambda *_: 0.001, lift(hoist=hoist(0.9))),
    "suspension.level_between_eyes_m": (lambda *_: 0.4, lift(cg_x_m=0.5, cg_y_m=0.05)),
    "suspension.cg_along_pick_line_m": (lambda *_: 0.5, LEANING),
    "suspension.cg_beside_pick_line_m": (lambda *_: 0.0, ASIDE),
    "suspension.hook_along_pick_line_m": (lambda apart, *_: apart / 2.0, lift({"leg_length_m": 1.1})),
    "suspension.hook_off_pick_line_m": (lambda *_: 10.0, TOO_FLAT),
    "attitude.legs_upright": (lambda *_: 1.0, ROLLED),
    "attitude.legs_aside": (lambda *_: 0.0, ASIDE),
    "attitude.level_share_m": (lambda *_: 0.0, LEANING),
    "attitude.upward_share_m": (lambda *_: HUGE, LEANING),
    "attitude.tilt_deg": (lambda *_: 0.0, LEANING),
    "leg_tension.eye_drop_m": (lambda *_: HUGE, TOO_FLAT),
    "leg_tension.eye_reach_m": (lambda *_: 0.0, TOO_FLAT),
    "leg_tension.share_of_leg": (lambda *_: 0.0, UNLIKE_LEGS),
    "leg_tension.one_leg_carries_all": (lambda: 0.0, lift(both={"sling": sling(0.9)}, cg_x_m=DontKnow())),
    "leg_tension.angle_from_vertical_deg": (lambda *_: 0.0, TOO_FLAT),
    "stability.cg_below_pick_line_m": (lambda *_: 10.0, lift(cg_z_m=0.1)),
    "sling_modes.hitch_factor": (lambda *_: 1.0, lift({"hitch": Hitch.CHOKED})),
    "sling_modes.two_leg_factor": (lambda *_: 1.4, FLAT_PAIR),
    "sling_modes.pair_wll_t": (lambda *_: HUGE, STEEP_PAIR),
    "angle_ratings.wll_at_angle_t": (lambda *_: HUGE, lift({"eye": eye((60.0, 0.5))})),
    "shackles.bow_wll_t": (lambda *_: HUGE, lift(hook_fitting=shackle(0.9))),
    "shackles.hook_wll_t": (lambda *_: HUGE, lift(hook_fitting=hook(0.9))),
    "angle_limits.leg_from_vertical_limit_deg": (lambda: 180.0, TOO_FLAT),
    "angle_limits.legs_alike": (lambda *_: False, STEEP_PAIR),
    "headroom.hook_height_m": (lambda *_: 0.0, lift(highest_hook_m=2.2)),
    "headroom.left_above_m": (lambda *_: HUGE, lift(highest_hook_m=2.2)),
    "lift_class.class_by_utilisation": (lambda *_: LiftClass.ROUTINE, lift(hoist=hoist(1.05))),
    "lift_class.class_by_knowledge": (
        lambda *_, **__: LiftClass.ROUTINE, lift(mass_kg=Measured(1000.0, "estimate"))
    ),
}
# Only shown, in no check: the force beside the load in the unit of the labels.
SHOWN_ONLY = {"weight.weight_kn": "leg_tension_kn[left]"}

CHECK_CASES: Mapping[str, Task] = {
    "hoist_strength": lift(hoist=hoist(0.9)),
    "load_cell_strength": lift(load_cell=make("load_cell", "C", {"wll_t": 0.9, "reach_m": 0.3, "mass_kg": 3.0})),
    "hook_fitting_strength": lift(hook_fitting=shackle(0.9)),
    "sling_strength": UNLIKE_LEGS,
    "pair_strength": STEEP_PAIR,
    "top_fitting_strength": lift({"top_fitting": shackle(0.5)}),
    "bottom_fitting_strength": lift({"bottom_fitting": shackle(0.5)}),
    "eye_strength": lift({"eye": eye((60.0, 0.5))}),
    "carrier_strength": lift({"carrier": pick_point((60.0, 0.5))}),
    "leg_angle": lift(cg_x_m=0.55, eyes_apart_m=1.1, both={"leg_length_m": 0.62}),
    "tilt_along": LEANING,
    "tilt_across": ASIDE,
    "tilt_agrees": lift(cg_x_m=0.7, trials=(LEVEL,)),
    "stability": lift(cg_z_m=Measured(-0.09, "by eye")),
    "headroom": lift(highest_hook_m=2.2),
    "room": lift(room_height_m=1.5),
    "mass_agrees": lift(trials=(HEAVY,)),
    "hoist_usable": lift(hoist=late("hoist", reach_m=None, length_m=None)),
    "load_cell_usable": lift(load_cell=late("load_cell", length_m=None)),
    "hook_fitting_usable": lift(hook_fitting=late("shackle", length_m=None)),
    "sling_usable": lift({"sling": late("round_sling", reach_m=None)}),
    "top_fitting_usable": lift({"top_fitting": late("shackle", length_m=None)}),
    "bottom_fitting_usable": lift({"bottom_fitting": late("shackle", length_m=None)}),
    "eye_usable": lift({"eye": LATE_EYE}),
}
BEST = {Strength: Strength(0.0, 1.0), Limit: Limit(-1e9, 1e9), State: State(True, "")}


def decision(ev: Evaluation) -> tuple[Any, ...]:
    """What a signer is told: the verdict, what governs, the class."""
    return ev.verdict, ev.governs.name if ev.governs else None, ev["lift_class"]


def test_every_clause_of_the_engineering_floor_has_its_case() -> None:
    assert set(CLAUSES) == set(CLAUSE_CASES) | set(SHOWN_ONLY)


def test_every_check_of_the_operation_has_its_case() -> None:
    assert set(TABLE.checks) == set(CHECK_CASES)


@pytest.mark.parametrize("name", CLAUSE_CASES)
def test_a_clause_that_says_the_best_it_could_is_noticed(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    best, task = CLAUSE_CASES[name]
    before = decision(assess(TABLE, task))
    module, _, function = name.partition(".")
    monkeypatch.setattr(importlib.import_module(f"checklist_app.mechanics.{module}"), function, best)
    assert decision(assess(TABLE, task)) != before


@pytest.mark.parametrize("name", SHOWN_ONLY)
def test_a_clause_that_is_only_shown_is_noticed_where_it_is_shown(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    before = assess(TABLE, lift())[SHOWN_ONLY[name]]
    module, _, function = name.partition(".")
    monkeypatch.setattr(importlib.import_module(f"checklist_app.mechanics.{module}"), function, lambda *_: 0.0)
    assert assess(TABLE, lift())[SHOWN_ONLY[name]] != before


@pytest.mark.parametrize("name", CHECK_CASES)
def test_a_check_that_says_the_best_it_could_is_noticed(name: str) -> None:
    task = CHECK_CASES[name]
    assert decision(assess(with_best(name), task)) != decision(assess(TABLE, task))


def with_best(name: str) -> Table:
    """The same table, one of its checks always at its best."""
    (way,) = TABLE.ways[name]

    def best(*_: Any) -> Any:
        return BEST[way.returns]

    best.__dict__["clause"] = way.run.__dict__["clause"]
    table = copy.copy(TABLE)
    table.ways = {**TABLE.ways, name: (dataclasses.replace(way, run=best),)}
    return table
