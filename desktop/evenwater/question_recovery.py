"""The shape of a question file of the kind ``recovery``."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from evenwater.question_parts import (
    Wrongs,
    missing_fields,
    needed_of_additive,
    not_known,
    wrong_fields,
    wrong_table,
    wrong_value,
)
from evenwater.question_tables import CORRECTION, EXCHANGE, STOCK_LABEL, TIME, TRUE

_VALUES = {name: example for name, example in EXCHANGE.items() if name != "per_day"}
_USE = {
    "alkalinity": '"0.9 dKH per day"', "calcium": '"6.4 mg/L per day"', "magnesium": '"1 mg/L per day"',
    "potassium": '"0.5 mg/L per day"', "strontium": '"0.1 mg/L per day"', "iodide": '"0.005 mg/L per day"',
    "nitrate": '"0.5 mg/L as NO3 per day"', "phosphate": '"0.01 mg/L as PO4 per day"', "salinity": '"0.1 ppt per day"',
}  # fmt: skip
# Each table with its fields, and those that it needs where it stands.
_TABLES: dict[str, tuple[dict[str, str], tuple[str, ...]]] = {
    "system": (
        {"name": '"North frag bay"', "net_volume": '"340 L"', "volume_known": '"dimensions"', "volume_uncertainty": '"5 %"', "temperature": '"25 degC"', "ph": '"8.1"', **_VALUES},
        ("net_volume",),
    ),
    "change": ({"parameter": '"alkalinity"', "measured": '"12.6 dKH"', "target": '"9 dKH"'}, ()),
    "overdose": ({"volume": '"1 L"'}, ("volume",)),
    "use": (_USE, ()),
    "hold": (dict.fromkeys(_USE, TRUE), ()),
    "new_water": ({"temperature": '"25 degC"', **_VALUES}, ()),
    "exchange": ({"most_per_day": '"100 L per day"'}, ("most_per_day",)),
    "signs": ({"cloudy": TRUE, "white_film": TRUE}, ()),
}  # fmt: skip


def recovery(raw: Mapping[str, Any]) -> Wrongs:
    """Return what keeps a file from being a question about a value that is too high.

    Parameters
    ----------
    raw : mapping
        The parsed file.

    Returns
    -------
    list of (str, str)
        Path of a field and what is wrong with it.
    """
    allowed = ("kind", "now", *_TABLES, "additive")
    found = [(name, not_known(allowed)) for name in raw if name not in allowed]
    if "now" in raw:
        found += wrong_value("now", raw["now"], TIME)
    for table, (spec, needed) in _TABLES.items():
        if table in raw or table == "system":
            found += wrong_table(raw, table, spec, needed)
    if "overdose" in raw or "additive" in raw:
        found += _additive(raw.get("additive", {}))
    if "overdose" not in raw and "change" not in raw:
        found.append(
            ("change", "is missing. Write [change] with parameter and measured, or [overdose] and [additive].")
        )
    return found


def _additive(given: Any) -> Wrongs:
    if not isinstance(given, Mapping):
        return [("additive", "must be a table: [additive]")]
    spec = CORRECTION["additive"]
    lacking = missing_fields("additive", given, needed_of_additive(given), spec)
    return wrong_fields("additive", given, spec, STOCK_LABEL) + lacking
