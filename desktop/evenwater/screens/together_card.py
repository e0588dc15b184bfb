"""What the card of all plans together says: cautions, every pump, water and food of a system, what to test, when to stop."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.foods_question import Food
from evenwater.engine.quantities import Typed, Water, figure, significant
from evenwater.engine.stock import Additive, Dissolved
from evenwater.engine.together_answer import Outlook, TogetherAnswer
from evenwater.engine.upkeep import UpkeepDose
from evenwater.screens import correct, foods_given, foods_jug, plan_id, together_view, words
from evenwater.screens.answer import BOTTLE
from evenwater.screens.names import shown_name
from evenwater.screens.shown import Shown, about, date_time, date_words, dose, every, seconds, with_unit
from evenwater.screens.timetable_card import EMERGENCY, RULES, SHEET_WINS
from evenwater.screens.timetable_given import BOTTLE_NAME, pairs
from evenwater.screens.timetable_wishes import USUAL_APART_MIN
from evenwater.screens.together import Together
from evenwater.screens.together_sources import Ramp, Tank
from evenwater.screens.together_words import held
from evenwater.screens.views import DoseRow

Values = Mapping[str, Typed]

# What a tank uses changes; common practice, no source.
_LONGEST = timedelta(days=30)
_ONE_DAY = timedelta(days=1)
DRAFT = "Draft, not to be followed"


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
    rules: tuple[str, ...] = RULES


@dataclass(frozen=True)
class _Pumped:
    """One pump: what it gives for which value, and what its row says."""

    parameter: str
    additive: Additive
    most_ml: float
    row: DoseRow

    @property
    def name(self) -> str:
        return self.additive.tall_man if isinstance(self.additive, Dissolved) else BOTTLE_NAME


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
    set_by_hand = tuple(f"{row.when}|{row.dose}|{row.additive}|{row.setting}" for row in (*rows, *eaten))
    return TogetherPage(
        title="Everything that runs",
        system=shown_name(system, "Unnamed system"),
        volume=f"Net volume {correct.volume_words(system).replace(' net', '', 1)}.",
        code=plan_id.together_code((*set_by_hand, *water)),
        issued=f"Issued {date_words(now)} {now:%H:%M}",
        replace="Replace this card when its code changes.",
        valid_until=f"Valid until {date_words(until)}",
        because=because,
        cautions=_cautions(pumped),
        emergency=EMERGENCY,
        rows=rows,
        foods=eaten,
        water=water,
        separation=_separation(pumped),
        maxima=tuple(
            f"Never more than {dose(each.most_ml)} of {each.name} for {each.parameter} in 24 hours, all doses together."
            for each in pumped
        ),
        stop=tuple(_stop(answer, pumped, ramps, now)),
        tests=tuple(_tests(found, answer, ramps, now)),
        expected=tuple(_expected(answer, now)),
        plans=tuple(
            f"The doses of {ramp.parameter.name} are those of plan {ramp.plan_id} until {date_time(ramp.course.ends_at.astimezone(now.tzinfo))}; "
            "they make good the daily use as well. Then its upkeep begins: make this card again."
            for ramp in ramps
        ),
        draft=tuple(_against(found, foods, now)),
    )  # fmt: skip


# What is given


def _upkeep(found: Together) -> Iterator[_Pumped]:
    for each in () if found.upkeep is None else found.upkeep.doses:
        if each.dose_ml > 0.0:
            pump = each.item.pump.name.strip() or f"Pump for {each.item.parameter.name}"
            setting = (
                f"{pump}: runs {seconds(each.run_time_s)} each time. {_sums(each.in_24_hours_ml)}{_empty(each, found)}"
            )
            name, additive = each.item.parameter.name, each.item.additive
            when = f"{name.capitalize()} upkeep, {every(each.per_day)}"
            row = DoseRow(when, dose(each.dose_ml), _named(additive), setting + _strength(additive))
            yield _Pumped(name, additive, each.in_24_hours_ml, row)


def _empty(each: UpkeepDose, found: Together) -> str:
    if each.empty_at is None or found.upkeep is None:
        return ""
    return f" A full jug lasts until {date_words(each.empty_at.astimezone(found.upkeep.question.now.tzinfo))}."


def _ramps(ramps: Sequence[Ramp]) -> Iterator[_Pumped]:
    for ramp in ramps:
        course, name = ramp.course, ramp.parameter.name
        in_24_hours = round(course.dose_ml * course.per_day, 9)
        run = seconds(course.dose_ml / ramp.pump.flow_ml_per_min * 60.0)
        setting = f"{ramp.pump.name.strip() or f'Pump for {name}'}: runs {run} each time. {_sums(in_24_hours)}"
        when = f"{name.capitalize()}, {every(course.per_day)}\nPlan {ramp.plan_id}"
        row = DoseRow(when, dose(course.dose_ml), _named(ramp.additive), setting + _strength(ramp.additive))
        yield _Pumped(name, ramp.additive, course.never_more_ml, row)


def _sums(in_24_hours_ml: float) -> str:
    return f"{about(in_24_hours_ml / 24.0)} per hour, {dose(in_24_hours_ml)} in 24 hours."


def _named(additive: Additive) -> str:
    return additive.tall_man if isinstance(additive, Dissolved) else BOTTLE_NAME[:1].upper() + BOTTLE_NAME[1:]


def _strength(additive: Additive) -> str:
    if not isinstance(additive, Dissolved):
        return ""
    litres = with_unit(significant(additive.made_up_l, 3), "L")
    if additive.saturated:
        return f" In the jug: clear saturated solution, {litres}."
    said = " and ".join(f"{with_unit(significant(p.grams, 4), 'g')} {p.chemical.tall_man}" for p in additive.portions)
    return f" In the jug: {said} made up to {litres}."


def _food(values: Values, catalogue: Catalogue, water: Water) -> object:
    return foods_given.read(values, catalogue, water) if foods_given.given(values) else None


def _fed(values: Values, food: Food) -> DoseRow:
    kept = foods_jug.kept(values)
    cold = "Keep it cold." if foods_given.text_of(values, "cold") == foods_given.YES else ""
    last = (
        f"Use it until {foods_jug.day_words(kept.last_day)}, then throw it away." if kept.last_day is not None else ""
    )
    rest = " ".join(filter(None, (cold, last, "Never make up a missed feeding.")))
    amount = dose(float(significant(food.per_day_ml, 6)))
    return DoseRow("Food, in a day", amount, foods_given.name_of(values), rest)


def _water(answer: TogetherAnswer) -> Iterator[str]:
    pair = answer.question.tank.pair
    if pair.out_l <= 0.0 and pair.in_l <= 0.0:
        return
    yield f"Old water out: {about(1000.0 * pair.out_l)} per day. New water in: {about(1000.0 * pair.in_l)} per day."
    salinity = significant(answer.question.tank.new_salinity, 3)
    alike = "Both pumps are matched; when one stops, stop the other." if pair.out_l == pair.in_l else "Watch the level."
    yield f"{alike} New water has a salinity of {with_unit(salinity, 'ppt')}."


# What goes with it


def _cautions(pumped: Sequence[_Pumped]) -> tuple[str, ...]:
    """Return a paragraph for each additive: its hazards, and how it is handled; what two have in common stands once."""
    said: set[str] = set()
    found = []
    for each in pumped:
        additive = each.additive
        portions = additive.portions if isinstance(additive, Dissolved) else ()
        hazards = [
            f"{p.chemical.signal_word or 'Caution'}, {p.chemical.name}: {', '.join(p.chemical.statements)}."
            for p in portions
            if p.chemical.statements
        ]
        handling = additive.cautions if isinstance(additive, Dissolved) else BOTTLE
        new = [line for line in (*hazards, *handling) if line not in said]
        said.update(new)
        found += [" ".join(new)] if new else []
    return (*found, SHEET_WINS)


def _separation(pumped: Sequence[_Pumped]) -> tuple[str, ...]:
    names = {each.parameter: each.name for each in pumped}
    apart = with_unit(str(USUAL_APART_MIN), "min")
    found = [
        f"{names[one]} and {names[other]}: {apart} apart, by another outlet each, in flow. Never mix the concentrates."
        for one, other in pairs(tuple(names))
    ]
    return (*found, "At which minute each pump doses stands on the timetable.") if found else ()


def _stop(answer: TogetherAnswer, pumped: Sequence[_Pumped], ramps: Sequence[Ramp], now: datetime) -> Iterator[str]:
    planned = {ramp.parameter.name: ramp.course.stop_above for ramp in ramps}
    for name in dict.fromkeys(each.parameter for each in pumped):
        each = answer.outlook(name)
        if each is not None:
            p = each.moved.parameter
            above = planned.get(name, p.canonical(p.range_kept[1]))
            shown = together_view.shown_of(answer, each, now)
            yield f"Stop dosing {name} and test again if it reads above {held(shown.value(above))}."


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
        yield f"{p.name.capitalize()}: {'now' if due <= now else f'by {date_words(due)}'}, then every {_days(p.stale_days)}."


def _days(days: float) -> str:
    return f"{with_unit(figure(days, 0), 'days')}"


def _expected(answer: TogetherAnswer, now: datetime) -> Iterator[str]:
    week = answer.times.index(min(answer.times, key=lambda day: abs(day - 7.0)))
    for each in answer.outlooks:
        if each.known and together_view.moves(each):
            shown = together_view.shown_of(answer, each, now)
            yield f"{each.moved.parameter.name.capitalize()}: {held(shown.value(each.week))}{_between(each, shown, week)}."


def _between(each: Outlook, shown: Shown, week: int) -> str:
    """Return the band, made wider by what a test tells."""
    kit = each.moved.parameter.canonical(each.moved.parameter.kit_accuracy)
    low, high = max(0.0, each.low[week] - kit), each.high[week] + kit
    digits = 5 if shown.unit.startswith("SG") else 3
    return f", a test may say {significant(shown.number(low), digits)} to {held(shown.value(high))}"


def _valid(answer: TogetherAnswer, ramps: Sequence[Ramp], now: datetime) -> tuple[datetime, str]:
    """Return the last day that the card holds, and why it ends."""
    ends = [(now + _LONGEST, "After 30 days the tank uses something else: test and make it again.")]
    for ramp in ramps:
        until = min(ramp.course.valid_until, ramp.course.ends_at)
        ends.append((until.astimezone(now.tzinfo), f"Then plan {ramp.plan_id} for {ramp.parameter.name} ends."))
    for each in answer.outlooks:
        # What is used up is not out of its range: there is nothing left of it.
        if each.hard is not None and each.hard.day > 0.0 and not together_view.used_up(each):
            at = now + timedelta(days=each.hard.day) - _ONE_DAY
            ends.append((at, f"Then {each.moved.parameter.name} would leave its range: change what moves it."))
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
