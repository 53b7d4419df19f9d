"""What the trials of a task tell: where the centre of gravity lies, what to adopt, and what would hang it level."""
from collections.abc import Iterator
from dataclasses import dataclass
from math import ceil

from checklist_app.checklists.places import label
from checklist_app.checklists.running import Running
from checklist_app.checklists.trial_read import TRIAL, NotTold, as_read
from checklist_app.checklists.words import listed
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.finding.trials import Found, Met
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.straight_lift.trial_found import (
    LEVEL_WITHIN_DEG,
    SMALL_M,
    Hung,
    changes_together,
    found_at,
    found_between,
    height_before,
    leg_changes,
    pick_changes,
)
from checklist_app.operations.words import figure

MM_IN_M = 1000.0
TWO = 2
AXES = (("cg_x_m", "lengthwise"), ("cg_y_m", "crosswise"), ("cg_z_m", "high"))


@dataclass(frozen=True)
class Coordinate:
    """One coordinate that a trial gives, as it would be adopted."""

    name: str
    words: str
    text: str
    plus_minus: str
    shown: str


@dataclass(frozen=True)
class Finding:
    """What is told below the readings. `waits` says what is missing; `adopt` is empty where nothing new was found."""

    row: str
    number: str
    told: tuple[str, ...] = ()
    adopt: tuple[Coordinate, ...] = ()
    changes: tuple[str, ...] = ()
    waits: str = ""


def finding(now: Running) -> Finding | None:
    """What the last trial tells, with the earlier ones beside it; None before the first."""
    rows = now.folded.rows.get(TRIAL, ())
    if not rows:
        return None
    last = rows[-1]
    try:
        return _told(now, last, as_read(now, last), [row for row in rows if row != last])
    except (NotTold, OutOfRangeError) as error:
        return Finding(last, label(last), waits=str(error))


def _told(now: Running, row: str, trial: Hung, before: list[str]) -> Finding:
    height = height_before(now.evaluation)
    if height is None:
        raise NotTold("The height of the centre of gravity is not known yet.")
    one = found_at(trial, height)
    met = _met(now, trial, before)
    better = met is not None and _is_sound(now, met[1]) and met[1].plus_minus_m.z < height.off_m
    found: Found = met[1] if met is not None and better else one
    axes = AXES if found is not one else AXES[:2]
    told = (_line(one, f"trial {label(row)}", AXES[:2]) + f", if it lies {height.at_m:.2f} m high, as known before.",
            *_met_words(now, row, met, better))

    return Finding(row, label(row), told, _new(now, found, axes), tuple(_changes(now, trial, found.cg)))


def _met(now: Running, trial: Hung, before: list[str]) -> tuple[str, Met] | None:
    """With the earlier trial that hung most differently."""
    found: list[tuple[str, Met]] = []
    for row in before:
        try:
            found.append((row, found_between(as_read(now, row), trial)))
        except (NotTold, OutOfRangeError):
            continue

    return max(found, key=lambda each: each[1].angle_deg, default=None)


def _is_sound(now: Running, found: Met) -> bool:
    """Whether two lines meet, and inside the load: two legs alone cannot tell a wrong tilt by how the lines miss."""
    bottom, top = (now.evaluation[name] for name in ("bottom_z_m", "top_z_m"))
    inside = not (isinstance(bottom, float) and isinstance(top, float)) or bottom <= found.cg.z <= top

    return found.agree and inside


def _met_words(now: Running, row: str, met: tuple[str, Met] | None, better: bool) -> Iterator[str]:
    if met is None:
        return
    earlier, found = met
    both = f"trials {label(earlier)} and {label(row)}"
    if better:
        yield _line(found, both, AXES) + "."
    elif _is_sound(now, found):
        yield (f"{both.capitalize()} hung too much alike to tell the height better than it was known:"
               f" {found.cg.z:.2f} m ± {_mm(found.plus_minus_m.z)} mm.")
    elif found.agree:
        yield f"The lines of {both} meet outside the load. One of them was read or written down wrong."
    else:
        yield (f"The lines of {both} pass each other by {_mm(found.gap_m)} mm; the readings explain"
               f" {_mm(found.gap_explained_m)} mm. One of them was read or written down wrong.")


