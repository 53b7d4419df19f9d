"""How figures, margins and verdicts are said; what is over is rounded up."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checklist_app.operations.check import Check, Clause, Limit, Outcome, State, Strength, Verdict
from checklist_app.operations.graph import CannotAssess, Stopped, Waits
from checklist_app.operations.words import demand_said, figure, margin_said, note, percent, said, utilisation_said
from checklist_app.operations.words import verdict_said as told

TONNES, TILT = Clause("sling", "t"), Clause("tilt", "°", close=1.0, trial_tells=True)


def made(outcome: Outcome | Stopped, worst: Outcome | Stopped | None = None, clause: Clause = TONNES) -> Check:
    return Check("a[left]", "a", "left", clause, outcome, outcome if worst is None else worst)


@pytest.mark.parametrize("value, unit, text", [
    (1728.4, "kg", "1728\u00a0kg"), (12345.0, "kg", "12\u2009345\u00a0kg"), (21.04, "°", "21.0°"),
    (-0.001, "m", "0.00\u00a0m"), (-1.5, "m", "−1.50\u00a0m"), (0.5, "", "0.50"),
])
def test_a_figure_has_the_digits_its_unit_deserves(value: float, unit: str, text: str) -> None:
    assert said(value, unit) == text


@pytest.mark.parametrize("ratio, over, text", [
    (0.714, False, "71"), (0.995, False, "100"), (1.0, False, "100"), (1.125, True, "113"), (1.0001, True, "101"),
    (1.0001, False, "101"), (0.0, False, "0"),
])
def test_per_cent_are_whole_and_rounded_up_when_over(ratio: float, over: bool, text: str) -> None:
    assert percent(ratio, over) == text


@given(st.floats(0.0, 10.0))
def test_what_is_over_never_reads_100_and_what_is_within_never_more(ratio: float) -> None:
    if ratio > 1.0 + 1e-9:
        assert int(percent(ratio, over=True)) > 100
    elif ratio <= 1.0:
        assert int(percent(ratio)) <= 100


@given(st.floats(0.001, 1e5), st.sampled_from(["t", "kg", "m", "°"]))
def test_a_figure_rounded_up_is_never_less(value: float, unit: str) -> None:
    assert float(figure(value, unit, up=True).replace("\u2009", "")) >= value - 1e-9


def test_nominal_and_worst_are_said_together() -> None:
    assert utilisation_said(made(Strength(0.71, 1.0), Strength(0.76, 1.0))) == "71\u00a0%, up to 76\u00a0%"
    assert utilisation_said(made(Strength(0.71, 1.0))) == "71\u00a0%"
    assert utilisation_said(made(Strength(0.99, 1.0), Strength(1.001, 1.0))) == "99\u00a0%, up to 101\u00a0%"
    assert utilisation_said(made(Limit(1.0, 2.0), clause=TILT)) == ""


def test_a_limit_says_its_margin_at_its_worst() -> None:
    assert margin_said(made(Limit(1.0, 3.0), Limit(1.9, 3.0), TILT)) == "1.1° left"
    assert margin_said(made(Limit(3.01, 3.0), clause=TILT)) == "0.1° beyond"
    assert margin_said(made(Strength(1.0, 3.0))) == ""


def test_demand_stands_beside_capacity_and_a_state_gives_its_reason() -> None:
    assert demand_said(made(Strength(1.0001, 1.0))) == "1.01 of 1.00\u00a0t"
    assert demand_said(made(Strength(0.5, 1.0))) == "0.50 of 1.00\u00a0t"
    assert demand_said(made(State(False, "F-15: its examination was due 2026-11-04"))).startswith("F-15")
    assert demand_said(made(Waits("sling, left"))) == "sling, left"


def test_a_verdict_says_what_it_waits_for_why_not_and_what_the_trial_will_tell() -> None:
    assert told(made(Strength(0.5, 1.0))) == "within limit"
    assert told(made(Waits("sling, left", "mass"))) == "waiting for: sling, left; mass"
    assert told(made(CannotAssess("three legs"))) == "cannot be assessed: three legs"
    assert told(made(Strength(float("nan"), 1.0))) == "cannot be assessed: these figures cannot be judged"
    trial = made(Limit(1.0, 3.0), Limit(3.31, 3.0), TILT)
    assert trial.verdict is Verdict.CLOSE and told(trial) == "close to limit: up to 3.4°: the trial will tell"
    assert note(Check("tilt", "tilt", None, TILT, Limit(1.0, 3.0), CannotAssess("slack"), (), ("cg_x_m",))) == (
        "to be found at the trial"
    )


def test_a_tilt_that_a_trial_measured_says_so_and_a_planned_one_does_not() -> None:
    assert note(made(Limit(1.2, 3.0, measured=True), clause=TILT)) == "measured at the trial"
    assert told(made(Limit(1.2, 3.0, measured=True), clause=TILT)) == "within limit: measured at the trial"
    assert note(made(Limit(1.2, 3.0), clause=TILT)) == ""
    assert note(made(Limit(1.2, 3.0, measured=True), clause=Clause("hook load", "kg"))) == ""
