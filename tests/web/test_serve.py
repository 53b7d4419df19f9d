"""The real server in a process of its own: it prints where it answers, serves, and stops cleanly."""

import re
import signal
import subprocess
import sys
import urllib.error
import urllib.request
from collections.abc import Iterator
from pathlib import Path

import pytest

from checklist_app.cli import main

ROOT = Path(__file__).resolve().parents[2]
LINES_MOST = 80


class Running:
    """`serve` on a free port; reads what it prints until it says how to stop it."""

    def __init__(self, folder: Path) -> None:
        self.process = subprocess.Popen(
            [sys.executable, "-m", "checklist_app", "serve", "--folder", str(folder),
             "--host", "127.0.0.1", "--port", "0"],
            cwd=ROOT, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)
        self.said = ""
        for _ in range(LINES_MOST):
            line = self.process.stdout.readline()  # type: ignore[union-attr]
            self.said += line
            if not line or "Ctrl-C" in line:
                break
        found = re.search(r"http://127\.0\.0\.1:\d+", self.said)
        assert found, self.said
        self.url = found.group(0)


@pytest.fixture
def running(tmp_path: Path) -> Iterator[Running]:
    started = Running(tmp_path / "data")
    yield started
    started.process.kill()
    started.process.communicate()


def test_the_server_says_where_it_answers_and_how_to_begin(running: Running) -> None:
    with urllib.request.urlopen(running.url, timeout=10) as answer:
        assert "never the competent person" in answer.read().decode()
    assert "http is for trying" in running.said
    assert re.search(r"/first-run with this code, .*: [A-Z2-9]{5}-[A-Z2-9]{5}", running.said)
    assert "▄" in running.said or "█" in running.said, "no QR code was drawn"


@pytest.mark.parametrize("way", [signal.SIGTERM, signal.SIGINT])
def test_the_server_stops_cleanly(running: Running, way: signal.Signals) -> None:
    running.process.send_signal(way)
    rest, _ = running.process.communicate(timeout=20)
    assert running.process.returncode == 0
    assert "Stopped." in rest
    assert "Traceback" not in rest
    with pytest.raises(urllib.error.URLError):
        urllib.request.urlopen(running.url, timeout=2)


def test_a_port_that_is_taken_is_said_in_words(running: Running, tmp_path: Path) -> None:
    port = running.url.rpartition(":")[2]
    second = subprocess.run(
        [sys.executable, "-m", "checklist_app", "serve", "--folder", str(tmp_path / "other"),
         "--host", "127.0.0.1", "--port", port],
        cwd=ROOT, capture_output=True, text=True, timeout=60, check=False)
    assert second.returncode == 2
    assert "The server cannot start" in second.stderr
    assert "Traceback" not in second.stderr


def test_the_data_are_readable_by_their_owner_only(running: Running, tmp_path: Path) -> None:
    assert (tmp_path / "data").stat().st_mode & 0o077 == 0
    assert (tmp_path / "data" / "checklist.db").stat().st_mode & 0o077 == 0


def test_a_code_for_the_first_administrator_can_be_had_again(running: Running, tmp_path: Path,
                                                             capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["first-run", "--folder", str(tmp_path / "data")]) == 0
    assert re.search(r"[A-Z2-9]{5}-[A-Z2-9]{5}", capsys.readouterr().out)


def test_a_code_for_nobody_is_refused_in_words(running: Running, tmp_path: Path,
                                               capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["new-pin", "Nobody", "--folder", str(tmp_path / "data")]) == 2
    assert "nobody signs in by the name Nobody" in capsys.readouterr().err


def test_a_mistyped_folder_makes_no_empty_database(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["new-pin", "Nobody", "--folder", str(tmp_path / "typo")]) == 2
    assert "there are no data" in capsys.readouterr().err
    assert not (tmp_path / "typo").exists()


def test_a_backup_made_while_serving_can_be_put_back(running: Running, tmp_path: Path,
                                                    capsys: pytest.CaptureFixture[str]) -> None:
    data, saved, back = (str(tmp_path / name) for name in ("data", "saved", "back"))
    assert main(["backup", saved, "--folder", data]) == 0
    assert main(["restore", saved, "--folder", back]) == 0
    assert "Put back into" in capsys.readouterr().out
    assert (tmp_path / "back" / "checklist.db").stat().st_size > 0


def test_a_backup_never_overwrites(running: Running, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    data = tmp_path / "data"
    assert main(["backup", str(data), "--folder", str(data)]) == 2
    assert main(["restore", str(tmp_path / "nothing"), "--folder", str(tmp_path / "back")]) == 2
    assert main(["backup", str(tmp_path / "saved"), "--folder", str(tmp_path / "typo")]) == 2
    assert "there are no data" in capsys.readouterr().err


def test_a_backup_without_a_name_goes_into_the_folder_of_backups(running: Running, tmp_path: Path,
                                                                 capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["backup", "--folder", str(tmp_path / "data")]) == 0
    assert len(list((tmp_path / "data" / "backups").glob("20*/checklist.db"))) == 1
    assert "copy it to another one" in capsys.readouterr().out
