"""Shown loads put together by hand, for the drawing alone: no number of them is worked out."""

from checklist_app.mechanics.lashing.direct import Kind
from checklist_app.mechanics.lashing.transport import Direction
from checklist_app.mechanics.vectors import Vec
from checklist_app.operations.check import AtLimit, Check, Clause, Outcome, Strength
from checklist_app.operations.graph import Stopped
from checklist_app.operations.lashing.lashing_bars import bars
from checklist_app.operations.lashing.shown import Deck, Shown, Stop, Tied

SIZE, BASE, PALLET = Vec(1.6, 0.8, 1.25), (1.3, 0.66), Vec(1.8, 1.0, 0.14)
LOW = -PALLET.z


def diagonal(label: str, x: float, y: float, pull_dan: float | None = 640.0, share: float = 0.66) -> Tied:
    """From a corner of the load, at x and y, outwards to the deck."""
    at = Vec(0.75 * x, 0.38 * y, 0.9)
    used = f"{100.0 * share:.0f} %" if pull_dan is not None else ""
    return Tied(label, ((at, Vec(1.5 * x, 1.0 * y, LOW)),), Kind.DIAGONAL, pull_dan, share, used, False, label)


def tie_down(label: str, x: float, pull_dan: float | None = 350.0, share: float = 0.14) -> Tied:
    """Over the top at x, to both sides."""
    ends = tuple((Vec(x, 0.4 * side, 1.25), Vec(x, 1.0 * side, LOW)) for side in (1.0, -1.0))
    used = f"{100.0 * share:.0f} %" if pull_dan is not None else ""
    return Tied(label, ends, Kind.TIE_DOWN, pull_dan, share, used, False, label)


def mirrored(tied: Tied) -> Tied:
    """The same on the other side."""
    ends = tuple((at._replace(y=-at.y), anchor._replace(y=-anchor.y)) for at, anchor in tied.ends)
    return tied._replace(ends=ends)


def check(quantity: str, way: Direction, stated: Outcome | Stopped, worst: Outcome | Stopped) -> Check:
    at_limit = AtLimit.REFUSED if "tipping" in quantity else AtLimit.ALLOWED
    clause = Clause(quantity.replace("_", " "), "daN", "STATICS_LASHED_BODY", at_limit=at_limit)
    return Check(f"{quantity}[{way.value}]", quantity, way.value, clause, stated, worst)


def checks(*, on_deck: bool = False, least: float = 1.02) -> tuple[Check, ...]:
    """All of them, each a little better than the one before."""
    found, times = [], least
    for quantity in ("tipping", "sliding", *(("deck_tipping", "deck_sliding") if on_deck else ())):
        for way, need in ((Direction.FORWARD, 924.0), (Direction.RIGHT, 578.0), (Direction.LEFT, 578.0),
                          (Direction.REAR, 578.0)):
            found.append(check(quantity, way, Strength(need, need * times * 1.08), Strength(need, need * times)))
            times = times * 1.13
    return tuple(found)


CORNERS = ((1.0, 1.0), (1.0, -1.0), (-1.0, 1.0), (-1.0, -1.0))
FOUR = tuple(diagonal(str(n + 1), x, y) for n, (x, y) in enumerate(CORNERS))
EIGHT = (*FOUR, *(tie_down(str(n + 5), x, 350.0 + 10.0 * n) for n, x in enumerate((-0.55, -0.2, 0.2, 0.55))))
UNLIKE = tuple(each._replace(pull_dan=300.0 + 71.0 * n, share=0.31 + 0.07 * n, used=f"{31 + 7 * n} %")
               for n, each in enumerate(EIGHT))
CG, RANGE = Vec(0.08, 0.02, 0.82), (Vec(-0.02, -0.08, 0.72), Vec(0.18, 0.12, 0.92))
PLAIN = Shown(SIZE, BASE, 0.02, True, PALLET, None, CG, RANGE, (), (), bars(checks()))
LONG_AT = (-2.2, -1.6, -1.0, -0.4, 0.4, 1.0, 1.6, 2.2)
LORRY = Deck(4.2, 6.2, 2.45)
CASES = {
    "nothing lashed": PLAIN,
    "one": PLAIN._replace(tied=FOUR[:1]),
    "four": PLAIN._replace(tied=FOUR, deck=LORRY, bars=bars(checks(on_deck=True))),
    "four, far back": PLAIN._replace(tied=FOUR, deck=Deck(1.9, 13.6, 2.48), bars=bars(checks(least=0.9))),
    "eight alike": PLAIN._replace(tied=EIGHT, deck=LORRY),
    "eight unlike": PLAIN._replace(tied=(*UNLIKE[:-1], UNLIKE[-1]._replace(governs=True)), deck=LORRY, stops=(
        Stop("headboard", Vec(0.8, 0.0, 0.4), Direction.FORWARD, 2000.0),
        Stop("chock or timber", Vec(0.0, -0.4, 0.05), Direction.RIGHT, 400.0))),
    "numbers to come": PLAIN._replace(tied=tuple(each._replace(pull_dan=None, share=0.0, used="") for each in FOUR),
                                      bars=(), cg=None, cg_range=None),
    "box alone": Shown(SIZE),
    "tall": Shown(Vec(0.5, 0.45, 1.9), (0.4, 0.4), 0.0, False, Vec(0.8, 0.6, 0.12), None, Vec(0.0, 0.0, 1.1),
                   (Vec(-0.05, -0.05, 1.0), Vec(0.05, 0.05, 1.2)), (
                       Tied("1", ((Vec(0.0, 0.22, 1.9), Vec(0.0, 0.3, -0.06)), (Vec(0.0, -0.22, 1.9),
                            Vec(0.0, -0.3, -0.06))), Kind.TIE_DOWN, 350.0, 0.14, "14 %", False, "1"),), (),
                   bars(checks(least=0.55))),
    "long": Shown(Vec(5.0, 1.6, 1.7), (4.4, 1.0), 0.0, False, None, LORRY, Vec(0.4, 0.0, 0.9), None, tuple(
        Tied(str(n + 1), tuple((Vec(x, 0.8 * s, 1.4), Vec(x, 1.2 * s, 0.0)) for s in (1.0, -1.0)), Kind.TIE_DOWN,
             400.0, 0.16, "16 %", False, str(n + 1)) for n, x in enumerate(LONG_AT)), (), bars(checks(on_deck=True))),
    "sixteen with names": PLAIN._replace(deck=LORRY, tied=tuple(
        tie_down(f"strap over the top {n}", -0.75 + 0.1 * n, 301.0 + n, 0.12 + 0.01 * n)._replace(number=str(n + 1))
        for n in range(16))),
    "loop and spring": PLAIN._replace(deck=LORRY, tied=(
        Tied("1", ((Vec(-0.8, 0.0, 0.5), Vec(-0.9, 1.1, LOW)), (Vec(0.8, 0.0, 0.5), Vec(0.9, 1.1, LOW))), Kind.LOOP,
             500.0, 0.4, "40 %", False, "1"),
        Tied("2", ((Vec(0.8, 0.4, 0.9), Vec(-0.6, 1.1, LOW)), (Vec(0.8, -0.4, 0.9), Vec(-0.6, -1.1, LOW))),
             Kind.SPRING, 700.0, 1.04, "104 %", True, "2"))),
}
