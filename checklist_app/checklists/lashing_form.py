"""The form of an assessed lashing: what is lashed, on what, which way, by what; few questions, the rest folded."""
from collections.abc import Mapping
from dataclasses import replace

from checklist_app.checklists import typed_blocks
from checklist_app.checklists.ask import Ask, Option
from checklist_app.checklists.assess_form import Section, one_focus
from checklist_app.checklists.typed_asks import TypedAsks
from checklist_app.checklists.typed_lashing import (
    ALIKE,
    ALL_CG,
    ALL_LENGTHS,
    ALONE,
    ALONE_ON_IT,
    EACH,
    HARD,
    ITEM,
    LIES_OVER,
    LORRY,
    MOST_EACH,
    ON,
    ONE,
    SETS,
    SOLID,
    VEHICLE,
    times,
)
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.operations.lashing.choices import AT_SEA, TWO_ENDS, FarEnd, Tensioned
from checklist_app.operations.obtained import CG_HOW, LENGTH_HOW

POINTS = (("at", "Where it leaves the load"), ("anchor", "Its anchor"))
AXES = (("x", "Forwards"), ("y", "To the left"), ("z", "Upwards"))
FAR = (("far_at", "Where the other end leaves the load"), ("far_anchor", "The other anchor"))
SHIP = ("ship_place", "ship_length_m", "ship_speed_kn", "ship_b_over_gm")
FROM_WHERE = "From the middle between its feet: forwards, to the left, upwards. A deck under a pallet lies below 0."


def sections(typed: Mapping[str, str], faults: Mapping[str, str], operation: str) -> tuple[Section, ...]:
    """Every section with what was typed still in it."""
    asks = TypedAsks(typed, faults, operation)
    on_pallet = not typed.get(f"{ON.name}.not_used", "")
    found = (
        Section("The load", FROM_WHERE, (
            *asks.numbers("mass_kg", "cg_x_m", "cg_y_m", "cg_z_m"),
            asks.how(ALL_CG, "How is the centre of gravity known?", CG_HOW),
            *asks.numbers("length_m", "width_m", "height_m", "base_length_m", "base_width_m"), asks.choice("stands"),
            asks.tick(HARD),
            asks.how(ALL_LENGTHS, "How are the lengths known?", LENGTH_HOW)), False),
        Section("The way", "", (asks.choice("route"), *_sea(asks, typed), asks.choice("rule_set"),
                                *_ship(asks, typed)), False),
        Section("Friction", "What is not measured is taken as published.", _friction(asks, operation, on_pallet),
                False),
        Section("Lashings", "One of them; those like it follow from it.", _lashing(asks, typed), False),
        Section("Blocks", "Headboard, chocks, timber. A gap is filled, or nothing is blocked.", _blocks(asks, typed),
                True),
        Section("Pallet and place", "What it stands on, and where.", _place(asks, operation, on_pallet), True),
        Section("More about it", "A soft edge, and how tie-downs count.",
                (asks.number("edge_gives_m", "It stands hard"), asks.choice("tilt_rule")), True),
    )
    return one_focus(found)


def _sea(asks: TypedAsks, typed: Mapping[str, str]) -> tuple[Ask, ...]:
    return (asks.choice("waters"),) if typed.get("route", "") in {route.value for route in AT_SEA} else ()


def _ship(asks: TypedAsks, typed: Mapping[str, str]) -> tuple[Ask, ...]:
    if typed.get("rule_set", "") != RuleSet.CSS.value:
        return ()
    return (asks.choice("ship_level"), *asks.numbers(*SHIP), asks.choice("ship_open"))


def _friction(asks: TypedAsks, operation: str, on_pallet: bool) -> tuple[Ask, ...]:
    deck = ("deck_pair", "deck_surface") if operation == VEHICLE and on_pallet else ()
    return tuple(asks.choice(name) for name in ("load_pair", "load_surface", *deck))


def _lashing(asks: TypedAsks, typed: Mapping[str, str]) -> tuple[Ask, ...]:
    put_on = typed.get(f"{ONE}put_on", "")
    ends = [_point(asks, name, words) for name, words in POINTS]
    if put_on in {kind.value for kind in TWO_ENDS}:
        ends.append((asks.choice(f"{ONE}far_end"),))
    if typed.get(f"{ONE}far_end", "") == FarEnd.GIVEN.value:
        ends += [_point(asks, name, words) for name, words in FAR]
    tension = []
    if put_on == Kind.TIE_DOWN.value:
        tension.append(asks.choice(f"{ONE}tensioned"))
        if typed.get(f"{ONE}tensioned", "") == Tensioned.MEASURED.value:
            tension.append(asks.number(f"{ONE}tension_dan"))
    fast = tuple(asks.choice(f"{ONE}{name}") for name in ("from_body", "to_body"))
    return (*asks.gear(ITEM), asks.choice(f"{ONE}put_on"), *fast, *(ask for some in ends for ask in some), *tension,
            *asks.numbers(f"{ONE}anchor_dan", f"{ONE}held_dan"), asks.tick(LIES_OVER), asks.choice(f"{ONE}edges"),
            _alike(typed), _each(typed))


def _point(asks: TypedAsks, name: str, words: str) -> tuple[Ask, ...]:
    return tuple(replace(asks.number(f"{ONE}{name}_{axis}_m"), words=said, line=words) for axis, said in AXES)


def _alike(typed: Mapping[str, str]) -> Ask:
    options = tuple(Option(each, each[:1].upper() + each[1:]) for each in SETS)
    return Ask(name=ALIKE, kind="choice", words="How many like it?", text=typed.get(ALIKE, "") or ALONE,
               options=options, why="Their rings and eyes are taken to be rated as this one's.")


def _each(typed: Mapping[str, str]) -> Ask:
    options = tuple(Option(str(number), str(number)) for number in range(1, MOST_EACH + 1))
    return Ask(name=EACH, kind="select", words="Side by side at each place", text=str(times(typed)), options=options)


def _blocks(asks: TypedAsks, typed: Mapping[str, str]) -> tuple[Ask, ...]:
    return tuple(ask for number in typed_blocks.offered(typed) for ask in _block(asks, number))


def _block(asks: TypedAsks, number: int) -> tuple[Ask, ...]:
    own = typed_blocks.prefix(number)
    point = tuple(replace(asks.number(f"{own}{name}"), words=said, line=f"Where block {number} touches")
                  for name, said in typed_blocks.POINT)
    plain = (*(asks.choice(f"{own}{name}") for name in typed_blocks.CHOICES), asks.number(f"{own}block_dan"))
    return (*(replace(ask, words=f"Block {number}: {ask.words[:1].lower()}{ask.words[1:]}") for ask in plain), *point)


def _place(asks: TypedAsks, operation: str, on_pallet: bool) -> tuple[Ask, ...]:
    pallet = (*asks.gear(ON), *((asks.choice("bearing"), asks.choice("pallet_lies")) if on_pallet else ()))
    if operation == VEHICLE:
        return (*pallet, *asks.gear(LORRY), asks.number("behind_headboard_m"), asks.tick(ALONE_ON_IT),
                asks.number("other_kg", "It travels alone"), asks.number("other_behind_headboard_m"))
    return (*pallet, asks.tick(SOLID), asks.number("floor_kg_m", "Solid ground"),
            asks.number("forks_apart_m", "No truck lifts it"), asks.choice("forks_enter"), asks.number("forks_reach_m"))
