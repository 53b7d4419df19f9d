"""Does it hold: sliding and tipping one way, by everything that holds the load, with what it lacks.

A lashing may be left out of account, never do harm: sliding is the better of blocks and tie-downs at full friction, and
of everything at the reduced friction.
"""

from dataclasses import dataclass

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.lashing.demands import Demand, Slide, Tip
from checklist_app.mechanics.lashing.prepared import Prepared, Tension, Withstood
from checklist_app.mechanics.lashing.rule_sets import RULES, RuleSet
from checklist_app.mechanics.lashing.slide_3d import SETTLED, slides
from checklist_app.mechanics.lashing.tip_3d import tips_at

SOURCE = "STATICS_LASHED_BODY"
NOT_EVEN_STANDING = 0.0


@dataclass(frozen=True)
class Held:
    """One run: what is asked and what is withstood, in shares of the weight.

    `formula` is what the rule set's own formula gives; the difference is what turning, sharing and a foot that swings
    out take away. `settled` is withstood with half the tension, None where that was not asked for. Tipping at equality
    is refused.
    """

    title: str
    need: float
    have: float
    formula: float
    settled: float | None
    with_direct: bool
    equality_holds: bool
    pulls_dan: tuple[float, ...]

    @property
    def holds(self) -> bool:
        """Whether it is enough."""
        return self.have >= self.need if self.equality_holds else self.have > self.need

    @property
    def times(self) -> float:
        """How many times what is asked is withstood: λ, the inverse of the utilisation."""
        return self.have / self.need


@dataclass(frozen=True)
class Ways:
    """A body as one rule set rates it, and by breaking strength where that is known."""

    rated: Prepared
    breaking: Prepared | None = None


def held(
    rule_set: RuleSet, ways: Ways, asked: Demand, friction: float, settled: bool = True
) -> tuple[Held, ...]:
    """Every run that the rule set asks for one way; the worst governs.

    Source:
        STATICS_LASHED_BODY; EN_12195_1 and CTU_ANNEX_7 for the reduced friction beside direct lashings.

    Args:
        rule_set: whose rules.
        ways: the load and its lashings on the face that is looked at.
        asked: what is to be withstood one way.
        friction: μ on that face [-], 0 to 1.
        settled: with half the tension of tie-downs too.

    Returns:
        The runs, sliding first.

    Raises:
        OutOfRangeError: If the friction is no number from 0 to 1, or the lashings are not shared out.

    Example:
        >>> from checklist_app.mechanics.lashing.demands import TiltRule, demand
        >>> from checklist_app.mechanics.lashing.lashed_body import Stands, lashed_body
        >>> from checklist_app.mechanics.lashing.prepared import prepared
        >>> from checklist_app.mechanics.lashing.transport import Direction, Transport
        >>> from checklist_app.mechanics.vectors import Vec
        >>> feet = [(0.5, 0.35), (-0.5, 0.35), (0.5, -0.35), (-0.5, -0.35)]
        >>> ready = Ways(prepared(lashed_body(981.0, Vec(0.0, 0.0, 0.8), feet, Stands.FEET)))
        >>> asked = demand(RuleSet.EN, Transport.ROAD, Direction.FORWARD, False, TiltRule.PAIRS)
        >>> [(run.title, round(run.times, 3)) for run in held(RuleSet.EN, ready, asked, 0.1)]
        [('sliding forwards', 0.125), ('tipping forwards', 0.781)]
    """
    if not 0.0 <= friction <= 1.0:
        raise OutOfRangeError("friction", friction, "0 to 1", SOURCE)

    return (
        *(_sliding(rule_set, ways, asked, each, friction, settled) for each in asked.slides),
        *(_tipping(rule_set, ways.rated, asked, each, settled) for each in asked.tips),
    )


def pulls_at_need_dan(run: Held, without_direct: float) -> tuple[float, ...]:
    """What each direct lashing takes when the load is pushed as the rule set asks, for the drawing and its check.

        T at the greatest push × (need − without) / (have − without);  0 where it holds without them

    Source:
        STATICS_LASHED_BODY: between two balances lies a balance; of equal legs it is the formula of EN_12195_1.

    Args:
        run: the run, direct lashings counted in it.
        without_direct: what is withstood without them at the same friction, as a share of the weight [-], 0 or more.

    Returns:
        Pulls, in the order of the legs [daN].

    Raises:
        OutOfRangeError: If the load does not hold, or the number is none of 0 or more.

    Example:
        >>> run = Held("sliding forwards", 0.8, 1.0, 1.0, 1.0, True, True, (1000.0, 500.0))
        >>> pulls_at_need_dan(run, 0.6)
        (500.0000000000001, 250.00000000000006)
    """
    if not 0.0 <= without_direct < float("inf"):
        raise OutOfRangeError("withstood without direct lashings", without_direct, "a number of 0 or more", SOURCE)
    if not run.holds:
        raise OutOfRangeError(run.title, run.have, f"{run.need:g} or more before pulls can be told", SOURCE)
    if without_direct >= run.need:
        return (0.0,) * len(run.pulls_dan)
    share = (run.need - without_direct) / (run.have - without_direct)

    return tuple(share * pull for pull in run.pulls_dan)


def _sliding(
    rule_set: RuleSet, ways: Ways, asked: Demand, slide: Slide, friction: float, settled: bool
) -> Held:
    """Against breaking strength where it is known; where not, the rating stands in for it, which is stricter."""
    what = ways.breaking if slide.against_breaking and ways.breaking is not None else ways.rated
    rules = RULES[rule_set]
    share = 1.0 / asked.fs if rules.tie_downs_count else 0.0
    found = slides(what, asked.direction.way, slide.downward, friction, rules.direct_friction_share, share, settled)
    beyond = ", breaking strength" if slide.against_breaking else ""
    title = f"sliding {asked.direction.value}{beyond}"
    return _told(title, slide.push, found.found, _push(found.settled) if settled else None, found.with_direct, True)


def _tipping(rule_set: RuleSet, what: Prepared, asked: Demand, tip: Tip, settled: bool) -> Held:
    share = 1.0 / asked.fs if RULES[rule_set].tie_downs_count else 0.0
    way = asked.direction.way
    counted = RULES[rule_set].moment_share
    found = tips_at(what, way, tip.downward, tip.tension, share, counted)
    half = found
    if settled and what.body.strands:
        half = tips_at(what, way, tip.downward, tip.tension, share * SETTLED, counted)
    by = ", half of LC" if tip.tension is Tension.HALF_LC else ""
    title, left = f"tipping {asked.direction.value}{by}", _push(half) if settled else None
    return _told(title, tip.push, found, left, what.legs > 0, False)


def _told(
    title: str, need: float, found: Withstood | None, settled: float | None, direct: bool, equality_holds: bool
) -> Held:
    have = _push(found)
    return Held(
        title, need, have, have if found is None else found.straight, settled, direct, equality_holds,
        () if found is None else found.pulls,
    )


def _push(found: Withstood | None) -> float:
    return NOT_EVEN_STANDING if found is None else found.push
