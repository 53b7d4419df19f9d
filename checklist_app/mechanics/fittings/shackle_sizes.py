"""Sizes of shackles and what they are rated for.

The marking rates a shackle; a table tells whether the marking can belong to the size.
"""

from checklist_app.mechanics.errors import OutOfRangeError, required_positive

# body [mm]: WLL [t], pin [mm], jaw [mm]
EN_13889_SIZES = {
    6: (0.5, 8, 12), 8: (0.75, 10, 13), 9: (1.0, 11, 16), 11: (1.5, 13, 18), 13: (2.0, 16, 22), 16: (3.25, 19, 27),
    19: (4.75, 22, 31), 22: (6.5, 25, 36), 25: (8.5, 28, 43), 28: (9.5, 32, 47), 32: (12.0, 35, 51),
    35: (13.5, 38, 57), 38: (17.0, 42, 60), 45: (25.0, 50, 74),
}
# SWL [t]: body, pin of mild steel; body, pin of higher tensile steel [mm]
LLOYDS_DEE = {
    1.0: (13, 15, 11, 12), 1.6: (17, 19, 13, 15), 2.0: (19, 21, 15, 17), 2.5: (21, 24, 17, 19),
    3.2: (24, 27, 19, 21), 4.0: (26, 30, 21, 23), 5.0: (29, 33, 23, 26), 6.3: (33, 37, 26, 29),
}


def en_13889_wll_t(body_mm: int) -> float:
    """WLL that the marking of a bow or dee shackle of this size carries at most.

        WLL from the table, by the diameter of the body

    Source:
        SHACKLE_SIZES.

    Args:
        body_mm: nominal diameter of the body [mm].

    Returns:
        WLL [t].

    Raises:
        OutOfRangeError: For a size that the table does not have.

    Example:
        >>> en_13889_wll_t(19), en_13889_wll_t(25)
        (4.75, 8.5)
    """
    if body_mm not in EN_13889_SIZES:
        sizes = ", ".join(str(size) for size in EN_13889_SIZES)
        raise OutOfRangeError("diameter of the shackle's body", body_mm, f"{sizes} mm", "SHACKLE_SIZES")

    return EN_13889_SIZES[body_mm][0]


def lloyds_dee_swl_t(body_mm: int, pin_mm: int, higher_tensile: bool) -> float:
    """SWL of a dee shackle of a ship's gear, by the smallest size that body and pin both reach.

        SWL of the largest row with body and pin no thicker than these

    Source:
        LLOYDS_CLAME, Table 8.5.1.

    Args:
        body_mm: diameter of the body [mm].
        pin_mm: diameter of the pin [mm].
        higher_tensile: whether it is certified as higher tensile steel.

    Returns:
        SWL [t].

    Raises:
        OutOfRangeError: Thinner than the smallest row.

    Example:
        >>> lloyds_dee_swl_t(19, 21, higher_tensile=False), lloyds_dee_swl_t(19, 21, higher_tensile=True)
        (2.0, 3.2)
    """
    first = 2 if higher_tensile else 0
    reached = [swl_t for swl_t, row in LLOYDS_DEE.items() if body_mm >= row[first] and pin_mm >= row[first + 1]]
    if not reached:
        least = LLOYDS_DEE[1.0]
        words = f"a body of {least[first]} mm with a pin of {least[first + 1]} mm, or more"
        raise OutOfRangeError("size of the dee shackle", f"{body_mm} and {pin_mm} mm", words, "LLOYDS_CLAME")

    return max(reached)


def marking_fits_size(wll_t: float, body_mm: int) -> bool:
    """Whether a marked WLL can belong to a grade 6 shackle of this size; a higher one was misread or is another grade.

        WLL marked ≤ WLL of the table

    Source:
        SHACKLE_SIZES.

    Args:
        wll_t: as marked on the body [t], above 0.
        body_mm: nominal diameter of the body [mm].

    Returns:
        True if it can.

    Raises:
        OutOfRangeError: For a size that the table does not have, or a WLL that is no number above 0.

    Example:
        >>> marking_fits_size(4.75, 19), marking_fits_size(6.5, 19)
        (True, False)
    """
    required_positive("WLL marked on the shackle", wll_t, "SHACKLE_SIZES")

    return wll_t <= en_13889_wll_t(body_mm)
