"""A pick becomes entries: the item in its slot, and in every further slot that it fills at once; none is felt yet."""
from collections.abc import Iterable

from checklist_app.checklists import values
from checklist_app.checklists.answer import Request
from checklist_app.checklists.fold import own_earlier, seen
from checklist_app.checklists.legs import SLING, most_places
from checklist_app.checklists.made import Made
from checklist_app.checklists.places import Place
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running

Pick = tuple[Place, Item]


def filled_at_once(now: Running, place: Place, item: Item) -> tuple[Pick, ...]:
    """The slot that was meant; of a sling of several legs also the slot of each further leg, where it is free."""
    if place.prompt.name != SLING:
        return ((place, item),)
    hangs = [each for each in now.places(place.stage.name) if each.prompt.name == SLING and each.path != place.path
             and _subject(now, each) == item.subject]
    free = [each for each in now.places(place.stage.name) if each.prompt.name == SLING and each.path != place.path
            and each.path not in now.folded.heads]
    left = most_places(item, place.path, now.folded) - 1 - len(hangs)

    return ((place, item), *((each, item) for each in free[:max(0, left)]))


def say_picks(made: Made, request: Request, now: Running, picks: Iterable[Pick], felt: bool = False) -> None:
    """Each pick names the version that stands. Another item in a slot was not felt yet; `felt`: it was, just now."""
    about = ("task", now.id)
    for place, item in picks:
        replaced = {*seen(now.folded, place.path), *own_earlier(now.folded, place.path, made.author, request.device)}
        made.say(about, place.path, values.pick(item.subject, item.version or ""), replaced)
        touched = seen(now.folded, place.felt_path)
        if felt:
            made.say(about, place.felt_path, values.tick("yes"), touched)
        elif touched and item.subject != _subject(now, place):
            made.say(about, place.felt_path, values.withdrawn(), touched)


def _subject(now: Running, place: Place) -> str:
    item = now.items.get(place.path)
    return item.subject if item is not None else ""
