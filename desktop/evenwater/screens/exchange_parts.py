"""The rows and lines of the Exchange sheet: every value, the pair and its jugs, the doses, the mixing bucket, how near limits are."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from evenwater.engine.catalogue import Parameter
from evenwater.engine.exchange import Course, ExchangeAnswer
from evenwater.engine.exchange_remarks import ALKALINITY_APART_MEQ, SALINITY_APART, SALT_ALONE, TEMPERATURE_APART_C
from evenwater.screens.exchange_given import ASSUMED, CORRECT, LOG, SYSTEM
from evenwater.screens.exchange_lines import shown_of, tellable
from evenwater.screens.exchange_words import LABEL_ONLY, between, percent
from evenwater.screens.shown import NBSP, Shown, about, days_words, figure, significant, span, with_unit
from evenwater.screens.terms import capitalized, listed, term
from evenwater.screens.views import Bar, WorkLine
from evenwater.screens.when import age_words
from evenwater.wording import marked, say, say_all

_FROM = {LOG: "", CORRECT: "", SYSTEM: marked("from the system's own fields"), ASSUMED: marked("assumed")}
_NO_TIME = marked("not said when")
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
    age = say_all(_FROM.get(str(row.get("read_from", "")), "")) or (
        say(_NO_TIME) if read_at is None else age_words(read_at, now)
    )
    stale = read_at is not None and _age_days(read_at, now) > moved.parameter.stale_days
    new = _figure(shown, each, moved.new_water)
    return ValueRow(
        parameter=moved.parameter.name,
        name=capitalized(moved.parameter.name),
        unit=shown.unit_words,
        moved_by=_moved_by(shown, each, bool(row.get("use_learned"))),
        now=_figure(shown, each, moved.now),
        age=say("{age}: old", age=age) if stale else age,
        new_water=say("{new}\nassumed", new=new) if moved.assumed else new,
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
        said.append(
            say(
                "used {use} a day{from_}",
                use=_bare(shown.rise(moved.use)),
                from_=say(", from the log") if learned else "",
            )
        )
    if moved.added > 0.0:
        said.append(say("added {added} a day", added=_bare(shown.rise(moved.added))))
    if moved.loss > 0.0:
        said.append(say("taken {loss} a day", loss=percent(moved.loss)))
    return "\n".join(said)


def _ends(shown: Shown, each: Course, days: float) -> str:
    if each.runs_out is not None and each.runs_out <= days:
        return say("nothing left")
    end, low, high = (_figure(shown, each, value) for value in (each.end, *each.band))
    return end if low == high else say("{end}\n{low} to {high}", end=end, low=low, high=high)


def _settles(shown: Shown, each: Course) -> str:
    if each.runs_out is not None:
        return say("never: nothing left after {runs_out}", runs_out=span(each.runs_out))
    if each.settles is None or each.half_way is None:
        return say("stays") if max(each.rise, each.fall) < tellable(each) else say("never")
    value = _figure(shown, each, each.settles)
    if abs(each.settles - each.moved.now) < tellable(each):
        return say("{value}\nwhere it is", value=value)
    return say("{value}\nhalf way after {half_way}", value=value, half_way=span(each.half_way))


def _pace(shown: Shown, each: Course) -> str:
    way, change = (say("rises"), each.rise) if each.rise >= each.fall else (say("falls"), each.fall)
    return (
        say("{way} by {change}", way=way, change=_bare(shown.rise(change, 2)))
        if change >= tellable(each)
        else say("no change")
    )


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
        way, change = (say("Rise"), each.rise) if each.rise >= each.fall else (say("Fall"), each.fall)
        change = change if change >= tellable(each) else 0.0
        share = change / hard
        text = say("{change} of {hard}", change=shown.rise(change), hard=shown.rise(hard))
        yield Bar(
            f"pace_{p.name}", say("{way} of {name} in a day", way=way, name=term(p.name)), text, share, over=share > 1.0
        )
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
    return Bar(
        f"apart_{name}",
        say("New water apart in {name}", name=term(name)),
        say("{said} of {said_most}", said=said, said_most=said_most),
        apart / most,
        over=apart > most,
    )


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
        holds = say("{low} hold salinity within 0.5", low=between(found.low, found.high))
        yield WorkLine(say("New water to old water"), holds, percent(found.ratio))
        how = say(
            "with the level held by top-off: {new_salinity} times {ratio}",
            new_salinity=significant(q.new_salinity, 4),
            ratio=percent(found.ratio),
        )
        yield WorkLine(say("Salinity settles, by the pair alone"), how, significant(found.settles, 4))
    top_off = q.top_off_l
    if found.level_l != 0.0:
        more = say("more in than out") if found.level_l > 0.0 else say("more out than in")
        yield WorkLine(
            say("Level by the pair alone"), more, say("{kilo} a day", kilo=about(_KILO * abs(found.level_l)))
        )
    if top_off is not None and q.evaporation_l is not None:
        how = say("{kilo} a day evaporate", kilo=about(_KILO * q.evaporation_l))
        yield WorkLine(say("Top-off that holds the level"), how, say("{kilo} a day", kilo=about(_KILO * top_off)))
    for what, size, lasts, weekly, does in (
        (say("Old water"), q.old_jug_l, jugs.old_lasts, jugs.old_weekly_l, say("is full after")),
        (say("New water"), q.new_jug_l, jugs.new_lasts, jugs.new_weekly_l, say("lasts")),
    ):
        how = (
            ""
            if lasts is None or size is None
            else say("a jug of {kilo} {does} {lasts}", kilo=about(_KILO * size), does=does, lasts=span(lasts))
        )
        yield WorkLine(say("{what}, jug for a week", what=what), how, about(_KILO * weekly))


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
        less, more = change.more <= 0.0, about(abs(change.more))
        rows.append(
            DoseRow(
                capitalized(change.moved.parameter.name),
                about(change.without),
                about(change.with_exchange),
                say("{volume} less", volume=more) if less else say("{volume} more", volume=more),
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
    label = say(
        "by the label: {label_g} in {kilo} give {label_salinity}. {label_only}",
        label_g=_mass(mixing.label_g),
        kilo=about(_KILO * mixing.label_l),
        label_salinity=significant(mixing.label_salinity, 4),
        label_only=say(LABEL_ONLY),
    )
    what = say(
        "Salt mix for {kilo} at {new_salinity}",
        kilo=about(_KILO * mixing.volume_l),
        new_salinity=significant(q.new_salinity, 4),
    )
    yield WorkLine(what, label, _mass(found.mix_g))
    yield WorkLine(say("Temperature"), _warm(answer), with_unit(figure(q.water.temperature_c, 1), "°C"))
    if mixing.measured is None:
        return
    off = say(
        "found {measured}, wanted {new_salinity}",
        measured=significant(mixing.measured, 4),
        new_salinity=significant(q.new_salinity, 4),
    )
    if found.salt_g:
        more = found.mix_g * (q.new_salinity - mixing.measured) / q.new_salinity
        yield WorkLine(say("Salt mix still to add"), off, _mass(more))
        if q.new_salinity - mixing.measured <= SALT_ALONE:
            yield WorkLine(
                say("Or sodium chloride"),
                say("within 1 of what is wanted, since it shifts the balance"),
                _mass(found.salt_g),
            )
    elif found.water_l:
        yield WorkLine(say("Fresh water still to add"), off, about(_KILO * found.water_l))
    else:
        yield WorkLine(say("Salinity"), off, say("as wanted"))


def _warm(answer: ExchangeAnswer) -> str:
    q = answer.question
    if q.new_temperature_c is None:
        return say("as the tank has; bring the bucket to it")
    return say(
        "as the tank has; the new water has {new_temperature}",
        new_temperature=with_unit(figure(q.new_temperature_c, 1), "°C"),
    )


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
            old.append(
                say(
                    "{name} ({read_at}, {stale_days} at most)",
                    name=term(p.name),
                    read_at=age_words(read_at, now),
                    stale_days=days_words(p.stale_days),
                )
            )
    if old:
        yield say("Readings too old to go by: {old}. Test again.", old=listed(old))
    if undated:
        yield say("Nobody said when this was measured: {undated}. Test again, or say when.", undated=listed(undated))


def _age_days(at: datetime, now: datetime) -> float:
    # By timestamps: wall clocks of one zone may differ by an hour more or less.
    return (now.timestamp() - at.timestamp()) / 86400.0
