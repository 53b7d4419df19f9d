"""Where two texts of one record differ, in the words of somebody who reads it."""

from collections.abc import Iterator, Mapping
from typing import Any

NAMES = ("question", "title", "tag", "act", "name", "words", "subject", "part", "entry", "id")
GONE = "nothing"


def differences(sealed: Any, now: Any, where: str = "record") -> Iterator[str]:
    """Each field that is not as it was sealed.

    >>> list(differences({"answers": [{"question": "Mass", "answer": "2400 kg"}]},
    ...                  {"answers": [{"question": "Mass", "answer": "900 kg"}]}))
    ['answers, Mass, answer: sealed as 2400 kg, it now reads 900 kg']
    """
    if sealed == now:
        return
    if isinstance(sealed, Mapping) and isinstance(now, Mapping):
        for name in sorted(sealed.keys() | now.keys()):
            yield from differences(sealed.get(name), now.get(name), under(where, spaced(name)))
    elif isinstance(sealed, list) and isinstance(now, list):
        yield from in_list(sealed, now, where)
    else:
        yield f"{where}: sealed as {short(sealed)}, it now reads {short(now)}"


def in_list(sealed: list[Any], now: list[Any], where: str) -> Iterator[str]:
    if len(sealed) != len(now):
        yield f"{where}: {len(sealed)} were sealed, now there are {len(now)}"
    for number, (then, here) in enumerate(zip(sealed, now, strict=False), 1):
        yield from differences(then, here, under(where, called(then, number)))


def called(item: Any, number: int) -> str:
    """What an item of a list is called: by its own name if it has one, else by its place."""
    named = next((item[name] for name in NAMES if item.get(name)), None) if isinstance(item, Mapping) else None
    row = f", {item['row']}" if isinstance(item, Mapping) and item.get("row") else ""

    return f"{named}{row}" if isinstance(named, str) else f"number {number}"


def under(where: str, name: str) -> str:
    return name if where == "record" else f"{where}, {name}"


def spaced(name: str) -> str:
    return name.replace("_", " ")


def short(value: Any) -> str:
    """A value as it can stand in a sentence."""
    text = GONE if value is None or value == "" else str(value)
    return text if len(text) <= 120 else f"{text[:117]}…"
