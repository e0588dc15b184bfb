"""What the card of all plans together says: cautions, every pump, water and food of a system, what to test, when to stop."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from evenwater.engine import quantities
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.foods_question import Food
from evenwater.engine.quantities import Typed, Water
from evenwater.engine.stock import Additive, Dissolved
from evenwater.engine.together_answer import Outlook, TogetherAnswer
from evenwater.engine.upkeep import UpkeepDose
from evenwater.screens import correct, foods_given, foods_jug, together_code, together_view, words
from evenwater.screens.answer import BOTTLE
from evenwater.screens.names import shown_name
from evenwater.screens.shown import (
    Shown,
    about,
    date_time,
    date_words,
    days_words,
    dose,
    every,
    seconds,
    significant,
    with_unit,
)
from evenwater.screens.terms import capitalized, term, terms
from evenwater.screens.timetable_card import EMERGENCY, SHEET_WINS, rules
from evenwater.screens.timetable_given import BOTTLE_NAME, pairs
from evenwater.screens.timetable_wishes import USUAL_APART_MIN
from evenwater.screens.together import Together
from evenwater.screens.together_sources import Ramp, Tank
from evenwater.screens.together_words import held
from evenwater.screens.views import DoseRow
from evenwater.wording import marked, say, say_all

Values = Mapping[str, Typed]

# What a tank uses changes; common practice, no source.
_LONGEST = timedelta(days=30)
_ONE_DAY = timedelta(days=1)
DRAFT = marked("Draft, not to be followed")


@dataclass(frozen=True)
class TogetherPage:
    """The whole card, before it is dealt out to pages. ``rows`` are the pumps, ``foods`` what is fed, ``draft`` why it must not be followed."""

    title: str
    system: str
    volume: str
    code: str
    issued: str
    replace: str
    valid_until: str
    because: str
    cautions: tuple[str, ...]
    emergency: str
    rows: tuple[DoseRow, ...]
    foods: tuple[DoseRow, ...]
    water: tuple[str, ...]
    separation: tuple[str, ...]
    maxima: tuple[str, ...]
    stop: tuple[str, ...]
    tests: tuple[str, ...]
    expected: tuple[str, ...]
    plans: tuple[str, ...]
    draft: tuple[str, ...] = ()
    rules: tuple[str, ...] = field(default_factory=rules)


@dataclass(frozen=True)
class _Pumped:
    """One pump: what it gives for which value, what its row says, and ``figures`` that tell its setting from another."""

    parameter: str
    additive: Additive
    most_ml: float
    row: DoseRow
    figures: together_code.Figures

    @property
    def name(self) -> str:
        return term(self.additive.tall_man) if isinstance(self.additive, Dissolved) else say(BOTTLE_NAME)


def page(
    found: Together, catalogue: Catalogue, system: Values, foods: Sequence[Values], now: datetime
) -> TogetherPage | None:
    """Return the card of everything that runs in a system.

    Parameters
    ----------
    found : Together
        All plans together, without what only stands on a sheet.
    catalogue : Catalogue
        Parameters.
    system : mapping of str to Typed
        The system's fields.
    foods : sequence of mapping of str to Typed
        The fields of each of its foods.
    now : datetime
        The present in the keeper's zone, which all dates are written in.

    Returns
    -------
    TogetherPage or None
        Everything that stands on it; None where nothing can be said, or nothing runs.
    """
    answer = found.answer
    if answer is None:
        return None
    tank = Tank(catalogue, answer.question.tank.water, answer.question.tank.volume_l, now)
    ramps = [ramp for ramp in found.ramps if ramp.ends(tank) > 0.0]
    pumped = [*_upkeep(found), *_ramps(ramps)]
    fed = [(values, food) for values in foods if isinstance(food := _food(values, catalogue, tank.water), Food)]
    water = tuple(_water(answer))
    if not pumped and not fed and not water:
        return None
    rows = tuple(each.row for each in sorted(pumped, key=lambda each: list(catalogue.parameters).index(each.parameter)))
    eaten = tuple(_fed(values, food) for values, food in fed)
    until, because = _valid(answer, ramps, now)
    return TogetherPage(
        title=say('Everything that runs'),
        system=shown_name(system, say('Unnamed system')),
        volume=correct.volume_sentence(system),
        code=together_code.code((each.figures for each in pumped), fed, answer),
        issued=say('Issued {date_words} {clock}', date_words=date_words(now), clock=f'{now:%H:%M}'),
        replace=say('Replace this card when its code changes.'),
        valid_until=say('Valid until {until}', until=date_words(until)),
        because=because,
        cautions=_cautions(pumped),
        emergency=say(EMERGENCY),
        rows=rows,
        foods=eaten,
        water=water,
        separation=_separation(pumped),
        maxima=tuple(
            say("Never more than {most} of {each} for {parameter} in 24 hours, all doses together.", most=dose(each.most_ml), each=term(each.name), parameter=term(each.parameter))
            for each in pumped
        ),
        stop=tuple(_stop(answer, pumped, ramps, now)),
        tests=tuple(_tests(found, answer, ramps, now)),
        expected=tuple(_expected(answer, now)),
        plans=tuple(
            say("The doses of {parameter} are those of plan {plan_id} until {ends_at}; they make good the daily use as well. Then its upkeep begins: make this card again.", parameter=term(ramp.parameter.name), plan_id=ramp.plan_id, ends_at=date_time(ramp.course.ends_at.astimezone(now.tzinfo)))
            for ramp in ramps
        ),
        draft=tuple(_against(found, foods, now)),
    )  # fmt: skip


def _upkeep(found: Together) -> Iterator[_Pumped]:
    for each in () if found.upkeep is None else found.upkeep.doses:
        if each.dose_ml > 0.0:
            pump = each.item.pump.name.strip() or say("Pump for {parameter}", parameter=term(each.item.parameter.name))
            setting = say(
                "{pump}: runs {run_time} each time. {in_24_hours}{each}",
                pump=pump,
                run_time=seconds(each.run_time_s),
                in_24_hours=_sums(each.in_24_hours_ml),
                each=_empty(each, found),
            )
            name, additive = each.item.parameter.name, each.item.additive
            when = say("{name} upkeep, {per_day}", name=capitalized(name), per_day=every(each.per_day))
            row = DoseRow(when, dose(each.dose_ml), _named(additive), setting + _strength(additive))
            yield _Pumped(name, additive, each.in_24_hours_ml, row, together_code.of_upkeep(each))


def _empty(each: UpkeepDose, found: Together) -> str:
    if each.empty_at is None or found.upkeep is None:
        return ""
    return say(
        " A full jug lasts until {empty_at}.",
        empty_at=date_words(each.empty_at.astimezone(found.upkeep.question.now.tzinfo)),
    )


def _ramps(ramps: Sequence[Ramp]) -> Iterator[_Pumped]:
    for ramp in ramps:
        course, name = ramp.course, ramp.parameter.name
        in_24_hours = round(course.dose_ml * course.per_day, 9)
        run = seconds(course.dose_ml / ramp.pump.flow_ml_per_min * 60.0)
        setting = say(
            "{pump}: runs {run} each time. {in_24_hours}",
            pump=ramp.pump.name.strip() or say("Pump for {name}", name=term(name)),
            run=run,
            in_24_hours=_sums(in_24_hours),
        )
        when = say(
            "{name}, {per_day}\nPlan {plan_id}",
            name=capitalized(name),
            per_day=every(course.per_day),
            plan_id=ramp.plan_id,
        )
        row = DoseRow(when, dose(course.dose_ml), _named(ramp.additive), setting + _strength(ramp.additive))
        yield _Pumped(name, ramp.additive, course.never_more_ml, row, together_code.of_ramp(ramp))


def _sums(in_24_hours_ml: float) -> str:
    return say(
        "{in_24_hours} per hour, {in_24_hours_2} in 24 hours.",
        in_24_hours=about(in_24_hours_ml / 24.0),
        in_24_hours_2=dose(in_24_hours_ml),
    )


def _named(additive: Additive) -> str:
    return (
        term(additive.tall_man)
        if isinstance(additive, Dissolved)
        else say(BOTTLE_NAME)[:1].upper() + say(BOTTLE_NAME)[1:]
    )


def _strength(additive: Additive) -> str:
    if not isinstance(additive, Dissolved):
        return ""
    litres = with_unit(significant(additive.made_up_l, 3), "L")
    if additive.saturated:
        return say(" In the jug: clear saturated solution, {litres}.", litres=litres)
    said = say(" and ").join(
        f"{with_unit(significant(p.grams, 4), 'g')} {term(p.chemical.tall_man)}" for p in additive.portions
    )
    return say(" In the jug: {said} made up to {litres}.", said=said, litres=litres)


def _food(values: Values, catalogue: Catalogue, water: Water) -> object:
    return foods_given.read(values, catalogue, water) if foods_given.given(values) else None


def _fed(values: Values, food: Food) -> DoseRow:
    kept = foods_jug.kept(values)
    cold = say("Keep it cold.") if foods_given.text_of(values, "cold") == foods_given.YES else ""
    last = (
        say("Use it until {last_day}, then throw it away.", last_day=foods_jug.day_words(kept.last_day))
        if kept.last_day is not None
        else ""
    )
    rest = " ".join(filter(None, (cold, last, say("Never make up a missed feeding."))))
    amount = dose(float(quantities.significant(food.per_day_ml, 6)))
    return DoseRow(say("Food, in a day"), amount, foods_given.name_of(values), rest)


def _water(answer: TogetherAnswer) -> Iterator[str]:
    pair = answer.question.tank.pair
    if pair.out_l <= 0.0 and pair.in_l <= 0.0:
        return
    yield say(
        "Old water out: {out} per day. New water in: {in_} per day.",
        out=about(1000.0 * pair.out_l),
        in_=about(1000.0 * pair.in_l),
    )
    salinity = significant(answer.question.tank.new_salinity, 3)
    alike = (
        say("Both pumps are matched; when one stops, stop the other.")
        if pair.out_l == pair.in_l
        else say("Watch the level.")
    )
    yield say("{alike} New water has a salinity of {salinity}.", alike=alike, salinity=with_unit(salinity, "ppt"))


# What goes with it


def _cautions(pumped: Sequence[_Pumped]) -> tuple[str, ...]:
    """Return a paragraph for each additive: its hazards, and how it is handled; what two have in common stands once."""
    said: set[str] = set()
    found = []
    for each in pumped:
        additive = each.additive
        portions = additive.portions if isinstance(additive, Dissolved) else ()
        hazards = [
            f"{term(p.chemical.signal_word) or say('Caution')}, {term(p.chemical.name)}: {', '.join(terms(p.chemical.statements))}."
            for p in portions
            if p.chemical.statements
        ]
        handling = terms(additive.cautions) if isinstance(additive, Dissolved) else say_all(BOTTLE)
        new = [line for line in (*hazards, *handling) if line not in said]
        said.update(new)
        found += [" ".join(new)] if new else []
    return (*found, say(SHEET_WINS))


def _separation(pumped: Sequence[_Pumped]) -> tuple[str, ...]:
    names = {each.parameter: each.name for each in pumped}
    apart = with_unit(str(USUAL_APART_MIN), "min")
    found = [
        say(
            "{names} and {names_2}: {apart} apart, by another outlet each, in flow. Never mix the concentrates.",
            names=term(names[one]),
            names_2=term(names[other]),
            apart=apart,
        )
        for one, other in pairs(tuple(names))
    ]
    return (*found, say("At which minute each pump doses stands on the timetable.")) if found else ()


def _stop(answer: TogetherAnswer, pumped: Sequence[_Pumped], ramps: Sequence[Ramp], now: datetime) -> Iterator[str]:
    planned = {ramp.parameter.name: ramp.course.stop_above for ramp in ramps}
    for name in dict.fromkeys(each.parameter for each in pumped):
        each = answer.outlook(name)
        if each is not None:
            p = each.moved.parameter
            above = planned.get(name, p.canonical(p.range_kept[1]))
            shown = together_view.shown_of(answer, each, now)
            yield say(
                "Stop dosing {name} and test again if it reads above {above}.",
                name=term(name),
                above=held(shown.value(above)),
            )


def _tests(found: Together, answer: TogetherAnswer, ramps: Sequence[Ramp], now: datetime) -> Iterator[str]:
    """Yield when each value is to be tested: a plan's own retest, else before its reading is too old for anything."""
    planned = {ramp.parameter.name: ramp.course.retest_at for ramp in ramps}
    for each in answer.outlooks:
        p = each.moved.parameter
        if not together_view.moves(each):
            continue
        read_at = found.read_at.get(p.name)
        due = now if read_at is None else read_at + timedelta(days=p.stale_days)
        if p.name in planned:
            due = min(due, planned[p.name], key=lambda at: at.timestamp()) if read_at is not None else now
        due = due.astimezone(now.tzinfo)
        yield say(
            "{name}: {due}, then every {stale_days}.",
            name=capitalized(p.name),
            due=say("now") if due <= now else say("by {due}", due=date_words(due)),
            stale_days=days_words(p.stale_days),
        )


