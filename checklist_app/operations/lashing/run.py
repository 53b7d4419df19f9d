"""One run that the rules ask for: what is asked, what is withstood; and which of several governs."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import NamedTuple

from checklist_app.mechanics import exact
from checklist_app.mechanics.lashing import holding
from checklist_app.mechanics.lashing.demands import Demand
from checklist_app.mechanics.lashing.holding import Held
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.check import Strength
from checklist_app.operations.graph import CannotAssess
from checklist_app.operations.lashing.asked import Asked, Push
from checklist_app.operations.lashing.lashed import Lashed


@dataclass(frozen=True, eq=False)
class Run:
    """One run: on which transport, by whose rules, and what came out."""

    transport: str
    asked: Demand
    by: RuleSet
    held: Held


@dataclass(frozen=True, eq=False)
class Runs:
    """The runs one way."""

    runs: tuple[Run, ...]

    @property
    def governs(self) -> Run:
        """The one that holds least."""
        return min(self.runs, key=lambda run: run.held.times)


class Governs(NamedTuple):
    """The run that governs, in shares of the weight."""

    transport: str
    title: str
    need: float
    have: float


def all_runs(lashed: Lashed, asked: Asked, friction: float) -> Runs:
    """Sliding and tipping on one face, with half the tension too."""
    tips = asked.tips_tied if lashed.tied else asked.tips
    slid = runs_of(lashed, asked.slides, friction, settled=True)
    tipped = runs_of(lashed, tips, friction, settled=True)

    return Runs((*slid.runs, *tipped.runs))


def runs_of(lashed: Lashed, asked: Iterable[Push], friction: float, settled: bool = False) -> Runs:
    """Those runs that the demands name."""
    return Runs(tuple(
        Run(words, each, by, one)
        for words, each, by in asked
        for one in holding.held(by, lashed.ways, each, float(friction), settled)
    ))


def governs(runs: Runs) -> Governs:
    """The governing run in numbers."""
    run = runs.governs
    return Governs(run.transport, run.held.title, run.held.need, run.held.have)


def settled_dan(runs: Runs, with_settled: Runs, lashed: Lashed, weight_dan: float) -> float | None:
    """What the governing run withstands with half the tension; None where no tie-down holds it."""
    run = runs.governs
    left = next(
        each.held.settled for each in with_settled.runs
        if (each.transport, each.held.title) == (run.transport, run.held.title)
    )
    return left * weight_dan if lashed.tied and left is not None else None


def needed_dan(governs: Governs, weight_dan: float) -> float:
    """The push of one run, named by its transport."""
    return exact.let(f"{governs.transport}, {governs.title}: share of the weight", governs.need) * weight_dan


def holds(needed_dan: float, withstood_dan: float) -> Strength:
    """Against nothing at all no share can be told."""
    if not withstood_dan > 0.0:
        raise CannotAssess("nothing withstands any push that way: friction, lashings and blocks give none")

    return Strength(needed_dan, withstood_dan)
