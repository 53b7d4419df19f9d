"""The finished lifts and lashings: carried out by the real code, every kind of ending among them."""

from collections import Counter
from datetime import UTC, datetime, timedelta
from pathlib import Path

from pypdf import PdfReader

from checklist_app.checklists.holds import hold_states
from checklist_app.checklists.running import running
from checklist_app.commands.demo import begin_lifts, fill
from checklist_app.demo.carry_out import carry_out, scripts
from checklist_app.demo.data import table
from checklist_app.demo.lifts import Lift
from checklist_app.demo.phone import Clock, Phone
from checklist_app.demo.work import BEGUN, LIFT, Begun, Script, signers
from checklist_app.operations.check import Verdict
from checklist_app.records.card_table import Card
from checklist_app.records.store import Store
from checklist_app.records.verify import verify
from checklist_app.records.world import DatabaseWorld
from checklist_app.web.app import create_app


def cards(store: Store) -> list[Card]:
    return list(Card.select().order_by(Card.number).execute(store.database))


def today() -> str:
    return datetime.now(UTC).date().isoformat()


def test_sixteen_records_stand_and_every_kind_of_ending_is_among_them(yard: Store) -> None:
    endings = Counter(card.closing for card in cards(yard))
    assert endings == {"completed": 12, "abandoned": 2, "stopped": 1, "carried out without sign-off": 1}


def test_refused_lifts_are_kept_with_the_verdict_that_refused_them(yard: Store) -> None:
    refused = {card.title: card.verdict for card in cards(yard) if card.closing == "abandoned"}
    assert refused == {"Vertical pump 400 VP-400": "over limit", "Right-angle drive RD-3": "cannot be assessed"}


def test_nothing_over_limit_was_ever_signed(yard: Store) -> None:
    assert all(card.verdict in ("within limit", "close to limit") for card in cards(yard) if card.signed_by)


def test_one_sign_off_went_void_and_was_given_again(yard: Store) -> None:
    assert sum(card.voids for card in cards(yard)) == 1
    assert next(card for card in cards(yard) if card.voids).closing == "completed"


def test_the_chain_of_records_holds(yard: Store) -> None:
    checked = verify(yard)
    assert checked.records == 16
    assert checked.faults == ()


def test_dates_lie_in_the_last_weeks_oldest_first(yard: Store) -> None:
    days = [card.day for card in cards(yard)]
    assert days == sorted(days)
    assert (datetime.now(UTC).date() - timedelta(days=45)).isoformat() < days[0] and days[-1] < today()


def test_one_lift_is_under_way_and_waits_for_its_release(yard: Store) -> None:
    world = DatabaseWorld(yard, today())
    (found,) = [now for task in world.tasks() if (now := running(world, task)).procedure.operation == LIFT]
    assert found.load is not None and found.load.id == "GS-150"
    assert found.evaluation.verdict in (Verdict.WITHIN, Verdict.CLOSE)
    assert [state.signed for state in hold_states(world, found)] == [False, False]


def test_every_pdf_says_that_it_is_a_demonstration(yard: Store) -> None:
    papers = sorted(yard.records.glob("*.pdf"))
    assert len(papers) == 16
    for paper in papers:
        assert all("DEMONSTRATION" in page.extract_text().upper() for page in PdfReader(paper).pages), paper.name


def test_the_lift_outdoors_tells_its_zone_and_its_wind_on_paper(yard: Store) -> None:
    said = '"outdoors, the hook travels with it"'
    (text,) = [path for path in yard.records.glob("*.json") if said in path.read_text("utf-8")]
    paper = text.with_suffix(".pdf")
    words = " ".join("\n".join(page.extract_text() for page in PdfReader(paper).pages).split())
    assert "Zone: nobody within 4.3 m of the plumb line; on its way a strip of 4.9 m is kept clear." in words
    assert "gust pushes 38 N" in words and "Gust outdoors" in words and "Swing out of plumb" in words


def test_what_is_under_way_comes_first_and_the_rest_by_its_days() -> None:
    days = [script["day"] for script in scripts()]
    assert days[:2] == [0, 0] and days[2:] == sorted(days[2:]) and all(day < 0 for day in days[2:])


def test_what_is_done_is_not_done_again(yard: Store) -> None:
    assert Begun(yard.folder / BEGUN).all_done
    assert begin_lifts(yard.folder) is None


def test_a_demonstration_that_was_cut_off_gives_up_the_open_lift_and_goes_on(tmp_path: Path) -> None:
    folder, now, lifts = tmp_path / "yard", datetime.now(UTC), table("lifts")["lift"][1:4]
    fill(folder, now)
    cut_off_after_begin(folder, now, lifts[0])
    carry_out(folder, now, lifts[::2])
    assert [(card.title, card.closing) for card in cards(Store(folder))] == [
        ("Vertical pump 250 VP-250", "abandoned"), ("Vertical pump 400 VP-400", "abandoned")]
    assert len(Begun(folder / BEGUN).tasks) == 3 and Begun(folder / BEGUN).all_done


def cut_off_after_begin(folder: Path, now: datetime, script: Script) -> None:
    app = create_app(folder, CLOCK=Clock(now), ZONE=UTC)
    phone, people = Phone(app), signers(folder)
    phone.sign_in(people[script["rigger"]].name, people[script["rigger"]].pin)
    Lift(phone, Clock(now), script, people, Begun(folder / BEGUN)).begin()
    app.extensions["store"].close()
