"""Records: search, one record, its PDF and its text, and what waits to be sealed. Reading changes nothing."""

import csv
import io
from typing import Any

from flask import Blueprint, Response, abort, make_response, redirect, request
from werkzeug.wrappers import Response as AnyResponse

from checklist_app.checklists.closing import CLOSINGS
from checklist_app.checklists.verdicts import RANK
from checklist_app.records import chain, files
from checklist_app.records.account_tables import ROLES
from checklist_app.records.chain import Sealed
from checklist_app.records.search import PAGE, search
from checklist_app.records.verify import verify
from checklist_app.web import current, record_view
from checklist_app.web.access import allowed
from checklist_app.web.pages import frame_of, page

COLUMNS = ("number", "day", "title", "operation", "place", "verdict", "governs", "used", "closing", "signed_by",
           "digest")
STARTS_A_FORMULA = "=+-@\t\r"
PRIVATE = "private, no-cache"
VERDICTS = tuple(word for word in RANK if word != "not applicable")

blueprint = Blueprint("records", __name__)
reading = allowed(*ROLES, writes=())


@blueprint.get("/records")
@reading
def find() -> Response:
    """Search; without anything asked for, the newest records."""
    wanted, number = record_view.wanted(request.args), record_view.page_number(request.args)
    found = search(current.store(), wanted, number)
    return page("web/records/search.html", frame_of("Records", back="/today"), wanted=wanted, found=found,
                title=record_view.search_title(wanted), rows=[record_view.row(card) for card in found.cards],
                questions=record_view.questions(wanted), verdicts=VERDICTS, closings=CLOSINGS,
                more=record_view.more(request.args, number, found.count, PAGE),
                csv=record_view.csv_address(request.args), waiting=len(record_view.waiting()))


@blueprint.get("/records.csv")
@reading
def as_csv() -> Response:
    """The whole result as a table for an office program."""
    wanted, number, made = record_view.wanted(request.args), 1, io.StringIO()
    table = csv.writer(made)
    table.writerow(COLUMNS)
    while cards := search(current.store(), wanted, number).cards:
        table.writerows([[plain(card[column]) for column in COLUMNS] for card in cards])
        number += 1

    return sent(made.getvalue().encode("utf-8-sig"), "text/csv; charset=utf-8", "records.csv")


@blueprint.get("/records/<digest>")
@reading
def show(digest: str) -> Response:
    """One record as it was sealed, and whether anything was changed since."""
    one = sealed(digest)
    checked = verify(current.store(), only=one.digest)
    record = record_view.whole(one, files.text_path(current.store().records, one.number, one.digest))
    if record is None:
        return page("web/records/damaged.html", frame_of(f"Record {one.number:04d}", back="/records",
                    back_words="Back to records"), 500, faults=checked.faults, number=one.number)
    made = frame_of(f"Record {one.number:04d}", back="/records", back_words="Back to records")

    return page("web/records/record.html", made, record=record, digest=one.digest, checked=checked,
                view=record_view.view(record, one, current.store()), at=record_view.checked_at())


@blueprint.get("/records/<digest>.pdf")
@reading
def pdf(digest: str) -> Response:
    """The PDF as it was sealed, byte for byte."""
    one = sealed(digest)
    path = files.pdf_path(current.store().records, one.number, one.digest)
    return sent(found_bytes(path), "application/pdf", path.name, inline=True)


@blueprint.get("/records/<digest>.json")
@reading
def text(digest: str) -> Response:
    """The sealed text, byte for byte: its SHA-256 is the record's digest."""
    one = sealed(digest)
    path = files.text_path(current.store().records, one.number, one.digest)
    return sent(found_bytes(path), "application/json", path.name)


@blueprint.get("/records/<digest>/parts/<part>")
@reading
def part(digest: str, part: str) -> Response:
    """A photograph of a record."""
    one = sealed(digest)
    record = record_view.whole(one, files.text_path(current.store().records, one.number, one.digest)) or {"photos": ()}
    data = current.store().parts.get(part) if any(photo["part"] == part for photo in record["photos"]) else None
    if data is None or not data.startswith(b"\xff\xd8\xff"):
        abort(404)

    return sent(data, "image/jpeg", f"{part[:12]}.jpg", inline=True)


@blueprint.get("/records/of/<task>")
@reading
def of_task(task: str) -> AnyResponse:
    """The record of a task, by the task's id."""
    found = chain.of_task(current.store(), task)
    return redirect(f"/records/{found[0].digest}", 303) if found else abort(404)


def sealed(digest: str) -> Sealed:
    return chain.find(current.store(), digest) or abort(404)


def found_bytes(path: Any) -> bytes:
    return path.read_bytes() if path.exists() else abort(404)


def sent(data: bytes, mime: str, name: str, inline: bool = False) -> Response:
    response = make_response(data)
    response.headers["Content-Type"] = mime
    response.headers["Content-Disposition"] = f'{"inline" if inline else "attachment"}; filename="{name}"'
    response.headers["Cache-Control"] = PRIVATE

    return response


def plain(value: Any) -> str:
    """A cell that no office program takes for a formula."""
    text = "" if value is None else str(value)
    return f"'{text}" if text.startswith(tuple(STARTS_A_FORMULA)) else text


