"""What a phone opens by itself: every file of the list is there, and another edition is another service worker."""

import json
import re

from flask import Flask
from PIL import Image, ImageChops

from checklist_app.engine.icons import SIZES_PX, icon
from checklist_app.shipped import shipped
from tests.web.signed_in import People, Visitor
from tests.web.strict import strict


def constants(script: str) -> dict[str, object]:
    return {name: json.loads(value) for name, value in re.findall(r"^const (EDITION|FILES|ENGINE) = (.*);$",
                                                                    script, re.M)}


def test_every_file_that_the_service_worker_keeps_is_served(nobody: Visitor) -> None:
    answer = nobody.client.get("/sw.js")
    assert answer.mimetype == "text/javascript" and answer.headers["Cache-Control"] == "no-cache"
    said = constants(answer.text)
    assert {"/shell", "/shell/outbox"} <= set(said["FILES"])
    missing = [path for path in [*said["FILES"], *said["ENGINE"]]
               if nobody.client.get(path, buffered=True).status_code != 200]
    assert not missing
    assert {path.rpartition("/")[2] for path in said["ENGINE"]} >= {"pyodide.mjs", "pyodide.asm.wasm", "stdlib.zip"}
    assert any(path.endswith("/js/offline.js") for path in said["FILES"])
    assert not any(path.endswith("/js/sw.js") for path in said["FILES"])


def test_the_shell_names_only_files_that_are_kept(nobody: Visitor) -> None:
    kept = set(constants(nobody.client.get("/sw.js").text)["FILES"])
    for address in ("/shell", "/shell/outbox"):
        named = set(re.findall(r'(?:src|href)="(/static/[^"]+)"', nobody.client.get(address).text))
        assert named and named <= kept


def test_the_shell_holds_no_name_whoever_asks_for_it(people: People) -> None:
    visitor = people.visitor("rigger")
    for address in ("/shell", "/shell/outbox"):
        text = visitor.client.get(address).text
        strict(text)
        assert "p-some-rigger" not in text and "Some rigger" not in text
        assert 'name="form-token" content=""' in text


def test_the_app_can_be_put_on_the_home_screen(app: Flask, nobody: Visitor) -> None:
    found = nobody.client.get("/manifest.webmanifest")
    assert found.mimetype == "application/manifest+json"
    assert found.json["display"] == "standalone" and found.json["start_url"] == "/today"
    for each in found.json["icons"]:
        assert nobody.client.get(each["src"], buffered=True).status_code == 200
    assert 'rel="manifest"' in nobody.client.get("/sign-in").text


def test_the_icons_are_those_that_the_script_draws() -> None:
    for size_px in SIZES_PX:
        kept = Image.open(shipped("static") / f"icon-{size_px}.png").convert("RGB")
        assert ImageChops.difference(kept, icon(size_px)).getbbox() is None
