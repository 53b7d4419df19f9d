"""What hangs on the hook, and what each leg then pulls."""

from checklist_app.mechanics import leg_tension, weight
from checklist_app.operations.gear import Eye, Hook, LoadCell, MasterLink, Shackle, Sling
from checklist_app.operations.graph import Known, NotApplicable, across, at_nominal, each, when
from checklist_app.operations.settings import DYNAMIC_FACTOR
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import ON_ONE_HOOK, OTHERS


@when("hook_gear_kg", rig=ON_ONE_HOOK)
def gear_on_one_hook(load_cell: LoadCell | None, hook_fitting: Shackle | Hook | MasterLink | None) -> float:
    """Mass of what is between the hook and the legs."""
    return _mass_kg(load_cell, hook_fitting)


@when("hook_gear_kg", rig=Rig.TWO_HOOKS)
def gear_on_two_hooks(hook_load_cell: tuple[LoadCell | None, ...]) -> float:
    """Mass of what is between the hooks and the legs."""
    return _mass_kg(*hook_load_cell)


def _mass_kg(*items: LoadCell | Shackle | Hook | MasterLink | Eye | Sling | None) -> float:
    total_kg = 0.0
    for item in items:
        if item is not None:
            total_kg = total_kg + item.mass_kg

    return total_kg


@when("rigging_mass_kg", rigging_kg=Known.YES)
def rigging_as_entered(rigging_kg: float) -> float:
    """Mass of the rigging, as entered."""
    return rigging_kg


@when("slings_kg", rig=OTHERS)
def every_sling(sling: tuple[Sling, ...]) -> float:
    """Mass of the slings; one of several legs is one thing."""
    whole = {each.id: each for each in sling if each.legs > 1}
    single = [each for each in sling if each.legs == 1]

    return _mass_kg(*whole.values(), *single)


@when("slings_kg", rig=Rig.RUNNING)
def the_one_sling(sling: tuple[Sling, ...], is_one_sling: bool) -> float:
    """Mass of the sling that is both parts."""
    return _mass_kg(sling[0])


@when("rigging_mass_kg", rigging_kg=Known.NO)
def rigging_by_gear(
    hook_gear_kg: float, slings_kg: float, top_fitting: tuple[Shackle | Hook | None, ...],
    bottom_fitting: tuple[Shackle | Hook | None, ...], eye: tuple[Eye | None, ...],
) -> float:
    """Mass of the rigging, added up from the gear."""
    return hook_gear_kg + slings_kg + _mass_kg(*top_fitting, *bottom_fitting, *eye)


def gross_mass_kg(mass_kg: float, rigging_mass_kg: float) -> float:
    """Mass on the hook: load and rigging."""
    return weight.gross_mass_kg(mass_kg, rigging_mass_kg)


def dynamic_factor() -> float:
    """In normal hoisting the rated load contains it: a setting of the house."""
    return DYNAMIC_FACTOR.value


def gross_load_t(gross_mass_kg: float, dynamic_factor: float) -> float:
    """Load on the hook, in the unit of the plates."""
    return weight.gross_load_t(gross_mass_kg, dynamic_factor)


def gross_load_kn(gross_load_t: float) -> float:
    """Load on the hook, as a force."""
    return weight.weight_kn(gross_load_t)


@at_nominal
@when("planned_tilt_along_deg", cg_x_m=Known.YES)
def tilt_along_as_planned(hung_tilt_along_deg: float) -> float:
    """Tilt lengthwise as planned; below 0 the right end hangs low."""
    return hung_tilt_along_deg


@when("planned_tilt_along_deg", cg_x_m=Known.NO)
def no_tilt_planned() -> float:
    """Nothing was planned that a trial could contradict."""
    raise NotApplicable(
        "the centre of gravity is not known along the picks, so no tilt was planned; each leg is taken to carry all"
    )


@at_nominal
def planned_tilt_across_deg(hung_tilt_across_deg: float) -> float:
    """Tilt crosswise as planned; below 0 the rear side hangs low."""
    return hung_tilt_across_deg


@each("leg")
def leg_tension_kn(leg_share: float, gross_load_kn: float) -> float:
    """Pull in a leg, as a force."""
    return leg_share * gross_load_kn


@each("leg")
def leg_load_t(leg_share: float, gross_load_t: float) -> float:
    """Pull in a leg, in the unit of the labels."""
    return leg_share * gross_load_t


@each("leg")
def leg_angle_deg(eye_reach_m: float, eye_drop_m: float) -> float:
    """Leg from vertical, as it hangs."""
    return leg_tension.angle_from_vertical_deg(eye_reach_m, eye_drop_m)


@when("hook_load_t", rig=Rig.TWO_HOOKS)
@across("hook")
def load_of_each_hook(leg_load_t: tuple[float, ...], hook: tuple[str, ...]) -> tuple[float, ...]:
    """Each hook carries what its leg pulls."""
    return leg_load_t


@when("hook_load_t", rig=ON_ONE_HOOK)
@across("hook")
def no_row_of_hooks() -> tuple[float, ...]:
    """One hook carries everything."""
    raise NotApplicable("one hook")


@when("hook_angle_deg", rig=Rig.TWO_HOOKS)
@across("hook")
def pull_of_each_hook(leg_angle_deg: tuple[float, ...], hook: tuple[str, ...]) -> tuple[float, ...]:
    """Each hook is pulled as its leg hangs."""
    return leg_angle_deg


@when("hook_angle_deg", rig=ON_ONE_HOOK)
@across("hook")
def plumb_on_one_hook() -> tuple[float, ...]:
    """One hook hangs plumb over the load."""
    raise NotApplicable("one hook")
