"""Each lashing: where its ends are, what it may be pulled with, and how hard it is drawn."""

from checklist_app.mechanics.lashing import angles, css_balance, direct, label, rule_sets
from checklist_app.mechanics.lashing import pallet as pallets
from checklist_app.mechanics.lashing.crossing import Body, Face
from checklist_app.mechanics.lashing.css_balance import Make
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.lashed_body import Stretch
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.gear import Lashing, Pallet
from checklist_app.operations.graph import CannotAssess, each, when
from checklist_app.operations.lashing.choices import ONE_END, TWO_ENDS, FarEnd, Passes, Tensioned
from checklist_app.operations.lashing.legs import End, Legs

BOTH_ALIKE = 2.0
DAN_IN_KN = 100.0
BY_LC = (RuleSet.EN, RuleSet.CTU, RuleSet.NTC, RuleSet.UK)
STRETCHES = {"web_lashing": Stretch.WEB, "chain_lashing": Stretch.CHAIN, "rope_lashing": Stretch.WIRE}
# A rope may be of wire and used again: no rope is rated lower.
MAKES = {"web_lashing": Make.WEB, "chain_lashing": Make.CHAIN, "rope_lashing": Make.WIRE_AGAIN}
DOWNWARDS = (Body.LOAD, Body.PALLET, Body.DECK)


@each("lashing")
def near_end(
    at_x_m: float, at_y_m: float, at_z_m: float, anchor_x_m: float, anchor_y_m: float, anchor_z_m: float
) -> End:
    """One end as entered."""
    return End(Vec(at_x_m, at_y_m, at_z_m), Vec(anchor_x_m, anchor_y_m, anchor_z_m))


@when("far_end_there", far_end=FarEnd.GIVEN)
@each("lashing")
def far_end_given(
    far_at_x_m: float, far_at_y_m: float, far_at_z_m: float, far_anchor_x_m: float, far_anchor_y_m: float,
    far_anchor_z_m: float,
) -> End:
    """The other end as entered."""
    return End(Vec(far_at_x_m, far_at_y_m, far_at_z_m), Vec(far_anchor_x_m, far_anchor_y_m, far_anchor_z_m))


@when("far_end_there", far_end=FarEnd.MIRRORED)
@each("lashing")
def far_end_mirrored(near_end: End, put_on: Kind) -> End:
    """The other end as the one: on the other side, or of a loop at the other end of the load."""
    if put_on is Kind.LOOP:
        return End(*(Vec(-point.x, point.y, point.z) for point in near_end))

    return End(*(Vec(point.x, -point.y, point.z) for point in near_end))


@when("to_deck_deg", put_on=tuple(Kind))
@each("lashing")
def angle_to_deck(near_end: End) -> float:
    """Angle of the lashing to the deck."""
    return angles.lie(*near_end).to_deck_deg


@when("from_length_deg", put_on=tuple(Kind))
@each("lashing")
def angle_from_length(near_end: End) -> float:
    """Level angle of the lashing from the length of the vehicle."""
    return angles.lie(*near_end).from_length_deg


@when("label_dan", rule_set=BY_LC)
@each("lashing")
def label_by_lc(lashing_item: Lashing) -> float:
    """LC as on the label."""
    return label.labelled_lc_dan(lashing_item.lc_dan, readable=True)


@when("label_dan", rule_set=RuleSet.US)
@each("lashing")
def label_by_wll(lashing_item: Lashing) -> float:
    """WLL as on the label, as a force; never more than an LC beside it."""
    return _within_lc(rule_sets.weight_dan(RuleSet.US, lashing_item.wll_kg), lashing_item)


@when("label_dan", rule_set=RuleSet.CSS)
@each("lashing")
def label_by_msl(lashing_item: Lashing, breaking_dan: float) -> float:
    """MSL: a share of the breaking strength, by what the lashing is made as; never more than the LC of its label."""
    msl_dan = DAN_IN_KN * css_balance.msl_kn(MAKES[lashing_item.kind], breaking_dan / DAN_IN_KN)
    return _within_lc(msl_dan, lashing_item)


