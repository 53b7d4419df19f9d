"""What holds something in another task that is under way: it is in nobody's store until it comes off there."""
from checklist_app.checklists.running import Running, under_way
from checklist_app.checklists.world import World


def held_elsewhere(world: World, now: Running) -> frozenset[str]:
    """Every item that another task which is not sealed has picked, by its subject."""
    return frozenset(item.subject for other in under_way(world) if other.id != now.id for item in other.items.values())
