"""Whether enough holds it whatever friction does: a lashing at all, and what two rule sets ask beside the balances."""

from checklist_app.mechanics.lashing import angles, cfr_393, crossing, lift_off, rule_sets
from checklist_app.mechanics.lashing.cfr_393 import Route as Counted
from checklist_app.mechanics.lashing.crossing import Body, Face
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.slings.us_chain_wll import KG_IN_LB
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.check import Limit, State, Strength, check
from checklist_app.operations.graph import CannotAssess, NotApplicable, each, when
from checklist_app.operations.lashing.choices import ONE_END, BlockedBy, Blocks
from checklist_app.operations.lashing.lashed import Blocked
from checklist_app.operations.lashing.legs import End

M_IN_FT = 0.3048
HELD_DOWN = (RuleSet.NTC, RuleSet.US)
COUNTS_AS = {Kind.TIE_DOWN: Counted.OVER_TO_THE_OTHER_SIDE, Kind.LOOP: Counted.BACK_TO_THE_SAME_SIDE}
HOLDS = "a lashing or bolts, even where friction alone would do"
NONE_HOLDS = "no lashing holds it to what it stands on"
LOOSE = "nothing holds it down: friction holds it on paper, and it wanders and jumps on the road"


@each("lashing")
def holds_here(from_body: Body, to_body: Body, this_face: Face) -> bool:
    """Whether a lashing holds what is lashed here to what it stands on."""
    return crossing.crosses(this_face, from_body, to_body)


@each("block")
def blocks_here(blocked: Blocked, this_face: Face) -> bool:
    """Whether a block stands between what is lashed here and what it stands on."""
    return crossing.crosses(this_face, blocked.touches, blocked.fast_to)


@check("something holds it down", source="EN_12195_1", rule_set=HOLDS)
def wandering(holds_here: tuple[bool, ...], blocks_here: tuple[bool, ...], blocked_by: tuple[BlockedBy, ...]) -> State:
    """A lashing keeps it from wandering and jumping where friction alone would keep it from sliding."""
    if any(holds_here):
        return State(True, f"{holds_here.count(True)} of {len(holds_here)} lashings hold it to what it stands on")
    if any(here and by is BlockedBy.BOLTS for here, by in zip(blocks_here, blocked_by, strict=True)):
        return State(True, "bolted to what it stands on")

    return State(False, LOOSE)


def goods_weight_dan(rule_set: RuleSet, goods_kg: float) -> float:
    """Weight of what is lashed here, by the g of the rule set."""
    return rule_sets.weight_dan(rule_set, goods_kg)


@when("counted_by_number", rule_set=RuleSet.US)
def us_counts() -> bool:
    """American rules count lashings, whatever they carry."""
    return True


@when("counted_by_number", rule_set=tuple(each for each in RuleSet if each is not RuleSet.US))
def others_do_not_count() -> bool:
    """No other rule set has a number."""
    raise NotApplicable("asked by 49 CFR 393")


@check("number of lashings", source="CFR_393", rule_set="49 CFR 393.110, by length and weight of what is lashed")
def lashing_number(
    goods_length_m: float, goods_kg: float, holds_here: tuple[bool, ...], blocks_here: tuple[bool, ...],
    blocks: tuple[Blocks, ...], blocked_by: tuple[BlockedBy, ...], counted_by_number: bool,
) -> Limit:
    """The fewest that hold it to what it stands on, fewer where something hard blocks it forwards."""
    forward = any(
        here and way is Blocks.FORWARD and by is not BlockedBy.GIVES
        for here, way, by in zip(blocks_here, blocks, blocked_by, strict=True)
    )
    fewest = cfr_393.fewest_tie_downs(goods_length_m / M_IN_FT, goods_kg / KG_IN_LB, forward)

    return Limit(float(fewest), float(holds_here.count(True)))


@check("WLL of all lashings", unit="daN", source="CFR_393", rule_set="49 CFR 393.106(d), half the weight")
def aggregate_wll(
    goods_weight_dan: float, holds_here: tuple[bool, ...], put_on: tuple[Kind, ...], rated_dan: tuple[float, ...],
    counted_by_number: bool,
) -> Strength:
    """Half the weight against all WLLs together, of which half counts where a lashing does not go over the top."""
    if not any(holds_here):
        raise CannotAssess(NONE_HOLDS)
    holding = [
        (COUNTS_AS.get(kind, Counted.TO_THE_LOAD), rated)
        for here, kind, rated in zip(holds_here, put_on, rated_dan, strict=True) if here
    ]

    return Strength(cfr_393.aggregate_wll_needed(goods_weight_dan), cfr_393.aggregate_wll(holding))


@each("lashing")
def down_share(near_end: End, ends_off_m: float) -> float:
    """Share of its pull that holds down."""
    return _down(near_end, ends_off_m)


@each("lashing")
def far_down_share(second_end: End, ends_off_m: float) -> float:
    """Share of its pull that holds down at its other end."""
    return _down(second_end, ends_off_m)


@when("downward_dan", put_on=Kind.TIE_DOWN)
@each("lashing")
def drawn_down(pull_tension_dan: float, down_share: float, far_down_share: float) -> float:
    """What both ends of a tie-down hold down, by its tension."""
    return pull_tension_dan * (down_share + far_down_share)


@when("downward_dan", put_on=(Kind.LOOP, Kind.SPRING))
@each("lashing")
def held_by_two_legs(rated_dan: float, down_share: float, far_down_share: float) -> float:
    """What both legs of a direct lashing hold down, by its rating."""
    return rated_dan * (down_share + far_down_share)


@when("downward_dan", put_on=ONE_END)
@each("lashing")
def held_by_one_leg(rated_dan: float, down_share: float) -> float:
    """What the one leg of a direct lashing holds down, by its rating."""
    return rated_dan * down_share


@when("held_down_asked", rule_set=HELD_DOWN)
def asks_for_it() -> bool:
    """A load is held down by a fifth of its weight."""
    return True


@when("held_down_asked", rule_set=tuple(each for each in RuleSet if each not in HELD_DOWN))
def does_not_ask() -> bool:
    """The other rule sets leave it to their balances."""
    raise NotApplicable("asked by 49 CFR 393 and the NTC guide")


@check("held down", unit="daN", source="NTC_2018", rule_set="NTC 2018 and 49 CFR 393.102(b): a fifth of its weight")
def held_down(
    goods_weight_dan: float, rule_set: RuleSet, holds_here: tuple[bool, ...], downward_dan: tuple[float, ...],
    held_down_asked: bool,
) -> Strength:
    """A fifth of the weight against what all lashings together hold down."""
    if not any(holds_here):
        raise CannotAssess(NONE_HOLDS)
    downwards = 0.0
    for here, down in zip(holds_here, downward_dan, strict=True):
        downwards = downwards + down if here else downwards
    balance = lift_off.held_down(rule_set, goods_weight_dan, downwards)

    return Strength(balance.need, balance.have)


def _down(end: End, ends_off_m: float) -> float:
    return angles.lie(Vec(end.at.x, end.at.y, end.at.z + ends_off_m), end.anchor).down
