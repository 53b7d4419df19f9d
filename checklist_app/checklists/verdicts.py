"""The verdict of every check, by its name and row, read from a report; and which of two is worse."""
from collections.abc import Iterable, Mapping
from typing import Any

RANK: Mapping[str, int] = {
    "not applicable": 0, "within limit": 1, "close to limit": 2, "waiting": 3, "cannot be assessed": 4, "over limit": 5,
}
MAY_BE_SIGNED = frozenset({"within limit", "close to limit", "not applicable"})
Verdicts = dict[str, str]


def verdicts(report: Mapping[str, Any]) -> Verdicts:
    """Verdict by check, such as `sling_strength[left]`."""
    found = {str(check["name"]): str(check["verdict"]) for check in report["checks"]}
    found.update(dict.fromkeys(report["waiting"], "waiting"))
    found.update(dict.fromkeys(report["refused"], "cannot be assessed"))
    found.update(dict.fromkeys(report["not_applicable"], "not applicable"))
    return found


def bare_name(name: str) -> str:
    """A check without its row.

    Example:
        >>> bare_name("sling_strength[left]")
        'sling_strength'
    """
    return name.partition("[")[0]


def within(found: Verdicts, names: Iterable[str]) -> Verdicts:
    """The verdicts of these checks, all rows."""
    wanted = frozenset(names)
    return {name: verdict for name, verdict in found.items() if bare_name(name) in wanted}


def worse(then: Verdicts, now: Verdicts) -> dict[str, tuple[str, str]]:
    """The checks whose verdict is worse now than it was."""
    return {name: (then[name], now[name]) for name in sorted(then.keys() & now.keys())
            if RANK[now[name]] > RANK[then[name]]}
