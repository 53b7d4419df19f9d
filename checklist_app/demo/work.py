"""One task of the demonstration, carried out with a phone: what lifts and lashings have in common."""

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from checklist_app.checklists.procedure import Procedure, PromptKind, newest
from checklist_app.demo.data import pins, table
from checklist_app.demo.phone import Clock, Phone

LIFT = "straight_lift"
SEEN = re.compile(r'name="shown" value="([^"]*)"')
WHY_NONE = "not needed here"
CUT_OFF = "The demonstration was cut off here."
BEGUN, DONE = "demo-lifts.txt", "done"

Script = Mapping[str, Any]


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


class Work:
    """One task from *begin* to its closing, as its script says."""

    def __init__(self, phone: Phone, clock: Clock, script: Script, people: Mapping[str, Signer],
                 begun: Begun) -> None:
        self.phone, self.clock, self.script, self.people, self.begun = phone, clock, script, people, begun
        self.procedure: Procedure = newest(script.get("operation", LIFT))
        self.task = ""

    def carry_out(self, number: int) -> None:
        """From the first page to the last; what was begun before and left open is only closed."""
        if number < len(self.begun.tasks):
            self.give_up(self.begun.tasks[number])
            return
        self.begin()
        self.do()

    def do(self) -> None:
        """Everything after the first page."""
        raise NotImplementedError

    def begin(self) -> None:
        sent = self.phone.send("/begin", operation=self.procedure.operation, place=self.script["place"],
                               lift=f"{self.script['load']}|{self.script['state']}",
                               day=self.clock.at.date().isoformat())
        self.task = sent.headers["Location"].rsplit("/", 1)[0]
        self.begun.add(self.task)

    def slot(self, slot: str, subject: str | None) -> None:
        """Fetched, looked at and felt; or answered that there is none."""
        if subject is None:
            self.post(f"kit/{slot}", not_used="yes", why=WHY_NONE)
            return
        self.post(f"kit/{slot}", pick=subject)
        self.post(f"kit/{slot}", **{f"{slot.replace('.', '/')}_felt": "yes"})

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

    def sign(self, hold: str, people: Sequence[str]) -> None:
        """Each signer reviews on the rigger's phone and signs with a PIN of his own."""
        for person in people:
            self.post(f"holds/{hold}", act="sign", shown=self.shown(f"holds/{hold}?act=sign"), signer=person,
                      pin=self.people[person].pin, typed=self.people[person].name)

    def shown(self, where: str) -> str:
        """The fingerprint of what a signer has before him."""
        page = self.phone.open(f"{self.task}/{where}").get_data(as_text=True)
        if (shown := SEEN.search(page)) is None:
            raise RuntimeError(f"{self.script['load']}, {where} cannot be signed: {page}")
        return shown.group(1)

    def close(self) -> None:
        """A task without a closing stays open."""
        if "closing" in self.script:
            self.post("close-out", act="close", closing=self.script["closing"], words=self.script.get("words", ""))

    def give_up(self, task: str) -> None:
        """A task that is sealed answers with its record; one that is open is closed."""
        self.task = task
        if "closing" in self.script and not self.phone.is_sealed(task):
            self.post("close-out", act="close", closing="abandoned", words=CUT_OFF)

    def post(self, where: str, **form: str) -> Any:
        self.clock.later(seconds=40)
        return self.phone.send(f"{self.task}/{where}", **form)
