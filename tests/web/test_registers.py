"""The registers in a browser without script: add, look, change, examine, take out of use, put back."""

import pytest

from checklist_app.checklists import values
from tests.web.signed_in import People, Visitor
from tests.web.strict import strict
from tests.web.test_entries import Phone

SHACKLE = {"id": "S-31", "wll_t": "3.25", "reach_m": "0,055", "form": "bow", "marked": "yes", "origin": "bought"}
LOAD = {"name": "Vertical pump 400", "bottom_z_m": "0", "top_z_m": "2.45",
        "build_states/0/state": "complete", "build_states/0/mass_kg": "2350", "build_states/0/mass_how": "weighed"}

BARE = {"build_states/1/state": "bare", "build_states/1/mass_kg": "1480", "build_states/1/mass_how": "weighed"}


@pytest.fixture
def supervisor(people: People) -> Visitor:
    return people.visitor("supervisor")


@pytest.fixture
def shackle(supervisor: Visitor) -> Visitor:
    """A supervisor who has just added shackle S-31."""
    supervisor.get("/registers/gear/new/shackle")
    assert supervisor.post("/registers/gear/new/shackle", SHACKLE).headers["Location"] == "/registers/gear/S-31"
    supervisor.get("/registers/gear/S-31")
    return supervisor


def facts(app, register: str, name: str) -> dict[str, object]:
    return dict(item(app, register, name).facts)


def item(app, register: str, name: str):
    from checklist_app.records.world import DatabaseWorld

    return DatabaseWorld(app.extensions["store"], "2026-11-25").item(register, name)


def examine(visitor: Visitor, **changed: str):
    form = {"by": "Rhona Pike", "on": "2026-11-20", "outcome": "fit for use", "due": "2027-05-20", "remark": ""}
    return visitor.post("/registers/gear/S-31/examination", form | changed)


def test_every_kind_has_a_form(supervisor: Visitor) -> None:
    for register, kinds in {"gear": ("flat_sling", "round_sling", "shackle", "hook", "eye", "load_cell", "own_beam"),
                            "machine": ("hoist",), "load": ("load",), "place": ("place",)}.items():
        page = strict(supervisor.get(f"/registers/{register}").text)
        for kind in kinds:
            assert f"/registers/{register}/new/{kind}" in page.links
            assert supervisor.get(f"/registers/{register}/new/{kind}").status_code == 200


def test_a_kind_of_another_register_is_not_found(supervisor: Visitor) -> None:
    assert supervisor.get("/registers/gear/new/hoist").status_code == 404
    assert supervisor.get("/registers/gear/new/person").status_code == 404
    assert supervisor.get("/registers/gear/new/rocket").status_code == 404


def test_new_gear_is_kept_as_an_entry_and_waits_for_its_examination(app, shackle: Visitor) -> None:
    assert facts(app, "gear", "S-31") == {"wll_t": "3.25", "reach_m": "0.055", "form": "bow", "marked": "yes",
                                          "origin": "bought"}
    assert item(app, "gear", "S-31").state.custody == "incoming"
    page = shackle.get("/registers/gear/S-31").text
    assert "Incoming." in page
    assert "No examination entered." in page


@pytest.mark.parametrize(("field", "typed", "words"), [
    ("wll_t", "", "nobody answered it yet"),
    ("wll_t", "1,250", "can be read in two ways"),
    ("wll_t", "NaN", ""),
    ("wll_t", "1e99", ""),
    ("wll_t", "-2", ""),
    ("wll_t", "three", ""),
    ("reach_m", "55", ""),
    ("marked", "perhaps", "yes or no"),
    ("origin", "", "nobody answered it yet"),
    ("id", "", "number on the tag"),
    ("id", "../x", "number on the tag"),
    ("id", "S 31", "number on the tag"),
])
def test_a_bad_answer_is_said_at_its_field_and_nothing_typed_is_lost(
        app, supervisor: Visitor, field: str, typed: str, words: str) -> None:
    page = supervisor.post("/registers/gear/new/shackle", SHACKLE | {field: typed})
    assert page.status_code == 422
    assert page.text.count('class="fault"') >= 2
    assert words in page.text
    assert 'value="bow" checked' in page.text
    if typed and field not in ("marked", "origin"):
        assert f'value="{typed}"' in page.text
    assert item(app, "gear", "S-31") is None


