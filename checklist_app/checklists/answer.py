"""One pure function answers every page of a task: what came in and what is kept go in, a page comes out.

No clock, no chance, no network, no database: device, counter and time arrive with the request. The web calls it
with the database's entries; a phone can call it with its own.
"""
import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import cache
from importlib import import_module
from pkgutil import iter_modules
from typing import Any

from checklist_app.checklists.entry import Entry
from checklist_app.checklists.world import World

MAY_WRITE = frozenset({"rigger", "supervisor", "administrator"})


@dataclass(frozen=True)
class Person:
    """Who is signed in: `role` is what the account may do, `capacities` as what it signs, each with its last day."""

    id: str
    name: str
    role: str
    capacities: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True)
class Verified:
    """Whose PIN was checked for this request, and how; which `key` of the phone it opened, if the phone checked it.

    The PIN itself never comes here.
    """

    person: Person
    how: str
    key: str = ""


@dataclass(frozen=True)
class Photo:
    """A picture that came with a form, already made small and without its hidden data."""

    mime: str
    data: bytes


@dataclass(frozen=True)
class Request:
    """What was asked, by whom, on which device. `at` is the device's time, "…Z"; `salt` is chance made outside.

    `device` makes the entries; `page_device` shows the page, if that is another one (a browser whose forms the
    server turns into entries).
    """

    method: str
    path: str
    query: Mapping[str, str] = field(default_factory=dict)
    form: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    person: Person | None = None
    device: str = ""
    counter: int = 1
    at: str = ""
    salt: str = ""
    fragment: bool = False
    form_token: str = ""
    files: Mapping[str, tuple[Photo, ...]] = field(default_factory=dict)
    verified: Verified | None = None
    pin_fault: str = ""
    theme: str = ""
    mark: str = ""
    """What every page is marked with, where all is invented."""
    page_device: str = ""
    https_way: str = ""
    """Where the same page is found by https, if this one came by http and may not do everything."""
    alarms: tuple[Mapping[str, str], ...] = ()
    """Sign-offs given without knowing: `task`, `sign_off`, `words`, `href`. Every page shows them until a supervisor
    has said what was done. Only the server finds them, by the order in which entries reached it."""
    notes: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    """What the server says of a task beside its entries: sign-offs that count for nothing, evaluations that differ."""
    after_seal: tuple[Mapping[str, str], ...] = ()
    """What came after a record was sealed, lately: `href`, `words`."""
    evaluated_by: str = "server"
    """Which of the two works out the checks of this page: `server` or `phone`."""

    def one(self, name: str) -> str:
        """The first text sent under this name, without the blanks around it; empty if there is none."""
        return next(iter(self.form.get(name, ())), "").strip()


@dataclass(frozen=True)
class Answer:
    """A page, and what is to be kept. `location` with status 303 sends a plain form on."""

    status: int
    html: str
    keep: tuple[Entry, ...] = ()
    parts: Mapping[str, bytes] = field(default_factory=dict)
    location: str | None = None
    headers: Mapping[str, str] = field(default_factory=dict)


Page = Callable[..., Answer]


@dataclass(frozen=True)
class Route:
    pattern: re.Pattern[str]
    page: Page
    public: bool
    anybody: bool = False


_ROUTES: dict[str, Route] = {}


def page(address: str, public: bool = False, anybody: bool = False) -> Callable[[Page], Page]:
    """Register a page under an address like "/tasks/<task>/numbers".

    Args:
        public: Asks for no sign-in.
        anybody: Takes something from everybody who is signed in, also from who only reads.
    """
    pattern = re.compile(re.sub(r"<(\w+)>", r"(?P<\1>[^/]+)", address))

    def register(function: Page) -> Page:
        if address in _ROUTES:
            raise ValueError(f"two pages answer {address}")
        _ROUTES[address] = Route(pattern, function, public, anybody)
        return function
    return register


def addresses() -> tuple[str, ...]:
    """Every address that has a page, for the caller's own routing."""
    _load_pages()
    return tuple(_ROUTES)


def travels(path: str) -> bool:
    """Whether this path is answered here, wherever here is."""
    return _find(path) is not None


def is_public(path: str) -> bool:
    """Whether this path may be opened by somebody who is not signed in."""
    found = _find(path)
    return found is not None and found[0].public


def answer(request: Request, world: World) -> Answer:
    """The page for a request, and the entries to keep because of it."""
    from checklist_app.checklists import plain
    from checklist_app.checklists.running import NotBegun

    found = _find(request.path)
    if found is None:
        return plain.missing(request, "There is no page here.")
    route, ids = found
    if not route.public and request.person is None:
        return plain.sign_in(request)
    if request.method == "POST" and not (route.public or route.anybody or may_write(request.person)):
        return plain.not_allowed(request)
    if (task := ids.get("task")) is not None:
        if (record := world.sealed(task)) is not None:
            return plain.sealed(request, record)
        if not world.entries(("task", task)):
            return plain.missing(request, "There is no such task.")
    try:
        return route.page(request, world, **ids)
    except NotBegun:
        return plain.missing(request, "The beginning of this task is not here, or a later version of the app made it.")


def is_anybodys(path: str) -> bool:
    """Whether everybody who is signed in may send something to this path: a stop."""
    found = _find(path)
    return found is not None and found[0].anybody


def may_write(person: Person | None) -> bool:
    """Whether this account may make entries. An auditor reads."""
    return person is not None and person.role in MAY_WRITE


def _find(path: str) -> tuple[Route, dict[str, Any]] | None:
    _load_pages()
    for route in _ROUTES.values():
        if (match := route.pattern.fullmatch(path)) is not None:
            return route, match.groupdict()
    return None


@cache
def _load_pages() -> None:
    """A page is registered by lying in the folder `pages`."""
    from checklist_app.checklists import pages

    for module in sorted(found.name for found in iter_modules(pages.__path__)):
        import_module(f"{pages.__name__}.{module}")
