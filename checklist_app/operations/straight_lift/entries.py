"""What is asked for a straight lift: each entry with its words, unit, range and ways of knowing.

What the first procedure did not ask has a default that means what it meant: two legs on one hook, given by lengths.
"""

from checklist_app.mechanics.slings.chemicals import Chemical
from checklist_app.mechanics.slings.kinds import RuleSet
from checklist_app.operations.gear import Hoist, Hook, LoadCell, MasterLink, Shackle
from checklist_app.operations.graph import Day, Entry, Group, NotUsed
from checklist_app.operations.obtained import CG_HOW, LENGTH_HOW, MASS_HOW
from checklist_app.operations.straight_lift.choices import (
    HOOKS,
    LEGS,
    EyesGiven,
    Gathered,
    LegsGiven,
    Rig,
    ShareRule,
)
from checklist_app.operations.straight_lift.leg_entries import LEG, NOT_ASKED
from checklist_app.operations.straight_lift.trial_entries import TRIAL
from checklist_app.operations.straight_lift.way_entries import WAY
from checklist_app.operations.task import Measured

__all__ = ["ENTRIES", "EyesGiven"]

RIGGING_FROM_REGISTER = NotUsed("added up from the gear")

LOAD = (
    Entry("day", "day of the lift", Day),
    Entry(
        "mass_kg", "mass of the load", float, "kg", 1.0, 100_000.0, (200.0, 5000.0), MASS_HOW,
        hint="With everything that is on it now: fluids, base frame, loose parts tied down.",
    ),
    Entry(
        "rigging_kg", "mass of the rigging", float, "kg", 0.0, 10_000.0, (2.0, 100.0), may_be_none=True,
        default=RIGGING_FROM_REGISTER, hint="Slings, fittings, eyes, load cell. Left open: added up from the gear.",
    ),
    Entry("eyes_given", "how the eyes are given", EyesGiven),
    Entry(
        "eyes_apart_m", "distance between the eyes", float, "m", 0.05, 20.0, (0.4, 2.5), LENGTH_HOW,
        hint="Level, from the middle of the left eye to the middle of the right eye.",
    ),
    Entry(
        "eyes_across_m", "distance between the eyes, crosswise", float, "m", 0.05, 10.0, (0.2, 1.5), LENGTH_HOW,
        hint="Level, from the middle of a front eye to the middle of the rear eye behind it.",
    ),
    Entry(
        "right_eye_higher_m", "right eye higher than the left", float, "m", -10.0, 10.0, (-0.3, 0.3), LENGTH_HOW,
        hint="0 when level; below 0 when the right eye is lower.",
    ),
    Entry(
        "cg_x_m", "centre of gravity, lengthwise", float, "m", -20.0, 20.0, (-2.0, 2.0), CG_HOW,
        hint="In the load's axes; with the eyes by their distance, from the left eye to the right.",
    ),
    Entry(
        "cg_y_m", "centre of gravity, crosswise", float, "m", -10.0, 10.0, (-0.2, 0.2), CG_HOW,
        hint="0 in the load's middle plane; with the eyes by their distance, from the upright plane through them.",
    ),
    Entry(
        "cg_z_m", "centre of gravity, height", float, "m", -20.0, 20.0, (-2.0, 2.0), CG_HOW,
        hint="In the load's axes; with the eyes by their distance, from the left eye, below 0 when lower.",
    ),
    Entry(
        "bottom_z_m", "underside of the load", float, "m", -20.0, 20.0, (-3.0, 0.5), LENGTH_HOW,
        hint="Height of the lowest part, measured as the centre of gravity is.",
    ),
    Entry(
        "top_z_m", "highest part of the load", float, "m", -20.0, 20.0, (-0.5, 3.0), LENGTH_HOW,
        hint="Height of the highest part, measured as the centre of gravity is.",
    ),
)
PLACE = (
    Entry(
        "lift_height_m", "height of the underside over the floor, at the highest moment", float, "m", 0.0, 30.0,
        (0.02, 2.5), LENGTH_HOW, hint="Over the highest thing it has to clear.",
    ),
    Entry(
        "highest_hook_m", "highest hook saddle over the floor", float, "m", 0.2, 60.0, (2.0, 8.0), LENGTH_HOW,
        hint="The hook run up to its end stop.",
    ),
    Entry(
        "room_height_m", "height of the room", float, "m", 0.5, 60.0, (2.2, 10.0), LENGTH_HOW,
        hint="Lowest beam, pipe or lamp over the way of the load.",
    ),
)
RIG = (
    Entry("rig", "how the load is slung", Rig, default=Rig.TWO_LEGS),
    Entry("legs_given", "how the legs are given", LegsGiven, default=LegsGiven.LENGTHS),
    Entry(
        "hook_over_eyes_m", "hook over the first eye, load level", float, "m", 0.05, 30.0, (0.4, 4.0), LENGTH_HOW,
        hint="From the first eye up to where the legs meet, the hook plumb over the centre of gravity.",
    ),
    Entry(
        "share_rule", "how four legs share the load", ShareRule, default=ShareRule.ANY_LENGTH,
        hint="A stiff load hangs on two or three of four legs: which ones, small errors of length decide.",
    ),
    Entry("rule_set", "rules that rate the slings", RuleSet, default=RuleSet.EN),
    Entry(
        "sling_temperature_c", "temperature of the slings", float, "°C", -60.0, 500.0, (-10.0, 60.0), default=NOT_ASKED,
        hint="The hottest, or the coldest, that any sling or fitting gets while it carries. Not known? Measure it: no "
             "rule names a worst.",
    ),
    Entry("chemicals", "what gets onto the slings", Chemical, default=NOT_ASKED),
    Entry(
        "running_m", "sling from eye to eye, over the hook", float, "m", 0.1, 60.0, (1.0, 8.0), LENGTH_HOW,
        may_be_none=True, hint="Along the sling, with the fittings at both ends, from the one eye to the other.",
    ),
    Entry(
        "over_hook_mm", "narrowest that the sling runs over", float, "mm", 3.0, 500.0, (20.0, 120.0),
        hint="Thickness of the hook's bowl, or diameter of the pin or link the sling lies on.",
    ),
)
HOOK = (
    Entry("hoist", "hoist", Hoist),
    Entry("load_cell", "load cell", LoadCell, may_be_none=True),
    Entry(
        "step_way", "which hook is ahead: the left at −1, the right at 1", float, "", -1.0, 1.0, (-1.0, 1.0),
        default=Measured(0.0, plus_minus=1.0),
    ),
    Entry("hook_fitting", "fitting that gathers both legs", Shackle | Hook | MasterLink, may_be_none=True),
    Entry(
        "hook_shackle", "legs in the shackle that gathers them", Gathered,
        default=NotUsed("not asked: taken to lie in its bow"),
    ),
)
ROW_OF_HOOK = (
    Entry("hook_hoist", "hoist", Hoist),
    Entry("hook_load_cell", "load cell", LoadCell, may_be_none=True),
    Entry(
        "hook_at_x_m", "hook, lengthwise", float, "m", -20.0, 20.0, (-2.0, 3.0), LENGTH_HOW,
        hint="Measured as the eyes are: from the left eye, or in the load's axes.",
    ),
    Entry(
        "hook_over_m", "hook over the left hook", float, "m", -10.0, 10.0, (-0.5, 0.5), LENGTH_HOW,
        hint="How much higher it stands than the left hook; 0 for the left hook itself, below 0 when lower.",
    ),
)
ENTRIES = (
    *LOAD, *PLACE, *RIG, *HOOK, *WAY,
    Group("leg", "legs", LEG, at_least=1, at_most=4, rows_by=("rig", LEGS)),
    Group("hook", "hooks", ROW_OF_HOOK, at_most=2, rows_by=("rig", HOOKS)),
    Group("trial", "trials", TRIAL),
)
