"""By hand: `python -m tests.bench.bench_evaluate`. Table, plan, run, nominal, with spread, working; medians in ms."""

import importlib
import statistics
import time
from collections.abc import Callable
from functools import partial
from typing import Any

from checklist_app.operations import straight_lift
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.evaluate import assess
from checklist_app.operations.inline import from_json
from checklist_app.operations.loop import run
from checklist_app.operations.plan import Plan
from checklist_app.operations.report import report
from checklist_app.operations.table import Table
from checklist_app.operations.working import working
from tests.operations.some_lifts import some_lifts

MODULES = ("entries", "geometry", "statics", "clearance", "checks", "gear_states", "lift_class", "picture")


def median_ms(work: Callable[[], Any], times: int = 15) -> float:
    """Median duration of some runs."""
    def once() -> float:
        start = time.perf_counter()
        work()
        return (time.perf_counter() - start) * 1000.0

    return statistics.median(once() for _ in range(times))


def main() -> None:
    """Print one line a figure."""
    operation = OPERATIONS["straight_lift"]
    table, task = operation.table, from_json(operation.table, operation.example)
    plan, ev = Plan(table, task), assess(table, task)
    modules = [importlib.import_module(f"{straight_lift.__name__}.{name}") for name in MODULES]
    print(f"steps {len(plan.steps)}, uncertain entries {len(plan.variables)}, checks {len(ev.checks)}")
    for words, work in {
        "table, once at import": lambda: Table(*modules),
        "plan": lambda: Plan(table, task),
        "run": lambda: run(plan.steps, plan.start.copy(), dict(plan.stopped)),
        "assess, nominal": lambda: assess(table, task, with_spread=False),
        "assess, with spread": lambda: assess(table, task),
        "working of one check": lambda: working(ev, "sling_strength[left]"),
        "report with all working": lambda: report(operation, ev),
    }.items():
        print(f"{words:26} {median_ms(work):8.2f} ms")
    each = [median_ms(partial(assess, table, lift), 1) for lift in some_lifts(30, seed=1)]
    print(f"30 lifts with spread        median {statistics.median(each):.1f} ms, longest {max(each):.1f} ms")


if __name__ == "__main__":
    main()
