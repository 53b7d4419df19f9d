"""The whole yard, its lifts carried out: filled once for all tests that look at it."""

from pathlib import Path

import pytest

from checklist_app.records.store import Store


@pytest.fixture(scope="session")
def yard(filled_yard: Path) -> Store:
    return Store(filled_yard)
