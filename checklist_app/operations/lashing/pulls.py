"""What each lashing pulls when the load is pushed as hard as the rules ask."""

from collections.abc import Iterable, Sequence
from dataclasses import replace

from checklist_app.mechanics.lashing import holding, prepared, slide_3d, tip_3d
from checklist_app.mechanics.lashing.prepared import Prepared
from checklist_app.mechanics.lashing.rule_sets import RULES
from checklist_app.operations.lashing.lashed import Lashed
from checklist_app.operations.lashing.legs import Legs
from checklist_app.operations.lashing.run import Run, Runs

OnFace = tuple[Lashed, float, tuple[Runs, ...]]


def greatest_pulls(
    labels: Sequence[str], legs: Iterable[Legs], faces: Iterable[OnFace]
) -> tuple[float, ...]:
    """Of each lashing the greatest pull of its legs over all runs on all faces; of a tie-down what it is drawn with."""
    most = {each.label: each.drawn_dan for each in legs}
    for lashed, friction, held in faces:
        bare = prepared.prepared(replace(lashed.ways.rated.body, pulls=()))
        for run in (run for runs in held for run in runs.runs if _pulls_count(run)):
            for label, pull_dan in zip(lashed.rows, _pulls(lashed, bare, float(friction), run), strict=True):
                if pull_dan > most[label]:
                    most[label] = pull_dan
    return tuple(most[label] for label in labels)


def _pulls_count(run: Run) -> bool:
    """What is asked against breaking strength is not held against the rating."""
    return run.held.with_direct and not any(slide.against_breaking for slide in run.asked.slides)


def _pulls(lashed: Lashed, bare: Prepared, friction: float, run: Run) -> tuple[float, ...]:
    """At what is asked; where it does not hold, at the most that it withstands, which may be nothing at all."""
    if not run.held.holds:
        return run.held.pulls_dan or (0.0,) * len(lashed.rows)
    rules, way = RULES[run.by], run.asked.direction.way
    share = 1.0 / run.asked.fs if rules.tie_downs_count else 0.0
    if run.asked.slides:
        (slide,) = run.asked.slides
        reduced = rules.direct_friction_share * friction
        found = slide_3d.slides_at(bare, way, slide.downward, reduced, share, count_pulls=False)
    else:
        (tip,) = run.asked.tips
        found = tip_3d.tips_at(bare, way, tip.downward, tip.tension, share)

    return holding.pulls_at_need_dan(run.held, 0.0 if found is None else found.push)
