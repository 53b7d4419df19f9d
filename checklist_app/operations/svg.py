"""A drawing as SVG, to scale, with the classes of the drawing's style sheet; no style of its own."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from html import escape

from checklist_app.operations import letters
from checklist_app.operations.drawing import Anchor, Drawing, Line, Point, Polyline, Role, Text, points_of
from checklist_app.operations.lettering import Box, Put, Setting, lettering, unmoved

DESK_FROM_PX, HOOK_ON_DESK = 600, 0.56
MARGIN_PX = 10.0
TALLEST = {False: 0.95, True: 0.75}
SIZES = {role: 24.0 if role is Role.TEXT_BIG else 17.0 for role in Role}
ROOM_BELOW_PX, HATCH_STEP_PX, HATCH_PX = 66.0, 11.0, 7.0
CLASSES = {
    Role.OUTLINE: "d-outline", Role.FINE: "d-fine", Role.SOLID: "d-solid", Role.MEMBER: "d-sling",
    Role.PLUMB: "d-plumb", Role.PLUMB_ON: "d-plumb d-plumb-on", Role.ANGLE: "d-arc", Role.MEASURE: "d-measure",
    Role.GROUND: "d-ground", Role.GOVERNS: "d-sling d-sling-governs", Role.WORST: "d-fine d-worst",
    Role.TEXT: "d-text", Role.TEXT_SOFT: "d-text d-text-soft",
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


def svg(
    drawing: Drawing, width_px: int, focus: str | None = None, verdicts: Mapping[str, str] | None = None,
    tallest: float | None = None,
) -> str:
    """The drawing as one `svg` element.

    Args:
        drawing: what is drawn.
        width_px: width of the view box; from 600 on the hook hangs at 56 % of it.
        focus: name of the entry in hand (`leg_length_m[left]`): what shows it is drawn in chalk.
        verdicts: by name of a check, its verdict in words: its member is filled so; the others stay hollow.
        tallest: greatest height as a share of the width; the usual one if left out.
    """
    view, height = fitted(drawing, float(width_px), tallest)
    lines = (leaf for leaf in drawing.leaves() if not isinstance(leaf, Text))
    parts = [part for leaf in lines for part in _drawn(leaf, view, focus, verdicts or {})]
    puts = written(drawing, view, height)
    parts += [_words(put, focus) for put in puts]
    height = max([height, *(MARGIN_PX / 2.0 - put.box.low for put in puts)])
    label = escape(drawing.label, quote=True)
    head = f'<svg viewBox="0 0 {width_px} {height:.0f}" role="img" aria-label="{label}">'
    return "\n".join((head, *parts, "</svg>"))


def fitted(drawing: Drawing, width: float, tallest: float | None = None) -> tuple[View, float]:
    """The largest scale at which all fits the width and is not too tall, and the height it then takes."""
    desk = width >= DESK_FROM_PX
    most = width * (TALLEST[desk] if tallest is None else tallest)
    extent = Extent(drawing)
    small, large = 0.0, 20.0 * width
    for _ in range(40):
        middle = (small + large) / 2.0
        if _fits(extent, middle, width, most, HOOK_ON_DESK if desk else None):
            small = middle
        else:
            large = middle
    box = extent.at(small)
    hook_x = drawing.hook[0] * small
    free = (width - (box.right - box.left)) / 2.0 - box.left
    x = width * HOOK_ON_DESK - hook_x if desk else free
    return View(small, x, MARGIN_PX + box.high, width), box.high - box.low + 2.0 * MARGIN_PX


def written(drawing: Drawing, view: View, height: float) -> list[Put]:
    """The words in their places, where need be a little below all lines; y goes up here, so it is below 0."""
    paper = Box(MARGIN_PX / 2.0, -height - ROOM_BELOW_PX, view.width - MARGIN_PX / 2.0, 0.0)
    return lettering(drawing, lambda point: _upwards(view.at(point)), Setting(SIZES, _wide, paper, HATCH_PX + 2.0))


def _upwards(place: Point) -> Point:
    return place[0], -place[1]


def _wide(text: Text) -> float:
    return letters.width(text.words, SIZES[text.role])


class Extent:
    """What lines and words cover at any scale, before words are moved: lines grow with the scale, words do not."""

    def __init__(self, drawing: Drawing) -> None:
        leaves = drawing.leaves()
        lines = [point for leaf in leaves if not isinstance(leaf, Text) for point in points_of(leaf)]
        across, up = [point[0] for point in (drawing.hook, *lines)], [point[1] for point in (drawing.hook, *lines)]
        self.hook = drawing.hook
        self.left, self.right, self.low, self.high = min(across), max(across), min(up), max(up)
        self.texts = [(leaf.at, *_around(leaf)) for leaf in leaves if isinstance(leaf, Text)]
        self.grounds = [point[1] for leaf in leaves if leaf.role is Role.GROUND for point in points_of(leaf)]

    def at(self, scale: float) -> Box:
        """What all covers."""
        beside = [at[0] * scale + far for at, wide, _, _ in self.texts if wide for far in (0.0, wide)]
        under = [at[1] * scale + low for at, _, low, _ in self.texts]
        over = [at[1] * scale + high for at, _, _, high in self.texts]
        hatched = [z * scale - HATCH_PX - 2.0 for z in self.grounds]
        return Box(
            min([self.left * scale, *beside]), min([self.low * scale, *under, *hatched]),
            max([self.right * scale, *beside]), max([self.high * scale, *over]),
        )


def _fits(extent: Extent, scale: float, width: float, height: float, hook_at: float | None) -> bool:
    box, room = extent.at(scale), width - 2.0 * MARGIN_PX
    if box.high - box.low > height - 2.0 * MARGIN_PX or box.right - box.left > room:
        return False
    if hook_at is None:
        return True

    hook_x = extent.hook[0] * scale
    left, right = width * hook_at - (hook_x - box.left), width * hook_at + (box.right - hook_x)
    return left >= MARGIN_PX and right <= width - MARGIN_PX


def _around(text: Text) -> tuple[float, float, float]:
    """How far words reach to their side, down and up from their point; those in the middle may be moved sideways."""
    box = unmoved(text, (0.0, 0.0), Setting(SIZES, _wide)).box
    wide = {Anchor.START: 1.0, Anchor.MIDDLE: 0.0, Anchor.END: -1.0}[text.anchor] * _wide(text)
    wide += text.along * SIZES[text.role]
    return wide, box.low, box.high


def _words(put: Put, focus: str | None) -> str:
    text = put.text
    about = f' data-about="{escape(" ".join(text.about), quote=True)}"' if text.about else ""
    names = CLASSES[text.role] + ANCHORS[text.anchor] + FOCUS_TEXT * (focus is not None and focus in text.about)
    x = put.x + {Anchor.START: 0.0, Anchor.MIDDLE: put.wide / 2.0, Anchor.END: put.wide}[text.anchor]
    return f'<text class="{names}" x="{x:.2f}" y="{-put.y:.2f}"{about}>{escape(text.words)}</text>'


def _drawn(leaf: Line | Polyline, view: View, focus: str | None, verdicts: Mapping[str, str]) -> Iterator[str]:
    shown = focus is not None and focus in leaf.about
    about = f' data-about="{escape(" ".join(leaf.about), quote=True)}"' if leaf.about else ""
    shape = _shape(leaf, view)
    verdict = next((verdicts[name] for name in leaf.about if name in verdicts), "")
    member = leaf.role in (Role.MEMBER, Role.GOVERNS)
    wide = " d-sling-close" if leaf.role is Role.MEMBER and verdict in FILLED else ""
    yield f"<{shape[0]} class=\"{CLASSES[leaf.role]}{wide}\" {shape[1]}{about}/>"
    if member:
        yield f"<{shape[0]} class=\"{FILLED.get(verdict, 'd-sling-thin')}\" {shape[1]}/>"
    if shown:
        yield f"<{shape[0]} class=\"d-fine{FOCUS}\" {shape[1]}/>"
    if leaf.role is Role.GROUND:
        yield from _hatched([view.at(point) for point in points_of(leaf)])


def _shape(leaf: Line | Polyline, view: View) -> tuple[str, str]:
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
