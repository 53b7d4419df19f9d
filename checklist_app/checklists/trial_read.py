"""One trial as it was read: the rig that was kept with it, and its tilts with the side that hung low."""
from checklist_app.checklists.places import label
from checklist_app.checklists.running import Running
from checklist_app.operations.graph import Obtained
from checklist_app.operations.straight_lift.as_hung import AsHung, as_hung, read
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.trial_entries import TILT_HOW, LowEnd, LowSide
from checklist_app.operations.straight_lift.trial_found import Hung
from checklist_app.operations.task import Key, Measured

TRIAL, AS_HUNG = "trial", "as_hung"
ALIKE_M = 0.0015  # kept in whole millimetres
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
    if rig is None and now.task.answers.get(Key("rig")) is Rig.TWO_HOOKS:
        raise NotTold("On two hooks nothing is worked out from a trial here: hold each reading against the plan.")
    if rig is None:
        raise NotTold(f"Trial {label(row)}: its rig was not known when it was written down.")
    tilts = {name: _tilt(now, row, name) for name in SIDES}

    return Hung(rig, tilts["tilt_along_deg"][0], tilts["tilt_across_deg"][0], max(off for _, off in tilts.values()))


def hung_otherwise(now: Running) -> str:
    """The last trial, where eyes or legs are not as they were when it hung: it says nothing of the rig as it is now."""
    row = max(now.folded.rows.get(TRIAL, ()), default="")
    kept = read(str(now.folded.values.get((TRIAL, row, AS_HUNG), {}).get("text", "")))
    if kept is None:
        return ""
    rig = read(as_hung(now.evaluation))

    return "" if rig is not None and _alike(kept, rig) else label(row)


def _alike(one: AsHung, other: AsHung) -> bool:
    if len(one.legs_m) != len(other.legs_m):
        return False
    pairs = [*zip(one.legs_m, other.legs_m, strict=True)]
    pairs += [pair for eyes in zip(one.eyes, other.eyes, strict=True) for pair in zip(*eyes, strict=True)]

    return all(abs(first - second) < ALIKE_M for first, second in pairs)


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
