"""Visitors as the tests know them: somebody at a browser, signed in or not, who fills in the forms he is shown."""

import re
from dataclasses import dataclass

from flask import Flask
from werkzeug.test import TestResponse

from checklist_app.operations.kinds import KINDS
from checklist_app.web import registry
from checklist_app.web.security import POLICY
from tests.web.strict import strict

PIN = "4711"
TOKEN = re.compile(r'name="form-token" content="([0-9a-f]+)"')
HELD = {"rigger": "rigger", "supervisor": "supervisor", "administrator": "examiner", "auditor": ""}


class Visitor:
    """One browser. Every page it is shown is held against the rules for pages."""

    def __init__(self, app: Flask) -> None:
        self.client = app.test_client()
        self.token = ""

    def get(self, address: str, **more: object) -> TestResponse:
        return self._looked_at(self.client.get(address, **more))

    def post(self, address: str, form: dict[str, object] | None = None, **more: object) -> TestResponse:
        """A form of the page that was looked at last."""
        if not self.token:
            self.get("/sign-in")
        given = {"form_token": self.token} | (form or {})
        response = self.client.post(address, data=given, **more)
        response.request.environ["wsgi.input"].close()
        return self._looked_at(response)

    def _looked_at(self, response: TestResponse) -> TestResponse:
        assert response.headers["Content-Security-Policy"] == POLICY
        assert response.headers["X-Content-Type-Options"] == "nosniff"
        if response.mimetype == "text/html" and response.text.lstrip().lower().startswith("<!doctype"):
            if response.status_code not in (301, 302, 303, 308):
                strict(response.text)
            if found := TOKEN.search(response.text):
                self.token = found.group(1)
        return response


@dataclass
class People:
    """Accounts with PINs and capacities, made when first asked for."""

    app: Flask

    def add(self, name: str, role: str, capacity: str = "", until: str = "2027-06-30", pin: str = PIN) -> str:
        from checklist_app.checklists.answer import Person
        from checklist_app.web import current, keeping

        person = f"p-{name.lower().replace(' ', '-')}"
        facts: dict[str, object] = {"name": name}
        if capacity:
            facts["capacities"] = [{"capacity": capacity, "until": until}]
        with self.app.test_request_context():
            self.app.preprocess_request()
            current.accounts().add(person, name, role)
            made = keeping.making(Person(person, name, role))
            registry.say_version(made, KINDS["person"], ("person", person), facts)
            keeping.keep_made(made)
            code = current.accounts().give_code(person, current.now())
            assert current.accounts().set_pin(person, pin, code, current.now())
        return person

    def visitor(self, role: str) -> Visitor:
        """Somebody of this role, signed in on a browser of his own."""
        name = f"Some {role}"
        self.add(name, role, HELD[role])
        return self.sign_in(name)

    def sign_in(self, name: str, pin: str = PIN) -> Visitor:
        visitor = Visitor(self.app)
        visitor.get("/sign-in")
        response = visitor.post("/sign-in", {"typed": name, "pin": pin})
        assert response.status_code == 303, response.text
        visitor.get("/registers")
        return visitor
