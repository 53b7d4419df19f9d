"""What stands above the questions of a stage: stopped, void or held; and that the load may always be made safe."""
from dataclasses import dataclass

from checklist_app.checklists.holds import HoldState, hold_states, needed_at, void_words
from checklist_app.checklists.refusals import Refusal, refusals
from checklist_app.checklists.running import Running
from checklist_app.checklists.says import Says
from checklist_app.checklists.stops import stops
from checklist_app.checklists.world import World

FEW = 3


@dataclass(frozen=True)
class Held:
    """The hold point before a stage: who must sign, and what comes first."""

    words: str
    needed: str
    href: str
    first: tuple[Refusal, ...]


@dataclass(frozen=True)
class Banner:
    """Everything that speaks against going on. `first`: what to do with the load while the hold point is not signed."""

    stopped: bool
    void: tuple[str, ...]
    held: Held | None
    first: str
    says: Says


def banner(world: World, now: Running, stage: str) -> Banner | None:
    """What stands above the questions of this stage; nothing when work may go on."""
    states = hold_states(world, now)
    at = next((n for n, state in enumerate(states) if state.hold.before == stage), None)
    held = _held(world, now, states, at) if at is not None and not all(s.open for s in states[:at + 1]) else None
    stopped, void = bool(stops(now.folded)), void_words(states)
    if not (stopped or void or held):
        return None
    says = now.procedure.says
    is_moved = not says.held_with or bool(now.folded.rows.get(says.held_with))
    return Banner(stopped, void, held, says.held if is_moved else "", says)


def _held(world: World, now: Running, states: tuple[HoldState, ...], at: int) -> Held:
    """The first hold point that is not open: the later ones wait behind it."""
    n = next(n for n, state in enumerate(states[:at + 1]) if not state.open)
    state = states[n]
    first = refusals(world, now, state, states[:n])
    needed = needed_at(state) or state.hold.ask
    return Held(state.hold.words, needed, f"/tasks/{now.id}/holds/{state.hold.name}", first[:FEW])
