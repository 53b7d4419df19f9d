"""A signature by hand: strokes as whole numbers, or a typed name. Small, printable, and never encoded again."""
import json
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.canonical import NotCanonical, as_typed, canonical, digest, parse

WIDE, HIGH = 330, 130
MOST_STROKES, MOST_NUMBERS = 200, 6000
LONGEST_NAME = 80


@dataclass(frozen=True)
class Ink:
    """What stands on the line: `strokes` as x, y, x, y … in a box of 330 by 130, or the `typed` name."""

    strokes: tuple[tuple[int, ...], ...] = ()
    typed: str = ""

    @property
    def path(self) -> str:
        """The strokes as the `d` of an SVG path; empty for a typed name.

        Example:
            >>> Ink(((10, 20, 30, 40),)).path
            'M10 20L30 40'
        """
        return "".join(_stroke(stroke) for stroke in self.strokes)


def made(drawn: str, typed: str, salt: str) -> tuple[str, bytes] | None:
    """The part of a signature from the form: its digest and bytes. The drawn one goes first; none if neither is there.

    Example:
        >>> made("[[1,2]]", "", "s")[1]
        b'{"form":"ink/1","salt":"s","strokes":[[1,2]]}'
    """
    body: dict[str, Any] = {"form": "ink/1", "salt": salt}
    strokes = _strokes(_loaded(drawn))
    name = as_typed(typed.strip())[:LONGEST_NAME]
    if strokes:
        body["strokes"] = [list(stroke) for stroke in strokes]
    elif name:
        body["typed"] = name
    else:
        return None
    data = canonical(body)
    return digest(data), data


def drawn(text: str) -> bool:
    """Whether this text is a drawn signature, as the pad writes it."""
    return bool(_strokes(_loaded(text)))


def read(part: bytes | None) -> Ink | None:
    """The signature in a part; none when the part is not here or is no signature."""
    try:
        said = parse(part) if part is not None else None
    except NotCanonical:
        return None
    if not isinstance(said, dict) or said.get("form") != "ink/1":
        return None
    typed, strokes = said.get("typed"), _strokes(said.get("strokes"))
    if strokes:
        return Ink(strokes)
    return Ink(typed=typed) if isinstance(typed, str) and typed else None


def _loaded(text: str) -> Any:
    try:
        return json.loads(text) if text else None
    except (ValueError, RecursionError):
        return None


def _strokes(said: Any) -> tuple[tuple[int, ...], ...]:
    """Strokes that are nothing but pairs of whole numbers inside the box; otherwise none at all."""
    if not isinstance(said, list) or len(said) > MOST_STROKES or not all(_is_stroke(stroke) for stroke in said):
        return ()
    return tuple(tuple(stroke) for stroke in said) if _numbers(said) <= MOST_NUMBERS else ()


def _numbers(strokes: Iterable[list[int]]) -> int:
    count = 0
    for stroke in strokes:
        count += len(stroke)
    return count


def _is_stroke(stroke: Any) -> bool:
    return (isinstance(stroke, list) and len(stroke) >= 2 and len(stroke) % 2 == 0
            and all(_is_inside(number, WIDE if n % 2 == 0 else HIGH) for n, number in enumerate(stroke)))


def _is_inside(number: Any, most: int) -> bool:
    return isinstance(number, int) and not isinstance(number, bool) and 0 <= number <= most


def _stroke(stroke: tuple[int, ...]) -> str:
    points = [f"{x} {y}" for x, y in zip(stroke[::2], stroke[1::2], strict=True)]
    return "M" + "L".join(points if len(points) > 1 else points * 2)


def shown(part: bytes | None) -> Mapping[str, Any] | None:
    """A signature as a template takes it: `path` or `typed`."""
    ink = read(part)
    return {"path": ink.path, "typed": ink.typed} if ink is not None else None
