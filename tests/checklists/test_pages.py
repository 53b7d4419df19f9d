"""Every page of a task as a browser gets it: whole, strict, and answering on each address."""
import re

import pytest

from checklist_app.checklists.answer import addresses
from checklist_app.checklists.procedure import PromptKind
from checklist_app.checklists.running import running
from checklist_app.checklists.steps import screens
from tests.checklists.pages_checked import Checked, faults
from tests.checklists.shop import AUDITOR, TODAY, Shop

RUNNING = ("", "/what", "/kit", "/kit/leg.1-left.sling", "/kit/leg.2-right.carrier", "/kit/leg.1-left.hitch",
           "/numbers", "/numbers?step=mass", "/numbers?step=eyes", "/numbers?step=heights", "/checks", "/settle")
ANYWHERE = ("/today", "/begin", "/begin?load=new", "/assess", "/assess?example=yes", "/gear/add", "/gear/add?kinds=eye",
            "/gear/add?kinds=round_sling.flat_sling", "/gear/R-21/quarantine")


@pytest.fixture(scope="module")
def rigged() -> tuple[Shop, str]:
    shop = Shop()
    task = shop.begin()
    shop.rig(task)
    return shop, task


@pytest.fixture
def fresh() -> tuple[Shop, str]:
    shop = Shop()
    return shop, shop.begin()


@pytest.mark.parametrize("address", ANYWHERE)
def test_a_page_outside_a_task_is_strict_html(rigged: tuple[Shop, str], address: str) -> None:
    given = rigged[0].get(address)

    assert given.status == 200
    assert faults(given.html) == []


@pytest.mark.parametrize("rest", RUNNING)
def test_a_page_of_a_rigged_task_is_strict_html(rigged: tuple[Shop, str], rest: str) -> None:
    shop, task = rigged
    given = shop.get(f"/tasks/{task}{rest}")

    assert given.status == 200
    assert faults(given.html) == []


@pytest.mark.parametrize("rest", RUNNING)
def test_a_page_of_a_task_just_begun_is_strict_html(fresh: tuple[Shop, str], rest: str) -> None:
    shop, task = fresh

    assert faults(shop.get(f"/tasks/{task}{rest}").html) == []


