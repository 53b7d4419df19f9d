"""Each printed line of working, calculated again from its printed figures, gives its printed result."""

import re

import pytest

from checklist_app.mechanics import exact
from checklist_app.operations.check import Limit, Strength
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.task import Key, Task
from checklist_app.operations.traced import Traced, digits, figure, result
from checklist_app.operations.working import Line, working
from tests.operations.rigged_lifts import some_rigged_lifts
from tests.operations.some_lifts import some_lifts
from tests.operations.straight_lift.lifts import TABLE, lift
from tests.operations.toy import table

LIFTS = [*some_lifts(33, seed=20261125), *some_rigged_lifts(15, seed=20261128)]
FUNCTIONS = {"sqrt": exact.sqrt, "atan2": exact.atan2_deg, "abs": abs, "sin": exact.sin, "cos": exact.cos}


def calculated(figures: str) -> float:
    """One printed expression, read as arithmetic: what a pencil would do."""
    text = figures.replace("×", "*").replace("−", "-").replace("²", "**2").replace("√", "sqrt")
    rest = re.sub("|".join(FUNCTIONS), "", text)
    assert re.fullmatch(r"[\d.\s+\-*/(),]*", rest), f"no arithmetic: {figures}"
    return float(eval(text, {"__builtins__": {}}, dict(FUNCTIONS)))


def printed_parts(line: Line) -> tuple[str, str]:
    """Figures and result as they stand in the printed text."""
    text = line.text.removesuffix(line.unit).rstrip("\u00a0")
    *_, figures, last = text.split(" = ")
    return figures, last


def all_lines(ev: Evaluation) -> list[Line]:
    return [line for check in ev.checks for line in working(ev, check.name)]


@pytest.mark.parametrize("task", LIFTS, ids=range(len(LIFTS)))
def test_every_line_of_every_check_comes_out_as_printed(task: Task) -> None:
    lines = all_lines(assess(TABLE, task, with_spread=False))
    counted = [line for line in lines if line.figures != line.result]
    assert len(counted) > 20
    for line in counted:
        figures, last = printed_parts(line)
        assert digits(calculated(figures), len(re.sub(r"\D", "", last).lstrip("0")) or 1) == last or abs(
            calculated(figures) - float(last.replace("−", "-"))
        ) <= 1e-6, line.text


@pytest.mark.parametrize("task", LIFTS, ids=range(len(LIFTS)))
def test_the_last_lines_are_demand_and_capacity_as_assessed(task: Task) -> None:
    ev = assess(TABLE, task, with_spread=False)
    for check in ev.checks:
        if not isinstance(check.outcome, Strength | Limit):
            continue
        lines = {line.name.partition(" ")[0]: line for line in working(ev, check.name)}
        for name, value in (("demand", check.outcome.demand), ("capacity", check.outcome.capacity)):
            told = float(lines[name].result.replace("−", "-"))
            assert told == pytest.approx(value, rel=5e-3, abs=5e-6), lines[name].text


def test_a_line_reads_in_words_of_the_entries_with_units() -> None:
    texts = [line.text for line in working(assess(TABLE, lift(), with_spread=False), "hoist_strength")]
    assert "gross mass = mass of the load + rigging mass = 1000 + 0 = 1000\u00a0kg" in texts
    assert "capacity = WLL on the tag or plate of H-1 = 5\u00a0t" in texts


def test_a_row_is_told_by_its_label() -> None:
    texts = " ".join(line.text for line in working(assess(TABLE, lift(), with_spread=False), "sling_strength[left]"))
    assert "leg load [left] = leg share [left] × gross load" in texts
    assert "leg load [right]" not in texts


def test_one_line_is_one_scalar_and_let_gives_an_intermediate_its_own() -> None:
    toy = table("""
@each("leg")
def drop_m(length: float, height: float) -> float:
    s = let("s", length * height)
    return sqrt(s * s + 3.0 * (length - height) / height)
@each("leg")
@check("drop", unit="m")
def drop(drop_m: float) -> Limit:
    return Limit(-drop_m, 2.0)
""")
    task = Task({Key("height"): 0.5}).with_row("leg", "left", {"length": 2.0}).with_row("leg", "right", {"length": 1.0})
    told = [line.text for line in working(assess(toy, task), "drop[left]")]
    assert told == [
        "s [left] = length [left] × height = 2 × 0.5 = 1",
        "drop [left] = √(s² + 3 × (length [left] − height) / height) = √(1² + 3 × (2 − 0.5) / 0.5) = 3.1623\u00a0m",
        "demand [left] = −drop [left] = −3.16228 = −3.1623\u00a0m",
        "capacity [left] = 2\u00a0m",
    ]


def test_traced_arithmetic_is_the_same_to_the_last_bit() -> None:
    for task in LIFTS[:5]:
        ev = assess(TABLE, task, with_spread=False)
        for key, slot in ev.plan.slots.items():
            value = ev.values[slot]
            if isinstance(value, float) and slot not in ev.halted:
                told = Traced.atom(value, str(key))
                assert float(told * told + 2.0 - told / 3.0) == value * value + 2.0 - value / 3.0
                assert float(exact.sqrt(abs(told))) == exact.sqrt(abs(value))


def test_brackets_stand_where_the_order_of_doing_needs_them() -> None:
    a, b = Traced.atom(6.0, "a"), Traced.atom(2.0, "b")
    for told in (a / (b * 3.0), (a + b) * (a - b), a - (b - 1.0), -(a + b), a / b / 2.0, 1.0 - (-a), abs(b - a)):
        assert calculated(told.figures) == float(told)


@pytest.mark.parametrize("value, printed, told", [
    (4.09449, 4.09449, "4.0945"), (4.09449, 4.09443, "4.094"), (1.0, 1.0, "1"), (12345.6, 12345.6, "12346"),
    (-0.5, -0.5, "−0.5"), (1e-17, 0.0, "0"), (0.0, 0.0, "0"),
])
def test_a_result_has_only_the_digits_that_the_figures_give_back(value: float, printed: float, told: str) -> None:
    assert result(value, printed) == told


@pytest.mark.parametrize("value, told", [
    (9.80665, "9.80665"), (-0.25, "(−0.25)"), (100000.0, "100000"), (0.00001234, "0.00001234"), (0.1 + 0.2, "0.3"),
])
def test_a_figure_prints_without_exponent(value: float, told: str) -> None:
    assert figure(value) == told


def test_a_working_told_again_is_the_same_and_nobody_can_alter_it() -> None:
    ev = assess(TABLE, lift())
    first = working(ev, "sling_strength[left]")
    first.clear()
    assert working(ev, "sling_strength[left]") == working(assess(TABLE, lift()), "sling_strength[left]") != []
