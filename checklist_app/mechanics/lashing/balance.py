"""What is needed against what there is, and whether just enough is enough."""

from dataclasses import dataclass
from math import isfinite


@dataclass(frozen=True)
class Balance:
    """Need and have in one unit; where equality counts as failing, just enough is refused."""

    need: float
    have: float
    equality_holds: bool = True

    @property
    def holds(self) -> bool:
        """Whether it is enough; what is no number never is."""
        if not (isfinite(self.need) and isfinite(self.have)):
            return False
        return self.have >= self.need if self.equality_holds else self.have > self.need
