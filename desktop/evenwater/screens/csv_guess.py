"""What a spreadsheet of readings is taken for, every guess with its reason; what only the keeper can say is asked."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import replace
from types import MappingProxyType
from typing import TypeVar

from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.units import KINDS
from evenwater.screens.csv_choices import (
    CLOCKS,
    DECIMALS,
    ENCODINGS,
    HEADINGS_WITHIN,
    HOURS,
    ORDERS,
    ROLES,
    SEPARATORS,
    TWICE,
    Choices,
    Column,
    Guess,
    Option,
    Point,
    Refusal,
    Rulings,
    Series,
)
from evenwater.screens.csv_headings import heading_of
from evenwater.screens.csv_layout import Layout, lay_out
from evenwater.screens.csv_text import UnreadableError, decoded, encoding_of
from evenwater.screens.csv_times import Clock, orders, parted, read_clock
from evenwater.screens.csv_units import Source, Verdict, decimal_of, unit_of
from evenwater.screens.csv_words import csv_sentence, cut
from evenwater.screens.terms import capitalized, term
from evenwater.wording import marked, say, say_all

_NONE: Rulings = MappingProxyType({})
_Holder = TypeVar("_Holder", Column, Series)

_AT = marked("At {hour}")
_WORDS = {
    "encoding": dict(zip(ENCODINGS, ("UTF-8", "UTF-16", marked("Western European, code page 1252")), strict=True)),
    "separator": dict(zip(SEPARATORS, (marked("Semicolon"), marked("Comma"), marked("Tab"), marked("Bar")), strict=True)),
    "decimal": dict(zip(DECIMALS, (marked("Point"), marked("Comma"), marked("Either, as typed by hand")), strict=True)),
    "order": dict(zip(ORDERS, (marked("Year, month, day"), marked("Day, month, year"), marked("Month, day, year")), strict=True)),
    "clock": dict(zip(CLOCKS, (marked("24 hours"), marked("12 hours with am and pm")), strict=True)),
    "hour": {"": marked("Leave them out"), **dict.fromkeys(HOURS, _AT)},
    "twice": dict(zip(TWICE, (marked("The first"), marked("The second"), marked("Leave them out")), strict=True)),
    "column": {
        "": marked("Leave out"), "date": marked("Date"), "time": marked("Time of day"), "parameter": marked("Name of the parameter"), "value": marked("Value"),
        "unit": marked("Unit"), "kit": marked("Test kit"), "who": marked("Who tested"), "note": marked("Note"),
    },
}  # fmt: skip


def sniff(data: bytes, catalogue: Catalogue, rulings: Rulings = _NONE) -> Guess | Refusal:
    """Return what a file is taken for.

    Parameters
    ----------
    data : bytes
        The whole file.
    catalogue : Catalogue
        The parameters, with what is plausible of each.
    rulings : mapping of str to str
        What the keeper has decided so far. What does not fit the file any more is passed over.

    Returns
    -------
    Guess or Refusal
        The choices with all their points, or why the file cannot be read at all.
    """
    try:
        encoding = _encoding(data, rulings)
        layout = lay_out(decoded(data, encoding.value), catalogue.parameters, rulings)
    except UnreadableError as error:
        return Refusal(error.reason.code, csv_sentence(error.reason), error.line)
    sources = dict(_sources(layout, catalogue.parameters))
    decimal = _ruled("decimal", decimal_of(sources.values(), layout.own), rulings)
    units = {what: _ruled(what, unit_of(source, decimal.value), rulings, source) for what, source in sources.items()}
    times = _times(layout, rulings)
    choices = Choices(
        encoding.value, layout.separator, layout.heading, decimal.value, times["order"].value, times["clock"].value,
        times["hour"].value, rulings["twice"] if rulings.get("twice") in TWICE else "",
        tuple(_with_unit(c, units.get(f"unit {at}")) for at, c in enumerate(layout.columns, 1)),
        tuple(_with_unit(s, units.get(f"unit of series {at}")) for at, s in enumerate(layout.series, 1)),
        layout.own,
    )  # fmt: skip
    points = (
        _point("encoding", say("Encoding"), encoding),
        _point("separator", say("Separator"), _separator(layout, rulings)),
        _heading(layout, rulings),
        _point("decimal", say("Decimal mark"), decimal),
        *(_point(what, say_all(_TIME_TITLES[what]), verdict) for what, verdict in times.items()),
        *_column_points(layout, catalogue, rulings, sources, units),
        *_series_points(layout, catalogue, rulings, sources, units),
    )
    return Guess(choices, points, tuple(_name(layout, at) for at in range(1, len(layout.columns) + 1)))


def with_ruling(rulings: Rulings, what: str, value: str) -> dict[str, str]:
    """Return the keeper's rulings with one more, without those that a change of it makes void."""
    first = ("encoding", "separator", "heading")
    kept = {old: ruled for old, ruled in rulings.items() if what not in first or old in first}
    if what.startswith("column "):
        kept.pop(what.replace("column", "unit"), None)
        # One column holds the dates; another one that did so by the keeper's own word no longer does.
        kept = {old: r for old, r in kept.items() if "series" not in old and (r != value or r not in ROLES)}
    if what.startswith("series "):
        kept.pop(f"unit of {what}", None)
    return {**kept, what: value}


