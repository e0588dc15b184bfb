"""Foods that may not be given any more, or not for long, and jugs of food that run out."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, date, datetime, time

from evenwater.screens import foods_given, foods_jug
from evenwater.screens.foods_given import Values
from evenwater.screens.rounds_room import DUE, FOOD, ORDER, SOON, WRONG, Clock, Duty, KeptFood, Room, place_of
from evenwater.wording import say

# How far ahead the last day of a food and the end of its jug are told of [day]. Common practice, no source.
AHEAD_DAYS = 3


def kept_food(food_id: str, values: Values) -> KeptFood:
    """Return what the rounds need of a food.

    Parameters
    ----------
    food_id : str
        Id of its record: that of its system, a colon and its own.
    values : mapping of str to Typed
        Its fields, as typed.

    Returns
    -------
    KeptFood
        Its dates.
    """
    found = foods_jug.kept(values)
    return KeptFood(food_id, found.name, found.last_day, found.empty, foods_given.given(values))


def foods(room: Room, clock: Clock) -> Iterator[Duty]:
    """Yield a line for each food whose last day is over or near, or whose jug is empty; never two for one food.

    Parameters
    ----------
    room : Room
        The fish room.
    clock : Clock
        The present.

    Yields
    ------
    Duty
        The most urgent of the reasons of one food first, all in one line.
    """
    for food in room.foods:
        found = [each for each in (_last_day(room, food, clock), _empty(room, food, clock)) if each is not None]
        if not found:
            continue
        first = min(found, key=lambda duty: ORDER.index(duty.urgency))
        why = " ".join(duty.why for duty in found)
        yield replace(first, at=min(duty.at for duty in found), why=why, plain=why)


def _last_day(room: Room, food: KeptFood, clock: Clock) -> Duty | None:
    left = None if food.last_day is None else (food.last_day - _today(clock)).days
    if food.last_day is None or left is None or left > AHEAD_DAYS:
        return None
    day = foods_jug.day_words(food.last_day)
    if left < 0:
        # What is paused runs into no water: it only has to go.
        urgency, what = (
            (WRONG, say("Stop {food} and throw it away", food=food.name))
            if food.given
            else (DUE, say("Throw {food} away", food=food.name))
        )
        return _duty(
            room, food, urgency, food.last_day, what, say("Its last day was {day}. Rinse jug and line.", day=day)
        )
    if left == 0:
        return _duty(
            room,
            food,
            DUE,
            food.last_day,
            say("Throw {food} away tonight", food=food.name),
            say("{day} is its last day.", day=day),
        )
    return _duty(
        room, food, SOON, food.last_day, say("Get new {food}", food=food.name), say("Its last day is {day}.", day=day)
    )


def _empty(room: Room, food: KeptFood, clock: Clock) -> Duty | None:
    left = None if food.empty is None else (food.empty - _today(clock)).days
    if food.empty is None or left is None or left > AHEAD_DAYS:
        return None
    day = foods_jug.day_words(food.empty)
    if left > 0:
        return _duty(
            room,
            food,
            SOON,
            food.empty,
            say("Get new {food}", food=food.name),
            say("By the daily rate its jug is empty on {day}.", day=day),
        )
    # Nobody read a level of it: what is only reckoned is looked at first.
    why = say("By the daily rate its jug would be empty since {day}.", day=day)
    return _duty(room, food, DUE, food.empty, say("Look how much {food} is left", food=food.name), why)


def _today(clock: Clock) -> date:
    return clock.now.astimezone(clock.zone).date()


def _duty(room: Room, food: KeptFood, urgency: str, day: date, what: str, why: str) -> Duty:
    at = datetime.combine(day, time(23, 59), UTC) if day < date.max else datetime.max.replace(tzinfo=UTC)
    place = place_of(room, food.system_id)
    return Duty(urgency, at, place, what, why, "Foods", food.system_id, "", FOOD, food.food_id, why)
