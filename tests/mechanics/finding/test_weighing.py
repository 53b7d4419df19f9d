"""Mass and centre of gravity from parts and scales: published figures, and the ends of the spread by brute force."""

import itertools
import math
import random

import pytest

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.finding.densities import DENSITIES, Material, density
from checklist_app.mechanics.finding.parts import (
    Part,
    box_of_cg,
    centre_of_gravity,
    highest_mass_kg,
    mass_of_volume_kg,
    total_mass_kg,
)
from checklist_app.mechanics.finding.weighing import (
    box_by_scales,
    cg_from_first_support_m,
    cg_from_first_support_range_m,
    height_for_each_kg_m,
    height_over_supports_m,
    height_plus_minus_m,
    weighed_on_scales,
)
from checklist_app.mechanics.sources import SOURCES
from tests.mechanics.hanging.bodies import vec

NEWTON_KG = 1.0 / 9.80665


def test_from_memory_cylinder_on_a_hemisphere() -> None:
    """Hibbeler, Statics, 14th edition, 9-81: book answer 122 mm (from memory); masses by the volumes."""
    hemisphere = mass_of_volume_kg(2.0 / 3.0 * math.pi * 0.16**3, 7800.0)
    cylinder = mass_of_volume_kg(math.pi * 0.08**2 * 0.2, 2700.0)
    parts = [Part(hemisphere, vec(0, 0, 0.16 - 0.375 * 0.16)), Part(cylinder, vec(0, 0, 0.16 + 0.1))]
    assert (cylinder, hemisphere) == pytest.approx((10.857, 66.91), rel=4e-4)
    assert centre_of_gravity(parts).z == pytest.approx(0.1223, rel=4e-4)


def test_from_memory_plate_of_steel_and_brass() -> None:
    """Hibbeler 14th edition, 9-89: book answer 16.4 kg, 153, −15, 111 mm (from memory), shape rebuilt from it."""
    thick, steel, brass = 0.03, 7850.0, 8740.0
    pieces = [
        (0.150 * 0.225, steel, (0.075, 0.1125)), (0.5 * 0.150 * 0.225, steel, (0.2, 0.150)),
        (0.5 * 0.150 * 0.225, brass, (0.25, 0.075)),
    ]
    parts = [Part(mass_of_volume_kg(area * thick, rho), vec(x, -0.015, z)) for area, rho, (x, z) in pieces]
    assert total_mass_kg(parts) == pytest.approx(16.347, rel=1e-4)
    assert centre_of_gravity(parts) == pytest.approx((0.15276, -0.015, 0.11147), rel=1e-4)


def test_published_truss_of_five_equal_members() -> None:
    """Hibbeler, Statics, p. 480, example 51: lifting point d = 3 m."""
    assert centre_of_gravity([Part(40.0, vec(x, 0, 0)) for x in (1, 2, 3, 4, 5)]).x == pytest.approx(3.0, rel=1e-12)


def test_published_shares_of_a_beam_by_the_lever() -> None:
    """A sling maker's note: 10,000 lb, 8 ft and 2 ft: 8,000 and 2,000 lb; read backwards it weighs the beam."""
    assert cg_from_first_support_m(2000.0, 8000.0, 10.0) == pytest.approx(8.0, abs=1e-12)


def test_derived_two_scales() -> None:
    """R 6,000 and 4,000, 2 m apart: 0.8 m; form printed as a = b (1 − W/M) in a note on vehicles (1997)."""
    x = cg_from_first_support_m(6000.0, 4000.0, 2.0)
    assert x == pytest.approx(0.8, abs=1e-12)
    assert x == pytest.approx(2.0 * (1.0 - 6000.0 / 10000.0), abs=1e-12)


def test_published_aircraft_on_three_jacks() -> None:
    """Question bank for pilots (EASA, mass and balance): nose 6,488 kg at 161 in, each main 17,783 kg at 775 in:
    42,054 kg, 680.3 in; moments 1,044,568 and 13,781,825."""
    jacks = [vec(161, 0, 0), vec(775, -100, 0), vec(775, 100, 0)]
    mass_kg, cg = weighed_on_scales([6488.0, 17783.0, 17783.0], jacks)
    assert mass_kg == pytest.approx(42054.0, abs=0.5)
    assert cg.x == pytest.approx(680.3, abs=0.05) and cg.y == pytest.approx(0.0, abs=1e-9)


