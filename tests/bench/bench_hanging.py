"""By hand: one load on slings in space, each call of the engineering floor against numpy and scipy in the same run.

    .venv/bin/python tests/bench/bench_hanging.py

Processor time, so that other work on the machine does not count. The last figures stand in DEVELOPERS.md.
"""

import sys
import time
from collections.abc import Callable
from pathlib import Path

import numpy as np
from scipy.optimize import root

ROOT = Path(__file__).resolve().parents[2]
sys.path.insert(0, str(ROOT))

from checklist_app.mechanics.hanging.body import rigging  # noqa: E402
from checklist_app.mechanics.hanging.bounds import carried_by_opposite_pairs, most_of_any_length  # noqa: E402
from checklist_app.mechanics.hanging.four_bars import bars  # noqa: E402
from checklist_app.mechanics.hanging.margin import faces  # noqa: E402
from checklist_app.mechanics.hanging.settling import settled  # noqa: E402
from checklist_app.mechanics.hanging.sharing import shared_by_stiffness  # noqa: E402
from checklist_app.mechanics.hanging.two_hooks import hung_from_two_hooks  # noqa: E402
from checklist_app.mechanics.vectors import Vec  # noqa: E402

ROUNDS = 500
STIFF = 100.0  # times the load, per metre
PICKS = [Vec(0.6, 0.4, 0.0), Vec(0.6, -0.4, 0.0), Vec(-0.6, -0.4, 0.0), Vec(-0.6, 0.4, 0.0)]
UNLIKE = [1.505, 1.5, 1.49, 1.5]
CG = Vec(0.1, -0.05, -0.3)


def main() -> None:
    what = rigging(PICKS, UNLIKE, CG)
    hang, chain = settled(what), bars(1.0, 0.65, 0.4, (1.5, 1.5), (0.4, 0.0), (1.0, 0.0))
    told("four legs that do not stretch: attitude", lambda: settled(what))
    told("four legs by stiffness: attitude and pulls", lambda: shared_by_stiffness(what, 1.0, [STIFF] * 4))
    told("   the same by scipy's root on numpy, begun at the answer", bare)
    told("most of any length", lambda: most_of_any_length(hang))
    told("opposite pairs", lambda: carried_by_opposite_pairs(hang))
    told("faces and their margins", lambda: faces(hang, range(4)))
    told("two hooks", lambda: hung_from_two_hooks(chain))


def bare() -> np.ndarray:
    """Balance of the hook in the load, stated as plainly as numpy allows."""
    picks, legs, cg = np.array(PICKS), np.array(UNLIKE), np.array(CG)

    def rest(hook: np.ndarray) -> np.ndarray:
        ways, way = hook - picks, hook - cg
        far = np.linalg.norm(ways, axis=1)
        return np.asarray((STIFF * np.maximum(0.0, far - legs) / far) @ ways - way / np.linalg.norm(way))

    return np.asarray(root(rest, HOOK, tol=1e-10).x)


def told(name: str, call: Callable[[], object]) -> None:
    start = time.process_time()
    for _ in range(ROUNDS):
        call()
    print(f"{name}: {(time.process_time() - start) / ROUNDS * 1e6:.0f} µs")


HOOK = np.array(shared_by_stiffness(rigging(PICKS, UNLIKE, CG), 1.0, [STIFF] * 4).hook)

if __name__ == "__main__":
    main()
