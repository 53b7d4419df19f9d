"""Every route as every role and as nobody, against one table: who may read it, who may send to it."""

from collections.abc import Iterator

import pytest
from flask import Flask

from checklist_app.records.account_tables import ROLES
from checklist_app.web.access import NOBODY, refuse_undeclared
from checklist_app.web.app import create_app
from tests.web.signed_in import People, Visitor

ALL = {NOBODY, *ROLES}
SIGNED_IN = set(ROLES)
WRITE = SIGNED_IN - {"auditor"}
KEEP = {"supervisor", "administrator"}
ADMIN = {"administrator"}
NONE: set[str] = set()

# Address → (who may read, who may send). An empty set where the route does not take that at all.
TABLE = {
    "/": (ALL, NONE),
    "/sign-in": (ALL, ALL),
    "/sign-out": (NONE, SIGNED_IN),
    "/new-pin": (ALL, ALL),
    "/first-run": (ALL, ALL),
    "/theme": (NONE, ALL),
    "/sw.js": (ALL, NONE),
    "/shell": (ALL, NONE),
    "/shell/outbox": (ALL, NONE),
    "/manifest.webmanifest": (ALL, NONE),
    "/import": (WRITE, WRITE),
    "/static/<path:name>": (ALL, NONE),
    "/static/engine/pyodide-<digest>/<name>": (ALL, NONE),
    "/static/engine/<name>": (ALL, NONE),
    "/device": (SIGNED_IN, NONE),
    "/entries": (ALL, ALL),
    "/parts/<digest>": (SIGNED_IN, ALL),
    "/people": (ADMIN, NONE),
    "/people/new": (ADMIN, ADMIN),
    "/people/<person>": (ADMIN, ADMIN),
    "/people/<person>/code": (ADMIN, ADMIN),
    "/phones": (ADMIN, NONE),
    "/phones/<name>/revoke": (NONE, ADMIN),
    "/enrol": (WRITE, WRITE),
    "/enrol/end": (NONE, WRITE),
    "/parity": (ADMIN, ALL),
    "/parity/<digest>/looked": (NONE, ADMIN),
    "/sealing": (KEEP, KEEP),
    "/security": (ADMIN, ADMIN),
    "/proofs": (ALL, NONE),
    "/trust": (ALL, NONE),
    "/trust/workshop-root.crt": (ALL, NONE),
    "/tasks/<task>/stop": (SIGNED_IN, SIGNED_IN),
    "/registers": (SIGNED_IN, NONE),
    "/registers/<register:register>": (SIGNED_IN, NONE),
    "/registers/<register:register>/new/<kind>": (KEEP, KEEP),
    "/registers/<register:register>/<name>": (SIGNED_IN, NONE),
    "/registers/<register:register>/<name>/version": (KEEP, KEEP),
    "/registers/<register:register>/<name>/<any(examination, custody, quarantine, release):act>": (SIGNED_IN, NONE),
    "/registers/<register:register>/<name>/examination": (NONE, KEEP),
    "/registers/<register:register>/<name>/custody": (NONE, KEEP),
    "/registers/<register:register>/<name>/quarantine": (NONE, WRITE),
    "/registers/<register:register>/<name>/release": (NONE, KEEP),
}
BY_DEVICE = {"/entries", "/parts/<digest>", "/parity"}
PUBLIC_PAGES = {"/assess", "/outbox"}
RECORDS = "/records"
FILLED = {"register:register": "gear", "path:name": "css/app.css", "kind": "shackle", "name": "L-07", "person": "p-x",
          "digest": "0" * 64, "any(examination, custody, quarantine, release):act": "examination"}


def expected(address: str) -> tuple[set[str], set[str]]:
    """What the table says; pages that travel share two rules, and records are read by everybody who is signed in."""
    if address in TABLE:
        return TABLE[address]
    if address == RECORDS or address.startswith(RECORDS + "/"):
        return SIGNED_IN, KEEP
    if address in PUBLIC_PAGES or address.startswith("/assess/"):
        return ALL, ALL
    return SIGNED_IN, WRITE


