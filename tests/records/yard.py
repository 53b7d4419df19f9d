"""The invented yard in a real store, and lifts made in it entry by entry: what the tests of records stand on."""

import io
from collections.abc import Iterable
from pathlib import Path

from PIL import Image

from checklist_app.checklists import ink, signing, values
from checklist_app.checklists.answer import Person, Request
from checklist_app.checklists.authority import capacities
from checklist_app.checklists.canonical import digest
from checklist_app.checklists.entry import Entry, make
from checklist_app.checklists.fold import fold, seen
from checklist_app.checklists.holds import hold_state
from checklist_app.checklists.running import running
from checklist_app.checklists.signers import may_sign
from checklist_app.checklists.values import Value
from checklist_app.records.accounts import Accounts
from checklist_app.records.store import Store
from checklist_app.records.world import DatabaseWorld

BEGAN, DAY, DUE = "2026-06-01", "2026-11-25", "2027-02-08"
PEOPLE = {
    "milo-harke": ("Milo Harke", "rigger", ("rigger",)), "dunja-fell": ("Dunja Fell", "rigger", ("rigger",)),
    "agata-rusk": ("Agata Rusk", "supervisor", ("supervisor", "planner")), "lene-varga": ("Lene Varga", "auditor", ()),
    "sam-oduya": ("Sam Oduya", "administrator", ()),
}
BOUGHT = {"marked": "yes", "origin": "bought"}
RATINGS = [{"up_to_deg": "30", "wll_t": "2.5"}, {"up_to_deg": "45", "wll_t": "2"}]
SIDES = (("left", "-0.45"), ("right", "0.45"))
LOAD = {
    "name": "Vertical pump 400", "bottom_z_m": "0.00", "top_z_m": "2.45",
    "build_states": [{"state": "complete", "words": "with motor, dry", "mass_kg": "2350", "mass_how": "weighed",
                      "mass_on": "2026-05-01", "mass_evidence": "weighing slip", "cg_x_m": "0.02", "cg_y_m": "0.00",
                      "cg_z_m": "1.25", "cg_how": "trial", "cg_evidence": "trial lift"}],
    "pick_points": [{"point": side, "x_m": x, "y_m": "0.00", "z_m": "2.10", "evidence": "drawing", "states": "complete"}
                    for side, x in SIDES],
    "pick_ratings": [{"point": side, "up_to_deg": "30", "wll_t": "2"} for side, _ in SIDES],
}
ITEMS = (
    *(("person", name, "person/1",
       {"name": words, **({"capacities": [{"capacity": one, "until": "2027-12-31"} for one in held]} if held else {})})
      for name, (words, _, held) in PEOPLE.items()),
    ("place", "pump-bay", "place/1", {"name": "Pump bay", "room_height_m": "5.40", "highest_hook_m": "4.70"}),
    ("machine", "H-1", "hoist/1", {"wll_t": "5", "mass_kg": "310", "highest_hook_m": "4.70", "place": "pump-bay",
                                   "hook_counts": "no", **BOUGHT}),
    *(("gear", tag, "round_sling/1",
       {"wll_t": "3", "length_m": "1.50", "fibre": "polyester", "mass_kg": "1.9", **BOUGHT})
      for tag in ("R-21", "R-22", "F-11")),
    *(("gear", tag, "shackle/1", {"wll_t": "3.25", "reach_m": "0.061", "form": "bow", "mass_kg": "0.9", **BOUGHT})
      for tag in ("B-31", "B-32")),
    *(("gear", tag, "eye/1", {"reach_m": "0.052", "ratings": RATINGS, "mass_kg": "1.1", **BOUGHT})
      for tag in ("N-41", "N-42")),
    ("load", "vertical-pump-400", "load/1", LOAD),
)
ROWS = ("1-left", "2-right")
DRAWN = "[[20,70,60,20,70,50,40,80,80,90,110,30,100,90,140,60,180,70,200,50]]"


