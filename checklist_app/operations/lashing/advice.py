"""What would make a lashed load hold: one change at a time, the smallest first, each assessed before it is said."""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import chain

from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.operations.check import Check, Strength, Verdict, governs, overall
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.lashing import candidates
from checklist_app.operations.lashing.change import Change, Effort, Store, applied
from checklist_app.operations.lashing.side_by_side import BY_RULE, SLIDES
from checklist_app.operations.task import Task

HOLDS = (Verdict.WITHIN, Verdict.CLOSE)
BESIDE = ("anchor_strength", "load_eye_strength", "anchor_rating", "edge_guarded", "tie_down_label")
MOST_TRIED = 3
"""Of one kind so many are searched through with their spread."""


@dataclass(frozen=True)
class Tried:
    """A change, the verdict on all that hangs on lashings with it, and what decides then, searched with the spread."""

    change: Change
    verdict: Verdict
    governs: Check | None

    @property
    def holds(self) -> bool:
        """Whether the load holds with it."""
        return self.verdict in HOLDS


@dataclass(frozen=True)
class Advice:
    """`tried`: what makes it hold, the least effort first; where nothing does, the best of what was tried, alone."""

    verdict: Verdict
    governs: Check | None
    tried: tuple[Tried, ...] = ()

    @property
    def holds(self) -> bool:
        """Whether it holds as it stands."""
        return self.verdict in HOLDS

    @property
    def waits(self) -> bool:
        """Whether answers are missing, so that nothing can be tried."""
        return self.verdict in (Verdict.WAITING, Verdict.NOT_APPLICABLE)


def advice(evaluation: Evaluation, store: Store) -> Advice:
    """What would make it hold.

    Args:
        evaluation: of a task of an operation that lashes, with its spread.
        store: what is free and usable today.

    Returns:
        The verdict as it stands, and the changes. One that does not make it hold is never among those that do.
    """
    now = counted(evaluation)
    found = Advice(overall(now), governs(now))
    if found.holds or found.waits:
        return found
    tried = [best for kind in _kinds(evaluation, store) if (best := _first(evaluation, kind)) is not None]
    able = tuple(each for each in tried if each.holds)

    return Advice(found.verdict, found.governs, able or tuple(sorted(tried, key=_lacks)[:1]))


def counted(evaluation: Evaluation) -> tuple[Check, ...]:
    """What hangs on lashings, blocks and friction."""
    return tuple(check for check in evaluation.checks if check.quantity in (*BY_RULE, *BESIDE))


def _kinds(evaluation: Evaluation, store: Store) -> Iterator[Iterable[Change]]:
    task = evaluation.task
    yield candidates.cleaner(task)
    yield candidates.mats(task, store)
    yield candidates.moved(task)
    yield chain(candidates.images(task, store), candidates.more(task, store))
    yield candidates.blocked(task, lacking(evaluation))


def _first(evaluation: Evaluation, changes: Iterable[Change]) -> Tried | None:
    """The first of one kind that holds at its worst; else the best as entered, at its worst."""
    failed: list[tuple[tuple[int, float], Task, Change]] = []
    searched = 0
    for change in changes:
        task = applied(evaluation.task, change)
        plainly = counted(assess(evaluation.table, task, with_spread=False))
        if overall(plainly) in HOLDS and searched < MOST_TRIED:
            searched += 1
            tried = _tried(evaluation, change, task)
            if tried.holds:
                return tried
        failed.append((_rank(overall(plainly), governs(plainly)), task, change))
    if not failed:
        return None
    _, task, change = min(failed, key=lambda each: each[0])

    return _tried(evaluation, change, task)


def _tried(evaluation: Evaluation, change: Change, task: Task) -> Tried:
    found = counted(assess(evaluation.table, task))
    return Tried(change, overall(found), governs(found))


def _lacks(tried: Tried) -> tuple[int, float]:
    return _rank(tried.verdict, tried.governs)


def _rank(verdict: Verdict, decides: Check | None) -> tuple[int, float]:
    worst = decides.worst if decides is not None else None
    used = worst.demand / worst.capacity if isinstance(worst, Strength) and worst.capacity > 0.0 else 0.0
    return verdict.rank, used


def lacking(evaluation: Evaluation) -> dict[Direction, tuple[float, bool]]:
    """By direction the push that is not withstood [daN] at its worst, and whether it is on the deck."""
    found: dict[Direction, tuple[float, bool]] = {}
    for direction in Direction:
        for check in evaluation.checks:
            if check.quantity not in SLIDES or check.row != direction.value:
                continue
            worst = check.worst if isinstance(check.worst, Strength) else check.outcome
            if isinstance(worst, Strength) and worst.demand >= worst.capacity:
                dan = worst.demand - worst.capacity
                if dan >= found.get(direction, (0.0, False))[0]:
                    found[direction] = (dan, check.quantity == "deck_sliding")
    return found


__all__ = ["Advice", "Effort", "Tried", "advice", "counted", "lacking"]
