"""Mass and centre of gravity from scales under a load: two in a line, three or four in the plane, one end raised."""

from collections.abc import Sequence
from math import isfinite

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive
from checklist_app.mechanics.finding.parts import Box, Part, box_of_cg, centre_of_gravity, total_mass_kg
from checklist_app.mechanics.vectors import Vec

SOURCE = "STATICS_WEIGHING"
TILTED = "TILTED_WEIGHING"
STEEPEST_DEG = 45.0


def cg_from_first_support_m(first_kg: float, second_kg: float, apart_m: float) -> float:
    """Centre of gravity between two scales, from the first.

        x = R₂ L / (R₁ + R₂)

    Source:
        STATICS_WEIGHING, moments about the first support.

    Args:
        first_kg: R₁, what the first scale reads [kg], 0 or more.
        second_kg: R₂, what the second scale reads [kg], 0 or more.
        apart_m: L, level distance between the supports [m], above 0.

    Returns:
        x [m].

    Raises:
        OutOfRangeError: If a number is none, or both scales read nothing.

    Example:
        >>> cg_from_first_support_m(6000.0, 4000.0, 2.0)
        0.8
    """
    required_not_negative("reading of the first scale", first_kg, SOURCE)
    required_not_negative("reading of the second scale", second_kg, SOURCE)
    required_positive("mass on the scales", first_kg + second_kg, SOURCE)
    required_positive("distance between the supports", apart_m, SOURCE)

    return second_kg * apart_m / (first_kg + second_kg)


def cg_from_first_support_range_m(
    first_kg: float, second_kg: float, apart_m: float, scale_plus_minus_kg: float, apart_plus_minus_m: float
) -> tuple[float, float]:
    """Between where the centre of gravity can lie, with both scales and the distance off as far as they may be.

        x = (R₂ ∓ δ) (L ∓ δL) / (R₁ + R₂)

    Source:
        STATICS_WEIGHING; R₂ up with R₁ down is the furthest.

    Args:
        first_kg: R₁, what the first scale reads [kg].
        second_kg: R₂, what the second scale reads [kg].
        apart_m: L, level distance between the supports [m], above 0.
        scale_plus_minus_kg: δ, how far a scale may be off [kg], less than it reads.
        apart_plus_minus_m: δL, how far the distance may be off [m].

    Returns:
        Lowest and highest x [m].

    Raises:
        OutOfRangeError: If a number is none or a spread is larger than its value.

    Example:
        >>> cg_from_first_support_range_m(6000.0, 4000.0, 2.0, 50.0, 0.0)
        (0.79, 0.81)
    """
    required_not_negative("spread of the scales", scale_plus_minus_kg, SOURCE)
    required_not_negative("spread of the distance", apart_plus_minus_m, SOURCE)
    off_kg, off_m = scale_plus_minus_kg, apart_plus_minus_m

    return (
        cg_from_first_support_m(first_kg + off_kg, second_kg - off_kg, apart_m - off_m),
        cg_from_first_support_m(first_kg - off_kg, second_kg + off_kg, apart_m + off_m),
    )


def weighed_on_scales(readings_kg: Sequence[float], supports: Sequence[Vec]) -> tuple[float, Vec]:
    """Mass, and centre of gravity seen from above, from three scales or four.

        m = Σ Rᵢ,  x = Σ Rᵢ xᵢ / m,  y = Σ Rᵢ yᵢ / m

    Source:
        STATICS_WEIGHING; FAA_WEIGHT_BALANCE weighs so on three jacks.

    Args:
        readings_kg: what each scale reads [kg], 0 or more.
        supports: where each one stands, in the load's axes [m].

    Returns:
        Mass [kg] and centre of gravity [m]; its height is that of the supports and says nothing.

    Raises:
        OutOfRangeError: If there are fewer than three, a reading is none, or nothing stands on them.

    Example:
        >>> weighed_on_scales([100.0, 100.0, 200.0], [Vec(0.0, 0.0, 0.0), Vec(0.0, 2.0, 0.0), Vec(3.0, 1.0, 0.0)])
        (400.0, Vec(x=1.5, y=1.0, z=0.0))
    """
    parts = _as_parts(readings_kg, supports, (0.0, 0.0))

    return total_mass_kg(parts), centre_of_gravity(parts)


def box_by_scales(
    readings_kg: Sequence[float], supports: Sequence[Vec], plus_minus: tuple[float, float]
) -> Box:
    """How far the weighed centre of gravity may lie off, scales and places of the supports anywhere in their spread.

    Source:
        STATICS_WEIGHING, as `box_of_cg`.

    Args:
        readings_kg: what each scale reads [kg], 0 or more.
        supports: where each one stands, in the load's axes [m].
        plus_minus: how far a scale may be off [kg], and a place [m].

    Returns:
        Lowest and highest place, each way by itself.

    Raises:
        OutOfRangeError: If there are fewer than three, or a number is none.

    Example:
        >>> places = [Vec(0.0, 0.0, 0.0), Vec(0.0, 2.0, 0.0), Vec(3.0, 1.0, 0.0)]
        >>> box_by_scales([100.0, 100.0, 200.0], places, (0.0, 0.01)).high
        Vec(x=1.51, y=1.01, z=0.01)
    """
    return box_of_cg(_as_parts(readings_kg, supports, plus_minus))


