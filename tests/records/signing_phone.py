"""A phone with a key: it signs as the page's script does, r and s of 32 bytes each, and brings what it made."""

from datetime import UTC, datetime

from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec, utils
from cryptography.hazmat.primitives.serialization import Encoding, PublicFormat

from checklist_app.checklists import signing
from checklist_app.checklists.answer import Person, Request
from checklist_app.checklists.authority import capacities
from checklist_app.checklists.canonical import canonical, parse
from checklist_app.checklists.canonical import digest as digest_of
from checklist_app.checklists.entry import Entry, read
from checklist_app.checklists.holds import hold_state
from checklist_app.checklists.running import running
from checklist_app.checklists.signers import may_sign
from checklist_app.checklists.world import World
from checklist_app.records.keys import Keys
from checklist_app.records.parts import LARGEST_INLINE_BYTES
from tests.records.yard import DAY, DRAWN, Lift

PHONE, SIGNER = "d1", "agata-rusk"
ENROLLED = datetime(2026, 11, 25, 6, 0, tzinfo=UTC)
CAME = f"{DAY}T12:00:00Z"


def raw(key: ec.EllipticCurvePrivateKey, data: bytes) -> bytes:
    """A signature as browsers give it."""
    r, s = utils.decode_dss_signature(key.sign(data, ec.ECDSA(hashes.SHA256())))
    return r.to_bytes(32, "big") + s.to_bytes(32, "big")


def public(key: ec.EllipticCurvePrivateKey) -> bytes:
    return key.public_key().public_bytes(Encoding.X962, PublicFormat.UncompressedPoint)


class SigningPhone:
    """One person's key in one phone, registered at the server of a lift."""

    how = signing.PHONE_KEY

    def __init__(self, lift: Lift, person: str = SIGNER, device: str = PHONE) -> None:
        self.lift, self.store, self.person, self.device = lift, lift.store, person, device
        self.key = ec.generate_private_key(ec.SECP256R1())
        if device not in {name for name, in self.store.database.execute_sql("SELECT name FROM device")}:
            self.store.devices.enrol(device)
        self.id = self.keys.register(device, person, public(self.key), ENROLLED)

    @property
    def keys(self) -> Keys:
        return self.store.keys

    def signed(self, hold: str = "release", at: str = "", world: World | None = None, **changed: object
               ) -> tuple[Entry, dict[str, bytes]]:
        """A sign-off over what this phone sees; `changed` are fields of the statement that were tampered with."""
        world = world or self.lift.world
        task = running(world, self.lift.id)
        found, item = task.procedure.hold(hold), world.item("person", self.person)
        assert found is not None and item is not None
        state = hold_state(world, task, found)
        who = Person(self.person, str(item.facts["name"]), "supervisor", capacities(world, self.person))
        self.lift.counter += 1
        request = Request("POST", "/", form={"ink": (DRAWN,)}, device=self.device, counter=self.lift.counter,
                          at=at or self.lift.at, salt=f"salt-{self.lift.counter}")
        may = may_sign(task, state, who, DAY)
        made = signing.sign(request, world, task, state, who, self.how, may, self.id)
        return self.finished(made.keep[0], dict(made.parts), changed)

    def finished(self, made: Entry, parts: dict[str, bytes], changed: dict[str, object]
                 ) -> tuple[Entry, dict[str, bytes]]:
        """The signature over the statement goes into the entry, as the page's script puts it there."""
        statement = parts.pop(made.value["statement"])
        statement = canonical(parse(statement) | changed) if changed else statement
        body = parse(made.data)
        body["value"] |= {"statement": digest_of(statement), **self.proof(statement)}
        entry = read(canonical(body))
        return entry, parts | {digest_of(statement): statement}

    def proof(self, statement: bytes) -> dict[str, str]:
        """What goes into the entry as the proof that this key signed."""
        return {"signature": raw(self.key, statement).hex()}

    def signed_as(self, entry: Entry, parts: dict[str, bytes], **changed: object) -> tuple[Entry, dict[str, bytes]]:
        """The same sign-off over a statement that was tampered with before it was signed."""
        return self.finished(entry, dict(parts), changed)

    def bring(self, entry: Entry, parts: dict[str, bytes], at: str = CAME, device: str = "") -> dict[str, object]:
        """The server's answer to it; a part that is too large to go along went before."""
        for name, data in parts.items():
            if len(data) > LARGEST_INLINE_BYTES:
                self.store.parts.put(name, data)
        along = {name: data.decode() for name, data in parts.items() if len(data) <= LARGEST_INLINE_BYTES}
        item = {"body": entry.data.decode(), "parts": along}
        (answer,) = self.store.put(device or self.device, [item], at)
        return answer

    def doubt(self, entry: Entry) -> tuple[str, bool]:
        """The mark at the sign-off's receipt, and whether it counts."""
        return next((one.doubt, one.counts) for one in self.store.arrivals(entry.about) if one.entry == entry)
