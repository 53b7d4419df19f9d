"""A sealed record on paper: its numbers are those of its text, its drawing is to scale, nothing is left out."""

import io
import json
import math
import re
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import page
import pikepdf
import pypdf
import pytest

from checklist_app.records import chain, figures, files
from checklist_app.records.pdf.record import paper
from checklist_app.records.seal import DEMONSTRATION, seal
from checklist_app.records.store import Store
from tests.records.yard import DRAWN, Lift, jpeg, whole_lift, yard

AT = "2026-11-25T12:00:00Z"
MEMBER_WIDE, A4_HIGH = (3.4, 5.4), 841.89


@pytest.fixture(scope="module")
def store(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Store]:
    made = yard(tmp_path_factory.mktemp("paper") / "data")
    (made.folder / DEMONSTRATION).touch()
    yield made
    made.close()


@pytest.fixture(scope="module")
def sealed(store: Store) -> chain.Sealed:
    found = chain.find(store, seal(store, whole_lift(store).id, AT))
    assert found is not None
    return found


@pytest.fixture(scope="module")
def record(sealed: chain.Sealed) -> dict[str, Any]:
    return sealed.record


@pytest.fixture(scope="module")
def file(store: Store, sealed: chain.Sealed) -> Path:
    return files.pdf_path(store.records, sealed.number, sealed.digest)


@pytest.fixture(scope="module")
def leaves(file: Path) -> list[str]:
    """The text of each page as a reader copies it, blanks made alike."""
    told = subprocess.run(["pdftotext", "-layout", file, "-"], capture_output=True, text=True, check=True).stdout
    return [re.sub(r"\s+", " ", leaf) for leaf in told.split("\f")[:-1]]


def told(words: str) -> str:
    return re.sub(r"\s+", " ", words)


def test_the_first_page_says_verdict_governing_check_class_load_place_day_number_and_closing(
        leaves: list[str], record: dict[str, Any]) -> None:
    check = figures.governing(record)
    assert check is not None
    large = figures.percentage(check) if check["kind"] == "strength" else figures.left(check, check["unit"])
    for words in (record["verdict"], f"{figures.title(check)} governs", large, "Routine",
                  "Vertical pump 400", "Pump bay to test bed", "25 November 2026", "number 1", "0001",
                  "Closed: completed", "DEMONSTRATION"):
        assert told(words) in leaves[0], words


def test_the_first_page_carries_every_signature_with_capacity_meaning_time_and_ink(
        file: Path, leaves: list[str], record: dict[str, Any]) -> None:
    assert len(record["signoffs"]) == 2
    for one in record["signoffs"]:
        assert f"{one['name']}, {one['capacity']}" in leaves[0]
        assert one["at"][11:16] in leaves[0]
        assert all(word in leaves[0] for word in one["meaning"].split())
    with pikepdf.open(file) as read:
        acts = "".join(str(op) for _, op in pikepdf.parse_content_stream(read.pages[0]) if str(op) in "mlS")
    strokes = len(json.loads(DRAWN)[0]) // 2
    assert acts.count("m" + "l" * (strokes - 1) + "S") == 2, "two drawn signatures, stroke by stroke"


def test_every_number_of_every_check_stands_on_the_paper_as_it_stands_in_the_text(
        leaves: list[str], record: dict[str, Any]) -> None:
    whole = " ".join(leaves)
    assert len(record["evaluation"]["checks"]) > 15
    for check in record["evaluation"]["checks"]:
        for words in (figures.demand(check), figures.capacity(check), figures.title(check)):
            assert told(words) in whole, words
        for line in check["working"]:
            assert "".join(line.split()) in "".join(whole.split()), line


def test_answers_gear_assumptions_cautions_and_limits_all_reach_the_paper(
        leaves: list[str], record: dict[str, Any]) -> None:
    whole = "".join("".join(leaves).split())
    for one in record["answers"]:
        assert "".join(one["answer"].split()) in whole, one
    for one in record["kit"]:
        assert one["tag"] in whole and "".join(one["used"].split()) in whole, one
    for words in (*record["evaluation"]["assumptions"], *record["evaluation"]["cautions"], *record["limits"]):
        assert "".join(words.split())[1:] in whole, words


def test_the_digests_of_this_record_and_the_one_before_are_printed(leaves: list[str], sealed: chain.Sealed) -> None:
    whole = "".join("".join(leaves).split())
    assert sealed.digest in whole and sealed.previous in whole
    assert all(figures.grouped(sealed.digest) in leaf for leaf in leaves)
    assert all("DEMONSTRATION" in leaf for leaf in leaves)


