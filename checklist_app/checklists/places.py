"""Where each question of a task stands: its path, its step, and whether it is asked at all."""
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby

from checklist_app.checklists.entry import Path
from checklist_app.checklists.fold import Folded
from checklist_app.checklists.procedure import Procedure, Prompt, Stage, Step

FELT = "_felt"


@dataclass(frozen=True)
class Place:
    """One question where it is asked: in the step of a stage, for the task or for one row."""

    stage: Stage
    step: Step
    prompt: Prompt
    row: str = ""
    alone: bool = False
    """Whether its row is the only one of its group: then nobody needs to be told which."""

    @property
    def path(self) -> Path:
        """Prompt; or group, row and prompt."""
        return (self.prompt.group, self.row, self.prompt.name) if self.row else (self.prompt.name,)

    @property
    def felt_path(self) -> Path:
        """Where the tick stands that the gear was looked at and felt."""
        return (*self.path[:-1], self.path[-1] + FELT)

    @property
    def name(self) -> str:
        """The name of its form field."""
        return "/".join(self.path)

    @property
    def slot(self) -> str:
        """The same as one word of an address."""
        return ".".join(self.path)

    @property
    def label(self) -> str:
        """The row as it is called: "left"; nothing where there is only one."""
        return "" if self.alone else label(self.row)


def label(row: str) -> str:
    """What a row is called: the part of its id after the first dash.

    Example:
        >>> label("1-left"), label("3-left_rear"), label("")
        ('left', 'left rear', '')
    """
    return (row.partition("-")[2] or row).replace("_", " ")


def with_row(row: str, words: str) -> str:
    """Words with the name of their row.

    Example:
        >>> with_row("left", "sling"), with_row("right_rear", "what carries the eye"), with_row("", "hoist")
        ('Left sling', 'What carries the eye, right rear', 'Hoist')
        >>> with_row("2", "pull in the lashing")
        'Pull in the lashing, no. 2'
    """
    said = words if not row else row_beside(row, words)
    return said[:1].upper() + said[1:]


def row_beside(row: str, words: str) -> str:
    """A row with what is said of it, in the middle of a sentence: before it, or behind where that reads better.

    Example:
        >>> row_beside("left", "sling"), row_beside("2", "its pull"), row_beside("to the left", "tipping")
        ('left sling', 'its pull, no. 2', 'tipping, to the left')
    """
    counted, row = row.isdigit(), row.replace("_", " ")
    is_direction = row.startswith("to the ") or row.endswith("wards")
    if counted or is_direction or words.startswith("what "):
        return f"{words}, no. {row}" if counted else f"{words}, {row}"
    return f"{row} {words}"


def places(procedure: Procedure, folded: Folded, stage: str = "") -> Iterator[Place]:
    """Every question that is asked, stage by stage; those of a group once for each of its rows."""
    for each in procedure.stages:
        if stage in ("", each.name):
            yield from _in_stage(procedure, each, folded)


def place_of(procedure: Procedure, folded: Folded, path: Path) -> Place | None:
    """The place at which this path is asked, if it is."""
    return next((place for place in places(procedure, folded) if path in (place.path, place.felt_path)), None)


def place_of_key(procedure: Procedure, folded: Folded, key: str) -> Place | None:
    """The place that answers what a check waits for: "sling[left]", or "mass_kg.how" for how it was obtained."""
    name, _, row = key.partition(".")[0].partition("[")
    row = row.rstrip("]")
    return next((place for place in places(procedure, folded)
                 if place.prompt.name == name and row in (place.row, place.row.partition("-")[2])), None)


def _in_stage(procedure: Procedure, stage: Stage, folded: Folded) -> Iterator[Place]:
    """Step by step; where people add rows, all that the steps of the group ask of one row, then of the next."""
    for group, together in groupby(stage.steps, key=lambda step: step.group):
        steps = tuple(together)
        if group in procedure.adds:
            for row in folded.rows.get(group, ()):
                yield from (Place(stage, step, prompt, row) for step in steps for prompt in step.prompts)
        else:
            for step in steps:
                yield from _in_step(procedure, stage, step, folded)


def _in_step(procedure: Procedure, stage: Stage, step: Step, folded: Folded) -> Iterator[Place]:
    """A step of a group goes row by row; single prompts of a group stand side by side for all rows."""
    if step.group:
        rows = folded.rows.get(step.group, ())
        for row in rows:
            yield from (Place(stage, step, prompt, row, _alone(procedure, step.group, rows)) for prompt in step.prompts)
        return
    for prompt in step.prompts:
        rows = folded.rows.get(prompt.group, ()) if prompt.group else ("",)
        yield from (Place(stage, step, prompt, row, _alone(procedure, prompt.group, rows)) for row in rows)


def _alone(procedure: Procedure, group: str, rows: tuple[str, ...]) -> bool:
    return group in procedure.follows and len(rows) == 1
