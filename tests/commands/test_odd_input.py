"""Odd values anywhere in an input: a message naming the field, or a report; never a crash or a made-up number."""

import copy
import json
import random
from collections.abc import Iterator
from typing import Any

import pytest

from checklist_app.commands.assess import assessed
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.check import Verdict
from checklist_app.operations.inline import InputFault

OPERATION = OPERATIONS["straight_lift"]
ODD: tuple[Any, ...] = (
    None, 0, -1, 1e99, 1e-99, float("nan"), float("inf"), 10**400, True, "", "x", "1,250", "don't know", [], [1], {},
    {"not_used": "none here"}, {"value": 1}, {"value": 0.5, "how": "tape"}, {"value": 5, "plus_minus": 1e5},
)


def places(data: Any, path: tuple[Any, ...] = ()) -> Iterator[tuple[Any, ...]]:
    for key, value in data.items() if isinstance(data, dict) else enumerate(data):
        yield (*path, key)
        if isinstance(value, dict | list):
            yield from places(value, (*path, key))


def put(data: Any, path: tuple[Any, ...], value: Any) -> None:
    for key in path[:-1]:
        data = data[key]
    data[path[-1]] = value


PLACES = list(places(OPERATION.example))


@pytest.mark.parametrize("path", PLACES, ids=lambda path: "/".join(map(str, path)))
def test_an_odd_value_in_any_place_is_a_named_fault_or_a_report(path: tuple[Any, ...]) -> None:
    for odd in ODD:
        data = copy.deepcopy({**OPERATION.example, "spread": False})
        put(data, path, odd)
        try:
            told, _ = assessed(data)
        except InputFault as fault:
            assert str(fault)
        else:
            json.dumps(told, allow_nan=False)


def test_no_entry_of_the_example_can_be_left_out_unnoticed() -> None:
    for name in OPERATION.example["entries"]:
        data = copy.deepcopy(dict(OPERATION.example))
        del data["entries"][name]
        told, verdict = assessed(data)
        assert verdict is Verdict.WAITING, name
        assert any(name in waits for waits in told["waiting"].values()), name


def test_numbers_at_the_ends_of_their_ranges_are_judged_or_refused_in_words() -> None:
    draw = random.Random(7)
    for _ in range(60):
        data = copy.deepcopy({**OPERATION.example, "spread": False})
        for name in data["entries"]:
            entry = OPERATION.table.entries[name]
            if entry.kind is float and draw.random() < 0.3:
                data["entries"][name] = draw.choice((entry.low, entry.high, draw.uniform(entry.low, entry.high)))
        told, verdict = assessed(data)
        assert verdict is not Verdict.WAITING and told["verdict"] == verdict.words


def test_one_strap_in_two_places_is_refused_at_the_second() -> None:
    data = copy.deepcopy(dict(OPERATIONS["vehicle_lashing"].example))
    data["lashings"][1]["lashing_item"]["id"] = data["lashings"][0]["lashing_item"]["id"]
    with pytest.raises(InputFault, match=r"lashing_item\[right front\]: L-11 stands in 2 places. It lies in one."):
        assessed(data)