def test_a_tag_number_is_given_once_however_it_is_written(shackle: Visitor) -> None:
    page = shackle.post("/registers/gear/new/shackle", SHACKLE | {"id": "s-31"})
    assert page.status_code == 422
    assert "is there already" in page.text


def test_a_load_has_build_states_as_rows_that_work_without_script(app, supervisor: Visitor) -> None:
    more = supervisor.post("/registers/load/new/load", LOAD | {"build_states/1/state": "", "add_row": "build_states"})
    assert 'name="build_states/2/state"' in more.text
    assert 'name="build_states/3/state"' not in more.text
    assert 'value="2350"' in more.text
    rows = LOAD | BARE | {
                   "pick_points/0/point": "left", "pick_points/0/x_m": "-0,45", "pick_points/0/y_m": "0",
                   "pick_points/0/z_m": "2.1"}
    assert supervisor.post("/registers/load/new/load", rows).headers["Location"] == "/registers/load/vertical-pump-400"
    kept = facts(app, "load", "vertical-pump-400")
    assert [row["state"] for row in kept["build_states"]] == ["complete", "bare"]
    assert kept["pick_points"] == [{"point": "left", "x_m": "-0.45", "y_m": "0", "z_m": "2.1"}]


def test_a_row_is_removed_by_ticking_it(app, supervisor: Visitor) -> None:
    rows = LOAD | BARE
    supervisor.post("/registers/load/new/load", rows)
    version = "/registers/load/vertical-pump-400/version"
    supervisor.post(version, rows | {"build_states/0/remove": "yes", "stands": stands(supervisor, version)})
    assert [row["state"] for row in facts(app, "load", "vertical-pump-400")["build_states"]] == ["bare"]


def test_a_fault_in_a_row_is_said_in_that_row(supervisor: Visitor) -> None:
    page = supervisor.post("/registers/load/new/load", LOAD | {"build_states/0/mass_kg": "heavy"})
    assert page.status_code == 422
    place = page.text.index('id="f-build_states-0-mass_kg-fault"')
    assert 'class="fault"' in page.text[place:place + 200]


def test_two_loads_of_one_name_stay_two(app, supervisor: Visitor) -> None:
    first = supervisor.post("/registers/load/new/load", LOAD).headers["Location"]
    second = supervisor.post("/registers/load/new/load", LOAD).headers["Location"]
    assert (first, second) == ("/registers/load/vertical-pump-400", "/registers/load/vertical-pump-400-2")


def stands(visitor: Visitor, address: str) -> str:
    text = visitor.get(address).text
    return text.split('name="stands" value="')[1].split('"')[0]


def test_a_new_version_replaces_the_old_one_and_the_history_tells_both(app, shackle: Visitor) -> None:
    address = "/registers/gear/S-31/version"
    seen = stands(shackle, address)
    assert shackle.post(address, SHACKLE | {"wll_t": "4.75", "stands": seen}).status_code == 303
    assert facts(app, "gear", "S-31")["wll_t"] == "4.75"
    page = shackle.get("/registers/gear/S-31").text
    assert "3.25 → 4.75" in page
    assert "First version." in page


def test_of_two_tabs_the_second_is_told_and_covers_nothing_up(app, shackle: Visitor) -> None:
    address = "/registers/gear/S-31/version"
    seen = stands(shackle, address)
    shackle.post(address, SHACKLE | {"wll_t": "4.75", "stands": seen})
    page = shackle.post(address, SHACKLE | {"wll_t": "2", "stands": seen})
    assert page.status_code == 409
    assert "Somebody saved another version" in page.text
    assert 'value="2"' in page.text
    assert facts(app, "gear", "S-31")["wll_t"] == "4.75"


