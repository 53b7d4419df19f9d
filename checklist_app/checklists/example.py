"""The operation's own example as it would be typed into an assessment."""
from collections.abc import Iterator, Mapping
from typing import Any

from checklist_app.checklists.assessing import ALL_CG, ALL_LENGTHS, operation
from checklist_app.checklists.typed_gear import HOOK_SLOTS, TypedSlot, leg_slots
from checklist_app.checklists.typed_rig import RIG, leg_rows
from checklist_app.operations.straight_lift.choices import Rig

LEFT = leg_rows(Rig.TWO_LEGS)[0]


def example() -> dict[str, str]:
    """Every answer of the example, by the name of its field. Its legs are alike, so one of them is typed."""
    data = operation().example
    typed = {RIG: Rig.TWO_LEGS.value} | dict(_entries("", data["entries"], HOOK_SLOTS))
    typed["rigging_kg"] = f"{_rigging_kg(data):g}"
    typed[ALL_LENGTHS], typed[ALL_CG] = "tape", "trial"
    typed.update(_entries(f"leg/{LEFT}/", data["legs"][0], leg_slots(LEFT)))
    return typed


def _rigging_kg(data: Mapping[str, Any]) -> float:
    """Own masses of all the gear, added up."""
    total = 0.0
    for row in (data["entries"], *data["legs"]):
        for answer in row.values():
            total = total + (float(answer.get("mass_kg", 0.0)) if isinstance(answer, Mapping) else 0.0)
    return total


def _entries(prefix: str, given: Mapping[str, Any], slots: tuple[TypedSlot, ...]) -> Iterator[tuple[str, str]]:
    by_name = {slot.path[-1]: slot for slot in slots}
    for name, answer in given.items():
        if name in by_name:
            yield from _gear(by_name[name], answer)
        elif isinstance(answer, Mapping):
            yield f"{prefix}{name}", str(answer["value"])
            if name == "mass_kg":
                yield f"{name}.how", str(answer["how"])
        elif name not in ("day", "label"):
            yield f"{prefix}{name}", str(answer)


def _gear(slot: TypedSlot, answer: Mapping[str, Any]) -> Iterator[tuple[str, str]]:
    """The facts that are asked here; of the ratings the step with the widest angle, the strictest of them."""
    if "not_used" in answer:
        yield f"{slot.name}.not_used", "yes"
        return
    facts = {**answer, **(answer["ratings"][-1] if slot.rated else {})}
    if len(slot.kinds) > 1:
        yield f"{slot.name}.kind", str(answer["kind"])
    for field in slot.fields({f"{slot.name}.kind": str(answer.get("kind", ""))}):
        if field.name in facts:
            yield f"{slot.name}.{field.name}", str(facts[field.name])
