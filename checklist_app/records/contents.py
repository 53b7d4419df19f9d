"""Whether what a record covers is still there as it was: entries, photographs, and what follows from the answers."""

from collections.abc import Iterator, Mapping
from typing import Any

from checklist_app.checklists.again import evaluated
from checklist_app.checklists.canonical import digest, parse
from checklist_app.checklists.signing import BY_KEY
from checklist_app.checklists.statement import evaluation
from checklist_app.records.chain import Sealed
from checklist_app.records.code import code
from checklist_app.records.compared import differences
from checklist_app.records.database import Kept
from checklist_app.records.proved import unproved_now
from checklist_app.records.store import Store

MOST, FEW = 500, 8


def wrong_contents(store: Store, record: Mapping[str, Any], one: Sealed) -> Iterator[str]:
    """What is wrong with the things that a whole text names."""
    yield from wrong_entries(store, record)
    yield from wrong_parts(store, record)
    yield from wrong_signatures(store, record)
    if record["about"] != ["task", one.task]:
        yield f"its row says task {one.task}, its text {record['about'][-1]}"
    if record["code"] == code():
        yield from wrong_evaluation(record)


def wrong_entries(store: Store, record: Mapping[str, Any]) -> Iterator[str]:
    """Entries that are gone or altered, called by the question they answer."""
    kept = found(store, Kept, record["entries"])
    for name in record["entries"]:
        if name not in kept:
            yield f"{question(record, name)}: the entry is gone"
        elif digest(kept[name]) != name:
            yield f"{question(record, name)}: the entry was altered: {reading(record, name, kept[name])}"


def wrong_parts(store: Store, record: Mapping[str, Any]) -> Iterator[str]:
    """Photographs, texts, signatures and statements that are gone or altered."""
    for name in record["parts"]:
        data = store.parts.get(name)
        if data is None:
            yield f"{meant(record, name)} is gone"
        elif digest(data) != name:
            yield f"{meant(record, name)} was altered"


def wrong_signatures(store: Store, record: Mapping[str, Any]) -> Iterator[str]:
    """Signatures by phones' keys, each checked anew with the public half that the record holds."""
    for one in record["signoffs"]:
        if one["how"] in BY_KEY:
            statement = store.parts.get(one["statement"])
            yield from (f"the signature of {one['name']}: {what}" for what in unproved_now(one, statement))


def wrong_evaluation(record: Mapping[str, Any]) -> Iterator[str]:
    """What the same code makes of the sealed answers and gear, held against what was sealed."""
    again = evaluated(record["about"][1], record["inputs"], record["gear"], record["day"])
    found = list(differences(record["evaluation"], evaluation(again.report)))
    yield from (f"it does not follow from its own answers: {what}" for what in found[:FEW])
    if len(found) > FEW:
        yield f"it does not follow from its own answers in {len(found) - FEW} more places"
    for field in ("verdict", "governs"):
        if record[field] != record["evaluation"][field]:
            yield f"{field} on its first page is {record[field]}, its checks say {record['evaluation'][field]}"


def found(store: Store, table: Any, names: list[str]) -> dict[str, bytes]:
    """The bytes kept under these digests. Text that somebody wrote in place of bytes is told, not stumbled over."""
    rows: dict[str, bytes] = {}
    for start in range(0, len(names), MOST):
        query = table.select(table.digest, table.data).where(table.digest.in_(names[start:start + MOST])).tuples()
        rows |= {name: data.encode() if isinstance(data, str) else bytes(data or b"")
                 for name, data in query.execute(store.database)}
    return rows


def question(record: Mapping[str, Any], name: str) -> str:
    """What an entry is the answer to."""
    for one in record["answers"]:
        if name in one["entries"]:
            return f"{one['question']} ({one['answer']})"
    for event in record["events"]:
        if event["entry"] == name:
            return str(event["words"]).rstrip(".")

    return f"entry {name[:16]} …"


def reading(record: Mapping[str, Any], name: str, data: bytes) -> str:
    """What the altered bytes say, next to what was sealed if that stood."""
    sealed = next((row["value"] for row in record["inputs"] if row["entry"] == name), None)
    try:
        now = parse(data)["value"]
    except (ValueError, KeyError, TypeError):
        return "it can no longer be read"
    if sealed is None:
        return f"it now says {now}"

    return "; ".join(differences(sealed, now)) or "author, time or place were changed"


def meant(record: Mapping[str, Any], name: str) -> str:
    """What a part is to somebody who reads the record."""
    for photo in record["photos"]:
        if photo["part"] == name:
            return f"photograph \"{photo['words']}\""
    for one in record["signoffs"]:
        if one["statement"] == name:
            return f"the statement that {one['name']} signed"
        if one["ink"] == name:
            return f"the drawn signature of {one['name']}"

    for one in record.get("guests", ()):
        if one["ink"] == name:
            return f"the drawn signature of the guest {one['name']}"

    return f"a text or earlier photograph ({name[:16]} …)"
