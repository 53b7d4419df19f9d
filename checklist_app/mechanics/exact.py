"""sin, cos, atan2 and exp from + − × / and the square root alone: the same bits on every machine.

The C libraries of different machines differ in the last bits of these functions. IEEE 754 fixes the four operations
and the square root, so what is made of these alone does not differ.

Source:
    SUN_FDLIBM; the polynomials and their constants, for the arguments that statics needs (|x| ≤ 1e5).
"""

from math import isfinite
from math import sqrt as _root

from checklist_app.mechanics.errors import OutOfRangeError

RAD_IN_DEG = 57.29577951308232
PI, PI_LOW = 3.141592653589793, 1.2246467991473532e-16
TWO_OVER_PI = 0.6366197723675814
LARGEST_ANGLE = 1e5
# π/2 in pieces of 33 bits, so that a whole number of them is taken away without rounding
HALF_PI_PARTS = (1.57079632673412561417e00, 6.07710050630396597660e-11, 2.02226624871116645580e-21)
HALF_PI_REST = 8.47842766036889956997e-32
SIN_TERMS = (
    -1.66666666666666324348e-01, 8.33333333332248946124e-03, -1.98412698298579493134e-04,
    2.75573137070700676789e-06, -2.50507602534068634195e-08, 1.58969099521155010221e-10,
)
COS_TERMS = (
    4.16666666666666019037e-02, -1.38888888888741095749e-03, 2.48015872894767294178e-05,
    -2.75573143513906633035e-07, 2.08757232129817482790e-09, -1.13596475577881948265e-11,
)
ATAN_TERMS = (
    3.33333333333329318027e-01, -1.99999999998764832476e-01, 1.42857142725034663711e-01,
    -1.11111104054623557880e-01, 9.09088713343650656196e-02, -7.69187620504482999495e-02,
    6.66107313738753120669e-02, -5.83357013379057348645e-02, 4.97687799461593236017e-02,
    -3.65315727442169155270e-02, 1.62858201153657823623e-02,
)
# atan of 1/2, 1, 3/2 and of infinity, each with what its double leaves out
ATAN_MARKS = (
    (4.63647609000806093515e-01, 2.26987774529616870924e-17), (7.85398163397448278999e-01, 3.06161699786838301793e-17),
    (9.82793723247329054082e-01, 1.39033110312309984516e-17), (1.57079632679489655800e00, 6.12323399573676603587e-17),
)
LN2_HIGH, LN2_LOW, ONE_OVER_LN2 = 6.93147180369123816490e-01, 1.90821492927058770002e-10, 1.44269504088896338700
EXP_TERMS = (
    1.66666666666666019037e-01, -2.77777777770155933842e-03, 6.61375632143793436117e-05,
    -1.65339022054652515390e-06, 4.13813679705723846039e-08,
)
EXP_RANGE = 700.0


def sqrt(x: float) -> float:
    """Square root; a number that remembers its working keeps it.

    Example:
        >>> sqrt(2.25)
        1.5
    """
    return _told("√", _root(x), x)


def let(name: str, value: float) -> float:
    """An intermediate result that deserves a line of its own in the working; otherwise just the value."""
    remember = getattr(value, "let", None)
    if remember is None:
        return value

    told: float = remember(name)
    return told


def least(a: float, b: float) -> float:
    """The smaller of two numbers; where one is no number, neither is the result.

    Example:
        >>> least(2.0, 1.5), least(float("nan"), 1.0), least(1.0, float("nan"))
        (1.5, nan, nan)
    """
    if a <= b:
        return a

    return b if b < a else a + b


def sin(x: float) -> float:
    """Sine of an angle [rad].

    Example:
        >>> sin(0.5)
        0.479425538604203
    """
    quarter, rest, tail = _within_an_eighth(float(x))
    return _told("sin", (_sine, _cosine)[quarter & 1](rest, tail) * (-1.0 if quarter & 2 else 1.0), x)


def cos(x: float) -> float:
    """Cosine of an angle [rad].

    Example:
        >>> cos(0.5)
        0.8775825618903728
    """
    quarter, rest, tail = _within_an_eighth(float(x))
    return _told("cos", (_cosine, _sine)[quarter & 1](rest, tail) * (-1.0 if quarter in (1, 2) else 1.0), x)


def atan2(y: float, x: float) -> float:
    """Angle [rad] of the direction (x, y), from −π to π.

    Example:
        >>> atan2(1.0, 1.0)
        0.7853981633974483
    """
    return _told("atan2_rad", _angle(float(y), float(x)), y, x)


