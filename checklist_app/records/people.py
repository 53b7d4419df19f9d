"""Who is meant by an author's id."""

from checklist_app.checklists.world import World


def name_of(world: World, person: str) -> str:
    """The name in the register of people; the id where there is none."""
    item = world.item("person", person)

    return str(item.facts.get("name") or person) if item is not None else person
