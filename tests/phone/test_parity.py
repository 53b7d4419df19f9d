"""Phone and server compute the same bytes: every operation for random inputs, every page of a task.

The long form, 2,000 inputs an operation: `python3 -m pytest -m long tests/phone`.
"""

import json
import math
import random
from collections import Counter
from typing import Any

import pytest

from checklist_app.checklists.answer import addresses, answer
from checklist_app.operations.catalogue import OPERATIONS
from tests.checklists.lashed import lash
from tests.checklists.shop import RIGGER, TODAY, Shop
from tests.phone.assessed import assessed
from tests.phone.node_phone import NodePhone
from tests.phone.random_inputs import some_inputs

EACH, MANY, AT_ONCE, WITH_SPREAD = 100, 2000, 25, 8
POSTS: tuple[tuple[str, dict[str, str]], ...] = (
    ("numbers?step=heights", {"lift_height_m": "0,45", "lift_height_m.how": "tape"}),
    ("numbers?step=heights", {"lift_height_m": "1,250"}),
    ("numbers?step=mass", {"mass_kg": "2400", "mass_kg.how": "plate"}),
    ("kit/leg.1-left.sling", {"pick": "gear/R-22"}),
    ("stop", {}),
)


@pytest.mark.parametrize("name", OPERATIONS)
def test_every_operation_comes_to_the_same_bytes(phone: NodePhone, name: str) -> None:
    compared(phone, name, EACH, random.randrange(10**9))


@pytest.mark.long
@pytest.mark.parametrize("name", OPERATIONS)
def test_every_operation_comes_to_the_same_bytes_two_thousand_times(phone: NodePhone, name: str) -> None:
    compared(phone, name, MANY, random.randrange(10**9))


def compared(phone: NodePhone, name: str, count: int, seed: int) -> None:
    print(f"{name}: {count} inputs, seed {seed}")
    inputs = [json.dumps(each) for each in some_inputs(OPERATIONS[name], count, seed)]
    verdicts: Counter[str] = Counter()
    for start in range(0, count, AT_ONCE):
        some = inputs[start:start + AT_ONCE]
        for given, there in zip(some, phone.ask({"do": "assess", "inputs": some})["told"], strict=True):
            here = assessed(given)
            assert there == here, f"seed {seed}: {given}"
            verdicts[json.loads(here)["verdict"] if here.startswith("{") else "cannot be used"] += 1
    print(dict(verdicts))
    computed = count - verdicts["cannot be used"]
    assert computed >= count * 0.5, f"too few inputs come to anything, seed {seed}: {verdicts}"
    assert len(verdicts) >= 4, f"all inputs are alike, seed {seed}: {verdicts}"


def test_one_bit_more_or_less_in_any_figure_is_judged_the_same(phone: NodePhone) -> None:
    """Whatever lies just on a limit, a step of a plate or a branch falls on the same side."""
    for operation in OPERATIONS.values():
        moved = on_the_edge(operation.example)
        few = random.Random(operation.name).sample(moved, WITH_SPREAD)
        inputs = [json.dumps(each | {"spread": each in few}) for each in moved]
        told = phone.ask({"do": "assess", "inputs": inputs})["told"]
        assert told == [assessed(each) for each in inputs]


def on_the_edge(example: Any) -> list[dict[str, Any]]:
    """The example with each of its figures moved by one bit, either way."""
    text, found = json.dumps(example), []
    for place in numbers(example, ()):
        for towards in (-math.inf, math.inf):
            changed = json.loads(text)
            inside = changed
            for step in place[:-1]:
                inside = inside[step]
            inside[place[-1]] = math.nextafter(inside[place[-1]], towards)
            found.append(changed)
    return found


def numbers(inside: Any, place: tuple[Any, ...]) -> list[tuple[Any, ...]]:
    if isinstance(inside, dict | list):
        pairs = inside.items() if isinstance(inside, dict) else enumerate(inside)
        return [each for key, value in pairs for each in numbers(value, (*place, key))]
    return [place] if isinstance(inside, int | float) and not isinstance(inside, bool) else []


@pytest.fixture(scope="module")
def shop() -> tuple[Shop, str]:
    made = Shop()
    task = made.begin()
    made.rig(task)
    lash(made)
    return made, task


def message(**more: Any) -> dict[str, Any]:
    person = {"id": RIGGER.id, "name": RIGGER.name, "role": RIGGER.role, "capacities": dict(RIGGER.capacities)}
    return {"do": "answer", "request": {
        "method": "GET", "device": "s-1", "counter": 9000, "at": f"{TODAY}T08:00:00Z", "salt": "salt", "today": TODAY,
        "person": person, "form_token": "token", "evaluated_by": "server", **more}}


def test_every_page_of_a_task_is_the_same_to_the_byte(phone: NodePhone, shop: tuple[Shop, str]) -> None:
    made, task = shop
    phone.load([entry.data for entry in made.entries], made.parts)
    lashed = next(each for each in made.world.tasks() if each != task)
    seen = opened(phone, made, {"task": task, "slot": "leg.1-left.sling", "name": "sling_strength.left",
                                "hold": "release"})
    seen += opened(phone, made, {"task": lashed, "slot": "pallet", "name": "lashing_strength.1", "hold": "hand_over"})
    assert seen >= 60


def opened(phone: NodePhone, made: Shop, named: dict[str, str]) -> int:
    """Every address of one task, whole and as a fragment; what its procedure does not have is missing on both."""
    seen = 0
    for address in addresses():
        path = "/gear/R-21/quarantine" if address.startswith("/gear/<") else address
        for name, text in named.items():
            path = path.replace(f"<{name}>", text)
        for fragment in (True, False):
            here = made.get(path, fragment=fragment, counter=9000, salt="salt")
            there = phone.ask(message(path=path, fragment=fragment))
            assert there["ok"], f"{path}: {there.get('error')}"
            assert (there["status"], there["location"]) == (here.status, here.location), path
            assert there["html"].split("\n") == here.html.split("\n"), path
            seen += here.status != 404
    return seen


@pytest.mark.parametrize(("where", "form"), POSTS)
def test_an_answer_gives_the_same_fragment_and_the_same_entries(
    phone: NodePhone, shop: tuple[Shop, str], where: str, form: dict[str, str]
) -> None:
    made, task = shop
    phone.load([entry.data for entry in made.entries], made.parts)
    path, _, query = f"/tasks/{task}/{where}".partition("?")
    pairs = dict([query.split("=")] if query else [])
    sent = {name: (text,) for name, text in form.items()}
    here = answer(made.request("POST", path, form=sent, query=pairs, fragment=True, counter=9000, salt="salt"),
                  made.world)
    there = phone.ask(message(method="POST", path=path, fragment=True, query=pairs,
                              form={name: list(texts) for name, texts in sent.items()}))

    assert there["html"] == here.html
    assert there["status"] == here.status
    assert there["keep"] == [entry.data.decode() for entry in here.keep]
    assert [name for name, _ in there["parts"]] == list(here.parts)


def test_a_module_that_is_not_on_the_phone_is_told_as_such(phone: NodePhone) -> None:
    lost = {"do": "take away", "module": "checklist_app.checklists.running"}
    phone.ask(lost)
    told = phone.ask(message(path="/today"))
    phone.ask(lost)

    assert (told["ok"], told["missing"]) == (False, True)
    assert "checklist_app.checklists.running" in told["error"]
    assert phone.ask(message(path="/today"))["ok"]
