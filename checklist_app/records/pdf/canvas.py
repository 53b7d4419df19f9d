"""The sheet that is drawn on: the sealing time as its date, the record's digest as its name, photographs untouched."""

import hashlib
import io
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from typing import Any

from reportlab import rl_config
from reportlab.pdfbase.pdfdoc import PDFImageXObject
from reportlab.pdfgen.canvas import Canvas

from checklist_app.records.pdf import faces

rl_config.useA85 = 0  # binary streams: a fifth smaller
rl_config.trustedSchemes = []  # no text of a user can make the writer fetch anything
rl_config.trustedHosts = []

INK = "#0f1f1a"
PAGES = "pages"


class Instant:
    """The moment a file is dated with, in the shape reportlab expects of a clock."""

    def __init__(self, when: datetime) -> None:
        when = when.astimezone(UTC)
        self.t = when.timestamp()
        self.lt = when.timetuple()
        self.YMDhms = tuple(self.lt)[:6]
        self.dhh = self.dmm = 0
        self.tzname = "UTC"
        self.datetime = when


class Sheet(Canvas):
    """reportlab's canvas with the record's date and name, text in several faces, and untouched photographs."""

    def name_record(self, title: str, author: str, digest: str, when: datetime) -> None:
        self._doc._timeStamp = Instant(when)
        self._doc.signature = hashlib.md5(f"record {digest}".encode(), usedforsecurity=False)
        self.setTitle(title)
        self.setAuthor(author)
        self.setSubject(f"Record {digest}")
        self.setProducer("Checklist app")
        self.setCreator("Checklist app")
        self.setViewerPreference("DisplayDocTitle", "true")

    @contextmanager
    def structure(self, tag: str, alt: str = "") -> Iterator[None]:
        """What is drawn inside is one element of the document's structure: the place where tags will be written."""
        yield

    @contextmanager
    def artifact(self) -> Iterator[None]:
        """What is drawn inside stands round the text and is no part of it."""
        yield

    def entry(self, words: str, level: int, height: float) -> None:
        """A line in the reader's list of contents, for a heading about to be drawn."""
        key = f"h{len(self._destinations)}"
        self.bookmarkHorizontal(key, 0, height)
        self.addOutlineEntry(words, key, level, closed=0)

    def line_of(self, colour: str, wide: float, *ends: float) -> None:
        """One straight line from x, y to x, y."""
        self.setStrokeColor(colour)
        self.setLineWidth(wide)
        self.line(*ends)

    def save(self) -> None:
        """Finish the file: only now is the number of pages known that every page has asked for."""
        pages = self.getPageNumber() - (0 if self._code else 1)
        if self._code:
            self.showPage()
        self.beginForm(PAGES, 0, -3, 30, 10)
        self.setFillColor(INK)
        self.write(0, 0, str(pages), size=7.5)
        self.endForm()
        super().save()

    def write(self, x: float, y: float, text: str, face: str = faces.PLAIN, size: float = 9,
              anchor: str = "start") -> float:
        """Set one line of checked text; gives back the x at which it ends."""
        text, _ = faces.printable(text)
        wide = faces.width(text, face, size)
        x -= {"start": 0.0, "middle": wide / 2, "end": wide}[anchor]
        for name, stretch in faces.runs(text, face):
            self.setFont(name, size)
            self.drawString(x, y, stretch)
            x += self.stringWidth(stretch, name, size)

        return x

    def photograph(self, jpeg: bytes, x: float, y: float, width: float, height: float) -> None:
        """Put a JPEG file in as it is: decoding it would cost time and change what was sealed."""
        name = "photo" + hashlib.sha256(jpeg).hexdigest()[:24]
        inside = self._doc.getXObjectName(name)
        if inside not in self._doc.idToObject:
            self._doc.addForm(name, picture(name, jpeg))
        self._code.append(f"q {width:.3f} 0 0 {height:.3f} {x:.3f} {y:.3f} cm /{inside} Do Q")
        self._formsinuse.append(name)


def picture(name: str, jpeg: bytes) -> Any:
    """The photograph as an object of the file; ValueError if it is no JPEG in grey or colour."""
    found = PDFImageXObject(name)
    if not found.loadImageFromJPEG(io.BytesIO(jpeg)) or found.colorSpace == "DeviceCMYK":
        raise ValueError("not a JPEG photograph in grey or colour")

    return found
