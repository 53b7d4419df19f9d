"""Entries that this server makes for a form without script, and the one place where pages keep what they made."""

import json
import re
import secrets
from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import replace
from threading import Lock
from typing import Any

from flask import request as flask_request

from checklist_app.checklists.answer import Person, Request
from checklist_app.checklists.entry import MOMENT, Entry
from checklist_app.checklists.made import Made
from checklist_app.records.clocks import clock_doubt, skew_s
from checklist_app.records.moments import moment
from checklist_app.records.store import SERVERS_OWN
from checklist_app.web import current
from checklist_app.web.pages import asked

SALT_BYTES = 16
SALT = re.compile(r"[0-9a-f]{32}")
MADE, NOW = "made", "now"
HIGHEST = 2**53
_locks: dict[str, Lock] = {}
_all = Lock()


def own_name() -> str:
    """What this server is called where it makes entries for the browser that asks."""
    return SERVERS_OWN + (current.device().partition("-")[2] or "unknown")


@contextmanager
def one_at_a_time() -> Iterator[None]:
    """Two forms of one browser at once would count alike, and begin two tasks under one name."""
    with _all:
        lock = _locks.setdefault(own_name(), Lock())
    with lock:
        yield


def making(person: Person | None = None) -> Made:
    """What the signed-in person (or, at the first start, somebody who is just being made) is going to say."""
    return Made(with_counter(asked(), person))


def with_counter(request: Request, person: Person | None = None) -> Request:
    """The request counted: by the page's script, or else by this server for the browser that asks."""
    if (made := counted_by_script()) is not None:
        return replace(request, person=person or request.person, device=current.device(), page_device=request.device,
                       **made)
    name = own_name()
    return replace(request, person=person or request.person, device=name, page_device=request.device,
                   salt=secrets.token_hex(SALT_BYTES), counter=current.store().next_counter(name))


def counted_by_script() -> dict[str, Any] | None:
    """Counter, time and chance that came with a form. With them its entries are the phone's own, and the same to the
    byte whether they are made here or on the phone: a form whose answer was lost is not carried out twice."""
    try:
        made = json.loads(flask_request.form.get(MADE, ""))
        counter, at, salt = made["counter"], made["at"], made["salt"]
    except (ValueError, TypeError, KeyError, RecursionError):
        return None
    sound = (isinstance(counter, int) and not isinstance(counter, bool) and 1 <= counter < HIGHEST
             and isinstance(at, str) and MOMENT.match(at) and isinstance(salt, str) and SALT.fullmatch(salt))

    return {"counter": counter, "at": at, "salt": salt} if sound and current.device() else None


def keep(entries: Iterable[Entry], parts: Mapping[str, bytes]) -> None:
    """All in one batch, or nothing. A form says what its phone's clock says."""
    entries = list(entries)
    if not entries and not parts:
        return
    is_own = bool(entries) and entries[0].device == own_name()
    clock = "" if is_own else clock_doubt(skew_s(flask_request.form.get(NOW), current.now()))
    current.store().keep(entries, parts, own_name() if is_own else current.device(), moment(current.now()), clock)
    current.changed()


def keep_made(made: Made) -> None:
    keep(made.keep, made.parts)
