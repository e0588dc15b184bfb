"""The shape of a question file: which tables and fields each kind has, and where a fault stands."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from evenwater.engine.fields import DOSES_PER_DAY

KINDS = ("correction", "convert", "stock", "chemistry", "upkeep", "consumption")
_TRUE = "true"
_TIME = "2026-11-25T09:00:00+00:00"
# Each field as it is written, which is also what a fault shows.
_CORRECTION: dict[str, dict[str, str]] = {
    "system": {
        "name": '"North frag bay"', "net_volume": '"340 L"', "volume_uncertainty": '"3 %"', "salinity": '"35"',
        "temperature": '"25 degC"', "ph": '"8.1"', "alkalinity": '"8 dKH"', "calcium": '"420 mg/L"',
        "evaporation": '"4 L per day"',
    },
    "change": {
        "parameter": '"alkalinity"', "measured": '"6.8 dKH"', "measured_at": _TIME, "target": '"8.4 dKH"',
        "daily_use": '"0.9 dKH per day"', "fastest_rise": '"1.0 dKH per day"', "reason": '"the reason"',
        "untested": '"0.2 dKH"', "raised_lately": '"0.2 dKH"',
    },
    "additive": {
        "chemical": '"sodium carbonate anhydrous"', "dissolved": '"106 g"', "made_up_to": '"1 L"', "purity": '"100 %"',
        "temperature": '"20 degC"', "saturated": _TRUE,
        "also": '{ chemical = "magnesium sulfate heptahydrate", dissolved = "100 g" }',
        "label": '{ dose = "5 mL", water = "100 L", raises = "1 dKH" }',
    },
    "pump": {
        "flow": '"24 mL/min"', "smallest_dose": '"0.5 mL"', "step": '"0.1 mL"', "largest_share": '"50 %"',
        "doses_per_day": "24",
    },
}  # fmt: skip
_ALSO = {"chemical": '"magnesium sulfate heptahydrate"', "dissolved": '"100 g"', "purity": '"100 %"'}
_LABEL = {"dose": '"5 mL"', "water": '"100 L"', "raises": '"1 dKH"'}
_CONVERT = {
    "value": '"140 ppm as CaCO3"', "to": '"dKH"', "parameter": '"alkalinity"', "salinity": '"35"',
    "temperature": '"25 degC"',
}  # fmt: skip
_STOCK_LABEL = {"parameter": '"alkalinity"', **_LABEL}
_STOCK_TEMPERATURE = '"20 degC"'
_WANTED = {
    "parameter": '"alkalinity"', "strength": '"2000 meq/L"', "dose": '"1 mL"', "water": '"100 L"', "raises": '"0.1 dKH"',
    "partner": '{ chemical = "calcium chloride dihydrate", dissolved = "147 g", made_up_to = "1 L" }',
}  # fmt: skip
_PARTNER = {
    "chemical": '"calcium chloride dihydrate"', "dissolved": '"147 g"', "made_up_to": '"1 L"', "purity": '"100 %"',
}  # fmt: skip
_CHEMISTRY = {
    "system": {
        "net_volume": '"340 L"', "salinity": '"35"', "temperature": '"25 degC"', "alkalinity": '"6.8 dKH"', "ph": '"8.1"',
        "pco2": '"420 uatm"', "ph_scale": '"NBS"', "calcium": '"420 mg/L"',
    },
    "addition": {"chemical": '"sodium carbonate anhydrous"', "amount": '"3 g"'},
}  # fmt: skip
_CHEMISTRY_NEEDED = {
    "system": ("net_volume", "salinity", "temperature", "alkalinity"),
    "addition": ("chemical", "amount"),
}
# What an upkeep has besides the tables of a correction.
_UPKEEP = ("kind", "now", "system", "item", "exchange", "planned")
_ITEM = {"parameter": '"alkalinity"', "measured": '"8.0 dKH"', "daily_use": '"0.9 dKH per day"'}
_EXCHANGE = {
    "per_day": '"3.4 L per day"', "alkalinity": '"7 dKH"', "calcium": '"420 mg/L"', "magnesium": '"1300 mg/L"',
    "potassium": '"400 mg/L"', "strontium": '"8 mg/L"', "iodide": '"0.06 mg/L"', "nitrate": '"0 mg/L as NO3"',
    "phosphate": '"0 mg/L as PO4"', "salinity": '"35"',
}  # fmt: skip
_PLANNED = {
    "parameter": '"magnesium"', "rise_per_day": '"20 mg/L per day"', "days_left": '"4"', "doses_per_day": "24",
}  # fmt: skip
_RECORD = {"now": _TIME, "parameter": '"alkalinity"', "kit_accuracy": '"0.3 dKH"'}
_RECORD_ROWS = {
    "reading": {"at": _TIME, "value": '"8.0 dKH"'},
    "dose": {"at": _TIME, "raises": '"0.8 dKH"', "volume": '"80 mL"'},
    "exchange": {"at": _TIME, "share": '"10 %"', "new_water": '"7.0 dKH"'},
}
# The three ways to say what strength is wanted, each with the fields that it needs.
_WAYS = (("strength",), ("dose", "water", "raises"), ("partner",))
# A missing reading is no fault of the file: the water has not been tested, and the answer says so.
_NEEDED = {
    "system": ("net_volume",),
    "change": ("parameter", "target"),
    "additive": ("chemical", "dissolved", "made_up_to"),
    "pump": ("flow",),
}
# A plan's dates lie some years around the reading, and calendars end: this leaves room on both sides.
_FIRST_YEAR, _LAST_YEAR = 1900, 9000


@dataclass(frozen=True)
class Fault:
    """Why a file is not a question: line (0 when it has none), field, and what is allowed."""

    line: int
    field: str
    text: str


def faults(raw: Mapping[str, Any], text: str) -> list[Fault]:
    """Return what keeps a file from being a question.

    Parameters
    ----------
    raw : mapping
        The parsed file.
    text : str
        Its text, to find lines in.

    Returns
    -------
    list of Fault
        Empty when every table and field is one that the kind has, of the type that it has.
    """
    kind = raw.get("kind")
    if kind not in KINDS:
        said = "the kind is missing" if kind is None else "that is not a kind"
        if isinstance(kind, str):
            said = f"“{kind}” is not a kind"
        found = [("kind", f"{said}. Write one of: {', '.join(KINDS)}.")]
    elif kind == "convert":
        given = {name: value for name, value in raw.items() if name != "kind"}
        found = _fields("", given, _CONVERT) + _missing("", given, ("value", "to"), _CONVERT)
    elif kind == "stock":
        found = _stock(raw)
    elif kind == "chemistry":
        found = _chemistry(raw)
    elif kind == "upkeep":
        found = _upkeep(raw)
    elif kind == "consumption":
        found = _consumption(raw)
    else:
        found = _correction(raw)
    return [Fault(line_of(text, path), path, said) for path, said in found]


def _correction(raw: Mapping[str, Any]) -> list[tuple[str, str]]:
    allowed = ("kind", "now", *_CORRECTION)
    found = [(name, _unknown(allowed)) for name in raw if name not in allowed]
    if "now" in raw:
        found += _value("now", raw["now"], _TIME)
    for table, spec in _CORRECTION.items():
        given = raw.get(table, {})
        if not isinstance(given, Mapping):
            found.append((table, f"must be a table: [{table}]"))
            continue
        found += _fields(table, given, spec)
        found += _missing(table, given, _needed_of_additive(given) if table == "additive" else _NEEDED[table], spec)
    return found


def _needed_of_additive(given: Any) -> tuple[str, ...]:
    """Return which fields an additive needs: a label none besides, limewater no mass."""
    if not isinstance(given, Mapping) or "label" in given:
        return ()
    return ("chemical", "made_up_to") if given.get("saturated") is True else _NEEDED["additive"]


def _stock(raw: Mapping[str, Any]) -> list[tuple[str, str]]:
    allowed = ("kind", "temperature", "additive", "wanted")
    found = [(name, _unknown(allowed)) for name in raw if name not in allowed]
    if "temperature" in raw:
        found += _value("temperature", raw["temperature"], _STOCK_TEMPERATURE)
    additive, wanted = raw.get("additive", {}), raw.get("wanted")
    if not isinstance(additive, Mapping):
        return [*found, ("additive", "must be a table: [additive]")]
    spec = _CORRECTION["additive"]
    found += _fields("additive", additive, spec, _STOCK_LABEL)
    if "temperature" in additive:
        found.append(("additive.temperature", 'stands in the file itself in this kind: temperature = "20 degC".'))
    saturated = ("saturated",) if additive.get("saturated") is True else ()
    beside = next((name for name in ("label", "dissolved", *saturated) if name in additive), "")
    if wanted is not None and beside:
        return [*found, ("wanted", f"stands beside additive.{beside}, which says the strength. Leave one of them out.")]
    if "label" in additive:
        return found
    needed = _needed_of_additive(additive) if wanted is None else ("chemical", "made_up_to")
    return found + _missing("additive", additive, needed, spec) + ([] if wanted is None else _wanted(wanted))


def _wanted(wanted: Any) -> list[tuple[str, str]]:
    if not isinstance(wanted, Mapping):
        return [("wanted", "must be a table: [wanted]")]
    said = {name: value for name, value in wanted.items() if name != "partner"}
    found = _fields("wanted", said, _WANTED)
    ways = [way for way in _WAYS if any(name in wanted for name in way)]
    if len(ways) != 1 or (ways == [("partner",)] and "parameter" in wanted):
        choices = "strength; or dose, water and raises; or partner alone"
        return [*found, ("wanted", f"says the strength in no way, or in several. Write one of: {choices}.")]
    if "partner" not in wanted:
        return found + _missing("wanted", wanted, ways[0], _WANTED)
    partner = wanted["partner"]
    if not isinstance(partner, Mapping):
        return [*found, ("wanted.partner", f"must be a table with {', '.join(_PARTNER)}.")]
    path = "wanted.partner"
    return found + _fields(path, partner, _PARTNER) + _missing(path, partner, _NEEDED["additive"], _PARTNER)


def _chemistry(raw: Mapping[str, Any]) -> list[tuple[str, str]]:
    allowed = ("kind", *_CHEMISTRY)
    found = [(name, _unknown(allowed)) for name in raw if name not in allowed]
    for table, spec in _CHEMISTRY.items():
        given = raw.get(table, {})
        if not isinstance(given, Mapping):
            found.append((table, f"must be a table: [{table}]"))
            continue
        needed = _CHEMISTRY_NEEDED[table]
        if table == "system":
            if "ph" in given and "pco2" in given:
                found.append(("system.pco2", "stands beside ph. Give one of the two; the other follows from it."))
            needed = (*needed, "pco2" if "pco2" in given else "ph")
        found += _fields(table, given, spec) + _missing(table, given, needed, spec)
    return found


def _upkeep(raw: Mapping[str, Any]) -> list[tuple[str, str]]:
    found = [(name, _unknown(_UPKEEP)) for name in raw if name not in _UPKEEP]
    if "now" in raw:
        found += _value("now", raw["now"], _TIME)
    found += _table(raw, "system", _CORRECTION["system"], _NEEDED["system"])
    if "exchange" in raw:
        found += _table(raw, "exchange", _EXCHANGE, ("per_day",))
    if not raw.get("item"):
        found.append(("item", "is missing. Write [[item]], [item.additive] and [item.pump] for each value to keep."))
    for name, spec, needed in (("item", _ITEM, ("parameter",)), ("planned", _PLANNED, tuple(_PLANNED)[:3])):
        for here, row in _rows(raw, name, found):
            inner = ("additive", "pump") if name == "item" else ()
            own = {field: value for field, value in row.items() if field not in inner}
            found += _fields(here, own, spec) + _missing(here, own, needed, spec)
            for table in inner:
                wanted = _needed_of_additive(row.get(table, {})) if table == "additive" else _NEEDED[table]
                found += [(f"{here}.{path}", said) for path, said in _table(row, table, _CORRECTION[table], wanted)]
    return found


def _consumption(raw: Mapping[str, Any]) -> list[tuple[str, str]]:
    allowed = ("kind", *_RECORD, "system", "additive", *_RECORD_ROWS)
    found = [(name, _unknown(allowed)) for name in raw if name not in allowed]
    top = {name: raw[name] for name in _RECORD if name in raw}
    found += _fields("", top, _RECORD) + _missing("", top, ("parameter",), _RECORD)
    in_volumes = False
    for name, spec in _RECORD_ROWS.items():
        for here, row in _rows(raw, name, found):
            needed = tuple(spec)
            if name == "dose":
                needed = ("at", "volume" if "volume" in row else "raises")
                in_volumes = in_volumes or "volume" in row
                if "volume" in row and "raises" in row:
                    found.append((f"{here}.volume", "stands beside raises. Give one of the two."))
            found += _fields(here, row, spec) + _missing(here, row, needed, spec)
    found += _table(raw, "system", _CORRECTION["system"], _NEEDED["system"] if in_volumes else ())
    wanted = _needed_of_additive(raw.get("additive", {})) if in_volumes or "additive" in raw else ()
    return found + _table(raw, "additive", _CORRECTION["additive"], wanted)


def _rows(raw: Mapping[str, Any], name: str, found: list[tuple[str, str]]) -> list[tuple[str, Mapping[str, Any]]]:
    """Return the tables of a list with their paths; what is no such list is noted."""
    rows = raw.get(name, [])
    if not isinstance(rows, list) or not all(isinstance(row, Mapping) for row in rows):
        found.append((name, f"must be a list of tables: [[{name}]]"))
        return []
    return [(f"{name}.{number}", row) for number, row in enumerate(rows, start=1)]


def _table(raw: Mapping[str, Any], table: str, spec: Mapping[str, str], needed: Sequence[str]) -> list[tuple[str, str]]:
    given = raw.get(table, {})
    if not isinstance(given, Mapping):
        return [(table, f"must be a table: [{table}]")]
    return _fields(table, given, spec) + _missing(table, given, needed, spec)


def _fields(
    table: str, given: Mapping[str, Any], spec: Mapping[str, str], label: Mapping[str, str] = _LABEL
) -> list[tuple[str, str]]:
    found = []
    for name, value in given.items():
        path = f"{table}.{name}" if table else name
        if name not in spec:
            found.append((path, _unknown(spec)))
        elif path == "additive.label":
            found += _label(path, value, given, label)
        elif path == "additive.also":
            found += _also(path, value, given)
        elif name in ("dissolved", "purity") and given.get("saturated") is True:
            found.append((path, "stands beside saturated, which says the strength. Leave one of them out."))
        else:
            found += _value(path, value, spec[name])
    return found


def _label(path: str, value: Any, additive: Mapping[str, Any], spec: Mapping[str, str]) -> list[tuple[str, str]]:
    if not isinstance(value, Mapping):
        return [(path, f"must be a table with {', '.join(spec)}.")]
    beside = [name for name in additive if name in _CORRECTION["additive"] and name != "label"]
    if beside:
        return [(path, f"stands beside {', '.join(beside)}. Give a chemical or a label, not both.")]
    return _fields(path, value, spec) + _missing(path, value, tuple(_LABEL), spec)


def _also(path: str, value: Any, additive: Mapping[str, Any]) -> list[tuple[str, str]]:
    """Return what is wrong with the second chemical of a mix; its mass goes with that of the first."""
    if not isinstance(value, Mapping):
        return [(path, f"must be a table with {', '.join(_ALSO)}.")]
    if additive.get("saturated") is True:
        return [(path, "stands beside saturated. Limewater is made of calcium hydroxide alone.")]
    needed = ("chemical", "dissolved") if "dissolved" in additive else ("chemical",)
    if "dissolved" in value and "dissolved" not in additive:
        return [(f"{path}.dissolved", "stands without additive.dissolved. Give both masses, or neither with [wanted].")]
    return _fields(path, value, _ALSO) + _missing(path, value, needed, _ALSO)


def _value(path: str, value: Any, example: str) -> list[tuple[str, str]]:
    """Return what is wrong with the type of one value: texts, instants and one count are known."""
    if example == _TIME:
        if isinstance(value, datetime) and value.tzinfo is not None and _FIRST_YEAR <= value.year <= _LAST_YEAR:
            return []
        return [(path, f"must be a date and time with its offset, without quotes, like {example}.")]
    if example == _TRUE:
        return [] if isinstance(value, bool) else [(path, "must be true or false, without quotes.")]
    if path.rpartition(".")[2] == DOSES_PER_DAY.path.rpartition(".")[2]:
        most = int(DOSES_PER_DAY.high)
        if isinstance(value, int) and not isinstance(value, bool) and DOSES_PER_DAY.low <= value <= most:
            return []
        return [
            (path, f"must be a whole number from {DOSES_PER_DAY.low:.0f} to {most}, without quotes, like {example}.")
        ]
    return [] if isinstance(value, str) else [(path, f"must be text in quotes, like {example}.")]


def _missing(
    table: str, given: Mapping[str, Any], needed: Sequence[str], spec: Mapping[str, str]
) -> list[tuple[str, str]]:
    blank = [name for name, value in given.items() if isinstance(value, str) and not value.split()]
    absent = [name for name in needed if name not in given or name in blank]
    return [(f"{table}.{name}" if table else name, f"is missing. Write {name} = {spec[name]}") for name in absent]


def _unknown(allowed: Iterable[str]) -> str:
    return f"is not known. Allowed are: {', '.join(allowed)}."


def line_of(text: str, path: str) -> int:
    """Return the line on which a dotted field stands in TOML text, or its table, else 0.

    Parameters
    ----------
    text : str
        The file's text.
    path : str
        Dotted path such as ``change.target``.

    Returns
    -------
    int
        Line number, counted from one.
    """
    row = re.fullmatch(r"(\w+)\.(\d+)\.?(.*)", path)
    if row:
        return _line_in_row(text, row[1], int(row[2]), row[3])
    table = path.rpartition(".")[0]
    here, table_line = "", 0
    for number, line in enumerate(text.split("\n"), start=1):
        header = re.match(r"\s*\[\[?\s*([\w.]+)\s*\]", line)
        if header:
            here = header.group(1)
            if here in (path, table):
                table_line = table_line or number
        key = re.match(r"\s*([\w.]+)\s*=", line)
        if key and ".".join(filter(None, (here, key.group(1)))) == path:
            return number
    # An inline table, as in label = {...}: the line of the table itself.
    return table_line or (line_of(text, table) if table else 0)


def _line_in_row(text: str, name: str, number: int, field: str) -> int:
    """Return the line of a field in one of several tables of the same name, or where the table begins."""
    lines = text.split("\n")
    starts = [n for n, line in enumerate(lines) if re.match(rf"\s*\[\[\s*{name}\s*\]\]", line)]
    if number > len(starts):
        return line_of(text, name)
    begin, end = starts[number - 1], starts[number] if number < len(starts) else len(lines)
    inside = line_of("\n".join(lines[begin:end]), f"{name}.{field}") if field else 1
    return begin + max(inside, 1)
