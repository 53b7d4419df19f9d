"""Install what the tests need into .venv and run them all: `python3 tests/run.py`.

Anything after the name goes to pytest, for example `python3 tests/run.py -k sling`.
"""

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


def main() -> int:
    install()
    failed = [" ".join(check[1:]) for check in CHECKS if run(*check) != 0]
    tests = run("-m", "pytest", *sys.argv[1:])
    for name in failed:
        print(f"{name}: found faults, see above")

    return tests or len(failed)


def install() -> None:
    if not PYTHON.exists():
        venv.create(VENV, with_pip=True)
    subprocess.run([PYTHON, "-m", "pip", "install", "--quiet", "--disable-pip-version-check",
                    "--editable", f"{ROOT}[test]"], check=True)


def run(*arguments: str) -> int:
    return subprocess.run([PYTHON, *arguments], cwd=ROOT, check=False).returncode


if __name__ == "__main__":
    sys.exit(main())
