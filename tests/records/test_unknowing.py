"""Signed without knowing: only what the server held when the sign-off came, its signer had not heard, and voids it."""

from pathlib import Path

import pytest
from cryptography.hazmat.primitives import hashes
from cryptography.hazmat.primitives.asymmetric import ec, utils

from checklist_app.checklists import values
from checklist_app.checklists.entry import Entry, make
from checklist_app.records import chain
from checklist_app.records.notices import NoticeBoard
from checklist_app.records.seal import NotYet, seal
from checklist_app.records.unknowing import unknowing
from checklist_app.records.world import DatabaseWorld
from tests.records.lock_phone import LockPhone
from tests.records.signing_phone import SigningPhone
from tests.records.yard import DAY, Lift, yard

LATER = f"{DAY}T15:00:00Z"


class Away(SigningPhone):
    """A phone that signs what it saw before others went on."""

    def sign_then(self, *meanwhile: object) -> Entry:
        """It signs; `meanwhile` happens at the server; then it comes back."""
        entry, parts = self.signed()
        for happens in meanwhile:
            happens()  # type: ignore[operator]
        assert self.bring(entry, parts)["state"] == "confirmed"
        assert self.doubt(entry) == ("", True)
        return entry


@pytest.fixture
def lift(tmp_path: Path) -> Lift:
    made = Lift(yard(tmp_path / "data")).plan().stop_points()
    yield made
    made.store.close()


@pytest.fixture
def phone(lift: Lift) -> Away:
    return Away(lift)


def about_gear(lift: Lift, tag: str, value: values.Value, replaces: tuple[str, ...] = (), counter: int = 1,
               author: str = "dunja-fell") -> Entry:
    said = make(("gear", tag), ("quarantine",), value, replaces, author, "d9", counter, f"{DAY}T10:00:00Z")
    lift.store.keep([said], {}, "d9", f"{DAY}T10:00:00Z")
    return said


def said(lift: Lift) -> list[str]:
    return [why for one in unknowing(lift.store, lift.id) for why in one.why]


def elsewhere(lift: Lift, path: str, value: values.Value) -> None:
    """Somebody else's answer on another phone."""
    here = (lift.device, lift.author)
    lift.device, lift.author = "d8", "dunja-fell"
    lift.say(path, value)
    lift.device, lift.author = here


HIGHER, SAME = (values.number(text, "m", "tape") for text in ("0.35", "0.30"))
CASES = {
    "nothing happened": ((), 0),
    "a sling was quarantined": ((lambda lift: about_gear(lift, "R-21", values.quarantine(DAY)),), 1),
    "a sling that is not picked was quarantined": ((lambda lift: about_gear(lift, "F-11", values.quarantine(DAY)),), 0),
    "an answer in scope was changed": ((lambda lift: elsewhere(lift, "lift_height_m", HIGHER),), 1),
    "the same answer was given again": ((lambda lift: elsewhere(lift, "lift_height_m", SAME),), 0),
    "a trial was entered": ((lambda lift: elsewhere(lift, "trial/1-first", values.row("present")),), 0),
    "two things happened": ((lambda lift: about_gear(lift, "R-21", values.quarantine(DAY)),
                             lambda lift: about_gear(lift, "R-22", values.quarantine(DAY), counter=2)), 2),
}


def test_who_signs_by_screen_lock_knows_no_more(lift: Lift) -> None:
    phone = LockPhone(lift)
    entry, parts = phone.signed()
    about_gear(lift, "R-21", values.quarantine(DAY))
    phone.bring(entry, parts)
    assert phone.doubt(entry) == ("", True) and len(said(lift)) == 1 and "R-21" in said(lift)[0]


@pytest.mark.parametrize("case", CASES)
def test_what_the_server_held_and_the_signer_had_not_heard(lift: Lift, phone: Away, case: str) -> None:
    happens, reasons = CASES[case]
    phone.sign_then(*((lambda act=act: act(lift)) for act in happens))
    assert len(said(lift)) == reasons


def test_what_came_after_the_sign_off_voids_it_and_blames_nobody(lift: Lift, phone: Away) -> None:
    phone.sign_then()
    about_gear(lift, "R-21", values.quarantine(DAY))
    assert said(lift) == []


