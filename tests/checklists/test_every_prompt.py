"""Every prompt of the procedure, changed after release: void or not, as listed here; and lowering is never blocked."""
import pytest

from checklist_app.checklists import values
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.procedure import Prompt, PromptKind, procedures
from checklist_app.checklists.running import running
from checklist_app.operations.catalogue import OPERATIONS
from tests.checklists.yard import RIGGER, SUPERVISOR, TASK, Yard, sent, sign

STRAIGHT = procedures()["straight_lift/1"]
VOIDS = {
    "load", "build_state", "place", "landing", "day", "signaller", "team", "hoist", "load_cell", "hook_fitting",
    "top_fitting", "sling", "hitch", "bottom_fitting", "eye", "carrier", "mass_kg", "cg_x_m", "cg_y_m", "cg_z_m",
    "rigging_kg", "eyes_given", "eyes_apart_m", "right_eye_higher_m", "eye_x_m", "eye_y_m", "eye_z_m",
    "leg_length_m", "bottom_z_m", "top_z_m", "lift_height_m", "highest_hook_m", "room_height_m", "loose_pipes",
    "loose_exhaust", "loose_cables", "loose_shaft", "loose_bolts", "loose_parts", "eyes_seated", "eyes_turned",
    "pins_in", "slings_clear", "latches_shut", "mass_known", "weakest_said", "zone_closed", "hook_over",
    "landing_ready", "one_signaller", "way_out",
}
VOIDS_NOTHING = {
    "rigged_photo", "zone_photo", "lifted_mm", "held_s", "hook_load_kg", "tilt_along_deg", "tilt_across_deg",
    "came_free", "eyes_stay", "brake_holds", "clear_of_load", "trial_photo", "way_clear", "still_closed",
    "lines_held", "landing_still", "nothing_new", "lowered", "landed", "secured", "slack", "landed_photo",
    "seen_hook_load_kg", "seen_tilt_deg", "went", "odd", "gear_back", "zone_open", "last_photo",
}
PICKS = {"load": "load/L-1", "place": "place/P-2", "hoist": "machine/H-2", "load_cell": "gear/C-1",
         "hook_fitting": "gear/S-3", "top_fitting": "gear/S-3", "sling": "gear/R-3", "bottom_fitting": "gear/S-3",
         "eye": "gear/E-3", "carrier": "load/L-1"}
PROMPTS = {prompt.name: prompt for prompt in STRAIGHT.prompts()}
SET_DOWN = ("lowered", "landed", "secured", "slack")


def release() -> Yard:
    yard = Yard().ready()
    yard.trial()
    sign(yard, "release", SUPERVISOR)
    assert hold_states(yard.world, running(yard.world, TASK))[0].open
    return yard


def otherwise(yard: Yard, prompt: Prompt) -> None:
    """Another answer at this prompt than the one that stands."""
    group = {"leg": "leg/1-left/", "trial": "trial/01-1/"}.get(prompt.group, "")
    path = group + prompt.name
    entry = OPERATIONS["straight_lift"].table.entries.get(prompt.name)
    if prompt.name == "load":
        yard.item("load", "L-1", "load", {**yard.world.items("load")["L-1"].facts, "name": "Pump 251"})
    if prompt.name in PICKS:
        yard.pick(path, PICKS[prompt.name], "right" if prompt.name == "carrier" else "")
    elif prompt.kind is PromptKind.PHOTO:
        yard.photo(path)
    elif prompt.kind is PromptKind.TEXT:
        yard.text(path, "something else")
    elif prompt.kind is PromptKind.TICK:
        yard.say(path, values.tick("cannot_see"))
    elif prompt.name == "day":
        yard.say(path, values.date("2026-11-26"))
    elif prompt.name in ("build_state", "hitch", "eyes_given") or prompt.choices:
        other = {"build_state": "bare", "hitch": "choked", "eyes_given": "distance"}
        yard.say(path, values.choice(other.get(prompt.name) or prompt.choices[-1]))
    else:
        yard.say(path, values.number("1.7", entry.unit if entry else prompt.unit, "tape"))


def test_the_two_lists_name_every_prompt_of_the_procedure_once() -> None:
    assert PROMPTS.keys() == VOIDS | VOIDS_NOTHING and not VOIDS & VOIDS_NOTHING


@pytest.mark.parametrize("name", sorted(PROMPTS))
def test_a_changed_answer_voids_the_release_or_not_as_listed(name: str) -> None:
    yard = release()
    otherwise(yard, PROMPTS[name])
    (signed,) = hold_states(yard.world, running(yard.world, TASK))[0].sign_offs
    assert bool(signed.void) == (name in VOIDS), signed.void
    for said in signed.void:
        assert ": " in said and "_" not in said, said


@pytest.mark.parametrize("name", sorted(name for name, prompt in PROMPTS.items() if prompt.felt))
def test_gear_no_longer_looked_at_and_felt_voids(name: str) -> None:
    yard = release()
    group = "leg/1-left/" if PROMPTS[name].group else ""
    yard.say(f"{group}{name}_felt", values.tick("no"))
    (signed,) = hold_states(yard.world, running(yard.world, TASK))[0].sign_offs
    assert "looked at and felt changed" in signed.void[0]


@pytest.mark.parametrize("trouble", ["nothing signed", "void", "stopped"])
def test_lower_land_and_secure_are_taken_whatever_stands_against_going_on(trouble: str) -> None:
    yard = Yard().ready() if trouble == "nothing signed" else release()
    if trouble == "void":
        yard.pick("leg/2-right/sling", "gear/R-4")
    if trouble == "stopped":
        sent(yard, f"/tasks/{TASK}/stop", stop="yes")
    for name in SET_DOWN:
        given = sent(yard, f"/tasks/{TASK}/move?step=set", RIGGER, **{name: "yes"})
        assert given.status == 303 and [entry.path for entry in given.keep] == [(name,)]
    stands = running(yard.world, TASK).folded.values
    assert all(stands[(name,)]["text"] == "yes" for name in SET_DOWN)
