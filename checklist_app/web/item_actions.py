"""What happens to an item: examined, moved, taken out of use, put back. Each is one form of the item's page."""

from datetime import date

from flask import Blueprint, abort, redirect, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.checklists.register import CUSTODIES, Item
from checklist_app.web import current, registry
from checklist_app.web.access import KEEPERS, WRITERS, allowed, signed_in
from checklist_app.web.item_form import typed
from checklist_app.web.item_pages import EXAMINED, item_page
from checklist_app.web.releasing import why_not_release

NO_DAY = "Give the day as year-month-day, for example 2026-11-25."

blueprint = Blueprint("item_actions", __name__, url_prefix="/registers/<register:register>/<name>")


@blueprint.get("/<any(examination, custody, quarantine, release):act>")
@signed_in
def back_from(register: str, name: str, act: str) -> AnyResponse:
    """Whoever reloads a page that had a fault on it comes back to the item."""
    return redirect(f"/registers/{register}/{name}", 303)


@blueprint.post("/examination")
@allowed(*KEEPERS)
def examination(register: str, name: str) -> AnyResponse:
    """By whom, on which day, what was found, when the next one is due."""
    found = examined_item(register, name)
    outcome, on, due, by = (text(field) for field in ("outcome", "on", "due", "by"))
    faults = day_fault("on", on) | day_fault("due", due)
    if not faults and on > current.today():
        faults["on"] = "The day of the examination lies ahead."
    if not faults and due <= on:
        faults["due"] = "The next examination comes after this one."
    if outcome not in registry.OUTCOMES:
        faults["outcome"] = "Say what the examination found."
    if not by:
        faults["by"] = "Type who examined it."
    if faults:
        return item_page(found, faults)
    remark = text("remark")
    registry.save_examination((register, name), outcome, on, due, f"By {by}." + (f" {remark}" if remark else ""))

    return back_to(found)


@blueprint.post("/custody")
@allowed(*KEEPERS)
def custody(register: str, name: str) -> AnyResponse:
    """Where the item stands from a day on."""
    found = examined_item(register, name)
    where, since = text("where"), text("since")
    faults = day_fault("since", since)
    if not faults and since > current.today():
        faults["since"] = "This day lies ahead. Enter it when it has come."
    if where not in CUSTODIES:
        faults["where"] = "Choose where it stands."
    if faults:
        return item_page(found, faults)
    registry.save_custody((register, name), where, since, text("custody_why"))

    return back_to(found)


@blueprint.post("/quarantine")
@allowed(*WRITERS)
def quarantine(register: str, name: str) -> AnyResponse:
    """Anybody takes gear out of use."""
    found = examined_item(register, name)
    why = text("quarantine_why")
    if not why:
        return item_page(found, {"quarantine_why": "Say what is wrong with it, in a few words."})
    registry.save_quarantine((register, name), why)

    return back_to(found)


@blueprint.post("/release")
@allowed(*KEEPERS)
def release(register: str, name: str) -> AnyResponse:
    """Another competent person puts it back into use."""
    found = examined_item(register, name)
    if words := why_not_release((register, name)):
        return item_page(found, {"release_why": words})
    why = text("release_why")
    if not why:
        return item_page(found, {"release_why": "Say what you looked at and what was done."})
    registry.save_release((register, name), why)

    return back_to(found)


def examined_item(register: str, name: str) -> Item:
    found = current.world().item(register, name)
    if found is None or register not in EXAMINED:
        abort(404, "There is no such piece of gear.")

    return found


def text(name: str) -> str:
    return typed(request.form.get(name, ""))


def day_fault(field: str, day: str) -> dict[str, str]:
    try:
        return {} if date.fromisoformat(day).isoformat() == day else {field: NO_DAY}
    except ValueError:
        return {field: NO_DAY}


def back_to(found: Item) -> AnyResponse:
    return redirect(f"/registers/{found.register}/{found.id}", 303)
