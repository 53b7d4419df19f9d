"""What is said about an item of a register: versions, examinations, custody, quarantine and release, as entries."""

import secrets
from collections.abc import Iterable, Mapping
from typing import Any

from checklist_app.checklists import values
from checklist_app.checklists.answer import Person
from checklist_app.checklists.entry import Path
from checklist_app.checklists.fold import Folded, fold, seen
from checklist_app.checklists.made import Made
from checklist_app.operations.kind import Kind
from checklist_app.operations.kinds import KINDS
from checklist_app.web import current
from checklist_app.web.keeping import keep_made, making, one_at_a_time

VERSION: Path = ("version",)
CUSTODY: Path = ("custody",)
QUARANTINE: Path = ("quarantine",)
EXAMINATION: Path = ("examination",)
IN_SERVICE, INCOMING = "in service", "incoming"
FIT, FIT_WITH_REMARK, NOT_FIT = "fit for use", "fit for use, with a remark", "not fit for use"
OUTCOMES = (FIT, FIT_WITH_REMARK, NOT_FIT)


def folded(about: Path) -> Folded:
    """What stands about an item."""
    return fold(current.world().entries(about))


def save_version(kind: Kind, name: str, facts: Mapping[str, Any], replaces: Iterable[str]) -> None:
    """A new version of an item. A new piece of gear or machine is *incoming* until its examination is entered."""
    with one_at_a_time():
        made = making()
        about = (kind.register, name)
        say_version(made, kind, about, facts, replaces)
        if kind.register in ("gear", "machine") and not current.world().entries(about):
            made.say(about, CUSTODY, values.custody(INCOMING, current.today()))
        keep_made(made)


def say_version(made: Made, kind: Kind, about: Path, facts: Mapping[str, Any], replaces: Iterable[str] = ()) -> None:
    schema = f"{kind.name}/{kind.version}"
    made.say(about, VERSION, values.version(schema, made.document(schema, dict(facts))), replaces)


def save_examination(about: Path, outcome: str, on: str, due: str, said: str) -> None:
    """An examination. What was found not fit goes into quarantine with it, what was incoming comes into use."""
    with one_at_a_time():
        stands, made = folded(about), making()
        made.say(about, EXAMINATION, values.examination(outcome, on, due, made.words(said)), seen(stands, EXAMINATION))
        if outcome == NOT_FIT:
            made.say(about, QUARANTINE, values.quarantine(on, made.words(f"Examination: {outcome}. {said}")))
        elif standing_custody(stands) in ({INCOMING}, set()):
            made.say(about, CUSTODY, values.custody(IN_SERVICE, on), seen(stands, CUSTODY))
        keep_made(made)


def save_custody(about: Path, where: str, since: str, why: str) -> None:
    with one_at_a_time():
        made = making()
        made.say(about, CUSTODY, values.custody(where, since, made.words(why)), seen(folded(about), CUSTODY))
        keep_made(made)


def save_quarantine(about: Path, why: str) -> None:
    with one_at_a_time():
        made = making()
        made.say(about, QUARANTINE, values.quarantine(current.today(), made.words(why)))
        keep_made(made)


def save_release(about: Path, why: str) -> None:
    """Lift the quarantines that others set; one's own stand."""
    with one_at_a_time():
        made = making()
        made.say(about, QUARANTINE, values.release(made.words(why)), set_by_others(folded(about), author()))
        keep_made(made)


def set_by_others(stands: Folded, person: str) -> tuple[str, ...]:
    """The quarantines that stand and that this person may lift."""
    return tuple(entry.digest for entry in stands.heads.get(QUARANTINE, ())
                 if entry.type == "quarantine" and entry.author != person)


def standing_custody(stands: Folded) -> set[str]:
    return {entry.value["text"] for entry in stands.heads.get(CUSTODY, ()) if entry.type == "custody"}


def author() -> str:
    found = current.account()
    return found.person if found is not None else ""


def new_person(name: str, role: str) -> str:
    """The very first person: nobody is signed in yet, so he is the author of his own entry."""
    person = person_id()
    current.accounts().add(person, name, role)
    with one_at_a_time():
        made = making(Person(person, name, role))
        say_version(made, KINDS["person"], ("person", person), {"name": name})
        keep_made(made)

    return person


def person_id() -> str:
    """An id that says nothing about the person, because entries keep it for ever."""
    return f"p-{secrets.token_hex(4)}"
