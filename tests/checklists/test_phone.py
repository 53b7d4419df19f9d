"""What a phone knows and answers: the same as a world that has everything at once, however it was learned."""
import json
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from checklist_app.checklists.answer import answer
from checklist_app.checklists.entry import Entry
from checklist_app.checklists.phone import Phone, PhoneWorld
from checklist_app.checklists.register import REGISTERS
from checklist_app.checklists.running import running
from checklist_app.checklists.statement import evaluation
from checklist_app.checklists.world import MemoryWorld
from checklist_app.operations.report import report
from tests.checklists.shop import RIGGER, TODAY, Shop
from tests.checklists.yard import DAY, RUN_OUT, TASK, Yard, request

LATER = "2027-08-01"
few = settings(max_examples=25, suppress_health_check=[HealthCheck.function_scoped_fixture])


@pytest.fixture(scope="module")
def yard() -> Yard:
    filled = Yard().ready().trial()
    filled.photo("label")
    filled.put(("gear", "R-1"), ("quarantine",), {"type": "quarantine", "since": DAY}, RUN_OUT)
    return filled


def same(phone: PhoneWorld, whole: MemoryWorld, about: set[tuple[str, ...]]) -> None:
    for each in about:
        assert phone.entries(each) == whole.entries(each)
    assert phone.tasks() == whole.tasks()
    for register in REGISTERS:
        assert dict(phone.items(register)) == dict(whole.items(register))
        assert list(phone.items(register)) == sorted(whole.items(register))


@few
@given(data=st.data())
def test_learned_in_any_division_it_is_the_world_that_knew_all_at_once(yard: Yard, data: st.DataObject) -> None:
    cuts = sorted(data.draw(st.lists(st.integers(0, len(yard.entries)), max_size=6)))
    parts = data.draw(st.permutations(list(yard.parts.items())))
    part_cuts = sorted(data.draw(st.lists(st.integers(0, len(parts)), min_size=len(cuts), max_size=len(cuts))))
    day = data.draw(st.sampled_from([DAY, LATER]))
    phone = PhoneWorld().on(DAY)
    for start, end, first, last in zip([0, *cuts], [*cuts, None], [0, *part_cuts], [*part_cuts, None], strict=True):
        phone.learn(yard.entries[start:end], parts[first:last])
        if data.draw(st.booleans()):
            phone.items("gear")  # folded in between, on a day that may not be the last one

    same(phone.on(day), MemoryWorld(yard.entries, yard.parts, today=day), {entry.about for entry in yard.entries})


@few
@given(data=st.data())
def test_learned_twice_and_in_any_order_it_says_the_same_on_every_page(yard: Yard, data: st.DataObject) -> None:
    entries: list[Entry] = data.draw(st.permutations(yard.entries + yard.entries[:20]))
    phone = PhoneWorld().on(DAY)
    phone.learn(entries, yard.parts.items())
    phone.learn(yard.entries, yard.parts.items())

    for path in (f"/tasks/{TASK}/checks", f"/tasks/{TASK}/kit", "/today"):
        asked = request(yard, path)
        assert answer(asked, phone).html == answer(asked, MemoryWorld(yard.entries, yard.parts, today=DAY)).html


def test_only_what_is_touched_is_folded_again(yard: Yard) -> None:
    phone = PhoneWorld().on(DAY)
    phone.learn(yard.entries, yard.parts.items())
    before = dict(phone.items("gear"))
    held = Yard()
    phone.learn([held.put(("gear", "R-2"), ("quarantine",), {"type": "quarantine", "since": DAY}, RUN_OUT)])
    after = phone.items("gear")

    assert after["R-2"].state.quarantined
    assert all(after[name] is before[name] for name in before if name != "R-2")


def test_a_picture_that_lies_elsewhere_is_here_and_has_no_bytes_until_it_has() -> None:
    phone = PhoneWorld()
    phone.learn(parts=[("a" * 64, None)])
    assert phone.has_part("a" * 64)
    assert phone.part("a" * 64) is None
    phone.learn(parts=[("a" * 64, b"picture"), ("b" * 64, b"")])
    phone.learn(parts=[("a" * 64, None)])
    assert phone.part("a" * 64) == b"picture"
    assert not phone.has_part("c" * 64)


