"""How a load was slung or lashed when that last went well: kept with the load, offered again, taken only item by item.

The entry stands in the register of the load, one for each operation, build state, pallet and vehicle, because registers
travel to the phones and sealed tasks do not. What it offers is no answer until somebody gives it.
"""
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.ask import Option
from checklist_app.checklists.canonical import NotCanonical, parse
from checklist_app.checklists.closing import COMPLETED
from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.fold import fold
from checklist_app.checklists.made import Made
from checklist_app.checklists.naming import value_words
from checklist_app.checklists.places import Place
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running
from checklist_app.checklists.tags import Tag, tag
from checklist_app.checklists.values import Value, fault
from checklist_app.checklists.words import day, listed
from checklist_app.checklists.world import World

LAST_RIG: Path = ("last_rig",)
AGAIN: Path = ("again",)
ANEW, LASHED_ANEW = "no, rig it anew", "no, lash it anew"
LIFT = "straight_lift"
STANDS_ON = (("pallet",), ("vehicle",))
SCHEMA = "last_rig/1"
KEPT_STAGES, KEPT_STEPS = ("kit",), ("eyes", "legs", "hooks-at", "hitch")
KEPT_TYPES = frozenset({"pick", "choice", "not_used", "number"})


@dataclass(frozen=True)
class LastRig:
    """The last good rig of a load in a build state: its task, its day, and the answers of its kit."""

    task: str
    day: str
    answers: Mapping[Path, Value]


@dataclass(frozen=True)
class Offered:
    """What stood in a slot last time: gear by its tag, that there was none, or a choice."""

    day: str
    words: str
    tag: Tag | None
    value: str
    is_none: bool


def remember(made: Made, now: Running, world: World, closing: str) -> None:
    """Said with the closing of a lift that was completed and never stopped. Where nothing hung there is no rig."""
    state = now.folded.values.get(("build_state",), {}).get("text", "")
    stopped = any(entry.type == "stop" for entry in now.folded.known.values())
    answers = [{"path": list(place.path), "value": plain} for place in now.places()
               if _is_of_the_rig(now, place) and (plain := _plain(now.value(place.path)))]
    if closing != COMPLETED or stopped or now.load is None or not state or not answers:
        return
    facts = {"task": now.id, "day": now.day, "state": state, "answers": answers} | _lashed_on(now)
    about = ("load", now.load.id)
    before = [entry.digest for entry, said in _standing(world, now.load) if _is_like(now, said, state)]
    made.say(about, LAST_RIG, {"type": "rig", "task": now.id, "part": made.document(SCHEMA, facts)}, before)


def last_rig(world: World, now: Running) -> LastRig | None:
    """The last good rig of this load in this build state, another lift's than this one."""
    state = now.folded.values.get(("build_state",), {}).get("text", "")
    if now.load is None or not state:
        return None
    found = [said for _, said in _standing(world, now.load) if _is_like(now, said, state) and said["task"] != now.id]
    if not found:
        return None
    last = max(found, key=lambda said: (str(said["day"]), str(said["task"])))

    return LastRig(str(last["task"]), str(last["day"]),
                   {tuple(row["path"]): dict(row["value"]) for row in last["answers"]})


def again_options(world: World, now: Running) -> tuple[Option, ...]:
    """As last time, or anew; nothing to choose where there was no last time."""
    last = last_rig(world, now)
    if last is None:
        return ()
    if now.needed_groups:
        return (Option(last.task, f"Yes, as on {day(last.day)}", f"{lashed_words(now, last)}."),
                Option(LASHED_ANEW, "No, lash it anew"))
    rig = last.answers.get(("rig",), {}).get("text", "")
    slings = dict.fromkeys(value_words(value, world) for path, value in last.answers.items() if path[-1] == "sling")
    said = ". ".join(filter(None, (rig.capitalize(), f"Slings {listed(slings)}" if slings else "")))

    return (Option(last.task, f"Yes, as on {day(last.day)}", f"{said}." if said else ""),
            Option(ANEW, "No, rig it anew"))


def lashed_words(now: Running, last: LastRig) -> str:
    """How many of each there were: "4 lashings, 1 block"."""
    counted = {group: len(rows_of_last(last, group)) for group in now.procedure.adds if group in now.needed_groups}
    return ", ".join(f"{number} {now.procedure.one_of(group)}{'s' if number != 1 else ''}"
                     for group, number in counted.items() if number)


