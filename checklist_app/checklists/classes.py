"""Who must sign: it follows from the class of the lift."""
from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from checklist_app.mechanics.lift_class import LiftClass


@dataclass(frozen=True)
class Signature:
    """One signature that a class asks for: the capacities that will do, and whether the rigger himself may give it."""

    capacities: tuple[str, ...]
    rigger_may: bool

    @property
    def words(self) -> str:
        """As it is said on screen: "a supervisor, not the rigger"."""
        who = " or ".join(f"a {capacity}" for capacity in self.capacities)
        return who if self.rigger_may else f"{who}, not the rigger"


NEEDED: Mapping[LiftClass, tuple[Signature, ...]] = {
    LiftClass.ROUTINE: (Signature(("rigger", "supervisor"), rigger_may=True),),
    LiftClass.NON_ROUTINE: (Signature(("supervisor",), rigger_may=False),),
    LiftClass.COMPLEX: (Signature(("planner",), rigger_may=False), Signature(("supervisor",), rigger_may=False)),
}


def needed_words(lift_class: LiftClass) -> str:
    """The sentence that stands at a hold point."""
    needed = NEEDED[lift_class]
    if lift_class is LiftClass.ROUTINE:
        return "Routine: the rigger signs in his own name, or a supervisor signs."
    if len(needed) == 1:
        return "Non-routine: a supervisor signs. It must not be the rigger."
    return "Complex: a planner and a supervisor sign. Two persons, neither of them the rigger."


def still_needed(lift_class: LiftClass, signed: Iterable[tuple[str, str]]) -> tuple[Signature, ...]:
    """The signatures that are missing, given who signed in which capacity. One person never fills two places."""
    places = list(NEEDED[lift_class])
    return _left(places, sorted(set(signed)))


def _left(places: list[Signature], signed: list[tuple[str, str]]) -> tuple[Signature, ...]:
    """Fill the first place by each who fits it, in turn, and keep the best: there are two places at most."""
    if not places:
        return ()
    first, rest = places[0], places[1:]
    best = (first, *_left(rest, signed))
    for person, capacity in signed:
        if capacity in first.capacities:
            left = _left(rest, [other for other in signed if other[0] != person])
            best = min(best, left, key=len)
    return best
