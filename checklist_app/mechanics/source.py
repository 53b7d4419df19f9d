"""What a source is: a public document, our own statics, or a setting of the house, and how far it was seen."""

from dataclasses import dataclass
from enum import Enum


class Status(Enum):
    """How well a value is vouched for."""

    READ = "read"
    DERIVED = "derived"
    FROM_MEMORY = "from memory"
    HOUSE = "house setting"


READ, DERIVED, FROM_MEMORY, HOUSE = Status.READ, Status.DERIVED, Status.FROM_MEMORY, Status.HOUSE


@dataclass(frozen=True)
class Source:
    """A public document, our own statics, or a setting of the house."""

    title: str
    edition: str
    publisher: str
    year: str
    status: Status
    restated: str = ""

    def words(self) -> str:
        """As it stands in a record: what it is, whose, and how far it was seen.

        Example:
            >>> Source("The International System of Units (SI)", "9th edition", "BIPM", "2019", READ).words()
            'The International System of Units (SI), 9th edition, BIPM, 2019 (read)'
        """
        parts = [part for part in (self.title, self.edition, self.publisher, self.year) if part]
        seen = f"{self.status.value}, as restated by {self.restated}" if self.restated else self.status.value

        return f"{', '.join(parts)} ({seen})"
