"""What a record says of sign-offs made away from the server: the proof of each, and whether it was given knowingly."""

from typing import Any

from checklist_app.checklists.entry import trusted
from checklist_app.checklists.signing import BY_KEY, LOCKS
from checklist_app.records.database import Kept
from checklist_app.records.store import Store
from checklist_app.records.unknowing import unknowing

FIRST = "a sign-off was given without knowing what the server held: a supervisor says first what was done about it"


def add_proofs(store: Store, task: str, body: dict[str, Any]) -> str:
    """Put key, signature and *signed without knowing* beside each sign-off. Why it cannot be sealed yet, if so.

    With the public half of the key, the signature and the statement anybody can verify it without this server.
    """
    unaware = {one.entry.digest: list(one.why) for one in unknowing(store, task)}
    for one in body["signoffs"]:
        one["unknowing"] = unaware.get(one["entry"], [])
        if one["how"] in BY_KEY:
            one |= _proof(store, _value(store, one["entry"]))

    return FIRST if unaware.keys() - _acknowledged(store, body) else ""


def _proof(store: Store, value: dict[str, Any]) -> dict[str, str]:
    key = store.keys.find(value["key"])
    proof = {"key": value["key"], "signature": value["signature"], "public": key.public if key else ""}
    if value["how"] in LOCKS:
        proof |= {name: value[name] for name in ("authenticator", "client", "credential")}
        proof |= {"rp_id": key.rp_id if key else "", "origin": key.origin if key else ""}
    return proof


def _value(store: Store, name: str) -> dict[str, Any]:
    (data,) = Kept.select(Kept.data).where(Kept.digest == name).tuples().first(store.database)
    return trusted(bytes(data)).value


def _acknowledged(store: Store, body: dict[str, Any]) -> set[str]:
    """By the entries of the record: those that count."""
    return {str(_value(store, event["entry"])["entry"]) for event in body["events"] if event["kind"] == "acknowledge"}
