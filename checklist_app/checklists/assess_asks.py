"""The single questions of an assessed lift, each with what was typed still in it."""
from collections.abc import Mapping

from checklist_app.checklists.ask import Ask
from checklist_app.checklists.places import label, with_row
from checklist_app.checklists.typed_asks import TypedAsks
from checklist_app.checklists.typed_gear import TypedSlot
from checklist_app.checklists.typed_rig import OPERATION, RIG, leg_rows, rig_of
from checklist_app.operations.straight_lift.choices import Rig


class Asks(TypedAsks):
    """Questions about one lift. While all legs are answered in one, no row stands in front."""

    own_way = frozenset({"mass_kg", "travel_speed_m_s", "gust_m_s", "tag_below_deg", "choke_angle_deg",
                         "part_angle_deg"})

    def __init__(self, typed: Mapping[str, str], faults: Mapping[str, str]) -> None:
        super().__init__(typed, faults, OPERATION)
        self.first = leg_rows(rig_of(typed))[0]

    def rig(self, rig: Rig) -> Ask:
        """How it is slung: what is taken until another answer is given stands there as chosen."""
        asked = self.choice(RIG)
        return Ask(name=RIG, kind="choice", words=asked.words, text=rig.value, options=asked.options)

    def called(self, slot: TypedSlot) -> str:
        """Without its row while all legs are answered in one."""
        return slot.words.removeprefix(label(self.first).capitalize() + " ").capitalize() if (
            self.first in slot.path) else slot.words

    def words(self, name: str, words: str) -> str:
        """With its row in front, where it is asked of one leg alone."""
        group, _, rest = name.partition("/")
        row = rest.partition("/")[0]
        alike = row == self.first and group == "leg" and not name.endswith("leg_length_m")
        return super().words(name, words) if alike or not row else with_row(label(row), words)
