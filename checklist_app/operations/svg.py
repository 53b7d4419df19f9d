"""A drawing as SVG, to scale, with the classes of the drawing's style sheet; no style of its own."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from html import escape

from checklist_app.operations.drawing import Anchor, Drawing, Leaf, Line, Point, Role, Text, points_of

DESK_FROM_PX, HOOK_ON_DESK = 600, 0.56
MARGIN_PX = 10.0
TALLEST = {False: 0.95, True: 0.75}
WIDE_LETTER = 0.54
LINE_HIGH, HALF_HIGH = 1.3, 0.35
HATCH_STEP_PX, HATCH_PX = 11.0, 7.0
CLASSES = {
    Role.OUTLINE: "d-outline", Role.FINE: "d-fine", Role.SOLID: "d-solid", Role.MEMBER: "d-sling",
    Role.PLUMB: "d-plumb", Role.PLUMB_ON: "d-plumb d-plumb-on", Role.ANGLE: "d-arc", Role.MEASURE: "d-measure",
    Role.GROUND: "d-ground", Role.TEXT: "d-text", Role.TEXT_SOFT: "d-text d-text-soft",
    Role.TEXT_ANGLE: "d-text d-text-chalk", Role.TEXT_BIG: "d-text d-text-big",
}
ANCHORS = {Anchor.START: "", Anchor.MIDDLE: " d-mid", Anchor.END: " d-end"}
FILLED = {"close to limit": "d-sling-core", "over limit": "d-sling-core d-sling-core-over"}
FOCUS, FOCUS_TEXT = " d-now", " d-text-chalk"


@dataclass(frozen=True)
class View:
    """So many pixels a metre, where the drawing's zero lies, and the width that words must stay in."""

    scale: float
    x: float = 0.0
    y: float = 0.0
    width: float = 0.0

    def at(self, point: Point) -> Point:
        """A point in pixels, y downwards."""
        return self.x + point[0] * self.scale, self.y - point[1] * self.scale


@dataclass(frozen=True)
class Box:
    """What something covers in pixels."""

    left: float
    top: float
    right: float
    bottom: float


def svg(drawing: Drawing, width_px: int, focus: str | None = None, verdicts: Mapping[str, str] | None = None) -> str:
    """The drawing as one `svg` element.

    Args:
        drawing: what is drawn.
        width_px: width of the view box; from 600 on the hook hangs at 56 % of it.
        focus: name of the entry in hand (`leg_length_m[left]`): what shows it is drawn in chalk.
        verdicts: by name of a check, its verdict in words: its member is filled so; the others stay hollow.
    """
    view, height = fitted(drawing, float(width_px))
    parts = [part for leaf in drawing.leaves() for part in _drawn(leaf, view, focus, verdicts or {})]
    label = escape(drawing.label, quote=True)
    head = f'<svg viewBox="0 0 {width_px} {height:.0f}" role="img" aria-label="{label}">'
    return "\n".join((head, *parts, "</svg>"))


def fitted(drawing: Drawing, width: float) -> tuple[View, float]:
    """The largest scale at which the lines fit the width and all is not too tall, and the height it then takes."""
    desk = width >= DESK_FROM_PX
    small, large = 0.0, 20.0 * width
    for _ in range(40):
        middle = (small + large) / 2.0
        if _fits(drawing, middle, width, width * TALLEST[desk], HOOK_ON_DESK if desk else None):
            small = middle
        else:
            large = middle
    box = _extent(drawing, small)
    hook_x = drawing.hook[0] * small
    free = (width - (box.right - box.left)) / 2.0 - box.left
    x = width * HOOK_ON_DESK - hook_x if desk else free
    return View(small, x, MARGIN_PX - box.top, width), box.bottom - box.top + 2.0 * MARGIN_PX


def _fits(drawing: Drawing, scale: float, width: float, height: float, hook_at: float | None) -> bool:
    box, room = _extent(drawing, scale), width - 2.0 * MARGIN_PX
    if box.bottom - box.top > height - 2.0 * MARGIN_PX or box.right - box.left > room:
        return False
    if hook_at is None:
        return True

    hook_x = drawing.hook[0] * scale
    left, right = width * hook_at - (hook_x - box.left), width * hook_at + (box.right - hook_x)
    return left >= MARGIN_PX and right <= width - MARGIN_PX


