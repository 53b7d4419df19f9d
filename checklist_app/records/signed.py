"""The sign-offs of a record: what was signed by whom, whether it stands, and from when to when it was void."""

from collections.abc import Iterable, Iterator, Mapping
from typing import Any

from checklist_app.checklists.authority import statement_of
from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.guests import guests
from checklist_app.checklists.holds import HoldState
from checklist_app.checklists.ink import read
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.statement import shown
from checklist_app.checklists.void import judged_otherwise, why_void
from checklist_app.checklists.world import World
from checklist_app.records.people import name_of

STANDS, VOID, REPLACED = "stands", "void", "replaced"
SignOff = dict[str, Any]


def sign_offs(world: World, now: Running, states: Iterable[HoldState]) -> list[SignOff]:
    """Every sign-off that counted, in the order of the devices' clocks, the void ones too."""
    void = {each.entry.digest: each.void for state in states for each in state.sign_offs}
    given = [entry for entry in now.folded.known.values() if entry.type == "signature"]

    return [sign_off(world, now, entry, signed, void.get(entry.digest))
            for entry in sorted(given, key=lambda one: (one.at, one.digest))
            if (signed := statement_of(entry, world)) is not None]


def sign_off(world: World, now: Running, entry: Entry, signed: Mapping[str, Any],
             void: tuple[str, ...] | None) -> SignOff:
    hold = now.procedure.hold(str(signed["hold"]))
    ink = read(world.part(entry.value.get("ink", "")))
    standing = REPLACED if void is None else VOID if void else STANDS

    return {"hold": signed["hold"], "act": hold.words if hold is not None else str(signed["hold"]),
            "meaning": signed["meaning"], "person": entry.author, "name": signed["person"]["name"],
            "capacity": signed["capacity"], "own_work": bool(signed["own_work"]), "at": entry.at,
            "how": entry.value["how"], "device": entry.device, "entry": entry.digest,
            "statement": entry.value["statement"],
            "ink": entry.value.get("ink", ""), "typed": ink.typed if ink is not None else "", "standing": standing,
            "void": list(void or ()), "intervals": list(intervals(world, now, entry, signed)),
            "otherwise": list(judged_otherwise(now, signed)), "verdict": signed["evaluation"]["verdict"]}


def guests_signed(world: World, now: Running, state: HoldState) -> Iterator[dict[str, Any]]:
    """Guests who signed at a hold point: whose hand it was said to be, and who saw it."""
    for each in guests(world, now, state):
        yield {"hold": state.hold.name, "act": state.hold.words, "name": each.name, "firm": each.firm,
               "capacity": each.capacity, "meaning": each.meaning, "at": each.entry.at,
               "witness": name_of(world, each.entry.author), "device": each.entry.device, "entry": each.entry.digest,
               "shown": each.entry.value["shown"], "ink": each.entry.value["ink"], "stands": each.stands}


def intervals(world: World, now: Running, entry: Entry, signed: Mapping[str, Any]) -> Iterator[dict[str, Any]]:
    """From when to when a sign-off was void, and why: the task is looked at again after each entry that followed.

    The registers are today's, so an item that was set aside in between and taken back is not found this way.
    """
    hold = now.procedure.hold(str(signed["hold"]))
    if hold is None:
        return
    order = sorted(now.folded.known.values(), key=lambda one: (one.at, one.counter, one.digest))
    since: dict[str, Any] | None = None
    for count in range(order.index(entry) + 1, len(order)):
        later, past = order[count], Then(world, now.id, order[:count + 1])
        then = running(past, now.id)
        replaced = entry not in then.folded.heads.get(entry.path, ())
        reasons = () if replaced else why_void(past, then, entry.digest, signed, shown(past, then, hold))
        if reasons and since is None:
            since = {"from": later.at, "to": "", "why": list(reasons)}
        elif not reasons and since is not None:
            yield {**since, "to": later.at}
            since = None
        if replaced:
            return
    if since is not None:
        yield since


class Then:
    """The world with a task as it stood when only these entries had been made."""

    def __init__(self, world: World, task: str, entries: list[Entry]) -> None:
        self._world, self._task, self._entries = world, task, entries
        self.today = world.today

    def entries(self, about: Path) -> list[Entry]:
        """The task's entries up to then; all else as it is."""
        return list(self._entries) if tuple(about) == ("task", self._task) else self._world.entries(about)

    def tasks(self) -> list[str]:
        """The tasks that run."""
        return self._world.tasks()

    def items(self, register: str) -> Mapping[str, Item]:
        """The registers of today."""
        return self._world.items(register)

    def item(self, register: str, name: str) -> Item | None:
        """One item of today."""
        return self._world.item(register, name)

    def part(self, digest: str) -> bytes | None:
        """Parts never change."""
        return self._world.part(digest)

    def has_part(self, digest: str) -> bool:
        """Whether a part is here."""
        return self._world.has_part(digest)

    def cursor(self) -> Mapping[str, Any]:
        """How far receipts go."""
        return self._world.cursor()

    def sealed(self, task: str) -> str | None:
        """Then it was not sealed."""
        return None

    def with_entries(self, kept: Iterable[Entry], parts: Mapping[str, bytes]) -> World:
        """What is over takes nothing more."""
        raise TypeError("what is over takes no entries")
