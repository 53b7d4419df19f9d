"""How far a device's clock is off, as it was when it brought something. Nothing is ordered by it: it is only told."""

from datetime import datetime

from checklist_app.checklists.entry import MOMENT

FAR_S = 120
HOUR_S, DAY_S = 3600, 86400


def skew_s(said: object, now: datetime) -> int:
    """Seconds by which a device's clock is ahead of the server's; 0 if it does not say."""
    if not isinstance(said, str) or not MOMENT.match(said):
        return 0
    try:
        return round((datetime.fromisoformat(said.replace("Z", "+00:00")) - now).total_seconds())
    except ValueError:
        return 0


def ahead_doubt(at: str, received_at: str) -> str:
    """The doubt at an entry that came before it was made."""
    skew = skew_s(at, datetime.fromisoformat(received_at.replace("Z", "+00:00")))
    return clock_doubt(skew) if skew > 0 else ""


def clock_doubt(skew: int) -> str:
    """The doubt at entries that such a clock timed; empty for one that is right.

    Example:
        >>> clock_doubt(-7500)
        "the phone's clock was 2 hours behind the server's"
        >>> clock_doubt(60)
        ''
    """
    away = abs(skew)
    if away < FAR_S:
        return ""
    number, unit = (away / 60, "minute") if away < HOUR_S else (away / HOUR_S, "hour") if away < DAY_S else (
        away / DAY_S, "day")
    count = round(number)
    side = "ahead of" if skew > 0 else "behind"

    return f"the phone's clock was {count} {unit}{'' if count == 1 else 's'} {side} the server's"
