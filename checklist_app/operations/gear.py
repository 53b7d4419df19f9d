"""One frozen object per thing in the load path, made from the facts of a version; a fact nobody entered waits."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any, ClassVar, NamedTuple, NoReturn, Self, get_args

from checklist_app.operations.fields import Field, FieldType, read_all
from checklist_app.operations.graph import Missing, Waits
from checklist_app.operations.kind import Kind
from checklist_app.operations.kinds import KINDS, RATING_COLUMNS, ratings_go_down


class Rating(NamedTuple):
    """One step of a plate: up to this angle of the pull from the axis, this WLL."""

    up_to_deg: float
    wll_t: float


@dataclass(frozen=True)
class GearState:
    """Where an item of the register stands on the day: custody, who took it out of use, when it is due, what it lacks.

    `quarantined`: one sentence per quarantine that nobody released. `lacks`: proofs an own-built item has not got.
    """

    custody: str = "in service"
    quarantined: tuple[str, ...] = ()
    due: str = ""
    marked: bool = False
    lacks: tuple[str, ...] = ()
    origin: str = "bought"


class Gear:
    """A thing with its facts as attributes (`sling.wll_t`); `state` is None for what was only typed in."""

    kinds: ClassVar[tuple[str, ...]] = ()
    id: str
    kind: str
    state: GearState | None
    faults: Mapping[str, str]
    facts: Mapping[str, Any]
    wll_t: float
    mass_kg: float

    def __init__(self, id: str, kind: str, facts: Mapping[str, Any], state: GearState | None = None,
                 faults: Mapping[str, str] | None = None) -> None:
        own = {"id": id, "kind": kind, "facts": dict(facts), "state": state, "faults": dict(faults or {})}
        self.__dict__.update(own | {name: value for name, value in facts.items() if name not in own})

    def __getattr__(self, fact: str) -> Any:
        """Called only for what was not entered, or cannot be read."""
        field = next((each for each in kind_of(self.kind).fields if each.name == fact), None)
        if field is None:
            raise AttributeError(f"{self.kind} has no {fact}")

        raise Waits(Missing(f"{field.words} of {self.id}", f"{self.id}.{fact}"))

    def __setattr__(self, fact: str, value: Any) -> NoReturn:
        raise AttributeError(f"{self.id} is frozen: a changed fact is a new version")

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Gear) and self._whole() == other._whole()

    def __hash__(self) -> int:
        return hash((self.id, self.kind))

    def __repr__(self) -> str:
        return f"{type(self).__name__}({self.id})"

    def _whole(self) -> tuple[Any, ...]:
        return self.id, self.kind, self.facts, self.state, self.faults

    def retold(self, tell: Callable[[str, float], float]) -> Self:
        """The same thing with its numbers told in words, for the working."""
        words = {each.name: each.words for each in kind_of(self.kind).fields}
        facts: dict[str, Any] = {}
        for name, value in self.facts.items():
            facts[name] = tell(words[name], value) if isinstance(value, float) else value
        for name, turned in (("ratings", ""), ("ratings_across", ", across")):
            if name in facts:
                facts[name] = tuple(
                    Rating(tell(f"end of step {up_to:g}°{turned}", up_to), tell(f"WLL up to {up_to:g}°{turned}", wll))
                    for up_to, wll in facts[name]
                )
        return type(self)(self.id, self.kind, facts, self.state, self.faults)


class Sling(Gear):
    """A sling; `wll_t` is of one leg, used straight."""

    kinds = ("flat_sling", "round_sling", "chain_sling", "wire_rope_sling")
    length_m: float
    wll_to_45_t: float
    wll_to_60_t: float

    @property
    def legs(self) -> int:
        """How many legs it has; one where nobody says."""
        return int(self.facts.get("legs", 1))


class Shackle(Gear):
    """A shackle."""

    kinds = ("shackle",)
    reach_m: float


class Hook(Gear):
    """A hook that is no part of the hoist."""

    kinds = ("hook",)
    reach_m: float


class MasterLink(Gear):
    """A ring that gathers legs."""

    kinds = ("master_link",)
    reach_m: float


class Eye(Gear):
    """A lifting eye: ratings by the steps of its plate, never a line between them."""

    kinds = ("eye",)
    reach_m: float
    ratings: tuple[Rating, ...]


class Hoist(Gear):
    """A hoist on its runway or in its place."""

    kinds = ("hoist",)
    highest_hook_m: float
    hook_mass_kg: float


class LoadCell(Gear):
    """A load cell in the load path."""

    kinds = ("load_cell",)
    reach_m: float
    calibrated_until: str


class OwnBeam(Gear):
    """A beam the workshop built."""

    kinds = ("own_beam",)
    length_m: float


class Lashing(Gear):
    """A lashing by its label: LC in straight pull and STF; one that lifts is a sling."""

    kinds = ("web_lashing", "chain_lashing", "rope_lashing")
    lc_dan: float
    stf_dan: float


class Pallet(Gear):
    """Pallet, skid or crate base."""

    kinds = ("pallet",)
    length_m: float
    width_m: float
    height_m: float


class Vehicle(Gear):
    """Lorry, trailer, van or container."""

    kinds = ("vehicle",)
    deck_length_m: float
    deck_width_m: float


class Mat(Gear):
    """Anti-slip mat."""

    kinds = ("mat",)


class PickPoint(Gear):
    """What an eye stands on, as the load's register tells it; no ratings means that nobody rated it."""

    kinds = ("pick_point",)
    x_m: float
    y_m: float
    z_m: float
    evidence: str

    @property
    def ratings(self) -> tuple[Rating, ...]:
        """Its steps; a rating without evidence waits for it."""
        rated: tuple[Rating, ...] = self.facts.get("ratings", ())
        if rated and not self.facts.get("evidence"):
            raise Waits(Missing(f"evidence for the rating of {self.id}", f"{self.id}.evidence"))

        return rated


