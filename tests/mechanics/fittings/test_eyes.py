"""Eyebolts, eye nuts and hoist rings against printed tables: steps, each bound to its standard."""

from math import cos, radians

import pytest

from checklist_app.mechanics.fittings import bs_eyes, din_eyes, eye_rating, eye_use, hoist_rings, us_eyes
from checklist_app.mechanics.fittings.eye_marking import EyeMarking, PullPlane, Seating
from checklist_app.mechanics.fittings.eye_use import EyeUse, Turning

IN_PLANE, ACROSS, FLAT = PullPlane.IN_PLANE, PullPlane.ACROSS, Seating.FLAT
DIN = "published, DIN 580/582 table as a maker restates it"
BS = "published, BS 4278 / AS 2317.1 table as a maker restates it"
B18 = "published, ASME B18.15 as a fastener maker restates it"


@pytest.mark.parametrize("thread_mm, angle_deg, plane, printed_kg", [
    pytest.param(8, 0.0, IN_PLANE, 140, id=f"{DIN}: M8 axial 140"),
    pytest.param(12, 45.0, ACROSS, 240, id=f"{DIN}: M12 to 45° any direction 240"),
    pytest.param(16, 90.0, IN_PLANE, 350, id=f"{DIN}: M16 at 90° 350"),
    pytest.param(20, 0.0, IN_PLANE, 1200, id=f"{DIN}: M20 axial 1200"),
    pytest.param(20, 45.0, IN_PLANE, 860, id=f"{DIN}: M20 to 45° 860"),
    pytest.param(20, 90.0, IN_PLANE, 600, id=f"{DIN}: M20 at 90° 600"),
    pytest.param(24, 30.0, ACROSS, 1290, id="by_hand, DIN 580 M24 at 30°: the 45° step"),
    pytest.param(30, 46.0, IN_PLANE, 1600, id="by_hand, DIN 580 M30 at 46°: the 90° step"),
    pytest.param(64, 45.0, IN_PLANE, 11000, id=f"{DIN}: M64 to 45° 11000"),
])
def test_din_eye(thread_mm: int, angle_deg: float, plane: PullPlane, printed_kg: int) -> None:
    wll_t = din_eyes.din_eye_wll_t(EyeMarking.DIN_580, thread_mm, angle_deg, plane, FLAT, moved_between_loads=False)
    assert 1000.0 * wll_t == pytest.approx(printed_kg)


@pytest.mark.parametrize("thread_mm", din_eyes.TABLE)
def test_derived_din_ratios_find_a_wrong_cell(thread_mm: int) -> None:
    """45° / axial runs from 0.69 to 0.74, 90° / axial is 0.50 over the whole table."""
    axial, aslant, aside = din_eyes.TABLE[thread_mm]
    assert 0.685 <= aslant / axial <= 0.745
    assert aside / axial == pytest.approx(0.5, abs=5e-3)


def test_published_din_eye_moved_from_load_to_load_takes_the_next_larger_thread() -> None:
    """DIN 580 as restated: M20 used so carries what M16 carries."""
    moved_t = din_eyes.din_eye_wll_t(EyeMarking.DIN_580, 20, 0.0, IN_PLANE, FLAT, moved_between_loads=True)
    assert moved_t == 0.7


def test_derived_din_pair_is_not_twice_one_eye() -> None:
    """M20 pair at 45°: 2 × 860 × cos 45° = 1216 kg, not 1720 kg."""
    one_t = din_eyes.din_eye_wll_t(EyeMarking.DIN_580, 20, 45.0, IN_PLANE, FLAT, moved_between_loads=False)
    assert 2.0 * one_t * cos(radians(45.0)) == pytest.approx(1.216, abs=5e-4)


def test_published_din_eye_to_200_degrees() -> None:
    """DIN 580 and ISO 3266: −20 to 200 °C."""
    assert din_eyes.eye_temperature_factor(-20.0, -20.0) == din_eyes.eye_temperature_factor(200.0, -20.0) == 1.0


@pytest.mark.parametrize("thread_mm, included_deg, printed_t, half_unit", [
    pytest.param(20, 60.0, 1.28, 5e-3, id=f"{BS}: M20 pair 60°, 1.28 t"),
    pytest.param(20, 90.0, 0.80, 5e-3, id=f"{BS}: M20 pair 90°, 0.80 t"),
    pytest.param(20, 30.0, 2.0, 5e-2, id=f"{BS}: M20 pair 30°, 2.0 t"),
    pytest.param(16, 60.0, 0.64, 5e-3, id=f"{BS}: M16 pair 60°, 0.64 t"),
    pytest.param(12, 30.0, 0.50, 5e-3, id=f"{BS}: M12 pair 30°, 0.50 t"),
    pytest.param(24, 90.0, 1.25, 5e-3, id=f"{BS}: M24 pair 90°, 1.25 t"),
    pytest.param(30, 60.0, 3.2, 5e-2, id=f"{BS}: M30 pair 60°, 3.2 t"),
    pytest.param(48, 90.0, 5.0, 5e-2, id=f"{BS}: M48 pair 90°, 5.0 t"),
    pytest.param(56, 60.0, 12.0, 5e-2, id=f"{BS}: M56 pair 60°, 12.0 t"),
])
def test_pair_of_collar_eyebolts(thread_mm: int, included_deg: float, printed_t: float, half_unit: float) -> None:
    assert bs_eyes.collar_pair_wll_t(thread_mm, included_deg) == pytest.approx(printed_t, abs=half_unit)


