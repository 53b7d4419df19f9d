"""Rows that people add: a tap copies a lashing or mirrors it, its item is picked by hand, nothing is renumbered."""
import re

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.adding import Mirror
from checklist_app.checklists.procedure import procedures
from checklist_app.checklists.rows import negated, turned
from checklist_app.checklists.running import running
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.task import Key, Measured
from tests.checklists.lashed import add, answer_all, begin, first_lashing, four_lashings, lash, pick, rows
from tests.checklists.pages_checked import faults
from tests.checklists.shop import Shop

PLACE = ("at_x_m", "at_y_m", "at_z_m", "anchor_x_m", "anchor_y_m", "anchor_z_m")


def texts(shop: Shop, task: str, row: str) -> dict[str, str]:
    values_there = running(shop.world, task).folded.values
    return {path[2]: str(value.get("text", "")) for path, value in values_there.items() if path[:2] == ("lashing", row)}


def tap(shop: Shop, task: str, **form: str) -> int:
    return shop.post(f"/tasks/{task}/lashings", form).status


@pytest.fixture
def shop() -> Shop:
    return Shop()


@pytest.fixture
def task(shop: Shop) -> str:
    return begin(shop)


RATED = {"anchor_dan", "held_dan"}


def test_one_more_like_it_takes_every_answer_over_but_the_item_and_what_ring_and_eye_carry(
    shop: Shop, task: str
) -> None:
    first = first_lashing(shop, task)
    assert tap(shop, task, act="copy", row=f"lashing/{first}") == 303
    before, after = texts(shop, task, first), texts(shop, task, rows(shop, task)[-1])

    assert {name: text for name, text in before.items()
            if not name.startswith("lashing_item") and name not in RATED} == after
    assert len(after) >= 10


@pytest.mark.parametrize("how", [{"act": "copy"}, {"act": "mirror", "mirror": "0"}])
def test_ring_and_eye_of_a_copy_are_other_ones_and_it_waits_until_somebody_looked_at_them(
    shop: Shop, task: str, how: dict[str, str]
) -> None:
    first = first_lashing(shop, task)
    answer_all(shop, task)
    tap(shop, task, row=f"lashing/{first}", **how)
    second = rows(shop, task)[-1]
    pick(shop, task, f"lashing.{second}.lashing_item", "gear/L-02")
    now = running(shop.world, task)

    assert "rating of its anchor" in str(now.evaluation.check("lashing_strength[2]").stopped)
    page = shop.get(f"/tasks/{task}/lashings?step=pull.{second}").html
    assert now.evaluation.verdict.words.startswith("waiting")
    assert not faults(page) and "As on lashing 1" in page and "2000 daN" in page and "4000 daN" in page
    assert not RATED & texts(shop, task, second).keys()

    given = shop.post(f"/tasks/{task}/lashings?step=pull.{second}", offered(page))
    assert given.location == f"/tasks/{task}/lashings"
    assert {name: texts(shop, task, second)[name] for name in RATED} == {"anchor_dan": "2000", "held_dan": "4000"}
    assert "As on lashing 1" not in shop.get(f"/tasks/{task}/lashings?step=pull.{second}").html


def test_an_anchor_on_something_else_is_not_offered_as_one_that_is_like_it(shop: Shop, task: str) -> None:
    first = first_lashing(shop, task)
    tap(shop, task, act="copy", row=f"lashing/{first}")
    second = rows(shop, task)[-1]
    shop.post(f"/tasks/{task}/lashings?step=put-on.{second}", {f"lashing/{second}/to_body": "the pallet or skid"})

    assert "As on lashing 1" not in shop.get(f"/tasks/{task}/lashings?step=pull.{second}").html


def test_what_only_lies_over_the_load_is_confirmed_too(shop: Shop, task: str) -> None:
    first = first_lashing(shop, task)
    shop.post(f"/tasks/{task}/lashings?step=pull.{first}", {f"lashing/{first}/held_dan.not_used": "yes"})
    tap(shop, task, act="copy", row=f"lashing/{first}")
    second = rows(shop, task)[-1]
    page = shop.get(f"/tasks/{task}/lashings?step=pull.{second}").html
    shop.post(f"/tasks/{task}/lashings?step=pull.{second}", offered(page))

    held = running(shop.world, task).folded.values["lashing", second, "held_dan"]
    assert "It only lies over or round the load" in page and held["type"] == "not_used"


