"""Mass and centre of gravity worked out from what was read: parts and fillings, two scales in a line, three or four."""
from collections.abc import Mapping
from dataclasses import dataclass
from math import ceil

from checklist_app.checklists.words import listed
from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.finding import parts, weighing
from checklist_app.mechanics.finding.densities import Material, density
from checklist_app.mechanics.finding.parts import Box, Part
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.fields import Fault, Field, FieldType, read_number
from checklist_app.operations.words import figure

LITRES_IN_M3, MM_IN_M, PER_CENT = 1000.0, 1000.0, 100.0
HALF = 0.5
EVIDENCE = "mass_evidence"
AXES = (("cg_x_m", "lengthwise"), ("cg_y_m", "crosswise"), ("cg_z_m", "high"))
MOST_PARTS = 12
SCALES = 4


def number(name: str, words: str, unit: str, low: float, high: float) -> Field:
    """A number that is asked here."""
    return Field(name, words, FieldType.NUMBER, unit, low, high)


PLACE = {"x": "lengthwise", "y": "crosswise", "z": "upwards"}
MASS_OFF = number("mass_off", "How far off a mass may be, ± %", "%", 0.1, 60.0)
PLACE_OFF = number("place_off", "How far off a place may be, ± mm", "mm", 1.0, 1000.0)
SCALE_OFF = number("scale_off", "How far off a scale may be, ± kg", "kg", 0.1, 1000.0)
TWO = (
    number("first", "First scale reads, kg", "kg", 0.0, 50_000.0),
    number("second", "Second scale reads, kg", "kg", 0.0, 50_000.0),
    number("apart", "From the first to the second support, level, m", "m", 0.05, 30.0),
    number("at", "Where the first support stands, lengthwise, m", "m", -20.0, 20.0), SCALE_OFF, PLACE_OFF,
)
RAISED = (
    number("raised", "First scale, with the second end raised, kg", "kg", 0.0, 50_000.0),
    number("angle", "By how much it is raised, °", "°", 1.0, 45.0),
    number("angle_off", "How far off that angle may be, ± °", "°", 0.05, 5.0),
    number("support_z", "How high both supports bear, m", "m", -20.0, 20.0),
)


@dataclass(frozen=True)
class Coordinate:
    """One coordinate of the centre of gravity, and how far off it may be [m]."""

    name: str
    words: str
    at_m: float
    off_m: float


@dataclass(frozen=True)
class Worked:
    """What was worked out: the mass as it is, how heavy at most [kg], coordinates, how, and the readings in words."""

    mass_kg: float
    highest_kg: float
    cg: tuple[Coordinate, ...]
    mass_how: str
    cg_how: str
    evidence: str


class Faults(ValueError):
    """What cannot be read, by the name of its field, in words."""

    def __init__(self, by_field: Mapping[str, str]) -> None:
        super().__init__("; ".join(by_field.values()))
        self.by_field = dict(by_field)


def part_fields(count: int) -> tuple[tuple[Field, ...], ...]:
    """The numbers of each part: its mass, or its filling in litres, and where it is."""
    return tuple((
        number(f"kg{n}", "Mass, kg; below 0 for what is taken away", "kg", -50_000.0, 50_000.0),
        number(f"l{n}", "Or how much of it, litres", "l", 0.1, 50_000.0),
        *(number(f"{axis}{n}", f"Where its middle is, {words}, m", "m", -20.0, 20.0) for axis, words in PLACE.items()),
    ) for n in range(1, count + 1))


def scale_fields() -> tuple[tuple[Field, ...], ...]:
    """Reading and place of each of up to four scales."""
    return tuple((
        number(f"kg{n}", "Reads, kg", "kg", 0.0, 50_000.0),
        *(number(f"{axis}{n}", f"Stands, {PLACE[axis]}, m", "m", -20.0, 20.0) for axis in ("x", "y")),
    ) for n in range(1, SCALES + 1))


def by_parts(typed: Mapping[str, str], count: int) -> Worked:
    """Added up; the middle of each filling weighs as the middle of its published densities.

    Raises:
        Faults: What cannot be read, or does not fit together.
    """
    faults: dict[str, str] = {}
    off = [_needed(typed, each, faults) for each in (MASS_OFF, PLACE_OFF)]
    found, said = [], []
    for n, fields in enumerate(part_fields(count), 1):
        if not any(typed.get(each.name) for each in fields):
            continue
        mass = _mass_of(typed, n, fields[0], fields[1], faults)
        at = [_needed(typed, each, faults) for each in fields[2:]]
        if not faults:
            kg, most = mass
            found.append(Part(kg, Vec(*at), max(abs(kg) * off[0] / PER_CENT, most), off[1] / MM_IN_M))
            said.append(f"{typed.get(f'what{n}') or f'part {n}'} {figure(kg, 'kg')} kg"
                        f" at {', '.join(figure(each, 'm') for each in at)} m")
    if not found:
        faults.setdefault("kg1", "Name one part at least: its mass, and where its middle is.")
    _stop(faults)
    try:
        mass_kg, cg, box = parts.total_mass_kg(found), parts.centre_of_gravity(found), parts.box_of_cg(found)
        highest = parts.highest_mass_kg(found)
    except OutOfRangeError as error:
        raise Faults({"kg1": str(error)}) from error
    told = f"Added up: {listed(said)}. Each mass ± {off[0]:g} %, each place ± {off[1]:.0f} mm."

    return Worked(mass_kg, highest, _three(cg, box), "calculated", "parts", told)


