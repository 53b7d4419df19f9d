"""sin, cos, atan2, exp against arbitrary precision (mpmath), and what they refuse."""

import math
import random

import mpmath
import pytest

from checklist_app.mechanics import exact
from checklist_app.mechanics.errors import OutOfRangeError

mpmath.mp.prec = 200
RANDOM = random.Random(1993)
ANGLES = [
    *(RANDOM.uniform(-7.0, 7.0) for _ in range(400)),
    *(RANDOM.uniform(-1e5, 1e5) for _ in range(200)),
    *(RANDOM.uniform(-1e-4, 1e-4) for _ in range(100)),
    *(n * math.pi / 2 for n in range(-60, 60)),
    0.0, 1e5, -1e5,
]


def units_off(value: float, true: mpmath.mpf) -> float:
    return float(abs(mpmath.mpf(value) - true)) / math.ulp(float(true))


@pytest.mark.parametrize("name", ["sin", "cos"])
def test_sine_and_cosine_are_within_one_unit_of_the_last_place(name: str) -> None:
    ours, true = getattr(exact, name), getattr(mpmath, name)
    assert max(units_off(ours(x), true(mpmath.mpf(x))) for x in ANGLES) < 1.0


def test_the_direction_angle_is_within_two_units_of_the_last_place() -> None:
    for _ in range(2000):
        y, x = (RANDOM.uniform(-5.0, 5.0) * 10.0 ** RANDOM.uniform(-9.0, 9.0) for _ in "yx")
        assert units_off(exact.atan2(y, x), mpmath.atan2(mpmath.mpf(y), mpmath.mpf(x))) < 2.0


def test_the_exponential_is_within_one_unit_of_the_last_place() -> None:
    for x in [*(RANDOM.uniform(-700.0, 700.0) for _ in range(500)), 0.0, 1.0, 700.0, -700.0]:
        assert units_off(exact.exp(x), mpmath.exp(mpmath.mpf(x))) < 1.0


@pytest.mark.parametrize("y, x, degrees", [
    (0.0, 1.0, 0.0), (0.0, 0.0, 0.0), (0.0, -1.0, 180.0), (1.0, 0.0, 90.0), (-1.0, 0.0, -90.0), (1.0, 1.0, 45.0),
    (1.0, -1.0, 135.0), (-1.0, -1.0, -135.0), (1e300, 1e-300, 90.0), (-1e300, 1e-300, -90.0),
])
def test_directions_along_the_axes_and_diagonals(y: float, x: float, degrees: float) -> None:
    assert exact.atan2_deg(y, x) == degrees


@pytest.mark.parametrize("call, words", [
    (lambda: exact.sin(math.nan), "angle is nan"), (lambda: exact.cos(1e6), "angle is 1e"),
    (lambda: exact.exp(701.0), "exponent is 701"), (lambda: exact.exp(math.nan), "exponent is nan"),
    (lambda: exact.atan2(math.inf, 1.0), "direction"), (lambda: exact.atan2_deg(1.0, math.nan), "direction"),
])
def test_what_has_no_answer_is_refused(call: object, words: str) -> None:
    with pytest.raises(OutOfRangeError, match=words):
        call()  # type: ignore[operator]


class Remembering(float):
    """A number that keeps how it was made, as the working does."""

    def told(self, name: str, value: float, *arguments: float) -> str:
        return f"{name}{tuple(map(float, arguments))}={value}"

    def let(self, name: str) -> str:
        return f"{name}:={float(self)}"


def test_a_number_that_remembers_its_working_is_asked() -> None:
    assert exact.sqrt(Remembering(4.0)) == "√(4.0,)=2.0"
    assert exact.atan2_deg(1.0, Remembering(1.0)) == "atan2(1.0, 1.0)=45.0"
    assert exact.let("s", Remembering(0.5)) == "s:=0.5"


def test_a_plain_number_stays_plain() -> None:
    assert exact.let("s", 0.5) == 0.5
    assert type(exact.sqrt(4.0)) is float