PICK_POINT = Kind("pick_point", "pick point", "pick points", "load", (
    Field("x_m", "lengthwise", FieldType.NUMBER, "m", -20.0, 20.0),
    Field("y_m", "crosswise", FieldType.NUMBER, "m", -10.0, 10.0),
    Field("z_m", "height", FieldType.NUMBER, "m", -20.0, 20.0),
    Field("evidence", "evidence for its rating"),
    Field("ratings", "ratings by the angle of the pull", FieldType.ROWS, columns=RATING_COLUMNS),
), rules=(ratings_go_down,))
CLASSES: Mapping[str, type[Gear]] = {
    kind: each
    for each in (
        Sling, Shackle, Hook, MasterLink, Eye, Hoist, LoadCell, OwnBeam, Lashing, Pallet, Vehicle, Mat, PickPoint,
    )
    for kind in each.kinds
}


def kind_of(name: str) -> Kind:
    """The kind of a piece of gear by name."""
    return PICK_POINT if name == PICK_POINT.name else KINDS[name]


def kinds_of(kind: Any) -> tuple[str, ...]:
    """The names of the kinds that an entry of gear takes (`Shackle | Hook`)."""
    found: list[str] = []
    for each in get_args(kind) or (kind,):
        found.extend(each.kinds)
    return tuple(found)


def is_gear(kind: Any) -> bool:
    """Whether an entry asks for gear."""
    return all(isinstance(each, type) and issubclass(each, Gear) for each in get_args(kind) or (kind,))


def make(kind: str, id: str, facts: Mapping[str, Any], state: GearState | None = None) -> Gear:
    """The object of one item; facts that cannot be read stand in its `faults` and wait like missing ones.

    Args:
        kind: name of the kind.
        id: what the item is known by.
        facts: by field, as typed or as numbers.
        state: where it stands; None for what was only typed in.
    """
    declared = kind_of(kind)
    values, faults = read_all(declared.fields, facts)
    for rule in declared.rules:
        for name, words in rule(values).items():
            faults.setdefault(name, words)
            values.pop(name, None)
    for name in ("ratings", "ratings_across"):
        if name in values:
            values[name] = tuple(Rating(row["up_to_deg"], row["wll_t"]) for row in values[name])

    return CLASSES[kind](id, kind, values, state, faults)
