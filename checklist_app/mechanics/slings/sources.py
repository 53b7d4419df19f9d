"""Where the figures of slings are from."""

from checklist_app.mechanics.source import DERIVED, FROM_MEMORY, READ, Source

SLING_SOURCES = {
    # written rules, read in public restatements
    "EN_13414_1": Source(
        "EN 13414-1 Steel wire rope slings, Table 4: ferrule-secured eyes, steel core", "", "CEN", "2003", READ
    ),
    "DGUV_209_021": Source(
        "DGUV Information 209-021 Load tables for slings of round steel chain, wire rope and fibre", "", "DGUV",
        "2021", READ,
    ),
    "QUEENSLAND_DOGGERS": Source(
        "Guide for doggers, PN10123: four legs rated on two diagonal ones", "", "Workplace Health and Safety "
        "Queensland", "2010", READ,
    ),
    "NAVEDTRA_RIGGING": Source(
        "Rigging lessons of NAVEDTRA 14080 and 14251: three and four legs rated as two", "", "US Navy", "", READ
    ),
    "US_SLING_CARDS": Source(
        "Sling angle cards: sine of the angle from the horizontal", "", "rope and sling makers (US)", "", READ
    ),
    "US_FLATTEST": Source(
        "ASME B30.9, B30.26: no sling flatter than 30° from the horizontal", "", "ASME", "", READ,
        "a crane institute's sling note",
    ),
    "US_HITCH_TABLES": Source(
        "Hitch tables for wire rope and chain slings: choker 75 %, basket by its angle", "",
        "US training centres and a sling maker", "", READ,
    ),
    "US_GRADE_80": Source(
        "Grade 80 alloy chain slings, rated load by size, legs and angle (ASME B30.9 style)", "", "a chain maker (US)",
        "", READ,
    ),
    # our own statics
    "STATICS_TWO_DIAGONAL_LEGS": Source(
        "Two legs alone tight at the full tabulated rating of four legs", "", "this project", "2026", DERIVED
    ),
    # from memory: stricter only
    "PARALLEL_6_DEG": Source(
        "EN 1492-1/-2 mode table: parallel means within 6° of vertical", "", "CEN", "2000+A1:2008", FROM_MEMORY
    ),
    "DOUBLE_WRAP": Source(
        "A second wrap round the load grips better and adds nothing to the WLL", "", "sling makers' instructions", "",
        FROM_MEMORY,
    ),
}
