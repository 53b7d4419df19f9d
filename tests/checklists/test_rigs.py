"""One to four legs, one or two hooks, every hitch: what is asked follows, and what cannot be read never passes."""
import re
from urllib.parse import urlencode

import pytest

from checklist_app.checklists.assessing import assessed
from checklist_app.checklists.running import running
from checklist_app.checklists.typed_rig import leg_rows
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.task import Key
from tests.checklists.pages_checked import faults
from tests.checklists.shop import LOAD, TODAY, Shop

FOUR, HOOKS = Rig.FOUR_LEGS.value, Rig.TWO_HOOKS.value
FIRST = "leg/1-left_front/"
FOUR_TYPED = {
    "rig": FOUR, "mass_kg": "1650", "mass_kg.how": "weighed", "eyes_apart_m": "1.6", "eyes_across_m": "0.9",
    "cg_x_m": "0.82", "cg_y_m": "0.45", "cg_z_m": "-0.1", "lengths.how": "drawing", "cg.how": "trial",
    f"{FIRST}sling.kind": "chain_sling", f"{FIRST}sling.wll_t": "2", f"{FIRST}sling.length_m": "2",
    f"{FIRST}sling.grade": "grade 8", f"{FIRST}sling.size_mm": "8", f"{FIRST}hitch": "straight",
    "usual.straight_on": "yes", "usual.shed": "yes", "rigging_kg": "40", "share_rule": "two diagonal legs carry all",
    f"{FIRST}carrier.up_to_deg": "45", f"{FIRST}carrier.wll_t": "1.5", f"{FIRST}carrier.evidence": "plate",
    f"{FIRST}eye.not_used": "yes", "hoist.wll_t": "5", "bottom_z_m": "-0.35", "top_z_m": "0.05",
    "lift_height_m": "0.4", "highest_hook_m": "4.7", "room_height_m": "5.4", "hook_fitting.kind": "master_link",
    "hook_fitting.wll_t": "5", "hook_fitting.reach_m": "0.16",
}


def address(typed: dict[str, str]) -> str:
    return "/assess?" + "&".join(f"{name}={text}" for name, text in typed.items())


def slots(shop: Shop, task: str) -> list[str]:
    return [place.slot for place in running(shop.world, task).places("kit")]


def test_the_kit_has_a_row_of_slots_for_each_leg_of_the_rig() -> None:
    shop = Shop()
    task = shop.begin(rig=FOUR)

    assert sum(slot.endswith(".sling") for slot in slots(shop, task)) == 4
    assert "Left rear sling" in shop.get(f"/tasks/{task}/kit/leg.3-left_rear.sling").html
    shop.post(f"/tasks/{task}/kit/rig", {"rig": Rig.ONE_LEG.value})
    assert [slot for slot in slots(shop, task) if slot.endswith(".sling")] == ["leg.1-left.sling"]
    assert "<h1>Sling</h1>" in shop.get(f"/tasks/{task}/kit/leg.1-left.sling").html


def test_two_hooks_are_two_hoists_and_no_common_one() -> None:
    shop = Shop()
    task = shop.begin(rig=HOOKS)

    assert "hoist" not in slots(shop, task) and "hook.1-left.hook_hoist" in slots(shop, task)
    shop.post(f"/tasks/{task}/kit/hook.1-left.hook_hoist", {"pick": "machine/H-1"})
    assert shop.post(f"/tasks/{task}/kit/hook.2-right.hook_hoist", {"pick": "machine/H-1"}).status == 422
    shop.post(f"/tasks/{task}/kit/hook.2-right.hook_hoist", {"pick": "machine/H-2"})
    now = running(shop.world, task)
    assert not now.faults and now.task.answers[Key("hook_hoist", "right")].id == "H-2"


def test_a_hoist_picked_for_one_hook_hangs_nowhere_once_there_are_two() -> None:
    shop = Shop()
    task = shop.begin()
    shop.post(f"/tasks/{task}/kit/hoist", {"pick": "machine/H-1"})
    shop.post(f"/tasks/{task}/kit/rig", {"rig": HOOKS})
    shop.post(f"/tasks/{task}/kit/hook.1-left.hook_hoist", {"tag": "H-1"})

    assert not [path for path, words in running(shop.world, task).faults.items() if "places of the kit" in words]


