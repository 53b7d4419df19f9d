"""What is asked for a straight lift: one hook, two legs, each entry with its words, unit, range and ways of knowing."""

from enum import Enum

from checklist_app.mechanics.sling_modes import Hitch
from checklist_app.operations import settings
from checklist_app.operations.gear import Eye, Hoist, Hook, LoadCell, PickPoint, Shackle, Sling
from checklist_app.operations.graph import Day, Entry, Group, NotUsed
from checklist_app.operations.obtained import CG_HOW, LENGTH_HOW, MASS_HOW
from checklist_app.operations.straight_lift.trial_entries import TRIAL
from checklist_app.operations.task import Measured


class EyesGiven(Enum):
    """How it is said where the eyes are."""

    PICK_POINTS = "pick points of the load"
    DISTANCE = "distance"
    COORDINATES = "coordinates"


FROM_REGISTER = NotUsed("added up from sling and fittings")
RIGGING_FROM_REGISTER = NotUsed("added up from the gear")
TAG = settings.TAG_LENGTH.value

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
HOOK = (
    Entry("hoist", "hoist", Hoist),
    Entry("load_cell", "load cell", LoadCell, may_be_none=True),
    Entry("hook_fitting", "fitting that gathers both legs", Shackle | Hook, may_be_none=True),
)
LEG = (
    Entry("sling", "sling", Sling),
    Entry("hitch", "hitch", Hitch),
    Entry(
        "leg_length_m", "leg, bearing to bearing", float, "m", 0.05, 30.0, (0.4, 4.0), LENGTH_HOW, may_be_none=True,
        default=FROM_REGISTER, hint="From where the legs meet to the eye. Left open: sling and fittings are added up.",
    ),
    Entry(
        "sling_off_tag", "sling longer than its tag says, as a share of it", float, "", -0.2, 0.2, (-TAG, TAG),
        default=Measured(0.0, plus_minus=TAG),
    ),
    Entry("top_fitting", "fitting at the top", Shackle | Hook, may_be_none=True),
    Entry("bottom_fitting", "fitting at the bottom", Shackle | Hook, may_be_none=True),
    Entry("eye", "eye", Eye, may_be_none=True, hint="None where the pick point is itself a lug."),
    Entry("carrier", "what carries the eye", PickPoint),
    Entry("eye_x_m", "eye, lengthwise", float, "m", -20.0, 20.0, (-2.0, 2.0), LENGTH_HOW),
    Entry("eye_y_m", "eye, crosswise", float, "m", -10.0, 10.0, (-1.0, 1.0), LENGTH_HOW),
    Entry("eye_z_m", "eye, height", float, "m", -20.0, 20.0, (-2.0, 3.0), LENGTH_HOW),
)
ENTRIES = (
    *LOAD, *PLACE, *HOOK,
    Group("leg", "legs", LEG, at_least=2, at_most=2),
    Group("hook", "hooks", at_most=1),
    Group("trial", "trials", TRIAL),
)
