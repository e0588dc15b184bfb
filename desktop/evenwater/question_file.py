"""The shape of a question file: which tables and fields each kind has, and where a fault stands."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from evenwater.engine.visible import quoted
from evenwater.question_exchange import exchange
from evenwater.question_jug import jug
from evenwater.question_parts import (
    Wrongs,
    list_rows,
    missing_fields,
    needed_of_additive,
    not_known,
    wrong_fields,
    wrong_table,
    wrong_value,
)
from evenwater.question_recovery import recovery
from evenwater.question_tables import (
    CALIBRATION,
    CALIBRATION_NEEDED,
    CALIBRATION_ROWS,
    CHEMISTRY,
    CHEMISTRY_NEEDED,
    CONVERT,
    CORRECTION,
    DELIVERED,
    EXCHANGE,
    ITEM,
    NEEDED,
    PARTNER,
    PLANNED,
    RECORD,
    RECORD_ROWS,
    STOCK_LABEL,
    STOCK_TEMPERATURE,
    TIME,
    TIMETABLE,
    TIMETABLE_NEEDED,
    TIMETABLE_ROWS,
    UPKEEP,
    WANTED,
    WAYS,
)

# The whole file is looked through for the line of each.
_MOST_FAULTS = 50


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
        Empty when every table and field is one that the kind has, of the type that it has. Of very many the last one only
        says how many more there are.
    """
    kind = raw.get("kind")
    if kind not in KINDS:
        said = "the kind is missing" if kind is None else "that is not a kind"
        if isinstance(kind, str):
            said = f"“{quoted(kind)}” is not a kind"
        found = [("kind", f"{said}. Write one of: {', '.join(KINDS)}.")]
    else:
        found = _SHAPES[kind](raw)
    left = len(found) - _MOST_FAULTS
    said_last = [Fault(0, "", f"has {left} more faults. Mend these first.")] if left > 0 else []
    return [Fault(line_of(text, path), path, said) for path, said in found[:_MOST_FAULTS]] + said_last


def _convert(raw: Mapping[str, Any]) -> Wrongs:
    given = {name: value for name, value in raw.items() if name != "kind"}
    return wrong_fields("", given, CONVERT) + missing_fields("", given, ("value", "to"), CONVERT)


def _correction(raw: Mapping[str, Any]) -> Wrongs:
    allowed = ("kind", "now", *CORRECTION)
    found = [(name, not_known(allowed)) for name in raw if name not in allowed]
    if "now" in raw:
        found += wrong_value("now", raw["now"], TIME)
    for table, spec in CORRECTION.items():
        given = raw.get(table, {})
        if not isinstance(given, Mapping):
            found.append((table, f"must be a table: [{table}]"))
            continue
        found += wrong_fields(table, given, spec)
        found += missing_fields(table, given, needed_of_additive(given) if table == "additive" else NEEDED[table], spec)
    return found


def _stock(raw: Mapping[str, Any]) -> Wrongs:
    allowed = ("kind", "temperature", "additive", "wanted")
    found = [(name, not_known(allowed)) for name in raw if name not in allowed]
    if "temperature" in raw:
        found += wrong_value("temperature", raw["temperature"], STOCK_TEMPERATURE)
    additive, wanted = raw.get("additive", {}), raw.get("wanted")
    if not isinstance(additive, Mapping):
        return [*found, ("additive", "must be a table: [additive]")]
    spec = CORRECTION["additive"]
    found += wrong_fields("additive", additive, spec, STOCK_LABEL)
    if "temperature" in additive:
        found.append(("additive.temperature", 'stands in the file itself in this kind: temperature = "20 degC".'))
    saturated = ("saturated",) if additive.get("saturated") is True else ()
    beside = next((name for name in ("label", "dissolved", *saturated) if name in additive), "")
    if wanted is not None and beside:
        return [*found, ("wanted", f"stands beside additive.{beside}, which says the strength. Leave one of them out.")]
    if "label" in additive:
        return found
    needed = needed_of_additive(additive) if wanted is None else ("chemical", "made_up_to")
    return found + missing_fields("additive", additive, needed, spec) + ([] if wanted is None else _wanted(wanted))


def _wanted(wanted: Any) -> Wrongs:
    if not isinstance(wanted, Mapping):
        return [("wanted", "must be a table: [wanted]")]
    said = {name: value for name, value in wanted.items() if name != "partner"}
    found = wrong_fields("wanted", said, WANTED)
    ways = [way for way in WAYS if any(name in wanted for name in way)]
    if len(ways) != 1 or (ways == [("partner",)] and "parameter" in wanted):
        choices = "strength; or dose, water and raises; or partner alone"
        return [*found, ("wanted", f"says the strength in no way, or in several. Write one of: {choices}.")]
    if "partner" not in wanted:
        return found + missing_fields("wanted", wanted, ways[0], WANTED)
    partner = wanted["partner"]
    if not isinstance(partner, Mapping):
        return [*found, ("wanted.partner", f"must be a table with {', '.join(PARTNER)}.")]
    path = "wanted.partner"
    return found + wrong_fields(path, partner, PARTNER) + missing_fields(path, partner, NEEDED["additive"], PARTNER)


def _chemistry(raw: Mapping[str, Any]) -> Wrongs:
    allowed = ("kind", *CHEMISTRY)
    found = [(name, not_known(allowed)) for name in raw if name not in allowed]
    for table, spec in CHEMISTRY.items():
        given = raw.get(table, {})
        if not isinstance(given, Mapping):
            found.append((table, f"must be a table: [{table}]"))
            continue
        needed = CHEMISTRY_NEEDED[table]
        if table == "system":
            if "ph" in given and "pco2" in given:
                found.append(("system.pco2", "stands beside ph. Give one of the two; the other follows from it."))
            needed = (*needed, "pco2" if "pco2" in given else "ph")
        found += wrong_fields(table, given, spec) + missing_fields(table, given, needed, spec)
    return found


