"""Figures and choices of the last good rig beside today's questions: each is shown, and is an answer once tapped.

What is read or looked at on the day is never offered, nor a length of a leg that hangs on other gear today.
"""
from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from checklist_app.checklists.asking import question
from checklist_app.checklists.fitting import fitting
from checklist_app.checklists.last_rig import LastRig, as_last_time
from checklist_app.checklists.naming import value_words
from checklist_app.checklists.places import Place
from checklist_app.checklists.procedure import PromptKind
from checklist_app.checklists.running import Running
from checklist_app.checklists.steps import Screen
from checklist_app.checklists.values import Value
from checklist_app.checklists.words import day
from checklist_app.checklists.world import World

ON_THE_DAY = frozenset({"leg_angle_read_deg", "friction", "face", "edge_protected"})
ON_THE_DAY |= {"slope_read_deg", "heading_read_deg", "tension_dan"}
LEG, LENGTH, GEAR_OF_LEG = "leg", "leg_length_m", ("top_fitting", "sling", "bottom_fitting")
COMPANIONS = ("how", "plus_minus")


@dataclass(frozen=True)
class LastFigure:
    """One answer of last time: its question, how it is said, and the fields that say it again."""

    words: str
    said: str
    fields: tuple[tuple[str, str], ...]


@dataclass(frozen=True)
class LastFigures:
    """What last time offers on one screen."""

    day: str
    figures: tuple[LastFigure, ...]


def last_figures(world: World, now: Running, screen: Screen) -> LastFigures | None:
    """Everything last time offers on this screen that is asked today and not answered yet."""
    found = tuple(_offered(world, now, screen.places))
    return LastFigures(day(found[0][0].day), tuple(each for _, each in found)) if found else None


def _offered(world: World, now: Running, places: Iterable[Place]) -> Iterator[tuple[LastRig, LastFigure]]:
    for place in places:
        entry = now.table.entries.get(place.prompt.name) if place.prompt.kind is PromptKind.ENTRY else None
        if entry is None or entry.name in ON_THE_DAY or not now.is_asked(place):
            continue
        last = as_last_time(world, now, place)
        if last is None or last[1]["type"] == "pick" or not _same_gear(now, last[0], place):
            continue
        if last[1]["type"] == "choice" and last[1]["text"] not in {str(each.value) for each in fitting(now, entry)}:
            continue
        none = place.prompt.none_words if last[1]["type"] == "not_used" else ""
        said = none or value_words(last[1], world)
        yield last[0], LastFigure(question(place, entry), said, fields_of(place, last[1]))


def _same_gear(now: Running, last: LastRig, place: Place) -> bool:
    """Whether a leg hangs on the very items of last time, where its length is asked."""
    if place.prompt.name != LENGTH:
        return True
    rows = [(LEG, place.row, slot) for slot in GEAR_OF_LEG]
    return all(_item(now.value(path)) == _item(last.answers.get(path)) for path in rows)


def _item(value: Value | None) -> tuple[str, str] | None:
    return (value["type"], value.get("subject", "")) if value is not None else None


def fields_of(place: Place, value: Value) -> tuple[tuple[str, str], ...]:
    """As a form says it."""
    if value["type"] == "not_used":
        return ((f"{place.name}.not_used", "yes"),)
    beside = ((f"{place.name}.{name}", str(value[name])) for name in COMPANIONS if name in value)
    return ((place.name, str(value["text"])), *beside)