@pytest.mark.parametrize(("hitch", "asked", "not_asked"), [
    ("straight", (), ("choke_angle_deg", "bend_mm", "edge_mm", "edge_protected", "face", "stop")),
    ("choked", ("choke_angle_deg", "bend_mm", "edge_mm", "edge_protected", "face", "stop"), ("part_angle_deg",)),
    ("basket", ("part_angle_deg", "bend_mm", "edge_mm", "edge_protected", "face", "stop"), ("choke_angle_deg",)),
])
def test_a_hitch_brings_its_questions_and_no_others(hitch: str, asked: tuple[str, ...],
                                                    not_asked: tuple[str, ...]) -> None:
    shop = Shop()
    task = shop.begin()
    shop.post(f"/tasks/{task}/kit/leg.1-left.hitch", {"leg/1-left/hitch": hitch})
    names = {place.prompt.name for place in running(shop.world, task).places("numbers") if place.row == "1-left"}

    assert set(asked) <= names and not set(not_asked) & names


def test_protection_is_asked_for_with_an_edge_and_without_one_for_a_rough_face_cuts_too() -> None:
    shop = Shop()
    task = shop.begin()
    shop.post(f"/tasks/{task}/kit/leg.1-left.hitch", {"leg/1-left/hitch": "choked"})
    step = f"/tasks/{task}/numbers?step=hitch.1-left"
    shop.post(step, {"leg/1-left/edge_mm": "3"})
    assert 'name="leg/1-left/edge_protected"' in shop.get(step).html
    shop.post(step, {"leg/1-left/edge_mm": "", "leg/1-left/edge_mm.not_used": "yes"})
    assert 'name="leg/1-left/edge_protected"' in shop.get(step).html


def test_temperature_and_chemicals_keep_a_lift_from_being_signed_until_they_are_answered() -> None:
    shop = Shop()
    task = shop.begin()
    open_names = {place.prompt.name for place in running(shop.world, task).places("numbers")
                  if running(shop.world, task).is_open(place)}

    assert {"sling_temperature_c", "chemicals", "legs_given"} <= open_names


BAD = ("two", "1e99", "NaN", "-9999", "1,250", "99999999")
FIELDS = {
    "legs": {"hook_over_eyes_m": "height of the hook", "leg/1-left_front/leg_angle_read_deg": "measured angles",
             "leg/1-left_front/leg_length_m": "lengths"},
    "eyes": {"eyes_across_m": "rectangle", "leg/4-right_rear/eye_y_m": "coordinates"},
    "around": {"sling_temperature_c": ""},
    "hitch.1-left_front": dict.fromkeys((f"{FIRST}choke_angle_deg", f"{FIRST}bend_mm", f"{FIRST}edge_mm",
                                         f"{FIRST}friction"), "choked"),
}


@pytest.mark.parametrize(("step", "field"), [(step, field) for step, fields in FIELDS.items() for field in fields])
def test_what_cannot_be_read_stands_at_its_field_and_is_never_within_limit(step: str, field: str) -> None:
    shop = Shop()
    task = shop.begin(load="BF-9", state="bare", rig=FOUR)
    shop.post(f"/tasks/{task}/kit/leg.1-left_front.hitch", {f"{FIRST}hitch": "choked"})
    choice = {"legs": "legs_given", "eyes": "eyes_given"}.get(step)
    if choice:
        shop.post(f"/tasks/{task}/numbers?step={step}", {choice: FIELDS[step][field]})
    for typed in BAD:
        given = shop.post(f"/tasks/{task}/numbers?step={step}", {field: typed})
        assert given.status == 422, typed
        assert f'value="{typed}"' in given.html and 'class="fault"' in given.html and faults(given.html) == []
        assert running(shop.world, task).evaluation.verdict.words not in ("within limit", "close to limit")


