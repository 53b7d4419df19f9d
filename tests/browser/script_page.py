"""A page with the real prompts and script, and a server that keeps what the page's script made."""

import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime

from flask import Flask, jsonify, request, send_from_directory
from werkzeug.serving import make_server

from checklist_app.checklists.answer import Person, Photo, Request
from checklist_app.checklists.ask import Ask, Option
from checklist_app.checklists.canonical import digest
from checklist_app.checklists.fold import Folded, fold, seen
from checklist_app.checklists.forms import take
from checklist_app.checklists.prompts import Asked
from checklist_app.checklists.render import environment
from checklist_app.checklists.world import MemoryWorld
from checklist_app.records.door import look_at
from checklist_app.shipped import shipped

TASK = ("task", "t-1")
DAY = "2026-11-25"
PAGE = """<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Prompts</title>
<meta name="device" content="d-1"><meta name="person" content="{{ person }}">
{% include "checklist/_htmx.html" %}
<script src="/static/vendor/htmx/htmx.min.js" defer></script>
<script src="/static/js/entry.js" type="module"></script>
<script src="/static/js/photo.js" type="module"></script>
<script src="/static/js/either.js" type="module"></script>
<script src="/static/js/focus.js" type="module"></script>
<script src="/static/js/phone.js" type="module"></script>
<script src="/static/js/outbox_page.js" type="module"></script></head><body hx-boost="true">
<header class="bar"><p id="sync" data-sync="confirmed"><span>all confirmed</span></p></header>
{% from "checklist/_prompt.html" import prompt %}
<form id="work" method="post" action="/answer" enctype="multipart/form-data">
<div hx-post="/answer" hx-trigger="change" hx-target="#live" hx-sync="this:queue last">
{% for ask in asks %}{{ prompt(ask) }}{% endfor %}</div>
<button type="submit">Next</button></form><p id="live">nothing kept</p>
<div data-behaviour="outbox"><p data-outbox-said></p><p data-outbox-alone></p><div data-outbox-refused></div>
<button type="button" data-outbox-send hidden>Send now</button><a data-outbox-file hx-boost="false" hidden>File</a>
<p data-outbox-room></p><p data-outbox-install hidden>Install</p></div></body></html>"""
OPTIONS = (Option("straight", "Straight"), Option("choked", "Choked"))
PROMPTS = (
    Asked(TASK, ("mass_kg",), "number", "kg"), Asked(TASK, ("leg", "1-left", "hitch"), "choice",
                                                     choices=("straight", "choked")),
    Asked(TASK, ("felt",), "tick"), Asked(TASK, ("landing",), "text"), Asked(TASK, ("label",), "photo"),
)


class Kept:
    """What the server has: entries, parts, and every form as it came."""

    def __init__(self) -> None:
        self.entries, self.parts, self.faults = [], {}, {}
        self.forms: list[dict[str, tuple[str, ...]]] = []
        self.down = False
        self.slow_s = 0.0
        self.refuses: dict[str, tuple[int, dict[str, str]]] = {}  # way in → what it is answered with
        self.asked: list[str] = []
        self.most, self.batches, self.later = 50, [], ""
        self.credential, self.people = "secret of d-1", []

    @property
    def folded(self) -> Folded:
        return fold(self.entries)

    def page(self, person: str) -> str:
        ways = {"ways": (Option("plate", "on the plate"), Option("cell", "by load cell")), "may_not_know": True}
        asks = [Ask(prompt.name, prompt.type, prompt.name, prompt.data(seen(self.folded, prompt.path)),
                    unit=prompt.unit, step="1", text=self.text(prompt), options=OPTIONS,
                    **(ways if prompt.type == "number" else {})) for prompt in PROMPTS]
        return environment().from_string(PAGE).render(asks=asks, person=person)

    def text(self, prompt: Asked) -> str:
        return str(self.folded.values.get(prompt.path, {}).get("text", ""))

    def answer(self) -> tuple[str, int]:
        time.sleep(self.slow_s)
        if self.down:
            return "the server is busy", 503
        form = {name: tuple(texts) for name, texts in request.form.lists()}
        self.forms.append(form)
        files = {name: (Photo("image/jpeg", file.read()),) for name, file in request.files.items() if file.filename}
        told = Request("POST", "/answer", form=form, person=Person("p-1", "Ada", "rigger"), device="s-1",
                       counter=len(self.entries) + 1, at=f"{DAY}T09:00:00Z", salt="1", files=files)
        taken = take(told, PROMPTS, self.folded, MemoryWorld(self.entries, self.parts, today=DAY))
        self.entries += [entry for entry in taken.keep if entry not in self.entries]
        self.parts |= taken.parts
        self.faults = taken.faults
        return f"kept {len(self.entries)}", 422 if taken.faults else 200


@contextmanager
def served() -> Iterator[tuple[str, Kept]]:
    """The address, by a name that is not the machine itself, and what was kept."""
    kept, app = Kept(), Flask(__name__, static_folder=None)
    app.add_url_rule("/", "page", lambda: kept.page(request.args.get("person", "p-1")))
    app.add_url_rule("/answer", "answer", kept.answer, methods=["POST"])
    app.add_url_rule("/static/<path:name>", "static", lambda name: send_from_directory(shipped("static"), name))
    app.add_url_rule("/device", "device", lambda: jsonify(device="d-1", credential=kept.credential))

    @app.get("/entries")
    def news() -> tuple[dict, int]:
        told = {"entries": [], "powerless": [], "parts": {}, "cursor": {"number": 0, "head": ""}, "more": False,
                "sealed": {}, "people": kept.people, "code": "1", "trust": "", "device": "d-1", "counted": 0,
                "now": f"{datetime.now(UTC):%Y-%m-%dT%H:%M:%SZ}"}
        return ({}, 503) if kept.down else (told, 200)

    @app.before_request
    def refuse() -> tuple[object, int, dict[str, str]] | None:
        way = f"{request.method} {request.path[:7]}"
        kept.asked.append(way)
        status, said = kept.refuses.get(way, (0, {}))
        return (jsonify(words=said["words"]) if "words" in said else "<h1>no</h1>", status,
                {name: text for name, text in said.items() if name != "words"}) if status else None

    @app.put("/entries")
    def entries() -> tuple[dict, int]:
        if kept.down:
            return {}, 503
        if request.headers["Authorization"] != f"Bearer {kept.credential}":
            return {}, 401
        kept.batches.append(len(request.json["entries"]))
        if kept.batches[-1] > kept.most:
            return {"words": "send half of it"}, 413
        if kept.later:
            return {"entries": [{"state": "later", "words": kept.later} for _ in request.json["entries"]]}, 200
        looked = look_at(request.json["entries"])
        kept.entries += [item.entry for item in looked if item.entry is not None and item.entry not in kept.entries]
        kept.parts |= {name: data for item in looked for name, data in item.parts.items()}
        return {"entries": [item.answered(1) for item in looked]}, 200

    @app.put("/parts/<name>")
    def part(name: str) -> tuple[str, int]:
        data = request.get_data()
        if kept.down or request.headers["Authorization"] != f"Bearer {kept.credential}" or digest(data) != name:
            return "no", 503
        kept.parts[name] = data
        return "yes", 200

    server = make_server("127.0.0.1", 0, app, threaded=True)
    thread = threading.Thread(target=server.serve_forever)
    thread.start()
    yield f"http://workshop.test:{server.server_port}/", kept
    server.shutdown()
    thread.join()
    server.server_close()