def rows_of_last(last: LastRig, group: str) -> tuple[str, ...]:
    """The rows of a group that stood last time."""
    return tuple(sorted({path[1] for path in last.answers if path[0] == group and len(path) == 3}))


def said_again(world: World, now: Running) -> LastRig | None:
    """The last good one, once somebody said that it is done as then."""
    last = last_rig(world, now)
    return last if last is not None and now.folded.values.get(AGAIN, {}).get("text") == last.task else None


def as_last_time(world: World, now: Running, place: Place) -> tuple[LastRig, Value] | None:
    """What stood here last time, for somebody who said that he rigs it as then, while he has not answered here."""
    if place.path in now.folded.values or AGAIN not in now.folded.values:
        return None
    last = said_again(world, now)
    if last is None or place.path not in last.answers:
        return None
    return last, last.answers[place.path]


def offered(world: World, now: Running, place: Place) -> Offered | None:
    """The same as a slot of the kit shows it."""
    if (found := as_last_time(world, now, place)) is None:
        return None
    last, value = found
    item = _item(world, value) if value["type"] == "pick" and "point" not in value else None
    words = place.prompt.none_words or "none" if value["type"] == "not_used" else value_words(value, world)
    text = "@".join(filter(None, (str(value.get("subject", "")), str(value.get("point", ""))))) or value.get("text", "")

    return Offered(day(last.day), words, tag(item) if item is not None else None, text, value["type"] == "not_used")


def _is_of_the_rig(now: Running, place: Place) -> bool:
    if now.needed_groups:
        return place.step.group in now.needed_groups
    return place.stage.name in KEPT_STAGES or place.step.name in KEPT_STEPS


def _lashed_on(now: Running) -> dict[str, str]:
    """Of a lashing: the operation, and the very pallet and vehicle that it stood on. A lift says neither."""
    if not now.needed_groups:
        return {}
    stood = (now.items[path].subject if path in now.items else "" for path in STANDS_ON)
    return {"operation": now.procedure.operation, "on": " ".join(stood)}


def _is_like(now: Running, said: Mapping[str, Any], state: str) -> bool:
    wanted = {"operation": LIFT, "on": ""} | _lashed_on(now)
    return said.get("state") == state and all(said.get(name, {"operation": LIFT}.get(name, "")) == text
                                              for name, text in wanted.items())


def _plain(value: Value | None) -> Value | None:
    """The answer without the words beside it, which are parts of the task."""
    if value is None or value["type"] not in KEPT_TYPES:
        return None
    return {name: text for name, text in value.items() if name != "part"}


def _standing(world: World, load: Item) -> list[tuple[Entry, Mapping[str, Any]]]:
    """The rigs that stand in a load's register and can be read."""
    entries = [entry for entry in world.entries(("load", load.id)) if entry.path == LAST_RIG and entry.type == "rig"]
    heads = fold(entries).heads.get(LAST_RIG, ())
    return [(entry, said) for entry in heads if (said := _said(world, entry)) is not None]


def _said(world: World, entry: Entry) -> Mapping[str, Any] | None:
    try:
        part = world.part(entry.value["part"])
        said = parse(part) if part is not None else None
    except NotCanonical:
        return None
    facts = said.get("facts") if isinstance(said, dict) and said.get("schema") == SCHEMA else None
    return facts if isinstance(facts, dict) and _is_sound(facts) else None


def _is_sound(facts: Mapping[str, Any]) -> bool:
    """Whether it was written as `remember` writes it: what a device brought is looked at before it is believed."""
    texts = all(isinstance(facts.get(name), str) for name in ("task", "day", "state"))
    rows = facts.get("answers")
    return texts and isinstance(rows, list) and all(_is_row(row) for row in rows)


def _is_row(row: Any) -> bool:
    if not isinstance(row, dict) or not isinstance(row.get("path"), list) or not isinstance(row.get("value"), dict):
        return False
    words = bool(row["path"]) and all(isinstance(name, str) for name in row["path"])
    return words and row["value"].get("type") in KEPT_TYPES and not fault(row["value"])


def _item(world: World, value: Value) -> Item | None:
    register, _, name = str(value["subject"]).partition("/")
    return world.item(register, name)
