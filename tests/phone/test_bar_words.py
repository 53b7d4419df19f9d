"""The words below the bar: when the server was last reached, why nothing goes, and how far the clock is off."""

import json
import shutil
import subprocess
from pathlib import Path

import pytest

SCRIPTS = Path(__file__).parents[2] / "static" / "js"
RUN = """const words = await import(process.argv[1] + "/bar_words.js");
const said = JSON.parse(process.argv[2]).map(([name, ...given]) => words[name](...given));
console.log(JSON.stringify(said));"""
MINUTE, HOUR, DAY = 60_000, 3_600_000, 86_400_000
NOW = 1_795_852_800_000  # 28 November 2026, 08:00 UTC
TRUST = "http://shed.local:8080/trust"


def said(*asked: list[object]) -> list[str]:
    node = shutil.which("node")
    if node is None:
        pytest.skip("no Node.js on this machine: install Debian's package nodejs to read the page's words")
    found = subprocess.run([node, "--input-type=module", "-e", RUN, str(SCRIPTS), json.dumps(asked)],
                           check=True, capture_output=True, text=True, timeout=60, env={"TZ": "UTC"})
    return json.loads(found.stdout)


def test_when_the_server_was_last_reached_is_said_after_some_minutes_and_with_the_day_after_a_day() -> None:
    assert said(["reachedWords", NOW - MINUTE, NOW], ["reachedWords", NOW - 20 * MINUTE, NOW],
                ["reachedWords", NOW - 2 * DAY, NOW], ["reachedWords", None, NOW]) == [
        "", "Last reached the server 07:40", "Last reached the server 26 November, 08:00",
        "The server has not been reached yet"]


def test_after_a_day_the_certificate_is_named_as_a_possible_reason_by_https_only() -> None:
    first, by_http, named, alone = said(
        ["whyWords", 23 * HOUR, "https:", TRUST], ["whyWords", 2 * DAY, "http:", TRUST],
        ["whyWords", DAY, "https:", TRUST], ["whyWords", DAY, "https:", ""])
    assert (first, by_http) == ("", "")
    assert "the server's certificate may be the reason" in named and TRUST in named
    assert "certificate" in alone and "Open" not in alone


@pytest.mark.parametrize(("skew_s", "words"), [
    (0, ""), (119, ""), (-119, ""), (300, "5 minutes ahead of"), (-7_500, "2 hours behind"),
    (400_000, "5 days ahead of"),
])
def test_a_clock_that_is_two_minutes_off_is_said(skew_s: int, words: str) -> None:
    (told,) = said(["clockWords", skew_s])
    assert told == (f"This phone's clock is {words} the server's: set it" if words else "")
