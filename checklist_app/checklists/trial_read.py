"""One trial as it was read: the rig that was kept with it, and its tilts with the side that hung low."""
from checklist_app.checklists.places import label
from checklist_app.checklists.running import Running
from checklist_app.operations.graph import Obtained
from checklist_app.operations.straight_lift.as_hung import read
from checklist_app.operations.straight_lift.trial_entries import TILT_HOW, LowEnd, LowSide
from checklist_app.operations.straight_lift.trial_found import Hung
from checklist_app.operations.task import Key, Measured

TRIAL, AS_HUNG = "trial", "as_hung"
SIDES = {"tilt_along_deg": ("low_end", LowEnd.LEFT, LowEnd.LEVEL, "Which end hung low?"),
         "tilt_across_deg": ("low_side", LowSide.FRONT, LowSide.LEVEL, "Which side hung low?")}


class NotTold(Exception):
    """Why a trial says nothing of the centre of gravity, in words."""


def as_read(now: Running, row: str) -> Hung:
    """Rig and tilts of a trial.

    Raises:
        NotTold: In words: what is missing, or does not fit together.
    """
    rig = read(str(now.folded.values.get((TRIAL, row, AS_HUNG), {}).get("text", "")))
    if rig is None:
        raise NotTold(f"Trial {label(row)}: its rig was not known when it was written down.")
    tilts = {name: _tilt(now, row, name) for name in SIDES}

    return Hung(rig, tilts["tilt_along_deg"][0], tilts["tilt_across_deg"][0], max(off for _, off in tilts.values()))


def _tilt(now: Running, row: str, name: str) -> tuple[float, float]:
    """The tilt with its side, and how far off it may be; below 0 towards the right end or the rear."""
    row_label = now.read.labels.get(row, row)
    said = now.task.answers.get(Key(name, row_label))
    if not isinstance(said, Measured):
        raise NotTold(f"Trial {label(row)}: read both tilts, then it says where the centre of gravity lies.")
    off = _off_deg(said)
    asked, positive, level, question = SIDES[name]
    found = now.task.answers.get(Key(asked, row_label))
    side = found if isinstance(found, LowEnd | LowSide) else None
    if said.value <= off and side in (None, level):
        return 0.0, off + said.value
    if side is None:
        raise NotTold(f"Trial {label(row)}: {question}")
    if side is level:
        raise NotTold(f"Trial {label(row)}: {said.value:g}° is not level. {question}")

    return said.value if side is positive else -said.value, off


def _off_deg(said: Measured) -> float:
    if said.plus_minus is not None:
        return said.plus_minus
    how: Obtained | None = next((each for each in TILT_HOW if each.name == said.how), None)
    if how is None or how.plus_minus is None:
        raise NotTold("Say with what the tilt was read.")

    return how.plus_minus