def _within_lc(rated_dan: float, lashing_item: Lashing) -> float:
    """LC is half of what the whole lashing breaks at: a webbing's own strength, or a slip, is not."""
    lc_dan: float = lashing_item.facts.get("lc_dan", rated_dan)
    return lc_dan if lc_dan < rated_dan else rated_dan


@each("lashing")
def breaking_dan(lashing_item: Lashing) -> float:
    """Breaking strength; where nobody entered it the rating on the label stands in for it."""
    breaking_kn: float | None = lashing_item.facts.get("breaking_kn")
    if breaking_kn is not None:
        return DAN_IN_KN * breaking_kn
    if "lc_dan" in lashing_item.facts:
        return lashing_item.lc_dan

    return rule_sets.weight_dan(RuleSet.US, lashing_item.wll_kg)


@when("beside_dan", passes=Passes.ELSEWHERE)
@each("lashing")
def anchor_and_hold(anchor_dan: float, held_dan: float | None) -> float | None:
    """The weaker of its anchor and what it is hooked to on the load."""
    if held_dan is None:
        return anchor_dan

    return label.weakest_dan({"its anchor": anchor_dan, "what it is hooked to": held_dan})


@when("beside_dan", passes=Passes.UNDER_WHOLE_PALLET)
@each("lashing")
def hold_alone(held_dan: float | None) -> float | None:
    """Under the whole pallet it has no anchor of its own."""
    return held_dan


@when("beside_dan", passes=Passes.THROUGH_PALLET)
@each("lashing")
def boards_and_hold(label_dan: float, held_dan: float | None, pallet: Pallet) -> float | None:
    """Through the pallet it hangs on some of its boards."""
    strap_dan = label_dan if held_dan is None or held_dan > label_dan else held_dan
    return pallets.strap_on_pallet_dan(pallets.Route.THROUGH_PALLET, strap_dan, pallet.facts.get("boards_dan"))


@each("lashing")
def weakest_dan(label_dan: float, beside_dan: float | None) -> float:
    """The weakest of the lashing and what it hangs on."""
    return label_dan if beside_dan is None or label_dan <= beside_dan else beside_dan


@when("breaks_dan", rule_set=RuleSet.US)
@each("lashing")
def breaks_at(breaking_dan: float, beside_dan: float | None) -> float:
    """What breaks first: of anchors and eyes no more is known than their rating."""
    return breaking_dan if beside_dan is None or breaking_dan <= beside_dan else beside_dan


@when("breaks_dan", rule_set=(*BY_LC, RuleSet.CSS))
@each("lashing")
def not_to_break(rated_dan: float) -> float:
    """These rules count with the rating alone."""
    return rated_dan


@when("rated_dan", rule_set=(*BY_LC, RuleSet.US))
@each("lashing")
def rated_as_labelled(weakest_dan: float) -> float:
    """What the weakest part may be pulled with."""
    return weakest_dan


@when("rated_dan", rule_set=RuleSet.CSS)
@each("lashing")
def rated_for_calculation(weakest_dan: float) -> float:
    """What of the MSL counts in a calculation in space."""
    return DAN_IN_KN * css_balance.calculated_strength_kn(weakest_dan / DAN_IN_KN, in_space=True)


@when("pull_tension_dan", tensioned=Tensioned.HAND)
@each("lashing")
def tension_of_the_label(lashing_item: Lashing) -> float:
    """STF of the label; without one it is no tie-down."""
    return label.tie_down_tension_dan(_lc_dan(lashing_item), lashing_item.stf_dan, readable=True)


