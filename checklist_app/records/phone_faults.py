"""Faults of the checks on phones, such as a module that their build left out: told once, shown to an administrator.

They stand beside the evaluations that differed. Only what the code itself says is kept, never what somebody entered.
"""

import re
from datetime import datetime

from checklist_app.checklists.canonical import canonical, digest
from checklist_app.records.key_tables import Comparison
from checklist_app.records.moments import moment
from checklist_app.records.store import Store

FAULT = "fault"
MOST_OF_A_PHONE = 20
MISSING = re.compile(r"No module named '([A-Za-z_][A-Za-z0-9_.]{0,100})'")
OTHER = "The checks failed over their own build"


def note_fault(store: Store, said: str, device: str, code: str, at: datetime) -> None:
    """Keep that the checks of a phone failed; the same again, and more than a few of one phone, add nothing."""
    found = MISSING.search(said)
    words = f"The module {found.group(1)} is not on the phone" if found else OTHER
    here = Comparison.select().where(Comparison.device == device, Comparison.outcome == FAULT)
    if here.count(store.database) >= MOST_OF_A_PHONE:
        return
    name = digest(canonical({"code": code[:64], "device": device, "words": words}))
    Comparison.insert(digest=name, task="", device=device, code=code[:64], at=moment(at), outcome=FAULT,
                      words=words).on_conflict_ignore().execute(store.database)
