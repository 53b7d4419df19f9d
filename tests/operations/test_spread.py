"""No sample of what is uncertain is worse than the worst that is reported."""

import math
import os
import random
from typing import Any

import pytest

from checklist_app.operations.check import Check, Limit, Strength, Verdict, utilisation
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.graph import DontKnow, NotApplicable, Range, Stopped, Waits
from checklist_app.operations.loop import run
from checklist_app.operations.places import ancestors, feeds
from checklist_app.operations.task import Key, Measured, Task, key_of
from tests.operations.rigged_lifts import some_rigged_lifts
from tests.operations.some_lifts import some_lifts
from tests.operations.straight_lift.lifts import TABLE, lift
from tests.operations.toy import table

ENDS = 0.85
SHARE_MISSED = 0.02


def measure(outcome: Any) -> float:
    """How bad, as one number: infinite for a refusal, which must have been found."""
    if isinstance(outcome, Stopped):
        return -math.inf if isinstance(outcome, NotApplicable) else math.inf
    if isinstance(outcome, Strength):
        return outcome.demand / outcome.capacity
    return outcome.demand - outcome.capacity if isinstance(outcome, Limit) else 0.0


def sampled(ev: Evaluation, count: int, seed: int) -> dict[str, float]:
    """The worst measure of each check over samples that lie mostly at the ends of the spreads."""
    draw, plan = random.Random(seed), ev.plan
    bits = feeds(plan)
    slots = {check.name: plan.slots[key_of(check.name)] for check in ev.checks if check.drivers or check.unknown}
    steps = [step for step in ancestors(plan, slots.values()) if step.out in bits]
    clear = {slot: why for slot, why in ev.halted.items() if slot not in bits}
    lead = dict.fromkeys(slots, -math.inf)
    for _ in range(count):
        values, halted = ev.values.copy(), clear.copy()
        for variable in plan.variables:
            low, _nominal, high = variable.levels
            values[variable.slot] = draw.choice((low, high)) if draw.random() < ENDS else draw.uniform(low, high)
        run(steps, values, halted)
        for name, slot in slots.items():
            lead[name] = max(lead[name], measure(halted.get(slot, values[slot])))
    return lead


def missed(ev: Evaluation, count: int, seed: int) -> list[str]:
    """Checks of which a sample is worse than their worst by more than 2 % of the spread's effect."""
    found = []
    for name, lead in sampled(ev, count, seed).items():
        check = ev.check(name)
        if isinstance(check.outcome, Stopped) or isinstance(check.worst, Stopped):
            continue
        if lead == math.inf:
            if check.raw_verdict is not Verdict.OVER:
                found.append(f"{name}: a refusal was not found")
            continue
        worst = measure(check.worst)
        effect = max(lead, worst) - measure(check.outcome)
        if lead > worst + SHARE_MISSED * effect + 1e-12:
            found.append(f"{name}: sample {lead:.6g}, reported {worst:.6g}, effect {effect:.3g}")
    return found


def proved(tasks: list[Task], count: int, seed: int) -> None:
    print(f"seed {seed}")
    for number, task in enumerate(tasks):
        ev = assess(TABLE, task)
        assert len(ev.plan.variables) >= 10
        assert not (found := missed(ev, count, seed + number)), f"seed {seed}, lift {number}: {found}"


def test_no_sample_is_worse_than_the_worst_reported() -> None:
    """By another seed: SPREAD_SEED=… (one lift in some hundreds has a check at the edge of a rating's step missed)."""
    seed = int(os.environ.get("SPREAD_SEED", "20261125"))
    proved(some_lifts(20, seed), 1000, seed)


@pytest.mark.long
def test_no_sample_is_worse_in_the_long_run() -> None:
    """By the search before 2026-11-28, on 2026-11-25, seed 20261125: passed in 16 minutes, no check beaten by over 2 %
    of the spread's effect; by the present one 91 lifts × 1,500 samples, as well. The closest misses of a shorter run
    (3,597 checks × 3,000 samples) were 1.1 and 1.6 %, both at the edge of a rating's step and used to 19 and 25 %."""
    proved(some_lifts(200, 20261125), 10_000, seed=20261125)


def test_no_sample_is_worse_on_three_or_four_legs_or_two_hooks() -> None:
    """By another seed: SPREAD_SEED=…"""
    seed = int(os.environ.get("SPREAD_SEED", "20261128"))
    proved(some_rigged_lifts(20, seed), 1000, seed)


@pytest.mark.long
def test_no_sample_is_worse_on_any_rig_in_the_long_run() -> None:
    proved(some_rigged_lifts(200, 20261128), 10_000, seed=20261128)


def at(name: str, task: Task) -> Check:
    return assess(TABLE, task).check(name)


def test_the_contingency_of_the_mass_is_only_its_upper_end() -> None:
    check = at("hoist_strength", lift(mass_kg=Measured(1000.0, "weighed")))
    assert (utilisation(check.outcome), utilisation(check.worst)) == pytest.approx((0.2, 0.206))
    assert check.drivers == ("mass_kg",)


