"""What is asked of the load, what it stands on, the route and the rules; x forwards, y to the left, z upwards.

Lengths count from the middle of what the load stands on; z = 0 is the face under its feet.
"""

from checklist_app.mechanics.lashing.css_forces import Level
from checklist_app.mechanics.lashing.demands import TiltRule
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.lashed_body import Stands
from checklist_app.mechanics.lashing.pallet import Bearing
from checklist_app.mechanics.lashing.rule_sets import RuleSet
from checklist_app.mechanics.lashing.transport import Waters
from checklist_app.operations.gear import Pallet
from checklist_app.operations.graph import Day, Entry, NotUsed
from checklist_app.operations.lashing.choices import Lies, OnDeck, Route
from checklist_app.operations.obtained import CG_HOW, FRICTION_HOW, LENGTH_HOW, MASS_HOW

NOT_MEASURED = NotUsed("not measured: the published value is taken")
AS_MEASURED = "Pull that makes it slip / its weight. More than is published for these faces counts as published."

LOAD = (
    Entry("day", "day it leaves", Day),
    Entry("mass_kg", "mass of the load", float, "kg", 1.0, 100_000.0, (200.0, 5000.0), MASS_HOW,
          hint="As it will travel: drained or not, with base frame and everything tied to it."),
    Entry("cg_x_m", "centre of gravity, forwards of the middle", float, "m", -10.0, 10.0, (-0.5, 0.5), CG_HOW,
          hint="From the middle between its feet; below 0 when it lies behind."),
    Entry("cg_y_m", "centre of gravity, left of the middle", float, "m", -5.0, 5.0, (-0.2, 0.2), CG_HOW,
          hint="From the middle between its feet; below 0 when it lies to the right."),
    Entry("cg_z_m", "centre of gravity, height over the face it stands on", float, "m", 0.01, 10.0, (0.2, 2.0), CG_HOW,
          hint="From the underside of its feet or bearers."),
    Entry("length_m", "length of the load, over all", float, "m", 0.1, 20.0, (0.5, 5.0), LENGTH_HOW),
    Entry("width_m", "width of the load, over all", float, "m", 0.1, 5.0, (0.4, 2.5), LENGTH_HOW),
    Entry("height_m", "height of the load, over all", float, "m", 0.1, 5.0, (0.4, 3.0), LENGTH_HOW),
    Entry("stands", "what it stands on", Stands),
    Entry("base_length_m", "length of what it stands on", float, "m", 0.05, 20.0, (0.3, 4.0), LENGTH_HOW,
          hint="From the outer edge of the front feet to that of the rear ones. Feet count, not the pallet."),
    Entry("base_width_m", "width of what it stands on", float, "m", 0.05, 5.0, (0.2, 2.4), LENGTH_HOW,
          hint="From the outer edge of the left feet to that of the right ones. Feet count, not the pallet."),
    Entry("edge_gives_m", "soft at the edge, as far in as", float, "m", 0.0, 0.5, (0.0, 0.1), LENGTH_HOW,
          may_be_none=True, hint="Board or timber that is crushed under the edge. None where it stands hard."),
)
STANDING = (
    Entry("pallet", "pallet or skid", Pallet, may_be_none=True, hint="None where it stands on the deck itself."),
    Entry("bearing", "how it stands on the pallet", Bearing),
    Entry("pallet_lies", "which way the pallet lies", Lies, default=Lies.EITHER),
    Entry("load_pair", "what meets under the load", Pair),
    Entry("load_surface", "what is on those faces", Surface,
          hint="An engine drips. Wipe it off, look again, then answer."),
    Entry("load_friction", "friction under the load, as measured", float, "", 0.0, 1.0, (0.05, 0.7), FRICTION_HOW,
          may_be_none=True, default=NOT_MEASURED, hint=AS_MEASURED),
)
ROUTE = (
    Entry("route", "how it travels", Route),
    Entry("waters", "the worst sea on the way", Waters),
    Entry("rule_set", "rules it is lashed by", RuleSet),
    Entry("tilt_rule", "tie-downs against tipping sideways on the road", TiltRule, default=TiltRule.PAIRS),
)
SHIP = (
    Entry("ship_level", "where in the ship", Level),
    Entry("ship_place", "how far forward, as a share of the ship's length", float, "", 0.0, 1.0, (0.1, 0.9)),
    Entry("ship_length_m", "length of the ship", float, "m", 50.0, 300.0, (60.0, 250.0)),
    Entry("ship_speed_kn", "service speed of the ship", float, "kn", 5.0, 30.0, (9.0, 22.0)),
    Entry("ship_b_over_gm", "breadth of the ship / its metacentric height", float, "", 3.0, 60.0, (7.0, 20.0)),
    Entry("ship_open", "open to wind and sea", OnDeck),
)
