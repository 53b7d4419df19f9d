"""What is asked of each leg: its gear from the top down, how long it is, how it is put on, what it touches."""

from checklist_app.mechanics.fittings.eye_marking import PullPlane
from checklist_app.mechanics.fittings.eye_use import Turning
from checklist_app.mechanics.slings.kinds import Hitch
from checklist_app.mechanics.slings.slip import Face
from checklist_app.mechanics.slings.wrap import Stop
from checklist_app.operations import settings
from checklist_app.operations.gear import Eye, Hook, PickPoint, Shackle, Sling
from checklist_app.operations.graph import Entry, NotUsed
from checklist_app.operations.obtained import ANGLE_HOW, FRICTION_HOW, LENGTH_HOW
from checklist_app.operations.straight_lift.choices import OnPin, Protected, ShacklePull
from checklist_app.operations.task import Measured

FROM_REGISTER = NotUsed("added up from sling and fittings")
NOT_ASKED = NotUsed("not asked")
RING_NOT_ASKED = NotUsed("not asked: along or across its ring, whichever is rated lower; unrated across, along it")
SHACKLE_NOT_ASKED = NotUsed("not asked: taken to be in line")
PIN_NOT_ASKED = NotUsed("not asked: taken to be one part that does not run")
TAG = settings.TAG_LENGTH.value

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
    Entry(
        "leg_angle_read_deg", "leg from vertical, as read", float, "°", 0.0, 80.0, (5.0, 60.0), ANGLE_HOW,
        may_be_none=True, default=NotUsed("not read"), hint="From plumb, by an inclinometer laid on the sling.",
    ),
    Entry(
        "choke_angle_deg", "angle of choke", float, "°", 0.0, 180.0, (60.0, 135.0), ANGLE_HOW,
        hint="At the bite, between the part that goes up and the part that goes round.",
    ),
    Entry(
        "part_angle_deg", "each part of the sling from the line of the leg", float, "°", 0.0, 60.0, (0.0, 45.0),
        ANGLE_HOW, hint="Half the angle between the two parts that go up. 0 where they hang side by side.",
    ),
    Entry(
        "bend_mm", "narrowest that the sling is bent round", float, "mm", 3.0, 3000.0, (20.0, 600.0), may_be_none=True,
        default=NOT_ASKED, hint="Diameter of a pin or hook, or twice the radius of a corner.",
    ),
    Entry(
        "edge_mm", "radius of the sharpest edge the sling touches", float, "mm", 0.0, 1000.0, (0.5, 50.0),
        may_be_none=True, default=NOT_ASKED,
    ),
    Entry("edge_protected", "protection at the edges", Protected, default=NOT_ASKED),
    Entry(
        "friction", "friction between sling and load, as measured", float, "", 0.0, 1.0, (0.05, 0.6), FRICTION_HOW,
        may_be_none=True, default=NotUsed("not measured: the published value is taken"),
        hint="On these very faces: pull that makes it slip / force that presses it on.",
    ),
    Entry("face", "face under the sling", Face),
    Entry("stop", "what keeps the sling from sliding", Stop),
    Entry("eye_turned", "pull on the eye", PullPlane, default=RING_NOT_ASKED),
    Entry("shackle_pull", "pull on the shackles", ShacklePull, default=SHACKLE_NOT_ASKED),
    Entry("shackle_pin", "what sits on the pins of the shackles", OnPin, default=PIN_NOT_ASKED),
    Entry("turning", "what keeps the load from turning", Turning, default=NOT_ASKED),
)
