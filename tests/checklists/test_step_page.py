"""Answers typed into a step: taken as typed, faults at their field, checks on the way, nothing lost."""
import re

import pytest

from checklist_app.checklists.entry import make
from checklist_app.checklists.running import running
from checklist_app.checklists.world import MemoryWorld
from checklist_app.operations.task import Key
from tests.checklists.pages_checked import faults
from tests.checklists.shop import SUPERVISOR, TODAY, Shop

MASS = "/tasks/{}/numbers?step=mass"
UNREADABLE = {
    "letters": ("two tonnes", "is no number"),
    "1e99": ("1e99", "is no number"),
    "not a number": ("NaN", "is no number"),
    "negative": ("-5", "too little"),
    "far too much": ("9999999", "too much"),
    "two readings": ("1,250", "two ways"),
    "a very long one": ("9" * 150, "too long"),
}


@pytest.fixture
def begun() -> tuple[Shop, str]:
    shop = Shop()
    return shop, shop.begin()


@pytest.fixture(scope="module")
def rigged() -> tuple[Shop, str]:
    shop = Shop()
    task = shop.begin()
    shop.rig(task)
    return shop, task


def said(html: str) -> list[str]:
    """The faults that a page shows."""
    return [re.sub("<[^>]+>", "", words) for words in re.findall(r'<p class="fault">.*?</p>', html, re.S)]


@pytest.mark.parametrize("case", UNREADABLE)
def test_what_cannot_be_read_stays_in_its_field_with_the_reason(begun: tuple[Shop, str], case: str) -> None:
    shop, task = begun
    typed, reason = UNREADABLE[case]
    given = shop.post(MASS.format(task), {"mass_kg": typed, "mass_kg.how": "weighed"})

    assert given.status == 422
    assert f'value="{typed}"' in given.html
    assert [fault for fault in said(given.html) if reason in fault]
    assert 'aria-invalid="true" autofocus' in given.html
    assert faults(given.html) == []


@pytest.mark.parametrize("case", UNREADABLE)
@pytest.mark.parametrize("field", ["mass_kg", "leg/1-left/leg_length_m"])
def test_what_cannot_be_read_is_never_within_limit(case: str, field: str) -> None:
    shop = Shop()
    task = shop.begin()
    shop.rig(task)
    step = "mass" if field == "mass_kg" else "eyes"
    shop.post(f"/tasks/{task}/numbers?step={step}", {field: UNREADABLE[case][0], f"{field}.how": "tape"})
    evaluation = running(shop.world, task).evaluation

    kept = any(entry.path[-1] == field.rpartition("/")[2] for entry in shop.entries)
    assert not kept or evaluation.verdict.words == "waiting"
    assert not kept or evaluation.check("sling_strength[left]").verdict.words == "waiting"