def _upkeep(raw: Mapping[str, Any]) -> Wrongs:
    found = [(name, not_known(UPKEEP)) for name in raw if name not in UPKEEP]
    if "now" in raw:
        found += wrong_value("now", raw["now"], TIME)
    found += wrong_table(raw, "system", CORRECTION["system"], NEEDED["system"])
    if "exchange" in raw:
        found += wrong_table(raw, "exchange", EXCHANGE, ("per_day",))
    if not raw.get("item"):
        found.append(("item", "is missing. Write [[item]], [item.additive] and [item.pump] for each value to keep."))
    for name, spec, needed in (("item", ITEM, ("parameter",)), ("planned", PLANNED, tuple(PLANNED)[:3])):
        for here, row in list_rows(raw, name, found):
            inner = ("additive", "pump") if name == "item" else ()
            own = {field: value for field, value in row.items() if field not in inner}
            found += wrong_fields(here, own, spec) + missing_fields(here, own, needed, spec)
            for table in inner:
                wanted = needed_of_additive(row.get(table, {})) if table == "additive" else NEEDED[table]
                found += [(f"{here}.{path}", said) for path, said in wrong_table(row, table, CORRECTION[table], wanted)]
    return found


def _consumption(raw: Mapping[str, Any]) -> Wrongs:
    allowed = ("kind", *RECORD, "system", "additive", *RECORD_ROWS)
    found = [(name, not_known(allowed)) for name in raw if name not in allowed]
    top = {name: raw[name] for name in RECORD if name in raw}
    found += wrong_fields("", top, RECORD) + missing_fields("", top, ("parameter",), RECORD)
    in_volumes = False
    for name, spec in RECORD_ROWS.items():
        for here, row in list_rows(raw, name, found):
            needed = tuple(spec)
            if name == "dose":
                needed = ("at", "volume" if "volume" in row else "raises")
                in_volumes = in_volumes or "volume" in row
                if "volume" in row and "raises" in row:
                    found.append((f"{here}.volume", "stands beside raises. Give one of the two."))
            found += wrong_fields(here, row, spec) + missing_fields(here, row, needed, spec)
    found += wrong_table(raw, "system", CORRECTION["system"], NEEDED["system"] if in_volumes else ())
    wanted = needed_of_additive(raw.get("additive", {})) if in_volumes or "additive" in raw else ()
    return found + wrong_table(raw, "additive", CORRECTION["additive"], wanted)


def _calibration(raw: Mapping[str, Any]) -> Wrongs:
    allowed = ("kind", "now", "wanted", *CALIBRATION, "record", *CALIBRATION_ROWS)
    found = [(name, not_known(allowed)) for name in raw if name not in allowed]
    for name, example in (("now", TIME), ("wanted", '"1 %"')):
        found += wrong_value(name, raw[name], example) if name in raw else []
    for name, spec in CALIBRATION.items():
        if name in raw:
            found += wrong_table(raw, name, spec, CALIBRATION_NEEDED.get(name, ()))
    if "record" in raw:
        found += _delivered(raw["record"])
    if not raw.get("run"):
        found.append(("run", "is missing. Write [[run]] with seconds and volume or mass, three times at least."))
    for name, spec in CALIBRATION_ROWS.items():
        for here, row in list_rows(raw, name, found):
            needed: tuple[str, ...] = ("at", "hours", "flow")
            if name == "run":
                needed = ("seconds", "mass" if "mass" in row else "volume")
                if "mass" in row and "volume" in row:
                    found.append((f"{here}.mass", "stands beside volume. Give one of the two."))
            found += wrong_fields(here, row, spec) + missing_fields(here, row, needed, spec)
    return found


def _delivered(table: Any) -> Wrongs:
    """Return what is wrong with a record of amounts in equal intervals."""
    if not isinstance(table, Mapping):
        return [("record", "must be a table: [record]")]
    plain = {name: value for name, value in table.items() if name != "amounts"}
    found = wrong_fields("record", plain, DELIVERED) + missing_fields("record", table, tuple(DELIVERED), DELIVERED)
    amounts = table.get("amounts", [])
    if not isinstance(amounts, list) or not all(isinstance(amount, str) for amount in amounts):
        found.append(("record.amounts", f"must be a list of texts in quotes, like {DELIVERED['amounts']}."))
    return found


def _timetable(raw: Mapping[str, Any]) -> Wrongs:
    allowed = ("kind", *TIMETABLE, *TIMETABLE_ROWS)
    found = [(name, not_known(allowed)) for name in raw if name not in allowed]
    found += wrong_fields("", {name: raw[name] for name in TIMETABLE if name in raw}, TIMETABLE)
    if not raw.get("pump"):
        found.append(("pump", "is missing. Write [[pump]] with name, per_day and flow for each pump."))
    for name, spec in TIMETABLE_ROWS.items():
        for here, row in list_rows(raw, name, found):
            found += wrong_fields(here, row, spec) + missing_fields(here, row, TIMETABLE_NEEDED[name], spec)
    return found


_SHAPES: dict[str, Callable[[Mapping[str, Any]], Wrongs]] = {
    "correction": _correction,
    "convert": _convert,
    "stock": _stock,
    "chemistry": _chemistry,
    "upkeep": _upkeep,
    "consumption": _consumption,
    "calibration": _calibration,
    "timetable": _timetable,
    "jug": jug,
    "recovery": recovery,
    "exchange": exchange,
}
KINDS = tuple(_SHAPES)


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
