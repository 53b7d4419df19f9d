"""Each clause behind the holding of a load says the best it could; one named load then comes out otherwise."""

import importlib
from collections.abc import Callable, Mapping
from dataclasses import replace
from typing import Any

import pytest

from checklist_app.mechanics.lashing.angles import Lie
from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.css_forces import ShipForces
from checklist_app.mechanics.lashing.demands import Demand, Slide, Tip
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.holding import Held
from checklist_app.mechanics.lashing.lashed_body import LashedBody, Pull, Strand, lashed_body
from checklist_app.mechanics.lashing.prepared import Prepared, Withstood, prepared
from checklist_app.mechanics.lashing.transport import Transport, Waters
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.check import Verdict
from checklist_app.operations.lashing import (
    asked,
    bodies,
    by_formula,
    deck_checks,
    deck_formulas,
    deck_friction,
    ends,
    formulas,
    friction_there,
    holding_checks,
    lashed,
    legs,
    pallet_there,
    pulls,
    route,
    run,
    runs,
    ship,
    vehicle_there,
)
from checklist_app.operations.lashing.choices import Passes, Route
from checklist_app.operations.task import Task
from tests.operations.called import called
from tests.operations.lashing.loads import four, load, nominal, on_a_pallet, pallet, tie_down, vehicle
from tests.operations.lashing.test_ships import SHIP

MODULES = (
    asked, bodies, by_formula, deck_checks, deck_formulas, deck_friction, ends, formulas, friction_there,
    holding_checks, lashed, legs, pallet_there, pulls, route, run, runs, ship, vehicle_there,
)
HUGE = 1e6
CHECKS = ("sliding", "tipping", "deck_sliding", "deck_tipping", "lashing_strength")
AT, OUT = (0.4, 0.3, 0.8), (1.0, 0.9, 0.0)
TO_PALLET = four(AT, (0.55, 0.38, 0.0), 2500.0, to_body=Body.PALLET)
WEAK = load(four(AT, OUT, 100.0))
JUST = load(four((0.45, 0.30, 1.1), (1.2, 1.1, 0.0), 700.0), base_length_m=1.0, base_width_m=0.7, cg_z_m=0.8,
            load_friction=0.1)
TALL = load(four((0.3, 0.2, 1.1), (1.0, 0.7, 0.0), 400.0), base_length_m=0.9, base_width_m=0.5, cg_z_m=0.9,
            load_friction=0.6)
TIED = load([tie_down((0.0, 0.7, 1.0), (0.0, 0.8, 0.0))])
ABOARD = load([], **SHIP)


def little(direction: Any) -> Demand:
    """Next to nothing is asked."""
    return Demand(direction, (Slide(0.01, 1.0),), (Tip(0.01, 1.0),), 1.0)


def strong_pulls(_kind: Any, where: Any, _most: Any, stretch: Any) -> tuple[Pull, ...]:
    return tuple(Pull(at, anchor, HUGE, stretch) for at, anchor in where)


def low(weight: Any, cg: Vec, *rest: Any) -> LashedBody:
    return lashed_body(weight, Vec(cg.x, cg.y, 0.01), *rest)


def low_prepared(body: LashedBody) -> Prepared:
    return prepared(replace(body, cg=Vec(0.0, 0.0, 0.01)))


def firm(_rules: Any, _ways: Any, wanted: Demand, *_: Any) -> tuple[Held, ...]:
    return tuple(Held("", each.push, HUGE, HUGE, HUGE, False, True, ()) for each in (*wanted.slides, *wanted.tips))