def twice_point(value: str) -> Point:
    """Return the question about readings in an hour that came twice."""
    words = say("Some readings are from the hour that came twice when the clocks went back.")
    return _point("twice", say("Hour that came twice"), Verdict(value, "chosen" if value else "ask", words))


_TIME_TITLES = {
    "order": marked("Order of the date"),
    "clock": marked("Clock"),
    "hour": marked("Readings without a time of day"),
}


def _encoding(data: bytes, rulings: Rulings) -> Verdict:
    found = encoding_of(data)
    if rulings.get("encoding") in ENCODINGS:
        return Verdict(rulings["encoding"], "chosen", "")
    if found == "cp1252":
        return Verdict(found, "guessed", say("The file is not in UTF-8. See whether names and signs look right."))
    return Verdict(found, "said", "")


def _separator(layout: Layout, rulings: Rulings) -> Verdict:
    if rulings.get("separator") == layout.separator:
        return Verdict(layout.separator, "chosen", "")
    words = "" if layout.separator_said else say("See whether the columns look right.")
    return Verdict(layout.separator, "said" if layout.separator_said else "guessed", words)


def _heading(layout: Layout, rulings: Rulings) -> Point:
    rows = range(1, HEADINGS_WITHIN + 1)
    options = (Option("0", say("None")), *(Option(str(row), say("Row {row}", row=row)) for row in rows))
    chosen = rulings.get("heading") == str(layout.heading)
    words = (
        ""
        if layout.heading == 1
        else say("No headings were found.")
        if not layout.heading
        else say("What stands above is left out.")
    )
    return Point("heading", say("Headings"), str(layout.heading), "chosen" if chosen else "guessed", words, options)


def _times(layout: Layout, rulings: Rulings) -> dict[str, Verdict]:
    where = {column.role: at for at, column in enumerate(layout.columns)}
    both = [parted(text) for text in layout.texts[where["date"]]] if "date" in where else []
    clocks = list(layout.texts[where["time"]]) if "time" in where else []
    inside = [clock for _, clock in both]
    bare = sum(not clock for clock in inside)
    found = {
        "order": _order(tuple(dict.fromkeys(day for day, _ in both))),
        "clock": _clock(dict.fromkeys(clock for clock in (*inside, *clocks) if clock)),
    }
    if bare and not clocks:
        part = say("The dates have") if bare == len(inside) else say("Some dates have")
        hour = "12:00" if bare == len(inside) else ""
        found["hour"] = Verdict(
            hour, "guessed", say("{part} no time of day. Choose what they are taken as.", part=part)
        )
    else:
        found["hour"] = Verdict("", "said", "")
    return {what: _ruled(what, verdict, rulings) for what, verdict in found.items()}


def _order(dates: tuple[str, ...]) -> Verdict:
    fits = [orders(text) for text in dates]
    day_first = any("dmy" in fit and "mdy" not in fit for fit in fits)
    month_first = any("mdy" in fit and "dmy" not in fit for fit in fits)
    unclear = next((text for text, fit in zip(dates, fits, strict=True) if fit == {"dmy", "mdy"}), "")
    if not any(fits):
        return Verdict("", "ask", say("No date was found. Choose the column and the order of its dates."))
    if day_first and month_first:
        return Verdict("", "ask", say("Some dates fit only with the day first, and some only with the month first."))
    if day_first and all("." in text for text in dates):
        return Verdict("dmy", "said", say("Dates with points begin with the day."))
    if day_first or month_first:
        return Verdict("dmy" if day_first else "mdy", "said", say("Not every date would be one in another order."))
    if unclear:
        return Verdict("", "ask", say("“{unclear}”: which is the day and which the month?", unclear=cut(unclear)))
    return Verdict("ymd", "said", say("The dates begin with the year."))


def _clock(texts: Iterable[str]) -> Verdict:
    read = [clock for clock in (read_clock(text, "24") for text in texts) if isinstance(clock, Clock)]
    halves = sum(bool(clock.half) for clock in read)
    unclear = any(not clock.half and 1 <= clock.time.hour <= 12 for clock in read)
    if not halves:
        return Verdict("24", "said", "")
    if unclear:
        return Verdict(
            "", "ask", say("Some times say am or pm and some do not. Of those, are the hours counted to 24?")
        )
    return Verdict("12", "said", "")


