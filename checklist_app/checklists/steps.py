"""The screens of a stage: one for each step, or for each row of a step; where one is and where it goes on."""
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import groupby

from checklist_app.checklists.places import Place, places
from checklist_app.checklists.running import Running
from checklist_app.checklists.slots import is_slot


@dataclass(frozen=True)
class Screen:
    """One screenful of questions, with its address."""

    key: str
    words: str
    why: str
    href: str
    places: tuple[Place, ...]
    done: bool

    @property
    def row(self) -> tuple[str, str]:
        """Group and row that all of it is about; both empty for a step of the task."""
        first = self.places[0]
        return (first.step.group, first.row) if first.step.group else ("", "")


@dataclass(frozen=True)
class Way:
    """Where a button leads."""

    href: str
    words: str


def screens(now: Running, stage: str) -> tuple[Screen, ...]:
    """Every screen of a stage, in order."""
    every = ((key, tuple(found)) for key, found in groupby(places(now.procedure, now.folded, stage), _key))
    return tuple(_screen(now, key, found) for key, found in every if any(now.is_asked(place) for place in found))


def chosen(now: Running, stage: str, key: str) -> Screen:
    """The screen asked for; else the first that is not done; else the first.

    Raises:
        LookupError: If the stage asks nothing.
    """
    every = screens(now, stage)
    if not every:
        raise LookupError(stage)
    by_key = next((screen for screen in every if screen.key == key), None)
    return by_key or next((screen for screen in every if not screen.done), every[0])


def next_way(now: Running, stage: str, key: str) -> Way:
    """The screen after this one, or the next stage."""
    every = screens(now, stage)
    number = next(number for number, screen in enumerate(every) if screen.key == key)
    here, after = every[number], every[number + 1:number + 2]
    rows = has_rows(now, stage)
    if rows and not (here.row[0] in now.procedure.adds and after and after[0].row == here.row):
        return Way(stage_href(now, stage), f"To the {now.procedure.stage(stage).words.lower()}")
    return Way(after[0].href, f"Next: {after[0].words.lower()}") if after else next_stage(now, stage)


def has_rows(now: Running, stage: str) -> bool:
    """Whether people add rows in this stage: then all of it hangs on a page that lists them."""
    return any(step.group in now.procedure.adds for step in now.procedure.stage(stage).steps)


def next_stage(now: Running, stage: str) -> Way:
    """The hold point before the stage after this one, else that stage; after the last one the task itself."""
    names = [each.name for each in now.procedure.stages]
    following = now.procedure.stages[names.index(stage) + 1:]
    if not following:
        return Way(f"/tasks/{now.id}", "To the task")
    for hold in now.procedure.holds:
        if hold.before == following[0].name:
            return Way(f"/tasks/{now.id}/holds/{hold.name}", f"Next: hold, {hold.words.lower()}")
    return Way(stage_href(now, following[0].name), f"Next: {following[0].words.lower()}")


def stage_href(now: Running, stage: str) -> str:
    """The address of a stage."""
    return f"/tasks/{now.id}/{stage}"


def stage_number(now: Running, stage: str) -> str:
    """Where one is: "Stage 3 of 7"."""
    names = [each.name for each in now.procedure.stages]
    return f"Stage {names.index(stage) + 1} of {len(names)}"


def place_href(now: Running, place: Place) -> str:
    """The address at which a question is answered."""
    return slot_href(now, place) if is_slot(now, place) else (
        f"{step_href(now, place)}#{place.name.replace('/', '-')}-prompt")


def slot_href(now: Running, place: Place) -> str:
    """The address of a slot, of whatever stage."""
    return f"/tasks/{now.id}/kit/{place.slot}"


def step_href(now: Running, place: Place) -> str:
    """The address of the step in which something is asked."""
    return f"{stage_href(now, place.stage.name)}?step={_key(place)}"


def _key(place: Place) -> str:
    return f"{place.step.name}.{place.row}" if place.row and place.step.group else place.step.name


def _screen(now: Running, key: str, found: tuple[Place, ...]) -> Screen:
    first = found[0]
    words = f"{row_words(now, first)} {first.step.words}" if first.row and first.step.group else first.step.words
    return Screen(key, words[:1].upper() + words[1:], first.step.why, f"{stage_href(now, first.stage.name)}?step={key}",
                  found, _all_done(now, found))


def row_words(now: Running, place: Place) -> str:
    """A row in front of what is asked of it: "left", or "trial 2:" where rows are only counted."""
    return f"{now.procedure.one_of(place.step.group)} {place.label}:" if place.label.isdigit() else place.label


def _all_done(now: Running, found: Iterable[Place]) -> bool:
    return not any(now.is_open(place) for place in found)
