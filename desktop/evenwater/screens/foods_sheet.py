"""The Foods sheet without its widgets: the foods of a system, what they bring, and where nitrate and phosphate settle."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Any

from evenwater.engine import exchange_intake, foods, quantities
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.correction import Refused
from evenwater.engine.exchange import Course
from evenwater.engine.exchange_question import ExchangeQuestion
from evenwater.engine.foods import FoodsAnswer
from evenwater.engine.foods_question import Food, FoodsQuestion
from evenwater.engine.form import Unread
from evenwater.engine.quantities import Typed, Water
from evenwater.engine.question import VOLUME_UNCERTAINTY
from evenwater.engine.reasons import Reason
from evenwater.screens import correct, foods_given, foods_jug, water_given, words
from evenwater.screens.exchange_given import Newest
from evenwater.screens.foods_chart import Panel, panels
from evenwater.screens.foods_fields import number
from evenwater.screens.foods_given import Values
from evenwater.screens.foods_words import ALONE, AT_MOST, FOOD_WORDS, OXYGEN
from evenwater.screens.shown import Shown, about, dose, significant, unit_words, with_unit
from evenwater.screens.terms import capitalized, term
from evenwater.screens.views import AnswerView, Bar, Message, WorkLine
from evenwater.wording import marked, say, say_all

FOLLOWED = ("nitrate", "phosphate")
_COLUMNS = (*FOLLOWED, "alkalinity")
# What is looked at [day]: a week, four weeks, eight weeks.
LOOKED_AT = (7, 28, 56)
MISSING = "--"
_NO_EXCHANGE = {"per_day": Typed("0", "L per day")}
_HEADS = ("", marked("now"), marked("in a week"), marked("in 4 weeks"), marked("in 8 weeks"), marked("settles at"))


@dataclass(frozen=True)
class FoodsRoom:
    """What the records say: the system, its water, its foods by id, their pumps by id, and the newest readings by parameter."""

    system: Values
    water: Values
    foods: tuple[tuple[str, Values], ...] = ()
    pumps: Mapping[str, Values] = field(default_factory=dict)
    readings: Mapping[str, Newest] = field(default_factory=dict)

    def values(self, food_id: str) -> Values:
        """Return the fields of one food; none of one that is gone."""
        return dict(self.foods).get(food_id, {})

    def pump(self, food_id: str) -> Values:
        """Return the fields of the pump that gives a food; none where none is chosen."""
        return self.pumps.get(foods_given.text_of(self.values(food_id), "pump"), {})


@dataclass(frozen=True)
class FoodsView:
    """Everything the sheet shows.

    ``answer`` is about the chosen food, ``rows`` what every food and all together bring, ``course`` where nitrate and phosphate go,
    each with the words of its columns, and ``chart`` the same to paint; ``lines`` are jug and line of the chosen food, ``notes`` what holds for all.
    """

    answer: AnswerView
    rows: tuple[tuple[str, ...], ...] = ()
    course: tuple[tuple[str, ...], ...] = ()
    lines: tuple[WorkLine, ...] = ()
    notes: tuple[str, ...] = ()
    chart: tuple[Panel, ...] = ()

    heads = _HEADS


def table_heads(catalogue: Catalogue) -> tuple[str, ...]:
    """Return the heads of the table of what foods bring, each value with its unit."""
    columns = (catalogue.parameters[name] for name in _COLUMNS)
    return say("In a day"), say("given"), *(f"{term(p.name)}, {unit_words(p.display_unit)}" for p in columns)


def row(values: Values, today: date) -> str:
    """Return a food as it stands in the list, in two lines: its name; what is given, and until when or why not."""
    given = foods_given.given(values)
    per_day = number(values, "per_day")
    said = (
        say("paused")
        if not given
        else say("no amount yet")
        if per_day is None
        else say("{per_day} a day", per_day=about(1000.0 * per_day))
    )
    kept = foods_jug.kept(values)
    ends = ""
    if kept.spoiled(today):
        ends = say("STOP: its last day is over")
    elif kept.last_day is not None:
        ends = say("use until {last_day}", last_day=foods_jug.day_words(kept.last_day))
    return f"{foods_given.name_of(values)}\n{' · '.join(part for part in (said, ends) if part)}"


def view(room: FoodsRoom, food_id: str, catalogue: Catalogue, today: date) -> FoodsView:
    """Reckon what the foods of a system do, and turn it into what the sheet shows.

    Parameters
    ----------
    room : FoodsRoom
        The records.
    food_id : str
        The food that is shown; empty where the system has none.
    catalogue : Catalogue
        Parameters.
    today : date
        The day, in the keeper's zone.

    Returns
    -------
    FoodsView
        Everything that is shown.
    """
    values, water = room.values(food_id), correct.water(room.system)
    read = {each: foods_given.read(found, catalogue, water) for each, found in room.foods if foods_given.given(found)}
    good = {each: food for each, food in read.items() if isinstance(food, Food)}
    others = [
        Message(
            say("{each} cannot be read yet, so nothing of it is counted.", each=foods_given.name_of(room.values(each)))
        )
        for each in read
        if each not in good and each != food_id
    ]
    question = _question(room, tuple(good.values()), catalogue)
    wrong = (*foods_jug.messages(values, today), *others)
    asked = isinstance(question, FoodsQuestion)
    found = foods.solve(question) if isinstance(question, FoodsQuestion) else None
    own = read.get(food_id)
    answer = AnswerView("empty")
    if food_id:
        answer = _answer(room, food_id, own, question, found, today)
        answer = replace(answer, messages=(*answer.messages, *wrong))
    return FoodsView(
        answer=answer,
        rows=_rows(room, good, catalogue, water) if good else (),
        course=tuple(_course(room, found)) if isinstance(found, FoodsAnswer) and good else (),
        lines=foods_jug.lines(values, room.pump(food_id), today),
        notes=tuple(_notes(found)) if good and asked else (),
        chart=panels(found, room.readings) if isinstance(found, FoodsAnswer) and good else (),
    )


def _question(room: FoodsRoom, given: tuple[Food, ...], catalogue: Catalogue) -> FoodsQuestion | Unread:
    """Return the question of all foods, or what is missing on the other sheets."""
    system = dict(correct.raw_question("", room.system, {}, {}, {})["system"])
    system.pop("evaporation", None)
    if not foods_given.text_of(room.system, "volume_uncertainty"):
        known = foods_given.text_of(room.system, "volume_known")
        share = VOLUME_UNCERTAINTY.get(known, VOLUME_UNCERTAINTY[""])
        system["volume_uncertainty"] = Typed(quantities.significant(100.0 * share, 3), "%")
    tables = water_given.tables(room.system, room.water)
    flow = {
        n: t for n, t in tables.get("exchange", {}).items() if n in ("per_day", "out", "in", "as_much_as", "every_days")
    }
    raw: dict[str, Any] = {
        "system": system,
        "exchange": {**(flow or _NO_EXCHANGE), "days": str(LOOKED_AT[-1])},
        "value": [_value(room, catalogue.parameters[name], tables.get("new_water", {})) for name in FOLLOWED],
    }
    if "new_water" in tables:
        raw["new_water"] = tables["new_water"]
    tank = exchange_intake.exchange(raw, catalogue)
    if isinstance(tank, Unread):
        return tank
    return FoodsQuestion(tank, given, tuple(catalogue.parameters.values()))


def _value(room: FoodsRoom, p: Parameter, new: Mapping[str, Typed]) -> dict[str, Any]:
    """Return a value as a question has it; one that nobody tested begins at nothing, which does not move where it settles."""
    reading, loss = room.readings.get(p.name), water_given.loss(room.water, p.name)
    found: dict[str, Any] = {
        "parameter": p.name,
        "now": Typed("0", p.display_unit) if reading is None else reading.typed,
    }
    found |= {"new_water": new[p.name]} if p.name in new else {}
    return found | ({} if loss is None else {"loss_per_day": loss})


# The chosen food


def _answer(
    room: FoodsRoom,
    food_id: str,
    own: Food | Unread | None,
    question: FoodsQuestion | Unread,
    found: FoodsAnswer | Refused | None,
    today: date,
) -> AnswerView:
    values = room.values(food_id)
    remarks = foods_jug.remarks(values, room.pump(food_id))
    if own is None:
        return AnswerView("answered", "0", say("mL per day"), say("Paused: nothing of it is counted."), remarks=remarks)
    if isinstance(own, Unread):
        state = "refused" if own.wrong else "empty"
        return AnswerView(state, messages=tuple(_message(reason) for reason in own.reasons), remarks=remarks)
    if isinstance(question, Unread):
        return AnswerView("empty", messages=tuple(_elsewhere(reason) for reason in question.reasons), remarks=remarks)
    brings = _brings(own, question.tank)
    why = foods_jug.stop(values, today)
    if why:
        stop = (Message(why, "", "food_spoiled"),)
        return AnswerView("stop", say("Stop"), say("feeding now"), brings, messages=stop, remarks=remarks, spoken=why)
    most = foods.most_of(question, own)
    at_most = ""
    if most is not None:
        at_most = say(
            "At most {dose} a day of it beside the other foods, by the rise of {parameter}.",
            dose=about(most.ml),
            parameter=term(most.parameter.name),
        )
    if not isinstance(found, FoodsAnswer):
        said = () if found is None else tuple(Message(words.sentence(r), "", r.code) for r in found.reasons)
        return AnswerView("refused", second=at_most, messages=said, remarks=remarks, spoken=at_most)
    number, unit = _figure(own.per_day_ml)
    bars = tuple(_bars(found))
    return AnswerView(
        "answered",
        number,
        unit,
        brings,
        at_most,
        bars=bars,
        working=tuple(_working(own, question.tank)),
        remarks=(*(words.sentence(reason) for reason in found.remarks), *remarks),
        spoken=f"{with_unit(number, unit)}. {brings}",
    )


def _message(reason: Reason) -> Message:
    """Return the sentence for a reason, at the field of the sheet that it is about."""
    name = "_".join(reason.path.split(".")[2:])
    path = f"food.{name}" if name else ""
    if reason.code == "missing":
        return Message(say("Fill in {food_words}.", food_words=say_all(FOOD_WORDS[name])), path, reason.code)
    return Message(words.sentence(reason), path, reason.code)


def _elsewhere(reason: Reason) -> Message:
    """Return what is missing or wrong on another sheet."""
    where = say("Exchange") if reason.path.partition(".")[0] in ("exchange", "new_water", "value") else say("Correct")
    said = say("Fill in the net volume.") if reason.path == "system.net_volume" else words.sentence(reason)
    return Message(say("On the {where} sheet: {said}", where=where, said=said), "", reason.code)


def _figure(ml: float) -> tuple[str, str]:
    number, _, unit = dose(float(quantities.significant(ml, 6))).partition("\u00a0")
    return number, say("{unit} per day", unit=unit)


def _brings(food: Food, tank: ExchangeQuestion) -> str:
    """Return what a food brings in a day, in a sentence."""
    said = [
        f"{shown.rise(rise)} {term(name)}"
        for name, shown in _shown(tank).items()
        if (rise := food.brings(name, tank.volume_l)) > 0.0
    ]
    if food.other is not None:
        p = food.other[0]
        rise = food.brings(p.name, tank.volume_l)
        said += (
            [f"{Shown(p, p.display_unit, tank.water).rise(rise)} {term(p.name)}"]
            if rise > 0.0 and p.name not in FOLLOWED
            else []
        )
    return (
        say("A day of it brings at most {said}.", said=say(" and ").join(said))
        if said
        else say("Nothing of it is counted.")
    )


def _shown(tank: ExchangeQuestion) -> dict[str, Shown]:
    return {moved.parameter.name: Shown(moved.parameter, moved.unit, tank.water) for moved in tank.values}


def _bars(found: FoodsAnswer) -> Iterator[Bar]:
    for each in found.brought:
        if each.near is None:
            continue
        p = each.parameter
        shown = Shown(p, p.display_unit, found.question.tank.water)
        text = say(
            "{near_value} of {bound}",
            near_value=significant(shown.number(each.near.value), 3),
            bound=shown.rise(each.near.bound),
        )
        yield Bar(each.near.code, say("{name} in a day", name=capitalized(p.name)), text, each.near.share)


def _working(food: Food, tank: ExchangeQuestion) -> Iterator[WorkLine]:
    """Yield how a food becomes nitrate, phosphate and used alkalinity."""
    ml, litres = about(food.per_day_ml), with_unit(significant(tank.volume_l, 4), "L")
    for name, shown in _shown(tank).items():
        carried = food.nitrogen if name == "nitrate" else food.phosphorus or 0.0
        if carried > 0.0:
            per = significant(food.per_ml(name) / carried, 4)
            how = say(
                "{dose} × {carried} in a mL × {per} ÷ {litres}",
                dose=ml,
                carried=with_unit(significant(carried, 3), "mg"),
                per=per,
                litres=litres,
            )
            yield WorkLine(
                say("{name} in a day", name=capitalized(name)), how, shown.rise(food.brings(name, tank.volume_l))
            )


# All foods


def _rows(room: FoodsRoom, good: Mapping[str, Food], catalogue: Catalogue, water: Water) -> tuple[tuple[str, ...], ...]:
    """Return what every food and all together bring and take in a day; nothing where the net volume is not known."""
    volume = correct.volume_l(room.system)
    if volume is None:
        return ()
    columns = [catalogue.parameters[name] for name in _COLUMNS]
    rows = [
        (
            foods_given.name_of(room.values(each)),
            about(food.per_day_ml),
            *(_rise(p, food.brings(p.name, volume), water) for p in columns),
        )
        for each, food in good.items()
    ]
    if len(rows) > 1:
        totals = (sum(food.brings(p.name, volume) for food in good.values()) for p in columns)
        rows.append(
            (
                say("All together"),
                about(sum(food.per_day_ml for food in good.values())),
                *(_rise(p, total, water) for p, total in zip(columns, totals, strict=True)),
            )
        )
    return tuple(rows)


def _rise(p: Parameter, rise: float, water: Water) -> str:
    if rise == 0.0:
        return say("none")
    said = significant(Shown(p, p.display_unit, water).number(abs(rise)), 3)
    return said if rise > 0.0 else say("takes {said}", said=said)


def _course(room: FoodsRoom, found: FoodsAnswer) -> Iterator[tuple[str, ...]]:
    for value in found.values:
        moved = value.fed.moved
        yield (f"{capitalized(moved.parameter.name)}, {unit_words(moved.unit)}", *("" for _ in _HEADS[1:]))
        yield (say("with these foods"), *_points(room, found, value.fed))
        yield (say("without food"), *_points(room, found, value.without))


def _points(room: FoodsRoom, found: FoodsAnswer, course: Course) -> tuple[str, ...]:
    """Return a value now and on the days looked at, and where it settles; of one that nobody tested only the last."""
    shown = _shown(found.question.tank)[course.moved.parameter.name]
    settles = say("climbs on") if course.settles is None else significant(shown.number(course.settles), 3)
    if course.settles is None and course.moved.added == 0.0:
        settles = "stays"
    if course.moved.parameter.name not in room.readings:
        return say("no reading"), *(MISSING for _ in LOOKED_AT), settles
    at = dict(zip(found.times, course.points, strict=True))
    return (*tuple(significant(shown.number(at[day]), 3) for day in (0.0, *map(float, LOOKED_AT))), settles)


def _notes(found: FoodsAnswer | Refused | None) -> Iterator[str]:
    yield say(AT_MOST)
    yield say(ALONE)
    oxygen = say(OXYGEN)
    if isinstance(found, FoodsAnswer) and found.oxygen > 0.0:
        oxygen += say(
            " Turning their nitrogen into nitrate alone takes {oxygen} in a day.",
            oxygen=with_unit(significant(found.oxygen, 2), say("mg per L")),
        )
    yield oxygen
