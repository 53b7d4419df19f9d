"""Outside what a clause of fittings covers it refuses, in words a rigger can act on."""

import math
from collections.abc import Callable

import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.fittings import (
    bs_eyes,
    cold,
    din_eyes,
    eye_rating,
    eye_use,
    hoist_rings,
    hooks,
    shackle_sizes,
    shackles,
    us_eyes,
)
from checklist_app.mechanics.fittings.eye_marking import EyeMarking, PullPlane, Seating
from checklist_app.mechanics.fittings.eye_use import EyeUse
from checklist_app.mechanics.fittings.hooks import HookLoading
from checklist_app.mechanics.fittings.shackles import Form, Pin, PinUse

NAN = math.nan
IN_PLANE, ACROSS, FLAT, GAP = PullPlane.IN_PLANE, PullPlane.ACROSS, Seating.FLAT, Seating.GAP
DIN, COLLAR, AS = EyeMarking.DIN_580, EyeMarking.BS_4278_COLLAR, EyeMarking.AS_2317_COLLAR
LINK = EyeMarking.BS_4278_LINK


@pytest.mark.parametrize("call, words", [
    (lambda: shackle_sizes.en_13889_wll_t(20), "diameter of the shackle's body is 20; allowed: 6, 8, 9"),
    (lambda: shackle_sizes.marking_fits_size(NAN, 19), "WLL marked on the shackle is nan"),
    (lambda: shackle_sizes.lloyds_dee_swl_t(10, 12, True), "10 and 12 mm; allowed: a body of 11 mm"),
    (lambda: shackle_sizes.lloyds_dee_swl_t(33, 14, False), "33 and 14 mm"),
    (lambda: shackles.side_load_factor(90.1, Form.BOW, Pin.SCREW), "90.1; allowed: 0 to 90°"),
    (lambda: shackles.side_load_factor(NAN, Form.BOW, Pin.SCREW), "from in line is nan"),
    (lambda: shackles.side_load_factor(6.0, Form.DEE, Pin.SCREW), "pull aside on a dee shackle is 6"),
    (lambda: shackles.side_load_factor(6.0, Form.BOW, Pin.ROUND), "pull aside on a round pin is 6"),
    (lambda: shackles.pin_use_factor(PinUse.LINE_RUNS), "a line that runs over the pin"),
    (lambda: shackles.pin_use_factor(PinUse.CHOKING_PART), "the running part of a choked sling on the pin"),
    (lambda: shackles.pin_use_factor(PinUse.SEVERAL_LEGS), "several legs on the pin"),
    (lambda: shackles.pin_use_factor(PinUse.NOT_HOME), "not screwed home"),
    (lambda: shackles.pin_use_factor(PinUse.OTHER_BOLT), "a bolt instead of its own pin"),
    (lambda: shackles.shackle_temperature_factor(-21.0, -20.0), "temperature of the shackle is -21"),
    (lambda: shackles.shackle_temperature_factor(-41.0, -40.0), "is -41; allowed: −40 to 400 °C"),
    (lambda: cold.coldest_c(-60.1), "lowest temperature of the fitting is -60.1; allowed: −60 to 20 °C"),
    (lambda: cold.coldest_c(21.0), "lowest temperature of the fitting is 21"),
    (lambda: cold.coldest_c(NAN), "lowest temperature of the fitting is nan"),
    (lambda: shackles.shackle_temperature_factor(0.0, NAN), "temperature of the shackle is 0"),
    (lambda: din_eyes.eye_temperature_factor(-31.0, -30.0), "is -31; allowed: −30 to 200 °C"),
    (lambda: shackles.shackle_temperature_factor(401.0, -20.0), "temperature of the shackle is 401"),
    (lambda: shackles.shackle_temperature_factor(NAN, -20.0), "temperature of the shackle is nan"),
    (lambda: shackles.gathered_legs_factor(Form.DEE, 2, 60.0), "legs in one dee shackle is 2; allowed: 1, in line"),
    (lambda: shackles.gathered_legs_factor(Form.BOW, 3, 60.0), "legs in one bow shackle is 3; allowed: 1 or 2"),
    (lambda: shackles.gathered_legs_factor(Form.BOW, 2, 120.1), "legs in the bow is 120.1; allowed: 0 to 120°"),
    (lambda: shackles.gathered_legs_factor(Form.BOW, 2, NAN), "legs in the bow is nan"),
    (lambda: eye_use.eye_use_factor(EyeUse.REEVED, False), "one sling reeved through two eyes"),
    (lambda: eye_use.eye_use_factor(EyeUse.HOOK_FREE, True), "moves freely in the eye; allowed: a shackle that moves"),
    (lambda: eye_use.eye_use_factor(EyeUse.HOOK_FORCED, False), "forced into the eye"),
    (lambda: eye_use.eye_use_factor(EyeUse.HOOK_TIP, False), "the tip of a hook"),
    (lambda: eye_use.eye_use_factor(EyeUse.DIRECT, False), "a sling straight through the eye"),
    (lambda: hooks.hook_loading_factor(HookLoading.TIP), "load on the hook is on the tip; allowed: in the bowl"),
    (lambda: hooks.hook_loading_factor(HookLoading.SIDE), "aside, out of the hook's plane"),
    (lambda: hooks.hook_loading_factor(HookLoading.BACK), "on the back"),
    (lambda: hooks.hook_loading_factor(HookLoading.LATCH), "on the latch"),
    (lambda: hooks.legs_in_hook_factor(3, 20.0), "legs straight in one hook is 3; allowed: 1 or 2; more in a link"),
    (lambda: hooks.legs_in_hook_factor(2, 45.1), "from its axis is 45.1; allowed: 0 to 45°"),
    (lambda: hooks.legs_in_hook_factor(2, NAN), "from its axis is nan"),
    (lambda: hooks.master_link_factor(121.0), "angle between the legs in the link is 121"),
    (lambda: hooks.link_hangs_free(0.0, 50.0), "inner width of the link is 0"),
    (lambda: hooks.link_hangs_free(60.0, NAN), "thickness of the hook is nan"),
    (lambda: din_eyes.din_eye_wll_t(EyeMarking.NONE, 20, 0.0, IN_PLANE, FLAT, False), "no standard marked"),
    (lambda: din_eyes.din_eye_wll_t(DIN, 20, 0.0, IN_PLANE, GAP, False), "a gap under the collar"),
    (lambda: din_eyes.din_eye_wll_t(DIN, 14, 0.0, IN_PLANE, FLAT, False), "thread of the eye is M14; allowed: M8, M10"),
    (lambda: din_eyes.din_eye_wll_t(DIN, 8, 0.0, IN_PLANE, FLAT, True), "moved is M8; allowed: M10, M12"),
    (lambda: din_eyes.din_eye_wll_t(DIN, 20, 46.0, ACROSS, FLAT, False), "pull across the eye is 46"),
    (lambda: din_eyes.din_eye_wll_t(DIN, 20, 91.0, IN_PLANE, FLAT, False), "91.0° from its axis; allowed: pull up to"),
    (lambda: din_eyes.din_eye_wll_t(DIN, 20, NAN, IN_PLANE, FLAT, False), "angle of the pull is nan"),
    (lambda: din_eyes.din_eye_wll_t(EyeMarking.DIN_580_2003, 20, 46.0, IN_PLANE, FLAT, False), "pull up to 45°"),
    (lambda: din_eyes.eye_temperature_factor(201.0, -20.0), "temperature of the eye is 201"),
    (lambda: bs_eyes.collar_axial_wll_t(14), "thread of the collar eyebolt is M14"),
    (lambda: bs_eyes.collar_pair_wll_t(20, 91.0), "pair of eyebolts is 91; allowed: 0 to 90°"),
    (lambda: bs_eyes.collar_eye_wll_t(COLLAR, 20, 46.0, IN_PLANE, FLAT), "pair of eyebolts is 92"),
    (lambda: bs_eyes.collar_eye_wll_t(COLLAR, 20, 10.0, ACROSS, FLAT), "pull across the eyebolt is 10"),
    (lambda: bs_eyes.collar_eye_wll_t(AS, 20, 91.0, IN_PLANE, FLAT), "from the axis of the eyebolt is 91"),
    (lambda: bs_eyes.collar_eye_wll_t(COLLAR, 20, 10.0, IN_PLANE, GAP), "seat of the eyebolt is a gap"),
    (lambda: bs_eyes.collar_eye_wll_t(DIN, 20, 10.0, IN_PLANE, FLAT), "marking of the eye is DIN 580"),
    (lambda: bs_eyes.dynamo_eye_wll_t(1.0, 5.1), "dynamo eyebolt from its axis is 5.1; allowed: in line"),
    (lambda: bs_eyes.dynamo_eye_wll_t(NAN, 0.0), "WLL marked on the dynamo eyebolt is nan"),
    (lambda: us_eyes.shoulder_factor(90.1), "from the axis of the eyebolt is 90.1"),
    (lambda: us_eyes.shoulder_factor(NAN), "from the axis of the eyebolt is nan"),
    (lambda: us_eyes.b18_15_lb("9/16", 0.0, IN_PLANE, FLAT), "size of the eyebolt is 9/16"),
    (lambda: us_eyes.b18_15_lb("1/4", 31.0, IN_PLANE, FLAT), "1/4 in eyebolt from its axis is 31; allowed: 0 to 30°"),
    (lambda: us_eyes.b18_15_lb("1/2", 30.0, ACROSS, FLAT), "pull across the eyebolt is 30"),
    (lambda: us_eyes.b18_15_lb("1/2", 0.0, IN_PLANE, GAP), "seat of the eyebolt is a gap"),
    (lambda: us_eyes.metric_lb(13, 0.0, IN_PLANE, FLAT), "thread of the eyebolt is M13"),
    (lambda: us_eyes.metric_lb(20, 46.0, IN_PLANE, FLAT), "from the axis of the eyebolt is 46; allowed: 0 to 45°"),
    (lambda: us_eyes.plain_eye_lb(1000.0, 6.0), "eyebolt without shoulder is 6; allowed: in line"),
    (lambda: us_eyes.plain_eye_lb(NAN, 0.0), "rating marked on the eyebolt is nan"),
    (lambda: eye_rating.eye_wll_t(EyeMarking.NONE, "M20", 1.0, 0.0, IN_PLANE, FLAT, False), "no standard marked"),
    (lambda: eye_rating.eye_wll_t(DIN, "M20", 0.0, 0.0, IN_PLANE, FLAT, False), "WLL stamped on the eye is 0"),
    (lambda: eye_rating.eye_wll_t(DIN, "3/4 BSW", 1.0, 0.0, IN_PLANE, FLAT, False), "a metric thread such as M20"),
    (lambda: eye_rating.eye_wll_t(EyeMarking.ISO_3266, "M20", 1.0, 20.0, IN_PLANE, FLAT, False), "its maker's sheet"),
    (lambda: eye_rating.eye_wll_t(LINK, "M20", 1.0, 20.0, IN_PLANE, FLAT, False), "with link, from its axis is"),
    (lambda: hoist_rings.hoist_ring_wll_t(1.0, 91.0, True, False, True), "hoist ring from its axis is 91"),
    (lambda: hoist_rings.hoist_ring_wll_t(1.0, 0.0, True, True, True), "seat of the hoist ring is spacers"),
    (lambda: hoist_rings.hoist_ring_wll_t(1.0, 0.0, False, False, True), "seat of the hoist ring is a gap"),
    (lambda: hoist_rings.hoist_ring_wll_t(1.0, 0.0, True, False, False), "not tightened to its torque"),
    (lambda: hoist_rings.hoist_ring_wll_t(NAN, 0.0, True, False, True), "WLL marked on the hoist ring is nan"),
    (lambda: hoist_rings.hoist_ring_thread_holds(0.0, 20.0, False, 600.0), "thread engaged is 0"),
    (lambda: hoist_rings.hoist_ring_thread_holds(30.0, 20.0, False, NAN), "strength of the base metal is nan"),
])
def test_it_refuses_in_words(call: Callable[[], object], words: str) -> None:
    with pytest.raises(OutOfRangeError, match=words):
        call()
