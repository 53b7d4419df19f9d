"""Gear typed into an assessment: a few facts for each slot of the load path, nothing from a register."""
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.entry import Path
from checklist_app.checklists.places import label
from checklist_app.operations.fields import Field
from checklist_app.operations.gear import Gear, kind_of, make
from checklist_app.operations.kinds import RATING_COLUMNS

KIND, NONE = "kind", "not_used"
LEGS = ("1-left", "2-right")


@dataclass(frozen=True)
class TypedSlot:
    """One slot: which kinds may stand there, and which of their facts are asked."""

    path: Path
    words: str
    kinds: tuple[str, ...]
    facts_asked: tuple[str, ...]
    rated: bool = False
    none_words: str = ""

    @property
    def name(self) -> str:
        """What its form fields begin with."""
        return "/".join(self.path)

    def fields(self) -> tuple[Field, ...]:
        """The facts asked, as fields."""
        own = {field.name: field for field in kind_of(self.kinds[0]).fields}
        return (*(RATING_COLUMNS if self.rated else ()), *(own[name] for name in self.facts_asked))

    def facts(self, typed: Mapping[str, str]) -> dict[str, Any]:
        """What was typed, as facts of the kind; empty while nothing was."""
        given = {field.name: typed.get(f"{self.name}.{field.name}", "").strip() for field in self.fields()}
        given = {name: text for name, text in given.items() if text}
        rating = {name: given.pop(name) for name in ("up_to_deg", "wll_t") if self.rated and name in given}
        return given | ({"ratings": [rating]} if rating else {})

    def gear(self, typed: Mapping[str, str]) -> Gear | None:
        """The gear that was typed; none while nothing was. It comes from no register, so it has no state."""
        facts = self.facts(typed)
        kind = typed.get(f"{self.name}.{KIND}", "")
        chosen = kind if kind in self.kinds else self.kinds[0] if len(self.kinds) == 1 else ""
        return make(chosen, self.words.lower(), facts) if facts and chosen else None


LEG_SLOTS = (
    ("sling", "sling", ("round_sling", "flat_sling"), ("wll_t", "length_m"), False, ""),
    ("top_fitting", "fitting at the top", ("shackle", "hook"), ("wll_t", "reach_m"), False, "No fitting at the top"),
    ("bottom_fitting", "fitting at the bottom", ("shackle", "hook"), ("wll_t", "reach_m"), False,
     "No fitting at the bottom"),
    ("eye", "lifting eye", ("eye",), ("reach_m",), True, "No eye: the point is itself a lug"),
    ("carrier", "what carries the eye", ("pick_point",), ("evidence",), True, ""),
)
HOOK_SLOTS = (
    TypedSlot(("hoist",), "Hoist", ("hoist",), ("wll_t",)),
    TypedSlot(("load_cell",), "Load cell", ("load_cell",), ("wll_t", "reach_m"), none_words="No load cell"),
    TypedSlot(("hook_fitting",), "Fitting that gathers both legs", ("shackle", "hook"), ("wll_t", "reach_m"),
              none_words="Slings go straight on the hook"),
)


def leg_slots(row: str) -> tuple[TypedSlot, ...]:
    """The slots of one leg."""
    return tuple(TypedSlot(("leg", row, name), f"{label(row)} {words}".capitalize(), kinds, asked, rated, none)
                 for name, words, kinds, asked, rated, none in LEG_SLOTS)


def typed_slots() -> Iterator[TypedSlot]:
    """Every slot of the load path, from the hoist down."""
    yield from HOOK_SLOTS
    for row in LEGS:
        yield from leg_slots(row)
