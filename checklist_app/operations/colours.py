"""Colours of textile slings by WLL: to be shown beside the figure, never read as one.

Source:
    EN_1492_1, EN_1492_2: colour code of the label and the sling.
"""

BY_WLL_T = {1.0: "violet", 2.0: "green", 3.0: "yellow", 4.0: "grey", 5.0: "red", 6.0: "brown", 8.0: "blue"}
ORANGE_FROM_T = 10.0


def sling_colour(wll_t: float) -> str | None:
    """The colour of a sling of this WLL; None where the standard names none.

    Example:
        >>> sling_colour(3.0), sling_colour(2.5)
        ('yellow', None)
    """
    return "orange" if wll_t >= ORANGE_FROM_T else BY_WLL_T.get(wll_t)
