"""A check: demand held against capacity, of kind strength, limit or state; the verdicts and what governs.

A check function returns its two numbers (or holds, or does not): its return type is the kind. What never changes stands
in its decorator.
"""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, field
from enum import Enum
from math import isfinite
from typing import Any, NamedTuple

from checklist_app.operations.graph import CannotAssess, F, NotApplicable, Stopped, Waits
from checklist_app.operations.settings import CLOSE_FROM

INFINITE = float("inf")


class Strength(NamedTuple):
    """Demand against capacity, both in the label's own unit."""

    demand: float
    capacity: float


class Limit(NamedTuple):
    """A bound in its own unit; an at-least limit puts the required value as demand and what there is as capacity.

    `measured`: the demand was read off at a trial, so no later trial will tell better.
    """

    demand: float
    capacity: float
    measured: bool = False


class State(NamedTuple):
    """Holds or not, with the reason in one sentence; one that holds may carry a caution: seen, never deciding."""

    holds: bool
    reason: str
    caution: str = ""

    @property
    def words(self) -> str:
        """The reason, and the caution after it."""
        return f"{self.reason}: {self.caution}" if self.caution else self.reason


Outcome = Strength | Limit | State


class AtLimit(Enum):
    """What the clause says of demand equal to capacity."""

    ALLOWED = "allowed"
    REFUSED = "refused"


class Verdict(Enum):
    """In order of rank: the later one decides."""

    NOT_APPLICABLE = "not applicable"
    WITHIN = "within limit"
    CLOSE = "close to limit"
    WAITING = "waiting"
    CANNOT = "cannot be assessed"
    OVER = "over limit"

    @property
    def rank(self) -> int:
        """Place in the order."""
        return RANKS[self]

    @property
    def words(self) -> str:
        """As it is said."""
        return str(self.value)


RANKS = {verdict: rank for rank, verdict in enumerate(Verdict)}
STOPPED = ((NotApplicable, Verdict.NOT_APPLICABLE), (CannotAssess, Verdict.CANNOT), (Waits, Verdict.WAITING))


@dataclass(frozen=True)
class Clause:
    """What never changes about one check function."""

    title: str
    unit: str = ""
    source: str = ""
    rule_set: str = ""
    at_limit: AtLimit = AtLimit.ALLOWED
    close: float = 0.0
    trial_tells: bool = False
    smooth: bool = False


def check(
    title: str, *, unit: str = "", source: str = "", rule_set: str = "", at_limit: AtLimit = AtLimit.ALLOWED,
    close: float = 0.0, trial_tells: bool = False, smooth: bool = False,
) -> Callable[[F], F]:
    """Make a function a check.

    Args:
        title: what a person reads.
        unit: of demand and capacity.
        source: key of the source of the limit.
        rule_set: the rules it is judged by, in words.
        at_limit: what the clause says of demand equal to capacity.
        close: close margin of a limit, in its unit.
        trial_tells: a trial will measure it: what is over only at its worst is close until then.
        smooth: its capacity is no rating with steps: it moves with the entries as the demand does.
    """
    clause = Clause(title, unit, source, rule_set, at_limit, close, trial_tells, smooth)

    def decorate(function: F) -> F:
        function.__dict__["clause"] = clause
        return function

    return decorate


def verdict(outcome: Outcome | Stopped, clause: Clause) -> Verdict:
    """The verdict on one outcome; written so that what is no number never passes."""
    if isinstance(outcome, Stopped):
        return next(told for kind, told in STOPPED if isinstance(outcome, kind))
    if isinstance(outcome, State):
        return Verdict.WITHIN if outcome.holds is True else Verdict.OVER
    demand, capacity = outcome[0], outcome[1]
    if not _can_be_judged(outcome):
        return Verdict.CANNOT
    if not (demand < capacity or (demand == capacity and clause.at_limit is AtLimit.ALLOWED)):
        return Verdict.OVER

    strength = isinstance(outcome, Strength)
    close = demand > CLOSE_FROM.value * capacity if strength else demand > capacity - clause.close
    return Verdict.CLOSE if close else Verdict.WITHIN


def _can_be_judged(outcome: Strength | Limit) -> bool:
    demand, capacity = outcome[0], outcome[1]
    if isinstance(outcome, Limit):
        return isfinite(capacity) and demand == demand

    return isfinite(capacity) and capacity > 0.0 and demand >= 0.0


