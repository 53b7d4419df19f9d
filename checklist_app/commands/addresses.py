"""Under which addresses a phone on the same network finds this machine."""

import socket

import ifaddr

EVERYWHERE = ("0.0.0.0", "", "::")
LOOPBACK = "127.0.0.1"
NOBODY = ("192.0.2.1", 9)
"""An address reserved for documents: asking which way leads there sends nothing."""


def addresses(host: str) -> list[str]:
    """The address to open, the one that phones reach first.

    Example:
        >>> addresses("127.0.0.1")
        ['127.0.0.1']
    """
    if host not in EVERYWHERE:
        return [host]
    found = [way_out(), *plugged_in()]

    return [*dict.fromkeys(one for one in found if one and not one.startswith("127.")), LOOPBACK]


def way_out() -> str:
    """This machine's address on the way to others."""
    with socket.socket(socket.AF_INET, socket.SOCK_DGRAM) as door:
        try:
            door.connect(NOBODY)
            return str(door.getsockname()[0])
        except OSError:
            return ""


def plugged_in() -> list[str]:
    """The address of every network that this machine is in: phones may come by any of them."""
    try:
        return [str(one.ip) for adapter in ifaddr.get_adapters() for one in adapter.ips if one.is_IPv4]
    except OSError:
        return []
