"""Sealed lashings on paper, on a skid and on a lorry: no figure of the text is missing, and a driver finds his part."""

import re
import subprocess
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from checklist_app.commands.demo import fill
from checklist_app.demo.carry_out import carry_out
from checklist_app.demo.data import table
from checklist_app.records import chain, figures, files, lashed
from checklist_app.records.pdf.record import paper
from checklist_app.records.store import Store
from checklist_app.records.verify import verify

OPERATIONS = ("pallet_lashing", "vehicle_lashing")
RIGHT_EDGE = 595.28 - 14.0 * 72.0 / 25.4 + 1.0
HEAD_OR_FOOT = re.compile(r"\s*(DEMONSTRATION\.|Record 000|The checks support, and do not|Sealed 22 November)")


@pytest.fixture(scope="module")
def store(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Store]:
    """The two finished lashings of the demonstration, carried out page by page and sealed."""
    folder, now = tmp_path_factory.mktemp("lashed") / "yard", datetime.now(UTC)
    fill(folder, now)
    carry_out(folder, now, [script for script in table("lashings")["lashing"] if script["day"]])
    made = Store(folder)
    yield made
    made.close()


@pytest.fixture(params=OPERATIONS)
def sealed(request: pytest.FixtureRequest, store: Store) -> chain.Sealed:
    return next(one for one in chain.everything(store) if one.record["operation"] == request.param)


@pytest.fixture
def record(sealed: chain.Sealed) -> dict[str, Any]:
    return sealed.record


@pytest.fixture
def file(store: Store, sealed: chain.Sealed) -> Path:
    return files.pdf_path(store.records, sealed.number, sealed.digest)


@pytest.fixture
def leaves(file: Path) -> list[str]:
    """The text of each page without its blanks."""
    told = subprocess.run(["pdftotext", "-layout", file, "-"], capture_output=True, text=True, check=True).stdout
    return ["".join(leaf.split()) for leaf in told.split("\f")[:-1]]


@pytest.fixture
def flowing(file: Path) -> list[str]:
    """The same without head and foot, since a line of the working may go on overleaf."""
    told = subprocess.run(["pdftotext", "-layout", file, "-"], capture_output=True, text=True, check=True).stdout
    lines = [line for line in told.replace("\f", "\n").splitlines() if not HEAD_OR_FOOT.match(line)]
    return ["".join("".join(lines).split())]


def stands(words: str, leaves: list[str]) -> bool:
    return "".join(words.split()) in "".join(leaves)


def test_both_are_verified_and_their_papers_come_again_byte_by_byte(
        store: Store, file: Path, record: dict[str, Any]) -> None:
    assert verify(store).faults == ()
    assert paper(record, store.parts.get) == file.read_bytes()


def test_the_checker_finds_no_fault_and_nothing_reaches_beyond_the_margin(file: Path) -> None:
    checked = subprocess.run(["qpdf", "--check", file], capture_output=True, text=True, check=False)
    assert checked.returncode == 0, checked.stdout + checked.stderr
    boxes = subprocess.run(["pdftotext", "-bbox", file, "-"], capture_output=True, text=True, check=True).stdout
    assert max(float(each) for each in re.findall(r'xMax="([0-9.]+)"', boxes)) <= RIGHT_EDGE


def test_every_figure_of_every_check_stands_on_the_paper_with_its_working(
        flowing: list[str], record: dict[str, Any]) -> None:
    assert len(record["evaluation"]["checks"]) > 20
    for check in record["evaluation"]["checks"]:
        for words in (figures.title(check), figures.demand(check), figures.capacity(check), *check["working"]):
            assert stands(words, flowing), words


def test_every_lashing_has_its_line_with_tag_points_angles_pull_and_use(
        leaves: list[str], record: dict[str, Any]) -> None:
    lines = lashed.lashings(record)
    assert [(line.number, line.tag) for line in lines] == [("1", "L-01"), ("2", "L-02"), ("3", "L-03"), ("4", "L-04")]
    for line in lines:
        for words in line[1:]:
            assert figures.NOTHING not in words and all(stands(word, leaves) for word in words.split()), (line, words)
    used = {check["row"]: check for check in record["evaluation"]["checks"] if check["quantity"] == "lashing_strength"}
    assert all(line.pull == figures.demand(used[line.number]) for line in lines)


def test_the_words_beside_the_lashings_reach_the_paper(leaves: list[str], record: dict[str, Any]) -> None:
    told = lashed.sentences(record)
    assert all(stands(words, leaves) for words in told)
    assert "How it travels: by road." in told
    assert any("friction 0.30." in words for words in told) and any("drawn again" in words for words in told)


def test_it_speaks_of_a_lashing_and_of_no_lift(leaves: list[str], record: dict[str, Any]) -> None:
    assert "Recordofalashing" in leaves[0] and stands("How it is lashed", leaves)
    assert stands("A crash, and what moves inside the load, are not in them.", leaves)
    for words in ("Record of a lift", "hanging at rest", "No trial was entered", "How it is slung"):
        assert not stands(words, leaves), words


def test_each_point_of_a_lashing_says_which_end_it_is(record: dict[str, Any]) -> None:
    asked = [one["question"] for one in record["answers"] if one["path"][0] == "lashing"]
    assert "Lashing 1, where it leaves the load, forwards" in asked and "Lashing 1, its anchor, forwards" in asked
    assert len(asked) == len(set(asked))


def test_gear_is_told_by_its_label(record: dict[str, Any]) -> None:
    by_tag = {one["tag"]: one for one in record["kit"]}
    assert by_tag["L-01"]["plate"].replace("\xa0", " ") == "LC 2500 daN, STF 350 daN"
    assert by_tag["L-01"]["used"] and by_tag["P-3"]["plate"].replace("\xa0", " ") == "2500 kg"


def test_the_first_page_of_the_lorry_has_the_hand_of_its_driver(store: Store) -> None:
    one = next(each for each in chain.everything(store) if each.record["operation"] == "vehicle_lashing")
    path = files.pdf_path(store.records, one.number, one.digest)
    told = subprocess.run(["pdftotext", "-l", "1", "-layout", path, "-"], capture_output=True, text=True, check=True)
    first = " ".join(told.stdout.split())
    assert "Jory Tamsin, Ollerbeck Haulage" in first and "witness: Milo Harke" in first


def test_what_was_given_up_half_answered_has_dashes_and_no_fault(record: dict[str, Any]) -> None:
    bare = record | {"evaluation": record["evaluation"] | {"quantities": [], "checks": []}, "answers": []}
    assert {line.pull for line in lashed.lashings(bare)} == {figures.NOTHING}
    assert not [words for words in lashed.sentences(bare) if "friction" in words]


def test_a_block_has_its_line(record: dict[str, Any]) -> None:
    row = {"path": ["block", "01_a-1"], "value": {"type": "row", "text": "present"}, "entry": ""}
    said = {"blocks": "forwards", "blocked_by": "headboard", "block_on": "the deck", "block_x_m": "0.6",
            "block_y_m": "0", "block_z_m": "0.2", "block_dan": "2000"}
    more = [{"name": f"{name}[1]", "value": value} for name, value in said.items()]
    found = record["evaluation"] | {"quantities": [*record["evaluation"]["quantities"], *more]}
    (block,) = lashed.blocks(record | {"inputs": [*record["inputs"], row], "evaluation": found})
    assert block[:4] == ("1", "forwards", "headboard, fast to the deck", "0.60 / 0.00 / 0.20")
    assert block.holds.replace("\xa0", " ") == "2000 daN"
