"""The pallet or skid under a load: its rating by how the load stands, bearers and floor under it, and lifting it."""

from enum import Enum

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError, required_not_negative, required_positive

SOURCE = "UIC_435_2"


class Bearing(Enum):
    """How a load stands on a pallet."""

    FEET = "on feet, anywhere on the deck"
    EVEN = "spread evenly"
    COMPACT = "compact over the whole deck"


class Route(Enum):
    """Where a strap round load and pallet passes."""

    UNDER_WHOLE_PALLET = "under the whole pallet"
    THROUGH_PALLET = "through the pallet, under some of its boards"


EUR_KG = {Bearing.FEET: 1000.0, Bearing.EVEN: 1500.0, Bearing.COMPACT: 2000.0}


def eur_pallet_kg(bearing: Bearing) -> float:
    """What a sound European flat pallet carries, by how the load stands.

        1000 kg on feet, 1500 spread evenly, 2000 compact

    Source:
        UIC_435_2. An engine on its feet is the first of them.

    Args:
        bearing: how the load stands.

    Returns:
        Mass [kg].

    Example:
        >>> eur_pallet_kg(Bearing.FEET)
        1000.0
    """
    return EUR_KG[bearing]


def pallet_kg(marked_kg: float, marked_for: Bearing, bearing: Bearing) -> float:
    """What another pallet or skid carries by its own mark.

        as marked, for that way of standing and every kinder one

    Source:
        PLATE. A mark for an even load says nothing about feet.

    Args:
        marked_kg: as marked [kg], above 0.
        marked_for: the way of standing that the mark is for.
        bearing: how the load stands.

    Returns:
        Mass [kg].

    Raises:
        OutOfRangeError: If the load stands on less than the mark is for.

    Example:
        >>> pallet_kg(1200.0, Bearing.FEET, Bearing.EVEN)
        1200.0
    """
    required_positive("rating marked on the pallet", marked_kg, "PLATE")
    order = list(Bearing)
    if order.index(bearing) < order.index(marked_for):
        raise OutOfRangeError("how the load stands on the pallet", bearing.value,
                              f"{marked_for.value}, as it is rated; or a spreader under the feet", "PLATE")

    return marked_kg


def strap_on_pallet_dan(route: Route, strap_dan: float, board_dan: float | None) -> float:
    """What a strap round load and pallet may pull with.

        strap, under the whole pallet;  least of strap and boards, through it

    Source:
        STATICS_LASHING; that it goes under the whole pallet is common practice, no source.

    Args:
        route: where it passes.
        strap_dan: what the strap carries [daN], above 0.
        board_dan: what the boards it bears on carry [daN]; None where nobody knows.

    Returns:
        Force [daN].

    Raises:
        OutOfRangeError: Through the pallet, where nobody knows what its boards carry.

    Example:
        >>> strap_on_pallet_dan(Route.UNDER_WHOLE_PALLET, 1000.0, None)
        1000.0
    """
    required_positive("what the strap carries", strap_dan, "STATICS_LASHING")
    if route is Route.UNDER_WHOLE_PALLET:
        return strap_dan
    if board_dan is None:
        raise OutOfRangeError("strap on the pallet", route.value, "under the whole pallet, or through known boards",
                              "STATICS_LASHING")
    required_positive("what the boards carry", board_dan, "STATICS_LASHING")

    return min(strap_dan, board_dan)


def floor_line_load_kg_m(mass_kg: float, bearers: int, bearer_m: float) -> float:
    """Load on the floor along each bearer, to be held against what the floor's plate allows.

        m / (n L)

    Source:
        STATICS_LASHING.

    Args:
        mass_kg: m, of load and pallet [kg], above 0.
        bearers: n, how many bear.
        bearer_m: L, length that bears of each [m], above 0.

    Returns:
        Line load [kg/m].

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> floor_line_load_kg_m(1200.0, 2, 1.2)
        500.0
    """
    required_positive("mass on the bearers", mass_kg, "STATICS_LASHING")
    required_positive("length that bears", bearer_m, "STATICS_LASHING")
    if bearers < 1:
        raise OutOfRangeError("bearers", bearers, "1 or more", "STATICS_LASHING")

    return mass_kg / (bearers * bearer_m)


