"""Rows that people add: lashings and blocks, each numbered; what a copy takes over, and what its mirror image turns."""
from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any


@dataclass(frozen=True)
class Mirror:
    """One way of mirroring a row.

    `turns`: numbers that change their sign. `swaps`: by the name of a choice, which answer becomes which. `not_for`: it
    is not offered while all these conditions hold, because the row is its own mirror image then.
    """

    words: str
    turns: tuple[str, ...] = ()
    swaps: Mapping[str, Mapping[str, str]] = field(default_factory=dict, hash=False)
    not_for: tuple[str, ...] = ()


@dataclass(frozen=True)
class Adds:
    """A group whose rows people add, at most so many.

    `one` is what a row is called. `more`: the button that adds one. `anew`: what a copy does not take over, because it
    is another item, or was read on that one; where nothing may be, `copied` is false. `confirm`: what it does not take
    over either, but offers for one tap where the answers of `alike` are the same. `mirrors`: the mirror images that are
    offered.
    """

    one: str
    more: str
    most: int
    anew: tuple[str, ...] = ()
    confirm: tuple[str, ...] = ()
    alike: tuple[str, ...] = ()
    mirrors: tuple[Mirror, ...] = ()
    copied: bool = True


def adds(data: Mapping[str, Any]) -> Adds:
    """As a procedure writes it."""
    return Adds(data["one"], data["more"], data["most"], tuple(data.get("anew", ())),
                tuple(data.get("confirm", ())), tuple(data.get("alike", ())),
                tuple(_mirror(each) for each in data.get("mirror", ())), data.get("copied", True))


def _mirror(data: Mapping[str, Any]) -> Mirror:
    swaps = {name: {**pair, **{other: one for one, other in pair.items()}}
             for name, pair in data.get("swaps", {}).items()}
    return Mirror(data["words"], tuple(data.get("turns", ())), swaps, tuple(data.get("not_for", ())))
