"""Mass and centre of gravity of a load added up from its parts, and the box in which its centre of gravity lies."""

from collections.abc import Sequence
from math import isfinite
from typing import NamedTuple

from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.vectors import Vec

SOURCE = "STATICS_WEIGHING"
ROUNDS = 60


class Part(NamedTuple):
    """One part: its mass, where its centre of gravity is, and how far both may be off.

    A hole or a part taken away has a mass below 0, with its spread above 0 all the same.
    """

    mass_kg: float
    at: Vec
    mass_plus_minus_kg: float = 0.0
    at_plus_minus_m: float = 0.0


class Box(NamedTuple):
    """The lowest and highest place of a centre of gravity, each way by itself."""

    low: Vec
    high: Vec


def mass_of_volume_kg(volume_m3: float, density_kg_m3: float) -> float:
    """Mass of a body or of a filling.

        m = V ρ

    Source:
        STATICS_WEIGHING.

    Args:
        volume_m3: V [m³], above 0.
        density_kg_m3: ρ [kg/m³], above 0.

    Returns:
        m [kg].

    Raises:
        OutOfRangeError: If an argument is no number above 0.

    Example:
        >>> mass_of_volume_kg(0.5, 7850.0)
        3925.0
    """
    required_positive("volume", volume_m3, SOURCE)
    required_positive("density", density_kg_m3, SOURCE)

    return volume_m3 * density_kg_m3


def total_mass_kg(parts: Sequence[Part]) -> float:
    """Mass of all parts, holes taken off.

        m = Σ mᵢ

    Source:
        STATICS_WEIGHING.

    Args:
        parts: one or more.

    Returns:
        m [kg].

    Raises:
        OutOfRangeError: If a number is none, or nothing is left.

    Example:
        >>> total_mass_kg([Part(500.0, Vec(0.0, 0.0, 0.0)), Part(-20.0, Vec(1.0, 0.0, 0.0))])
        480.0
    """
    _looked_at(parts)
    total_kg = 0.0
    for part in parts:
        total_kg = total_kg + part.mass_kg
    required_positive("mass of all parts", total_kg, SOURCE)

    return total_kg


def highest_mass_kg(parts: Sequence[Part]) -> float:
    """Mass of all parts, each as heavy as it may be.

        m = Σ (mᵢ + δmᵢ)

    Source:
        STATICS_WEIGHING; the sum of all, as the heaviest is what has to be lifted.

    Args:
        parts: one or more.

    Returns:
        m [kg].

    Raises:
        OutOfRangeError: If a number is none, or nothing is left.

    Example:
        >>> highest_mass_kg([Part(500.0, Vec(0.0, 0.0, 0.0), 25.0), Part(-20.0, Vec(1.0, 0.0, 0.0), 2.0)])
        507.0
    """
    total_kg = total_mass_kg(parts)
    for part in parts:
        total_kg = total_kg + part.mass_plus_minus_kg

    return total_kg


def centre_of_gravity(parts: Sequence[Part]) -> Vec:
    """Where all parts together balance.

        r = Σ mᵢ rᵢ / Σ mᵢ

    Source:
        STATICS_WEIGHING; FAA_WEIGHT_BALANCE, moments over mass.

    Args:
        parts: one or more.

    Returns:
        r [m].

    Raises:
        OutOfRangeError: If a number is none, or nothing is left.

    Example:
        >>> centre_of_gravity([Part(300.0, Vec(0.0, 0.0, 0.0)), Part(100.0, Vec(2.0, 0.0, 0.4))])
        Vec(x=0.5, y=0.0, z=0.1)
    """
    mass_kg = total_mass_kg(parts)
    x = y = z = 0.0
    for part in parts:
        x, y, z = x + part.mass_kg * part.at.x, y + part.mass_kg * part.at.y, z + part.mass_kg * part.at.z

    return Vec(x / mass_kg, y / mass_kg, z / mass_kg)


def box_of_cg(parts: Sequence[Part]) -> Box:
    """How far the centre of gravity can lie with every part's mass and place anywhere in its spread.

        highest: each part at its high end; of two masses the higher where it lies beyond the result, else the lower

    Source:
        STATICS_WEIGHING; ND_0027 works with such a box.

    Args:
        parts: one or more.

    Returns:
        Lowest and highest place, each way by itself.

    Raises:
        OutOfRangeError: If a number is none, or the spreads leave no mass for sure.

    Example:
        >>> box_of_cg([Part(300.0, Vec(0.0, 0.0, 0.0), 30.0), Part(100.0, Vec(2.0, 0.0, 0.0), 0.0, 0.1)]).high.x
        0.5675675675675675
    """
    total_mass_kg(parts)
    least_kg = 0.0
    for part in parts:
        least_kg = least_kg + part.mass_kg - part.mass_plus_minus_kg
    required_positive("least mass of all parts", least_kg, SOURCE)
    lows, highs = [], []
    for axis in range(3):
        lows.append(-_highest(parts, axis, -1.0))
        highs.append(_highest(parts, axis, 1.0))

    return Box(Vec(*lows), Vec(*highs))


def _highest(parts: Sequence[Part], axis: int, way: float) -> float:
    """The furthest along one way: raised from the middle until no part's mass is better at its other end."""
    best = way * centre_of_gravity(parts)[axis]
    for _ in range(ROUNDS):
        mass = moment = 0.0
        for part in parts:
            place = way * part.at[axis] + (part.at_plus_minus_m if part.mass_kg >= 0.0 else -part.at_plus_minus_m)
            part_kg = part.mass_kg + (part.mass_plus_minus_kg if place > best else -part.mass_plus_minus_kg)
            mass, moment = mass + part_kg, moment + part_kg * place
        if not moment / mass > best:
            break
        best = moment / mass

    return best


def _looked_at(parts: Sequence[Part]) -> None:
    if not parts:
        raise OutOfRangeError("number of parts", 0, "one or more", SOURCE)
    for part in parts:
        if not (isfinite(part.mass_kg) and all(isfinite(axis) for axis in part.at)):
            raise OutOfRangeError("mass or place of a part", part.mass_kg, "numbers", SOURCE)
        required_not_negative("spread of a part's mass", part.mass_plus_minus_kg, SOURCE)
        required_not_negative("spread of a part's place", part.at_plus_minus_m, SOURCE)
        if abs(part.mass_kg) < part.mass_plus_minus_kg:
            raise OutOfRangeError("spread of a part's mass", part.mass_plus_minus_kg, "less than the mass", SOURCE)