def _extent(drawing: Drawing, scale: float) -> Box:
    """What all covers from top to bottom, and its lines from side to side: words are moved in where they reach out."""
    view = View(scale)
    leaves = drawing.leaves()
    lines = [view.at(point) for leaf in leaves if not isinstance(leaf, Text) for point in points_of(leaf)]
    across = [place[0] for place in (view.at(drawing.hook), *lines)]
    down = [y for leaf in leaves for y in _heights(leaf, view)]
    return Box(min(across), min(down, default=0.0), max(across), max(down, default=0.0))


def _heights(leaf: Leaf, view: View) -> Iterator[float]:
    if isinstance(leaf, Text):
        y = _text_y(leaf, view)
        yield y - text_px(leaf.role) * 0.8
        yield y + text_px(leaf.role) * 0.25
        return

    hatch = HATCH_PX + 2.0 if leaf.role is Role.GROUND else 0.0
    yield from (view.at(point)[1] + hatch for point in points_of(leaf))


def _text_y(text: Text, view: View) -> float:
    size = text_px(text.role)
    return view.at(text.at)[1] + text.lower * size * LINE_HIGH + size * HALF_HIGH


def _text_x(text: Text, view: View) -> float:
    """Where its anchor stands, moved so far that the words stay inside."""
    wide = len(text.words) * text_px(text.role) * WIDE_LETTER
    before = {Anchor.START: 0.0, Anchor.MIDDLE: wide / 2.0, Anchor.END: wide}[text.anchor]
    x = view.at(text.at)[0]
    start = max(MARGIN_PX, min(x - before, view.width - MARGIN_PX - wide))
    return start + before


def text_px(role: Role) -> float:
    """How large a text is set, in units of the view box."""
    return 24.0 if role is Role.TEXT_BIG else 17.0


def _drawn(leaf: Leaf, view: View, focus: str | None, verdicts: Mapping[str, str]) -> Iterator[str]:
    shown = focus is not None and focus in leaf.about
    about = f' data-about="{escape(" ".join(leaf.about), quote=True)}"' if leaf.about else ""
    if isinstance(leaf, Text):
        x, y = _text_x(leaf, view), _text_y(leaf, view)
        names = CLASSES[leaf.role] + ANCHORS[leaf.anchor] + FOCUS_TEXT * shown
        yield f'<text class="{names}" x="{x:.2f}" y="{y:.2f}"{about}>{escape(leaf.words)}</text>'
        return

    shape = _shape(leaf, view)
    verdict = next((verdicts[name] for name in leaf.about if name in verdicts), "")
    wide = " d-sling-close" if leaf.role is Role.MEMBER and verdict in FILLED else ""
    yield f"<{shape[0]} class=\"{CLASSES[leaf.role]}{wide}\" {shape[1]}{about}/>"
    if leaf.role is Role.MEMBER:
        yield f"<{shape[0]} class=\"{FILLED.get(verdict, 'd-sling-thin')}\" {shape[1]}/>"
    if shown:
        yield f"<{shape[0]} class=\"d-fine{FOCUS}\" {shape[1]}/>"
    if leaf.role is Role.GROUND:
        yield from _hatched([view.at(point) for point in points_of(leaf)])


def _shape(leaf: Leaf, view: View) -> tuple[str, str]:
    places = [view.at(point) for point in points_of(leaf)]
    if isinstance(leaf, Line):
        (x1, y1), (x2, y2) = places
        return "line", f'x1="{x1:.2f}" y1="{y1:.2f}" x2="{x2:.2f}" y2="{y2:.2f}"'

    points = " ".join(f"{x:.2f},{y:.2f}" for x, y in places)
    closed = getattr(leaf, "closed", False)
    return ("polygon" if closed else "polyline"), f'points="{points}"'


def _hatched(places: list[Point]) -> Iterator[str]:
    """Short strokes under the ground."""
    left, right = min(place[0] for place in places), max(place[0] for place in places)
    y, x = places[0][1] + 2.0, left + HATCH_PX
    while x < right:
        yield f'<line class="d-fine" x1="{x:.1f}" y1="{y:.1f}" x2="{x - HATCH_PX:.1f}" y2="{y + HATCH_PX:.1f}"/>'
        x += HATCH_STEP_PX
