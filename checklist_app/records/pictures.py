"""A drawing as a record seals it: lines and words in metres, every figure as text; and back again."""

from collections.abc import Mapping
from typing import Any

from checklist_app.operations.drawing import Anchor, Drawing, Leaf, Line, Point, Polyline, Role, Text

Sealed = dict[str, Any]


def sealed(drawing: Drawing) -> Sealed:
    """The drawing's leaves as plain data that has one canonical text."""
    said = {"name": drawing.name, "note": drawing.note} if drawing.name or drawing.note else {}
    views = {"views": [sealed(view) for view in drawing.others]} if drawing.others else {}
    chart = {} if drawing.to_scale else {"chart": True}

    return {"label": drawing.label, "hook": place(drawing.hook), "leaves": [leaf(one) for one in drawing.leaves()],
            **said, **views, **chart}


def leaf(one: Leaf) -> Sealed:
    about = {"role": one.role.value, "about": list(one.about)}
    if isinstance(one, Text):
        along = {"along": f"{one.along:.3f}"} if one.along else {}
        return {"kind": "text", "at": place(one.at), "words": one.words, "anchor": one.anchor.value,
                "lower": f"{one.lower:.3f}", **along, **about}
    points = (one.start, one.end) if isinstance(one, Line) else one.points
    closed = {} if isinstance(one, Line) else {"closed": one.closed}

    return {"kind": "line" if isinstance(one, Line) else "polyline", "points": [place(each) for each in points],
            **closed, **about}


def place(point: Point) -> str:
    """A point to the micrometre."""
    return f"{point[0]:.6f} {point[1]:.6f}"


def drawing(found: Mapping[str, Any]) -> Drawing:
    """The drawing in a sealed record; an older one has a single view."""
    return Drawing(found["label"], point(found["hook"]), tuple(primitive(one) for one in found["leaves"]),
                   found.get("name", ""), found.get("note", ""), tuple(map(drawing, found.get("views", ()))),
                   not found.get("chart", False))


def primitive(one: Mapping[str, Any]) -> Leaf:
    role, about = Role(one["role"]), tuple(one["about"])
    if one["kind"] == "text":
        return Text(point(one["at"]), one["words"], role, Anchor(one["anchor"]), float(one["lower"]), about,
                    float(one.get("along", "0")))
    points = tuple(point(each) for each in one["points"])

    return Line(points[0], points[1], role, about) if one["kind"] == "line" else (
        Polyline(points, role, one["closed"], about))


def point(text: str) -> Point:
    x, _, z = text.partition(" ")
    return float(x), float(z)
