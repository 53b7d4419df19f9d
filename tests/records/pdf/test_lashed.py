"""A lashed load on paper: its views at one scale, its bars by themselves, every word inside the page."""

import re
import subprocess
from datetime import UTC, datetime
from pathlib import Path

import pytest

from checklist_app.operations.drawing import Text
from checklist_app.operations.lashing.lashing_views import views
from checklist_app.records import pictures
from checklist_app.records.pdf.document import WIDTH, Document
from checklist_app.records.pdf.drawing import drawn, extent, fitted
from checklist_app.records.pdf.views import other_views
from tests.operations.lashing.drawn import CASES

WHEN = datetime(2026, 11, 28, 9, 0, tzinfo=UTC)
HIGH = 300.0


def printed(case: str, folder: Path) -> tuple[str, Path]:
    picture = pictures.drawing(pictures.sealed(views(CASES[case])))
    verdicts = {bar.check: bar.verdict for bar in CASES[case].bars}
    made = Document("Record 4", "Yard", "ab" * 32, WHEN, "It never replaces a competent person.", "")
    made.add(made.heading(1, "Record 4"), drawn(made, picture, WIDTH, HIGH, 0.56, verdicts))
    other_views(made, picture, verdicts)
    file = folder / "lashed.pdf"
    file.write_bytes(made.pdf())
    told = subprocess.run(["pdftotext", "-layout", file, "-"], capture_output=True, text=True, check=True).stdout
    return re.sub(r"\s+", " ", told), file


@pytest.mark.parametrize("case", CASES)
def test_every_view_and_every_word_is_on_the_paper(case: str, tmp_path: Path) -> None:
    told, file = printed(case, tmp_path)
    whole = views(CASES[case])
    for view in (whole, *whole.others):
        assert view is whole or view.name in told
        for leaf in view.leaves():
            if isinstance(leaf, Text):
                assert all(part in told for part in leaf.words.split()), leaf.words
    assert told.count("scale 1:") == 3
    checked = subprocess.run(["qpdf", "--check", file], capture_output=True, text=True, check=False)
    assert checked.returncode == 0, checked.stdout + checked.stderr


@pytest.mark.parametrize("case", CASES)
def test_nothing_reaches_beyond_the_margins_of_the_page(case: str, tmp_path: Path) -> None:
    _, file = printed(case, tmp_path)
    boxes = subprocess.run(["pdftotext", "-bbox", file, "-"], capture_output=True, text=True, check=True).stdout
    rights = [float(each) for each in re.findall(r'xMax="([0-9.]+)"', boxes)]
    assert rights and max(rights) <= 595.28 - 14.0 * 72.0 / 25.4 + 1.0


@pytest.mark.parametrize("case", CASES)
def test_the_side_hangs_on_the_line_from_the_edge_of_the_paper(case: str) -> None:
    picture = views(CASES[case])
    view = fitted(picture, WIDTH, HIGH, 0.56)
    assert view.at(picture.hook)[0] == pytest.approx(0.56 * WIDTH)
    box = extent(picture, view)
    assert box.left >= 0.0 and box.right <= WIDTH


@pytest.mark.parametrize("case", CASES)
def test_a_sealed_drawing_comes_back_as_it_was(case: str) -> None:
    picture = views(CASES[case])
    back = pictures.drawing(pictures.sealed(picture))
    assert pictures.sealed(back) == pictures.sealed(picture)
    assert [view.to_scale for view in back.others] == [view.to_scale for view in picture.others]
    columns = [[leaf.along for leaf in view.leaves() if isinstance(leaf, Text)] for view in (back, *back.others)]
    assert columns == [[leaf.along for leaf in view.leaves() if isinstance(leaf, Text)]
                       for view in (picture, *picture.others)]
