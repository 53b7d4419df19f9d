"""How much of what they are rated at direct lashings give together: straps do not yield, the stiffest breaks first."""

from collections.abc import Sequence

from checklist_app.mechanics.lashing.lashed_body import Stretch

SOURCE = "STATICS_LASHED_BODY"
STILL = 1e-9
ALIKE = 1e-9


def shared_limits(
    strains: Sequence[float], limits: Sequence[float], kinds: Sequence[Stretch]
) -> tuple[tuple[float, ...], ...]:
    """What each leg may give while no leg is past its rating, for every stiffest leg and kind that may be meant.

        R × e / greatest e, among legs of one kind; stiffer legs and other kinds that stretch count nothing

    A lashing may be left out of account, never do harm: so each strain is tried as the greatest, stiffer legs left out,
    and each kind alone. Legs that do not stretch keep their rating.

    Source:
        STATICS_LASHED_BODY.

    Args:
        strains: e, stretch of each leg over its length as the load begins to move [any unit].
        limits: R, rating of each leg [any unit of force].
        kinds: what each is made of.

    Returns:
        One or more sets of limits [the unit of R], the most inclusive of each kind first.

    Example:
        >>> shared_limits((0.2, 0.1, -0.1), (10.0, 10.0, 10.0), (Stretch.WEB,) * 3)
        ((10.0, 5.0, 10.0), (0.0, 10.0, 10.0))
    """
    stretched = [i for i, strain in enumerate(strains) if strain > STILL]
    if not stretched:
        return (tuple(limits),)

    return tuple(
        tuple(
            limit if strain <= STILL else limit * min(1.0, strain / most) if own is kind and not _more(strain, most)
            else 0.0
            for strain, limit, own in zip(strains, limits, kinds, strict=True)
        )
        for kind in Stretch
        for most in _steps([strains[i] for i in stretched if kinds[i] is kind])
    )


def _steps(strains: Sequence[float]) -> list[float]:
    """The strains that differ, greatest first."""
    steps: list[float] = []
    for strain in sorted(strains, reverse=True):
        if not steps or _more(steps[-1], strain):
            steps.append(strain)
    return steps


def _more(a: float, b: float) -> bool:
    return a > b * (1.0 + ALIKE)
