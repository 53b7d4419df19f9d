"""Corners strewn evenly over all uncertain entries, and what each entry does there on the whole.

Each entry lies half the time on either end, and as often with either end of every other: the rows of a Hadamard
matrix. Up to 32 entries have each corner's opposite among them, so that what two entries do together does not pass for
what one does.
"""

from collections.abc import Iterator, Sequence
from math import fsum, sqrt
from typing import NamedTuple

FOLDED_UP_TO = 32


class Tendency(NamedTuple):
    """What each entry does to a number on the whole, from the middle to its high end; and all that this leaves over."""

    slopes: tuple[float, ...]
    rest: float


def corners(count: int) -> Iterator[tuple[int, ...]]:
    """For so many entries which end of each, 0 the low and 2 the high one.

    Example:
        >>> list(corners(2))
        [(2, 2), (2, 0), (0, 0), (0, 2)]
    """
    first, size = _first_and_size(count)
    for row in range(size):
        yield tuple(0 if (row & column).bit_count() & 1 else 2 for column in range(first, first + count))


def tendency(numbers: Sequence[float], count: int) -> Tendency:
    """Slopes from what a number came to in each of the `corners`.

    Args:
        numbers: one for each corner, in order.
        count: how many entries.

    Example:
        >>> tendency([3.0, 1.0, -3.0, -1.0], 2)
        Tendency(slopes=(2.0, 1.0), rest=0.0)
    """
    first, size = _first_and_size(count)
    parts, half = list(numbers), 1
    while half < size:
        for low in range(size):
            if not low & half:
                one, other = parts[low], parts[low + half]
                parts[low], parts[low + half] = one + other, one - other
        half *= 2
    shares = [part / size for part in parts]
    others = (*shares[1:first], *shares[first + count:])
    return Tendency(tuple(shares[first:first + count]), sqrt(fsum([share * share for share in others])))


def _first_and_size(count: int) -> tuple[int, int]:
    """The first column of the matrix that is used, and how many rows it has."""
    size = 1
    while size < count + (count > FOLDED_UP_TO):
        size *= 2
    return (1, size) if count > FOLDED_UP_TO else (size, 2 * size)
