"""By hand: `python -m tests.bench.bench_evaluate`. Table, plan, run, nominal, with spread, working; medians in ms.

Beside it, in the same run, a bare numpy and scipy statement of the same statics on four legs: the attitude by
minimising energy, the pulls by linear programmes, no words, no checks, no drawing. Times are process time.
"""

import statistics
import time
from collections.abc import Callable
from functools import partial
from typing import Any

import numpy as np
from scipy.optimize import linprog, minimize

from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.inline import from_json
from checklist_app.operations.loop import run
from checklist_app.operations.plan import Plan
from checklist_app.operations.report import report
from checklist_app.operations.straight_lift import MODULES
from checklist_app.operations.table import Table
from checklist_app.operations.task import Task
from checklist_app.operations.working import working
from tests.operations.more_examples import FOUR_LEGS, TWO_HOOKS
from tests.operations.rigged_lifts import some_rigged_lifts
from tests.operations.some_lifts import some_lifts
from tests.operations.straight_lift.rigged import CORNERS

OPERATION = OPERATIONS["straight_lift"]
TABLE = OPERATION.table


def median_ms(work: Callable[[], Any], times: int = 15) -> float:
    """Median process time of some runs."""
    def once() -> float:
        start = time.process_time()
        work()
        return (time.process_time() - start) * 1000.0

    return statistics.median(once() for _ in range(times))


def bare(ev: Evaluation) -> float:
    """The same statics of four legs, bare: where the hook is, and the most that each leg can pull."""
    eyes = np.array([ev[f"eye_at[{label}]"] for label in CORNERS])
    longs = np.array([ev[f"leg_m[{label}]"] for label in CORNERS])
    cg = np.array([ev[f"cg_{axis}_m"] for axis in "xyz"])
    hook = minimize(
        lambda at: -float(np.linalg.norm(at - cg)), eyes.mean(axis=0) + np.array([0.0, 0.0, longs.min()]),
        method="SLSQP", constraints=[{"type": "ineq", "fun": lambda at: longs - np.linalg.norm(at - eyes, axis=1)}],
    ).x
    ways = (hook - eyes) / np.linalg.norm(hook - eyes, axis=1)[:, None]
    up = (hook - cg) / np.linalg.norm(hook - cg)
    aims = -np.eye(4)
    return max(-linprog(aim, A_eq=ways.T, b_eq=up, bounds=[(0, None)] * 4).fun for aim in aims)


def of_one(words: str, task: Task) -> None:
    """What one lift costs, piece by piece."""
    plan, ev = Plan(TABLE, task), assess(TABLE, task)
    print(f"{words}: steps {len(plan.steps)}, uncertain entries {len(plan.variables)}, checks {len(ev.checks)}")
    for what, work in {
        "plan": lambda: Plan(TABLE, task),
        "run": lambda: run(plan.steps, plan.start.copy(), dict(plan.stopped)),
        "assess, nominal": lambda: assess(TABLE, task, with_spread=False),
        "assess, with spread": lambda: assess(TABLE, task),
        "report with all working": lambda: report(OPERATION, ev),
    }.items():
        print(f"    {what:24} {median_ms(work, 5 if 'spread' in what else 15):8.2f} ms")
    label = ev.plan.rows("leg")[0]
    print(f"    {'working of one check':24} {median_ms(lambda: working(ev, f'sling_strength[{label}]')):8.2f} ms")


def of_many(words: str, tasks: list[Task]) -> None:
    """Many lifts, each once."""
    each = [median_ms(partial(assess, TABLE, task), 1) for task in tasks]
    print(f"{words}: with spread median {statistics.median(each):.0f} ms, longest {max(each):.0f} ms")


def main() -> None:
    """Print one line a figure."""
    print(f"table, once at import {median_ms(lambda: Table(*MODULES), 5):8.2f} ms")
    four = from_json(TABLE, FOUR_LEGS)
    nominal = assess(TABLE, four, with_spread=False)
    print(f"bare statics of four legs, numpy and scipy {median_ms(lambda: bare(nominal)):8.2f} ms")
    of_one("two legs", from_json(TABLE, OPERATION.example))
    of_one("four legs, fullest", four)
    of_one("two hooks", from_json(TABLE, TWO_HOOKS))
    of_many("30 lifts on two legs", some_lifts(30, seed=1))
    of_many("30 lifts on three or four legs or two hooks", some_rigged_lifts(30, seed=1))


if __name__ == "__main__":
    main()
