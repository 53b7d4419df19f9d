"""Void is computed, never kept: a sign-off that no longer covers what is there, and every reason in a sentence."""
from collections.abc import Iterator, Mapping
from typing import Any

from checklist_app.checklists import scope
from checklist_app.checklists.again import evaluated_statement
from checklist_app.checklists.answered_words import answer_words
from checklist_app.checklists.entry import Path
from checklist_app.checklists.frozen import usable, why_unusable
from checklist_app.checklists.naming import check_words, prompt_words
from checklist_app.checklists.running import Running
from checklist_app.checklists.statement import Shown
from checklist_app.checklists.stops import overtaken
from checklist_app.checklists.values import Value
from checklist_app.checklists.verdicts import verdicts, within, worse
from checklist_app.checklists.world import World

USABLE_CHECK = "_usable"
SAYS = ("load", "build_state", "place", "hoist")
NO_ANSWER = "no answer"


def why_void(world: World, running: Running, sign_off: str, signed: Mapping[str, Any], now: Shown) -> tuple[str, ...]:
    """Why a sign-off no longer covers what is there; nothing when it does.

    Args:
        sign_off: Digest of the sign-off's entry.
        signed: Its statement.
        now: What a signature at the same hold would cover now.
    """
    if signed["procedure"] != running.procedure.key:
        return ("the task runs by another version of its procedure",)
    return (*_disputed(running, now), *_changed(world, running, signed, now), *_unusable(signed, now),
            *_worse(running, signed, now), *_overtaken(world, running, sign_off, signed))


def judged_otherwise(running: Running, signed: Mapping[str, Any]) -> tuple[str, ...]:
    """What today's code says of the very same answers where it differs. Shown; it voids nothing."""
    then = {check["name"]: check["verdict"] for check in signed["evaluation"]["checks"]}
    now = {name: verdict for name, verdict in verdicts(evaluated_statement(signed).report).items() if name in then}
    return tuple(f"{check_words(running, name)}: signed as {then[name]}, this version says {now[name]}"
                 for name in sorted(now) if now[name] != then[name])


def _disputed(running: Running, now: Shown) -> Iterator[str]:
    for path in scope.disputed(running.procedure, running.folded, now.hold):
        yield f"{prompt_words(running.procedure, path)}: two answers stand"


def _changed(world: World, running: Running, signed: Mapping[str, Any], now: Shown) -> Iterator[str]:
    """Values that differ from the signed ones, rows included; a row in dispute was already said."""
    before, after = _values(signed["inputs"]), _values(now.inputs)
    disputed = set(scope.disputed(running.procedure, running.folded, now.hold))
    others = any(before.get((name,)) != after.get((name,)) for name in SAYS)  # then it said something else at the time
    for path in sorted(before.keys() | after.keys()):
        if path in disputed or path[:2] in disputed:
            continue
        old, new = before.get(path), after.get(path)
        if scope.bound(old, world) != scope.bound(new, world):
            was = NO_ANSWER if old is None and others else answer_words(world, running, path, old)
            said = _from_to(was, answer_words(world, running, path, new))
            yield f"{prompt_words(running.procedure, path)} changed: {said}"


def _from_to(old: str, new: str) -> str:
    """The same item picked anew, in another version of its figures, has the same name."""
    return f"{old} to {new}" if old != new else f"{new}, picked again in another version"


def _unusable(signed: Mapping[str, Any], now: Shown) -> Iterator[str]:
    then = {gear["subject"]: gear for gear in signed["gear"]}
    for gear in now.gear:
        before = then.get(gear["subject"])
        if before is not None and usable(before) and not usable(gear):
            yield f"{gear['subject'].partition('/')[2]}: {why_unusable(gear)}"


def _worse(running: Running, signed: Mapping[str, Any], now: Shown) -> Iterator[str]:
    """Both sides by today's code: what differs then comes from entries and states, not from an update."""
    if _same(signed, now):
        return
    said = any(_unusable(signed, now))
    then = within(verdicts(evaluated_statement(signed).report), now.hold.checks)
    for name, (was, found) in worse(then, now.verdicts).items():
        if not (said and name.partition("[")[0].endswith(USABLE_CHECK)):
            yield f"{check_words(running, name)}: {was} became {found}"


def _overtaken(world: World, running: Running, sign_off: str, signed: Mapping[str, Any]) -> Iterator[str]:
    for entry in overtaken(sign_off, signed.get("goings_on", ()), running.folded, world):
        yield f"the task was stopped, and went on at {entry.at[11:16]} UTC: it needs a new sign-off"


def _same(signed: Mapping[str, Any], now: Shown) -> bool:
    return (signed["inputs"], signed["gear"], signed["day"]) == (now.inputs, now.gear, now.day)


def _values(rows: list[dict[str, Any]]) -> dict[Path, Value]:
    return {tuple(row["path"]): row["value"] for row in rows}
