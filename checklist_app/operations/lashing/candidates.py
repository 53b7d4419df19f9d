"""Changes that may make a lashed load hold, kind by kind, the smallest of each kind first. None is believed untried."""

from collections.abc import Iterator, Sequence
from typing import Any

from checklist_app.mechanics.lashing.crossing import Body
from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.friction import Pair, Surface
from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.operations.gear import Gear, Lashing, Pallet
from checklist_app.operations.lashing.change import Change, Effort, Row, Store, plain
from checklist_app.operations.lashing.choices import BlockedBy, Blocks, FarEnd, Lies
from checklist_app.operations.lashing.on_pallet import pallet_across_m, pallet_along_m
from checklist_app.operations.task import Key, Task

FACES = {"load": "under the load", "deck": "on the deck"}
CLEAN = (Surface.CLEAN_DRY, Surface.CLEAN_WET)
DIRECT = (Kind.DIAGONAL, Kind.SLOPE)
STEP_M, APART_M, INSIDE_M = 0.2, 0.2, 0.05
MOST_STEPS, MOST_MORE = 4, 8
BLOCK_APART_M = 0.1
CHOCK_HEIGHT_M, ROUND_DAN = 0.05, 50.0
SIDES = {
    Direction.FORWARD: (Blocks.FORWARD, 1.0, 0.0), Direction.REAR: (Blocks.REAR, -1.0, 0.0),
    Direction.LEFT: (Blocks.LEFT, 0.0, 1.0), Direction.RIGHT: (Blocks.RIGHT, 0.0, -1.0),
}
LOOK_AGAIN = "Wipe, look again, then answer. What drips comes back."


def cleaner(task: Task) -> Iterator[Change]:
    """Faces wiped until they are clean and dry."""
    for face, where in FACES.items():
        key = Key(f"{face}_surface")
        known = isinstance(task.answers.get(Key(f"{face}_pair")), Pair)
        if known and isinstance(task.answers.get(key), Surface) and task.answers[key] not in CLEAN:
            yield Change(Effort.CLEAN, f"Wipe the faces {where} until they are clean and dry",
                         {key: Surface.CLEAN_DRY}, then=LOOK_AGAIN)


def mats(task: Task, store: Store) -> Iterator[Change]:
    """A mat between clean faces; where friction was measured it counts, and nobody has measured it on the mat."""
    for face, where in FACES.items():
        pair = Key(f"{face}_pair")
        if plain(task.answers.get(Key(f"{face}_friction"))) is not None:
            continue
        if not store.mats or task.answers.get(Key(f"{face}_surface")) not in CLEAN or pair not in task.answers:
            continue
        if task.answers[pair] is not Pair.MAT:
            yield Change(Effort.MAT, f"Lay a mat {where}: {store.mats[0].id}", {pair: Pair.MAT},
                         then="Clean on both sides, under every foot.")


def moved(task: Task) -> Iterator[Change]:
    """Direct lashings higher or lower on the load, all of them alike; those of its pallet stay where they are."""
    rows = [row for row in task.rows.get("lashing", ()) if task.answers.get(Key("put_on", row)) in DIRECT
            and task.answers.get(Key("from_body", row)) is Body.LOAD
            and plain(task.answers.get(Key("at_z_m", row))) is not None]
    top_m = plain(task.answers.get(Key("height_m")))
    if not rows or top_m is None:
        return
    for step in range(1, MOST_STEPS + 1):
        for way, words in ((1.0, "higher"), (-1.0, "lower")):
            heights = [plain(task.answers[Key("at_z_m", row)]) + way * step * STEP_M for row in rows]
            if all(INSIDE_M <= height <= top_m for height in heights):
                yield Change(
                    Effort.MOVE, f"Fasten the direct lashings {step * STEP_M:.1f} m {words} on the load",
                    {Key("at_z_m", row): round(height, 3) for row, height in zip(rows, heights, strict=True)},
                    then="Only to an eye or lug of the engine that carries it: enter what it carries.")