def test_an_examination_brings_incoming_gear_into_service(app, shackle: Visitor) -> None:
    assert examine(shackle).status_code == 303
    state = item(app, "gear", "S-31").state
    assert (state.custody, state.due, state.quarantined) == ("in service", "2027-05-20", ())
    page = shackle.get("/registers/gear/S-31").text
    assert "By Rhona Pike." in page
    assert "Next due 20 May 2027." in page


def test_what_an_examination_found_not_fit_is_in_quarantine_at_once(app, shackle: Visitor) -> None:
    examine(shackle, outcome="not fit for use", remark="Pin bent.")
    state = item(app, "gear", "S-31").state
    assert state.custody == "incoming"
    assert "Pin bent." in state.quarantined[0]


@pytest.mark.parametrize(("changed", "words"), [
    ({"on": "2026-11-26"}, "lies ahead"), ({"on": "yesterday"}, "year-month-day"),
    ({"due": "2026-11-20"}, "comes after"),
    ({"due": "20270520"}, "year-month-day"), ({"outcome": "perfect"}, "what the examination found"),
    ({"by": " "}, "who examined"),
])
def test_an_examination_that_cannot_be_is_refused_in_words(app, shackle: Visitor, changed, words: str) -> None:
    page = examine(shackle, **changed)
    assert page.status_code == 422
    assert words in page.text
    assert item(app, "gear", "S-31").state.due == ""


def test_overdue_and_due_soon_are_said_in_words(shackle: Visitor, clock) -> None:
    examine(shackle, due="2026-12-10")
    assert "Due soon: 10 December 2026" in shackle.get("/registers/gear").text
    clock.wait(days=20)
    visitor = shackle
    visitor.get("/sign-in")
    visitor.post("/sign-in", {"typed": "Some supervisor", "pin": "4711"})
    assert "Overdue since 10 December 2026" in visitor.get("/registers/gear").text


def test_anybody_takes_gear_out_of_use_and_only_another_competent_person_puts_it_back(
        app, people: People, shackle: Visitor) -> None:
    rigger = people.visitor("rigger")
    assert rigger.post("/registers/gear/S-31/quarantine", {"quarantine_why": ""}).status_code == 422
    assert rigger.post("/registers/gear/S-31/quarantine", {"quarantine_why": "Pin is bent."}).status_code == 303
    assert item(app, "gear", "S-31").state.quarantined == ("Pin is bent.",)
    assert "Pin is bent." in shackle.get("/registers/gear").text
    assert shackle.post("/registers/gear/S-31/release", {"release_why": ""}).status_code == 422
    assert shackle.post("/registers/gear/S-31/release", {"release_why": "Pin exchanged."}).status_code == 303
    assert item(app, "gear", "S-31").state.quarantined == ()
    assert "Pin exchanged." in shackle.get("/registers/gear/S-31").text


def test_ones_own_quarantine_is_not_lifted_by_oneself(app, shackle: Visitor) -> None:
    shackle.post("/registers/gear/S-31/quarantine", {"quarantine_why": "Pin is bent."})
    page = shackle.post("/registers/gear/S-31/release", {"release_why": "Looks good to me."})
    assert page.status_code == 422
    assert "You put it into quarantine yourself" in page.text
    assert item(app, "gear", "S-31").state.quarantined == ("Pin is bent.",)


def test_two_quarantines_each_wait_for_another_person(app, people: People, shackle: Visitor) -> None:
    rigger = people.visitor("rigger")
    rigger.post("/registers/gear/S-31/quarantine", {"quarantine_why": "Pin is bent."})
    shackle.post("/registers/gear/S-31/quarantine", {"quarantine_why": "No marking."})
    shackle.post("/registers/gear/S-31/release", {"release_why": "Pin exchanged."})
    assert item(app, "gear", "S-31").state.quarantined == ("No marking.",)


def test_release_needs_a_capacity_that_is_in_date(app, people: People, shackle: Visitor) -> None:
    people.visitor("rigger").post("/registers/gear/S-31/quarantine", {"quarantine_why": "Pin is bent."})
    people.add("Old Hand", "supervisor", "supervisor", until="2026-11-24")
    page = people.sign_in("Old Hand").post("/registers/gear/S-31/release", {"release_why": "Pin exchanged."})
    assert page.status_code == 422
    assert "in date" in page.text
    assert item(app, "gear", "S-31").state.quarantined


