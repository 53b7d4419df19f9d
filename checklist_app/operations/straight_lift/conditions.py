"""Where and how the slings work: edges, heat, chemicals, and whether they stay where they lie."""

from checklist_app.mechanics.slings import chemicals as chemistry
from checklist_app.mechanics.slings import label, wrap
from checklist_app.mechanics.slings import slip as slipping
from checklist_app.mechanics.slings.chemicals import Chemical
from checklist_app.mechanics.slings.kinds import Hitch, SlingKind
from checklist_app.mechanics.slings.slip import Contact, Face
from checklist_app.mechanics.slings.temperature import Fibre
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.operations.check import AtLimit, Limit, State, check
from checklist_app.operations.gear import Sling
from checklist_app.operations.graph import CannotAssess, Known, NotApplicable, each, when
from checklist_app.operations.settings import SLIP_CLOSE
from checklist_app.operations.straight_lift.choices import Protected, Rig

FASTENED = (Hitch.STRAIGHT, Hitch.DOUBLED)


@each("leg")
@check("sling over its edges", source="DGUV_109_017", rule_set="DGUV Information 109-017, 209-061; makers' charts")
def edge(edge_mm: float, edge_share: float, edge_protected: Protected) -> State:
    """Over the sharpest edge it touches it keeps the share that its maker or the rules give it."""
    how = "protected" if edge_protected is Protected.YES else f"radius {edge_mm:.4g} mm"

    return State(True, f"{how}: it keeps {100.0 * edge_share:.0f} % of its WLL")


@each("leg")
@check("sling in heat or frost", source="EN_1492_1", rule_set="EN 1492, EN 818-4, EN 13414-1 makers' tables; US 82 °C")
def temperature(sling_temperature_c: float, heat_share: float) -> State:
    """Within the range of its fibre, grade or make."""
    return State(True, f"at {sling_temperature_c:.4g} °C it keeps {100.0 * heat_share:.0f} % of its WLL")


@each("leg")
@check("sling and what gets onto it", source="DGUV_209_013", rule_set="DGUV Information 209-013, makers' instructions")
def chemicals_resisted(chemicals: Chemical, sling: Sling, sling_kind: SlingKind) -> State:
    """No sling works where something attacks it."""
    if chemicals is Chemical.NONE:
        return State(True, "nothing gets onto it")
    if sling_kind.is_textile:
        fibre = label.labelled_fibre(sling_kind, Fibre(sling.fibre))
        attacked = chemistry.fibre_is_attacked(fibre, chemicals)
    else:
        attacked = chemistry.steel_is_attacked(chemicals)

    return State(not attacked, f"{chemicals.value}: {sling.id} {'is attacked' if attacked else 'resists it'}")


@when("friction_there", friction=Known.YES)
@each("leg")
def friction_measured(friction: float) -> float:
    """Friction as measured on these very faces."""
    return slipping.measured_friction(friction)


@when("friction_there", friction=Known.NO)
@each("leg")
def friction_published(sling_kind: SlingKind, face: Face) -> float:
    """Friction by name: webbing is given no more than steel."""
    contact = Contact.WEBBING_ON_STEEL if sling_kind.is_textile else Contact.STEEL_ON_STEEL

    return slipping.friction_coefficient(contact, face)


@when("lies_on_friction", hitch=FASTENED)
@each("leg")
def fastened() -> bool:
    """A sling put on straight, or laid double over a fitting, is fastened to its eye."""
    raise NotApplicable("fastened to its eye")


@when("lies_on_friction", hitch=tuple(hitch for hitch in Hitch if hitch not in FASTENED))
@each("leg")
def laid_round(stop: Stop, rig: Rig) -> bool:
    """A sling laid round the load is held by a stop, or by friction; one that holds it alone, by a stop."""
    if wrap.choke_holds_upright(stop):
        raise NotApplicable(f"held by {stop.value}")
    if rig is Rig.ONE_LEG:
        raise CannotAssess("one sling alone round the load: no friction is sure to hold it, a collar or lug is")

    return True


@each("leg")
@check(
    "sling stays where it lies", source="STATICS_SLIP", rule_set="friction needed by statics, friction as known",
    at_limit=AtLimit.ALLOWED, close=SLIP_CLOSE.value,
)
def slip(
    leg_angle_deg: float, hung_tilt_along_deg: float, hung_tilt_across_deg: float, friction_there: float,
    lies_on_friction: bool,
) -> Limit:
    """The friction that the leaning leg needs on the load where it slopes most, against the friction there is."""
    along_deg, across_deg = abs(hung_tilt_along_deg), abs(hung_tilt_across_deg)
    slope_deg = along_deg if along_deg >= across_deg else across_deg

    return Limit(slipping.friction_needed(leg_angle_deg, slope_deg), friction_there)
