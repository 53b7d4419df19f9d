"""An item of a register as its entries leave it: the version in force, the state that restricts most."""

import json
from dataclasses import replace

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.canonical import digest
from checklist_app.checklists.fold import fold
from checklist_app.checklists.register import item_of, known_on
from checklist_app.operations.kinds import KINDS
from tests.checklists.phones import Phone, meet

SLING = ("gear", "L-07")
DAY = "2026-11-25"
FACTS = {"wll_t": "2", "length_m": "2", "marked": "yes", "origin": "bought"}
KEPT_LONG_AGO = (b'{"facts":{"length_mm":"2000","origin":"bought","tag":"yes","wll_kg":"2,000"},'
                 b'"salt":"x","schema":"flat_sling/1"}')


class Register(Phone):
    """One person with a device who keeps a register."""

    parts: dict[str, bytes]

    def __init__(self, name, author=""):
        super().__init__(name, author, SLING)
        self.parts = {}

    def version(self, facts=FACTS, schema="flat_sling/1", about=None):
        name, data = values.document_part(schema, facts, "1")
        self.parts[name] = data
        return self.say(("version",), values.version(schema, name))

    def quarantine(self, why=""):
        name, data = values.words_part(why, "2") if why else ("", b"")
        self.parts |= {name: data} if why else {}
        return self.make(("quarantine",), values.quarantine(DAY, name))

    def release(self):
        return self.say(("quarantine",), values.release())

    def examine(self, due, on="2026-01-01"):
        return self.say(("examination",), values.examination("fit for use", on, due))

    @property
    def item(self):
        return item_of(self.known.values(), self.parts, DAY)


def two():
    return Register("d-a", "p-a"), Register("d-b", "p-b")


def test_an_item_has_the_facts_of_its_last_version_and_keeps_those_of_every_version_that_was_picked():
    one = Register("d-a")
    first = one.version()
    second = one.version(FACTS | {"wll_t": "3"})
    assert (one.item.register, one.item.id, one.item.kind) == ("gear", "L-07", "flat_sling")
    assert one.item.version == second.digest and one.item.facts["wll_t"] == "3" and not one.item.fault
    assert one.item.versions[first.digest]["wll_t"] == "2" and one.item.subject == "gear/L-07"


def test_two_versions_made_apart_leave_no_version_in_force_until_somebody_chooses():
    a, b = two()
    a.version()
    b.version(FACTS | {"wll_t": "3"})
    meet(a, b)
    a.parts |= b.parts
    assert a.item.version is None and not a.item.facts and len(a.item.disputed) == 2 and "choose" in a.item.fault
    a.version()
    assert a.item.facts["wll_t"] == "2" and not a.item.disputed


def test_a_document_that_has_not_arrived_or_was_altered_gives_no_facts_and_says_so():
    one = Register("d-a")
    name = one.version().value["part"]
    assert "not arrived" in item_of(one.known.values(), {}, DAY).fault
    for nonsense in (b"[", b"[]", b'{"schema":"flat_sling/1"}', b'{"facts":{},"schema":"shackle/1"}'):
        item = item_of(one.known.values(), {name: nonsense}, DAY)
        assert item.fault and not item.facts


@pytest.mark.parametrize(("schema", "words"), [("crown/1", "no such kind"), ("flat_sling/99", "later version"),
                                               ("flat_sling/x", "no such kind")])
def test_an_unknown_or_later_kind_of_document_is_named(schema, words):
    one = Register("d-a")
    one.version(schema=schema)
    assert words in one.item.fault and not one.item.facts


def test_rows_that_are_none_give_no_facts():
    one = Register("d-a")
    one.version({"name": "Ada", "capacities": [{"until": DAY}]}, "person/1")
    assert "capacities" not in one.item.facts and "not complete" in one.item.fault


def test_a_version_kept_under_an_older_schema_is_read_as_if_written_today(monkeypatch):
    """The bytes are those of a document as it was kept; two schemas later the names and units are others."""
    steps = {
        1: lambda facts: {"length_m": str(int(facts["length_mm"]) / 1000), "wll_kg": facts["wll_kg"].replace(",", ""),
                          "origin": facts["origin"], "tag": facts["tag"]},
        2: lambda facts: {"length_m": facts["length_m"], "wll_t": str(int(facts["wll_kg"]) / 1000),
                          "origin": facts["origin"], "marked": facts["tag"]},
    }
    monkeypatch.setitem(KINDS, "flat_sling", replace(KINDS["flat_sling"], version=3, older=steps))
    one = Register("d-a")
    name = digest(KEPT_LONG_AGO)
    one.say(("version",), values.version("flat_sling/1", name))
    item = item_of(one.known.values(), {name: KEPT_LONG_AGO}, DAY)
    assert item.facts == {"length_m": "2.0", "wll_t": "2.0", "origin": "bought", "marked": "yes"} and not item.fault
    assert item.schema == "flat_sling/1", "the document itself is never rewritten"
    assert json.loads(KEPT_LONG_AGO)["facts"]["wll_kg"] == "2,000"


