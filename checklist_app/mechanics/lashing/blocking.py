"""Blocking: headboard, chocks, timber, nails, bags and the walls of a container."""

from math import ceil

from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive

SOURCE = "EN_12195_1"
GIVES_FIRST = 0.75  # friction beside what must give before it holds
BATTEN = 28.0
TIMBER_KN_CM2 = 0.3
NAIL_DAN = 400.0
FEWEST_NAILS = 2  # common practice, no source
SIDE_WALL, END_WALL = 0.6, 0.4
VOID_CM = 15.0


def blocking_needed_dan(
    weight_dan: float, push: float, downward: float, friction: float, rigid_and_tight: bool
) -> float:
    """Force that blocks must take where nothing else holds against sliding.

        FB = (c − μ cz) G;  0.75 μ behind what must give before it holds

    Source:
        EN_12195_1 (full friction behind rigid, tight blocks), CTU_ANNEX_7 Appendix 4 (0.75 μ).

    Args:
        weight_dan: G [daN], above 0.
        push: c [-], 0 or more.
        downward: cz [-], above 0 up to 1.
        friction: μ [-], 0 to 1.
        rigid_and_tight: no gap, no bag, no soft timber.

    Returns:
        FB [daN]; 0 where friction holds it.

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> round(blocking_needed_dan(637.65, 0.8, 1.0, 0.3, rigid_and_tight=True), 1)
        318.8
    """
    required_positive("weight of the load", weight_dan, SOURCE)
    required_not_negative("coefficient of acceleration", push, SOURCE)
    if not 0.0 < downward <= 1.0:
        raise OutOfRangeError("share of the weight that remains", downward, "above 0, 1 at most", SOURCE)
    if not 0.0 <= friction <= 1.0:
        raise OutOfRangeError("friction", friction, "0 to 1", SOURCE)
    counted = friction if rigid_and_tight else GIVES_FIRST * friction

    return max(0.0, (push - counted * downward) * weight_dan)


def bag_tipping_kn(
    mass_t: float, g_m_s2: float, push: float, downward: float, base_m: float, height_m: float
) -> float:
    """Force on a bag or pad that pushes at the height of the centre of gravity, against tipping.

        F = m g (c − (b / h) cz)

    Source:
        CTU_ANNEX_7 Appendix 4; pushing lower down it needs more.

    Args:
        mass_t: m [t], above 0.
        g_m_s2: g of the rule set [m/s²], above 0.
        push: c [-], 0 or more.
        downward: cz [-], above 0 up to 1.
        base_m: width of the load [m], above 0.
        height_m: height of the load [m], above 0.

    Returns:
        F [kN]; 0 where it stands.

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> round(bag_tipping_kn(0.9, 9.81, 0.8, 1.0, 0.8, 1.6), 2)
        2.65
    """
    for name, value in (("mass of the load", mass_t), ("gravity", g_m_s2), ("width of the load", base_m),
                        ("height of the load", height_m)):
        required_positive(name, value, "CTU_ANNEX_7")
    required_not_negative("coefficient of acceleration", push, "CTU_ANNEX_7")
    if not 0.0 < downward <= 1.0:
        raise OutOfRangeError("share of the weight that remains", downward, "above 0, 1 at most", "CTU_ANNEX_7")

    return max(0.0, mass_t * g_m_s2 * (push - base_m / height_m * downward))


def battens_kn(number: int, width_cm: float, height_cm: float, free_m: float) -> float:
    """What timber battens across a container hold.

        F = n w² h / (28 L)

    Source:
        CTU_ANNEX_7 Appendix 4.

    Args:
        number: n, how many.
        width_cm: w, of the timber along the force [cm], above 0.
        height_cm: h, of the timber [cm], above 0.
        free_m: L, free length [m], above 0.

    Returns:
        F [kN].

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> round(battens_kn(6, 5.0, 10.0, 2.2), 2)
        24.35
    """
    if number < 1:
        raise OutOfRangeError("number of battens", number, "1 or more", "CTU_ANNEX_7")
    for name, value in (("width of a batten", width_cm), ("height of a batten", height_cm),
                        ("free length of a batten", free_m)):
        required_positive(name, value, "CTU_ANNEX_7")

    return number * width_cm * width_cm * height_cm / (BATTEN * free_m)


