"""Have against need for each way a load may move, as bars: the upright stroke is what is needed."""

from collections.abc import Iterable, Iterator

from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.operations.check import Check, Strength, Verdict, verdict
from checklist_app.operations.drawing import Anchor, Drawing, Line, Primitive, Role, Text
from checklist_app.operations.lashing.shown import Bar, weakest

VERBS = {
    "sliding": ("load slides", False, False), "tipping": ("load tips", True, False),
    "deck_sliding": ("pallet slides", False, True), "deck_tipping": ("pallet tips", True, True),
}
NAME = "Held against needed"
NOTE = "How many times what is needed is withstood, at the worst. The upright stroke is what is needed."
WIDE, ROW, MOST, TICK, UNDER = 3.6, 0.42, 2.0, 0.055, 0.16
NEEDED = WIDE / MOST


def bars(checks: Iterable[Check]) -> tuple[Bar, ...]:
    """Of each direction sliding and tipping; of two faces the one that holds less."""
    found: dict[tuple[Direction, bool], Bar] = {}
    for check in checks:
        if check.quantity in VERBS and check.row is not None and check.verdict is not Verdict.NOT_APPLICABLE:
            bar = _bar(check, Direction(check.row))
            known = found.get((bar.direction, bar.tips))
            found[bar.direction, bar.tips] = bar if known is None else _lesser(known, bar)

    return tuple(found[way, tips] for way in Direction for tips in (False, True) if (way, tips) in found)


def chart(told: tuple[Bar, ...]) -> Drawing:
    """The bars, one below the other."""
    parts: list[Primitive] = []
    for row, bar in enumerate(told):
        parts += _drawn(bar, -ROW * row)
    if any(bar.worst is not None for bar in told):
        parts.append(Text((NEEDED, -ROW * len(told) + UNDER), "needed", Role.TEXT_SOFT, Anchor.MIDDLE))

    return Drawing(f"{NAME}: {said(told)}.", (0.0, 0.0), tuple(parts), NAME, NOTE, to_scale=False)


def said(told: tuple[Bar, ...]) -> str:
    """All of them in one sentence."""
    return "; ".join(f"{bar.words} {figure(bar)}" for bar in told)


def figure(bar: Bar) -> str:
    """The factor and, unless all is well, the verdict. It is rounded down: what is not enough never reads 1.00.

    Example:
        >>> figure(Bar("tipping[forwards]", "load tips forwards", Direction.FORWARD, "over limit", 1.0, 0.9999))
        '0.99 ×, over limit'
    """
    if bar.worst is None:
        return bar.verdict
    times = f"{int(bar.worst * 100.0) / 100.0:.2f} ×" if bar.worst < 10.0 else "10 × or more"

    return times if bar.verdict == Verdict.WITHIN.words else f"{times}, {bar.verdict}"


def _bar(check: Check, way: Direction) -> Bar:
    verb, tips, on_deck = VERBS[check.quantity]
    times, worst = _times(check.outcome, check), _times(check.worst, check)
    both = [each for each in (times, worst) if each is not None]
    need = check.outcome.demand if isinstance(check.outcome, Strength) else None
    lowest = min(both) if len(both) == 2 else None

    return Bar(check.name, f"{verb} {way.value}", way, check.verdict.words, times, lowest, need, tips, on_deck)


def _times(outcome: object, check: Check) -> float | None:
    """How many times the need is withstood; nothing where that cannot be judged."""
    if not isinstance(outcome, Strength) or verdict(outcome, check.clause) is Verdict.CANNOT:
        return None

    return outcome.capacity / outcome.demand if outcome.demand > 0.0 else None


def _lesser(one: Bar, other: Bar) -> Bar:
    """A face of which nobody can tell comes before one that is known to hold: it may be the weaker."""
    if one.worst is None or other.worst is None:
        return one if one.worst is None else other

    return weakest((one, other)) or one


def _drawn(bar: Bar, up: float) -> Iterator[Primitive]:
    """Words over a bar, the verdict's figure at the right."""
    yield Text((0.0, up), bar.words, Role.TEXT, about=(bar.check,))
    yield Text((WIDE, up), figure(bar), Role.TEXT, Anchor.END, about=(bar.check,))
    if bar.worst is None:
        return
    low = up - UNDER
    yield Line((0.0, low), (WIDE, low), Role.FINE)
    yield Line((0.0, low), (max(min(bar.worst, MOST) * NEEDED, TICK), low), Role.MEMBER, (bar.check,))
    yield Line((NEEDED, low - TICK), (NEEDED, low + TICK), Role.OUTLINE)
