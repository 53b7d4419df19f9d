"""What an eye is marked as, how it sits and how it is pulled: a rating belongs to the marking, never to the thread."""

from enum import Enum

# read for US shoulder eyebolts (makers' charts, 100 % from 0 to 5°); a setting of the house for all other eyes
IN_LINE_UP_TO_DEG = 5.0


class EyeMarking(Enum):
    """Standard stamped on an eye, or on its certificate."""

    DIN_580 = "DIN 580 or DIN 582, 2010 and later"
    DIN_580_2003 = "DIN 580 or DIN 582, 2003"
    ISO_3266 = "ISO 3266, grade 4"
    BS_4278_COLLAR = "BS 4278 collar eyebolt, metric thread"
    AS_2317_COLLAR = "AS 2317.1 collar eyebolt, metric thread, marked axial and transverse"
    BS_4278_DYNAMO = "BS 4278 dynamo eyebolt"
    BS_4278_LINK = "BS 4278 eyebolt with link"
    US_B18_15_SHOULDER = "ASME B18.15 shoulder eyebolt"
    US_METRIC_SHOULDER = "US metric machinery eyebolt with shoulder"
    US_PLAIN = "US eyebolt without shoulder"
    NONE = "no standard marked"


class Seating(Enum):
    """How the collar or shoulder sits."""

    FLAT = "screwed home by hand, collar flat on the whole face"
    GAP = "a gap under the collar, or no collar"


class PullPlane(Enum):
    """How the pull lies to the ring of the eye."""

    IN_PLANE = "in the plane of the eye"
    ACROSS = "across the plane of the eye"
