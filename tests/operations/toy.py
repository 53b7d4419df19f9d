"""Small operations made of text, to prove what is refused at import and how rows and branches go."""

import types

from checklist_app.operations.table import Table

HEAD = """
from enum import Enum
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.exact import atan2_deg, let, sqrt
from checklist_app.operations.check import AtLimit, Check, Limit, State, Strength, check, highest_utilisation
from checklist_app.operations.drawing import Drawing
from checklist_app.operations.graph import (
    CannotAssess, Day, Entry, Group, Known, NotApplicable, NotUsed, Obtained, Range, Waits, across, at_nominal,
    dont_know, each, when,
)
class Way(Enum):
    ONE = "one"
    TWO = "two"
class Side(Enum):
    NORTH = "north"
    SOUTH = "south"
"""
ENTRIES = """
ENTRIES = (
    Entry("way", "way", Way), Entry("mass", "mass of the load", float, "kg"),
    Entry("height", "height", float, "m"),
    Group("leg", "legs", (
        Entry("length", "length", float, "m"), Entry("ring", "ring", float, "m", may_be_none=True),
    ), at_least=2, at_most=2),
    Group("side", "sides", fixed=Side),
)
"""


def table(*sources: str, entries: str = ENTRIES) -> Table:
    """The table of modules with these texts; the entries stand in the first."""
    modules = []
    for number, source in enumerate(sources):
        module = types.ModuleType(f"toy_{number}")
        exec(HEAD + (entries if number == 0 else "") + source, module.__dict__)
        modules.append(module)
    return Table(*modules)
