"""What is wrong with the tables, lists and fields of a question file, whatever its kind."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime
from typing import Any

from evenwater.engine.fields import DOSES_PER_DAY
from evenwater.question_tables import ALSO, CORRECTION, LABEL, NEEDED, TIME, TRUE

# Path of a field, and what is said of it.
Wrongs = list[tuple[str, str]]

# A plan's dates lie some years around the reading, and calendars end: this leaves room on both sides.
_FIRST_YEAR, _LAST_YEAR = 1900, 9000
_LARGEST = 1_000_000_000
# Whole numbers of doses in a day.
_COUNTS = ("doses_per_day", "fewest_doses", "most_doses")


def needed_of_additive(given: Any) -> tuple[str, ...]:
    """Return which fields an additive needs: a label none besides, limewater no mass."""
    if not isinstance(given, Mapping) or "label" in given:
        return ()
    return ("chemical", "made_up_to") if given.get("saturated") is True else NEEDED["additive"]


def list_rows(raw: Mapping[str, Any], name: str, found: Wrongs) -> list[tuple[str, Mapping[str, Any]]]:
    """Return the tables of a list with their paths; what is no such list is noted."""
    rows = raw.get(name, [])
    if not isinstance(rows, list) or not all(isinstance(row, Mapping) for row in rows):
        found.append((name, f"must be a list of tables: [[{name}]]"))
        return []
    return [(f"{name}.{number}", row) for number, row in enumerate(rows, start=1)]


def wrong_table(raw: Mapping[str, Any], table: str, spec: Mapping[str, str], needed: Sequence[str]) -> Wrongs:
    """Return what is wrong with one table: its fields, and what it lacks."""
    given = raw.get(table, {})
    if not isinstance(given, Mapping):
        return [(table, f"must be a table: [{table}]")]
    return wrong_fields(table, given, spec) + missing_fields(table, given, needed, spec)


def wrong_fields(
    table: str, given: Mapping[str, Any], spec: Mapping[str, str], label: Mapping[str, str] = LABEL
) -> Wrongs:
    """Return what is wrong with the fields that a table has."""
    found = []
    for name, value in given.items():
        path = f"{table}.{name}" if table else name
        if name not in spec:
            found.append((path, not_known(spec)))
        elif path == "additive.label":
            found += _label(path, value, given, label)
        elif path == "additive.also":
            found += _also(path, value, given)
        elif name in ("dissolved", "purity") and given.get("saturated") is True:
            found.append((path, "stands beside saturated, which says the strength. Leave one of them out."))
        else:
            found += wrong_value(path, value, spec[name])
    return found


def _label(path: str, value: Any, additive: Mapping[str, Any], spec: Mapping[str, str]) -> Wrongs:
    if not isinstance(value, Mapping):
        return [(path, f"must be a table with {', '.join(spec)}.")]
    beside = [name for name in additive if name in CORRECTION["additive"] and name != "label"]
    if beside:
        return [(path, f"stands beside {', '.join(beside)}. Give a chemical or a label, not both.")]
    return wrong_fields(path, value, spec) + missing_fields(path, value, tuple(LABEL), spec)


def _also(path: str, value: Any, additive: Mapping[str, Any]) -> Wrongs:
    """Return what is wrong with the second chemical of a mix; its mass goes with that of the first."""
    if not isinstance(value, Mapping):
        return [(path, f"must be a table with {', '.join(ALSO)}.")]
    if additive.get("saturated") is True:
        return [(path, "stands beside saturated. Limewater is made of calcium hydroxide alone.")]
    needed = ("chemical", "dissolved") if "dissolved" in additive else ("chemical",)
    if "dissolved" in value and "dissolved" not in additive:
        return [(f"{path}.dissolved", "stands without additive.dissolved. Give both masses, or neither with [wanted].")]
    return wrong_fields(path, value, ALSO) + missing_fields(path, value, needed, ALSO)


def wrong_value(path: str, value: Any, example: str) -> Wrongs:
    """Return what is wrong with the type of one value: texts, instants and one count are known."""
    if example == TIME:
        if isinstance(value, datetime) and value.tzinfo is not None and _FIRST_YEAR <= value.year <= _LAST_YEAR:
            return []
        return [(path, f"must be a date and time with its offset, without quotes, like {example}.")]
    if example == TRUE:
        return [] if isinstance(value, bool) else [(path, "must be true or false, without quotes.")]
    if path.rpartition(".")[2] in _COUNTS:
        most = int(DOSES_PER_DAY.high)
        if isinstance(value, int) and not isinstance(value, bool) and DOSES_PER_DAY.low <= value <= most:
            return []
        return [
            (path, f"must be a whole number from {DOSES_PER_DAY.low:.0f} to {most}, without quotes, like {example}.")
        ]
    if example.isdigit() and isinstance(value, int | float) and not isinstance(value, bool):
        # These need no unit; neither a not-a-number nor an infinity is between the two.
        return [] if 0 <= value <= _LARGEST else [(path, f"must be a number from 0 to {_LARGEST}, like {example}.")]
    return [] if isinstance(value, str) else [(path, f"must be text in quotes, like {example}.")]


def missing_fields(table: str, given: Mapping[str, Any], needed: Sequence[str], spec: Mapping[str, str]) -> Wrongs:
    """Return which fields a table lacks, or has blank."""
    blank = [name for name, value in given.items() if isinstance(value, str) and not value.split()]
    absent = [name for name in needed if name not in given or name in blank]
    return [(f"{table}.{name}" if table else name, f"is missing. Write {name} = {spec[name]}") for name in absent]


def not_known(allowed: Iterable[str]) -> str:
    """Say that a name is none of those that are allowed here."""
    return f"is not known. Allowed are: {', '.join(allowed)}."
