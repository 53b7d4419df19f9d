"""How the figures of a sealed check are said: on the paper and on the record's page alike."""

from collections.abc import Mapping
from functools import cache
from typing import Any

from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.words import FIXED, MEASURED, percent, said

Check = Mapping[str, Any]
NOTHING = "–"


def demand(check: Check) -> str:
    """Demand with its unit, at the stated entries."""
    return measured(check.get("demand"), check["unit"])


def capacity(check: Check) -> str:
    """Capacity or limit with its unit, at the stated entries."""
    return measured(check.get("capacity"), check["unit"])


def measured(value: str | None, unit: str) -> str:
    """A sealed number as it is read, with its unit; a dash where there is none.

    >>> measured("36.21", "°"), measured(None, "t")
    ('36.2°', '–')
    """
    return NOTHING if value is None else said(float(value), unit)


def title(check: Check) -> str:
    """What is checked, with its row.

    >>> title({"title": "sling, by its own pull", "row": "left"})
    'Sling, by its own pull, left'
    >>> title({"title": "tilt lengthwise", "row": None, "note": "measured at the trial"})
    'Tilt lengthwise, measured at the trial'
    """
    measured = check.get("note") if check.get("note") == MEASURED else None
    row = str(check.get("row") or "").replace("_", " ")
    words = ", ".join(filter(None, (str(check["title"]), row, measured)))

    return words[:1].upper() + words[1:]


def used(check: Check) -> str:
    """A strength shows its percentage, a limit what is left, a state its word; each with its worst."""
    worst = check.get("worst") or {}
    if check["kind"] == "strength":
        nominal, furthest = percentage(check), percentage(worst)
        return nominal if furthest in (nominal, NOTHING) else f"{nominal}, up to {furthest}"
    if check["kind"] == "limit":
        nominal, furthest = left(check, check["unit"]), left(worst, check["unit"])
        return nominal if furthest in (nominal, NOTHING) else f"{nominal}, at worst {furthest}"

    if "why" in check:
        return str(check["verdict"])

    if check["verdict"] == "over limit":
        return "not in order"

    return "caution" if check.get("caution") else "in order"


def percentage(of: Mapping[str, Any]) -> str:
    """Utilisation in whole per cent; rounded up where it is over."""
    value = of.get("utilisation")
    return NOTHING if value is None else f"{percent(float(value), over=float(value) > 1)}{FIXED}%"


def left(of: Mapping[str, Any], unit: str) -> str:
    """How far a limit is from being reached, or by how much it is passed.

    >>> left({"demand": "1.9", "capacity": "3.0"}, "°")
    '1.1° left'
    """
    if of.get("demand") is None or of.get("capacity") is None:
        return NOTHING
    away = float(of["capacity"]) - float(of["demand"])

    return f"{measured(str(abs(away)), unit)} {'left' if away >= 0 else 'beyond'}"


def every_check(evaluation: Mapping[str, Any]) -> list[Check]:
    """The computed checks, and those that wait or could not be assessed, the worst first."""
    stopped = [("waiting", f"for {', '.join(one['value'])}", one["name"]) for one in evaluation["waiting_words"]]
    stopped += [("cannot be assessed", str(one["value"]), one["name"]) for one in evaluation["refused"]]
    found = [*evaluation["checks"], *({"name": name, "title": spoken(name), "row": None, "kind": "state", "unit": "",
                                       "verdict": verdict, "why": why} for verdict, why, name in stopped)]

    return sorted(found, key=rank)


def governing(record: Mapping[str, Any]) -> Check | None:
    """The check that decided, if anything could be computed."""
    return next((check for check in every_check(record["evaluation"]) if check["name"] == record["governs"]), None)


def spoken(name: str) -> str:
    """The name of a check or an entry in words; of one that no operation has any more, as it was written.

    >>> spoken("carrier_strength[left]"), spoken("cg_x_m"), spoken("old_name")
    ('what carries the eye, left', 'centre of gravity, lengthwise', 'old name')
    """
    bare, _, row = name.partition("[")
    row = row.rstrip("]").replace("_", " ")
    return ", ".join(filter(None, (_all_words().get(bare, bare.replace("_", " ")), row)))


@cache
def _all_words() -> dict[str, str]:
    """What every operation calls its checks and entries."""
    tables = [operation.table for operation in OPERATIONS.values()]
    asked = {name: entry.words for table in tables for name, entry in table.entries.items()}
    return asked | {name: table.ways[name][0].run.__dict__["clause"].title for table in tables for name in table.checks}


def rank(check: Check) -> tuple[int, float]:
    """Worst verdict first, then the highest utilisation."""
    order = ("over limit", "cannot be assessed", "waiting", "close to limit", "within limit", "not applicable")
    return order.index(check["verdict"]), -float((check.get("worst") or check).get("utilisation") or 0)


def grouped(digest: str, signs: int = 32) -> str:
    """A digest in fours, as it is read aloud.

    >>> grouped("7c419e02b8d5", 12)
    '7c41 9e02 b8d5'
    """
    return " ".join(digest[at:at + 4] for at in range(0, min(signs, len(digest)), 4))
