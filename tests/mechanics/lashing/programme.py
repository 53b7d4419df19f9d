"""The lashed body written out as a linear programme and given to scipy: every tension, corner and direction at once."""

from collections.abc import Iterator
from dataclasses import dataclass
from math import cos, pi
from random import Random

import numpy as np
from scipy.optimize import linprog

from checklist_app.mechanics.lashing.lashed_body import Block, LashedBody, Pull, Stands, Strand, Stretch, lashed_body
from checklist_app.mechanics.vectors import Vec
from tests.mechanics.lashing.arranged import FORWARD, LEFT, REAR, RIGHT, corners

SIDES = 48


@dataclass(frozen=True)
class Run:
    """A body and what is asked of it."""

    body: LashedBody
    way: Vec
    downward: float
    friction: float
    share: float


def some_runs(number: int, seed: int) -> Iterator[Run]:
    """Random arrangements; every third has four diagonals of which one is missing, off its middle so that it turns."""
    rng = Random(seed)
    for i in range(number):
        x, y = rng.uniform(0.3, 0.9), rng.uniform(0.25, 0.6)
        cg = Vec(rng.uniform(-0.4, 0.4) * x, rng.uniform(-0.4, 0.4) * y, rng.uniform(0.4, 1.2))
        weight = 0.981 * rng.uniform(300.0, 4500.0)
        pulls = diagonals(rng, x, y)[1:] if i % 3 == 0 else anyhow(rng, x, y)
        strands = [
            Strand(Vec(at, s * y * rng.uniform(0.5, 0.95), rng.uniform(0.8, 1.5)),
                   Vec(at, s * y * rng.uniform(1.0, 2.5), 0.0), rng.uniform(150.0, 500.0), 1250.0)
            for at in [rng.uniform(-0.8, 0.8) * x for _ in range(rng.randint(0, 3))] for s in (1.0, -1.0)
        ]
        blocks = [
            Block(Vec(-d.x * x, -d.y * y, rng.uniform(0.0, 0.6)), d, rng.uniform(200.0, 3000.0))
            for d in rng.choices((FORWARD, REAR, LEFT, RIGHT), k=rng.randint(0, 2))
        ]
        stands = Stands.AREA if i % 4 == 1 else Stands.FEET
        yield Run(
            lashed_body(weight, cg, corners(x, y), stands, pulls, strands, blocks),
            rng.choice((FORWARD, REAR, LEFT, RIGHT)),
            rng.choice((1.0, 0.7, 0.5, 0.2)), rng.choice((0.0, 0.02, 0.1, 0.3, rng.uniform(0.0, 0.6))),
            1.0 / rng.choice((1.0, 1.1, 1.25)),
        )


def diagonals(rng: Random, x: float, y: float) -> list[Pull]:
    up, most = rng.uniform(0.2, 1.6), rng.uniform(300.0, 2500.0)
    return [
        Pull(Vec(sx * 0.8 * x, sy * 0.8 * y, up), Vec(sx * 2.0 * x, sy * 2.2 * y, 0.0), most, Stretch.WEB)
        for sx in (1.0, -1.0) for sy in (1.0, -1.0)
    ]


def anyhow(rng: Random, x: float, y: float) -> list[Pull]:
    pulls = []
    for _ in range(rng.randint(0, 5)):
        sx, sy = rng.choice((1.0, -1.0)), rng.choice((1.0, -1.0))
        at = Vec(sx * x * rng.uniform(0.3, 1.0), sy * y * rng.uniform(0.3, 1.0), rng.uniform(0.1, 1.6))
        anchor = Vec(sx * (x + rng.uniform(0.1, 1.2)), sy * (y + rng.uniform(0.0, 1.0)), 0.0)
        stretch = rng.choice((Stretch.WEB, Stretch.WEB, Stretch.CHAIN))
        pulls.append(Pull(at, anchor, rng.uniform(300.0, 2500.0), stretch))
    return pulls


