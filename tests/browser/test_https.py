"""https on the workshop's network, in a real browser: trust, the one name, another address, and http beside it."""

import json
import ssl
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime
from http.server import BaseHTTPRequestHandler, ThreadingHTTPServer
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect
from playwright.sync_api import Error as BrowserError

from checklist_app.web.tls.cabinet import ROOT, Cabinet
from checklist_app.web.tls.certificates import server as server_certificate
from tests.browser import journey
from tests.browser.hand import Hand
from tests.browser.measure import faults_of, too_wide
from tests.browser.phone import Phone
from tests.browser.secured import NAME, Secured, secured, visitor
from tests.web.tls.handshake import pem

FACTS = """() => ({ secure: isSecureContext, worker: "serviceWorker" in navigator, keys: Boolean(crypto.subtle) })"""
RIGGER = "Dunja Fell"


@pytest.fixture(scope="module")
def workshop(tmp_path_factory: pytest.TempPathFactory, filled_yard: Path) -> Iterator[Secured]:
    with secured(filled_yard, tmp_path_factory.mktemp("workshop") / "yard") as server:
        yield server


@pytest.fixture
def trusting(browser: Browser, chromium_path: str, workshop: Secured, tmp_path: Path) -> Iterator[Page]:
    with visitor(browser, chromium_path, tmp_path / "home", workshop.root) as context:
        yield context.pages[0]


def refused(context: BrowserContext, url: str) -> str:
    with pytest.raises(BrowserError) as error:
        context.pages[0].goto(url)
    return str(error.value)


def test_a_phone_that_does_not_know_the_workshop_refuses_it(browser: Browser, chromium_path: str, workshop: Secured,
                                                            tmp_path: Path) -> None:
    with visitor(browser, chromium_path, tmp_path / "home") as context:
        assert "ERR_CERT_AUTHORITY_INVALID" in refused(context, workshop.url)


def test_a_phone_that_trusts_the_workshop_may_keep_sign_and_go_on_alone(workshop: Secured, trusting: Page) -> None:
    trusting.goto(workshop.url)
    assert trusting.evaluate(FACTS) == {"secure": True, "worker": True, "keys": True}


def test_by_http_at_a_name_none_of_that_is_there(workshop: Secured, trusting: Page) -> None:
    trusting.goto(workshop.http)
    assert trusting.evaluate(FACTS) == {"secure": False, "worker": False, "keys": False}


def test_the_address_of_the_machine_leads_to_the_one_name(workshop: Secured, trusting: Page) -> None:
    trusting.goto(f"https://127.0.0.1:{workshop.https_port}/assess")
    assert trusting.url == f"{workshop.url}/assess"


class Nothing(BaseHTTPRequestHandler):
    def do_GET(self) -> None:
        self.send_response(200)
        self.end_headers()
        self.wfile.write(b"<!doctype html><title>Here</title>")

    def log_message(self, *_: object) -> None:
        """Nobody reads along."""


@contextmanager
def stolen(workshop: Secured, host: str, folder: Path) -> Iterator[str]:
    """Somebody has the root's key, and makes a certificate for another host with it."""
    root = Cabinet(workshop.folder).pair(ROOT)
    assert root is not None
    context = ssl.SSLContext(ssl.PROTOCOL_TLS_SERVER)
    context.load_cert_chain(pem(folder / "stolen.pem", server_certificate(root, [host], datetime.now(UTC))))
    made = ThreadingHTTPServer(("127.0.0.1", 0), Nothing)
    made.socket = context.wrap_socket(made.socket, server_side=True)
    thread = threading.Thread(target=made.serve_forever)
    thread.start()
    yield f"https://{host}:{made.server_port}/"
    made.shutdown()
    thread.join()
    made.server_close()


@pytest.mark.parametrize(("host", "opens"), [("crane.lan", True), ("bank.example", False)])
def test_a_stolen_root_key_vouches_for_nothing_outside_the_workshop(browser: Browser, chromium_path: str, host: str,
                                                                    workshop: Secured, opens: bool,
                                                                    tmp_path: Path) -> None:
    with visitor(browser, chromium_path, tmp_path / "home", workshop.root, names=host) as context, \
            stolen(workshop, host, tmp_path) as url:
        if opens:
            context.pages[0].goto(url)
            assert context.pages[0].title() == "Here"
        else:
            assert "ERR_CERT" in refused(context, url)


