"""The finished lifts of the invented yard, each carried out page by page in the app itself."""

import re
import sys
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from pathlib import Path
from typing import Any

from checklist_app.checklists.places import label
from checklist_app.checklists.procedure import Procedure, PromptKind, newest
from checklist_app.demo.data import pins, table
from checklist_app.demo.phone import Clock, Phone
from checklist_app.web.app import create_app

OPERATION = "straight_lift"
SEEN = re.compile(r'name="shown" value="([^"]*)"')
TRIAL = re.compile(r"step=lifted\.([\w-]+)")
TWO_LEGS = "two legs on one hook"
STARTS = (time(7, 40), time(13, 10))
TO_THE_HOLD = timedelta(minutes=40)
WHY_NONE = "not needed here"
STILL = "indoors, straight up and down"
KNOWN_BY = {
    "load_length_m": "tape", "load_width_m": "tape", "side_room_m": "tape", "hook_below_m": "drawing",
    "travel_speed_m_s": "plate", "stopping_m": "tape", "gust_m_s": "measured", "tag_length_m": "tape",
    "tag_below_deg": "inclinometer", "tag_off_plumb_m": "tape",
}
WIND = ("gust_m_s", "wind_shape", "tag_line", "tag_length_m", "tag_below_deg", "tag_off_plumb_m")
CUT_OFF = "The demonstration was cut off here."
BEGUN, DONE = "demo-lifts.txt", "done"


Script = Mapping[str, Any]


def carry_out(folder: Path, now: datetime, scripts: Sequence[Script]) -> None:
    """Every lift that was not begun yet, on its own day; one that was cut off is given up.

    Args:
        folder: Filled with people and registers; holds the PINs, and the list of the tasks that were begun.
        now: The instant the days count from.
        scripts: As `demo_data/lifts.toml` has them.
    """
    clock = Clock(now)
    app = create_app(folder, CLOCK=clock, ZONE=UTC)
    people, begun = signers(folder), Begun(folder / BEGUN)
    for number in range(max(0, len(begun.tasks) - 1), len(scripts)):
        script = scripts[number]
        clock.at = start(script, scripts[:number], now)
        phone = Phone(app)
        phone.sign_in(people[script["rigger"]].name, people[script["rigger"]].pin)
        Lift(phone, clock, script, people, begun).carry_out(number)
    begun.add(DONE)
    app.extensions["store"].close()


def start(script: Script, earlier: Sequence[Script], now: datetime) -> datetime:
    """When a lift begins: in the morning, the second of a day after noon, today's so that it is ready by now."""
    if script["day"] == 0:
        return now - TO_THE_HOLD
    second = any(other["day"] == script["day"] for other in earlier)
    return datetime.combine(now.date() + timedelta(days=script["day"]), STARTS[second], UTC)


@dataclass(frozen=True)
class Signer:
    """Somebody of the yard, with the PIN he was given."""

    name: str
    pin: str


def signers(folder: Path) -> dict[str, Signer]:
    """Everybody of a filled demonstration, by id."""
    kept = pins(folder)
    return {one["id"]: Signer(one["name"], kept[one["name"]]["pin"]) for one in table("people")["person"]}