class Programme:
    """One body in plain arrays."""

    def __init__(self, run: Run) -> None:
        self.run, body = run, run.body
        self.way = np.array(run.way)
        self.base = np.array(body.base)
        self.at = np.array([pull.at for pull in body.pulls]).reshape(-1, 3)
        reach = np.array([pull.anchor for pull in body.pulls]).reshape(-1, 3) - self.at
        self.far = np.linalg.norm(reach, axis=1)
        self.u = reach / self.far[:, None]

    def strains_sliding(self) -> np.ndarray:
        return np.asarray(-(self.u @ self.way) / self.far)

    def strains_tipping(self) -> np.ndarray:
        corner = self.base[np.argmax(self.base @ self.way)]
        moved = np.cross(np.cross([0.0, 0.0, 1.0], self.way), self.at - corner)
        return np.asarray(-np.einsum("ij,ij->i", self.u, moved) / self.far)

    def sharings(self, strains: np.ndarray) -> list[np.ndarray]:
        """What legs may give: one kind at a time, nothing stiffer than the one that is full."""
        most = np.array([pull.most_dan for pull in self.run.body.pulls])
        kinds = np.array([pull.stretch.value for pull in self.run.body.pulls])
        taut = strains > 1e-9
        if not taut.any():
            return [most]
        found = []
        for lead in np.flatnonzero(taut):
            same = taut & (kinds == kinds[lead]) & (strains <= strains[lead] * (1.0 + 1e-9))
            found.append(np.where(taut, np.where(same, most * np.minimum(1.0, strains / strains[lead]), 0.0), most))
        return found

    def sliding(self, friction: float) -> float | None:
        """Greatest push with a cone of so much friction, its polygon inside it."""
        return self.best([self.solve(limits, friction) for limits in self.sharings(self.strains_sliding())])

    def tipping(self) -> float | None:
        """Greatest push with the foot held."""
        return self.best([self.solve(limits, None) for limits in self.sharings(self.strains_tipping())])

    @staticmethod
    def best(found: list[float | None]) -> float | None:
        return max((push for push in found if push is not None), default=None)

    def solve(self, limits: np.ndarray, friction: float | None) -> float | None:
        body, run = self.run.body, self.run
        columns = [wrench(body.cg, self.way * body.weight_dan)]
        columns += [wrench(at, u) for at, u in zip(self.at, self.u, strict=True)]
        columns += [wrench(block.at, block.towards) for block in body.blocks]
        bounds: list[tuple[float | None, float | None]] = [(0.0, None), *((0.0, most) for most in limits)]
        bounds += [(0.0, block.most_dan) for block in body.blocks]
        given = -wrench(body.cg, np.array([0.0, 0.0, -run.downward * body.weight_dan]))
        for strand in body.strands:
            reach = np.array(strand.anchor) - np.array(strand.at)
            given = given - wrench(strand.at, reach * run.share * strand.tension_dan / np.linalg.norm(reach))
        before = len(columns)
        for at in self.base:
            columns += [wrench(at, axis) for axis in np.eye(3)]
            bounds += [(None, None), (None, None), (0.0, None)]
        rows, equal, zero = np.zeros((0, len(columns))), np.array(columns).T, given
        if friction is not None:
            rows, more = self.friction_rows(before, len(columns), friction)
            equal, zero = np.vstack([equal, more]), np.concatenate([given, np.zeros(len(more))])
        cost = np.zeros(len(columns))
        cost[0] = -1.0
        result = linprog(cost, A_ub=rows, b_ub=np.zeros(len(rows)), A_eq=equal, b_eq=zero, bounds=bounds)
        return float(-result.fun) if result.status == 0 else None

    def friction_rows(self, before: int, width: int, friction: float) -> tuple[np.ndarray, np.ndarray]:
        """Inequalities of the cone at each corner; on a full face only along the way, nothing aside."""
        rows, aside = [], []
        area = self.run.body.stands is Stands.AREA
        for corner in range(len(self.base)):
            i = before + 3 * corner
            turns = [0.0, pi] if area else [2.0 * pi * k / SIDES for k in range(SIDES)]
            for turn in turns:
                row = np.zeros(width)
                unit = self.way[:2] * np.cos(turn) if area else np.array([np.cos(turn), np.sin(turn)])
                row[i:i + 2], row[i + 2] = unit, -friction * (1.0 if area else cos(pi / SIDES))
                rows.append(row)
            if area:
                row = np.zeros(width)
                row[i:i + 2] = (-self.way[1], self.way[0])
                aside.append(row)
        return np.array(rows), np.array(aside).reshape(-1, width)


def wrench(at: object, force: object) -> np.ndarray:
    f = np.asarray(force, dtype=float)
    return np.concatenate([f, np.cross(np.asarray(at, dtype=float), f)])
