"""Two hooks that travel with one load: one gets ahead of the other, one stops before the other, and each has less left.

The spread tries either hook ahead by what was entered; along the line of the hooks it alters their distance most.
"""

from checklist_app.mechanics.sway import two_machines
from checklist_app.mechanics.weight import KG_IN_T
from checklist_app.operations.check import Strength, check
from checklist_app.operations.gear import Hoist
from checklist_app.operations.graph import CannotAssess, Known, dont_know, each, when
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.rigs import ON_ONE_HOOK
from checklist_app.operations.straight_lift.ways import STAYING, TRAVELLING


@dont_know("out_of_step_m")
def step_unknown() -> float:
    """Nothing bounds it."""
    raise CannotAssess(
        "how far one hook gets ahead of the other is not known: try it without a load, or move one hook at a time and"
        " enter the length of a step, or take one hook"
    )


@when("hooks_step_m", way=Known.NO)
def no_way_no_step() -> float:
    """Nobody said that they travel."""
    return 0.0


@when("hooks_step_m", way=Known.YES)
def step_on_the_way(step_by_way_m: float) -> float:
    """What the right hook is farther off than it should be."""
    return step_by_way_m


@when("step_by_way_m", way=STAYING)
def both_stay() -> float:
    """Hooks that stay are where they were measured."""
    return 0.0


@when("step_by_way_m", way=TRAVELLING)
def one_is_ahead(out_of_step_m: float, step_way: float) -> float:
    """One hook ahead of the other: nominally neither, at worst either."""
    step_m = 0.0 if out_of_step_m < 0.0 else out_of_step_m

    return step_m * step_way


@when("stop_line_m", rig=ON_ONE_HOOK)
def one_line_to_the_load(hang_line_m: float) -> float:
    """One line, down to the centre of gravity."""
    return hang_line_m


@when("stop_line_m", rig=Rig.TWO_HOOKS)
def two_lines_to_the_eyes(hook_below_m: float, eye_drop_m: tuple[float, ...], travels: bool) -> float:
    """Two lines side by side, down to the eyes: shorter, and swung farther by a stop."""
    left_m, right_m = eye_drop_m

    return two_machines.shorter_line_m(hook_below_m, (left_m, right_m))


@each("hook")
@check(
    "hoist of this hook, on its way with another", unit="t", source="QLD_MOBILE_CRANES",
    rule_set="20 % more than its share, as read; a quarter of the rating kept, from memory, stricter only",
)
def hook_together(hook_pull_t: float, hook_hoist: Hoist, travels: bool) -> Strength:
    """What its leg pulls on the way against what a hoist may carry that moves a load with another one."""
    most_t = hook_hoist.wll_t * two_machines.share_of_rating()
    if hook_hoist.facts.get("hook_counts"):
        return Strength(hook_pull_t + hook_hoist.hook_mass_kg / KG_IN_T, most_t)

    return Strength(hook_pull_t, most_t)
