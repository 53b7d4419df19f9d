"""The registers of gear, machines, loads and places: list, show, new version, and what happens to an item."""

from collections import defaultdict
from typing import Any

from flask import Blueprint, Response, abort, redirect, request
from werkzeug.routing import BaseConverter
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.checklists.fold import seen
from checklist_app.checklists.register import REGISTERS, Item
from checklist_app.operations.kind import Kind
from checklist_app.operations.kinds import KINDS
from checklist_app.records.account_tables import ROLES
from checklist_app.web import current, registry
from checklist_app.web.access import KEEPERS, allowed
from checklist_app.web.item_form import ADD, asks, facts_of, faults_of, on_top, settled
from checklist_app.web.item_pages import item_page, list_lines
from checklist_app.web.naming import fault_of_name, name_from
from checklist_app.web.pages import frame_of, page

WORDS = {"gear": "Gear", "machine": "Hoists and machines", "load": "Loads", "place": "Places"}
TAGGED = ("gear", "machine")
CHANGED = ("Somebody saved another version in the meantime. What you typed is still here: "
           "look at the item in another window, then save again.")

blueprint = Blueprint("registers", __name__)
keepers = allowed(*KEEPERS)
reading = allowed(*ROLES)


class Register(BaseConverter):
    """The name of a register that is shown here; people have pages of their own."""

    regex = "gear|machine|load|place"


@blueprint.record_once
def know_registers(state: Any) -> None:
    state.app.url_map.converters["register"] = Register


@blueprint.get("/registers")
@reading
def index() -> Response:
    world = current.world()
    rows = [{"href": f"/registers/{name}", "words": words, "count": len(world.items(name)),
             "note": _kinds_said(name)}
            for name, words in WORDS.items() if name in REGISTERS]
    return page("web/registers/index.html", frame_of("Registers", back="/today", back_words="Back to today"), rows=rows,
                sealing_waits=may_keep() and current.store().sealing_waits)


@blueprint.get("/registers/<register:register>")
@reading
def show_list(register: str) -> Response:
    """Everything in one register; what cannot be used says why."""
    made = frame_of(WORDS[register], back="/registers", back_words="Back to the registers")
    return page("web/registers/list.html", made, lines=list_lines(register), register=register,
                kinds=kinds_in(register) if may_keep() else ())


@blueprint.get("/registers/<register:register>/new/<kind>")
@keepers
def show_new(register: str, kind: str) -> Response:
    return form_page(kind_in(register, kind), None, {})


@blueprint.post("/registers/<register:register>/new/<kind>")
@keepers
def save_new(register: str, kind: str) -> AnyResponse:
    """The first version of an item, under the number on its tag, or under its name."""
    found, form = kind_in(register, kind), request.form
    facts = facts_of(found, form)
    name = form.get("id", "").strip() if register in TAGGED else name_from(str(facts.get("name", "")), register)
    if ADD in form:
        return form_page(found, None, facts)
    if faults := faults_of(found, facts) | fault_of_name(register, name):
        return form_page(found, None, facts, faults)
    registry.save_version(found, name, settled(found, facts), ())

    return redirect(f"/registers/{register}/{name}", 303)


@blueprint.get("/registers/<register:register>/<name>")
@reading
def show(register: str, name: str) -> Response:
    return item_page(item(register, name))


@blueprint.get("/registers/<register:register>/<name>/version")
@keepers
def show_version(register: str, name: str) -> Response:
    found = item(register, name)
    return form_page(kind_of(found), found, found.facts or latest(found))


@blueprint.post("/registers/<register:register>/<name>/version")
@keepers
def save_version(register: str, name: str) -> AnyResponse:
    """A new version in place of the one that was seen; another one saved meanwhile is never covered up."""
    found, form = item(register, name), request.form
    kind = kind_of(found)
    facts = facts_of(kind, form)
    if ADD in form:
        return form_page(kind, found, facts, stands=form.get("stands", ""))
    if faults := faults_of(kind, facts):
        return form_page(kind, found, facts, faults, stands=form.get("stands", ""))
    if form.get("stands", "") != standing(found):
        return form_page(kind, found, facts, {"": CHANGED}, status=409)
    if found.disputed or settled(kind, facts) != found.facts:
        registry.save_version(kind, name, settled(kind, facts), standing(found).split())

    return redirect(f"/registers/{register}/{name}", 303)


def form_page(kind: Kind, found: Item | None, facts: Any, faults: dict[str, str] | None = None,
              status: int | None = None, stands: str | None = None) -> Response:
    """The form of a kind, with what was typed still in it."""
    faults = faults or {}
    title = f"New {kind.words}" if found is None else f"New version of {found.title}"
    back = f"/registers/{kind.register}" + ("" if found is None else f"/{found.id}")
    return page("web/registers/form.html", frame_of(title, back=back, back_words="Back without saving"),
                status or (422 if faults else 200), asks=asks(kind, facts, faults, request.form), top=on_top(faults),
                faults=defaultdict(str, faults),
                asks_id=found is None and kind.register in TAGGED, id=request.form.get("id", ""),
                stands=(standing(found) if found else "") if stands is None else stands, action=request.path)


def item(register: str, name: str) -> Item:
    found = current.world().item(register, name)
    if found is None:
        abort(404, "There is no such item in this register.")

    return found


def standing(found: Item) -> str:
    """The versions that stand, as the form carries them."""
    return " ".join(seen(registry.folded((found.register, found.id)), registry.VERSION))


def latest(found: Item) -> Any:
    """Where two versions differ: one of them to start from, so that nobody types all again."""
    return found.versions[found.disputed[0]] if found.disputed else {}


def kind_of(found: Item) -> Kind:
    """The kind of an item; of a disputed one, the kind its first version names."""
    if found.kind in KINDS:
        return KINDS[found.kind]
    entries = current.world().entries((found.register, found.id))
    names = [entry.value["schema"].partition("/")[0] for entry in entries if entry.digest in found.disputed]

    return KINDS[names[0]] if names and names[0] in KINDS else abort(404, "Nobody knows what kind of item this is.")


def _kinds_said(register: str) -> str:
    """What lies in a register, where its own name does not say it."""
    kinds = kinds_in(register)
    return ", ".join(kind.plural for kind in kinds).capitalize() + "." if len(kinds) > 1 else ""


def kinds_in(register: str) -> tuple[Kind, ...]:
    return tuple(kind for kind in KINDS.values() if kind.register == register)


def kind_in(register: str, name: str) -> Kind:
    found = KINDS.get(name)
    if found is None or found.register != register:
        abort(404, "There is no such kind in this register.")

    return found


def may_keep() -> bool:
    found = current.account()
    return found is not None and found.role in KEEPERS
