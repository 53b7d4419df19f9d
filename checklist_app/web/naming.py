"""Ids of items: the number on the tag for gear and machines, a short form of the name for loads and places."""

import re
import unicodedata

from checklist_app.web import current

ID = re.compile(r"[A-Za-z0-9][A-Za-z0-9_.\-]{0,31}\Z")
LONGEST_SLUG = 40


def fault_of_name(register: str, name: str) -> dict[str, str]:
    """Why an item cannot be called this; nothing when it can."""
    if not ID.match(name) and register in ("gear", "machine"):
        return {"id": "Type the number on the tag: letters, digits, point, dash; no blanks. For example L-07."}
    taken = {one.casefold() for one in current.world().items(register)}
    if name.casefold() in taken:
        return {"id": f"{name} is there already. Open it and save a new version."}

    return {}


def name_from(words: str, register: str) -> str:
    """An id that reads like the name and is not taken yet."""
    plain = unicodedata.normalize("NFKD", words).encode("ascii", "ignore").decode().lower()
    slug = re.sub(r"[^a-z0-9]+", "-", plain).strip("-")[:LONGEST_SLUG].strip("-") or register
    taken = current.world().items(register)
    free = (slug if number == 1 else f"{slug}-{number}" for number in range(1, len(taken) + 3))

    return next(name for name in free if name not in taken)
