"""The next item like the one of the row before: offered for a copied lashing, and taken by whoever looked at it."""
from dataclasses import dataclass

from checklist_app.checklists.elsewhere import held_elsewhere
from checklist_app.checklists.places import Place, label
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running
from checklist_app.checklists.slots import store
from checklist_app.checklists.steps import Way, screens, stage_href, step_href
from checklist_app.checklists.tags import Tag, tag, why_out
from checklist_app.checklists.world import World

UNLIKE = frozenset({"name", "maker", "serial", "standard", "mass_kg"})
"""What two items with the same figures may differ in."""


@dataclass(frozen=True)
class Like:
    """One item that is offered, and the row whose item it is like."""

    words: str
    tag: Tag


def next_like(world: World, now: Running, place: Place) -> Like | None:
    """For a slot of an added row: the next usable item with the same figures as the last one picked before it.

    What another task that is under way holds is not offered.
    """
    if place.prompt.group not in now.procedure.adds:
        return None
    before = [row for row in now.folded.rows.get(place.prompt.group, ()) if row < place.row
              and (place.prompt.group, row, place.prompt.name) in now.items]
    if not before:
        return None
    model = now.items[(place.prompt.group, before[-1], place.prompt.name)]
    alike = [item for item in store(world, now, place) if not why_out(item) and _alike(item, model)]
    taken = held_elsewhere(world, now) if alike else frozenset()
    found = next((item for item in alike if item.subject not in taken), None)
    one = f"{now.procedure.one_of(place.prompt.group)} {label(before[-1])}"

    return Like(f"Like {one}, {model.id}", tag(found)) if found is not None else None


def after_slot(now: Running, place: Place) -> Way:
    """Where one goes on from a slot outside the kit: to its step; when all of its row is answered, to the rows."""
    if place.prompt.group not in now.procedure.adds:
        return Way(step_href(now, place), f"Back to {place.step.words.lower()}")
    open_still = next((screen for screen in screens(now, place.stage.name)
                       if screen.places[0].row == place.row and not screen.done), None)
    if open_still is not None:
        return Way(open_still.href, f"Next: {open_still.words.lower()}")
    return Way(stage_href(now, place.stage.name), f"To the {place.stage.words.lower()}")


def _alike(item: Item, model: Item) -> bool:
    return item.kind == model.kind and _figures(item) == _figures(model)


def _figures(item: Item) -> dict[str, str]:
    return {name: str(fact) for name, fact in item.facts.items() if name not in UNLIKE}
