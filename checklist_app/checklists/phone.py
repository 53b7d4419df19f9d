"""What a phone knows, and the same pages answered from it: JSON in, JSON out, no clock and no chance inside."""

import json
from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Any

from checklist_app.checklists.answer import Answer, Person, Photo, Request, Verified, answer, travels
from checklist_app.checklists.authority import capacities
from checklist_app.checklists.canonical import canonical
from checklist_app.checklists.entry import Entry, Path, trusted
from checklist_app.checklists.lesser import by_https
from checklist_app.checklists.parity import claim
from checklist_app.checklists.plain import arrived, needs_server
from checklist_app.checklists.register import REGISTERS, Item, item_of
from checklist_app.checklists.running import running
from checklist_app.checklists.statement import evaluation
from checklist_app.checklists.values import parts_named
from checklist_app.checklists.world import After, World, documents
from checklist_app.operations.report import report

Parts = Iterable[tuple[str, bytes | None]]
PLAIN = ("method", "path", "query", "device", "counter", "at", "salt", "fragment", "form_token", "pin_fault", "theme",
         "mark", "page_device", "https_way")
PHONE = "phone"


class PhoneWorld:
    """A world that grows: what is learned folds again only the items that it touches."""

    def __init__(self) -> None:
        self.today = ""
        self._said: dict[Path, dict[str, Entry]] = {}
        self._begun: dict[str, None] = {}
        self._parts: dict[str, bytes | None] = {}
        self._sealed: dict[str, str] = {}
        self._cursor: dict[str, Any] = {"number": 0, "head": ""}
        self._found: dict[str, dict[str, Item]] = {register: {} for register in REGISTERS}
        self._stale: set[Path] = set()
        self._waiting: dict[str, set[Path]] = {}

    def learn(self, entries: Iterable[Entry] = (), parts: Parts = (), sealed: Mapping[str, str] | None = None,
              cursor: Mapping[str, Any] | None = None) -> None:
        """More of what is known. The same again, in any order and division, changes nothing.

        A part without bytes is one that lies elsewhere on the phone, such as a photograph.
        """
        for entry in entries:
            self._add(entry)
        for name, data in parts:
            if self._parts.get(name) is None:
                self._parts[name] = data
                self._stale |= self._waiting.pop(name, set())
        self._sealed |= sealed or {}
        self._cursor = dict(cursor) if cursor else self._cursor

    def on(self, day: str) -> "PhoneWorld":
        """The same world on a day: dates that were due may be overdue."""
        if day != self.today:
            self.today = day
            self._stale |= {about for about in self._said if about[0] in REGISTERS}
        return self

    def entries(self, about: Path) -> list[Entry]:
        """Everything said about a task or an item."""
        return list(self._said.get(tuple(about), {}).values())

    def tasks(self) -> list[str]:
        """Ids of the tasks that were begun and are not sealed, in the order in which that was learned."""
        return [task for task in self._begun if task not in self._sealed]

    def items(self, register: str) -> Mapping[str, Item]:
        """The items of a register by their ids."""
        self._fold_stale()
        return self._found[register]

    def item(self, register: str, name: str) -> Item | None:
        """One item, or none of that id."""
        self._fold_stale()
        return self._found.get(register, {}).get(name)

    def part(self, digest: str) -> bytes | None:
        """The bytes of a part, or none while they have not arrived or lie elsewhere."""
        return self._parts.get(digest)

    def has_part(self, digest: str) -> bool:
        """Whether the part is on this phone."""
        return digest in self._parts

    def cursor(self) -> Mapping[str, Any]:
        """How far receipts go: `number` and running `head`."""
        return self._cursor

    def sealed(self, task: str) -> str | None:
        """Digest of the record of a task, or none while it runs."""
        return self._sealed.get(task)

    def with_entries(self, kept: Iterable[Entry], parts: Mapping[str, bytes]) -> After:
        """The same world after these entries and parts."""
        return After(self, kept, parts)

    def _add(self, entry: Entry) -> None:
        said = self._said.setdefault(entry.about, {})
        if entry.digest in said:
            return
        said[entry.digest] = entry
        if entry.about[0] in REGISTERS:
            self._stale.add(entry.about)
        elif entry.type == "begin":
            self._begun.setdefault(entry.about[1])

    def _fold_stale(self) -> None:
        """Fold what changed; an item that names a part which has not arrived is folded again when it has."""
        for about in self._stale:
            said = self.entries(about)
            self._found[about[0]][about[1]] = item_of(said, documents(said, self), self.today)
            for name in (part for entry in said for part in parts_named(entry.value)):
                if self._parts.get(name) is None:
                    self._waiting.setdefault(name, set()).add(about)
        for register in {about[0] for about in self._stale}:
            self._found[register] = dict(sorted(self._found[register].items()))
        self._stale = set()


