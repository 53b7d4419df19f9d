"""An assessment: open to everybody, nothing kept, and what was typed comes along into a task."""
from urllib.parse import parse_qsl, urlencode

import pytest

from checklist_app.checklists.example import example
from checklist_app.checklists.running import running
from checklist_app.operations.task import Key
from tests.checklists.pages_checked import faults
from tests.checklists.shop import LOAD, TODAY, Shop


@pytest.fixture(scope="module")
def shop() -> Shop:
    return Shop()


def address(**changed: str) -> str:
    """The example with some answers changed, as a form sends it."""
    return "/assess?" + "&".join(f"{name}={text}" for name, text in {**example(), **changed}.items())


def test_an_empty_form_is_waiting_and_offers_an_example(shop: Shop) -> None:
    given = shop.get("/assess", person=None)

    assert given.status == 200 and given.keep == ()
    assert "The lift is waiting" in given.html and "See it with an example" in given.html


def test_the_example_is_assessed_at_once(shop: Shop) -> None:
    given = shop.get("/assess?example=yes", person=None)

    assert given.keep == () and "governs" in given.html and "<svg viewBox" in given.html
    assert "18 of 18 computed" in given.html


def test_gear_that_is_too_small_is_over_limit(shop: Shop) -> None:
    given = shop.get(address(**{"leg/1-left/sling.wll_t": "0.5"}), person=None)

    assert "over limit" in given.html


def test_what_the_right_leg_leaves_open_is_as_on_the_left_leg(shop: Shop) -> None:
    alike = shop.get(address(), person=None).html
    longer = shop.get(address(**{"leg/2-right/sling.kind": "round_sling", "leg/2-right/sling.wll_t": "2",
                                 "leg/2-right/sling.length_m": "2.0"}), person=None).html

    assert "left 1.56 m" in alike and "right 1.56 m" in alike
    assert "left 1.56 m" in longer and "right 2.06 m" in longer


@pytest.mark.parametrize("typed", ["two", "1e99", "NaN", "-5", "1,250", "9999999"])
@pytest.mark.parametrize("field", ["mass_kg", "leg/1-left/sling.length_m", "hoist.wll_t"])
def test_what_cannot_be_read_is_said_at_its_field_and_stays_there(shop: Shop, field: str, typed: str) -> None:
    given = shop.get(address(**{field: typed}), person=None)

    assert given.status == 422
    assert f'value="{typed}"' in given.html and 'class="fault"' in given.html
    assert faults(given.html) == []
    assert "The lift is within limit" not in given.html


def test_an_answer_by_script_brings_checks_and_drawing_only(shop: Shop) -> None:
    given = shop.get(address(), person=None, fragment=True)

    assert given.status == 200 and "<html" not in given.html
    assert 'id="live"' in given.html and 'id="drawing"' in given.html


def test_typed_gear_says_that_it_comes_from_no_register(shop: Shop) -> None:
    assert "from no register" in shop.get(address(), person=None).html


def test_a_stranger_who_makes_it_a_task_signs_in_and_loses_nothing(shop: Shop) -> None:
    given = shop.get("/begin?mass_kg=1180&mass_kg.how=weighed", person=None)

    assert given.status == 401
    assert "/sign-in?next=%2Fbegin%3Fmass_kg%3D1180%26mass_kg.how%3Dweighed" in given.html


def test_what_was_typed_comes_along_into_the_task() -> None:
    shop = Shop()
    query = urlencode(example())
    shown = shop.get("/begin?" + "&".join(f"{name}={text}" for name, text in parse_qsl(query)))
    assert "Carried over from the assessment" in shown.html and faults(shown.html) == []

    begin = {"operation": "straight_lift", "lift": f"{LOAD}|complete", "place": "", "day": TODAY}
    given = shop.post("/begin", {**begin, **{f"carry.{name}": text for name, text in example().items()}})
    assert given.location is not None
    answers = running(shop.world, given.location.split("/")[2]).task.answers

    assert answers[Key("mass_kg")].value == 1180.0 and answers[Key("mass_kg")].how == "weighed"
    assert answers[Key("sling", "left")].wll_t == 2.0 and answers[Key("sling", "right")].wll_t == 2.0
    assert answers[Key("hitch", "right")].value == "straight"


def test_gear_that_came_along_is_incoming_and_is_not_signed_for() -> None:
    shop = Shop()
    begin = {"operation": "straight_lift", "lift": f"{LOAD}|complete", "place": "", "day": TODAY}
    given = shop.post("/begin", {**begin, **{f"carry.{name}": text for name, text in example().items()}})
    assert given.location is not None
    now = running(shop.world, given.location.split("/")[2])

    assert now.items[("leg", "1-left", "sling")].state.custody == "incoming"
    assert now.evaluation.check("sling_usable[left]").verdict.words == "over limit"


def test_the_form_sends_all_that_the_example_typed() -> None:
    """What stands in the fields, sent again as it is, is assessed as the example was."""
    import re

    shop = Shop()
    page = shop.get("/assess?example=yes", person=None).html
    texts = dict(re.findall(r'<input[^>]* name="([^"]+)"[^>]*inputmode="decimal"[^>]* value="([^"]*)"', page))
    fields = re.findall(r'name="([^"]+)"', page)

    assert set(example()) - {"eyes_given"} <= set(fields)
    assert texts["mass_kg"] == example()["mass_kg"]
