"""The lashings of the invented yard, on a skid and on a lorry, each carried out page by page in the app itself."""

import re
from collections.abc import Mapping, Sequence
from datetime import timedelta
from typing import Any

from checklist_app.checklists.procedure import Hold, PromptKind, Stage, Step
from checklist_app.demo.work import Work

NEW_ROW = re.compile(r"(?:/kit/\w+|\?step=[\w-]+)\.([\w-]+)")


class Lashing(Work):
    """One lashing, as `demo_data/lashings.toml` has it: stage by stage, each hold point signed where it stands."""

    def do(self) -> None:
        for stage in self.procedure.stages:
            for hold in self.procedure.holds:
                if hold.before == stage.name:
                    self.pass_hold(hold)
            self.clock.at += timedelta(minutes=self.script.get("waits", {}).get(stage.name, 0))
            if stage.name == "lashings":
                self.put_on()
            else:
                self.say(stage)
            if stage.name == self.script.get("until"):
                return
        self.close()

    def pass_hold(self, hold: Hold) -> None:
        """By PIN; by the hand of the guest whom the hold point asks for, with the rigger as his witness."""
        if not hold.guest:
            self.sign(hold.name, self.script["sign"])
            return
        guest = self.script["guest"]
        self.post(f"holds/{hold.name}/guest", shown=self.shown(f"holds/{hold.name}/guest"), guest=guest["name"],
                  firm=guest["firm"], ink=guest["hand"], seen="yes", **{"as": hold.guest})

    def say(self, stage: Stage) -> None:
        """Every step of a stage: gear to its slots, a re-tension as a row, the rest as one form."""
        for step in stage.steps:
            if step.group:
                self.draw_again(stage, step)
                continue
            for prompt in step.prompts:
                if prompt.name in self.script["gear"]:
                    self.slot(prompt.name, self.script["gear"][prompt.name])
            if said := self.form(step):
                self.post(f"{stage.name}?step={step.name}", **said)

    def form(self, step: Step, row: str = "") -> dict[str, str]:
        """What the script says to the prompts of a step; a tick is *yes*."""
        said: dict[str, str] = {}
        for prompt in step.prompts:
            answer = self.script["answers"].get(prompt.name)
            if answer is not None:
                said |= spoken(f"{row}{prompt.name}", answer)
            elif prompt.kind is PromptKind.TICK and prompt.name not in self.script.get("not_asked", ()):
                said[f"{row}{prompt.name}"] = "yes"

        return said

    def put_on(self) -> None:
        """The first in full, the others as its copies and mirror images: one tap and one tag each."""
        rows: list[str] = []
        for tag, made in zip(self.script["lashings"], ({}, *self.script["made_of"]), strict=True):
            row = self.add("lashings", "lashing", **like(made, rows))
            self.slot(f"lashing.{row}.lashing_item", f"gear/{tag}")
            if not rows:
                self.fill_row("lashings", "lashing", row)
            else:
                self.confirm(row)
            if moved := made.get("moved"):
                self.post(f"lashings?step=ends.{row}", **{f"lashing/{row}/{name}": at for name, at in moved.items()})
            rows.append(row)

    def confirm(self, row: str) -> None:
        """What ring and eye of a copy carry is looked at and said again."""
        said = self.form(next(step for step in self.procedure.stage("lashings").steps if step.name == "pull"),
                         f"lashing/{row}/")
        names = tuple(f"lashing/{row}/{name}" for name in self.procedure.adds["lashing"].confirm)
        self.post(f"lashings?step=pull.{row}", **{name: text for name, text in said.items() if name.startswith(names)})

    def draw_again(self, stage: Stage, step: Step) -> None:
        self.fill_row(stage.name, step.group, self.add(stage.name, step.group))

    def add(self, stage: str, group: str, act: str = "add", row: str = "", **how: str) -> str:
        """One more row by its button; its id."""
        found = NEW_ROW.search(self.post(stage, act=act, row=f"{group}/{row}", **how).headers["Location"])
        if found is None:
            raise RuntimeError(f"{self.script['load']}: no row of {group} was added")
        return found.group(1)

    def fill_row(self, stage: str, group: str, row: str) -> None:
        for step in self.procedure.stage(stage).steps:
            if step.group == group and (said := self.form(step, f"{group}/{row}/")):
                self.post(f"{stage}?step={step.name}.{row}", **said)


def like(made: Mapping[str, Any], rows: Sequence[str]) -> dict[str, str]:
    """Which button makes the next row, of which row: a new one, a copy, or a mirror image.

    >>> like({}, []), like({"of": 1, "mirror": 0}, ["a"])
    ({}, {'act': 'mirror', 'row': 'a', 'mirror': '0'})
    """
    if not made:
        return {}
    row = rows[made["of"] - 1]
    return {"act": "mirror", "row": row, "mirror": str(made["mirror"])} if "mirror" in made else {
        "act": "copy", "row": row}


def spoken(name: str, answer: Any) -> dict[str, str]:
    """One answer as a form says it: a text, a figure with how it is known, or that there is none.

    >>> spoken("cg_x_m", ["0.03", "trial"]), spoken("other_kg", [])
    ({'cg_x_m': '0.03', 'cg_x_m.how': 'trial'}, {'other_kg.not_used': 'yes'})
    """
    if isinstance(answer, str):
        return {name: answer}
    return {name: answer[0], f"{name}.how": answer[1]} if answer else {f"{name}.not_used": "yes"}
