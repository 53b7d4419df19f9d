"""A form without script makes the same kind of entries as the page's script, and loses nothing that was typed."""

import json

import pytest

from checklist_app.checklists import values
from checklist_app.checklists.answer import Person, Photo, Request
from checklist_app.checklists.canonical import digest
from checklist_app.checklists.entry import make
from checklist_app.checklists.fold import fold, seen
from checklist_app.checklists.forms import take
from checklist_app.checklists.prompts import Asked
from checklist_app.checklists.world import MemoryWorld

TASK = ("task", "t-1")
AT = "2026-11-25T08:00:00Z"
RIGGER = Person("p-1", "Ada", "rigger")
MASS = Asked(TASK, ("mass_kg",), "number", "kg")
SLING = Asked(TASK, ("leg", "1-left", "sling"), "pick")
HITCH = Asked(TASK, ("leg", "1-left", "hitch"), "choice", choices=("straight", "choked", "basket"))
FELT = Asked(TASK, ("sling_felt",), "tick")
LANDING = Asked(TASK, ("landing",), "text")
LABEL = Asked(TASK, ("label",), "photo")
ALL = (MASS, SLING, HITCH, FELT, LANDING, LABEL)


def said(path, value, author="p-1", device="s-1", counter=1, replaces=()):
    return make(TASK, path, value, replaces, author, device, counter, AT)


class Page:
    """What stands, and the form of a page that shows it."""

    def __init__(self, *entries, parts=None, items=()):
        self.world = MemoryWorld([*entries, *items], parts or {}, today="2026-11-25")
        self.folded = fold(self.world.entries(TASK))

    def send(self, asked=ALL, files=None, shown=None, **fields):
        """Send the form; `shown` is what stood when the page was made, if that was earlier."""
        form = {name.replace("__", "/").replace("_dot_", "."): (text,) for name, text in fields.items()}
        for prompt in asked:
            form[f"{prompt.name}.seen"] = (prompt.data(seen(shown or self.folded, prompt.path)),)
        request = Request("POST", "/tasks/t-1/numbers", form=form, person=RIGGER, device="s-1", counter=7, at=AT,
                          salt="5" * 32, files=files or {})
        taken = take(request, asked, self.folded, self.world)
        self.after = fold([*self.folded.known.values(), *taken.keep])
        return taken


def test_each_changed_field_is_one_entry_with_the_next_counter():
    taken = Page().send(mass_kg="2,400", mass_kg_dot_how="plate", mass_kg_dot_plus_minus="20",
                        leg__1_left__hitch="", sling_felt="yes", landing="bed 3")
    assert not taken.faults
    assert [(entry.path, entry.counter) for entry in taken.keep] == [
        (("mass_kg",), 7), (("sling_felt",), 8), (("landing",), 9)]
    assert taken.keep[0].value == values.number("2,400", "kg", "plate", "20")
    assert values.words(taken.parts[taken.keep[2].value["part"]]) == "bed 3"


def test_a_form_sent_again_unchanged_says_nothing_new():
    landing, part = values.words_part("bed 3", "1")
    page = Page(said(("mass_kg",), values.number("2400", "kg", "plate")), said(("landing",), values.text(landing)),
                said(("sling_felt",), values.tick("yes")), parts={landing: part})
    taken = page.send(mass_kg="2400", mass_kg_dot_how="plate", landing=" bed 3 ", sling_felt="yes")
    assert taken.keep == () and not taken.faults


def test_an_emptied_field_and_an_unticked_box_take_the_answer_back():
    page = Page(said(("mass_kg",), values.number("2400", "kg")), said(("sling_felt",), values.tick("yes")))
    page.send(mass_kg="")
    assert not page.after.values and not page.after.disputed
    assert {entry.type for heads in page.after.heads.values() for entry in heads} == {"withdrawn"}


