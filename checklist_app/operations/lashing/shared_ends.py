"""Two lashings on one ring, or on one eye: each is within, and together they may not be."""

from collections.abc import Sequence
from typing import NamedTuple

from checklist_app.mechanics.vectors import Vec, length, less
from checklist_app.operations.check import Strength, check
from checklist_app.operations.graph import NotApplicable, across, at_nominal, each, when
from checklist_app.operations.lashing.choices import ONE_END, TWO_ENDS, Passes
from checklist_app.operations.lashing.legs import End
from checklist_app.operations.settings import ONE_RING_WITHIN

AT_ONCE = "all of them at their greatest pull"
ALONE = "no other lashing is on it"


class OnOne(NamedTuple):
    """How many ends are on one ring or eye, and what they pull together [daN]."""

    ends: int
    together: float


@when("second_end", put_on=TWO_ENDS)
@each("lashing")
def has_another_end(far_end_there: End) -> End:
    """The other end of a lashing with two."""
    return far_end_there


@when("second_end", put_on=ONE_END)
@each("lashing")
def has_one_end() -> End:
    """It has one end."""
    raise NotApplicable("it has one end")


@when("ring_dan", passes=Passes.ELSEWHERE)
@each("lashing")
def ring_as_rated(anchor_dan: float) -> float:
    """What its anchor is rated for."""
    return anchor_dan


@when("ring_dan", passes=tuple(passes for passes in Passes if passes is not Passes.ELSEWHERE))
@each("lashing")
def round_the_pallet() -> float:
    """It goes round the pallet and has no anchor."""
    raise NotApplicable("it goes round the pallet and has no anchor")


@across("lashing")
def on_one_ring(
    near_end: tuple[End, ...], second_end: tuple[End | None, ...], ring_dan: tuple[float | None, ...],
    lashing_pulled_dan: tuple[float, ...],
) -> tuple[OnOne, ...]:
    """All that pulls on the ring that each lashing is made fast to; of its two, on the one that gets more."""
    anchors = [
        [end.anchor for end in ends if end is not None] if rated is not None else []
        for ends, rated in zip(zip(near_end, second_end, strict=True), ring_dan, strict=True)
    ]
    return tuple(_most(points, anchors, lashing_pulled_dan) for points in anchors)


@across("lashing")
def on_one_eye(
    near_end: tuple[End, ...], second_end: tuple[End | None, ...], held_dan: tuple[float | None, ...],
    lashing_pulled_dan: tuple[float, ...],
) -> tuple[OnOne, ...]:
    """All that pulls on the eye of the load that each lashing is hooked to."""
    eyes = [
        [end.at for end in ends if end is not None] if rated is not None else []
        for ends, rated in zip(zip(near_end, second_end, strict=True), held_dan, strict=True)
    ]
    return tuple(_most(points, eyes, lashing_pulled_dan) for points in eyes)


@at_nominal
@across("lashing")
def ends_on_ring(
    near_end: tuple[End, ...], second_end: tuple[End | None, ...], ring_dan: tuple[float | None, ...]
) -> tuple[int, ...]:
    """How many ends are on the ring of each lashing, itself counted."""
    return tuple(each.ends for each in on_one_ring(near_end, second_end, ring_dan, (0.0,) * len(near_end)))


@at_nominal
@across("lashing")
def ends_on_eye(
    near_end: tuple[End, ...], second_end: tuple[End | None, ...], held_dan: tuple[float | None, ...]
) -> tuple[int, ...]:
    """How many ends are on the eye of each lashing, itself counted."""
    return tuple(each.ends for each in on_one_eye(near_end, second_end, held_dan, (0.0,) * len(near_end)))


@at_nominal
@each("lashing")
def ring_is_shared(ends_on_ring: int) -> bool:
    """A ring with one lashing is looked at with that lashing, and not searched through again."""
    return _shared(ends_on_ring)


@at_nominal
@each("lashing")
def eye_is_shared(ends_on_eye: int) -> bool:
    """An eye with one lashing is looked at with that lashing."""
    return _shared(ends_on_eye)


def _shared(ends: int) -> bool:
    if ends < 2:
        raise NotApplicable(ALONE)

    return True


@each("lashing")
@check("anchor, by all lashings on it", unit="daN", source="STATICS_LASHING", rule_set=AT_ONCE, smooth=True)
def anchor_strength(ring_is_shared: bool, on_one_ring: OnOne, ring_dan: float) -> Strength:
    """What all lashings on one ring pull against what it is rated for."""
    return Strength(on_one_ring.together, ring_dan)


@each("lashing")
@check("eye on the load, by all lashings on it", unit="daN", source="STATICS_LASHING", rule_set=AT_ONCE, smooth=True)
def load_eye_strength(eye_is_shared: bool, on_one_eye: OnOne, held_dan: float) -> Strength:
    """What all lashings on one eye of the load pull against what it carries."""
    return Strength(on_one_eye.together, held_dan)


def _most(points: Sequence[Vec], every: Sequence[Sequence[Vec]], pulls_dan: Sequence[float]) -> OnOne:
    """Of some points the one that is pulled most."""
    found = OnOne(0, 0.0)
    for point in points:
        here = [
            pull for others, pull in zip(every, pulls_dan, strict=True) for other in others
            if length(less(other, point)) <= ONE_RING_WITHIN.value
        ]
        together = 0.0
        for pull in here:
            together = together + pull
        if len(here) > found.ends or together > found.together:
            found = OnOne(len(here), together)
    return found
