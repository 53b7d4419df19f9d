"""What a lashing may be reckoned with: its label, its tension, and the weakest of all that is in the chain."""

from collections.abc import Mapping

from checklist_app.mechanics.errors import OutOfRangeError, required_positive

SOURCE = "EN_12195_2"
STF_FROM, STF_TO = 10.0, 2.0  # LC over these
DAN_IN_KN = 100.0
BAND_DAN_MM2, BAND_MSL_SHARE = 85.0, 0.7
LASHING_POINTS_DAN = ((7.5, 800.0), (12.0, 1000.0), (float("inf"), 2000.0))
SMALLEST_T = 3.5


def tie_down_tension_dan(lc_dan: float | None, stf_dan: float | None, readable: bool) -> float:
    """Tension of a tie-down from its label: STF, never LC.

        FT = STF,  0.10 LC ≤ STF ≤ 0.50 LC

    Source:
        EN_12195_2. Without STF on the label it is no tie-down.

    Args:
        lc_dan: LC, lashing capacity [daN]; None where it is not on the label.
        stf_dan: STF, standard tension force [daN]; None where it is not on the label.
        readable: whether the label is there and can be read.

    Returns:
        Tension [daN].

    Raises:
        OutOfRangeError: Without a label, LC or STF, or with an STF that does not go with the LC.

    Example:
        >>> tie_down_tension_dan(2500.0, 350.0, readable=True)
        350.0
    """
    lc = labelled_lc_dan(lc_dan, readable)
    if stf_dan is None:
        raise OutOfRangeError("STF on the label", "missing", "an STF: without it the lashing is no tie-down", SOURCE)
    if not lc / STF_FROM <= stf_dan <= lc / STF_TO:
        raise OutOfRangeError("STF on the label", stf_dan, f"{lc / STF_FROM:g} to {lc / STF_TO:g} daN", SOURCE)

    return stf_dan


def labelled_lc_dan(lc_dan: float | None, readable: bool) -> float:
    """Lashing capacity in a straight pull, as on the label.

        LC as on the label

    Source:
        EN_12195_2. A lashing without a readable label is not used.

    Args:
        lc_dan: LC [daN]; None where it is not on the label.
        readable: whether the label is there and can be read.

    Returns:
        LC [daN].

    Raises:
        OutOfRangeError: Without it.

    Example:
        >>> labelled_lc_dan(2500.0, readable=True)
        2500.0
    """
    if lc_dan is None or not readable:
        seen = "unreadable" if lc_dan is not None else "missing"
        raise OutOfRangeError("LC on the label of the lashing", seen, "a label that can be read", SOURCE)
    required_positive("LC on the label of the lashing", lc_dan, SOURCE)

    return lc_dan


def measured_tension_dan(lc_dan: float, measured_dan: float) -> float:
    """Tension of a tie-down as measured with an instrument; more than half of LC does not count.

        FT = measured, 0.5 LC at most

    Source:
        EN_12195_1_FS_OTHER: FT at most 0.5 LC, from memory, takes away.

    Args:
        lc_dan: LC [daN], above 0.
        measured_dan: as measured, or pulled by hand on a scale [daN], above 0.

    Returns:
        Tension [daN].

    Raises:
        OutOfRangeError: If a number is none above 0, or the lashing is pulled past its LC.

    Example:
        >>> measured_tension_dan(1000.0, 620.0)
        500.0
    """
    required_positive("LC on the label of the lashing", lc_dan, SOURCE)
    if not 0.0 < measured_dan <= lc_dan:
        raise OutOfRangeError("tension as measured", measured_dan, "above 0, up to the LC", SOURCE)

    return min(measured_dan, lc_dan / STF_TO)


def weakest_dan(parts_dan: Mapping[str, float | None]) -> float:
    """What a chain of strap, hook, eye, anchor and board carries.

        the least of all parts

    Source:
        EN_12195_1, CSS_ANNEX_13_FORCES and CFR_393 alike.

    Args:
        parts_dan: each part by name and what it carries [daN]; None where nobody knows.

    Returns:
        What the chain carries [daN].

    Raises:
        OutOfRangeError: If there is no part, or one is not known.

    Example:
        >>> weakest_dan({"strap": 2500.0, "hook": 2500.0, "anchor": 1000.0})
        1000.0
    """
    if not parts_dan:
        raise OutOfRangeError("parts of the lashing", "none", "strap or chain, its ends and its anchor", SOURCE)
    known = []
    for name, part_dan in parts_dan.items():
        if part_dan is None:
            raise OutOfRangeError(f"what carries at {name}", "not known", "its rating", SOURCE)
        required_positive(f"what carries at {name}", part_dan, SOURCE)
        known.append(part_dan)

    return min(known)


def band_breaking_dan(width_mm: float, thickness_mm: float) -> float:
    """Nominal breaking load of blued steel band.

        BL = 85 b t

    Source:
        GDV_CONTAINER 5.2.14.16.

    Args:
        width_mm: b [mm], above 0.
        thickness_mm: t [mm], above 0.

    Returns:
        Breaking load [daN].

    Raises:
        OutOfRangeError: If a number is none above 0.

    Example:
        >>> band_breaking_dan(32.0, 1.6)
        4352.0
    """
    required_positive("width of the band", width_mm, "GDV_CONTAINER")
    required_positive("thickness of the band", thickness_mm, "GDV_CONTAINER")
    return BAND_DAN_MM2 * width_mm * thickness_mm


def band_msl_dan(width_mm: float, thickness_mm: float) -> float:
    """What a steel band may be reckoned with, used once.

        MSL = 0.7 BL

    Source:
        GDV_CONTAINER 5.2.14.16, CSS_ANNEX_13_FORCES section 4.

    Args:
        width_mm: b [mm], above 0.
        thickness_mm: t [mm], above 0.

    Returns:
        MSL [daN].

    Raises:
        OutOfRangeError: If a number is none above 0.

    Example:
        >>> round(band_msl_dan(32.0, 1.6), 1)
        3046.4
    """
    return BAND_MSL_SHARE * band_breaking_dan(width_mm, thickness_mm)


def lashing_point_dan(gross_mass_t: float) -> float:
    """Least strength of a lashing point on a goods vehicle without a plate of its own.

        800 daN to 7.5 t, 1000 daN to 12 t, 2000 daN above

    Source:
        EN_12640; containers and vans are not covered.

    Args:
        gross_mass_t: permitted gross mass of the vehicle [t], above 3.5.

    Returns:
        What one point carries [daN].

    Raises:
        OutOfRangeError: For a van, which the standard does not cover.

    Example:
        >>> lashing_point_dan(7.6)
        1000.0
    """
    if not SMALLEST_T < gross_mass_t < float("inf"):
        raise OutOfRangeError("gross mass of the vehicle", gross_mass_t, "above 3.5 t; a van's points by its own book",
                              "EN_12640")

    return next(dan for up_to, dan in LASHING_POINTS_DAN if gross_mass_t <= up_to)
