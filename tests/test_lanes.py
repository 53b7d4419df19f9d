"""What follows what when a run is spread: the folders that are kept together are there, and whole."""

from pathlib import Path

import pytest

from tests.lanes import TOGETHER, lane

HERE = Path(__file__).parent


@pytest.mark.parametrize("nodeid, told", [
    ("tests/browser/test_path.py::test_the_path", "yard"),
    ("tests/demo/test_lifts.py::test_it[tests/web/a.py::b]", "yard"),
    ("tests/mechanics/hanging/test_physics.py::test_it", "proofs"),
    ("tests/web/tls/test_own.py::test_a_root[x/y::z]", "tests/web/tls/test_own.py"),
    ("tests/test_run.py::test_it", "tests/test_run.py"),
    ("test_screen.py::test_it", "test_screen.py"),
])
def test_a_test_runs_in_the_lane_of_its_folder_or_of_its_file(nodeid: str, told: str) -> None:
    assert lane(nodeid) == told


@pytest.mark.parametrize("folder", TOGETHER)
def test_a_folder_that_is_kept_together_is_there(folder: str) -> None:
    assert (HERE / folder).is_dir()