@pytest.mark.parametrize("included_deg", [12.0, 29.0, 45.0, 60.0, 75.0, 90.0])
def test_derived_one_collar_eye_along_its_leg_carries_no_more_than_half_the_pair(included_deg: float) -> None:
    beta_deg = included_deg / 2.0
    one_t = bs_eyes.collar_eye_wll_t(EyeMarking.BS_4278_COLLAR, 20, beta_deg, IN_PLANE, FLAT)
    assert 2.0 * one_t * cos(radians(beta_deg)) <= bs_eyes.collar_pair_wll_t(20, included_deg)


@pytest.mark.parametrize("thread_mm, axial_t, transverse_t", [
    pytest.param(10, 0.25, 0.06, id=f"{BS}: M10 axial 0.25, transverse 0.06"),
    pytest.param(20, 1.6, 0.40, id=f"{BS}: M20 axial 1.6, transverse 0.40"),
    pytest.param(36, 6.3, 1.57, id=f"{BS}: M36 axial 6.3, transverse 1.57"),
])
def test_as_collar_eye_in_line_and_aside(thread_mm: int, axial_t: float, transverse_t: float) -> None:
    def wll_t(angle_deg: float) -> float:
        return bs_eyes.collar_eye_wll_t(EyeMarking.AS_2317_COLLAR, thread_mm, angle_deg, IN_PLANE, FLAT)

    assert wll_t(0.0) == bs_eyes.collar_axial_wll_t(thread_mm) == axial_t
    assert wll_t(90.0) == pytest.approx(transverse_t, abs=6e-3)


def test_published_dynamo_eyebolt_in_line() -> None:
    """BS 4278 safe use leaflet: dynamo eyebolts never at an angle."""
    assert bs_eyes.dynamo_eye_wll_t(0.63, 0.0) == 0.63


@pytest.mark.parametrize("angle_deg, printed", [
    pytest.param(5.0, 1.0, id="published, makers' charts: 100 % to 5°"),
    pytest.param(6.0, 0.55, id="from memory, ASME B30.26: minus 45 % from 6°, where charts print 80 % at 15°"),
    pytest.param(15.0, 0.55, id="from memory, ASME B30.26: minus 45 % to 15°"),
    pytest.param(30.0, 0.25, id="from memory, ASME B30.26: minus 75 % from 16°, where charts print 65 % at 30°"),
    pytest.param(90.0, 0.25, id="published, makers' charts: 25 % at 90°"),
])
def test_us_shoulder_eyebolt_by_angle(angle_deg: float, printed: float) -> None:
    assert us_eyes.shoulder_factor(angle_deg) == printed


@pytest.mark.parametrize("angle_deg, chart", [(5.0, 1.0), (15.0, 0.80), (30.0, 0.65), (45.0, 0.30), (90.0, 0.25)])
def test_what_is_from_memory_stays_below_the_makers_chart(angle_deg: float, chart: float) -> None:
    """Published, US makers' charts at 5, 15, 30, 45 and 90°."""
    assert us_eyes.shoulder_factor(angle_deg) <= chart


@pytest.mark.parametrize("size_in, angle_deg, printed_lb", [
    pytest.param("1/4", 0.0, 400.0, id=f"{B18}: 1/4 in 400 lb"),
    pytest.param("1/2", 0.0, 1840.0, id=f"{B18}: 1/2 in 1840 lb"),
    pytest.param("3/4", 0.0, 4340.0, id=f"{B18}: 3/4 in 4340 lb"),
    pytest.param("1-1/2", 0.0, 18260.0, id=f"{B18}: 1-1/2 in 18260 lb"),
    pytest.param("1/4", 20.0, 75.0, id=f"{B18}: 1/4 in to 30° 75 lb, less than 25 % of 400"),
    pytest.param("3/8", 90.0, 180.0, id=f"{B18}: 3/8 in at 90° 180 lb, less than 25 % of 1000"),
    pytest.param("1/2", 10.0, 850.0, id=f"{B18}: 1/2 in to 30° 850 lb, less than 55 % of 1840"),
    pytest.param("1/2", 20.0, 460.0, id="derived, 1/2 in at 20°: 25 % of 1840, less than the 850 printed to 30°"),
])
def test_us_b18_15(size_in: str, angle_deg: float, printed_lb: float) -> None:
    assert us_eyes.b18_15_lb(size_in, angle_deg, IN_PLANE, FLAT) == printed_lb


