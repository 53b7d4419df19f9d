"""Somebody with a phone: opens the app's own pages and sends its own forms, on a clock that the demonstration sets."""

import re
from datetime import datetime, timedelta
from typing import Any

from flask import Flask
from werkzeug.test import TestResponse

TOKEN = re.compile(r'<meta name="form-token" content="([^"]*)"')
ORIGIN = "http://localhost"


class Clock:
    """The instant the app believes in."""

    def __init__(self, at: datetime) -> None:
        self.at = at

    def __call__(self) -> datetime:
        return self.at

    def later(self, **span: float) -> None:
        self.at += timedelta(**span)


class Phone:
    """One browser; whoever signs in on it stays signed in."""

    def __init__(self, app: Flask) -> None:
        self.client = app.test_client()
        self.token = ""

    def open(self, path: str) -> TestResponse:
        return self._seen(self.client.get(path), path)

    def send(self, path: str, **form: Any) -> TestResponse:
        """A form as a browser without script sends it."""
        sent = {"form_token": self.token} | form
        return self._seen(self.client.post(path, data=sent, headers={"Origin": ORIGIN}), path)

    def is_sealed(self, task: str) -> bool:
        return self.client.get(task).status_code == 409

    def sign_in(self, name: str, pin: str) -> None:
        self.open("/sign-in")
        self.send("/sign-in", name=name, typed="", pin=pin)
        self.open("/today")

    def _seen(self, response: TestResponse, path: str) -> TestResponse:
        """What the app did not take would leave a hole in the demonstration."""
        if response.status_code not in (200, 303):
            raise RuntimeError(f"{path}: {response.status} {response.get_data(as_text=True)}")
        found = TOKEN.search(response.get_data(as_text=True))
        if found is not None:
            self.token = found.group(1)

        return response
