"""The rows of last time put down again by one tap: where each lashing runs, and nothing that has to be looked at."""
from collections.abc import Iterator

from checklist_app.checklists import values
from checklist_app.checklists.entry import Path
from checklist_app.checklists.last_figures import ON_THE_DAY
from checklist_app.checklists.last_rig import LastRig, lashed_words, rows_of_last, said_again
from checklist_app.checklists.made import Made
from checklist_app.checklists.rows import COPIED
from checklist_app.checklists.running import Running
from checklist_app.checklists.values import Value
from checklist_app.checklists.words import day
from checklist_app.checklists.world import World


def rows_offered(world: World, now: Running) -> str:
    """What one tap puts down, for somebody who said that he lashes as last time; empty once any row is there."""
    last = said_again(world, now) if now.needed_groups and now.lacks_rows else None
    return f"As on {day(last.day)}: {lashed_words(now, last)}" if last is not None else ""


def put_down(made: Made, world: World, now: Running) -> None:
    """Every row under the name that it had, with its plan; items, ratings and readings stay open."""
    if (last := said_again(world, now)) is None:
        return
    for group in now.procedure.adds:
        for row in rows_of_last(last, group) if group in now.needed_groups else ():
            made.say(("task", now.id), (group, row), values.row("present"))
    for path, value in _planned(now, last):
        made.say(("task", now.id), path, value)


def _planned(now: Running, last: LastRig) -> Iterator[tuple[Path, Value]]:
    for path, value in last.answers.items():
        adds = now.procedure.adds.get(path[0])
        if adds is None or len(path) != 3 or value["type"] not in COPIED or path[2] in ON_THE_DAY:
            continue
        if path[2] not in adds.anew and path[2] not in adds.confirm:
            yield path, value
