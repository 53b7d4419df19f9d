"""Gear typed into an assessment: a few facts for each slot of the load path, nothing from a register."""
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists import begun, values
from checklist_app.checklists.entry import Path
from checklist_app.checklists.made import Made
from checklist_app.checklists.places import label
from checklist_app.checklists.typed_rig import hook_rows, leg_rows
from checklist_app.operations.fields import Field
from checklist_app.operations.gear import Gear, kind_of, make
from checklist_app.operations.kinds import KINDS, RATING_COLUMNS
from checklist_app.operations.straight_lift.choices import Rig

KIND, NONE = "kind", "not_used"
MARKED_HERE = {"marked": "no", "origin": "bought"}
OF_KIND = {
    "flat_sling": ("fibre", "thickness_mm"), "round_sling": ("fibre", "thickness_mm"),
    "chain_sling": ("grade", "size_mm"), "wire_rope_sling": ("diameter_mm", "core", "termination"),
    "shackle": ("form", "pin"),
}
"""What else is asked of a kind, once it was said."""


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

    def kind(self, typed: Mapping[str, str]) -> str:
        """The kind that was said, or the only one there is; empty while it is open."""
        said = typed.get(f"{self.name}.{KIND}", "")
        return said if said in self.kinds else self.kinds[0] if len(self.kinds) == 1 else ""

    def fields(self, typed: Mapping[str, str] | None = None) -> tuple[Field, ...]:
        """The facts asked, as fields."""
        kind = self.kind(typed or {})
        own = {field.name: field for field in kind_of(kind or self.kinds[0]).fields}
        asked = (*self.facts_asked, *OF_KIND.get(kind, ()))
        return (*(RATING_COLUMNS if self.rated else ()), *(own[name] for name in asked if name in own))

    def facts(self, typed: Mapping[str, str]) -> dict[str, Any]:
        """What was typed, as facts of the kind; empty while nothing was."""
        given = {field.name: typed.get(f"{self.name}.{field.name}", "").strip() for field in self.fields(typed)}
        given = {name: text for name, text in given.items() if text}
        rating = {name: given.pop(name) for name in ("up_to_deg", "wll_t") if self.rated and name in given}
        return given | ({"ratings": [rating]} if rating else {})

    def gear(self, typed: Mapping[str, str]) -> Gear | None:
        """The gear that was typed; none while nothing was. It comes from no register, so it has no state."""
        facts, kind = self.facts(typed), self.kind(typed)
        return make(kind, self.words.lower(), facts) if facts and kind else None


def add_typed(
    made: Made, task: str, slot: TypedSlot, path: Path, typed: Mapping[str, str], day: str, also: Sequence[Path] = ()
) -> None:
    """Gear that was only typed in: incoming, not marked, so that nobody signs before somebody has seen it.

    `also`: where else the same item hangs, as the other part of a sling that runs over the hook.
    """
    facts, kind = slot.facts(typed), slot.kind(typed)
    if not facts or kind not in KINDS:
        return
    name, register = f"new-{made.next_name}", KINDS[kind].register
    version = begun.add_item(made, register, name, KINDS[kind].schema, {**facts, **MARKED_HERE}, day)
    for each in (path, *also):
        made.say(("task", task), each, values.pick(f"{register}/{name}", version))


SLINGS = ("round_sling", "flat_sling", "chain_sling", "wire_rope_sling")
LEG_SLOTS = (
    ("sling", "sling", SLINGS, ("wll_t", "length_m"), False, ""),
    ("top_fitting", "fitting at the top", ("shackle", "hook"), ("wll_t", "reach_m"), False, "No fitting at the top"),
    ("bottom_fitting", "fitting at the bottom", ("shackle", "hook"), ("wll_t", "reach_m"), False,
     "No fitting at the bottom"),
    ("eye", "lifting eye", ("eye",), ("form", "reach_m"), True, "No eye: the point is itself a lug"),
    ("carrier", "what carries the eye", ("pick_point",), ("evidence",), True, ""),
)
HOOK_SLOTS = (
    TypedSlot(("hoist",), "Hoist", ("hoist",), ("wll_t",)),
    TypedSlot(("load_cell",), "Load cell", ("load_cell",), ("wll_t", "reach_m"), none_words="No load cell"),
    TypedSlot(("hook_fitting",), "Fitting on the hook", ("shackle", "hook", "master_link"), ("wll_t", "reach_m"),
              none_words="Slings go straight on the hook"),
)


def leg_slots(row: str) -> tuple[TypedSlot, ...]:
    """The slots of one leg."""
    return tuple(TypedSlot(("leg", row, name), f"{label(row)} {words}".capitalize(), kinds, asked, rated, none)
                 for name, words, kinds, asked, rated, none in LEG_SLOTS)


def hook_slots(rig: Rig) -> tuple[TypedSlot, ...]:
    """The slots of the one hook, or of each of two."""
    return tuple(slot for row in hook_rows(rig) for slot in (
        TypedSlot(("hook", row, "hook_hoist"), f"{label(row)} hoist".capitalize(), ("hoist",), ("wll_t",)),
        TypedSlot(("hook", row, "hook_load_cell"), f"{label(row)} load cell".capitalize(), ("load_cell",),
                  ("wll_t", "reach_m"), none_words=f"No load cell, {label(row)}"),
    )) or HOOK_SLOTS


def typed_slots(rig: Rig) -> Iterator[TypedSlot]:
    """Every slot of the load path, from the hoist down."""
    yield from hook_slots(rig)
    for row in leg_rows(rig):
        yield from leg_slots(row)
