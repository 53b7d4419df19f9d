"""The form of an assessment: how it is slung, then few questions, the rest folded."""
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace

from checklist_app.checklists.ask import Ask, Block, blocks
from checklist_app.checklists.asking import focus_first
from checklist_app.checklists.assess_asks import Asks
from checklist_app.checklists.assess_way import WHY, WORDS, way_asks
from checklist_app.checklists.assessing import ALL_ANGLES, ALL_CG, ALL_LENGTHS
from checklist_app.checklists.canonical import canonical, digest
from checklist_app.checklists.places import label
from checklist_app.checklists.typed_gear import hook_slots, leg_slots
from checklist_app.checklists.typed_rig import EYES, WITH_LEGS_GIVEN, hook_rows, leg_rows, legs_given_of, rig_of
from checklist_app.checklists.usual_case import GATHERED, SHED, in_line, level, straight_on
from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.operations.obtained import ANGLE_HOW, CG_HOW, LENGTH_HOW
from checklist_app.operations.straight_lift.choices import EyesGiven, LegsGiven, Rig

SHAPE_SIGNS = 12
SHACKLE = "shackle"
FROM_WHERE = {
    EyesGiven.DISTANCE: "Seen from the side, the left eye counts as zero.",
    EyesGiven.RECTANGLE: "The left front eye counts as zero: lengthwise to the right, crosswise to the rear.",
    EyesGiven.COORDINATES: "The left eye counts as zero: lengthwise to the right, crosswise to the rear.",
}


@dataclass(frozen=True)
class Section:
    """A part of the form. `folded` ones open when something in them is wrong."""

    words: str
    why: str
    asks: tuple[Ask, ...]
    folded: bool

    @property
    def blocks(self) -> tuple[Block, ...]:
        """Its questions as they stand on the page, those of one line together."""
        return blocks(self.asks)

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
    rig, asks = rig_of(typed), Asks(typed, faults)
    first, *others = leg_rows(rig)
    found = (
        Section("How it is slung", "", (asks.rig(rig),), False),
        Section("Load and eyes", "The eye counts as zero." if rig is Rig.ONE_LEG else FROM_WHERE[EYES[rig]],
                (*_load(asks, rig), asks.how(ALL_LENGTHS, "How are the lengths known?", LENGTH_HOW),
                 asks.how(ALL_CG, "How is the centre of gravity known?", CG_HOW)), False),
        *(Section("Hooks", "Measured as the eyes are.", _hooks_at(asks, rig), False) for _ in hook_rows(rig)[:1]),
        Section("Slings", _slings_why(rig),
                _slings(asks, rig, first, typed), False),
        Section("More about the load", "To one side, uneven eyes, underside and top.", _more(asks, rig), True),
        Section("Fittings and eyes", "What is not there is answered too.", _fittings(asks, first, typed), True),
        Section("Hoist and hook", "From the hoist down to where the slings meet.", _hook(asks, rig, typed), True),
        Section("Heights", "How high it goes, and what is above.",
                asks.numbers("lift_height_m", "highest_hook_m", "room_height_m"), True),
        Section(WORDS, WHY, way_asks(asks, typed), True),
        Section("Rules and surroundings", "What rates the slings, and what they have to bear.",
                (asks.choice("rule_set"), asks.number("sling_temperature_c"), asks.choice("chemicals")), True),
        *(Section(f"The {label(row)} {'end' if rig is Rig.RUNNING else 'leg'} differs",
                  "What stays open here is as on the first.",
                  _other_leg(asks, row, typed), True) for row in others),
    )
    return one_focus(found)


def _slings_why(rig: Rig) -> str:
    if rig is Rig.RUNNING:
        return "One sling, from the one eye over the hook to the other."
    return "" if rig is Rig.ONE_LEG else "All legs alike. If they differ, say so further down."


def shape(found: Iterable[Section]) -> str:
    """A short name of which questions are asked: another one, and the page's questions are shown anew."""
    return digest(canonical([ask.name for section in found for ask in section.asks]))[:SHAPE_SIGNS]


def _load(asks: Asks, rig: Rig) -> tuple[Ask, ...]:
    numbers, given = asks.number, EYES[rig]
    if given is EyesGiven.RECTANGLE:
        return (*asks.numbers("mass_kg", "eyes_apart_m", "eyes_across_m", "cg_x_m", "cg_y_m", "cg_z_m"),)
    if rig is Rig.ONE_LEG:
        return (*asks.numbers("mass_kg", "cg_x_m", "cg_z_m"), asks.tick(in_line(rig)))
    if given is EyesGiven.COORDINATES:
        eyes = (numbers(f"leg/{row}/{name}") for row in leg_rows(rig)[1:] for name in ("eye_x_m", "eye_y_m"))
        return (numbers("mass_kg"), *eyes, asks.tick(level(rig)), *asks.numbers("cg_x_m", "cg_y_m", "cg_z_m"))
    return (*asks.numbers("mass_kg", "eyes_apart_m"), asks.tick(level(rig)), *asks.numbers("cg_x_m", "cg_z_m"),
            asks.tick(in_line(rig)))


def _hooks_at(asks: Asks, rig: Rig) -> tuple[Ask, ...]:
    left, right = hook_rows(rig)
    return asks.numbers(f"hook/{left}/hook_at_x_m", f"hook/{right}/hook_at_x_m", f"hook/{right}/hook_over_m")


