"""What a drawing of a lashed load shows, as plain points in the axes of the vehicle."""

from typing import NamedTuple

from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.looks import Look

End = tuple[Vec, Vec]
UNIT = 0.018


class Tied(NamedTuple):
    """One lashing: where its ends leave the load and are anchored, what pulls in it, how much of its rating is used.

    `share` is the highest use, 0 while nobody knows it, and `used` the same in words; `number` stands in the drawing,
    `check` is the one of its part that is used most. `over`: its own pull is over what it is rated for.
    """

    label: str
    ends: tuple[End, ...]
    kind: Kind | None = None
    pull_dan: float | None = None
    share: float = 0.0
    used: str = ""
    governs: bool = False
    number: str = ""
    check: str = ""
    over: bool = False

    @property
    def name(self) -> str:
        """As it is called."""
        return self.label.replace("_", " ")


class Stop(NamedTuple):
    """A block: where it touches, which way it keeps the load from moving, what it holds."""

    words: str
    at: Vec
    keeps_from: Direction
    most_dan: float | None = None


class Deck(NamedTuple):
    """The deck of a vehicle; the load stands so far behind its headboard, and in the middle of its width."""

    headboard_x_m: float
    length_m: float
    width_m: float


class Bar(NamedTuple):
    """One way to move: how many times what is needed is withstood, as stated and at its worst.

    Nothing where no number could be told; then `verdict` says why.
    """

    check: str
    words: str
    direction: Direction
    verdict: str
    times: float | None = None
    worst: float | None = None
    need_dan: float | None = None
    tips: bool = False
    on_deck: bool = False


class Shown(NamedTuple):
    """Everything that a view draws. Sizes are length, width, height; what nobody told is None.

    `cg_range` are the lowest and the highest corner of where the centre of gravity may lie.
    """

    size: Vec
    base: tuple[float, float] | None = None
    soft_m: float = 0.0
    on_feet: bool = True
    pallet: Vec | None = None
    deck: Deck | None = None
    cg: Vec | None = None
    cg_range: End | None = None
    tied: tuple[Tied, ...] = ()
    stops: tuple[Stop, ...] = ()
    bars: tuple[Bar, ...] = ()

    @property
    def points(self) -> tuple[Vec, ...]:
        """Everything that is drawn reaches to these."""
        bodies = [(self.size, self.size.z), *([(self.pallet, 0.0)] if self.pallet is not None else [])]
        corners = [Vec(side * body.x / 2.0, side * body.y / 2.0, z) for body, top in bodies for side in (-1.0, 1.0)
                   for z in (self.ground_z_m, top)]
        ends = [point for each in self.tied for end in each.ends for point in end]

        return (*corners, *ends, *(stop.at for stop in self.stops))

    def unit_m(self, look: Look) -> float:
        """What marks are measured by in a view, so that they look alike whatever its scale."""
        seen = [look.at(point) for point in self.points]
        across, up = [each[0] for each in seen], [each[1] for each in seen]

        return UNIT * max(max(across) - min(across), max(up) - min(up))

    @property
    def ground_z_m(self) -> float:
        """The deck, or the floor under the pallet."""
        return -self.pallet.z if self.pallet is not None else 0.0

    @property
    def tips_over(self) -> Bar | None:
        """The way it goes over first; none while nobody can tell."""
        return weakest(tuple(bar for bar in self.bars if bar.tips))

    @property
    def pushed(self) -> Bar | None:
        """The way in which least is left."""
        return weakest(self.bars)


def weakest(bars: tuple[Bar, ...]) -> Bar | None:
    """The one of which least is withstood, at its worst.

    Example:
        >>> weakest(()) is None
        True
    """
    told = [bar for bar in bars if bar.worst is not None]

    return min(told, key=lambda bar: bar.worst or 0.0, default=None)
