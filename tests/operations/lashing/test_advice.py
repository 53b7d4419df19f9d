"""What would make it pass: each kind of change turns a load that slides into one that holds, and none is promised."""

import pytest

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.operations.check import Verdict, overall
from checklist_app.operations.evaluate import assess
from checklist_app.operations.gear import make
from checklist_app.operations.lashing.advice import HOLDS, advice, counted
from checklist_app.operations.lashing.candidates import blocked, mats, more, moved
from checklist_app.operations.lashing.change import Effort, Store, applied, plain
from checklist_app.operations.lashing.choices import Blocks, FarEnd, Lies
from checklist_app.operations.lashing.lay_flat import stands_below_m
from checklist_app.operations.table import Table
from checklist_app.operations.task import Key, Task
from tests.operations.lashing.lashed_tasks import (
    PALLET,
    VEHICLE,
    at,
    block,
    diagonal,
    four,
    on_pallet,
    on_vehicle,
    strap,
    tie_down,
)

STRAPS = tuple(strap(f"L-{number}") for number in range(10, 20))
FULL = Store(STRAPS, (make("mat", "M-1", {"thickness_mm": 8.0}),))
WEAK = {"lashing_item": strap(lc_dan=500.0, stf_dan=200.0)}
FAILING: dict[str, tuple[Table, Task]] = {
    "one tie-down": (PALLET, on_pallet((tie_down(),))),
    "two tie-downs": (PALLET, on_pallet((tie_down(-0.3), tie_down(0.3)))),
    "tie-downs on a lorry": (VEHICLE, on_vehicle((tie_down(-0.3, Body.DECK), tie_down(0.3, Body.DECK)))),
    "oil under tie-downs": (PALLET, on_pallet((tie_down(-0.3), tie_down(0.3)), load_surface=Surface.OILY)),
    "oil under six": (PALLET, on_pallet(tuple(map(tie_down, (-0.4, -0.25, -0.1, 0.1, 0.25, 0.4))),
                                        load_surface=Surface.OILY)),
    "two at one end": (PALLET, on_pallet(four()[:2], load_surface=Surface.OILY)),
    "weak and top-heavy": (PALLET, on_pallet(four(**WEAK), cg_z_m=1.1)),
}


@pytest.mark.parametrize("name", FAILING)
def test_what_is_said_to_hold_holds_when_it_is_done(name: str) -> None:
    table, task = FAILING[name]
    found = advice(assess(table, task), FULL)

    assert not found.holds and found.tried and all(each.holds for each in found.tried)
    for each in found.tried:
        again = overall(counted(assess(table, applied(task, each.change))))
        assert again is each.verdict and again in HOLDS
    order = list(Effort)
    assert [order.index(each.change.effort) for each in found.tried] == sorted(
        order.index(each.change.effort) for each in found.tried)


@pytest.mark.parametrize(("name", "effort"), [
    ("two tie-downs", Effort.MAT), ("two tie-downs", Effort.MORE), ("two tie-downs", Effort.BLOCK),
    ("two at one end", Effort.MORE),
    ("weak and top-heavy", Effort.MOVE), ("oil under six", Effort.CLEAN), ("tie-downs on a lorry", Effort.MAT),
])
def test_each_kind_of_change_is_found_where_it_helps(name: str, effort: Effort) -> None:
    table, task = FAILING[name]

    assert effort in {each.change.effort for each in advice(assess(table, task), FULL).tried}


def test_as_few_more_as_do() -> None:
    """One fewer does not hold."""
    table, task = FAILING["one tie-down"]
    change = next(each.change for each in advice(assess(table, task), FULL).tried
                  if each.change.effort is Effort.MORE)
    fewer = type(change)(change.effort, change.words, rows=change.rows[:-1])

    assert len(change.rows) > 1
    assert overall(counted(assess(table, applied(task, fewer)))) is Verdict.OVER


def test_what_the_store_has_not_is_not_offered() -> None:
    table, task = FAILING["two tie-downs"]
    found = advice(assess(table, task), Store())

    assert {each.change.effort for each in found.tried} == {Effort.BLOCK}


def test_a_weaker_strap_or_one_without_stf_is_not_like_it() -> None:
    table, task = FAILING["two tie-downs"]
    found = advice(assess(table, task), Store((strap("L-20", lc_dan=1000.0), strap("L-21", stf_dan=None))))

    assert Effort.MORE not in {each.change.effort for each in found.tried}


