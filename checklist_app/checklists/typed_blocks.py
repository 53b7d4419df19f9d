"""Blocks typed into an assessment of a lashing: headboard, chocks, timber; the next can be typed once one is begun."""
from collections.abc import Iterator, Mapping

from checklist_app.operations.catalogue import OPERATIONS
from checklist_app.operations.graph import Entry

GROUP = "block"
MOST = 4
POINT = (("block_x_m", "Forwards"), ("block_y_m", "To the left"), ("block_z_m", "Upwards"))
CHOICES = ("blocked_by", "blocks", "block_on")


def begun(typed: Mapping[str, str]) -> tuple[int, ...]:
    """Numbers of the blocks of which anything was typed."""
    return tuple(number for number in range(1, MOST + 1)
                 if any(text.strip() for name, text in typed.items() if name.startswith(prefix(number))))


def offered(typed: Mapping[str, str]) -> tuple[int, ...]:
    """Those, and one more as far as there is room."""
    there = begun(typed)
    free = next((number for number in range(1, MOST + 1) if number not in there), None)
    return tuple(sorted((*there, *(() if free is None else (free,)))))


def prefix(number: int) -> str:
    """What the fields of one block begin with."""
    return f"{GROUP}/{number}-{number}/"


def block_entries(operation: str) -> Iterator[Entry]:
    """What is asked of one block."""
    table = OPERATIONS[operation].table
    return (entry for entry in table.entries.values() if table.home[entry.name] == GROUP)
