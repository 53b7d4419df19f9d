"""How much longer must the slings be: a length is tried on the task as it stands, and nobody has answered anything."""
from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.places import label
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running
from checklist_app.checklists.words import mark
from checklist_app.checklists.world import World
from checklist_app.operations import words
from checklist_app.operations.check import Check, Limit, Strength, Verdict, highest_utilisation, overall
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.fields import Field, FieldType, read_number
from checklist_app.operations.gear import Sling, kinds_of, make
from checklist_app.operations.graph import NotUsed
from checklist_app.operations.kinds import LENGTH
from checklist_app.operations.straight_lift.choices import LegsGiven
from checklist_app.operations.task import Key, Task
from checklist_app.operations.words import figure

EVERY_LEG = "every"
USUAL_M = (0.5, 0.75, 1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0, 5.0, 6.0, 8.0, 10.0)
TRIED = Field("length", "length of the sling", FieldType.NUMBER, "m", LENGTH.low, LENGTH.high, usual=LENGTH.usual)
HUNG = {"leg_angle": "largest leg angle", "headroom": "room over the hook", "room": "room over the load"}
BESIDE = 2
SAFE = (Verdict.WITHIN, Verdict.CLOSE)


@dataclass(frozen=True)
class Row:
    """What one length [m] would make of the lift, as entered: angle [°], share [%], least room [m]."""

    length: str
    angle: str
    used: str
    left: str
    verdict: str
    mark: str
    in_store: bool


def with_length(now: Running, length_m: float, leg: str = EVERY_LEG) -> Task:
    """The task with slings of another length: fittings stay, what was measured on the old legs goes."""
    task = now.task
    changes: dict[Key, Any] = {Key("legs_given"): LegsGiven.LENGTHS, Key("running_m"): NotUsed("another is tried")}
    labels = [each for each in now.task.rows.get("leg", ()) if leg in (EVERY_LEG, each)]
    for each in labels:
        sling = task.answers.get(Key("sling", each))
        if isinstance(sling, Sling):
            changes[Key("sling", each)] = make(sling.kind, sling.id, {**sling.facts, "length_m": length_m}, sling.state)
    measured = (Key(name, each) for each in labels for name in ("leg_length_m", "leg_angle_read_deg"))

    return task.without(*measured).changed(changes)


def which_legs(now: Running) -> tuple[tuple[str, str], ...]:
    """Which leg: worth asking only where there are several."""
    legs = now.task.rows.get("leg", ())
    return ((EVERY_LEG, "every leg"), *((each, f"only {label(each)}") for each in legs)) if len(legs) > 1 else ()


def lengths_m(world: World, now: Running) -> tuple[float, ...]:
    """The usual lengths, and those of the slings that lie in store."""
    return tuple(sorted({*USUAL_M, *in_store_m(world, now)}))


def in_store_m(world: World, now: Running) -> frozenset[float]:
    """Lengths of the slings that the register has."""
    kinds = kinds_of(now.table.entries["sling"].kind)
    found = (_length_m(item) for item in world.items("gear").values() if item.kind in kinds)
    return frozenset(length for length in found if length is not None)


def rows(world: World, now: Running, leg: str) -> tuple[Row, ...]:
    """Every length in turn, as entered."""
    store = in_store_m(world, now)
    tasks = ((length, with_length(now, length, leg)) for length in lengths_m(world, now))
    return _worth_telling(tuple(_row(assess(now.table, task, with_spread=False), length, length in store)
                                for length, task in tasks))


def _worth_telling(every: tuple[Row, ...]) -> tuple[Row, ...]:
    """From a little shorter than the first that does to a little longer than the last; else the middle ones."""
    good = [number for number, row in enumerate(every) if row.verdict in {each.words for each in SAFE}]
    first, last = (good[0], good[-1]) if good else (len(every) // 3, len(every) // 2)
    return every[max(0, first - BESIDE):last + 1 + BESIDE]


def advice(found: Iterable[Row]) -> str:
    """Which lengths bring leg angle, room and utilisation within their limits, if any does."""
    every = tuple(found)
    good = [row for row in every if row.verdict in {each.words for each in SAFE}]
    if not good:
        return "No usual length brings angle, room and utilisation within their limits."
    best = f"from {good[0].length} to {good[-1].length} m" if len(good) > 1 else f"only at {good[0].length} m"
    gaps = every.index(good[-1]) - every.index(good[0]) + 1 != len(good)
    return f"Angle, room and utilisation stay within their limits {best}{', with gaps' if gaps else ''}."


def judged(evaluation: Evaluation) -> Verdict:
    """The verdict on what hangs on the length alone: what waits, or is bad for another reason, is left out."""
    counted = [check for check in evaluation.checks if _hangs_on_length(check)]
    return overall(tuple(counted))


def _hangs_on_length(check: Check) -> bool:
    return check.verdict is not Verdict.WAITING and (
        check.quantity in HUNG or isinstance(check.outcome, Strength) or check.verdict is Verdict.CANNOT)


def _row(evaluation: Evaluation, length_m: float, in_store: bool) -> Row:
    verdict = judged(evaluation).words
    angles = [limit.demand for limit in _limits(evaluation, "leg_angle")]
    left = [limit.capacity for name in ("headroom", "room") for limit in _limits(evaluation, name)]
    used = max((highest_utilisation(check) for check in evaluation.checks if isinstance(check.outcome, Strength)),
               default=None)
    return Row(figure(length_m, "m"), figure(max(angles), "°") if angles else "–",
               words.percent(used, over=used > 1.0) if used is not None else "–",
               figure(min(left), "m") if left else "–", verdict, mark(verdict), in_store)


def _limits(evaluation: Evaluation, quantity: str) -> list[Limit]:
    outcomes = (check.outcome for check in evaluation.checks if check.quantity == quantity)
    return [outcome for outcome in outcomes if isinstance(outcome, Limit)]


def _length_m(item: Item) -> float | None:
    number = read_number(str(item.facts.get("length_m", "")), TRIED)
    return number if isinstance(number, float) else None