def test_stop_is_one_tap_on_every_page_of_a_running_task(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged

    for rest in RUNNING:
        assert ("post", f"/tasks/{task}/stop") in Checked(shop.get(f"/tasks/{task}{rest}").html).forms


def test_every_form_and_link_of_a_task_leads_to_a_page(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged
    patterns = [re.compile(re.sub(r"<\w+>", "[^/]+", address)) for address in addresses()]
    elsewhere = ("/registers", "/records", "/sign-out", "/theme", "/static/", "/people", "/#")

    for rest in RUNNING:
        page = Checked(shop.get(f"/tasks/{task}{rest}").html)
        for href in (*page.links, *(action for _, action in page.forms)):
            path = href.partition("?")[0].partition("#")[0]
            known = any(pattern.fullmatch(path) for pattern in patterns)
            assert known or not path or path.startswith(elsewhere), href


def test_the_governing_check_is_in_the_dock_of_every_page_once_something_is_computed(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged

    for rest in ("", "/what", "/kit", "/numbers", "/checks"):
        assert "Tilt lengthwise governs" in shop.get(f"/tasks/{task}{rest}").html


def test_an_address_without_a_page_is_answered_in_words() -> None:
    given = Shop().get("/tasks")

    assert given.status == 404
    assert "There is no page here." in given.html


def test_a_task_that_does_not_exist_is_answered_in_words() -> None:
    given = Shop().get("/tasks/t-none-7/numbers")

    assert given.status == 404
    assert "There is no such task." in given.html


def test_a_check_that_does_not_exist_is_answered_in_words(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged

    assert shop.get(f"/tasks/{task}/checks/nonsense").status == 404
    assert shop.get(f"/tasks/{task}/kit/nonsense").status == 404


def test_an_auditor_reads_and_does_not_write(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged

    assert shop.get(f"/tasks/{task}/numbers", person=AUDITOR).status == 200
    refused = shop.post(f"/tasks/{task}/numbers?step=mass", {"mass_kg": "1"}, person=AUDITOR)
    assert (refused.status, refused.keep) == (403, ())
    assert "Start a task" not in shop.get("/today", person=AUDITOR).html


def test_an_auditor_stops_a_lift_as_everybody_does_and_says_no_more(fresh: tuple[Shop, str]) -> None:
    shop, task = fresh
    given = shop.post(f"/tasks/{task}/stop", {"stop": "yes"}, person=AUDITOR)
    stopped = shop.get(f"/tasks/{task}/stop", person=AUDITOR).html

    assert [entry.type for entry in given.keep] == ["stop"] and given.location == f"/tasks/{task}/stop"
    assert "Stopped" in stopped and AUDITOR.id in stopped and 'id="why"' not in stopped
    assert faults(stopped) == []
    refused = shop.post(f"/tasks/{task}/stop", {"act": "why", "stop_why": "gear looks wrong"}, person=AUDITOR)
    assert (refused.status, refused.keep) == (403, ())


def test_a_stranger_assesses_and_sees_no_task(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged

    assert shop.get(f"/tasks/{task}", person=None).status == 401
    assert shop.get("/assess", person=None).status == 200


def test_a_sealed_task_says_so_and_leads_to_its_record(fresh: tuple[Shop, str]) -> None:
    shop, task = fresh
    shop.sealed[task] = "ab" * 32

    given = shop.post(f"/tasks/{task}/numbers?step=mass", {"mass_kg": "1"})
    assert (given.status, given.keep) == (409, ())
    assert f"/records/{'ab' * 32}" in given.html


def test_today_says_where_each_task_was_left(rigged: tuple[Shop, str]) -> None:
    shop, _ = rigged
    shown = shop.get("/today").html

    assert "Wednesday 25 November" in shown
    assert "You stopped at Stop points, step 1 of 3." in shown
    assert TODAY == "2026-11-25"


def test_a_trial_that_nobody_made_is_not_done_and_work_stands_at_its_hold(rigged: tuple[Shop, str]) -> None:
    shop, task = rigged
    page = shop.get(f"/tasks/{task}").html
    stages = dict(re.findall(r'class="job-name">([^<]+)</span><span class="note">([^<]+)<', page))

    assert stages["Trial"] == "No trial lift yet."
    assert stages["Hold: release"] == "Not signed yet."
    assert page.count("job-now") == 1 and stages["Stop points"].startswith("Still open")


def test_an_auditor_is_not_offered_a_key_to_sign_with(rigged: tuple[Shop, str]) -> None:
    shop, _ = rigged

    assert "/enrol" in shop.get("/today").html
    assert "/enrol" not in shop.get("/today", person=AUDITOR).html


@pytest.mark.parametrize("first, said", [("cannot_see", "Done, 1 not seen."), ("yes", "Done.")])
def test_a_stage_with_something_that_nobody_could_see_says_so(first: str, said: str) -> None:
    shop = Shop()
    task = shop.begin()
    for number, screen in enumerate(screens(running(shop.world, task), "stop-points")):
        ticks = [place for place in screen.places if place.prompt.kind is PromptKind.TICK]
        said_of = {"/".join(place.path): "yes" for place in ticks}
        chosen = {place.name: place.prompt.choices[0] for place in screen.places if place.prompt.choices}
        seen_or_not = {"/".join(ticks[0].path): first} if number == 0 else {}
        shop.post(screen.href, said_of | chosen | seen_or_not)

    page = shop.get(f"/tasks/{task}").html
    assert said in page.partition("/stop-points")[2].partition("</li>")[0]
