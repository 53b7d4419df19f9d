"""What is written beside the legs of a drawing, and the drawing in words for who cannot see it."""

from collections.abc import Iterator, Sequence
from textwrap import wrap
from typing import NamedTuple

from checklist_app.operations.drawing import Anchor, Point, Role, Text
from checklist_app.operations.looks import Look
from checklist_app.operations.straight_lift.hung import Hung, Leg
from checklist_app.operations.straight_lift.labels import degrees, metres, tonnes

LINE, BIG, LONGEST = 1.25, 0.71, 18
SIDES = ((-1.0, Anchor.END), (1.0, Anchor.START))


class Said(NamedTuple):
    """One line of words about a leg."""

    words: str
    role: Role
    about: tuple[str, ...] = ()


BETWEEN = Said("", Role.TEXT)


def drawing(hung: Hung) -> str:
    """The drawing in words."""
    hooks = "one hook" if len(hung.hooks) == 1 else "two hooks"
    hooks = "one sling that runs over the hook" if hung.runs else hooks
    tilts = (("lengthwise", hung.tilt_along_deg), ("crosswise", hung.tilt_across_deg))
    tilt = [f"tilt {way} {degrees(abs(angle))}" for way, angle in tilts if angle is not None]

    return f"The load on {hooks}, as it will hang: " + "; ".join((legs(hung), *tilt)) + "."


def moved(hung: Hung) -> str:
    """What moves it aside, in words."""
    gust = f", a gust pushes with {1000.0 * hung.wind_kn:.0f} N" if hung.wind_kn is not None else ""

    return f"{gust}, it swings out {metres(hung.swing_out_m)}" if hung.swing_out_m else gust


def legs(hung: Hung) -> str:
    """Every leg in one sentence."""
    return "; ".join(_leg(leg) for leg in hung.legs if leg.angle_deg is not None)


def _leg(leg: Leg) -> str:
    pulls = f" pulls {tonnes(leg.pull_t)}" if leg.pull_t is not None else ""
    used = f", used {leg.used}" if leg.used else ""

    return f"{leg.words} leg at {degrees(leg.angle_deg or 0.0)} from vertical{pulls}{used}"


def beside_legs(hung: Hung, look: Look, away_m: float) -> Iterator[Text]:
    """Two legs, each on its side; of more, on each side the one that is used most."""
    for outwards, anchor in SIDES:
        here = [leg for leg in hung.legs if _side(leg, hung, look) == outwards]
        if here:
            ends = [end for leg in here for end in (leg.eye, leg.hook)]
            edge = max(outwards * look.at(end)[0] for end in (*ends, *(hung.corners if len(hung.hooks) > 1 else ())))
            at = (outwards * (edge + away_m), max(look.at(leg.hook)[1] for leg in here))
            yield from _block(in_full(max(here, key=lambda leg: leg.highest), len(hung.legs) > 2), at, anchor)


def at_eyes(hung: Hung, look: Look, away_m: float) -> Iterator[Text]:
    """From above: beside the load a column of the legs on that side, the rear ones first."""
    middle, edges = look.at(hung.cg)[0], [look.at(point)[0] for point in hung.corners]
    for outwards, anchor in SIDES:
        here = [leg for leg in hung.legs if (look.at(leg.eye)[0] >= middle) == (outwards > 0.0)]
        if here:
            edge = max(outwards * across for across in (*(look.at(leg.eye)[0] for leg in here), *edges))
            here.sort(key=lambda leg: -look.at(leg.eye)[1])
            lines = [line for leg in here for line in (*_pull(leg, named=True), BETWEEN)][:-1]
            up = (look.at(here[0].eye)[1] + look.at(here[-1].eye)[1]) / 2.0
            yield from _block(lines, (outwards * (edge + away_m), up), anchor, lift=(len(lines) - 1) / 2.0)


def in_full(leg: Leg, named: bool) -> list[Said]:
    """Pull, use, angle and length of one leg; of one among many its name instead of its length."""
    lines = _pull(leg, named)
    if leg.angle_deg is not None:
        lines.append(Said(f"{'β ' * named}{degrees(leg.angle_deg)}", Role.TEXT_ANGLE, (f"leg_angle[{leg.label}]",)))
    if leg.length_m is not None and not named:
        lines.append(Said(f"{leg.words} {metres(leg.length_m)}", Role.TEXT_SOFT, (f"leg_length_m[{leg.label}]",)))

    return lines


def _pull(leg: Leg, named: bool) -> list[Said]:
    about = (f"sling_strength[{leg.label}]",)
    pull = tonnes(leg.pull_t) if leg.pull_t is not None else ""
    governs = [(line, Role.TEXT) for line in wrap(leg.governs, LONGEST)]
    found = [(pull, Role.TEXT_BIG), (leg.words * named, Role.TEXT), (leg.used, Role.TEXT), *governs]

    return [Said(words, role, about) for words, role in found if words]


def _side(leg: Leg, hung: Hung, look: Look) -> float:
    """Left or right: of two legs the one further left, of others by the centre of gravity."""
    if len(hung.legs) == 2:
        return -1.0 if look.at(leg.eye) == min(look.at(each.eye) for each in hung.legs) else 1.0
    return -1.0 if look.at(leg.eye)[0] < look.at(hung.cg)[0] - 1e-9 else 1.0


def _block(lines: Sequence[Said], at: Point, anchor: Anchor, lift: float = 0.0) -> Iterator[Text]:
    """Lines below each other, moved up by so many of them; large words count their own, larger lines."""
    for row, line in enumerate(lines):
        part = BIG if line.role is Role.TEXT_BIG else 1.0
        if line.words:
            yield Text(at, line.words, line.role, anchor, LINE * (row - lift) * part, line.about)
