"""A lashing task typed into an assessment: one lashing in full, and how many like it, at which corners."""
from collections.abc import Iterator, Mapping

from checklist_app.checklists import typed_blocks, values
from checklist_app.checklists.adding import Mirror
from checklist_app.checklists.conditions import condition
from checklist_app.checklists.made import Made
from checklist_app.checklists.procedure import newest
from checklist_app.checklists.rows import negated
from checklist_app.checklists.typed_answers import Assessed, add_gear, typed_choice, typed_number
from checklist_app.checklists.typed_gear import TypedSlot, add_typed
from checklist_app.checklists.usual_case import Tick
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.fields import Fault
from checklist_app.operations.graph import Day, Entry
from checklist_app.operations.obtained import CG_HOW, LENGTH_HOW
from checklist_app.operations.task import Key, Task

VEHICLE, PALLET = "vehicle_lashing", "pallet_lashing"
GROUP, FIRST = "lashing", "1-1"
ONE = f"{GROUP}/{FIRST}/"
ALIKE, EACH = "alike", "each"
ALONE, PAIR, CORNERS = "this one only", "this one and its mirror image", "at all four corners"
SETS = (ALONE, PAIR, CORNERS)
MOST_EACH = 4
ALL_LENGTHS, ALL_CG = "lengths.how", "cg.how"
ITEM = TypedSlot((GROUP, FIRST, "lashing_item"), "Lashing", ("web_lashing", "chain_lashing", "rope_lashing"),
                 ("lc_dan", "stf_dan"))
ON = TypedSlot(("pallet",), "Pallet or skid", ("pallet",),
               ("form", "length_m", "width_m", "height_m", "mass_kg", "rated_kg", "rated_for"),
               none_words="No pallet under it")
LORRY = TypedSlot(("vehicle",), "Vehicle", ("vehicle",),
                  ("form", "deck_length_m", "deck_width_m", "gross_t", "payload_kg", "anchor_dan", "floor_kg_m",
                   "front_axle_m", "wheelbase_m", "front_axle_kg", "rear_axle_kg"))
HARD = Tick("usual.hard", "It stands hard to the edge", {"edge_gives_m.not_used": "yes"})
LIES_OVER = Tick("usual.over", "It only lies over or round the load", {f"{ONE}held_dan.not_used": "yes"})
ALONE_ON_IT = Tick("usual.alone", "It travels alone", {"other_kg.not_used": "yes"})
SOLID = Tick("usual.solid", "Solid ground, and no truck lifts it", {
    "floor_kg_m.not_used": "yes", "forks_apart_m.not_used": "yes"})
TICKS = (HARD, LIES_OVER, ALONE_ON_IT, SOLID)


def slots(operation: str) -> tuple[TypedSlot, ...]:
    """The gear that is typed beside the lashing."""
    return (ON, LORRY) if operation == VEHICLE else (ON,)


def completed(typed: Mapping[str, str], operation: str) -> dict[str, str]:
    """What was typed with what its ticks stand for, and how the numbers are known; an own answer goes first."""
    answered = {name.partition(".")[0] for name, text in typed.items() if text.strip()}
    found = dict(typed)
    for tick in TICKS:
        if typed.get(tick.name, "").strip():
            found.update({name: text for name, text in tick.answers.items() if name.partition(".")[0] not in answered})
    for entry in own_entries(operation):
        if entry.kind is float and found.get(entry.name, "").strip() and (how := _how(entry, found)):
            found[f"{entry.name}.how"] = how
    return found


def assessed(typed: Mapping[str, str], operation: str, day: str) -> Assessed:
    """Read a form. Every lashing is read, so that what is wrong with the first is said at its field once."""
    filled = completed(typed, operation)
    answers: dict[Key, object] = {Key("day"): Day(day)}
    faults: dict[str, str] = {}
    for entry in own_entries(operation):
        _read(answers, faults, entry, entry.name, Key(entry.name), filled)
    for slot in slots(operation):
        add_gear(answers, faults, slot, filled)
    labels = []
    for number, row in enumerate(lashings(filled, operation), 1):
        labels.append(str(number))
        for entry in row_entries(operation):
            _read(answers, faults, entry, f"{ONE}{entry.name}", Key(entry.name, str(number)), row)
        one: dict[Key, object] = {}
        add_gear(one, faults, ITEM, row)
        answers.update({Key("lashing_item", str(number)): gear for gear in one.values()})
    blocks = tuple(str(number) for number in typed_blocks.begun(filled))
    for label in blocks:
        own = typed_blocks.prefix(int(label))
        for entry in typed_blocks.block_entries(operation):
            _read(answers, faults, entry, f"{own}{entry.name}", Key(entry.name, label), filled)
    shown = {name: words for name, words in faults.items() if typed.get(name, "").strip()}
    return Assessed(Task(answers, {GROUP: tuple(labels), typed_blocks.GROUP: blocks}), shown)


