"""Chain, webbing and roundslings over edges, soft eyes over what they bear on."""

from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive

SMOOTH_ABOVE, CORNER_ABOVE = 2.0, 1.0  # edge radius in chain diameters
CORNER_FACTOR, SHARP_FACTOR = 0.7, 0.5
LUG_ABOVE_PITCHES, LUG_FACTOR = 3.0, 0.5
CURVED_UP_TO_MM, CURVE_RATIO = 75.0, 0.75
EYE_OPENS_UP_TO_DEG = 20.0
SOFT_EYE_RATIO = 2.0  # EN 13414-1 Table 4, note 1


def chain_edge_factor(edge_radius_mm: float, chain_mm: float) -> float:
    """What an edge without a pad leaves of a chain's WLL.

        R > 2d 1.0, R > d 0.7, R = d 0.5

    Source:
        CHAIN_EDGE_MAKER, stricter than DGUV_109_017 (80 % over a sharp edge) and as strict as ÖNORM (50 %). Below R = d
        the edge is sharp and the table ends.

    Args:
        edge_radius_mm: R, radius of the edge [mm], at least d.
        chain_mm: d, nominal size of the chain [mm], above 0.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: For an edge sharper than the chain is thick: pad it.

    Example:
        >>> chain_edge_factor(21.0, 10.0), chain_edge_factor(20.0, 10.0), chain_edge_factor(10.0, 10.0)
        (1.0, 0.7, 0.5)
    """
    required_positive("nominal size of the chain", chain_mm, "CHAIN_EDGE_MAKER")
    required_not_negative("radius of the edge", edge_radius_mm, "CHAIN_EDGE_MAKER")
    if edge_radius_mm < chain_mm:
        raise OutOfRangeError(
            "radius of the edge under the chain", edge_radius_mm, f"{chain_mm:.4g} mm or more; pad a sharper one",
            "DGUV_109_017",
        )
    if edge_radius_mm > SMOOTH_ABOVE * chain_mm:
        return 1.0

    return CORNER_FACTOR if edge_radius_mm > CORNER_ABOVE * chain_mm else SHARP_FACTOR


def chain_on_lug_factor(lug_mm: float, pitch_mm: float) -> float:
    """What a thin lug or bar leaves of the WLL of a chain laid straight round it.

        diameter > 3 pitches 1.0, else 0.5

    Source:
        CHAIN_EDGE_MAKER.

    Args:
        lug_mm: diameter of the lug [mm], above 0.
        pitch_mm: inner length of a link [mm], above 0.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: If a length is no number above 0.

    Example:
        >>> chain_on_lug_factor(100.0, 30.0), chain_on_lug_factor(90.0, 30.0)
        (1.0, 0.5)
    """
    required_positive("diameter of the lug", lug_mm, "CHAIN_EDGE_MAKER")
    required_positive("pitch of the chain", pitch_mm, "CHAIN_EDGE_MAKER")

    return 1.0 if lug_mm > LUG_ABOVE_PITCHES * pitch_mm else LUG_FACTOR


def textile_edge_factor(edge_radius_mm: float, thickness_mm: float, rough: bool, protected: bool) -> float:
    """A textile sling keeps its WLL over an edge that is rounder than the sling is thick, or protected.

        1, or refused

    Source:
        DGUV_109_017, an edge is sharp when its radius is below the thickness of the webbing; DGUV_209_061, textile
        over sharp edges and rough faces only with protection at every one.

    Args:
        edge_radius_mm: smallest radius that the sling bears on [mm], 0 or more.
        thickness_mm: of the webbing, or of the roundsling pressed flat, under load [mm], above 0.
        rough: whether any face under the sling is rough.
        protected: whether every edge and rough face has a sleeve, a pad or a coating.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: Over an edge or a rough face without protection.

    Example:
        >>> textile_edge_factor(3.0, 8.0, rough=False, protected=True)
        1.0
    """
    required_positive("thickness of the sling", thickness_mm, "DGUV_109_017")
    required_not_negative("radius of the edge", edge_radius_mm, "DGUV_109_017")
    if protected:
        return 1.0
    if rough:
        raise OutOfRangeError("face under the sling", "rough", "with protection at every rough face", "DGUV_209_061")
    if edge_radius_mm < thickness_mm:
        raise OutOfRangeError(
            "radius of the edge under the sling", edge_radius_mm,
            f"{thickness_mm:.4g} mm or more, or protection at every edge", "DGUV_209_061",
        )

    return 1.0


def soft_eye_factor(bearing_mm: float, rope_mm: float) -> float:
    """A soft eye keeps its tabulated WLL over what it bears on, if that is thick enough.

        1 from D/d = 2

    Source:
        EN_13414_1, Table 4, note 1.

    Args:
        bearing_mm: D, diameter of the hook, pin or bow that the eye bears on [mm].
        rope_mm: d, diameter of the rope [mm], above 0.

    Returns:
        Share of the WLL [-].

    Raises:
        OutOfRangeError: Below D/d = 2: a thimble, or something thicker.

    Example:
        >>> soft_eye_factor(32.0, 16.0)
        1.0
    """
    required_positive("diameter of the rope", rope_mm, "EN_13414_1")
    required_positive("diameter under the soft eye", bearing_mm, "EN_13414_1")
    if bearing_mm < SOFT_EYE_RATIO * rope_mm:
        raise OutOfRangeError(
            "diameter under the soft eye", bearing_mm, f"{SOFT_EYE_RATIO * rope_mm:.4g} mm or more, or a thimble",
            "EN_13414_1",
        )

    return 1.0


def webbing_eye_bears(bearing_width_mm: float, radius_mm: float | None) -> bool:
    """Whether the soft eye of a webbing sling lies flat on what it hangs from.

        up to 75 mm wide: straight, or radius ≥ 0.75 × width; wider: straight

    Source:
        EN_1492_1, annex D.

    Args:
        bearing_width_mm: width of the webbing where it bears [mm], above 0.
        radius_mm: radius of the curve across the webbing [mm], above 0; None where it is straight.

    Returns:
        True if it lies flat.

    Raises:
        OutOfRangeError: If a length is no number above 0.

    Example:
        >>> webbing_eye_bears(60.0, 45.0), webbing_eye_bears(90.0, 200.0), webbing_eye_bears(90.0, None)
        (True, False, True)
    """
    required_positive("width of the webbing where it bears", bearing_width_mm, "EN_1492_1")
    if radius_mm is None:
        return True

    required_positive("radius under the eye", radius_mm, "EN_1492_1")
    return bearing_width_mm <= CURVED_UP_TO_MM and radius_mm >= CURVE_RATIO * bearing_width_mm


def webbing_eye_opens_up_to_deg() -> float:
    """How wide the soft eye of a webbing sling may be spread.

        opening angle ≤ 20°

    Source:
        EN_1492_1, annex D.

    Returns:
        Angle of the opening [°].

    Example:
        >>> webbing_eye_opens_up_to_deg()
        20.0
    """
    return EYE_OPENS_UP_TO_DEG
