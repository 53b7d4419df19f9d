"""One unsteady browser test does not fail a run of all; nothing else is forgiven. Real pytest on a small tree."""

import sys
from pathlib import Path

import pytest

from tests import run

SETTINGS = "[tool.pytest.ini_options]\nmarkers = ['browser: needs a real Chromium']\n"
STEADY = "def test_steady(): pass\n"
BROWSER = "import pytest\n@pytest.mark.browser\n"
ONCE = """
def test_passes_the_second_time():
    from pathlib import Path
    tried = Path(__file__).with_name("tried")
    before = tried.exists()
    tried.touch()
    assert before
"""


@pytest.fixture
def tree(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A tree of tests of its own for the command."""
    monkeypatch.setattr(run, "ROOT", tmp_path)
    monkeypatch.setattr(run, "PYTHON", sys.executable)
    monkeypatch.delenv("PYTEST_ADDOPTS", raising=False)
    monkeypatch.setenv("PYTEST_DISABLE_PLUGIN_AUTOLOAD", "1")  # they take longer to begin than these tests to run
    monkeypatch.setenv("PYTEST_PLUGINS", "xdist.plugin")
    (tmp_path / "pyproject.toml").write_text(SETTINGS)
    (tmp_path / "test_steady.py").write_text(STEADY)
    return tmp_path


def test_a_browser_test_that_passes_alone_is_named_and_forgiven(tree: Path, capfd: pytest.CaptureFixture[str]) -> None:
    (tree / "test_screen.py").write_text(BROWSER + ONCE)
    assert run.all_tests() == 0
    assert "unsteady, passed alone:\n  test_screen.py::test_passes_the_second_time" in capfd.readouterr().out


def test_a_green_run_says_nothing_more(tree: Path, capfd: pytest.CaptureFixture[str]) -> None:
    assert run.all_tests() == 0
    assert "unsteady" not in capfd.readouterr().out


@pytest.mark.parametrize("files", [
    pytest.param({"screen": BROWSER + "def test_never(): assert False\n"}, id="a browser test that fails again"),
    pytest.param({"plain": ONCE}, id="an unsteady test of anything but the browser"),
    pytest.param({"screen": BROWSER + ONCE, "plain": "def test_never(): assert False\n"}, id="one of each"),
    pytest.param({f"screen{each}": BROWSER + ONCE.replace("tried", f"t{each}")
                  for each in range(run.MOST_AGAIN + 1)}, id="more than a few"),
    pytest.param({"screen": "import nowhere_to_be_found\n"}, id="a file that cannot be read"),
])
def test_everything_else_stays_a_failure(
    tree: Path, files: dict[str, str], capfd: pytest.CaptureFixture[str]
) -> None:
    for name, text in files.items():
        (tree / f"test_{name}.py").write_text(text)
    assert run.all_tests() != 0
    assert "unsteady" not in capfd.readouterr().out


def test_what_failed_in_an_earlier_run_is_not_tried(tree: Path, capfd: pytest.CaptureFixture[str]) -> None:
    (tree / "test_old.py").write_text("def test_never(): assert False\n")
    run.run("-m", "pytest")
    (tree / "test_old.py").unlink()
    (tree / "test_screen.py").write_text(BROWSER + ONCE)
    assert run.all_tests() == 0
    assert "test_old" not in capfd.readouterr().out.partition("unsteady")[2]
