"""What each sling carries in the way it is put on: hitch, bend, edge and heat, each as a share of its label's WLL."""

from checklist_app.mechanics import exact
from checklist_app.mechanics.fittings.eye_marking import PullPlane
from checklist_app.mechanics.slings import bends, choke, edges, rules, temperature
from checklist_app.mechanics.slings.bends import Termination
from checklist_app.mechanics.slings.kinds import Hitch, RuleSet, SlingKind
from checklist_app.mechanics.slings.slip import Face
from checklist_app.mechanics.slings.temperature import ChainGrade, Fibre, RopeMake
from checklist_app.operations.gear import Sling
from checklist_app.operations.graph import CannotAssess, Known, dont_know, each, when
from checklist_app.operations.straight_lift.choices import Protected

KINDS = {
    "flat_sling": SlingKind.FLAT_WEBBING, "round_sling": SlingKind.ROUNDSLING, "chain_sling": SlingKind.CHAIN,
    "wire_rope_sling": SlingKind.WIRE_ROPE,
}
CHOKED = tuple(hitch for hitch in Hitch if hitch.is_choked)
IN_TWO_PARTS = tuple(hitch for hitch in Hitch if hitch.is_basket)
TERMINATIONS = {
    "hand splice": Termination.HAND_SPLICE, "steel ferrule": Termination.FERRULE,
    "aluminium ferrule": Termination.FERRULE, "resin socket": Termination.RESIN_SOCKET,
    "swaged end": Termination.SWAGED,
}
MAKES = {
    "aluminium ferrule": RopeMake.STEEL_CORE_ALUMINIUM_FERRULE, "steel ferrule": RopeMake.STEEL_CORE_STEEL_FERRULE,
    "hand splice": RopeMake.STEEL_CORE_HAND_SPLICE,
}
NARROWEST_MM, SHARPEST_MM = 0.0, 0.0
STRAIGHT_DEG, SURELY_WRONG_DEG = 180.0, -20.0


@dont_know("choke_angle_deg")
@each("leg")
def choke_angle_unknown() -> float:
    """The lowest step of the tables."""
    return 0.0


@dont_know("eye_turned")
@each("leg")
def eye_turned_unknown() -> PullPlane:
    """The plane in which an eye carries less."""
    return PullPlane.ACROSS


@dont_know("bend_mm")
@each("leg")
def bend_unknown() -> float:
    """Narrower than anything: no wire rope may bend so, and nothing else minds."""
    return NARROWEST_MM


@dont_know("edge_mm")
@each("leg")
def edge_unknown() -> float:
    """As sharp as an edge gets."""
    return SHARPEST_MM


@dont_know("edge_protected")
@each("leg")
def protection_unknown() -> Protected:
    """Bare, and on a rough face."""
    return Protected.ROUGH


@dont_know("face")
@each("leg")
def face_unknown() -> Face:
    """Oil is taken to be there."""
    return Face.OIL_OR_WATER


@each("leg")
def sling_kind(sling: Sling) -> SlingKind:
    """What the sling is made as."""
    return KINDS[sling.kind]


@when("hitch_share", hitch=Hitch.STRAIGHT)
@each("leg")
def straight_share(rule_set: RuleSet) -> float:
    """Used straight it carries its WLL."""
    return rules.hitch_factor(rule_set, Hitch.STRAIGHT)


@when("hitch_share", hitch=CHOKED)
@each("leg")
def choked_share(rule_set: RuleSet, hitch: Hitch, sling_kind: SlingKind, choke_angle_deg: float) -> float:
    """Choked it carries the choker's share, less with a sharp angle of choke; no spread goes past 0° or straight."""
    sharp_deg = choke_angle_deg if choke_angle_deg > 0.0 or choke_angle_deg < SURELY_WRONG_DEG else 0.0
    angle_deg = sharp_deg if not STRAIGHT_DEG < sharp_deg < STRAIGHT_DEG - SURELY_WRONG_DEG else STRAIGHT_DEG

    return rules.hitch_factor(rule_set, hitch) * choke.choke_angle_factor(sling_kind, angle_deg)


