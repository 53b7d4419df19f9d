"""The paper of a lift on four legs and on two hooks: views to one scale, a line for each leg, rules in words."""

import re
import subprocess
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest

from checklist_app.checklists.statement import evaluation
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.drawing import Drawing
from checklist_app.operations.evaluate import assess
from checklist_app.operations.report import report
from checklist_app.operations.task import Measured, Task
from checklist_app.records import chain, figures, pictures, slung
from checklist_app.records.pdf.record import paper
from checklist_app.records.pdf.views import SCALES, together
from checklist_app.records.seal import seal
from checklist_app.records.store import Store
from tests.operations.straight_lift.lifts import TABLE, hoist, lift
from tests.operations.straight_lift.rigged import four, three, two_hooks
from tests.records.yard import whole_lift, yard

RIGS: dict[str, Task] = {
    "two legs": lift(cg_x_m=Measured(0.6, "by eye")), "three legs": three(),
    "four legs": four(cg_x_m=Measured(0.65, "trial"), cg_y_m=Measured(0.42, "trial")),
    "two hooks": two_hooks(hooks=(-0.1, 1.3), over_m=0.1, each_hook={"hook_hoist": hoist(1.0)}),
}


@pytest.fixture(scope="module")
def store(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Store]:
    made = yard(tmp_path_factory.mktemp("rigs") / "data")
    yield made
    made.close()


@pytest.fixture(scope="module")
def plain(store: Store) -> dict[str, Any]:
    """A sealed record of two legs; its evaluation and drawing are put in the place of another rig's."""
    found = chain.find(store, seal(store, whole_lift(store).id, "2026-11-25T12:00:00Z"))
    assert found is not None
    return dict(found.record)


def of(plain: dict[str, Any], rig: str) -> dict[str, Any]:
    ev = assess(TABLE, RIGS[rig])
    told = evaluation(report(OPERATIONS["straight_lift"], ev))
    assert isinstance(ev.picture, Drawing)
    return plain | {"evaluation": told, "verdict": told["verdict"], "governs": told["governs"],
                    "drawing": pictures.sealed(ev.picture)}


@pytest.fixture(params=RIGS)
def record(request: pytest.FixtureRequest, plain: dict[str, Any]) -> dict[str, Any]:
    return of(plain, request.param)


def pages(file: Path) -> list[str]:
    told = subprocess.run(["pdftotext", "-layout", file, "-"], capture_output=True, text=True, check=True).stdout
    return [re.sub(r"\s+", " ", leaf) for leaf in told.split("\f")[:-1]]


def test_every_leg_has_its_line_and_every_view_its_name(
        record: dict[str, Any], store: Store, tmp_path: Path) -> None:
    file = tmp_path / "record.pdf"
    file.write_bytes(paper(record, store.parts.get))
    leaves, legs = pages(file), slung.legs(record)
    whole = " ".join(leaves)
    assert len(legs) == sum(one["name"].startswith("leg_load_t[") for one in record["evaluation"]["quantities"])
    for leg in legs:
        for words in (*leg[:6], leg.used):
            assert re.sub(r"\s+", " ", words) in whole, words
    for view in record["drawing"]["views"]:
        assert view["name"] in leaves[1]
    assert "scale 1:" in leaves[0] and leaves[1].count("scale 1:") == len(record["drawing"]["views"])
    for words in (*slung.rules(record), *slung.spread(record)):
        assert "".join(words.split()) in "".join(whole.split()), words


def test_the_checker_finds_no_fault(record: dict[str, Any], store: Store, tmp_path: Path) -> None:
    file = tmp_path / "record.pdf"
    file.write_bytes(paper(record, store.parts.get))
    checked = subprocess.run(["qpdf", "--check", file], capture_output=True, text=True, check=False)
    assert checked.returncode == 0, checked.stdout + checked.stderr


def test_four_legs_say_how_they_share_and_what_two_alone_would_carry(plain: dict[str, Any]) -> None:
    told = " ".join(slung.rules(of(plain, "four legs")))
    assert "four legs on one hook" in told and "How four legs share:" in told
    assert "two diagonal legs alone" in told and "EN 1492" in told
    assert "How four legs share" not in " ".join(slung.rules(of(plain, "two hooks")))
    warm = {"quantities": [{"name": "sling_temperature_c", "value": "20"}], "checks": []}
    assert slung.rules(plain | {"evaluation": warm}) == ["Temperature of the slings: 20 °C."]


def test_two_hooks_have_a_line_each(plain: dict[str, Any]) -> None:
    hooks = slung.hooks(of(plain, "two hooks"))
    assert [hook[0] for hook in hooks] == ["left", "right"] and all("%" in hook[3] for hook in hooks)
    assert not slung.hooks(of(plain, "four legs"))


def test_the_spread_names_nominal_worst_and_what_moves_it(plain: dict[str, Any]) -> None:
    governs, driver = slung.spread(of(plain, "four legs"))
    assert "governs:" in governs and driver.startswith("Moved most by: centre of gravity")


def test_what_is_from_memory_is_listed(plain: dict[str, Any]) -> None:
    found = slung.from_memory(of(plain, "two legs"))
    assert found and all("memory" in words for words in found)


def test_a_record_of_the_first_procedure_has_its_legs_too(plain: dict[str, Any]) -> None:
    assert [leg.leg for leg in slung.legs(plain)] == ["left", "right"]
    assert all("%" in leg.used for leg in slung.legs(plain))


def test_the_worst_attitude_and_every_view_come_back_from_the_sealed_text(plain: dict[str, Any]) -> None:
    picture = assess(TABLE, RIGS["four legs"]).picture
    assert isinstance(picture, Drawing)
    back = pictures.drawing(pictures.sealed(picture))
    assert [view.name for view in (back, *back.others)] == ["Side view", "End view", "Plan"]
    assert back.note == picture.note and pictures.sealed(back) == pictures.sealed(picture)


def test_a_drawing_sealed_before_there_were_views_is_read() -> None:
    back = pictures.drawing({"label": "A lift.", "hook": "0.000000 0.000000", "leaves": []})
    assert back == Drawing("A lift.", (0.0, 0.0))


def test_views_stand_beside_each_other_at_one_standard_scale() -> None:
    picture = assess(TABLE, RIGS["four legs"]).picture
    assert isinstance(picture, Drawing)
    scale, widths, height = together(picture.others)
    assert scale in SCALES and len(widths) == 2 and height > 0.0


def test_titles_say_the_rows_as_they_are_called() -> None:
    assert figures.title({"title": "sling", "row": "left_front"}) == "Sling, left front"
    assert figures.spoken("leg_m[right_rear]").endswith(", right rear")


def test_a_caution_stands_beside_its_check_and_among_the_cautions(
        plain: dict[str, Any], store: Store, tmp_path: Path) -> None:
    ev = assess(TABLE, lift(both={"leg_length_m": 2.5}, highest_hook_m=9.0, room_height_m=9.0))
    told = evaluation(report(OPERATIONS["straight_lift"], ev))
    (left,) = (check for check in told["checks"] if check["name"] == "leg_upright[left]")
    file = tmp_path / "steep.pdf"
    file.write_bytes(paper(plain | {"evaluation": told}, store.parts.get))
    words = " ".join(pages(file))

    assert (figures.used(left), left["verdict"]) == ("caution", "within limit")
    assert "Leg not too steep, left: caution, within limit" in words
    assert "Leg not too steep, left, right: steeper than 15° on a common hook" in words
