"""Quantities as people in twelve places of the world would type them, with what they meant.

Number styles: the decimal mark, group mark and digits of the Unicode locale data, from memory.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from decimal import Decimal

from evenwater.engine import fields
from evenwater.engine.quantities import from_canonical, to_canonical
from evenwater.engine.reader import Field
from tests.engine.asking import known

NBSP, NARROW, THIN = "\u00a0", "\u202f", "\u2009"
LATIN = "0123456789"


@dataclass(frozen=True)
class Style:
    """How one place writes numbers; ``groups`` are the sizes of the groups from the decimal mark on."""

    name: str
    decimal: str
    group: str
    digits: str = LATIN
    groups: tuple[int, ...] = (3,)

    @property
    def plain(self) -> bool:
        """Whether the reader must read every ungrouped number in this style."""
        return self.digits == LATIN and self.decimal in ".,"


STYLES = (
    Style("en_US", ".", ","),
    Style("de_DE", ",", "."),
    Style("fr_FR", ",", NARROW),
    Style("sv_SE", ",", NBSP),
    Style("de_CH", ".", "\u2019"),
    Style("en_IN", ".", ",", groups=(3, 2)),
    Style("ar_EG", "\u066b", "\u066c", "\u0660\u0661\u0662\u0663\u0664\u0665\u0666\u0667\u0668\u0669"),
    Style("fa_IR", "\u066b", "\u066c", "\u06f0\u06f1\u06f2\u06f3\u06f4\u06f5\u06f6\u06f7\u06f8\u06f9"),
    Style("hi_IN", ".", ",", "\u0966\u0967\u0968\u0969\u096a\u096b\u096c\u096d\u096e\u096f", (3, 2)),
    Style("pt_PT", ",", " "),
    Style("es_ES", ",", THIN),
    Style("source code", ".", "_"),
)


def _parameter(name: str) -> Field:
    return fields.concentration(f"change.{name}", known().parameters[name])


FIELDS = (
    fields.NET_VOLUME, fields.DISSOLVED, fields.MADE_UP_TO, fields.FLOW, fields.STEP, fields.LARGEST_SHARE,
    fields.SALINITY, fields.TEMPERATURE, fields.DOSES_PER_DAY, fields.PURITY,
    *(_parameter(name) for name in known().parameters),
    *(fields.rise("change.daily_use", p) for p in known().parameters.values()),
)  # fmt: skip


@dataclass(frozen=True)
class TypedString:
    """What was typed into a field, the unit beside it, and the number and unit that were meant.

    ``must_read`` says that a refusal would be a nuisance: the text is as plain as can be.
    """

    text: str
    field: Field
    beside: str
    number: Decimal
    unit: str
    must_read: bool


def _grouped(whole: str, style: Style) -> str:
    parts, sizes = [], list(style.groups)
    while len(whole) > sizes[0]:
        parts.append(whole[-sizes[0] :])
        whole = whole[: -sizes[0]]
        if len(sizes) > 1:
            sizes.pop(0)
    return style.group.join([whole, *reversed(parts)])


def in_style(number: Decimal, style: Style, group: bool) -> str:
    """Write a number in a style."""
    whole, _, rest = format(abs(number), "f").partition(".")
    whole = _grouped(whole, style) if group else whole
    text = whole + (style.decimal + rest if rest else "")
    text = "".join(style.digits[int(c)] if c in LATIN else c for c in text)
    return f"-{text}" if number < 0 else text


def _meant(draw: random.Random, field: Field, unit: str) -> Decimal:
    """Return a number that the field admits in a unit."""
    low, high = (
        from_canonical(to_canonical(v, field.kind, field.unit), field.kind, unit) for v in (field.low, field.high)
    )
    top = min(high, 10.0 ** draw.uniform(0.0, 5.5))
    value = draw.uniform(low, top) if top > low else draw.uniform(low, high)
    if field.whole:
        return Decimal(max(1, round(value)))
    decimals = draw.choice((0, 1, 2, 3, 3, 4, 6))
    number = Decimal(f"{value:.{decimals}f}")
    return number if low < float(number) <= high else Decimal(f"{(low + high) / 2.0:.4f}")


# What may stand around a number. Each returns the text and the number that is meant by it then.
_Twist = Callable[[random.Random, str, Decimal], tuple[str, Decimal]]
TWISTS: dict[str, _Twist] = {
    "exponent": lambda draw, text, number: (f"{text}e{3 * (n := draw.choice((1, -1, 2)))}", number.scaleb(3 * n)),
    "times ten to the": lambda draw, text, number: (f"{text}\u00d710^3", number.scaleb(3)),
    "capital exponent": lambda draw, text, number: (f"{text}E+2", number.scaleb(2)),
    "plus sign": lambda draw, text, number: (f"+{text}", number),
    "about": lambda draw, text, number: (draw.choice("~\u2248<>=") + text, number),
    "half more": lambda draw, text, number: (f"{text}\u00bd", number + Decimal("0.5")),
    "fraction": lambda draw, text, number: (f"{text}/2", number / 2),
    "range": lambda draw, text, number: (draw.choice(("-", "\u2013", " to ", " ")).join((text, text)), number * 2),
    "sum": lambda draw, text, number: (f"{text}+{text}", number * 2),
    "currency": lambda draw, text, number: (f"${text}", number),
    "minus at the end": lambda draw, text, number: (f"{text}-", -number),
    "bracketed minus": lambda draw, text, number: (f"({text})", -number),
    "true minus": lambda draw, text, number: (f"\u2212{text}", -number),
    "thousand": lambda draw, text, number: (f"{text}k", number.scaleb(3)),
    "hexadecimal": lambda draw, text, number: (f"0x{text}", number * 16),
    "mark at the end": lambda draw, text, number: (f"{text}{draw.choice('.,')}", number),
    "two marks": lambda draw, text, number: (f"{text}.{draw.randint(0, 9)},{draw.randint(0, 9)}", number),
}


def _unit_text(draw: random.Random, field: Field, unit: str) -> tuple[str, bool]:
    """Return a way to write a unit, and whether it is one of the listed ways."""
    known_unit = field.units.unit(unit)
    listed = [known_unit.id, known_unit.shown, *known_unit.spellings]
    word = draw.choice(listed)
    if draw.random() < 0.2:
        return draw.choice(
            (word.upper(), word.lower(), word.title(), f"{word}s", f" {word}", word.replace(" ", ""))
        ), False
    return word, True


def _one(draw: random.Random, style: Style) -> TypedString:
    field = draw.choice(FIELDS)
    unit = draw.choice(field.units.units).id
    number = _meant(draw, field, unit)
    group = draw.random() < 0.45
    text = in_style(number, style, group)
    beside, as_listed = "", True
    words = ""
    if unit and draw.random() < 0.7:
        words, as_listed = _unit_text(draw, field, unit)
        beside = draw.choice(("", unit, field.units.canonical.id))
    else:
        beside = unit
    twisted = draw.random() < 0.25
    if twisted:
        text, number = TWISTS[draw.choice(list(TWISTS))](draw, text, number)
    gap = draw.choice((" ", " ", "", NBSP, NARROW, "  ")) if words else ""
    padding = draw.choice(("", "", " ", NBSP, "\t"))
    typed = f"{padding}{text}{gap}{words}{draw.choice(('', '', ' '))}"
    digits = sum(c.isdigit() for c in text)
    must_read = style.plain and as_listed and not twisted and (not group or abs(number) < 1000) and digits <= 15
    return TypedString(typed, field, beside, number, unit, must_read)


def strings(style: Style, count: int) -> Iterator[TypedString]:
    """Yield so many typed strings of a style, always the same ones."""
    draw = random.Random(f"typed in {style.name}")
    for _ in range(count):
        yield _one(draw, style)
