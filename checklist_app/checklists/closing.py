"""How a task ends. Every closing is kept and sealed; work that was refused is worth a record too."""
from dataclasses import dataclass

from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.fold import Folded
from checklist_app.checklists.says import A_LIFT, Says
from checklist_app.checklists.values import Value

CLOSING: Path = ("closing",)
COMPLETED = "completed"
ABANDONED = "abandoned"
STOPPED = "stopped"
UNSIGNED = "carried out without sign-off"
CLOSINGS = (COMPLETED, ABANDONED, STOPPED, UNSIGNED)
NEEDS_WORDS = frozenset({ABANDONED, STOPPED, UNSIGNED})


@dataclass(frozen=True)
class Course:
    """How the work went, as far as the entries tell."""

    stopped: bool
    signed: bool
    landed: bool
    missing: tuple[str, ...]
    """What the last stages still ask for, in words."""
    says: Says = A_LIFT


@dataclass(frozen=True)
class Possible:
    """One closing. `why_not` says why it cannot be chosen; `first` what is still to be answered before it is sent."""

    text: str
    words: str
    why_not: str
    first: str


def closing_entry(folded: Folded) -> Entry | None:
    """The closing, once somebody made it."""
    return next((entry for entry in folded.heads.get(CLOSING, ()) if entry.type == "closing"), None)


def possible(course: Course) -> tuple[Possible, ...]:
    """All closings in their order, each with what stands against it."""
    means = {COMPLETED: course.says.completed, ABANDONED: course.says.abandoned, STOPPED: course.says.stopped,
             UNSIGNED: course.says.unsigned}
    return tuple(Possible(text, means[text], why_not(text, course), _first(text, course)) for text in CLOSINGS)


def why_not(text: str, course: Course) -> str:
    """Why a task cannot be closed in this way; empty when it can."""
    if text == COMPLETED:
        return _why_not_completed(course)
    if text == STOPPED:
        return "" if course.stopped else "Nobody has stopped it, or somebody went on since."
    if text == ABANDONED:
        return course.says.is_done if course.landed else ""
    if not course.landed:
        return course.says.not_done
    return "Every sign-off stands: close it as completed." if course.signed and not course.stopped else ""


def fault(text: str, said: str, course: Course) -> str:
    """What is wrong with this closing as it was sent; empty when nothing is."""
    if text not in CLOSINGS:
        return "Choose how it ended."
    if found := why_not(text, course) or _first(text, course):
        return found
    return "Say why, in a sentence." if text in NEEDS_WORDS and not said else ""


def value(text: str, part: str) -> Value:
    """The closing as it is kept, with the digest of its words if there are any."""
    return {"type": "closing", "text": text} | ({"part": part} if part else {})


def _why_not_completed(course: Course) -> str:
    if course.stopped:
        return "It is stopped: a supervisor goes on first."
    if not course.signed:
        return "Not every sign-off stands."
    return "" if course.landed else course.says.not_done


def _first(text: str, course: Course) -> str:
    """Only completed work asks for every answer; the others are closed with what there is."""
    return f"First: {course.missing[0]}." if text == COMPLETED and course.missing else ""
