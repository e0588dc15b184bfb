"""What no figure and no sentence may look like, on screen and on paper.

Sources: ISMP, List of Error-Prone Abbreviations, Symbols and Dose Designations (trailing and leading zeros, mL, slash,
symbols); NIST SP 811 (a space between number and unit); FDA, Safety Considerations for Container Labels (2022).
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from decimal import Decimal
from typing import Any

from evenwater.screens.views import ChartView

NBSP = "\u00a0"
_UNIT = r"(?:mL|L|g|mg|kg|dKH|meq|mmol|ppm|ppt|SG|US|imperial|°C|°F|h|min|s|%)(?![A-Za-z0-9])"
# Names of hydrometer scales hold a slash and two temperatures, as the hydrometer itself does.
_SCALE = re.compile(r"SG (?:25/25|20/20)[ \u00a0]°C|SG 60/60[ \u00a0]°F")
# What somebody typed is repeated as it was typed, between these marks.
_QUOTED = re.compile("“[^”]*”")

RULES: dict[str, re.Pattern[str]] = {
    "L1 trailing zero": re.compile(r"\d[.,]\d*0(?![0-9])"),
    "L2 no leading zero": re.compile(r"(?:^|[^0-9])[.,]\d"),
    "L3 ordinary space before a unit": re.compile(rf"\d {_UNIT}"),
    "L3 no space before a unit": re.compile(rf"(?<![A-Za-z])\d+{_UNIT}"),
    "L3 more than one space": re.compile(r"[\s\u00a0]{2}"),
    "L4 unit misspelt": re.compile(r"(?<![A-Za-z])(?:ml|ML|l|cc|mcL|ltr|gr|gm|Kg|KG|mls|meg)(?![A-Za-z])"),
    "L4 micro sign": re.compile("[µμ]"),
    "L5 error-prone sign": re.compile(r"[/@&+<>~#]"),
    "L6 exponent": re.compile(r"\d[eE][+-]?\d"),
    "L6 group separator": re.compile(r"\d[,' \u2009\u202f\u00a0]\d{3}(?![0-9])"),
    "L7 decimal comma": re.compile(r"\d,\d"),
    "L7 not a number": re.compile(r"\b(?:nan|inf)\b"),
    "exclamation mark": re.compile("!"),
    "plain minus": re.compile(r"(?<![\w-])-\d"),
}
# A flow of the pump is no dose.
_LARGE_DOSE = re.compile(rf"(?<![\d.])\d{{4,}}(?:\.\d+)?{NBSP}(?:mL|L)(?![A-Za-z]| per min)")


def faults(text: str, dose: bool = False) -> list[str]:
    """Return the rules that a text breaks; ``dose`` for lines that somebody sets a pump by."""
    bare = _QUOTED.sub("“”", _SCALE.sub("SG", text))
    found = [name for name, rule in RULES.items() if rule.search(bare)]
    found += ["L7 other digits"] if any(c.isdigit() and not c.isascii() for c in bare) else []
    found += ["L6 four digits before the point"] if dose and _LARGE_DOSE.search(bare) else []
    return [f"{name}: {text!r}" for name in found]


def strings(node: Any) -> Iterator[str]:
    """Yield every text inside a view, a row or a list of them."""
    if isinstance(node, str):
        yield node
    elif isinstance(node, ChartView):
        yield from (node.title, node.unit, *node.labels.values())
    elif is_dataclass(node):
        for item in fields(node):
            # A plan id is letters and digits by chance; it has a test of its own.
            if item.name not in ("plan_id", "code", "path"):
                yield from strings(getattr(node, item.name))
    elif isinstance(node, tuple):
        for item in node:
            yield from strings(item)


def millilitres(text: str) -> Decimal:
    """Read the first dose of a text as it is written, in millilitres, litres or cubic metres."""
    found = re.search(rf"([\d.]+){NBSP}(mL|L|m3)(?![A-Za-z0-9])", text)
    assert found, text
    return Decimal(found.group(1)) * {"mL": 1, "L": 1000, "m3": 1_000_000}[found.group(2)]


def numbers(text: str) -> list[float]:
    """Return the plain numbers in a text."""
    return [float(n) for n in re.findall(r"(?<![A-Za-z\d.])\d+(?:\.\d+)?", text)]
