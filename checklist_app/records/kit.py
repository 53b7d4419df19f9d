"""The gear of a record: what was picked, the rating that was used, and how it stood that day."""

from collections.abc import Mapping
from typing import Any

from checklist_app.checklists.naming import prompt_words
from checklist_app.checklists.places import FELT
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running
from checklist_app.checklists.words import day, sentence
from checklist_app.checklists.world import World
from checklist_app.operations.kinds import KINDS
from checklist_app.operations.words import said
from checklist_app.records.figures import capacity
from checklist_app.records.people import name_of

CARRIES = frozenset({"gear", "machine"})
MARKED = (("lc_dan", "LC", "daN"), ("stf_dan", "STF", "daN"), ("wll_kg", "WLL", "kg"),
          ("breaking_kn", "breaks at", "kN"), ("rated_kg", "", "kg"), ("payload_kg", "payload", "kg"))
RATED_BY = {"lashing_item": "lashing_strength", "vehicle": "payload"}


def kit(world: World, now: Running, found: Mapping[str, Any]) -> list[dict[str, Any]]:
    """Every piece in the path of the load, in the order of its prompts."""
    return [piece(world, now, path, item, found) for path, item in sorted(now.items.items())
            if item.register in CARRIES]


def piece(world: World, now: Running, path: tuple[str, ...], item: Item, found: Mapping[str, Any]) -> dict[str, Any]:
    kind = KINDS.get(item.kind)
    picked = now.folded.heads[path][0]
    felt = now.folded.heads.get((*path[:-1], path[-1] + FELT), ())
    looked = next((entry for entry in felt if entry.value.get("text") == "yes"), None)

    return {"slot": sentence(prompt_words(now.procedure, path)).rstrip("."), "tag": item.id, "subject": item.subject,
            "kind": kind.words if kind is not None else item.kind, "length": length(item), "plate": plate(item),
            "used": used(now, path, found), "state": state(item, now.day), "due": item.state.due,
            "picked_by": name_of(world, picked.author), "looked_by": name_of(world, looked.author) if looked else "",
            "looked_at": looked.at if looked else ""}


def plate(item: Item) -> str:
    """The rating on the plate: one WLL, or one for each angle; of what lashes and carries what stands on it."""
    if marked := [f"{words} {said(float(item.facts[name]), unit)}".strip() for name, words, unit in MARKED
                  if item.facts.get(name)]:
        return ", ".join(marked)
    if item.facts.get("wll_t"):
        return said(float(item.facts["wll_t"]), "t")
    rows = item.facts.get("ratings", ())
    return "; ".join(f"{said(float(row['wll_t']), 't')} up to {float(row['up_to_deg']):g}°" for row in rows)


def length(item: Item) -> str:
    return said(float(item.facts["length_m"]), "m") if item.facts.get("length_m") else ""


def used(now: Running, path: tuple[str, ...], found: Mapping[str, Any]) -> str:
    """The capacity that the strength check of this slot held the demand against."""
    row = now.read.labels.get(path[1]) if len(path) == 3 else None
    name = RATED_BY.get(path[-1], f"{path[-1]}_strength")
    check = next((check for check in found["checks"] if check["quantity"] == name and check["row"] == row), None)
    if check is None or check["capacity"] is None:
        return ""

    return capacity({"capacity": str(check["capacity"]), "unit": check["unit"]})


def state(item: Item, on: str) -> str:
    """How the piece stood on the day of the task, in one line."""
    said = [item.state.custody]
    said += [f"in quarantine: {reason}" for reason in item.state.quarantined]
    if not item.state.due:
        said.append("no examination entered")
    else:
        said.append(f"{'overdue since' if item.state.due < on else 'examined until'} {day(item.state.due)}")
    said += ["own-built"] if item.facts.get("origin") == "own-built" else []

    return "; ".join(said)
