"""How the load of an assessment is slung, and what follows from it: rows of legs and hooks, how the eyes are given."""
from collections.abc import Mapping

from checklist_app.checklists.procedure import newest
from checklist_app.operations.straight_lift.choices import EyesGiven, LegsGiven, Rig

OPERATION = "straight_lift"
RIG, LEGS_GIVEN = "rig", "legs_given"
EYES = {
    Rig.ONE_LEG: EyesGiven.COORDINATES, Rig.TWO_LEGS: EyesGiven.DISTANCE, Rig.THREE_LEGS: EyesGiven.COORDINATES,
    Rig.FOUR_LEGS: EyesGiven.RECTANGLE, Rig.TWO_HOOKS: EyesGiven.DISTANCE, Rig.RUNNING: EyesGiven.DISTANCE,
}
WITH_LEGS_GIVEN = (Rig.TWO_LEGS, Rig.THREE_LEGS, Rig.FOUR_LEGS)


def rig_of(typed: Mapping[str, str]) -> Rig:
    """What was chosen; the page shows two legs as chosen until another answer is."""
    return next((rig for rig in Rig if rig.value == typed.get(RIG, "")), Rig.TWO_LEGS)


def legs_given_of(typed: Mapping[str, str]) -> LegsGiven:
    """How the legs are given, for a rig that asks it; the page shows lengths as chosen until another answer is."""
    if rig_of(typed) not in WITH_LEGS_GIVEN:
        return LegsGiven.LENGTHS
    return next((way for way in LegsGiven if way.value == typed.get(LEGS_GIVEN, "")), LegsGiven.LENGTHS)


def leg_rows(rig: Rig) -> tuple[str, ...]:
    """Ids of the legs, the one first that stands for all."""
    return newest(OPERATION).follows["leg"].rows[rig.value]


def hook_rows(rig: Rig) -> tuple[str, ...]:
    """Ids of the hooks where there are several; one hook is no row."""
    return newest(OPERATION).follows["hook"].rows.get(rig.value, ())


def refitted(typed: Mapping[str, str]) -> dict[str, str]:
    """What was typed for the first leg of another rig, as typed for the first leg of this one.

    Example:
        >>> refitted({"rig": "four legs on one hook", "leg/1-left/hitch": "straight"})["leg/1-left_front/hitch"]
        'straight'
    """
    first = leg_rows(rig_of(typed))[0]
    found: dict[str, str] = {}
    for name, text in typed.items():
        group, _, rest = name.partition("/")
        row, _, prompt = rest.partition("/")
        moved = group == "leg" and row.startswith("1-") and row != first
        found.setdefault(f"leg/{first}/{prompt}" if moved else name, text)
    return found
