"""A small yard in memory: people, gear, one load, and a straight lift filled in up to any point."""
from collections.abc import Mapping
from typing import Any

from checklist_app.checklists import values
from checklist_app.checklists.answer import Answer, Person, Request, Verified, answer
from checklist_app.checklists.entry import Entry, Path, make
from checklist_app.checklists.fold import fold, seen, seen_in_row
from checklist_app.checklists.holds import hold_state
from checklist_app.checklists.places import places
from checklist_app.checklists.procedure import PromptKind, procedures
from checklist_app.checklists.running import running
from checklist_app.checklists.values import Value
from checklist_app.checklists.world import MemoryWorld

DAY = "2026-11-25"
TASK = "t-1"
RIGGER, SUPERVISOR, SECOND, PLANNER, RUN_OUT = "p-rigger", "p-super", "p-second", "p-planner", "p-runout"
PEOPLE = {
    RIGGER: ("Milo Harke", "rigger", {"rigger": "2027-06-30"}),
    SUPERVISOR: ("Agata Rusk", "supervisor", {"supervisor": "2027-06-30"}),
    SECOND: ("Owen Thrale", "supervisor", {"supervisor": "2027-06-30", "planner": "2027-06-30"}),
    PLANNER: ("Rhona Pike", "supervisor", {"planner": "2027-06-30"}),
    RUN_OUT: ("Benno Clay", "supervisor", {"supervisor": "2026-11-24"}),
}
RATED = [{"up_to_deg": "45", "wll_t": "1.2"}]
BOUGHT = {"marked": "yes", "origin": "bought"}
LOAD = {
    "name": "Pump 250", "bottom_z_m": "0", "top_z_m": "1.85",
    "build_states": [
        {"state": "complete", "words": "with motor, dry", "mass_kg": "890", "mass_how": "weighed", "cg_x_m": "0.01",
         "cg_y_m": "0", "cg_z_m": "0.95", "cg_how": "trial"},
        {"state": "bare", "words": "without motor", "mass_kg": "600", "mass_how": "weighed", "cg_x_m": "0",
         "cg_y_m": "0", "cg_z_m": "0.8", "cg_how": "trial"}],
    "pick_points": [{"point": "left", "x_m": "-0.30", "y_m": "0", "z_m": "1.60", "evidence": "drawing"},
                    {"point": "right", "x_m": "0.30", "y_m": "0", "z_m": "1.60", "evidence": "drawing"}],
    "pick_ratings": [{"point": "left", "up_to_deg": "45", "wll_t": "1.2"},
                     {"point": "right", "up_to_deg": "45", "wll_t": "1.2"}],
}
GEAR: dict[str, tuple[str, str, dict[str, Any]]] = {
    **{f"R-{n}": ("gear", "round_sling", {"wll_t": "2", "length_m": "1.50", "mass_kg": "1.3"}) for n in (1, 2, 3)},
    "R-4": ("gear", "round_sling", {"wll_t": "0.5", "length_m": "1.50", "mass_kg": "0.5"}),
    **{f"S-{n}": ("gear", "shackle", {"wll_t": "2", "reach_m": "0.06", "mass_kg": "0.7"}) for n in (1, 2, 3)},
    **{f"E-{n}": ("gear", "eye", {"reach_m": "0.05", "mass_kg": "0.9", "ratings": RATED}) for n in (1, 2, 3)},
    "S-9": ("gear", "shackle", {"wll_t": "4.75", "reach_m": "0.10", "mass_kg": "2.3"}),
    "C-1": ("gear", "load_cell", {"wll_t": "5", "reach_m": "0.30", "mass_kg": "6", "calibrated_until": "2027-01-01"}),
    "H-1": ("machine", "hoist", {"wll_t": "3.2", "mass_kg": "220", "highest_hook_m": "4.20", "hook_counts": "no"}),
    "H-2": ("machine", "hoist", {"wll_t": "5", "mass_kg": "310", "highest_hook_m": "4.70", "hook_counts": "no"}),
}
REACHES_KILLER = {"hook_over": "over the centre of gravity", "mass_known": "weighed", "went": "as planned"}


