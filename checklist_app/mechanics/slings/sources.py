"""Where the figures of slings are from."""

from checklist_app.mechanics.source import DERIVED, FROM_MEMORY, READ, Source

SLING_SOURCES = {
    # written rules, read in public restatements
    "EN_13414_1": Source(
        "EN 13414-1 Steel wire rope slings, Table 4: ferrule-secured eyes, steel core", "", "CEN", "2003", READ
    ),
    "ROPE_FIBRE_CORE": Source(
        "Wire rope slings with fibre core, 1770 N/mm²: WLL straight, choked, basket, by legs and angle", "",
        "CEN, EN 13414-1", "", READ, "a sling maker's table",
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
    "DOUBLE_WRAP": Source(
        "Chain choked in a double wrap: 80 % of the WLL on the tag, as in a single one", "",
        "a chain maker's instruction for use", "", READ,
    ),
    "CCOHS_HITCHES": Source(
        "Rigging or sling hitches: choker 75 %, double basket at 60° or more from the load", "",
        "Canadian Centre for Occupational Health and Safety", "", READ,
    ),
    "US_GRADE_80": Source(
        "Grade 80 alloy chain slings, rated load by size, legs and angle (ASME B30.9 style)", "", "a chain maker (US)",
        "", READ,
    ),
    "US_GRADE_100": Source(
        "Grade 100 alloy chain slings, rated load by size, legs and angle", "", "a chain maker (US)", "", READ
    ),
    "ASME_B30_9_HEAT": Source(
        "ASME B30.9 Table 9-1.8.1-1 Elevated temperature and the WLL of alloy chain", "", "ASME", "", READ,
        "a sling maker's catalogue",
    ),
    "GRADE_10_HEAT": Source("Grade 10 chain slings: −40 to 200 °C", "", "chain makers' instructions", "", READ),
    "CHAIN_CHEMISTRY": Source(
        "Chain slings not in acid or caustic solutions or air", "", "chain makers' instructions for use", "", READ
    ),
    "US_CHOKE_ANGLE": Source(
        "Choker capacity by angle of choke (ASME B30.9 style): wire rope, webbing, general", "",
        "sling makers' cards and a hire handbook", "2018", READ,
    ),
    "ROUNDSLING_CHOKE_ANGLE": Source(
        "Choker capacity of roundslings by angle of choke", "", "a roundsling maker", "", READ
    ),
    "US_CHOKER_NOTE": Source(
        "Choker hitches: about 135° when the load hangs free, more is not recommended", "", "a rigging supplier's note",
        "", READ,
    ),
    "US_BASKET_RATIO": Source(
        "Full basket rating of wire rope from D/d = 25 (mechanical splice), 15 (hand-tucked)", "",
        "wire rope makers' tables", "", READ,
    ),
    "DOE_1090": Source("DOE-STD-1090 Hoisting and rigging: slings 5 to 1", "Rev. 1", "US Department of Energy", "1996",
                       READ),
    "CHAIN_EDGE_MAKER": Source(
        "Dimensioning of chain slings: over edges and straight on a lug", "", "a chain maker's notes", "", READ
    ),
    "DGUV_109_017": Source(
        "DGUV Regel 109-017 Load-carrying devices and slings: what is a sharp edge", "", "DGUV", "2020", READ
    ),
    "DGUV_209_061": Source("DGUV Information 209-061 Use of textile slings", "", "DGUV", "2013", READ),
    "DGUV_209_013": Source("DGUV Information 209-013 Slingers: fibres and their labels", "", "DGUV", "", READ),
    "US_TEXTILE_HEAT": Source(
        "Synthetic slings: nylon and polyester to 180 °F (82 °C)", "", "restated US rules", "", READ
    ),
    "HMPE_RANGE": Source(
        "Slings of high-modulus polyethylene: −50 to 70 °C", "", "a sling maker's instruction for use", "", READ
    ),
    "ROPE_HEAT": Source(
        "Wire rope slings: WLL by temperature, core and ferrule; no acid", "", "CEN, EN 13414-1", "", READ,
        "a sling maker's instruction for use",
    ),
    "OSHA_1926_251": Source(
        "29 CFR 1926.251: fibre-core wire rope slings out of use above 200 °F (93 °C)", "",
        "US Occupational Safety and Health Administration", "", READ,
    ),
    "TEXTILE_CHEMISTRY": Source(
        "Textile slings in chemicals; grade 8 fittings and links not in acid", "", "CEN, EN 1492-1 and -2", "", READ,
        "sling makers' instructions for use",
    ),
    "SLING_LABEL": Source(
        "A sling without a readable label or tag is taken out of use", "", "WAC 296-155, DOE-STD-1090, EN 1492-1 and "
        "-2, makers' instructions", "", READ,
    ),
    "CTU_CODE": Source(
        "CTU Code, friction factors: smooth metal on smooth metal 0.2", "", "IMO, ILO, UNECE", "2014", READ
    ),
    "CSS_TIMBER": Source(
        "CSS Code, Annex 13: steel on timber beams 0.3", "", "IMO", "", READ, "a handbook of container stowage"
    ),
    "FRICTION_MEASURED": Source("Friction measured on these faces, with its record", "", "the workshop", "", READ),
    # our own statics
    "STATICS_SLIP": Source(
        "A sling slides along a smooth load when the tangent of its angle to the load's normal exceeds the friction",
        "", "this project", "2026", DERIVED,
    ),
    "STATICS_WRAP": Source(
        "Friction round a cylinder (Euler, Eytelwein): ends of a wrap, rolling in a basket, hold of a noose", "",
        "this project", "2026", DERIVED,
    ),
    "STATICS_TWO_DIAGONAL_LEGS": Source(
        "Two legs alone tight at the full tabulated rating of four legs", "", "this project", "2026", DERIVED
    ),
    # from memory: stricter only
    "PARALLEL_6_DEG": Source(
        "EN 1492-1/-2 mode table: parallel means within 6° of vertical", "", "CEN", "2000+A1:2008", FROM_MEMORY
    ),
    "HMPE_60_C": Source(
        "Slings of high-modulus polyethylene: 60 °C at most", "", "sling makers' instructions", "", FROM_MEMORY
    ),
    "CSS_ANNEX_13": Source(
        "CSS Code, Annex 13: steel on steel dry 0.1, wet 0", "", "IMO", "2020", FROM_MEMORY
    ),
}
