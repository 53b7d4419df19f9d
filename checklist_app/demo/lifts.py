"""The finished lifts of the invented yard, each carried out page by page in the app itself."""

import re
from collections.abc import Mapping
from typing import Any

from checklist_app.checklists.places import label
from checklist_app.demo.phone import Phone
from checklist_app.demo.work import Work

TRIAL = re.compile(r"step=lifted\.([\w-]+)")
TWO_LEGS = "two legs on one hook"
STILL = "indoors, straight up and down"
KNOWN_BY = {
    "load_length_m": "tape", "load_width_m": "tape", "side_room_m": "tape", "hook_below_m": "drawing",
    "travel_speed_m_s": "plate", "stopping_m": "tape", "gust_m_s": "measured", "tag_length_m": "tape",
    "tag_below_deg": "inclinometer", "tag_off_plumb_m": "tape",
}
LIES = {"shackle_pull": "in line with its body", "shackle_pin": "one part, and nothing runs over it"}
WIND = ("gust_m_s", "wind_shape", "tag_line", "tag_length_m", "tag_below_deg", "tag_off_plumb_m")


class Lift(Work):
    """One lift, as `demo_data/lifts.toml` has it."""

    def __init__(self, *of: Any) -> None:
        super().__init__(*of)
        self.rig = self.script.get("rig", TWO_LEGS)
        self.sides = self.procedure.follows["leg"].rows[self.rig]

    def do(self) -> None:
        self.post("what?step=lift", landing=self.script["landing"], signaller=self.script["signaller"])
        self.fetch_kit()
        self.enter_numbers()
        self.tick("stop-points", choices={"mass_known": "weighed"})
        self.release()
        self.try_it()
        self.move()
        self.close()

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

    def enter_numbers(self) -> None:
        if (mass := self.script.get("mass_kg")) is not None:
            self.post("numbers?step=mass", **{"mass_kg": mass["text"], "mass_kg.how": mass["how"]})
        self.post("numbers?step=legs", **{"legs_given": "lengths"} | self.script.get("legs", {}))
        for side in self.sides if "hitch" in self.script else ():
            self.post(f"numbers?step=hitch.{side}", **{
                f"leg/{side}/{name}": text for name, text in self.script["hitch"].items() if name != "hitch"})
        for side in self.sides if "bottom" in self.script else ():
            self.post(f"numbers?step=lies.{side}", **{f"leg/{side}/{name}": text for name, text in LIES.items()})
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

    def move(self) -> None:
        if (stop := self.script.get("stop")) is not None:
            self.stop(stop)
        if "accepted" in self.script or self.script.get("unsigned"):
            self.tick("move")
            self.tick("close-out", choices={"went": self.script["went"], "gear_back": "all looked at and put back"})

    def stop(self, stop: Mapping[str, str]) -> None:
        """By somebody else, on a phone of his own."""
        mine, self.phone = self.phone, Phone(self.phone.client.application)
        self.phone.sign_in(self.people[stop["by"]].name, self.people[stop["by"]].pin)
        self.post("stop")
        self.post("stop", act="why", **{"stop_why": stop["why"]})
        self.phone = mine


def gear(name: str | None) -> str | None:
    return None if name is None else f"gear/{name}"
