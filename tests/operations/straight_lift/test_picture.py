"""The drawing is the lift: measured in it, lengths and angles are those of the quantities."""

import math
import re
from dataclasses import replace

import pytest

from checklist_app.operations.drawing import Arc, Dimension, Drawing, Line, Point, Polyline, Role, Text
from checklist_app.operations.evaluate import Evaluation, assess
from checklist_app.operations.graph import DontKnow, Stopped
from checklist_app.operations.svg import svg
from checklist_app.operations.task import Measured, Task
from tests.operations.straight_lift.lifts import TABLE, hoist, lift, sling
from tests.operations.straight_lift.rigged import four, one, running, three, two_hooks

LIFTS = {
    "symmetric": lift(),
    "off centre": lift(cg_x_m=0.65),
    "unequal legs": lift({"leg_length_m": 1.1}, {"leg_length_m": 0.8}, cg_x_m=0.65),
    "one eye lower": lift(right_eye_higher_m=-0.3, both={"leg_length_m": 1.5}, cg_z_m=-0.5),
    "aside": lift(cg_x_m=0.55, cg_y_m=0.08),
    "nobody knows where along the eyes": lift(cg_x_m=DontKnow()),
}


def drawn(task: Task) -> tuple[Evaluation, Drawing]:
    ev = assess(TABLE, task, with_spread=False)
    assert isinstance(ev.picture, Drawing)

    return ev, ev.picture


def sling_line(picture: Drawing, side: str) -> Line:
    (found,) = [p for p in picture.parts if isinstance(p, Line) and f"sling_strength[{side}]" in p.about]

    return found


def from_vertical_deg(start: Point, end: Point) -> float:
    return math.degrees(math.atan2(abs(end[0] - start[0]), start[1] - end[1]))


@pytest.mark.parametrize("name", LIFTS)
@pytest.mark.parametrize("side", ["left", "right"])
def test_a_sling_is_drawn_at_its_angle_and_length(name: str, side: str) -> None:
    ev, picture = drawn(LIFTS[name])
    line = sling_line(picture, side)
    assert line.start == picture.hook == (0.0, 0.0)
    assert from_vertical_deg(line.start, line.end) == pytest.approx(ev[f"leg_angle_deg[{side}]"], abs=1e-6)
    assert math.dist(line.start, line.end) == pytest.approx(ev[f"leg_m[{side}]"], abs=1e-9)


@pytest.mark.parametrize("name", LIFTS)
def test_the_centre_of_gravity_hangs_straight_under_the_hook(name: str) -> None:
    ev, picture = drawn(LIFTS[name])
    (plumb,) = [p for p in picture.parts if isinstance(p, Line) and p.role is Role.PLUMB]
    assert plumb.end == pytest.approx((0.0, -ev["plumb_m"]), abs=1e-9)


def test_the_body_lies_at_the_tilt_it_will_hang_at() -> None:
    ev, picture = drawn(LIFTS["off centre"])
    (body,) = [p for p in picture.parts if isinstance(p, Polyline) and p.role is Role.OUTLINE]
    low_left, low_right = body.points[:2]
    slope = math.degrees(math.atan2(low_right[1] - low_left[1], low_right[0] - low_left[0]))
    assert slope == pytest.approx(ev["hung_tilt_along_deg"], abs=1e-9) and slope < 0.0


def test_the_floor_is_as_far_under_the_load_as_it_is_lifted() -> None:
    ev, picture = drawn(LIFTS["symmetric"])
    (floor,) = [p for p in picture.parts if isinstance(p, Line) and p.role is Role.GROUND]
    assert floor.start[1] == pytest.approx(-ev["underside_below_hook_m"] - ev["lift_height_m"])


def test_members_carry_pull_angle_and_the_highest_utilisation_of_their_leg() -> None:
    ev, picture = drawn(lift({"sling": sling(0.7)}, cg_x_m=0.45))
    words = {p.words for p in picture.parts if isinstance(p, Text)}
    pull, angle = ev["leg_load_t[left]"], ev["leg_angle_deg[left]"]
    assert {f"{pull:.2f} t", f"{angle:.1f}°", "left 1.00 m"} <= words
    assert f"up to {round(100 * ev.check('sling_strength[left]').outcome[0] / 0.7)} %" in words
    assert f"left leg at {angle:.1f}° from vertical pulls {pull:.2f} t" in picture.label


def test_the_sling_whose_length_is_being_entered_is_drawn_in_chalk() -> None:
    picture = assess(TABLE, lift()).picture
    assert isinstance(picture, Drawing)
    plain = svg(picture, 390)
    (line,) = re.findall(r'<line class="d-sling[^"]*" ([^>]*) data-about="[^"]*leg_length_m\[left\]"', plain)
    assert f'<line class="d-fine d-now" {line}/>' in svg(picture, 390, "leg_length_m[left]")
    assert "d-now" not in plain


def test_over_the_limit_is_never_drawn_as_100_percent() -> None:
    _, picture = drawn(lift(both={"sling": sling(0.576)}))
    assert "up to 101 %" in {p.words for p in picture.parts if isinstance(p, Text)}


def test_what_is_left_over_the_hook_is_measured_up_to_its_end_stop() -> None:
    ev, picture = drawn(lift())
    (left,) = [p for p in picture.parts if isinstance(p, Dimension) and "headroom" in p.about]
    assert math.dist(left.start, left.end) == pytest.approx(ev.check("headroom").outcome[1])


