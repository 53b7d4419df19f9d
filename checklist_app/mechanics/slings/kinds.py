"""The choices that a rating of a sling hangs on: what it is, how it is put on, whose rules, how many legs count."""

from enum import Enum


class SlingKind(Enum):
    """What the sling is made as."""

    FLAT_WEBBING = "flat webbing sling"
    ROUNDSLING = "roundsling"
    CHAIN = "chain sling"
    WIRE_ROPE = "wire rope sling"

    @property
    def is_textile(self) -> bool:
        """Webbing and roundslings."""
        return self in (SlingKind.FLAT_WEBBING, SlingKind.ROUNDSLING)


class Hitch(Enum):
    """How one sling is put on.

    A basket and a sling laid double carry in two parts, each held against the straight rating by its own pull. A second
    wrap grips better and carries no more.
    """

    STRAIGHT = "straight"
    CHOKED = "choked"
    BASKET = "basket"
    DOUBLED = "laid double over the fitting"
    DOUBLED_CHOKED = "laid double and choked"
    DOUBLE_WRAPPED_CHOKED = "wrapped twice and choked"
    DOUBLE_WRAPPED_BASKET = "wrapped twice in a basket"

    @property
    def is_choked(self) -> bool:
        """Whether the sling bites on itself."""
        return self in (Hitch.CHOKED, Hitch.DOUBLED_CHOKED, Hitch.DOUBLE_WRAPPED_CHOKED)

    @property
    def is_basket(self) -> bool:
        """Whether two parts go up to the hook, rated together as a basket."""
        return self in (Hitch.BASKET, Hitch.DOUBLED, Hitch.DOUBLE_WRAPPED_BASKET)


class RuleSet(Enum):
    """Whose factors are applied; always named, printed in the record, never assumed."""

    EN = "EN 1492, EN 818-4, EN 13414-1: mode factors by bands of the angle from vertical"
    US = "US practice after ASME B30.9: sine of the angle from horizontal, choker ratings by angle of choke"


class LegRule(Enum):
    """How many legs of a stiff load count in a tabulated rating."""

    TWO_DIAGONAL_LEGS = "of four legs the two on a diagonal carry all; three legs all count"
    THREE_LEGS = "three legs count, of three or of four"
    TWO_LEGS = "two legs count, of three or of four"
