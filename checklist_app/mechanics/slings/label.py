"""No label, no lift."""

from checklist_app.mechanics.errors import OutOfRangeError, required_positive
from checklist_app.mechanics.slings.kinds import SlingKind
from checklist_app.mechanics.slings.temperature import Fibre


def labelled_wll_t(wll_t: float | None, readable: bool) -> float:
    """The WLL that the label or tag prints for the sling used straight; without one the sling has none.

        WLL as printed

    Source:
        SLING_LABEL: a sling whose label is missing or cannot be read is taken out of use. Colour never stands for it.

    Args:
        wll_t: as read from the label or tag [t]; None where there is none.
        readable: whether the whole label or tag can be read.

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: Without a label that can be read, or for a WLL that is no number above 0.

    Example:
        >>> labelled_wll_t(2.0, readable=True)
        2.0
    """
    if wll_t is None or not readable:
        seen = "missing" if wll_t is None else "unreadable"
        raise OutOfRangeError("label or tag of the sling", seen, "a label that can be read; take the sling out of use",
                              "SLING_LABEL")
    required_positive("WLL on the label", wll_t, "SLING_LABEL")

    return wll_t


def labelled_fibre(kind: SlingKind, fibre: Fibre | None) -> Fibre:
    """The fibre that the label of a textile sling names; its temperature and chemistry hang on it.

    Source:
        SLING_LABEL; DGUV_209_013: label blue polyester, green polyamide, brown polypropylene.

    Args:
        kind: what the sling is made as.
        fibre: as read from the label; None where it names none.

    Returns:
        The fibre.

    Raises:
        OutOfRangeError: For a textile sling that names none, or for chain and wire rope.

    Example:
        >>> labelled_fibre(SlingKind.ROUNDSLING, Fibre.POLYESTER).value
        'polyester'
    """
    if not kind.is_textile:
        raise OutOfRangeError("fibre", kind.value, "webbing and roundslings", "SLING_LABEL")
    if fibre is None:
        raise OutOfRangeError("fibre on the label", "missing", "a label that names the fibre", "SLING_LABEL")

    return fibre