def uneven_bearing(off_along_m: float, along_m: float, off_across_m: float, across_m: float) -> float:
    """By how much more than evenly what a load stands on bears at the edge that its centre of gravity is nearer to.

        1 + 6 e / l + 6 f / w

    Source:
        STATICS_LASHING: pressure under a stiff plate; under separate bearers the edge gets no more.

    Args:
        off_along_m: e, centre of gravity out of the middle, along [m], 0 or more.
        along_m: l, what bears, along [m], above 0.
        off_across_m: f, out of the middle, across [m], 0 or more.
        across_m: w, what bears, across [m], above 0.

    Returns:
        Highest share / even share [-].

    Raises:
        OutOfRangeError: If a number is none, or so far out that the other edge lifts.

    Example:
        >>> round(uneven_bearing(0.0, 1.2, 0.05, 0.8), 3)
        1.375
    """
    required_positive("length that bears", along_m, "STATICS_LASHING")
    required_positive("width that bears", across_m, "STATICS_LASHING")
    required_not_negative("centre of gravity out of the middle, along", off_along_m, "STATICS_LASHING")
    required_not_negative("centre of gravity out of the middle, across", off_across_m, "STATICS_LASHING")
    more = 6.0 * off_along_m / along_m + 6.0 * off_across_m / across_m
    if not more <= 1.0:
        raise OutOfRangeError("centre of gravity out of the middle", off_along_m + off_across_m,
                              "within a sixth of what bears: beyond it the other edge lifts", "STATICS_LASHING")

    return 1.0 + more


def bearer_bending_mpa(force_kn: float, free_m: float, width_mm: float, height_mm: float) -> float:
    """Bending stress of a bearer under a foot in the middle between two supports.

        σ = (F L / 4) / (b h² / 6)

    Source:
        STATICS_LASHING: the full section; what the timber allows is entered with its grade.

    Args:
        force_kn: F, under one foot [kN], above 0.
        free_m: L, between supports [m], 0 or more.
        width_mm: b [mm], above 0.
        height_mm: h, as it lies [mm], above 0.

    Returns:
        σ [MPa].

    Raises:
        OutOfRangeError: If a number is outside.

    Example:
        >>> round(bearer_bending_mpa(3.0, 0.8, 100.0, 100.0), 2)
        3.6
    """
    required_positive("force under a foot", force_kn, "STATICS_LASHING")
    required_not_negative("length between supports", free_m, "STATICS_LASHING")
    moment_nmm = force_kn * 1000.0 * free_m * 1000.0 / 4.0

    return moment_nmm / (section_modulus_cm3(width_mm, height_mm) * 1000.0)


def section_modulus_cm3(width_mm: float, height_mm: float) -> float:
    """Section modulus of a timber of full section.

        W = b h² / 6

    Source:
        STATICS_LASHING. A handbook that prints 152 cm³ for 10 × 10 cm means a smaller finished size.

    Args:
        width_mm: b [mm], above 0.
        height_mm: h [mm], above 0.

    Returns:
        W [cm³].

    Raises:
        OutOfRangeError: If a number is none above 0.

    Example:
        >>> round(section_modulus_cm3(100.0, 100.0), 1)
        166.7
    """
    required_positive("width of the bearer", width_mm, "STATICS_LASHING")
    required_positive("height of the bearer", height_mm, "STATICS_LASHING")
    return width_mm * height_mm * height_mm / 6.0 / 1000.0


def tilt_on_forks_deg(cg_height_m: float, cg_inside_m: float) -> float:
    """Tilt at which a load goes over on the forks, the truck standing.

        atan(b / d)

    Source:
        STATICS_LASHING; mast, tyres and ground tilt together, and braking counts on top.

    Args:
        cg_height_m: d, centre of gravity above the forks [m], above 0.
        cg_inside_m: b, level from it to the nearest edge that the forks bear, tips and sides [m].

    Returns:
        Tilt [°].

    Raises:
        OutOfRangeError: If the centre of gravity is not over the forks.

    Example:
        >>> round(tilt_on_forks_deg(0.9, 0.25), 1)
        15.5
    """
    required_positive("centre of gravity above the forks", cg_height_m, "STATICS_LASHING")
    if not 0.0 < cg_inside_m < float("inf"):
        raise OutOfRangeError("centre of gravity inside the forks", cg_inside_m, "above 0: between the forks, short of "
                              "their tips", "STATICS_LASHING")

    return exact.atan2_deg(cg_inside_m, cg_height_m)
