"""A sling of several legs: one item, which hangs in as many slots of the kit as it has legs."""
from checklist_app.checklists.register import Item
from checklist_app.operations.fields import Field, FieldType, read_number

SLING = "sling"
LEGS = Field("legs", "legs", FieldType.WHOLE, "", 1.0, 4.0)


def legs_of(item: Item) -> int:
    """How many legs an item has; one where its register says nothing of them."""
    number = read_number(str(item.facts.get("legs", "")), LEGS)
    return int(number) if isinstance(number, float) and number == int(number) else 1
