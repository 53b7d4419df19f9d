"""From a place in the procedure and what stands there to a question that a template can show."""
from collections.abc import Iterable, Mapping
from dataclasses import replace
from enum import Enum
from typing import Any

from checklist_app.checklists.ask import Ask, Option, State
from checklist_app.checklists.fitting import fitting, misfit
from checklist_app.checklists.fold import seen
from checklist_app.checklists.measured_anew import offered, register_says
from checklist_app.checklists.naming import value_words
from checklist_app.checklists.places import Place, with_row
from checklist_app.checklists.procedure import Prompt, PromptKind
from checklist_app.checklists.prompts import Asked
from checklist_app.checklists.running import Running
from checklist_app.checklists.slots import KIT, is_slot
from checklist_app.checklists.telling import told
from checklist_app.checklists.usual import allowed_words, step_of, usual_values
from checklist_app.checklists.values import Value, words
from checklist_app.checklists.words import sentence
from checklist_app.checklists.world import World
from checklist_app.operations.graph import Day, Entry, NotUsed
from checklist_app.operations.task import Key

TYPE_OF = {PromptKind.TICK: "tick", PromptKind.CHOICE: "choice", PromptKind.TEXT: "text", PromptKind.PHOTO: "photo",
           PromptKind.PICK: "pick", PromptKind.NUMBER: "number"}
REASONED = ("dont_know", "not_used")


def asks(world: World, now: Running, places: Iterable[Place], options: Mapping[str, tuple[Option, ...]] | None = None,
         ) -> tuple[Ask, ...]:
    """The questions of a step that are asked. A choice between things that are not there is none."""
    every = options or {}
    shown = (place for place in places if now.is_asked(place) and every.get(place.prompt.name, True))
    return focus_first(tuple(ask(world, now, place, every.get(place.prompt.name, ())) for place in shown))


def focus_first(questions: tuple[Ask, ...]) -> tuple[Ask, ...]:
    """The first question with a fault gets the focus."""
    first = next((number for number, each in enumerate(questions) if each.fault), None)
    return tuple(replace(each, first_fault=number == first) for number, each in enumerate(questions))


def ask(world: World, now: Running, place: Place, options: tuple[Option, ...] = ()) -> Ask:
    """One question with what stands there."""
    from checklist_app.checklists.pages.settle import address

    entry = _entry(now, place)
    value = now.value(place.path)
    filled = now.read.sources.get(_key(now, place))
    disputed = place.path in now.folded.disputed
    text = _typed(world, value) if value else ""
    if is_slot(now, place) and place.stage.name != KIT:
        return _slot_ask(world, now, place, disputed)

    return Ask(
        name=place.name, kind=kind_of(place, entry), words=question(place, entry),
        data=asked(now, place).data(seen(now.folded, place.path)), entry=str(_key(now, place)) if entry else "",
        why=" ".join(filter(None, (told(now, place.prompt) or place.prompt.why,
                                   register_says(now, place.prompt.name), _recalled(world, now, place.prompt)))),
        unit=unit_of(place, entry), text=text, state=_state(now, place, entry, disputed),
        shown=_shown(world, value, filled, entry, options, place.prompt),
        fault=now.faults.get(place.path, "") or now.out_of_date(place) or misfit(now, entry),
        usual=_usual(now, place, entry),
        allowed=_allowed(now, place, entry), step=step_of(unit_of(place, entry)),
        options=options or _options(now, place, entry), ways=_ways(entry), how=(value or {}).get("how", ""),
        plus_minus=(value or {}).get("plus_minus", ""), may_not_know=_may_not_know(now, entry),
        none_words=_none_words(place, entry), given=value["type"] if value and value["type"] in REASONED else "",
        reason=words(world.part(value.get("part", ""))) if value and value["type"] in REASONED else "",
        source=filled.source if filled else "", settle=address(now.id, place.path) if disputed else "",
        killer=place.prompt.killer, line=place.prompt.line,
    )


def _recalled(world: World, now: Running, prompt: Prompt) -> str:
    """What was answered elsewhere and is needed here."""
    value = now.value((prompt.recalls,)) if prompt.recalls else None
    asked_there = now.procedure.prompt(prompt.recalls)
    if value is None or asked_there is None:
        return ""
    return sentence(f"{asked_there.words.rstrip('?')}: {value_words(value, world)}")


def _slot_ask(world: World, now: Running, place: Place, disputed: bool) -> Ask:
    """Gear asked in a step: what was picked, and the way to its slot."""
    from checklist_app.checklists.pages.settle import address

    entry, item = now.table.entries[place.prompt.name], now.items.get(place.path)
    value = now.value(place.path)
    shown = f"{item.id}, {item.title}" if item is not None and item.title != item.id else item.id if item else (
        _shown(world, value, None, entry, (), place.prompt) if value else "")
    felt_words = "not looked at and felt yet" if item is not None and now.is_open(place) else ""
    return Ask(name=place.name, kind="gear", words=sentence(question(place, entry)).rstrip("."), why=place.prompt.why,
               state=_state(now, place, entry, disputed), shown=shown, source=felt_words,
               fault=now.faults.get(place.path, ""), settle=address(now.id, place.path) if disputed else "",
               killer=place.prompt.killer, href=f"/tasks/{now.id}/kit/{place.slot}")


