"""Lashed loads drawn at random from a seed: tie-downs, diagonals, springs, blocks; with spreads, some with unknowns."""

import random
from typing import Any

from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Waters
from checklist_app.operations.graph import DontKnow
from checklist_app.operations.lashing.choices import Blocks, Route
from checklist_app.operations.task import Measured, Task
from tests.operations.lashing.loads import NONE, Row, block, diagonal, lashing, load, on_a_pallet, strap, tie_down

SETS = (RuleSet.EN, RuleSet.EN, RuleSet.CTU, RuleSet.UK, RuleSet.NTC)


def some_loads(count: int, seed: int, most: int = 6) -> list[Task]:
    """So many loads; every third symmetric, every seventh with a height that nobody knows, every fourth on a pallet."""
    draw = random.Random(seed)
    return [_load(draw, n % 3 == 0, n % 7 == 6, n % 4 == 3, most) for n in range(count)]


def _load(draw: random.Random, symmetric: bool, unknown: bool, pallet: bool, most: int) -> Task:
    length, width = draw.uniform(0.7, 1.1), draw.uniform(0.5, 0.75)
    high = draw.uniform(0.4, 1.0)
    rows = _rows(draw, length, width, 2.0 * high, symmetric, draw.randint(1, most))
    rule_set = draw.choice(SETS)
    at_sea = rule_set in (RuleSet.EN, RuleSet.CTU) and draw.random() < 0.3
    told: dict[str, Any] = {
        "mass_kg": Measured(draw.uniform(300.0, 2500.0), draw.choice(("weighed", "plate", "estimate"))),
        "cg_x_m": Measured(0.0 if symmetric else draw.uniform(-0.1, 0.1), draw.choice(("drawing", "trial"))),
        "cg_y_m": Measured(0.0 if symmetric else draw.uniform(-0.08, 0.08), draw.choice(("drawing", "trial"))),
        "cg_z_m": DontKnow() if unknown else Measured(high, "trial"),
        "height_m": Measured(2.0 * high, "tape"),
        "base_length_m": Measured(length, "tape"), "base_width_m": Measured(width, "tape"),
        "edge_gives_m": draw.choice((NONE, Measured(0.02, "tape"))),
        "stands": draw.choice(tuple(Stands)), "rule_set": rule_set,
        "load_friction": Measured(draw.uniform(0.05, 0.6), "measured"),
        "deck_friction": Measured(draw.uniform(0.2, 0.6), "measured"),
        "route": Route.SEA if at_sea else Route.ROAD, "waters": draw.choice(tuple(Waters)),
        "ends_off_m": Measured(0.0, plus_minus=0.01),
    }
    blocks = [block(draw.choice(tuple(Blocks)), (0.0, 0.0, draw.uniform(0.16, 0.5)), draw.uniform(100.0, 1500.0))
              for _ in range(draw.choice((0, 0, 1)))]
    return (on_a_pallet if pallet else load)(rows, blocks, **told)


def _rows(
    draw: random.Random, length: float, width: float, high: float, symmetric: bool, number: int
) -> list[Row]:
    x, y, up = draw.uniform(0.2, 0.5) * length, draw.uniform(0.3, 0.5) * width, draw.uniform(0.2, 1.0) * high
    if symmetric:
        corners = [(sx * x, sy * y, up) for sx in (1.0, -1.0) for sy in (1.0, -1.0)]
        return [
            diagonal(at, (at[0] * 2.5, at[1] * 2.8, 0.0), draw.choice((500.0, 1000.0, 2000.0))) for at in corners
        ] + [tie_down((0.0, 0.45 * width, high), (0.0, 0.5 * width, 0.0)) for _ in range(number % 3)]
    return [_row(draw, length, width, high) for _ in range(number)]


def _row(draw: random.Random, length: float, width: float, high: float) -> Row:
    kind = draw.choice((Kind.TIE_DOWN, Kind.DIAGONAL, Kind.DIAGONAL, Kind.SPRING))
    sx, sy, up = draw.choice((1.0, -1.0)), draw.choice((1.0, -1.0)), draw.uniform(0.1, 1.0) * high
    item = strap(2000.0, 400.0)
    if kind is Kind.TIE_DOWN:
        return tie_down((draw.uniform(-0.4, 0.4) * length, 0.45 * width, high), (0.0, width, 0.0), lashing_item=item)
    at = (sx * draw.uniform(0.2, 0.5) * length, sy * draw.uniform(0.2, 0.5) * width, up)
    out = (sx * draw.uniform(0.7, 1.6), sy * draw.uniform(0.5, 1.2), 0.0)
    return lashing(kind, at, out, lashing_item=item)
