"""Whether a piece of gear may be used on the day: custody, quarantine, examination, marking, proofs."""

from collections.abc import Iterable, Iterator

from checklist_app.operations.check import State
from checklist_app.operations.gear import Gear, GearState, LoadCell
from checklist_app.operations.graph import Day, NotApplicable
from checklist_app.operations.words import spoken_day

IN_USE = ("in service", "hired in")
TYPED_IN = "typed in, not from the register: cannot be signed"


def usable(item: Gear, day: Day) -> State:
    """Holds when nothing speaks against it.

    Source:
        LOLER for examination and marking; OSHA_CUSTOM_ACCESSORIES for the proofs of what the workshop built itself.

    Raises:
        NotApplicable: For what was typed in: no register vouches for it, and it cannot be signed.
    """
    if item.state is None:
        raise NotApplicable(TYPED_IN)
    faults = tuple(_faults(item.state, _examination(item.state, day)))
    if faults:
        return State(False, f"{item.id}: {'; '.join(faults)}")

    return State(True, f"{item.id}: {_stands(item.state)}, next examination due {spoken_day(item.state.due)}")


def fit(item: Gear) -> State:
    """Holds when nothing speaks against what nobody examines by dates: a pallet, a vehicle.

    Source:
        HOUSE_SETTING.

    Raises:
        NotApplicable: For what was typed in: no register vouches for it, and it cannot be signed.
    """
    if item.state is None:
        raise NotApplicable(TYPED_IN)
    faults = tuple(_faults(item.state, ()))

    return State(not faults, f"{item.id}: {'; '.join(faults) or _stands(item.state)}")


def calibrated(item: LoadCell, day: Day) -> State:
    """Holds when it may be used, and its calibration reaches the day.

    Source:
        LOLER.
    """
    found = usable(item, day)
    if found.holds and not day <= item.calibrated_until:
        return State(False, f"{item.id}: its calibration ended {spoken_day(item.calibrated_until)}")

    return found


def _stands(state: GearState) -> str:
    return f"{state.custody}, marked"


def _faults(state: GearState, examination: Iterable[str]) -> Iterator[str]:
    yield from (f"in quarantine: {reason}" if reason else "in quarantine" for reason in state.quarantined)
    if state.custody not in IN_USE:
        yield f"is {state.custody}" if state.custody else "nobody says where it stands"
    yield from examination
    if not state.marked:
        yield "its marking cannot be read"
    if state.lacks:
        yield f"{state.origin}, and it lacks {', '.join(state.lacks)}"


def _examination(state: GearState, day: Day) -> Iterator[str]:
    if not state.due:
        yield "no examination is entered"
    elif not day <= state.due:
        yield f"its examination was due {spoken_day(state.due)}"
