"""How a number is come by, and how far the true one may lie away: the house's default spreads."""

from checklist_app.operations import settings
from checklist_app.operations.graph import Obtained

TAPE = Obtained("tape", "measured with a tape", plus_minus=settings.TAPE.value)
TAG = Obtained("tag", "read from the tag", relative=settings.TAG_LENGTH.value)

LENGTH_HOW = (
    TAPE,
    Obtained("drawing", "from a drawing", plus_minus=settings.TAPE.value),
    TAG,
    Obtained("by eye", "judged by eye", plus_minus=settings.CG_BY_EYE.value),
)
CG_HOW = (
    Obtained("drawing", "from a drawing", plus_minus=settings.CG_DRAWING.value),
    Obtained("trial", "from a trial lift", plus_minus=settings.CG_TRIAL.value),
    Obtained("by eye", "judged by eye", plus_minus=settings.CG_BY_EYE.value),
    TAPE,
    Obtained("scales", "by weighing on scales", plus_minus=settings.CG_TRIAL.value),
    Obtained("parts", "added up from its parts", plus_minus=settings.CG_BY_EYE.value),
)
ANGLE_HOW = (
    Obtained("inclinometer", "read on an inclinometer", plus_minus=settings.ANGLE_INCLINOMETER.value),
    Obtained("by eye", "judged by eye", plus_minus=settings.ANGLE_BY_EYE.value),
    Obtained("drawing", "from a drawing", plus_minus=settings.ANGLE_INCLINOMETER.value),
)
FRICTION_HOW = (Obtained("measured", "measured on the spot", relative=settings.FRICTION_MEASURED.value),)
MASS_HOW = (
    Obtained("weighed", "weighed", factor=settings.MASS_WEIGHED.value),
    Obtained("plate", "from the plate of this build", factor=settings.MASS_PLATE.value),
    Obtained("drawing", "from a drawing of this build", factor=settings.MASS_PLATE.value),
    Obtained("dry mass", "maker's dry mass with parts and fluids added", factor=settings.MASS_ADDED.value),
    Obtained("sister", "from an identical sister", factor=settings.MASS_SISTER.value),
    Obtained("calculated", "added up from its parts", factor=settings.MASS_CALCULATED.value),
    Obtained("estimate", "an estimate", factor=settings.MASS_ESTIMATE.value),
)
WIND_HOW = (
    Obtained("measured", "measured here, at the load", relative=settings.WIND_MEASURED.value),
    Obtained("forecast", "forecast for this place and hour", relative=settings.WIND_FORECAST.value),
)
SPEED_HOW = (
    Obtained("plate", "from the plate of the hoist", relative=settings.SPEED_KNOWN.value),
    Obtained("timed", "timed over a measured way", relative=settings.SPEED_KNOWN.value),
    Obtained("by eye", "judged by eye", relative=settings.SPEED_BY_EYE.value),
)
