"""Kinds, verdicts and what governs; what is no number never passes."""

import itertools

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checklist_app.operations.check import (
    AtLimit,
    Check,
    Clause,
    Limit,
    Outcome,
    State,
    Strength,
    Verdict,
    badness,
    check,
    governs,
    overall,
    utilisation,
    verdict,
)
from checklist_app.operations.graph import CannotAssess, NotApplicable, Stopped, Waits

NAN, INF = float("nan"), float("inf")
ALLOWED, REFUSED = Clause("a", "t", close=0.5), Clause("a", "t", at_limit=AtLimit.REFUSED, close=0.5)
TOLD_AT_TRIAL = Clause("tilt", "°", close=1.0, trial_tells=True)
numbers = st.floats(allow_nan=True, allow_infinity=True)
PASSING = (Verdict.WITHIN, Verdict.CLOSE)


def made(name: str, outcome: Outcome | Stopped, worst: Outcome | Stopped | None = None, clause: Clause = ALLOWED,
         unknown: tuple[str, ...] = (), drivers: tuple[str, ...] | None = None) -> Check:
    moved_by = unknown if drivers is None else drivers
    return Check(name, name, None, clause, outcome, outcome if worst is None else worst, moved_by, unknown)


@pytest.mark.parametrize("outcome, clause, told", [
    (Strength(0.0, 1.0), ALLOWED, Verdict.WITHIN),
    (Strength(0.75, 1.0), ALLOWED, Verdict.WITHIN),
    (Strength(0.7500001, 1.0), ALLOWED, Verdict.CLOSE),
    (Strength(1.0, 1.0), ALLOWED, Verdict.CLOSE),
    (Strength(1.0, 1.0), REFUSED, Verdict.OVER),
    (Strength(1.0000001, 1.0), ALLOWED, Verdict.OVER),
    (Strength(INF, 1.0), ALLOWED, Verdict.OVER),
    (Strength(NAN, 1.0), ALLOWED, Verdict.CANNOT),
    (Strength(1.0, NAN), ALLOWED, Verdict.CANNOT),
    (Strength(1.0, INF), ALLOWED, Verdict.CANNOT),
    (Strength(0.0, 0.0), ALLOWED, Verdict.CANNOT),
    (Strength(1.0, -1.0), ALLOWED, Verdict.CANNOT),
    (Strength(-1.0, 1.0), ALLOWED, Verdict.CANNOT),
    (Limit(0.4, 1.0), ALLOWED, Verdict.WITHIN),
    (Limit(0.5, 1.0), ALLOWED, Verdict.WITHIN),
    (Limit(0.51, 1.0), ALLOWED, Verdict.CLOSE),
    (Limit(1.0, 1.0), ALLOWED, Verdict.CLOSE),
    (Limit(1.0, 1.0), REFUSED, Verdict.OVER),
    (Limit(0.0, -0.1), ALLOWED, Verdict.OVER),
    (Limit(NAN, 1.0), ALLOWED, Verdict.CANNOT),
    (Limit(1.0, NAN), ALLOWED, Verdict.CANNOT),
    (Limit(INF, 1.0), ALLOWED, Verdict.OVER),
    (Limit(1.0, INF), ALLOWED, Verdict.CANNOT),
    (State(True, "in date"), ALLOWED, Verdict.WITHIN),
    (State(False, "out of date"), ALLOWED, Verdict.OVER),
    (State(NAN, "nonsense"), ALLOWED, Verdict.OVER),  # type: ignore[arg-type]
    (Waits("mass"), ALLOWED, Verdict.WAITING),
    (CannotAssess("no"), ALLOWED, Verdict.CANNOT),
    (NotApplicable("none"), ALLOWED, Verdict.NOT_APPLICABLE),
])
def test_the_verdict_on_one_outcome(outcome: Outcome | Stopped, clause: Clause, told: Verdict) -> None:
    assert verdict(outcome, clause) is told


@given(st.sampled_from([Strength, Limit]), numbers, numbers, st.sampled_from([ALLOWED, REFUSED]))
def test_only_a_finite_demand_up_to_a_finite_capacity_passes(
    kind: type[Strength], demand: float, capacity: float, clause: Clause
) -> None:
    told = verdict(kind(demand, capacity), clause)
    if told in PASSING:
        assert demand <= capacity < INF
        assert demand < capacity or clause.at_limit is AtLimit.ALLOWED


@given(st.floats(0.0, 1e6), st.floats(0.0, 1e6), st.floats(1e-6, 1e6))
def test_more_demand_never_reads_better(one: float, other: float, capacity: float) -> None:
    less, more = sorted((one, other))
    assert badness(Strength(less, capacity), ALLOWED) <= badness(Strength(more, capacity), ALLOWED)


def test_the_worst_verdict_follows_the_worse_of_nominal_and_worst() -> None:
    for first, second in itertools.product((Strength(0.5, 1.0), Strength(0.8, 1.0), Strength(1.2, 1.0)), repeat=2):
        told = made("a", first, second).verdict
        assert told.rank == max(verdict(first, ALLOWED).rank, verdict(second, ALLOWED).rank)