def test_derived_height_by_raising_one_end() -> None:
    """W 10 kN, L 2 m, 10°: a load 0.55 m over its supports; 20 N off on the scale is 22.685 mm."""
    mass_kg, turn = 10000.0 * NEWTON_KG, math.radians(10.0)
    x, z = 0.8, 0.55
    level = mass_kg * (2.0 - x) / 2.0
    raised = mass_kg * (2.0 * math.cos(turn) - x * math.cos(turn) + z * math.sin(turn)) / (2.0 * math.cos(turn))
    assert height_over_supports_m(level, raised, mass_kg, 2.0, 10.0) == pytest.approx(0.55, rel=1e-9)
    assert 20.0 * NEWTON_KG * height_for_each_kg_m(mass_kg, 2.0, 10.0) == pytest.approx(0.022685, rel=1e-4)


def test_published_form_of_the_raised_weighing() -> None:
    """Derivation for vehicles (1997): c = b cot X (W' − W) / M, b² (W' − W) / (h M) by a small rise."""
    b, mass_kg, shift, rise = 2.0, 1000.0, 30.0, 0.1
    angle_deg = math.degrees(math.asin(rise / b))
    by_angle = height_over_supports_m(500.0, 500.0 + shift, mass_kg, b, angle_deg)
    assert by_angle == pytest.approx(b / math.tan(math.radians(angle_deg)) * shift / mass_kg, rel=1e-12)
    assert by_angle == pytest.approx(b * b * shift / (rise * mass_kg), rel=2e-3)


def test_the_ends_of_two_scales_are_the_worst_of_all_corners() -> None:
    given = cg_from_first_support_range_m(620.0, 380.0, 1.8, 5.0, 0.01)
    corners = [
        cg_from_first_support_m(620.0 + a, 380.0 + b, 1.8 + c)
        for a, b, c in itertools.product((-5.0, 5.0), (-5.0, 5.0), (-0.01, 0.01))
    ]
    assert given == pytest.approx((min(corners), max(corners)), rel=1e-12)


def test_the_height_is_never_further_off_than_its_spread_says() -> None:
    r, mass_kg, apart, angle = random.Random(7), 2000.0, 2.2, 12.0
    level, raised = 900.0, 1060.0
    z = height_over_supports_m(level, raised, mass_kg, apart, angle)
    most = height_plus_minus_m(z, height_for_each_kg_m(mass_kg, apart, angle), 2.0, angle, 0.1)
    seen = 0.0
    for _ in range(2000):
        found = height_over_supports_m(
            level + r.uniform(-2, 2), raised + r.uniform(-2, 2), mass_kg, apart, angle + r.uniform(-0.1, 0.1)
        )
        seen = max(seen, abs(found - z))
    assert 0.6 * most < seen <= 1.02 * most


def test_the_box_of_a_centre_of_gravity_is_the_worst_of_all_corners() -> None:
    r = random.Random(8)
    for _ in range(60):
        parts = [
            Part(sign * r.uniform(50, 400), vec(r.uniform(-1, 1), r.uniform(-1, 1), r.uniform(0, 1)), r.uniform(0, 9),
                 r.uniform(0, 0.05))
            for sign in (r.choice((1.0, 1.0, -0.2)) for _ in range(4))
        ]
        if total_mass_kg([Part(1000.0, vec(0, 0, 0)), *parts]) <= 1000.0 + 100.0:
            continue
        parts.append(Part(300.0, vec(0.2, 0.1, 0.3), 12.0, 0.02))
        box = box_of_cg(parts)
        for axis in range(3):
            ends = [corner(parts, axis, signs) for signs in itertools.product((-1, 1), repeat=len(parts))]
            assert box.high[axis] == pytest.approx(max(high for _, high in ends), rel=1e-12)
            assert box.low[axis] == pytest.approx(min(low for low, _ in ends), rel=1e-12)


def corner(parts: list[Part], axis: int, signs: tuple[int, ...]) -> tuple[float, float]:
    """With the masses at these ends, the lowest and the highest place."""
    masses = [part.mass_kg + sign * part.mass_plus_minus_kg for part, sign in zip(parts, signs, strict=True)]
    moves = [abs(mass) * part.at_plus_minus_m for mass, part in zip(masses, parts, strict=True)]
    moment = sum(mass * part.at[axis] for mass, part in zip(masses, parts, strict=True))
    return (moment - sum(moves)) / sum(masses), (moment + sum(moves)) / sum(masses)