def test_what_a_phone_keeps_arrives_though_the_server_has_another_address(browser: Browser, chromium_path: str,
                                                                          filled_yard: Path, tmp_path: Path) -> None:
    home = tmp_path / "home"
    with secured(filled_yard, tmp_path / "moved") as server:
        with visitor(browser, chromium_path, home, server.root) as context:
            rigger = Phone(context, server)  # type: ignore[arg-type]
            rigger.sign_in(RIGGER)
            rigger.begin(journey.LOAD, "Pump bay")
            rigger.can_go_on_alone()
            rigger.all_confirmed()
            server.kill()
            rigger.fill("landing", "Stand 7")
            expect(rigger.page.locator("#sync")).to_contain_text("kept on this phone")
            task, mine = rigger.page.url, rigger.own()
        server.start("127.0.0.2")
        with visitor(browser, chromium_path, home, address="127.0.0.2") as context:
            rigger = Phone(context, server)  # type: ignore[arg-type]
            rigger.sign_in(RIGGER)
            rigger.page.goto(task)
            assert rigger.page.url.startswith(server.url)
            expect(rigger.field("landing")).to_have_value("Stand 7")
            rigger.all_confirmed()
            assert rigger.own() == mine


def test_nobody_leaves_http_while_something_is_kept_there(workshop: Secured, trusting: Page, tmp_path: Path) -> None:
    rigger = Phone(trusting.context, workshop)  # type: ignore[arg-type]
    rigger.url = workshop.http
    rigger.sign_in(RIGGER)
    rigger.begin(journey.LOAD, "Pump bay")
    rigger.page.route("**/entries**", lambda route: route.abort())
    rigger.page.route("**/tasks/**", lambda route: route.abort())
    rigger.fill("landing", "Stand 8")
    expect(rigger.page.locator("#sync")).to_contain_text("kept on this phone")
    rigger.page.goto(f"{workshop.http}/trust")
    way = rigger.page.locator('[data-behaviour="move"]').last
    way.click()
    waiting = rigger.page.get_by_role("alert")
    expect(waiting).to_contain_text("still kept on this phone")
    with rigger.page.expect_download() as kept:
        waiting.get_by_role("link", name="Save them to a file").click()
    saved = json.loads(Path(kept.value.path()).read_text(encoding="utf-8"))
    assert any('"landing"' in one["body"] for one in saved["entries"])
    assert rigger.page.url == f"{workshop.http}/trust"
    rigger.page.unroute("**/entries**")
    rigger.page.wait_for_url(f"{workshop.url}/", timeout=30_000)


def test_once_https_is_used_http_signs_nothing_and_shows_the_way(workshop: Secured, trusting: Page) -> None:
    chief = Hand(trusting, workshop)  # type: ignore[arg-type]
    chief.sign_in("Sam Oduya")
    chief.page.goto(f"{workshop.url}/security")
    assert not faults_of(chief.page)
    chief.page.get_by_role("button", name="https from now on").click()
    expect(chief.page.locator("main")).to_contain_text("enter and check only")
    chief.page.goto(f"{workshop.http}/sign-in")
    chief.url = workshop.http
    chief.sign_in("Agata Rusk")
    chief.page.goto(f"{workshop.http}/begin?load=new")
    expect(chief.page.get_by_role("heading", level=1)).to_have_text("This needs https")
    assert not faults_of(chief.page)
    chief.page.get_by_role("link", name="Open by https").click()
    chief.page.wait_for_url(f"{workshop.url}/begin?load=new")


@pytest.mark.parametrize("width", [360, 1280])
def test_the_trust_page_is_fit_for_a_phone_and_a_desk(workshop: Secured, trusting: Page, width: int) -> None:
    trusting.set_viewport_size({"width": width, "height": 800})
    trusting.goto(f"{workshop.http}/trust")
    for system in trusting.locator("details.system > summary").all():
        system.click()
    assert not faults_of(trusting, width)
    assert not too_wide(trusting)
    assert trusting.title() == "Trust this workshop"
    assert NAME in trusting.locator("main").inner_text()
