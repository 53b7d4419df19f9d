"""Gear that is not as it should be leaves use at once. Anybody may say so; another person puts it back."""
from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.frame import frame, go_to, inside, whole
from checklist_app.checklists.made import Made
from checklist_app.checklists.plain import missing
from checklist_app.checklists.register import Item
from checklist_app.checklists.tags import tag
from checklist_app.checklists.values import quarantine as quarantined
from checklist_app.checklists.world import World


@page("/gear/<name>/quarantine")
def quarantine(request: Request, world: World, name: str) -> Answer:
    """Ask what is wrong with one item, and take it out of use."""
    item = world.item("gear", name) or world.item("machine", name)
    if item is None:
        return missing(request, f"Nothing in the register is called {name}.")
    if request.method != "POST":
        return _ask(request, item)
    if not request.one("reason"):
        return _ask(request, item, "Say in a few words what is wrong. The next person needs it.", 422)

    made = Made(request)
    about = (item.register, item.id)
    made.say(about, ("quarantine",), quarantined(world.today, made.words(request.one("reason"))))
    for photo in request.files.get("photo", ()):
        made.say(about, ("photo",), made.photo(photo))

    return go_to(_back(request), keep=tuple(made.keep), parts=made.parts)


def _ask(request: Request, item: Item, fault: str = "", status: int = 200) -> Answer:
    shown = frame(request, f"Out of use: {item.id}", "Gear", item.id, _back(request), "Back")
    return whole(request, "checklist/quarantine.html", shown, status, item=tag(item), back=_back(request),
                 reason=request.one("reason"), fault_words=fault)


def _back(request: Request) -> str:
    return inside(request.one("back") or request.query.get("back", ""))
