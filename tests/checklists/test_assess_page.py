"""An assessment: open to everybody, nothing kept, and what was typed comes along into a task."""
import re
from urllib.parse import parse_qsl, urlencode

import pytest

from checklist_app.checklists.example import example
from checklist_app.checklists.running import running
from checklist_app.operations.graph import NotUsed
from checklist_app.operations.task import Key
from tests.checklists.pages_checked import faults
from tests.checklists.shop import LOAD, TODAY, Shop


@pytest.fixture(scope="module")
def shop() -> Shop:
    return Shop()


def address(**changed: str) -> str:
    """The example with some answers changed, as a form sends it."""
    return sent({**example(), **changed})


def sent(typed: dict[str, str]) -> str:
    """What was typed, as a form sends it."""
    return "/assess?" + "&".join(f"{name}={text}" for name, text in typed.items())


def test_an_empty_form_is_waiting_and_offers_an_example(shop: Shop) -> None:
    given = shop.get("/assess", person=None)

    assert given.status == 200 and given.keep == ()
    assert "The lift is waiting" in given.html and "See it with an example" in given.html


def test_the_example_is_assessed_at_once(shop: Shop) -> None:
    given = shop.get("/assess?example=yes", person=None)

    assert given.keep == () and "governs" in given.html and "<svg viewBox" in given.html
    computed, of = re.findall(r"(\d+) of (\d+) computed", given.html)[0]
    assert computed == of and int(of) >= 18


FIRST_SCREEN = {
    "mass_kg": "1000", "mass_kg.how": "weighed", "eyes_apart_m": "1.2", "usual.level": "yes", "cg_x_m": "0.6",
    "cg_z_m": "-0.8", "usual.in_line": "yes", "lengths.how": "tape", "cg.how": "drawing", "rigging_kg": "20",
    "leg/1-left/sling.kind": "round_sling", "leg/1-left/sling.wll_t": "2", "leg/1-left/sling.length_m": "1.5",
    "leg/1-left/hitch": "straight", "usual.straight_on": "yes",
}


def test_what_stands_open_on_the_form_gives_a_drawing_and_the_slings_with_nothing_unfolded(shop: Shop) -> None:
    page = shop.get("/assess").html
    open_part = page.partition('<details class="ways"><summary class="stage-name">')[0]
    given = shop.get(sent(FIRST_SCREEN), person=None)

    assert {name for name in FIRST_SCREEN if f'name="{name}"' not in open_part} == set()
    assert given.status == 200 and "<svg viewBox" in given.html
    assert 'id="check-sling_strength.left"><summary>' in given.html and "The lift is waiting" in given.html


@pytest.mark.parametrize("tick", ["usual.level", "usual.in_line", "usual.straight_on"])
def test_without_its_tick_nothing_is_taken_as_usual(shop: Shop, tick: str) -> None:
    typed = {name: text for name, text in FIRST_SCREEN.items() if name != tick}
    page = shop.get(sent(typed), person=None).html

    assert 'id="check-sling_strength.left"><summary>' not in page


def test_an_answer_of_its_own_goes_before_the_tick(shop: Shop) -> None:
    level = shop.get(sent(FIRST_SCREEN), person=None).html
    uneven = shop.get(sent({**FIRST_SCREEN, "right_eye_higher_m": "0.2"}), person=None).html

    assert "tilt lengthwise 0.0" in level and "tilt lengthwise 0.0" not in uneven


def test_many_checks_that_wait_say_once_what_they_wait_for(shop: Shop) -> None:
    page = shop.get("/assess", person=None).html
    before, _, folded = page.partition("Each check that waits")

    assert "checks wait for:" in before and before.count("<li>mass of the load</li>") == 1
    assert "waiting for: mass of the load" not in before and "waiting for: mass of the load" in folded


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


def test_what_a_tick_stands_for_comes_along_into_the_task() -> None:
    shop = Shop()
    begin = {"operation": "straight_lift", "lift": f"{LOAD}|complete", "place": "", "day": TODAY}
    given = shop.post("/begin", {**begin, **{f"carry.{name}": text for name, text in FIRST_SCREEN.items()}})
    assert given.location is not None
    answers = running(shop.world, given.location.split("/")[2]).task.answers

    assert answers[Key("right_eye_higher_m")].value == 0.0 and answers[Key("cg_y_m")].how == "drawing"
    assert isinstance(answers[Key("bottom_fitting", "right")], NotUsed)
    assert isinstance(answers[Key("load_cell")], NotUsed)


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
    shop = Shop()
    page = shop.get("/assess?example=yes", person=None).html
    texts = dict(re.findall(r'<input[^>]* name="([^"]+)"[^>]*inputmode="decimal"[^>]* value="([^"]*)"', page))
    fields = re.findall(r'name="([^"]+)"', page)

    assert set(example()) - {"eyes_given"} <= set(fields)
    assert texts["mass_kg"] == example()["mass_kg"]
