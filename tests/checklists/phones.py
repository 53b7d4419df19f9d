"""Phones that answer apart and meet: how histories for the tests of the fold are made."""

from collections.abc import Iterable

from hypothesis import strategies as st

from checklist_app.checklists import values
from checklist_app.checklists.entry import Entry, Path, make
from checklist_app.checklists.fold import Folded, fold, own_earlier, seen, seen_in_row
from checklist_app.checklists.values import Value

TASK = ("task", "t-1")
ROW = ("leg", "1-left")
PROMPTS = (("mass_kg",), (*ROW, "sling"), (*ROW, "leg_length_m"), ("lift_height_m",))
VERBS = ("say", "say", "say", "withdraw", "remove", "add", "meet")
ACTS = st.lists(st.tuples(st.integers(0, 2), st.sampled_from(VERBS), st.integers(0, 3), st.integers(0, 2)), max_size=30)


class Phone:
    """A device in one person's hand; it knows what it made and what it was sent."""

    def __init__(self, name: str, author: str = "", about: Path = TASK) -> None:
        self.name, self.author, self.about = name, author or f"p-{name}", about
        self.known: dict[str, Entry] = {}
        self.counter = 0

    @property
    def folded(self) -> Folded:
        return fold(self.known.values())

    def make(self, path: Path, value: Value, replaces: Iterable[str] = (), about: Path | None = None,
             author: str = "") -> Entry:
        """An entry that replaces what is named and the author's own earlier answers here, nothing else."""
        self.counter += 1
        about, author = about or self.about, author or self.author
        here = fold(entry for entry in self.known.values() if entry.about == about)
        own = own_earlier(here, path, author, self.name)
        entry = make(about, path, value, {*replaces, *own}, author, self.name, self.counter, "2026-11-25T08:00:00Z")
        self.known[entry.digest] = entry
        return entry

    def say(self, path: Path, value: Value) -> Entry:
        """An answer by somebody who sees what stands there."""
        return self.make(path, value, seen(self.folded, path))

    def remove(self, row: Path = ROW) -> Entry:
        return self.make(row, values.row("absent"), seen_in_row(self.folded, row))


def meet(one: Phone, other: Phone) -> None:
    one.known |= other.known
    other.known |= one.known


def history(acts: Iterable[tuple[int, str, int, int]]) -> tuple[list[Phone], list[Entry]]:
    """Three phones after these acts, and all entries that were ever made."""
    phones = [Phone(f"d-{n}") for n in range(3)]
    for who, act, place, number in acts:
        phone = phones[who]
        match act:
            case "say":
                phone.say(PROMPTS[place], values.number(str(number), "kg"))
            case "withdraw":
                phone.say(PROMPTS[place], values.withdrawn())
            case "add":
                phone.say(ROW, values.row("present"))
            case "remove":
                phone.remove()
            case "meet":
                meet(phone, phones[number])

    return phones, list({name: entry for phone in phones for name, entry in phone.known.items()}.values())
