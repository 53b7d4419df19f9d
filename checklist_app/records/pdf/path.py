"""Short outlines in the notation of SVG paths (M, L, H, V, Z, absolute and relative), drawn on the sheet."""

import re
from collections.abc import Iterator

from checklist_app.records.pdf.canvas import Sheet

STEP = re.compile(r"([MLHVZmlhvz])|(-?\d*\.?\d+)")
TAKES = {"m": 2, "l": 2, "h": 1, "v": 1, "z": 0}


def draw(sheet: Sheet, outline: str, fill: bool, stroke: bool = True) -> None:
    """Draw an outline with y downwards, as it stands in the drawing of a page."""
    path = sheet.beginPath()
    for act, x, y in steps(outline):
        if act == "z":
            path.close()
        else:
            (path.moveTo if act == "m" else path.lineTo)(x, -y)
    sheet.drawPath(path, stroke=int(stroke), fill=int(fill))


def steps(outline: str) -> Iterator[tuple[str, float, float]]:
    """What the pen does, in absolute places.

    >>> list(steps("M3 10h9v12z"))
    [('m', 3.0, 10.0), ('l', 12.0, 10.0), ('l', 12.0, 22.0), ('z', 3.0, 10.0)]
    """
    x = y = start_x = start_y = 0.0
    for letter, numbers in commands(outline):
        act = letter.lower()
        if act == "z":
            x, y = start_x, start_y
        else:
            across, down = by(act, numbers)
            x, y = place(letter, act, x, y, across, down)
        if act == "m":
            start_x, start_y = x, y
        yield ("l" if act in "hv" else act), x, y


def by(act: str, numbers: list[float]) -> tuple[float | None, float | None]:
    return {"h": (numbers[0], None), "v": (None, numbers[0])}.get(act) or (numbers[0], numbers[-1])


def place(letter: str, act: str, x: float, y: float, across: float | None, down: float | None) -> tuple[float, float]:
    if letter == act:
        return x + (across or 0.0), y + (down or 0.0)
    return (x if across is None else across), (y if down is None else down)


def commands(outline: str) -> Iterator[tuple[str, list[float]]]:
    """Each command with its numbers; more pairs after a letter repeat it, after M as L."""
    letter, numbers = "", []
    for found in STEP.finditer(outline):
        if found[1]:
            letter, numbers = found[1], []
        else:
            numbers.append(float(found[2]))
        if letter and len(numbers) == TAKES[letter.lower()]:
            yield letter, numbers
            letter, numbers = {"M": "L", "m": "l"}.get(letter, letter), []
            letter = "" if letter in "zZ" else letter
