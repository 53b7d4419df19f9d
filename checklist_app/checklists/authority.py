"""Entries without authority are left out before the fold, so that one of them can never hide what it replaces."""
from collections.abc import Iterable, Mapping
from functools import lru_cache
from typing import Any

from checklist_app.checklists.canonical import NotCanonical, parse
from checklist_app.checklists.entry import Entry
from checklist_app.checklists.world import World

SUPERVISOR = "supervisor"
KEPT_STATEMENTS = 32
HOLDS, SEND_BACK = "holds", "send_back"
SAID_AT_HOLD = {SEND_BACK: (SEND_BACK, "withdrawn"), "guest": ("guest",)}
SAID_AT = {"stop": frozenset({"stop", "go_on"}), "closing": frozenset({"closing"}), "begin": frozenset({"begin"}),
           "acknowledge": frozenset({"acknowledge"})}
"""What may be said at the prompts by which work stops, ends and begins: an answer like any other takes nothing back."""


def counted(entries: Iterable[Entry], world: World) -> tuple[Entry, ...]:
    """The entries that count: going on by a supervisor, a sign-off that says the same as its statement, all answers.

    What would take back a stop, a closing or a beginning without being one counts for nothing.
    """
    return tuple(entry for entry in _one_beginning(entries) if _belongs_here(entry) and _has_authority(entry, world))


def _one_beginning(entries: Iterable[Entry]) -> list[Entry]:
    """Of several beginnings the one after which the task is named: device and counter are in its id."""
    said = list(entries)
    begun = [entry for entry in said if entry.type == "begin"]
    named = [entry for entry in begun if entry.about[1] == f"t-{entry.device}-{entry.counter}"]
    true = {entry.digest for entry in named} or {min((entry.digest for entry in begun), default="")}
    return [entry for entry in said if entry.type != "begin" or entry.digest in true]


def _belongs_here(entry: Entry) -> bool:
    """Whether this can be said at this prompt: at a hold a signature, a guest's, or what was sent back and taken up."""
    first = entry.path[0]
    if first == HOLDS:
        return entry.type in SAID_AT_HOLD.get(entry.path[-1], ("signature",))
    if first in SAID_AT:
        return entry.path == (first,) and entry.type in SAID_AT[first]
    return entry.type not in (
        "signature", "guest", "go_on", "stop", "closing", "begin", "acknowledge", SEND_BACK, "rig")


def holds_capacity(world: World, person: str, capacity: str, day: str) -> bool:
    """Whether the register says that somebody holds a capacity on a day."""
    return valid_on(capacities(world, person), capacity, day)


def valid_on(held: Mapping[str, str], capacity: str, day: str) -> bool:
    """Whether a capacity is held and has not run out.

    Example:
        >>> valid_on({"supervisor": "2026-11-25"}, "supervisor", "2026-11-25")
        True
        >>> valid_on({"supervisor": "2026-11-24"}, "supervisor", "2026-11-25")
        False
    """
    return held.get(capacity, "") >= day


def capacities(world: World, person: str) -> dict[str, str]:
    """The capacities of a person of the register, each with its last day."""
    item = world.item("person", person)
    rows = item.facts.get("capacities", ()) if item is not None else ()
    held: dict[str, str] = {}
    for row in rows:
        held[str(row["capacity"])] = max(str(row.get("until", "")), held.get(str(row["capacity"]), ""))
    return held


def statement_of(entry: Entry, world: World) -> Mapping[str, Any] | None:
    """The statement that a sign-off names; none while its part has not arrived, or when it is none."""
    part = world.part(entry.value["statement"])
    return _statement(part) if part is not None else None


def belongs(entry: Entry, signed: Mapping[str, Any]) -> bool:
    """Whether a sign-off and its statement say the same: who, as what, where, on which device, about what."""
    person = signed.get("person")
    return entry.type == "signature" and isinstance(person, dict) and (
        list(entry.about), entry.author, entry.device, list(entry.path), entry.value["capacity"],
        entry.value.get("key"),
    ) == (
        signed.get("about"), person.get("id"), signed.get("device"),
        ["holds", signed.get("hold"), signed.get("capacity")], signed.get("capacity"), signed.get("key"),
    )


@lru_cache(maxsize=KEPT_STATEMENTS)
def _statement(part: bytes) -> Mapping[str, Any] | None:
    """Read once for the same bytes: a page asks for each statement of its task many times."""
    try:
        said = parse(part)
    except NotCanonical:
        return None
    return said if isinstance(said, dict) and said.get("form") == "statement/1" else None


def _has_authority(entry: Entry, world: World) -> bool:
    day = entry.at[:10]
    if entry.type in ("go_on", "acknowledge"):
        return holds_capacity(world, entry.author, SUPERVISOR, day)
    if entry.type != "signature":
        return True
    signed = statement_of(entry, world)
    return (signed is not None and belongs(entry, signed)
            and holds_capacity(world, entry.author, str(signed["capacity"]), day))
