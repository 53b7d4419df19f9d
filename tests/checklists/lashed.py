"""A generating set lashed on a lorry or to its skid, by answering pages: the rigger's part up to the hold point."""
from checklist_app.checklists.running import running
from checklist_app.checklists.slots import is_slot
from tests.checklists.shop import TODAY, Shop

VEHICLE, PALLET = "vehicle_lashing", "pallet_lashing"
BODY = {"cg_x_m": ("0.03", "trial"), "cg_y_m": ("0", "trial"), "cg_z_m": ("0.62", "trial"),
        "length_m": ("1.55", "tape"), "width_m": ("0.80", "tape"), "height_m": ("1.25", "tape"),
        "base_length_m": ("1.30", "tape"), "base_width_m": ("0.75", "tape"), "behind_headboard_m": ("3.20", "tape"),
        "forks_apart_m": ("1.00", "tape"), "forks_reach_m": ("1.15", "tape")}
NOT_USED = ("edge_gives_m", "other_kg", "floor_kg_m")
SAID = {"route": "by road", "rule_set": "EN 12195-1:2010", "stands": "on feet or bearers at its edges",
        "bearing": "on feet, anywhere on the deck", "load_pair": "bare metal foot on timber, pallet or plywood",
        "load_surface": "oil or grease", "deck_pair": "sawn timber or wooden pallet on plywood or laminate",
        "deck_surface": "swept clean, wet", "driver": "J. Osei, Ferrow Haulage", "bound_for": "Port of Wexmouth",
        "forks_enter": "from a side, the forks across its length"}
ON_LOAD = {"at_x_m": "0.55", "at_y_m": "0.30", "at_z_m": "0.85"}
ANCHOR = {VEHICLE: {"anchor_x_m": "1.50", "anchor_y_m": "1.10", "anchor_z_m": "-0.15"},
          PALLET: {"anchor_x_m": "0.85", "anchor_y_m": "0.55", "anchor_z_m": "0"}}
FIRST = {"put_on": "diagonal lashing", "from_body": "the load", "edges": "it bends round no edge",
         "held_dan": "4000", "anchor_dan": "2000", "passes": "it goes to an eye, a ring or the deck"}
TO = {VEHICLE: "the deck", PALLET: "the pallet or skid"}
GEAR = {"vehicle": "machine/V-2", "pallet": "gear/P-3"}


def begin(shop: Shop, operation: str = VEHICLE) -> str:
    """A task on the generating set; its id."""
    given = shop.post("/begin", {"operation": operation, "lift": "GS-60|drained", "place": "pump-bay", "day": TODAY})
    assert given.location is not None, given.html
    return given.location.split("/")[2]


def add(shop: Shop, task: str, group: str = "lashing") -> str:
    """One more row by its button; its id."""
    shop.post(f"/tasks/{task}/lashings", {"act": "add", "row": f"{group}/"})
    return rows(shop, task, group)[-1]


def rows(shop: Shop, task: str, group: str = "lashing") -> tuple[str, ...]:
    """Ids of the rows that stand."""
    return tuple(running(shop.world, task).folded.rows.get(group, ()))


def first_lashing(shop: Shop, task: str, operation: str = VEHICLE) -> str:
    """The one that is filled in by hand; its row."""
    row = add(shop, task)
    pick(shop, task, f"lashing.{row}.lashing_item", "gear/L-01")
    said = {**FIRST, **ON_LOAD, **ANCHOR[operation], "to_body": TO[operation]}
    for step in ("put-on", "ends", "pull"):
        shop.post(f"/tasks/{task}/lashings?step={step}.{row}",
                  {f"lashing/{row}/{name}": text for name, text in said.items()})
    return row


def four_lashings(shop: Shop, task: str, operation: str = VEHICLE) -> tuple[str, ...]:
    """One by hand, three by one tap each: across, lengthwise, and across again."""
    first = first_lashing(shop, task, operation)
    for copied, mirror in ((first, "0"), (first, "1"), ("", "0")):
        shop.post(f"/tasks/{task}/lashings",
                  {"act": "mirror", "mirror": mirror, "row": f"lashing/{copied or rows(shop, task)[2]}"})
        row = rows(shop, task)[-1]
        pick(shop, task, f"lashing.{row}.lashing_item", f"gear/L-0{len(rows(shop, task))}")
        confirm(shop, task, row)
    return rows(shop, task)


def confirm(shop: Shop, task: str, row: str) -> None:
    """Ring and eye of a copied lashing are looked at: rated as those of the first."""
    said = {f"lashing/{row}/{name}": FIRST[name] for name in ("anchor_dan", "held_dan")}
    shop.post(f"/tasks/{task}/lashings?step=pull.{row}", said)


def pick(shop: Shop, task: str, slot: str, subject: str) -> None:
    """Gear in its slot, looked at and felt."""
    shop.post(f"/tasks/{task}/kit/{slot}", {"pick": subject, "felt": "yes"})


def answer_all(shop: Shop, task: str) -> None:
    """Everything else that is asked before the hold points, as it should be."""
    for _ in range(2):
        now = running(shop.world, task)
        for place in now.places():
            if place.row or place.path in now.folded.values or place.stage.name in ("road", "other-end", "rest"):
                continue
            if is_slot(now, place):
                pick(shop, task, place.slot, GEAR[place.prompt.name])
            elif form := _answer(place.prompt.name, place.prompt.kind.value, place.prompt.choices):
                shop.post(f"/tasks/{task}/{place.stage.name}?step={place.step.name}", form)


def lash(shop: Shop, operation: str = VEHICLE) -> str:
    """All of it; the task's id."""
    task = begin(shop, operation)
    four_lashings(shop, task, operation)
    answer_all(shop, task)
    return task


def _answer(name: str, kind: str, choices: tuple[str, ...]) -> dict[str, str]:
    if name in BODY:
        text, how = BODY[name]
        return {name: text, f"{name}.how": how}
    if name in NOT_USED:
        return {f"{name}.not_used": "yes"}
    if name in SAID or kind == "tick":
        return {name: SAID.get(name, "yes")}
    if kind == "choice":
        return {name: choices[0]} if choices else {}
    return {name: "1 and 4"} if kind == "text" else {}
