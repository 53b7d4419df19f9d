"""How a prompt, an answer and a check are called in a sentence: "right sling", "RS-204", "2400 kg"."""
from checklist_app.checklists.entry import Path
from checklist_app.checklists.places import FELT, label, row_beside
from checklist_app.checklists.procedure import Procedure
from checklist_app.checklists.running import Running
from checklist_app.checklists.values import Value, words
from checklist_app.checklists.world import World
from checklist_app.operations.catalogue import OPERATIONS

SAID = {"dont_know": "don't know", "not_used": "not used", "withdrawn": "no answer", "photo": "a photo",
        "begin": "begun"}
TICKED = {"yes": "yes", "no": "no", "cannot_see": "cannot see it"}


def prompt_words(procedure: Procedure, path: Path) -> str:
    """A prompt with its row, as it is called in the middle of a sentence."""
    one = procedure.one_of(path[0])
    if len(path) == 2:
        return f"{one} {label(path[1])}" if label(path[1]).isdigit() else f"{label(path[1])} {one}"
    name = path[-1].removesuffix(FELT)
    said = _words(procedure, name) + (", looked at and felt" if path[-1].endswith(FELT) else "")
    if len(path) < 3:
        return said
    row = label(path[1])
    return f"{one} {row}, {said}" if row.isdigit() else row_beside(row, said)


def value_words(value: Value | None, world: World) -> str:
    """An answer, as short as it can be said."""
    if value is None:
        return "no answer"
    kind = value["type"]
    if kind == "pick":
        return str(value["subject"]).partition("/")[2] + (f", {value['point']}" if "point" in value else "")
    if kind == "number":
        away = f" ± {value['plus_minus']} {value['unit']}" if "plus_minus" in value else ""
        how = f", {value['how']}" if "how" in value else ""
        gap = "" if value["unit"] == "°" else " "
        return f"{value['text']}{gap}{value['unit']}".strip() + away + how
    if kind == "text":
        return words(world.part(value["part"])) or "words that are not here"
    if kind == "tick":
        return TICKED[value["text"]]
    return SAID.get(kind, str(value.get("text", kind)))


def check_words(running: Running, name: str) -> str:
    """A check as it is called: title and row."""
    bare, _, row = name.partition("[")
    title = next((check.clause.title for check in running.evaluation.checks if check.quantity == bare), bare)
    return row_beside(label(row.rstrip("]")), title) if row else title


def _words(procedure: Procedure, name: str) -> str:
    prompt = procedure.prompt(name)
    if prompt is not None and prompt.words:
        line = f"{prompt.line[:1].lower()}{prompt.line[1:]}, " if prompt.line else ""
        return line + prompt.words.rstrip("?")
    entry = OPERATIONS[procedure.operation].table.entries.get(name)
    return entry.words if entry is not None else name
