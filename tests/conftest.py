"""What holds for every test: no skip under CI, a browser or one sentence why not."""

import os
import shutil
from collections.abc import Generator
from datetime import UTC, datetime
from pathlib import Path
from typing import TypeVar

import pytest
from hypothesis import settings

from checklist_app.commands.demo import fill
from checklist_app.demo.carry_out import carry_out, scripts

Report = TypeVar("Report", pytest.TestReport, pytest.CollectReport)
BROWSERS = ("chromium", "chromium-browser", "google-chrome")
NO_BROWSER = "no Chromium on this machine: install Debian's package chromium to run the browser tests"

settings.register_profile("workshop", deadline=None, print_blob=True)
settings.load_profile("workshop")


@pytest.fixture(scope="session")
def chromium_path() -> str:
    """Path of the browser; without one the test is skipped, which is a failure under CI."""
    found = next(filter(None, map(shutil.which, BROWSERS)), None)
    if found is None:
        pytest.skip(NO_BROWSER)

    return found


@pytest.fixture(scope="session")
def filled_yard(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the whole demonstration, its lifts carried out. It is filled once: copy it before changing it."""
    folder, now = tmp_path_factory.mktemp("filled") / "yard", datetime.now(UTC)
    fill(folder, now)
    carry_out(folder, now, scripts())

    return folder


@pytest.hookimpl(optionalhook=True)
def pytest_xdist_make_scheduler(config: pytest.Config, log: object) -> object:
    """Only in a run that was spread over several processes."""
    from tests.lanes import Lanes
    return Lanes(config, log)


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(
    item: pytest.Item, call: pytest.CallInfo[None]
) -> Generator[None, pytest.TestReport, pytest.TestReport]:
    report = yield
    return refused_under_ci(report)


@pytest.hookimpl(wrapper=True)
def pytest_make_collect_report(
    collector: pytest.Collector,
) -> Generator[None, pytest.CollectReport, pytest.CollectReport]:
    report = yield
    return refused_under_ci(report)


def refused_under_ci(report: Report) -> Report:
    """A test that did not run proves nothing, and nobody reads the list of skips of a green run."""
    if report.outcome == "skipped" and os.environ.get("CI") == "true" and not hasattr(report, "wasxfail"):
        report.outcome = "failed"
        report.longrepr = f"skipped, and under CI=true a skip is a failure: {report.longrepr}"

    return report
