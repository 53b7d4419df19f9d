"""One server, one browser, a phone of 390×844 for each test that asks for one."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page, expect, sync_playwright

from tests.browser.server import Server, started
from tests.browser.stoppable import Stoppable, stoppable

PHONE = {"width": 390, "height": 844}
PATIENCE_MS = 30_000  # what comes at once on a quiet machine may take seconds on a loaded one

expect.set_options(timeout=PATIENCE_MS)


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    here = Path(__file__).parent
    for item in items:
        if here in item.path.parents:
            item.add_marker(pytest.mark.browser)


@pytest.fixture(scope="session")
def server(tmp_path_factory: pytest.TempPathFactory, filled_yard: Path) -> Iterator[Server]:
    folder = tmp_path_factory.mktemp("served") / "yard"
    shutil.copytree(filled_yard, folder)
    running = started(folder)
    yield running
    running.stop()


@pytest.fixture
def gone(tmp_path: Path, filled_yard: Path) -> Iterator[Stoppable]:
    """A server of its own for a test, which may be killed."""
    folder = tmp_path / "yard"
    shutil.copytree(filled_yard, folder)
    with stoppable(folder) as server:
        yield server


@pytest.fixture(scope="module")
def shared_yard(tmp_path_factory: pytest.TempPathFactory, filled_yard: Path) -> Iterator[Stoppable]:
    """One that may be killed, for all tests of a file; each leaves it running."""
    folder = tmp_path_factory.mktemp("shared") / "yard"
    shutil.copytree(filled_yard, folder)
    with stoppable(folder) as server:
        yield server


@pytest.fixture(scope="session")
def browser(chromium_path: str) -> Iterator[Browser]:
    with sync_playwright() as playwright:
        launched = playwright.chromium.launch(
            executable_path=chromium_path,
            args=["--no-sandbox", "--host-resolver-rules=MAP workshop.test 127.0.0.1"],
        )
        yield launched
        launched.close()


@pytest.fixture
def phone(browser: Browser) -> Iterator[BrowserContext]:
    context = browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True, locale="en-GB")
    context.set_default_timeout(PATIENCE_MS)
    yield context
    context.close()


@pytest.fixture
def page(phone: BrowserContext) -> Page:
    return phone.new_page()
