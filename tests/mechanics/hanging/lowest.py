"""The load by minimising energy with scipy: legs as springs that only pull, the hook's place in the load the unknown.

E(H) = Σ ½ k max(0, |H − P| − L)² − W |H − G|, from soft legs to stiff ones, begun straight over the centre of gravity.
"""

import numpy as np
from scipy.optimize import minimize

from checklist_app.mechanics.hanging.body import Rigging


class Lowest:
    """A load of 1 on springs."""

    def __init__(self, what: Rigging, stiff: list[float]) -> None:
        self.picks, self.cg = np.array(what.picks), np.array(what.cg)
        self.legs, self.stiff = np.array(what.legs_m), np.array(stiff)

    def energy(self, hook: np.ndarray, softer: float = 1.0) -> float:
        stretch = np.maximum(0.0, np.linalg.norm(hook - self.picks, axis=1) - self.legs)
        return float(0.5 * softer * self.stiff @ (stretch * stretch) - np.linalg.norm(hook - self.cg))

    def slope(self, hook: np.ndarray, softer: float = 1.0) -> np.ndarray:
        ways = hook - self.picks
        far = np.linalg.norm(ways, axis=1)
        pulls = softer * self.stiff * np.maximum(0.0, far - self.legs)
        way = hook - self.cg
        return np.asarray((pulls / far) @ ways - way / np.linalg.norm(way))

    def curvature(self, hook: np.ndarray) -> np.ndarray:
        step, rows = 1e-7, []
        for axis in np.eye(3):
            rows.append((self.slope(hook + step * axis) - self.slope(hook - step * axis)) / (2.0 * step))
        return np.asarray(rows)

    def hook(self, near: np.ndarray | None = None) -> np.ndarray:
        """Where the hook comes to rest: from soft legs to stiff ones, or with stiff ones from a place nearby."""
        hook = self.cg + np.array([0.0, 0.0, 3.0 * self.legs.max()]) if near is None else near
        for softer in (1e-3, 1e-2, 1e-1, 1.0) if near is None else (1.0,):
            args = (softer,)
            hook = minimize(self.energy, hook, args, jac=self.slope, method="BFGS", options={"gtol": 1e-10}).x
        return np.asarray(hook)

    def pulls(self, hook: np.ndarray) -> np.ndarray:
        return np.asarray(self.stiff * np.maximum(0.0, np.linalg.norm(hook - self.picks, axis=1) - self.legs))

    def tilt_deg(self, hook: np.ndarray) -> float:
        way = hook - self.cg
        return float(np.degrees(np.arctan2(np.hypot(way[0], way[1]), way[2])))
