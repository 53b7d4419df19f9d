"""What was picked, frozen: figures and state as they stood, enough to evaluate a lift without a register."""
from collections.abc import Iterable, Mapping
from typing import Any

from checklist_app.checklists.canonical import canonical, digest
from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.register import REGISTERS, USABLE, Item, State
from checklist_app.checklists.values import Value
from checklist_app.checklists.world import World

Frozen = dict[str, Any]
WITH_STATE = frozenset({"gear", "machine"})


def freeze(world: World, inputs: Iterable[Mapping[str, Any]], day: str) -> list[Frozen]:
    """One object for each version that was picked: kind, facts, state on the day, and what the state rests on."""
    picks = {(row["value"]["subject"], row["value"]["version"]) for row in inputs if row["value"]["type"] == "pick"}
    return [_freeze(world, subject, version, day) for subject, version in sorted(picks)]


def usable(gear: Mapping[str, Any]) -> bool:
    """Whether a frozen item of gear may carry anything: in service, in date, out of quarantine."""
    return not why_unusable(gear)


def has_state(gear: Mapping[str, Any]) -> bool:
    """Whether this is gear or a machine: loads and places have no custody."""
    return str(gear["subject"]).partition("/")[0] in WITH_STATE


def why_unusable(gear: Mapping[str, Any]) -> str:
    """What stands against an item, in words; empty when nothing does. Loads and places have no state."""
    state = gear["state"]
    if not has_state(gear):
        return ""
    if state["quarantined"]:
        return f"in quarantine: {state['quarantined'][0]}"
    if state["overdue"]:
        return f"overdue since {state['due']}"
    return "" if state["custody"] in USABLE else str(state["custody"])


def _freeze(world: World, subject: str, version: str, day: str) -> Frozen:
    register, _, name = subject.partition("/")
    item = world.item(register, name)
    if item is None:
        state = {"custody": "not in the register", "quarantined": [], "due": "", "overdue": False}
        return {"subject": subject, "version": version, "kind": "", "title": name, "facts": {}, "state": state,
                "rests_on": []}
    return {"subject": subject, "version": version, "kind": item.kind, "title": item.title,
            "facts": dict(item.versions.get(version, {})), "state": _state(item.state, day),
            "rests_on": list(item.rests_on)}


def _state(state: State, day: str) -> dict[str, Any]:
    """On the day of the task, not of the clock: a lift that is closed a day later was still lifted in date."""
    return {"custody": state.custody, "quarantined": list(state.quarantined), "due": state.due,
            "overdue": state.due != "" and state.due < day}


class SignedWorld:
    """The world as a statement holds it: its answers, its items, its day, and nothing else."""

    def __init__(self, task: str, inputs: Iterable[Mapping[str, Any]], gear: Iterable[Mapping[str, Any]],
                 day: str) -> None:
        self.today = day
        self._task = task
        gear = list(gear)
        self._entries = [_entry(task, row, gear) for row in inputs]
        self._items: dict[tuple[str, str], Item] = {}
        for frozen in gear:
            item = _item(frozen, self._items.get(_key(frozen)))
            self._items[item.register, item.id] = item

    def entries(self, about: Path) -> list[Entry]:
        """The answers of the statement."""
        return list(self._entries) if tuple(about) == ("task", self._task) else []

    def tasks(self) -> list[str]:
        """The one task."""
        return [self._task]

    def items(self, register: str) -> Mapping[str, Item]:
        """The frozen items of a register."""
        return {name: item for (kind, name), item in self._items.items() if kind == register and register in REGISTERS}

    def item(self, register: str, name: str) -> Item | None:
        """One frozen item."""
        return self._items.get((register, name))

    def part(self, digest: str) -> bytes | None:
        """Words and pictures are not needed to evaluate."""
        return None

    def has_part(self, digest: str) -> bool:
        """None are here."""
        return False

    def cursor(self) -> Mapping[str, Any]:
        """No receipts either."""
        return {"number": 0, "head": ""}

    def sealed(self, task: str) -> str | None:
        """A statement stands by itself."""
        return None

    def with_entries(self, kept: Iterable[Entry], parts: Mapping[str, bytes]) -> "World":
        """A statement takes nothing more."""
        raise TypeError("a statement is what was signed; nothing can be added to it")


def _entry(task: str, row: Mapping[str, Any], gear: list[Mapping[str, Any]]) -> Entry:
    """Known by what the statement says, items included: never by the digest it claims, which could be another's."""
    value: Value = dict(row["value"])
    name = digest(canonical({"row": dict(row), "gear": gear}))
    return Entry(name, b"", ("task", task), tuple(row["path"]), value, (), "", "", 1, "")


def _key(frozen: Mapping[str, Any]) -> tuple[str, str]:
    register, _, name = frozen["subject"].partition("/")
    return register, name


def _item(frozen: Mapping[str, Any], before: Item | None) -> Item:
    """One item; when two versions of it were picked, both are kept under their digests."""
    register, name = _key(frozen)
    state = frozen["state"]
    versions = {**(before.versions if before else {}), frozen["version"]: frozen["facts"]}
    return Item(register, name, frozen["kind"], frozen["version"], frozen["kind"], frozen["facts"],
                State(state["custody"], tuple(state["quarantined"]), "", state["due"], state["overdue"], False),
                frozen["title"], (), tuple(frozen["rests_on"]), "", versions)
