"""What is kept on the phone that shows this page. The page itself knows nothing of it: its script fills it."""

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.frame import frame, whole
from checklist_app.checklists.world import World


@page("/outbox", public=True)
def outbox(request: Request, world: World) -> Answer:
    """The same for everybody: the entries stand on the phone, also where nobody is signed in."""
    back = "/today" if request.person else "/"

    return whole(request, "checklist/outbox.html", frame(request, "Kept on this phone", back=back, back_words="Back"))