def atan2_deg(y: float, x: float) -> float:
    """Angle [°] of the direction (x, y), from −180 to 180.

    Example:
        >>> atan2_deg(1.0, -1.0)
        135.0
    """
    return _told("atan2", _angle(float(y), float(x)) * RAD_IN_DEG, y, x)


def exp(x: float) -> float:
    """e to the power x, for |x| up to 700.

    Example:
        >>> exp(1.0)
        2.7182818284590455
    """
    number = float(x)
    if not abs(number) <= EXP_RANGE:
        raise OutOfRangeError("exponent", number, f"−{EXP_RANGE:.0f} to {EXP_RANGE:.0f}", "SUN_FDLIBM")

    twos = round(number * ONE_OVER_LN2)
    high, low = number - twos * LN2_HIGH, twos * LN2_LOW
    rest = high - low
    square = rest * rest
    even = rest - square * _series(EXP_TERMS, square)
    return _told("exp", _scaled(1.0 - ((low - (rest * even) / (2.0 - even)) - high), twos), x)


def _told(name: str, value: float, *arguments: float) -> float:
    for argument in arguments:
        tell = getattr(argument, "told", None)
        if tell is not None:
            told: float = tell(name, value, *arguments)
            return told
    return value


def _series(terms: tuple[float, ...], z: float) -> float:
    value = terms[-1]
    for term in terms[-2::-1]:
        value = term + z * value
    return value


def _scaled(value: float, twos: int) -> float:
    step = 2.0 if twos > 0 else 0.5
    for _ in range(abs(twos)):
        value *= step
    return value


def _within_an_eighth(x: float) -> tuple[int, float, float]:
    """Whole quarter turns taken out, and the rest (at most an eighth of a turn) in two pieces."""
    if not abs(x) <= LARGEST_ANGLE:
        raise OutOfRangeError("angle", x, f"−{LARGEST_ANGLE:.0f} to {LARGEST_ANGLE:.0f} rad", "SUN_FDLIBM")

    quarters = float(round(x * TWO_OVER_PI))
    first, second, third = (quarters * part for part in HALF_PI_PARTS)
    high, lost = _difference(x, first)
    high, more = _difference(high, second)
    high, last = _difference(high, third)
    low = lost + more + last - quarters * HALF_PI_REST
    rest = high + low
    return int(quarters) & 3, rest, (high - rest) + low


def _difference(a: float, b: float) -> tuple[float, float]:
    """a − b, and what rounding it lost."""
    c = a - b
    back = c - a
    return c, (a - (c - back)) - (b + back)


def _sine(x: float, tail: float) -> float:
    z = x * x
    cube = z * x
    series = _series(SIN_TERMS[1:], z)
    return x - ((z * (0.5 * tail - cube * series) - tail) - cube * SIN_TERMS[0])


def _cosine(x: float, tail: float) -> float:
    z = x * x
    half = 0.5 * z
    most = 1.0 - half
    return most + (((1.0 - most) - half) + (z * (z * _series(COS_TERMS, z)) - x * tail))


def _angle(y: float, x: float) -> float:
    if not (isfinite(x) and isfinite(y)):
        raise OutOfRangeError("direction", (x, y), "two finite numbers", "SUN_FDLIBM")
    if y == 0.0:
        return 0.0 if x >= 0.0 else PI
    if x == 0.0:
        return PI / 2.0 if y > 0.0 else -PI / 2.0

    steep = _arc(abs(y) / abs(x)) if abs(x) * 1e300 > abs(y) else PI / 2.0
    turned = steep if x > 0.0 else PI - (steep - PI_LOW)
    return turned if y > 0.0 else -turned


def _arc(x: float) -> float:
    """atan of x ≥ 0, measured from the nearest of four marks."""
    if x < 0.4375:
        return x - _arc_correction(x)
    if x < 0.6875:
        mark, rest = 0, (2.0 * x - 1.0) / (2.0 + x)
    elif x < 1.1875:
        mark, rest = 1, (x - 1.0) / (x + 1.0)
    elif x < 2.4375:
        mark, rest = 2, (x - 1.5) / (1.0 + 1.5 * x)
    else:
        mark, rest = 3, -1.0 / x

    high, low = ATAN_MARKS[mark]
    return high - ((_arc_correction(rest) - low) - rest)


def _arc_correction(x: float) -> float:
    z = x * x
    w = z * z
    return x * (z * _series(ATAN_TERMS[0::2], w) + w * _series(ATAN_TERMS[1::2], w))
