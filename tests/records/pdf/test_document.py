"""The one writer of the paper: every face embedded, every character accounted for, the same bytes twice."""

import io
import subprocess
from datetime import UTC, datetime
from pathlib import Path

import page
import pikepdf
import pypdf
import pytest
from PIL import Image
from reportlab.lib.units import mm

from checklist_app.records.pdf.document import Document
from checklist_app.records.pdf.photograph import photograph

WHEN = datetime(2026, 11, 25, 11, 40, tzinfo=UTC)


def document(*texts: str, digest: str = "ab" * 32, banner: str = "") -> Document:
    made = Document("Record 4", "Yard", digest, WHEN, "It never replaces a competent person.", banner)
    made.add(made.heading(1, "Generating set"), *map(made.paragraph, texts))
    return made


def text_of(pdf: bytes) -> str:
    return "\n".join(leaf.extract_text() for leaf in pypdf.PdfReader(io.BytesIO(pdf)).pages)


def jpeg(width: int = 64, height: int = 48) -> bytes:
    made = io.BytesIO()
    Image.new("RGB", (width, height), "#808040").save(made, "JPEG")
    return made.getvalue()


def test_every_sign_of_the_trade_and_every_name_of_the_neighbours_reaches_the_paper() -> None:
    said = "β 36.2° ≤ 60°, √2 ≈ 1.41, 5′ → 6″, μ, Größe Straße, Zażółć gęślą jaźń, ✓, ½, –"
    made = document(said)
    assert said in " ".join(text_of(made.pdf()).split()).replace(" ,", ",")
    assert made.replaced == set()


def test_a_character_that_no_face_has_stands_as_its_code_and_is_reported() -> None:
    made = document("pump \U0001f600 hall")
    assert "[U+1F600]" in text_of(made.pdf())
    assert made.replaced == {"\U0001f600"}


@pytest.mark.parametrize("steering", ["\u202e", "\u200b", "\x07", "\ufeff"])
def test_a_character_that_only_steers_is_made_visible(steering: str) -> None:
    made = document(f"limit 2000{steering}kg")
    assert f"2000[U+{ord(steering):04X}]kg" in text_of(made.pdf())


def test_nothing_that_a_person_wrote_is_read_as_mark_up() -> None:
    said = '<img src="/etc/hostname"/> <b>&amp; </para> <a href="x">'
    assert said in text_of(document(said).pdf())


def test_the_same_blocks_give_the_same_bytes_and_another_record_another_name() -> None:
    one, same, other = (document("text", digest=name * 32).pdf() for name in ("ab", "ab", "cd"))
    assert one == same
    assert pikepdf.open(io.BytesIO(one)).trailer.ID[0] != pikepdf.open(io.BytesIO(other)).trailer.ID[0]


def test_the_file_is_dated_with_the_moment_of_sealing() -> None:
    read = pypdf.PdfReader(io.BytesIO(document().pdf()))
    assert read.metadata is not None
    assert read.metadata.creation_date == WHEN


def test_every_page_says_its_number_of_all_its_foot_and_its_banner() -> None:
    made = document(*["line"] * 200, banner="DEMONSTRATION")
    leaves = [leaf.extract_text() for leaf in pypdf.PdfReader(io.BytesIO(made.pdf())).pages]
    assert len(leaves) > 2
    for number, leaf in enumerate(leaves, 1):
        assert f"page {number} of" in leaf and "competent person" in leaf and "DEMONSTRATION" in leaf
    drawn = subprocess.run(["pdftotext", "-", "-"], input=made.pdf(), capture_output=True, check=True)
    assert f"page 1 of\n\n{len(leaves)}" in drawn.stdout.decode() or f"page 1 of {len(leaves)}" in drawn.stdout.decode()


def test_long_words_wrap_inside_their_cell_and_the_head_stands_on_every_page() -> None:
    made = document()
    made.next_page()
    made.add(made.table(["Check", "Demand"], [["x" * 300, "1728 kg"]] * 40, [2, 1], frozenset({1})))
    leaves = [leaf.extract_text() for leaf in pypdf.PdfReader(io.BytesIO(made.pdf())).pages]
    assert len(leaves) == 5
    assert all("Demand" in leaf for leaf in leaves[1:])
    assert all(len(line) < 120 for leaf in leaves for line in leaf.splitlines())


def test_a_photograph_goes_in_untouched() -> None:
    made, camera = document(), jpeg()
    made.add(photograph(made, camera, "Eye with its sling", 60 * mm, 45 * mm))
    with pikepdf.open(io.BytesIO(made.pdf())) as read:
        found = [image.read_raw_bytes() for leaf in read.pages for image in leaf.get_images().values()]
    assert found == [camera]


@pytest.mark.parametrize("broken", [b"", b"not a photograph", jpeg()[:40]])
def test_a_photograph_that_cannot_be_read_is_said_and_the_record_is_still_made(broken: bytes) -> None:
    made = document()
    made.add(photograph(made, broken, "Eye with its sling", 60 * mm, 45 * mm))
    assert "cannot be printed" in text_of(made.pdf())


def test_the_checkers_find_no_fault_of_syntax_and_no_face_left_out(tmp_path: Path) -> None:
    made = document("β ≤ 60° √2 ✓", banner="DEMONSTRATION")
    made.add(made.table(["Check"], [["Left sling"]], [1]), photograph(made, jpeg(), "Eye", 60 * mm, 45 * mm))
    file = tmp_path / "record.pdf"
    file.write_bytes(made.pdf())
    checked = subprocess.run(["qpdf", "--check", file], capture_output=True, text=True, check=False)
    assert checked.returncode == 0, checked.stdout + checked.stderr
    rules = [fault.rule_id for fault in page.validate_pdf(file, profile="3b").failures]
    assert not [rule for rule in rules if "FONT" in rule or "GLYPH" in rule], rules