def height_over_supports_m(
    level_first_kg: float, raised_first_kg: float, mass_kg: float, apart_m: float, raised_deg: float
) -> float:
    """Height of the centre of gravity over the line of two supports, from raising the second end.

        z = (R₁' − R₁) L / (m tan t)

    Source:
        TILTED_WEIGHING.

    Assumes:
        The load turns freely on both supports, and both bear at the same height in the load.

    Args:
        level_first_kg: R₁, first scale with the load level [kg], 0 or more.
        raised_first_kg: R₁', first scale with the second end raised [kg], 0 or more.
        mass_kg: m [kg], above 0.
        apart_m: L, distance between the supports along the load [m], above 0.
        raised_deg: t, angle by which the load is raised [°], above 0 to 45.

    Returns:
        z [m]; below 0 it lies under that line.

    Raises:
        OutOfRangeError: If a number is none or the angle leaves its range.

    Example:
        >>> round(height_over_supports_m(600.0, 648.4898, 1000.0, 2.0, 10.0), 4)
        0.55
    """
    required_not_negative("first scale, level", level_first_kg, TILTED)
    required_not_negative("first scale, raised", raised_first_kg, TILTED)

    return (raised_first_kg - level_first_kg) * height_for_each_kg_m(mass_kg, apart_m, raised_deg)


def height_for_each_kg_m(mass_kg: float, apart_m: float, raised_deg: float) -> float:
    """By how much the height comes out wrong for each kilogram that the scale is off.

        L / (m tan t)

    Source:
        TILTED_WEIGHING; raise it as far as is safe, and use good scales.

    Args:
        mass_kg: m [kg], above 0.
        apart_m: L, distance between the supports along the load [m], above 0.
        raised_deg: t, angle by which the load is raised [°], above 0 to 45.

    Returns:
        Error [m/kg].

    Raises:
        OutOfRangeError: If a number is none or the angle leaves its range.

    Example:
        >>> round(2.0394 * height_for_each_kg_m(1019.716, 2.0, 10.0), 6)
        0.022685
    """
    required_positive("mass on the scales", mass_kg, TILTED)
    required_positive("distance between the supports", apart_m, TILTED)
    if not 0.0 < raised_deg <= STEEPEST_DEG:
        raise OutOfRangeError("angle of the raised load", raised_deg, f"above 0 to {STEEPEST_DEG:.0f}°", TILTED)
    angle_rad = raised_deg / exact.RAD_IN_DEG

    return apart_m * exact.cos(angle_rad) / (mass_kg * exact.sin(angle_rad))


def height_plus_minus_m(
    height: float, each_kg_m: float, scale_plus_minus_kg: float, raised_deg: float, angle_plus_minus_deg: float
) -> float:
    """How far the height may be off: both scale readings and the angle, all the same way.

        δz = 2 δR L / (m tan t) + |z| δt / (sin t cos t)

    Source:
        TILTED_WEIGHING, differentiated.

    Args:
        height: z, as found [m].
        each_kg_m: L / (m tan t), error for each kilogram [m/kg].
        scale_plus_minus_kg: δR, how far the scale may be off [kg], 0 or more.
        raised_deg: t [°], above 0 to 45.
        angle_plus_minus_deg: δt, how far the angle may be off [°], 0 or more.

    Returns:
        δz [m].

    Raises:
        OutOfRangeError: If a number is none or the angle leaves its range.

    Example:
        >>> round(height_plus_minus_m(0.55, 0.0111, 1.0, 10.0, 0.1), 4)
        0.0278
    """
    required_not_negative("spread of the scale", scale_plus_minus_kg, TILTED)
    required_not_negative("spread of the angle", angle_plus_minus_deg, TILTED)
    required_not_negative("error for each kilogram", each_kg_m, TILTED)
    if not (0.0 < raised_deg <= STEEPEST_DEG and isfinite(height)):
        raise OutOfRangeError("angle of the raised load", raised_deg, f"above 0 to {STEEPEST_DEG:.0f}°", TILTED)
    angle_rad, off_rad = raised_deg / exact.RAD_IN_DEG, angle_plus_minus_deg / exact.RAD_IN_DEG
    steep = exact.sin(angle_rad) * exact.cos(angle_rad)

    return 2.0 * scale_plus_minus_kg * each_kg_m + abs(height) * off_rad / steep


def _as_parts(readings_kg: Sequence[float], supports: Sequence[Vec], plus_minus: tuple[float, float]) -> list[Part]:
    if len(readings_kg) < 3 or len(readings_kg) != len(supports):
        raise OutOfRangeError("number of scales", len(readings_kg), "three or more, each with its place", SOURCE)
    for reading_kg in readings_kg:
        required_not_negative("reading of a scale", reading_kg, SOURCE)

    return [Part(kg, at, *plus_minus) for kg, at in zip(readings_kg, supports, strict=True)]
