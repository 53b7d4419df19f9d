"""What can be chosen from a register where a task says what is lifted, and where."""
from collections.abc import Mapping

from checklist_app.checklists.ask import Option
from checklist_app.checklists.last_rig import again_options
from checklist_app.checklists.register import Item
from checklist_app.checklists.running import Running
from checklist_app.checklists.words import own_number
from checklist_app.checklists.world import World


def choices(world: World, now: Running) -> Mapping[str, tuple[Option, ...]]:
    """The loads, the places, and the build states of the load that was picked, by the name of their prompt."""
    return {"load": _items(world, "load"), "place": _items(world, "place"), "build_state": build_states(now.load),
            "again": again_options(world, now)}


def build_states(load: Item | None) -> tuple[Option, ...]:
    """What may be on the load, each with its mass."""
    states = load.facts.get("build_states", ()) if load is not None else ()
    return tuple(Option(str(state["state"]), str(state.get("words") or state["state"]),
                        f"{state['mass_kg']} kg, {state['mass_how']}") for state in states)


def _items(world: World, register: str) -> tuple[Option, ...]:
    return tuple(Option(item.subject, item.title, own_number(item.id, item.title))
                 for item in world.items(register).values() if item.version is not None and not item.fault)
