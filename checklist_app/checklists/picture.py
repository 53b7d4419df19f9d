"""The drawing of the lift as it will hang, or what it still waits for."""
from collections.abc import Mapping
from dataclasses import dataclass

from checklist_app.checklists.words import listed
from checklist_app.operations.drawing import Drawing
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.graph import Stopped
from checklist_app.operations.svg import svg

WIDTH_PX = 390
HELD = 0.72
FEW = 3


@dataclass(frozen=True)
class View:
    """A further view of the same lift."""

    name: str
    note: str
    svg: str


@dataclass(frozen=True)
class Picture:
    """SVG made by us, or words where there is nothing to draw yet; further views where they are asked for."""

    svg: str
    words: str
    note: str = ""
    views: tuple[View, ...] = ()


def picture(
    evaluation: Evaluation, width_px: int = WIDTH_PX, focus: str | None = None, tallest: float | None = None,
    all_views: bool = True,
) -> Picture:
    """The drawing to scale. `focus` names the entry in hand, drawn in chalk; `tallest` is a share of the width."""
    found = evaluation.picture
    if isinstance(found, Drawing):
        verdicts = {check.name: check.verdict.words for check in evaluation.checks}
        return drawn(found, width_px, focus, verdicts, tallest, all_views)
    reasons = found.reasons if isinstance(found, Stopped) else ()
    more = f" and {len(reasons) - FEW} more" if len(reasons) > FEW else ""
    return Picture("", f"The drawing waits for: {listed(reasons[:FEW])}{more}." if reasons else "There is no drawing.")


def held(evaluation: Evaluation) -> Picture:
    """The view from the side alone, low enough to be kept in sight above the questions."""
    return picture(evaluation, tallest=HELD, all_views=False)


def drawn(
    found: Drawing, width_px: int, focus: str | None, verdicts: Mapping[str, str], tallest: float | None = None,
    all_views: bool = True,
) -> Picture:
    """A drawing with its further views."""
    others = found.others if all_views else ()
    views = tuple(View(each.name, each.note, svg(each, width_px, focus, verdicts)) for each in others)
    return Picture(svg(found, width_px, focus, verdicts, tallest), "", found.note, views)
