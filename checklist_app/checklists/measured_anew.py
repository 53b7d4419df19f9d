"""What a register says in axes of its own is shown beside the question, and never taken over unasked."""
from checklist_app.checklists.filled import build_state
from checklist_app.checklists.running import Running
from checklist_app.operations.fields import Field, FieldType, read_number

ABOVE = {"cg_z_m": "bottom_z_m"}
"""A height counts from the underside of the load, where the register says how high that lies."""
WAYS = {"cg_x_m": "lengthwise", "cg_y_m": "crosswise", "cg_z_m": "high"}
PLAIN = Field("coordinate", "coordinate", FieldType.NUMBER, "m")


def register_says(now: Running, name: str) -> str:
    """What the register says of a coordinate of the load, in words; empty where it says nothing."""
    text = _text(now, name)
    if name not in now.procedure.measured_anew or not text:
        return ""
    said = f"The register says {text} m {WAYS.get(name, '')}".rstrip() + ", in the load's own axes."
    height = offered(now, name)
    if height:
        bottom = _facts(now, ABOVE[name])
        return f"{said} Its underside lies at {bottom} m there: {height} m over that. Confirm or measure."
    return f"{said} They need not begin in the middle between its feet: measure, or ask whoever found it."


def offered(now: Running, name: str) -> str:
    """The height over its underside, to be confirmed by a tap; empty where it cannot be told."""
    if name not in now.procedure.measured_anew or name not in ABOVE:
        return ""
    at, bottom = (read_number(text, PLAIN) for text in (_text(now, name), _facts(now, ABOVE[name])))
    return f"{at - bottom:.2f}" if isinstance(at, float) and isinstance(bottom, float) else ""


def _text(now: Running, name: str) -> str:
    state = now.folded.values.get(("build_state",), {}).get("text", "")
    found = build_state(now.load, state) if now.load is not None else None
    return str((found or {}).get(name, ""))


def _facts(now: Running, name: str) -> str:
    return str(now.load.facts.get(name, "")) if now.load is not None else ""
