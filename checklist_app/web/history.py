"""All that was ever said about an item of a register, as sentences, the newest first."""

from collections.abc import Mapping
from typing import Any

from checklist_app.checklists.entry import Entry, Path
from checklist_app.checklists.values import words
from checklist_app.checklists.words import clock, day
from checklist_app.operations.fields import FieldType
from checklist_app.operations.kind import Kind
from checklist_app.operations.kinds import KINDS
from checklist_app.web import current
from checklist_app.web.item_form import headline


def told_of(about: Path) -> list[dict[str, str]]:
    """One line an entry, also those that count for nothing, which say why."""
    found = current.world().item(*about)
    versions = found.versions if found is not None else {}
    lines = []
    for arrival in reversed(current.store().arrivals(about)):
        entry = arrival.entry
        lines.append({"when": clock(entry.at), "who": name_of(entry.author), "what": sentence(entry, versions),
                      "why": reason(entry), "doubt": arrival.doubt})

    return lines


def name_of(person: str) -> str:
    """The name the register of people holds; the id when it was removed."""
    found = current.world().item("person", person)
    return found.title if found is not None else person


def sentence(entry: Entry, versions: Mapping[str, Mapping[str, Any]]) -> str:
    """What an entry says."""
    value = entry.value
    if entry.type == "version":
        return version_sentence(entry, versions)
    if entry.type == "custody":
        return f"{value['text'].capitalize()} since {day(value['since'])}."
    if entry.type == "quarantine":
        return f"Put into quarantine, {day(value['since'])}."
    if entry.type == "release":
        return "Released from quarantine."
    if entry.type == "examination":
        return f"Examined {day(value['on'])}: {value['text']}. Next due {day(value['due'])}."
    if entry.type == "rig":
        return "Lifted as planned and never stopped: how it was slung is offered next time."
    if entry.type == "date":
        return f"Its tag says: next examination due {day(value['text'])}. The report was not seen."

    return entry.type.replace("_", " ").capitalize() + "."


def version_sentence(entry: Entry, versions: Mapping[str, Mapping[str, Any]]) -> str:
    """What a version changed against those it replaced."""
    before = [versions[digest] for digest in entry.replaces if versions.get(digest)]
    kind = KINDS.get(entry.value["schema"].partition("/")[0])
    if not before or kind is None:
        return "First version." if not entry.replaces else "New version."
    changes = changed(kind, before[-1], versions.get(entry.digest, {}))

    return f"New version. {' '.join(changes)}" if changes else "New version, nothing changed."


def changed(kind: Kind, before: Mapping[str, Any], after: Mapping[str, Any]) -> list[str]:
    lines = []
    for field in kind.fields:
        old, new = before.get(field.name), after.get(field.name)
        if old == new:
            continue
        if field.type is FieldType.ROWS:
            lines.append(f"{headline(field.words)} changed.")
        else:
            lines.append(f"{headline(field.words)}: {old or 'nothing'} → {new or 'nothing'}.")

    return lines


def reason(entry: Entry) -> str:
    part = entry.value.get("part") if entry.type not in ("version", "rig") else None
    return words(current.world().part(part)) if part else ""
