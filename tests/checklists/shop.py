"""A whole shop in memory: the registers of the demonstration, its people, and tasks begun by answering pages."""
import tomllib
from dataclasses import replace
from datetime import date, timedelta
from itertools import count
from pathlib import Path
from typing import Any

from checklist_app.checklists import values
from checklist_app.checklists.answer import Answer, Person, Request, answer
from checklist_app.checklists.begun import add_item
from checklist_app.checklists.made import Made
from checklist_app.checklists.world import MemoryWorld
from checklist_app.operations.kinds import KINDS

TODAY = "2026-11-25"
DATA = Path(__file__).parents[2] / "demo_data"
RIGGER = Person("tomas", "Tomas Brandt", "rigger", {"rigger": "2027-06-30"})
SUPERVISOR = Person("ines", "Ines Okoro", "supervisor", {"supervisor": "2027-06-30"})
AUDITOR = Person("ada", "Ada Lowe", "auditor", {})
LOAD = "VP-400"
LEGS = ("1-left", "2-right")
TWO_LEGS = "two legs on one hook"
AROUND = {"sling_temperature_c": "20", "chemicals": "none"}
WAY = {
    "way": "indoors, straight up and down", "load_length_m": "1.60", "load_length_m.how": "tape",
    "load_width_m": "0.90", "load_width_m.how": "tape",
}
LIES = {"shackle_pull": "in line with its body", "shackle_pin": "one part, and nothing runs over it"}
NUMBERS = {"lift_height_m": "0.50", "lift_height_m.how": "tape"}


class Shop:
    """One phone in a shop: `get` and `post` answer as the server does, and what is to be kept is kept."""

    def __init__(self, person: Person | None = RIGGER) -> None:
        self.person = person
        self._counter = 1
        self._salts = count()
        made = _registers(self.request("POST", "/"))
        self.entries, self.parts, self.sealed = list(made.keep), dict(made.parts), dict[str, str]()
        self._counter = 1000

    @property
    def world(self) -> MemoryWorld:
        """Everything that was kept."""
        return MemoryWorld(self.entries, self.parts, today=TODAY, sealed=self.sealed)

    def get(self, address: str, **named: Any) -> Answer:
        """A page by its address, query and all."""
        path, _, query = address.partition("?")
        pairs = [pair.partition("=") for pair in query.split("&")] if query else []
        return answer(self.request("GET", path, query={name: text for name, _, text in pairs}, **named), self.world)

    def post(self, address: str, form: dict[str, str] | None = None, **named: Any) -> Answer:
        """A form sent; its entries are kept."""
        path, _, query = address.partition("?")
        pairs = [pair.partition("=") for pair in query.split("&")] if query else []
        sent = {name: (text,) for name, text in (form or {}).items()}
        request = self.request("POST", path, form=sent, query={name: text for name, _, text in pairs}, **named)
        given = answer(request, self.world)
        self.keep(given)
        return given

    def keep(self, given: Answer) -> None:
        """Put what a page wants kept into the world."""
        self.entries.extend(given.keep)
        self.parts.update(given.parts)
        self._counter += len(given.keep)

    def begin(self, load: str = LOAD, state: str = "complete", place: str = "pump-bay", rig: str = TWO_LEGS) -> str:
        """A task on the pump, begun by its form, and how it is slung; the task's id."""
        form = {"operation": "straight_lift", "lift": f"{load}|{state}", "place": place, "day": TODAY}
        given = self.post("/begin", form)
        assert given.location is not None, given.html
        task = given.location.split("/")[2]
        self.post(f"/tasks/{task}/kit/rig", {"rig": rig})
        return task

    def rig(self, task: str) -> None:
        """Everything picked, felt and measured: the lift that is within its limits."""
        for slot, picked in {"hoist": "machine/H-1", "load_cell": "", "hook_fitting": "", **_legs()}.items():
            self.post(f"/tasks/{task}/kit/{slot}", {"pick": picked} if picked else {"not_used": "yes"})
            name = slot.replace(".", "/")
            if picked:
                self.post(f"/tasks/{task}/kit/{slot}", {f"{name}_felt": "yes", f"{name}_felt.seen": "{}"})
        for leg, side in zip(LEGS, ("left", "right"), strict=True):
            self.post(f"/tasks/{task}/kit/leg.{leg}.hitch", {f"leg/{leg}/hitch": "straight"})
            self.post(f"/tasks/{task}/kit/leg.{leg}.carrier", {f"leg/{leg}/carrier": f"load/{LOAD}@{side}"})
            lies = {f"leg/{leg}/{name}": said for name, said in LIES.items()}
            self.post(f"/tasks/{task}/numbers?step=lies.{leg}", lies)
        self.post(f"/tasks/{task}/numbers?step=legs", {"legs_given": "lengths"})
        self.post(f"/tasks/{task}/numbers?step=around", AROUND)
        self.post(f"/tasks/{task}/numbers?step=heights", NUMBERS)
        self.post(f"/tasks/{task}/numbers?step=way", WAY)
        self.post(f"/tasks/{task}/what", {"signaller": "M. Halloway"})

    def request(self, method: str, path: str, **named: Any) -> Request:
        made = Request(method, path, person=self.person, device="s-1", counter=self._counter,
                       at=f"{TODAY}T08:00:00Z", salt=f"salt{next(self._salts)}", form_token="token")
        return replace(made, **named)


def _legs() -> dict[str, str]:
    """Slings, fittings and eyes of both legs, of the yard's own gear."""
    gear = {"sling": ("R-21", "R-22"), "top_fitting": ("", ""), "bottom_fitting": ("B-31", "B-32"), "eye": ("", "")}
    return {f"leg.{leg}.{slot}": f"gear/{ids[number]}" if ids[number] else ""
            for slot, ids in gear.items() for number, leg in enumerate(LEGS)}


def _registers(request: Request) -> Made:
    made = Made(request)
    for name in ("gear", "machines", "loads", "places"):
        for item in tomllib.loads((DATA / f"{name}.toml").read_text("utf-8"))["item"]:
            kind = KINDS[item["kind"]]
            add_item(made, kind.register, item["id"], kind.schema, _dated(item["facts"]), TODAY)
            if "due" in item:
                _examined(made, (kind.register, item["id"]), item["due"])
    return made


def _examined(made: Made, about: tuple[str, str], due: int) -> None:
    made.say(about, ("examination",), values.examination("in order", _day(-30), _day(due)))
    incoming = [entry.digest for entry in made.keep if entry.about == about and entry.path == ("custody",)]
    made.say(about, ("custody",), values.custody("in service", _day(-30)), incoming)


def _dated(facts: Any) -> Any:
    """The facts as a register keeps them: whole numbers are days from today."""
    if isinstance(facts, dict):
        return {name: _dated(value) for name, value in facts.items()}
    if isinstance(facts, list):
        return [_dated(value) for value in facts]
    return _day(facts) if isinstance(facts, int) else facts


def _day(offset: int) -> str:
    return (date.fromisoformat(TODAY) + timedelta(days=offset)).isoformat()