class Begun:
    """The tasks that were begun, one a line, so that a demonstration that was cut off goes on where it was."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self.tasks = path.read_text(encoding="utf-8").split() if path.exists() else []

    @property
    def all_done(self) -> bool:
        return self.tasks[-1:] == [DONE]

    def add(self, task: str) -> None:
        self.tasks.append(task)
        self.path.write_text("\n".join(self.tasks), encoding="utf-8")


class Lift:
    """One task from *begin* to its closing, as its script says."""

    def __init__(self, phone: Phone, clock: Clock, script: Script, people: Mapping[str, Signer],
                 begun: Begun) -> None:
        self.phone, self.clock, self.script, self.people, self.begun = phone, clock, script, people, begun
        self.procedure: Procedure = newest(OPERATION)
        self.rig = script.get("rig", TWO_LEGS)
        self.sides = self.procedure.follows["leg"].rows[self.rig]
        self.task = ""

    def carry_out(self, number: int) -> None:
        """From the first page to the last; what was begun before and left open is only closed."""
        if number < len(self.begun.tasks):
            self.give_up(self.begun.tasks[number])
            return
        self.begin()
        self.fetch_kit()
        self.enter_numbers()
        self.tick("stop-points", choices={"mass_known": "weighed"})
        self.release()
        self.try_it()
        self.move_and_close()

    def begin(self) -> None:
        sent = self.phone.send("/begin", operation=OPERATION, lift=f"{self.script['load']}|{self.script['state']}",
                               place=self.script["place"], day=self.clock.at.date().isoformat())
        self.task = sent.headers["Location"].rsplit("/", 1)[0]
        self.begun.add(self.task)
        self.post("what?step=lift", landing=self.script["landing"], signaller=self.script["signaller"])

    def fetch_kit(self) -> None:
        script = self.script
        self.post("kit/rig", rig=self.rig)
        self.slot("hoist", f"machine/{script['hoist']}")
        self.slot("load_cell", gear(script.get("load_cell")))
        self.slot("hook_fitting", gear(script.get("hook_fitting")))
        for number, side in enumerate(self.sides):
            row = f"leg.{side}"
            self.slot(f"{row}.top_fitting", None)
            self.slot(f"{row}.sling", gear(script["slings"][number]))
            self.post(f"kit/{row}.hitch", **{f"leg/{side}/hitch": script.get("hitch", {}).get("hitch", "straight")})
            self.slot(f"{row}.bottom_fitting", gear(script["bottom"][number]) if "bottom" in script else None)
            self.slot(f"{row}.eye", None)
            self.post(f"kit/{row}.carrier", **{f"leg/{side}/carrier": f"load/{script['load']}@{label(side)}"})

    def slot(self, slot: str, subject: str | None) -> None:
        """Fetched, looked at and felt; or answered that there is none."""
        if subject is None:
            self.post(f"kit/{slot}", not_used="yes", why=WHY_NONE)
            return
        self.post(f"kit/{slot}", pick=subject)
        self.post(f"kit/{slot}", **{f"{slot.replace('.', '/')}_felt": "yes"})

    def enter_numbers(self) -> None:
        if (mass := self.script.get("mass_kg")) is not None:
            self.post("numbers?step=mass", **{"mass_kg": mass["text"], "mass_kg.how": mass["how"]})
        self.post("numbers?step=legs", **{"legs_given": "lengths"} | self.script.get("legs", {}))
        for side in self.sides if "hitch" in self.script else ():
            self.post(f"numbers?step=hitch.{side}", **{
                f"leg/{side}/{name}": text for name, text in self.script["hitch"].items() if name != "hitch"})
        self.post("numbers?step=around", sling_temperature_c="20", chemicals="none")
        self.post("numbers?step=heights",
                  **{"lift_height_m": self.script["lift_height_m"], "lift_height_m.how": "tape"})
        self.say_way({"way": STILL} | self.script["way"])

    def say_way(self, way: Mapping[str, str]) -> None:
        """Where it goes; of wind and tag lines only what this way is asked."""
        for step, names in (("way", way.keys() - set(WIND)), ("wind", way.keys() & set(WIND))):
            how = {f"{name}.how": KNOWN_BY[name] for name in names if name in KNOWN_BY}
            if names:
                self.post(f"numbers?step={step}", **{name: way[name] for name in names} | how)

    def release(self) -> None:
        self.sign("release", self.script.get("release", ()))
        if (swapped := self.script.get("swapped")) is not None:
            self.slot(swapped["slot"], gear(swapped["to"]))
            self.sign("release", self.script["again"])

    def try_it(self) -> None:
        if (trial := self.script.get("trial")) is None:
            return
        row = TRIAL.search(self.post("trial", act="add").headers["Location"]).group(1)  # type: ignore[union-attr]
        read = {f"trial/{row}/{name}": text for name, text in trial.items()}
        how = {f"trial/{row}/{name}.how": "inclinometer" for name in trial if name.startswith("tilt")}
        weighed = {f"trial/{row}/hook_load_kg.how": "load cell"} if "hook_load_kg" in trial else {
            f"trial/{row}/hook_load_kg.not_used": "yes", f"trial/{row}/hook_load_kg.reason": "No load cell"}
        self.post(f"trial?step=lifted.{row}", **read | how | weighed)
        self.tick("trial", row=row)
        self.sign("trial_accepted", self.script["accepted"])

    def move_and_close(self) -> None:
        if (stop := self.script.get("stop")) is not None:
            self.stop(stop)
        if "accepted" in self.script or self.script.get("unsigned"):
            self.tick("move")
            self.tick("close-out", choices={"went": self.script["went"], "gear_back": "all looked at and put back"})
        if "closing" in self.script:
            self.post("close-out", act="close", closing=self.script["closing"], words=self.script.get("words", ""))

    def give_up(self, task: str) -> None:
        """A task that is sealed answers with its record; one that is open is closed."""
        self.task = task
        if "closing" in self.script and not self.phone.is_sealed(task):
            self.post("close-out", act="close", closing="abandoned", words=CUT_OFF)

    def stop(self, stop: Mapping[str, str]) -> None:
        """By somebody else, on a phone of his own."""
        mine, self.phone = self.phone, Phone(self.phone.client.application)
        self.phone.sign_in(self.people[stop["by"]].name, self.people[stop["by"]].pin)
        self.post("stop")
        self.post("stop", act="why", **{"stop_why": stop["why"]})
        self.phone = mine

    def tick(self, stage: str, choices: Mapping[str, str] | None = None, row: str = "") -> None:
        """Every tick of a stage *yes*, every choice as its script or the procedure says."""
        for step in self.procedure.stage(stage).steps:
            said = {f"{step.group}/{row}/{prompt.name}" if row and step.group else prompt.name: answer
                    for prompt in step.prompts if (answer := self._answer(prompt, choices or {}))}
            if said:
                self.post(f"{stage}?step={step.name}{'.' + row if row and step.group else ''}", **said)

    def _answer(self, prompt: Any, choices: Mapping[str, str]) -> str:
        if prompt.kind is PromptKind.TICK:
            return "yes"
        return choices.get(prompt.name) or prompt.right if prompt.kind is PromptKind.CHOICE else ""

    def sign(self, hold: str, people: tuple[str, ...] | list[str]) -> None:
        """Each signer reviews on the rigger's phone and signs with a PIN of his own."""
        for person in people:
            page = self.phone.open(f"{self.task}/holds/{hold}?act=sign").get_data(as_text=True)
            if (shown := SEEN.search(page)) is None:
                raise RuntimeError(f"{self.script['load']}, {hold} cannot be signed: {page}")
            self.post(f"holds/{hold}", act="sign", shown=shown.group(1), signer=person,
                      pin=self.people[person].pin, typed=self.people[person].name)

    def post(self, where: str, **form: str) -> Any:
        self.clock.later(seconds=40)
        return self.phone.send(f"{self.task}/{where}", **form)


def gear(name: str | None) -> str | None:
    return None if name is None else f"gear/{name}"


if __name__ == "__main__":
    carry_out(Path(sys.argv[1]), datetime.now(UTC), table("lifts")["lift"])
