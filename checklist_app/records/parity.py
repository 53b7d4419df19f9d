"""A phone's evaluation held against the server's own, made from the same answers and gear alone.

Equal by construction; so whatever differs is told. A difference of one unit in the twelfth digit, with all words and
verdicts equal, is noted and alarms nobody.
"""

from collections.abc import Iterator, Mapping
from datetime import datetime, timedelta
from decimal import Decimal, InvalidOperation
from typing import Any

from checklist_app.checklists.canonical import NotCanonical, canonical, digest
from checklist_app.checklists.parity import FORM, again
from checklist_app.checklists.running import NotBegun
from checklist_app.records.compared import GONE, called, short, spaced, under
from checklist_app.records.key_tables import Comparison
from checklist_app.records.moments import moment
from checklist_app.records.store import Store

EQUAL, SMALL, DIFFERS = "equal", "small", "differs"
DIGITS = 12
EQUAL_DAYS = 90
MOST_WORDS = 400
SHAPE: Mapping[str, type] = {"task": str, "day": str, "inputs": list, "gear": list, "evaluation": dict}


class NoClaim(ValueError):
    """What was sent is no evaluation with what it was made from."""


def compare(store: Store, said: Any, device: str, code: str, at: datetime) -> str:
    """Evaluate again what a phone evaluated, and keep the outcome; gives it.

    Args:
        said: `{"form", "task", "day", "inputs", "gear", "evaluation"}` as the phone made it.
        device: Name of the phone.
        code: Which code it runs.
        at: The server's time.

    Raises:
        NoClaim: If it cannot be evaluated at all.
    """
    if not isinstance(said, dict) or said.get("form") != FORM or not _has_shape(said):
        raise NoClaim("an evaluation comes with its task, day, answers and gear")
    try:
        data = canonical(said)
        found = again(said["task"], said["inputs"], said["gear"], said["day"])
    except (KeyError, TypeError, ValueError, AttributeError, NotCanonical, NotBegun) as error:
        raise NoClaim("this cannot be evaluated here") from error
    outcome, words = judged(said["evaluation"], found)
    _keep(store, digest(data), outcome, words, said, found, device, code, at)

    return outcome


def compare_statement(store: Store, signed: Mapping[str, Any], device: str, at: datetime) -> str:
    """The same for the evaluation in a statement that was signed on a phone."""
    said = {name: signed[name] for name in ("day", "inputs", "gear", "evaluation")}
    return compare(store, {"form": FORM, "task": signed["about"][1], **said}, device, str(signed.get("code", "")), at)


def judged(said: Any, found: Any) -> tuple[str, str]:
    """How far two evaluations are apart, and where the first difference that matters lies."""
    if canonical(said) == canonical(found):
        return EQUAL, ""
    apart = list(_apart(said, found, "record"))
    large = [words for words, is_small in apart if not is_small]

    return (DIFFERS, large[0][:MOST_WORDS]) if large else (SMALL, apart[0][0][:MOST_WORDS])


def same_to_the_twelfth_digit(one: str, other: str) -> bool:
    """Whether two figures differ by one unit of the twelfth digit of the larger at most.

    Example:
        >>> same_to_the_twelfth_digit("1.23456789012", "1.23456789013")
        True
        >>> same_to_the_twelfth_digit("1.23456789012", "1.23456789014")
        False
    """
    try:
        a, b = Decimal(one), Decimal(other)
    except InvalidOperation:
        return False
    if not (a.is_finite() and b.is_finite()):
        return False
    first = max((number.adjusted() for number in (a, b) if number), default=0)

    return abs(a - b) <= Decimal(1).scaleb(first - (DIGITS - 1))


def _apart(said: Any, found: Any, where: str) -> Iterator[tuple[str, bool]]:
    """Each place in which they differ, and whether it is only the last digit."""
    if said == found and type(said) is type(found):
        return
    if isinstance(said, dict) and isinstance(found, dict):
        for name in sorted(said.keys() | found.keys()):
            yield from _apart(said.get(name), found.get(name), under(where, spaced(name)))
    elif isinstance(said, list) and isinstance(found, list) and len(said) == len(found):
        for number, (one, other) in enumerate(zip(said, found, strict=True), 1):
            yield from _apart(one, other, under(where, called(one, number)))
    else:
        small = isinstance(said, str) and isinstance(found, str) and same_to_the_twelfth_digit(said, found)
        yield f"{where}: {short(said) or GONE} there, {short(found)} here", small


def _has_shape(said: Mapping[str, Any]) -> bool:
    return all(isinstance(said.get(name), shape) for name, shape in SHAPE.items())


def _keep(store: Store, name: str, outcome: str, words: str, said: Mapping[str, Any], found: Mapping[str, Any],
          device: str, code: str, at: datetime) -> None:
    """What differs is kept whole; what is equal, for some weeks, only as a line."""
    whole = {"said": canonical(said), "found": canonical(found)} if outcome == DIFFERS else {}
    row = {"digest": name, "task": said["task"][:64], "device": device, "code": code[:64], "at": moment(at),
           "outcome": outcome, "words": words}
    Comparison.insert(**row, **whole).on_conflict_ignore().execute(store.database)
    old = moment(at - timedelta(days=EQUAL_DAYS))
    Comparison.delete().where(Comparison.outcome == EQUAL, Comparison.at < old).execute(store.database)
