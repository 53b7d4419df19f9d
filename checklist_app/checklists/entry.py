"""An entry: what one person said on one device, fixed where it is made, known by the SHA-256 of its bytes.

Answers, rows, photographs, stops, sign-offs and closings are entries, and so are the versions and states of the
registers. An entry holds no free text, no names and no pictures: those are parts that it names by digest, so that
a part can be removed for good while every entry and every fold stays whole.
"""

import json
import re
from collections.abc import Iterable
from dataclasses import dataclass, field
from typing import Any, TypeGuard

from checklist_app.checklists.canonical import NotCanonical, canonical, digest, parse
from checklist_app.checklists.values import HEX, SHAPES, Value, fault

FORM = 1
LARGEST_ENTRY_BYTES = 8192
MOST_REPLACED = 100
DEEPEST_PATH = 3
Path = tuple[str, ...]

WORD = re.compile(r"[A-Za-z0-9_.\-]{1,64}\Z")
MOMENT = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ\Z", re.ASCII)
NAMES = frozenset({"form", "about", "path", "value", "replaces", "author", "device", "counter", "at"})


class Unusable(ValueError):
    """These bytes are no entry. Nothing else is a reason to refuse one: what it means is judged by the fold."""


class TooNew(Unusable):
    """Made by a later version of the app: the device keeps it and offers it again after this server's update."""


@dataclass(frozen=True, slots=True)
class Entry:
    """Two entries are equal when their digests are: the bytes are the entry, the rest is read from them."""

    digest: str
    data: bytes = field(compare=False, repr=False)
    about: Path = field(compare=False)
    path: Path = field(compare=False)
    value: Value = field(compare=False)
    replaces: tuple[str, ...] = field(compare=False)
    author: str = field(compare=False)
    device: str = field(compare=False)
    counter: int = field(compare=False)
    at: str = field(compare=False)

    @property
    def type(self) -> str:
        """Type of the value, such as `number`."""
        return str(self.value["type"])

    @property
    def subject(self) -> str:
        """What the entry is about, as one word: `task/t-1`, `gear/L-07`."""
        return "/".join(self.about)


def make(about: Iterable[str], path: Iterable[str], value: Value, replaces: Iterable[str],
         author: str, device: str, counter: int, at: str) -> Entry:
    """A new entry, with its bytes and digest.

    Args:
        about: A task, or an item of a register: `("task", "t-1")`, `("gear", "L-07")`.
        path: Prompt; group and row; or group, row and prompt.
        value: What is said, by a constructor of `values`.
        replaces: Digests of what the author saw there, and of his own earlier answers on this device.
        author: Id of the person.
        device: Name of the device that makes the entry.
        counter: How many entries the device has made, this one included.
        at: The device's time, such as 2026-11-25T08:00:00Z.

    Raises:
        Unusable: If this would be no entry.
    """
    body = {"form": FORM, "about": list(about), "path": list(path), "value": value, "replaces": sorted(set(replaces)),
            "author": author, "device": device, "counter": counter, "at": at}
    try:
        return read(canonical(body))
    except NotCanonical as error:
        raise Unusable(str(error)) from error


def read(data: bytes) -> Entry:
    """The entry in these bytes, after every check that can be made without knowing any other entry.

    Raises:
        TooNew: If the form or the type of the value is from a later version of the app.
        Unusable: If the bytes are no entry.
    """
    if len(data) > LARGEST_ENTRY_BYTES:
        raise Unusable(f"larger than {LARGEST_ENTRY_BYTES} bytes")
    try:
        body = parse(data)
    except NotCanonical as error:
        raise Unusable(str(error)) from error
    _refuse_shape(body)
    _refuse_value(body["value"])

    return _from_body(data, body)


def trusted(data: bytes) -> Entry:
    """The entry in bytes that were read once before: what a load from the database uses."""
    return _from_body(data, json.loads(data))


def _from_body(data: bytes, body: dict[str, Any]) -> Entry:
    return Entry(digest(data), data, tuple(body["about"]), tuple(body["path"]), body["value"], tuple(body["replaces"]),
                 body["author"], body["device"], body["counter"], body["at"])


def _refuse_shape(body: Any) -> None:
    if not isinstance(body, dict):
        raise Unusable("an entry is an object")
    form = body.get("form")
    if _whole(form) and form > FORM:
        raise TooNew(f"form {form}; this version of the app knows {FORM}")
    if form != FORM or not _whole(form) or body.keys() != NAMES:
        raise Unusable("an entry has exactly: " + ", ".join(sorted(NAMES)))
    if not _words(body["about"], 2, 2) or not _words(body["path"], 1, DEEPEST_PATH):
        raise Unusable("about is a kind and an id; path is one to three plain names")
    if not all(isinstance(body[name], str) and WORD.match(body[name]) for name in ("author", "device")):
        raise Unusable("author and device are plain names")
    if not (_whole(body["counter"]) and body["counter"] >= 1):
        raise Unusable("counter is a whole number from 1")
    if not (isinstance(body["at"], str) and MOMENT.match(body["at"])):
        raise Unusable("at is a time such as 2026-11-25T08:00:00Z")
    _refuse_replaces(body["replaces"])


def _refuse_replaces(replaces: Any) -> None:
    if not isinstance(replaces, list) or len(replaces) > MOST_REPLACED:
        raise Unusable(f"replaces is a list of at most {MOST_REPLACED} digests")
    if not all(isinstance(name, str) and HEX.match(name) for name in replaces):
        raise Unusable("replaces names entries by their digests")
    if replaces != sorted(set(replaces)):
        raise Unusable("replaces is not in order, or names one entry twice")


def _refuse_value(value: Any) -> None:
    if not isinstance(value, dict) or not isinstance(value.get("type"), str):
        raise Unusable("a value is an object with its type")
    if value["type"] not in SHAPES:
        raise TooNew(f"a value of type {value['type'][:40]!r}, which this version of the app does not know")
    words = fault(value)
    if words:
        raise Unusable(words)


def _whole(number: object) -> TypeGuard[int]:
    return isinstance(number, int) and not isinstance(number, bool)


def _words(names: Any, least: int, most: int) -> bool:
    return (isinstance(names, list) and least <= len(names) <= most
            and all(isinstance(name, str) and WORD.match(name) for name in names))