def test_each_leg_is_drawn_at_its_angle_to_a_tenth_of_a_degree(file: Path, record: dict[str, Any]) -> None:
    angles = {each["name"]: float(each["value"]) for each in record["evaluation"]["quantities"]
              if each["name"].startswith("leg_angle_deg[")}
    drawn = sorted(member_angles(file))
    assert len(angles) == 2
    for angle in angles.values():
        assert min(abs(angle - found) for found in drawn) < 0.1, (angles, drawn)


def member_angles(file: Path) -> Iterator[float]:
    """Angles from vertical of every long line that is as thick as a member, read out of the page itself."""
    for (x, y), (to_x, to_y), wide in lines(file):
        if wide in MEMBER_WIDE and math.hypot(to_x - x, to_y - y) > 20:
            yield abs(math.degrees(math.atan2(to_x - x, y - to_y)))


def test_the_line_falls_from_the_edge_of_the_paper_into_the_hook_where_the_legs_meet(file: Path) -> None:
    found = list(lines(file))
    meets = [start for start, end, wide in found if wide in MEMBER_WIDE and start[0] != end[0]]
    falling = [(start, end) for start, end, _ in found if start[1] == pytest.approx(A4_HIGH, abs=0.1)
               and start[0] == pytest.approx(end[0], abs=0.01)]
    assert any(end == pytest.approx(hook, abs=0.1) for _, end in falling for hook in meets), (falling, meets)


def lines(file: Path) -> Iterator[tuple[tuple[float, float], tuple[float, float], float]]:
    """Every straight stroke of the first page with its thickness, in points of the paper. Only shifts are followed."""
    x = y = wide = 0.0
    place, kept = (0.0, 0.0), []
    with pikepdf.open(file) as read:
        for operands, operator in pikepdf.parse_content_stream(read.pages[0]):
            numbers = [float(each) for each in operands] if str(operator) in ("w", "m", "l", "cm") else []
            match str(operator):
                case "q":
                    kept.append((x, y, wide))
                case "Q":
                    x, y, wide = kept.pop()
                case "cm":
                    x, y = x + numbers[4], y + numbers[5]
                case "w":
                    wide = numbers[0]
                case "m":
                    place = (x + numbers[0], y + numbers[1])
                case "l":
                    to = (x + numbers[0], y + numbers[1])
                    yield place, to, wide
                    place = to


def test_the_photograph_lies_in_the_file_untouched(file: Path) -> None:
    with pikepdf.open(file) as read:
        found = {image.read_raw_bytes() for leaf in read.pages for image in leaf.get_images().values()}
    assert jpeg() in found


def test_the_same_text_gives_the_same_bytes_again(store: Store, file: Path, record: dict[str, Any]) -> None:
    assert paper(record, store.parts.get) == file.read_bytes()


def test_the_checkers_find_no_fault_of_syntax_and_no_face_left_out(file: Path) -> None:
    checked = subprocess.run(["qpdf", "--check", file], capture_output=True, text=True, check=False)
    assert checked.returncode == 0, checked.stdout + checked.stderr
    rules = [fault.rule_id for fault in page.validate_pdf(file, profile="3b").failures]
    assert not [rule for rule in rules if "FONT" in rule or "GLYPH" in rule], rules


def test_a_lift_of_which_nothing_could_be_computed_is_a_record_too(store: Store) -> None:
    lift = Lift(store, "t-d9-1", "d9")
    lift.say("begin", {"type": "begin", "operation": "straight_lift", "procedure": "straight_lift/1"})
    lift.close("abandoned", "Nobody knew what it weighs. <b>& so on</b> \U0001f3d7")
    found = chain.find(store, seal(store, lift.id, AT))
    assert found is not None
    told = "".join(leaf.extract_text() for leaf in pypdf.PdfReader(
        io.BytesIO(files.pdf_path(store.records, found.number, found.digest).read_bytes())).pages)
    assert found.record["governs"] is None and found.record["verdict"] == "waiting"
    for words in ("No load picked", "No signature stands", "Waiting: hoist, for", "Class not reached", "<b>& so on</b>",
                  "[U+1F3D7]"):
        assert words in " ".join(told.split()), words


def test_whatever_length_of_words_somebody_typed_the_record_is_made_and_holds_them_all(store: Store) -> None:
    lift, words = Lift(store, "t-d8-1", "d8").plan(), " ".join(f"word{number}" for number in range(3000))
    lift.words("odd", "text", words)
    lift.words("landing", "text", "y" * 2000)
    lift.close("abandoned", words)
    found = chain.find(store, seal(store, lift.id, AT))
    assert found is not None
    file = files.pdf_path(store.records, found.number, found.digest)
    told = subprocess.run(["pdftotext", "-raw", file, "-"], capture_output=True, text=True, check=True).stdout
    assert told.count("word2999") == 2 and "".join(told.split()).count("y" * 500) >= 1
