"""Write the table of what proves what from the very cases the tests run: `python -m tests.mechanics.proofs`."""

import json
import sys
from pathlib import Path

import pytest

from tests.mechanics.recorded import Recorder, Row, is_recorded

ROOT = Path(__file__).resolve().parents[2]
FILE = ROOT / "checklist_app" / "web" / "proofs.json"


class Writer:
    """Takes part in a run of the tests and writes when it is over; a test that failed proves nothing."""

    def __init__(self) -> None:
        self.failed: set[str] = set()

    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        items[:] = [item for item in items if is_recorded(item)]

    def pytest_runtest_logreport(self, report: pytest.TestReport) -> None:
        if report.failed:
            self.failed |= {report.nodeid, report.nodeid.partition("[")[0]}

    def pytest_sessionfinish(self, session: pytest.Session, exitstatus: int) -> None:
        if exitstatus in (pytest.ExitCode.OK, pytest.ExitCode.TESTS_FAILED):
            from tests.mechanics.conftest import RECORDER
            recorder = session.config.stash[RECORDER]
            recorder.seen = {name: found for name, found in recorder.seen.items() if name not in self.failed}
            write(recorder)


def write(recorder: Recorder) -> None:
    """One row a line, so that a change can be read."""
    lines = ",\n".join(json.dumps(row._asdict(), ensure_ascii=False) for row in recorder.rows())
    FILE.write_text(f"[\n{lines}\n]\n", encoding="utf-8")


def kept() -> list[Row]:
    """The table as it lies there."""
    return [Row(**row) for row in json.loads(FILE.read_text(encoding="utf-8"))]


if __name__ == "__main__":
    sys.exit(pytest.main(["-q", "-p", "no:cacheprovider", "--deselect",
                          "tests/mechanics/test_what_proves_what.py", str(ROOT / "tests" / "mechanics")], [Writer()]))
