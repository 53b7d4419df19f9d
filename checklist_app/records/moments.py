"""Instants as text, the way entries hold them."""

from datetime import UTC, datetime


def moment(at: datetime) -> str:
    """An instant to the second, in UTC. Texts of this form sort by time.

    Example:
        >>> moment(datetime(2026, 11, 25, 10, 31, 7, tzinfo=UTC))
        '2026-11-25T10:31:07Z'
    """
    return at.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")
