"""A statement: exactly what a signer was shown. Anybody can evaluate again from it alone."""
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app import __version__
from checklist_app.checklists import scope
from checklist_app.checklists.again import Evaluated, evaluated
from checklist_app.checklists.canonical import canonical, digest
from checklist_app.checklists.frozen import Frozen, freeze
from checklist_app.checklists.procedure import Hold
from checklist_app.checklists.running import Running
from checklist_app.checklists.stops import goings_on
from checklist_app.checklists.verdicts import Verdicts, verdicts, within
from checklist_app.checklists.world import World
from checklist_app.operations.report import as_text

FORM = "statement/1"
NAMED = ("quantities", "waiting", "waiting_words", "refused", "not_applicable")
"""Parts of a report that are keyed by names with rows, `leg_tension[left]`, which canonical keys cannot be."""


@dataclass(frozen=True)
class Shown:
    """What lies before the signer: the answers that bind, the items picked, and what they evaluate to."""

    hold: Hold
    inputs: list[dict[str, Any]]
    gear: list[Frozen]
    day: str
    evaluated: Evaluated

    @property
    def report(self) -> Mapping[str, Any]:
        """The evaluation as plain data."""
        return self.evaluated.report

    @property
    def fingerprint(self) -> str:
        """The same for the same answers, items and evaluation, whoever looks and whenever.

        Where a guest is asked for, he signs for the answers: what was worked out from them the house has signed before.
        """
        if self.hold.guest:
            return digest(canonical({"hold": self.hold.name, "inputs": self.inputs, "day": self.day}))
        return digest(canonical({"hold": self.hold.name, "inputs": self.inputs, "gear": self.gear, "day": self.day,
                                 "evaluation": evaluation(self.report)}))

    @property
    def verdicts(self) -> Verdicts:
        """Verdicts of the checks in scope."""
        return within(verdicts(self.report), self.hold.checks)


@dataclass(frozen=True)
class Signer:
    """Who signs, as what, valid until when, on which device and at what time of it; `key` if the phone signs."""

    person: str
    name: str
    capacity: str
    until: str
    device: str
    at: str
    key: str = ""


def shown(world: World, running: Running, hold: Hold) -> Shown:
    """What a signature at this hold would cover now."""
    inputs = scope.inputs(running.procedure, running.folded, hold)
    gear = freeze(world, inputs, running.day)
    return Shown(hold, inputs, gear, running.day, evaluated(running.id, inputs, gear, running.day))


def statement(world: World, running: Running, seen: Shown, signer: Signer, meaning: str, own_work: bool) -> bytes:
    """The bytes that are signed."""
    beside = scope.beside(running.procedure, running.folded, seen.hold)
    return canonical({
        "form": FORM, "about": ["task", running.id], "hold": seen.hold.name, "meaning": meaning,
        "person": {"id": signer.person, "name": signer.name}, "capacity": signer.capacity, "until": signer.until,
        "device": signer.device, "at": signer.at, "own_work": own_work, "lift_class": str(seen.report["class"]),
        "cursor": dict(world.cursor()), "day": seen.day, "procedure": running.procedure.key, "code": __version__,
        "inputs": seen.inputs, "gear": seen.gear, "beside": sorted(entry.digest for entry in beside),
        "goings_on": sorted(entry.digest for entry in goings_on(running.folded)),
        "evaluation": evaluation(seen.report), **({"key": signer.key} if signer.key else {}),
    })


def evaluation(found: Mapping[str, Any]) -> dict[str, Any]:
    """A report as a statement holds it: every figure as text, every name with its row in a list of pairs."""
    text = dict(as_text(found))
    for name in NAMED:
        text[name] = [{"name": key, "value": text[name][key]} for key in sorted(text[name])]
    return text
