"""What is written beside a lashed load, and the drawing in words for who cannot see it."""

from collections.abc import Iterator, Sequence

from checklist_app.operations import letters
from checklist_app.operations.drawing import Point, Role, Text
from checklist_app.operations.lashing import lashing_bars
from checklist_app.operations.lashing.shown import Shown, Stop, Tied
from checklist_app.operations.words import figure

FIRST_LINE, COLUMN, NAMED, APART, MOST_NAMES = 1.25, 10.4, 3, 0.35, 8


def together(labels: Sequence[str]) -> str:
    """Labels in few letters.

    Example:
        >>> together(["1", "2", "3", "6"]), together(["left", "right"]), together(["a", "b", "c", "d"])
        ('1–3, 6', 'left, right', 'a, b and 2 more')
    """
    if not all(label.isdecimal() and len(label) < 4 for label in labels):
        more = len(labels) - NAMED + 1
        return ", ".join(labels) if more < 2 else f"{', '.join(labels[:NAMED - 1])} and {more} more"
    runs: list[list[int]] = []
    for each in sorted({int(label) for label in labels}):
        if runs and each == runs[-1][-1] + 1:
            runs[-1].append(each)
        else:
            runs.append([each])

    return ", ".join(_run(run) for run in runs)


def _run(run: Sequence[int]) -> str:
    if len(run) < 3:
        return ", ".join(map(str, run))

    return f"{run[0]}–{run[-1]}"


def pull(tied: Tied) -> str:
    """Pull, and the most of its rating that is used, as far as they are known; rounded as its check rounds it.

    Example:
        >>> pull(Tied("1", (), pull_dan=830.4, used="66 %")), pull(Tied("1", ()))
        ('830 daN, 66 %', '')
        >>> pull(Tied("1", (), pull_dan=502.4, used="101 %", over=True))
        '503 daN, 101 %'
    """
    pulls = f"{figure(tied.pull_dan, 'daN', up=tied.over)} daN" if tied.pull_dan is not None else ""
    governs = "governs" if tied.governs else ""

    return ", ".join(each for each in (pulls, tied.used, governs) if each)


def alike(tied: Sequence[Tied]) -> list[tuple[Tied, ...]]:
    """Lashings of which the same is said, together; what governs and what is used most come first."""
    found: dict[str, list[Tied]] = {}
    for each in tied:
        if pull(each):
            found.setdefault(pull(each), []).append(each)

    return sorted((tuple(each) for each in found.values()), key=lambda each: (not each[0].governs, -each[0].share))


def beneath(shown: Shown, at: Point, more: Sequence[str], rows: int, first: float = FIRST_LINE) -> Iterator[Text]:
    """A list under a view: of each lashing its pull and use, in two columns where they fit; then what else is told.

    Of too many lashings those that are used most.
    """
    lines = [(f"{together([each.number for each in group])}: {pull(group[0])}",
              tuple(f"lashing_strength[{each.label}]" for each in group)) for group in alike(shown.tied)]
    if not shown.tied:
        lines = [("no lashings", ())]
    row = 0.0
    while lines:
        last = row + 1.0 >= rows
        take = 2 if len(lines) > 1 and all(_is_short(words) for words, _ in lines[:2]) else 1
        if last and len(lines) > take:
            lines = [(f"{len(lines)} more, used less", ())]
            take = 1
        for column, (words, about) in enumerate(lines[:take]):
            yield Text(at, words, Role.TEXT, lower=first + row, about=about, along=COLUMN * column)
        lines, row = lines[take:], row + 1.0
    for place, words in enumerate(more):
        yield Text(at, words, Role.TEXT_SOFT, lower=first + row + APART * (row > 0.0) + place)


def names(shown: Shown) -> Iterator[str]:
    """What the numbers of the drawing are called, two in a line, where they are no names themselves."""
    named = [f"{each.number} {each.name}" for each in shown.tied if each.number != each.name]
    if len(named) > MOST_NAMES:
        yield "numbered in the order of their rows"
        return
    for place in range(0, len(named), 2):
        yield ", ".join(named[place:place + 2])


def _is_short(words: str) -> bool:
    return letters.width(words, 1.0) < COLUMN - 0.5


def block(stop: Stop) -> str:
    """A block: what it is, which way it holds, and what."""
    most = f": {stop.most_dan:.0f} daN" if stop.most_dan is not None else ""

    return f"{stop.words}, {stop.keeps_from.value}{most}"


def headboard(shown: Shown) -> str:
    """How far the load stands behind it; nothing on a pallet alone."""
    if shown.deck is None:
        return ""

    return f"headboard {shown.deck.headboard_x_m - shown.size.x / 2.0:.2f} m before the load"


def drawing(shown: Shown) -> str:
    """The drawing in words."""
    count = len(shown.tied)
    many = "no lashings" if count == 0 else "one lashing" if count == 1 else f"{count} lashings"
    pulls = [f"{', '.join(each.name for each in group)} {pull(group[0])}" for group in alike(shown.tied)]
    blocks = [block(stop) for stop in shown.stops]
    blocks += [headboard(shown)] if shown.deck is not None else []
    over, push = shown.tips_over, shown.pushed
    edge = [f"goes over first {over.direction.value}"] if over is not None else []
    least = [f"least is left where the {push.words}, {lashing_bars.figure(push)}"] if push is not None else []

    return "; ".join((f"The load and what holds it, {many}", *pulls, *blocks, *edge, *least)) + "."