def _slings(asks: Asks, rig: Rig, first: str, typed: Mapping[str, str]) -> tuple[Ask, ...]:
    sling = next(slot for slot in leg_slots(first) if slot.path[-1] == "sling")
    way, legs = legs_given_of(typed), []
    if rig in WITH_LEGS_GIVEN:
        legs.append(replace(asks.choice("legs_given"), text=way.value))
    if way is LegsGiven.HOOK_HEIGHT:
        legs.append(asks.number("hook_over_eyes_m"))
    if way is LegsGiven.ANGLES:
        legs += [asks.number(f"leg/{first}/leg_angle_read_deg"), asks.how(ALL_ANGLES, "How are the angles known?",
                                                                         ANGLE_HOW)]
    if rig is Rig.RUNNING:
        legs += [asks.number("running_m", "Added up from its tag and the fittings"), asks.number("over_hook_mm")]
    share = (asks.choice("share_rule"),) if rig is Rig.FOUR_LEGS else ()
    gathers = next((slot for slot in hook_slots(rig) if slot.path[-1] == "hook_fitting"), None)
    link = asks.gear(gathers) if gathers is not None and rig in GATHERED else ()
    return (*asks.gear(sling), *link, *_hitch(asks, first, typed), *legs, *share, asks.tick(straight_on(rig)),
            asks.tick(SHED), asks.number("rigging_kg"))


def _hitch(asks: Asks, row: str, typed: Mapping[str, str]) -> tuple[Ask, ...]:
    """The hitch, and the questions that belong to it."""
    name = f"leg/{row}/hitch"
    hitch = next((each for each in Hitch if each.value == typed.get(name, "")), None)
    asked = [asks.choice(name)]
    if hitch is None or hitch is Hitch.STRAIGHT:
        return tuple(asked)
    if hitch.is_choked:
        asked += [asks.number(f"leg/{row}/choke_angle_deg"), asks.choice(f"leg/{row}/stop")]
    if hitch.is_basket:
        asked.append(asks.number(f"leg/{row}/part_angle_deg"))
    if hitch is not Hitch.DOUBLED:
        asked.append(asks.choice(f"leg/{row}/face"))
    return (*asked, asks.number(f"leg/{row}/bend_mm", "It bends round nothing"),
            asks.number(f"leg/{row}/edge_mm", "It touches no edge"), asks.choice(f"leg/{row}/edge_protected"))


def _more(asks: Asks, rig: Rig) -> tuple[Ask, ...]:
    """What a tick answers in the usual case, and the body of the load."""
    eyes: tuple[str, ...] = ()
    if EYES[rig] is EyesGiven.DISTANCE:
        eyes = ("cg_y_m", "right_eye_higher_m")
    elif rig is Rig.ONE_LEG:
        eyes = ("cg_y_m",)
    elif EYES[rig] is EyesGiven.COORDINATES:
        eyes = tuple(f"leg/{row}/eye_z_m" for row in leg_rows(rig)[1:])
    return asks.numbers(*eyes, "bottom_z_m", "top_z_m")


def _fittings(asks: Asks, row: str, typed: Mapping[str, str]) -> tuple[Ask, ...]:
    slots = {slot.path[-1]: asks.gear(slot) for slot in leg_slots(row)}
    has_shackle = any(slot.kind(typed) == SHACKLE for slot in leg_slots(row))
    lies = [asks.choice(f"leg/{row}/{name}") for name in ("shackle_pull", "shackle_pin") if has_shackle]
    turns = [asks.choice(f"leg/{row}/turning")] if rig_of(typed) is Rig.ONE_LEG else []
    return (*slots["top_fitting"], *slots["bottom_fitting"], *lies, *slots["eye"], *turns,
            asks.choice(f"leg/{row}/eye_turned"), *slots["carrier"])


def _hook(asks: Asks, rig: Rig, typed: Mapping[str, str]) -> tuple[Ask, ...]:
    asked: list[Ask] = []
    for slot in hook_slots(rig):
        if slot.path[-1] != "hook_fitting" or rig not in GATHERED:
            asked += asks.gear(slot)
        if slot.path[-1] == "hook_fitting" and slot.kind(typed) == SHACKLE and rig is not Rig.ONE_LEG:
            asked.append(asks.choice("hook_shackle"))
    return tuple(asked)


def _other_leg(asks: Asks, row: str, typed: Mapping[str, str]) -> tuple[Ask, ...]:
    if rig_of(typed) is Rig.RUNNING:
        return tuple(ask for slot in leg_slots(row) if slot.path[-1] not in ("sling", "top_fitting")
                     for ask in asks.gear(slot))
    way = legs_given_of(typed)
    own = {LegsGiven.LENGTHS: "leg_length_m", LegsGiven.ANGLES: "leg_angle_read_deg"}.get(way)
    rows = (leg_rows(rig_of(typed))[0], row) if row == leg_rows(rig_of(typed))[1] else (row,)
    lengths = [asks.number(f"leg/{each}/{own}") for each in rows
               if own is not None and (own == "leg_length_m" or each == row)]
    gear = (ask for slot in leg_slots(row) for ask in asks.gear(slot))
    return (*gear, *_hitch(asks, row, typed), *lengths)


def one_focus(found: tuple[Section, ...]) -> tuple[Section, ...]:
    """The first fault of the whole form gets the focus."""
    flat = iter(focus_first(tuple(ask for section in found for ask in section.asks)))
    return tuple(replace(section, asks=tuple(next(flat) for _ in section.asks)) for section in found)
