"""The rows and lines of the Exchange sheet: every value, the pair and its jugs, the doses, the mixing bucket, how near limits are."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from evenwater.engine.catalogue import Parameter
from evenwater.engine.exchange import Course, ExchangeAnswer
from evenwater.engine.exchange_remarks import ALKALINITY_APART_MEQ, SALINITY_APART, SALT_ALONE, TEMPERATURE_APART_C
from evenwater.engine.quantities import figure, significant
from evenwater.screens.exchange_given import ASSUMED, CORRECT, LOG, SYSTEM
from evenwater.screens.exchange_lines import shown_of, tellable
from evenwater.screens.exchange_words import LABEL_ONLY, between, percent
from evenwater.screens.shown import NBSP, Shown, about, span, with_unit
from evenwater.screens.views import Bar, WorkLine
from evenwater.screens.when import age_words

_FROM = {LOG: "", CORRECT: "", SYSTEM: "from the system's own fields", ASSUMED: "assumed"}
_NO_TIME = "not said when"
_KILO = 1000.0


@dataclass(frozen=True)
class ValueRow:
    """One value: now with its age, in the new water, at the end of the days looked at, where it settles, and how fast it moves.

    All figures of a row are in ``unit``, which is said once. ``moved_by`` is what moves it besides the exchange; ``stale`` says that its
    reading is too old to go by.
    """

    parameter: str
    name: str
    unit: str
    moved_by: str
    now: str
    age: str
    new_water: str
    ends: str
    settles: str
    pace: str
    stale: bool = False


@dataclass(frozen=True)
class DoseRow:
    """What keeps a value where it is: of its stock in a day without the exchange, with it, and the change."""

    name: str
    without: str
    with_exchange: str
    change: str


def values(answer: ExchangeAnswer, raw: Mapping[str, Any], now: datetime) -> tuple[ValueRow, ...]:
    """Return a row for each value.

    Parameters
    ----------
    answer : ExchangeAnswer
        What the exchange does.
    raw : mapping
        The question as typed, whose values say when they were read.
    now : datetime
        The present.

    Returns
    -------
    tuple of ValueRow
        In the order of the question.
    """
    rows = raw.get("value", ())
    return tuple(_value(answer, each, row, now) for each, row in zip(answer.courses, rows, strict=True))


def _value(answer: ExchangeAnswer, each: Course, row: Mapping[str, Any], now: datetime) -> ValueRow:
    shown, moved, days = shown_of(answer, each), each.moved, answer.question.days
    read_at = row.get("read_at")
    age = _FROM.get(str(row.get("read_from", "")), "") or (_NO_TIME if read_at is None else age_words(read_at, now))
    stale = read_at is not None and _age_days(read_at, now) > moved.parameter.stale_days
    new = _figure(shown, each, moved.new_water)
    return ValueRow(
        parameter=moved.parameter.name,
        name=moved.parameter.name.capitalize(),
        unit=shown.unit_words,
        moved_by=_moved_by(shown, each, bool(row.get("use_learned"))),
        now=_figure(shown, each, moved.now),
        age=f"{age}: old" if stale else age,
        new_water=f"{new}\nassumed" if moved.assumed else new,
        ends=_ends(shown, each, days),
        settles=_settles(shown, each),
        pace=_pace(shown, each),
        stale=stale,
    )


def _figure(shown: Shown, each: Course, value: float) -> str:
    """Write a value without its unit; what no test can tell from nothing is nothing."""
    return _bare(shown.value(value if value >= tellable(each) else 0.0))


def _bare(text: str) -> str:
    """Return a figure without its unit, which stands once in its row."""
    return text.partition(NBSP)[0]


def _moved_by(shown: Shown, each: Course, learned: bool) -> str:
    moved = each.moved
    said = []
    if moved.use > 0.0:
        said.append(f"used {_bare(shown.rise(moved.use))} a day{', from the log' if learned else ''}")
    if moved.added > 0.0:
        said.append(f"added {_bare(shown.rise(moved.added))} a day")
    if moved.loss > 0.0:
        said.append(f"taken {percent(moved.loss)} a day")
    return "\n".join(said)


def _ends(shown: Shown, each: Course, days: float) -> str:
    if each.runs_out is not None and each.runs_out <= days:
        return "nothing left"
    end, low, high = (_figure(shown, each, value) for value in (each.end, *each.band))
    return end if low == high else f"{end}\n{low} to {high}"


def _settles(shown: Shown, each: Course) -> str:
    if each.runs_out is not None:
        return f"never: nothing left after {span(each.runs_out)}"
    if each.settles is None or each.half_way is None:
        return "stays" if max(each.rise, each.fall) < tellable(each) else "never"
    value = _figure(shown, each, each.settles)
    if abs(each.settles - each.moved.now) < tellable(each):
        return f"{value}\nwhere it is"
    return f"{value}\nhalf way after {span(each.half_way)}"


def _pace(shown: Shown, each: Course) -> str:
    way, change = ("rises", each.rise) if each.rise >= each.fall else ("falls", each.fall)
    return f"{way} by {_bare(shown.rise(change, 2))}" if change >= tellable(each) else "no change"


def bars(answer: ExchangeAnswer) -> tuple[Bar, ...]:
    """Return how near each limit is: every value's change in a day either way, and how far the new water differs.

    Parameters
    ----------
    answer : ExchangeAnswer
        What the exchange does.

    Returns
    -------
    tuple of Bar
        Shares of the hard paces, and of what is common practice for new water.
    """
    return tuple(_bars(answer))


def _bars(answer: ExchangeAnswer) -> Iterator[Bar]:
    q = answer.question
    for each in answer.courses:
        p, shown = each.moved.parameter, shown_of(answer, each)
        hard = p.canonical(p.rise_hard)
        way, change = ("Rise", each.rise) if each.rise >= each.fall else ("Fall", each.fall)
        change = change if change >= tellable(each) else 0.0
        share = change / hard
        text = f"{shown.rise(change)} of {shown.rise(hard)}"
        yield Bar(f"pace_{p.name}", f"{way} of {p.name} in a day", text, share, over=share > 1.0)
    by_name = {each.moved.parameter.name: each for each in answer.courses}
    tank = by_name["salinity"].moved.now if "salinity" in by_name else q.water.salinity
    apart = abs(q.new_salinity - tank)
    yield _apart("salinity", apart, SALINITY_APART, significant(apart, 2), figure(SALINITY_APART, 1))
    if q.new_temperature_c is not None:
        apart = abs(q.new_temperature_c - q.water.temperature_c)
        most = with_unit(figure(TEMPERATURE_APART_C, 1), "°C")
        yield _apart("temperature", apart, TEMPERATURE_APART_C, with_unit(significant(apart, 2), "°C"), most)
    if "alkalinity" in by_name:
        each = by_name["alkalinity"]
        shown, apart = shown_of(answer, each), abs(each.moved.new_water - each.moved.now)
        yield _apart("alkalinity", apart, ALKALINITY_APART_MEQ, shown.rise(apart), shown.rise(ALKALINITY_APART_MEQ))


def _apart(name: str, apart: float, most: float, said: str, said_most: str) -> Bar:
    return Bar(f"apart_{name}", f"New water apart in {name}", f"{said} of {said_most}", apart / most, over=apart > most)


def pair(answer: ExchangeAnswer) -> tuple[WorkLine, ...]:
    """Return what the pair does to level and salinity, and how long its jugs last.

    Parameters
    ----------
    answer : ExchangeAnswer
        What the exchange does.

    Returns
    -------
    tuple of WorkLine
        What, how it comes about, what it gives.
    """
    return tuple(_pair(answer))


def _pair(answer: ExchangeAnswer) -> Iterator[WorkLine]:
    found, q, jugs = answer.match, answer.question, answer.jugs
    if found.ratio is not None and found.low is not None and found.high is not None and found.settles is not None:
        holds = f"{between(found.low, found.high)} hold salinity within 0.5"
        yield WorkLine("New water to old water", holds, percent(found.ratio))
        how = f"with the level held by top-off: {significant(q.new_salinity, 4)} times {percent(found.ratio)}"
        yield WorkLine("Salinity settles, by the pair alone", how, significant(found.settles, 4))
    top_off = q.top_off_l
    if found.level_l != 0.0:
        more = "more in than out" if found.level_l > 0.0 else "more out than in"
        yield WorkLine("Level by the pair alone", more, f"{about(_KILO * abs(found.level_l))} a day")
    if top_off is not None and q.evaporation_l is not None:
        how = f"{about(_KILO * q.evaporation_l)} a day evaporate"
        yield WorkLine("Top-off that holds the level", how, f"{about(_KILO * top_off)} a day")
    for what, size, lasts, weekly, does in (
        ("Old water", q.old_jug_l, jugs.old_lasts, jugs.old_weekly_l, "is full after"),
        ("New water", q.new_jug_l, jugs.new_lasts, jugs.new_weekly_l, "lasts"),
    ):
        how = "" if lasts is None or size is None else f"a jug of {about(_KILO * size)} {does} {span(lasts)}"
        yield WorkLine(f"{what}, jug for a week", how, about(_KILO * weekly))


def dosing(answer: ExchangeAnswer) -> tuple[DoseRow, ...]:
    """Return what the exchange changes in the doses that keep each value where it is.

    Parameters
    ----------
    answer : ExchangeAnswer
        What the exchange does.

    Returns
    -------
    tuple of DoseRow
        One for each value with a jug and something that is used, or washed out.
    """
    rows = []
    for change in answer.dosing:
        if change.without <= 0.0 and change.with_exchange <= 0.0:
            continue
        less = change.more <= 0.0
        rows.append(
            DoseRow(
                change.moved.parameter.name.capitalize(),
                about(change.without),
                about(change.with_exchange),
                f"{about(abs(change.more))} {'less' if less else 'more'}",
            )
        )
    return tuple(rows)


def bucket(answer: ExchangeAnswer) -> tuple[WorkLine, ...]:
    """Return what goes into the mixing bucket, and what brings it to its salinity after a test.

    Parameters
    ----------
    answer : ExchangeAnswer
        What the exchange does.

    Returns
    -------
    tuple of WorkLine
        Empty without a bucket.
    """
    return tuple(_bucket(answer))


def _bucket(answer: ExchangeAnswer) -> Iterator[WorkLine]:
    found, mixing, q = answer.bucket, answer.question.mixing, answer.question
    if found is None or mixing is None:
        return
    label = (
        f"by the label: {_mass(mixing.label_g)} in {about(_KILO * mixing.label_l)} give {significant(mixing.label_salinity, 4)}. "
        f"{LABEL_ONLY}"
    )
    what = f"Salt mix for {about(_KILO * mixing.volume_l)} at {significant(q.new_salinity, 4)}"
    yield WorkLine(what, label, _mass(found.mix_g))
    yield WorkLine("Temperature", _warm(answer), with_unit(figure(q.water.temperature_c, 1), "°C"))
    if mixing.measured is None:
        return
    off = f"found {significant(mixing.measured, 4)}, wanted {significant(q.new_salinity, 4)}"
    if found.salt_g:
        more = found.mix_g * (q.new_salinity - mixing.measured) / q.new_salinity
        yield WorkLine("Salt mix still to add", off, _mass(more))
        if q.new_salinity - mixing.measured <= SALT_ALONE:
            yield WorkLine(
                "Or sodium chloride", "within 1 of what is wanted, since it shifts the balance", _mass(found.salt_g)
            )
    elif found.water_l:
        yield WorkLine("Fresh water still to add", off, about(_KILO * found.water_l))
    else:
        yield WorkLine("Salinity", off, "as wanted")


def _warm(answer: ExchangeAnswer) -> str:
    q = answer.question
    if q.new_temperature_c is None:
        return "as the tank has; bring the bucket to it"
    return f"as the tank has; the new water has {with_unit(figure(q.new_temperature_c, 1), '°C')}"


def _mass(grams: float) -> str:
    if grams >= _KILO:
        return with_unit(significant(grams / _KILO, 3), "kg")
    return with_unit(significant(grams, 3), "g")


def old_readings(answer: ExchangeAnswer, raw: Mapping[str, Any], now: datetime) -> Iterator[str]:
    """Yield which readings are too old to reckon with, and which nobody dated.

    Parameters
    ----------
    answer : ExchangeAnswer
        What the exchange does.
    raw : mapping
        The question as typed, whose values say when they were read.
    now : datetime
        The present.

    Yields
    ------
    str
        One sentence for each group.
    """
    old: list[str] = []
    undated: list[str] = []
    for each, row in zip(answer.courses, raw.get("value", ()), strict=True):
        p: Parameter = each.moved.parameter
        read_at, source = row.get("read_at"), row.get("read_from")
        if read_at is None and source in (CORRECT, LOG):
            undated.append(p.name)
        elif read_at is not None and _age_days(read_at, now) > p.stale_days:
            old.append(f"{p.name} ({age_words(read_at, now)}, {_days(p.stale_days)} at most)")
    if old:
        yield f"Readings too old to go by: {listed(old)}. Test again."
    if undated:
        yield f"Nobody said when this was measured: {listed(undated)}. Test again, or say when."


def _days(days: float) -> str:
    return "a day" if days == 1.0 else f"{figure(days, 0)}\u00a0days"


def _age_days(at: datetime, now: datetime) -> float:
    # By timestamps: wall clocks of one zone may differ by an hour more or less.
    return (now.timestamp() - at.timestamp()) / 86400.0


def listed(names: Sequence[str]) -> str:
    """Return names in a sentence: a, b and c."""
    return " and ".join(filter(None, (", ".join(names[:-1]), names[-1]))) if names else ""