def test_a_mat_is_never_laid_on_oil() -> None:
    table, task = FAILING["oil under tie-downs"]
    changes = [each.change for each in advice(assess(table, task), FULL).tried]

    assert all(Pair.MAT not in each.answers.values() for each in changes)


def places(task: Task) -> list[tuple[float, ...]]:
    """Of each row where its ends are, in whole centimetres; a strap over the middle is the same from either side."""
    found = []
    for row in task.rows["lashing"]:
        x, y, z, ax, ay, az = (
            plain(task.answers[Key(f"{name}_{axis}_m", row)]) for name in ("at", "anchor") for axis in "xyz")
        over = task.answers[Key("put_on", row)] is Kind.TIE_DOWN
        ends = (x, abs(y), z, ax, abs(ay), az) if over else (x, y, z, ax, ay, az)
        found.append(tuple(round(100.0 * each) for each in ends))
    return found


LEVEL = {**at("at", -0.5, 0.0, 0.1), **at("anchor", -0.7, 0.0, 0.0)}
OVER = {"far_end": FarEnd.GIVEN, **at("far_at", 0.0, -0.35, 1.2), **at("far_anchor", 0.0, -0.35, 0.0)}


@pytest.mark.parametrize("task", [
    pytest.param(on_pallet((diagonal(put_on=Kind.SLOPE, **LEVEL, **WEAK),), mass_kg=2000.0, cg_z_m=0.3), id="slope"),
    pytest.param(on_pallet((tie_down(**OVER),)), id="both ends measured"),
])
def test_no_two_lashings_are_offered_at_one_place(task: Task) -> None:
    """In the middle of the load, and over it, the mirror image is the lashing itself."""
    for change in more(task, FULL):
        found = places(applied(task, change))
        assert len(set(found)) == len(found)


def test_a_lashing_of_the_pallet_is_not_moved_up_the_load() -> None:
    task = on_vehicle(four(Body.DECK, **WEAK) + four(Body.DECK, from_body=Body.PALLET, at_z_m=-0.05), cg_z_m=1.1)
    heights = [row for change in moved(task) for _, row in change.answers]
    assert set(heights) == {"1", "2", "3", "4"}


def test_a_mat_is_not_offered_where_friction_was_measured_without_it() -> None:
    assert list(mats(on_pallet(load_friction=0.2), FULL)) == []
    assert len(list(mats(on_pallet(), FULL))) == 1


def test_a_second_chock_stands_beside_the_first() -> None:
    task = on_pallet(blocks=(block(Blocks.FORWARD),))
    (row,) = next(blocked(task, {Direction.FORWARD: (500.0, False)})).rows
    assert (row.answers["block_x_m"], row.answers["block_y_m"]) == pytest.approx((0.5, 0.175))


def test_a_chock_on_the_deck_stands_at_the_edge_of_the_pallet_as_it_lies() -> None:
    for lies, ahead_m in ((Lies.LENGTHWAYS, 0.7), (Lies.CROSSWISE, 0.5)):
        task = on_vehicle(pallet_lies=lies)
        (row,) = next(blocked(task, {Direction.FORWARD: (500.0, True)})).rows
        assert row.answers["block_x_m"] == pytest.approx(ahead_m)


def test_what_holds_needs_nothing_and_what_waits_is_not_guessed() -> None:
    holds = advice(assess(PALLET, on_pallet()), FULL)
    waits = advice(assess(PALLET, on_pallet(mass_kg=None)), FULL)

    assert holds.holds and not holds.tried
    assert waits.waits and not waits.tried


def test_where_nothing_is_enough_the_best_is_told_as_not_enough() -> None:
    """A load of no friction under one strap, nothing in store; a chock at the foot does not keep it from tipping."""
    task = on_pallet((tie_down(),), load_surface=Surface.OILY, cg_z_m=2.2, height_m=2.4)
    found = advice(assess(PALLET, task), Store())

    assert len(found.tried) == 1 and not found.tried[0].holds


def test_laid_flat_it_would_stand_below_so_much() -> None:
    """b > c d / cz, EN 12195-1 on the road: half of 0.7 m against 0.6 sideways, half of 1.0 m against 0.8 forwards."""
    evaluation = assess(PALLET, on_pallet(cg_z_m=0.7), with_spread=False)

    assert stands_below_m(evaluation) == pytest.approx(min(0.35 / 0.6, 0.5 / 0.8))
    assert stands_below_m(assess(PALLET, on_pallet(cg_z_m=0.5), with_spread=False)) is None
    assert stands_below_m(assess(PALLET, on_pallet().without(Key("cg_y_m")), with_spread=False)) is None
