"""What this server tells everybody beside the entries: alarms on every page, and words on a task."""

from collections.abc import Iterator
from dataclasses import dataclass
from threading import Lock

import peewee as p

from checklist_app.checklists.pages.acknowledge import acknowledged
from checklist_app.checklists.running import NotBegun, running
from checklist_app.checklists.words import clock
from checklist_app.checklists.world import World
from checklist_app.records.after_seal import lately_supplemented
from checklist_app.records.database import Kept, Receipt, Seal
from checklist_app.records.key_tables import Comparison
from checklist_app.records.people import name_of
from checklist_app.records.store import Store
from checklist_app.records.unknowing import Unknowing, unknowing

Alarm = dict[str, str]
DIFFERS = "differs"


@dataclass(frozen=True)
class Notices:
    """Alarms until a supervisor has given his word on each; words by task."""

    alarms: tuple[Alarm, ...]
    notes: dict[str, tuple[str, ...]]
    after_seal: tuple[Alarm, ...] = ()
    """What came after a record was sealed, for two weeks: `href`, `words`."""


class NoticeBoard:
    """Worked out anew only after something has arrived."""

    def __init__(self, store: Store) -> None:
        self.store = store
        self.lock = Lock()
        self.stands: tuple[tuple[int, int, int, str], Notices] | None = None
        self.known: dict[tuple[str, int], list[Unknowing]] = {}

    def notices(self, world: World) -> Notices:
        """As of what the world holds."""
        unlooked = Comparison.select().where(Comparison.outcome == DIFFERS, Comparison.looked_by == "")
        sealed = Seal.select().count(self.store.database)
        at = (int(world.cursor()["number"]), unlooked.count(self.store.database), sealed, world.today)
        with self.lock:
            if self.stands is None or self.stands[0] != at:
                self.stands = (at, self._made(world))
            return self.stands[1]

    def _made(self, world: World) -> Notices:
        tasks = world.tasks()
        signed = self._with_signatures(tasks)
        alarms = [alarm for task in tasks if task in signed for alarm in self._alarms(world, task, signed[task])]
        notes = {task: (*self._uncounted(world, task, signed), *self._differing(task)) for task in tasks}
        return Notices(tuple(alarms), {task: words for task, words in notes.items() if words},
                       tuple(lately_supplemented(self.store, world.today)))

    def _alarms(self, world: World, task: str, arrived: int) -> Iterator[Alarm]:
        try:
            done = acknowledged(running(world, task))
        except NotBegun:
            return
        for one in self._unknowing(task, arrived):
            if one.entry.digest not in done:
                yield {"task": task, "sign_off": one.entry.digest, "href": f"/tasks/{task}/acknowledge",
                       "words": words_of(one)}

    def _unknowing(self, task: str, arrived: int) -> list[Unknowing]:
        """What was found stays found while nothing more arrives for the task."""
        if (task, arrived) not in self.known:
            self.known = {key: found for key, found in self.known.items() if key[0] != task}
            self.known[task, arrived] = unknowing(self.store, task)
        return self.known[task, arrived]

    def _with_signatures(self, tasks: list[str]) -> dict[str, int]:
        """Those of the tasks in which somebody signed, with how much has arrived for each."""
        subjects = [f"task/{task}" for task in tasks]
        signed = Kept.select(Kept.subject).where(Kept.type == "signature", Kept.subject.in_(subjects)).distinct()
        query = (Kept.select(Kept.subject, p.fn.COUNT(Kept.digest)).where(Kept.subject.in_(signed))
                 .group_by(Kept.subject).tuples())
        return {subject.partition("/")[2]: count for subject, count in query.execute(self.store.database)}

    def _uncounted(self, world: World, task: str, signed: dict[str, int]) -> Iterator[str]:
        if task not in signed:
            return
        query = (Receipt.select(Receipt.entry, Receipt.doubt).join(Kept)
                 .where(Kept.subject == f"task/{task}", Kept.type == "signature", ~Receipt.counts))
        doubts = dict(query.tuples().execute(self.store.database))
        for arrival in self.store.arrivals(("task", task)) if doubts else ():
            if arrival.entry.digest in doubts:
                yield (f"A sign-off by {name_of(world, arrival.entry.author)}, {clock(arrival.entry.at)}, counts for "
                       f"nothing: {arrival.doubt}")

    def _differing(self, task: str) -> Iterator[str]:
        query = Comparison.select(Comparison.words).where(
            Comparison.task == task, Comparison.outcome == DIFFERS, Comparison.looked_by == "")
        for (said,) in query.tuples().execute(self.store.database):
            yield f"A phone worked out something else than the server: {said}. Tell an administrator, and do not lift"


def words_of(one: Unknowing) -> str:
    """The alarm in a sentence."""
    return f"{one.name} signed at {one.entry.at[11:16]} UTC and had not heard: {'; '.join(one.why)}."
