"""The questions of an assessment about where a load goes: none of it is looked at until that is said."""
from collections.abc import Iterator, Mapping

from checklist_app.checklists.ask import Ask
from checklist_app.checklists.assess_asks import Asks
from checklist_app.checklists.typed_rig import rig_of
from checklist_app.operations.straight_lift.choices import Rig
from checklist_app.operations.straight_lift.ways import MOVED, OUTDOORS, TRAVELLING, TagLine, Way

WORDS = "Outdoors, or on the move?"
WHY = "Wind, a hook that travels, tag lines, and how far people keep away. Left open, none of it is looked at."


def way_asks(asks: Asks, typed: Mapping[str, str]) -> tuple[Ask, ...]:
    """Where it goes, and then what that way is asked."""
    way = next((each for each in Way if each.value == typed.get("way", "")), None)

    return (asks.choice("way"), *(_further(asks, typed, way) if way is not None else ()))


def _further(asks: Asks, typed: Mapping[str, str], way: Way) -> Iterator[Ask]:
    yield from asks.numbers("load_length_m", "load_width_m")
    if way in MOVED:
        yield from asks.numbers("side_room_m", "hook_below_m")
    if way in TRAVELLING:
        yield from asks.numbers("travel_speed_m_s", "stopping_m")
        if rig_of(typed) is Rig.TWO_HOOKS:
            yield asks.number("out_of_step_m")
    if way in OUTDOORS:
        yield asks.number("gust_m_s")
        yield asks.choice("wind_shape")
        yield from asks.numbers("side_area_m2", "side_area_z_m")
    if way in MOVED:
        yield asks.choice("tag_line")
        if typed.get("tag_line", "") == TagLine.HELD.value:
            yield from asks.numbers("tag_length_m", "tag_below_deg", "tag_off_plumb_m")
