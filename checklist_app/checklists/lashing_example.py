"""The example of a lashing operation as it would be typed into an assessment: one lashing, at all four corners."""
from collections.abc import Iterator, Mapping
from typing import Any

from checklist_app.checklists.typed_gear import TypedSlot
from checklist_app.checklists.typed_lashing import ALIKE, ALL_CG, ALL_LENGTHS, CORNERS, ITEM, ONE, slots
from checklist_app.operations.catalogue import OPERATIONS


def example(operation: str) -> dict[str, str]:
    """Every answer of the example, by the name of its field."""
    data = OPERATIONS[operation].example
    typed = {ALIKE: CORNERS, ALL_LENGTHS: "tape", ALL_CG: "trial"}
    typed.update(_typed("", data["entries"], {slot.path[-1]: slot for slot in slots(operation)}))
    typed.update(_typed(ONE, data["lashings"][0], {ITEM.path[-1]: ITEM}))
    return typed


def _typed(prefix: str, given: Mapping[str, Any], gear: Mapping[str, TypedSlot]) -> Iterator[tuple[str, str]]:
    for name, answer in given.items():
        if name in gear:
            yield from _gear(gear[name], answer)
        elif isinstance(answer, Mapping) and "not_used" in answer:
            yield f"{prefix}{name}.not_used", "yes"
        elif isinstance(answer, Mapping):
            yield f"{prefix}{name}", f"{answer['value']:g}"
            if name == "mass_kg":
                yield f"{name}.how", str(answer["how"])
        elif name not in ("day", "label"):
            yield f"{prefix}{name}", str(answer)


def _gear(slot: TypedSlot, answer: Mapping[str, Any]) -> Iterator[tuple[str, str]]:
    if len(slot.kinds) > 1:
        yield f"{slot.name}.kind", str(answer["kind"])
    for field in slot.fields({f"{slot.name}.kind": str(answer["kind"])}):
        if field.name in answer:
            yield f"{slot.name}.{field.name}", str(answer[field.name])
