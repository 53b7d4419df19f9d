"""Carries out what the invented yard has done lately: each lift and each lashing on its own day, oldest first."""

import sys
from collections.abc import Sequence
from datetime import UTC, datetime, time, timedelta
from pathlib import Path

from checklist_app.demo.data import table
from checklist_app.demo.lashings import Lashing
from checklist_app.demo.lifts import Lift
from checklist_app.demo.phone import Clock, Phone
from checklist_app.demo.work import BEGUN, DONE, LIFT, Begun, Script, signers
from checklist_app.web.app import create_app

STARTS = (time(7, 40), time(13, 10))
TO_THE_HOLD = timedelta(minutes=40)


def scripts() -> list[Script]:
    """Lifts and lashings: those under way first, the finished ones after them by their days."""
    both: list[Script] = [*table("lifts")["lift"], *table("lashings")["lashing"]]
    return sorted(both, key=lambda script: (script["day"] != 0, script["day"]))


def carry_out(folder: Path, now: datetime, scripts: Sequence[Script]) -> None:
    """Everything that was not begun yet, on its own day; what was cut off is given up.

    Args:
        folder: Filled with people and registers; holds the PINs, and the list of the tasks that were begun.
        now: The instant the days count from.
        scripts: As `demo_data/lifts.toml` and `demo_data/lashings.toml` have them, in the order of the records.
    """
    clock = Clock(now)
    app = create_app(folder, CLOCK=clock, ZONE=UTC)
    people, begun = signers(folder), Begun(folder / BEGUN)
    for number in range(max(0, len(begun.tasks) - 1), len(scripts)):
        script = scripts[number]
        clock.at = start(script, scripts[:number], now)
        phone = Phone(app)
        phone.sign_in(people[script["rigger"]].name, people[script["rigger"]].pin)
        work = Lift if script.get("operation", LIFT) == LIFT else Lashing
        work(phone, clock, script, people, begun).carry_out(number)
    begun.add(DONE)
    app.extensions["store"].close()


def start(script: Script, earlier: Sequence[Script], now: datetime) -> datetime:
    """When it begins: in the morning, the second of a day after noon, today's so that it is ready by now."""
    if script["day"] == 0:
        return now - TO_THE_HOLD
    second = any(other["day"] == script["day"] for other in earlier)
    return datetime.combine(now.date() + timedelta(days=script["day"]), STARTS[second], UTC)


if __name__ == "__main__":
    carry_out(Path(sys.argv[1]), datetime.now(UTC), scripts())
