"""What goes with the load when it leaves: chargeable weight, verified gross mass, fuel, wood."""

from collections.abc import Sequence
from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive

SOURCE = "FREIGHT_WEIGHTS"
AIR_CM3_KG, ROAD_KG_M3, SEA_KG_M3, CM3_IN_M3 = 6000.0, 333.0, 1000.0, 1e6
LEAST_SEA_UNITS = 1.0
WOOD_MM = 6.0


class Mode(Enum):
    """How it travels."""

    AIR = "air"
    ROAD = "road"
    SEA = "sea, part of a container"


class Fuel(Enum):
    """What was done with the fuel of an engine."""

    IN_TANK = "fuel in the tank, or the engine could run"
    DRAINED = "tank drained, cannot run for lack of fuel; lines still wet"
    PURGED = "never fuelled, or cleaned and free of vapour"


class Wood(Enum):
    """What packing is made of."""

    SOLID = "solid wood"
    PANEL = "plywood, oriented strand board or hardboard"


def volumetric_kg(mode: Mode, length_cm: float, width_cm: float, height_cm: float) -> float:
    """Mass that a volume counts as.

        air L W H / 6000, road 333 kg/m³, sea 1000 kg/m³

    Source:
        FREIGHT_WEIGHTS: a convention of carriers; a carrier may have its own.

    Args:
        mode: how it travels.
        length_cm: L [cm], above 0.
        width_cm: W [cm], above 0.
        height_cm: H [cm], above 0.

    Returns:
        Volumetric mass [kg].

    Raises:
        OutOfRangeError: If a number is none above 0.

    Example:
        >>> volumetric_kg(Mode.AIR, 150.0, 100.0, 110.0)
        275.0
    """
    for name, value in (("length", length_cm), ("width", width_cm), ("height", height_cm)):
        required_positive(name, value, SOURCE)
    volume_cm3 = length_cm * width_cm * height_cm
    if mode is Mode.AIR:
        return volume_cm3 / AIR_CM3_KG

    return volume_cm3 / CM3_IN_M3 * (ROAD_KG_M3 if mode is Mode.ROAD else SEA_KG_M3)


def chargeable_kg(mode: Mode, mass_kg: float, volume_kg: float) -> float:
    """What is paid for.

        the larger of mass and volumetric mass; at sea one unit of 1000 kg at least

    Source:
        FREIGHT_WEIGHTS.

    Args:
        mode: how it travels.
        mass_kg: as weighed [kg], above 0.
        volume_kg: volumetric mass [kg], above 0.

    Returns:
        Chargeable mass [kg].

    Raises:
        OutOfRangeError: If a number is none above 0.

    Example:
        >>> chargeable_kg(Mode.SEA, 450.0, 960.0)
        1000.0
    """
    required_positive("mass as weighed", mass_kg, SOURCE)
    required_positive("volumetric mass", volume_kg, SOURCE)
    least_kg = LEAST_SEA_UNITS * SEA_KG_M3 if mode is Mode.SEA else 0.0

    return max(mass_kg, volume_kg, least_kg)


def verified_gross_mass_kg(tare_kg: float, packages_kg: Sequence[float], securing_kg: float) -> float:
    """Verified gross mass of a packed container by weighing all that is in it.

        tare + Σ packages + dunnage and securing; nothing estimated

    Source:
        SOLAS_VGM, method 2.

    Args:
        tare_kg: of the container [kg], above 0.
        packages_kg: every package with its pallet, weighed [kg].
        securing_kg: dunnage and securing, weighed [kg], 0 or more.

    Returns:
        Verified gross mass [kg].

    Raises:
        OutOfRangeError: If a number is none, or nothing is packed.

    Example:
        >>> verified_gross_mass_kg(2200.0, [685.0] * 3, 180.0)
        4435.0
    """
    required_positive("tare of the container", tare_kg, "SOLAS_VGM")
    required_not_negative("dunnage and securing", securing_kg, "SOLAS_VGM")
    if not packages_kg:
        raise OutOfRangeError("packages", "none", "one or more, weighed", "SOLAS_VGM")
    total_kg = tare_kg + securing_kg
    for package_kg in packages_kg:
        required_positive("a package", package_kg, "SOLAS_VGM")
        total_kg += package_kg
    return total_kg


def is_dangerous_goods(mode: Mode, fuel: Fuel) -> bool:
    """Whether an engine that has held fuel travels as dangerous goods.

    By road and sea it is free once it is drained and cannot run; by air only once it is purged. Its battery and the
    steps of labels by litres are matters of the edition in force.

    Source:
        SP_363.

    Args:
        mode: how it travels.
        fuel: what was done with its fuel.

    Returns:
        True if it is.

    Example:
        >>> is_dangerous_goods(Mode.ROAD, Fuel.DRAINED), is_dangerous_goods(Mode.AIR, Fuel.DRAINED)
        (False, True)
    """
    if fuel is Fuel.DRAINED:
        return mode is Mode.AIR
    return fuel is Fuel.IN_TANK


def wood_needs_mark(wood: Wood, thickness_mm: float) -> bool:
    """Whether a part of a crate or pallet needs the mark of treated wood when it leaves the free area.

    Source:
        ISPM_15: solid wood of more than 6 mm; not boards made with glue and heat.

    Args:
        wood: what it is made of.
        thickness_mm: of the part [mm], above 0.

    Returns:
        True if it does.

    Raises:
        OutOfRangeError: If the thickness is no number above 0.

    Example:
        >>> wood_needs_mark(Wood.PANEL, 6.0), wood_needs_mark(Wood.SOLID, 50.0)
        (False, True)
    """
    required_positive("thickness of the wood", thickness_mm, "ISPM_15")
    return wood is Wood.SOLID and thickness_mm > WOOD_MM
