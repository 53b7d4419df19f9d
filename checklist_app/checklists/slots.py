"""A slot of the kit: what belongs there, and what lies in store for it."""
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.ask import Ask, Option
from checklist_app.checklists.legs import used_up
from checklist_app.checklists.places import Place, with_row
from checklist_app.checklists.procedure import PromptKind
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running
from checklist_app.checklists.tags import why_out
from checklist_app.checklists.world import World
from checklist_app.operations.gear import PICK_POINT, is_gear, kinds_of
from checklist_app.operations.graph import Entry
from checklist_app.operations.kinds import KINDS

KIT = "kit"


@dataclass(frozen=True)
class Slot:
    """One slot as a page shows it."""

    words: str
    why: str
    number: int
    of: int
    none_words: str
    is_gear: bool
    kinds: tuple[str, ...]

    @staticmethod
    def words_of(place: Place, entry: Entry) -> str:
        """What the slot is called, with its row in front: "Left sling"."""
        if place.label.isdigit() and not place.alone:
            return f"{place.prompt.words or entry.words} {place.label}".capitalize()
        return with_row(place.label, place.prompt.words or entry.words)


def slot_of(now: Running, place: Place, question: Ask, number: int, of: int) -> Slot:
    """A slot with its place in the row of slots."""
    entry = now.table.entries[place.prompt.name]
    kinds = gear_kinds(entry)

    return Slot(Slot.words_of(place, entry), question.why or entry.hint, number, of, question.none_words, bool(kinds),
                kinds)


def is_slot(now: Running, place: Place) -> bool:
    """Whether a slot of its own answers it: everything of the kit, and gear wherever it is asked."""
    if place.stage.name == KIT:
        return True
    return place.prompt.kind is PromptKind.ENTRY and bool(gear_kinds(now.table.entries[place.prompt.name]))


def slots(now: Running) -> tuple[Place, ...]:
    """Every slot that is asked, of the kit and elsewhere."""
    return tuple(place for place in now.places() if is_slot(now, place))


def slots_beside(now: Running, place: Place) -> tuple[Place, ...]:
    """The slots that are gone through one after the other: those of the kit; elsewhere each stands alone."""
    return now.places(KIT) if place.stage.name == KIT else (place,)


def gear_kinds(entry: Entry) -> tuple[str, ...]:
    """The kinds of gear that fit; a point of the load is none, it is chosen and not fetched."""
    kinds = kinds_of(entry.kind) if is_gear(entry.kind) else ()
    return () if PICK_POINT.name in kinds else kinds


def store(world: World, now: Running, place: Place) -> list[Item]:
    """What the register has for a slot: what can be picked first, then what cannot, with its reason."""
    kinds = gear_kinds(now.table.entries[place.prompt.name])
    registers = dict.fromkeys(KINDS[kind].register for kind in kinds)
    taken = used_up(now.items, place.path, now.folded)
    found = [item for register in registers for item in world.items(register).values()
             if item.kind in kinds and item.subject not in taken]
    return sorted(found, key=lambda item: (bool(why_out(item)), item.kind, item.id))


def points(now: Running, place: Place) -> tuple[Option, ...]:
    """The load's pick points with their ratings and evidence, where the slot takes one of them."""
    kind = now.table.entries[place.prompt.name].kind
    if now.load is None or not is_gear(kind) or PICK_POINT.name not in kinds_of(kind):
        return ()
    return tuple(Option(f"{now.load.subject}@{row['point']}", str(row["point"]).capitalize(),
                        _rated(now.load.facts, str(row["point"]))) for row in now.load.facts.get("pick_points", ()))


def _rated(facts: Mapping[str, Any], point: str) -> str:
    rows = [row for row in facts.get("pick_ratings", ()) if row.get("point") == point]
    said = ", ".join(f"{row['wll_t']} t up to {row['up_to_deg']}°" for row in rows)
    return said or "not rated: it cannot be assessed"
