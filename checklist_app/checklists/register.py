"""Registers as entries: a version is a document, a state is an entry, and nothing is ever overwritten.

An item's version, custody, quarantine and examination are prompts of their own, so that a move ("at repair") cannot
end a quarantine. The document is what somebody picked until he picks again; the state is live, and where several
statements stand the most restrictive one wins.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Any

from checklist_app.checklists.canonical import NotCanonical, parse
from checklist_app.checklists.entry import Entry
from checklist_app.checklists.fold import Folded, fold
from checklist_app.checklists.values import words
from checklist_app.checklists.versions import Unreadable, facts_now

REGISTERS = ("gear", "machine", "load", "person", "place")
CUSTODIES = ("in service", "hired in", "incoming", "at test", "at repair", "hired out", "lost", "scrapped")
"""From the least to the most restrictive; an unknown one counts as more restrictive still."""
USABLE = frozenset({"in service", "hired in"})
DUE_SOON_DAYS = 30


@dataclass(frozen=True)
class State:
    """How an item stands on a day, as far as these entries know."""

    custody: str
    quarantined: tuple[str, ...]
    """One reason for each quarantine that stands."""
    since: str
    """Day of the first quarantine that stands."""
    due: str
    """Day the next thorough examination is due; empty when none was entered."""
    overdue: bool
    due_soon: bool


@dataclass(frozen=True)
class Item:
    """One item of a register as it stands."""

    register: str
    id: str
    kind: str
    version: str | None
    """Digest of the entry that holds the version in force; none when two differ or none was entered."""
    schema: str
    facts: Mapping[str, Any]
    """The document's facts as of today's schema."""
    state: State
    title: str
    disputed: tuple[str, ...]
    """Digests of the versions among which a person must choose."""
    rests_on: tuple[str, ...]
    """Digests of the entries that the state rests on."""
    fault: str = ""
    """Why the facts cannot be read, in words."""
    versions: Mapping[str, Mapping[str, Any]] = field(default_factory=dict, compare=False, repr=False)
    """Facts of every version, by the digest that a pick names."""

    @property
    def subject(self) -> str:
        """Name under which it is picked: `gear/L-07`."""
        return f"{self.register}/{self.id}"


def item_of(entries: Iterable[Entry], parts: Mapping[str, bytes], day: str) -> Item:
    """The item that these entries are about, as it stands on a day.

    Args:
        entries: Everything said about one item; at least one entry.
        parts: The documents and reasons that have arrived, by digest.
        day: The day asked about, as YYYY-MM-DD; there is no clock here.
    """
    entries = tuple(entries)
    register, name = entries[0].about
    folded = fold(entries)
    standing = [entry for entry in folded.heads.get(("version",), ()) if entry.type == "version"]
    differ = ("version",) in folded.disputed
    in_force = standing[0] if standing and not differ else None
    schema, facts, fault = _document(in_force, parts) if in_force else ("", {}, _no_version(differ))
    read = {entry.digest: _document(entry, parts)[1] for entry in entries if _is_version(entry)}

    return Item(register, name, schema.partition("/")[0], in_force.digest if in_force else None, schema, facts,
                state(folded, parts, day), str(facts.get("name") or name),
                tuple(entry.digest for entry in standing) if differ else (), _rests_on(folded), fault, read)


def state(folded: Folded, parts: Mapping[str, bytes], day: str) -> State:
    """Custody, quarantine and date of an item on a day; the most restrictive statement wins."""
    places = _standing(folded, "custody")
    held = _standing(folded, "quarantine")
    due = min((entry.value["due"] if _is_day(entry.value["due"]) else "" for entry in _standing(folded, "examination")),
              default="")
    worst = max(places, key=lambda entry: (_restriction(entry), entry.digest), default=None)
    reasons = (words(parts.get(entry.value.get("part", ""))) for entry in held)

    return State(custody=worst.value["text"] if worst else "incoming",
                 quarantined=tuple(reason or "no reason given" for reason in reasons),
                 since=min((entry.value["since"] for entry in held), default=""),
                 due=due, overdue=due != "" and due < day, due_soon=_due_soon(due, day))


def known_on(entries: Iterable[Entry], received: Mapping[str, str], day: str) -> tuple[Entry, ...]:
    """What the register said on a day: the entries that had arrived by its end. Their fold is the register then.

    Args:
        entries: Everything said, by anybody, at any time.
        received: Time of arrival by the entry's digest.
        day: The day asked about, as YYYY-MM-DD.
    """
    return tuple(entry for entry in entries if entry.digest in received and received[entry.digest][:10] <= day)


def _is_version(entry: Entry) -> bool:
    """A document said at another prompt was never in force, and no pick can name it."""
    return entry.type == "version" and entry.path == ("version",)


def _standing(folded: Folded, prompt: str) -> list[Entry]:
    return [entry for entry in folded.heads.get((prompt,), ()) if entry.type == prompt]


def _rests_on(folded: Folded) -> tuple[str, ...]:
    prompts = ("custody", "quarantine", "examination")
    return tuple(sorted(entry.digest for prompt in prompts for entry in _standing(folded, prompt)))


def _restriction(entry: Entry) -> int:
    custody = entry.value["text"]
    return CUSTODIES.index(custody) if custody in CUSTODIES else len(CUSTODIES)


def _document(entry: Entry, parts: Mapping[str, bytes]) -> tuple[str, Mapping[str, Any], str]:
    """Schema, facts and, when they cannot be read, why not."""
    schema = str(entry.value["schema"])
    data = parts.get(entry.value["part"])
    if data is None:
        return schema, {}, "the document of this version has not arrived"
    try:
        return schema, facts_now(schema, parse(data)), ""
    except (NotCanonical, Unreadable) as error:
        return schema, {}, str(error)


def _no_version(differ: bool) -> str:
    return "two versions stand: a person must choose one" if differ else "no version was entered"


def _is_day(text: str) -> bool:
    try:
        return date.fromisoformat(text).isoformat() == text
    except ValueError:
        return False


def _due_soon(due: str, day: str) -> bool:
    if not due or not _is_day(day) or due < day:
        return False
    return date.fromisoformat(due) - date.fromisoformat(day) <= timedelta(days=DUE_SOON_DAYS)
