"""Stop and going on: anybody stops, a supervisor goes on, and what was signed before does not carry over."""
from collections.abc import Iterable, Mapping
from typing import Any

from checklist_app.checklists.canonical import NotCanonical, as_typed, canonical, digest, parse
from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.fold import Folded
from checklist_app.checklists.running import Running
from checklist_app.checklists.world import World

STOP: Path = ("stop",)
WHY: Path = ("stop_why",)
NOTE: Path = ("stop_note",)
PHOTO: Path = ("stop_photo",)


def stops(folded: Folded) -> tuple[Entry, ...]:
    """The stops after which nobody went on, the earliest by its own device first."""
    return tuple(sorted(_standing(folded, "stop"), key=lambda entry: (entry.at, entry.digest)))


def is_done(now: Running) -> bool:
    """Whether somebody ticked that the work is done: the load has landed, or left."""
    return now.folded.values.get((now.procedure.says.done,), {}).get("text") == "yes"


def goings_on(folded: Folded) -> tuple[Entry, ...]:
    """Every going on, also one that a later stop replaced."""
    return tuple(entry for _, entry in sorted(folded.known.items()) if entry.type == "go_on")


def go_on_part(reason: str, used_up: Iterable[str], salt: str) -> tuple[str, bytes]:
    """Why work goes on, and which sign-offs had done their work by then: its digest and bytes.

    Whoever goes on says what was used up, because he sees it; from the entries alone, without an order of time,
    it could not be told later.
    """
    data = canonical({"salt": salt, "text": as_typed(reason), "used_up": sorted(set(used_up))})
    return digest(data), data


def overtaken(sign_off: str, seen: Iterable[str], folded: Folded, world: World) -> tuple[Entry, ...]:
    """The goings on that void a sign-off: its signer had not seen them, and they did not find it used up."""
    known = frozenset(seen)
    return tuple(entry for entry in goings_on(folded)
                 if entry.digest not in known and sign_off not in _said(world, entry).get("used_up", ()))


def _standing(folded: Folded, kind: str) -> tuple[Entry, ...]:
    return tuple(entry for entry in folded.heads.get(STOP, ()) if entry.type == kind)


def _said(world: World, entry: Entry) -> Mapping[str, Any]:
    part = world.part(entry.value["part"])
    try:
        said = parse(part) if part is not None else {}
    except NotCanonical:
        return {}
    return said if isinstance(said, dict) else {}
