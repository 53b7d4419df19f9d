"""Where a hold point stands: who signed, which signatures are void, what is still missing."""
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.authority import statement_of
from checklist_app.checklists.classes import NEEDED, Signature, needed_words, still_needed
from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.procedure import Hold
from checklist_app.checklists.running import Running
from checklist_app.checklists.statement import Shown, shown
from checklist_app.checklists.void import why_void
from checklist_app.checklists.words import day
from checklist_app.checklists.world import World
from checklist_app.mechanics.lift_class import LiftClass

HOLDS = "holds"
SEND_BACK, GUEST = "send_back", "guest"


@dataclass(frozen=True)
class SignOff:
    """One signature: its entry, the statement it names, and why it no longer covers what is there."""

    entry: Entry
    statement: Mapping[str, Any]
    void: tuple[str, ...]

    @property
    def name(self) -> str:
        """Who signed."""
        return str(self.statement["person"]["name"])

    @property
    def capacity(self) -> str:
        """As what."""
        return str(self.statement["capacity"])

    @property
    def lift_class(self) -> LiftClass:
        """The class of the lift that was signed."""
        return LiftClass(self.statement["lift_class"])


@dataclass(frozen=True)
class HoldState:
    """A hold point as it stands. `seen` is what a signature would cover now."""

    hold: Hold
    seen: Shown
    sign_offs: tuple[SignOff, ...]
    missing: tuple[Signature, ...]
    expired: str
    sent_back: tuple[Entry, ...]
    outdated: int = 0
    """Hands of guests, where a guest is what is asked for, that were given for something else than is there now."""

    @property
    def standing(self) -> tuple[SignOff, ...]:
        """The sign-offs that cover what is there."""
        return tuple(each for each in self.sign_offs if not each.void)

    @property
    def void(self) -> tuple[SignOff, ...]:
        """The sign-offs that no longer do."""
        return tuple(each for each in self.sign_offs if each.void)

    @property
    def signed(self) -> bool:
        """Whether every signature that the class asks for stands."""
        return not self.missing

    @property
    def open(self) -> bool:
        """Whether work may go on past this point today."""
        return self.signed and not self.expired

    @property
    def lift_class(self) -> LiftClass | None:
        """The class as it is now; none while it is not settled."""
        return class_of(self.seen.report)


def hold_states(world: World, running: Running) -> tuple[HoldState, ...]:
    """Every hold point of the procedure, in order."""
    return tuple(hold_state(world, running, hold) for hold in running.procedure.holds)


def hold_state(world: World, running: Running, hold: Hold) -> HoldState:
    """How one hold point stands."""
    seen = shown(world, running, hold)
    found = sign_offs(world, running, seen)
    standing = [each for each in found if not each.void]
    hands = [entry.value["shown"] == seen.fingerprint for entry in heads(running, hold, GUEST)
             if entry.type == GUEST and entry.value["text"] == hold.guest]
    missing = _missing(standing, class_of(seen.report)) if not hold.guest else () if any(hands) else (
        Signature((hold.guest,), rigger_may=True),)
    return HoldState(hold, seen, found, missing, _expired(world, hold, standing),
                     tuple(entry for entry in heads(running, hold, SEND_BACK) if entry.type == SEND_BACK),
                     len(hands) if hands and not any(hands) else 0)


def needed_at(state: HoldState) -> str:
    """Who signs here, in a sentence; empty while the class is not settled."""
    if state.hold.guest:
        return f"The {state.hold.guest} signs by hand, as a guest. Whoever is signed in is his witness."
    return needed_words(state.lift_class) if state.lift_class is not None else ""


def sign_offs(world: World, running: Running, seen: Shown) -> tuple[SignOff, ...]:
    """The signatures at one hold that nobody replaced."""
    found = []
    for capacity in sorted({name for needed in NEEDED.values() for each in needed for name in each.capacities}):
        for entry in heads(running, seen.hold, capacity):
            signed = statement_of(entry, world) if entry.type == "signature" else None
            if signed is not None:
                found.append(SignOff(entry, signed, why_void(world, running, entry.digest, signed, seen)))
    return tuple(found)


def path(hold: Hold, capacity: str) -> Path:
    """Where a signature at this hold stands."""
    return (HOLDS, hold.name, capacity)


def heads(running: Running, hold: Hold, name: str) -> tuple[Entry, ...]:
    """What stands at a hold: the signatures of one capacity, or what was sent back."""
    return tuple(running.folded.heads.get((HOLDS, hold.name, name), ()))


def class_of(report: Mapping[str, Any]) -> LiftClass | None:
    """The class in a report, once it is settled and not only "at least"."""
    try:
        return LiftClass(report["class"])
    except ValueError:
        return None


def void_words(states: Iterable[HoldState]) -> tuple[str, ...]:
    """A sentence for every first reason, with how many sign-offs it voids."""
    every = tuple(states)
    reasons = [each.void[0] for state in every for each in state.void]
    reasons += [f"what the {state.hold.guest} was shown has changed since" for state in every
                for _ in range(state.outdated)]
    counts = {reason: reasons.count(reason) for reason in reasons}
    return tuple(f"{count} sign-off{'s' if count > 1 else ''} void: {reason}" for reason, count in counts.items())


def _missing(standing: list[SignOff], now: LiftClass | None) -> tuple[Signature, ...]:
    """By the class that was signed: a later version of the app, judging otherwise, takes nobody's signature away."""
    order = list(LiftClass)
    signed = [each.lift_class for each in standing]
    strictest = max(signed, key=order.index) if signed else now or LiftClass.COMPLEX
    return still_needed(strictest, [(each.entry.author, each.capacity) for each in standing])


def _expired(world: World, hold: Hold, standing: list[SignOff]) -> str:
    """A signature for one shift says so on the next day; it is not void, and what was done under it stays covered."""
    days = [str(each.statement["day"]) for each in standing]
    if hold.one_shift and days and min(days) < world.today:
        return f"Signed on {day(min(days))}, for that day only. Another day needs another signature."
    return ""
