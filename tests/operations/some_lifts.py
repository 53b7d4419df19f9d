"""Lifts drawn at random from a seed: level and crooked, with spreads, some with what nobody knows."""

import random
from typing import Any

from checklist_app.operations.graph import DontKnow
from checklist_app.operations.task import Measured, Task
from tests.operations.straight_lift.lifts import eye, lift, pick_point, shackle, sling


def some_lifts(count: int, seed: int) -> list[Task]:
    """So many lifts; every third is symmetric, every seventh has an entry nobody knows."""
    draw = random.Random(seed)
    return [_lift(draw, symmetric=n % 3 == 0, unknown=n % 7 == 6) for n in range(count)]


def _lift(draw: random.Random, symmetric: bool, unknown: bool) -> Task:
    apart = draw.uniform(0.6, 1.6)
    lengths = [apart * draw.uniform(0.75, 1.4)] * 2
    lean, higher = 0.5, 0.0
    if not symmetric:
        lengths = [length * draw.uniform(0.9, 1.1) for length in lengths]
        lean, higher = draw.uniform(0.35, 0.65), draw.uniform(-0.1, 0.1) * apart
    below = draw.uniform(0.3, 0.9)
    changes: dict[str, Any] = {
        "mass_kg": Measured(draw.uniform(300.0, 3000.0), draw.choice(("weighed", "plate", "estimate"))),
        "rigging_kg": Measured(draw.uniform(3.0, 40.0), plus_minus=1.0),
        "eyes_apart_m": Measured(apart, "tape"),
        "right_eye_higher_m": Measured(higher, "tape"),
        "cg_x_m": DontKnow() if unknown else Measured(lean * apart, draw.choice(("drawing", "trial"))),
        "cg_y_m": Measured(0.0 if symmetric else draw.uniform(-0.03, 0.03), "drawing"),
        "cg_z_m": Measured(-below, "trial"),
        "bottom_z_m": Measured(-below - draw.uniform(0.3, 0.8), "tape"),
        "top_z_m": Measured(draw.uniform(0.05, 0.4), "tape"),
        "highest_hook_m": Measured(draw.uniform(2.6, 4.5), "tape"),
        "room_height_m": Measured(draw.uniform(3.0, 5.0), "tape"),
    }
    legs = [_leg(draw, length, number) for number, length in enumerate(lengths)]
    return lift(legs[0], legs[1], **changes)


def _leg(draw: random.Random, length: float, number: int) -> dict[str, Any]:
    rated = draw.choice((1.0, 2.0, 3.0, 5.0))
    return {
        "leg_length_m": Measured(length, "tape"),
        "sling": sling(rated, round(length - 0.06, 2), f"R-{number}"),
        "bottom_fitting": shackle(draw.choice((2.0, 3.25)), 0.06, f"S-{number}"),
        "eye": eye((10.0, 2.5), (45.0, 1.8), (60.0, 1.2), id=f"E-{number}"),
        "carrier": pick_point((30.0, 3.0), (60.0, 2.0)),
    }
