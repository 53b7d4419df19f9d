"""Sources of mass and centre of gravity."""

from checklist_app.mechanics.source import DERIVED, READ, Source

FINDING_SOURCES = {
    "STATICS_TRIAL": Source(
        "Plumb line of a hung load in its own axes: one trial gives a line, two a point; readings at both their ends",
        "", "this project", "2026", DERIVED,
    ),
    "FAA_WEIGHT_BALANCE": Source(
        "Weight and balance: weighing on several scales, moments over mass; suspended twice, the plumb lines meet in "
        "the centre of gravity", "FAA-H-8083-30", "US Federal Aviation Administration", "", READ,
        "a school of aircraft mechanics",
    ),
    "JCGM_100": Source(
        "Guide to the expression of uncertainty in measurement: half width over √3, root of squares, twice for 95 %",
        "JCGM 100", "BIPM", "2008", READ, "a handbook of statistics and a chemists' guide",
    ),
    "STATICS_WEIGHING": Source(
        "Moments about a support: mass and centre of gravity from what scales read", "", "this project", "2026", DERIVED
    ),
    "TILTED_WEIGHING": Source(
        "Height of the centre of gravity from the weight that moves over when one end is raised", "",
        "published derivations for vehicles", "1997 and later", READ,
    ),
    "GERE_DENSITIES": Source(
        "Mechanics of Materials, table of densities", "5th edition", "J. M. Gere", "2001", READ, "a copy of the table"
    ),
    "FOUNDRY_DENSITIES": Source("Densities of cast metals and bearing metals", "", "a foundry's table", "", READ),
    "EN_590": Source(
        "EN 590 Diesel fuel: density at 15 °C", "", "CEN", "2009", READ, "suppliers' specification sheets"
    ),
    "OIL_DENSITIES": Source(
        "Densities of engine, gear and hydraulic oils at 15 °C, by grade", "", "a journal of engine oils", "", READ
    ),
}
