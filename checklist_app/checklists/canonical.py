"""One value has one text: the bytes that digests, signatures and seals cover.

A subset of RFC 8785 (JSON Canonicalization Scheme): objects, arrays, texts, true, false, null and whole numbers
that every language holds exactly. There are no fractions, because languages print them differently: what is
measured or computed travels as text beside its unit. Keys are plain ASCII names, so that ordering them by code
point and by UTF-16 unit is one and the same ordering.
"""

import hashlib
import json
import re
import unicodedata
from typing import Any

LARGEST_WHOLE = 9_007_199_254_740_991
DEEPEST = 8
KEY = re.compile(r"[a-z][a-z0-9_]*\Z")


class NotCanonical(ValueError):
    """The value has no canonical text, or the bytes are not one; the message says why."""


def canonical(value: Any) -> bytes:
    """The one text of a value, in UTF-8.

    Raises:
        NotCanonical: If the value holds a fraction, a key that is no plain name, half a character, or is too deep.

    Example:
        >>> canonical({"unit": "kg", "text": "2,400"})
        b'{"text":"2,400","unit":"kg"}'
    """
    _refuse_foreign(value, depth=0)
    text = json.dumps(value, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    try:
        return text.encode("utf-8")
    except UnicodeEncodeError as error:
        raise NotCanonical("half a character stands alone") from error


def parse(data: bytes) -> Any:
    """The value of canonical bytes; whatever would not be written back the very same is refused.

    Raises:
        NotCanonical: If the bytes are not JSON in UTF-8, or are JSON written in another way.
    """
    try:
        value = json.loads(data.decode("utf-8"))
    except (ValueError, RecursionError) as error:
        raise NotCanonical("not JSON in UTF-8") from error
    if canonical(value) != data:
        raise NotCanonical("JSON, but not written in its canonical form")

    return value


def digest(data: bytes) -> str:
    """SHA-256 of the bytes, as 64 hexadecimal digits."""
    return hashlib.sha256(data).hexdigest()


def as_typed(text: str) -> str:
    """The text in the one form of Unicode (NFC), made once, where the text is made.

    Nobody composes it again afterwards: two releases of Unicode may disagree about a new mark, and then the
    same entry would have two sets of bytes.
    """
    return unicodedata.normalize("NFC", text)


def _refuse_foreign(value: Any, depth: int) -> None:
    if depth > DEEPEST:
        raise NotCanonical(f"nested more than {DEEPEST} deep")
    if value is None or isinstance(value, bool | str):
        return
    if isinstance(value, int):
        if not -LARGEST_WHOLE <= value <= LARGEST_WHOLE:
            raise NotCanonical("a whole number larger than every language holds exactly")
    elif isinstance(value, list | tuple):
        for item in value:
            _refuse_foreign(item, depth + 1)
    elif isinstance(value, dict):
        for key, item in value.items():
            if not (isinstance(key, str) and KEY.match(key)):
                raise NotCanonical(f"the key {key!r} is not a plain name")
            if type(item) is not str or depth == DEEPEST:  # most are texts, and need no call each
                _refuse_foreign(item, depth + 1)
    else:
        raise NotCanonical(f"{type(value).__name__}: a measured number goes in as text")
