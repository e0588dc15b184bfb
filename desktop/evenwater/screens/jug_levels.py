"""The levels that are read of a jug, and its refills: as typed, as they are kept, and as they are reckoned with."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime

from evenwater.engine import jug_intake
from evenwater.engine.quantities import Typed, to_canonical
from evenwater.engine.reader import Ask, Field, Ok, Wrong, read
from evenwater.engine.reasons import Reason
from evenwater.screens import words
from evenwater.screens.rounds_jugs import made_up_ml
from evenwater.screens.views import Message
from evenwater.screens.when import AHEAD_ALLOWED, AskWhen, instant_of, read_when, when_words
from evenwater.wording import say

Values = Mapping[str, Typed]

HOLDS, UNREACHABLE = jug_intake.HOLDS, jug_intake.UNREACHABLE
LEVEL = Field("level.level", "volume", "mL", 0.0, 1_000.0 * 1_000.0)
BEFORE = Field("level.before", "volume", "mL", 0.0, 1_000.0 * 1_000.0)
ACCURACY = Field("stock.level_accuracy", "volume", "mL", 0.0, 100_000.0, above_low=True)
# What is kept of a level, in the order of the form.
FIELDS = ("level", "before", "at", "who")
YES, NO = "yes", "no"
# A jug holds a little more than its mark; common practice, no source.
_ABOVE_MARK = 1.05
# Two rates [mL per day] nearer than this share are the same; what a card rounds away is less.
_SAME_RATE = 0.02


@dataclass(frozen=True)
class Level:
    """A level as it was read, or as it stood after a refill: ``ml`` [mL] in the jug at an instant.

    ``before_ml`` [mL] was in it before the refill, None if nobody looked. ``per_day_ml`` [mL] was taken in a day by then, None if that was
    not known. ``primed`` says that the line was primed after the refill.
    """

    record_id: str
    at: datetime
    ml: float
    refilled: bool = False
    before_ml: float | None = None
    primed: bool = False
    who: str = ""
    per_day_ml: float | None = None


@dataclass(frozen=True)
class Begin:
    """From when on what is in a jug is reckoned, and what was in it then [mL]; ``read`` when that is a level, else it is a batch."""

    at: datetime
    ml: float
    read: bool


def ml_of(typed: Typed, field: Field) -> float | None:
    """Return a volume as typed.

    Parameters
    ----------
    typed : Typed
        What stands in the field.
    field : Field
        The field, of the kind "volume".

    Returns
    -------
    float or None
        Volume [mL], or None while it has no one meaning.
    """
    found = read(typed.text, field, typed.unit or field.unit)
    return (
        1000.0 * to_canonical(float(found.entered.number), "volume", found.entered.unit)
        if isinstance(found, Ok)
        else None
    )


def level_of(record_id: str, values: Values) -> Level | None:
    """Return a level from the fields of its record, or None when they cannot be read.

    Parameters
    ----------
    record_id : str
        Id of the record.
    values : mapping of str to Typed
        Its fields: ``at`` (ISO instant), ``level``, ``before``, ``refilled``, ``primed``, ``who`` and ``per_day``.

    Returns
    -------
    Level or None
        The level.
    """
    at, ml = instant_of(_text(values, "at")), ml_of(values.get("level", Typed("")), LEVEL)
    if at is None or ml is None:
        return None
    per_day = ml_of(values.get("per_day", Typed("")), LEVEL)
    return Level(
        record_id=record_id,
        at=at,
        ml=ml,
        refilled=_text(values, "refilled") == YES,
        before_ml=ml_of(values.get("before", Typed("")), BEFORE),
        primed=_text(values, "primed") == YES,
        who=_text(values, "who"),
        per_day_ml=per_day,
    )


def rate_field(per_day_ml: float) -> Typed:
    """Return what is taken in a day [mL] as a level keeps it; six decimals, so that no reader takes a point for a thousands mark."""
    return Typed(f"{per_day_ml:.6f}", "mL")


def begin(batch: Values, levels: Iterable[Level], now: datetime) -> Begin | None:
    """Return from what on the contents of a jug are reckoned: the newest level since its batch was put in use, else the batch.

    Parameters
    ----------
    batch : mapping of str to Typed
        The batch that is in the jug; empty when there is none.
    levels : iterable of Level
        What was read of the jug, in any order.
    now : datetime
        The present; levels that are still to come do not count.

    Returns
    -------
    Begin or None
        Instant and volume; None when neither is known.
    """
    since = instant_of(_text(batch, "in_use_from"))
    newest = max(
        (each for each in levels if each.at <= now + AHEAD_ALLOWED and (since is None or each.at >= since)),
        key=_when,
        default=None,
    )
    if newest is not None:
        return Begin(newest.at, newest.ml, True)
    made = made_up_ml(batch)
    return None if since is None or made is None else Begin(since, made, False)


def steady(levels: Iterable[Level], batch: Values, per_day_ml: float, now: datetime) -> tuple[Level, ...]:
    """Return the newest levels of one batch between which the same was taken in a day as now, oldest first.

    Parameters
    ----------
    levels : iterable of Level
        What was read of the jug, in any order.
    batch : mapping of str to Typed
        The batch that is in the jug.
    per_day_ml : float
        What is taken in a day now [mL].
    now : datetime
        The present.

    Returns
    -------
    tuple of Level
        Levels that can be held against each other. A refill before which nobody read the level begins anew, and so does a change of
        what is dosed.
    """
    since = instant_of(_text(batch, "in_use_from"))
    found: list[Level] = []
    for level in sorted((each for each in levels if each.at <= now + AHEAD_ALLOWED), key=_when, reverse=True):
        if since is not None and level.at < since:
            break
        changed = level.per_day_ml is not None and abs(level.per_day_ml - per_day_ml) > _SAME_RATE * per_day_ml
        if changed:
            break
        found.append(level)
        if level.refilled and level.before_ml is None:
            break
    return tuple(reversed(found))


def typed_holds_ml(stock: Values) -> float | None:
    """Return the full volume of a jug [mL] as typed; None when it was not."""
    return ml_of(stock.get("holds", Typed("")), HOLDS)


def holds_ml(stock: Values, batch: Values, levels: Iterable[Level] = ()) -> float | None:
    """Return the full volume of a jug [mL].

    Parameters
    ----------
    stock, batch : mapping of str to Typed
        The jug's fields, and those of the batch that is in it.
    levels : iterable of Level
        What was read of it.

    Returns
    -------
    float or None
        As typed; else what its batch was made up to, or the highest level where that is more; None when nothing is known.
    """
    typed = typed_holds_ml(stock)
    if typed is not None:
        return typed
    made = made_up_ml(batch)
    return max([each.ml for each in levels] + [0.0 if made is None else made]) or None


def below_ml(stock: Values) -> float:
    """Return what lies below the intake of a jug [mL]; nothing unless it is said."""
    return ml_of(stock.get("unreachable", Typed("")), UNREACHABLE) or 0.0


def accuracy_ml(stock: Values, holds: float) -> float:
    """Return how well a level is read [mL], as half a 95 % interval: as typed, else one per cent of the full jug [mL]."""
    return ml_of(stock.get("level_accuracy", Typed("")), ACCURACY) or jug_intake.LEVEL_ACCURACY * holds


def take(
    said: Values, refill: bool, holds: float | None, now: datetime
) -> tuple[dict[str, Typed], tuple[Message, ...]]:
    """Return a level as its record keeps it, or what must be said first.

    Parameters
    ----------
    said : mapping of str to Typed
        What stands in the fields ``level``, ``before``, ``at`` and ``who``.
    refill : bool
        Whether the jug was refilled; ``level`` is then what it came to.
    holds : float or None
        Full volume of the jug [mL] as typed, which no level may pass; None when it was not typed.
    now : datetime
        The present in the keeper's zone.

    Returns
    -------
    tuple of (dict, tuple of Message)
        The fields, and the sentences beside the fields that cannot be taken; there are fields only without sentences.
    """
    messages = list(_wrong(said.get("level", Typed("")), LEVEL, holds))
    if not _text(said, "level"):
        messages.append(Message(say("Read the level first, at eye height."), LEVEL.path, "missing"))
    if refill:
        messages += _wrong(said.get("before", Typed("")), BEFORE, holds)
        before, after = (ml_of(said.get(name, Typed("")), LEVEL) for name in ("before", "level"))
        if before is not None and after is not None and before >= after:
            messages.append(Message(say("A refill leaves more in the jug than before."), BEFORE.path, "not_more"))
    at = read_when(_text(said, "at"), now)
    if isinstance(at, AskWhen):
        messages.append(Message(when_words(at.reason), "level.at"))
    elif not isinstance(at, datetime | None):
        messages.append(Message(when_words(at), "level.at"))
    if messages or isinstance(at, AskWhen) or not isinstance(at, datetime | None):
        return {}, tuple(messages)
    fields = {"level": said["level"], "at": Typed((at or now).isoformat(timespec="seconds"))}
    kept = {"who": said.get("who", Typed(""))}
    if refill:
        kept |= {"refilled": Typed(YES), "before": said.get("before", Typed(""))}
    return fields | {name: typed for name, typed in kept.items() if typed.text.strip()}, ()


def _wrong(typed: Typed, field: Field, holds: float | None) -> Iterable[Message]:
    found = read(typed.text, field, typed.unit or field.unit)
    if isinstance(found, Ask | Wrong):
        yield Message(words.sentence(found.reason), field.path, found.reason.code)
        return
    ml = ml_of(typed, field)
    if ml is not None and holds is not None and ml > _ABOVE_MARK * holds:
        reason = Reason("level_above_full", {"given_ml": ml, "holds_ml": holds}, field.path)
        yield Message(words.sentence(reason), field.path, reason.code)


def _when(level: Level) -> float:
    return level.at.timestamp()


def _text(values: Values, name: str) -> str:
    return values.get(name, Typed("")).text.strip()
