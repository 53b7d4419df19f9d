"""A second attitude behind a drawing: as it hangs where the spread is worst, in dashed lines."""

from collections.abc import Iterator
from dataclasses import replace

from checklist_app.operations.drawing import Drawing, Line, Point, Polyline, Role, Text, points_of

SHOWN = frozenset({Role.OUTLINE, Role.MEMBER, Role.GOVERNS})
SEEN_FROM = 0.01


def with_worst(drawing: Drawing, worst: Drawing, title: str) -> Drawing:
    """The drawing with what lies elsewhere in the worst attitude, and words that say so; alone where nothing moves.

    A view of the worst attitude belongs to the view of the same name.
    """
    there = {view.name: view for view in (worst, *worst.others)}
    others = tuple(_behind(view, there[view.name], title) if view.name in there else view for view in drawing.others)

    return replace(_behind(drawing, there.get(drawing.name, worst), title), others=others)


def _behind(drawing: Drawing, worst: Drawing, title: str) -> Drawing:
    found = list(_moved(drawing, worst))
    if not found:
        return drawing
    note = f"{drawing.note} Dashed: where {title} is worst.".strip()

    key = Text(drawing.bounds()[0], "dashed: at its worst", Role.TEXT_SOFT, lower=1.2)

    return replace(drawing, parts=(*found, *drawing.parts, key), note=note, label=f"{drawing.label} {note}")


def _moved(drawing: Drawing, worst: Drawing) -> Iterator[Line | Polyline]:
    """Members and outlines that lie far enough from every one drawn to be told apart."""
    (left, low), (right, high) = drawing.bounds()
    near = SEEN_FROM * max(right - left, high - low)
    stated = [points_of(leaf) for leaf in drawing.leaves() if leaf.role in SHOWN]
    for leaf in worst.leaves():
        if isinstance(leaf, Line | Polyline) and leaf.role in SHOWN:
            points = points_of(leaf)
            if not any(_alike(points, other, near) for other in stated):
                yield replace(leaf, role=Role.WORST, about=())


def _alike(one: tuple[Point, ...], other: tuple[Point, ...], near: float) -> bool:
    return len(one) == len(other) and all(
        abs(a[0] - b[0]) <= near and abs(a[1] - b[1]) <= near for a, b in zip(one, other, strict=True)
    )
