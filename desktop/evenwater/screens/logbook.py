"""The Log sheet without its widgets: what is noted, read strictly, and how it stands in the list and the chart."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime

import numpy as np

from evenwater.engine import fields
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.quantities import Typed, Water, density_kg_per_l, from_canonical, to_canonical
from evenwater.engine.reader import Field, Ok, read
from evenwater.engine.recipe import StockAnswer
from evenwater.screens import words
from evenwater.screens.shown import Shown, date_words, dose, significant, unit_words, with_unit
from evenwater.screens.terms import capitalized, term
from evenwater.screens.views import Floats, Message
from evenwater.screens.when import AskWhen, read_when, when_words
from evenwater.wording import marked, say

Values = Mapping[str, Typed]
# What a jug holds, as the stock was reckoned.
Jug = StockAnswer

READING, DOSE, EXCHANGE, NOTE = "reading", "dose", "exchange", "note"
KINDS = (
    (READING, marked("A reading")),
    (DOSE, marked("A dose given")),
    (EXCHANGE, marked("A water exchange")),
    (NOTE, marked("A note")),
)
# The fields of each kind, in the order of the form.
FIELDS = {
    READING: ("parameter", "value", "at", "kit", "who"),
    DOSE: ("stock", "amount", "at", "who"),
    EXCHANGE: ("litres", "at", "who"),
    NOTE: ("text", "at", "who"),
}
DOSE_GIVEN = Field("log.amount", "dose", "mL", 0.0, 10_000_000.0, above_low=True)
EXCHANGED = Field("log.litres", "volume", "L", 0.0, 5_000_000.0, above_low=True)
_LONGEST_NOTE = 2000


@dataclass(frozen=True)
class Taken:
    """What is to be noted, as the log keeps it: ``value`` in the canonical unit of its kind, ``fields`` as typed."""

    kind: str
    subject: str
    at: datetime
    who: str
    fields: Mapping[str, Typed] = field(default_factory=dict)
    value: float | None = None


def reading_field(parameter: Parameter) -> Field:
    """Return the field of a reading of a parameter."""
    return fields.concentration("log.value", parameter)


def take(
    kind: str,
    said: Values,
    catalogue: Catalogue,
    now: datetime,
    water: Water,
    jug: StockAnswer | None = None,
    carries: str = "",
) -> Taken | tuple[Message, ...]:
    """Read what stands in the form.

    Parameters
    ----------
    kind : str
        One of ``KINDS``.
    said : mapping of str to Typed
        The fields as typed.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present in the keeper's zone.
    water : Water
        The system's water, for figures per kilogram.
    jug : StockAnswer or None
        What the jug of a dose holds.
    carries : str
        What a dose that is corrected carried when it was given; it wins over the jug.

    Returns
    -------
    Taken or tuple of Message
        What is to be noted, or every field that is missing or wrong.
    """
    faults: list[Message] = []
    at = _instant(_text(said, "at"), now, faults)
    kept = {name: said[name] for name in FIELDS[kind] if name in said and said[name].text.strip() and name != "at"}
    subject, value = "", None
    if kind == READING:
        subject, value = _reading(said, catalogue, water, faults)
    elif kind == DOSE:
        subject, value = _text(said, "stock"), _number(said.get("amount", Typed("")), DOSE_GIVEN, faults, water)
        if carries:
            kept["carries"] = Typed(carries)
        elif jug is None:
            faults.append(
                Message(say("Choose the jug. It must hold a batch that can be reckoned."), "log.stock", "missing")
            )
        else:
            kept["carries"] = Typed(carries_text(jug, water))
    elif kind == EXCHANGE:
        value = _number(said.get("litres", Typed("")), EXCHANGED, faults, water)
    else:
        _note(_text(said, "text"), faults)
    if faults or at is None:
        return tuple(faults)
    return Taken(kind, subject, at, _text(said, "who"), kept, value)


def _instant(text: str, now: datetime, faults: list[Message]) -> datetime | None:
    """Return when it was; now when nothing is said."""
    found = read_when(text, now)
    if found is None:
        return now
    if isinstance(found, datetime):
        return found
    reason = found.reason if isinstance(found, AskWhen) else found
    faults.append(Message(when_words(reason), "log.at", reason.code))
    return None


def _reading(said: Values, catalogue: Catalogue, water: Water, faults: list[Message]) -> tuple[str, float | None]:
    parameter = catalogue.parameters.get(_text(said, "parameter"))
    if parameter is None:
        faults.append(Message(say("Choose what was measured."), "log.parameter", "missing"))
        return "", None
    typed, spec = said.get("value", Typed("")), reading_field(parameter)
    value = _number(typed, spec, faults, water)
    low, high = (parameter.canonical(v) for v in parameter.plausible)
    if value is not None and not low <= value <= high:
        shown = Shown(parameter, _unit(typed, spec), water)
        text = say(
            "{value} is not a likely reading of {parameter}. Likely are {low} to {high}. Test again.",
            value=shown.value(value),
            parameter=term(parameter.name),
            low=shown.value(low),
            high=shown.value(high),
        )
        faults.append(Message(text, "log.value", "implausible"))
    return parameter.name, value


def _note(text: str, faults: list[Message]) -> None:
    if not text:
        faults.append(Message(say("Write the note."), "log.text", "missing"))
    elif len(text) > _LONGEST_NOTE:
        faults.append(
            Message(
                say("A note has {longest_note} characters at most.", longest_note=_LONGEST_NOTE), "log.text", "too_long"
            )
        )


def _text(said: Values, name: str) -> str:
    return said.get(name, Typed("")).text.strip()


def _unit(typed: Typed, spec: Field) -> str:
    result = read(typed.text, spec, typed.unit)
    return result.entered.unit if isinstance(result, Ok) else spec.unit


def _number(typed: Typed, spec: Field, faults: list[Message], water: Water) -> float | None:
    result = read(typed.text, spec, typed.unit, water)
    if isinstance(result, Ok):
        return to_canonical(float(result.entered.number), spec.kind, result.entered.unit, water)
    reason = getattr(result, "reason", None)
    if reason is None:
        faults.append(Message(say("Fill this in."), spec.path, "missing"))
    else:
        faults.append(Message(words.sentence(reason), spec.path, reason.code))
    return None


def carries_text(jug: StockAnswer, water: Water) -> str:
    """Return what a millilitre of a jug carries, to be kept with a dose: batches are corrected, doses stay what they were."""
    # Salinity is counted by the kilogram of the tank's water.
    litres = {"salinity": density_kg_per_l(water)}
    return "; ".join(
        f"{item.name} {item.per_litre / 1000.0 / litres.get(item.name, 1.0)!r} {item.unit.replace('/L', '/mL')}"
        for item in jug.carries
    )


def carried(text: str) -> dict[str, float]:
    """Return what a millilitre carried by name [canonical unit of the parameter times L per mL], from ``carries_text``."""
    found = {}
    for part in text.split("; "):
        name, _, rest = part.partition(" ")
        try:
            amount = float(rest.partition(" ")[0])
        except ValueError:
            continue
        if math.isfinite(amount):
            found[name] = amount
    return found


@dataclass(frozen=True)
class LogRow:
    """One line of the list."""

    entry_id: str
    when: str
    what: str
    amount: str
    note: str


def row(entry_id: str, taken: Taken, catalogue: Catalogue, jugs: Mapping[str, str]) -> LogRow:
    """Return an entry as it stands in the list.

    Parameters
    ----------
    entry_id : str
        Its id.
    taken : Taken
        What was noted, its instant in the keeper's zone.
    catalogue : Catalogue
        Parameters.
    jugs : mapping of str to str
        Names of the jugs by their id.

    Returns
    -------
    LogRow
        Its words.
    """
    when = f"{date_words(taken.at)} {taken.at:%H:%M}"
    written = taken.fields.get("text", Typed("")).text
    beside = " · ".join(filter(None, (taken.fields.get("kit", Typed("")).text, taken.who)))
    if taken.kind == READING:
        parameter = catalogue.parameters.get(taken.subject)
        typed = taken.fields.get("value", Typed(""))
        # A spreadsheet may have a note beside a reading.
        noted = " · ".join(filter(None, (beside, written)))
        return LogRow(entry_id, when, capitalized(taken.subject), _as_typed(typed, parameter), noted)
    if taken.kind == DOSE:
        return LogRow(
            entry_id,
            when,
            say("Dose: {subject}", subject=jugs.get(taken.subject, say("a jug that is gone"))),
            dose(taken.value or 0.0),
            beside,
        )
    if taken.kind == EXCHANGE:
        return LogRow(entry_id, when, say("Water exchange"), with_unit(significant(taken.value or 0.0, 4), "L"), beside)
    return LogRow(
        entry_id,
        when,
        say("Note") if taken.kind == NOTE else capitalized(taken.kind),
        "",
        " · ".join(filter(None, (written, beside))),
    )


def _as_typed(typed: Typed, parameter: Parameter | None) -> str:
    """Return a reading as it was typed, with its unit."""
    if parameter is None:
        return typed.text
    result = read(typed.text, reading_field(parameter), typed.unit)
    if not isinstance(result, Ok):
        return typed.text
    number = typed.text.strip().split("\u00a0")[0].split(" ")[0]
    return with_unit(number, unit_words(result.entered.unit)).rstrip("\u00a0")


@dataclass(frozen=True)
class Projected:
    """What a plan expected, in the keeper's unit, against ``times`` [s since the epoch]; all of shape (n,)."""

    times: Floats
    plan: Floats
    low: Floats
    high: Floats


