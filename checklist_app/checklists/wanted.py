"""Which item somebody means, by a tap on its tag or by its number, and why there is none to be had."""
from collections.abc import Iterable

from checklist_app.checklists.answer import Request
from checklist_app.checklists.places import Place
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running
from checklist_app.checklists.slots import Slot, gear_kinds, slots, store
from checklist_app.checklists.tags import why_out
from checklist_app.checklists.world import World
from checklist_app.operations.kinds import GEAR_SET, KINDS, TAGGED_REGISTERS


def wanted(request: Request, world: World, now: Running, place: Place) -> Item | None:
    """The item of the tap, or the one whose number was typed or scanned, whatever its letters' size."""
    return _chosen(request, store(world, now, place))


def wanted_set(request: Request, world: World) -> Item | None:
    """The gear set that was tapped, or whose number was typed or scanned."""
    return _chosen(request, (item for item in world.items("gear").values() if item.kind == GEAR_SET))


def nothing(request: Request, world: World, now: Running, place: Place) -> str:
    """Why nothing was picked: it hangs in another slot, is of another kind, or the register does not have it."""
    typed = request.one("tag")
    hung = [path for path, item in now.items.items() if path != place.path and _bare(item.id) == _bare(typed)]
    if hung:
        slot = next((Slot.words_of(each, now.table.entries[each.prompt.name]) for each in slots(now)
                     if each.path == hung[0]), "")
        return f"{now.items[hung[0]].id} is picked already: {slot.lower()}. Pick another one."
    other = _chosen(request, (item for register in TAGGED_REGISTERS for item in world.items(register).values()))
    if other is not None and gear_kinds(now.table.entries[place.prompt.name]):
        return _of_another_kind(now, place, other)
    return f"Nothing for this place is called {typed or request.one('pick')} in the register. Add it below."


def _chosen(request: Request, items: Iterable[Item]) -> Item | None:
    if request.one("pick"):
        return next((item for item in items if item.subject == request.one("pick")), None)
    found = [item for item in items if _bare(item.id) == _bare(request.one("tag"))]
    return found[0] if len(found) == 1 else None


def _of_another_kind(now: Running, place: Place, item: Item) -> str:
    """What it is, what belongs here; and that it may not be used at all, where that is so."""
    kind = KINDS.get(item.kind)
    out, goes = why_out(item), _any_of(gear_kinds(now.table.entries[place.prompt.name]))
    said = f"{item.id}: {kind.words if kind else item.kind}. Here goes: {goes}."
    return f"{said} And {item.id} may not be used at all: {out.lower()}." if out else said


def _any_of(kinds: Iterable[str]) -> str:
    *most, last = [KINDS[kind].words for kind in kinds]
    return f"{', '.join(most)} or {last}" if most else last


def _bare(number: str) -> str:
    """A tag number without the strokes and blanks that wet gloves leave out: r21 is R-21."""
    return "".join(each for each in number.casefold() if each.isalnum())