def test_a_box_by_scales_holds_every_weighing_within_the_spread() -> None:
    r, places = random.Random(9), [vec(0, 0, 0), vec(0, 1.6, 0), vec(2.4, 0.8, 0)]
    truth, box = [300.0, 350.0, 420.0], box_by_scales([301.0, 349.0, 421.0], places, (2.0, 0.01))
    for _ in range(300):
        moved = [vec(*(axis + r.uniform(-0.01, 0.01) for axis in place)) for place in places]
        _, cg = weighed_on_scales([reading + r.uniform(-1, 1) for reading in truth], moved)
        assert all(low <= axis <= high for low, axis, high in zip(box.low, cg, box.high, strict=True))


def test_the_highest_mass_has_every_part_as_heavy_as_it_may_be() -> None:
    parts = [Part(500.0, vec(0, 0, 0), 25.0), Part(-20.0, vec(1, 0, 0), 2.0)]
    assert highest_mass_kg(parts) == 507.0


@pytest.mark.parametrize("material", Material)
def test_every_density_has_its_source_and_its_ends_in_order(material: Material) -> None:
    found = density(material)
    assert 0.0 < found.low_kg_m3 <= found.high_kg_m3 and found.source in SOURCES


@pytest.mark.parametrize("material, low, high", [
    pytest.param(Material.CAST_IRON, 7000.0, 7400.0, id="published, Gere: cast iron 7000 to 7400"),
    pytest.param(Material.BRASS, 8400.0, 8600.0, id="published, Gere: brass 8400 to 8600"),
    pytest.param(Material.RUBBER, 960.0, 1300.0, id="published, Gere: rubber 960 to 1300"),
    pytest.param(Material.PINE, 560.0, 640.0, id="published, Gere: southern pine 560 to 640"),
    pytest.param(Material.DIESEL, 820.0, 845.0, id="published, EN 590: 820 to 845 at 15 °C"),
    pytest.param(Material.LEAD, 11340.0, 11340.0, id="published, a foundry's table: lead 11340"),
])
def test_densities_as_published(material: Material, low: float, high: float) -> None:
    assert (DENSITIES[material].low_kg_m3, DENSITIES[material].high_kg_m3) == (low, high)


@pytest.mark.parametrize("call, words", [
    (lambda: mass_of_volume_kg(math.nan, 7850.0), "volume is nan"),
    (lambda: mass_of_volume_kg(1.0, 0.0), "density is 0"),
    (lambda: total_mass_kg([]), "number of parts is 0"),
    (lambda: total_mass_kg([Part(-1.0, vec(0, 0, 0))]), "mass of all parts is -1"),
    (lambda: total_mass_kg([Part(1.0, vec(0, math.nan, 0))]), "mass or place of a part"),
    (lambda: box_of_cg([Part(1.0, vec(0, 0, 0), 2.0)]), "spread of a part's mass is 2; allowed: less than the mass"),
    (lambda: box_of_cg([Part(1.0, vec(0, 0, 0), math.nan)]), "spread of a part's mass is nan"),
    (lambda: box_of_cg([Part(1.0, vec(0, 0, 0), 0.0, -0.1)]), "spread of a part's place is -0.1"),
    (lambda: cg_from_first_support_m(-1.0, 4.0, 2.0), "first scale is -1"),
    (lambda: cg_from_first_support_m(0.0, 0.0, 2.0), "mass on the scales is 0"),
    (lambda: cg_from_first_support_m(1.0, 1.0, math.nan), "distance between the supports is nan"),
    (lambda: cg_from_first_support_range_m(5.0, 4.0, 2.0, 6.0, 0.0), "reading of the second scale is -2"),
    (lambda: weighed_on_scales([1.0, 2.0], [vec(0, 0, 0), vec(1, 0, 0)]), "number of scales is 2; allowed: three"),
    (lambda: weighed_on_scales([1.0, 2.0, math.nan], [vec(0, 0, 0)] * 3), "reading of a scale is nan"),
    (lambda: height_over_supports_m(1.0, 2.0, 10.0, 2.0, 0.0), "angle of the raised load is 0"),
    (lambda: height_over_supports_m(1.0, 2.0, 10.0, 2.0, 46.0), "angle of the raised load is 46"),
    (lambda: height_over_supports_m(1.0, math.nan, 10.0, 2.0, 10.0), "first scale, raised is nan"),
    (lambda: height_for_each_kg_m(0.0, 2.0, 10.0), "mass on the scales is 0"),
    (lambda: height_plus_minus_m(math.nan, 0.01, 1.0, 10.0, 0.1), "angle of the raised load"),
])
def test_it_refuses_and_says_why(call: object, words: str) -> None:
    assert callable(call)
    with pytest.raises(OutOfRangeError, match=words):
        call()
