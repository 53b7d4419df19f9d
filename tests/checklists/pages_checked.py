"""Strict HTML: one h1, ids once, every field with a label, forms that lead somewhere, nothing inline."""
from html.parser import HTMLParser

VOID = {"meta", "link", "input", "br", "path", "rect", "line", "circle", "img"}
FIELDS = {"input", "select", "textarea"}
NAMELESS = {"hidden", "submit"}


class Checked(HTMLParser):
    """Reads a page once and collects what is wrong with it."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.faults: list[str] = []
        self.ids: list[str] = []
        self.headings = 0
        self.forms: list[tuple[str, str]] = []
        self.links: list[str] = []
        self._labelled: set[str] = set()
        self._fields: list[tuple[str, bool]] = []
        self._open: list[str] = []
        self.feed(html)
        self.close()
        self._judge()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = {name: value or "" for name, value in attrs}
        if tag not in VOID:
            self._open.append(tag)
        if len(given) != len(attrs):
            self.faults.append(f"{tag} has an attribute twice")
        if "style" in given or any(name.startswith("on") for name in given):
            self.faults.append(f"{tag} has inline style or script")
        if "id" in given:
            self.ids.append(given["id"])
        self.headings += tag == "h1"
        if tag == "form":
            self.forms.append((given.get("method", "get"), given.get("action", "")))
        if tag == "a":
            self.links.append(given.get("href", ""))
        if tag == "label" and "for" in given:
            self._labelled.add(given["for"])
        if tag in FIELDS and given.get("type") not in NAMELESS:
            inside = "label" in self._open or "aria-label" in given
            self._fields.append((given.get("id", ""), inside))

    def handle_endtag(self, tag: str) -> None:
        if tag in VOID:
            return
        if not self._open or self._open.pop() != tag:
            self.faults.append(f"</{tag}> closes something else")

    def _judge(self) -> None:
        twice = {name for name in self.ids if self.ids.count(name) > 1}
        self.faults += [f"the id {name} is there twice" for name in twice]
        self.faults += [f"the field {name or 'without id'} has no label" for name, inside in self._fields
                        if not inside and name not in self._labelled]
        self.faults += ["a form leads nowhere" for _, action in self.forms if not action.startswith("/")]
        self.faults += [f"a link leads nowhere: {href!r}" for href in self.links if not href.startswith(("/", "#"))]


def faults(html: str, fragment: bool = False) -> list[str]:
    """What is wrong with a page; a fragment needs no heading of its own."""
    found = Checked(html)
    headings = [] if fragment or found.headings == 1 else [f"{found.headings} main headings"]
    return found.faults + headings
