"""The engine of the phone over the web: pressed, of the right type, under addresses that hold their digests."""

import gzip
import hashlib
import re

import pytest

from checklist_app.shipped import shipped
from checklist_app.web.floors import FLOORS, VENDORED, built_name, current_name, source_name, source_zip
from tests.web.signed_in import Visitor

SUMS = dict(reversed(line.split("  ")) for line in
            (shipped("static") / VENDORED / "CHECKSUMS").read_text().splitlines())
TYPES = {"wasm": "application/wasm", "mjs": "text/javascript", "js": "text/javascript", "zip": "application/zip",
         "json": "application/json"}


def named(visitor: Visitor, name: str) -> str:
    found = re.search(rf'<meta name="{name}" content="([^"]+)">', visitor.get("/").text)
    assert found is not None
    return found.group(1)


def test_pages_name_the_engine_and_the_floors_by_their_digests(nobody: Visitor) -> None:
    assert re.fullmatch(r"/static/engine/pyodide-[0-9a-f]{12}/", named(nobody, "engine"))
    assert re.fullmatch(r"/static/engine/floors-[0-9a-f]{12}(-source)?\.zip", named(nobody, "floors"))


@pytest.mark.parametrize("name", SUMS)
def test_a_file_comes_pressed_as_far_as_the_browser_takes_it(nobody: Visitor, name: str) -> None:
    address = named(nobody, "engine") + name
    sizes = {}
    for takes, comes in (("gzip, deflate, br", "br"), ("gzip, deflate", "gzip"), ("", None)):
        page = nobody.client.get(address, headers={"Accept-Encoding": takes})
        assert page.status_code == 200
        assert page.headers.get("Content-Encoding") == comes
        assert page.mimetype == TYPES[name.rpartition(".")[2]]
        assert page.headers["Cache-Control"] == "public, max-age=31536000, immutable"
        assert page.headers["Vary"] == "Accept-Encoding"
        assert page.headers["X-Content-Type-Options"] == "nosniff"
        inside = gzip.decompress(page.data) if comes == "gzip" else page.data
        assert comes == "br" or hashlib.sha256(inside).hexdigest() == SUMS[name]
        sizes[comes] = len(page.data)
    assert sizes["br"] < sizes["gzip"] < sizes[None]


@pytest.mark.parametrize("path", [
    "pyodide-000000000000/pyodide.mjs", "pyodide-{engine}/CHECKSUMS", "pyodide-{engine}/..%2fhtmx%2fhtmx.min.js",
    "pyodide-{engine}/nothing.js", "floors-000000000000.zip", "floors-000000000000-source.zip", "CHECKSUMS",
])
def test_no_other_file_is_given_out_under_these_addresses(nobody: Visitor, path: str) -> None:
    engine = named(nobody, "engine").partition("-")[2].strip("/")
    assert nobody.get("/static/engine/" + path.format(engine=engine)).status_code == 404


def test_the_floors_come_as_sources_where_no_release_build_fits(
    nobody: Visitor, monkeypatch: pytest.MonkeyPatch, tmp_path_factory: pytest.TempPathFactory
) -> None:
    monkeypatch.setattr("checklist_app.web.floors.FLOORS", "no-such-folder")
    assert current_name() == source_name()
    address = named(nobody, "floors")
    assert address.endswith(source_name())
    assert nobody.client.get(address, headers={"Accept-Encoding": ""}).data == source_zip()
    small = nobody.client.get(address, headers={"Accept-Encoding": "gzip"})
    assert gzip.decompress(small.data) == source_zip()
    assert small.mimetype == "application/zip"


def test_a_release_build_counts_only_while_its_digest_is_that_of_the_sources() -> None:
    built = shipped("static") / FLOORS
    fits = (built / f"{built_name()}.gz").is_file()
    assert current_name() == (built_name() if fits else source_name())


@pytest.mark.parametrize("name", ["css/app.css", "js/entry.js", "vendor/htmx/htmx.min.js"])
def test_texts_go_over_the_air_pressed(nobody: Visitor, name: str) -> None:
    plain = nobody.client.get(f"/static/{name}", headers={"Accept-Encoding": ""})
    small = nobody.client.get(f"/static/{name}", headers={"Accept-Encoding": "gzip"})
    assert small.headers["Content-Encoding"] == "gzip"
    assert gzip.decompress(small.data) == plain.data == (shipped("static") / name).read_bytes()
    assert len(small.data) < len(plain.data)


def test_pictures_and_faces_are_left_as_they_are(nobody: Visitor) -> None:
    page = nobody.client.get("/static/fonts/symbols.woff2", headers={"Accept-Encoding": "gzip"})
    assert "Content-Encoding" not in page.headers
    page.close()


def test_pages_go_over_the_air_pressed_and_say_the_same(nobody: Visitor) -> None:
    plain = nobody.client.get("/", headers={"Accept-Encoding": ""})
    small = nobody.client.get("/", headers={"Accept-Encoding": "gzip, br"})
    assert small.headers["Content-Encoding"] == "gzip"
    assert gzip.decompress(small.data) == plain.data
    assert len(small.data) * 2 < len(plain.data) == int(plain.headers["Content-Length"])
    assert int(small.headers["Content-Length"]) == len(small.data)
    assert "Accept-Encoding" in small.headers["Vary"] and "Accept-Encoding" in plain.headers["Vary"]
