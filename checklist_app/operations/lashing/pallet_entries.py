"""What is asked beside it where a load is lashed to its pallet or skid: floor and forks under it."""

from checklist_app.operations.graph import Entry, NotUsed
from checklist_app.operations.lashing.choices import ForksEnter
from checklist_app.operations.lashing.lashing_entries import GROUPS
from checklist_app.operations.lashing.load_entries import LOAD, ROUTE, SHIP, STANDING
from checklist_app.operations.obtained import LENGTH_HOW

NO_FORKS = NotUsed("no truck lifts it")
FLOOR = (
    Entry("floor_kg_m", "what a metre of the floor takes along a bearer", float, "kg/m", 20.0, 50_000.0,
          (200.0, 6_000.0), may_be_none=True, hint="Of the floor it will stand on. None where it is solid ground."),
    Entry("forks_apart_m", "forks, outer edge to outer edge", float, "m", 0.1, 3.0, (0.4, 1.4), LENGTH_HOW,
          may_be_none=True, hint="As the truck will take it. None where no truck lifts it."),
    Entry("forks_reach_m", "how far the forks reach under it", float, "m", 0.1, 4.0, (0.6, 2.0), LENGTH_HOW,
          may_be_none=True, default=NO_FORKS, hint="From the edge of the pallet at the mast to the tips."),
    Entry("forks_enter", "from where the truck takes it", ForksEnter, may_be_none=True, default=NO_FORKS),
)
ENTRIES = (*LOAD, *STANDING, *ROUTE, *SHIP, *FLOOR, *GROUPS)
