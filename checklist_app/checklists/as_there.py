"""What a copied row does not take over but may be as before: the rating of a ring or an eye, confirmed by one tap.

A copy hangs on other parts of the world. What they carry stays open until somebody who looks at them says it.
"""
from dataclasses import dataclass

from checklist_app.checklists.asking import question
from checklist_app.checklists.last_figures import fields_of
from checklist_app.checklists.last_rig import as_last_time
from checklist_app.checklists.naming import value_words
from checklist_app.checklists.places import Place, label
from checklist_app.checklists.running import Running
from checklist_app.checklists.steps import Screen, Way, next_way
from checklist_app.checklists.values import Value
from checklist_app.checklists.world import World

SAYS_IT = frozenset({"number", "not_used"})


@dataclass(frozen=True)
class AsThere:
    """The row it may be like, each question with what is said there, the fields that say it again, and what follows."""

    words: str
    said: tuple[tuple[str, str], ...]
    fields: tuple[tuple[str, str], ...]
    next: Way


def as_there(world: World, now: Running, stage: str, screen: Screen) -> AsThere | None:
    """What is open here and was said of the row before it that is made fast alike, where last time offers nothing."""
    group, row = screen.row
    adds = now.procedure.adds.get(group)
    if adds is None:
        return None
    wanted = tuple(place for place in screen.places if place.prompt.name in adds.confirm and now.is_asked(place)
                   and not _is_said(now.value(place.path)) and as_last_time(world, now, place) is None)
    before = [other for other in now.folded.rows.get(group, ()) if other < row
              and all(now.value((group, other, name)) == now.value((group, row, name)) for name in adds.alike)]
    for other in reversed(before):
        found = [(place, value) for place in wanted if _is_said(value := now.value((group, other, place.prompt.name)))]
        if found:
            return _shown(world, now, stage, screen, f"As on {adds.one} {label(other)}", found)
    return None


def _shown(world: World, now: Running, stage: str, screen: Screen, words: str,
           found: list[tuple[Place, Value | None]]) -> AsThere:
    said = tuple((question(place, now.table.entries.get(place.prompt.name)).rstrip("?"), _words(world, place, value))
                 for place, value in found)
    fields = tuple(field for place, value in found if value is not None for field in fields_of(place, value))
    return AsThere(words, said, fields, next_way(now, stage, screen.key))


def _words(world: World, place: Place, value: Value | None) -> str:
    none = value is not None and value["type"] == "not_used" and place.prompt.none_words
    return none or value_words(value, world)


def _is_said(value: Value | None) -> bool:
    return value is not None and value["type"] in SAYS_IT
