"""All that the rules ask a load to withstand one way."""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from typing import NamedTuple

from checklist_app.mechanics.lashing import demands
from checklist_app.mechanics.lashing.demands import Demand, TiltRule
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Direction, Transport

VANS_BY = (RuleSet.EN, RuleSet.CTU, RuleSet.UK)


class Push(NamedTuple):
    """What is asked on one transport: its words, its demand, and whose rules say how holding is counted then."""

    transport: str
    asked: Demand
    by: RuleSet


@dataclass(frozen=True, eq=False)
class Asked:
    """All that is asked one way, one demand for each run.

    Tipping is asked otherwise of a load that is tied down.
    """

    slides: tuple[Push, ...]
    tips: tuple[Push, ...]
    tips_tied: tuple[Push, ...]


def printed(
    rule_set: RuleSet, ways: Iterable[Transport], van_gross_t: float | None, tilt_rule: TiltRule, direction: Direction,
    tied: bool,
) -> list[Push]:
    """What tables print for these ways of transport, and for a van on the road."""
    found = [Push(way.value, demands.demand(rule_set, way, direction, tied, tilt_rule), rule_set) for way in ways]
    if van_gross_t is not None and rule_set in VANS_BY:
        found.append(Push(f"van of {van_gross_t:g} t", demands.van_demand(van_gross_t, direction), rule_set))

    return found


def asked_of(tied: Sequence[Push], untied: Sequence[Push]) -> Asked:
    """Demands taken apart, one for each run."""
    return Asked(_sliding(untied), _tipping(untied), _tipping(tied))


def _sliding(pushes: Sequence[Push]) -> tuple[Push, ...]:
    return tuple(each._replace(asked=replace(each.asked, slides=(one,), tips=()))
                 for each in pushes for one in each.asked.slides)


def _tipping(pushes: Sequence[Push]) -> tuple[Push, ...]:
    return tuple(each._replace(asked=replace(each.asked, slides=(), tips=(one,)))
                 for each in pushes for one in each.asked.tips)
