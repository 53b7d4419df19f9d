"""All checks of a task as a page shows them: the one that governs, the rows in their order, what is assumed."""
from collections.abc import Iterable
from dataclasses import dataclass, replace

from checklist_app.checklists import checked
from checklist_app.checklists.places import place_of_key
from checklist_app.checklists.running import Running
from checklist_app.checklists.says import A_LIFT, Says
from checklist_app.checklists.steps import place_href
from checklist_app.checklists.words import listed, mark
from checklist_app.mechanics.sources import SOURCES
from checklist_app.operations.check import Check, Verdict, highest_utilisation
from checklist_app.operations.evaluate import Evaluation
from checklist_app.operations.task import key_of
from checklist_app.operations.working import working

FEW, MANY = 2, 3
OWN_MASS, ALL_RIGGING = ".mass_kg", "rigging_kg"
"""What an item weighs is not asked in a task; the mass of all the rigging together is."""


@dataclass(frozen=True)
class Link:
    """What is waited for, and where it is answered; no address where that is not on a page of the task."""

    words: str
    href: str


@dataclass(frozen=True)
class Row:
    """One check as a row: closed a figure, opened its working."""

    id: str
    title: str
    gear: str
    note: str
    figure: str
    unit: str
    share: float | None
    mark: str
    verdict: str
    computed: bool
    href: str
    lines: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    source: str = ""
    missing: tuple[Link, ...] = ()
    more: int = 0
    reason: str = ""


@dataclass(frozen=True)
class Live:
    """All checks: the rows, the verdict on the whole, and how many are computed."""

    rows: tuple[Row, ...]
    verdict: str
    mark: str
    said: str
    assumed: tuple[str, ...]
    announced: str
    beside: tuple[str, ...]
    whole: str
    waits_for: tuple[Link, ...] = ()

    @property
    def told(self) -> tuple[Row, ...]:
        """The rows that say something: computed, or refused with a reason."""
        return tuple(row for row in self.rows if row.computed or row.reason)

    @property
    def waiting(self) -> tuple[Row, ...]:
        """The rows that only wait."""
        return tuple(row for row in self.rows if not (row.computed or row.reason))

    @property
    def is_folded(self) -> bool:
        """Whether so many wait that what they wait for is said once."""
        return len(self.waiting) > MANY


def governing(now: Running) -> Row | None:
    """The check that decides, once something is computed; while the rows that must hold are not there, none."""
    return None if now.lacks_rows else governing_of(now.evaluation, now)


def governing_of(evaluation: Evaluation, now: Running | None = None, says: Says | None = None) -> Row | None:
    """The deciding check with its verdict in words, and the verdict on the whole work where that is another one."""
    check = evaluation.governs
    if check is None:
        return None
    found, whole = row(evaluation, check, now), evaluation.verdict.words
    rest = "" if whole == found.verdict else f". {_says(now, says).whole(whole)}"
    return replace(found, note=f"{found.verdict}, {found.note or found.reason}{rest}")


def live(now: Running) -> Live:
    """Every check of a running task."""
    return seen(now.evaluation, now)


def seen(evaluation: Evaluation, now: Running | None = None, says: Says | None = None) -> Live:
    """Every check of an evaluation; links to missing entries only where there is a task."""
    shown = [check for check in evaluation.checks if not checked.does_not_apply(check)]
    beside = tuple(f"{checked.title(check)}: {checked.reason(check)}" for check in evaluation.checks
                   if checked.does_not_apply(check))
    computed = [check for check in shown if check.computed]
    verdict = evaluation.verdict.words

    return Live(tuple(row(evaluation, check, now) for check in sorted(shown, key=_order)), verdict, mark(verdict),
                f"{len(computed)} of {len(shown)} computed", _assumed(evaluation),
                announced(evaluation, _says(now, says)), beside, _says(now, says).whole(verdict),
                _waits_for(evaluation, now))


def _says(now: Running | None, says: Says | None) -> Says:
    return says or (now.procedure.says if now is not None else A_LIFT)


