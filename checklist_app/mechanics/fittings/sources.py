"""Where the figures of fittings are from."""

from checklist_app.mechanics.source import FROM_MEMORY, READ, Source

FITTING_SOURCES = {
    "SHACKLE_SIZES": Source(
        "Bow and dee shackles to EN 13889 and US RR-C-271: WLL by body, pin and jaw; temperature", "",
        "a shackle maker's catalogue", "", READ,
    ),
    "SHACKLE_SIDE_LOAD": Source(
        "Shackles loaded aside: 70 % at 45°, 50 % at 90°, screw or bolt pins", "", "shackle makers' charts", "", READ
    ),
    "WAC_296_155_33905": Source(
        "WAC 296-155-33905 Shackles: steps of the side load, choking eye on the pin, pins", "",
        "Washington State Department of Labor and Industries", "2016", READ,
    ),
    "SHACKLE_INSTRUCTIONS": Source(
        "Shackles to EN 13889: two legs in the bow and the hook on the pin, −20 to 200 °C, no acid", "",
        "shackle makers' instructions for use", "", READ,
    ),
    "SHACKLE_POLAR": Source(
        "Shackles for frost: as low as −60 °C by their maker", "", "a shackle maker's manual", "", READ
    ),
    "ASME_B30_26_COLD": Source(
        "ASME B30.26-1.6.1: below −40 °C the maker of a shackle, or a qualified person, is asked", "2010", "ASME",
        "2010", READ, "extracts on pages that offer it",
    ),
    "EM_385_1_1": Source(
        "EM 385-1-1 Safety and health requirements, 15.E.06: no multiple legs on the pin", "",
        "US Army Corps of Engineers", "2014", READ,
    ),
    "LLOYDS_CLAME": Source(
        "Code for lifting appliances in a marine environment, Table 8.5.1 Dee shackles", "July 2022",
        "Lloyd's Register", "2022", READ,
    ),
    "WAC_296_304_07005": Source(
        "WAC 296-304-07005 Hooks: load on the throat, never on the point", "",
        "Washington State Department of Labor and Industries", "2017", READ,
    ),
    "ASME_B30_10": Source(
        "ASME B30.10-1.11.1(e) Hooks: a link or shackle for more than two legs, or beyond 45° from the hook's axis",
        "", "ASME", "", READ, "an inspector's note",
    ),
    "COLLECTOR_120": Source(
        "Links, rings and bow shackles that gather legs: 120° between them at most", "", "an inspector's note", "", READ
    ),
    "DIN_580_2003": Source(
        "DIN 580 and DIN 582 Lifting eye bolts and nuts, annex A: no pull beyond 45°", "2003", "DIN", "2003", READ,
        "makers' product information",
    ),
    "ISO_3266": Source(
        "ISO 3266 Forged steel eyebolts grade 4: −20 to 200 °C; its table of WLL was not seen", "2010", "ISO", "2010",
        READ, "the catalogue of standards",
    ),
    "BS_4278_TYPES": Source(
        "BS 4278 Eyebolts for lifting purposes: collar, link and dynamo patterns; safe use", "1984", "BSI", "1984",
        READ, "a fittings trader's leaflet after the LEEA code of practice",
    ),
    "US_EYEBOLT_CHARTS": Source(
        "Shoulder eyebolts: 100 % to 5° from the bolt axis, in the plane of the eye, never beyond 45°", "",
        "makers' charts (US)", "", READ,
    ),
    "ASME_B18_15": Source(
        "ASME B18.15 Forged eyebolts, rated load at 0, 30, 60 and 90° from the bolt axis", "", "ASME", "", READ,
        "a fastener maker",
    ),
    "US_METRIC_EYEBOLTS": Source(
        "Metric machinery eyebolts, working load straight and at 45° (5 to 1)", "", "a fastener trader (US)", "", READ
    ),
    "ASME_B30_26_SHOULDER": Source(
        "ASME B30.26: plain eyebolts in line only, angles for shoulder eyebolts alone", "", "ASME", "", READ,
        "an examination page",
    ),
    "HOIST_RING_NOTES": Source(
        "Swivel hoist rings: full WLL from 0 to 90°, flat contact, no spacers, thread and base metal", "",
        "makers' notes", "", READ,
    ),
    # from memory: stricter only
    "ASME_B30_26_STEPS": Source(
        "ASME B30.26 Shoulder eyebolts: 55 % from 6° to 15°, 25 % beyond", "", "ASME", "", FROM_MEMORY
    ),
    "BS_4278_45_DEG": Source(
        "BS 4278 Table 7 ends at 90° between the legs of a pair", "1984", "BSI", "1984", FROM_MEMORY
    ),
}
