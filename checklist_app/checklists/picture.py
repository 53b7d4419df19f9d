"""The drawing of the lift as it will hang, or what it still waits for."""
from dataclasses import dataclass

from checklist_app.checklists.words import listed
from checklist_app.operations.drawing import Drawing
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.graph import Stopped
from checklist_app.operations.svg import svg

WIDTH_PX = 390
FEW = 3


@dataclass(frozen=True)
class Picture:
    """SVG made by us, or words where there is nothing to draw yet."""

    svg: str
    words: str


def picture(evaluation: Evaluation, width_px: int = WIDTH_PX, focus: str | None = None) -> Picture:
    """The drawing to scale. `focus` names the entry in hand: it is drawn in chalk."""
    found = evaluation.picture
    if isinstance(found, Drawing):
        verdicts = {check.name: check.verdict.words for check in evaluation.checks}
        return Picture(svg(found, width_px, focus, verdicts), "")
    reasons = found.reasons if isinstance(found, Stopped) else ()
    more = f" and {len(reasons) - FEW} more" if len(reasons) > FEW else ""
    return Picture("", f"The drawing waits for: {listed(reasons[:FEW])}{more}." if reasons else "There is no drawing.")
