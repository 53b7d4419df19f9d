"""The usual case in three ticks: each answers several questions of an assessment at once, and says which."""
from collections.abc import Mapping
from dataclasses import dataclass

from checklist_app.checklists.typed_gear import LEGS

LEFT = LEGS[0]


@dataclass(frozen=True)
class Tick:
    """One tick, and the answers that it stands for, by the name of their field."""

    name: str
    words: str
    answers: Mapping[str, str]


LEVEL = Tick("usual.level", "Both eyes are at one height", {"right_eye_higher_m": "0"})
IN_LINE = Tick("usual.in_line", "Crosswise it lies in line with the eyes", {"cg_y_m": "0"})
STRAIGHT_ON = Tick(
    "usual.straight_on", "Slings go straight on hook and eyes: no shackle, no fitting, no load cell",
    {f"{slot}.not_used": "yes"
     for slot in ("load_cell", "hook_fitting", f"leg/{LEFT}/top_fitting", f"leg/{LEFT}/bottom_fitting")},
)
TICKS = (LEVEL, IN_LINE, STRAIGHT_ON)


def with_usual(typed: Mapping[str, str]) -> dict[str, str]:
    """What was typed with what its ticks stand for; an answer of its own at a question goes before the tick.

    Example:
        >>> with_usual({"usual.level": "yes"})["right_eye_higher_m"]
        '0'
        >>> with_usual({"usual.level": "yes", "right_eye_higher_m": "0.05"})["right_eye_higher_m"]
        '0.05'
    """
    answered = {name.partition(".")[0] for name, text in typed.items() if text.strip()}
    found = dict(typed)
    for tick in TICKS:
        if typed.get(tick.name, "").strip():
            found.update({name: text for name, text in tick.answers.items() if name.partition(".")[0] not in answered})
    return found
