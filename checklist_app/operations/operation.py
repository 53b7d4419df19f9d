"""An operation of the catalogue: its table, its words, a complete example, and the names of its checks."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.operations.table import Table, TableError

CAUTIONS = (
    "These checks support, and do not replace, a competent person's plan, the makers' plates and local law.",
    "Nothing over 100 % of a rated limit, no quarantined or out-of-date gear and no unproved own-built accessory can be"
    " signed off, by anybody.",
)


@dataclass(frozen=True)
class Operation:
    """One kind of work with a load.

    `checks` names every check function of the table, so that one lost from a module is missed here. `picture` and
    `class_quantity` name quantities, or are empty.
    """

    name: str
    words: str
    table: Table
    example: Mapping[str, Any]
    checks: tuple[str, ...]
    picture: str = ""
    class_quantity: str = ""
    cautions: tuple[str, ...] = CAUTIONS

    def __post_init__(self) -> None:
        """Raise `TableError` unless the table holds just the checks that are named."""
        lost = sorted(set(self.checks) - set(self.table.checks))
        unnamed = sorted(set(self.table.checks) - set(self.checks))
        if lost or unnamed:
            raise TableError(f"{self.name}: checks lost: {', '.join(lost)}; checks not named: {', '.join(unnamed)}")
        for name in (self.picture, self.class_quantity):
            if name and name not in self.table.ways:
                raise TableError(f"{self.name}: there is no quantity {name}")
