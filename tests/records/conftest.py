"""A real store in a real file for every test."""

import pytest

from checklist_app.records.store import Store


@pytest.fixture
def store(tmp_path):
    made = Store(tmp_path / "data")
    made.devices.enrol("d-1")
    made.devices.sign_in("d-1", "p-1")
    yield made
    made.close()