def test_custody_moves_with_its_day(app, shackle: Visitor) -> None:
    examine(shackle)
    moved = {"where": "at repair", "since": "2026-11-24", "custody_why": "new pin"}
    assert shackle.post("/registers/gear/S-31/custody", moved | {"since": "2026-12-24"}).status_code == 422
    assert shackle.post("/registers/gear/S-31/custody", moved | {"where": "somewhere"}).status_code == 422
    assert shackle.post("/registers/gear/S-31/custody", moved).status_code == 303
    assert item(app, "gear", "S-31").state.custody == "at repair"
    assert "At repair since 24 November 2026." in shackle.get("/registers/gear/S-31").text


def test_what_somebody_typed_is_shown_and_never_run(people: People, shackle: Visitor) -> None:
    people.visitor("rigger").post("/registers/gear/S-31/quarantine", {"quarantine_why": "<script>alert(1)</script>"})
    page = shackle.get("/registers/gear/S-31").text
    assert "<script>alert" not in page
    assert "&lt;script&gt;alert(1)" in page


def test_an_item_that_is_not_there_is_not_found(supervisor: Visitor) -> None:
    assert supervisor.get("/registers/gear/S-99").status_code == 404
    assert supervisor.post("/registers/gear/S-99/quarantine", {"quarantine_why": "bent"}).status_code == 404
    assert supervisor.post("/registers/load/S-99/quarantine", {"quarantine_why": "bent"}).status_code == 404


def test_saving_what_is_there_already_makes_no_version(app, shackle: Visitor) -> None:
    address = "/registers/gear/S-31/version"
    before = app.extensions["store"].cursor()["number"]
    assert shackle.post(address, SHACKLE | {"stands": stands(shackle, address)}).status_code == 303
    assert app.extensions["store"].cursor()["number"] == before


def test_a_rigger_adds_gear_with_the_date_on_its_tag_and_the_item_says_so(people: People) -> None:
    rigger = people.visitor("rigger")
    label = {"kind": "round_sling", "id": "RS-9", "wll_t": "2", "length_m": "1.5", "mass_kg": "1", "marked": "yes",
             "origin": "bought", "due": "2027-02-14"}
    assert rigger.post("/gear/add?kinds=round_sling", label).status_code == 303
    shown = rigger.get("/registers/gear/RS-9").text
    assert "Its tag says: next examination due 14 February 2027." in shown
    assert "No examination entered." in shown


def test_a_rigger_adds_a_hoist_on_the_spot_and_it_is_incoming(people: People) -> None:
    rigger = people.visitor("rigger")
    label = {"kind": "hoist", "id": "H-77", "wll_t": "2", "highest_hook_m": "4", "mass_kg": "1", "marked": "yes",
             "origin": "bought"}
    assert rigger.post("/gear/add?kinds=hoist", label).status_code == 303
    assert "Incoming" in rigger.get("/registers/machine/H-77").text


@pytest.mark.parametrize("day", ["the day after", "2026-13-45", "9999-99-99", "2026-11-25T99", "x" * 2000])
def test_a_day_that_is_none_breaks_no_page(app, people: People, shackle: Visitor, day: str) -> None:
    """A device can say anything, and what it said is there for good."""
    rigger = people.visitor("rigger")
    phone = Phone(rigger, "p-some-rigger")
    supervisor = Phone(shackle, "p-some-supervisor")
    about = ("gear", "S-31")
    phone.put([phone.entry(about, ("quarantine",), values.quarantine(day)),
               phone.entry(about, ("custody",), values.custody("lost", day)),
               phone.entry(about, ("due_on_tag",), values.date(day))])
    supervisor.put([supervisor.entry(about, ("examination",), values.examination("seen", day, day))])
    for address in ("/registers/gear", "/registers/gear/S-31", "/gear/S-31/quarantine", "/today"):
        assert rigger.get(address).status_code == 200, address
