"""The further views of a drawing on paper: beside each other at one scale, each with its scale bar; then charts."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from reportlab.lib.units import mm

from checklist_app.operations.drawing import Drawing
from checklist_app.records.pdf.document import WIDTH, Document
from checklist_app.records.pdf.drawing import BAR_HIGH, MARGIN, SCALES, View, bar_wide, drawn, extent

GAP, TALLEST = 6 * mm, 105 * mm
OF_A_CHART = 45


def other_views(document: Document, drawing: Drawing | None, verdicts: Mapping[str, str]) -> None:
    """End view and plan, if the drawing has them, then its charts."""
    if drawing is None or not drawing.others:
        return
    seen = [view for view in drawing.others if view.to_scale]
    if seen:
        from_other_sides(document, seen, verdicts)
    for each in drawing.others:
        if not each.to_scale:
            chart(document, each, verdicts)


def from_other_sides(document: Document, views: Sequence[Drawing], verdicts: Mapping[str, str]) -> None:
    """Views beside each other."""
    scale, widths, height = together(views)
    columns: list[tuple[float, list[object]]] = []
    for view, width in zip(views, widths, strict=True):
        figure = drawn(document, replace(view, note=""), width, height, None, verdicts, (scale,))
        said = document.paragraph(view.note, "note")
        columns += [(GAP, []), (width, [document.paragraph(view.name, "bold"), figure, said])]
    document.add(document.heading(2, "The same from other sides"))
    document.add(document.beside(columns[1:]))


def chart(document: Document, view: Drawing, verdicts: Mapping[str, str]) -> None:
    """A drawing whose lengths are no metres has a size of its own and no scale bar."""
    box = extent(view, View(OF_A_CHART, 0.0, 0.0))
    wide, height = box.right - box.left + 1.0, box.high - box.low + 2.0 * MARGIN
    figure = drawn(document, replace(view, note=""), wide, height, None, verdicts, (OF_A_CHART,))
    document.add(document.together(document.heading(2, view.name), figure, document.paragraph(view.note, "note")))


def together(views: Sequence[Drawing]) -> tuple[int, list[float], float]:
    """The largest standard scale at which all stand beside each other, their widths, and the height they need."""
    for scale in SCALES:
        boxes = [extent(view, View(scale, 0.0, 0.0)) for view in views]
        least = bar_wide(View(scale, 0.0, 0.0)) + 1.0
        widths = [max(box.right - box.left + 1.0, least) for box in boxes]
        height = max(box.high - box.low for box in boxes) + MARGIN + 1.0
        spare = WIDTH - GAP * (len(views) - 1) - sum(widths)
        if spare >= 0.0 and height <= TALLEST:
            return scale, [width + spare / len(views) for width in widths], height + BAR_HIGH
    raise ValueError("the views are too large for the paper at every scale")
