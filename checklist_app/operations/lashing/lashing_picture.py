"""A drawing of what is known so far of a lashed load; size is where it begins, all else may be missing."""

from collections.abc import Mapping, Sequence
from typing import Any

from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations import words
from checklist_app.operations.check import Check, Verdict, governs, highest_utilisation
from checklist_app.operations.gear import Gear, Pallet, Vehicle
from checklist_app.operations.graph import Range, Waits
from checklist_app.operations.lashing.choices import BlockedBy, Blocks, Lies
from checklist_app.operations.lashing.lashed import Blocked
from checklist_app.operations.lashing.lashing_bars import bars
from checklist_app.operations.lashing.legs import End
from checklist_app.operations.lashing.on_pallet import pallet_across_m, pallet_along_m
from checklist_app.operations.lashing.shown import Deck, Shown, Stop, Tied

OF_A_LASHING = ("lashing_strength", "anchor_strength", "load_eye_strength")
SHORT = 3


def body(
    size: Sequence[float | None], base: Sequence[float | None], soft_m: float | None, stands: Stands | None,
    pallet: Pallet | None, lies: Lies | None,
) -> Shown:
    """Load, feet and pallet.

    Raises:
        Waits: While the size of the load is not known.
    """
    told = [each for each in size if each is not None]
    if len(told) < 3:
        raise Waits("length, width and height of the load")
    stood = [each for each in base if each is not None]
    feet = (stood[0], stood[1]) if len(stood) == 2 else None
    load = Vec(told[0], told[1], told[2])

    return Shown(load, feet, soft_m or 0.0, stands is not Stands.AREA, _pallet(pallet, feet or (load.x, load.y), lies))


def held(
    load: Shown, cg: Sequence[float | None], tied: tuple[Tied, ...], stops: tuple[Stop, ...],
    checks: tuple[Check, ...], spreads: Mapping[str, Range],
) -> Shown:
    """With centre of gravity, lashings, blocks, and what is withstood."""
    centre = [each for each in cg if each is not None]
    if len(centre) < 3:
        return load._replace(tied=tied, stops=stops, bars=bars(checks))
    at = Vec(centre[0], centre[1], centre[2])

    return load._replace(cg=at, cg_range=_may_lie(at, spreads), tied=tied, stops=stops, bars=bars(checks))


def lashings(
    labels: Sequence[str], kinds: Sequence[Kind | None], near: Sequence[End | None], far: Sequence[End | None],
    pulls_dan: Sequence[float | None], checks: tuple[Check, ...],
) -> tuple[Tied, ...]:
    """Those of which one end at least is known. They are called by their labels where all are short, else counted."""
    short = all(len(label) <= SHORT for label in labels)
    deciding, found = governs(checks), []
    for place, (label, kind, *ends, pull_dan) in enumerate(zip(labels, kinds, near, far, pulls_dan, strict=True)):
        known = tuple((end.at, end.anchor) for end in ends if end is not None)
        if known:
            check = _used_most(checks, label)
            decides = deciding is not None and deciding.quantity in OF_A_LASHING and deciding.row == label
            number = label if short else str(place + 1)
            found.append(Tied(label, known, kind, pull_dan, *_use(check), decides, number,
                              check.name if check is not None else f"{OF_A_LASHING[0]}[{label}]",
                              _is_over(checks, f"{OF_A_LASHING[0]}[{label}]")))

    return tuple(found)


def stopped(
    blocked: Sequence[Blocked | None], by: Sequence[BlockedBy | None], ways: Sequence[Blocks | None]
) -> tuple[Stop, ...]:
    """Those blocks of which everything is known."""
    return tuple(
        Stop(what.value.partition(",")[0], each.block.at, Direction(way.value), each.block.most_dan)
        for each, what, way in zip(blocked, by, ways, strict=True)
        if each is not None and what is not None and way is not None
    )


def deck(vehicle: Vehicle | None, behind_m: float | None) -> Deck | None:
    """Where headboard and sides of the deck are; nothing while somebody has to say."""
    size = _facts(vehicle, "deck_length_m", "deck_width_m")
    if size is None or behind_m is None:
        return None

    return Deck(behind_m, *size)


def _pallet(pallet: Pallet | None, stands_on: tuple[float, float], lies: Lies | None) -> Vec | None:
    size = _facts(pallet, "length_m", "width_m", "height_m")
    if pallet is None or size is None:
        return None
    along_m = pallet_along_m(pallet, *stands_on, lies or Lies.EITHER)

    return Vec(along_m, pallet_across_m(pallet, along_m), size[2])


def _facts(gear: Gear | None, *names: str) -> tuple[Any, ...] | None:
    """Facts of a piece of gear, or nothing where one is missing."""
    found = tuple(gear.facts.get(name) for name in names) if gear is not None else (None,)
    return None if any(each is None for each in found) else found


def _used_most(checks: tuple[Check, ...], label: str) -> Check | None:
    """The check of the part of a lashing that is used most: the worst verdict, then the highest use."""
    own = [each for each in checks if each.quantity in OF_A_LASHING and each.row == label]
    return max(own, key=lambda each: (each.verdict.rank, highest_utilisation(each)), default=None)


def _is_over(checks: tuple[Check, ...], name: str) -> bool:
    """Whether it is over as entered: then its figures are rounded up."""
    return any(each.name == name and each.nominal_verdict is Verdict.OVER for each in checks)


def _use(check: Check | None) -> tuple[float, str]:
    """The highest use of its rating, and the same in words."""
    share = highest_utilisation(check) if check is not None else 0.0
    if check is None or not share > 0.0:
        return 0.0, ""

    return share, f"{words.percent(share, over=check.raw_verdict is Verdict.OVER)} %"


def _may_lie(cg: Vec, spreads: Mapping[str, Range]) -> tuple[Vec, Vec] | None:
    """The corners of where the centre of gravity may lie; nothing where it is known to a hair."""
    known = [spreads.get(name, Range(at, at, at)) for name, at in zip(("cg_x_m", "cg_y_m", "cg_z_m"), cg, strict=True)]
    low, high = (Vec(*(getattr(each, end) for each in known)) for end in ("low", "high"))

    return (low, high) if low != high else None
