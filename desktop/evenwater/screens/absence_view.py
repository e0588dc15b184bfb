"""Going away, without its widgets: which jugs to fill and with how much, what runs out first, and what falls into the time."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from evenwater.engine.absence import Absence, AbsentJug, Due, Filling, absence
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.jug_level import Filled
from evenwater.engine.reasons import Reason
from evenwater.screens import jug_words, words
from evenwater.screens.jug_levels import accuracy_ml, below_ml
from evenwater.screens.jug_room import Jug, volume
from evenwater.screens.rounds_jugs import UNSURE
from evenwater.screens.rounds_room import Followed, Room, place_of
from evenwater.screens.rounds_tests import due_at
from evenwater.screens.shown import date_time, date_words, span
from evenwater.screens.terms import term
from evenwater.screens.views import Message
from evenwater.screens.when import when_words
from evenwater.wording import say, say_many

PATH = "absence.until"
NEVER = jug_words.NEVER_MADE_UP
_DATE = re.compile(
    r"(?P<y>[0-9]{4})-(?P<m>[0-9]{1,2})-(?P<d>[0-9]{1,2})(?:[ T]+(?P<hour>[0-9]{1,2}):(?P<minute>[0-9]{2}))?", re.ASCII
)
_DAY_MONTH = re.compile(r"[0-9]{1,2}[./-][0-9]{1,2}(?:[./-][0-9]{2,4})?(?:[ ,]+[0-9:]*)?", re.ASCII)
# Nobody plans jugs for longer; a year that is further ahead was mistyped.
_LONGEST = timedelta(days=366)
# More lines than anyone reads.
_MOST_LINES = 40


@dataclass(frozen=True)
class FillRow:
    """One jug before an absence: what to do with it, and why; ``short`` when not even a full jug lasts."""

    stock_id: str
    name: str
    what: str
    why: str
    short: bool = False


@dataclass(frozen=True)
class AbsenceView:
    """What an absence asks for.

    ``message`` says why the date cannot be taken; ``until`` repeats it in words. ``headline`` names what runs out first. ``unknown`` are
    jugs nobody can say anything of, ``overdue`` and ``due`` the tests, cards and plans that fall due, by their dates.
    """

    message: Message | None = None
    until: str = ""
    headline: str = ""
    rows: tuple[FillRow, ...] = ()
    unknown: tuple[str, ...] = ()
    overdue: tuple[str, ...] = ()
    due: tuple[str, ...] = ()
    rule: str = ""


def read_return(text: str, now: datetime) -> datetime | Message | None:
    """Read when the keeper is back.

    Parameters
    ----------
    text : str
        ``2026-12-20`` or ``2026-12-20 18:00``; a date alone ends with its day.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    datetime, Message or None
        The instant, why it cannot be taken, or None for nothing.
    """
    clean = " ".join(text.replace("\u00a0", " ").split())
    if not clean:
        return None
    match = _DATE.fullmatch(clean)
    if match is None:
        if _DAY_MONTH.fullmatch(clean):
            said = when_words(Reason("when_day_or_month", {"text": text}))
        else:
            said = say("“{text}” is not a date. Write it like 2026-12-20 or 2026-12-20 18:00.", text=text)
        return Message(said, PATH, "not_a_date")
    try:
        hour, minute = (23, 59) if match["hour"] is None else (int(match["hour"]), int(match["minute"]))
        back = datetime(int(match["y"]), int(match["m"]), int(match["d"]), hour, minute, tzinfo=now.tzinfo)
    except ValueError:
        return Message(when_words(Reason("when_no_such_time", {"text": text})), PATH, "when_no_such_time")
    if back.timestamp() <= now.timestamp():
        return Message(words.sentence(Reason("back_already", {}, PATH)), PATH, "back_already")
    if back.timestamp() > now.timestamp() + _LONGEST.total_seconds():
        return Message(say("“{text}” is more than a year away. Correct its year.", text=text), PATH, "too_far")
    return back


def view(text: str, jugs: Sequence[Jug], room: Room, catalogue: Catalogue, now: datetime) -> AbsenceView:
    """Return what to do before an absence, from the present on.

    Parameters
    ----------
    text : str
        When the keeper is back, as typed.
    jugs : sequence of Jug
        All jugs.
    room : Room
        The fish room, for its tests, cards and plans.
    catalogue : Catalogue
        Parameters, for how long a reading holds.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    AbsenceView
        Jugs in the order in which they would run out. A dose that is missed is left out, never made up (H16).
    """
    back = read_return(text, now)
    if back is None:
        return AbsenceView()
    if isinstance(back, Message):
        return AbsenceView(message=back)
    known = {jug.stock_id: jug for jug in jugs if _absent(jug, now) is not None}
    asked = [each for jug in known.values() if (each := _absent(jug, now)) is not None]
    found = absence(asked, tuple(_dues(room, jugs, catalogue)), now, back)
    return AbsenceView(
        until=say(
            "until {back} {clock}, {timestamp} from now",
            back=date_words(back),
            clock=f"{back:%H:%M}",
            timestamp=span((back.timestamp() - now.timestamp()) / 86400.0),
        ),
        headline=_headline(found, known, now),
        rows=tuple(_row(known[each.name], each, now) for each in found.fillings),
        unknown=tuple(_unknown(jug) for jug in jugs if jug.stock_id not in known and jug.per_day_ml > 0.0),
        overdue=_listed(each.what for each in found.overdue),
        due=_listed(f"{date_time(each.at.astimezone(now.tzinfo))}: {each.what}" for each in found.due),
        rule=say(NEVER),
    )


def _absent(jug: Jug, now: datetime) -> AbsentJug | None:
    """Return a jug that something is known to be taken from, by its record's id."""
    amount, holds = jug.contents.amount, jug.holds_ml
    draws = tuple(
        each.draw(now + timedelta(days=1) / each.doses_per_day) for each in jug.drawers or () if each.per_day_ml > 0.0
    )
    if amount is None or holds is None or not draws:
        return None
    filled = Filled(now, amount, below_ml(jug.stock))
    return AbsentJug(jug.stock_id, filled, holds, draws, accuracy_ml=accuracy_ml(jug.stock, holds))