@pytest.mark.parametrize("field", ["hook/1-left/hook_at_x_m", "hook/2-right/hook_over_m"])
def test_where_a_hook_stands_is_read_or_refused(field: str) -> None:
    shop = Shop()
    task = shop.begin(rig=HOOKS)
    step = f"/tasks/{task}/numbers?step=hooks-at.{field.split('/')[1]}"

    assert [shop.post(step, {field: typed}).status for typed in BAD[:5]] == [422] * 5
    assert shop.post(step, {field: "0,25", f"{field}.how": "tape"}).status == 303


@pytest.mark.parametrize("rig", [rig.value for rig in Rig])
def test_every_rig_is_assessed_from_its_own_few_questions(rig: str) -> None:
    page = Shop().get(f"/assess?rig={rig}", person=None)

    assert page.status == 200 and page.keep == () and faults(page.html) == []
    assert f'value="{rig}" checked' in page.html


def test_four_legs_are_assessed_without_signing_in() -> None:
    page = Shop().get(address(FOUR_TYPED), person=None).html

    assert "The lift is close to limit" in page and "<svg viewBox" in page and "Left rear" in page


def test_too_little_chain_for_two_diagonal_legs_is_over_limit() -> None:
    weak = address({**FOUR_TYPED, f"{FIRST}sling.wll_t": "0.9"})

    assert "The lift is over limit" in Shop().get(weak, person=None).html


@pytest.mark.parametrize("typed", BAD)
@pytest.mark.parametrize("field", ["eyes_across_m", "sling_temperature_c", f"{FIRST}sling.size_mm"])
def test_bad_input_in_an_assessment_of_four_legs_is_said_at_its_field(field: str, typed: str) -> None:
    given = Shop().get(address({**FOUR_TYPED, field: typed}), person=None)

    assert given.status == 422 and f'value="{typed}"' in given.html and "The lift is within" not in given.html


def test_another_rig_keeps_what_was_typed_for_the_first_leg() -> None:
    typed = {name.replace("1-left_front", "1-left"): text for name, text in FOUR_TYPED.items()}

    assert assessed(typed, TODAY).task == assessed(FOUR_TYPED, TODAY).task


def test_an_answer_that_changes_the_questions_brings_the_questions_anew() -> None:
    shop = Shop()
    shown = shop.get("/assess").html.partition('name="shape" value="')[2].partition('"')[0]
    same = shop.get(f"/assess?shape={shown}&mass_kg=900", person=None, fragment=True).html
    other = shop.get(f"/assess?shape={shown}&rig={FOUR}", person=None, fragment=True).html

    assert 'id="asks"' not in same and '<div id="asks" hx-swap-oob="true">' in other and "eyes_across_m" in other


def test_an_assessment_of_four_legs_becomes_a_task_with_all_that_was_typed() -> None:
    shop = Shop()
    begin = {"operation": "straight_lift", "lift": f"{LOAD}|complete", "place": "", "day": TODAY}
    assert shop.get("/begin?" + urlencode(FOUR_TYPED).replace("%2F", "/").replace("+", " ")).status == 200
    given = shop.post("/begin", {**begin, **{f"carry.{name}": text for name, text in FOUR_TYPED.items()}})
    assert given.location is not None, given.html
    answers = running(shop.world, given.location.split("/")[2]).task.answers

    assert answers[Key("rig")] is Rig.FOUR_LEGS and answers[Key("eyes_across_m")].value == 0.9
    for row in leg_rows(Rig.FOUR_LEGS):
        assert answers[Key("sling", row.partition("-")[2])].kind == "chain_sling"
    assert answers[Key("hook_fitting")].wll_t == 5.0 and answers[Key("chemicals")].value == "none"


def test_each_of_two_hooks_is_asked_by_its_name_and_a_row_is_said_without_a_line_below() -> None:
    page = Shop().get(f"/assess?rig={HOOKS}", person=None).html
    assert "Left hook, lengthwise" in page and "Right hook, lengthwise" in page
    told = re.sub("<[^>]*>", " ", Shop().get(f"/assess?rig={FOUR}", person=None).html)
    assert "Right rear sling" in told and "_rear" not in told
    shop = Shop()
    task = shop.begin(rig=FOUR)
    waits = [str(check.stopped) for check in running(shop.world, task).evaluation.checks if check.stopped]
    assert any("left rear" in each for each in waits) and not any("left_rear" in each for each in waits)
