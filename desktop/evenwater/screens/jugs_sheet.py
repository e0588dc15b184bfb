"""The Jugs sheet without its widgets: every jug at one glance, and one of them whole."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta

from evenwater.engine.catalogue import Catalogue
from evenwater.engine.jug_level import LOW_DAYS
from evenwater.engine.reasons import Reason
from evenwater.screens import correct, jug_danger, jug_delivery, jug_words, shelf, words
from evenwater.screens.jug_danger import CheckRow, RunInRow
from evenwater.screens.jug_delivery import CheckView
from evenwater.screens.jug_levels import Level, begin, below_ml
from evenwater.screens.jug_room import Jug, volume
from evenwater.screens.plan_id import batch_code
from evenwater.screens.rounds_jugs import LOGGED, READ, UNSURE
from evenwater.screens.shown import date_time, date_words, day_words, significant, span, with_unit
from evenwater.screens.terms import term
from evenwater.wording import marked, say

EMPTY_JUG = marked("nothing is in it yet")
NOT_KNOWN = marked("level not known")
_DAY = timedelta(days=1)
_PLAIN_YEAR = timedelta(days=180)


@dataclass(frozen=True)
class JugRow:
    """A jug in the list: what is in it, how much of how much and what says so, how long it lasts.

    ``share`` is level over full volume [1], None when one of them is not known; ``low`` below five days, ``empty`` when a pump draws air.
    ``check`` is what the levels say of the pump, where that must be seen to; ``stop`` when it may be a siphon.
    """

    stock_id: str
    name: str
    contents: str
    level: str
    basis: str
    lasts: str
    refill: str
    share: float | None = None
    low: bool = False
    empty: bool = False
    check: str = ""
    stop: bool = False


@dataclass(frozen=True)
class LevelRow:
    """A level in the list of one jug."""

    record_id: str
    words: str


@dataclass(frozen=True)
class JugView:
    """One jug, in the order in which it is read: what to stop, how to handle it, how long it lasts, and what its levels say.

    ``stop`` is a sentence when the jug may be running in by itself. ``unprimed`` is the id of the refill after which nobody primed the line,
    or empty. ``alarm`` says that the figure must be seen to at once.
    """

    contents: str
    stop: str
    cautions: tuple[str, ...]
    figure: str
    figure_unit: str
    alarm: bool
    second: str
    third: str
    notes: tuple[str, ...]
    unprimed: str
    priming: tuple[str, ...]
    check: CheckView
    runs_in: tuple[RunInRow, ...]
    no_runs_in: str
    advice: str
    checklist: tuple[CheckRow, ...]
    warnings: tuple[str, ...]
    unchecked: tuple[str, ...]
    levels: tuple[LevelRow, ...]


def contents_words(jug: Jug, catalogue: Catalogue) -> str:
    """Return what is in a jug, by its full name with the telling parts in capitals, and the code of its batch (L10, L11)."""
    named = dict(shelf.contents_options(catalogue)).get(shelf.contents_of(jug.batch), "")
    if not named:
        return say(EMPTY_JUG)
    return say("{named}, batch {batch_id}", named=named, batch_id=batch_code(jug.batch_id))


def row(jug: Jug, catalogue: Catalogue, now: datetime, check: CheckView | None = None) -> JugRow:
    """Return a jug as it stands in the list of all.

    Parameters
    ----------
    jug : Jug
        The jug.
    catalogue : Catalogue
        Chemicals, for their names.
    now : datetime
        The present in the keeper's zone.
    check : CheckView or None
        What its levels say of the pump, if they were looked at already.

    Returns
    -------
    JugRow
        Its words.
    """
    ml, basis = level_now(jug, now)
    holds, days = jug.holds_ml, days_left(jug, now)
    level = (
        say(NOT_KNOWN)
        if ml is None
        else volume(ml)
        if holds is None
        else say("{dose} of {holds}", dose=volume(ml), holds=volume(holds))
    )
    out, stop = jug.contents.runs_out, check is not None and bool(check.stop)
    return JugRow(
        stock_id=jug.stock_id,
        name=jug.name,
        contents=contents_words(jug, catalogue),
        level=level,
        basis=basis,
        lasts=_lasts(jug, days),
        refill=""
        if stop or out is None or days is None or days <= 0.0
        else say("refill before {out}", out=_day(out, now)),
        share=None if ml is None or not holds else min(ml / holds, 1.0),
        low=days is not None and days < LOW_DAYS,
        empty=days is not None and days <= 0.0,
        check="" if check is None else jug_delivery.summary(check),
        stop=stop,
    )


def level_now(jug: Jug, now: datetime) -> tuple[float | None, str]:
    """Return what is in a jug now, and what says so.

    Parameters
    ----------
    jug : Jug
        The jug.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    tuple of (float or None, str)
        Volume [mL] and words; None when neither a level nor a batch tells it.
    """
    contents = jug.contents
    if contents.amount is None:
        known = begin(jug.batch, jug.levels, now)
        if known is None:
            return None, say("read it once")
        return known.ml, say(
            "as {read} {at}", read=say("read") if known.read else say("filled"), at=_moment(known.at, now)
        )
    if contents.read_at is not None:
        # What is taken within a day of the reading is less than anyone can read.
        just = now.astimezone(UTC) - contents.read_at.astimezone(UTC) < _DAY / 24
        read = _moment(contents.read_at, now)
        said = (
            say("read {read}", read=read)
            if just or contents.basis == READ
            else say("reckoned since it was read {read}", read=read)
        )
    elif contents.since is not None:
        said = say("reckoned since its batch of {since}", since=_day(contents.since, now))
    else:
        said = "reckoned"
    if contents.basis == UNSURE:
        said += say("; far less is logged, so read it")
    return contents.amount, said


def days_left(jug: Jug, now: datetime) -> float | None:
    """Return how long a jug lasts [day], zero when it is empty; None when nobody knows (H24)."""
    out = jug.contents.runs_out
    return None if out is None else max((out.astimezone(UTC) - now.astimezone(UTC)) / _DAY, 0.0)


def _lasts(jug: Jug, days: float | None) -> str:
    if jug.drawers is None:
        return say("reckoning")
    if days is None and jug.per_day_ml <= 0.0:
        return say("nothing is taken")
    if days is None:
        return "" if jug.contents.amount is None else say("more than ten years")
    if days <= 0.0:
        return say("empty") if _certainly_empty(jug) else say("may be empty")
    return _whole(days)


def _certainly_empty(jug: Jug) -> bool:
    """Return whether a jug was read as empty, or the doses in the log took all of it; what is only reckoned is not certain."""
    basis, until, out = jug.contents.basis, jug.contents.until, jug.contents.runs_out
    return basis == READ or (basis == LOGGED and until is not None and out is not None and out <= until)


def _whole(days: float) -> str:
    """Write how long a jug lasts, downwards: whole days, and hours on the last one."""
    if days >= 1.0:
        return say("1\u00a0day") if days < 2.0 else say("{days}\u00a0days", days=int(days))
    return span(days)


def page(jug: Jug, catalogue: Catalogue, now: datetime) -> JugView:
    """Return one jug whole.

    Parameters
    ----------
    jug : Jug
        The jug.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    JugView
        Everything its page says.
    """
    check = jug_delivery.view(jug, now)
    figure, unit, alarm = _figure(jug, check, now)
    rows, none = jug_danger.runs_in(jug, catalogue)
    unprimed = _unprimed(jug)
    warnings, unchecked = jug_danger.warnings(jug)
    return JugView(
        contents=contents_words(jug, catalogue),
        stop=check.stop,
        cautions=cautions(jug, catalogue),
        figure=figure,
        figure_unit=unit,
        alarm=alarm,
        second=_second(jug, now, bool(check.stop)),
        third=_third(jug, now),
        notes=tuple(_notes(jug, now, unprimed)),
        unprimed="" if unprimed is None else unprimed.record_id,
        priming=jug_danger.priming(jug),
        check=check,
        runs_in=rows,
        no_runs_in=none,
        advice=say(jug_words.ADVICE) if rows else "",
        checklist=jug_danger.checklist(jug, catalogue),
        warnings=warnings,
        unchecked=unchecked,
        levels=tuple(_level_row(level, now) for level in sorted(jug.levels, key=_when, reverse=True)),
    )


def cautions(jug: Jug, catalogue: Catalogue) -> tuple[str, ...]:
    """Return the handling lines of what is in a jug: the signal word, what may happen and who says so, then what to do."""
    lines, hazards = correct.cautions(jug.batch, catalogue), shelf.hazards(jug.batch, catalogue)
    return (*lines[:1], *hazards, *lines[1:]) if hazards else lines


def _figure(jug: Jug, check: CheckView, now: datetime) -> tuple[str, str, bool]:
    days = days_left(jug, now)
    if days is None or check.stop:
        return "", "", False
    if days <= 0.0:
        return say("Empty") if _certainly_empty(jug) else say("Empty?"), "", True
    if days < 1.0:
        return str(max(int(days * 24.0), 0)), say("hours left"), True
    return str(int(days)), say("day left") if days < 2.0 else say("days left"), days < LOW_DAYS


def _second(jug: Jug, now: datetime, stop: bool) -> str:
    ml, _ = level_now(jug, now)
    if ml is None:
        return say("Nobody knows what is in this jug. Read its level.")
    holds, out = jug.holds_ml, jug.contents.runs_out
    said = say(
        "{dose}{holds} in the jug.",
        dose=volume(ml),
        holds="" if holds is None else say(" of {holds}", holds=volume(holds)),
    )
    days = days_left(jug, now)
    if out is not None and days is not None and days > 0.0 and not stop:
        said += say(" Refill it before {out}.", out=_moment(out, now))
    return said


def _third(jug: Jug, now: datetime) -> str:
    if jug.drawers is None:
        return say(jug_delivery.LOOKING)
    ml, basis = level_now(jug, now)
    said = f"{basis[:1].upper()}{basis[1:]}." if ml is not None else ""
    takers = [
        say("{each} {per_day} a day", each=term(each.name), per_day=with_unit(significant(each.per_day_ml, 3), "mL"))
        for each in jug.drawers
        if each.per_day_ml > 0.0
    ]
    taken = (
        say("Taken by {takers}.", takers="; ".join(takers)) if takers else say("Nothing is known to be taken from it.")
    )
    return f"{said} {taken}".strip()


def _notes(jug: Jug, now: datetime, unprimed: Level | None) -> Iterator[str]:
    days, holds = days_left(jug, now), jug.holds_ml
    if days is not None and days <= 0.0:
        if _certainly_empty(jug):
            yield words.sentence(Reason("jug_empty", {}, "level"))
        else:
            yield (
                say(
                    "By what was dosed the jug is empty by now. Read its level. If it is, refill it and prime the line; go on with the next dose and never make up what was missed."
                )
            )
    elif days is not None and days < LOW_DAYS:
        yield words.sentence(Reason("jug_low", {"days": days}, "level"))
    if unprimed is not None:
        yield (
            say(
                "The line was not primed after the refill of {at}. Run the pump until liquid stands at the outlet, then say so here. What did not arrive is not made up.",
                at=_moment(unprimed.at, now),
            )
        )
    if holds is not None and jug.per_day_ml * 2.0 > holds - below_ml(jug.stock):
        yield words.sentence(Reason("jug_lasts_hours", {"per_day_ml": jug.per_day_ml}, "jug.holds"))
    if shelf.past(jug.batch, now):
        yield say("This batch is past the date it was to be used by. Mix a new one.")


def _unprimed(jug: Jug) -> Level | None:
    """Return the last refill, if the line was not primed after it."""
    last = max((level for level in jug.levels if level.refilled), key=_when, default=None)
    return None if last is None or last.primed else last


def _level_row(level: Level, now: datetime) -> LevelRow:
    said = volume(level.ml)
    if level.refilled:
        before = "" if level.before_ml is None else say(" from {before}", before=volume(level.before_ml))
        said = say(
            "refilled{before} to {said}, line {primed}",
            before=before,
            said=said,
            primed=say("primed") if level.primed else say("not primed"),
        )
    parts = (date_time(level.at.astimezone(now.tzinfo)), said, level.who)
    return LevelRow(level.record_id, " · ".join(part for part in parts if part))


def _when(level: Level) -> float:
    return level.at.timestamp()


def _day(at: datetime, now: datetime) -> str:
    """Write a day, with its year only where that is not plain."""
    local = at.astimezone(now.tzinfo)
    near = abs(at.timestamp() - now.timestamp()) < _PLAIN_YEAR.total_seconds()
    return day_words(local) if near else date_words(local)


def _moment(at: datetime, now: datetime) -> str:
    local = at.astimezone(now.tzinfo)
    return say("today {clock}", clock=f"{local:%H:%M}") if local.date() == now.date() else date_time(local)
