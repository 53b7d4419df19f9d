"""How the load of a record was slung: rig, rules, sharing and zone in words, a line for each leg and each hook."""

from collections.abc import Iterator, Mapping
from typing import Any, NamedTuple

from checklist_app.operations.words import said
from checklist_app.records import figures
from checklist_app.records.saying import says_of

Record = Mapping[str, Any]
ASKED = (("rig", "Rig"), ("legs_given", "Legs given by"), ("rule_set", ""),
         ("sling_temperature_c", "Temperature of the slings"),
         ("chemicals", "What gets onto the slings"), ("way", "Where it is lifted, and how it moves"))
UNITS = {"sling_temperature_c": " °C"}
TOLD = frozenset({"sharing", "zone", "stiff", "running_holds"})
PARTS = (("hitch_share", "hitch"), ("bend_share", "bend"), ("edge_share", "edge"), ("over_hook_share", "hook"),
         ("heat_share", "heat"), ("top_shackle_share", "shackle at the top"),
         ("bottom_shackle_share", "shackle at the bottom"))


class Line(NamedTuple):
    """One leg, in words: what it is, what it pulls, and what is used of the weakest thing in it."""

    leg: str
    hitch: str
    long: str
    angle: str
    pull: str
    share: str
    factors: str
    weakest: str
    used: str


def quantities(record: Record) -> dict[str, Any]:
    """Every quantity of the evaluation by its name."""
    return {one["name"]: one["value"] for one in record["evaluation"]["quantities"]}


def rules(record: Record) -> list[str]:
    """What was chosen, a sentence each; a record of an older procedure asked less."""
    known = quantities(record)
    told = [f"{words or says_of(record).rules}: {known[name]}{UNITS.get(name, '')}." for name, words in ASKED
            if known.get(name) not in (None, "")]
    told += [f"{check['title'].capitalize()}: {check['reason']}." for check in record["evaluation"]["checks"]
             if check["quantity"] in TOLD and check.get("reason")]

    return told


def legs(record: Record) -> list[Line]:
    """One line for each leg, in the order of their rows."""
    known = quantities(record)
    return [line(record, known, label) for label in labels(known, "leg_load_t")]


def line(record: Record, known: Mapping[str, Any], label: str) -> Line:
    checks = [check for check in record["evaluation"]["checks"]
              if check["row"] == label and check["kind"] == "strength" and not check["quantity"].startswith("hook_")]
    weakest = min(checks, key=figures.rank, default=None)
    shares = [f"{words} {number(known[f'{name}[{label}]'])}" for name, words in PARTS
              if float(known.get(f"{name}[{label}]") or 1.0) != 1.0]

    return Line(
        label.replace("_", " "), str(known.get(f"hitch[{label}]", figures.NOTHING)),
        measured(known, f"leg_m[{label}]", "m"), measured(known, f"leg_angle_deg[{label}]", "°"),
        measured(known, pulled(known, label), "t"), share(known.get(f"leg_share[{label}]")),
        ", ".join(shares) or "none", str(weakest["title"]).partition(",")[0] if weakest else figures.NOTHING,
        figures.used(weakest) if weakest else figures.NOTHING)


def pulled(known: Mapping[str, Any], label: str, on: str = "leg") -> str:
    """The name of a pull in a leg or on a hook: as the load is moved, in records that know it; else at rest."""
    moved = f"{on}_pull_t[{label}]"
    return moved if known.get(moved) is not None else f"{on}_load_t[{label}]"


def hooks(record: Record) -> list[tuple[str, str, str, str]]:
    """Two hooks, one line each: what hangs on it, at which angle, and what is used of its hoist."""
    known = quantities(record)
    found = {check["row"]: check for check in record["evaluation"]["checks"]
             if check["quantity"] == "hook_hoist_strength"}
    return [(label.replace("_", " "), measured(known, pulled(known, label, "hook"), "t"),
             measured(known, f"hook_angle_deg[{label}]", "°"),
             figures.used(found[label]) if label in found else figures.NOTHING)
            for label in labels(known, "hook_load_t")]


def spread(record: Record) -> list[str]:
    """Nominal and worst of what governed, and the entry that moves it most."""
    check = figures.governing(record)
    if check is None or "why" in check:
        return []
    told = [f"{figures.title(check)} governs: {figures.used(check)}, {check['verdict']}."]
    if check.get("driver"):
        told.append(f"Moved most by: {figures.spoken(str(check['driver']))}.")

    return told


def from_memory(record: Record) -> list[str]:
    """Every limit that rests on a figure nobody read in its source; such a figure makes a verdict stricter only."""
    found = (check for check in record["evaluation"]["checks"]
             if check["source_status"] == "from memory" or "from memory" in check["rule_set"])
    return list(dict.fromkeys(f"{check['title'].capitalize()}: {check['rule_set']}." for check in found))


def labels(known: Mapping[str, Any], name: str) -> Iterator[str]:
    """Labels of the rows of which a quantity is known."""
    return (each.removeprefix(f"{name}[").removesuffix("]") for each in known if each.startswith(f"{name}["))


def measured(known: Mapping[str, Any], name: str, unit: str) -> str:
    return figures.measured(known.get(name), unit)


def share(value: Any) -> str:
    """A share of the load in whole per cent.

    >>> share("0.5702"), share(None)
    ('57\\xa0%', '–')
    """
    return figures.NOTHING if value is None else said(100.0 * float(value), "%")


def number(value: Any) -> str:
    """A factor with two digits.

    >>> number("0.8")
    '0.80'
    """
    return f"{float(value):.2f}"
