"""The command line: reports, exit statuses, and input that cannot be used."""

import copy
import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from checklist_app.cli import main
from checklist_app.operations.catalogue import OPERATIONS

EXAMPLE = OPERATIONS["straight_lift"].example
KEYS = {
    "operation", "verdict", "governs", "class", "checks", "quantities", "assumptions", "cautions", "waiting", "refused",
}
CHECK_KEYS = {
    "name", "row", "kind", "title", "demand", "capacity", "unit", "utilisation", "at_limit", "verdict", "worst",
    "driver", "rule_set", "source", "source_status", "working",
}


def changed(**entries: Any) -> dict[str, Any]:
    data = copy.deepcopy(dict(EXAMPLE))
    data["entries"].update(entries)
    return data


@pytest.fixture
def run(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> Any:
    def told(data: Any) -> tuple[int, Any, str]:
        file = tmp_path / "task.json"
        file.write_text(data if isinstance(data, str) else json.dumps(data), encoding="utf-8")
        status = main(["assess", str(file)])
        out, err = capsys.readouterr()
        return status, json.loads(out) if out else None, err
    return told


def test_the_example_is_assessed_with_every_key_of_the_report(run: Any) -> None:
    status, report, err = run(EXAMPLE)
    assert (status, err) == (0, "")
    assert set(report) >= KEYS
    assert report["verdict"] in ("within limit", "close to limit")
    assert report["governs"] in [check["name"] for check in report["checks"]]
    for check in report["checks"]:
        assert set(check) >= CHECK_KEYS
        assert set(check["worst"]) == {"demand", "capacity", "utilisation"}
        assert check["kind"] in ("strength", "limit", "state") and check["verdict"] in report_words()
        assert (check["utilisation"] is None) == (check["kind"] != "strength")
        assert check["source_status"] in ("read", "derived", "from memory", "house setting")


def report_words() -> set[str]:
    return {"within limit", "close to limit", "over limit", "waiting", "cannot be assessed"}


def test_the_figures_of_one_check_agree_with_each_other(run: Any) -> None:
    _, report, _ = run(EXAMPLE)
    check = next(check for check in report["checks"] if check["name"] == "sling_strength[left]")
    assert check["row"] == "left" and check["unit"] == "t" and check["at_limit"] == "allowed"
    assert check["utilisation"] == pytest.approx(check["demand"] / check["capacity"], rel=1e-11)
    assert check["worst"]["utilisation"] > check["utilisation"]
    assert check["demand"] == pytest.approx(report["quantities"]["leg_load_t[left]"])
    assert check["driver"] in ("cg_x_m", "mass_kg")
    assert any(line.startswith("demand [left] = ") for line in check["working"])


def test_an_overload_is_over_with_status_1(run: Any) -> None:
    status, report, _ = run(changed(mass_kg={"value": 4000, "how": "weighed"}))
    assert (status, report["verdict"]) == (1, "over limit")
    governing = next(check for check in report["checks"] if check["name"] == report["governs"])
    assert governing["verdict"] == "over limit"


def test_an_empty_task_waits_with_status_3_and_nothing_governs(run: Any) -> None:
    status, report, _ = run({"operation": "straight_lift"})
    assert (status, report["verdict"], report["governs"], report["checks"]) == (3, "waiting", None, [])
    assert "mass_kg" in report["waiting"]["hoist_strength"]
    assert "mass of the load" in report["waiting_words"]["hoist_strength"]


def test_one_missing_entry_is_waited_for_by_name_in_its_map_alone(run: Any) -> None:
    data = copy.deepcopy(dict(EXAMPLE))
    del data["legs"][0]["sling"]
    status, report, _ = run(data)
    assert (status, report["verdict"]) == (3, "waiting")
    assert "sling[left]" in report["waiting"]["sling_strength[left]"]
    names = [check["name"] for check in report["checks"]]
    assert "hoist_strength" not in report["waiting"] or "hoist_strength" not in names
    assert not set(names) & (set(report["waiting"]) | set(report["refused"]))


def test_a_third_leg_cannot_be_assessed_in_words(run: Any) -> None:
    data = copy.deepcopy(dict(EXAMPLE))
    data["legs"].append(dict(data["legs"][0], label="middle"))
    status, report, _ = run(data)
    assert (status, report["verdict"]) == (3, "cannot be assessed")
    assert "three legs" in report["refused"]["sling_strength[left]"]


def test_rows_without_a_label_are_numbered(run: Any) -> None:
    data = copy.deepcopy(dict(EXAMPLE))
    for leg in data["legs"]:
        del leg["label"]
    _, report, _ = run(data)
    assert {"sling_strength[1]", "sling_strength[2]"} <= {check["name"] for check in report["checks"]}


def test_without_spread_the_worst_is_the_nominal_and_nothing_drives(run: Any) -> None:
    status, report, _ = run({**EXAMPLE, "spread": False})
    assert status == 0
    for check in report["checks"]:
        assert check["driver"] is None
        assert check["worst"]["demand"] == check["demand"]
    assert any("exact" in words for words in report["assumptions"])


def test_how_a_number_was_obtained_is_asked_only_with_spread(run: Any) -> None:
    data = changed(mass_kg=1180)
    status, report, _ = run(data)
    assert (status, report["waiting"]["hoist_strength"]) == (3, ["mass_kg.how"])
    assert run({**data, "spread": False})[0] == 0
    assert run(changed(mass_kg={"value": 1180, "plus_minus": 20}))[0] == 0


def test_dont_know_is_tried_and_named(run: Any) -> None:
    status, report, _ = run(changed(cg_x_m="don't know"))
    assert status in (0, 1)
    assert any("centre of gravity, lengthwise: not known" in words for words in report["assumptions"])


def entry(name: str, text: str) -> str:
    return f'{{"operation": "straight_lift", "entries": {{"{name}": {text}}}}}'


def leg(text: str) -> str:
    return f'{{"operation": "straight_lift", "legs": [{text}]}}'


UNUSABLE = {
    "nothing": ("", "no JSON"),
    "half of it": ('{"operation": "straight_lift"', "no JSON"),
    "a list": ("[]", "an object is expected"),
    "8,000 brackets": ("[" * 8000, "brackets go too deep"),
    "8,000 brackets, closed": (entry("mass_kg", "[" * 8000 + "]" * 8000), "brackets go too deep"),
    "50 brackets": (entry("mass_kg", "[" * 50 + "]" * 50), "brackets go too deep"),
    "no operation": ("{}", "operation"),
    "another operation": ('{"operation": "moon lift"}', "moon lift"),
    "an operation that is a list": ('{"operation": ["straight_lift"]}', "operation"),
    "another key": ('{"operation": "straight_lift", "entry": {}}', "'entry'"),
    "a key twice": (entry("mass_kg", '1, "mass_kg": 2'), "mass_kg: stands twice"),
    "spread in words": ('{"operation": "straight_lift", "spread": "no"}', "spread"),
    "an unknown entry": (entry("weight", "1"), "'weight'"),
    "an entry of a leg outside": (entry("sling", "1"), "'sling'"),
    "NaN": (entry("mass_kg", "NaN"), "entries.mass_kg: nan kg is not a number"),
    "infinite": (entry("mass_kg", "-Infinity"), "entries.mass_kg: -inf"),
    "1e99": (entry("mass_kg", "1e99"), "entries.mass_kg: 1e+99 kg is too much. Allowed: 1 to 100000 kg"),
    "5,000 digits": (entry("mass_kg", "9" * 5000), "entries.mass_kg"),
    "zero": (entry("mass_kg", "0"), "entries.mass_kg: 0 kg is too little"),
    "negative": (entry("mass_kg", "-5"), "entries.mass_kg: -5 kg is too little"),
    "letters": (entry("mass_kg", '"abc"'), "entries.mass_kg: a number is expected"),
    "a number in words": (entry("mass_kg", '"1,250"'), "entries.mass_kg: a number is expected"),
    "true": (entry("mass_kg", "true"), "entries.mass_kg: a number is expected"),
    "a value that is missing": (entry("mass_kg", '{"how": "weighed"}'), 'entries.mass_kg: "value" is missing'),
    "another way": (entry("mass_kg", '{"value": 1, "how": "guess"}'), "entries.mass_kg.how: 'guess'"),
    "a way that is a list": (entry("mass_kg", '{"value": 1, "how": []}'), "entries.mass_kg.how"),
    "a negative spread": (entry("mass_kg", '{"value": 9, "plus_minus": -1}'), "entries.mass_kg: -1 kg is too little"),
    "NaN as spread": (entry("mass_kg", '{"value": 9, "plus_minus": NaN}'), "entries.mass_kg: nan"),
    "another name in a number": (entry("mass_kg", '{"value": 9, "pm": 1}'), "entries.mass_kg: there is no 'pm'"),
    "no day": (entry("day", '"2026-02-30"'), "entries.day: 2026-02-30 is no day"),
    "another choice": (entry("eyes_given", '"by ear"'), "entries.eyes_given: 'by ear' is not one of"),
    "not used where it must be": (entry("mass_kg", '{"not_used": "no"}'), 'entries.mass_kg: "not used" is no answer'),
    "not used without a reason": (entry("load_cell", '{"not_used": " "}'), "entries.load_cell: say why"),
    "legs that are no list": ('{"operation": "straight_lift", "legs": {}}', "legs: a list"),
    "a leg that is a number": (leg("1"), "legs, row 1"),
    "two legs of one name": (leg('{"label": "a"}, {"label": "a"}'), "two rows a"),
    "a label with brackets": (leg('{"label": "a[b"}'), "legs: a label"),
    "a thousand legs": (leg(", ".join(["{}"] * 1000)), "1000 rows are too many"),
    "gear of no kind": (leg('{"sling": {"wll_t": 1}}'), "legs[1].sling.kind: say which kind"),
    "gear of another kind": (leg('{"sling": {"kind": "hook", "wll_t": 1}}'), "legs[1].sling.kind"),
    "gear with another fact": (leg('{"sling": {"kind": "flat_sling", "wl": 1}}'), "legs[1].sling.wl"),
    "gear rated in letters": (leg('{"sling": {"kind": "flat_sling", "wll_t": "x"}}'), "legs[1].sling.wll_t"),
    "gear rated 1e99": (leg('{"sling": {"kind": "flat_sling", "wll_t": 1e99}}'), "legs[1].sling.wll_t"),
    "gear rated NaN": (leg('{"sling": {"kind": "flat_sling", "wll_t": NaN}}'), "legs[1].sling.wll_t"),
    "gear rated true": (leg('{"sling": {"kind": "flat_sling", "wll_t": true}}'), "legs[1].sling.wll_t"),
    "ratings that grow": (
        leg('{"eye": {"ratings": [{"up_to_deg": 5, "wll_t": 1}, {"up_to_deg": 45, "wll_t": 2}]}}'), "rated higher"
    ),
    "a rating of no angle": (leg('{"eye": {"ratings": [{"wll_t": 1}]}}'), "legs[1].eye"),
}


@pytest.mark.parametrize("text, named", UNUSABLE.values(), ids=UNUSABLE.keys())
def test_unusable_input_is_status_2_with_a_message_that_names_the_field(run: Any, text: str, named: str) -> None:
    status, report, err = run(text)
    assert (status, report) == (2, None)
    assert named in err and "Traceback" not in err and len(err.splitlines()) == 1


def test_a_file_that_is_not_there_or_no_text_is_status_2(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    (tmp_path / "bytes").write_bytes(b"\xff\xfe{}")
    for path in (tmp_path / "none", tmp_path, tmp_path / "bytes"):
        assert main(["assess", str(path)]) == 2
        assert str(path) in capsys.readouterr().err


def test_from_a_shell_through_standard_input_without_a_database(tmp_path: Path) -> None:
    done = subprocess.run(
        [sys.executable, "-m", "checklist_app", "assess", "-"], input=json.dumps(EXAMPLE), capture_output=True,
        text=True, cwd=Path(__file__).resolve().parents[2], check=False,
    )
    assert (done.returncode, done.stderr) == (0, "")
    assert json.loads(done.stdout)["operation"] == "straight_lift"


def test_operations_tells_how_to_write_an_input_that_assess_accepts(
    run: Any, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["operations"]) == 0
    told = json.loads(capsys.readouterr().out)["operations"]["straight_lift"]
    assert told["entries"]["mass_kg"]["unit"] == "kg" and told["entries"]["mass_kg"]["low"] == 1.0
    assert told["entries"]["mass_kg"]["obtained"]["weighed"]["factor"] == 1.03
    assert told["groups"]["leg"]["plural"] == "legs" and told["groups"]["leg"]["at_most"] == 4
    assert told["groups"]["leg"]["entries"]["sling"]["gear"] == [
        "flat_sling", "round_sling", "chain_sling", "wire_rope_sling"]
    assert told["entries"]["cg_x_m"]["dont_know"] and not told["entries"]["mass_kg"]["dont_know"]
    assert told["entries"]["load_cell"]["may_be_none"]
    assert told["gear"]["flat_sling"]["facts"]["wll_t"]["unit"] == "t"
    assert {"don't know", "not used", "number with its spread"} <= set(told["answers"])
    assert run(told["example"])[0] == 0
