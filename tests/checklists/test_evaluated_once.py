"""The same answers are worked out once: for the page and for what is signed, before a tick and after it."""
import random
from collections.abc import Iterator

import pytest

from checklist_app.checklists import running as module
from checklist_app.checklists import values
from checklist_app.checklists.again import _evaluated
from checklist_app.checklists.answer import answer
from checklist_app.checklists.running import running
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.report import report
from checklist_app.operations.table import Table
from checklist_app.operations.task import Task
from tests.checklists.yard import SUPERVISOR, TASK, Yard, request, sign

HOLD = f"/tasks/{TASK}/holds/release"


@pytest.fixture
def times(monkeypatch: pytest.MonkeyPatch) -> Iterator[list[int]]:
    """How often something was worked out, from an empty memory on."""
    found = [0]

    def counted(table: Table, task: Task) -> Evaluation:
        found[0] += 1
        return assess(table, task)

    monkeypatch.setattr(module, "assess", counted)
    monkeypatch.setattr(module, "_evaluations", type(module._evaluations)())
    _evaluated.cache_clear()
    yield found
    _evaluated.cache_clear()


def looked_at(yard: Yard, times: list[int]) -> int:
    before = times[0]
    assert answer(request(yard, HOLD), yard.world).status == 200
    return times[0] - before


def test_a_hold_point_works_a_changed_lift_out_once(times: list[int]) -> None:
    yard = Yard().ready()
    assert looked_at(yard, times) == 1 and looked_at(yard, times) == 0
    yard.say("lift_height_m", values.number("0.6", "m", "tape"))
    assert looked_at(yard, times) == 1
    yard.say("eyes_seated", values.tick("no"))
    assert looked_at(yard, times) == 0, "no figure hangs on a tick"
    sign(yard, "release", SUPERVISOR)
    yard.put(("gear", "R-1"), ("quarantine",), values.quarantine("2026-11-25"))
    assert looked_at(yard, times) >= 1, "gear out of use is another lift"


def test_the_order_of_answers_changes_nothing() -> None:
    now = running(Yard().ready().trial().world, TASK)
    told = report(now.operation, now.evaluation)
    answers = list(now.task.answers.items())
    for seed in (1, 2):
        random.Random(seed).shuffle(answers)
        assert report(now.operation, assess(now.table, Task(dict(answers), now.task.rows))) == told
