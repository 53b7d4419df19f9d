"""How a lashing is planned and who must sign; at least what is reached while anything still waits."""

from checklist_app.mechanics import lift_class as classes
from checklist_app.mechanics.lift_class import LiftClass
from checklist_app.operations.check import Check, Strength, highest_utilisation

IN_ORDER = tuple(LiftClass)
BY_MASS = ("pallet_strength", "payload", "sliding", "deck_sliding")


def lashing_class(checks: tuple[Check, ...], least_class: LiftClass) -> LiftClass:
    """By the worst utilisation of all strength checks, by how well the load is known, never below the operation's."""
    by_use = classes.class_by_utilisation(max((highest_utilisation(check) for check in checks), default=0.0))
    by_knowledge = classes.class_by_knowledge(_mass_may_be_higher(checks), cg_is_known=not _unknown(checks))

    return max(by_use, by_knowledge, least_class, key=IN_ORDER.index)


def _mass_may_be_higher(checks: tuple[Check, ...]) -> float:
    """The load at its worst, as a share of what was stated: by the checks whose demand is its mass; at least 1."""
    highest = 1.0
    for check in checks:
        if check.quantity not in BY_MASS:
            continue
        nominal, worst = check.outcome, check.worst
        if isinstance(nominal, Strength) and isinstance(worst, Strength) and nominal.demand > 0.0:
            highest = max(highest, worst.demand / nominal.demand)

    return highest


def _unknown(checks: tuple[Check, ...]) -> bool:
    return any(name.startswith("cg_") for check in checks for name in check.unknown)
