"""Loads and lashings that several tests look at."""

from checklist_app.mechanics.lashing.lashed_body import Block, LashedBody, Pull, Stands, Strand, Stretch, lashed_body
from checklist_app.mechanics.vectors import Vec

FORWARD, REAR = Vec(1.0, 0.0, 0.0), Vec(-1.0, 0.0, 0.0)
LEFT, RIGHT = Vec(0.0, 1.0, 0.0), Vec(0.0, -1.0, 0.0)


def corners(x: float, y: float) -> list[tuple[float, float]]:
    return [(sx * x, sy * y) for sx in (1.0, -1.0) for sy in (1.0, -1.0)]


def oily(attached_m: float, only_rear: bool = False, lashed: bool = True) -> LashedBody:
    """1000 kg on 1.0 × 0.7 m, four diagonals of 1000 daN from one height, or the two rear ones."""
    pulls = [
        Pull(Vec(sx * 0.45, sy * 0.30, attached_m), Vec(sx * 1.2, sy * 1.1, 0.0), 1000.0, Stretch.WEB)
        for sx in (1.0, -1.0) for sy in (1.0, -1.0) if lashed and not (only_rear and sx > 0.0)
    ]
    return lashed_body(981.0, Vec(0.0, 0.0, 0.8), corners(0.5, 0.35), Stands.FEET, pulls)


def mixed(stands: Stands, direct: bool = True) -> LashedBody:
    """1500 kg off its middle: two tie-downs, two direct lashings to the rear, one low block ahead."""
    strands = [
        Strand(Vec(x, s * 0.30, 1.3), Vec(x, s * 1.2, 0.0), 350.0, 1250.0) for x in (0.3, -0.3) for s in (1.0, -1.0)
    ]
    pulls = [Pull(Vec(-0.5, 0.0, 1.2), Vec(-1.8, s * 0.5, 0.0), 500.0, Stretch.WEB) for s in (1.0, -1.0) if direct]
    blocks = [Block(Vec(0.6, 0.0, 0.15), Vec(-1.0, 0.0, 0.0), 400.0)]
    return lashed_body(1471.5, Vec(0.0, 0.05, 0.8), corners(0.6, 0.35), stands, pulls, strands, blocks)


def tied(mass_kg: float, height_m: float, x: float, y: float, tie_downs: int, slope: Vec, stf_dan: float) -> LashedBody:
    """A load under tie-downs over its middle; `slope` is the way of the left strand."""
    strands = [
        Strand(Vec(0.0, s * y, 1.0), Vec(slope.x, s * (y + slope.y), 1.0 + slope.z), stf_dan, 1250.0)
        for _ in range(tie_downs) for s in (1.0, -1.0)
    ]
    return lashed_body(0.981 * mass_kg, Vec(0.0, 0.0, height_m), corners(x, y), Stands.FEET, (), strands)
