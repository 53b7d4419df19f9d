"""The rows that follow an answer: four legs are four rows of slots, and nobody has to add or remove one.

What stands in a row that the answer no longer gives is left out, not lost: it is there again when the answer is.
"""
from dataclasses import replace

from checklist_app.checklists.entry import Path
from checklist_app.checklists.fold import Folded
from checklist_app.checklists.procedure import Procedure


def followed(procedure: Procedure, folded: Folded) -> Folded:
    """What stands, with the rows that the answers give. Without one answer that holds, there are none."""
    if not procedure.follows:
        return folded
    rows = {group: ids for group, ids in folded.rows.items() if group not in procedure.follows}
    for group, follows in procedure.follows.items():
        said = folded.values.get((follows.answer,), {}).get("text", "")
        if ids := follows.rows.get(said, ()):
            rows[group] = ids

    def stands(path: Path) -> bool:
        return len(path) < 2 or path[0] not in procedure.follows or path[1] in rows.get(path[0], ())

    return replace(folded, rows=rows, values={path: value for path, value in folded.values.items() if stands(path)},
                   disputed={path: heads for path, heads in folded.disputed.items() if stands(path)})