def test_an_unreadable_mass_waits_although_the_register_knows_one(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shop.post(MASS.format(task), {"mass_kg": "two tonnes"})
    now = running(shop.world, task)

    assert now.faults[("mass_kg",)].startswith("“two tonnes” is no number")
    assert str(now.evaluation.check("hoist_strength").stopped).startswith("mass of the load: cannot be read")


def test_an_empty_form_keeps_nothing_and_faults_nothing(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    given = shop.post(MASS.format(task), {"mass_kg": "", "cg_x_m": "", "mass_kg.how": ""})

    assert (given.status, given.keep) == (303, ())


@pytest.mark.parametrize("typed", ["2400", "2400.0", "2 400", "2400,5"])
def test_a_mass_is_taken_as_it_is_written_in_the_workshop(begun: tuple[Shop, str], typed: str) -> None:
    shop, task = begun
    given = shop.post(MASS.format(task), {"mass_kg": typed, "mass_kg.how": "weighed"})
    mass = running(shop.world, task).task.answers[Key("mass_kg")]

    assert given.status == 303
    assert 2400.0 <= mass.value <= 2400.5 and mass.how == "weighed"


def test_what_nobody_answered_comes_from_the_register_and_says_so(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    now = running(shop.world, task)

    assert now.task.answers[Key("mass_kg")].value == 2350.0
    assert "from the register: Vertical pump 400, with motor, dry, weighed" in shop.get(MASS.format(task)).html


def test_an_answer_goes_before_the_register(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shop.post(MASS.format(task), {"mass_kg": "2500", "mass_kg.how": "estimate"})

    assert running(shop.world, task).task.answers[Key("mass_kg")].value == 2500.0


def test_a_number_of_which_nobody_says_how_it_is_known_waits(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shop.post(MASS.format(task), {"mass_kg": "2500"})
    stopped = running(shop.world, task).evaluation.check("hoist_strength").stopped

    assert stopped is not None and "how mass of the load was obtained" in str(stopped)


def test_dont_know_is_taken_and_named(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged
    shop.post(MASS.format(task), {"cg_x_m.dont_know": "yes", "cg_x_m.reason": "no drawing"})
    shown = shop.get(f"/tasks/{task}/checks").html

    assert "to be found at the trial" in shown
    assert "Nobody knows: centre of gravity, lengthwise" in shown


def test_an_answer_by_script_brings_the_checks_and_leaves_the_fields_alone(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged
    given = shop.post(MASS.format(task), {"mass_kg": "2400", "mass_kg.how": "weighed"}, fragment=True)

    assert given.status == 200
    assert set(re.findall(r"<(?:input|select|textarea)[^>]*>", given.html)) <= set(
        re.findall(r'<input type="hidden"[^>]*>', given.html))
    assert {"live", "drawing", "governs", "mass_kg-fault"} <= set(re.findall(r' id="([^"]+)"', given.html))
    assert faults(given.html, fragment=True) == []
    assert given.headers["Vary"] == "HX-Request"


def test_the_verdict_is_announced_once_as_a_sentence(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged
    given = shop.get(f"/tasks/{task}/numbers").html

    assert re.search(r'role="status">[^<]+ governs, [^<]+limit\.</p>', given)


def test_a_waiting_check_leads_to_the_missing_answer(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    shown = shop.get(f"/tasks/{task}/checks").html

    assert f'href="/tasks/{task}/kit/hoist">waiting for: hoist' in shown or f'href="/tasks/{task}/kit/hoist"' in shown


def test_two_answers_that_differ_wait_and_are_settled_by_a_person(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    blind = {"mass_kg.how": "weighed", "mass_kg.seen": '{"replaces":[]}'}
    shop.post(MASS.format(task), {"mass_kg": "2400", **blind})
    shop.post(MASS.format(task), {"mass_kg": "2600", **blind}, person=SUPERVISOR, device="s-2", counter=1)
    page = shop.get(MASS.format(task)).html
    assert f"/tasks/{task}/settle?where=mass_kg" in page
    assert ("mass_kg",) in running(shop.world, task).folded.disputed

    settle = f"/tasks/{task}/settle?where=mass_kg"
    shown = shop.get(settle).html
    assert "2400 kg" in shown and "2600 kg" in shown and faults(shown) == []
    assert shop.post(settle, {"where": "mass_kg"}).status == 422
    holds = next(entry.digest for entry in shop.entries if entry.value.get("text") == "2600")
    shop.post(settle, {"where": "mass_kg", "holds": holds})

    assert running(shop.world, task).task.answers[Key("mass_kg")].value == 2600.0
    assert not running(shop.world, task).folded.disputed


@pytest.mark.parametrize("version", ["straight_lift/1", "straight_lift/2"])
def test_a_leg_that_somebody_adds_never_makes_it_within_limit(rigged: tuple[Shop, str], version: str) -> None:
    """By the first version it is one leg too many; by the second the rows follow how it is slung, and it is none."""
    shop, task = rigged
    from checklist_app.checklists import values
    from checklist_app.checklists.made import Made

    made = Made(shop.request("POST", "/", counter=90_000))
    made.say(("task", task), ("leg", "3-third"), values.row("present"))
    entries = list(shop.entries)
    if version.endswith("1"):
        begun = {"type": "begin", "operation": "straight_lift", "procedure": version}
        named = next(entry for entry in entries if entry.path == ("begin",) and entry.about[1] == task)
        entries[entries.index(named)] = make(named.about, named.path, begun, (), named.author, named.device,
                                             named.counter, named.at)
        made.say(("task", task), ("leg", "1-left"), values.row("present"))
        made.say(("task", task), ("leg", "2-right"), values.row("present"))
    now = running(MemoryWorld([*entries, *made.keep], shop.parts, today=TODAY), task)

    assert now.task.rows["leg"] == (("left", "right", "third") if version.endswith("1") else ("left", "right"))
    if version.endswith("1"):
        assert now.evaluation.verdict.words in ("cannot be assessed", "over limit")
        assert now.evaluation.check("stability").verdict.words == "cannot be assessed"


def test_an_answer_that_changes_the_questions_brings_the_whole_page(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    eyes = f"/tasks/{task}/numbers?step=eyes"
    page = shop.get(eyes).html
    shown = {name: "{}" for name in re.findall(r'name="([^"]+\.seen)"', page)}
    assert "eyes_apart_m.seen" not in shown
    given = shop.post(eyes, {**shown, "eyes_given": "distance"}, fragment=True)

    assert given.headers["HX-Location"] == eyes
    assert "eyes_apart_m.seen" in shop.get(eyes).html


def test_a_line_that_was_filled_by_the_register_shows_the_new_answer(begun: tuple[Shop, str]) -> None:
    shop, task = begun
    page = shop.get(MASS.format(task)).html
    assert 'name="shrunk" value="mass_kg"' in page
    form = {"mass_kg": "2410", "mass_kg.how": "weighed", "shrunk": "mass_kg"}
    given = shop.post(MASS.format(task), form, fragment=True)

    assert re.search(r'id="mass_kg-shown" hx-swap-oob="true">Mass of the load: <b>2410 kg, weighed</b>', given.html)


def test_a_row_that_one_removed_while_another_answered_in_it_is_settled(begun: tuple[Shop, str]) -> None:
    from checklist_app.checklists import values
    from checklist_app.checklists.fold import seen_in_row
    from checklist_app.checklists.made import Made

    shop, task = begun
    row, about = ("leg", "2-right"), ("task", task)
    removed = Made(shop.request("POST", "/", counter=70_000))
    removed.say(about, row, values.row("absent"), seen_in_row(running(shop.world, task).folded, row))
    answered = Made(shop.request("POST", "/", counter=1, person=SUPERVISOR, device="s-2"))
    answered.say(about, (*row, "hitch"), values.choice("straight"))
    shop.entries.extend([*removed.keep, *answered.keep])
    settle = f"/tasks/{task}/settle?where=leg/2-right"
    shown = shop.get(settle).html
    assert "It is there" in shown and "It is not there" in shown and faults(shown) == []

    shop.post(settle, {"where": "leg/2-right", "holds": answered.keep[0].digest})
    now = running(shop.world, task)
    assert not now.folded.disputed and now.task.rows["leg"] == ("left", "right")