def _expected(answer: TogetherAnswer, now: datetime) -> Iterator[str]:
    week = answer.times.index(min(answer.times, key=lambda day: abs(day - 7.0)))
    for each in answer.outlooks:
        if each.known and together_view.moves(each):
            shown = together_view.shown_of(answer, each, now)
            yield f"{capitalized(each.moved.parameter.name)}: {held(shown.value(each.week))}{_between(each, shown, week)}."


def _between(each: Outlook, shown: Shown, week: int) -> str:
    """Return the band, made wider by what a test tells."""
    kit = each.moved.parameter.canonical(each.moved.parameter.kit_accuracy)
    low, high = max(0.0, each.low[week] - kit), each.high[week] + kit
    digits = 5 if shown.unit.startswith("SG") else 3
    return say(
        ", a test may say {low} to {high}", low=significant(shown.number(low), digits), high=held(shown.value(high))
    )


def _valid(answer: TogetherAnswer, ramps: Sequence[Ramp], now: datetime) -> tuple[datetime, str]:
    """Return the last day that the card holds, and why it ends."""
    ends = [(now + _LONGEST, say("After 30 days the tank uses something else: test and make it again."))]
    for ramp in ramps:
        until = min(ramp.course.valid_until, ramp.course.ends_at)
        ends.append(
            (
                until.astimezone(now.tzinfo),
                say(
                    "Then plan {plan_id} for {parameter} ends.",
                    plan_id=ramp.plan_id,
                    parameter=term(ramp.parameter.name),
                ),
            )
        )
    for each in answer.outlooks:
        # What is used up is not out of its range: there is nothing left of it.
        if each.hard is not None and each.hard.day > 0.0 and not together_view.used_up(each):
            at = now + timedelta(days=each.hard.day) - _ONE_DAY
            ends.append(
                (
                    at,
                    say(
                        "Then {parameter} would leave its range: change what moves it.",
                        parameter=term(each.moved.parameter.name),
                    ),
                )
            )
    until, because = min(ends, key=lambda end: end[0].timestamp())
    return max(until, now, key=lambda instant: instant.timestamp()), because


def _against(found: Together, foods: Sequence[Values], now: datetime) -> Iterator[str]:
    """Yield why the card must not be followed: what must stop, and what could not be read."""
    yield from found.against
    if found.answer is not None:
        yield from (words.sentence(reason) for reason in found.answer.dangers)
    yield from (each.text for each in found.left_out if each.unread)
    for values in foods:
        said = foods_jug.stop(values, now.date()) if foods_given.given(values) else ""
        if said:
            yield said
