"""Sources of the hanging body: our own statics, and the rules that were published for it."""

from checklist_app.mechanics.source import DERIVED, READ, Source

HANGING_SOURCES = {
    "STATICS_HANGING_BODY": Source(
        "Statics of a rigid body hung in space on up to four legs from one hook, checked against energy minimisation",
        "", "this project", "2026", DERIVED,
    ),
    "NAVEDTRA_RIGGING": Source(
        "Steelworker training manual, rigging: two legs of a four-leg sling may carry practically the whole rigid load",
        "p. 13-28", "US Navy, Naval Education and Training", "", READ,
    ),
}
