"""The shape of a question file: which tables and fields each kind has, and where a fault stands."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

_LABEL = ("dose", "water", "raises")
_CORRECTION: dict[str, tuple[str, ...]] = {
    "system": (
        "name", "net_volume", "volume_uncertainty", "salinity", "temperature", "ph",
    ),
    "change": (
        "parameter", "measured", "measured_at", "target", "daily_use", "fastest_rise", "reason",
    ),
    "additive": ("chemical", "dissolved", "made_up_to", "purity", "label"),
    "pump": ("flow", "smallest_dose", "step", "largest_share", "doses_per_day"),
}  # fmt: skip
_CONVERT = ("value", "to", "parameter", "salinity", "temperature")
KINDS = ("correction", "convert")


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
        Empty when every table and field is one that the kind has.
    """
    kind = raw.get("kind")
    if kind not in KINDS:
        said = f"“{kind}” is not a kind" if kind is not None else "the kind is missing"
        return [Fault(line_of(text, "kind"), "kind", f"{said}. Write one of: {', '.join(KINDS)}.")]
    if kind == "convert":
        return _plain(raw, ("kind", *_CONVERT), text) + _needed(raw, ("value", "to"))
    out = [
        Fault(line_of(text, name), name, f"is not part of a correction. Allowed are: kind, now, {', '.join(_CORRECTION)}.")
        for name in raw
        if name not in ("kind", "now", *_CORRECTION)
    ]
    for table, names in _CORRECTION.items():
        entry = raw.get(table, {})
        if not isinstance(entry, Mapping):
            out.append(Fault(line_of(text, table), table, f"must be a table: [{table}]"))
            continue
        out += [
            Fault(line_of(text, f"{table}.{name}"), f"{table}.{name}", f"is not known. Allowed are: {', '.join(names)}.")
            for name in entry
            if name not in names
        ]
        out += [
            Fault(line_of(text, f"{table}.{name}"), f"{table}.{name}", "must be text with its unit.")
            for name, value in entry.items()
            if isinstance(value, Mapping | list) and name != "label"
        ]
    return out + _label(raw, text)


def _label(raw: Mapping[str, Any], text: str) -> list[Fault]:
    additive = raw.get("additive")
    label = additive.get("label") if isinstance(additive, Mapping) else None
    if label is None:
        return []
    line = line_of(text, "additive.label")
    if not isinstance(label, Mapping) or set(label) - set(_LABEL):
        return [Fault(line, "additive.label", f"must be a table with {', '.join(_LABEL)}.")]
    if isinstance(additive, Mapping) and "chemical" in additive:
        return [Fault(line, "additive.label", "stands beside a chemical. Give one of the two.")]
    return []


def _plain(raw: Mapping[str, Any], allowed: Sequence[str], text: str) -> list[Fault]:
    out = []
    for name, value in raw.items():
        if name not in allowed:
            out.append(Fault(line_of(text, name), name, f"is not known. Allowed are: {', '.join(allowed)}."))
        elif not isinstance(value, str):
            out.append(Fault(line_of(text, name), name, "must be text, in quotes."))
    return out


def _needed(raw: Mapping[str, Any], names: Sequence[str]) -> list[Fault]:
    return [Fault(0, name, "is missing.") for name in names if name not in raw]


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
    table, _, name = path.rpartition(".")
    here, table_line = "", 0
    for number, line in enumerate(text.splitlines(), start=1):
        header = re.match(r"\s*\[\s*([\w.]+)\s*\]", line)
        if header:
            here = header.group(1)
            if here in (path, table):
                table_line = number
        key = re.match(r"\s*([\w.]+)\s*=", line)
        if key and ".".join(filter(None, (here, key.group(1)))) == path:
            return number
    if table_line or not table:
        return table_line
    # An inline table, as in label = {...}: the line of the table itself.
    return line_of(text, table) if name else 0
