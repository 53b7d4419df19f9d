"""The rules a load is lashed by, each with the edition that was really seen; chosen by the route, never assumed."""

from dataclasses import dataclass
from enum import Enum

from checklist_app.mechanics.errors import OutOfRangeError
from checklist_app.mechanics.gravity import STANDARD_GRAVITY_M_S2

PRINTED_G_M_S2 = 9.81
DIRECT_FRICTION_SHARE = 0.75  # EN 12195-1 and CTU Code: friction beside direct lashings
FS_FORWARD, FS_OTHER = 1.25, 1.1  # EN 12195-1, tie-downs: forwards on the road, every other way
MOMENT_SHARE = 0.9  # CSS_ANNEX_13_MORE: from memory, takes away
LIFT_OFF_SHARE = 0.2  # NTC 2018 and 49 CFR 393.102(b)


class RuleSet(Enum):
    """Whose figures are applied; always named and printed in the record."""

    EN = "EN 12195-1:2010"
    CTU = "CTU Code 2014"
    CSS = "CSS Code, Annex 13, advanced calculation"
    US = "49 CFR 393"
    NTC = "NTC Load Restraint Guide 2018"
    UK = "UK profile, 1.0 g forwards"


@dataclass(frozen=True)
class Rules:
    """What a rule set prints beside its accelerations.

    `fs_forward` and `fs_other` divide the tension of tie-downs and nothing else; `direct_friction_share` times the
    friction counts beside direct lashings, `moment_share` of their rating against tipping; `lift_off_share` of the
    weight must be held down.
    """

    edition_read: str
    source: str
    g_m_s2: float
    fs_forward: float
    fs_other: float
    direct_friction_share: float
    tie_downs_count: bool
    lift_off_share: float | None
    at_sea: bool
    moment_share: float = 1.0


RULES = {
    RuleSet.EN: Rules(
        "2010, its balances as restated in the GDV load securing handbook; the standard's own text was not read",
        "EN_12195_1", PRINTED_G_M_S2, FS_FORWARD, FS_OTHER, DIRECT_FRICTION_SHARE, True, None, True,
    ),
    RuleSet.CTU: Rules(
        "2014, Annex 7 and MSC.1/Circ.1498; table of chapter 5 from memory, the larger value of EN 12195-1 where they "
        "differ", "CTU_ANNEX_7", PRINTED_G_M_S2, FS_FORWARD, FS_OTHER, DIRECT_FRICTION_SHARE, True, None, True,
    ),
    RuleSet.CSS: Rules(
        "Annex 13 in the text of 1996 to 2002; the text of 2020 was not read", "CSS_ANNEX_13_FORCES", PRINTED_G_M_S2,
        1.0, 1.0, 1.0, False, None, True, MOMENT_SHARE,
    ),
    RuleSet.US: Rules(
        "49 CFR 393.100 to 393.114 as codified", "CFR_393", STANDARD_GRAVITY_M_S2, 1.0, 1.0, 1.0, True, LIFT_OFF_SHARE,
        False,
    ),
    RuleSet.NTC: Rules(
        "2018, as quoted; its tables and examples were not read", "NTC_2018", PRINTED_G_M_S2, 1.0, 1.0, 1.0, True,
        LIFT_OFF_SHARE, False,
    ),
    RuleSet.UK: Rules(
        "code of practice of 2002 from memory; safety factors and reduced friction kept from EN 12195-1:2010",
        "UK_1_G", PRINTED_G_M_S2, FS_FORWARD, FS_OTHER, DIRECT_FRICTION_SHARE, True, None, False,
    ),
}


def weight_dan(rule_set: RuleSet, mass_kg: float) -> float:
    """Weight of the load by the g that the rule set prints.

        G = m g / 10

    Source:
        EN_12195_1, CTU_ANNEX_7, CSS_ANNEX_13_FORCES, NTC_2018 (9.81 m/s²); CFR_393 compares pounds with pounds, which
        are so by BIPM_SI_BROCHURE.

    Args:
        rule_set: whose g.
        mass_kg: m, mass of the load [kg], above 0.

    Returns:
        G, weight of the load [daN].

    Raises:
        OutOfRangeError: If the mass is no number above 0 up to 200 t.

    Example:
        >>> weight_dan(RuleSet.EN, 1000.0)
        981.0
    """
    if not 0.0 < mass_kg <= HEAVIEST_KG:
        raise OutOfRangeError("mass of the load", mass_kg, "above 0, 200 000 kg at most", RULES[rule_set].source)

    return mass_kg * RULES[rule_set].g_m_s2 / N_IN_DAN


HEAVIEST_KG = 200_000.0
N_IN_DAN = 10.0