def _unknown(jug: Jug) -> str:
    if jug.holds_ml is None:
        return say("{jug}: say what it holds, then it can be reckoned with.", jug=jug.name)
    return say("{jug}: read its level, then it can be reckoned with.", jug=jug.name)


def _headline(found: Absence, jugs: dict[str, Jug], now: datetime) -> str:
    first = found.first_out
    if first is None or first.left_alone_until is None:
        return (
            say("Every jug lasts until you are back.")
            if found.fillings
            else say("Nothing is known to be taken from any jug.")
        )
    out = _moment(first.left_alone_until, now)
    count = sum(each.left_alone_until is not None for each in found.fillings)
    more = say(" {count} more run out too.", count=count - 1) if count > 1 else ""
    return say("{jugs} runs out first, on {out}.{more}", jugs=jugs[first.name].name, out=out, more=more)


def _row(jug: Jug, filling: Filling, now: datetime) -> FillRow:
    needed, level = volume(filling.needed_ml), volume(filling.level_ml)
    why = say("{needed} are needed until you are back, {level} are in it.", needed=needed, level=level)
    if filling.left_alone_until is not None:
        why += say(
            " Left as it is, it runs out on {left_alone_until}.",
            left_alone_until=_moment(filling.left_alone_until, now),
        )
    if jug.contents.basis == UNSURE:
        why += say(" Read its level first: far less is logged than the daily rate takes.")
    if filling.lasts_until is not None:
        why += say_many(
            " Even full it lasts only until {lasts_until}; after that 1 dose is left out. Ask somebody to refill it.",
            " Even full it lasts only until {lasts_until}; after that {n} doses are left out. Ask somebody to refill it.",
            filling.missed,
            lasts_until=_moment(filling.lasts_until, now),
        )
    what = say("Add {add}", add=volume(filling.add_ml)) if filling.add_ml > 0.0 else say("Lasts")
    if filling.add_ml <= 0.0 and filling.lasts_until is not None:
        what = say("Full, and too small")
    return FillRow(jug.stock_id, jug.name, what, why, filling.lasts_until is not None)


def _dues(room: Room, jugs: Sequence[Jug], catalogue: Catalogue) -> Iterator[Due]:
    """Yield what has a date: tests by how long a reading holds, cards, plans, and batches that are to be used up."""
    planned = {(plan.system_id, plan.parameter) for plan in room.plans}
    for reading in room.readings:
        parameter = catalogue.parameters.get(reading.parameter)
        if parameter is not None and reading.system_id in room.systems:
            place = place_of(room, reading.system_id)
            yield Due(
                say("test {parameter}, {place}", parameter=term(reading.parameter), place=place),
                place,
                due_at(reading, parameter),
            )
    for card in room.cards:
        # A card that is void, or hangs beside a plan, is the plan's or the rounds' matter.
        if not card.void and (card.system_id, card.parameter) not in planned:
            place = place_of(room, card.system_id)
            yield Due(
                say(
                    "card {plan_id} for {parameter} is valid no longer, {place}",
                    plan_id=card.plan_id,
                    parameter=term(card.parameter),
                    place=place,
                ),
                place,
                card.valid_until,
            )
    for plan in room.plans:
        yield from _of_plan(plan, place_of(room, plan.system_id))
    for jug in jugs:
        if jug.contents.use_by is not None:
            yield Due(say("the batch in {jug} is to be used up", jug=jug.name), jug.name, jug.contents.use_by)


def _of_plan(plan: Followed, place: str) -> Iterator[Due]:
    if plan.retest_at is not None:
        yield Due(
            say(
                "plan {plan_id} asks to test {parameter}, {place}",
                plan_id=plan.plan_id,
                parameter=term(plan.parameter),
                place=place,
            ),
            place,
            plan.retest_at,
        )
    if plan.ends_at is not None:
        yield Due(
            say(
                "plan {plan_id} for {parameter} ends with its card, {place}",
                plan_id=plan.plan_id,
                parameter=term(plan.parameter),
                place=place,
            ),
            place,
            plan.ends_at,
        )


def _listed(said: Iterable[str]) -> tuple[str, ...]:
    found = tuple(said)
    if len(found) <= _MOST_LINES:
        return found
    return (*found[:_MOST_LINES], say("and {found} more", found=len(found) - _MOST_LINES))


def _moment(at: datetime, now: datetime) -> str:
    return date_time(at.astimezone(now.tzinfo))