def _line(found: Found, by: str, axes: tuple[tuple[str, str], ...]) -> str:
    where = ", ".join(f"{figure(at, 'm')} m {words} (± {_mm(away)} mm)"
                      for (_, words), at, away in zip(axes, found.cg, found.plus_minus_m, strict=False))
    return f"By {by} the centre of gravity lies {where}"


def _new(now: Running, found: Found, axes: tuple[tuple[str, str], ...]) -> tuple[Coordinate, ...]:
    """What differs from the plan; empty when the plan says the same."""
    made = tuple(Coordinate(name, words, typed_m(at), typed_m(_mm(away) / MM_IN_M), f"{at:.3f}".replace("-", "−"))
                 for (name, words), at, away in zip(axes, found.cg, found.plus_minus_m, strict=False))
    stands = [now.folded.values.get((each.name,), {}) for each in made]
    same = all((value.get("text"), value.get("plus_minus")) == (each.text, each.plus_minus)
               for value, each in zip(stands, made, strict=True))

    return () if same else made


def _changes(now: Running, trial: Hung, cg: Vec) -> Iterator[str]:
    names = [label(row) for row in now.task.rows.get("leg", ())]
    if len(names) != len(trial.rig.legs_m) or len(names) == 1:
        return
    changes = [each for each in leg_changes(trial.rig, cg) if abs(each.by_m) >= SMALL_M]
    alone = changes if len(names) == TWO else [each for each in changes if each.tilt_deg <= LEVEL_WITHIN_DEG]
    for change in alone[:2]:
        left = "and it hangs level" if change.tilt_deg <= LEVEL_WITHIN_DEG else f"and {change.tilt_deg:.1f}° are left"
        yield f"Make {_leg(names[change.leg], change.by_m)}, {left}."
    together = () if alone else changes_together(trial.rig, cg)
    if any(abs(by_m) >= SMALL_M for by_m in together):
        made = [_leg(name, by_m) for name, by_m in zip(names, together, strict=True) if abs(by_m) >= SMALL_M]
        yield f"Make {listed(made)}, and it hangs level."
    points = _other_points(now, trial)
    if changes and points:
        best = pick_changes(trial.rig, cg, [at for _, at in points])
        if best and best[0].tilt_deg < min(change.tilt_deg for change in changes) + 1.0:
            first = best[0]
            yield (f"Or fasten the {names[first.leg]} leg at {points[first.pick][0]}: {first.tilt_deg:.1f}° are left.")


def _leg(name: str, by_m: float) -> str:
    return f"the {name} leg {_mm(abs(by_m))} mm {'longer' if by_m > 0.0 else 'shorter'}"


def _other_points(now: Running, trial: Hung) -> list[tuple[str, Vec]]:
    """Pick points of the load that no leg uses."""
    rows = now.load.facts.get("pick_points", ()) if now.load is not None else ()
    found = []
    for row in rows:
        try:
            at = Vec(float(row["x_m"]), float(row["y_m"]), float(row["z_m"]))
        except (KeyError, ValueError):
            continue
        used = any(abs(at.x - eye.x) + abs(at.y - eye.y) < 0.05 for eye in trial.rig.eyes)
        found += [] if used else [(str(row.get("point", "")), at)]

    return found


def typed_m(metres: float) -> str:
    """As somebody would type it: three digits behind the point alone would be asked back."""
    return f"{metres:.4f}".rstrip("0").rstrip(".") if round(metres * MM_IN_M) % 10 == 0 else f"{metres:.4f}"


def _mm(metres: float) -> int:
    return ceil(metres * MM_IN_M - 1e-6)
