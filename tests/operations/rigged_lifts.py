"""Lifts of three and four legs and of two hooks, drawn at random from a seed, with spreads."""

import random
from typing import Any

from checklist_app.operations.graph import DontKnow
from checklist_app.operations.straight_lift.choices import ShareRule
from checklist_app.operations.task import Measured, Task
from tests.operations.straight_lift.lifts import eye, hoist, pick_point, shackle, sling
from tests.operations.straight_lift.rigged import CORNERS, THREE, four, three, two_hooks

Corner = tuple[float, float]
PLACES: dict[str, Corner] = {
    "left_front": (0.0, 0.0), "right_front": (1.0, 0.0), "left_rear": (0.0, 1.0), "right_rear": (1.0, 1.0),
    "left": (0.0, 0.0), "right": (1.0, 0.0), "middle": (0.5, 1.0),
}


def some_rigged_lifts(count: int, seed: int) -> list[Task]:
    """So many lifts, the rigs in turn; every fourth is symmetric, every eleventh has an entry nobody knows."""
    draw = random.Random(seed)
    makers = (_four, _three, _hooks)
    return [makers[n % 3](draw, n // 3 % 4 == 0, n % 11 == 10) for n in range(count)]


def _common(draw: random.Random, unknown: bool, at: tuple[float, float], below_m: float) -> dict[str, Any]:
    return {
        "mass_kg": Measured(draw.uniform(300.0, 3000.0), draw.choice(("weighed", "plate", "estimate"))),
        "rigging_kg": Measured(draw.uniform(3.0, 40.0), plus_minus=1.0),
        "cg_x_m": DontKnow() if unknown else Measured(at[0], draw.choice(("drawing", "trial"))),
        "cg_y_m": Measured(at[1], "drawing"), "cg_z_m": Measured(-below_m, "trial"),
        "bottom_z_m": Measured(-below_m - draw.uniform(0.3, 0.8), "tape"),
        "top_z_m": Measured(max(0.0, -below_m) + draw.uniform(0.3, 0.6), "tape"),
        "highest_hook_m": Measured(draw.uniform(2.6, 5.5), "tape"),
        "room_height_m": Measured(draw.uniform(3.0, 6.0), "tape"),
    }


def _rows(
    draw: random.Random, labels: tuple[str, ...], wide: tuple[float, float], symmetric: bool
) -> dict[str, dict[str, Any]]:
    length = draw.uniform(0.9, 1.5) * (wide[0] * wide[0] + wide[1] * wide[1]) ** 0.5
    rated = draw.choice((1.0, 2.0, 3.0, 5.0))
    rows: dict[str, dict[str, Any]] = {}
    for number, label in enumerate(labels):
        x, y = PLACES[label]
        off = 0.0 if symmetric else 1.0
        own = length * (1.0 + off * draw.uniform(-0.03, 0.03))
        rows[label] = {
            "eye_x_m": Measured(wide[0] * x + off * draw.uniform(-0.05, 0.05), "tape"),
            "eye_y_m": Measured(wide[1] * y + off * draw.uniform(-0.05, 0.05), "tape"),
            "eye_z_m": Measured(off * draw.uniform(-0.03, 0.03), "tape"),
            "leg_length_m": Measured(own, "tape"), "sling": sling(rated, round(own - 0.06, 2), f"R-{number}"),
            "bottom_fitting": shackle(draw.choice((2.0, 3.25)), 0.06, f"S-{number}"),
            "eye": eye((10.0, 2.5), (45.0, 1.8), (60.0, 1.2), id=f"E-{number}"),
            "carrier": pick_point((30.0, 3.0), (60.0, 2.0)),
        }
    return rows


def _four(draw: random.Random, symmetric: bool, unknown: bool) -> Task:
    wide = draw.uniform(0.8, 1.6), draw.uniform(0.5, 1.0)
    lean = (0.5, 0.5) if symmetric else (draw.uniform(0.4, 0.6), draw.uniform(0.4, 0.6))
    below = draw.uniform(0.1, 0.8) if symmetric else draw.uniform(-0.3, 0.8)
    changes = _common(draw, unknown, (lean[0] * wide[0], lean[1] * wide[1]), below)
    rule = draw.choice(tuple(ShareRule))

    return four(_rows(draw, CORNERS, wide, symmetric), share_rule=rule, **changes)


def _three(draw: random.Random, symmetric: bool, unknown: bool) -> Task:
    wide = draw.uniform(0.8, 1.6), draw.uniform(0.6, 1.2)
    lean = (0.5, 0.33) if symmetric else (draw.uniform(0.4, 0.6), draw.uniform(0.25, 0.45))
    changes = _common(draw, unknown, (lean[0] * wide[0], lean[1] * wide[1]), draw.uniform(-0.2, 0.8))

    return three(_rows(draw, THREE, wide, symmetric), **changes)


def _hooks(draw: random.Random, symmetric: bool, unknown: bool) -> Task:
    apart = draw.uniform(0.8, 2.0)
    lean = 0.5 if symmetric else draw.uniform(0.35, 0.65)
    off = 0.0 if symmetric else 1.0
    rows = _rows(draw, ("left", "right"), (apart, 0.5), symmetric)
    for own in rows.values():
        own["eye_y_m"] = Measured(0.0, "tape")
    hooks = tuple(Measured(place + off * draw.uniform(-0.05, 0.05), "tape") for place in (0.0, apart))
    over = Measured(off * draw.uniform(-0.05, 0.05), "tape")

    return two_hooks(
        rows, hooks=hooks, over_m=over, each_hook={"hook_hoist": hoist(draw.choice((1.0, 3.2)))},
        **_common(draw, unknown, (lean * apart, 0.0), draw.uniform(0.2, 0.8)),
    )