class Phone:
    """What a page's worker talks to. Bytes of parts go beside the JSON, as they are."""

    def __init__(self) -> None:
        self.world = PhoneWorld()

    def load(self, text: str, parts: Iterable[tuple[str, Any]]) -> str:
        """Forget everything and learn this."""
        self.world = PhoneWorld()
        return self.learn(text, parts)

    def learn(self, text: str, parts: Iterable[tuple[str, Any]]) -> str:
        """Learn more: `{"entries": [body, …], "sealed": {task: digest}, "cursor": {…}}`, and parts."""
        told = json.loads(text)
        self.world.learn([trusted(body.encode()) for body in told.get("entries", ())],
                         [(name, None if data is None else bytes(data)) for name, data in parts],
                         told.get("sealed"), told.get("cursor"))
        return "{}"

    def answer(self, text: str) -> tuple[str, list[tuple[str, bytes]]]:
        """The page for a request: what is to be kept comes back with it and is learned only when it was kept."""
        asked = json.loads(text)
        world = self.world.on(asked["today"])
        told = as_registered(request_of(asked), world)
        given = arrived(told) if asked.get("arrived") else page_here(told, world)
        said = {"status": given.status, "html": given.html, "location": given.location, "headers": dict(given.headers),
                "keep": [entry.data.decode() for entry in given.keep]}
        return json.dumps(said, ensure_ascii=False), list(given.parts.items())

    def evaluate(self, text: str) -> str:
        """The evaluation of a task, as a statement holds it: the bytes that another machine must come to as well."""
        asked = json.loads(text)
        task = running(self.world.on(asked.get("today") or self.world.today), asked["task"])
        return canonical(evaluation(report(task.operation, task.evaluation))).decode()

    def parity(self, text: str) -> str:
        """What the server needs to work out a task as this phone does; empty for a task that is not here."""
        asked = json.loads(text)
        world = self.world.on(asked.get("today") or self.world.today)
        if world.sealed(asked["task"]) is not None or not world.entries(("task", asked["task"])):
            return ""
        return canonical(claim(world, asked["task"])).decode()


def page_here(request: Request, world: World) -> Answer:
    """The page, or the words that it is the server's: registers, records and people do not travel."""
    if not travels(request.path):
        return needs_server(request)
    return by_https(request) or answer(request, world)


def request_of(asked: Mapping[str, Any]) -> Request:
    """The request in a message; whatever was left out is as if nobody had said it."""
    plain = {name: asked[name] for name in PLAIN if name in asked}
    form = {name: tuple(texts) for name, texts in asked.get("form", {}).items()}
    notes = {task: tuple(words) for task, words in (asked.get("notes") or {}).items()}
    files = {name: tuple(Photo(one["mime"], bytes.fromhex(one["data"])) for one in photos)
             for name, photos in (asked.get("files") or {}).items()}
    told = Request(**plain, form=form, files=files, person=_person(asked.get("person")),
                   alarms=tuple(asked.get("alarms") or ()), notes=notes,
                   after_seal=tuple(asked.get("after_seal") or ()), evaluated_by=asked.get("evaluated_by", PHONE))
    signer = asked.get("verified")
    if not signer:
        return told
    return replace(told, verified=Verified(_known(signer["person"]), signer["how"], signer.get("key", "")))


def as_registered(told: Request, world: World) -> Request:
    """Whoever asks or was verified here is what the register says now, not what it said when he signed in."""
    person = None if told.person is None else _as_registered(told.person, world)
    verified = told.verified
    if verified is not None:
        verified = replace(verified, person=_as_registered(verified.person, world))
    return replace(told, person=person, verified=verified)


def _as_registered(person: Person, world: World) -> Person:
    return replace(person, capacities=capacities(world, person.id))


def _person(said: Mapping[str, Any] | None) -> Person | None:
    return _known(said) if said else None


def _known(said: Mapping[str, Any]) -> Person:
    return Person(said["id"], said["name"], said["role"], dict(said.get("capacities", {})))