@when("pull_tension_dan", tensioned=Tensioned.MEASURED)
@each("lashing")
def tension_as_read(lashing_item: Lashing, tension_dan: float) -> float:
    """As read, half of LC at most."""
    return label.measured_tension_dan(_lc_dan(lashing_item), tension_dan)


def _lc_dan(lashing_item: Lashing) -> float:
    """LC; on a label by American rules its WLL, which is less."""
    if "lc_dan" in lashing_item.facts or "wll_kg" not in lashing_item.facts:
        return lashing_item.lc_dan

    return rule_sets.weight_dan(RuleSet.US, lashing_item.wll_kg)


@when("drawn_dan", tensioned=Tensioned.HAND)
@each("lashing")
def drawn_by_hand(pull_tension_dan: float) -> float:
    """What pulls on lashing, anchor and eye: the tension of the label."""
    return pull_tension_dan


@when("drawn_dan", tensioned=Tensioned.MEASURED)
@each("lashing")
def drawn_as_read(tension_dan: float) -> float:
    """What pulls on lashing, anchor and eye is all that was read, however little of it counts as holding."""
    return tension_dan


@when("legs", put_on=Kind.TIE_DOWN)
@each("lashing")
def legs_of_a_tie_down(
    lashing: str, from_body: Body, to_body: Body, near_end: End, far_end_there: End, pull_tension_dan: float,
    rated_dan: float, breaks_dan: float, drawn_dan: float, load_face: Face, on_a_deck: bool, ends_placed: bool,
) -> Legs:
    """Both strands, alike: the rules have dropped what an edge brakes."""
    _required(from_body, to_body, load_face, on_a_deck)
    strands = direct.tie_down_strands((near_end, far_end_there), pull_tension_dan, rated_dan, BOTH_ALIKE)

    return Legs(lashing, from_body, to_body, strands, (), breaks_dan, drawn_dan)


@when("legs", put_on=ONE_END)
@each("lashing")
def one_leg(
    lashing: str, put_on: Kind, from_body: Body, to_body: Body, near_end: End, rated_dan: float, breaks_dan: float,
    lashing_item: Lashing, load_face: Face, on_a_deck: bool, ends_placed: bool,
) -> Legs:
    """A slope or diagonal lashing."""
    _required(from_body, to_body, load_face, on_a_deck)
    pulls = direct.direct_legs(put_on, (near_end,), rated_dan, STRETCHES[lashing_item.kind])

    return Legs(lashing, from_body, to_body, (), pulls, breaks_dan)


@when("legs", put_on=tuple(kind for kind in TWO_ENDS if kind is not Kind.TIE_DOWN))
@each("lashing")
def two_legs(
    lashing: str, put_on: Kind, from_body: Body, to_body: Body, near_end: End, far_end_there: End, rated_dan: float,
    breaks_dan: float, lashing_item: Lashing, load_face: Face, on_a_deck: bool, ends_placed: bool,
) -> Legs:
    """A loop or spring lashing."""
    _required(from_body, to_body, load_face, on_a_deck)
    pulls = direct.direct_legs(put_on, (near_end, far_end_there), rated_dan, STRETCHES[lashing_item.kind])

    return Legs(lashing, from_body, to_body, (), pulls, breaks_dan)


def _required(from_body: Body, to_body: Body, load_face: Face, on_a_deck: bool) -> None:
    """A lashing runs downwards between two that are there."""
    there = {Body.LOAD} | ({Body.DECK} if on_a_deck else set())
    there |= {Body.PALLET} if load_face is Face.LOAD_ON_PALLET else set()
    for body in (from_body, to_body):
        if body not in there:
            raise CannotAssess(f"it runs from {from_body.value} to {to_body.value}, and there is no {_bare(body)} here")
    if DOWNWARDS.index(from_body) >= DOWNWARDS.index(to_body):
        raise CannotAssess(f"it runs from {from_body.value} to {to_body.value}: enter it from the load downwards")


def _bare(body: Body) -> str:
    return body.value.removeprefix("the ")
