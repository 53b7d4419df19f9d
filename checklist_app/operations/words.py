"""How figures, checks and verdicts are said, on screen and on paper."""

import re
from math import ceil, floor

from checklist_app.operations.check import Check, Limit, Outcome, State, Strength, Verdict, utilisation
from checklist_app.operations.graph import Stopped

DECIMALS = {"kg": 0, "mm": 0, "s": 0, "%": 0, "°": 1, "t": 2, "m": 2, "kN": 2, "daN": 0, "kg/m": 0, "N": 0, "m/s": 1,
            "N·m": 0}
THIN, FIXED = "\u2009", "\u00a0"
FEW = 10_000
MEASURED = "measured at the trial"
TINY = 1e-9
DATE = re.compile(r"\d{4}-(0[1-9]|1[0-2])-\d{2}", re.ASCII)
MONTHS = ("January", "February", "March", "April", "May", "June", "July", "August", "September", "October",
          "November", "December")


def spoken_day(text: str) -> str:
    """A date as it is spoken; what is no date stands as it was written.

    Example:
        >>> spoken_day("2026-11-25"), spoken_day("soon")
        ('25 November 2026', 'soon')
    """
    if DATE.fullmatch(text[:10]) is None:
        return text
    year, month, number = text[:10].split("-")
    return f"{int(number)} {MONTHS[int(month) - 1]} {year}"


def figure(value: float, unit: str = "", up: bool = False) -> str:
    """A number with as many digits as its unit deserves; `up` for what is over a limit.

    Example:
        >>> figure(2.3499, "t"), figure(1728.4, "kg"), figure(1.0004, "t", up=True)
        ('2.35', '1728', '1.01')
    """
    places = DECIMALS.get(unit, 2)
    if up:
        scale = float("1" + "0" * places)
        value = ceil(value * scale - TINY) / scale
    text = f"{value:.{places}f}"
    text = text[1:] if text.startswith("-") and float(text) == 0.0 else text
    whole, point, rest = text.partition(".")
    grouped = f"{int(whole):,}".replace(",", THIN) if abs(value) >= FEW else whole
    return (grouped + point + rest).replace("-", "−")


def said(value: float, unit: str = "", up: bool = False) -> str:
    """A number with its unit.

    Example:
        >>> said(21.04, "°"), said(1728.4, "kg") == "1728\u00a0kg"
        ('21.0°', True)
    """
    gap = "" if unit in ("°", "") else FIXED
    return figure(value, unit, up) + gap + unit


def percent(ratio: float, over: bool = False) -> str:
    """A utilisation in whole per cent, rounded up where it is over; what is within never reads more than 100.

    Example:
        >>> percent(0.714), percent(1.125, over=True), percent(1.0004, over=True)
        ('71', '113', '101')
    """
    exact = ratio * 100.0
    return str(ceil(exact - TINY) if over or exact > 100.0 + TINY else floor(exact + 0.5))


def utilisation_said(check: Check) -> str:
    """Nominal and worst of a strength check; empty where there is no utilisation.

    A check that is over at its worst rounds the worst up.
    """
    nominal, worst = utilisation(check.outcome), utilisation(check.worst)
    if nominal is None:
        return ""

    first = percent(nominal, over=check.nominal_verdict is Verdict.OVER)
    last = percent(worst, over=check.raw_verdict is Verdict.OVER) if worst is not None else first
    return f"{first}{FIXED}%" if first == last else f"{first}{FIXED}%, up to {last}{FIXED}%"


def margin_said(check: Check) -> str:
    """What a limit has left at its worst, or how far it is beyond.

    Example:
        >>> from checklist_app.operations.check import Clause
        >>> margin_said(Check("tilt", "tilt", None, Clause("tilt", "°"), Limit(1.0, 3.0), Limit(1.9, 3.0)))
        '1.1° left'
    """
    outcome = check.worst if isinstance(check.worst, Limit) else check.outcome
    if not isinstance(outcome, Limit):
        return ""

    left = outcome.capacity - outcome.demand
    if left < 0.0:
        return f"{said(-left, check.clause.unit, up=True)} beyond"
    return f"{said(left, check.clause.unit)} left"


def demand_said(check: Check) -> str:
    """Demand of capacity, as entered: "1728 of 2000 kg"; the reason of a state; why there is neither."""
    outcome = check.outcome
    if isinstance(outcome, Stopped):
        return str(outcome)
    if isinstance(outcome, State):
        return outcome.words

    unit, over = check.clause.unit, check.nominal_verdict is Verdict.OVER
    return f"{figure(outcome.demand, unit, up=over and _up(outcome))} of {said(outcome.capacity, unit)}"


def _up(outcome: Outcome) -> bool:
    return isinstance(outcome, Strength | Limit) and outcome.demand > 0.0


def note(check: Check) -> str:
    """What else must be said beside the verdict."""
    if check.found_at_trial:
        return "to be found at the trial"
    if check.clause.trial_tells and isinstance(check.outcome, Limit) and check.outcome.measured:
        return MEASURED
    if not check.trial_will_tell or not isinstance(check.worst, Limit):
        return ""

    return f"up to {said(check.worst.demand, check.clause.unit, up=True)}: the trial will tell"


def verdict_said(check: Check) -> str:
    """The verdict, and what it waits for or why it cannot be assessed.

    Example:
        >>> from checklist_app.operations.check import Clause
        >>> from checklist_app.operations.graph import Waits
        >>> gone = Waits("sling, left")
        >>> verdict_said(Check("sling_strength[left]", "sling_strength", "left", Clause("sling"), gone, gone))
        'waiting for: sling, left'
    """
    told = check.verdict
    if told is Verdict.WAITING:
        return f"waiting for: {check.stopped}"
    if told in (Verdict.CANNOT, Verdict.NOT_APPLICABLE):
        return f"{told.words}: {reason(check)}"

    return f"{told.words}: {note(check)}" if note(check) else told.words


def reason(check: Check) -> str:
    """Why a check has no result that can be judged."""
    stopped = check.stopped
    return str(stopped) if stopped is not None else "these figures cannot be judged"


def title(check: Check) -> str:
    """What is checked, with the label of its row."""
    return check.clause.title + (f", {check.row.replace('_', ' ')}" if check.row else "")
