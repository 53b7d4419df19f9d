"""A lashing assessed without signing in: one lashing typed, its images follow; and what was typed becomes a task."""
from urllib.parse import urlencode

import pytest

from checklist_app.checklists.lashing_example import example
from checklist_app.checklists.running import running
from checklist_app.checklists.typed_lashing import (
    ALIKE,
    ALONE,
    CORNERS,
    EACH,
    ONE,
    PAIR,
    PALLET,
    VEHICLE,
    assessed,
    lashings,
)
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.evaluate import assess
from checklist_app.operations.inline import from_json
from checklist_app.operations.task import Key, Measured
from tests.checklists.pages_checked import faults
from tests.checklists.shop import RIGGER, TODAY, Shop

ADDRESS = {PALLET: "/assess/pallet", VEHICLE: "/assess/vehicle"}
BEGIN = {"lift": "GS-60|drained", "place": "pump-bay", "day": TODAY}
HOLDS = ("sliding", "tipping", "deck_sliding", "deck_tipping", "lashing_strength")


def asked(query: dict[str, str]) -> str:
    return urlencode(query).replace("%2F", "/").replace("+", " ").replace("%2C", ",")


@pytest.fixture
def visitor() -> Shop:
    shop = Shop()
    shop.person = None
    return shop


@pytest.mark.parametrize("operation", [PALLET, VEHICLE])
def test_the_typed_example_holds_as_the_operations_own_does(operation: str) -> None:
    typed = assessed(example(operation), operation, TODAY)
    table = OPERATIONS[operation].table
    by_form, own = assess(table, typed.task), assess(table, from_json(table, OPERATIONS[operation].example))
    here, there = ({check.quantity: check.worst for check in each.checks if check.quantity in HOLDS}
                   for each in (by_form, own))

    assert not typed.faults and here == there and len(here) == (5 if operation == VEHICLE else 3)


@pytest.mark.parametrize("operation", [PALLET, VEHICLE])
@pytest.mark.parametrize("query", ["", "?example=yes"])
def test_the_page_opens_for_everybody_and_is_sound(visitor: Shop, operation: str, query: str) -> None:
    given = visitor.get(ADDRESS[operation] + query)

    assert given.status == 200 and not given.keep and not faults(given.html)
    assert ("The lashing is within limit" in given.html) is bool(query)


def test_one_lashing_gives_two_or_four_and_each_of_them_so_many_times() -> None:
    typed = example(VEHICLE)
    counts = {(alike, each): len(lashings({**typed, ALIKE: alike, EACH: each}, VEHICLE))
              for alike in (ALONE, PAIR, CORNERS) for each in ("1", "2")}

    assert counts == {(ALONE, "1"): 1, (ALONE, "2"): 2, (PAIR, "1"): 2, (PAIR, "2"): 4, (CORNERS, "1"): 4,
                      (CORNERS, "2"): 8}
    places = {(row[f"{ONE}at_x_m"], row[f"{ONE}at_y_m"]) for row in lashings(typed, VEHICLE)}
    assert places == {("0.55", "0.3"), ("0.55", "-0.3"), ("-0.55", "0.3"), ("-0.55", "-0.3")}


def test_a_tie_down_is_not_doubled_by_its_own_image() -> None:
    tied = {f"{ONE}put_on": "tie-down over the top", f"{ONE}far_end": "the same, on the other side",
            f"{ONE}at_x_m": "0.4", f"{ONE}at_y_m": "0.4", ALIKE: CORNERS}

    assert [row[f"{ONE}at_x_m"] for row in lashings(tied, VEHICLE)] == ["0.4", "-0.4"]


def test_nothing_typed_is_no_lashing_and_within_no_limit(visitor: Shop) -> None:
    assert not lashings({}, VEHICLE)
    assert "within limit" not in visitor.get("/assess/vehicle").html.partition('id="live"')[2]


@pytest.mark.parametrize("text", ["0.3o", "1,250", "99"])
def test_what_is_no_number_stands_at_its_field_and_stays_there(visitor: Shop, text: str) -> None:
    given = visitor.get("/assess/vehicle?" + asked({**example(VEHICLE), f"{ONE}at_y_m": text}))

    assert given.status == 422 and f'value="{text}"' in given.html
    assert given.html.count('class="fault"') == 1