def test_what_the_phone_had_heard_is_no_excuse_and_no_blame(lift: Lift, phone: Away) -> None:
    """He saw the quarantine of a spare sling, and his statement was made after it."""
    about_gear(lift, "F-11", values.quarantine(DAY))
    phone.sign_then()
    assert said(lift) == []


def test_answers_of_the_signers_own_phone_that_arrive_with_the_sign_off_blame_nobody(lift: Lift, phone: Away) -> None:
    lift.say("lift_height_m", values.number("0.32", "m", "tape"))
    phone.sign_then()
    assert said(lift) == []


def test_it_stays_told_when_the_sling_is_released_again(lift: Lift, phone: Away) -> None:
    made = []
    phone.sign_then(lambda: made.append(about_gear(lift, "R-21", values.quarantine(DAY))))
    before = said(lift)
    about_gear(lift, "R-21", values.release(), (made[0].digest,), counter=2, author="sam-oduya")
    assert said(lift) == before and len(before) == 1 and "R-21" in before[0]


def acknowledge(lift: Lift, sign_off: str, author: str = "agata-rusk") -> None:
    part, data = values.words_part("load lowered, sling changed", "salt-word")
    here, lift.author = lift.author, author
    lift.say("acknowledge", values.acknowledge(sign_off, part), {part: data}, replaces=False)
    lift.author = here


def board(lift: Lift):
    return NoticeBoard(lift.store).notices(DatabaseWorld(lift.store, DAY))


def test_everybody_is_alarmed_until_a_supervisor_gives_his_word(lift: Lift, phone: Away) -> None:
    entry = phone.sign_then(lambda: about_gear(lift, "R-21", values.quarantine(DAY)))
    (alarm,) = board(lift).alarms
    assert (alarm["task"], alarm["sign_off"]) == (lift.id, entry.digest)
    assert alarm["words"].startswith("Agata Rusk signed at ") and "R-21" in alarm["words"]
    acknowledge(lift, entry.digest, author="milo-harke")
    assert board(lift).alarms, "a rigger's word is not enough"
    acknowledge(lift, entry.digest)
    assert board(lift).alarms == ()


def test_nothing_is_worked_out_anew_while_nothing_arrives(lift: Lift, phone: Away) -> None:
    phone.sign_then(lambda: about_gear(lift, "R-21", values.quarantine(DAY)))
    one = NoticeBoard(lift.store)
    first = one.notices(DatabaseWorld(lift.store, DAY))
    assert one.notices(DatabaseWorld(lift.store, DAY)) is first
    about_gear(lift, "R-22", values.quarantine(DAY), counter=5)
    assert one.notices(DatabaseWorld(lift.store, DAY)) is not first


def test_the_task_says_why_a_sign_off_counts_for_nothing(lift: Lift, phone: Away) -> None:
    entry, parts = phone.signed()
    phone.store.devices.revoke(phone.device)
    phone.store.devices.sign_in(phone.device, phone.person)
    phone.bring(entry, parts)
    (words,) = board(lift).notes[lift.id]
    assert "A sign-off by Agata Rusk" in words and "counts for nothing: the phone was revoked" in words


def test_the_seal_waits_for_the_word_and_then_the_record_and_its_proof_tell_it(lift: Lift, phone: Away) -> None:
    entry = phone.sign_then(lambda: about_gear(lift, "R-21", values.quarantine(DAY)))
    lift.close("abandoned", "sling in quarantine")
    with pytest.raises(NotYet, match="without knowing"):
        seal(lift.store, lift.id, LATER)
    acknowledge(lift, entry.digest)
    name = seal(lift.store, lift.id, LATER)
    record = chain.find(lift.store, name).record
    (one,) = record["signoffs"]
    assert "R-21" in one["unknowing"][0] and one["how"] == "phone-key"
    assert any("load lowered, sling changed" in event["words"] for event in record["events"])
    assert_verified_without_the_server(one, lift.store.parts.get(one["statement"]))


def assert_verified_without_the_server(one: dict, statement: bytes) -> None:
    key = ec.EllipticCurvePublicKey.from_encoded_point(ec.SECP256R1(), bytes.fromhex(one["public"]))
    r, s = (int(one["signature"][half], 16) for half in (slice(64), slice(64, 128)))
    key.verify(utils.encode_dss_signature(r, s), statement, ec.ECDSA(hashes.SHA256()))
