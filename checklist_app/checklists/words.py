"""How figures, dates and verdicts are said on a page."""
from collections.abc import Callable
from datetime import date
from typing import Any

from checklist_app.operations.words import figure, spoken_day

day = spoken_day
SHORT = 24
WEEKDAYS = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
MARKS = {"within limit": "within", "close to limit": "close", "over limit": "over", "waiting": "waiting",
         "cannot be assessed": "cannot", "not applicable": "waiting"}


def weekday(text: str) -> str:
    """A date with its day of the week.

    Example:
        >>> weekday("2026-11-25")
        'Wednesday 25 November'
    """
    return f"{WEEKDAYS[date.fromisoformat(text[:10]).weekday()]} {day(text).rsplit(' ', 1)[0]}"


def clock(at: str) -> str:
    """Day and time of an instant.

    Example:
        >>> clock("2026-11-25T10:31:07Z")
        '25 November 2026, 10:31 UTC'
    """
    return f"{day(at)}, {at[11:16]} UTC"


def mark(verdict: str) -> str:
    """The name of the mark that stands for a verdict."""
    return MARKS[verdict]


def sentence(text: str) -> str:
    """The same words with a capital in front and a full stop behind.

    Example:
        >>> sentence("what carries the eye has no rating")
        'What carries the eye has no rating.'
    """
    closed = text if text.endswith((".", "?", "!")) else text + "."
    return closed[:1].upper() + closed[1:]


def listed(names: Any) -> str:
    """Names in a row.

    Example:
        >>> listed(["mass", "left sling", "hoist"])
        'mass, left sling and hoist'
    """
    *first, last = list(names) or [""]
    return f"{', '.join(first)} and {last}" if first else str(last)


def own_number(number: str, name: str) -> str:
    """An item's number, where it says more than its name does.

    Example:
        >>> own_number("VP-400", "Vertical pump 400"), own_number("pump-bay", "Pump bay")
        ('VP-400', '')
    """
    one, other = _plain(number), _plain(name)
    return "" if one.startswith(other) or other.startswith(one) else number


def short_name(name: str) -> str:
    """A name as the beginning of an id: letters, digits and dashes.

    Example:
        >>> short_name("Gearbox, spare")
        'gearbox-spare'
    """
    plain = "".join(each if each.isascii() and each.isalnum() else " " for each in name.casefold())
    return "-".join(plain.split())[:SHORT]


def _plain(text: str) -> str:
    return "".join(character for character in text.casefold() if character.isalnum())


FILTERS: dict[str, Callable[..., Any]] = {
    "day": day, "clock": clock, "figure": figure, "mark": mark, "sentence": sentence,
    "listed": listed, "weekday": weekday,
}
