"""Two answers at one prompt, neither made with sight of the other: a person looks and says which one holds."""
from typing import Any
from urllib.parse import quote

from checklist_app.checklists.answer import Answer, Request, page
from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.fold import removes_row, seen, seen_in_row
from checklist_app.checklists.frame import frame, go_to, whole
from checklist_app.checklists.made import Made
from checklist_app.checklists.naming import prompt_words, value_words
from checklist_app.checklists.running import Running, running
from checklist_app.checklists.values import row
from checklist_app.checklists.words import sentence
from checklist_app.checklists.world import World


@page("/tasks/<task>/settle")
def settle(request: Request, world: World, task: str) -> Answer:
    """Every disagreement of a task, or one of them with its answers."""
    now = running(world, task)
    where = request.one("where") or request.query.get("where", "")
    path = tuple(where.split("/"))
    if path not in now.folded.disputed:
        return _list(request, now)
    if request.method != "POST":
        return _one(request, world, now, path)
    chosen = next((each for each in _choices(now, path) if each.digest == request.one("holds")), None)
    if chosen is None:
        return _one(request, world, now, path, "Choose the answer that holds.", 422)

    made = Made(request)
    if len(path) == 2:
        gone = removes_row(chosen)
        made.say(("task", task), path, row("absent" if gone else "present"),
                 seen_in_row(now.folded, path) if gone else _removals(now, path))
    else:
        made.say(("task", task), path, chosen.value, seen(now.folded, path))

    return go_to(f"/tasks/{task}", keep=tuple(made.keep), parts=made.parts)


def address(task: str, path: Path) -> str:
    """Where a disagreement is settled."""
    return f"/tasks/{task}/settle?where={quote('/'.join(path))}"


def _list(request: Request, now: Running) -> Answer:
    shown = _frame(request, now, "Answers that differ")
    disputed = [{"href": address(now.id, path), "words": sentence(prompt_words(now.procedure, path)).rstrip(".")}
                for path in now.folded.disputed]
    summary = "Look, then choose one of each." if disputed else "No answers differ."
    return whole(request, "checklist/settle_list.html", shown, task=now.id, disputed=disputed, summary=summary)


def _one(request: Request, world: World, now: Running, path: Path, fault: str = "", status: int = 200) -> Answer:
    shown = _frame(request, now, "Two answers differ")
    answers = [{"digest": entry.digest, "words": _words(path, entry, world), "who": _who(entry, world), "at": entry.at}
               for entry in _choices(now, path)]
    return whole(request, "checklist/settle.html", shown, status, task=now.id, where="/".join(path), answers=answers,
                 asked=sentence(prompt_words(now.procedure, path)), fault_words=fault)


def _frame(request: Request, now: Running, title: str) -> dict[str, Any]:
    return frame(request, title, title, now.title, f"/tasks/{now.id}", "Back to the task")


def _choices(now: Running, path: Path) -> tuple[Entry, ...]:
    """The answers that stand, equal ones once; of a row its removal, and one answer that somebody gave in it."""
    standing = now.folded.disputed[path]
    if len(path) == 2:
        removed = next(each for each in standing if each in _heads_that_remove(now, path))
        return (removed, next(each for each in standing if each not in _heads_that_remove(now, path)))
    first = {str(sorted(entry.value.items())): entry for entry in reversed(standing)}
    return tuple(sorted(first.values(), key=lambda entry: entry.digest))


def _heads_that_remove(now: Running, path: Path) -> tuple[Entry, ...]:
    return tuple(each for each in now.folded.heads.get(path, ()) if removes_row(each))


def _removals(now: Running, path: Path) -> tuple[str, ...]:
    return tuple(entry.digest for entry in now.folded.heads.get(path, ()))


def _words(path: Path, entry: Entry, world: World) -> str:
    """The answer in words; of a row only whether it is there: somebody who answered in it says so."""
    if len(path) == 2:
        return "It is not there" if removes_row(entry) else "It is there"
    return value_words(entry.value, world)


def _who(entry: Entry, world: World) -> str:
    person = world.item("person", entry.author)
    return person.title if person is not None else entry.author
