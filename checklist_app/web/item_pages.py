"""How an item is shown: its tag or line in the list, its facts, its state in words, all that was said about it."""

from collections import defaultdict
from collections.abc import Mapping
from typing import Any

from flask import Response, request

from checklist_app.checklists.register import CUSTODIES, Item
from checklist_app.checklists.tags import tag
from checklist_app.checklists.words import day
from checklist_app.operations.fields import Field, FieldType
from checklist_app.operations.kinds import KINDS
from checklist_app.web import current, registry
from checklist_app.web.access import KEEPERS, WRITERS
from checklist_app.web.history import told_of
from checklist_app.web.item_form import headline
from checklist_app.web.pages import frame_of, page
from checklist_app.web.releasing import why_not_release

EXAMINED = ("gear", "machine")


def list_lines(register: str) -> list[dict[str, Any]]:
    """One line an item: the tag for what is rigged with, name and kind for the rest."""
    items = current.world().items(register)
    return [{"href": f"/registers/{register}/{found.id}", "tag": tag(found), "state": state_words(found),
             "urgent": urgent_words(found), "title": found.title} for found in items.values()]


def urgent_words(found: Item) -> str:
    """What the list must not let anybody overlook."""
    state = found.state
    if state.overdue:
        return f"Overdue since {day(state.due)}"

    return f"Due soon: {day(state.due)}" if state.due_soon else ""


def state_words(found: Item) -> str:
    """Where an item stands, in words, the worst first."""
    state = found.state
    if found.register not in EXAMINED:
        return "Two versions differ: choose one." if found.disputed else found.fault
    said = [f"In quarantine since {day(state.since)}."] if state.quarantined else []
    said.append(f"{state.custody.capitalize()}.")
    if not state.due:
        said.append("No examination entered.")
    elif state.overdue:
        said.append(f"Overdue since {day(state.due)}.")
    else:
        said.append(f"Due soon: {day(state.due)}." if state.due_soon else f"Next due {day(state.due)}.")

    return " ".join(said)


def item_page(found: Item, faults: Mapping[str, str] | None = None) -> Response:
    """Everything about one item, and what may be done with it by whoever looks."""
    role, faults = current.account().role, faults or {}  # type: ignore[union-attr]
    about = (found.register, found.id)
    made = frame_of(found.title, back=f"/registers/{found.register}", back_words="Back to the list")
    return page(
        "web/registers/item.html", made, 422 if faults else 200, item=found, tag=tag(found), state=state_words(found),
        facts=facts_shown(found), history=told_of(about), faults=defaultdict(str, faults), typed=request.form,
        examined=found.register in EXAMINED, keeps=role in KEEPERS, writes=role in WRITERS,
        custodies=CUSTODIES, outcomes=registry.OUTCOMES, today=current.today(), why_not=why_not_release(about),
        held=bool(found.state.quarantined),
    )


def facts_shown(found: Item) -> list[dict[str, Any]]:
    """The facts with their words and units; an answer that is missing is left out."""
    kind = KINDS.get(found.kind)
    fields = kind.fields if kind else ()

    return [shown(field, found.facts[field.name]) for field in fields if found.facts.get(field.name)]


def shown(field: Field, value: Any) -> dict[str, Any]:
    if field.type is FieldType.ROWS:
        heads = [headline(column.words) + (f" [{column.unit}]" if column.unit else "") for column in field.columns]
        cells = [[said(column, row.get(column.name)) for column in field.columns] for row in value]
        return {"words": headline(field.words), "heads": heads, "cells": cells}

    return {"words": headline(field.words), "text": f"{said(field, value)} {field.unit}".strip()}


def said(field: Field, value: Any) -> str:
    if value is None:
        return ""

    return day(str(value)) if field.type is FieldType.DATE and is_day(str(value)) else str(value)


def is_day(text: str) -> bool:
    return len(text) == 10 and text[4] == text[7] == "-"
