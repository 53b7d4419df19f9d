"""How low the centre of gravity would have to lie that the load stands by itself on the whole way: lay it flat."""

from checklist_app.mechanics.lashing.changes import cg_must_be_below_m
from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.graph import Stopped
from checklist_app.operations.lashing.change import plain
from checklist_app.operations.task import Key


def stands_below_m(evaluation: Evaluation) -> float | None:
    """The least height over all directions and all that the rules ask there.

    Args:
        evaluation: of a task of an operation that lashes.

    Returns:
        Height of the centre of gravity over the feet, to stay below [m]; None where that is not known, or where the
        load stands by itself already.
    """
    cg = [plain(evaluation.task.answers.get(Key(f"cg_{axis}_m"))) for axis in "xyz"]
    halves = [evaluation[name] for name in ("half_length_m", "half_width_m")]
    if any(each is None for each in cg) or any(isinstance(each, Stopped) for each in halves):
        return None
    below: list[float] = []
    for direction in Direction:
        asked = evaluation[f"asked[{direction.value}]"]
        axis = 1 if direction.is_sideways else 0
        edge_m = halves[axis] - abs(cg[axis] or 0.0)
        if isinstance(asked, Stopped) or not edge_m > 0.0:
            return None
        below += [cg_must_be_below_m(tip.push, tip.downward, edge_m) for each in asked.tips for tip in each.asked.tips]
    least = min(below)

    return least if (cg[2] or 0.0) >= least else None
