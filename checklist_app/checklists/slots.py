"""A slot of the kit: what belongs there, and what lies in store for it."""
from dataclasses import dataclass

from checklist_app.checklists.ask import Ask, Option
from checklist_app.checklists.places import Place
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running
from checklist_app.checklists.tags import why_out
from checklist_app.checklists.world import World
from checklist_app.operations.gear import PICK_POINT, is_gear, kinds_of
from checklist_app.operations.graph import Entry
from checklist_app.operations.kinds import KINDS


@dataclass(frozen=True)
class Slot:
    """One slot as a page shows it. `points` are the load's pick points, where the slot takes one of them."""

    words: str
    why: str
    number: int
    of: int
    none_words: str
    data: str
    is_gear: bool
    points: tuple[Option, ...]
    point: str
    kinds: tuple[str, ...]

    @staticmethod
    def words_of(place: Place, entry: Entry) -> str:
        """What the slot is called, with its row in front: "Left sling"."""
        words = f"{place.label} {entry.words}" if place.row else entry.words
        return words[:1].upper() + words[1:]


def slot_of(now: Running, place: Place, question: Ask, number: int, of: int) -> Slot:
    """A slot with its place in the row of slots."""
    entry = now.table.entries[place.prompt.name]
    kinds = kinds_of(entry.kind) if is_gear(entry.kind) else ()
    point = PICK_POINT.name in kinds
    value = now.value(place.path) or {}

    return Slot(Slot.words_of(place, entry), question.why or entry.hint, number, of, question.none_words, question.data,
                bool(kinds) and not point, _points(now) if point else (), str(value.get("point", "")), kinds)


def store(world: World, now: Running, place: Place) -> list[Item]:
    """What the register has for a slot: what can be picked first, then what cannot, with its reason."""
    entry = now.table.entries[place.prompt.name]
    kinds = kinds_of(entry.kind) if is_gear(entry.kind) else ()
    registers = dict.fromkeys(KINDS[kind].register for kind in kinds if kind in KINDS)
    taken = {item.subject for path, item in now.items.items() if path != place.path}
    found = [item for register in registers for item in world.items(register).values()
             if item.kind in kinds and item.subject not in taken]
    return sorted(found, key=lambda item: (bool(why_out(item)), item.kind, item.id))


def _points(now: Running) -> tuple[Option, ...]:
    """The load's pick points with their ratings and evidence."""
    facts = dict(now.load.facts) if now.load is not None else {}
    return tuple(Option(str(row["point"]), str(row["point"]).capitalize(), _rated(facts, str(row["point"])))
                 for row in facts.get("pick_points", ()))


def _rated(facts: object, point: str) -> str:
    rows = facts.get("pick_ratings", ()) if isinstance(facts, dict) else ()
    said = ", ".join(f"{row['wll_t']} t up to {row['up_to_deg']}°" for row in rows if row.get("point") == point)
    return said or "not rated: it cannot be assessed"
