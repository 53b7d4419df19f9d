"""Signing on a phone away from the server, and a supervisor's word on what was signed without knowing."""
from dataclasses import replace

import pytest

from checklist_app.checklists.answer import Verified, answer
from checklist_app.checklists.authority import belongs
from checklist_app.checklists.canonical import canonical, parse
from checklist_app.checklists.entry import read
from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.pages.acknowledge import acknowledged
from checklist_app.checklists.running import running
from tests.checklists.yard import RIGGER, RUN_OUT, SUPERVISOR, TASK, Yard, person, request

RELEASE = f"/tasks/{TASK}/holds/release"
ALARM = f"/tasks/{TASK}/acknowledge"
KEY, SIGN_OFF, OTHER = "ab" * 32, "cd" * 32, "ef" * 32


def signed(yard: Yard, key: str = KEY):
    """What the checks on the phone answer once the PIN has opened its key."""
    shown = hold_states(yard.world, running(yard.world, TASK))[0].seen.fingerprint
    asked = request(yard, RELEASE, act="sign", signer=SUPERVISOR, typed="Agata Rusk", shown=shown)
    return answer(replace(asked, verified=Verified(person(SUPERVISOR), "phone-key", key)), yard.world)


def test_the_phone_gets_the_statement_with_its_key_and_an_entry_that_lacks_only_the_signature() -> None:
    given = signed(Yard().ready())
    (entry,) = given.keep
    statement = parse(given.parts[entry.value["statement"]])
    assert (entry.value["how"], entry.value["key"], statement["key"]) == ("phone-key", KEY, KEY)
    assert "signature" not in entry.value and belongs(entry, statement)
    body = parse(entry.data)
    body["value"]["signature"] = "12" * 64
    assert belongs(read(canonical(body)), statement)
    body["value"]["key"] = OTHER
    assert not belongs(read(canonical(body)), statement)
    del body["value"]["key"]
    assert not belongs(read(canonical(body)), statement)


def test_what_is_signed_at_the_server_names_no_key() -> None:
    given = signed(Yard().ready(), key="")
    assert "key" not in given.keep[0].value and "key" not in parse(given.parts[given.keep[0].value["statement"]])


def test_page_and_sheet_say_how_it_was_signed() -> None:
    yard = Yard().ready()
    given = signed(yard)
    yard.entries.extend(given.keep)
    yard.parts.update(given.parts)
    assert "PIN on enrolled phone" in answer(request(yard, RELEASE), yard.world).html


def alarmed(yard: Yard, signed_in: str = RIGGER, pin_of: str = "", **form: str):
    told = ({"task": TASK, "sign_off": SIGN_OFF, "href": ALARM, "words": "Agata Rusk signed and had not heard: R-1."},)
    return answer(replace(request(yard, ALARM, signed_in, pin_of, **form), alarms=told), yard.world)


def word(yard: Yard, who: str = SUPERVISOR, **form: str):
    return alarmed(yard, pin_of=who, **{"signer": who, "words": "lowered, sling changed", "sign_off": SIGN_OFF, **form})


def test_every_page_shows_the_alarm_to_who_is_signed_in() -> None:
    yard = Yard().ready()
    for path in ("/today", f"/tasks/{TASK}", RELEASE, ALARM):
        told = ({"task": TASK, "sign_off": SIGN_OFF, "href": ALARM, "words": "R-1 in quarantine."},)
        page = answer(replace(request(yard, path), alarms=told), yard.world)
        assert "Signed without knowing." in page.html and "R-1 in quarantine." in page.html, path
        assert "Signed without knowing." not in answer(request(yard, path), yard.world).html, path
    assert "R-1" not in answer(replace(request(yard, "/assess"), alarms=told, person=None), yard.world).html


def test_a_supervisors_word_is_an_entry_that_counts_and_ends_the_alarm() -> None:
    yard = Yard().ready()
    assert alarmed(yard).status == 200
    given = word(yard)
    assert given.status == 303 and given.keep[0].author == SUPERVISOR
    yard.entries.extend(given.keep)
    yard.parts.update(given.parts)
    assert acknowledged(running(yard.world, TASK)) == {SIGN_OFF}
    assert alarmed(yard).status == 303, "nothing is left to acknowledge"


@pytest.mark.parametrize(("who", "form", "words"), [
    (SUPERVISOR, {"words": ""}, "what was done"), (RIGGER, {}, "is not a supervisor"),
    (RUN_OUT, {}, "is not a supervisor"), (SUPERVISOR, {"signer": ""}, "Choose who"),
    (SUPERVISOR, {"signer": RIGGER}, "PIN of the supervisor"), (SUPERVISOR, {"sign_off": OTHER}, "Look again"),
])
def test_what_is_missing_from_the_word_is_said_and_nothing_is_kept(who: str, form: dict[str, str], words: str) -> None:
    given = word(Yard().ready(), who, **form)
    assert given.status == 422 and not given.keep and words in given.html


def test_a_word_by_who_is_no_supervisor_counts_for_nothing() -> None:
    yard = Yard().ready()
    yard.say("acknowledge", {"type": "acknowledge", "entry": SIGN_OFF, "part": OTHER}, RIGGER)
    assert acknowledged(running(yard.world, TASK)) == frozenset()
