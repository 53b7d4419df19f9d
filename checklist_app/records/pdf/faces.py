"""The faces of the paper, and which of them has a character: nothing is ever left out in silence."""

import unicodedata
from functools import cache
from itertools import groupby

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

from checklist_app.shipped import shipped

PLAIN, BOLD, SIGNS = "Paper", "Paper-Bold", "Paper-Signs"
FILES = {PLAIN: "sofia-sans-regular.ttf", BOLD: "sofia-sans-bold.ttf", SIGNS: "dejavu-sans-condensed.ttf"}
# A character that only steers (turns the writing direction, joins, hides) could make a record read otherwise.
STEERING = {"Cc", "Cf", "Cs", "Co", "Cn"}


def register() -> None:
    """Make the faces known to reportlab, once in a process."""
    if PLAIN in pdfmetrics.getRegisteredFontNames():
        return
    for name, file in FILES.items():
        pdfmetrics.registerFont(TTFont(name, str(shipped("static") / "fonts" / file), asciiReadable=0))
    pdfmetrics.registerFontFamily(PLAIN, normal=PLAIN, bold=BOLD, italic=PLAIN, boldItalic=BOLD)


@cache
def characters(face: str) -> frozenset[int]:
    """Code points for which a face has a drawn shape."""
    register()
    return frozenset(pdfmetrics.getFont(face).face.charToGlyph)


def printable(text: str) -> tuple[str, set[str]]:
    """The text as paper can show it, and the characters that are shown as their code instead.

    >>> printable("β ≤ 60°, 12\\u202e")
    ('β ≤ 60°, 12[U+202E]', {'\\u202e'})
    """
    lost = {one for one in text if one != "\n" and face_of(one, PLAIN) is None}

    return "".join(f"[U+{ord(one):04X}]" if one in lost else one for one in text), lost


@cache
def face_of(character: str, wanted: str) -> str | None:
    """The wanted face if it has the character, else the face of signs if that has it."""
    if unicodedata.category(character) in STEERING:
        return None
    return next((face for face in (wanted, SIGNS) if ord(character) in characters(face)), None)


def runs(text: str, wanted: str = PLAIN) -> list[tuple[str, str]]:
    """A printable text as stretches of one face each: (face, stretch)."""
    return [(face or wanted, "".join(stretch)) for face, stretch in groupby(text, lambda one: face_of(one, wanted))]


def width(text: str, wanted: str, size: float) -> float:
    """How wide a printable text is set, in points."""
    return sum(pdfmetrics.stringWidth(stretch, face, size) for face, stretch in runs(text, wanted))
