"""What a cubic metre weighs, as published: the upper end for the mass, both ends for the centre of gravity."""

from enum import Enum
from typing import NamedTuple


class Density(NamedTuple):
    """Lowest and highest published value, and where."""

    low_kg_m3: float
    high_kg_m3: float
    source: str


class Material(Enum):
    """What parts and fillings are made of."""

    STEEL = "steel"
    CAST_STEEL = "cast steel"
    CAST_IRON = "cast iron"
    GREY_IRON = "grey cast iron"
    ALUMINIUM = "aluminium alloy"
    BRASS = "brass"
    BRONZE = "bronze"
    COPPER = "copper"
    WHITE_METAL = "white metal"
    LEAD = "lead"
    RUBBER = "rubber"
    PINE = "softwood, pine"
    WATER = "water"
    DIESEL = "diesel fuel"
    OIL = "engine, gear or hydraulic oil"


GERE, FOUNDRY = "GERE_DENSITIES", "FOUNDRY_DENSITIES"
DENSITIES = {
    Material.STEEL: Density(7850.0, 7850.0, GERE),
    Material.CAST_STEEL: Density(7800.0, 7800.0, FOUNDRY),
    Material.CAST_IRON: Density(7000.0, 7400.0, GERE),
    Material.GREY_IRON: Density(6600.0, 7400.0, FOUNDRY),
    Material.ALUMINIUM: Density(2560.0, 2800.0, GERE),
    Material.BRASS: Density(8400.0, 8600.0, GERE),
    Material.BRONZE: Density(8200.0, 8920.0, GERE),
    Material.COPPER: Density(8900.0, 8900.0, GERE),
    Material.WHITE_METAL: Density(7100.0, 7100.0, FOUNDRY),
    Material.LEAD: Density(11340.0, 11340.0, FOUNDRY),
    Material.RUBBER: Density(960.0, 1300.0, GERE),
    Material.PINE: Density(560.0, 640.0, GERE),
    Material.WATER: Density(1000.0, 1000.0, GERE),
    Material.DIESEL: Density(820.0, 845.0, "EN_590"),
    Material.OIL: Density(840.0, 900.0, "OIL_DENSITIES"),
}


def density(material: Material) -> Density:
    """Published range of a density; 50 % coolant is entered by hand, as no published value was found for it.

    Source:
        GERE_DENSITIES, FOUNDRY_DENSITIES, EN_590, OIL_DENSITIES: as each row says.

    Args:
        material: what it is made of.

    Returns:
        Low, high and source.

    Example:
        >>> density(Material.STEEL).high_kg_m3
        7850.0
    """
    return DENSITIES[material]
