"""How often one item may hang in a lift: a sling of several legs in each of them, all else once."""
from collections import Counter
from collections.abc import Mapping

from checklist_app.checklists.entry import Path
from checklist_app.checklists.fold import Folded
from checklist_app.checklists.register import Item
from checklist_app.operations.fields import Field, FieldType, read_number
from checklist_app.operations.straight_lift.choices import Rig

SLING = "sling"
LEGS = Field("legs", "legs", FieldType.WHOLE, "", 1.0, 4.0)
BOTH_PARTS = 2


def legs_of(item: Item) -> int:
    """How many legs an item has; one where its register says nothing of them."""
    number = read_number(str(item.facts.get("legs", "")), LEGS)
    return int(number) if isinstance(number, float) and number == int(number) else 1


def most_places(item: Item, path: Path, folded: Folded) -> int:
    """In how many slots like this one the item may hang. A running sling is both legs."""
    if path[-1] != SLING:
        return 1
    running = folded.values.get(("rig",), {}).get("text") == Rig.RUNNING.value
    return max(legs_of(item), BOTH_PARTS) if running else legs_of(item)


def used_up(items: Mapping[Path, Item], path: Path, folded: Folded) -> frozenset[str]:
    """The items that hang elsewhere as often as they can."""
    counted = Counter(item.subject for other, item in items.items() if other != path)
    return frozenset(item.subject for other, item in items.items()
                     if other != path and counted[item.subject] >= most_places(item, path, folded))