def utilisation(outcome: Any) -> float | None:
    """Demand / capacity of a strength; never invented for a limit or a state."""
    if not isinstance(outcome, Strength) or not _can_be_judged(outcome):
        return None

    return outcome.demand / outcome.capacity


def badness(outcome: Outcome | Stopped, clause: Clause) -> tuple[int, float]:
    """What the worst of many outcomes is: the verdict, then how far it goes."""
    rank = verdict(outcome, clause).rank
    if isinstance(outcome, Strength):
        return rank, utilisation(outcome) or 0.0
    if isinstance(outcome, Limit):
        return rank, outcome.demand - outcome.capacity if _can_be_judged(outcome) else 0.0

    return rank, 0.0


@dataclass(frozen=True)
class Check:
    """One check of one task: at nominal, at its worst, and the verdict that follows.

    `drivers` are the uncertain entries that move it, most first; `point` where its worst was found, by the slots of the
    plan; `unknown` the *don't know* answers it hangs on;
    `hopeless`: over limit wherever those may lie.
    """

    name: str
    quantity: str
    row: str | None
    clause: Clause
    outcome: Outcome | Stopped
    worst: Outcome | Stopped
    drivers: tuple[str, ...] = ()
    unknown: tuple[str, ...] = ()
    hopeless: bool = False
    point: Mapping[int, float] = field(default_factory=dict, compare=False)

    @property
    def nominal_verdict(self) -> Verdict:
        """The verdict if every entry were exact."""
        return verdict(self.outcome, self.clause)

    @property
    def raw_verdict(self) -> Verdict:
        """The verdict that follows the worst, whatever a trial may tell."""
        return max(self.nominal_verdict, verdict(self.worst, self.clause), key=lambda told: told.rank)

    @property
    def verdict(self) -> Verdict:
        """The verdict."""
        return Verdict.CLOSE if self.trial_will_tell or self.found_at_trial else self.raw_verdict

    @property
    def trial_will_tell(self) -> bool:
        """Within or close as entered, over only at its worst, and a trial lift measures it."""
        judged = (Verdict.WITHIN, Verdict.CLOSE)
        return self._before_trial and self.nominal_verdict in judged and self.raw_verdict is Verdict.OVER

    @property
    def found_at_trial(self) -> bool:
        """Nobody knows an entry that moves it, it may lie so that it is within, and a trial lift measures it."""
        settled = self.raw_verdict in (Verdict.WAITING, Verdict.NOT_APPLICABLE)
        moved = self.stopped is not None or any(name in self.drivers for name in self.unknown)
        return self._before_trial and bool(self.unknown) and moved and not settled and not self.hopeless

    @property
    def _before_trial(self) -> bool:
        return self.clause.trial_tells and not (isinstance(self.outcome, Limit) and self.outcome.measured)

    @property
    def computed(self) -> bool:
        """Whether there is a result that can be held against a limit."""
        return self.verdict in (Verdict.WITHIN, Verdict.CLOSE, Verdict.OVER)

    @property
    def caution(self) -> str:
        """What somebody should mind although it holds; empty where there is nothing."""
        return next((o.caution for o in (self.outcome, self.worst) if isinstance(o, State) and o.holds is True), "")

    @property
    def stopped(self) -> Stopped | None:
        """Why there is no verdict on numbers, where that is so."""
        found = [o for o in (self.outcome, self.worst) if isinstance(o, Stopped)]
        return max(found, key=lambda o: verdict(o, self.clause).rank, default=None)


def overall(checks: Iterable[Check]) -> Verdict:
    """The worst decides; nothing but *not applicable*, or nothing at all, is waiting."""
    told = max((c.verdict for c in checks), key=lambda v: v.rank, default=Verdict.NOT_APPLICABLE)
    return Verdict.WAITING if told is Verdict.NOT_APPLICABLE else told


def governs(checks: Iterable[Check]) -> Check | None:
    """The worst verdict first, then the highest utilisation at its worst; a limit or a state only when not within.

    What waits never governs, and nothing does while nothing is computed.
    """
    able = [c for c in checks if c.computed or c.verdict is Verdict.CANNOT]
    if not any(c.computed for c in able):
        return None

    strong = [c for c in able if c.verdict is not Verdict.WITHIN or utilisation(c.worst) is not None]
    return max(strong, key=lambda c: (c.verdict.rank, highest_utilisation(c)), default=None)


def highest_utilisation(check: Check) -> float:
    """The higher of nominal and worst utilisation; 0 where there is none."""
    return max(utilisation(check.outcome) or 0.0, utilisation(check.worst) or 0.0)