def _sources(layout: Layout, parameters: Mapping[str, Parameter]) -> Iterator[tuple[str, Source]]:
    """Yield the figures of each column of readings, or of each series, under the name of the ruling about their unit."""
    if layout.series:
        for number, (series, texts) in enumerate(zip(layout.series, layout.series_texts, strict=True), 1):
            if series.parameter:
                yield (
                    f"unit of series {number}",
                    _source(series.name, series.said, parameters[series.parameter], texts, layout),
                )
        return
    for number, (column, heading, texts) in enumerate(
        zip(layout.columns, layout.headings, layout.texts, strict=True), 1
    ):
        if column.role == "reading":
            yield f"unit {number}", _source(heading, "", parameters[column.parameter], texts, layout)


def _source(name: str, said: str, parameter: Parameter, texts: tuple[str, ...], layout: Layout) -> Source:
    """Return figures with what their heading says, which may be a name that the keeper alone knows."""
    only = {parameter.name: parameter}
    heading = heading_of(name, only, said) or heading_of(parameter.name, only, said)
    assert heading is not None  # noqa: S101  (a parameter is known by its own name)
    return Source(parameter, heading, texts, layout.own)


def _column_points(
    layout: Layout, catalogue: Catalogue, rulings: Rulings, sources: Mapping[str, Source], units: Mapping[str, Verdict]
) -> Iterator[Point]:
    parameters = tuple(Option(name, capitalized(name)) for name in catalogue.parameters)
    options = (*(Option(value, words) for value, words in say_all(_WORDS["column"]).items()), *parameters)
    for at, (column, by_content) in enumerate(zip(layout.columns, layout.by_content, strict=True), 1):
        what, name = f"column {at}", _name(layout, at)
        chosen = rulings.get(what) == (column.parameter or column.role)
        state = "chosen" if chosen else "guessed" if by_content or not column.role else "said"
        words = (
            ""
            if column.role
            else say("Left out: the heading is not known.")
            if state == "guessed"
            else say("Left out.")
        )
        yield Point(what, name, column.parameter or column.role, state, words, options)
        if f"unit {at}" in units:
            yield _unit_point(f"unit {at}", say("{name}: unit", name=term(name)), units, sources)


def _series_points(
    layout: Layout, catalogue: Catalogue, rulings: Rulings, sources: Mapping[str, Source], units: Mapping[str, Verdict]
) -> Iterator[Point]:
    options = (Option("", say("Leave out")), *(Option(name, capitalized(name)) for name in catalogue.parameters))
    for at, series in enumerate(layout.series, 1):
        what, name = f"series {at}", f"“{cut(f'{series.name} {series.said}')}”"
        state = "chosen" if rulings.get(what) == series.parameter else "said" if series.parameter else "guessed"
        words = (
            ""
            if series.parameter
            else say("Left out: the name is not known.")
            if state == "guessed"
            else say("Left out.")
        )
        yield Point(what, name, series.parameter, state, words, options)
        if f"unit of {what}" in units:
            yield _unit_point(f"unit of {what}", say("{name}: unit", name=term(name)), units, sources)


def _unit_point(what: str, title: str, units: Mapping[str, Verdict], sources: Mapping[str, Source]) -> Point:
    listed = KINDS[sources[what].parameter.kind].units
    verdict = units[what]
    return Point(
        what, title, verdict.value, verdict.state, verdict.words, tuple(Option(u.id, say(u.shown)) for u in listed)
    )


def _name(layout: Layout, number: int) -> str:
    return f"“{cut(heading)}”" if (heading := layout.headings[number - 1]) else say("Column {number}", number=number)


def _point(what: str, title: str, verdict: Verdict) -> Point:
    options = tuple(Option(value, words.replace("{hour}", value)) for value, words in say_all(_WORDS[what]).items())
    return Point(what, title, verdict.value, verdict.state, verdict.words, options)


def _ruled(what: str, verdict: Verdict, rulings: Rulings, source: Source | None = None) -> Verdict:
    ruling = rulings.get(what)
    allowed = tuple(u.id for u in KINDS[source.parameter.kind].units) if source else tuple(say_all(_WORDS[what]))
    return Verdict(ruling, "chosen", verdict.words) if ruling is not None and ruling in allowed else verdict


def _with_unit(holder: _Holder, verdict: Verdict | None) -> _Holder:
    return holder if verdict is None else replace(holder, unit=verdict.value)
