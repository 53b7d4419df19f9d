"""A running task: what stands in its entries, read into the operation's terms and evaluated."""
from collections import OrderedDict
from collections.abc import Hashable, Mapping
from contextlib import suppress
from dataclasses import dataclass
from functools import cached_property

from checklist_app.checklists.answers import Answers, answers
from checklist_app.checklists.authority import counted
from checklist_app.checklists.conditions import is_asked
from checklist_app.checklists.entry import Path
from checklist_app.checklists.fold import Folded, fold
from checklist_app.checklists.following import followed
from checklist_app.checklists.places import Place, places
from checklist_app.checklists.procedure import Procedure, PromptKind, Stage, procedures
from checklist_app.checklists.register import Item
from checklist_app.checklists.values import Value
from checklist_app.checklists.words import day, own_number
from checklist_app.checklists.world import World
from checklist_app.operations.catalogue import OPERATIONS, Operation
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.gear import Gear
from checklist_app.operations.table import Table
from checklist_app.operations.task import Key, Task

KEPT_EVALUATIONS = 64
DAY: Path = ("day",)
_evaluations: OrderedDict[Hashable, Evaluation] = OrderedDict()


@dataclass(frozen=True)
class Running:
    """What a page knows of a task. `faults` are answers that cannot be read, each in words at its path."""

    id: str
    procedure: Procedure
    folded: Folded
    read: Answers
    day: str
    today: str

    @property
    def operation(self) -> Operation:
        """The operation that the procedure is for."""
        return OPERATIONS[self.procedure.operation]

    @property
    def table(self) -> Table:
        """The operation's entries and quantities."""
        return self.operation.table

    @property
    def task(self) -> Task:
        """The answers in the operation's terms."""
        return self.read.task

    @property
    def items(self) -> Mapping[Path, Item]:
        """What was picked, by the path of the pick."""
        return self.read.items

    @property
    def faults(self) -> Mapping[Path, str]:
        """Why an answer cannot be read, by its path."""
        return self.read.faults

    @property
    def load(self) -> Item | None:
        """The load of the task, once it was picked."""
        return self.items.get(("load",))

    @property
    def title(self) -> str:
        """What the task is called where there is little room: the load's number or name, or the operation."""
        if self.load is None:
            return self.procedure.words
        return own_number(self.load.id, self.load.title) or self.load.title

    @cached_property
    def evaluation(self) -> Evaluation:
        """Every check at nominal and at its worst. The same answers are evaluated once, whoever gave them and when."""
        known = (self.operation.name, _same(self.task))
        if known not in _evaluations:
            _evaluations[known] = assess(self.table, self.task)
            while len(_evaluations) > KEPT_EVALUATIONS:
                _evaluations.popitem(last=False)
        return _evaluations[known]

    @property
    def stage(self) -> str:
        """The first stage with a question still open, or still without rows; the last one when nothing is."""
        if (empty := self.empty_stage) is not None:
            return empty.name
        return place.stage.name if (place := self.resume) is not None else self.procedure.stages[-1].name

    @property
    def needed_groups(self) -> frozenset[str]:
        """Groups to which people add rows and that a signature covers: what holds the load."""
        covered = {group for hold in self.procedure.holds for group in hold.groups}
        return frozenset(covered & self.procedure.adds.keys())

    @property
    def lacks_rows(self) -> bool:
        """Whether nothing that is to hold the load was entered yet."""
        groups = self.needed_groups
        return bool(groups) and not any(self.folded.rows.get(group) for group in groups)

    @property
    def empty_stage(self) -> Stage | None:
        """The stage to which somebody must add rows before work goes on, once all before it is answered."""
        for stage in self.procedure.stages:
            groups = {step.group for step in stage.steps} & self.needed_groups
            if groups and not any(self.folded.rows.get(group) for group in groups):
                return stage
            if any(self.is_open(place) for place in places(self.procedure, self.folded, stage.name)):
                return None
        return None

    @property
    def resume(self) -> Place | None:
        """Where work goes on: the first open question."""
        return next((place for place in places(self.procedure, self.folded) if self.is_open(place)), None)

    def value(self, path: Path) -> Value | None:
        """The one answer that stands at a prompt."""
        return self.folded.values.get(path)

    def is_asked(self, place: Place) -> bool:
        """Whether the question is asked at all, given the other answers."""
        return is_asked(place, self.table, self.task.answers, self.read.labels, self.folded)

    def places(self, stage: str = "") -> tuple[Place, ...]:
        """Every question that is asked, given the other answers."""
        return tuple(place for place in places(self.procedure, self.folded, stage) if self.is_asked(place))

    def is_open(self, place: Place) -> bool:
        """Whether somebody still has to answer here before the work can go on."""
        if not self.is_asked(place):
            return False
        if place.path in self.folded.disputed or place.path in self.faults or self.out_of_date(place):
            return True
        if place.prompt.kind is PromptKind.ENTRY:
            return not self.is_given(place) or (place.prompt.felt and self._untouched(place))
        return place.prompt.killer and place.path not in self.folded.values

    def out_of_date(self, place: Place) -> str:
        """What is said of the day of a task that has passed: it is confirmed again; empty for all else."""
        if place.path != DAY or self.day >= self.today:
            return ""
        return f"The task says {day(self.day)}. Today is {day(self.today)}. Confirm the day."

    def is_given(self, place: Place) -> bool:
        """Whether the operation has an answer: entered, from a register, or one it may do without.

        What the procedure will not do without is asked, whatever the operation would take for it.
        """
        entry = self.table.entries[place.prompt.name]
        spared = entry.default is not None and not place.prompt.killer
        return Key(place.prompt.name, self.read.labels.get(place.row)) in self.task.answers or spared

    def _untouched(self, place: Place) -> bool:
        """Whether the gear was picked but not yet looked at and felt."""
        return place.path in self.items and place.felt_path not in self.folded.values


def _same(task: Task) -> Hashable:
    """Equal for tasks that evaluate alike: numbers as they read, gear with its facts and its state."""
    rows = tuple(sorted(task.rows.items()))
    return rows, tuple((str(key), repr(answer), answer if isinstance(answer, Gear) else None)
                       for key, answer in sorted(task.answers.items(), key=lambda each: str(each[0])))


class NotBegun(LookupError):
    """The beginning of a task is not here, or a later app made it: nobody can say by which procedure it runs."""


def running(world: World, task: str) -> Running:
    """The task as it stands. It keeps the version of the procedure that it was begun with.

    Raises:
        NotBegun: If its beginning is not here, or names a procedure that this version of the app does not know.
    """
    folded = fold(counted(world.entries(("task", task)), world))
    begun = folded.values.get(("begin",), {})
    procedure = procedures().get(str(begun.get("procedure", "")))
    if procedure is None:
        raise NotBegun(task)
    folded = followed(procedure, folded)
    read = answers(world, folded, procedure)

    return Running(task, procedure, folded, read, read.day or world.today, world.today)


def under_way(world: World) -> tuple[Running, ...]:
    """Every task that is not sealed; one that cannot be read hides none of the others."""
    found = []
    for task in world.tasks():
        with suppress(NotBegun):
            found.append(running(world, task))
    return tuple(found)