def lashings(typed: Mapping[str, str], operation: str) -> list[dict[str, str]]:
    """The fields of each lashing, named as those of the first; none while nothing of it was typed."""
    first = {name: text for name, text in typed.items() if name.startswith(ONE)}
    if not any(text.strip() for text in first.values()):
        return []
    mirrors = newest(operation).adds[GROUP].mirrors
    images = [mirror for mirror in mirrors if not _is_its_own(first, mirror)]
    wanted = typed.get(ALIKE, "") or ALONE
    found = [first]
    for mirror in images[:{PAIR: 1, CORNERS: 2}.get(wanted, 0)]:
        found += [_image(row, mirror) for row in found]
    return found * times(typed)


def lashing_entries(made: Made, task: str, typed: Mapping[str, str], operation: str, day: str) -> dict[str, str]:
    """Rows and gear of what was typed become entries; the answers left to be given, by the fields of the task.

    What rings and eyes of the others carry was taken to be alike; in the task each is looked at.
    """
    found = completed(typed, operation)
    for slot in slots(operation):
        add_typed(made, task, slot, slot.path, found, day)
    answers = {name: text for name, text in found.items() if not name.startswith((ONE, f"{typed_blocks.GROUP}/"))}
    confirm = newest(operation).adds[GROUP].confirm
    for number, row in enumerate(lashings(found, operation), 1):
        path = (GROUP, f"{number:02d}-{number}")
        if number > 1:
            row = {name: text for name, text in row.items() if name.removeprefix(ONE).partition(".")[0] not in confirm}
        made.say(("task", task), path, values.row("present"))
        add_typed(made, task, ITEM, (*path, "lashing_item"), row, day)
        answers |= {f"{GROUP}/{path[1]}/{name.removeprefix(ONE)}": text for name, text in row.items()}
    for number in typed_blocks.begun(found):
        path, own = (typed_blocks.GROUP, f"{number:02d}-{number}"), typed_blocks.prefix(number)
        made.say(("task", task), path, values.row("present"))
        answers |= {f"{'/'.join(path)}/{name.removeprefix(own)}": text for name, text in found.items()
                    if name.startswith(own)}
    return answers


def times(typed: Mapping[str, str]) -> int:
    """How many lashings lie side by side at each of the places."""
    text = typed.get(EACH, "")
    return int(text) if text in {str(number) for number in range(1, MOST_EACH + 1)} else 1


def own_entries(operation: str) -> Iterator[Entry]:
    """What is asked of the task itself, gear and day left out."""
    table = OPERATIONS[operation].table
    return (entry for entry in table.entries.values() if table.home[entry.name] is None
            and (entry.kind is float or _is_choice(entry)))


def row_entries(operation: str) -> Iterator[Entry]:
    """What is asked of one lashing, its item left out."""
    table = OPERATIONS[operation].table
    return (entry for entry in table.entries.values() if table.home[entry.name] == GROUP
            and (entry.kind is float or _is_choice(entry)))


def _is_choice(entry: Entry) -> bool:
    return hasattr(entry.kind, "__members__")


def _read(answers: dict[Key, object], faults: dict[str, str], entry: Entry, name: str, key: Key,
          typed: Mapping[str, str]) -> None:
    answer = typed_choice(entry, typed.get(name, "")) if _is_choice(entry) else typed_number(entry, name, typed)
    if isinstance(answer, Fault):
        faults[name] = answer.words
    elif answer is not None:
        answers[key] = answer


def _how(entry: Entry, typed: Mapping[str, str]) -> str:
    every = ALL_CG if entry.obtained == CG_HOW else ALL_LENGTHS if entry.obtained == LENGTH_HOW else ""
    said = typed.get(f"{entry.name}.how", "") or typed.get(every, "")
    return said if said in {way.name for way in entry.obtained} else ""


def _is_its_own(row: Mapping[str, str], mirror: Mirror) -> bool:
    return bool(mirror.not_for) and all(each.holds(row.get(f"{ONE}{each.name}", ""))
                                        for each in map(condition, mirror.not_for))


def _image(row: Mapping[str, str], mirror: Mirror) -> dict[str, str]:
    turns = {f"{ONE}{name}" for name in mirror.turns}
    return {name: negated(text) if name in turns and text.strip() else text for name, text in row.items()}
