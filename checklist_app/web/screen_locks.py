"""Whether a phone may sign by its screen lock at this address, and what it is asked when it is registered for that.

A screen lock stands for whoever can unlock the phone. So it is a person's own phone or none: who is signed in on it
registers for himself, and nobody else may be signed in there.
"""

from datetime import datetime, timedelta
from typing import Any

from flask import request

from checklist_app.checklists.canonical import digest
from checklist_app.checklists.signing import PHONE_KEY
from checklist_app.records.account_tables import Account
from checklist_app.records.key_tables import SignKey
from checklist_app.records.new_lock import NewLock, new_lock
from checklist_app.records.signature import NoPublicKey
from checklist_app.web import current
from checklist_app.web.security import challenge
from checklist_app.web.shell import NAME
from checklist_app.web.site import site
from checklist_app.web.tls.certificates import address
from checklist_app.web.tls.reach import plain_host

AFTER_PIN = timedelta(minutes=10)
NO_NAME = ("This server is known by an address, and a screen lock signs only for a name. So here it is the PIN. An "
           "administrator gives the server a name: serve --name.")
NOT_HIS = "A screen lock stands for whoever can unlock the phone: only who is signed in on it may sign by it."
OTHERS = "Others are signed in on this phone too and can unlock it. So it is the PIN, until they have signed out."
TOO_LATE = "The PIN was given too long ago. Enrol once more."


def host_here() -> str:
    """The name for which a screen lock signs here; empty where there is none, as at a bare address."""
    host = plain_host(request.host)
    found = site()
    if address(host.strip("[]")) is not None or (found is not None and host != found.name):
        return ""

    return host if request.is_secure or host == "localhost" else ""


def origin_here() -> str:
    return f"{request.scheme}://{request.host}"


def why_not(signer: str) -> str:
    """Why somebody does not sign by the screen lock of this phone; empty if he may."""
    account = current.account()
    if not host_here():
        return NO_NAME
    if account is None or account.person != signer:
        return NOT_HIS
    signed_in = current.store().devices.signed_in(current.device())

    return OTHERS if any(now for person, now in signed_in.items() if person != signer) else ""


def question(signer: Account, key: str) -> dict[str, Any] | None:
    """What the phone is asked, beside the key that its PIN opens; none where it is not asked."""
    if why_not(signer.person):
        return None

    return {"rp_id": host_here(), "site": NAME, "challenge": challenge(key).hex(), "name": signer.name,
            "user": digest(f"person/{signer.person}".encode())}


def answered(key: SignKey | None) -> NewLock:
    """What the phone answered, for the key beside which it was asked.

    Raises:
        NoPublicKey: With the reason why it is not registered.
    """
    account = current.account()
    if key is None or account is None or (key.device, key.how, key.ended_at) != (current.device(), PHONE_KEY, ""):
        raise NoPublicKey(TOO_LATE)
    if words := why_not(key.person):
        raise NoPublicKey(words)
    if current.now() - datetime.fromisoformat(key.made_at) > AFTER_PIN:
        raise NoPublicKey(TOO_LATE)

    return new_lock(request.form.get("attestation", ""), request.form.get("client", ""), challenge(key.id),
                    host_here(), origin_here())