def by_two_scales(typed: Mapping[str, str]) -> Worked:
    """Mass and place between two supports; the height too, where one end was raised.

    Raises:
        Faults: What cannot be read, or does not fit together.
    """
    faults: dict[str, str] = {}
    first, second, apart, at, scale_off, place_off = (_needed(typed, each, faults) for each in TWO)
    is_raised = any(typed.get(each.name) for each in RAISED)
    raised = [_needed(typed, each, faults) for each in RAISED] if is_raised else []
    _stop(faults)
    mass_kg, off_m = first + second, place_off / MM_IN_M
    try:
        between = weighing.cg_from_first_support_m(first, second, apart)
        low, high = weighing.cg_from_first_support_range_m(first, second, apart, scale_off, off_m)
        found = [Coordinate(*AXES[0], at + between, max(high - between, between - low) + off_m)]
        if is_raised:
            found.append(_height(first, mass_kg, apart, scale_off, raised, off_m))
    except OutOfRangeError as error:
        raise Faults({TWO[0].name: str(error)}) from error
    tilted = (f" With the second end raised by {figure(raised[1], '°')}° (± {raised[2]:.2f}°) the first reads"
              f" {figure(raised[0], 'kg')} kg; supports {figure(raised[3], 'm')} m high.") if is_raised else ""
    told = (f"Two scales: {figure(first, 'kg')} and {figure(second, 'kg')} kg (± {scale_off:g} kg),"
            f" {figure(apart, 'm')} m apart, the first at {figure(at, 'm')} m (± {place_off:.0f} mm).{tilted}")

    return Worked(mass_kg, mass_kg + 2.0 * scale_off, tuple(found), "weighed", "scales", told)


def by_scales(typed: Mapping[str, str]) -> Worked:
    """Mass and place seen from above, from three scales or four.

    Raises:
        Faults: What cannot be read, or does not fit together.
    """
    faults: dict[str, str] = {}
    scale_off, place_off = (_needed(typed, each, faults) for each in (SCALE_OFF, PLACE_OFF))
    read = [[_needed(typed, each, faults) for each in fields] for n, fields in enumerate(scale_fields(), 1)
            if n < SCALES or any(typed.get(each.name) for each in fields)]
    _stop(faults)
    readings, supports = [row[0] for row in read], [Vec(row[1], row[2], 0.0) for row in read]
    off_m = place_off / MM_IN_M
    try:
        mass_kg, cg = weighing.weighed_on_scales(readings, supports)
        box = weighing.box_by_scales(readings, supports, (scale_off, off_m))
    except OutOfRangeError as error:
        raise Faults({"kg1": str(error)}) from error
    told = "; ".join(f"{figure(kg, 'kg')} kg at {figure(x, 'm')}, {figure(y, 'm')} m" for kg, x, y in read)

    return Worked(mass_kg, mass_kg + len(read) * scale_off, _three(cg, box)[:2], "weighed", "scales",
                  f"{len(read)} scales: {told} (each ± {scale_off:g} kg, ± {place_off:.0f} mm).")


def _height(first: float, mass_kg: float, apart: float, scale_off: float, raised: list[float],
            off_m: float) -> Coordinate:
    again, angle, angle_off, support_z = raised
    over = weighing.height_over_supports_m(first, again, mass_kg, apart, angle)
    each_kg = weighing.height_for_each_kg_m(mass_kg, apart, angle)
    away = weighing.height_plus_minus_m(over, each_kg, scale_off, angle, angle_off)
    return Coordinate(*AXES[2], support_z + over, away + off_m)


def _mass_of(typed: Mapping[str, str], n: int, kg: Field, litres: Field, faults: dict[str, str]) -> tuple[float, float]:
    """Mass of a part and what its density leaves open; a filling says of what it is."""
    if typed.get(kg.name) and typed.get(litres.name):
        faults[litres.name] = "Give the mass or the litres, not both."
    if not typed.get(litres.name):
        mass = _needed(typed, kg, faults)
        if mass == 0.0:
            faults.setdefault(kg.name, "A part has a mass.")
        return mass, 0.0
    volume = _needed(typed, litres, faults) / LITRES_IN_M3
    try:
        known = density(Material(typed.get(f"of{n}", "")))
    except ValueError:
        faults[f"of{n}"] = "Say what it is filled with, or made of."
        return 0.0, 0.0
    if litres.name in faults:
        return 0.0, 0.0
    low, high = (parts.mass_of_volume_kg(volume, each) for each in (known.low_kg_m3, known.high_kg_m3))
    return HALF * (low + high), HALF * (high - low)


def _three(cg: Vec, box: Box) -> tuple[Coordinate, ...]:
    return tuple(Coordinate(name, words, at, max(high - at, at - low))
                 for (name, words), at, low, high in zip(AXES, cg, box.low, box.high, strict=True))


def _needed(typed: Mapping[str, str], field: Field, faults: dict[str, str]) -> float:
    text = typed.get(field.name, "").strip()
    found = read_number(text, field) if text else Fault("This number is needed.")
    if isinstance(found, Fault):
        faults[field.name] = found.words
        return 0.0
    return found


def _stop(faults: Mapping[str, str]) -> None:
    if faults:
        raise Faults(faults)


def whole_kg(mass_kg: float) -> str:
    """A mass rounded up to the kilogram, as it is entered."""
    return str(ceil(mass_kg - 1e-9))
