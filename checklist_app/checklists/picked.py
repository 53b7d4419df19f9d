"""A pick names an item and the version its picker saw: figures stay as picked, the state is today's."""
from dataclasses import replace

from checklist_app.checklists.register import Item
from checklist_app.checklists.values import Value
from checklist_app.checklists.world import World
from checklist_app.operations import gear
from checklist_app.operations.gear import Gear, GearState
from checklist_app.operations.graph import Entry
from checklist_app.operations.kind import lacks
from checklist_app.operations.kinds import KINDS

YES = ("yes", True)
POINT_FACTS = ("x_m", "y_m", "z_m", "evidence")


class Unusable(ValueError):
    """What was picked cannot be taken here; the message says why."""


def item_of_pick(world: World, value: Value) -> Item | None:
    """The item as it was picked: the facts of that version, the state as it stands now."""
    register, _, name = value["subject"].partition("/")
    item = world.item(register, name)
    if item is None:
        return None
    facts = item.versions.get(value["version"])
    if not facts:
        return replace(item, fault=item.fault or "the version that was picked has not arrived", facts={})
    return replace(item, facts=facts, version=value["version"])


def gear_of(world: World, entry: Entry, value: Value) -> Gear:
    """The picked item as the operation takes it.

    Raises:
        Unusable: If it is not in the register, cannot be read, or is of another kind.
    """
    item = item_of_pick(world, value)
    if item is None:
        raise Unusable(f"{value['subject'].partition('/')[2]} is not in the register.")
    if item.fault:
        raise Unusable(f"{item.id}: {item.fault}.")
    if gear.PICK_POINT.name in gear.kinds_of(entry.kind):
        return pick_point(item, value.get("point", ""))
    if item.kind not in gear.kinds_of(entry.kind):
        raise Unusable(f"{item.id} is a {KINDS[item.kind].words}. Asked is: {entry.words}.")

    return gear.make(item.kind, item.id, item.facts, state_of(item))


def pick_point(load: Item, point: str) -> Gear:
    """What an eye stands on: a point of the load with its ratings and their evidence."""
    row = next((row for row in load.facts.get("pick_points", ()) if row.get("point") == point), None)
    if row is None:
        raise Unusable(f"{load.title} has no pick point {point}.".replace("  ", " "))
    ratings = [{"up_to_deg": rated["up_to_deg"], "wll_t": rated["wll_t"]}
               for rated in load.facts.get("pick_ratings", ()) if rated.get("point") == point]
    facts = {name: row[name] for name in POINT_FACTS if row.get(name)}

    return gear.make(gear.PICK_POINT.name, f"{load.id}, {point}", facts | ({"ratings": ratings} if ratings else {}))


def state_of(item: Item) -> GearState:
    """Where the item stands today, and the proofs it lacks by the facts of the version that was picked."""
    return GearState(
        custody=item.state.custody, quarantined=item.state.quarantined, due=item.state.due,
        marked=item.facts.get("marked") in YES, lacks=lacks(KINDS[item.kind], item.facts),
        origin=str(item.facts.get("origin", "")),
    )
