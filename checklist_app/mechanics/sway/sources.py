"""Sources of wind, swing, tag line and zones."""

from checklist_app.mechanics.source import DERIVED, FROM_MEMORY, READ, Source

SWAY_SOURCES = {
    "WIND_ON_LOADS": Source(
        "Wind on lifted loads: q = v² / 1.6, F = c q A, highest speed for a larger or blunter load", "",
        "a lifting contractor's wind sheet for a crawler crane; the same form in FEM 5.016", "2012", READ,
    ),
    "LOADER_CRANE_DRAG": Source(
        "Drag coefficients of loads: box 2, cylinder 1, shape not known 2.4", "", "a loader crane maker's manual", "",
        READ,
    ),
    "SIMPLE_PENDULUM": Source(
        "Simple pendulum: period, swing after a sudden start or stop, pull in the line; exact period by the "
        "arithmetic-geometric mean", "", "classical mechanics", "", DERIVED,
    ),
    "TWO_MACHINES": Source(
        "A load between two hooks that travel: the lines side by side, and swings added up", "", "this project", "2026",
        DERIVED,
    ),
    "QLD_MOBILE_CRANES": Source(
        "Mobile crane code of practice, 14.3.2: of two cranes on one load each is rated for at least 20 % more than "
        "its share as worked out", "", "Queensland, Department of Justice and Attorney-General", "2006", READ,
    ),
    "BS_7121_TANDEM": Source(
        "BS 7121-1 Safe use of cranes, lifting with several cranes: each derated by 25 % where not all is known", "",
        "BSI", "", FROM_MEMORY,
    ),
    "STATICS_TAG_LINE": Source(
        "Load held off plumb by a tag line: forces at the load", "", "this project", "2026", DERIVED
    ),
    "STATICS_LEANING": Source(
        "Hanging load that wind pushes off its centre of gravity: where weight and wind act together, and what one leg "
        "takes more", "", "this project", "2026", DERIVED
    ),
    "OSHA_FALL_ZONE": Source(
        "29 CFR 1926.1401, fall zone: where it is foreseeable that suspended materials could fall; not only the area "
        "straight below", "", "US Occupational Safety and Health Administration", "2010", READ, "trade press",
    ),
    "GEOMETRY_OF_ZONES": Source(
        "Reach of a load that swings, falls and topples: lengths added up", "", "this project", "2026", DERIVED
    ),
    "HSE_L23": Source(
        "Manual handling, guideline figures for pushing and pulling: to start or stop a load 200 N (men), 150 N "
        "(women); to keep it in motion 100 N, 70 N", "L23", "UK Health and Safety Executive", "", READ,
        "the authority's page on assessing pushing and pulling",
    ),
}
