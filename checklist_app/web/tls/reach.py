"""By which names phones reach this machine, and the one that everybody shall use."""

import re
from collections.abc import Sequence

from checklist_app.web.tls.certificates import address

HOST = re.compile(r"(?=.{1,253}\Z)[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?(\.[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?)*\Z")
LOCAL = ".local"
NAMELESS = "checklist"


def label(hostname: str) -> str:
    """The machine's own short name, as far as it can stand in an address.

    Example:
        >>> label("Shed_PC.fritz.box"), label("Büro")
        ('shed-pc', 'b-ro')
    """
    plain = re.sub(r"[^a-z0-9]+", "-", hostname.split(".")[0].lower()).strip("-")[:63].strip("-")

    return NAMELESS if plain in ("", "localhost") else plain


def tidy_host(text: str) -> str:
    """A name or address as it stands in a link.

    Raises:
        ValueError: If it can be neither.
    """
    host = text.strip().lower().rstrip(".")
    number = address(host.strip("[]"))
    if number is not None:
        return str(number)
    if not HOST.match(host) or host.replace(".", "").isdigit():
        raise ValueError(f"{text!r} is neither a name nor an address: write it like checklist.local or 192.168.1.20")

    return host


def canonical(named: str, kept: str, short: str, addresses: Sequence[str], announced: bool) -> str:
    """The one https name. What a phone keeps belongs to a name, so the name stays once it is chosen.

    Args:
        named: What the command line says, if anything.
        kept: The name used before, if any. An address that the machine no longer has is of no use.
        short: The machine's short name.
        addresses: The addresses that a certificate can name.
        announced: Whether the network carries names ending in .local.

    Example:
        >>> canonical("", "", "shed-pc", ["192.168.1.20"], announced=True)
        'shed-pc.local'
        >>> canonical("", "192.168.1.20", "shed-pc", ["192.168.1.77"], announced=False)
        '192.168.1.77'
    """
    if named:
        return named
    if kept and (address(kept) is None or kept in addresses):
        return kept
    if announced or not addresses:
        return short + LOCAL

    return addresses[0]


def in_link(host: str) -> str:
    """A host as it stands in a link: an IPv6 address in brackets."""
    return f"[{host}]" if ":" in host else host


def plain_host(netloc: str) -> str:
    """The host of a request, without port and brackets.

    Example:
        >>> plain_host("Shed.local:8443"), plain_host("[::1]:8443")
        ('shed.local', '::1')
    """
    if netloc.startswith("["):
        return netloc[1:].partition("]")[0].lower()

    return netloc.partition(":")[0].lower().rstrip(".")
