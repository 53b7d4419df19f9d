"""Words that have no place in the product or that people would read wrongly."""

import re
from pathlib import Path

import pytest

from tests.style.tree import PACKAGE, ROOT, STATIC, TEMPLATES, name, python_files

FORBIDDEN = {
    r"\bTODO\b|\bFIXME\b|\bXXX\b": "do it, or write it into the known faults of DEVELOPERS.md",
    r"\blorem ipsum\b": "write what stands there",
    r"/(?:work|home|root|tmp)/\w": "no path of one machine",
    r"\bguaranteed? safe\b|\b100 ?% safe\b": "the app never says that a lift is safe",
    r"(?<!-)\butils\b|\bhelpers?\b|\bmisc\b": "name it by what it does",
}
# Verdicts have one wording each; these are what slips in instead.
SLIPS = r">\s*(?:PASS|FAIL|OK|N/?A|Error|Invalid input|Oops|Submit|Success)\s*<"


def written() -> list[Path]:
    pages = sorted(TEMPLATES.rglob("*.html"))
    own = [path for path in STATIC.rglob("*") if path.suffix in {".css", ".js"} and "vendor" not in path.parts]
    papers = [path for path in (ROOT / "README.md", ROOT / "DEVELOPERS.md") if path.exists()]
    return [*python_files(PACKAGE), *pages, *sorted(own), *papers, *sorted((ROOT / "demo_data").glob("*"))]


@pytest.mark.parametrize("path", written(), ids=name)
def test_no_word_stands_where_it_should_not(path: Path) -> None:
    text = path.read_text(encoding="utf-8")
    found = [f"{hit.group(0)!r}: {cure}" for rule, cure in FORBIDDEN.items() for hit in re.finditer(rule, text, re.I)]
    assert not found, f"{name(path)}: {found}"


@pytest.mark.parametrize("path", sorted(TEMPLATES.rglob("*.html")), ids=name)
def test_pages_speak_the_words_of_the_workshop(path: Path) -> None:
    found = re.findall(SLIPS, path.read_text(encoding="utf-8"))
    assert not found, f"{name(path)}: say what happened and what to do, or the verdict's own words: {found}"
