"""The form of an assessment: few questions first, the rest folded."""
from collections.abc import Mapping
from dataclasses import dataclass, replace

from checklist_app.checklists.ask import Ask, Option
from checklist_app.checklists.asking import focus_first
from checklist_app.checklists.assessing import ALL_CG, ALL_LENGTHS, LEFT, RIGHT, numbers, operation
from checklist_app.checklists.typed_gear import HOOK_SLOTS, LEGS, TypedSlot, leg_slots
from checklist_app.checklists.usual import allowed_words, step_of, usual_values
from checklist_app.checklists.usual_case import IN_LINE, LEVEL, STRAIGHT_ON, Tick
from checklist_app.operations.fields import Field, FieldType
from checklist_app.operations.graph import Entry, Obtained
from checklist_app.operations.kinds import KINDS
from checklist_app.operations.obtained import CG_HOW, LENGTH_HOW

USUAL = {"sling.wll_t": ("1", "2", "3", "5"), "sling.length_m": ("1.00", "1.50", "2.00", "3.00"),
         "hoist.wll_t": ("1", "2", "3.2", "5")}
NO_FIELD_TYPE = "text"


@dataclass(frozen=True)
class Section:
    """A part of the form. `folded` ones open when something in them is wrong."""

    words: str
    why: str
    asks: tuple[Ask, ...]
    folded: bool

    @property
    def is_open(self) -> bool:
        """Whether it shows its questions at once."""
        return not self.folded or any(ask.fault for ask in self.asks)

    @property
    def answered(self) -> int:
        """How many of its questions are answered."""
        return len([ask for ask in self.asks if ask.text or ask.given])


def sections(typed: Mapping[str, str], faults: Mapping[str, str]) -> tuple[Section, ...]:
    """Every section with what was typed still in it."""
    number = {name: _number(name, entry, typed, faults) for name, _, entry in numbers()}
    left = {slot.path[-1]: _gear(slot, typed, faults) for slot in leg_slots(LEFT)}
    right = [ask for slot in leg_slots(RIGHT) for ask in _gear(slot, typed, faults)]
    found = (
        Section("Load and eyes", "Seen from the side, the left eye counts as zero.", (
            number["mass_kg"], number["eyes_apart_m"], _tick(LEVEL, typed), number["cg_x_m"], number["cg_z_m"],
            _tick(IN_LINE, typed),
            _how(ALL_LENGTHS, "How are the lengths known?", LENGTH_HOW, typed),
            _how(ALL_CG, "How is the centre of gravity known?", CG_HOW, typed)), False),
        Section("Slings", "Both legs alike. If they differ, say so further down.",
                (*left["sling"], _hitch(LEFT, typed), _tick(STRAIGHT_ON, typed), number["rigging_kg"]), False),
        Section("More about the load", "To one side, uneven eyes, underside and top.", (
            number["cg_y_m"], number["right_eye_higher_m"], number["bottom_z_m"], number["top_z_m"]), True),
        Section("Fittings and eyes", "What is not there is answered too.",
                (*left["top_fitting"], *left["bottom_fitting"], *left["eye"], *left["carrier"]), True),
        Section("Hoist and hook", "From the hoist down to where the slings meet.",
                tuple(ask for slot in HOOK_SLOTS for ask in _gear(slot, typed, faults)), True),
        Section("Heights", "How high it goes, and what is above.",
                (number["lift_height_m"], number["highest_hook_m"], number["room_height_m"]), True),
        Section("The right leg differs", "What stays open here is as on the left leg.",
                (*right, _hitch(RIGHT, typed), *(number[f"leg/{row}/leg_length_m"] for row in LEGS)), True),
    )
    return _one_focus(found)


