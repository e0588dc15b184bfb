"""The shape of a question file of the kind ``exchange``."""

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
from evenwater.question_tables import CORRECTION, STOCK_LABEL, TRUE

# Each table with its fields, and those that it needs.
_TABLES: dict[str, tuple[dict[str, str], tuple[str, ...]]] = {
    "system": (
        {
            "name": '"North frag bay"', "net_volume": '"340 L"', "volume_uncertainty": '"3 %"', "salinity": '"35"',
            "temperature": '"25 degC"', "evaporation": '"4 L per day"',
        },
        ("net_volume",),
    ),
    "exchange": (
        {
            "per_day": '"10 L per day"', "out": '"10 L per day"', "in": '"9.8 L per day"', "as_much_as": '"20 %"',
            "every_days": "7", "days": "30", "old_jug": '"80 L"', "new_jug": '"80 L"',
        },
        (),
    ),
    "new_water": ({"salinity": '"35"', "temperature": '"24 degC"'}, ()),
    "mixing": (
        {
            "volume": '"80 L"', "label_mass": '"38 g"', "label_water": '"1 L"', "label_salinity": '"35"',
            "measured": '"34.6"',
        },
        ("volume", "label_mass", "label_water", "label_salinity"),
    ),
}  # fmt: skip
_VALUE = {
    "parameter": '"alkalinity"', "now": '"9 dKH"', "new_water": '"7 dKH"', "daily_use": '"0.9 dKH per day"',
    "daily_addition": '"0.9 dKH per day"', "loss_per_day": '"2 %"',
}  # fmt: skip
_DOSE = {"parameter": '"nitrate"', "after_days": "3", "raises": '"1 mg/L as NO3"'}
_FOOD = {
    "name": '"Mash"', "per_day": '"10 mL per day"', "nitrogen": '"5 mg/mL"', "phosphorus": '"0.5 mg/mL"', "protein": '"6 %"',
    "nitrogen_share": '"1 %"', "phosphorus_share": '"0.1 %"', "density": '"1.05 g/mL"', "salts": TRUE,
    "label": '{ parameter = "nitrate", dose = "5 mL", water = "100 L", raises = "1 mg/L as NO3" }',
}  # fmt: skip
# How a food's label may say what it carries.
_SAYS = (("nitrogen", "phosphorus"), ("protein", "nitrogen_share", "phosphorus_share", "density"), ("label",))
# The ways to say what the pumps move.
_WAYS = (("per_day",), ("out", "in"), ("as_much_as",))


def exchange(raw: Mapping[str, Any]) -> Wrongs:
    """Return what keeps a file from being a question about an exchange.

    Parameters
    ----------
    raw : mapping
        The parsed file.

    Returns
    -------
    list of (str, str)
        Path of a field and what is wrong with it.
    """
    allowed = ("kind", "system", "exchange", "new_water", "value", "dose", "food", "mixing")
    found = [(name, not_known(allowed)) for name in raw if name not in allowed]
    for table, (spec, needed) in _TABLES.items():
        found += wrong_table(raw, table, spec, needed if table in raw or table == "system" else ())
    found += _way(raw.get("exchange", {}))
    rows = list_rows(raw, "value", found)
    if not rows and "value" not in {path for path, _ in found}:
        found.append(("value", "is missing. Write [[value]] with parameter and now for each value to look at."))
    for here, row in rows:
        own = {name: value for name, value in row.items() if name != "additive"}
        found += wrong_fields(here, own, _VALUE) + missing_fields(here, own, ("parameter", "now"), _VALUE)
        if own.get("parameter") == "salinity" and "new_water" in own:
            found.append((f"{here}.new_water", "stands in the table [new_water] for salinity. Leave it out here."))
        if "additive" in row:
            found += [(f"{here}.{path}", said) for path, said in _additive(row["additive"])]
    for here, row in list_rows(raw, "dose", found):
        found += wrong_fields(here, row, _DOSE) + missing_fields(here, row, tuple(_DOSE), _DOSE)
    for here, row in list_rows(raw, "food", found):
        found += _food(here, row)
    return found


def _food(here: str, row: Mapping[str, Any]) -> Wrongs:
    """Return what is wrong with a food: its label says what a millilitre carries in one way."""
    own = {name: value for name, value in row.items() if name != "label"}
    found = wrong_fields(here, own, _FOOD) + missing_fields(here, own, ("per_day",), _FOOD)
    if len([way for way in _SAYS if any(name in row for name in way)]) != 1:
        choices = "nitrogen and phosphorus per mL; or protein or nitrogen_share with phosphorus_share; or a label"
        found.append((here, f"says what a millilitre carries in no way, or in several. Write one of: {choices}."))
    if "label" in row:
        label, path = row["label"], f"{here}.label"
        if not isinstance(label, Mapping):
            return [*found, (path, f"must be a table with {', '.join(STOCK_LABEL)}.")]
        found += wrong_fields(path, label, STOCK_LABEL) + missing_fields(path, label, tuple(STOCK_LABEL), STOCK_LABEL)
    return found


def _way(given: Any) -> Wrongs:
    """Return whether the flow is said in no way, or in several."""
    if not isinstance(given, Mapping):
        return []
    ways = [way for way in _WAYS if any(name in given for name in way)]
    if len(ways) != 1:
        choices = "per_day; or out and in; or as_much_as, a batch change every so many days"
        return [("exchange", f"says what the pumps move in no way, or in several. Write one of: {choices}.")]
    found = missing_fields("exchange", given, ways[0], _TABLES["exchange"][0])
    if "every_days" in given and ways[0] != ("as_much_as",):
        found.append(("exchange.every_days", "goes with as_much_as only. Leave it out."))
    return found


def _additive(given: Any) -> Wrongs:
    if not isinstance(given, Mapping):
        return [("additive", "must be a table: [value.additive]")]
    spec = CORRECTION["additive"]
    return wrong_fields("additive", given, spec, STOCK_LABEL) + missing_fields(
        "additive", given, needed_of_additive(given), spec
    )