def test_every_kind_reads_documents_of_all_its_versions():
    for kind in KINDS.values():
        assert set(kind.older) >= set(range(1, kind.version)), kind.name


def test_what_nobody_placed_is_incoming_and_of_two_places_the_more_restrictive_holds():
    a, b = two()
    a.version()
    assert a.item.state.custody == "incoming"
    a.say(("custody",), values.custody("in service", DAY))
    b.say(("custody",), values.custody("at repair", DAY))
    meet(a, b)
    assert a.item.state.custody == b.item.state.custody == "at repair"
    a.say(("custody",), values.custody("in service", DAY))
    assert a.item.state.custody == "in service"


def test_a_custody_that_nobody_knows_restricts_more_than_any_other():
    a, b = two()
    a.say(("custody",), values.custody("scrapped", DAY))
    b.say(("custody",), values.custody("borrowed by a friend", DAY))
    meet(a, b)
    assert a.item.state.custody == "borrowed by a friend"


def test_a_move_does_not_end_a_quarantine_and_another_persons_release_does():
    a, b = two()
    a.quarantine("cover cut")
    a.say(("custody",), values.custody("in service", DAY))
    assert a.item.state.quarantined == ("cover cut",) and a.item.state.since == DAY
    meet(a, b)
    b.release()
    assert b.item.state.quarantined == ()


def test_ones_own_release_withdrawal_or_row_removal_counts_for_nothing():
    a, _ = two()
    held = a.quarantine("cover cut")
    a.release()
    a.say(("quarantine",), values.withdrawn())
    a.make(("quarantine",), values.row("absent"), [held.digest])
    assert a.item.state.quarantined == ("cover cut",)


def test_nobody_ends_a_quarantine_otherwise_than_by_a_release():
    a, b = two()
    a.quarantine("cover cut")
    meet(a, b)
    b.say(("quarantine",), values.withdrawn())
    b.parts |= a.parts
    assert b.item.state.quarantined == ("cover cut",)


def test_a_release_lifts_only_the_quarantines_that_its_author_saw():
    a, b = two()
    a.quarantine("cover cut")
    meet(a, b)
    a.quarantine("stitching open, looked at again")
    b.release()
    meet(a, b)
    assert a.item.state.quarantined == ("stitching open, looked at again",)


def test_two_quarantines_stand_side_by_side_and_each_needs_its_release():
    a, b = two()
    a.quarantine("cover cut")
    b.quarantine()
    meet(a, b)
    a.parts |= b.parts
    assert sorted(a.item.state.quarantined) == ["cover cut", "no reason given"]
    a.release()
    assert a.item.state.quarantined == ("cover cut",), "b's is lifted by a, a's own is not"


def test_of_two_examinations_made_apart_the_earlier_due_day_holds_until_a_later_one_saw_both():
    a, b = two()
    a.examine("2027-05-01")
    b.examine("2026-12-01")
    meet(a, b)
    assert a.item.state.due == "2026-12-01"
    a.examine("2027-11-01")
    assert a.item.state.due == "2027-11-01"


@pytest.mark.parametrize(("due", "overdue", "due_soon"), [
    ("2026-11-24", True, False), ("2026-11-25", False, True), ("2026-12-25", False, True), ("2026-12-26", False, False),
])
def test_due_soon_and_overdue_follow_from_the_day_that_is_asked_about(due, overdue, due_soon):
    one = Register("d-a")
    one.examine(due)
    assert (one.item.state.overdue, one.item.state.due_soon) == (overdue, due_soon)
    assert not item_of(one.known.values(), {}, "2026-01-01").state.overdue


@pytest.mark.parametrize("due", ["", "soon", "2026-02-30", "01.12.2026", "9999"])
def test_a_day_that_is_none_leaves_the_item_without_examination(due):
    one = Register("d-a")
    one.examine(due)
    assert one.item.state.due == ""


def test_of_a_good_day_and_one_that_is_none_the_item_counts_as_not_examined():
    a, b = two()
    a.examine("2027-05-01")
    b.examine("soon")
    meet(a, b)
    assert a.item.state.due == ""


def test_what_the_register_said_on_a_day_is_the_fold_of_what_had_arrived_by_then():
    a, b = two()
    a.version()
    held = a.quarantine("cover cut")
    meet(a, b)
    lifted = b.release()
    received = {entry.digest: "2026-11-20T10:00:00Z" for entry in a.known.values()} | {
        held.digest: "2026-11-22T23:59:59Z", lifted.digest: "2026-11-24T00:00:00Z"}

    def held_on(day):
        return bool(item_of(known_on(b.known.values(), received, day), a.parts, day).state.quarantined)

    assert [held_on(f"2026-11-{day}") for day in (21, 22, 23, 24)] == [False, True, True, False]
    assert known_on(b.known.values(), received, "2026-11-19") == ()


def test_the_state_names_the_entries_it_rests_on():
    one = Register("d-a")
    placed, looked = one.say(("custody",), values.custody("in service", DAY)), one.examine("2027-01-01")
    assert set(one.item.rests_on) == {placed.digest, looked.digest}
    assert fold(one.known.values()).heads[("custody",)] == (placed,)
