"""The plain files of the invented yard, with days from today made into dates."""

import json
import tomllib
from collections.abc import Mapping
from datetime import date, timedelta
from pathlib import Path
from typing import Any

from checklist_app.shipped import shipped

PINS = "demo-pins.json"


def pins(folder: Path) -> dict[str, dict[str, str]]:
    """Role and PIN of everybody in a filled demonstration, by name."""
    kept: dict[str, dict[str, str]] = json.loads((folder / PINS).read_text(encoding="utf-8"))
    return kept


def table(name: str) -> dict[str, Any]:
    """One file of `demo_data`, as it stands."""
    with (shipped("demo_data") / f"{name}.toml").open("rb") as file:
        return tomllib.load(file)


def day(today: date, days: int) -> str:
    return (today + timedelta(days=days)).isoformat()


def dated(facts: Mapping[str, Any], today: date) -> dict[str, Any]:
    """The same facts with every whole number, which counts days from today, made into a date."""
    return {name: _dated(value, today) for name, value in facts.items()}


def _dated(value: Any, today: date) -> Any:
    if isinstance(value, int):
        return day(today, value)
    if isinstance(value, list):
        return [dated(row, today) for row in value]

    return value
