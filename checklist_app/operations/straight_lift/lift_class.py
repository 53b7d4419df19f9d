"""How the lift is planned and who must sign; at least what is reached while anything still waits."""

from checklist_app.mechanics import lift_class as classes
from checklist_app.mechanics.lift_class import LiftClass
from checklist_app.operations.check import Check, Strength, highest_utilisation

IN_ORDER = tuple(LiftClass)


def lift_class(checks: tuple[Check, ...]) -> LiftClass:
    """By the worst utilisation of all strength checks, and by how well mass and centre of gravity are known."""
    by_use = classes.class_by_utilisation(max((highest_utilisation(check) for check in checks), default=0.0))
    by_knowledge = classes.class_by_knowledge(_mass_may_be_higher(checks), cg_is_known=not _unknown(checks))

    return max(by_use, by_knowledge, key=IN_ORDER.index)


def _mass_may_be_higher(checks: tuple[Check, ...]) -> float:
    """What hangs on the hook at its worst, as a share of what was stated; 1 while it is not known."""
    hoist = next((check for check in checks if check.quantity == "hoist_strength"), None)
    if hoist is None or not (isinstance(hoist.outcome, Strength) and isinstance(hoist.worst, Strength)):
        return 1.0

    return hoist.worst.demand / hoist.outcome.demand if hoist.outcome.demand > 0.0 else 1.0


def _unknown(checks: tuple[Check, ...]) -> bool:
    return any(name.startswith("cg_") for check in checks for name in check.unknown)
