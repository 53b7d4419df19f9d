"""Rows that people add: one more, one more like another, its mirror image, and away with it. Each tap is entries."""
from collections.abc import Mapping

from checklist_app.checklists import values
from checklist_app.checklists.adding import Adds, Mirror
from checklist_app.checklists.conditions import condition, plainly_said
from checklist_app.checklists.entry import Path
from checklist_app.checklists.fold import seen_in_row
from checklist_app.checklists.made import Made
from checklist_app.checklists.places import label
from checklist_app.checklists.running import Running
from checklist_app.checklists.values import Value

COPIED = frozenset({"number", "choice", "not_used", "dont_know"})
"""What a copy takes over. Ticks and photographs are about one row: somebody looked at that one."""
ZEROS = "0.,"


def added_rows(now: Running, group: str) -> tuple[str, ...]:
    """The rows of a group, in the order in which they were numbered."""
    return tuple(now.folded.rows.get(group, ()))


def is_full(now: Running, group: str) -> bool:
    """Whether no further row may be added."""
    return len(added_rows(now, group)) >= now.procedure.adds[group].most


def add(made: Made, now: Running, group: str, device: str) -> str:
    """One more row, with no answer in it; its id.

    The number is one nobody had before, also not a row that is gone. Two phones that add a row at the same time add
    two: the end of the device's name keeps them apart.
    """
    had = (path[1] for path in now.folded.heads if path[0] == group and len(path) > 1)
    last = max((int(label(row)) for row in had if label(row).isdigit()), default=0)
    apart = "".join(each for each in device if each.isalnum())[-6:]
    row = f"{last + 1:02d}_{apart}-{last + 1}"
    made.say(("task", now.id), (group, row), values.row("present"))
    return row


def copy(made: Made, now: Running, group: str, row: str, device: str, mirror: Mirror | None = None,
         otherwise: Mapping[str, Value] | None = None) -> str:
    """One more row with the answers of another, turned where it is the mirror image, or answered otherwise; its id."""
    new, adds = add(made, now, group, device), now.procedure.adds[group]
    for path, value in _taken_over(now, adds, (group, row)):
        said = value if mirror is None else turned(value, path[2], mirror)
        made.say(("task", now.id), (group, new, path[2]), (otherwise or {}).get(path[2], said))
    return new


def remove(made: Made, now: Running, group: str, row: str) -> None:
    """The row is not there any more, with all that its remover saw in it."""
    made.say(("task", now.id), (group, row), values.row("absent"), seen_in_row(now.folded, (group, row)))


def mirrors(now: Running, group: str, row: str) -> tuple[tuple[int, Mirror], ...]:
    """The mirror images that are another row than this one, each with its number in the procedure."""
    return tuple((number, mirror) for number, mirror in enumerate(now.procedure.adds[group].mirrors)
                 if not _is_its_own(now, (group, row), mirror))


def turned(value: Value, name: str, mirror: Mirror) -> Value:
    """An answer as it is in the mirror image.

    Example:
        >>> turned(values.number("0,55", "m"), "at_y_m", Mirror("across", ("at_y_m",)))["text"]
        '-0,55'
        >>> turned(values.choice("to the left"), "blocks", Mirror("a", swaps={"blocks": {"to the left": "no"}}))["text"]
        'no'
    """
    if value["type"] == "number" and name in mirror.turns:
        return {**value, "text": negated(str(value["text"]))}
    if value["type"] == "choice" and name in mirror.swaps:
        return {**value, "text": mirror.swaps[name].get(str(value["text"]), str(value["text"]))}
    return value


def negated(text: str) -> str:
    """A number as typed, with the other sign; zero has none.

    Example:
        >>> negated("0.55"), negated("-0,55"), negated("+1"), negated("0.00")
        ('-0.55', '0,55', '-1', '0.00')
    """
    plain = text.strip().lstrip("+")
    if not plain.strip(ZEROS):
        return plain
    return plain[1:] if plain[0] in "-\u2212" else f"-{plain}"


def _taken_over(now: Running, adds: Adds, row: Path) -> list[tuple[Path, Value]]:
    return [(path, value) for path, value in now.folded.values.items()
            if len(path) == 3 and path[:2] == row and value["type"] in COPIED
            and path[2] not in adds.anew and path[2] not in adds.confirm]


def _is_its_own(now: Running, row: Path, mirror: Mirror) -> bool:
    """Whether mirroring it gives the same row: by how it is put on, or because nothing in it has a side."""
    if mirror.not_for and all(each.holds(plainly_said(now.folded, (*row, each.name)))
                              for each in map(condition, mirror.not_for)):
        return True
    said = (str(now.folded.values.get((*row, name), {}).get("text", "")) for name in mirror.turns)
    return all(negated(text) == text for text in said if text)
