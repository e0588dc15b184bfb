"""Which unit and which decimal mark the figures of a spreadsheet have, judged by what is likely in a tank."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

from evenwater.engine.catalogue import Parameter
from evenwater.engine.quantities import Entered
from evenwater.engine.reader import Ask, Ok
from evenwater.engine.units import KINDS, linear
from evenwater.screens.csv_cells import likely_range, read_loosely
from evenwater.screens.csv_headings import Heading
from evenwater.screens.csv_words import cut
from evenwater.screens.entry import number_part
from evenwater.screens.shown import unit_words
from evenwater.screens.words import listed
from evenwater.wording import say

# So many different figures of a column are looked at.
_LOOKED_AT = 2000
# A unit is likely when so many of the figures are, and a unit that is said is doubted when fewer are than that.
_LIKELY, _DOUBTED = 0.9, 0.5

_BARE = re.compile(r"[0-9]*[.,]?[0-9]+", re.ASCII)
_THOUSANDS = re.compile(r"[1-9][0-9]{0,2}[.,][0-9]{3}", re.ASCII)


@dataclass(frozen=True)
class Source:
    """Figures that have one heading: of a column, or of one name and unit in a sheet with a row for each reading.

    ``certain`` says that the product itself wrote the unit.
    """

    parameter: Parameter
    heading: Heading
    texts: Sequence[str]
    certain: bool = False


@dataclass(frozen=True)
class Verdict:
    """A value, empty where only the keeper can say; "said", "guessed" or "ask"; and the sentence why."""

    value: str
    state: str
    words: str


def unit_of(source: Source, decimal: str) -> Verdict:
    """Return the unit of bare figures, as far as the file says it or only one makes them likely."""
    heading, parameter = source.heading, source.parameter
    figures = _figures(source.texts, decimal)
    if not figures:
        # What is no plain figure, such as a zero with a minus, may still be read as one.
        unit = heading.units[0] if heading.exact else parameter.display_unit
        return Verdict(unit, "said", say("No figure is without a unit of its own."))
    share = {unit.id: _likely_share(figures, parameter, unit.id) for unit in KINDS[parameter.kind].units}
    if heading.exact:
        (unit,) = heading.units
        better = [other for other, likely in share.items() if likely >= _LIKELY and not _same(parameter, other, unit)]
        if source.certain or share[unit] >= _DOUBTED or not better:
            return Verdict(unit, "said", say("The file says {unit}.", unit=unit_words(unit)))
        return Verdict(
            "",
            "ask",
            say(
                "The file says {unit}, but the figures are likely as {better}.",
                unit=unit_words(unit),
                better=listed(better),
            ),
        )
    left = _different(parameter, heading.units)
    likely = [unit for unit in left if share[unit] >= _LIKELY]
    start = (
        say("“{heading_said}” does not name one unit.", heading_said=cut(heading.said))
        if heading.said
        else say("No unit is said.")
    )
    if len(likely) == 1:
        return Verdict(
            likely[0],
            "guessed",
            say("{start} The figures are likely only as {likely}.", start=start, likely=unit_words(likely[0])),
        )
    if likely:
        return Verdict("", "ask", say("{start} The figures may be in {likely}.", start=start, likely=listed(likely)))
    return Verdict("", "ask", say("{start} In none of the likely units are the figures likely.", start=start))


def decimal_of(sources: Iterable[Source], own: bool) -> Verdict:
    """Return the decimal mark that the figures show.

    A mark before three digits shows nothing by itself: 1,250 is judged by the other figures of the file, and without any by
    what is likely in a tank.
    """
    votes = {".": 0, ",": 0}
    unclear: list[tuple[str, Source, tuple[Entered, ...]]] = []
    for source in sources:
        for text in source.texts[:_LOOKED_AT]:
            mark, readings = _evidence(text, source)
            if readings:
                unclear.append((mark, source, readings))
            elif mark:
                votes[mark] += 1
    if own and not votes[","] and not any(mark == "," for mark, _, _ in unclear):
        return Verdict(".", "said", say("This file was written by Evenwater, with a decimal point."))
    if votes["."] and votes[","]:
        return Verdict("", "ask", say("Some figures have a decimal point and some a decimal comma."))
    shown = next((mark for mark, number in votes.items() if number), "")
    if not shown and not unclear:
        return Verdict(".", "said", say("No figure has a decimal mark."))
    meant = {_likely_decimal(mark, source, readings) for mark, source, readings in unclear}
    example = f"“{cut(unclear[0][2][0].text)}”" if unclear else ""
    if shown and meant <= {shown, ""}:
        return Verdict(shown, "said", say("The figures have a decimal {name}.", name=_name(shown)))
    if shown:
        return Verdict(
            "",
            "ask",
            say(
                "Most figures have a decimal {name}, but {example} would be unlikely so.",
                name=_name(shown),
                example=example,
            ),
        )
    if len(meant) == 1 and (only := next(iter(meant))):
        return Verdict(
            only,
            "guessed",
            say("Figures like {example} are likely only with a decimal {only}.", example=example, only=_name(only)),
        )
    return Verdict("", "ask", say("Figures like {example} can be read in two ways.", example=example))


def _evidence(text: str, source: Source) -> tuple[str, tuple[Entered, ...]]:
    """Return the decimal mark that a figure shows, or nothing; and both readings where the mark may part thousands."""
    token = number_part(" ".join(text.split()))
    marks = [c for c in token if c in ".,"]
    if not marks:
        return "", ()
    if len(marks) > 1:
        # 1.250,5 shows a comma; 1.250.000 shows that the point is no decimal mark.
        return (marks[-1] if len(set(marks)) > 1 else _other(marks[0])), ()
    if _THOUSANDS.fullmatch(token):
        for unit in source.heading.units:
            result = read_loosely(text, source.parameter, unit)
            if isinstance(result, Ask):
                number = result.readings[-1].number
                return marks[0], (Entered(text, number / 1000, unit), Entered(text, number, unit))
            if not isinstance(result, Ok):
                return "", ()
    return marks[0], ()


def _likely_decimal(mark: str, source: Source, readings: tuple[Entered, ...]) -> str:
    """Return the decimal mark with which alone a figure is likely, or nothing."""
    fits = []
    for reading in readings:
        ranges = (likely_range(source.parameter, unit) for unit in source.heading.units)
        fits.append(any(low <= float(reading.number) <= high for low, high in ranges))
    if fits[0] == fits[1]:
        return ""
    return mark if fits[0] else _other(mark)


def _figures(texts: Sequence[str], decimal: str) -> list[float]:
    """Return the figures without a unit of their own."""
    found = []
    for text in texts[:_LOOKED_AT]:
        clean = text.strip()
        if _BARE.fullmatch(clean) and len(clean) <= 40:
            grouped = _THOUSANDS.fullmatch(clean) and decimal in (".", ",") and decimal not in clean
            found.append(float(clean.replace(",", "" if grouped else ".").replace(".", "" if grouped else ".")))
    return found


def _likely_share(figures: Sequence[float], parameter: Parameter, unit: str) -> float:
    low, high = likely_range(parameter, unit)
    return sum(low <= figure <= high for figure in figures) / len(figures)


def _different(parameter: Parameter, units: Iterable[str]) -> list[str]:
    """Return units of which no two give a figure the same size: of meq/L and mmol/L the first."""
    found: list[str] = []
    for unit in units:
        if not any(_same(parameter, unit, other) for other in found):
            found.append(unit)
    return found


def _same(parameter: Parameter, one: str, other: str) -> bool:
    # Scales of a hydrometer and figures per kilogram are no factors, and no two of them are alike.
    plain: Mapping[str, tuple[float, float]] = {
        unit: linear(parameter.kind, unit) for unit in (one, other) if not unit.startswith(("SG", "mg/kg"))
    }
    return one == other or (len(plain) == 2 and plain[one] == plain[other])


def _name(mark: str) -> str:
    return say("point") if mark == "." else say("comma")


def _other(mark: str) -> str:
    return "," if mark == "." else "."
