"""5040 typed strings in twelve number styles: what was meant, a question that holds it, or a refusal.

H4, H5, H30, H31. Common practice, no source: a reader that never gives another number.
"""

from __future__ import annotations

import re
from decimal import Decimal

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine import fields
from evenwater.engine.quantities import Entered
from evenwater.engine.reader import Ask, Empty, Field, Ok, Reading, Wrong, read
from tests.property.typed_strings import FIELDS, STYLES, Style, TypedString, strings

EACH = 420


def _is(entered: Entered, typed: TypedString) -> bool:
    return entered.number == typed.number and entered.unit == typed.unit and entered.text == typed.text


def _fits(result: Reading, typed: TypedString) -> bool:
    """Return whether a reading is what was meant, asks for it among others, or refuses."""
    if isinstance(result, Ok):
        return _is(result.entered, typed)
    if isinstance(result, Ask):
        return any(_is(entered, typed) for entered in result.readings)
    return isinstance(result, Wrong)


def _said(result: Reading) -> str:
    if isinstance(result, Ok):
        return f"read as {result.entered.number} {result.entered.unit}"
    if isinstance(result, Ask):
        return f"asked between {[str(entered.number) for entered in result.readings]}"
    return result.reason.code if isinstance(result, Wrong) else "empty"


@pytest.mark.parametrize("style", STYLES, ids=lambda style: style.name)
def test_never_another_number(style: Style) -> None:
    for typed in strings(style, EACH):
        result = read(typed.text, typed.field, typed.beside)
        where = f"{typed.text!r} beside {typed.beside!r} in {typed.field.path}, meant {typed.number} {typed.unit}"
        assert _fits(result, typed), f"{where}: {_said(result)}"


@pytest.mark.parametrize("style", [s for s in STYLES if s.plain], ids=lambda style: style.name)
def test_plain_numbers_are_not_refused(style: Style) -> None:
    plain = [typed for typed in strings(style, EACH) if typed.must_read]
    assert len(plain) > 60
    for typed in plain:
        result = read(typed.text, typed.field, typed.beside)
        assert isinstance(result, Ok | Ask), f"{typed.text!r} in {typed.field.path}: {_said(result)}"


def test_the_strings_are_many_and_of_every_kind() -> None:
    every = [typed for style in STYLES for typed in strings(style, EACH)]
    assert len(every) == len(STYLES) * EACH >= 5000
    assert len({typed.text for typed in every}) > 4000
    kinds = [type(read(t.text, t.field, t.beside)) for t in every]
    assert kinds.count(Ok) > 1000
    assert kinds.count(Ask) > 50
    assert kinds.count(Wrong) > 1000
    assert kinds.count(Empty) == 0


ALPHABET = "0123456789" * 3 + "..,,  \u00a0\u202f-+\u2212_'eE/%" + "dKHmgLusal" + "\u0663\u0969\uff15\u00b5\u00b2"


def _literal(text: str, field: Field, beside: str) -> Decimal | None:
    """Read the plainest grammar there is: digits, one mark, digits; a space; a unit as listed, in any case."""
    names = {name.casefold() for unit in field.units.units for name in (unit.id, unit.shown, *unit.spellings)}
    clean = re.sub(r"[\s\u00a0\u202f]+", " ", text).strip()
    match = re.fullmatch(r"([-\u2212]?)([0-9]*)(?:([.,])([0-9]+))?( ?)(.*)", clean, re.DOTALL)
    if match is None or not (match[2] or match[4]):
        return None
    if match[6] and match[6].casefold() not in names:
        return None
    if not match[6] and not beside and not field.bare and field.kind != "number":
        return None
    number = Decimal(f"{match[2] or '0'}.{match[4] or '0'}")
    return -number if match[1] else number


@settings(max_examples=800)
@given(text=st.text(ALPHABET, max_size=10), field=st.sampled_from(FIELDS), beside=st.booleans())
def test_nothing_is_dropped_clamped_or_repaired(text: str, field: Field, beside: bool) -> None:
    unit = field.unit if beside else ""
    result = read(text, field, unit)
    plainly = _literal(text, field, unit)
    if isinstance(result, Ok):
        assert plainly is not None, f"{text!r} was repaired to {result.entered.number}"
        assert result.entered.number == plainly
        assert result.entered.text == text
    elif isinstance(result, Ask):
        assert plainly is not None
        for entered in result.readings:
            assert entered.number in (plainly, plainly * 1000)
    elif isinstance(result, Empty):
        assert not text.strip("\u00a0\u202f ")


@settings(max_examples=200)
@given(
    number=st.decimals("0.0001", "99999", places=4),
    mark=st.sampled_from(".,"),
    gap=st.sampled_from(["", " ", "\u00a0", "\u202f"]),
)
def test_both_marks_say_the_same(number: Decimal, mark: str, gap: str) -> None:
    # Four decimals cannot be mistaken for a group of three.
    text = f"{number:f}".replace(".", mark) + f"{gap}L"
    result = read(text, fields.NET_VOLUME)
    assert isinstance(result, Ok)
    assert result.entered.number == number


@settings(max_examples=150)
@given(whole=st.integers(1, 999), rest=st.integers(0, 999), mark=st.sampled_from(".,"))
def test_one_mark_and_three_digits_is_asked_about(whole: int, rest: int, mark: str) -> None:
    result = read(f"{whole}{mark}{rest:03d} L", fields.NET_VOLUME)
    assert isinstance(result, Ask)
    numbers = [entered.number for entered in result.readings]
    assert numbers == [Decimal(f"{whole}.{rest:03d}"), Decimal(whole * 1000 + rest)]
    # A zero before the mark is no group: 0,250 is a quarter of a litre and nothing else.
    quarter = read(f"0{mark}{rest:03d} L", fields.NET_VOLUME)
    if rest:
        assert isinstance(quarter, Ok)
        assert quarter.entered.number == Decimal(f"0.{rest:03d}")
