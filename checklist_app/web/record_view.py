"""What the pages of records show, as plain data: a search, a row of its result, one record."""

from collections.abc import Mapping
from pathlib import Path
from typing import Any
from urllib.parse import urlencode

from werkzeug.datastructures import MultiDict

from checklist_app.checklists import ink
from checklist_app.checklists.canonical import digest, parse
from checklist_app.checklists.picture import drawn
from checklist_app.checklists.signing import HOW_WORDS
from checklist_app.checklists.words import day
from checklist_app.operations.svg import svg
from checklist_app.records import chain, figures, lashed, pictures, slung
from checklist_app.records.after_seal import came_after
from checklist_app.records.chain import Sealed
from checklist_app.records.moments import moment
from checklist_app.records.saying import says_of
from checklist_app.records.search import Wanted
from checklist_app.records.store import Store
from checklist_app.web import current

DESK_PX, PHONE_PX = 760, 390
QUESTIONS = (
    ({}, "The newest records"), ({"above": "90"}, "Used to 90 % or more"), ({"voids": "yes"}, "A sign-off was void"),
    ({"stops": "yes"}, "Stopped on the way"), ({"closing": "carried out without sign-off"}, "Without sign-off"),
    ({"verdict": "over limit"}, "Over limit"), ({"closing": "abandoned"}, "Given up or refused"),
)


def wanted(asked: MultiDict[str, str]) -> Wanted:
    """What is looked for; what cannot be read counts as not asked."""
    said = {name: asked.get(name, "").strip() for name in ("text", "gear", "person", "verdict", "closing")}
    days = {name: is_day(asked.get(name, "").strip()) for name in ("since", "until")}
    above = asked.get("above", "")

    return Wanted(**said, **days, above=int(above) if above.isdecimal() and len(above) < 5 else None,
                  voids=asked.get("voids") == "yes", stops=asked.get("stops") == "yes")


def is_day(text: str) -> str:
    return text if len(text) == 10 and text[4] == text[7] == "-" and text.replace("-", "").isdecimal() else ""


def page_number(asked: MultiDict[str, str]) -> int:
    text = asked.get("page", "1")
    return max(1, int(text)) if text.isdecimal() and len(text) < 6 else 1


def search_title(one: Wanted) -> str:
    """The heading: what was asked for."""
    if one.gear:
        return f"Every record with {one.gear}"
    return f"Every record with a word by {one.person}" if one.person else "Records"


def questions(one: Wanted) -> list[dict[str, Any]]:
    """Ready questions, the one that is being answered marked."""
    return [{"href": "/records" + (f"?{urlencode(asked)}" if asked else ""), "words": words,
             "current": wanted(MultiDict(asked)) == one} for asked, words in QUESTIONS]


def more(asked: MultiDict[str, str], number: int, count: int, size: int) -> dict[str, str]:
    """Addresses of the pages of results before and after this one."""
    rest = {name: value for name, value in asked.items() if name != "page" and value}
    turns = {"Newer": number - 1} if number > 1 else {}
    turns |= {"Older": number + 1} if number * size < count else {}

    return {words: f"/records?{urlencode(rest | {'page': str(to)})}" for words, to in turns.items()}


def csv_address(asked: MultiDict[str, str]) -> str:
    return "/records.csv?" + urlencode({name: value for name, value in asked.items() if name != "page" and value})


def row(card: Mapping[str, Any]) -> dict[str, Any]:
    """One result."""
    return {**card, "href": f"/records/{card['digest']}", "name": f"{card['number']:04d}", "on": day(card["day"])}


def whole(one: Sealed, path: Path) -> dict[str, Any] | None:
    """The sealed text from the row or the file, whichever is whole; none if neither is."""
    kept = one.data if digest(one.data) == one.digest else path.read_bytes() if path.exists() else b""
    found: dict[str, Any] | None = parse(kept) if digest(kept) == one.digest else None
    return found


def view(record: Mapping[str, Any], one: Sealed, store: Store) -> dict[str, Any]:
    """What the page of a record shows beside its text."""
    check = figures.governing(record)
    ranked = sorted(record["evaluation"]["checks"], key=figures.rank)
    after = [other for other in chain.of_task(store, one.task) if other.digest != one.digest]

    return {
        "governs": checked(check) if check is not None else None, "checks": [checked(each) for each in ranked],
        "drawing": drawings(record), "rules": slung.rules(record), "legs": slung.legs(record),
        "hooks": slung.hooks(record), "lashed": lashings(record),
        "signoffs": [signed(each, store) for each in record["signoffs"]],
        "guests": [{**each, "drawn": ink.shown(store.parts.get(each["ink"]))} for each in record.get("guests", ())],
        "seal_words": f"SEALED · {day(record['sealed_at']).upper()} · ",
        "fingerprint": figures.grouped(one.digest, 64), "previous": figures.grouped(record["previous"], 64),
        "others": [{"href": f"/records/{each.digest}", "name": f"{each.number:04d}",
                    "kind": "supplement" if each.of else "record"} for each in after],
        "after_seal": came_after(store, one.task),
        "waits": [{"name": each["name"], "why": each["value"]} for each in record["evaluation"]["waiting_words"]],
        "refused": [{"name": each["name"], "why": each["value"]} for each in record["evaluation"]["refused"]],
    }


def lashings(record: Mapping[str, Any]) -> dict[str, Any]:
    """How the load was lashed; empty lists where nothing was."""
    return {"heading": says_of(record).how, "sentences": lashed.sentences(record),
            "lashings": lashed.lashings(record), "blocks": lashed.blocks(record)}


def checked(check: figures.Check) -> dict[str, Any]:
    """One check with its figures in words."""
    return {"title": figures.title(check), "demand": figures.demand(check), "limit": figures.capacity(check),
            "used": figures.used(check), "verdict": check["verdict"], "working": check["working"],
            "source": check["source_words"], "status": check["source_status"],
            "giant": figures.percentage(check) if check["kind"] == "strength" else figures.used(check)}


def drawings(record: Mapping[str, Any]) -> dict[str, Any] | None:
    """The sealed drawing for phone and desk, with its further views."""
    if record["drawing"] is None:
        return None
    found = pictures.drawing(record["drawing"])
    verdicts = {check["name"]: check["verdict"] for check in record["evaluation"]["checks"]}

    phone = drawn(found, PHONE_PX, None, verdicts)

    return {"phone": phone.svg, "desk": svg(found, DESK_PX, verdicts=verdicts), "views": phone.views}


def signed(one: Mapping[str, Any], store: Store) -> dict[str, Any]:
    return {**one, "how_words": HOW_WORDS.get(one["how"], one["how"]), "unknowing": one.get("unknowing", []),
            "drawn": ink.shown(store.parts.get(one["ink"])) if one["ink"] else None}


def checked_at() -> str:
    return moment(current.now())


def waiting() -> list[str]:
    """Tasks that are closed and have no record yet."""
    world = current.world()
    return [task for task in world.tasks()
            if any(entry.type == "closing" for entry in world.entries(("task", task)))]
