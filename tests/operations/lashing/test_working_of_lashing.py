"""The working of a lashed load: every line by pencil, the run that governs by its transport, the formula beside it."""

import re

import pytest

from checklist_app.mechanics.lashing.transport import Waters
from checklist_app.operations.check import Limit, Strength
from checklist_app.operations.evaluate import assess
from checklist_app.operations.inline import from_json
from checklist_app.operations.lashing.choices import Blocks, Route
from checklist_app.operations.pallet_lashing import EXAMPLE as ON_SKID
from checklist_app.operations.task import Task
from checklist_app.operations.traced import digits
from checklist_app.operations.vehicle_lashing import EXAMPLE as ON_LORRY
from checklist_app.operations.working import working
from tests.operations.lashing.loads import FORWARD, LEFT, ON_PALLET, ON_VEHICLE, block, four, load, nominal, tie_down
from tests.operations.lashing.some_loads import some_loads
from tests.operations.test_working import all_lines, calculated, printed_parts

MIXED = load(
    [*four((0.45, 0.3, 1.1), (1.2, 1.1, 0.0), 800.0), tie_down((0.0, 0.4, 1.2), (0.0, 0.9, 0.0))],
    [block(Blocks.FORWARD, (0.5, 0.0, 0.15), 400.0)], base_length_m=1.0, base_width_m=0.7, cg_z_m=0.8,
    route=Route.SEA, waters=Waters.OPEN_OCEAN,
)
LOADS = [(ON_PALLET, from_json(ON_PALLET, ON_SKID)), (ON_VEHICLE, from_json(ON_VEHICLE, ON_LORRY)),
         (ON_VEHICLE, MIXED), *((ON_VEHICLE, task) for task in some_loads(3, seed=7))]


@pytest.mark.parametrize("table, task", LOADS, ids=range(len(LOADS)))
def test_every_line_of_every_check_comes_out_as_printed(table: object, task: Task) -> None:
    ev = assess(table, task, with_spread=False)  # type: ignore[arg-type]
    lines = list(dict.fromkeys(all_lines(ev)))
    counted = [line for line in lines if line.figures != line.result and line.words != "found by search"]
    assert len(counted) > 20
    for line in counted:
        figures, last = printed_parts(line)
        assert digits(calculated(figures), len(re.sub(r"\D", "", last).lstrip("0")) or 1) == last or abs(
            calculated(figures) - float(last.replace("−", "-"))
        ) <= 1e-6, line.text


@pytest.mark.parametrize("table, task", LOADS, ids=range(len(LOADS)))
def test_the_last_lines_are_demand_and_capacity_as_assessed(table: object, task: Task) -> None:
    ev = assess(table, task, with_spread=False)  # type: ignore[arg-type]
    for check in ev.checks:
        if isinstance(check.outcome, Strength | Limit):
            lines = {line.name.partition(" ")[0]: line for line in working(ev, check.name)}
            for name, value in (("demand", check.outcome.demand), ("capacity", check.outcome.capacity)):
                assert calculated(lines[name].result) == pytest.approx(value, rel=1e-3, abs=1e-6), check.name


def told(way: str, check: str) -> list[str]:
    return [line.text for line in working(nominal(MIXED), f"{check}[{way}]")]


def test_the_run_that_governs_is_named_with_its_transport() -> None:
    text = "\n".join(told(LEFT, "tipping"))
    assert "sea area C, tipping to the left: share of the weight [to the left]" in text
    assert "tip needed [to the left] = " in text and "found by search" in text


def test_the_formula_stands_beside_it_lashing_by_lashing_with_the_difference_and_what_settling_leaves() -> None:
    lines = told(FORWARD, "sliding")
    starts = [line.partition(" = ")[0] for line in lines]
    for wanted in ("friction that counts", "friction of what weight remains", "L3 gives", "L4 gives", "L5 gives",
                   "slide by formula", "slide withstood", "slide lost", "slide settled"):
        assert f"{wanted} [forwards]" in starts, wanted
    (total,) = (line for line in lines if line.startswith("slide by formula"))
    assert total.count(" + 400 ") == 2, "the block, in words and in figures"
    assert "L1 gives [forwards]" not in starts, "pulls with the motion"


def test_what_settling_leaves_is_not_told_where_no_tie_down_holds() -> None:
    ev = nominal(load(four((0.45, 0.3, 1.1), (1.2, 1.1, 0.0))))
    assert not [line for line in working(ev, f"sliding[{FORWARD}]") if "settled" in line.name]


def test_by_hand_the_formula_of_a_mixed_arrangement_against_tipping() -> None:
    """To the left on the road, 0.5 with STF: (b G + Σ FT / 1.1 × what both strands press down × b) / d."""
    ev = nominal(load(
        [tie_down((0.0, 0.3, 1.2), (0.0, 0.8, 0.0))], base_length_m=1.0, base_width_m=0.7, cg_z_m=0.8,
    ))
    long = (0.5 * 0.5 + 1.2 * 1.2) ** 0.5
    strands = 350.0 / 1.1 * 2.0 * 1.2 * 0.35 / long
    by_hand = (981.0 * 0.35 + strands) / 0.8
    (run,) = (each for each in ev[f"held_load[{LEFT}]"].runs if each.held.title == "tipping to the left")
    assert run.held.formula * 981.0 == pytest.approx(by_hand)
    if ev[f"tipped_load[{LEFT}]"].governs.held.title == run.held.title:
        assert ev[f"tip_by_formula_dan[{LEFT}]"] == pytest.approx(by_hand)