@when("hitch_share", hitch=IN_TWO_PARTS)
@each("leg")
def share_of_two_parts(rule_set: RuleSet, part_angle_deg: float) -> float:
    """In two parts it carries twice, less as they lie apart: by statics and by the table, the lower."""
    off_deg = abs(part_angle_deg)
    apart = 2.0 * exact.cos(off_deg / exact.RAD_IN_DEG)
    tabulated = rules.basket_factor(rule_set, off_deg)

    return apart if apart < tabulated else tabulated


@each("leg")
def bend_share(
    bend_mm: float | None, sling: Sling, sling_kind: SlingKind, hitch: Hitch, rule_set: RuleSet
) -> float:
    """What a bend leaves of a wire rope's WLL, which must say round what it bends; others keep theirs."""
    if sling_kind is not SlingKind.WIRE_ROPE or (bend_mm is None and hitch is Hitch.STRAIGHT):
        return 1.0
    if bend_mm is None:
        raise CannotAssess("what the wire rope bends round is not given")
    if not bend_mm > NARROWEST_MM:
        raise CannotAssess("what the wire rope bends round is not known, and narrower than itself it may not bend")
    termination = TERMINATIONS[sling.termination]
    if rule_set is RuleSet.US and hitch in IN_TWO_PARTS:
        return bends.us_basket_bend_factor(termination, bend_mm, sling.diameter_mm)

    return bends.labelled_bend_factor(termination, bend_mm, sling.diameter_mm)



@each("leg")
def edge_share(
    edge_mm: float | None, edge_protected: Protected | None, sling: Sling, sling_kind: SlingKind
) -> float:
    """What an edge leaves of the WLL; where there is none, a rough face cuts webbing all the same."""
    if edge_mm is None and edge_protected is Protected.ROUGH and sling_kind.is_textile:
        raise CannotAssess("a textile sling lies on a rough face: with protection at every rough face")
    if edge_mm is None:
        return 1.0
    if edge_protected is None:
        raise CannotAssess("the sling touches an edge, and whether it is protected there was not asked")
    protected = edge_protected is Protected.YES
    if sling_kind.is_textile:
        thickness_mm = 1.0 if protected else sling.thickness_mm
        return edges.textile_edge_factor(edge_mm, thickness_mm, edge_protected is Protected.ROUGH, protected)
    if protected:
        return 1.0
    if sling_kind is SlingKind.CHAIN:
        return edges.chain_edge_factor(edge_mm, sling.size_mm)

    return bends.labelled_bend_factor(TERMINATIONS[sling.termination], 2.0 * edge_mm, sling.diameter_mm)


@when("heat_share", sling_temperature_c=Known.NO)
@each("leg")
def heat_not_asked() -> float:
    """Nobody asked for it."""
    return 1.0


@when("heat_share", sling_temperature_c=Known.YES)
@each("leg")
def share_in_heat(sling_temperature_c: float, sling: Sling, sling_kind: SlingKind, rule_set: RuleSet) -> float:
    """What heat or frost leaves of the WLL."""
    if sling_kind.is_textile:
        return temperature.fibre_temperature_factor(Fibre(sling.fibre), sling_temperature_c, rule_set)
    if sling_kind is SlingKind.CHAIN:
        by_grade = temperature.us_chain_temperature_factor if rule_set is RuleSet.US else (
            temperature.chain_temperature_factor
        )
        return by_grade(_grade(sling), sling_temperature_c)

    return temperature.rope_temperature_factor(_make(sling), sling_temperature_c)


def _grade(sling: Sling) -> ChainGrade:
    grade = sling.grade
    if grade not in {each.value for each in ChainGrade}:
        raise CannotAssess(f"chain of {grade}: no table of heat is at hand; ask its maker")

    return ChainGrade(grade)


def _make(sling: Sling) -> RopeMake:
    if sling.core == "fibre":
        return RopeMake.FIBRE_CORE
    if sling.termination not in MAKES:
        raise CannotAssess(f"wire rope with {sling.termination}: no table of heat is at hand; ask its maker")

    return MAKES[sling.termination]


@each("leg")
def sling_carries_t(
    sling: Sling, hitch_share: float, bend_share: float, edge_share: float, over_hook_share: float, heat_share: float
) -> float:
    """What the sling carries along the leg; of bend, edge and hook the worst counts, never two."""
    bent = bend_share if bend_share <= edge_share else edge_share
    bent = bent if bent <= over_hook_share else over_hook_share

    return sling.wll_t * hitch_share * bent * heat_share
