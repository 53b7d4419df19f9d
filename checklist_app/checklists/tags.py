"""Gear as the stamped tag it carries, and the reason why it cannot be used."""
from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from checklist_app.checklists.register import USABLE, Item
from checklist_app.checklists.words import day, sentence
from checklist_app.operations.fields import Field, FieldType, read_number
from checklist_app.operations.kinds import GEAR_SET, KINDS
from checklist_app.operations.words import figure

COLOURS: Mapping[float, str] = {1.0: "violet", 2.0: "green", 3.0: "yellow", 4.0: "grey", 5.0: "red", 6.0: "brown",
                                8.0: "blue", 10.0: "orange"}
SLINGS = frozenset({"flat_sling", "round_sling"})
RATINGS = ("ratings", "ratings_across")
FIGURE = Field("figure", "figure", FieldType.NUMBER)
LASHINGS = frozenset({"web_lashing", "chain_lashing", "rope_lashing"})
CARRIERS = frozenset({"pallet", "vehicle"})
PICKABLE = USABLE | {"incoming"}


@dataclass(frozen=True)
class Tag:
    """What is stamped on the tag and known of the item. `out` says why it cannot be picked."""

    id: str
    subject: str
    version: str
    words: str
    wll: str
    unit: str
    colour: str
    colour_words: str
    note: str
    out: str


def tag(item: Item) -> Tag:
    """The tag of one item as it stands today."""
    wll_t = _number(item.facts.get("wll_t")) or _lowest(item)
    colour = COLOURS.get(wll_t or 0.0, "") if item.kind in SLINGS else ""
    out = why_out(item)

    return Tag(
        id=item.id, subject=item.subject, version=item.version or "", words=_words(item),
        wll=figure(wll_t, "t").rstrip("0").rstrip(".") if wll_t else "", unit="t",
        colour=f"{wll_t:g}" if wll_t and colour else "", colour_words=colour, note=_note(item), out=out,
    )


def why_out(item: Item) -> str:
    """Why nobody may pick this item; empty when it may be picked."""
    if item.disputed:
        return "Two versions differ"
    if item.fault or item.version is None:
        return "Cannot be read"
    if item.state.quarantined:
        return "In quarantine"
    if item.state.custody not in PICKABLE:
        return item.state.custody.capitalize()
    if item.state.overdue:
        return "Examination overdue"

    return ""


def _words(item: Item) -> str:
    kind = KINDS.get(item.kind)
    words = (kind.words if kind else item.kind or "unknown").capitalize()
    if item.kind == GEAR_SET:
        return f"{words}: {', '.join(str(row.get('item', '')) for row in item.facts.get('items', ()))}"
    length_m = _number(item.facts.get("length_m"))
    form = str(item.facts.get("form", "")) if item.kind in CARRIERS else ""
    words = form.capitalize() or words
    named = f"{words}, {item.title}" if item.title != item.id else words
    legs = _number(item.facts.get("legs"))
    named = f"{named} of {legs:g} legs" if legs is not None and legs > 1.0 else named

    return ", ".join(filter(None, (named, f"{figure(length_m, 'm')} m" if length_m else "", _steps(item), _read(item))))


def _lowest(item: Item) -> float | None:
    """Of what is rated by the angle of its pull the lowest rating: what it may carry whichever way it is pulled."""
    ratings = [_number(row.get("wll_t")) for name in RATINGS for row in item.facts.get(name) or ()]
    return min((rating for rating in ratings if rating), default=None) if all(ratings) else None


def _read(item: Item) -> str:
    """What else one reads from the label or plate of what holds a load on its way."""
    facts = item.facts
    if item.kind in LASHINGS:
        lc, stf = facts.get("lc_dan"), facts.get("stf_dan")
        rated = f"LC {lc} daN" if lc else f"WLL {facts.get('wll_kg')} kg"
        return f"{rated}, STF {stf} daN" if stf else f"{rated}, no STF"
    said = {"width_m": "{} m wide", "gross_t": "{} t", "payload_kg": "payload {} kg", "rated_kg": "{} kg"}
    if item.kind not in CARRIERS:
        return ""
    return ", ".join(words.format(facts[name]) for name, words in said.items() if facts.get(name))


def _steps(item: Item) -> str:
    """The ratings, step by step: "2.5 t up to 30°, 2 t up to 45°"."""
    return ", ".join(f"{row.get('wll_t')} t up to {row.get('up_to_deg')}°" for row in item.facts.get("ratings") or ())


def _note(item: Item) -> str:
    state = item.state
    if item.fault:
        return item.fault
    if state.quarantined:
        return f"{'; '.join(state.quarantined).rstrip('.')}. Since {day(state.since)}."
    if state.overdue:
        return f"Was due {day(state.due)}."
    if item.kind == GEAR_SET:
        return sentence(item.title) if item.title != item.id else ""
    examined = f"Next due {day(state.due)}." if state.due else "No examination entered."

    return f"Incoming: it can be assessed, not signed. {examined}" if state.custody == "incoming" else examined


def _number(text: Any) -> float | None:
    """The figure of a checked fact, as typed: with comma or point; nothing for what is not there."""
    number = read_number(str(text), FIGURE) if text is not None else None
    return number if isinstance(number, float) else None
