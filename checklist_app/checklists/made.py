"""Entries made for a plain form, in the order of their counters, with the parts that they name."""
from collections.abc import Iterable

from checklist_app.checklists.answer import Photo, Request
from checklist_app.checklists.canonical import digest
from checklist_app.checklists.entry import Entry, Path, make
from checklist_app.checklists.values import Value, document_part, photo, words_part


class Made:
    """What one request adds. The device of the form counts on from the counter that the request brought."""

    def __init__(self, request: Request) -> None:
        if request.person is None:
            raise ValueError("an entry has an author: nobody is signed in")
        self._request = request
        self.author = request.person.id
        self.keep: list[Entry] = []
        self.parts: dict[str, bytes] = {}

    @property
    def next_name(self) -> str:
        """A name that no other device and no other request makes: device and counter."""
        return f"{self._request.device}-{self._request.counter + len(self.keep)}"

    def say(self, about: Path, path: Path, value: Value, replaces: Iterable[str] = ()) -> Entry:
        """One more entry by the person of this request."""
        said = make(about, path, value, replaces, self.author, self._request.device,
                    self._request.counter + len(self.keep), self._request.at)
        self.keep.append(said)
        return said

    def words(self, text: str) -> str:
        """Free text as a part; its digest, or nothing for no text."""
        if not text:
            return ""
        name, data = words_part(text, self._salt())
        self.parts[name] = data
        return name

    def document(self, schema: str, facts: dict[str, object]) -> str:
        """A version of an item as a part; its digest."""
        name, data = document_part(schema, facts, self._salt())
        self.parts[name] = data
        return name

    def photo(self, taken: Photo) -> Value:
        """A picture as a part, and the value that names it."""
        name = digest(taken.data)
        self.parts[name] = taken.data
        return photo(name, taken.mime)

    def _salt(self) -> str:
        """A different one for every part of the request, so that equal texts do not betray each other."""
        return f"{self._request.salt}-{len(self.parts)}"