def test_overall_in_the_order_over_cannot_waiting_close_within() -> None:
    ranked = [
        made("within", Strength(0.1, 1.0)), made("close", Strength(0.9, 1.0)), made("waits", Waits("mass")),
        made("cannot", CannotAssess("no")), made("over", Strength(2.0, 1.0)),
    ]
    for count, check_ in enumerate(ranked, 1):
        assert overall(ranked[:count]) is check_.verdict
    assert overall([]) is Verdict.WAITING
    assert overall([made("none", NotApplicable("none"))]) is Verdict.WAITING
    assert overall([made("none", NotApplicable("none")), ranked[0]]) is Verdict.WITHIN


def test_the_worst_verdict_governs_then_the_highest_utilisation_at_its_worst() -> None:
    low = made("low", Strength(0.6, 1.0), Strength(0.62, 1.0))
    high = made("high", Strength(0.5, 1.0), Strength(0.7, 1.0))
    limit, state = made("limit", Limit(0.1, 1.0)), made("state", State(True, "fine"))
    close, failed = made("close", Limit(0.9, 1.0)), made("failed", State(False, "late"))
    waits, cannot = made("waits", Waits("mass")), made("cannot", CannotAssess("no"))
    assert governs([low, high, limit, state, waits]) is high
    assert governs([low, high, close]) is close
    assert governs([low, close, failed]) is failed
    assert governs([low, cannot, close]) is cannot


def test_nothing_governs_while_nothing_is_computed() -> None:
    assert governs([]) is None
    assert governs([made("waits", Waits("mass")), made("cannot", CannotAssess("no"))]) is None
    assert governs([made("limit", Limit(0.1, 1.0)), made("state", State(True, "fine"))]) is None


def test_a_utilisation_is_never_invented() -> None:
    assert utilisation(Strength(1.0, 2.0)) == 0.5
    nothing = (Limit(1.0, 2.0), State(True, ""), Waits("mass"), Strength(1.0, 0.0), Strength(NAN, 1.0), None)
    assert [utilisation(outcome) for outcome in nothing] == [None] * len(nothing)


@pytest.mark.parametrize("outcome, worst, unknown, told", [
    (Limit(1.0, 3.0), Limit(1.5, 3.0), (), Verdict.WITHIN),
    (Limit(1.0, 3.0), Limit(3.4, 3.0), (), Verdict.CLOSE),
    (Limit(3.1, 3.0), Limit(3.4, 3.0), (), Verdict.OVER),
    (Limit(1.0, 3.0, measured=True), Limit(3.4, 3.0, measured=True), (), Verdict.OVER),
    (Limit(1.0, 3.0), CannotAssess("beyond the legs"), (), Verdict.CANNOT),
    (Limit(1.0, 3.0), CannotAssess("beyond the legs"), ("cg_x_m",), Verdict.CLOSE),
    (Limit(3.1, 3.0), Limit(40.0, 3.0), ("cg_x_m",), Verdict.CLOSE),
    (Limit(1.0, 3.0, measured=True), Limit(3.4, 3.0, measured=True), ("cg_x_m",), Verdict.OVER),
    (Waits("legs"), Waits("legs"), ("cg_x_m",), Verdict.WAITING),
])
def test_what_a_trial_will_tell_is_close_until_it_has(
    outcome: Outcome | Stopped, worst: Outcome | Stopped, unknown: tuple[str, ...], told: Verdict
) -> None:
    assert made("tilt", outcome, worst, TOLD_AT_TRIAL, unknown).verdict is told


def test_an_unknown_that_does_not_move_a_check_is_no_excuse() -> None:
    tilt = made("tilt", Limit(3.1, 3.0), Limit(3.1, 3.0), TOLD_AT_TRIAL, unknown=("cg_x_m",), drivers=())
    assert tilt.verdict is Verdict.OVER


def test_no_trial_excuses_another_check() -> None:
    assert made("sling", Strength(0.9, 1.0), Strength(1.1, 1.0), unknown=("cg_x_m",)).verdict is Verdict.OVER


def test_the_decorator_keeps_what_never_changes() -> None:
    @check("hoist", unit="t", source="PLATE", rule_set="plates", at_limit=AtLimit.REFUSED)
    def hoist() -> Strength:
        return Strength(1.0, 2.0)

    assert hoist.__dict__["clause"] == Clause("hoist", "t", "PLATE", "plates", AtLimit.REFUSED)


def test_a_caution_decides_nothing_and_governs_nothing() -> None:
    minded = made("steep", State(True, "hangs 11°", "steeper than 15°"))
    low = made("low", Strength(0.1, 1.0))
    assert minded.verdict is Verdict.WITHIN and minded.caution == "steeper than 15°"
    assert governs([minded, low]) is low and overall([minded, low]) is Verdict.WITHIN
    assert low.caution == "" and made("waits", Waits("legs")).caution == ""
    assert made("failed", State(False, "late", "mind it")).caution == ""