CASES: Mapping[str, tuple[Callable[..., Any], Task]] = {
    "lashing.angles.lie": (lambda *_: Lie(1.0, 0.0, 0.0, 1.0), JUST),
    "lashing.crossing.crosses": (lambda *_: True, on_a_pallet(TO_PALLET)),
    "lashing.crossing.mass_above_kg": (lambda *_: 1.0, on_a_pallet(four((0.3, 0.2, 0.8), OUT, 100.0))),
    "lashing.rule_sets.weight_dan": (lambda *_: 1.0, WEAK),
    "lashing.css_balance.calculated_strength_kn": (
        lambda *_, **__: HUGE, load(four(AT, OUT, breaking_kn=None), **SHIP)
    ),
    "lashing.css_balance.msl_kn": (lambda *_: HUGE, load(four(AT, OUT), **SHIP)),
    "lashing.css_forces.accelerations_m_s2": (lambda *_: (0.0, 0.0, 0.0), ABOARD),
    "lashing.css_forces.length_speed_factor": (lambda *_: 0.01, ABOARD),
    "lashing.css_forces.b_over_gm_factor": (
        lambda *_: 1.0, load(four(AT, OUT, 2500.0), **(SHIP | {"ship_b_over_gm": 7.0}))
    ),
    "lashing.css_forces.ship_forces": (lambda *_: ShipForces(0.1, 0.1, 0.1), ABOARD),
    "lashing.css_forces.ship_demand": (lambda _f, _m, direction: little(direction), ABOARD),
    "lashing.demands.demand": (lambda _r, _t, direction, *_: little(direction), WEAK),
    "lashing.demands.van_demand": (
        lambda _t, direction: little(direction), load([], load_friction=0.6, vehicle=vehicle(gross_t=2.0))
    ),
    "lashing.direct.direct_legs": (strong_pulls, WEAK),
    "lashing.direct.tie_down_strands": (
        lambda where, *_: tuple(Strand(at, anchor, HUGE, HUGE) for at, anchor in where), TIED
    ),
    "lashing.friction.friction": (
        lambda *_: 1.0,
        load([], load_friction=None, load_pair=Pair.BARE_METAL_ON_WOOD, load_surface=Surface.OILY),
    ),
    "lashing.holding.held": (firm, WEAK),
    "lashing.holding.pulls_at_need_dan": (lambda run, _: tuple(0.0 for _ in run.pulls_dan), JUST),
    "lashing.label.labelled_lc_dan": (lambda *_, **__: HUGE, WEAK),
    "lashing.label.weakest_dan": (lambda *_: HUGE, load(four(AT, OUT, 2500.0, held_dan=100.0, anchor_dan=2000.0))),
    "lashing.label.measured_tension_dan": (lambda *_: HUGE, load([tie_down((0.0, 0.7, 1.0), (0.0, 0.8, 0.0), 300.0)])),
    "lashing.label.tie_down_tension_dan": (lambda *_, **__: HUGE, TIED),
    "lashing.pallet.strap_on_pallet_dan": (
        lambda *_: HUGE,
        on_a_pallet(four(AT, (0.55, 0.38, 0.0), 2500.0, to_body=Body.PALLET, passes=Passes.THROUGH_PALLET),
                    pallet=pallet(boards_dan=100.0)),
    ),
    "lashing.transport.sea_area": (
        lambda *_: Transport.SEA_A, load([], route=Route.SEA, waters=Waters.OPEN_OCEAN, cg_z_m=0.8)
    ),
    "lashing.lashed_body.lashed_body": (low, TALL),
    "lashing.prepared.prepared": (low_prepared, TALL),
    "lashing.slide_3d.slides_at": (lambda *_, **__: Withstood(HUGE, HUGE, ()), JUST),
    "lashing.tip_3d.tips_at": (lambda *_: Withstood(HUGE, HUGE, ()), TALL),
    "lashing.friction.measured_friction": (lambda *_: 1.0, WEAK),
}


def decision(task: Task) -> tuple[Any, ...]:
    """What is told of holding: each verdict, and how much is pulled at which angle."""
    ev = nominal(task)
    told = [(each.name, each.verdict) for each in ev.checks if each.quantity in CHECKS]
    assert told and all(verdict is not Verdict.WAITING for _, verdict in told)
    rows = ev.plan.rows("lashing")
    return told, [(str(ev[f"lashing_pull_dan[{row}]"]), str(ev[f"to_deck_deg[{row}]"])) for row in rows]


def test_every_clause_behind_the_holding_of_a_load_has_its_case() -> None:
    assert called(MODULES) == {*CASES}


@pytest.mark.parametrize("name", CASES)
def test_a_clause_that_says_the_best_it_could_is_noticed(name: str, monkeypatch: pytest.MonkeyPatch) -> None:
    best, task = CASES[name]
    before = decision(task)
    module, _, function = name.rpartition(".")
    monkeypatch.setattr(importlib.import_module(f"checklist_app.mechanics.{module}"), function, best)
    assert decision(task) != before
