"""What lies before a signer is told by names, with what the registers say; who is missing from the list reads why."""
import re

from checklist_app.checklists.answer import answer
from tests.checklists.test_signing import RELEASE, heavier
from tests.checklists.yard import Yard, request


def test_a_rigger_who_does_not_find_his_name_reads_why() -> None:
    yard = heavier(Yard().ready(), "0.75")
    asked = answer(request(yard, f"{RELEASE}?act=sign"), yard.world)
    assert asked.status == 200 and "Not in the list: Milo Harke answered " in asked.html
    assert "Another person signs." in asked.html and "Not in the list: Agata" not in asked.html
    routine = Yard().ready()
    assert "Not in the list" not in answer(request(routine, f"{RELEASE}?act=sign"), routine.world).html


def test_what_is_signed_is_told_by_names_and_with_what_the_registers_say() -> None:
    yard = Yard().ready()
    page = answer(request(yard, RELEASE), yard.world).html
    answers = page[page.index("Answers that are signed"):]
    for said in ("<dd>Pump 250, L-1</dd>", "<dd>with motor, dry</dd>", "<dd>Pump bay, P-1</dd>",
                 "<dd>25 November 2026</dd>", "<dd>0.5 m, measured with a tape</dd>", "<dd>R-1</dd>"):
        assert said in answers, said
    assert re.search("<dt>Mass of the load</dt><dd>890 kg <span class=.note.>from the register: Pump 250", answers)
    assert "straight_lift/" not in answer(request(yard, f"{RELEASE}?act=sign"), yard.world).html


def test_a_slot_of_a_leg_reads_as_people_say_it() -> None:
    yard = Yard().ready()
    page = answer(request(yard, RELEASE), yard.world).html
    assert "<dt>What carries the eye, left</dt>" in page and "<dt>Left sling</dt>" in page
