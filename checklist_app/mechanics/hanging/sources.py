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
    "STATICS_SLACKENING": Source(
        "Couple and push about the hook that slacken a leg, and the rise before the load goes over, checked with a "
        "physics engine", "", "this project", "2026", DERIVED,
    ),
    "STATICS_TWO_HOOKS": Source(
        "Statics of a load on two legs from two hooks, a chain of four bars, checked against energy minimisation",
        "", "this project", "2026", DERIVED,
    ),
    "STATICS_RUNNING_SLING": Source(
        "Statics of a load on one sling that runs free over the hook, checked against energy minimisation and a "
        "physics engine", "", "this project", "2026", DERIVED,
    ),
    "ACTA_MECHANICA_2023": Source(
        "Sudden change of the hanging direction of bodies on one running sling, doi 10.1007/s00707-023-03546-x",
        "", "Acta Mechanica, Springer", "2023", READ, "the abstract",
    ),
}
