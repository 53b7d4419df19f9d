"""An app over a real database in a folder of its own, a clock that stands still, and people in each role."""

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from flask import Flask
from flask.testing import FlaskClient

from checklist_app.web.app import create_app
from tests.web.signed_in import People, Visitor


class Clock:
    """Stands at noon until a test moves it."""

    def __init__(self) -> None:
        self.at = datetime(2026, 11, 25, 12, 0, tzinfo=UTC)

    def __call__(self) -> datetime:
        return self.at

    def wait(self, **span: float) -> None:
        self.at += timedelta(**span)


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
def app(tmp_path: Path, clock: Clock) -> Iterator[Flask]:
    made = create_app(tmp_path / "data", CLOCK=clock, ZONE=UTC)
    yield made
    made.extensions["store"].close()


@pytest.fixture
def people(app: Flask) -> People:
    return People(app)


@pytest.fixture
def nobody(app: Flask) -> Visitor:
    return Visitor(app)


@pytest.fixture
def client(app: Flask) -> FlaskClient:
    return app.test_client()