def question(place: Place, entry: Entry | None) -> str:
    """The words of the question, with the row in front."""
    said = place.prompt.words or (entry.words if entry is not None else place.prompt.name)
    return with_row("" if place.label.isdigit() else place.label, said)


def asked(now: Running, place: Place) -> Asked:
    """The same question as a form is read by it."""
    entry = _entry(now, place)
    return Asked(("task", now.id), place.path, type_of(place, entry), unit_of(place, entry))


def felt(now: Running, place: Place) -> Asked:
    """The tick that the gear was looked at and felt."""
    return Asked(("task", now.id), place.felt_path, "tick", other_answers=False)


def kind_of(place: Place, entry: Entry | None) -> str:
    """Which template shows it."""
    kind = type_of(place, entry)
    return "choice" if kind == "pick" else kind


def type_of(place: Place, entry: Entry | None) -> str:
    """The type of value that answers it."""
    if entry is None:
        return TYPE_OF[place.prompt.kind]
    if entry.kind is float:
        return "number"
    if entry.kind is Day:
        return "date"
    if entry.kind is str:
        return "text"
    return "choice" if isinstance(entry.kind, type) and issubclass(entry.kind, Enum) else "pick"


def unit_of(place: Place, entry: Entry | None) -> str:
    """The unit that belongs to the answer."""
    return entry.unit if entry is not None else place.prompt.unit


def _entry(now: Running, place: Place) -> Entry | None:
    return now.table.entries[place.prompt.name] if place.prompt.kind is PromptKind.ENTRY else None


def _key(now: Running, place: Place) -> Key:
    return Key(place.prompt.name, now.read.labels.get(place.row))


def _typed(world: World, value: Value) -> str:
    """The text that stands in the field: as typed, never as read."""
    kind = value["type"]
    if kind == "text":
        return words(world.part(value["part"]))
    if kind == "pick":
        return "@".join(filter(None, (str(value["subject"]), value.get("point", ""))))
    return str(value.get("text", ""))


def _state(now: Running, place: Place, entry: Entry | None, disputed: bool) -> State:
    if disputed:
        return State.DISPUTED
    if place.path in now.folded.values:
        return State.OPEN if place.path in now.faults else State.DONE
    filled = _key(now, place) in now.read.sources or _added_up(place.prompt, entry)
    return State.FROM_REGISTER if filled else State.OPEN


def _shown(world: World, value: Value | None, filled: Any, entry: Entry | None, options: tuple[Option, ...],
           prompt: Prompt) -> str:
    """The answer in words: of a choice the words that were chosen."""
    if value is None:
        return f"{filled.text} {entry.unit if entry else ''}".strip() if filled else _added_up(prompt, entry)
    if value["type"] == "not_used" and prompt.none_words:
        return prompt.none_words
    chosen = next((option.words for option in options if option.value == _typed(world, value)), "")
    return chosen or value_words(value, world)


def _added_up(prompt: Prompt, entry: Entry | None) -> str:
    """What is taken where nobody answers, for an entry that is added up from the gear."""
    if entry is None or prompt.killer or not isinstance(entry.default, NotUsed):
        return ""
    return entry.default.reason


def _usual(now: Running, place: Place, entry: Entry | None) -> tuple[str, ...]:
    """Values to tap; first those that something picked, or the register of loads, offers."""
    usual = usual_values(entry.usual, entry.unit) if entry is not None and entry.usual else ()
    own = (offered_fact(now, place)[0], offered(now, place.prompt.name))
    return tuple(dict.fromkeys((*filter(None, own), *usual)))


def offered_fact(now: Running, place: Place) -> tuple[str, str]:
    """A fact of what was picked that is offered here, and whose it is; both empty where there is none."""
    picked, _, fact = place.prompt.offers.partition(".")
    item = now.items.get((picked,)) if picked else None
    text = str(item.facts.get(fact, "")) if item is not None else ""
    return (text, item.title) if item is not None and text else ("", "")


def _allowed(now: Running, place: Place, entry: Entry | None) -> str:
    if entry is not None:
        text, whose = offered_fact(now, place)
        said = f"{whose} says {text} {entry.unit}." if text else ""
        allowed = allowed_words(entry.usual, entry.low, entry.high, entry.unit)
        return " ".join(filter(None, (said, allowed, entry.hint)))
    return allowed_words(None, place.prompt.low, place.prompt.high, place.prompt.unit)


def _options(now: Running, place: Place, entry: Entry | None) -> tuple[Option, ...]:
    if entry is not None and isinstance(entry.kind, type) and issubclass(entry.kind, Enum):
        return tuple(_option(place.prompt, str(each.value)) for each in fitting(now, entry))
    return tuple(_option(place.prompt, each) for each in place.prompt.choices)


def _option(prompt: Prompt, answer: str) -> Option:
    words = answer[:1].upper() + answer[1:]
    return Option(answer, words, prompt.notes.get(answer, ""), answer if prompt.drawn else "")


def _ways(entry: Entry | None) -> tuple[Option, ...]:
    return tuple(Option(way.name, way.words) for way in entry.obtained) if entry is not None else ()


def _may_not_know(now: Running, entry: Entry | None) -> bool:
    """Whether the operation has a worst case for somebody who does not know."""
    return entry is not None and now.table.may_not_know(entry.name)


def _none_words(place: Place, entry: Entry | None) -> str:
    if place.prompt.none_words:
        return place.prompt.none_words
    return "Not used" if entry is not None and entry.may_be_none and entry.default is None else ""
