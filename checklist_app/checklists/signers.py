"""Who may sign a hold point now, and as what."""
from collections.abc import Mapping
from dataclasses import dataclass

from checklist_app.checklists import scope
from checklist_app.checklists.answer import Person
from checklist_app.checklists.authority import valid_on
from checklist_app.checklists.classes import Signature, still_needed
from checklist_app.checklists.entry import Path
from checklist_app.checklists.holds import HoldState
from checklist_app.checklists.naming import prompt_words
from checklist_app.checklists.refusals import asked
from checklist_app.checklists.running import Running
from checklist_app.checklists.words import day, listed
from checklist_app.mechanics.lift_class import LiftClass

RIGGER = "rigger"
AUDITOR = "auditor"
FEW = 3


@dataclass(frozen=True)
class MaySign:
    """The capacity in which somebody may sign now, and its last day; `own_work`: he rigged this lift himself."""

    capacity: str
    until: str
    own_work: bool


class MayNot(ValueError):
    """Why this person does not sign here, and who does."""


def riggers(running: Running, state: HoldState) -> Mapping[str, tuple[Path, ...]]:
    """Who gave the answers that bind: each is the rigger of this lift."""
    return scope.authors(running.folded, state.seen.inputs)


def may_sign(running: Running, state: HoldState, person: Person, today: str) -> MaySign:
    """As what this person signs.

    Raises:
        MayNot: If he does not, with the reason.
    """
    name = person.name
    if person.role == AUDITOR:
        raise MayNot(f"{name} reads records and signs nothing.")
    if state.hold.guest:
        raise MayNot(f"Here the {state.hold.guest} signs, as a guest.")
    if any(each.entry.author == person.id for each in state.standing):
        raise MayNot(f"{name} has signed here already. One person gives one signature.")
    places = _places(state)
    if not places:
        raise MayNot("Every signature is there.")
    own = riggers(running, state).get(person.id, ())
    if own and not any(place.rigger_may for place in places):
        raise MayNot(_rigged(running, name, own))
    if own and (unseen := unsettled(running, state)):
        raise MayNot(f"{listed(unseen[:FEW])}: a supervisor who did not rig it signs.")

    return _capacity(places, name, person.capacities, today, bool(own))


def unsettled(running: Running, state: HoldState) -> tuple[str, ...]:
    """Ticks in scope that were answered *no* or *I cannot see it*: another person looks before anybody signs."""
    found = []
    for place in asked(running, state.hold):
        value = running.folded.values.get(place.path)
        if value is not None and value["type"] == "tick" and value["text"] != "yes":
            answer = "no" if value["text"] == "no" else "could not be seen"
            found.append(f"{prompt_words(running.procedure, place.path)}: {answer}")
    return tuple(found)


def _places(state: HoldState) -> tuple[Signature, ...]:
    """What is missing by the class as it is now; standing signatures fill their places."""
    if state.lift_class is None:
        return state.missing
    signed = [(each.entry.author, each.capacity) for each in state.standing]
    return still_needed(state.lift_class, signed)


def _capacity(places: tuple[Signature, ...], name: str, held: Mapping[str, str], today: str, own: bool) -> MaySign:
    wanted = [capacity for place in places for capacity in place.capacities]
    wanted.sort(key=lambda capacity: (capacity == RIGGER) is not own)
    for capacity in wanted:
        if valid_on(held, capacity, today):
            return MaySign(capacity, held[capacity], own)
    run_out = next((capacity for capacity in wanted if capacity in held), None)
    if run_out is not None:
        raise MayNot(f"{name} was {run_out} until {day(held[run_out])}. The register must be renewed first.")
    raise MayNot(f"{name} is not {' or '.join(f'a {capacity}' for capacity in wanted)}. "
                 f"Here {listed([place.words for place in places])} signs.")


def _rigged(running: Running, name: str, own: tuple[Path, ...]) -> str:
    said = [prompt_words(running.procedure, path) for path in own]
    more = f" and {len(said) - FEW} more" if len(said) > FEW else ""
    return f"{name} answered {', '.join(said[:FEW])}{more}. Another person signs."


def meaning(state: HoldState, lift_class: LiftClass) -> str:
    """What a signature says, printed beside it: the hold's own words, and whose work it may be."""
    said = "I rigged it, or I looked at it myself." if lift_class is LiftClass.ROUTINE else "I am not the rigger."
    return f"{state.hold.meaning} {said}"
