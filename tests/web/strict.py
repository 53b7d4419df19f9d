"""What every page must be: whole HTML, one h1, ids once, every field named, forms with their token."""

from html.parser import HTMLParser

VOID = {"area", "base", "br", "col", "hr", "img", "input", "link", "meta", "source", "wbr"}
TYPED_IN = {"input", "select", "textarea"}
NO_LABEL = {"hidden", "submit", "button"}
REFERS = ("aria-describedby", "aria-labelledby")


class Page(HTMLParser):
    """A page, read once; `faults` says what is wrong with it."""

    def __init__(self, html: str) -> None:
        super().__init__(convert_charrefs=True)
        self.faults: list[str] = []
        self.open: list[tuple[str, dict[str, str | None]]] = []
        self.ids: list[str] = []
        self.headings: list[str] = []
        self.labelled: set[str] = set()
        self.fields: list[tuple[str, dict[str, str | None], bool]] = []
        self.referred: list[str] = []
        self.links: list[str] = []
        self.forms: list[dict[str, str | None]] = []
        self.tokens = 0
        if not html.lstrip().lower().startswith("<!doctype html>"):
            self.faults.append("no doctype")
        self.feed(html)
        self.close()
        self._judge()

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = dict(attrs)
        self._note_attributes(tag, attrs, given)
        if tag == "form":
            self._note_form(given)
        if tag in TYPED_IN and given.get("type") not in NO_LABEL:
            self.fields.append((tag, given, any(name == "label" for name, _ in self.open)))
        if tag == "input" and given.get("name") == "form_token":
            self.tokens += 1
            if not given.get("value"):
                self.faults.append("a form without its token's value")
        if tag == "label" and given.get("for"):
            self.labelled.add(str(given["for"]))
        if tag not in VOID:
            self.open.append((tag, given))

    def handle_endtag(self, tag: str) -> None:
        if not self.open or self.open[-1][0] != tag:
            last = self.open[-1][0] if self.open else "nothing"
            self.faults.append(f"line {self.getpos()[0]}: </{tag}> closes {last}")
            return
        self.open.pop()

    def handle_startendtag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self._note_attributes(tag, attrs, dict(attrs))

    def handle_data(self, data: str) -> None:
        if any(tag == "h1" for tag, _ in self.open) and data.strip():
            self.headings.append(data.strip())

    def _note_attributes(self, tag: str, attrs: list[tuple[str, str | None]], given: dict[str, str | None]) -> None:
        names = [name for name, _ in attrs]
        self.faults += [f"<{tag}> says {name} twice" for name in set(names) if names.count(name) > 1]
        self.faults += [f"<{tag}> has {name}" for name in names if name == "style" or name.startswith("on")]
        self.ids += [str(given["id"])] if "id" in given else []
        self.referred += [word for name in REFERS for word in str(given.get(name) or "").split()]
        self.links += [str(given["href"])] if tag == "a" and given.get("href") else []

    def _note_form(self, given: dict[str, str | None]) -> None:
        self.forms.append(given)
        if any(tag == "form" for tag, _ in self.open):
            self.faults.append("a form in a form")
        if not (given.get("action") or given.get("hx-post")):
            self.faults.append("a form that does not say where it goes")

    def _judge(self) -> None:
        self.faults += [f"<{tag}> is never closed" for tag, _ in self.open]
        self.faults += [f"id {one} stands twice" for one in set(self.ids) if self.ids.count(one) > 1]
        self.faults += [f"nothing has the id {one}" for one in set(self.referred) - set(self.ids)]
        self.faults += [f"a field without a label: {given.get('name')}" for _, given, inside in self.fields
                        if not inside and given.get("id") not in self.labelled and not given.get("aria-label")]
        if len(self.headings) != 1:
            self.faults.append(f"one h1 is wanted, found {self.headings}")
        posts = [form for form in self.forms if (form.get("method") or "").lower() == "post"]
        if len(posts) > self.tokens:
            self.faults.append("a form that posts without form_token")


def strict(html: str) -> Page:
    """The page, if it is as it must be."""
    page = Page(html)
    assert not page.faults, page.faults
    return page
