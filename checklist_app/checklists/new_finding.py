"""What a task weighed and found is offered to the register of loads, with its evidence and how far off it may be."""
from dataclasses import dataclass
from math import ceil
from typing import Any

from checklist_app.checklists.filled import OF_BUILD_STATE, build_state
from checklist_app.checklists.made import Made
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running
from checklist_app.checklists.trials import TRIAL
from checklist_app.checklists.values import version, words
from checklist_app.checklists.words import day
from checklist_app.checklists.worked_out import EVIDENCE
from checklist_app.checklists.world import World

KEEPERS = frozenset({"supervisor", "administrator"})
CG = ("cg_x_m", "cg_y_m", "cg_z_m")
FOUND_BY = {"mass_kg": frozenset({"weighed"}), **dict.fromkeys(CG, frozenset({"trial", "scales"}))}
MM_IN_M = 1000.0
LONGEST_SAID = 200


@dataclass(frozen=True)
class NewFinding:
    """What would stand in the register for this build state."""

    load: Item
    state: str
    words: tuple[str, ...]
    facts: dict[str, Any]


def new_finding(world: World, now: Running) -> NewFinding | None:
    """What this task weighed or found by its trials and the register does not say yet; None when there is nothing."""
    picked = now.load
    load = world.item(picked.register, picked.id) if picked is not None else None
    state = now.folded.values.get(("build_state",), {}).get("text", "")
    before = build_state(load, state) if load is not None and load.version is not None else None
    if load is None or before is None or not now.procedure.has_stage(TRIAL):
        return None
    found = {name: value["text"] for name in OF_BUILD_STATE if (value := now.folded.values.get((name,), {}))
             and value.get("how") in FOUND_BY[name] and value["text"] != before.get(name)}
    if not found:
        return None
    told = f"task {now.id}, {day(now.day)}"
    says = _says(world, now)
    row = {**before, **found, **_of_mass(now, found, f"{says or 'hook load at the trial'}, {told}"),
           **_of_cg(now, found, says, told)}
    rows = [row if each.get("state") == state else dict(each) for each in load.facts["build_states"]]

    return NewFinding(load, state, tuple(_words(now, name, text, before) for name, text in found.items()),
                      {**load.facts, "build_states": rows})


def keep(made: Made, offered: NewFinding) -> None:
    """One more version of the load. Tasks that picked the one before keep what they picked."""
    load = offered.load
    document = made.document(load.schema, offered.facts)
    made.say((load.register, load.id), ("version",), version(load.schema, document), (str(load.version),))


def _says(world: World, now: Running) -> str:
    """What somebody wrote down as saying so, or what scales read; a long one stands in the record alone."""
    value = now.folded.values.get((EVIDENCE,), {})
    said = words(world.part(value.get("part", ""))).rstrip(".") if value.get("type") == "text" else ""
    return said if len(said) <= LONGEST_SAID else "readings in the record"


def _of_mass(now: Running, found: dict[str, str], says: str) -> dict[str, str]:
    return {"mass_how": "weighed", "mass_on": now.day, "mass_evidence": says} if "mass_kg" in found else {}


def _of_cg(now: Running, found: dict[str, str], says: str, told: str) -> dict[str, str]:
    """One spread for all three: the widest of them, so that none is believed too well."""
    if not found.keys() & set(CG):
        return {}
    off = max((each.levels[2] - each.levels[1] for each in now.evaluation.plan.variables
               if each.key.name in CG and not each.unknown), default=0.0)
    known = {"cg_off_m": f"{_mm(off) / MM_IN_M:.4f}"} if off > 0.0 else {}
    by_scales = all(now.folded.values[(name,)].get("how") == "scales" for name in found if name in CG)
    how, evidence = ("scales", says) if by_scales and says else ("trial", "trial lift")
    return {"cg_how": how, "cg_evidence": f"{evidence}, {told}", **known}


def _words(now: Running, name: str, text: str, before: Any) -> str:
    entry = now.table.entries[name]
    was = str(before.get(name, ""))
    said = f"{text} {entry.unit}"
    away = next((each.levels[2] - each.levels[1] for each in now.evaluation.plan.variables
                 if each.key.name == name and not each.unknown and name in CG), 0.0)
    about = f" ± {_mm(away)} mm" if away > 0.0 else ""
    return f"{entry.words}: {said}{about}{f', before {was} {entry.unit}' if was else ''}"


def _mm(metres: float) -> int:
    return ceil(metres * MM_IN_M - 1e-6)
