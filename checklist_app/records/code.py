"""Which code made an evaluation: the version, and a digest of the pure floors' sources, for one can change alone."""

import hashlib
from functools import cache
from pathlib import Path

import checklist_app

FLOORS = ("mechanics", "operations", "checklists")
SHORT = 12


@cache
def code() -> str:
    """Version and digest, such as 0.1.0+5f2c9a0b1d3e: equal exactly when the same answers give the same evaluation."""
    root, whole = Path(checklist_app.__file__).parent, hashlib.sha256()
    for path in sorted(path for floor in FLOORS for path in (root / floor).rglob("*.py")):
        whole.update(path.relative_to(root).as_posix().encode() + b"\0")
        whole.update(path.read_bytes().replace(b"\r\n", b"\n") + b"\0")

    return f"{checklist_app.__version__}+{whole.hexdigest()[:SHORT]}"
