"""Instants as text, the way entries hold them."""

from datetime import UTC, datetime, timedelta

CLOCK_SLACK = timedelta(minutes=10)
"""So far a phone's clock may go wrong before its time is not believed."""


def moment(at: datetime) -> str:
    """An instant to the second, in UTC. Texts of this form sort by time.

    Example:
        >>> moment(datetime(2026, 11, 25, 10, 31, 7, tzinfo=UTC))
        '2026-11-25T10:31:07Z'
    """
    return at.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")


def believed(made_at: str, contact: str, received_at: str) -> datetime:
    """When something was made, as far as a phone's clock is believed: only between its last contact and the arrival.

    Otherwise the arrival counts, which is later: a clock that was set back makes nothing younger than it is.

    Example:
        >>> believed("2026-11-25T09:00:00Z", "2026-11-25T08:00:00Z", "2026-11-26T10:00:00Z").day
        25
        >>> believed("2026-11-24T09:00:00Z", "2026-11-25T08:00:00Z", "2026-11-26T10:00:00Z").day
        26
    """
    made, last, came = (datetime.fromisoformat(text) for text in (made_at, contact, received_at))

    return made if last - CLOCK_SLACK <= made <= came + CLOCK_SLACK else came
