"""The centre of gravity found by trials, and how far it may lie from there, reading by reading."""

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.finding.plumb_line import (
    Hitch,
    angle_between_deg,
    line_of,
    nearest_point,
    passing_by_m,
)
from checklist_app.mechanics.vectors import Vec

SOURCE = "STATICS_TRIAL"
SURE_OF_THE_ANGLE = 3.0
AXES, MORE_THAN_HOLD_IT = 3, 4


@dataclass(frozen=True)
class Readings:
    """How far each reading of a trial may lie from the truth."""

    tilt_deg: float
    leg_m: float
    pick_m: float


@dataclass(frozen=True)
class Found:
    """A centre of gravity and how far away the true one may lie, each way.

    `plus_minus_m` holds in 95 of 100 trials whose readings are off by anything up to their ends, each by itself;
    `outmost_m` in all but a few of ten thousand, every reading off as far as it can be and all the same way.
    """

    cg: Vec
    plus_minus_m: Vec
    outmost_m: Vec


@dataclass(frozen=True)
class Met(Found):
    """Found where two plumb lines meet: at what angle, and how far they miss each other against what readings allow."""

    angle_deg: float
    gap_m: float
    gap_explained_m: float

    @property
    def agree(self) -> bool:
        """Whether the readings explain by how much the lines miss; else one of the trials was read or entered wrong."""
        return self.gap_m <= self.gap_explained_m


def mass_by_cell_kg(hook_load_kg: float, rigging_kg: float) -> float:
    """Mass of the load, from the hook load.

        m = m_hook − m_rigging

    Source:
        STATICS_TRIAL.

    Args:
        hook_load_kg: what the load cell reads, all hanging free [kg], above 0.
        rigging_kg: everything below the cell that is not the load [kg], 0 or more.

    Returns:
        m [kg]; without a cell nothing is known of the mass, and it keeps its contingency.

    Raises:
        OutOfRangeError: If the cell reads no more than the rigging.

    Example:
        >>> mass_by_cell_kg(1040.0, 35.0)
        1005.0
    """
    required_not_negative("mass of the rigging", rigging_kg, SOURCE)
    required_positive("hook load beyond the rigging", hook_load_kg - rigging_kg, SOURCE)

    return hook_load_kg - rigging_kg


def found_by_one(trial: Hitch, readings: Readings, height_m: float, height_plus_minus_m: float) -> Found:
    """Where on its plumb line the centre of gravity is, at the height that was believed before.

        G = H − (H_z − z) v / v_z; ± 2 √(Σ Δ² / 3), Δ what each reading alone moves it by

    Source:
        STATICS_TRIAL; JCGM_100 for the spread; the height keeps the spread it had.

    Args:
        trial: what was hung and read.
        readings: how far each reading may be off.
        height_m: z, height of the centre of gravity in the load, from elsewhere [m].
        height_plus_minus_m: how far it may be off [m], 0 or more.

    Returns:
        Centre of gravity and its spread.

    Raises:
        OutOfRangeError: If a number is none, or the legs do not reach each other.

    Example:
        >>> trial = Hitch((Vec(-3.0, 0.0, 0.0), Vec(3.0, 0.0, 0.0)), (5.0, 5.0), 0.0, 0.0)
        >>> found = found_by_one(trial, Readings(0.0, 0.0, 0.0), -1.0, 0.2)
        >>> found.cg, round(found.plus_minus_m.z, 9)
        (Vec(x=0.0, y=0.0, z=-1.0), 0.2)
    """
    _looked_at(readings)
    required_not_negative("spread of the height", height_plus_minus_m, SOURCE)

    def cg(trials: Sequence[Hitch], height: float = height_m) -> tuple[float, ...]:
        return line_of(trials[0]).at_height(height)

    middle = cg([trial])
    ends = [cg([trial], height_m + off_m) for off_m in (-height_plus_minus_m, height_plus_minus_m)]
    moves = [_furthest(middle, ends), *_moves(cg, [trial], readings)]

    return Found(Vec(*middle), Vec(*_likely(moves)), Vec(*_outmost(moves)))


