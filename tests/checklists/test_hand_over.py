"""At a hand-over the driver signs by hand: asked for by the hold point, witnessed, and only for what he was shown."""
import pytest

from checklist_app.checklists import ink
from checklist_app.checklists.answer import Answer, Verified, answer
from checklist_app.checklists.begun import add_item
from checklist_app.checklists.closing import COMPLETED
from checklist_app.checklists.holds import HoldState, hold_states
from checklist_app.checklists.made import Made
from checklist_app.checklists.running import running
from checklist_app.checklists.signers import MayNot, may_sign
from checklist_app.mechanics.lift_class import LiftClass
from tests.checklists.lashed import PALLET, VEHICLE, lash, rows
from tests.checklists.shop import RIGGER, SUPERVISOR, TODAY, Shop

DRAWN = "[[20,70,60,20,70,50,40,80,80,90,110,30,100,90,140,60,180,70,200,50]]"


def holds(shop: Shop, task: str) -> tuple[HoldState, ...]:
    return hold_states(shop.world, running(shop.world, task))


def sign(shop: Shop, task: str, hold: str = "release") -> Answer:
    """The supervisor, on the rigger's phone."""
    shown = next(state.seen.fingerprint for state in holds(shop, task) if state.hold.name == hold)
    form = {"act": ("sign",), "signer": (SUPERVISOR.id,), "typed": (SUPERVISOR.name,), "shown": (shown,)}
    request = shop.request("POST", f"/tasks/{task}/holds/{hold}", form=form, verified=Verified(SUPERVISOR, "pin"))
    given = answer(request, shop.world)
    shop.keep(given)
    return given


def driver_signs(shop: Shop, task: str, **other: str) -> Answer:
    shown = holds(shop, task)[1].seen.fingerprint
    form = {"guest": "Jonas Osei", "firm": "Ferrow Haulage", "as": "driver", "ink": DRAWN, "seen": "yes",
            "shown": shown, **other}
    return shop.post(f"/tasks/{task}/holds/hand_over/guest", form)


@pytest.fixture
def shop() -> Shop:
    """With its people in the register: who is not there has no power to sign."""
    shop = Shop()
    made = Made(shop.request("POST", "/"))
    for person in (RIGGER, SUPERVISOR):
        held = [{"capacity": capacity, "until": until} for capacity, until in person.capacities.items()]
        add_item(made, "person", person.id, "person/1", {"name": person.name, "capacities": held}, TODAY)
    shop.keep(Answer(200, "", tuple(made.keep), made.parts))
    return shop


@pytest.fixture
def released(shop: Shop) -> str:
    """Lashed, and released by a supervisor who did not lash it."""
    task = lash(shop)
    given = sign(shop, task)
    assert given.status == 303, given.html
    return task


def test_the_rigger_may_not_release_a_vehicle_himself(shop: Shop) -> None:
    task = lash(shop)
    with pytest.raises(MayNot, match="Another person signs"):
        may_sign(running(shop.world, task), holds(shop, task)[0], RIGGER, TODAY)


def test_the_hand_over_waits_for_the_release(shop: Shop) -> None:
    task = lash(shop)
    assert driver_signs(shop, task).location == f"/tasks/{task}/holds/hand_over"
    assert not any(state.signed for state in holds(shop, task))


def test_the_drivers_hand_is_what_the_hand_over_asks_for(shop: Shop, released: str) -> None:
    before = shop.get(f"/tasks/{released}/holds/hand_over").html
    driver_signs(shop, released)
    release, hand_over = holds(shop, released)

    assert "The driver signs" in before and release.open and hand_over.open
    assert "Jonas Osei" in shop.get(f"/tasks/{released}/holds/hand_over").html


@pytest.mark.parametrize(("field", "text", "words"), [
    ("guest", "", "Write the guest&#39;s name."), ("as", "haulier", "Choose as what the guest signs."),
    ("ink", "", "The guest draws the signature by hand."), ("seen", "", "Without a witness a guest does not sign."),
])
def test_a_hand_over_without_hand_name_or_witness_is_none(
        shop: Shop, released: str, field: str, text: str, words: str) -> None:
    given = driver_signs(shop, released, **{field: text})

    assert given.status == 422 and words in given.html and not holds(shop, released)[1].signed


def test_nobody_with_a_pin_signs_in_the_drivers_place(shop: Shop, released: str) -> None:
    with pytest.raises(MayNot, match="the driver signs, as a guest"):
        may_sign(running(shop.world, released), holds(shop, released)[1], SUPERVISOR, TODAY)
    assert sign(shop, released, "hand_over").status in (409, 422) and not holds(shop, released)[1].signed


def test_a_lashing_changed_after_the_driver_signed_is_handed_over_anew(shop: Shop, released: str) -> None:
    driver_signs(shop, released)
    row = rows(shop, released)[0]
    shop.post(f"/tasks/{released}/lashings?step=pull.{row}", {f"lashing/{row}/anchor_dan": "1900"})
    release, hand_over = holds(shop, released)
    shown = shop.get(f"/tasks/{released}").html

    assert not release.signed and not hand_over.signed and hand_over.outdated == 1
    assert "what the driver was shown has changed since" in shown


def test_what_is_written_down_on_the_road_undoes_no_signature(shop: Shop, released: str) -> None:
    driver_signs(shop, released)
    shop.post(f"/tasks/{released}/road", {"act": "add", "row": "retension/"})
    row = rows(shop, released, "retension")[0]
    said = {"retensioned": "after 10 to 50 km", "retension_found": "all tight", "retension_by": "by hand",
            "retension_who": "J. Osei"}
    shop.post(f"/tasks/{released}/road?step=again.{row}",
              {f"retension/{row}/{name}": text for name, text in said.items()})
    shop.post(f"/tasks/{released}/road?step=gone", {"left": "yes"})

    assert all(state.open for state in holds(shop, released))
    assert "Which lashings come off last: 1 and 4." in shop.get(f"/tasks/{released}/other-end").html
    given = shop.post(f"/tasks/{released}/close-out", {"act": "close", "closing": COMPLETED})
    assert given.status == 303 and [entry.type for entry in given.keep] == ["rig", "closing"]


def test_it_is_not_completed_before_it_has_left(shop: Shop, released: str) -> None:
    driver_signs(shop, released)
    given = shop.post(f"/tasks/{released}/close-out", {"act": "close", "closing": COMPLETED})

    assert given.status == 422 and "It has not left yet." in given.html


def test_after_a_stop_the_page_says_not_to_drive(shop: Shop, released: str) -> None:
    shop.post(f"/tasks/{released}/stop", {"stop": "yes"})
    shown = shop.get(f"/tasks/{released}/stop").html

    assert "Do not drive; make it safe." in shown and "Lower" not in shown
    assert f'href="/tasks/{released}/road"' in shown and "the driver refuses" in shown.lower()


def test_a_pallet_of_the_routine_is_signed_by_who_lashed_it(shop: Shop) -> None:
    task = lash(shop, PALLET)
    state = holds(shop, task)[0]

    assert state.hold.name == "lashed" and ink.drawn(DRAWN)
    assert state.lift_class is LiftClass.ROUTINE
    assert may_sign(running(shop.world, task), state, RIGGER, TODAY).own_work


def test_one_item_is_in_one_lashing(shop: Shop) -> None:
    task = lash(shop, VEHICLE)
    given = shop.post(f"/tasks/{task}/kit/lashing.{rows(shop, task)[1]}.lashing_item", {"tag": "L-01"})

    assert given.status == 422 and "L-01 is picked already: lashing 1." in given.html
