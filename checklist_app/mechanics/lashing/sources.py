"""Where the figures of lashing are from."""

from checklist_app.mechanics.source import DERIVED, FROM_MEMORY, READ, Source

LASHING_SOURCES = {
    # written rules, read in public restatements
    "EN_12195_1": Source(
        "EN 12195-1 Load restraining on road vehicles, calculation of securing forces: balances, coefficients for "
        "road, rail and sea areas", "", "CEN", "2010", READ, "the GDV load securing handbook",
    ),
    "EN_12195_1_TILT_PAIRS": Source(
        "Revision of EN 12195-1: sideways tipping 0.5 with STF or 0.6 with 0.5 LC, fs 1.1", "", "IRU", "2010", READ,
        "slides on the revision",
    ),
    "EN_12195_2": Source(
        "EN 12195-2 Web lashing of man-made fibres: what the label says, limits of STF", "", "CEN", "2001", READ,
        "guides for users",
    ),
    "EN_12640": Source(
        "EN 12640 Lashing points on goods vehicles: minimum strength by gross mass", "", "CEN", "2000", READ,
        "a TÜV leaflet",
    ),
    "CTU_ANNEX_7": Source(
        "CTU Code, Annex 7: friction (Appendix 2), blocking and tipping (Appendix 4), void spaces", "MSC.1/Circ.1497",
        "IMO, ILO, UNECE", "2014", READ,
    ),
    "MSC_1498": Source(
        "MSC.1/Circ.1498 Informative material to the CTU Code: sea areas, angles of tie-downs", "", "IMO", "2014", READ
    ),
    "CSS_ANNEX_13_FORCES": Source(
        "CSS Code, Annex 13: basic accelerations, MSL, advanced calculation, its worked example", "1996 to 2002",
        "IMO", "2002", READ,
    ),
    "CFR_393": Source(
        "49 CFR 393.100 to 393.114: performance, aggregate WLL, WLL of unmarked tie-downs, minimum number", "",
        "US Federal Motor Carrier Safety Administration", "", READ,
    ),
    "NTC_2018": Source(
        "Load Restraint Guide: 0.8 W forwards, 0.5 W sideways and rearwards, 0.2 W upwards", "2018",
        "National Transport Commission (Australia)", "2018", READ, "quotations; its tables were not read",
    ),
    "VDI_2700_2": Source(
        "VDI 2700 Part 2 Tie-down lashing: k 1.5, up to 2.0 under conditions", "", "VDI", "2014", READ,
        "secondary pages and a textbook",
    ),
    "VDI_2700_16": Source("VDI 2700 Part 16 Vans to 3.5 t", "", "VDI", "", READ, "a sheet for van users"),
    "FRICTION_RANGES": Source(
        "Ranges of sliding friction of wood and metal, dry, wet and greasy", "", "trailer makers' manuals, after VDI",
        "", READ,
    ),
    "GDV_CONTAINER": Source(
        "Container handbook: steel band, nails, walls of a container", "", "GDV", "", READ
    ),
    "UIC_435_2": Source(
        "UIC 435-2 European flat pallet: 1000 kg in any position, 1500 evenly, 2000 compact over all", "", "UIC", "",
        READ, "pallet makers' data",
    ),
    "FREIGHT_WEIGHTS": Source("Volumetric and chargeable weight by air, road and sea", "", "carriers' conventions", "",
                              READ),
    "SOLAS_VGM": Source("SOLAS VI/2 and MSC.1/Circ.1475: verified gross mass, method 2", "", "IMO", "2014", READ),
    "SP_363": Source(
        "Special provision 363 (ADR, IMDG) and the air rules on engines that have held fuel", "ADR 2019 to 2023",
        "UNECE, IMO, IATA", "2023", READ, "a forwarder's guide",
    ),
    "ISPM_15": Source("ISPM 15 Wood packaging in international trade", "2018", "IPPC, FAO", "2018", READ),
    # our own statics
    "STATICS_LASHING": Source(
        "Moments and forces of tie-downs, direct lashings and blocks about the edges of a load, plane by plane", "",
        "this project", "2026", DERIVED,
    ),
    "STATICS_LASHED_BODY": Source(
        "Limit equilibrium of a rigid load with friction, lashings and blocks in space, checked by linear programming",
        "", "this project", "2026", DERIVED,
    ),
    "STATICS_AXLES": Source("Levers between the axles of a vehicle", "", "this project", "2026", DERIVED),
    "VEHICLE_LOAD_PLAN": Source(
        "Load distribution plan of the vehicle: most mass by distance from the headboard", "", "its maker", "", READ
    ),
    # from memory: stricter only
    "EN_12195_1_FS_OTHER": Source(
        "EN 12195-1: fs 1.1 for tie-downs on rail and at sea too; FT at most 0.5 LC", "", "CEN", "2010", FROM_MEMORY
    ),
    "CTU_STATES": Source(
        "CTU Code, EN 12195-1: friction of what is not swept clean, of frost, ice and snow", "", "IMO, CEN", "2014",
        FROM_MEMORY,
    ),
    "CTU_CHAPTER_5": Source(
        "CTU Code, chapter 5: accelerations; where smaller than those of EN 12195-1, the latter count", "",
        "IMO, ILO, UNECE", "2014", FROM_MEMORY,
    ),
    "CSS_ANNEX_13_MORE": Source(
        "CSS Code, Annex 13: factors of speed and of B/GM, friction lengthways of what weight remains, 0.9 on moments",
        "", "IMO", "2020", FROM_MEMORY,
    ),
    "UK_1_G": Source(
        "Safety of loads on vehicles, code of practice: whole weight forwards, half sideways and rearwards", "3rd",
        "Department for Transport (UK)", "2002", FROM_MEMORY,
    ),
    "CFR_393_TEN_FEET": Source(
        "49 CFR 393.110: ten feet or less", "", "US Federal Motor Carrier Safety Administration", "", FROM_MEMORY
    ),
}