def test_what_was_typed_becomes_a_task_with_its_rows(visitor: Shop) -> None:
    visitor.person = RIGGER
    carried = {**example(VEHICLE), "operation": VEHICLE}
    shown = visitor.get("/begin?" + asked(carried)).html
    given = visitor.post("/begin", {**BEGIN, "operation": VEHICLE,
                                    **{f"carry.{name}": text for name, text in carried.items()}})
    now = running(visitor.world, str(given.location).split("/")[2])

    assert "Carried over from the assessment" in shown
    assert [row.partition("-")[2] for row in now.folded.rows["lashing"]] == ["1", "2", "3", "4"]
    assert now.task.answers[Key("at_y_m", "4")] == Measured(-0.3) and not now.faults
    assert now.task.answers[Key("cg_z_m")] == Measured(0.62, "trial")
    assert {item.state.custody for path, item in now.items.items() if path[-1] == "lashing_item"} == {"incoming"}


def test_in_the_task_ring_and_eye_of_the_others_are_still_to_be_looked_at(visitor: Shop) -> None:
    visitor.person = RIGGER
    carried = {**example(VEHICLE), "operation": VEHICLE}
    given = visitor.post("/begin", {**BEGIN, "operation": VEHICLE,
                                    **{f"carry.{name}": text for name, text in carried.items()}})
    now = running(visitor.world, str(given.location).split("/")[2])

    rated = {key.row for key in now.task.answers if key.name in ("anchor_dan", "held_dan")}
    assert rated == {"1"}
    assert "Their rings and eyes are taken to be rated" in visitor.get("/assess/vehicle").html


CHOCK = {"blocked_by": "chock or timber, nailed or screwed", "blocks": "forwards", "block_on": "the deck",
         "block_dan": "900", "block_x_m": "0.70", "block_y_m": "0", "block_z_m": "0.20"}


def chocked(number: int = 1, **changes: str) -> dict[str, str]:
    return {**example(VEHICLE), **{f"block/{number}-{number}/{name}": text for name, text in (CHOCK | changes).items()}}


def test_a_typed_block_holds_as_much_more_as_it_is_good_for() -> None:
    """A push of 900 daN straight against it is 900 daN more, beside lashings that hold by their rating."""
    table = OPERATIONS[VEHICLE].table
    bare, with_chock = (assess(table, assessed(typed, VEHICLE, TODAY).task, with_spread=False)
                        for typed in (example(VEHICLE), chocked()))
    more = [ev.check("deck_sliding[forwards]").outcome.capacity for ev in (bare, with_chock)]
    assert more[1] == pytest.approx(more[0] + 900.0, rel=0.01)


def test_blocks_are_typed_one_after_the_other_and_what_is_missing_is_waited_for(visitor: Shop) -> None:
    none, one = (visitor.get(f"/assess/vehicle?{asked(typed)}").html for typed in (example(VEHICLE), chocked()))
    assert "Block 1: what blocks it?" in none and "Block 2: what" not in none and "Block 2: what blocks it?" in one
    assert not faults(one)
    half = assessed(chocked(block_dan=""), VEHICLE, TODAY)
    ev = assess(OPERATIONS[VEHICLE].table, half.task, with_spread=False)
    assert "what it holds" in str(ev.check("deck_sliding[forwards]").stopped)
    assert visitor.get(f"/assess/vehicle?{asked(chocked(block_dan='9OO'))}").html.count('class="fault"') == 1


def test_typed_blocks_become_rows_of_the_task(visitor: Shop) -> None:
    visitor.person = RIGGER
    carried = {**chocked(), "operation": VEHICLE}
    given = visitor.post("/begin", {**BEGIN, "operation": VEHICLE,
                                    **{f"carry.{name}": text for name, text in carried.items()}})
    now = running(visitor.world, str(given.location).split("/")[2])

    assert now.folded.rows["block"] == ("01-1",) and not now.faults
    assert now.task.answers[Key("block_dan", "1")] == Measured(900.0)


def test_nothing_is_carried_into_another_operation(visitor: Shop) -> None:
    visitor.person = RIGGER
    given = visitor.post("/begin", {**BEGIN, "operation": PALLET, "carry.operation": VEHICLE, "carry.cg_z_m": "0.62"})
    now = running(visitor.world, str(given.location).split("/")[2])

    assert ("cg_z_m",) not in now.folded.values


def test_every_form_of_assessing_leads_to_the_others(visitor: Shop) -> None:
    for here in ("/assess", *ADDRESS.values()):
        html = visitor.get(here).html
        assert all(f'href="{there}"' in html for there in ("/assess", *ADDRESS.values()) if there != here)
