"""One idea a file: ceilings on length, with every exception written down here."""

from pathlib import Path

import pytest

from tests.style.tree import PACKAGE, ROOT, STATIC, TEMPLATES, lines, name, python_files

CEILINGS = {".py": 300, ".html": 60, ".css": 120, ".js": 120}
CSS_BYTES = 40_000
# Each with its reason; what shrinks below the ceiling leaves this table.
LONGER: dict[str, int] = {}


def watched() -> list[Path]:
    pages = sorted(TEMPLATES.rglob("*.html"))
    own = [path for path in sorted(STATIC.rglob("*")) if "vendor" not in path.parts]
    looks = [path for path in own if path.suffix in {".css", ".js"}]
    return [*python_files(PACKAGE), *python_files(ROOT / "tests"), *pages, *looks]


@pytest.mark.parametrize("path", watched(), ids=name)
def test_no_file_outgrows_one_idea(path: Path) -> None:
    ceiling = LONGER.get(name(path), CEILINGS[path.suffix])
    assert lines(path) <= ceiling, f"{name(path)} has {lines(path)} lines, {ceiling} is the most: divide it by idea"


def test_the_table_of_exceptions_lists_only_files_that_need_it() -> None:
    needless = [
        key for key in LONGER if not (ROOT / key).exists() or lines(ROOT / key) <= CEILINGS[Path(key).suffix]
    ]
    assert not needless, f"take these out of LONGER: {needless}"


def test_the_style_sheet_stays_small_enough_for_a_yard_phone() -> None:
    size = sum(path.stat().st_size for path in (STATIC / "css").glob("*.css"))
    assert size <= CSS_BYTES, f"the style sheets hold {size} bytes, {CSS_BYTES} is the most"
