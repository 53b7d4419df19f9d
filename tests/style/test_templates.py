"""Pages carry no style and no script of their own: the policy sent with them forbids both."""

import re
from pathlib import Path

import pytest

from tests.style.tree import STATIC, TEMPLATES, name

PAGES = sorted(TEMPLATES.rglob("*.html"))
INLINE = {
    r"<style\b": "move it into a file of static/css",
    r"\sstyle\s*=": "give it a class, or an SVG attribute",
    r"<script(?![^>]*\bsrc=)": "move it into a module of static/js",
    r"\son[a-z]+\s*=\s*[\"']": "use [data-behaviour] and a module of static/js",
    r"\bhx-on\b": "htmx may not evaluate: use [data-behaviour]",
    r"javascript:": "use a link or a button",
    r"https?://(?!www\.w3\.org/)": "nothing may come from another host",
}
SERVER_ONLY = r"\b(url_for|session|csrf_token|get_flashed_messages|config|g|request)\b\s*[\(\.\[]"


@pytest.mark.parametrize("path", PAGES, ids=name)
def test_no_page_carries_style_or_script_of_its_own(path: Path) -> None:
    text = re.sub(r"{#.*?#}", "", path.read_text(encoding="utf-8"), flags=re.DOTALL)
    found = [f"{rule}: {cure}" for rule, cure in INLINE.items() if re.search(rule, text, re.IGNORECASE)]
    assert not found, f"{name(path)}: {found}"


@pytest.mark.parametrize("path", [page for page in PAGES if "checklist" in page.parts], ids=name)
def test_travelling_pages_call_nothing_of_the_server(path: Path) -> None:
    blocks = " ".join(re.findall(r"{[{%].*?[%}]}", path.read_text(encoding="utf-8"), flags=re.DOTALL))
    found = re.findall(SERVER_ONLY, blocks)
    assert not found, f"{name(path)} is rendered on the phone too; let the value come as data: {found}"


@pytest.mark.parametrize("path", sorted((STATIC / "css").glob("*.css")), ids=name)
def test_the_style_sheets_shout_and_reach_for_nothing(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    ids = [found for found in re.findall(r"#[a-zA-Z][\w-]*", text) if not is_colour(found) and "theme-" not in found]
    assert "!important" not in text, f"{name(path)}: order the layers instead of !important"
    assert "//" not in re.sub(r"/\*.*?\*/", "", text, flags=re.DOTALL), f"{name(path)}: nothing from another host"
    assert not ids, f"{name(path)}: use classes, not ids: {ids}"


def is_colour(text: str) -> bool:
    return re.fullmatch(r"#([0-9a-fA-F]{3,4}|[0-9a-fA-F]{6}|[0-9a-fA-F]{8})", text) is not None