def yard(folder: Path) -> Store:
    """Four people, a place, a hoist, gear for two legs and a spare sling, and a load with two rated pick points."""
    store = Store(folder)
    for number, (register, name, schema, facts) in enumerate(ITEMS, 1):
        part, data = values.document_part(schema, facts, f"salt-{name}")
        told: list[tuple[str, Value]] = [("version", values.version(schema, part))]
        if register in ("gear", "machine"):
            told += [("custody", values.custody("in service", BEGAN)),
                     ("examination", values.examination("fit for use", BEGAN, DUE))]
        said = [make((register, name), (prompt,), value, (), "sam-oduya", "s-yard", 3 * number + place,
                     f"{BEGAN}T08:00:00Z")
                for place, (prompt, value) in enumerate(told)]
        store.keep(said, {part: data}, "s-yard", f"{BEGAN}T08:00:00Z")
    accounts = Accounts(store.database)
    for name, (words, role, _) in PEOPLE.items():
        accounts.add(name, words, role)
    return store


def jpeg(colour: str = "#808040") -> bytes:
    made = io.BytesIO()
    Image.new("RGB", (160, 120), colour).save(made, "JPEG")
    return made.getvalue()


class Lift:
    """One task in one person's hand at a time; a minute passes with every entry."""

    def __init__(self, store: Store, name: str = "t-d1-1", device: str = "d1") -> None:
        self.store, self.id, self.device, self.author = store, name, device, "milo-harke"
        self.counter, self.minute = 0, 8 * 60

    @property
    def world(self) -> DatabaseWorld:
        return DatabaseWorld(self.store, DAY)

    @property
    def at(self) -> str:
        return f"{DAY}T{self.minute // 60:02d}:{self.minute % 60:02d}:00Z"

    def say(self, path: str, value: Value, parts: dict[str, bytes] | None = None, replaces: bool = True) -> Entry:
        """One answer by somebody who sees what stands there."""
        where = tuple(path.split("/"))
        stands = seen(fold(self.world.entries(("task", self.id))), where) if replaces else ()
        self.counter, self.minute = self.counter + 1, self.minute + 1
        said = make(("task", self.id), where, value, stands, self.author, self.device, self.counter, self.at)
        self.store.keep([said], parts or {}, self.device, self.at)
        return said

    def words(self, path: str, kind: str, text: str) -> Entry:
        name, data = values.words_part(text, f"salt-{self.counter}")
        value = {"text": values.text, "stop": None, "go_on": None}.get(kind)
        return self.say(path, value(name) if value else {"type": kind, "part": name}, {name: data})

    def photo(self, path: str, data: bytes, arrives: bool = True) -> Entry:
        return self.say(path, values.photo(digest(data)), {digest(data): data} if arrives else {})

    def pick(self, path: str, subject: str, point: str = "") -> Entry:
        register, _, name = subject.partition("/")
        item = self.world.item(register, name)
        assert item is not None and item.version is not None, subject
        return self.say(path, values.pick(subject, item.version, point))

    def tick(self, paths: Iterable[str]) -> None:
        for path in paths:
            self.say(path, values.tick("yes"))

    def plan(self, load: str = "vertical-pump-400", state: str = "complete", sling: str = "R-21 R-22") -> "Lift":
        """Everything up to the stop points."""
        self.say("begin", {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"})
        self.pick("load", f"load/{load}")
        self.say("build_state", values.choice(state))
        self.pick("place", "place/pump-bay")
        self.words("landing", "text", "test bed")
        self.say("day", values.date(DAY))
        self.words("signaller", "text", "Dunja Fell")
        self.pick("hoist", "machine/H-1")
        self.say("hoist_felt", values.tick("yes"))
        for slot in ("load_cell", "hook_fitting"):
            self.say(slot, values.not_used())
        for row, tag, shackle, eye in zip(ROWS, sling.split(), ("B-31", "B-32"), ("N-41", "N-42"), strict=True):
            self.leg(row, tag, shackle, eye, load)
        self.say("lift_height_m", values.number("0.30", "m", "tape"))
        return self

    def leg(self, row: str, sling: str, shackle: str, eye: str, load: str) -> None:
        self.say(f"leg/{row}", values.row("present"))
        for slot, tag in (("sling", sling), ("bottom_fitting", shackle), ("eye", eye)):
            self.pick(f"leg/{row}/{slot}", f"gear/{tag}")
            self.say(f"leg/{row}/{slot}_felt", values.tick("yes"))
        self.say(f"leg/{row}/top_fitting", values.not_used())
        self.say(f"leg/{row}/hitch", values.choice("straight"))
        self.pick(f"leg/{row}/carrier", f"load/{load}", row.partition("-")[2])

    def stop_points(self) -> "Lift":
        procedure = running(self.world, self.id).procedure
        for prompt in procedure.stage("stop-points").prompts():
            kind = prompt.kind.value
            if kind == "tick":
                self.say(prompt.name, values.tick("yes"))
            elif kind == "choice":
                self.say(prompt.name, values.choice(prompt.right or prompt.choices[0]))
        self.photo("rigged_photo", jpeg())
        return self

    def trial(self) -> "Lift":
        self.say("trial/1-first", values.row("present"))
        for name, text, unit, how in (("lifted_mm", "50", "mm", ""), ("held_s", "60", "s", ""),
                                      ("tilt_along_deg", "0.8", "°", "inclinometer"),
                                      ("tilt_across_deg", "0.1", "°", "inclinometer")):
            self.say(f"trial/1-first/{name}", values.number(text, unit, how))
        self.say("trial/1-first/hook_load_kg", values.not_used())
        self.tick(f"trial/1-first/{name}" for name in ("came_free", "eyes_stay", "brake_holds", "clear_of_load"))
        return self

    def sign(self, hold: str, person: str, drawn: str = DRAWN) -> Entry:
        """A sign-off by the code that the signing page uses."""
        world, task = self.world, running(self.world, self.id)
        found = task.procedure.hold(hold)
        item = world.item("person", person)
        assert found is not None and item is not None
        state, name = hold_state(world, task, found), str(item.facts["name"])
        role = "rigger" if person in ("milo-harke", "dunja-fell") else "supervisor"
        who = Person(person, name, role, capacities(world, person))
        may = may_sign(task, state, who, DAY)
        self.counter, self.minute = self.counter + 1, self.minute + 1
        request = Request("POST", "/", form={"ink": (drawn,)}, device=self.device, counter=self.counter, at=self.at,
                          salt=f"salt-{self.counter}")
        signed = signing.sign(request, world, task, state, who, "pin", may)
        self.store.keep(signed.keep, signed.parts, self.device, self.at)
        return signed.keep[0]

    def landed(self) -> "Lift":
        self.tick(("way_clear", "still_closed", "lines_held", "landing_still", "nothing_new"))
        self.tick(("landed", "secured", "slack"))
        self.say("went", values.choice("as planned"))
        return self

    def close(self, how: str = "completed", why: str = "") -> Entry:
        if not why:
            return self.say("closing", {"type": "closing", "text": how})
        name, data = values.words_part(why, f"salt-{self.counter}")
        return self.say("closing", {"type": "closing", "text": how, "part": name}, {name: data})


def whole_lift(store: Store, name: str = "t-d1-1", device: str = "d1") -> Lift:
    """A lift that goes well from end to end."""
    lift = Lift(store, name, device).plan().stop_points()
    lift.sign("release", "agata-rusk")
    lift.trial()
    lift.sign("trial_accepted", "agata-rusk")
    lift.landed()
    lift.close()
    return lift


__all__ = ["DAY", "Lift", "ink", "jpeg", "whole_lift", "yard"]
