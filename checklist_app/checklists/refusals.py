"""What comes first: everything that keeps a hold point from being signed, by anybody, each in a sentence."""
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from checklist_app.checklists import scope
from checklist_app.checklists.answered_words import answer_words
from checklist_app.checklists.checked import does_not_apply, reason
from checklist_app.checklists.closing import closing_entry
from checklist_app.checklists.entry import Path
from checklist_app.checklists.frozen import why_unusable
from checklist_app.checklists.holds import HoldState, class_of
from checklist_app.checklists.naming import check_words, prompt_words
from checklist_app.checklists.places import Place, places
from checklist_app.checklists.procedure import Hold, PromptKind
from checklist_app.checklists.running import Running
from checklist_app.checklists.steps import place_href
from checklist_app.checklists.stops import stops
from checklist_app.checklists.trial_read import TRIAL, hung_otherwise
from checklist_app.checklists.verdicts import MAY_BE_SIGNED, bare_name, verdicts
from checklist_app.checklists.words import day
from checklist_app.checklists.world import World

NOT_REGISTERED = "not from the register"
BLOCKS_EVERYWHERE = frozenset({"over limit", "cannot be assessed"})


@dataclass(frozen=True)
class Refusal:
    """One thing that comes first, and where it is put right."""

    words: str
    href: str = ""


def refusals(world: World, running: Running, state: HoldState, before: Iterable[HoldState]) -> tuple[Refusal, ...]:
    """Everything that must be put right before anybody signs here; none when it may be signed.

    Args:
        before: The hold points that come before this one.
    """
    return (*_course(world, running, before), *_answers(running, state.hold), *_open(world, running, state.hold),
            *_gear(running, state), *_checks(running, state), *_class(state))


def open_places(running: Running, hold: Hold, killers: bool) -> Iterator[Place]:
    """Questions in scope that nobody answered: those without which nobody signs, or the others."""
    for place in asked(running, hold):
        if place.prompt.killer is killers and not _answered(running, place):
            yield place


def asked(running: Running, hold: Hold) -> Iterator[Place]:
    """The questions in scope that are asked; of several trials the last one counts."""
    last = max(running.folded.rows.get(TRIAL, ()), default="")
    for place in places(running.procedure, running.folded):
        counts = place.prompt.group != TRIAL or place.row == last
        if counts and place.stage.name in hold.stages and running.is_asked(place):
            yield place


def _course(world: World, running: Running, before: Iterable[HoldState]) -> Iterator[Refusal]:
    if closing_entry(running.folded) is not None:
        yield Refusal("This task is closed")
    if stops(running.folded):
        yield Refusal("It is stopped: a supervisor goes on first", f"/tasks/{running.id}/stop")
    for state in before:
        if not state.open:
            what = "is void" if state.void else "is from another day" if state.expired else "is not signed"
            yield Refusal(f"{state.hold.words} {what}", f"/tasks/{running.id}/holds/{state.hold.name}")
    if running.day != world.today:
        said = f"The day of this task is {day(running.day)}" if running.day else "The day of this task is not confirmed"
        yield Refusal(f"{said}, today is {day(world.today)}: confirm it", f"/tasks/{running.id}/what")


def _answers(running: Running, hold: Hold) -> Iterator[Refusal]:
    """Two answers that stand, and answers that cannot be read."""
    for path in scope.disputed(running.procedure, running.folded, hold):
        yield Refusal(f"{prompt_words(running.procedure, path)}: two answers stand",
                      f"/tasks/{running.id}/settle?where={'/'.join(path)}")
    for path in running.faults:
        if scope.binds(running.procedure, hold, path):
            said = f"{prompt_words(running.procedure, path)} cannot be read: {running.faults[path].rstrip('.')}"
            yield Refusal(said, _stage_href(running, path))


def _open(world: World, running: Running, hold: Hold) -> Iterator[Refusal]:
    """Questions without which nobody signs: not answered, or answered so that work may not go on."""
    if TRIAL in hold.groups and not running.folded.rows.get(TRIAL):
        yield Refusal("No trial lift is written down", f"/tasks/{running.id}/trial")
    if TRIAL in hold.groups and (changed := hung_otherwise(running)):
        yield Refusal(f"Eyes or legs were changed since trial {changed}: lift it a little again, and write it down",
                      f"/tasks/{running.id}/trial")
    for place in open_places(running, hold, killers=True):
        yield Refusal(f"{_place_words(running, place)}: not answered", place_href(running, place))
    for place in asked(running, hold):
        if _untouched(running, place):
            yield Refusal(f"{_place_words(running, place)}: not looked at and felt", place_href(running, place))
        value = running.folded.values.get(place.path)
        if value is None or not place.prompt.killer:
            continue
        wrong = value["type"] == "tick" and value["text"] != "yes"
        if wrong or (place.prompt.right and value.get("text") not in place.prompt.right.split("|")):
            yield Refusal(f"{_place_words(running, place)}: {answer_words(world, running, place.path, value)}",
                          place_href(running, place))


def _gear(running: Running, state: HoldState) -> Iterator[Refusal]:
    """Every item in the load path is picked from the register, readable, and usable today."""
    for gear in state.seen.gear:
        name = gear["subject"].partition("/")[2]
        if not gear["facts"]:
            yield Refusal(f"{name} cannot be read in the register", f"/tasks/{running.id}/kit")
        elif why := why_unusable(gear):
            yield Refusal(f"{name} is {why}", f"/tasks/{running.id}/kit")


def _checks(running: Running, state: HoldState) -> Iterator[Refusal]:
    """In scope nothing may be open; over the limit or refused by a clause blocks wherever it stands."""
    found = state.seen.verdicts
    if not any(verdict in ("within limit", "close to limit") for verdict in found.values()):
        yield Refusal("Nothing is worked out yet", f"/tasks/{running.id}/checks")
    for name, verdict in verdicts(state.seen.report).items():
        inside = bare_name(name) in state.hold.checks
        if verdict in BLOCKS_EVERYWHERE or (inside and verdict not in MAY_BE_SIGNED):
            yield Refusal(f"{check_words(running, name)}: {verdict}",
                          f"/tasks/{running.id}/checks/{name.replace('[', '.').rstrip(']')}")
    for check in state.seen.evaluated.evaluation.checks:
        if does_not_apply(check) and NOT_REGISTERED in reason(check):
            yield Refusal(f"{check_words(running, check.name)}: {reason(check)}", f"/tasks/{running.id}/kit")


def _class(state: HoldState) -> Iterator[Refusal]:
    if class_of(state.seen.report) is None:
        yield Refusal(f"The class is not settled: {state.seen.report['class'] or 'nothing is known yet'}")


def _answered(running: Running, place: Place) -> bool:
    """An answer, or for an entry of the operation one that load, place or hoist fill."""
    if place.prompt.kind is PromptKind.ENTRY:
        return running.is_given(place)
    return place.path in running.folded.values


def _untouched(running: Running, place: Place) -> bool:
    """Gear that was picked and not yet ticked as looked at and felt."""
    felt = running.folded.values.get(place.felt_path, {}).get("text")
    return place.prompt.felt and place.path in running.items and felt != "yes"


def _place_words(running: Running, place: Place) -> str:
    return prompt_words(running.procedure, place.path)


def _stage_href(running: Running, path: Path) -> str:
    found = next((p for p in places(running.procedure, running.folded) if path in (p.path, p.felt_path)), None)
    return place_href(running, found) if found is not None else f"/tasks/{running.id}"