def test_a_task_that_was_sealed_is_no_longer_worked_on(yard: Yard) -> None:
    phone = PhoneWorld().on(DAY)
    phone.learn(yard.entries, yard.parts.items())
    assert phone.tasks() == [TASK]
    phone.learn(sealed={TASK: "d" * 64}, cursor={"number": 7, "head": "h"})

    assert phone.tasks() == []
    assert phone.cursor() == {"number": 7, "head": "h"}
    assert answer(request(yard, f"/tasks/{TASK}/numbers"), phone).status in (303, 409)


def loaded(shop: Shop) -> Phone:
    phone = Phone()
    phone.load(json.dumps({"entries": [entry.data.decode() for entry in shop.entries]}), shop.parts.items())
    return phone


def message(**more: Any) -> str:
    person = {"id": RIGGER.id, "name": RIGGER.name, "role": RIGGER.role, "capacities": dict(RIGGER.capacities)}
    return json.dumps({"method": "GET", "device": "s-1", "counter": 5000, "at": f"{TODAY}T08:00:00Z", "salt": "salt",
                       "today": TODAY, "person": person, "form_token": "token"} | more)


def test_a_message_is_answered_with_the_page_that_the_server_would_send() -> None:
    shop = Shop()
    task = shop.begin()
    shop.rig(task)
    text, parts = loaded(shop).answer(message(path=f"/tasks/{task}/numbers", fragment=True))

    assert json.loads(text)["html"] == shop.get(f"/tasks/{task}/numbers", fragment=True).html
    assert parts == []


def test_a_task_begun_on_the_phone_comes_back_to_be_kept_and_is_not_known_before() -> None:
    phone = loaded(Shop())
    form = {"operation": ["straight_lift"], "lift": ["VP-400|complete"], "place": ["pump-bay"], "day": [TODAY]}
    text, parts = phone.answer(message(method="POST", path="/begin", form=form))
    told = json.loads(text)
    task = told["location"].split("/")[2]

    assert told["status"] == 303
    assert phone.world.tasks() == []
    phone.learn(json.dumps({"entries": told["keep"]}), parts)
    assert phone.world.tasks() == [task]


def test_the_evaluation_is_the_one_that_a_statement_holds() -> None:
    shop = Shop()
    task = shop.begin()
    shop.rig(task)
    now = running(shop.world, task)
    found = json.loads(loaded(shop).evaluate(json.dumps({"task": task, "today": TODAY})))
    assert found == evaluation(report(now.operation, now.evaluation))


HTTPS = "https://shed.local:8443"


def by_http(phone: Phone, path: str, **more: Any) -> dict[str, Any]:
    return json.loads(phone.answer(message(path=path, https_way=f"{HTTPS}{path}", **more))[0])


def test_by_http_a_page_made_on_the_phone_says_so_and_leads_to_https() -> None:
    shop = Shop()
    task = shop.begin()
    phone = loaded(shop)
    html = by_http(phone, f"/tasks/{task}/numbers")["html"]
    assert "By http: enter and check only." in html and f'href="{HTTPS}/tasks/{task}/numbers"' in html
    assert "By http" not in json.loads(phone.answer(message(path=f"/tasks/{task}/numbers"))[0])["html"]


@pytest.mark.parametrize(("path", "more"), [
    ("/begin", {}), ("/begin", {"method": "POST", "form": {"operation": ["straight_lift"]}}), ("/go-on", {}),
    ("/holds/release", {"query": {"act": "sign"}}), ("/holds/release", {"method": "POST", "form": {"act": ["sign"]}}),
    ("/holds/release/guest", {}),
])
def test_by_http_a_phone_begins_and_signs_nothing_by_itself_either(path: str, more: dict[str, Any]) -> None:
    shop = Shop()
    task = shop.begin()
    told = by_http(loaded(shop), path if path == "/begin" else f"/tasks/{task}{path}", **more)
    assert told["status"] == 403 and told["keep"] == []
    assert "This needs https" in told["html"] and HTTPS in told["html"]
    assert by_http(loaded(shop), f"/tasks/{task}/stop", method="POST")["keep"], "a stop is for everywhere"