def _waits_for(evaluation: Evaluation, now: Running | None) -> tuple[Link, ...]:
    """Every missing entry once, in the order in which they are asked."""
    order = list(evaluation.table.entries)
    missing = {str(each): each for check in evaluation.checks for each in checked.missing(check)}
    place = {words: key_of(getattr(each, "key", "") or words).name for words, each in missing.items()}
    return _links(sorted(missing.values(), key=lambda each: (
        order.index(place[str(each)]) if place[str(each)] in order else len(order))), now)


def announced(evaluation: Evaluation, says: Says | None = None) -> str:
    """One sentence for those who do not see it: what governs, how much, which verdict."""
    check = evaluation.governs
    if check is None:
        return f"Nothing is computed yet. {(says or A_LIFT).whole(evaluation.verdict.words)}."
    large = checked.large(check) if check.computed else None
    unit = "" if large is None else " per cent" if large.unit == "%" else f" {large.unit}".replace(" °", "°")
    figure = f", {large.text}{unit}".rstrip() if large else ""
    return f"{checked.title(check)} governs{figure}, {check.verdict.words}."


def row(evaluation: Evaluation, check: Check, now: Running | None = None, gear: str = "") -> Row:
    """One check with everything that stands behind it."""
    large = checked.large(check) if check.computed else checked.Figure("")
    clause = check.clause
    return Row(
        id=checked.check_id(check), title=checked.title(check), gear=gear or _gear(evaluation, check),
        note=checked.note(check), figure=large.text, unit=large.unit, share=checked.share(check),
        mark=checked.marked(check), verdict=check.verdict.words, computed=check.computed,
        href=f"/tasks/{now.id}/checks/{checked.check_id(check)}" if now else f"#check-{checked.check_id(check)}",
        lines=tuple(line.text for line in working(evaluation, check.name)) if check.computed else (),
        notes=_notes(evaluation, check),
        source=_source(clause.source, clause.rule_set), missing=_links(checked.missing(check)[:FEW], now),
        more=max(0, len(checked.missing(check)) - FEW),
        reason=checked.reason(check),
    )


def _order(check: Check) -> tuple[int, float]:
    """What is bad first; what waits last."""
    last = -1 if check.verdict is Verdict.WAITING else check.verdict.rank
    return -last, -highest_utilisation(check)


def _gear(evaluation: Evaluation, check: Check) -> str:
    """The number of the item that is checked, where the check is about one."""
    entry = check.quantity.removesuffix("_strength").removesuffix("_usable")
    answer = evaluation.task.answers.get(key_of(f"{entry}[{check.row}]" if check.row else entry))
    return str(getattr(answer, "id", "")) if getattr(answer, "state", None) is not None else ""


def _notes(evaluation: Evaluation, check: Check) -> tuple[str, ...]:
    notes = []
    if check.drivers:
        notes.append(f"Moved most by: {_entry_words(evaluation, check.drivers[0])}.")
    if check.unknown:
        notes.append(f"Nobody knows: {listed(_entry_words(evaluation, name) for name in check.unknown)}. "
                     "The worst case is taken.")
    return tuple(notes)


def _entry_words(evaluation: Evaluation, name: str) -> str:
    key = key_of(name)
    entry = evaluation.table.entries.get(key.name)
    words = entry.words if entry is not None else key.name
    return words + key.behind


def _source(key: str, rule_set: str) -> str:
    source = SOURCES.get(key)
    said = source.words() if source is not None else key
    return f"{said}. {rule_set}" if rule_set else said


def _links(missing: Iterable[str], now: Running | None) -> tuple[Link, ...]:
    return tuple(Link(str(each), _href(each, now) if now is not None else "") for each in missing)


def _href(missing: str, now: Running) -> str:
    """Where the missing entry is answered."""
    key = getattr(missing, "key", "")
    wanted = ALL_RIGGING if key.endswith(OWN_MASS) else key
    place = place_of_key(now.procedure, now.folded, wanted) if key else None
    return place_href(now, place) if place is not None else ""


def _assumed(evaluation: Evaluation) -> tuple[str, ...]:
    names = dict.fromkeys(name for check in evaluation.checks for name in check.unknown)
    return tuple(f"{_entry_words(evaluation, name)}: don't know, the worst case is taken" for name in names)