def filled(address: str) -> str:
    for name, value in FILLED.items():
        address = address.replace(f"<{name}>", value)
    while "<" in address:
        address = address[:address.index("<")] + "x" + address[address.index(">") + 1:]
    return address


def routes(app: Flask) -> Iterator[tuple[str, str]]:
    for rule in app.url_map.iter_rules():
        for method in sorted(rule.methods or set()):
            if method not in ("HEAD", "OPTIONS"):
                yield rule.rule, method


def is_refused(status: int, who: str, method: str) -> bool:
    if who != NOBODY:
        return status == 403
    return status == 401 if method != "GET" else status == 303


@pytest.mark.parametrize("who", [NOBODY, *ROLES])
def test_every_route_lets_in_whom_the_table_names_and_nobody_else(app: Flask, people: People, who: str) -> None:
    visitor = Visitor(app) if who == NOBODY else people.visitor(who)
    wrong = []
    for address, method in routes(app):
        if address == "/sign-out" or method == "PUT":
            continue
        reads, writes = expected(address)
        status = ask(visitor, filled(address), method)
        may = who in (reads if method == "GET" else writes)
        if may == is_refused(status, who, method):
            wrong.append((address, method, status, "may" if may else "may not"))
    assert not wrong, wrong


def ask(visitor: Visitor, address: str, method: str) -> int:
    if method == "GET":
        return visitor.client.get(address, buffered=True).status_code
    form = {"form_token": visitor.token or visitor_token(visitor)}
    return visitor.client.post(address, data=form, buffered=True).status_code


def visitor_token(visitor: Visitor) -> str:
    visitor.get("/sign-in")
    return visitor.token


def test_every_address_of_the_table_is_served(app: Flask) -> None:
    assert set(TABLE) | PUBLIC_PAGES <= {rule.rule for rule in app.url_map.iter_rules()}


def test_the_table_takes_what_the_routes_take(app: Flask) -> None:
    taken = {(address, method) for address, method in routes(app) if address in TABLE}
    wanted = {(address, method) for address, (reads, writes) in TABLE.items()
              for method in (("GET",) if reads else ()) + ((("PUT",) if address in BY_DEVICE else ("POST",))
                                                           if writes else ())}
    assert taken == wanted


def test_a_route_that_does_not_say_who_may_open_it_keeps_the_app_from_starting(app: Flask) -> None:
    bare = Flask("bare", static_folder=None)
    bare.add_url_rule("/hidden", view_func=lambda: "hidden", endpoint="hidden")
    with pytest.raises(LookupError, match="/hidden"):
        refuse_undeclared(bare)


@pytest.mark.parametrize(("address", "method"), [("/entries", "PUT"), ("/parts/" + "0" * 64, "PUT")])
def test_what_devices_send_needs_the_devices_credential_and_no_cookie_helps(
        people: People, address: str, method: str) -> None:
    visitor = people.visitor("administrator")
    sent = visitor.client.put(address, data=b"{}", headers={"Origin": "http://localhost"})
    assert sent.status_code == 401


def test_who_must_sign_in_is_sent_there_also_from_a_part_of_a_page(nobody: Visitor) -> None:
    assert nobody.get("/registers").headers["Location"] == "/sign-in?next=/registers"
    part = nobody.client.get("/registers", headers={"HX-Request": "true"})
    assert part.headers["HX-Redirect"] == "/sign-in?next=/registers"


def test_two_apps_in_one_process_keep_to_their_own_data(tmp_path, clock) -> None:
    first, second = (create_app(tmp_path / name, CLOCK=clock) for name in ("first", "second"))
    People(first).add("Ines Okoro", "supervisor")
    assert [one.name for one in first.extensions["accounts"].all()] == ["Ines Okoro"]
    assert second.extensions["accounts"].all() == []
