"""What stands in few words beside the field of a wish that is in the way, with what would do as an offer."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from typing import Any

from evenwater.engine.reasons import Reason
from evenwater.engine.timetable_question import APART_MIN, TimetableQuestion
from evenwater.screens import words
from evenwater.screens.shown import span
from evenwater.screens.timetable_wishes import (
    APART,
    DOSES_WANTED,
    FIRST_AT,
    ONE_AT_A_TIME,
    QUIET_FROM,
    Wishes,
    placed,
    pump_path,
)
from evenwater.screens.timetable_words import minutes
from evenwater.screens.views import Message, Offer
from evenwater.wording import say

# Wishes that stand in the way together, by the engine's names for them.
_TOGETHER = {"apart": APART, "quiet": QUIET_FROM, "one_at_a_time": ONE_AT_A_TIME}


def unread(reasons: Sequence[Reason], parameters: tuple[str, ...], wishes: Wishes) -> tuple[Message, ...]:
    """Return what is wrong with single wishes, each at its field.

    Parameters
    ----------
    reasons : sequence of Reason
        What keeps the question from being read.
    parameters : tuple of str
        Parameter of each pump, in the order of the question.
    wishes : Wishes
        The wishes.

    Returns
    -------
    tuple of Message
        None for what stands on another sheet.
    """
    found = ((placed(reason.path, parameters, wishes), reason) for reason in reasons)
    return tuple(Message(words.sentence(reason), path, reason.code) for path, reason in found if path)


def refused(
    reasons: Sequence[Reason], question: TimetableQuestion, parameters: tuple[str, ...], wishes: Wishes
) -> tuple[Message, ...]:
    """Return which wishes are in the way, each at its field, with what would do.

    Parameters
    ----------
    reasons : sequence of Reason
        Why there is no timetable.
    question : TimetableQuestion
        The question.
    parameters : tuple of str
        Parameter of each pump, in its order.
    wishes : Wishes
        The wishes.

    Returns
    -------
    tuple of Message
        None for what stands on another sheet.
    """
    return tuple(message for reason in reasons for message in _beside(reason, question, parameters, wishes))


def _beside(
    reason: Reason, question: TimetableQuestion, parameters: tuple[str, ...], wishes: Wishes
) -> Iterator[Message]:
    p: Mapping[str, Any] = reason.params
    path = placed(reason.path, parameters, wishes)
    named = dict(zip((pump.name for pump in question.pumps), parameters, strict=True))
    if reason.code == "timetable_apart":
        widest = int(p["widest_min"])
        would = widest >= APART_MIN
        offers = (Offer(say("Take {widest}", widest=minutes(widest)), str(widest), "min"),) if would else ()
        yield Message(
            say("{widest} would do", widest=minutes(widest)) if would else say("In the way"), path, reason.code, offers
        )
    elif reason.code == "timetable_quiet":
        yield Message(
            say("They leave {open}", open=span(p["open_min"] / 1440.0)) if p["open_min"] else say("They leave nothing"),
            path,
            reason.code,
        )
    elif reason.code == "timetable_doses":
        most = int(p["would_do"])
        offers = (Offer(say("Take {most}", most=most), str(most), ""),)
        for pump in question.pumps:
            # The plan's doses are not the keeper's to change here.
            if pump.name in p["names"] and pump.fewest > most:
                yield Message(
                    say("{most} would do", most=most), pump_path(named[pump.name], DOSES_WANTED), reason.code, offers
                )
    elif reason.code == "timetable_together":
        yield from (
            Message(say("In the way"), _TOGETHER[name], reason.code) for name in p["wishes"] if name in _TOGETHER
        )
    elif path.endswith(FIRST_AT) or path == ONE_AT_A_TIME:
        yield Message(say("In the way"), path, reason.code)
    elif path:
        yield Message(words.sentence(reason), path, reason.code)