def test_a_page_that_was_old_overwrites_nothing_it_did_not_show():
    first = said(("mass_kg",), values.number("2400", "kg"), "p-2", "d-2")
    old = fold([first])
    later = said(("mass_kg",), values.number("2655", "kg"), "p-2", "d-2", 2, [first.digest])
    page = Page(first, later)
    assert page.send((MASS,), shown=old, mass_kg="2400").keep == (), "untouched on an old page"
    page.send((MASS,), shown=old, mass_kg="2500")
    assert {entry.value["text"] for entry in page.after.disputed[("mass_kg",)]} == {"2500", "2655"}


def test_ones_own_earlier_answer_is_replaced_even_from_an_old_page():
    page = Page(said(("mass_kg",), values.number("2400", "kg")))
    page.send((MASS,), shown=fold(()), mass_kg="2500")
    assert page.after.values[("mass_kg",)]["text"] == "2500"


def test_what_stands_already_is_not_said_once_more_from_an_old_page():
    page = Page(said(("mass_kg",), values.number("2400", "kg")))
    assert page.send((MASS,), shown=fold(()), mass_kg="2400").keep == ()


def test_a_disagreement_is_settled_by_an_answer_and_not_by_an_untouched_field():
    one = said(("mass_kg",), values.number("2400", "kg"), "p-2", "d-2")
    page = Page(one, said(("mass_kg",), values.number("2500", "kg"), "p-3", "d-3"))
    assert page.send((MASS,), mass_kg="").keep == ()
    page.send((MASS,), mass_kg="2400")
    assert page.after.values[("mass_kg",)]["text"] == "2400" and not page.after.disputed


def test_dont_know_and_not_used_at_once_are_asked_back_and_nothing_is_kept():
    taken = Page().send((MASS,), mass_kg_dot_dont_know="yes", mass_kg_dot_not_used="yes")
    assert taken.faults == {"mass_kg": "Only one of the other answers can hold: take one away."}
    assert not taken.keep


@pytest.mark.parametrize("way", ["dont_know", "not_used"])
def test_another_answer_takes_the_place_of_a_value_and_back(way):
    page = Page(said(("mass_kg",), values.number("2400", "kg")))
    taken = page.send((MASS,), mass_kg="2400", **{f"mass_kg_dot_{way}": "yes"}, mass_kg_dot_reason="no plate")
    assert page.after.values[("mass_kg",)]["type"] == way
    assert values.words(taken.parts[taken.keep[0].value["part"]]) == "no plate"
    again = Page(*page.after.known.values(), parts=taken.parts)
    again.send((MASS,), mass_kg="2500", **{f"mass_kg_dot_{way}": "yes"}, mass_kg_dot_reason="no plate")
    assert again.after.values[("mass_kg",)]["text"] == "2500"


def test_a_value_and_dont_know_at_once_are_asked_back_and_nothing_is_kept():
    taken = Page().send((MASS,), mass_kg="2400", mass_kg_dot_dont_know="yes")
    assert taken.keep == () and "Either a value" in taken.faults["mass_kg"]


@pytest.mark.parametrize("text", ["1,250", "NaN", "1e99", "-3", "about two tonnes", "٢", "0"])
def test_a_figure_is_kept_as_typed_whatever_it_says(text):
    taken = Page().send((MASS,), mass_kg=text)
    assert taken.keep[0].value["text"] == text, "it is read, and shown as a fault, where it is used"


def test_what_is_too_long_is_a_fault_at_its_field_and_the_other_fields_are_kept():
    taken = Page().send(mass_kg="9" * 300, landing="x" * 3000, sling_felt="yes")
    assert set(taken.faults) == {"mass_kg", "landing"} and "at most 200" in taken.faults["mass_kg"]
    assert [entry.path for entry in taken.keep] == [("sling_felt",)]


@pytest.mark.parametrize("text", ["hanging", "half\ud800", "\x00"])
def test_an_answer_that_is_not_on_offer_is_a_fault(text):
    taken = Page().send((HITCH,), **{"leg__1-left__hitch": text})
    assert taken.keep == () and set(taken.faults) == {"leg/1-left/hitch"}


