"""Photographs and sign-offs on paper."""

from collections.abc import Callable, Mapping
from typing import Any

from reportlab.lib.units import mm
from reportlab.platypus import Flowable

from checklist_app.checklists.signing import HOW_WORDS
from checklist_app.checklists.words import clock, sentence
from checklist_app.records import figures
from checklist_app.records.pdf.document import WIDTH, Document
from checklist_app.records.pdf.photograph import photograph
from checklist_app.records.pdf.plate import hand

PHOTO_WIDE, PHOTO_HIGH, BETWEEN = (WIDTH - 6 * mm) / 2, 62 * mm, 6 * mm
Record = Mapping[str, Any]
STANDING = {"stands": "It stands.", "void": "It is void.", "replaced": "A later signature took its place."}


def photographs(document: Document, record: Record, part: Callable[[str], bytes | None]) -> None:
    """Two beside each other, each with what it shows, by whom and when."""
    document.add(document.heading(2, "Photographs"))
    blocks = [shown(document, photo, part(photo["part"])) for photo in record["photos"]]
    if not blocks:
        document.add(document.paragraph("None was taken."))
    for left, right in zip(blocks[::2], [*blocks[1::2], []], strict=False):
        document.add(document.beside([(PHOTO_WIDE, left), (BETWEEN, []), (PHOTO_WIDE, right)]))


def shown(document: Document, photo: Mapping[str, Any], jpeg: bytes | None) -> list[Flowable]:
    words = f"{sentence(photo['words'])} {photo['by']}, {clock(photo['at'])}. {figures.grouped(photo['part'], 16)} …"
    if jpeg is None:
        return [document.paragraph("This photograph never arrived.", "bold"), document.paragraph(words, "note")]

    return [photograph(document, jpeg, photo["words"], PHOTO_WIDE, PHOTO_HIGH), document.paragraph(words, "photo")]


def sign_offs(document: Document, record: Record, inks: Mapping[str, bytes]) -> None:
    """Every sign-off that was given, the void ones with their reasons and times."""
    document.add(document.heading(2, "Sign-offs"))
    if not record["signoffs"]:
        document.add(document.paragraph("None was given."))
    for one in record["signoffs"]:
        document.add(document.together(
            document.heading(3, f"{one['act']}: {one['name']}, {one['capacity']}"), *told(document, one),
            *hand(document, one["name"], inks.get(one["ink"], b""), WIDTH)))
    guests(document, record, inks)


def guests(document: Document, record: Record, inks: Mapping[str, bytes]) -> None:
    """Guests, each with the witness; nothing where none signed."""
    for one in record.get("guests", ()):
        stands = "What was shown then is what is here." if one["stands"] else "What was shown has changed since."
        said = [f"{clock(one['at'])}, by hand, on {one['device']}. Witness: {one['witness']}.", one["meaning"], stands]
        name = ", ".join(word for word in (one["name"], one["firm"], one["capacity"]) if word)
        document.add(document.together(
            document.heading(3, f"{one['act']}, a guest: {name}"), *(document.paragraph(words) for words in said),
            *hand(document, one["name"], inks.get(one["ink"], b""), WIDTH)))


def told(document: Document, one: Mapping[str, Any]) -> list[Flowable]:
    """When, how, what it meant, and whether it stands."""
    own = " Signed as the rigger himself." if one["own_work"] else ""
    how = f"by {HOW_WORDS.get(one['how'], one['how'])}"
    said = [f"{clock(one['at'])}, {how}, on {one['device']}.{own} Verdict signed: {one['verdict']}.", one["meaning"]]
    said.append(STANDING[one["standing"]])
    for gap in one["intervals"]:
        until = f"until {clock(gap['to'])}" if gap["to"] else "and not healed"
        said.append(f"Void from {clock(gap['from'])} {until}: {'; '.join(gap['why'])}.")
    if one["void"] and not one["intervals"]:
        said.append(f"Void: {'; '.join(one['void'])}.")
    if one.get("unknowing"):
        said.append(f"Signed without knowing: {'; '.join(one['unknowing'])}. The server held this when it came.")
    said += [f"Judged otherwise now: {words}." for words in one["otherwise"]]

    return [document.paragraph(words) for words in said]
