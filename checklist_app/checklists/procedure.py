"""A procedure is data: stages by place and moment, steps of a screenful, prompts, and holds with their scope."""
import tomllib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from enum import Enum
from functools import cache
from importlib.resources import files
from typing import Any

from checklist_app.checklists.adding import Adds, adds
from checklist_app.checklists.says import A_LIFT, Says, says

NUMBERS = "numbers"
"""The stage that stands under the drawing in every procedure."""


class PromptKind(Enum):
    """What a prompt asks for. ENTRY is a quantity of the operation and takes its kind from there."""

    ENTRY = "entry"
    TICK = "tick"
    CHOICE = "choice"
    TEXT = "text"
    PHOTO = "photo"
    PICK = "pick"
    NUMBER = "number"


@dataclass(frozen=True)
class Prompt:
    """One question, `why` stands under it.

    `killer`: without it nobody signs. `right`: the answer of a choice that lets work go on, "one|other" where several
    do. `felt`: the gear is also ticked as looked at and felt. `none_words`: what "not used" is called here. `only_for`:
    asked only while every one of these conditions holds, each as `conditions.py` reads it. `notes`: what an answer
    means, by the answer. `drawn`: each answer has a small drawing. `tells`: the check whose words stand at it. `line`:
    it stands in one line with its neighbours of the same `line`, under these words. `offers`: "vehicle.anchor_dan", a
    fact of what was picked that is offered for a tap. `card`: how its answer is said on its row's card, "anchor {}".
    `recalls`: another prompt, whose answer stands here once more.
    """

    name: str
    kind: PromptKind
    words: str = ""
    why: str = ""
    group: str = ""
    choices: tuple[str, ...] = ()
    right: str = ""
    register: str = ""
    unit: str = ""
    low: float | None = None
    high: float | None = None
    none_words: str = ""
    killer: bool = False
    felt: bool = False
    only_for: tuple[str, ...] = ()
    notes: Mapping[str, str] = field(default_factory=dict, hash=False)
    drawn: bool = False
    tells: str = ""
    line: str = ""
    offers: str = ""
    card: str = ""
    recalls: str = ""


@dataclass(frozen=True)
class Step:
    """A screenful. With a `group` it is asked once for every row of that group."""

    name: str
    words: str
    why: str
    group: str
    prompts: tuple[Prompt, ...]


@dataclass(frozen=True)
class Stage:
    """Part of a procedure by place and moment. `drawn`: under the drawing, with the checks."""

    name: str
    words: str
    where: str
    steps: tuple[Step, ...]
    drawn: bool = False
    why: str = ""

    def prompts(self) -> Iterator[Prompt]:
        """Every prompt of the stage, in order."""
        for step in self.steps:
            yield from step.prompts


@dataclass(frozen=True)
class Hold:
    """A stop that needs a named person's sign-off. The scope is what the signature covers.

    `guest`: who signs here as a guest, "the driver"; then his hand is what is asked for, and nobody else's.
    """

    name: str
    words: str
    ask: str
    meaning: str
    before: str
    stages: tuple[str, ...]
    groups: tuple[str, ...]
    checks: tuple[str, ...]
    one_shift: bool
    guest: str = ""


@dataclass(frozen=True)
class Follows:
    """The rows of a group that follow an answer: which prompt says it, and the ids of the rows by what it says."""

    answer: str
    rows: Mapping[str, tuple[str, ...]]


@dataclass(frozen=True)
class Procedure:
    """One published version. A running task keeps the version it was begun with.

    `rows` are said when a task is begun; the rows of a group in `follows` are nobody's entry, an answer gives them;
    those of a group in `adds` people add. `measured_anew`: what no register fills, because it counts in other axes
    there.
    """

    name: str
    version: int
    operation: str
    words: str
    rows: Mapping[str, tuple[str, ...]]
    follows: Mapping[str, Follows]
    stages: tuple[Stage, ...]
    holds: tuple[Hold, ...]
    adds: Mapping[str, Adds] = field(default_factory=dict)
    says: Says = A_LIFT
    measured_anew: frozenset[str] = frozenset()

    @property
    def key(self) -> str:
        """Name and version, as a task keeps them."""
        return f"{self.name}/{self.version}"

    def has_stage(self, name: str) -> bool:
        """Whether it has a stage of this name."""
        return any(stage.name == name for stage in self.stages)

    def one_of(self, group: str) -> str:
        """What a row of a group is called."""
        return self.adds[group].one if group in self.adds else group

    def stage(self, name: str) -> Stage:
        """The stage of this name."""
        return next(stage for stage in self.stages if stage.name == name)

    def hold(self, name: str) -> Hold | None:
        """The hold point of this name, if there is one."""
        return next((hold for hold in self.holds if hold.name == name), None)

    def prompts(self) -> Iterator[Prompt]:
        """Every prompt of every stage, in order."""
        for stage in self.stages:
            yield from stage.prompts()

    def prompt(self, name: str) -> Prompt | None:
        """The prompt of this name, if there is one."""
        return next((prompt for prompt in self.prompts() if prompt.name == name), None)


@cache
def procedures() -> Mapping[str, Procedure]:
    """Every published version, by its key."""
    folder = files("checklist_app.checklists") / "procedures"
    made = [read(found.read_text("utf-8")) for found in folder.iterdir() if found.name.endswith(".toml")]
    return {procedure.key: procedure for procedure in sorted(made, key=lambda each: (each.name, each.version))}


def newest(operation: str) -> Procedure:
    """The version with which a new task of this operation is begun."""
    return max((each for each in procedures().values() if each.operation == operation), key=lambda each: each.version)


def read(text: str) -> Procedure:
    """A procedure from its file."""
    data = tomllib.loads(text)
    return Procedure(
        name=data["name"], version=data["version"], operation=data["operation"], words=data["words"],
        rows={group: tuple(rows) for group, rows in data.get("rows", {}).items()},
        follows={group: _follows(each) for group, each in data.get("follow", {}).items()},
        stages=tuple(_stage(each) for each in data["stage"]),
        holds=tuple(_hold(each) for each in data["hold"]),
        adds={group: adds(each) for group, each in data.get("add", {}).items()}, says=says(data.get("says", {})),
        measured_anew=frozenset(data.get("measured_anew", ())),
    )


def _follows(data: Mapping[str, Any]) -> Follows:
    return Follows(data["answer"], {said: tuple(rows) for said, rows in data["rows"].items()})


def _stage(data: Mapping[str, Any]) -> Stage:
    return Stage(data["name"], data["words"], data["where"], tuple(_step(each) for each in data.get("step", ())),
                 data.get("drawn", data["name"] == NUMBERS), data.get("why", ""))


def _step(data: Mapping[str, Any]) -> Step:
    group = data.get("group", "")
    prompts = tuple(_prompt(each, group) for each in data["prompt"])
    return Step(data["name"], data["words"], data.get("why", ""), group, prompts)


def _prompt(data: Mapping[str, Any], group: str) -> Prompt:
    kind = next(kind for kind in PromptKind if kind.value in data)
    rest = {name: value for name, value in data.items() if name != kind.value}
    rest["choices"] = tuple(rest.get("choices", ()))
    only_for = rest.get("only_for", ())
    rest["only_for"] = (only_for,) if isinstance(only_for, str) else tuple(only_for)
    rest.setdefault("group", group)
    return Prompt(name=data[kind.value], kind=kind, **rest)


def _hold(data: Mapping[str, Any]) -> Hold:
    lists = {name: tuple(data.get(name, ())) for name in ("stages", "groups", "checks")}
    return Hold(**{"one_shift": False, **data, **lists})
