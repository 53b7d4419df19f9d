"""What a kind of thing is: its fields with sensible ranges as plain data, and the fields that most kinds share."""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any

from checklist_app.operations.fields import Field, FieldType

NUMBER, DATE, FLAG, ROWS, CHOICE = FieldType.NUMBER, FieldType.DATE, FieldType.FLAG, FieldType.ROWS, FieldType.CHOICE
WHOLE = FieldType.WHOLE
Facts = Mapping[str, Any]
Rule = Callable[[Facts], dict[str, str]]
OWN_BUILT = "own-built"


@dataclass(frozen=True)
class Kind:
    """One kind: its fields today, and how facts written by an older version are brought up, version by version."""

    name: str
    words: str
    plural: str
    register: str
    fields: tuple[Field, ...]
    version: int = 1
    older: Mapping[int, Callable[[Facts], Facts]] = field(default_factory=dict)
    rules: tuple[Rule, ...] = ()

    @property
    def schema(self) -> str:
        """The name a kept version carries.

        Example:
            >>> from checklist_app.operations.kinds import KINDS
            >>> KINDS["flat_sling"].schema
            'flat_sling/1'
        """
        return f"{self.name}/{self.version}"


def lacks(kind: Kind, facts: Facts) -> tuple[str, ...]:
    """The proofs that an own-built item has not got; empty for what was bought."""
    if facts.get("origin") != OWN_BUILT:
        return ()

    return tuple(each.words for each in PROOFS if each in kind.fields and not facts.get(each.name))


WLL = Field("wll_t", "WLL on the tag or plate", NUMBER, "t", 0.05, 100.0, True, usual=(0.5, 10.0))
PROOFS = (
    Field("drawing_ref", "drawing"),
    Field("design_check", "design check"),
    Field("proof_test", "proof test"),
    Field("declaration", "declaration of conformity"),
)
MADE = (
    Field("maker", "maker"),
    Field("serial", "serial number"),
    Field("standard", "standard on the tag or plate"),
)
KEPT = (
    Field("mass_kg", "own mass", NUMBER, "kg", 0.01, 20_000.0, usual=(0.2, 100.0)),
    Field("marked", "marked so that it can be read", FLAG, required=True),
    Field("origin", "where it comes from", CHOICE, required=True, choices=("bought", OWN_BUILT)),
    *PROOFS,
)
