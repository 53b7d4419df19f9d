"""What applies to which rig: each gate says why where it does not."""

from checklist_app.operations.graph import CannotAssess, NotApplicable, when
from checklist_app.operations.straight_lift.choices import Rig

SEVERAL = (Rig.THREE_LEGS, Rig.FOUR_LEGS)
IN_SPACE = (Rig.ONE_LEG, *SEVERAL)
ON_ONE_HOOK = (*IN_SPACE, Rig.TWO_LEGS, Rig.RUNNING)
OTHERS = tuple(rig for rig in Rig if rig is not Rig.RUNNING)
NONE_RUNS = "no sling that runs over the hook"
ON_TWO_PICKS = (Rig.TWO_LEGS, Rig.TWO_HOOKS, Rig.RUNNING)


@when("one_hook", rig=ON_ONE_HOOK)
def all_on_one_hook() -> bool:
    """Everything hangs on one hook."""
    return True


@when("one_hook", rig=Rig.TWO_HOOKS)
def each_hook_for_itself() -> bool:
    """With two hooks each is looked at for itself."""
    raise NotApplicable("two hooks: each is looked at for itself")


@when("two_hooks", rig=Rig.TWO_HOOKS)
def on_two_hooks() -> bool:
    """A leg on each of two hooks."""
    return True


@when("two_hooks", rig=ON_ONE_HOOK)
def on_one_hook() -> bool:
    """With one hook there is no second."""
    raise NotApplicable("one hook")


@when("two_picks", rig=ON_TWO_PICKS)
def on_two_picks() -> bool:
    """The load hangs on two picks."""
    return True


@when("two_picks", rig=IN_SPACE)
def on_other_picks() -> bool:
    """The load hangs on one pick, or on more than two."""
    raise NotApplicable("not two picks")


@when("two_legs", rig=(Rig.TWO_LEGS, Rig.RUNNING))
def two_legs_meet() -> bool:
    """Two legs, or the two parts of one sling, meet in one hook."""
    return True


@when("two_legs", rig=(*IN_SPACE, Rig.TWO_HOOKS))
def other_legs() -> bool:
    """Other legs hang otherwise."""
    raise NotApplicable("not two legs on one hook")


@when("several_legs", rig=SEVERAL)
def three_or_four() -> bool:
    """Three or four legs meet in one hook."""
    return True


@when("several_legs", rig=(Rig.ONE_LEG, *ON_TWO_PICKS))
def fewer_than_three() -> bool:
    """One or two legs cannot share in more than one way."""
    raise NotApplicable("fewer than three legs")


@when("legs_meet", rig=(Rig.TWO_LEGS, *SEVERAL))
def legs_on_a_common_hook() -> bool:
    """Two legs or more meet in one hook."""
    return True


@when("legs_meet", rig=(Rig.ONE_LEG, Rig.TWO_HOOKS))
def no_common_hook() -> bool:
    """One leg, or a leg to each hook."""
    raise NotApplicable("no legs that meet in one hook")


@when("legs_meet", rig=Rig.RUNNING)
def parts_never_slacken() -> bool:
    """Both parts of one sling pull alike, and neither goes slack."""
    raise NotApplicable("one sling that runs: no leg of its own; how far a push turns the load is looked at")


@when("sling_runs", rig=Rig.RUNNING)
def one_sling_runs() -> bool:
    """One sling goes from eye to eye over the hook, and runs there."""
    return True


@when("sling_runs", rig=OTHERS)
def no_sling_runs() -> bool:
    """Every leg is held at the hook."""
    raise NotApplicable(NONE_RUNS)


@when("hook_stands_over", rig=(Rig.TWO_LEGS, *SEVERAL))
def hook_over_the_load() -> bool:
    """With the load level the hook stands over its centre of gravity, and the legs follow."""
    return True


@when("hook_stands_over", rig=(Rig.ONE_LEG, Rig.TWO_HOOKS, Rig.RUNNING))
def hook_says_nothing() -> bool:
    """The legs do not follow from one hook over the load."""
    raise CannotAssess("the legs do not follow from one hook over the load: give them by their lengths")
