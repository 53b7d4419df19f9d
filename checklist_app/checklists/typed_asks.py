"""Questions of an assessment, of whatever operation, each with what was typed still in it."""
from collections.abc import Mapping

from checklist_app.checklists.ask import Ask, Option
from checklist_app.checklists.procedure import newest
from checklist_app.checklists.typed_gear import TypedSlot
from checklist_app.checklists.usual import allowed_words, step_of, usual_values
from checklist_app.checklists.usual_case import Tick
from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.fields import Field, FieldType
from checklist_app.operations.graph import Obtained
from checklist_app.operations.kinds import KINDS

USUAL = {"sling.wll_t": ("1", "2", "3", "5"), "sling.length_m": ("1.00", "1.50", "2.00", "3.00"),
         "hoist.wll_t": ("1", "2", "3.2", "5"), "lashing_item.lc_dan": ("1000", "2000", "2500", "5000"),
         "lashing_item.stf_dan": ("200", "300", "350", "500")}
FIELDS = {FieldType.NUMBER: "number", FieldType.CHOICE: "select"}
WORDS = {"rig": "How is the load slung?", "hitch": "How is the sling hitched?"}


class TypedAsks:
    """Questions about one assessment: what was typed, and what of it could not be read.

    `own_way`: the numbers that ask for themselves how they are known; of the others it is said once for all.
    """

    own_way: frozenset[str] = frozenset({"mass_kg"})

    def __init__(self, typed: Mapping[str, str], faults: Mapping[str, str], operation: str) -> None:
        self.typed, self.faults = typed, faults
        self.table, self.procedure = OPERATIONS[operation].table, newest(operation)

    def numbers(self, *names: str) -> tuple[Ask, ...]:
        """Several numbers."""
        return tuple(self.number(name) for name in names)

    def number(self, name: str, none_words: str = "") -> Ask:
        """One number by the name of its field."""
        entry, typed = self.table.entries[name.rpartition("/")[2]], self.typed
        allowed = allowed_words(entry.usual, entry.low, entry.high, entry.unit)
        return Ask(
            name=name, kind="number", words=self.words(name, entry.words), unit=entry.unit, text=typed.get(name, ""),
            fault=self.faults.get(name, ""), usual=usual_values(entry.usual, entry.unit) if entry.usual else (),
            allowed=f"{allowed} {entry.hint}".strip(), step=step_of(entry.unit), entry=_drawn(name),
            ways=tuple(Option(way.name, way.words) for way in entry.obtained) if entry.name in self.own_way else (),
            how=typed.get(f"{name}.how", ""), plus_minus=typed.get(f"{name}.plus_minus", ""),
            may_not_know=self.table.may_not_know(entry.name),
            none_words=none_words,
            given=next((way for way in ("dont_know", "not_used") if typed.get(f"{name}.{way}")), ""),
        )

    def choice(self, name: str) -> Ask:
        """One of the named answers of an entry, with what each means as the procedure says it."""
        entry = self.table.entries[name.rpartition("/")[2]]
        prompt = self.procedure.prompt(entry.name)
        notes = prompt.notes if prompt is not None else {}
        drawn = prompt is not None and prompt.drawn
        options = tuple(_option(str(each.value), notes, drawn) for each in entry.kind)
        words = self.words(name, WORDS.get(entry.name) or (prompt.words if prompt else "") or entry.words)
        return Ask(name=name, kind="choice", words=words, text=self.typed.get(name, ""), options=options)

    def tick(self, tick: Tick) -> Ask:
        """One tick for several answers."""
        return Ask(name=tick.name, kind="plain_tick", words=tick.words, text=self.typed.get(tick.name, ""))

    def how(self, name: str, words: str, ways: tuple[Obtained, ...]) -> Ask:
        """How all numbers of a sort are known."""
        options = tuple(Option(way.name, way.words[:1].upper() + way.words[1:]) for way in ways)
        return Ask(name=name, kind="select", words=words, text=self.typed.get(name, ""), options=options)

    def gear(self, slot: TypedSlot) -> tuple[Ask, ...]:
        """The questions of one slot: which kind, its facts, or that there is none."""
        asks = [self._fact(slot, field) for field in slot.fields(self.typed)]
        if len(slot.kinds) > 1:
            name = f"{slot.name}.kind"
            asks.insert(0, Ask(name=name, kind="choice", words=self.called(slot), text=self.typed.get(name, ""),
                               options=tuple(Option(kind, KINDS[kind].words.capitalize()) for kind in slot.kinds)))
        if slot.none_words:
            name = f"{slot.name}.not_used"
            asks.insert(0, Ask(name=name, kind="plain_tick", words=slot.none_words, text=self.typed.get(name, "")))
        return tuple(asks)

    def _fact(self, slot: TypedSlot, field: Field) -> Ask:
        name = f"{slot.name}.{field.name}"
        return Ask(name=name, kind=FIELDS.get(field.type, "text"), words=f"{self.called(slot)}: {field.words}",
                   unit=field.unit, text=self.typed.get(name, ""), fault=self.faults.get(name, ""),
                   usual=USUAL.get(f"{slot.path[-1]}.{field.name}", ()), step=step_of(field.unit),
                   options=tuple(Option(each, each.capitalize()) for each in field.choices),
                   allowed=allowed_words(field.usual, field.low, field.high, field.unit))

    def called(self, slot: TypedSlot) -> str:
        """What a slot is called."""
        return slot.words

    def words(self, name: str, words: str) -> str:
        """The words of a question, by the name of its field."""
        return words[:1].upper() + words[1:]


def _option(answer: str, notes: Mapping[str, str], drawn: bool) -> Option:
    return Option(answer, answer[:1].upper() + answer[1:], notes.get(answer, ""), answer if drawn else "")


def _drawn(name: str) -> str:
    """The quantity as the drawing names it."""
    if "/" not in name:
        return name
    return f"{name.rpartition('/')[2]}[{name.split('/')[1].partition('-')[2]}]"