class Yard:
    """Entries as people make them, each replacing what its author saw."""

    def __init__(self, today: str = DAY) -> None:
        self.today = today
        self.entries: list[Entry] = []
        self.parts: dict[str, bytes] = {}
        for name, (title, _, held) in PEOPLE.items():
            rows = [{"capacity": capacity, "until": until} for capacity, until in held.items()]
            self.item("person", name, "person", {"name": title, "capacities": rows})
        for name, (register, kind, facts) in GEAR.items():
            self.item(register, name, kind, {**BOUGHT, **facts})
        self.item("load", "L-1", "load", LOAD)
        self.item("place", "P-1", "place", {"name": "Pump bay", "room_height_m": "5.40", "highest_hook_m": "4.70"})
        self.item("place", "P-2", "place", {"name": "Test bed", "room_height_m": "5.00", "highest_hook_m": "4.50"})

    @property
    def world(self) -> MemoryWorld:
        cursor = {"number": len(self.entries), "head": "0"}
        return MemoryWorld(self.entries, self.parts, today=self.today, cursor=cursor)

    def put(self, about: Path, path: Path, value: Value, who: str = RIGGER, replaces: tuple[str, ...] | None = None,
            at: str = "") -> Entry:
        folded = fold(entry for entry in self.entries if entry.about == about)
        shown = seen_in_row(folded, path) if value == values.row("absent") else seen(folded, path)
        number = len(self.entries) + 1
        said = make(about, path, value, shown if replaces is None else replaces, who, f"d-{who}", number,
                    at or moment(self.today, "09", number))
        self.entries.append(said)
        return said

    def item(self, register: str, name: str, kind: str, facts: Mapping[str, Any]) -> Entry:
        part, data = values.document_part(f"{kind}/1", facts, "salt")
        self.parts[part] = data
        about = (register, name)
        if register in ("gear", "machine") and not any(entry.about == about for entry in self.entries):
            self.put(about, ("custody",), values.custody("in service", "2026-01-01"), SUPERVISOR)
            self.put(about, ("examination",), values.examination("ok", "2026-06-01", "2027-06-01"), SUPERVISOR)
        return self.put(about, ("version",), values.version(f"{kind}/1", part), SUPERVISOR)

    def say(self, path: str, value: Value, who: str = RIGGER, **named: Any) -> Entry:
        return self.put(("task", TASK), tuple(path.split("/")), value, who, **named)

    def pick(self, path: str, subject: str, point: str = "", who: str = RIGGER) -> Entry:
        register, _, name = subject.partition("/")
        item = self.world.item(register, name)
        assert item is not None and item.version is not None
        return self.say(path, values.pick(subject, item.version, point), who)

    def text(self, path: str, words: str, who: str = RIGGER) -> Entry:
        part, data = values.words_part(words, f"salt-{len(self.entries)}")
        self.parts[part] = data
        return self.say(path, values.text(part), who)

    def photo(self, path: str) -> Entry:
        part, data = values.words_part(path, f"photo-{len(self.entries)}")
        self.parts[part] = data
        return self.say(path, values.photo(part))

    def planned(self) -> "Yard":
        """Load, place, kit and numbers are answered; nothing is ticked yet."""
        self.say("begin", {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"})
        self.say("leg/1-left", values.row("present"))
        self.say("leg/2-right", values.row("present"))
        self.pick("load", "load/L-1")
        self.say("build_state", values.choice("complete"))
        self.pick("place", "place/P-1")
        self.say("day", values.date(DAY))
        self.text("signaller", "Dunja Fell")
        self.text("landing", "Test bed")
        self.pick("hoist", "machine/H-1")
        self.say("load_cell", values.not_used())
        self.pick("hook_fitting", "gear/S-9")
        for number, side in (("1", "left"), ("2", "right")):
            row = f"leg/{number}-{side}"
            self.pick(f"{row}/sling", f"gear/R-{number}")
            self.say(f"{row}/hitch", values.choice("straight"))
            self.say(f"{row}/top_fitting", values.not_used())
            self.pick(f"{row}/bottom_fitting", f"gear/S-{number}")
            self.pick(f"{row}/eye", f"gear/E-{number}")
            self.pick(f"{row}/carrier", "load/L-1", side)
        self.say("lift_height_m", values.number("0.5", "m", "tape"))
        return self

    def ticked(self, *stages: str) -> "Yard":
        """Every tick and choice of these stages, and each piece of gear looked at and felt."""
        folded = fold(entry for entry in self.entries if entry.about == ("task", TASK))
        for place in places(procedures()["straight_lift/1"], folded):
            if place.stage.name not in stages or place.path in folded.values:
                continue
            if place.prompt.kind is PromptKind.TICK:
                self.say(place.name, values.tick("yes"))
            elif place.prompt.kind is PromptKind.CHOICE:
                self.say(place.name, values.choice(REACHES_KILLER.get(place.prompt.name, place.prompt.choices[0])))
        for place in places(procedures()["straight_lift/1"], folded):
            if place.prompt.felt and folded.values.get(place.path, {}).get("type") == "pick":
                self.say("/".join(place.felt_path), values.tick("yes"))
        return self

    def ready(self) -> "Yard":
        """Everything that release asks for."""
        return self.planned().ticked("kit", "stop-points")

    def trial(self, row: str = "01-1", tilt: str = "0.4", who: str = RIGGER) -> "Yard":
        """A trial lift with its readings."""
        self.say(f"trial/{row}", values.row("present"), who)
        self.say(f"trial/{row}/lifted_mm", values.number("50", "mm"), who)
        self.say(f"trial/{row}/held_s", values.number("60", "s"), who)
        self.say(f"trial/{row}/hook_load_kg", values.not_used(), who)
        for name in ("tilt_along_deg", "tilt_across_deg"):
            self.say(f"trial/{row}/{name}", values.number(tilt, "°", "inclinometer"), who)
        return self.ticked("trial")


def moment(day: str, hour: str, number: int) -> str:
    return f"{day}T{hour}:{number // 60 % 60:02d}:{number % 60:02d}Z"


def person(name: str) -> Person:
    title, role, held = PEOPLE[name]
    return Person(name, title, role, held)


def request(yard: Yard, path: str, signed_in: str = RIGGER, pin_of: str = "", **form: str) -> Request:
    """A page asked for, or a form sent, by somebody on his own device."""
    number = len(yard.entries) + 1
    return Request(
        method="POST" if form else "GET", path=path.partition("?")[0],
        query=dict(pair.split("=", 1) for pair in path.partition("?")[2].split("&") if pair),
        form={name: (text,) for name, text in form.items()}, person=person(signed_in), device=f"d-{signed_in}",
        counter=number, at=moment(yard.today, "11", number), salt=f"s{number}",
        form_token="token", verified=Verified(person(pin_of), "pin") if pin_of else None,
    )


def sent(yard: Yard, path: str, signed_in: str = RIGGER, pin_of: str = "", **form: str) -> Answer:
    """A form sent; what the answer keeps is kept."""
    given = answer(request(yard, path, signed_in, pin_of, **form), yard.world)
    yard.entries.extend(given.keep)
    yard.parts.update(given.parts)
    return given


def sign(yard: Yard, hold: str, who: str, signed_in: str = RIGGER, **form: str) -> Answer:
    """The signature of `who` at a hold point, on the device of whoever is signed in."""
    now = running(yard.world, TASK)
    found = now.procedure.hold(hold)
    assert found is not None
    shown = hold_state(yard.world, now, found).seen.fingerprint
    filled = {"act": "sign", "signer": who, "typed": PEOPLE[who][0], "shown": shown, **form}
    return sent(yard, f"/tasks/{TASK}/holds/{hold}", signed_in, who, **filled)