def found_by_two(trials: Sequence[Hitch], readings: Readings) -> Met:
    """Where the plumb lines of two trials from different hitches meet: all three ways, height too.

        Σ (1 − v vᵀ) (G − H) = 0; ± 2 √(Σ Δ² / 3), Δ what each reading alone moves it by

    Source:
        STATICS_TRIAL; FAA_WEIGHT_BALANCE, two suspensions; JCGM_100 for the spread.

    Args:
        trials: two, from different hitches.
        readings: how far each reading may be off.

    Returns:
        Centre of gravity, its spread, and whether the lines meet as closely as the readings say.

    Raises:
        OutOfRangeError: If the hitches tilt the load too much alike for the readings to tell them apart.

    Example:
        >>> down = Hitch((Vec(-3.0, 0.0, 0.0), Vec(3.0, 0.0, 0.0)), (5.0, 5.0), 0.0, 0.0)
        >>> found_by_two([down, down], Readings(0.1, 0.0, 0.0))
        Traceback (most recent call last):
        ...
        checklist_app.mechanics.errors.OutOfRangeError: angle between the plumb lines is 0; allowed: 0.60° or more...
    """
    _looked_at(readings)
    if len(trials) != 2:
        raise OutOfRangeError("number of trials", len(trials), "two, from different hitches", SOURCE)
    lines = [line_of(trial) for trial in trials]
    angle_deg, least_deg = angle_between_deg(*lines), SURE_OF_THE_ANGLE * 2.0 * readings.tilt_deg
    if not angle_deg >= least_deg or not angle_deg > 0.0:
        allowed = f"{least_deg:.2f}° or more, {SURE_OF_THE_ANGLE:.0f} times what the tilts may be off together"
        raise OutOfRangeError("angle between the plumb lines", angle_deg, allowed, SOURCE)

    def meeting(some: Sequence[Hitch]) -> tuple[float, ...]:
        one, other = (line_of(trial) for trial in some)
        return (*nearest_point([one, other]), passing_by_m(one, other))

    x, y, z, passing = meeting(trials)
    moves = _moves(meeting, trials, readings)
    likely, outmost = _likely(moves), _outmost(moves)
    return Met(Vec(x, y, z), Vec(*likely[:3]), Vec(*outmost[:3]), angle_deg, abs(passing), outmost[3])


def _looked_at(readings: Readings) -> None:
    required_not_negative("spread of the tilts", readings.tilt_deg, SOURCE)
    required_not_negative("spread of the leg lengths", readings.leg_m, SOURCE)
    required_not_negative("spread of the picks", readings.pick_m, SOURCE)


def _moves(
    value: Callable[[Sequence[Hitch]], tuple[float, ...]], trials: Sequence[Hitch], readings: Readings
) -> list[list[float]]:
    """By how much each reading alone moves the value, at the end that moves it more."""
    middle, moves = value(trials), []
    for place, trial in enumerate(trials):
        for ends in (*_ends(trial, readings), _on_three(trial)):
            moves.append(_furthest(middle, [value([*trials[:place], end, *trials[place + 1:]]) for end in ends]))

    return [move for move in moves if move]


def _furthest(middle: tuple[float, ...], ends: Sequence[tuple[float, ...]]) -> list[float]:
    return [max(abs(end[axis] - here) for end in ends) for axis, here in enumerate(middle)] if ends else []


def _outmost(moves: Sequence[Sequence[float]]) -> list[float]:
    total = [0.0] * len(moves[0])
    for move in moves:
        total = [sum_ + part for sum_, part in zip(total, move, strict=True)]
    return total


def _likely(moves: Sequence[Sequence[float]]) -> list[float]:
    """Half width over √3 for each reading, added as squares, twice: never more than all of them together."""
    squares = _outmost([[part * part for part in move] for move in moves])
    wide = [2.0 * exact.sqrt(square / 3.0) for square in squares]
    return [min(each, most) for each, most in zip(wide, _outmost(moves), strict=True)]


def _ends(trial: Hitch, readings: Readings) -> list[tuple[Hitch, ...]]:
    """The trial with one reading after the other at both its ends."""
    leg_m, pick_m = readings.leg_m, readings.pick_m
    pairs: list[tuple[Hitch, ...]] = [
        (_turned(trial, -readings.tilt_deg, 0.0), _turned(trial, readings.tilt_deg, 0.0)),
        (_turned(trial, 0.0, -readings.tilt_deg), _turned(trial, 0.0, readings.tilt_deg)),
    ]
    for leg in range(len(trial.legs_m)):
        if leg_m > 0.0:
            pairs.append((_leg(trial, leg, -leg_m), _leg(trial, leg, leg_m)))
        for axis in range(AXES if pick_m > 0.0 else 0):
            pairs.append((_pick(trial, leg, axis, -pick_m), _pick(trial, leg, axis, pick_m)))

    return pairs


def _on_three(trial: Hitch) -> tuple[Hitch, ...]:
    """On four legs a hair decides which three hold it: each one in turn left out."""
    if len(trial.legs_m) < MORE_THAN_HOLD_IT:
        return ()
    return tuple(
        replace(
            trial, picks=trial.picks[:leg] + trial.picks[leg + 1:], legs_m=trial.legs_m[:leg] + trial.legs_m[leg + 1:]
        )
        for leg in range(len(trial.legs_m))
    )


def _turned(trial: Hitch, along_deg: float, across_deg: float) -> Hitch:
    return replace(
        trial, tilt_along_deg=trial.tilt_along_deg + along_deg, tilt_across_deg=trial.tilt_across_deg + across_deg
    )


def _leg(trial: Hitch, leg: int, by_m: float) -> Hitch:
    legs_m = [*trial.legs_m]
    legs_m[leg] += by_m
    return replace(trial, legs_m=tuple(legs_m))


def _pick(trial: Hitch, leg: int, axis: int, by_m: float) -> Hitch:
    picks, point = [*trial.picks], [*trial.picks[leg]]
    point[axis] += by_m
    picks[leg] = Vec(*point)
    return replace(trial, picks=tuple(picks))
