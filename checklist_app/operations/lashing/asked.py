"""All that the rules ask a load to withstand one way."""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from checklist_app.mechanics.lashing.demands import Demand


@dataclass(frozen=True, eq=False)
class Asked:
    """All that is asked one way, one demand for each run, with the words of its transport.

    Tipping is asked otherwise of a load that is tied down.
    """

    slides: tuple[tuple[str, Demand], ...]
    tips: tuple[tuple[str, Demand], ...]
    tips_tied: tuple[tuple[str, Demand], ...]


def asked_of(tied: Sequence[tuple[str, Demand]], untied: Sequence[tuple[str, Demand]]) -> Asked:
    """Demands taken apart, one for each run."""
    return Asked(
        tuple((words, replace(each, slides=(one,), tips=())) for words, each in untied for one in each.slides),
        tuple((words, replace(each, slides=(), tips=(one,))) for words, each in untied for one in each.tips),
        tuple((words, replace(each, slides=(), tips=(one,))) for words, each in tied for one in each.tips),
    )