def more(task: Task, store: Store) -> Iterator[Change]:
    """One more of a kind, then two, up to what the store has: tie-downs singly, direct lashings in pairs."""
    for kind in (Kind.TIE_DOWN, Kind.DIAGONAL, Kind.SLOPE):
        models = [row for row in task.rows.get("lashing", ()) if task.answers.get(Key("put_on", row)) is kind]
        model = next(iter(models), None)
        items = alike(task, model, store) if model is not None else ()
        if model is None or not items:
            continue
        places = _places(task, models)
        pair = _has_image(task, model)
        for number in range(1, 1 + min(MOST_MORE, len(items) // (1 + pair), len(places))):
            shifts = places[:number]
            rows = [row for shift in shifts for row in _at(task, model, shift, pair)]
            named = ", ".join(item.id for item in items[:len(rows)])
            yield Change(
                Effort.MORE, f"{_many(len(rows))} like {_name(model)}, {kind.value}: {named}",
                rows=tuple(Row("lashing", model, answers, item)
                           for answers, item in zip(rows, items, strict=False)),
                then="Each to a ring of its own; its place is on the drawing.")


def images(task: Task, store: Store) -> Iterator[Change]:
    """The mirror images that direct lashings lack: on the other side, at the other end, or both."""
    rows = [row for row in task.rows.get("lashing", ()) if task.answers.get(Key("put_on", row)) in DIRECT]
    there = {_point(task, row) for row in rows}
    lacking: list[tuple[str, float, float]] = []
    for row in rows:
        x, y = _point(task, row)
        for across in ((1.0, -1.0), (-1.0, 1.0), (-1.0, -1.0)):
            image = round(across[0] * x, 2), round(across[1] * y, 2)
            if image not in there:
                there.add(image)
                lacking.append((row, *across))
    items = alike(task, lacking[0][0], store) if lacking else ()
    if lacking and len(items) >= len(lacking):
        named = ", ".join(item.id for item in items[:len(lacking)])
        yield Change(
            Effort.MORE, f"{_many(len(lacking))}, so that each has its mirror image: {named}",
            rows=tuple(Row("lashing", row, _turned(task, row, x, y), item)
                       for (row, x, y), item in zip(lacking, items, strict=False)),
            then="Each to a ring of its own; its place is on the drawing.")


def blocked(task: Task, lacking: dict[Direction, tuple[float, bool]]) -> Iterator[Change]:
    """A chock or timber at the foot, each way that lacks something; `lacking`: daN, and whether on the deck."""
    length_m, width_m = (plain(task.answers.get(Key(name))) for name in ("base_length_m", "base_width_m"))
    if not lacking or length_m is None or width_m is None:
        return
    pallet = task.answers.get(Key("pallet"))
    for factor in (1.0, 1.25, 1.6, 2.0, 3.0):
        rows, words = [], []
        for direction, (dan, on_deck) in lacking.items():
            blocks, x, y = SIDES[direction]
            holds = -(-dan * factor // ROUND_DAN) * ROUND_DAN
            over = (length_m, width_m)
            if on_deck and isinstance(pallet, Pallet):
                lies = task.answers.get(Key("pallet_lies"), Lies.EITHER)
                along_m = pallet_along_m(pallet, length_m, width_m, lies)
                over = (along_m, pallet_across_m(pallet, along_m))
            place = _free_place(task, blocks, x * over[0] / 2.0, y * over[1] / 2.0, over)
            if place is None:
                return
            rows.append(Row("block", answers={
                "blocked_by": BlockedBy.CHOCK, "blocks": blocks,
                "block_on": Body.DECK if on_deck or not isinstance(pallet, Pallet) else Body.PALLET,
                "block_dan": holds, "block_x_m": place[0], "block_y_m": place[1],
                "block_z_m": CHOCK_HEIGHT_M,
            }))
            words.append(f"{direction.value} {holds:.0f} daN")
        yield Change(Effort.BLOCK, f"A chock or timber tight at the foot that holds {'; '.join(words)}",
                     rows=tuple(rows), then="Nailed, screwed or bolted: what it holds is worked out, not guessed.")


def _free_place(
    task: Task, blocks: Blocks, x_m: float, y_m: float, over: tuple[float, float]
) -> tuple[float, float] | None:
    """The middle of that edge, else beside it, where no block of that way stands yet; None where there is no room."""
    there = [
        (plain(task.answers.get(Key("block_x_m", row))), plain(task.answers.get(Key("block_y_m", row))))
        for row in task.rows.get("block", ()) if task.answers.get(Key("blocks", row)) is blocks
    ]
    for share in (0.0, 0.25, -0.25, 0.4, -0.4):
        place = (x_m, y_m + share * over[1]) if y_m == 0.0 else (x_m + share * over[0], y_m)
        if all(abs(place[0] - (x or 0.0)) > BLOCK_APART_M or abs(place[1] - (y or 0.0)) > BLOCK_APART_M
               for x, y in there):
            return place
    return None


def alike(task: Task, row: str | None, store: Store) -> tuple[Lashing, ...]:
    """Lashings of the store whose label gives at least what that row's lashing has."""
    model = task.answers.get(Key("lashing_item", row))
    if not isinstance(model, Lashing):
        return ()
    used = {item.id for item in task.answers.values() if isinstance(item, Gear)}

    return tuple(each for each in store.lashings if each.id not in used and each.kind == model.kind and all(
        each.facts.get(fact, 0.0) >= value for fact, value in model.facts.items()
        if fact in ("lc_dan", "wll_kg", "stf_dan", "breaking_kn")))


def _places(task: Task, models: Sequence[str]) -> list[float]:
    """How far along to shift the first of them, nearest first: inside the base, apart from those that are there."""
    half_m = (plain(task.answers.get(Key("base_length_m"))) or 0.0) / 2.0 - INSIDE_M
    there = [plain(task.answers.get(Key("at_x_m", row))) or 0.0 for row in models]
    free: list[float] = []
    for step in range(1, 2 + int(2.0 * half_m / APART_M)):
        for shift in (step * APART_M, -step * APART_M):
            place = there[0] + shift
            if -half_m <= place <= half_m and all(abs(place - other) > APART_M / 2.0 for other in there):
                free.append(shift)
    return free


def _has_image(task: Task, model: str) -> bool:
    """Whether its mirror image on the other side lies elsewhere; of a strap over the middle it is the strap itself."""
    names = ["at", "anchor"]
    if task.answers.get(Key("put_on", model)) not in DIRECT:
        if task.answers.get(Key("far_end", model)) is FarEnd.MIRRORED:
            return False
        names += ["far_at", "far_anchor"]
    points = {tuple(round(plain(task.answers.get(Key(f"{name}_{axis}_m", model))) or 0.0, 2) for axis in "xyz")
              for name in names}

    return {(x, -y, z) for x, y, z in points} != points


def _at(task: Task, model: str, shift: float, pair: bool) -> list[dict[str, Any]]:
    found: list[dict[str, Any]] = []
    sides = (1.0, -1.0) if pair else (1.0,)
    for side in sides:
        answers: dict[str, Any] = {}
        for name in ("at_x_m", "anchor_x_m", "far_at_x_m", "far_anchor_x_m"):
            at = plain(task.answers.get(Key(name, model)))
            answers |= {name: round(at + shift, 3)} if at is not None else {}
        for name in ("at_y_m", "anchor_y_m", "far_at_y_m", "far_anchor_y_m"):
            at = plain(task.answers.get(Key(name, model)))
            answers |= {name: side * at} if at is not None else {}
        found.append(answers)
    return found


def _point(task: Task, row: str) -> tuple[float, float]:
    x, y = (plain(task.answers.get(Key(name, row))) or 0.0 for name in ("at_x_m", "at_y_m"))
    return round(x, 2), round(y, 2)


def _turned(task: Task, row: str, x: float, y: float) -> dict[str, Any]:
    answers: dict[str, Any] = {}
    for name in ("at", "anchor", "far_at", "far_anchor"):
        for axis, sign in (("x", x), ("y", y)):
            value = plain(task.answers.get(Key(f"{name}_{axis}_m", row)))
            answers |= {f"{name}_{axis}_m": sign * value} if value is not None else {}
    return answers


def _many(number: int) -> str:
    return "One more" if number == 1 else f"{number} more"


def _name(label: str) -> str:
    return f"lashing {label.replace('_', ' ')}"
