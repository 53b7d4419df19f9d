"""What a reviewer should look at before signing: whatever is void, unseen, unknown, changed or contested."""
from collections.abc import Iterator
from dataclasses import dataclass

from checklist_app.checklists import scope
from checklist_app.checklists.answered_words import answer_words
from checklist_app.checklists.entry import Entry
from checklist_app.checklists.frozen import Frozen
from checklist_app.checklists.holds import HoldState
from checklist_app.checklists.naming import prompt_words
from checklist_app.checklists.refusals import open_places
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running
from checklist_app.checklists.signers import unsettled
from checklist_app.checklists.values import words
from checklist_app.checklists.void import judged_otherwise
from checklist_app.checklists.words import day, listed, sentence
from checklist_app.checklists.world import World

MANY = 6


@dataclass(frozen=True)
class Look:
    """One thing to look at: a bold head, then the rest of it. `void` is framed as such."""

    head: str
    rest: str = ""
    void: bool = False


def look_at(world: World, running: Running, state: HoldState) -> tuple[Look, ...]:
    """Everything to look at before somebody signs here, the gravest first."""
    return (*_void(state), *_sent_back(world, state), *_unsettled(running, state), *_unknown(running, state),
            *_settled(world, running, state), *_gear(world, state), *_judged(running, state),
            *_unanswered(running, state))


def _void(state: HoldState) -> Iterator[Look]:
    for each in state.void:
        yield Look("1 sign-off void.", f"{each.name}, {each.capacity}: {sentence('; '.join(each.void))}", void=True)
    if state.expired:
        yield Look("1 sign-off is from another day.", state.expired, void=True)


def _sent_back(world: World, state: HoldState) -> Iterator[Look]:
    for entry in state.sent_back:
        said = words(world.part(entry.value["part"])) or "The words are not here."
        yield Look(f"Sent back by {name_of(world, entry.author)}.", sentence(said))


def _unsettled(running: Running, state: HoldState) -> Iterator[Look]:
    for said in unsettled(running, state):
        yield Look(sentence(said))


def _unknown(running: Running, state: HoldState) -> Iterator[Look]:
    for row in state.seen.inputs:
        if row["value"]["type"] == "dont_know":
            yield Look("Not known.", sentence(prompt_words(running.procedure, tuple(row["path"]))))


def _settled(world: World, running: Running, state: HoldState) -> Iterator[Look]:
    """Where people differed, and what was settled."""
    for row in state.seen.inputs:
        path = tuple(row["path"])
        for entry in running.folded.heads[path]:
            before = [old for name in entry.replaces if (old := running.folded.known.get(name)) is not None]
            if len({old.author for old in before}) > 1 and any(old.value != before[0].value for old in before):
                said = ", ".join(f"{name_of(world, old.author)} {answer_words(world, running, path, old.value)}"
                                 for old in before)
                yield Look(f"{sentence(prompt_words(running.procedure, path))}",
                           f"Answers differed: {said}. Settled: {answer_words(world, running, path, entry.value)}.")


def _gear(world: World, state: HoldState) -> Iterator[Look]:
    for gear in state.seen.gear:
        name = gear["subject"].partition("/")[2]
        item = _item(world, gear)
        if item is not None and item.version != gear["version"]:
            yield Look(f"{name} has a newer version in the register.", "The figures are those of the version picked.")
        if item is not None and item.state.due_soon:
            yield Look(f"{name} is due soon.", f"Next examination by {day(item.state.due)}.")


def _judged(running: Running, state: HoldState) -> Iterator[Look]:
    for each in state.standing:
        for said in judged_otherwise(running, each.statement):
            yield Look("This version of the app judges otherwise.", sentence(said))


def _unanswered(running: Running, state: HoldState) -> Iterator[Look]:
    names = [prompt_words(running.procedure, place.path) for place in open_places(running, state.hold, killers=False)]
    if names:
        more = f" and {len(names) - MANY} more" if len(names) > MANY else ""
        yield Look("Not answered.", f"{sentence(listed(names[:MANY]) if not more else ', '.join(names[:MANY]) + more)}")


def name_of(world: World, person: str) -> str:
    """The name in the register, or the id while there is none."""
    item = world.item("person", person)
    return item.title if item is not None else person


def photos(world: World, running: Running, state: HoldState) -> tuple[tuple[Entry, str], ...]:
    """The photographs of the covered stages, each with what it should show."""
    return tuple((entry, prompt_words(running.procedure, entry.path))
                 for entry in scope.beside(running.procedure, running.folded, state.hold))


def _item(world: World, gear: Frozen) -> Item | None:
    register, _, name = gear["subject"].partition("/")
    return world.item(register, name)