def test_half_a_character_is_a_fault_and_never_a_crash():
    taken = Page().send((MASS, LANDING), mass_kg="2\ud800", landing="\udfff")
    assert taken.keep == () and set(taken.faults) == {"mass_kg", "landing"}


def test_a_photograph_is_a_part_under_the_digest_of_its_bytes():
    taken = Page().send(files={"label": (Photo("image/jpeg", b"\xff\xd8\xffpicture"),)})
    assert taken.keep[0].value == values.photo(digest(b"\xff\xd8\xffpicture"))
    assert taken.parts == {digest(b"\xff\xd8\xffpicture"): b"\xff\xd8\xffpicture"}


def test_a_photograph_that_is_sent_again_is_said_once():
    photo = Photo("image/jpeg", b"\xff\xd8\xffpicture")
    first = Page().send(files={"label": (photo,)})
    again = Page(*first.keep).send(files={"label": (photo,)}, shown=Page().folded)
    assert len(first.keep) == 1 and again.keep == ()
    other = Page(*first.keep).send(files={"label": (Photo("image/jpeg", b"\xff\xd8\xffanother"),)})
    assert other.keep[0].replaces == (first.keep[0].digest,)


def test_a_pick_of_nothing_in_the_register_is_a_fault():
    taken = Page().send((SLING,), **{"leg__1-left__sling": "gear/L-99"})
    assert taken.keep == () and "L-99" in taken.faults["leg/1-left/sling"]


def scripted(entry, *parts, author=RIGGER, asked=ALL):
    form = {"entries": ("made",), "entry": (entry.data.decode(),), "part": tuple(part.decode() for part in parts),
            "mass_kg": ("99",)}
    return take(Request("POST", "/", form=form, person=author, device="d-1", at=AT), asked, fold(()),
                MemoryWorld(today="2026-11-25"))


def test_entries_of_the_script_are_kept_to_the_byte_and_the_plain_fields_are_not_read_again():
    name, part = values.words_part("bed 3", "1")
    entry = said(("landing",), values.text(name), device="d-1")
    taken = scripted(entry, part, b"a part that nobody names")
    assert taken.keep == (entry,) and taken.keep[0].data == entry.data
    assert taken.parts == {name: part} and not taken.faults


def test_where_the_script_spoke_for_some_prompts_only_the_others_are_read():
    entry = said(("mass_kg",), values.number("2400", "kg"), device="d-1")
    form = {"entry": (entry.data.decode(),), "mass_kg": ("2400",), "sling_felt": ("yes",)}
    taken = take(Request("POST", "/", form=form, person=RIGGER, device="s-1", at=AT), ALL, fold(()),
                 MemoryWorld(today="2026-11-25"))
    assert [entry.path for entry in taken.keep] == [("mass_kg",), ("sling_felt",)]


@pytest.mark.parametrize(("entry", "words"), [
    (said(("lift_height_m",), values.number("1", "m")), "does not ask"),
    (make(("task", "t-2"), ("mass_kg",), values.number("1", "kg"), (), "p-1", "d-1", 1, AT), "does not ask"),
    (make(("gear", "L-07"), ("quarantine",), values.release(), (), "p-1", "d-1", 1, AT), "does not ask"),
    (said(("mass_kg",), values.number("1", "kg"), "p-2"), "Somebody else"),
    (said(("mass_kg",), values.number("1", "t")), "another question"),
    (said(("mass_kg",), values.tick("yes")), "another question"),
    (said(HITCH.path, values.choice("hanging")), "Choose one"),
])
def test_an_entry_that_this_page_does_not_ask_of_this_person_is_refused_in_words(entry, words):
    taken = scripted(entry)
    assert taken.keep == () and words in taken.faults["/".join(entry.path)]


def test_hidden_nonsense_is_refused_in_words():
    form = {"entry": ("[" * 8000, json.dumps({"form": 1}), "\ud800")}
    taken = take(Request("POST", "/", form=form, person=RIGGER, device="d-1", at=AT), ALL, fold(()),
                 MemoryWorld(today="2026-11-25"))
    assert taken.keep == () and taken.faults["entry"]