def _number(name: str, entry: Entry, typed: Mapping[str, str], faults: Mapping[str, str]) -> Ask:
    own_way = entry.name == "mass_kg"
    side = "Left " if LEFT in name else "Right " if RIGHT in name else ""
    words = f"{side}{entry.words}"
    allowed = allowed_words(entry.usual, entry.low, entry.high, entry.unit)
    return Ask(
        name=name, kind="number", words=words[:1].upper() + words[1:], unit=entry.unit, text=typed.get(name, ""),
        fault=faults.get(name, ""), usual=usual_values(entry.usual, entry.unit) if entry.usual else (),
        allowed=f"{allowed} {entry.hint}".strip(), step=step_of(entry.unit), entry=_drawn(name),
        ways=tuple(Option(way.name, way.words) for way in entry.obtained) if own_way else (),
        how=typed.get(f"{name}.how", ""), plus_minus=typed.get(f"{name}.plus_minus", ""),
        may_not_know=entry.name in operation().table.worst_cases,
        given="dont_know" if typed.get(f"{name}.dont_know") else "",
    )


def _tick(tick: Tick, typed: Mapping[str, str]) -> Ask:
    return Ask(name=tick.name, kind="plain_tick", words=tick.words, text=typed.get(tick.name, ""))


def _drawn(name: str) -> str:
    """The quantity as the drawing names it."""
    if not name.startswith("leg/"):
        return name
    return f"{name.rpartition('/')[2]}[{'left' if LEFT in name else 'right'}]"


def _gear(slot: TypedSlot, typed: Mapping[str, str], faults: Mapping[str, str]) -> tuple[Ask, ...]:
    """The questions of one slot: which kind, its facts, or that there is none."""
    asks = [_fact(slot, field, typed, faults) for field in slot.fields()]
    if len(slot.kinds) > 1:
        name = f"{slot.name}.kind"
        asks.insert(0, Ask(name=name, kind="choice", words=_called(slot), text=typed.get(name, ""),
                           options=tuple(Option(kind, KINDS[kind].words.capitalize()) for kind in slot.kinds)))
    if slot.none_words:
        name = f"{slot.name}.not_used"
        asks.insert(0, Ask(name=name, kind="plain_tick", words=slot.none_words, text=typed.get(name, "")))
    return tuple(asks)


def _called(slot: TypedSlot) -> str:
    """Without its side while both legs are answered in one."""
    return slot.words.removeprefix("Left ").capitalize() if LEFT in slot.path else slot.words


def _fact(slot: TypedSlot, field: Field, typed: Mapping[str, str], faults: Mapping[str, str]) -> Ask:
    name = f"{slot.name}.{field.name}"
    usual = USUAL.get(f"{slot.path[-1]}.{field.name}", ())
    return Ask(name=name, kind="number" if field.type is FieldType.NUMBER else NO_FIELD_TYPE,
               words=f"{_called(slot)}: {field.words}", unit=field.unit, text=typed.get(name, ""),
               fault=faults.get(name, ""), usual=usual, step=step_of(field.unit),
               allowed=allowed_words(field.usual, field.low, field.high, field.unit))


def _hitch(row: str, typed: Mapping[str, str]) -> Ask:
    name = f"leg/{row}/hitch"
    kind = operation().table.entries["hitch"].kind
    return Ask(name=name, kind="choice", words="How is the sling hitched?" if row == LEFT else "Right hitch",
               text=typed.get(name, ""), options=tuple(Option(each.value, each.value.capitalize()) for each in kind))


def _how(name: str, words: str, ways: tuple[Obtained, ...], typed: Mapping[str, str]) -> Ask:
    options = tuple(Option(way.name, way.words[:1].upper() + way.words[1:]) for way in ways)
    return Ask(name=name, kind="select", words=words, text=typed.get(name, ""), options=options)


def _one_focus(found: tuple[Section, ...]) -> tuple[Section, ...]:
    """The first fault of the whole form gets the focus."""
    flat = iter(focus_first(tuple(ask for section in found for ask in section.asks)))
    return tuple(replace(section, asks=tuple(next(flat) for _ in section.asks)) for section in found)
