"""Every run that the rules ask for, one way at a time, of the load on what it stands on."""

from checklist_app.operations.graph import at_nominal, each, kept
from checklist_app.operations.lashing.asked import Asked
from checklist_app.operations.lashing.lashed import Lashed
from checklist_app.operations.lashing.run import Governs, Runs, all_runs, governs, runs_of


@kept
@each("direction")
def slid_load(load_lashed: Lashed, asked: Asked, load_friction_there: float) -> Runs:
    """Every run against sliding on what the load stands on."""
    return runs_of(load_lashed, asked.slides, load_friction_there)


@kept
@each("direction")
def tipped_load(load_lashed: Lashed, asked: Asked, load_friction_there: float) -> Runs:
    """Every run against tipping over an edge of what the load stands on."""
    return runs_of(load_lashed, asked.tips_tied if load_lashed.tied else asked.tips, load_friction_there)


@each("direction")
def slide_of_load(slid_load: Runs) -> Governs:
    """The run against sliding that governs."""
    return governs(slid_load)


@each("direction")
def tip_of_load(tipped_load: Runs) -> Governs:
    """The run against tipping that governs."""
    return governs(tipped_load)


@at_nominal
@each("direction")
def held_load(load_lashed: Lashed, asked: Asked, load_friction_there: float) -> Runs:
    """Every run on what the load stands on, sliding first, now and settled."""
    return all_runs(load_lashed, asked, load_friction_there)