@dataclass(frozen=True)
class HistoryView:
    """The chart of the log: readings over years with the doses below, in the parameter's display unit.

    ``times`` [s since the epoch] and ``values`` have shape (n,); ``doses_at`` [s] and ``doses_ml`` [mL] (m,);
    ``exchanges_at`` [s] (k,). ``kept`` is the range usually kept, ``projected`` what plans expected while they were followed.
    """

    times: Floats
    values: Floats
    doses_at: Floats
    doses_ml: Floats
    exchanges_at: Floats
    kept: tuple[float, float]
    unit: str
    title: str
    decimals: int
    odd: Sequence[int] = ()
    projected: Sequence[Projected] = ()


def history(
    parameter: Parameter, at: Floats, canonical: Floats, doses: tuple[Floats, Floats], exchanges_at: Floats
) -> HistoryView:
    """Return the chart of a parameter's readings.

    Parameters
    ----------
    parameter : Parameter
        What was measured.
    at, canonical : array, shape (n,)
        Instants [s since the epoch] and values [canonical unit].
    doses : tuple of two arrays, shape (m,)
        Instants [s] and amounts [mL] of the doses that carry it.
    exchanges_at : array, shape (k,)
        Instants of water exchanges [s].

    Returns
    -------
    HistoryView
        Values in the parameter's display unit.
    """
    unit = parameter.display_unit
    factor = from_canonical(1.0, parameter.kind, unit)
    values = canonical * factor
    top = float(np.abs(values).max()) if values.size else parameter.range_kept[1]
    decimals = 0 if top >= 100.0 else 2 if top >= 0.2 else 3
    name = unit_words(unit)
    return HistoryView(
        times=at,
        values=values,
        doses_at=doses[0],
        doses_ml=doses[1],
        exchanges_at=exchanges_at,
        kept=parameter.range_kept,
        unit=name,
        title=f"{capitalized(parameter.name)}, {name}",
        decimals=decimals,
    )
