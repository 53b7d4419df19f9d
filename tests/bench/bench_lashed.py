"""By hand: `python -m tests.bench.bench_lashed`. A load on eight lashings, one rule set, with spread; process time.

On the deck itself, and on a pallet with its second face: how often a body is made ready and a run worked out.
"""

import statistics
import time
from collections import Counter
from typing import Any
from unittest.mock import patch

from checklist_app.mechanics.lashing import holding, prepared
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.task import Measured, Task
from tests.operations.lashing.loads import ON_VEHICLE, Row, four, load, on_a_pallet, tie_down

SPREAD: Row = {
    "mass_kg": Measured(1200.0, "plate"), "cg_x_m": Measured(0.04, "trial"), "cg_y_m": Measured(0.02, "trial"),
    "cg_z_m": Measured(0.85, "trial"), "base_length_m": Measured(1.0, "tape"), "base_width_m": Measured(0.7, "tape"),
    "load_friction": Measured(0.3, "measured"), "deck_friction": Measured(0.4, "measured"),
    "ends_off_m": Measured(0.0, plus_minus=0.01),
}
EIGHT = [
    *(tie_down((x, 0.30, 1.3), (x, 1.0, 0.0)) for x in (0.4, 0.15, -0.15, -0.4)),
    *four((0.5, 0.3, 1.2), (1.7, 1.0, 0.0), 2500.0),
]


def median_ms(task: Task, with_spread: bool, times: int = 5) -> float:
    """Median process time of some runs."""
    def once() -> float:
        start = time.process_time()
        assess(ON_VEHICLE, task, with_spread)
        return (time.process_time() - start) * 1000.0

    return statistics.median(once() for _ in range(times))


def counted(task: Task) -> tuple[Counter[str], Evaluation]:
    """How often the costly parts are called in one assessment."""
    found: Counter[str] = Counter()

    def counting(name: str, real: Any) -> Any:
        def call(*args: Any, **more: Any) -> Any:
            found[name] += 1
            return real(*args, **more)
        return call

    with patch.object(prepared, "prepared", counting("bodies", prepared.prepared)), \
            patch.object(holding, "held", counting("runs", holding.held)):
        ev = assess(ON_VEHICLE, task)
    return found, ev


def main() -> None:
    """Print one line a figure."""
    for words, task in {"on the deck": load(EIGHT, **SPREAD), "on a pallet": on_a_pallet(EIGHT, **SPREAD)}.items():
        found, ev = counted(task)
        print(f"{words}: steps {len(ev.plan.steps)}, uncertain entries {len(ev.plan.variables)}, "
              f"checks {len(ev.checks)}, bodies {found['bodies']}, runs {found['runs']}")
        print(f"    nominal {median_ms(task, False):8.1f} ms\n    with spread {median_ms(task, True):8.1f} ms")


if __name__ == "__main__":
    main()
