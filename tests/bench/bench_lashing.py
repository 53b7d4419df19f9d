"""By hand: `python -m tests.bench.bench_lashing`. Eight lashings under six rule sets; medians in ms of processor time.

Beside it in the same run: the formulas of the same runs as bare numpy, which knows of no turning and no sharing, and
one linear programme of one run by scipy.
"""

import statistics
import time
from collections.abc import Callable
from typing import Any

import numpy as np

from checklist_app.mechanics.lashing.css_balance import Make, calculated_strength_kn, msl_kn
from checklist_app.mechanics.lashing.css_forces import (
    Level,
    accelerations_m_s2,
    b_over_gm_factor,
    length_speed_factor,
    ship_demand,
    ship_forces,
)
from checklist_app.mechanics.lashing.demands import Demand, TiltRule, demand
from checklist_app.mechanics.lashing.holding import Held, Ways, held
from checklist_app.mechanics.lashing.lashed_body import Block, LashedBody, Pull, Stands, Strand, Stretch, lashed_body
from checklist_app.mechanics.lashing.prepared import prepared
from checklist_app.mechanics.lashing.rule_sets import RULES, RuleSet, weight_dan
from checklist_app.mechanics.lashing.transport import Direction, Transport
from checklist_app.mechanics.vectors import Vec
from tests.mechanics.lashing.arranged import REAR, corners
from tests.mechanics.lashing.programme import Programme, Run

MASS_KG, FRICTION, BREAKING_KN = 1200.0, 0.3, 50.0
LC_DAN = BREAKING_KN * 100.0 / 2.0
STRENGTHS_DAN = {
    RuleSet.CSS: 100.0 * calculated_strength_kn(msl_kn(Make.WEB, BREAKING_KN), in_space=True), RuleSet.US: 0.9 * LC_DAN,
}


def fullest(rule_set: RuleSet, off_m: float) -> LashedBody:
    """Four tie-downs, four diagonals and a block; `off_m` is how far the centre of gravity lies off the middle."""
    strands = [
        Strand(Vec(x, s * 0.30, 1.3), Vec(x, s * 1.2, 0.0), 350.0, 1250.0)
        for x in (0.4, 0.15, -0.15, -0.4) for s in (1.0, -1.0)
    ]
    most_dan = STRENGTHS_DAN.get(rule_set, LC_DAN)
    pulls = [
        Pull(Vec(sx * 0.5, sy * 0.3, 1.2), Vec(sx * 1.7, sy * 1.0, 0.0), most_dan, Stretch.WEB)
        for sx in (1.0, -1.0) for sy in (1.0, -1.0)
    ]
    block = Block(Vec(0.6, 0.0, 0.15), REAR, 1500.0)
    return lashed_body(weight_dan(rule_set, MASS_KG), Vec(off_m, off_m / 2.0, 0.85), corners(0.6, 0.35), Stands.FEET,
                       pulls, strands, [block])


def asked(rule_set: RuleSet, direction: Direction) -> Demand:
    """By road; on a ship of 120 m at 15 kn by Annex 13."""
    if rule_set is not RuleSet.CSS:
        return demand(rule_set, Transport.ROAD, direction, True, TiltRule.PAIRS)
    forces = ship_forces(MASS_KG / 1000.0, accelerations_m_s2(Level.DECK_LOW, 0.7), length_speed_factor(120.0, 15.0),
                         b_over_gm_factor(Level.DECK_LOW, 12.0), 1.0, 2.0, 1.0, 2.0)
    return ship_demand(forces, MASS_KG / 1000.0, direction)


def all_rule_sets(off_m: float) -> list[Held]:
    """Four directions of six rule sets, now and settled; bodies that are equal are made ready once."""
    ready: dict[LashedBody, Ways] = {}
    runs: list[Held] = []
    for rule_set in RuleSet:
        body = fullest(rule_set, off_m)
        ways = ready.setdefault(body, Ways(prepared(body)))
        for direction in Direction:
            runs += held(rule_set, ways, asked(rule_set, direction), FRICTION)
    return runs


def bare_numpy(off_m: float) -> list[float]:
    """Sliding and tipping by the formulas alone."""
    found = []
    for rule_set in RuleSet:
        body, rules = fullest(rule_set, off_m), RULES[rule_set]
        at, to = (np.array([[*getattr(p, n)] for p in body.pulls]) for n in ("at", "anchor"))
        u = (to - at) / np.linalg.norm(to - at, axis=1)[:, None]
        sat, sto = (np.array([[*getattr(s, n)] for s in body.strands]) for n in ("at", "anchor"))
        su = (sto - sat) / np.linalg.norm(sto - sat, axis=1)[:, None]
        for direction in Direction:
            of_it, way = asked(rule_set, direction), np.array(direction.way)
            share = rules.tie_downs_count / of_it.fs
            pressed = -su[:, 2].sum() * 350.0 * share / body.weight_dan
            against = -(u @ way)
            most = body.pulls[0].most_dan / body.weight_dan
            for slide in of_it.slides:
                mu = FRICTION * rules.direct_friction_share
                pulled = (most * (against - mu * u[:, 2]) * (against > 0)).sum()
                alone, together = (each * (slide.downward + pressed) for each in (FRICTION, mu))
                found.append(max(alone, together + pulled) / slide.push)
            edge = np.array(body.base)[np.argmax(np.array(body.base) @ way)]
            moments = np.maximum(0.0, against * at[:, 2] - u[:, 2] * ((edge - at) @ way)).sum() * most
            for tip in of_it.tips:
                inside = (edge - np.array(body.cg)) @ way
                straps = (-su[:, 2] * ((edge - sto) @ way)).sum() * 350.0 * share / body.weight_dan
                found.append((tip.downward * inside + straps + moments) / (tip.push * body.cg.z))
    return found


def median_ms(work: Callable[[], Any], times: int = 25) -> float:
    """Median of the processor time of some runs."""
    def once() -> float:
        start = time.process_time()
        work()
        return (time.process_time() - start) * 1000.0

    return statistics.median(once() for _ in range(times))


def main() -> None:
    """Print one line a figure."""
    for off_m in (0.0, 0.04):
        runs = all_rule_sets(off_m)
        turned = len([run for run in runs if run.have < run.formula - 1e-9])
        print(f"centre of gravity {100.0 * off_m:.0f} cm off: {len(runs)} runs, {turned} below their formula")
        print(f"  in space, now and settled   {median_ms(lambda off=off_m: all_rule_sets(off)):8.2f} ms")
        print(f"  formulas in bare numpy      {median_ms(lambda off=off_m: bare_numpy(off)):8.2f} ms")
        one = Programme(Run(fullest(RuleSet.EN, off_m), Direction.LEFT.way, 1.0, FRICTION, 1.0 / 1.1))
        print(f"  one run by scipy's linprog  {median_ms(lambda p=one: p.sliding(FRICTION), 5):8.2f} ms")


if __name__ == "__main__":
    main()