@pytest.mark.parametrize("thread_mm, angle_deg, printed_lb", [
    pytest.param(20, 45.0, 1573.0, id="published, US metric list: M20 at 45°, 1573 lb (25 % of 6292)"),
    pytest.param(8, 0.0, 1110.0, id="published, US metric list: M8 straight 1110 lb"),
    pytest.param(30, 45.0, 3520.0, id="published, US metric list: M30 at 45°, 3520 lb"),
    pytest.param(36, 10.0, 4934.0, id="by_hand, between the columns the next step"),
])
def test_us_metric_list(thread_mm: int, angle_deg: float, printed_lb: float) -> None:
    assert us_eyes.metric_lb(thread_mm, angle_deg, IN_PLANE, FLAT) == printed_lb


def test_published_us_plain_eyebolt_in_line() -> None:
    """ASME B30.26 as an examination page restates it: without shoulder 0° only."""
    assert us_eyes.plain_eye_lb(1200.0, 0.0) == 1200.0


def test_published_the_same_thread_is_rated_by_its_marking() -> None:
    """M20 at 45° by three published tables: DIN 860 kg, BS/AS 0.40 t along the leg, US list 713 kg."""
    by_marking = {
        marking: eye_rating.eye_wll_t(marking, "M20", 9.0, 45.0, IN_PLANE, FLAT, False)
        for marking in (EyeMarking.DIN_580, EyeMarking.BS_4278_COLLAR, EyeMarking.US_METRIC_SHOULDER)
    }
    assert list(by_marking.values()) == pytest.approx([0.860, 0.400, 0.7135], abs=5e-4)


@pytest.mark.parametrize("marking, thread, marked_t, angle_deg, wll_t", [
    (EyeMarking.DIN_580, "M20", 1.0, 0.0, 1.0),
    (EyeMarking.DIN_580_2003, "M20", 1.2, 45.0, 0.86),
    (EyeMarking.AS_2317_COLLAR, "M20", 1.6, 0.0, 1.6),
    (EyeMarking.BS_4278_DYNAMO, "M20", 1.0, 1.0, 1.0),
    (EyeMarking.ISO_3266, "M20", 1.25, 2.0, 1.25),
    (EyeMarking.US_PLAIN, "1/2", 0.5, 0.0, 0.5),
    (EyeMarking.US_B18_15_SHOULDER, "1/2", 1.0, 0.0, 0.8346),
])
def test_an_eye_never_carries_more_than_is_stamped_on_it(
    marking: EyeMarking, thread: str, marked_t: float, angle_deg: float, wll_t: float
) -> None:
    rated_t = eye_rating.eye_wll_t(marking, thread, marked_t, angle_deg, IN_PLANE, FLAT, False)
    assert rated_t == pytest.approx(wll_t, abs=5e-5)


@pytest.mark.parametrize("marking", [m for m in EyeMarking if m is not EyeMarking.NONE])
def test_no_eye_carries_more_at_a_greater_angle(marking: EyeMarking) -> None:
    thread = "1/2" if marking in (EyeMarking.US_B18_15_SHOULDER, EyeMarking.US_PLAIN) else "M20"
    before = float("inf")
    for angle_deg in range(91):
        try:
            now = eye_rating.eye_wll_t(marking, thread, 9.0, float(angle_deg), IN_PLANE, FLAT, False)
        except ValueError:
            now = 0.0
        assert now <= before
        before = now


def test_published_a_shackle_moves_freely_in_any_eye_and_a_hook_in_a_large_one() -> None:
    """Safe use leaflet to BS 4278: hooks and fittings move freely; collar eyebolts are small and take shackles."""
    assert eye_use.eye_use_factor(EyeUse.SHACKLE, small_eye=True) == 1.0
    assert eye_use.eye_use_factor(EyeUse.HOOK_FREE, small_eye=False) == 1.0


def test_published_hoist_ring_keeps_its_rating_to_90_degrees() -> None:
    """Makers' notes: 100 % at any angle from 0 to 90°; thread 1.5 d in steel, 2 d in aluminium, 80 000 psi."""
    assert hoist_rings.hoist_ring_wll_t(1.0, 90.0, flat_on_face=True, spacers=False, torqued=True) == 1.0
    assert hoist_rings.hoist_ring_thread_holds(30.0, 20.0, aluminium=False, strength_mpa=552.0)
    assert not hoist_rings.hoist_ring_thread_holds(29.9, 20.0, aluminium=False, strength_mpa=552.0)
    assert not hoist_rings.hoist_ring_thread_holds(39.0, 20.0, aluminium=True, strength_mpa=600.0)
    assert not hoist_rings.hoist_ring_thread_holds(40.0, 20.0, aluminium=True, strength_mpa=310.0)


@pytest.mark.parametrize("turning, stays", [
    pytest.param(Turning.FREE, False, id="published, safe use of eyebolts to BS 4278: never on a load free to turn"),
    pytest.param(Turning.HELD, True, id="by_hand: a load that is held is not free to turn"),
    pytest.param(Turning.SWIVELS, True, id="published, makers of hoist rings: the ring swivels, its bolt stays"),
])
def test_a_single_eye_under_a_load(turning: Turning, stays: bool) -> None:
    assert eye_use.single_eye_stays(turning) is stays
