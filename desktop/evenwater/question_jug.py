"""The shape of a question file of the kind ``jug``."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from evenwater.question_parts import (
    Wrongs,
    list_rows,
    missing_fields,
    needed_of_additive,
    not_known,
    wrong_fields,
    wrong_table,
)
from evenwater.question_tables import CORRECTION, EXCHANGE, STOCK_LABEL, TIME, TRUE

_TOP = {"now": TIME, "away_until": TIME}
_SYSTEM = {
    "name": '"North frag bay"', "net_volume": '"340 L"', "temperature": '"25 degC"',
    **{name: example for name, example in EXCHANGE.items() if name != "per_day"},
}  # fmt: skip
# Each table with its fields, and those that it needs.
_TABLES: dict[str, tuple[dict[str, str], tuple[str, ...]]] = {
    "jug": (
        {
            "name": '"Soda ash"', "holds": '"5 L"', "unreachable": '"100 mL"', "cross_section": '"150 mL/cm"',
            "level_accuracy": '"25 mL"',
        },
        ("holds",),
    ),
    "system": (_SYSTEM, ("net_volume",)),
    "setting": ({"outlet_above_water": TRUE, "jug_below_outlet": TRUE}, ()),
    "line": ({"bore": '"4 mm"', "length": '"2 m"'}, ("bore", "length")),
    "retest": (
        {"parameter": '"alkalinity"', "expected": '"8.4 dKH"', "measured": '"7.9 dKH"', "kit_accuracy": '"0.3 dKH"'},
        ("parameter", "expected", "measured"),
    ),
}  # fmt: skip
_ROWS: dict[str, tuple[dict[str, str], tuple[str, ...]]] = {
    "pump": (
        {
            "name": '"Pump 1"', "single_dose": '"4.8 mL"', "doses_per_day": "24", "first_dose_at": TIME, "calibration": '"5 %"',
            "head_hours": '"420 h"', "flow": '"24 mL/min"',
        },
        ("single_dose",),
    ),
    "level": ({"at": TIME, "level": '"4.2 L"'}, ("at", "level")),
    "refill": ({"at": TIME, "added": '"1 L"'}, ("at", "added")),
}  # fmt: skip


def jug(raw: Mapping[str, Any]) -> Wrongs:
    """Return what keeps a file from being a question about a jug.

    Parameters
    ----------
    raw : mapping
        The parsed file.

    Returns
    -------
    list of (str, str)
        Path of a field and what is wrong with it.
    """
    allowed = (
        "kind",
        *_TOP,
        "jug",
        "system",
        "additive",
        *_ROWS,
        *(name for name in _TABLES if name not in ("jug", "system")),
    )
    found = [(name, not_known(allowed)) for name in raw if name not in allowed]
    found += wrong_fields("", {name: raw[name] for name in _TOP if name in raw}, _TOP)
    for table, (spec, needed) in _TABLES.items():
        found += wrong_table(raw, table, spec, needed if table in raw or table in ("jug", "system") else ())
    found += _additive(raw.get("additive", {}))
    for name, (spec, needed) in _ROWS.items():
        rows = list_rows(raw, name, found)
        if name != "refill" and not rows and name not in {path for path, _ in found}:
            found.append((name, f"is missing. Write [[{name}]] with {', '.join(needed)}."))
        for here, row in rows:
            found += wrong_fields(here, row, spec) + missing_fields(here, row, needed, spec)
    return found


def _additive(given: Any) -> Wrongs:
    if not isinstance(given, Mapping):
        return [("additive", "must be a table: [additive]")]
    spec = CORRECTION["additive"]
    return wrong_fields("additive", given, spec, STOCK_LABEL) + missing_fields(
        "additive", given, needed_of_additive(given), spec
    )