def timber_contact_kn(area_cm2: float) -> float:
    """What timber takes square to its grain.

        MSL = 0.3 kN/cm² × area

    Source:
        CSS_ANNEX_13_FORCES section 4.

    Args:
        area_cm2: where it bears [cm²], above 0.

    Returns:
        MSL [kN].

    Raises:
        OutOfRangeError: If the area is no number above 0.

    Example:
        >>> timber_contact_kn(100.0)
        30.0
    """
    required_positive("area of the timber", area_cm2, "CSS_ANNEX_13_FORCES")
    return TIMBER_KN_CM2 * area_cm2


def nails_needed(force_dan: float, wet: bool, along_grain: bool) -> int:
    """How many 5 mm nails hold a chock of 50 mm timber, 40 mm in the base, square to the force.

    Source:
        GDV_CONTAINER 4.3.8: 400 daN each, half of it in wet wood, half along the grain. Two at least: common practice.

    Args:
        force_dan: what the chock must hold [daN], 0 or more.
        wet: whether the wood is wet.
        along_grain: whether they are driven along the grain.

    Returns:
        How many; a container's floor of 25 to 30 mm is too thin for nails.

    Raises:
        OutOfRangeError: If the force is no number of 0 or more.

    Example:
        >>> nails_needed(318.8, wet=True, along_grain=False)
        2
    """
    required_not_negative("force on a chock", force_dan, "GDV_CONTAINER")
    return max(FEWEST_NAILS, ceil(force_dan / nail_dan(wet, along_grain)))


def nail_dan(wet: bool, along_grain: bool) -> float:
    """What one 5 mm nail holds.

        400, halved if wet, halved along the grain

    Source:
        GDV_CONTAINER 4.3.8.

    Args:
        wet: whether the wood is wet.
        along_grain: whether it is driven along the grain.

    Returns:
        Force [daN].

    Example:
        >>> nail_dan(wet=True, along_grain=True)
        100.0
    """
    return NAIL_DAN * (0.5 if wet else 1.0) * (0.5 if along_grain else 1.0)


def wall_kn(payload_kn: float, side_wall: bool) -> float:
    """What a wall of a container takes over its whole face.

        0.6 payload at the side, 0.4 at the end

    Source:
        GDV_CONTAINER 5.2.14.20; the end wall's 0.4 is the smaller one.

    Args:
        payload_kn: weight of the permitted payload [kN], above 0.
        side_wall: side, or end.

    Returns:
        Force [kN].

    Raises:
        OutOfRangeError: If the payload is no number above 0.

    Example:
        >>> wall_kn(200.0, side_wall=True)
        120.0
    """
    required_positive("weight of the permitted payload", payload_kn, "GDV_CONTAINER")
    return (SIDE_WALL if side_wall else END_WALL) * payload_kn


def voids_are_filled(gaps_cm: tuple[float, ...]) -> bool:
    """Whether the gaps in one level direction are small enough to be left.

    Source:
        CTU_ANNEX_7: 15 cm in all.

    Args:
        gaps_cm: every gap from wall to wall [cm], 0 or more.

    Returns:
        True if they sum up to 15 cm or less.

    Raises:
        OutOfRangeError: If a gap is no number of 0 or more.

    Example:
        >>> voids_are_filled((5.0, 10.0)), voids_are_filled((5.0, 10.5))
        (True, False)
    """
    total_cm = 0.0
    for gap_cm in gaps_cm:
        required_not_negative("gap beside the load", gap_cm, "CTU_ANNEX_7")
        total_cm += gap_cm
    return total_cm <= VOID_CM