def test_heights_nobody_gave_are_left_out_and_the_legs_are_drawn_all_the_same() -> None:
    missing = dict.fromkeys(("bottom_z_m", "top_z_m", "lift_height_m", "highest_hook_m", "mass_kg", "day"))
    _, picture = drawn(lift(**missing))
    roles = {p.role for p in picture.parts if isinstance(p, Line | Polyline)}
    assert Role.GROUND not in roles and Role.OUTLINE not in roles
    assert sling_line(picture, "left") and sling_line(picture, "right")


@pytest.mark.parametrize("task, words", [
    (Task(), "two legs"), (lift(cg_x_m=None), "eyes, legs and centre"),
    (lift(both={"leg_length_m": 0.4}), "eyes, legs and centre"),
])
def test_without_eyes_legs_and_centre_of_gravity_the_drawing_waits(task: Task, words: str) -> None:
    picture = assess(TABLE, task).picture
    assert isinstance(picture, Stopped) and words in str(picture)


def test_rows_given_right_first_are_drawn_as_they_are_and_not_from_behind() -> None:
    there = lift(cg_x_m=0.6)
    (_, one), (_, other) = drawn(there), drawn(replace(there, rows={"leg": ("right", "left")}))
    for side in ("left", "right"):
        assert sling_line(one, side).end == pytest.approx(sling_line(other, side).end, abs=1e-12)
    assert sling_line(one, "left").end[0] < 0.0 < sling_line(one, "right").end[0]


def test_with_spread_the_drawing_stays_at_what_was_entered() -> None:
    ev = assess(TABLE, lift(cg_x_m=Measured(0.5, "by eye")))
    assert isinstance(ev.picture, Drawing)
    assert from_vertical_deg((0.0, 0.0), sling_line(ev.picture, "left").end) == pytest.approx(30.0)


RIGS = {"one": one(cg_x_m=0.05), "three": three(cg_y_m=0.25), "four": four(cg_x_m=0.65), "hooks": two_hooks(),
        "hooks apart": two_hooks(hooks=(-0.2, 1.5), over_m=0.3)}


@pytest.mark.parametrize("rig", RIGS)
def test_every_rig_is_drawn_as_it_was_worked_out(rig: str) -> None:
    ev, picture = drawn(RIGS[rig])
    end = picture.others[0]
    for label in RIGS[rig].rows["leg"]:
        eye = ev[f"hung_eye[{label}]"]
        side, beside = sling_line(picture, label), sling_line(end, label)
        assert side.end == pytest.approx((eye.x, eye.z), abs=1e-9)
        assert beside.end == pytest.approx((eye.y, eye.z), abs=1e-9)
        away = (side.start[0] - side.end[0], beside.start[0] - beside.end[0], side.start[1] - side.end[1])
        if rig != "four":
            assert math.hypot(*away) == pytest.approx(ev[f"leg_m[{label}]"], abs=1e-6)
        assert math.hypot(*away) <= ev[f"leg_m[{label}]"] + 1e-6
        beta = math.degrees(math.atan2(math.hypot(*away[:2]), away[2]))
        assert beta == pytest.approx(ev[f"leg_angle_deg[{label}]"], abs=1e-6)


@pytest.mark.parametrize("rig", [rig for rig in RIGS if "hooks" not in rig])
def test_under_one_hook_the_centre_of_gravity_hangs_plumb_in_every_view(rig: str) -> None:
    _, picture = drawn(RIGS[rig])
    for view in (picture, *picture.others[:1]):
        (plumb,) = [p for p in view.parts if isinstance(p, Line) and p.role is Role.PLUMB]
        assert plumb.end[0] == pytest.approx(0.0, abs=1e-9) and plumb.end[1] < 0.0


@pytest.mark.parametrize("rig", ["four", "hooks"])
def test_what_governs_is_named_in_the_drawing_of_every_rig(rig: str) -> None:
    ev = assess(TABLE, {"four": four(), "hooks": two_hooks()}[rig])
    assert isinstance(ev.picture, Drawing) and ev.governs is not None
    said = {leaf.words for leaf in ev.picture.leaves() if isinstance(leaf, Text)}
    assert f"{ev.governs.clause.title.partition(',')[0]} governs" in said


def test_the_hoist_of_one_of_two_hooks_is_named_and_drawn_heavy() -> None:
    ev = assess(TABLE, two_hooks(each_hook={"hook_hoist": hoist(0.7)}), with_spread=False)
    assert isinstance(ev.picture, Drawing) and ev.governs is not None and ev.governs.name == "hook_hoist_strength[left]"
    heavy = [p for p in ev.picture.parts if isinstance(p, Line | Arc) and p.role is Role.GOVERNS]
    assert heavy and all("hoist_strength" in p.about for p in heavy)
    said = [leaf for leaf in ev.picture.leaves() if isinstance(leaf, Text)]
    (told,) = {leaf.at for leaf in said if leaf.words.endswith("governs")}
    assert "left 1.50 m" in {leaf.words for leaf in said if leaf.at == told}, "it stands with the words of its leg"


def test_one_sling_is_drawn_over_its_hook_and_called_one() -> None:
    drawing = assess(TABLE, running(), with_spread=False).picture
    assert isinstance(drawing, Drawing)
    assert "The load on one sling that runs over the hook" in drawing.label
    over = [leaf for leaf in drawing.parts if isinstance(leaf, Arc) and "running_holds" in leaf.about]
    assert over and over[0].centre == (0.0, 0.0)
    two = assess(TABLE, lift(), with_spread=False).picture
    assert isinstance(two, Drawing) and "one hook" in two.label
    assert not [leaf for leaf in two.parts if isinstance(leaf, Arc) and "running_holds" in leaf.about]
