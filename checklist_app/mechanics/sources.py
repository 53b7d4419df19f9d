"""Where every figure of the engineering floor comes from, and whether it was read, derived or is from memory."""

from checklist_app.mechanics.finding.sources import FINDING_SOURCES
from checklist_app.mechanics.fittings.sources import FITTING_SOURCES
from checklist_app.mechanics.hanging.sources import HANGING_SOURCES
from checklist_app.mechanics.lashing.sources import LASHING_SOURCES
from checklist_app.mechanics.slings.sources import SLING_SOURCES
from checklist_app.mechanics.source import DERIVED, FROM_MEMORY, HOUSE, READ, Source, Status
from checklist_app.mechanics.sway.sources import SWAY_SOURCES

__all__ = ["SOURCES", "Source", "Status"]

SOURCES = {
    # written rules, read in public restatements
    "EN_1492_1": Source(
        "EN 1492-1 Textile slings: flat woven webbing slings, mode factors M", "", "CEN", "2000+A1:2008", READ,
        "a sling maker's instruction for use",
    ),
    "EN_1492_2": Source(
        "EN 1492-2 Textile slings: roundslings, mode factors M", "", "CEN", "2000+A1:2008", READ,
        "a sling maker's instruction for use",
    ),
    "EN_818_4": Source(
        "EN 818-4 Chain slings, grade 8: leg factors and angles", "", "CEN", "1996+A1:2008", READ,
        "a fittings maker's instruction for use",
    ),
    "EN_818_6": Source(
        "EN 818-6 Chain slings: information for use, symmetric and asymmetric loads", "", "CEN", "2000+A1:2008",
        READ, "chain makers' instructions for use",
    ),
    "EN_13889": Source(
        "EN 13889 Forged steel shackles, grade 6: two slings in the bow", "", "CEN", "2003+A1:2008", READ,
        "shackle makers' charts",
    ),
    "DIN_580": Source(
        "DIN 580 and DIN 582 Lifting eye bolts and eye nuts", "2010 and later", "DIN", "2010", READ,
        "a maker's load table",
    ),
    "BS_4278": Source(
        "BS 4278 Eyebolts for lifting purposes / AS 2317.1 Collared eyebolts", "", "BSI, Standards Australia",
        "1984, 2018", READ, "a maker's load table",
    ),
    "MACHINERY_DIRECTIVE": Source(
        "Directive 2006/42/EC on machinery, Annex I 4.1.2.5", "", "European Union", "2006", READ
    ),
    "ND_0027": Source(
        "0027/ND Guidelines for marine lifting and lowering operations", "Rev. 11.2", "GL Noble Denton", "2016", READ
    ),
    "USACE_16_3": Source(
        "Critical Lift Plan, form 16-3 to EM 385-1-1", "", "US Army Corps of Engineers", "2014", READ
    ),
    "HSE_PLANNING": Source(
        "Planning and organising lifting operations: routine, a little more complex, complex", "",
        "Health and Safety Executive", "2014", READ,
    ),
    "LOLER": Source(
        "Lifting Operations and Lifting Equipment Regulations, reg. 7 and 9", "SI 1998/2307", "UK", "1998", READ,
        "guidance pages for users",
    ),
    "OSHA_CUSTOM_ACCESSORIES": Source(
        "29 CFR 1926.251(a)(4): special custom design lifting accessories, marked and proof-tested", "",
        "US Occupational Safety and Health Administration", "2007", READ,
    ),
    "PURDUE_RIGGING": Source(
        "Crane safety, rigging: the centre of gravity inside the angle formed by the slings", "",
        "Purdue University, PRIME Lab", "", READ,
    ),
    "BIPM_SI_BROCHURE": Source("The International System of Units (SI)", "9th edition", "BIPM", "2019", READ),
    "SUN_FDLIBM": Source(
        "Freely Distributable LIBM, version 5.3", "5.3", "Sun Microsystems", "1993", READ
    ),
    # our own statics
    "STATICS_TWO_LEGS": Source(
        "Statics of a rigid body hung on two legs from one hook, checked against energy minimisation", "",
        "this project", "2026", DERIVED,
    ),
    "STATICS_TWO_PICKS": Source(
        "Two picks leave rotation about the line through them free: stiffness is weight times depth of the centre of "
        "gravity below it", "", "this project", "2026", DERIVED,
    ),
    "GEOMETRY_OF_THE_LIFT": Source(
        "Heights and clearances added up along the plumb line", "", "this project", "2026", DERIVED
    ),
    # what the gear itself says
    "PLATE": Source("Rated load on the item's own plate, label or marking", "", "its maker", "", READ),
    "PICK_POINT_EVIDENCE": Source(
        "Rating of what the eye stands on, with its evidence", "", "as entered for the load", "", READ
    ),
    # from memory: stricter only
    "HOOK_TWO_LEGS": Source(
        "Two sling legs straight in one hook: 90° between them at most", "", "hook makers' charts", "", FROM_MEMORY
    ),
    # settings of the house
    "HOUSE_SETTING": Source("Setting of this house", "", "the workshop", "", HOUSE),
    # slings and fittings: kept with the packages that use them
    **SLING_SOURCES,
    **FITTING_SOURCES,
    **HANGING_SOURCES,
    **FINDING_SOURCES,
    **LASHING_SOURCES,
    **SWAY_SOURCES,
}
