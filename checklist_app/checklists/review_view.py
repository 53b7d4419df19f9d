"""A hold point as its pages show it: head, what to look at, sheet of signatures, who may sign."""
from typing import Any

from checklist_app.checklists import ink
from checklist_app.checklists.answer import Person
from checklist_app.checklists.answered_words import FROM_REGISTER, answer_words
from checklist_app.checklists.authority import capacities
from checklist_app.checklists.checks_view import governing, live
from checklist_app.checklists.frozen import has_state
from checklist_app.checklists.guests import Guest, guests
from checklist_app.checklists.holds import HoldState, SignOff, needed_at
from checklist_app.checklists.lookat import look_at, name_of, photos
from checklist_app.checklists.naming import check_words, prompt_words
from checklist_app.checklists.picture import picture
from checklist_app.checklists.places import places
from checklist_app.checklists.running import Running
from checklist_app.checklists.signers import MayNot, may_sign, meaning, riggers
from checklist_app.checklists.signing import HOW_WORDS
from checklist_app.checklists.words import day, listed, mark, sentence
from checklist_app.checklists.world import World
from checklist_app.mechanics.lift_class import LiftClass
from checklist_app.operations.task import Key

DESK_PX = 760
UNSETTLED = "The class is not settled yet."


def head(world: World, running: Running, state: HoldState) -> dict[str, Any]:
    """Load, lift, who rigged it, verdict and the check that governs."""
    rigged = listed([name_of(world, author) for author in riggers(running, state)])
    verdict = running.evaluation.verdict.words
    return {
        "id": running.load.id if running.load else "", "name": running.load.title if running.load else running.title,
        "operation": running.procedure.words, "day": running.day, "rigged": rigged,
        "verdict": verdict, "mark": mark(verdict), "governs": governing(running),
        "ask": state.hold.ask, "needed": needed_at(state) or UNSETTLED, "guest": state.hold.guest,
        "signed": state.signed, "open": state.open,
    }


def review(world: World, running: Running, state: HoldState) -> dict[str, Any]:
    """Everything a reviewer reads: drawing, what to look at, photographs, gear, answers, checks, assumptions."""
    return {
        "picture": picture(running.evaluation), "wide": picture(running.evaluation, DESK_PX, all_views=False),
        "looks": look_at(world, running, state),
        "photos": [{"href": f"/parts/{entry.value['part']}", "words": words, "at": entry.at}
                   for entry, words in photos(world, running, state)],
        "gear": [_gear(gear) for gear in state.seen.gear if has_state(gear)],
        "stages": _answers(world, running, state),
        "checks": live(running), "announced": "", "sent_back": bool(state.sent_back),
        "assumptions": state.seen.report["assumptions"], "cautions": state.seen.report["cautions"],
    }


def sheet(world: World, running: Running, state: HoldState) -> list[dict[str, Any]]:
    """The cells of the sign-off sheet: every signature that is there, an empty one for each that is missing, guests."""
    there = [_cell(world, each, state) for each in state.sign_offs]
    there += [{"entry": "", "act": state.hold.words, "who": sentence(place.words)} for place in state.missing]
    return there + [_guest_cell(world, each, state) for each in guests(world, running, state)]


def signers(world: World, running: Running, state: HoldState) -> list[dict[str, str]]:
    """People of the register who may sign here now, and as what."""
    found = []
    for name, item in world.items("person").items():
        person = Person(name, item.title, str(item.facts.get("role", "")), capacities(world, name))
        try:
            may = may_sign(running, state, person, world.today)
        except MayNot:
            continue
        found.append({"id": name, "name": item.title, "note": may.capacity + (", rigged it" if may.own_work else "")})
    return found


def not_signing(world: World, running: Running, state: HoldState) -> list[str]:
    """Why who rigged this lift, or has signed already, is not in the list: he looks for his name in vain."""
    people = dict.fromkeys([*riggers(running, state), *(each.entry.author for each in state.standing)])
    found = []
    for name in people:
        item = world.item("person", name)
        if item is None:
            continue
        try:
            may_sign(running, state, Person(name, item.title, str(item.facts.get("role", "")),
                                            capacities(world, name)), world.today)
        except MayNot as why:
            found.append(str(why))
    return found


def signing(running: Running, state: HoldState) -> dict[str, Any]:
    """What is signed, beside the signature."""
    report = state.seen.report
    fingerprint = state.seen.fingerprint
    return {
        "meaning": meaning(state, state.lift_class or LiftClass.COMPLEX), "shown": fingerprint,
        "fingerprint": " ".join(fingerprint[n:n + 4] for n in range(0, 16, 4)),
        "facts": [("Verdict", report["verdict"]), ("Governs", check_words(running, report["governs"] or "nothing yet")),
                  ("Class", report["class"]), ("Day", day(state.seen.day)),
                  ("Procedure", f"{running.procedure.words}, version {running.procedure.version}"),
                  ("Answers", str(len(state.seen.inputs))), ("Items picked", str(len(state.seen.gear)))],
    }


def _cell(world: World, each: SignOff, state: HoldState) -> dict[str, Any]:
    return {
        "entry": each.entry.digest, "act": state.hold.words, "name": each.name, "capacity": each.capacity,
        "at": each.entry.at, "how": HOW_WORDS.get(each.entry.value["how"], each.entry.value["how"]),
        "own_work": bool(each.statement["own_work"]), "void": each.void,
        "ink": ink.shown(world.part(each.entry.value.get("ink", ""))),
    }


def _guest_cell(world: World, each: Guest, state: HoldState) -> dict[str, Any]:
    changed = () if each.stands else ("what the guest was shown has changed since",)
    return {
        "entry": each.entry.digest, "act": f"{state.hold.words}: guest", "name": each.name,
        "capacity": ", ".join(one for one in (each.firm, each.capacity) if one), "at": each.entry.at,
        "how": f"by hand, witnessed by {name_of(world, each.entry.author)}", "own_work": False, "void": changed,
        "ink": ink.shown(world.part(each.entry.value["ink"])),
    }


def _gear(gear: dict[str, Any]) -> dict[str, str]:
    name, state = gear["subject"].partition("/")[2], gear["state"]
    due = f", due {day(state['due'])}" if state["due"] else ""
    held = "in quarantine" if state["quarantined"] else state["custody"]
    return {"id": name, "words": gear["kind"].replace("_", " "), "note": f"{held}{due}"}


def _answers(world: World, running: Running, state: HoldState) -> list[dict[str, Any]]:
    """The answers that bind, stage by stage in the order they are asked."""
    values = {tuple(row["path"]): row["value"] for row in state.seen.inputs}
    stages: dict[str, list[dict[str, str]]] = {}
    for place in places(running.procedure, running.folded):
        if place.stage.name not in state.hold.stages:
            continue
        for path in (place.path, place.felt_path):
            alone = path == (place.prompt.name,) and running.is_asked(place)
            filled = running.read.sources.get(Key(place.prompt.name)) if alone else None
            if path in values or filled is not None:
                source = filled.source if filled is not None and path not in values else ""
                said = {"words": sentence(prompt_words(running.procedure, path)).rstrip("."), "source": source,
                        "said": answer_words(world, running, path, values.get(path)).removesuffix(FROM_REGISTER)}
                stages.setdefault(place.stage.words, []).append(said)
    return [{"words": words, "answers": answers} for words, answers in stages.items()]
