"""Install what the tests need into .venv and run them all: `python3 tests/run.py`.

Anything after the name goes to pytest, for example `python3 tests/run.py -k sling`. A run of all of them gives a few
browser tests that failed one more try, each alone.
"""

import json
import os
import subprocess
import sys
import venv
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
VENV = ROOT / ".venv"
PYTHON = VENV / ("Scripts/python.exe" if os.name == "nt" else "bin/python")
CHECKS = (
    ("-m", "ruff", "check", "--quiet", "."),
    ("-m", "mypy", "--no-error-summary"),
)
TESTS_FAILED, MOST_AGAIN = 1, 5
SPREAD = ("-n", "logical", "--no-loadscope-reorder")  # over all cores, in the lanes of tests/lanes.py
LAST_FAILED = ".pytest_cache/v/cache/lastfailed"


def main() -> int:
    install()
    failed = [" ".join(check[1:]) for check in CHECKS if run(*check) != 0]
    tests = run("-m", "pytest", *sys.argv[1:]) if sys.argv[1:] else all_tests()
    for name in failed:
        print(f"{name}: found faults, see above")

    return tests or len(failed)


def all_tests() -> int:
    """What pytest ended with, or 0 if all that failed were a few browser tests and each passed alone."""
    ended = run("-m", "pytest", "--cache-clear", *SPREAD)
    last = ROOT / LAST_FAILED
    names = list(json.loads(last.read_text(encoding="utf-8"))) if ended == TESTS_FAILED and last.exists() else []
    if not 0 < len(names) <= MOST_AGAIN or not all(map(passes_alone, names)):
        return ended

    print("unsteady, passed alone:", *names, sep="\n  ", flush=True)
    return 0


def passes_alone(name: str) -> bool:
    """Only a test marked `browser` can: of any other none is collected, which counts as failed."""
    return run("-m", "pytest", "--quiet", "-p", "no:cacheprovider", "-m", "browser", name) == 0


def install() -> None:
    if not PYTHON.exists():
        venv.create(VENV, with_pip=True)
    subprocess.run([PYTHON, "-m", "pip", "install", "--quiet", "--disable-pip-version-check",
                    "--editable", f"{ROOT}[test]"], check=True)


def run(*arguments: str) -> int:
    return subprocess.run([PYTHON, *arguments], cwd=ROOT, check=False).returncode


if __name__ == "__main__":
    sys.exit(main())
