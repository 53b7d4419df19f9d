"""What an entry can say: one constructor per type of value, and the shape each type must have.

A number keeps its text as typed; it is read where it is used, so that a mistyped figure is shown at its field
instead of being lost. Free text, photographs, drawn signatures and documents are *parts*: bytes under their own
digest, which the value names.
"""

import re
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.canonical import NotCanonical, as_typed, canonical, digest, parse

Value = dict[str, Any]
HEX = re.compile(r"[0-9a-f]{64}\Z")
SUBJECT = re.compile(r"[a-z_]{1,32}/[A-Za-z0-9_.\-]{1,64}\Z")
NAMES_A_PART = ("part", "statement", "ink")
NAMES_BYTES = (*NAMES_A_PART, "version", "entry", "shown")


@dataclass(frozen=True)
class Shape:
    """Names that a type of value must have and may have, each of them text, and the texts allowed if they are few."""

    required: tuple[str, ...] = ()
    optional: tuple[str, ...] = ()
    texts: tuple[str, ...] = ()


SHAPES: Mapping[str, Shape] = {
    "number": Shape(("text", "unit"), ("how", "plus_minus")),
    "choice": Shape(("text",)),
    "tick": Shape(("text",), texts=("yes", "no", "cannot_see")),
    "date": Shape(("text",)),
    "text": Shape(("part",)),
    "photo": Shape(("part", "mime")),
    "pick": Shape(("subject", "version"), ("point",)),
    "dont_know": Shape((), ("part",)),
    "not_used": Shape((), ("part",)),
    "row": Shape(("text",), texts=("present", "absent")),
    "withdrawn": Shape(),
    "begin": Shape(("operation", "procedure")),
    "signature": Shape(("statement", "capacity", "how"),
                       ("ink", "key", "signature", "authenticator", "client", "credential")),
    "guest": Shape(("text", "part", "ink", "shown")),
    "stop": Shape((), ("part",)),
    "go_on": Shape(("part",)),
    "acknowledge": Shape(("entry", "part")),
    "closing": Shape(("text",), ("part",)),
    "send_back": Shape(("part",)),
    "lost": Shape(("part",)),
    "rig": Shape(("task", "part")),
    "version": Shape(("schema", "part")),
    "custody": Shape(("text", "since"), ("part",)),
    "quarantine": Shape(("since",), ("part",)),
    "release": Shape((), ("part",)),
    "examination": Shape(("text", "on", "due"), ("part",)),
}


def fault(value: Value) -> str:
    """Why this is no value of its type, in words; empty when it is one. Names nobody knows yet are let through."""
    shape = SHAPES[value["type"]]
    for name in (*shape.required, *shape.optional):
        if name not in value and name in shape.optional:
            continue
        if not isinstance(value.get(name), str):
            return f"{value['type']} needs {name} as text"
        if name in NAMES_BYTES and not HEX.match(value[name]):
            return f"{name} is not a digest"
    if "subject" in shape.required and not SUBJECT.match(value["subject"]):
        return "what was picked is not named as register/id"
    if shape.texts and value["text"] not in shape.texts:
        return f"{value['type']} is one of: {', '.join(shape.texts)}"

    return ""


def parts_named(value: Value) -> tuple[str, ...]:
    """Digests of the parts that a value names."""
    return tuple(value[name] for name in NAMES_A_PART if isinstance(value.get(name), str))


def words_part(text: str, salt: str) -> tuple[str, bytes]:
    """Free text as a part: its digest and bytes. The salt keeps a removed text from being guessed back."""
    data = canonical({"salt": salt, "text": as_typed(text)})
    return digest(data), data


def words(part: bytes | None) -> str:
    """The free text in a part; empty when the part has not arrived, was removed or holds no text."""
    try:
        said = parse(part) if part is not None else None
    except NotCanonical:
        return ""

    return said["text"] if isinstance(said, dict) and isinstance(said.get("text"), str) else ""


def document_part(schema: str, facts: Mapping[str, Any], salt: str) -> tuple[str, bytes]:
    """A version of an item of a register as a part: its digest and bytes."""
    data = canonical({"facts": dict(facts), "salt": salt, "schema": schema})
    return digest(data), data


def _value(kind: str, **named: str) -> Value:
    """A value without the names that were left empty."""
    return {"type": kind} | {name: as_typed(text) for name, text in named.items() if text}


def number(text: str, unit: str, how: str = "", plus_minus: str = "") -> Value:
    """A figure as typed, with its unit, how it was obtained and how far off it may be."""
    return {"text": as_typed(text), "unit": unit} | _value("number", how=how, plus_minus=plus_minus)


def choice(text: str) -> Value:
    """One of the named possibilities of a prompt."""
    return {"type": "choice", "text": as_typed(text)}


def tick(text: str) -> Value:
    """`yes`, `no` or `cannot_see`."""
    return {"type": "tick", "text": text}


def date(text: str) -> Value:
    """A day as YYYY-MM-DD, kept as typed."""
    return {"type": "date", "text": as_typed(text)}


def text(part: str) -> Value:
    """Free text, named by the digest of its part."""
    return {"type": "text", "part": part}


def photo(part: str, mime: str = "image/jpeg") -> Value:
    """A photograph, named by the digest of its bytes."""
    return {"type": "photo", "part": part, "mime": mime}


def pick(subject: str, version: str, point: str = "") -> Value:
    """An item of a register (`gear/L-07`) in the version its picker saw, and a point on it if it has several."""
    return _value("pick", subject=subject, version=version, point=point)


def dont_know(part: str = "") -> Value:
    """*Don't know*, with the reason's part if one was given."""
    return _value("dont_know", part=part)


def not_used(part: str = "") -> Value:
    """*Not used* or *not applicable*, with the reason's part if one was given."""
    return _value("not_used", part=part)


def lost(part: str) -> Value:
    """A photograph or text that will never arrive, named by its digest: the phone that held it is gone."""
    return {"type": "lost", "part": part}


def acknowledge(entry: str, part: str) -> Value:
    """A supervisor knows of a sign-off that was given without knowing, and says in the part what was done."""
    return {"type": "acknowledge", "entry": entry, "part": part}


def row(text: str) -> Value:
    """`present` adds a row, `absent` removes it."""
    return {"type": "row", "text": text}


def withdrawn() -> Value:
    """The answer is taken back and none is put in its place."""
    return {"type": "withdrawn"}


def version(schema: str, part: str) -> Value:
    """A version of an item of a register: the document's part and the schema it was written by."""
    return {"type": "version", "schema": schema, "part": part}


def custody(text: str, since: str, part: str = "") -> Value:
    """Where an item stands since a day."""
    return _value("custody", text=text, since=since, part=part)


def quarantine(since: str, part: str = "") -> Value:
    """An item taken out of use since a day, with the reason's part."""
    return _value("quarantine", since=since, part=part)


def release(part: str = "") -> Value:
    """The quarantines that its author saw are lifted, his own excepted."""
    return _value("release", part=part)


def examination(text: str, on: str, due: str, part: str = "") -> Value:
    """A thorough examination: its outcome or reference, its day and the day the next one is due."""
    return {"type": "examination", "text": as_typed(text), "on": on, "due": due} | ({"part": part} if part else {})
