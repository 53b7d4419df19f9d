"""What is asked beside it where a load is lashed on a vehicle: the deck, the second face, the place on the deck."""

from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.operations.gear import Vehicle
from checklist_app.operations.graph import Entry, NotUsed
from checklist_app.operations.lashing.lashing_entries import GROUPS
from checklist_app.operations.lashing.load_entries import AS_MEASURED, LOAD, NOT_MEASURED, ROUTE, SHIP, STANDING
from checklist_app.operations.obtained import FRICTION_HOW, LENGTH_HOW

NOTHING_ELSE = NotUsed("nothing else is on it")
DECK = (
    Entry("vehicle", "vehicle", Vehicle),
    Entry("deck_pair", "what meets on the deck under the pallet", Pair),
    Entry("deck_surface", "what is on those faces", Surface, hint="Sweep it, look again, then answer."),
    Entry("deck_friction", "friction on the deck, as measured", float, "", 0.0, 1.0, (0.05, 0.7), FRICTION_HOW,
          may_be_none=True, default=NOT_MEASURED, hint=AS_MEASURED),
    Entry("behind_headboard_m", "middle of the load behind the headboard", float, "m", 0.0, 20.0, (0.4, 13.0),
          LENGTH_HOW, hint="From the headboard back to the middle between its feet."),
    Entry("other_kg", "other load on the vehicle", float, "kg", 1.0, 60_000.0, (50.0, 25_000.0),
          may_be_none=True, hint="None where it travels alone."),
    Entry("other_behind_headboard_m", "centre of gravity of the other load, behind the headboard", float, "m", 0.0,
          20.0, (0.3, 13.0), LENGTH_HOW, may_be_none=True, default=NOTHING_ELSE),
)
ENTRIES = (*LOAD, *STANDING, *ROUTE, *SHIP, *DECK, *GROUPS)
