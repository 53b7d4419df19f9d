"""One question as a page shows it: words, what stands there now, and every way of answering it."""
from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum
from itertools import groupby

SHORT = 4


class State(Enum):
    """Where a question stands. Each is also said in words on the page."""

    OPEN = "open"
    DONE = "done"
    FROM_REGISTER = "from the register"
    DISPUTED = "two answers"


@dataclass(frozen=True)
class Option:
    """One possibility: what is sent and what is read; `drawn` names its small drawing."""

    value: str
    words: str
    note: str = ""
    drawn: str = ""


@dataclass(frozen=True)
class Ask:
    """A question ready for its template. `name` is the form field, `data` what the page script needs to know,
    `entry` the quantity as the drawing names it.
    """

    name: str
    kind: str
    words: str
    data: str = ""
    entry: str = ""
    why: str = ""
    unit: str = ""
    text: str = ""
    state: State = State.OPEN
    shown: str = ""
    fault: str = ""
    usual: tuple[str, ...] = ()
    allowed: str = ""
    step: str = ""
    options: tuple[Option, ...] = ()
    ways: tuple[Option, ...] = ()
    how: str = ""
    plus_minus: str = ""
    may_not_know: bool = False
    none_words: str = ""
    given: str = ""
    reason: str = ""
    source: str = ""
    settle: str = ""
    killer: bool = False
    first_fault: bool = False
    href: str = ""
    """Where it is answered, if not here: gear has a slot of its own."""
    line: str = ""
    """Words over the line in which it stands with its neighbours."""

    @property
    def id(self) -> str:
        """The field's id on the page."""
        return self.name.replace("/", "-").replace(".", "-")

    @property
    def described_by(self) -> str:
        """Ids of the words that belong to the field."""
        return f"{self.id}-note {self.id}-fault"

    @property
    def shrinks(self) -> bool:
        """Whether it shows as one line with *Change*: filled by a register, or chosen from a long list."""
        chosen = self.state is State.DONE and len(self.options) > SHORT
        return (self.state is State.FROM_REGISTER or chosen) and not self.fault and not self.given

    @property
    def answered(self) -> bool:
        """Whether the question needs nobody any more."""
        return self.state in (State.DONE, State.FROM_REGISTER)


@dataclass(frozen=True)
class Block:
    """Questions that stand together: one, or several in one line under `words`."""

    words: str
    asks: tuple[Ask, ...]


def blocks(questions: Iterable[Ask]) -> tuple[Block, ...]:
    """Questions as they stand on the page, those of one line together."""
    found: list[Block] = []
    for line, together in groupby(questions, key=lambda each: each.line):
        some = tuple(together)
        found += [Block(line, some)] if line else [Block("", (each,)) for each in some]
    return tuple(found)
