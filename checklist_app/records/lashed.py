"""How the load of a record was lashed: friction, what comes off last, re-tensions, and a line for each lashing."""

from collections.abc import Iterator, Mapping
from typing import Any, NamedTuple

from checklist_app.checklists.places import label
from checklist_app.operations.words import said
from checklist_app.records import figures
from checklist_app.records.slung import measured, quantities

Record = Mapping[str, Any]
FACES = (("Under the load", "load"), ("Under the pallet", "deck"))


class Line(NamedTuple):
    """One lashing, in words: points are forwards, to the left and upwards from the middle between the feet."""

    number: str
    tag: str
    how: str
    start: str
    end: str
    angles: str
    rated: str
    pull: str
    used: str


class Block(NamedTuple):
    """What keeps the load from moving one way."""

    number: str
    way: str
    what: str
    at: str
    holds: str


def lashings(record: Record) -> list[Line]:
    """One line for each lashing, in the order of their numbers."""
    known, used = quantities(record), _used(record)
    tags = {one["path"][1]: str(one["value"].get("subject", "")).partition("/")[2] for one in record["inputs"]
            if one["path"][0] == "lashing" and one["path"][-1] == "lashing_item"}
    return [Line(row, tags.get(name, figures.NOTHING), _how(known, row), _point(known, "at", row),
                 _point(known, "anchor", row), _angles(known, row), measured(known, f"rated_dan[{row}]", "daN"),
                 measured(known, f"lashing_pull_dan[{row}]", "daN"), used.get(row, figures.NOTHING))
            for name, row in _rows(record, "lashing")]


def blocks(record: Record) -> list[Block]:
    """One line for each block."""
    known = quantities(record)
    return [Block(row, _word(known, f"blocks[{row}]"),
                  f"{_word(known, f'blocked_by[{row}]')}, fast to {_word(known, f'block_on[{row}]')}",
                  _point(known, "block", row), measured(known, f"block_dan[{row}]", "daN"))
            for _, row in _rows(record, "block")]


def sentences(record: Record) -> list[str]:
    """Way, friction, what comes off last, and each re-tension; nothing of a task in which nothing is lashed."""
    known = quantities(record)
    told = [f"How it travels: {_word(known, 'route')}."] if "route" in known else []
    for where, face in FACES:
        if f"{face}_friction_there" in known:
            faces = ", ".join(filter(None, (str(known.get(f"{face}_{what}") or "") for what in ("pair", "surface"))))
            told.append(f"{where}: {faces or 'measured'}; friction {float(known[f'{face}_friction_there']):.2f}.")
    if last := _answers(record, ("off_last",)).get("off_last"):
        told.append(f"Comes off last at the other end: {last}.")

    return told + [_drawn_again(_answers(record, ("retension", name))) for name, _ in _rows(record, "retension")]


def _drawn_again(of: Mapping[str, str]) -> str:
    """One re-tension in a sentence."""
    by = ", ".join(filter(None, (of.get("retension_who"), of.get("retension_by"), of.get("retension_dan"))))
    return (f"Tension looked at {of.get('retensioned', 'at a time nobody wrote down')}: "
            f"{of.get('retension_found', 'nobody wrote down what was found')}{f' ({by})' if by else ''}.")


def _rows(record: Record, group: str) -> Iterator[tuple[str, str]]:
    """Id and number of each row that stands."""
    rows = {one["path"][1] for one in record["inputs"] if one["path"][0] == group and len(one["path"]) == 2}
    return ((row, label(row)) for row in sorted(rows))


def _answers(record: Record, under: tuple[str, ...]) -> dict[str, str]:
    """Answers below a path, or at it, by the name of the prompt."""
    return {one["path"][-1]: one["answer"] for one in record["answers"]
            if tuple(one["path"][:len(under)]) == under and one["answer"]}


def _used(record: Record) -> dict[str, str]:
    return {check["row"]: figures.used(check) for check in record["evaluation"]["checks"]
            if check["quantity"] == "lashing_strength"}


def _how(known: Mapping[str, Any], row: str) -> str:
    bodies = [_word(known, f"{name}[{row}]") for name in ("from_body", "to_body")]
    return f"{_word(known, f'put_on[{row}]')}, {' to '.join(bodies)}"


def _angles(known: Mapping[str, Any], row: str) -> str:
    """To the deck, and from the length of the vehicle; whole degrees."""
    found = [known.get(f"{name}[{row}]") for name in ("to_deck_deg", "from_length_deg")]
    return " / ".join(figures.NOTHING if one is None else f"{float(one):.0f}°" for one in found)


def _point(known: Mapping[str, Any], name: str, row: str) -> str:
    """Where something is, in metres.

    >>> _point({"at_x_m[1]": "0.55", "at_y_m[1]": "-0.3", "at_z_m[1]": "0.85"}, "at", "1")
    '0.55 / −0.30 / 0.85'
    """
    found = [known.get(f"{name}_{axis}_m[{row}]") for axis in "xyz"]
    return " / ".join(figures.NOTHING if one is None else said(float(one), "m").removesuffix("m").strip()
                      for one in found)


def _word(known: Mapping[str, Any], name: str) -> str:
    return str(known.get(name) or figures.NOTHING)