def test_a_chock_like_another_holds_what_somebody_found_of_it(shop: Shop, task: str) -> None:
    first = add(shop, task, "block")
    said = {"blocked_by": "chock or timber, nailed or screwed", "blocks": "forwards", "block_on": "the deck",
            "block_dan": "900", "block_x_m": "0.65", "block_y_m": "0.2", "block_z_m": "0.05"}
    shop.post(f"/tasks/{task}/lashings?step=block.{first}",
              {f"block/{first}/{name}": text for name, text in said.items()})
    tap(shop, task, act="mirror", mirror="0", row=f"block/{first}")
    second = rows(shop, task, "block")[-1]
    page = shop.get(f"/tasks/{task}/lashings?step=block.{second}").html
    assert ("block", second, "block_dan") not in running(shop.world, task).folded.values and "As on block 1" in page

    shop.post(f"/tasks/{task}/lashings?step=block.{second}", offered(page))
    assert running(shop.world, task).folded.values["block", second, "block_dan"]["text"] == "900"


def offered(page: str) -> dict[str, str]:
    """The fields of the offer, as its button sends them."""
    form = page.partition('id="as-there"')[2].partition("</form>")[0]
    return dict(re.findall(r'type="hidden" name="([^"]+)" value="([^"]*)"', form))


def test_what_was_read_on_one_lashing_is_not_said_of_its_copy(shop: Shop, task: str) -> None:
    first = first_lashing(shop, task)
    read = {f"lashing/{first}/slope_read_deg": "42", f"lashing/{first}/slope_read_deg.how": "inclinometer"}
    shop.post(f"/tasks/{task}/lashings?step=pull.{first}", read)
    tap(shop, task, act="copy", row=f"lashing/{first}")

    assert texts(shop, task, first)["slope_read_deg"] == "42"
    assert "slope_read_deg" not in texts(shop, task, rows(shop, task)[-1])


def test_three_taps_make_four_diagonals_of_one(shop: Shop, task: str) -> None:
    found = [[float(texts(shop, task, row)[name]) for name in PLACE] for row in four_lashings(shop, task)]

    assert found == [[x * 0.55, y * 0.30, 0.85, x * 1.50, y * 1.10, -0.15]
                     for x, y in ((1, 1), (1, -1), (-1, 1), (-1, -1))]


def test_the_next_item_like_the_first_is_offered_and_is_no_answer_by_itself(shop: Shop, task: str) -> None:
    first = first_lashing(shop, task)
    given = shop.post(f"/tasks/{task}/lashings", {"act": "copy", "row": f"lashing/{first}"})
    shown = shop.get(str(given.location)).html

    assert "Take L-02: looked at and felt" in shown and "Like lashing 1, L-01" in shown
    assert "lashing_item" not in texts(shop, task, rows(shop, task)[-1])
    assert shop.get(str(given.location).replace("lashing.02", "lashing.09")).status == 404


def test_a_lashing_without_stf_is_not_offered_beside_one_that_has_it(shop: Shop, task: str) -> None:
    first = first_lashing(shop, task)
    for number in range(2, 7):
        tap(shop, task, act="copy", row=f"lashing/{first}")
        pick(shop, task, f"lashing.{rows(shop, task)[-1]}.lashing_item", f"gear/L-0{number}")
    given = shop.post(f"/tasks/{task}/lashings", {"act": "copy", "row": f"lashing/{first}"})

    assert "looked at and felt</button>" not in shop.get(str(given.location)).html


def test_a_number_is_never_given_twice(shop: Shop, task: str) -> None:
    first, second = add(shop, task), add(shop, task)
    tap(shop, task, act="remove", row=f"lashing/{second}")
    third = add(shop, task)

    assert [row.partition("-")[2] for row in rows(shop, task)] == ["1", "3"]
    assert (first, third) == rows(shop, task)


def test_a_row_that_is_gone_takes_its_answers_along_and_cannot_be_copied(shop: Shop, task: str) -> None:
    first = first_lashing(shop, task)
    tap(shop, task, act="remove", row=f"lashing/{first}")

    assert not texts(shop, task, first) and not running(shop.world, task).task.rows.get("lashing")
    assert tap(shop, task, act="copy", row=f"lashing/{first}") == 409


def test_two_phones_that_add_a_row_at_once_add_two(shop: Shop, task: str) -> None:
    for device in ("d-aaa111", "d-bbb222"):
        given = shop.post(f"/tasks/{task}/lashings", {"act": "add", "row": "lashing/"}, device=device)
        if device == "d-aaa111":
            kept = list(given.keep)
            shop.entries = [entry for entry in shop.entries if entry not in kept]
    shop.entries += kept

    assert len(rows(shop, task)) == 2 and not running(shop.world, task).folded.disputed


