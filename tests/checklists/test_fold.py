"""The same set of entries is the same task, and nothing that was said is lost on the way."""

import itertools

from hypothesis import given, settings
from hypothesis import strategies as st

from checklist_app.checklists import values
from checklist_app.checklists.canonical import digest
from checklist_app.checklists.fold import fold
from tests.checklists.phones import ACTS, ROW, Phone, history, meet

MASS = ("mass_kg",)


def kg(text):
    return values.number(text, "kg")


@given(ACTS, st.randoms())
def test_any_order_any_repetition_and_any_split_give_the_same_task(acts, rng):
    _, entries = history(acts)
    mixed = entries + rng.sample(entries, len(entries) // 2)
    rng.shuffle(mixed)
    assert fold(mixed) == fold(entries)
    cut = rng.randrange(len(mixed) + 1)
    assert fold([*fold(mixed[:cut]).known.values(), *fold(mixed[cut:]).known.values()]) == fold(entries)


@given(ACTS, st.data())
def test_no_answer_vanishes_whichever_entries_have_arrived(acts, data):
    _, entries = history(acts)
    some = data.draw(st.lists(st.sampled_from(entries), unique=True)) if entries else []
    standing = {entry for heads in fold(some).heads.values() for entry in heads}
    for entry in some:
        assert any(other in standing and other.path in (entry.path, entry.path[:2]) for other in some)


@given(ACTS)
def test_nobody_replaces_what_he_did_not_know(acts):
    _, entries = history(acts)
    assert not fold(entries).missing and not fold(entries).ignored


@given(ACTS, st.data())
def test_an_answer_stands_only_where_all_that_stands_there_says_the_same(acts, data):
    _, entries = history(acts)
    some = data.draw(st.lists(st.sampled_from(entries), unique=True)) if entries else []
    folded = fold(some)
    for path, value in folded.values.items():
        assert path not in folded.disputed
        assert all(entry.value == value for entry in folded.heads[path])


@settings(max_examples=60)
@given(ACTS)
def test_after_all_have_met_one_person_settles_every_disagreement(acts):
    phones, _ = history(acts)
    for one, other in itertools.permutations(phones, 2):
        meet(one, other)
    chief = phones[0]
    for path in [path for path in chief.folded.disputed if len(path) == 2]:
        chief.remove(path)
    for path in chief.folded.disputed:
        chief.say(path, kg("9"))
    assert not chief.folded.disputed


def test_two_answers_made_apart_are_a_disagreement_until_a_person_settles_it():
    a, b = Phone("d-a"), Phone("d-b")
    a.say(MASS, kg("2400"))
    b.say(MASS, kg("2650"))
    meet(a, b)
    assert MASS not in a.folded.values
    assert {entry.value["text"] for entry in a.folded.disputed[MASS]} == {"2400", "2650"}
    b.say(MASS, kg("2650"))
    assert b.folded.values[MASS]["text"] == "2650" and not b.folded.disputed


def test_equal_answers_made_apart_agree_and_a_spread_that_differs_does_not():
    a, b = Phone("d-a"), Phone("d-b")
    a.say(MASS, values.number("2400", "kg", "plate"))
    b.say(MASS, values.number("2400", "kg", "plate"))
    meet(a, b)
    assert a.folded.values[MASS]["text"] == "2400"
    a.say(MASS, values.number("2400", "kg", "plate", "50"))
    b.say(MASS, values.number("2400", "kg", "plate", "100"))
    meet(a, b)
    assert MASS in a.folded.disputed


def test_an_answer_and_its_withdrawal_made_apart_are_a_disagreement():
    a, b = Phone("d-a"), Phone("d-b")
    a.say(MASS, kg("2400"))
    meet(a, b)
    a.say(MASS, values.withdrawn())
    b.say(MASS, kg("2410"))
    meet(a, b)
    assert MASS in a.folded.disputed


def test_ones_own_answers_replace_each_other_even_from_a_page_that_was_old():
    phone = Phone("d-a")
    for text in ("2400", "2410", "2420"):
        phone.make(MASS, kg(text))
    assert phone.folded.values[MASS]["text"] == "2420"


def test_on_a_phone_handed_over_the_second_person_does_not_replace_the_first():
    phone = Phone("d-a", "p-rigger")
    phone.make(MASS, kg("2400"))
    phone.make(MASS, kg("2500"), author="p-supervisor")
    assert len(phone.folded.disputed[MASS]) == 2


def test_undo_is_one_more_answer():
    phone = Phone("d-a")
    phone.say(MASS, kg("2400"))
    phone.say(MASS, values.withdrawn())
    assert MASS not in phone.folded.values and not phone.folded.disputed
    phone.say(MASS, kg("2400"))
    assert phone.folded.values[MASS]["text"] == "2400"


def test_a_removed_row_is_gone_and_its_answers_with_it():
    phone = Phone("d-a")
    phone.say(ROW, values.row("present"))
    phone.say((*ROW, "leg_length_m"), values.number("2.5", "m"))
    assert phone.folded.rows == {"leg": ("1-left",)}
    phone.remove()
    assert phone.folded.rows == {} and not phone.folded.values and not phone.folded.disputed


def test_removing_a_row_that_somebody_else_answers_is_a_disagreement_about_the_row():
    a, b = Phone("d-a"), Phone("d-b")
    a.say(ROW, values.row("present"))
    meet(a, b)
    a.remove()
    b.say((*ROW, "leg_length_m"), values.number("2.5", "m"))
    meet(a, b)
    assert a.folded.rows == {"leg": ("1-left",)} and ROW in a.folded.disputed
    b.remove()
    assert b.folded.rows == {} and not b.folded.disputed


def test_keeping_a_disputed_row_does_not_bring_back_what_its_removal_replaced():
    a, b = Phone("d-a"), Phone("d-b")
    a.say(ROW, values.row("present"))
    a.say((*ROW, "leg_length_m"), values.number("2.4", "m"))
    meet(a, b)
    a.remove()
    b.say((*ROW, "sling"), values.pick("gear/L-07", digest(b"1")))
    meet(a, b)
    b.say(ROW, values.row("present"))
    assert not b.folded.disputed and (*ROW, "leg_length_m") not in b.folded.values
    assert (*ROW, "sling") in b.folded.values


def test_rows_come_in_the_order_of_their_ids_whoever_added_them_first():
    a, b = Phone("d-a"), Phone("d-b")
    b.say(("leg", "2-right"), values.row("present"))
    a.say(ROW, values.row("present"))
    meet(a, b)
    assert a.folded.rows["leg"] == b.folded.rows["leg"] == ("1-left", "2-right")


def test_an_entry_may_come_before_what_it_replaces_and_the_gap_is_named():
    phone = Phone("d-a")
    first, middle, last = (phone.say(MASS, kg(text)) for text in ("1", "2", "3"))
    assert fold([last]).values[MASS]["text"] == "3" and fold([last]).missing == {middle.digest}
    assert MASS in fold([first, last]).disputed, "a disagreement that is none, never an answer that nobody gave"
    assert fold([first, last, middle]).values[MASS]["text"] == "3"


def test_an_entry_replaces_nothing_at_another_prompt_or_in_another_task():
    phone = Phone("d-a")
    mass = phone.say(MASS, kg("1"))
    elsewhere = phone.make(("lift_height_m",), values.number("1", "m"), [mass.digest])
    other_task = phone.make(MASS, kg("9"), [mass.digest], about=("task", "t-2"))
    folded = fold(phone.known.values())
    assert mass in folded.heads[MASS] and folded.ignored == {elsewhere.digest, other_task.digest}


def test_two_sign_offs_two_stops_and_two_examinations_are_no_disagreement():
    a, b = Phone("d-a"), Phone("d-b")
    a.say(("holds", "release", "supervisor"), values.text(digest(b"1")))
    b.say(("holds", "release", "supervisor"), values.text(digest(b"2")))
    a.say(("stop",), {"type": "stop"})
    b.say(("stop",), {"type": "stop", "part": digest(b"3")})
    meet(a, b)
    assert not a.folded.disputed and not a.folded.rows and not a.folded.values
    assert len(a.folded.heads[("stop",)]) == len(a.folded.heads[("holds", "release", "supervisor")]) == 2
