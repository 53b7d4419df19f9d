"""A set of entries becomes what stands now. Only the set counts: no order, no clock, no arrival number."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.values import Value

SEVERAL_STAND = frozenset({"holds", "stop", "acknowledge", "custody", "quarantine", "examination", "last_rig"})
"""Prompts at which two entries beside each other are no disagreement: sign-offs, stops, states of gear, good rigs."""


@dataclass(frozen=True)
class Folded:
    """What stands after everything that was replaced is left out."""

    heads: Mapping[Path, tuple[Entry, ...]]
    """What nobody replaced, withdrawals included."""
    values: Mapping[Path, Value]
    """Prompts with one answer."""
    disputed: Mapping[Path, tuple[Entry, ...]]
    """Prompts and rows with a disagreement."""
    rows: Mapping[str, tuple[str, ...]]
    """Group → ids of its rows, in their order."""
    missing: frozenset[str]
    """Replaced entries that have not arrived."""
    ignored: frozenset[str]
    """Entries that claim to replace what they may not."""
    known: Mapping[str, Entry] = field(compare=False, repr=False)
    """Every entry that was folded, by its digest."""


def fold(entries: Iterable[Entry]) -> Folded:
    """What stands in a set of entries about one thing.

    An answer is gone only when an entry that is here replaces it, so a gap on the way can give a disagreement that
    is none, but never an answer that nobody gave.
    """
    known = {entry.digest: entry for entry in entries}
    replaced, missing, ignored = _replaced(known)
    heads: dict[Path, tuple[Entry, ...]] = {}
    for name in sorted(known.keys() - replaced):
        path = known[name].path
        heads[path] = (*heads.get(path, ()), known[name])
    heads = dict(sorted(heads.items()))
    rows, disputed, gone = _rows(heads)
    values = _values(heads, disputed, gone)

    return Folded(heads, values, dict(sorted(disputed.items())), rows, missing, ignored, known)


def may_replace(new: Entry, old: Entry) -> bool:
    """Whether an entry replaces another: at its own prompt, or in the row that it removes.

    A quarantine ends only by another person's release; its author may state it anew.
    """
    if new.about != old.about:
        return False
    if old.type == "quarantine" and old.path == new.path:
        return new.type == ("quarantine" if new.author == old.author else "release")

    return new.path == old.path or (removes_row(new) and old.path[:2] == new.path)


def removes_row(entry: Entry) -> bool:
    """Whether an entry says that a row is not, or no longer, there."""
    absent = entry.type == "row" and entry.value["text"] == "absent"
    return len(entry.path) == 2 and (absent or entry.type == "withdrawn")


def seen(folded: Folded, path: Path) -> tuple[str, ...]:
    """What somebody who looks at this prompt has before him: what his entry there replaces."""
    return tuple(sorted(entry.digest for entry in folded.heads.get(path, ())))


def seen_in_row(folded: Folded, row: Path) -> tuple[str, ...]:
    """What somebody who removes this row has before him: all that stands in it."""
    return tuple(sorted(entry.digest for path, heads in folded.heads.items() if path[:2] == row for entry in heads))


def own_earlier(folded: Folded, path: Path, author: str, device: str) -> tuple[str, ...]:
    """What this person said here before on this device and nobody replaced: an old page is no disagreement.

    On a phone that is handed over the second person's answer does not replace the first one's.
    """
    return tuple(sorted(entry.digest for entry in folded.heads.get(path, ())
                        if (entry.author, entry.device) == (author, device)))


def _replaced(known: Mapping[str, Entry]) -> tuple[set[str], frozenset[str], frozenset[str]]:
    replaced, missing, ignored = set(), set(), set()
    for entry in known.values():
        for name in entry.replaces:
            old = known.get(name)
            if old is None:
                missing.add(name)
            elif may_replace(entry, old):
                replaced.add(name)
            else:
                ignored.add(entry.digest)

    return replaced, frozenset(missing), frozenset(ignored)


def _values(heads: Mapping[Path, tuple[Entry, ...]], disputed: dict[Path, tuple[Entry, ...]],
            gone: frozenset[Path]) -> dict[Path, Value]:
    """One answer a prompt; where heads differ the prompt joins the disputed ones."""
    values = {}
    for path, standing in heads.items():
        if len(path) == 2 or path[:2] in gone or path[0] in SEVERAL_STAND:
            continue
        first = standing[0].value
        if any(entry.value != first for entry in standing):
            disputed[path] = standing
        elif first["type"] != "withdrawn":
            values[path] = first

    return values


def _rows(heads: Mapping[Path, tuple[Entry, ...]]) -> tuple[
        dict[str, tuple[str, ...]], dict[Path, tuple[Entry, ...]], frozenset[Path]]:
    """Rows that stand, rows in dispute, rows gone.

    A removal replaced all that its author saw in the row. What still stands there he never saw: a disagreement.
    """
    inside: dict[Path, tuple[Entry, ...]] = {}
    for path, standing in heads.items():
        if len(path) >= 2 and path[0] not in SEVERAL_STAND:
            inside[path[:2]] = (*inside.get(path[:2], ()), *standing)
    rows: dict[str, tuple[str, ...]] = {}
    disputed, gone = {}, set()
    for row, standing in sorted(inside.items()):
        removals = [entry for entry in standing if removes_row(entry)]
        if removals and all(entry in removals or entry.type == "withdrawn" for entry in standing):
            gone.add(row)
            continue
        if removals:
            disputed[row] = standing
        rows[row[0]] = (*rows.get(row[0], ()), row[1])

    return rows, disputed, frozenset(gone)