def test_no_more_than_the_operation_takes(shop: Shop, task: str) -> None:
    for _ in range(16):
        assert tap(shop, task, act="add", row="lashing/") == 303
    assert tap(shop, task, act="add", row="lashing/") == 409
    assert "Add a lashing" not in shop.get(f"/tasks/{task}/lashings").html


@pytest.mark.parametrize("key", [key for key, each in procedures().items() if each.adds])
def test_what_the_procedure_lets_people_add_fits_the_operation(key: str) -> None:
    procedure = procedures()[key]
    table = OPERATIONS[procedure.operation].table

    for group, adds in procedure.adds.items():
        asked = {prompt.name: prompt for prompt in procedure.prompts() if prompt.group == group}
        turned_or_swapped = (name for mirror in adds.mirrors for name in (*mirror.turns, *mirror.swaps))
        named = [*adds.anew, *adds.confirm, *adds.alike, *turned_or_swapped]
        assert set(named) <= asked.keys() and asked
        if group in table.groups:
            assert adds.most == table.groups[group].at_most
            sideways = {name for name in asked if name.endswith("_y_m")}
            assert sideways == set(adds.mirrors[0].turns)


def test_a_tie_down_is_its_own_image_across_and_has_one_lengthwise(shop: Shop, task: str) -> None:
    row = add(shop, task)
    said = {"far_end": "the same, on the other side", "at_x_m": "0.40", "at_y_m": "0.4"}
    shop.post(f"/tasks/{task}/lashings?step=put-on.{row}", {f"lashing/{row}/put_on": "tie-down over the top"})
    shop.post(f"/tasks/{task}/lashings?step=ends.{row}", {f"lashing/{row}/{name}": text for name, text in said.items()})
    shown = shop.get(f"/tasks/{task}/lashings").html

    assert "The same at the other end" in shown and "The same on the other side" not in shown
    assert tap(shop, task, act="mirror", mirror="0", row=f"lashing/{row}") == 409


def test_a_block_on_the_left_is_mirrored_to_the_right() -> None:
    mirror = procedures()["vehicle_lashing/1"].adds["block"].mirrors[0]

    assert turned(values.choice("to the left"), "blocks", mirror)["text"] == "to the right"
    assert turned(values.choice("to the right"), "blocks", mirror)["text"] == "to the left"
    assert turned(values.choice("forwards"), "blocks", mirror)["text"] == "forwards"


@pytest.mark.parametrize("text", ["0.55", "-0.55", "0,55", "-0,55", "+1.2", "0", "0.00", "-0"])
def test_turning_twice_gives_the_same_number(text: str) -> None:
    def number(of: str) -> float:
        return float(of.replace(",", "."))

    assert number(negated(text)) == -number(text) and number(negated(negated(text))) == number(text)


def test_only_numbers_that_have_a_side_are_turned() -> None:
    assert turned(values.number("0.85", "m"), "at_z_m", Mirror("", ("at_y_m",)))["text"] == "0.85"


def test_a_page_of_rows_is_sound_from_the_first_tap_to_the_last(shop: Shop, task: str) -> None:
    assert not faults(shop.get(f"/tasks/{task}/lashings").html)
    four_lashings(shop, task)
    add(shop, task, "block")
    html = shop.get(f"/tasks/{task}/lashings").html

    assert not faults(html) and html.count("One more like it") == 5
    for step in ("put-on", "ends", "pull"):
        assert not faults(shop.get(f"/tasks/{task}/lashings?step={step}.{rows(shop, task)[0]}").html)


def test_the_register_gives_the_mass_and_never_the_place_of_the_centre_of_gravity(shop: Shop, task: str) -> None:
    answers = running(shop.world, task).task.answers
    shown = shop.get(f"/tasks/{task}/bearers?step=body").html

    assert answers[Key("mass_kg")] == Measured(1180.0, "weighed")
    assert not {Key("cg_x_m"), Key("cg_y_m"), Key("cg_z_m")} & answers.keys()
    assert "The register says 0.62 m high, in the load&#39;s own axes." in shown and 'data-value="0.62"' in shown


def test_work_waits_at_the_lashings_until_one_is_there(shop: Shop, task: str) -> None:
    answer_all(shop, task)
    now = running(shop.world, task)

    assert now.stage == "lashings" and now.lacks_rows
    assert "none is entered yet" in shop.get("/today").html
    assert "governs</b>" not in shop.get(f"/tasks/{task}/deck").html


def test_a_lashed_load_is_within_its_limits(shop: Shop) -> None:
    task = lash(shop)
    now = running(shop.world, task)

    assert now.evaluation.verdict.words == "within limit", [
        (check.name, check.verdict.words) for check in now.evaluation.checks if check.verdict.words != "within limit"]
