"""The question kind ``exchange``: every value against time, where it settles, and what the pump pair and its jugs take."""

from __future__ import annotations

from typing import Any

from evenwater.engine import exchange_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.correction import Refused
from evenwater.engine.exchange import Course, ExchangeAnswer, solve
from evenwater.engine.exchange_pair import DosingChange
from evenwater.engine.form import Unread
from evenwater.headless_outcome import ANSWERED, Outcome, refused
from evenwater.screens import answer_json, exchange_lines, exchange_words
from evenwater.screens.shown import Shown

Json = dict[str, Any]


def answer(raw: Json, known: Catalogue) -> Outcome:
    """Answer a question about an exchange.

    Parameters
    ----------
    raw : dict
        The parsed file, of the shape that ``question_file`` asks for.
    known : Catalogue
        Parameters and chemicals.

    Returns
    -------
    Outcome
        Answered or refused.
    """
    question = exchange_intake.exchange(raw, known)
    if isinstance(question, Unread):
        return refused(*question.reasons)
    result = solve(question)
    if isinstance(result, Refused):
        return refused(*result.reasons)
    return Outcome(ANSWERED, as_json(result), lines=exchange_lines.lines(result))


def as_json(result: ExchangeAnswer) -> Json:
    """Return the JSON object of an answered exchange: cautions and dangers first, quantities as value and unit."""
    q = result.question
    dangers = [reason for reason in result.remarks if reason.code in exchange_lines.DANGERS]
    return {
        "status": "answered",
        "cautions": list(exchange_lines.cautions(result)),
        "dangers": [answer_json.reason(reason, None) for reason in dangers],
        "out_per_day": _quantity(q.pair.out_l, "L per day"),
        "in_per_day": _quantity(q.pair.in_l, "L per day"),
        "days": _quantity(q.days, "d"),
        "fraction_left": _quantity(result.left, ""),
        "fraction_left_between": [_quantity(end, "") for end in result.left_band],
        "equal_batch_change": {
            "in_a_week": _quantity(100.0 * result.batch_weekly, "%"),
            "in_all_days": _quantity(100.0 * result.batch_whole, "%"),
        },
        "values": {each.moved.parameter.name: _course(result, each) for each in result.courses},
        "pair": _pair(result),
        "jugs": {
            "old_full_after": _maybe(result.jugs.old_lasts, "d"),
            "new_lasts": _maybe(result.jugs.new_lasts, "d"),
            "old_for_a_week": _quantity(result.jugs.old_weekly_l, "L"),
            "new_for_a_week": _quantity(result.jugs.new_weekly_l, "L"),
        },
        "dosing": {change.moved.parameter.name: _dosing(change) for change in result.dosing},
        "mixing": _bucket(result),
        "exchange_check": {"agrees": True},
        "reasons": [answer_json.reason(reason, None) for reason in result.remarks if reason not in dangers],
    }


def _quantity(value: float, unit: str) -> Json:
    return {"value": value, "unit": unit}


def _maybe(value: float | None, unit: str) -> Json | None:
    return None if value is None else _quantity(value, unit)


def _course(result: ExchangeAnswer, each: Course) -> Json:
    shown: Shown = exchange_lines.shown_of(result, each)
    unit, gone = each.moved.unit, each.runs_out

    def value(canonical: float) -> Json:
        return _quantity(shown.number(canonical), unit)

    def at(day: float, canonical: float) -> Json | None:
        # From when nothing is left the use cannot go on as it was.
        return value(canonical) if gone is None or day < gone else None

    return {
        "now": value(each.moved.now),
        "new_water": value(each.moved.new_water),
        "new_water_assumed": each.moved.assumed,
        "against_time": [
            {"after": _quantity(day, "d"), "value": at(day, point)}
            for day, point in zip(result.times, each.points, strict=True)
        ],
        "end_value": at(result.question.days, each.end),
        "end_value_between": None
        if at(result.question.days, each.end) is None
        else [value(max(end, 0.0)) for end in each.band],
        "settles": None if each.settles is None else value(each.settles),
        "half_of_the_way": _maybe(each.half_way, "d"),
        "nothing_left_after": _maybe(gone, "d"),
        "highest_rise_in_24_hours": value(each.rise),
        "highest_fall_in_24_hours": value(each.fall),
    }


def _pair(result: ExchangeAnswer) -> Json:
    found, q = result.match, result.question
    return {
        "in_over_out": found.ratio,
        "holds_salinity_within_0.5": found.holds,
        "in_over_out_between": None if found.low is None else [found.low, found.high],
        "salinity_settles": _maybe(found.settles, "ppt"),
        "level_change_without_top_off": _quantity(found.level_l - (q.evaporation_l or 0.0), "L per day"),
        "evaporation_known": q.evaporation_l is not None,
        "top_off_that_holds_level": _maybe(q.top_off_l, "L per day"),
    }


def _dosing(change: DosingChange) -> Json:
    return {
        "without_exchange": _quantity(change.without, "mL per day"),
        "with_exchange": _quantity(change.with_exchange, "mL per day"),
        "more_with_exchange": _quantity(change.more, "mL per day"),
    }


def _bucket(result: ExchangeAnswer) -> Json | None:
    bucket = result.bucket
    if bucket is None:
        return None
    return {
        "salt_mix_by_label": _quantity(bucket.mix_g, "g"),
        "sodium_chloride_short": _maybe(bucket.salt_g, "g"),
        "fresh_water_short": _maybe(bucket.water_l, "L"),
        "rule": exchange_words.LABEL_ONLY,
    }