def test_what_matters_most_is_named_first_and_what_does_not_matter_is_not_named() -> None:
    task = lift(mass_kg=Measured(1000.0, plus_minus=1.0), cg_x_m=Measured(0.5, plus_minus=0.2))
    assert at("sling_strength[left]", task).drivers == ("cg_x_m", "mass_kg")
    assert at("leg_angle[left]", task).drivers == ("cg_x_m",)
    assert at("sling_usable[left]", task).drivers == ()


def test_two_entries_that_work_on_each_other_are_moved_together() -> None:
    """Level as entered: legs of ±10 mm and a centre of gravity of ±30 mm tilt it more than either alone."""
    legs = {"leg_length_m": Measured(1.0, plus_minus=0.01)}
    both = at("tilt_along", lift(both=legs, cg_x_m=Measured(0.5, plus_minus=0.03)))
    alone = at("tilt_along", lift(cg_x_m=Measured(0.5, plus_minus=0.03)))
    assert isinstance(both.worst, Limit) and isinstance(alone.worst, Limit) and isinstance(both.outcome, Limit)
    assert both.outcome.demand == 0.0
    assert both.worst.demand > 1.3 * alone.worst.demand


def test_a_refusal_inside_the_spread_cannot_be_assessed_unless_elsewhere_it_is_over() -> None:
    toy = table("""
@check("room", unit="m")
def room(height: float) -> Limit:
    if height > 2.0:
        raise OutOfRangeError("height", height, "up to 2 m", "HOUSE_SETTING")
    return Limit(1.0 - height, 0.5)
""")
    refused = assess(toy, Task({Key("height"): Range(1.0, 1.5, 2.5)})).check("room")
    assert refused.verdict is Verdict.CANNOT and refused.nominal_verdict is Verdict.WITHIN
    over = assess(toy, Task({Key("height"): Range(0.1, 1.5, 2.5)})).check("room")
    assert over.verdict is Verdict.OVER


def test_not_applicable_inside_the_spread_is_passed_over() -> None:
    toy = table("""
@check("room", unit="m")
def room(height: float) -> Limit:
    if height > 2.0:
        raise NotApplicable("not above 2 m")
    return Limit(height, 5.0)
""")
    check = assess(toy, Task({Key("height"): Range(1.0, 1.5, 2.5)})).check("room")
    assert check.verdict is Verdict.WITHIN
    assert isinstance(check.worst, Limit) and 1.9 < check.worst.demand <= 2.0


def test_a_worst_in_the_middle_is_found() -> None:
    toy = table("""
@check("hump", unit="m")
def hump(height: float) -> Limit:
    return Limit(1.0 - abs(height), 5.0)
@check("both", unit="m")
def both(height: float, mass: float) -> Limit:
    return Limit(height * mass, 50.0)
""")
    task = Task({Key("height"): Range(-1.0, 0.0, 1.0), Key("mass"): Range(-7.0, 1.0, 6.0)})
    ev = assess(toy, task)
    assert ev.check("hump").worst == Limit(1.0, 5.0)
    assert ev.check("both").worst == Limit(7.0, 50.0)


def test_whether_a_clause_applies_is_held_as_entered() -> None:
    toy = table("""
@at_nominal
def alike(height: float) -> bool:
    return height < 2.0
@check("pair", unit="m")
def pair(height: float, alike: bool) -> Limit:
    if not alike:
        raise NotApplicable("not alike")
    return Limit(height, 2.5)
""")
    applies = assess(toy, Task({Key("height"): Range(1.0, 1.9, 2.8)})).check("pair")
    assert applies.worst == Limit(2.8, 2.5) and applies.verdict is Verdict.OVER
    never = assess(toy, Task({Key("height"): Range(1.0, 2.1, 2.8)})).check("pair")
    assert never.verdict is Verdict.NOT_APPLICABLE


def test_without_spread_every_number_is_exact_but_dont_know_is_tried() -> None:
    task = lift(mass_kg=Measured(1000.0, "estimate"), cg_z_m=DontKnow())
    ev = assess(TABLE, task, with_spread=False)
    assert ev.check("hoist_strength").worst == ev.check("hoist_strength").outcome
    assert ev.check("stability").verdict is Verdict.OVER
    assert ev.check("stability").drivers == ("cg_z_m",)


def test_a_number_that_nobody_said_how_it_was_obtained_waits() -> None:
    ev = assess(TABLE, lift(mass_kg=Measured(1000.0)))
    waits = ev.check("hoist_strength").outcome
    assert isinstance(waits, Waits) and waits.reasons == ("how mass of the load was obtained",)
    assert waits.reasons[0].key == "mass_kg.how"  # type: ignore[attr-defined]
    assert ev.verdict is Verdict.WAITING
    assert assess(TABLE, lift(mass_kg=Measured(1000.0)), False).check("hoist_strength").verdict is Verdict.WITHIN
