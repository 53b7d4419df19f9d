"""What proves what: open to everybody, every line of the table on it."""

from html import unescape

import pytest

from checklist_app.web.proofs import FILE, MEANING, table
from tests.web.signed_in import People, Visitor


def test_anybody_may_read_it_and_every_line_is_there(nobody: Visitor) -> None:
    answer = nobody.get("/proofs")
    assert answer.status_code == 200
    text = unescape(answer.get_data(as_text=True))
    rows, topics = table(), {row["topic"] for row in table()}
    assert f"{len(rows)} lines" in text
    assert text.count("<tr>") == len(rows) + len(MEANING) + 1 + len(topics)
    for row in rows[::7]:
        assert all(row[name] in text for name in ("source", "case", "ours", "theirs", "difference")), row


def test_every_way_of_knowing_is_explained() -> None:
    assert {row["how"] for row in table()} <= {how for how, _ in MEANING}


def test_the_first_page_leads_there(nobody: Visitor) -> None:
    assert 'href="/proofs"' in nobody.get("/").get_data(as_text=True)


@pytest.mark.parametrize("role", ["auditor", "rigger"])
def test_the_records_lead_there(people: People, role: str) -> None:
    assert 'href="/proofs"' in people.visitor(role).get("/records").get_data(as_text=True)


def test_the_file_lies_in_the_package_so_that_a_wheel_carries_it() -> None:
    assert FILE.parent.name == "web" and 1_000 < FILE.stat().st_size < 300_000
