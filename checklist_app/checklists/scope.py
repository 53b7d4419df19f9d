"""What a signature covers: the answers and rows that bind, and those that only stand beside them."""
from collections.abc import Iterator, Mapping
from typing import Any

from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.fold import Folded, removes_row
from checklist_app.checklists.procedure import Hold, Procedure, Prompt, PromptKind
from checklist_app.checklists.values import Value, words
from checklist_app.checklists.world import World

BEGIN = "begin"
FELT = "_felt"
REASONED = frozenset({"dont_know", "not_used"})


def binds(procedure: Procedure, hold: Hold, path: Path) -> bool:
    """Whether what is said here is covered by the hold's signature. Photographs never are: they are shown beside."""
    if len(path) == 2:
        return path[0] in hold.groups
    if path == (BEGIN,):
        return True
    if len(path) == 3 and path[0] not in hold.groups:
        return False
    prompt = _asked(procedure, hold, path[-1].removesuffix(FELT))
    return prompt is not None and prompt.kind is not PromptKind.PHOTO


def covered(procedure: Procedure, hold: Hold) -> Iterator[Prompt]:
    """Every prompt of the stages that a hold covers, in order."""
    for stage in procedure.stages:
        if stage.name in hold.stages:
            yield from stage.prompts()


def inputs(procedure: Procedure, folded: Folded, hold: Hold) -> list[dict[str, Any]]:
    """The answers that bind, as a statement holds them: path, value, and the entry that says so."""
    rows = [{"path": list(path), "value": dict(entry.value), "entry": entry.digest}
            for path, entry in _standing(folded) if binds(procedure, hold, path)]
    return sorted(rows, key=lambda row: row["path"])


def everything(folded: Folded) -> list[dict[str, Any]]:
    """All answers and rows that stand, whatever covers them."""
    rows = [{"path": list(path), "value": dict(entry.value), "entry": entry.digest}
            for path, entry in _standing(folded)]
    return sorted(rows, key=lambda row: row["path"])


def disputed(procedure: Procedure, folded: Folded, hold: Hold) -> tuple[Path, ...]:
    """Prompts and rows in scope at which two answers stand."""
    return tuple(path for path in folded.disputed if binds(procedure, hold, path))


def beside(procedure: Procedure, folded: Folded, hold: Hold) -> tuple[Entry, ...]:
    """Photographs of the covered stages: the signer saw them, and they bind nobody."""
    shown = {prompt.name for prompt in covered(procedure, hold) if prompt.kind is PromptKind.PHOTO}
    return tuple(entry for path, heads in folded.heads.items() if path[-1] in shown
                 for entry in heads if entry.type == "photo")


def authors(folded: Folded, rows: list[dict[str, Any]]) -> Mapping[str, tuple[Path, ...]]:
    """Who gave the answers that bind: each is *the rigger* of this lift, and these are his answers."""
    said: dict[str, tuple[Path, ...]] = {}
    for row in rows:
        path = tuple(row["path"])
        if path == (BEGIN,):
            continue
        for entry in folded.heads[path]:
            said[entry.author] = (*said.get(entry.author, ()), path)
    return said


def bound(value: Value | None, world: World) -> Value | None:
    """A value as far as it binds: free text by its words, *don't know* without the remark beside it."""
    if value is None:
        return None
    if value["type"] == "text" and (said := words(world.part(value["part"]))):
        return {"type": "text", "words": said}
    if value["type"] in REASONED:
        return {"type": value["type"]}
    return value


def _asked(procedure: Procedure, hold: Hold, name: str) -> Prompt | None:
    return next((prompt for prompt in covered(procedure, hold) if prompt.name == name), None)


def _standing(folded: Folded) -> Iterator[tuple[Path, Entry]]:
    """One entry for each prompt with an answer, and for each row that was added and not removed."""
    for path in folded.values:
        yield path, folded.heads[path][0]
    for group, ids in folded.rows.items():
        for row in ids:
            said = [entry for entry in folded.heads.get((group, row), ()) if not removes_row(entry)]
            if said and (group, row) not in folded.disputed:
                yield (group, row), said[0]
