"""One way in: what a device brings is confirmed after it is on the disk, refused in words, or asked to come later."""

import hashlib
import json

import peewee as p
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from checklist_app.checklists import values
from checklist_app.checklists.canonical import canonical, digest
from checklist_app.checklists.entry import make
from checklist_app.checklists.fold import fold
from checklist_app.records.accounts import Accounts
from checklist_app.records.database import Kept, Receipt, Seal, Server
from checklist_app.records.door import TooMany, look_at
from checklist_app.records.parts import NotThatPart
from checklist_app.records.store import SetBack, Store
from tests.checklists.phones import ACTS, history
from tests.records.brought import AT, TASK, batch, some

START = {"number": 0, "head": ""}


def states(answers):
    return [answer["state"] for answer in answers]


@settings(max_examples=15)
@given(ACTS.filter(bool), st.randoms())
def test_any_order_any_repetition_and_any_batches_end_in_the_same_task(tmp_path_factory, acts, rng):
    _, entries = history(acts)
    store = Store(tmp_path_factory.mktemp("store"))
    store.devices.enrol("d-0")
    for person in {entry.author for entry in entries}:
        store.devices.sign_in("d-0", person)
    left = entries + rng.sample(entries, len(entries) // 2)
    rng.shuffle(left)
    while left:
        size = rng.randrange(1, 9)
        assert set(states(store.put("d-0", batch(*left[:size]), AT))) == {"confirmed"}
        left = left[size:]
    assert fold(store.entries(("task", "t-1"))) == fold(entries)
    assert store.cursor()["number"] == len(entries)
    store.close()


def test_one_bad_entry_among_fifty_is_refused_in_words_and_the_others_are_kept(store):
    items = batch(*some(50))
    items[17] = {"body": items[17]["body"].replace('"kg"', "1.5")}
    answers = store.put("d-1", items, AT)
    assert states(answers).count("confirmed") == 49 and answers[17]["state"] == "refused" and answers[17]["words"]
    standing = fold(store.entries(TASK)).disputed[("mass_kg",)]
    assert {entry.value["text"] for entry in standing} == {"17", "50"}, "shown, not lost in silence"


@pytest.mark.parametrize("nonsense", [
    None, 5, [], {}, {"body": 5}, {"body": "[" * 8000}, {"body": "\ud800"}, {"body": "x" * 9000}, {"body": "{}"},
    {"body": some(1)[0].data.decode(), "parts": []}, {"body": some(1)[0].data.decode(), "parts": {"x": 1}},
    {"body": some(1)[0].data.decode(), "parts": {"0" * 64: "not that text"}},
    {"body": some(1)[0].data.decode(), "parts": {digest(b"x" * 70_000): "x" * 70_000}},
])
def test_nonsense_is_refused_by_itself_and_stops_nothing_else(store, nonsense):
    answers = store.put("d-1", [nonsense, *batch(*some(1, first=9))], AT)
    assert states(answers) == ["refused", "confirmed"] and answers[0]["words"]
    assert len(store.entries(TASK)) == 1


ANYTHING = st.recursive(
    st.none() | st.booleans() | st.integers() | st.floats() | st.text(st.characters()),
    lambda inner: st.lists(inner, max_size=3)
    | st.dictionaries(st.sampled_from(["body", "parts"]) | st.text(max_size=3), inner, max_size=3), max_leaves=8)
BODY = json.loads(some(1)[0].data)


def bent(name, value):
    return {"body": json.dumps(BODY | {name: value}, sort_keys=True, separators=(",", ":"), ensure_ascii=False)}


@given(ANYTHING | st.builds(bent, st.sampled_from(sorted(BODY)), ANYTHING))
def test_whatever_is_brought_is_answered_in_words(item):
    (looked,) = look_at([item])
    assert looked.state in ("confirmed", "refused", "later")
    assert (looked.state == "confirmed") == (looked.entry is not None) == (not looked.words)


def test_what_a_later_version_made_is_asked_to_come_again_and_not_refused(store):
    items = [{"body": some(1)[0].data.decode().replace('"form":1', '"form":2')}]
    assert states(store.put("d-1", items, AT)) == ["later"] and store.cursor()["number"] == 0


def test_sent_again_everything_is_confirmed_with_its_first_number_and_kept_once(store):
    items = batch(*some(5))
    first = store.put("d-1", items, AT)
    assert [answer["number"] for answer in first] == [1, 2, 3, 4, 5]
    assert store.put("d-1", items + items[:2], "2026-11-26T09:00:00Z")[:5] == first
    assert store.cursor()["number"] == 5 and {a.received_at for a in store.arrivals(TASK)} == {AT}


def test_more_than_a_batch_is_answered_as_a_whole_and_nothing_is_kept(store):
    with pytest.raises(TooMany, match="50"):
        store.put("d-1", batch(*some(51)), AT)
    assert store.cursor()["number"] == 0


def test_only_who_signed_in_on_a_device_speaks_from_it(store):
    stranger = batch(*some(1, author="p-2"))
    (answer,) = store.put("d-1", stranger, AT)
    assert answer["state"] == "refused" and "p-2 never signed in" in answer["words"]
    store.devices.sign_in("d-1", "p-2")
    store.devices.sign_out("d-1", "p-2")
    assert states(store.put("d-1", stranger, AT)) == ["later"], "he signed in once and may come back"
    store.devices.sign_in("d-1", "p-2")
    assert states(store.put("d-1", stranger, AT)) == ["confirmed"]
    store.devices.sign_out("d-1", "p-2")
    assert states(store.put("d-1", stranger, AT)) == ["confirmed"], "what is kept stays confirmed"


def test_a_revoked_phones_entries_are_kept_and_marked_and_so_are_carried_and_twice_counted_ones(store):
    name, secret = store.devices.enrol()
    store.devices.sign_in(name, "p-1")
    first, second = some(2)
    store.put("d-1", batch(first), AT)
    store.devices.revoke("d-1")
    store.put("d-1", batch(second), AT)
    again = make(TASK, ("mass_kg",), values.number("777", "kg"), (), "p-1", "d-1", 1, AT)
    store.put(name, batch(again), AT)
    assert [arrival.doubt for arrival in store.arrivals(TASK)] == [
        "", "this phone was revoked", f"brought by {name}; counted twice: a phone set back or copied"]
    assert store.devices.find(secret) == name and store.devices.find("wrong") is None
    assert all(arrival.counts for arrival in store.arrivals(TASK))


@pytest.mark.parametrize(("role", "counting"), [
    ("rigger", {"number", "quarantine", "stop", "first version", "lost"}),
    ("supervisor", {"number", "quarantine", "stop", "first version", "lost", "release", "examination", "in service",
                    "version", "go_on"}),
    ("administrator", {"number", "quarantine", "stop", "first version", "lost", "release", "examination", "in service",
                       "version", "go_on", "person"}),
    ("auditor", {"stop"}),
    ("", {"number", "quarantine", "stop", "first version", "lost"}),
])
def test_what_a_role_does_not_allow_is_kept_and_counts_for_nothing(store, role, counting):
    if role:
        Accounts(store.database).add("p-1", "Ada", role)
    gear, part = ("gear", "L-07"), digest(b"1")
    said = {
        "number": (TASK, ("mass_kg",), values.number("1", "kg"), ()), "stop": (TASK, ("stop",), {"type": "stop"}, ()),
        "go_on": (TASK, ("stop",), {"type": "go_on", "part": part}, ()),
        "signature": (TASK, ("holds", "release", "supervisor"),
                      {"type": "signature", "statement": part, "capacity": "supervisor", "how": "pin"}, ()),
        "quarantine": (gear, ("quarantine",), values.quarantine("2026-11-25"), ()),
        "release": (gear, ("quarantine",), values.release(), ()),
        "examination": (gear, ("examination",), values.examination("fit", "2026-11-25", "2027-11-25"), ()),
        "in service": (gear, ("custody",), values.custody("in service", "2026-11-25"), ()),
        "lost": (gear, ("custody",), values.custody("lost", "2026-11-25"), ()),
        "first version": (gear, ("version",), values.version("flat_sling/1", part), ()),
        "version": (gear, ("version",), values.version("flat_sling/1", part), (part,)),
        "person": (("person", "p-1"), ("version",), values.version("person/1", part), ()),
    }
    for number, (about, path, value, replaces) in enumerate(said.values(), 1):
        entry = make(about, path, value, replaces, "p-1", "d-1", number, AT)
        assert states(store.put("d-1", batch(entry), AT)) == ["confirmed"]
    arrivals = [arrival for about in (TASK, gear, ("person", "p-1")) for arrival in store.arrivals(about)]
    names = dict(enumerate(said, 1))
    assert {names[arrival.entry.counter] for arrival in arrivals if arrival.counts} == counting
    assert all(arrival.counts or arrival.doubt for arrival in arrivals)
    assert store.entries(TASK) == [arrival.entry for arrival in store.arrivals(TASK) if arrival.counts]


def test_parts_come_with_their_entry_and_are_read_back(store):
    name, data = values.words_part("the paint is off", "0" * 32)
    entry = make(TASK, ("landing",), values.text(name), (), "p-1", "d-1", 1, AT)
    store.put("d-1", batch(entry, parts={name: data.decode()}), AT)
    assert store.parts.get(name) == data and values.words(store.parts.get(name)) == "the paint is off"


def test_the_running_digest_binds_every_receipt_to_all_before_it(store):
    store.put("d-1", batch(*some(3)), AT)
    head = Server.select(Server.origin).tuples().first(store.database)[0]
    for arrival in store.arrivals(TASK):
        head = hashlib.sha256((head + arrival.entry.digest).encode()).hexdigest()
    assert store.cursor() == {"number": 3, "head": head}


def test_two_servers_give_the_same_entries_different_running_digests(store, tmp_path):
    other = Store(tmp_path / "other")
    store.keep(some(3), {}, "d-1", AT)
    other.keep(some(3), {}, "d-1", AT)
    assert store.cursor()["number"] == other.cursor()["number"] and store.cursor()["head"] != other.cursor()["head"]
    other.close()


def test_a_phone_pages_through_all_receipts_and_misses_none(store):
    for number in range(6):
        store.keep(some(20, f"d-{number}"), {}, f"d-{number}", AT)
    got, cursor = [], START
    for limit in [7, 1, 39, 13, 40, 20, 5]:
        more, cursor = store.since(cursor, limit)
        got += more
    assert [arrival.number for arrival in got] == list(range(1, 121)) and cursor == store.cursor()
    assert store.since(cursor) == ([], cursor)


@pytest.mark.parametrize("cursor", [{"number": 2, "head": "0" * 64}, {"number": 99, "head": "0" * 64}])
def test_a_cursor_this_server_never_gave_is_told_apart(store, cursor):
    store.keep(some(3), {}, "d-1", AT)
    with pytest.raises(SetBack):
        store.since(cursor)


def test_entries_of_a_page_are_kept_with_their_parts_or_not_at_all(store):
    name, data = values.words_part("bed 3", "1")
    with pytest.raises(NotThatPart):
        store.keep(some(2), {name: data, digest(b"x"): b"y"}, "s-1", AT)
    assert store.cursor()["number"] == 0 and store.parts.get(name) is None
    assert store.keep(some(2), {name: data}, "s-1", AT) == {entry.digest: n for n, entry in enumerate(some(2), 1)}
    assert store.keep(some(2), {name: data}, "s-1", AT) == {entry.digest: n for n, entry in enumerate(some(2), 1)}


def test_the_next_counter_is_one_more_than_the_highest_that_came(store):
    assert store.next_counter("s-1") == 1
    store.keep(some(3, "s-1"), {}, "s-1", AT)
    assert store.next_counter("s-1") == 4 and store.next_counter("s-2") == 1


def test_what_the_database_itself_forbids(store):
    store.keep(some(2), {}, "d-1", AT)
    for statement in ("UPDATE receipt SET entry_id = (SELECT entry_id FROM receipt WHERE number = 2) WHERE number = 1",
                      "INSERT INTO server (id, origin, number, head, sealing_waits) VALUES (2, 'x', 0, 'x', 0)",
                      "DELETE FROM kept", "INSERT INTO part (digest) VALUES ('short')"):
        with pytest.raises(p.IntegrityError):
            store.database.execute_sql(statement)
    assert Kept.select().count(store.database) == Receipt.select().count(store.database) == 2


def sealed(store, task, previous, of=None):
    name = digest(canonical([task, previous]))
    number = Seal.select().count(store.database) + 1
    Seal.insert(digest=name, number=number, task=task, previous=previous, of=of, sealed_at=AT, pdf=name,
                data=b"{}").execute(store.database)
    return name


def test_a_task_has_one_record_and_a_record_one_follower(store):
    first = sealed(store, "t-1", "start")
    for task, previous in (("t-1", first), ("t-2", "start")):
        with pytest.raises(p.IntegrityError):
            sealed(store, task, previous)
    sealed(store, "t-1", first, of=first)


def test_commits_wait_for_the_disk_and_rows_name_what_is_there(store):
    asked = {name: store.database.execute_sql(f"PRAGMA {name}").fetchone()[0]
             for name in ("journal_mode", "synchronous", "foreign_keys")}
    assert asked == {"journal_mode": "wal", "synchronous": 2, "foreign_keys": 1}
