"""A load added on the spot: what it weighs and how that is known, its eyes, its centre of gravity."""
from collections.abc import Iterator, Mapping
from typing import Any

from checklist_app.checklists.answer import Request
from checklist_app.checklists.fact_form import Box, boxes, facts_of, faults_of
from checklist_app.operations.fields import Field
from checklist_app.operations.kinds import KINDS

LOAD = KINDS["load"]
STATE, POINT, RATING = "build_states/0/", "pick_points/{}/", "pick_ratings/{}/"
SIDES = ("left", "right")
ASKED_OF_STATE = ("words", "mass_kg", "mass_how", "mass_evidence", "cg_x_m", "cg_y_m", "cg_z_m", "cg_how")
ASKED_OF_POINT = ("x_m", "y_m", "z_m", "evidence")
ONLY_STATE = "as it stands"


def load_boxes(request: Request, faults: Mapping[str, str]) -> dict[str, tuple[Box, ...]]:
    """The questions in their groups: what it is, what it weighs, its heights, its eyes."""
    found = {
        "what": boxes(_fields("", "name"), request, faults),
        "mass": boxes(_fields("build_states", *ASKED_OF_STATE), request, faults, STATE),
        "heights": boxes(_fields("", "bottom_z_m", "top_z_m"), request, faults),
    }
    for number, side in enumerate(SIDES):
        found[side] = (*boxes(_fields("pick_points", *ASKED_OF_POINT), request, faults, POINT.format(number)),
                       *boxes(_fields("pick_ratings", "up_to_deg", "wll_t"), request, faults, RATING.format(number)))
    return found


def facts(request: Request) -> dict[str, Any]:
    """The load as a document of the register, as typed."""
    state = facts_of(_fields("build_states", *ASKED_OF_STATE), request, STATE)
    made: dict[str, Any] = facts_of(_fields("", "name", "bottom_z_m", "top_z_m"), request)
    made["build_states"] = [{"state": ONLY_STATE, **state}]
    if points := list(_points(request)):
        made["pick_points"] = points
    if ratings := list(_ratings(request)):
        made["pick_ratings"] = ratings
    return made


def load_faults(request: Request) -> dict[str, str]:
    """What is wrong, by the field's name in the form."""
    return faults_of(LOAD, facts(request))


def _points(request: Request) -> Iterator[dict[str, Any]]:
    for number, side in enumerate(SIDES):
        typed = facts_of(_fields("pick_points", *ASKED_OF_POINT), request, POINT.format(number))
        if typed:
            yield {"point": side, **typed}


def _ratings(request: Request) -> Iterator[dict[str, Any]]:
    for number, side in enumerate(SIDES):
        typed = facts_of(_fields("pick_ratings", "up_to_deg", "wll_t"), request, RATING.format(number))
        if typed:
            yield {"point": side, **typed}


def _fields(rows: str, *names: str) -> tuple[Field, ...]:
    """Fields of the load's kind, or of one of its rows."""
    fields = LOAD.fields if not rows else next(field.columns for field in LOAD.fields if field.name == rows)
    return tuple(next(field for field in fields if field.name == name) for name in names)
