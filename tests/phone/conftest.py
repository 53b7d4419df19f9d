"""One phone without a screen for all tests that ask for one."""

import shutil
from collections.abc import Iterator

import pytest

from tests.phone.node_phone import NodePhone, compiled_floors


@pytest.fixture(scope="session")
def node() -> str:
    """Path of Node.js; without it the test is skipped, which is a failure under CI."""
    found = shutil.which("node")
    if found is None:
        pytest.skip("no Node.js on this machine: install Debian's package nodejs to run the phone's engine")
    return found


@pytest.fixture(scope="session")
def phone(node: str, tmp_path_factory: pytest.TempPathFactory) -> Iterator[NodePhone]:
    """With compiled floors, as a release sends them, going on from the memory of its first visit."""
    folder = tmp_path_factory.mktemp("phone")
    started = NodePhone(node, folder, compiled_floors(folder), "second")
    yield started
    started.close()
