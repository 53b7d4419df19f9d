"""A guest signs by name and hand, somebody who is signed in has seen it, and it counts for no signature of the lift."""
import pytest

from checklist_app.checklists import values
from checklist_app.checklists.answer import Answer, answer
from checklist_app.checklists.entry import make
from checklist_app.checklists.guests import AS_WHAT, Guest, guests
from checklist_app.checklists.holds import HoldState, hold_states
from checklist_app.checklists.running import running
from tests.checklists.pages_checked import faults
from tests.checklists.yard import DAY, RIGGER, SUPERVISOR, TASK, Yard, person, request, sent, sign

RELEASE = f"/tasks/{TASK}/holds/release"
DRAWN = "[[10,20,30,40,60,20]]"


def state(yard: Yard) -> HoldState:
    return hold_states(yard.world, running(yard.world, TASK))[0]


def standing(yard: Yard) -> list[Guest]:
    return list(guests(yard.world, running(yard.world, TASK), state(yard)))


def guest(yard: Yard, witness: str = RIGGER, **form: str) -> Answer:
    said = {"guest": "Jan Berg", "firm": "Quay cranes", "as": "operator", "ink": DRAWN, "seen": "yes",
            "shown": state(yard).seen.fingerprint} | form
    return sent(yard, f"{RELEASE}/guest", witness, **said)


def test_a_guest_signs_beside_the_signatures_of_the_lift_and_takes_none_of_their_places() -> None:
    yard = Yard().ready()
    given = guest(yard)
    assert (given.status, given.location) == (303, RELEASE)
    (one,) = standing(yard)
    assert (one.name, one.firm, one.capacity, one.entry.author) == ("Jan Berg", "Quay cranes", "operator", RIGGER)
    assert one.stands and state(yard).missing and not state(yard).signed
    page = answer(request(yard, RELEASE), yard.world).html
    assert "Jan Berg, Quay cranes, operator" in page and f"witnessed by {person(RIGGER).name}" in page
    assert not faults(page)


def test_two_guests_stand_beside_each_other_and_void_nothing() -> None:
    yard = Yard().ready()
    sign(yard, "release", SUPERVISOR)
    assert state(yard).signed
    guest(yard)
    guest(yard, guest="Ute Lind", **{"as": "haulier"})
    assert [one.name for one in standing(yard)] == ["Jan Berg", "Ute Lind"] and state(yard).signed


def test_what_a_guest_was_shown_and_what_is_there_now_are_told_apart() -> None:
    yard = Yard().ready()
    guest(yard)
    yard.say("lift_height_m", values.number("0.25", "m", "tape"))
    assert not standing(yard)[0].stands
    assert "what the guest was shown has changed since" in answer(request(yard, RELEASE), yard.world).html.lower()


@pytest.mark.parametrize(("form", "words"), [
    ({"guest": ""}, "Write the guest&#39;s name"), ({"as": ""}, "Choose as what"),
    ({"as": "planner"}, "Choose as what"), ({"ink": ""}, "draws the signature by hand"),
    ({"ink": "[[1,2"}, "draws the signature by hand"),
    ({"ink": "", "typed": "Jan Berg"}, "draws the signature by hand"), ({"seen": ""}, "Without a witness"),
    ({"guest": person(RIGGER).name.upper()}, "two persons"),
])
def test_what_is_missing_is_said_at_its_field_and_nothing_is_kept(form: dict[str, str], words: str) -> None:
    yard = Yard().ready()
    given = guest(yard, **form)
    assert given.status == 422 and words in given.html and not given.keep and not faults(given.html)


def test_a_guest_signs_what_is_shown_and_nothing_else() -> None:
    yard = Yard().ready()
    given = guest(yard, shown="0" * 64)
    assert given.status == 409 and not given.keep


def test_where_nobody_may_sign_no_guest_does() -> None:
    yard = Yard().ready()
    yard.say("zone_closed", values.tick("no"))
    assert guest(yard).location == RELEASE and standing(yard) == []
    assert "/guest" not in answer(request(yard, RELEASE), yard.world).html


@pytest.mark.parametrize(("path", "value"), [
    (("holds", "release", "supervisor"), "guest"), (("stop",), "guest"), (("mass_kg",), "guest"),
    (("holds", "release", "guest"), "signature"),
])
def test_a_guest_entry_anywhere_else_and_anything_else_in_its_place_count_for_nothing(path, value) -> None:
    """It could otherwise stand for a supervisor, or end a stop."""
    yard = Yard().ready()
    guest(yard)
    said = dict(standing(yard)[0].entry.value) if value == "guest" else {
        "type": "signature", "statement": "0" * 64, "capacity": "supervisor", "how": "pin"}
    before = running(yard.world, TASK).folded
    yard.entries.append(make(("task", TASK), path, said, [each.digest for each in before.heads.get(path, ())], RIGGER,
                             "d-9", 1, f"{DAY}T10:00:00Z"))
    assert running(yard.world, TASK).folded.heads == before.heads


def test_what_a_guest_may_sign_as_is_no_capacity_by_which_a_lift_is_released() -> None:
    assert not {"planner", "supervisor", "rigger"} & set(AS_WHAT)
