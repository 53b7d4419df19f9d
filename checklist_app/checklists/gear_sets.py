"""A gear set: items kept together under one tag. It is picked at once; each of its items is checked by itself.

A set says of each item where it hangs. An item that may not be picked stops the whole set: nobody rigs three quarters
of it without noticing.
"""
from collections import Counter
from collections.abc import Iterator, Mapping
from dataclasses import replace
from typing import Any

from checklist_app.checklists.legs import most_places
from checklist_app.checklists.picking import Pick
from checklist_app.checklists.places import Place
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running
from checklist_app.checklists.slots import gear_kinds
from checklist_app.checklists.tags import Tag, tag, why_out
from checklist_app.checklists.words import listed
from checklist_app.checklists.world import World
from checklist_app.operations.kinds import GEAR_SET, SET_SLOTS, TAGGED_REGISTERS


def sets_for(world: World, now: Running, place: Place) -> list[Tag]:
    """The sets with an item for this slot, those that can be picked first."""
    found = [set_tag(world, now, each) for each in world.items("gear").values()
             if each.kind == GEAR_SET and any(_slot(row) == place.prompt.name for row in _rows(each))]
    return sorted(found, key=lambda each: (bool(each.out), each.id))


def set_tag(world: World, now: Running, found: Item) -> Tag:
    """The tag of a set: what is in it, and why it cannot be picked here."""
    return replace(tag(found), out=why_not(world, now, found).rstrip("."))


def why_not(world: World, now: Running, found: Item) -> str:
    """Why this set cannot be picked for this lift, in words that name the item; empty when it can."""
    if out := why_out(found):
        return f"{out}."
    for row in _rows(found):
        item = _member(world, row)
        if item is None:
            return f"{row.get('item')} is not in the register."
        if out := why_out(item):
            return f"{item.id}: {_with_reason(item, out)}."
    try:
        picks = hung(world, now, found)
    except LookupError as error:
        return str(error)

    return _hangs_elsewhere(now, picks)


def hung(world: World, now: Running, found: Item) -> tuple[Pick, ...]:
    """Where each item of the set hangs in this lift.

    Raises:
        LookupError: If an item has no slot here; the message says which.
    """
    picks: list[Pick] = []
    for row in _rows(found):
        item = _member(world, row)
        if item is None:
            raise LookupError(f"{row.get('item')} is not in the register.")
        picks += _places(now, picks, row, item)

    return tuple(picks)


def _places(now: Running, picks: list[Pick], row: Mapping[str, Any], item: Item) -> Iterator[Pick]:
    """The next slots of its name that no item of the set has yet; a sling of four legs takes four."""
    name = _slot(row)
    every = [place for place in now.places("kit") if place.prompt.name == name]
    if not every:
        raise LookupError(f"There is no {row.get('slot')} in this lift for {item.id}.")
    taken = {place.path for place, _ in picks}
    free = [place for place in every if place.path not in taken]
    if not free:
        raise LookupError(f"{item.id} is one too many: this lift has {len(every)} × {row.get('slot')}.")
    if item.kind not in gear_kinds(now.table.entries[name]):
        raise LookupError(f"{item.id} is no {row.get('slot')}.")
    for place in free[:most_places(item, free[0].path, now.folded)]:
        yield place, item


def _hangs_elsewhere(now: Running, picks: tuple[Pick, ...]) -> str:
    """An item of the set that hangs in another slot already."""
    filled = {place.path for place, _ in picks}
    own = Counter(item.subject for _, item in picks)
    for path, item in now.items.items():
        if path not in filled and item.subject in own:
            return f"{item.id} hangs in this lift already."
    return ""


def _with_reason(item: Item, out: str) -> str:
    reasons = listed(each.rstrip(".") for each in item.state.quarantined)
    return f"{out.lower()}, {reasons}" if reasons else out.lower()


def _rows(found: Item) -> tuple[Mapping[str, Any], ...]:
    return tuple(found.facts.get("items", ()))


def _slot(row: Mapping[str, Any]) -> str:
    return SET_SLOTS.get(str(row.get("slot")), "")


def _member(world: World, row: Mapping[str, Any]) -> Item | None:
    return next((item for register in TAGGED_REGISTERS
                 if (item := world.item(register, str(row.get("item", "")))) is not None), None)
