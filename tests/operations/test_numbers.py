"""A number as it is typed: comma and point, ranges, and what is asked back."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from checklist_app.operations.fields import Fault, Field, FieldType, read_number
from checklist_app.operations.numbers import read_text

LENGTH = Field("length_m", "length", FieldType.NUMBER, "m", 0.5, 9.0, usual=(1.0, 9.0))
MASS = Field("mass_kg", "mass", FieldType.NUMBER, "kg", 1.0, 100_000.0, usual=(200.0, 5000.0))
ANY = Field("any", "any number", FieldType.NUMBER)


@pytest.mark.parametrize("text, value", [
    ("1.5", 1.5), ("1,5", 1.5), (" 1.5 ", 1.5), ("1.50", 1.5), ("2", 2.0), ("1.5 m", 1.5), ("1,2500", 1.25),
    ("0,750", 0.75), ("8.", 8.0),
])
def test_comma_and_point_are_both_taken(text: str, value: float) -> None:
    assert read_number(text, LENGTH) == value


@pytest.mark.parametrize("text, value", [
    ("-0.25", -0.25), ("−0.25", -0.25), ("+3", 3.0), (".5", 0.5), ("12 500", 12500.0), ("12\u2009500", 12500.0),
    ("1 250,5", 1250.5), ("1234.567", 1234.567), ("-0,250", -0.25), ("0.000", 0.0),
])
def test_signs_and_thin_spaces_are_read(text: str, value: float) -> None:
    assert read_number(text, ANY) == value


@pytest.mark.parametrize("text, both", [
    ("1,250", ("1250", "1.25")), ("1.250", ("1250", "1.25")), ("12,345", ("12345", "12.3450")),
    ("999.000", ("999000", "999")), ("-1,250", ("-1250", "-1.25")), ("01,250", ("01250", "01.25")),
])
def test_a_separator_before_just_three_digits_is_asked_back(text: str, both: tuple[str, str]) -> None:
    fault = read_number(text, ANY)
    assert isinstance(fault, Fault) and "two ways" in fault.words
    assert f"Write {both[0]}, or {both[1]}." in fault.words


@pytest.mark.parametrize("text", [
    "", " ", "abc", "1e99", "1e3", "NaN", "nan", "inf", "-inf", "1.2.3", "1,2,3", "1.250,5", "1,250.5", "0x10", "1_000",
    "١٢", "1²", "--1", "+", "-", ".", ",", "1 2", "12 50", "1.5 ft", "½", "1\n2", "9" * 400,
])
def test_what_is_no_number_is_said_to_be_none(text: str) -> None:
    assert isinstance(read_number(text, ANY), Fault)


@pytest.mark.parametrize("field, text, told", [
    (LENGTH, "85", "85 m is too much. Allowed: 0.5 to 9 m. Did you mean 8.5?"),
    (LENGTH, "1500", "1500 m is too much. Allowed: 0.5 to 9 m. Did you mean 1.5?"),
    (LENGTH, "0.15", "0.15 m is too little. Allowed: 0.5 to 9 m. Did you mean 1.5?"),
    (LENGTH, "-2", "-2 m is too little. Allowed: 0.5 to 9 m."),
    (MASS, "1.2", None),
    (MASS, "0", "0 kg is too little. Allowed: 1 to 100000 kg."),
    (MASS, "1000000", "1000000 kg is too much. Allowed: 1 to 100000 kg. Did you mean 1000?"),
])
def test_out_of_range_names_what_is_allowed_and_what_was_perhaps_meant(
    field: Field, text: str, told: str | None
) -> None:
    found = read_number(text, field)
    assert (found.words if isinstance(found, Fault) else None) == told


@given(st.text(max_size=30))
def test_no_text_at_all_is_more_than_a_number_in_range_or_a_fault(text: str) -> None:
    found = read_number(text, LENGTH)
    assert isinstance(found, Fault) or 0.5 <= found <= 9.0


@given(st.floats(-1e6, 1e6).map(lambda value: round(value, 2)))
def test_a_number_written_with_two_places_comes_back(value: float) -> None:
    for text in (f"{value:.2f}", f"{value:.2f}".replace(".", ",")):
        assert read_text(text) == value
