"""A stage to which people add rows: each row as a card, with what it says in short, and what one tap does."""
from dataclasses import dataclass, replace

from checklist_app.checklists.adding import Mirror
from checklist_app.checklists.last_rig import AGAIN, again_options
from checklist_app.checklists.naming import value_words
from checklist_app.checklists.places import Place, label
from checklist_app.checklists.rows import added_rows, is_full, mirrors
from checklist_app.checklists.running import Running
from checklist_app.checklists.slots import is_slot
from checklist_app.checklists.steps import Screen, Way, place_href, screens
from checklist_app.checklists.words import sentence
from checklist_app.checklists.world import World

UNSAID = frozenset({"not_used", "dont_know", "photo"})


@dataclass(frozen=True)
class Card:
    """One row: what it is called, its lines, what is still open, where it is answered, its mirror images."""

    row: str
    words: str
    lines: tuple[str, ...]
    still: str
    href: str
    done: bool
    mirrors: tuple[tuple[int, Mirror], ...]


@dataclass(frozen=True)
class Rows:
    """The rows of one group, or one step of the stage that has none."""

    group: str
    one: str
    more: str
    cards: tuple[Card, ...]
    full: bool
    copied: bool = False
    step: Screen | None = None


def rows_of(world: World, now: Running, stage: str) -> tuple[Rows, ...]:
    """What hangs in the stage, in the order of its steps."""
    every = screens(now, stage)
    found: dict[str, Rows] = {}
    for step in now.procedure.stage(stage).steps:
        if step.group in now.procedure.adds:
            found.setdefault(step.group, _group(world, now, step.group, every))
        else:
            found |= {screen.key: Rows("", "", "", (), False, step=_as_it_is(now, screen)) for screen in every
                      if screen.places[0].step.name == step.name and _offers(world, now, screen)}
    return tuple(found.values())


def _as_it_is(now: Running, screen: Screen) -> Screen:
    """Whether it goes as last time holds nothing up, and still is open until somebody says."""
    return replace(screen, done=screen.done and (screen.places[0].path != AGAIN or AGAIN in now.folded.values))


def _offers(world: World, now: Running, screen: Screen) -> bool:
    """Whether a step that asks for last time has one to offer, or an answer."""
    if screen.places[0].path != AGAIN:
        return True
    return AGAIN in now.folded.values or bool(again_options(world, now))


def _group(world: World, now: Running, group: str, every: tuple[Screen, ...]) -> Rows:
    adds = now.procedure.adds[group]
    cards = tuple(_card(world, now, group, row, tuple(each for each in every if each.row == (group, row)))
                  for row in added_rows(now, group))
    return Rows(group, adds.one, adds.more, cards, is_full(now, group), adds.copied)


def _card(world: World, now: Running, group: str, row: str, own: tuple[Screen, ...]) -> Card:
    still = [each for screen in own for each in _still(now, screen)]
    asked = tuple(place for screen in own for place in screen.places if now.is_asked(place))
    return Card(row, f"{now.procedure.one_of(group)} {label(row)}".capitalize(), _lines(world, now, asked),
                f"Still open: {', '.join(way.words for way in still)}." if still else "",
                still[0].href if still else own[0].href, not still,
                mirrors(now, group, row))


def _still(now: Running, screen: Screen) -> list[Way]:
    """What is open on a screen: each item by its name, where it is picked and felt; then the questions together."""
    left = [place for place in screen.places if now.is_open(place)]
    items = [Way(place_href(now, place), _item_words(now, place)) for place in left if is_slot(now, place)]
    asks = any(not is_slot(now, place) for place in left)

    return [*items, *([Way(screen.href, screen.places[0].step.words)] if asks else [])]


def _item_words(now: Running, place: Place) -> str:
    words = place.prompt.words or now.table.entries[place.prompt.name].words
    return f"{words} looked at and felt" if place.path in now.items else f"which {words}"


def _lines(world: World, now: Running, asked: tuple[Place, ...]) -> tuple[str, ...]:
    """What stands on a card, as the procedure says; then each point in one line."""
    said: list[str] = []
    points: dict[str, list[str]] = {}
    for place in asked:
        value = now.value(place.path)
        if value is None or value["type"] in UNSAID:
            continue
        if place.prompt.line:
            points.setdefault(place.prompt.line, []).append(str(value.get("text", "")))
        elif place.prompt.card:
            said.append(place.prompt.card.format(value_words(value, world)))
    at = [f"{words}: {' / '.join(texts)} m" for words, texts in points.items()]
    return tuple(filter(None, (sentence(", ".join(said)) if said else "", *at)))
