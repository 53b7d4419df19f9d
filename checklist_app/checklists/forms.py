"""A form becomes entries: those the page's script made, or, without script, one for each answer that was changed.

What an answer says is not judged here: a mistyped figure is kept as typed and shown at its field. Refused are only
answers too long for an entry, two answers in one field, and picks that are in no register.
"""

from collections.abc import Iterable
from dataclasses import dataclass, field

from checklist_app.checklists import values
from checklist_app.checklists.answer import Request
from checklist_app.checklists.canonical import NotCanonical, as_typed, digest
from checklist_app.checklists.entry import Entry, Unusable
from checklist_app.checklists.fold import Folded, own_earlier, seen
from checklist_app.checklists.hidden import brought, left_to_read
from checklist_app.checklists.made import Made
from checklist_app.checklists.prompts import Asked
from checklist_app.checklists.values import Value, words
from checklist_app.checklists.world import World

LONGEST_TEXT = 2000
LONGEST_ANSWER = 200
EITHER_OR = "Either a value or one of the other answers: take one of them away."
WAYS = ("dont_know", "not_used")


class Unclear(ValueError):
    """What stands in the field is no answer; the message says what to do."""


@dataclass(frozen=True)
class Said:
    """An answer as it reads in a form."""

    type: str
    text: str = ""
    how: str = ""
    plus_minus: str = ""
    reason: str = ""


@dataclass
class Taken:
    """What a form adds: entries and parts to keep, and words for every field that was not taken."""

    keep: tuple[Entry, ...] = ()
    parts: dict[str, bytes] = field(default_factory=dict)
    faults: dict[str, str] = field(default_factory=dict)


def take(request: Request, asked: Iterable[Asked], folded: Folded, world: World) -> Taken:
    """The entries that a form makes.

    Args:
        request: The form, who sent it, on which device, when.
        asked: The prompts of this form; all are about what `folded` is about.
        folded: What stood when the request came.
        world: Registers, for picks; parts, to tell a changed text from one that was left as it was.
    """
    asked = tuple(asked)
    made = Made(request)
    entries, parts, faults = brought(request.form, asked, made.author)
    for prompt in left_to_read(request.form, asked):
        try:
            _answer(request, prompt, folded, world, made)
        except (Unclear, Unusable, NotCanonical) as error:
            faults[prompt.name] = str(error) if isinstance(error, Unclear) else f"This cannot be kept: {error}."

    return Taken((*entries, *made.keep), parts | made.parts, faults)


def _answer(request: Request, prompt: Asked, folded: Folded, world: World, made: Made) -> None:
    """One entry, if the form says something else than the page showed."""
    shown = prompt.seen(request.form)
    replaced = seen(folded, prompt.path) if shown is None else shown
    photos = request.files.get(prompt.name, ()) if prompt.type == "photo" else ()
    if photos and not _stands(prompt, photos[0].data, folded, made.author):
        _say(request, prompt, made.photo(photos[0]), replaced, folded, made)
    if photos or prompt.type == "photo" or not prompt.is_in(request.form):
        return
    before = {_before(folded.known[name], world) for name in replaced if name in folded.known}
    now = {_before(entry, world) for entry in folded.heads.get(prompt.path, ())}
    said = _said(request, prompt, before)
    untouched = said is None and (not any(before) or len(before) > 1)
    if untouched or {said} in (before, now):
        return
    _say(request, prompt, _value(said, prompt, world, made) if said else values.withdrawn(), replaced, folded, made)


def _stands(prompt: Asked, data: bytes, folded: Folded, author: str) -> bool:
    """Whether he said so already: a form whose answer was lost is sent again, and brings the same picture."""
    return any(entry.author == author and entry.value.get("part") == digest(data)
               for entry in folded.heads.get(prompt.path, ()))


def _say(request: Request, prompt: Asked, value: Value, replaced: Iterable[str], folded: Folded, made: Made) -> None:
    """His own earlier answers on this device are replaced too: an old page is no disagreement."""
    own = own_earlier(folded, prompt.path, made.author, request.device)
    made.say(prompt.about, prompt.path, value, {*replaced, *own})


def _said(request: Request, prompt: Asked, before: set[Said | None]) -> Said | None:
    """What the form says. Where a value and another answer are both there, the one that is new was meant."""
    form = request.form
    ways = [way for way in WAYS if prompt.one(form, f".{way}") and prompt.other_answers]
    value = _value_said(request, prompt)
    if len(ways) > 1:
        raise Unclear("Only one of the other answers can hold: take one away.")
    if not ways:
        return value
    way = Said(ways[0], reason=_within(prompt.one(form, ".reason"), LONGEST_ANSWER))
    if value is None or value in before:
        return way
    if any(said is not None and said.type == way.type for said in before):
        return value
    raise Unclear(EITHER_OR)


def _value_said(request: Request, prompt: Asked) -> Said | None:
    form = request.form
    if prompt.type == "tick":
        tick = "cannot_see" if prompt.one(form, ".cannot_see") else prompt.one(form)
        return Said("tick", tick) if tick in ("yes", "no", "cannot_see") else None
    text = _within(prompt.one(form), LONGEST_TEXT if prompt.type == "text" else LONGEST_ANSWER)
    if not text:
        return None
    if prompt.choices and text not in prompt.choices:
        raise Unclear("Choose one of the answers shown.")
    if prompt.type != "number":
        return Said(prompt.type, text)
    return Said("number", text, _within(prompt.one(form, ".how"), LONGEST_ANSWER),
                _within(prompt.one(form, ".plus_minus"), LONGEST_ANSWER))


def _before(entry: Entry, world: World) -> Said | None:
    """An answer that stands, as the form showed it; none for one that was taken back."""
    value = entry.value
    if entry.type == "withdrawn":
        return None
    if entry.type in WAYS:
        return Said(entry.type, reason=words(world.part(value.get("part", ""))))
    if entry.type == "text":
        return Said("text", words(world.part(value["part"])))
    if entry.type == "pick":
        return Said("pick", "@".join(filter(None, (value["subject"], value.get("point")))))
    return Said(entry.type, value.get("text", ""), value.get("how", ""), value.get("plus_minus", ""))


def _value(said: Said, prompt: Asked, world: World, made: Made) -> Value:
    if said.type in WAYS:
        part = made.words(said.reason)
        return values.dont_know(part) if said.type == "dont_know" else values.not_used(part)
    if said.type == "number":
        return values.number(said.text, prompt.unit, said.how, said.plus_minus)
    if said.type == "text":
        return values.text(made.words(said.text))
    if said.type == "pick":
        return _picked(said, world)
    return {"type": said.type, "text": said.text}


def _picked(said: Said, world: World) -> Value:
    """The item, and the point of it that stands after an @."""
    subject, _, point = said.text.partition("@")
    register, _, name = subject.partition("/")
    item = world.item(register, name)
    if item is None:
        raise Unclear(f"Nothing in the register is called {name or subject}.")
    if item.version is None:
        raise Unclear(f"{name} cannot be picked: {item.fault}.")
    return values.pick(item.subject, item.version, point)


def _within(text: str, most: int) -> str:
    if len(text) > most:
        raise Unclear(f"Too long: {len(text)} characters, at most {most}.")
    return as_typed(text)
