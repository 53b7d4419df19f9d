"""Every comparison with a figure of somebody else is recorded while the tests run: the table of what proves what."""

from collections.abc import Generator
from pathlib import Path

import pytest

from tests.mechanics.recorded import Recorder, is_recorded

RECORDER = pytest.StashKey[Recorder]()
HERE = Path(__file__).parent
LAST = "test_what_proves_what.py"


class Listener:
    """Hears each assertion that held; pyproject.toml switches that on. Only while a test runs that is recorded:
    to put an assertion into words costs more than to make it."""

    def pytest_assertion_pass(self, item: pytest.Item, lineno: int, orig: str, expl: str) -> None:
        item.config.stash[RECORDER].note(item, expl)


def pytest_configure(config: pytest.Config) -> None:
    config.stash[RECORDER] = Recorder()


@pytest.hookimpl(wrapper=True, tryfirst=True)
def pytest_runtest_protocol(item: pytest.Item) -> Generator[None, object, object]:
    if HERE not in item.path.parents or not is_recorded(item):  # this hook hears of every test of the run
        return (yield)
    listener = Listener()
    item.config.pluginmanager.register(listener)
    try:
        return (yield)
    finally:
        item.config.pluginmanager.unregister(listener)


@pytest.hookimpl(trylast=True)
def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """The table is looked at when all that goes into it has run."""
    items.sort(key=lambda item: item.path.name == LAST)


@pytest.fixture
def recorder(request: pytest.FixtureRequest) -> Recorder:
    return request.config.stash[RECORDER]
