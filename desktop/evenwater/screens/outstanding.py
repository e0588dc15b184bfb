"""What is in the water already and no test has shown: doses since the reading, of plans and by hand."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from evenwater.engine import following
from evenwater.engine.catalogue import Parameter
from evenwater.engine.following import Course
from evenwater.engine.quantities import Typed
from evenwater.engine.units import KINDS
from evenwater.screens.following import Kept

_DAY = timedelta(days=1)


@dataclass(frozen=True)
class Ran:
    """A plan and when it ended; None while it is followed."""

    plan: Kept
    ended: datetime | None = None

    def gave(self, stock: str, at: datetime) -> bool:
        """Say whether a dose from a jug is one that the plan counts already: from its own, while it was followed."""
        own = self.plan.batch_id.partition(":")[0]
        return (
            bool(own) and own == stock and self.plan.course.started <= at and (self.ended is None or at <= self.ended)
        )


@dataclass(frozen=True)
class Given:
    """A dose by hand: when, the rise it made [canonical unit], and the jug it came from."""

    at: datetime
    rise: float
    stock: str


@dataclass(frozen=True)
class Outstanding:
    """Rises [canonical unit]: ``untested`` since the reading, less what was used; ``lately`` what came on top of the paces of
    plans in the last 24 hours: by hand, and untested by plans.
    """

    untested: float = 0.0
    lately: float = 0.0

    def fields(self, parameter: Parameter) -> dict[str, Typed]:
        """Return them as fields of a question's table ``change``; none of what is nothing.

        Parameters
        ----------
        parameter : Parameter
            What is corrected.

        Returns
        -------
        dict of str to Typed
            ``untested`` and ``raised_lately``.
        """
        unit = KINDS[parameter.kind].canonical.id
        # More than this is refused all the same, and would be no figure for the field.
        most = 9.99 * parameter.canonical(parameter.rise_hard)
        named = (("untested", self.untested), ("raised_lately", self.lately))
        return {name: Typed(f"{min(value, most):.8f}", unit) for name, value in named if value > 1e-8}


def outstanding(
    plans: Iterable[Ran], by_hand: Sequence[Given], measured_at: datetime | None, now: datetime
) -> Outstanding:
    """Return what the reading could not show.

    Parameters
    ----------
    plans : iterable of Ran
        Plans for the parameter, followed or ended.
    by_hand : sequence of Given
        Doses in the log that carry it.
    measured_at : datetime or None
        When the reading was taken; where nobody knows, every dose of a followed plan and of the last day counts.
    now : datetime
        The present.

    Returns
    -------
    Outstanding
        Never below nothing: that the animals use more is no reason to dose more before a test.
    """
    untested = of_the_day = 0.0
    every = tuple(plans)
    for ran in every:
        course = ran.plan.course
        ends = now if ran.ended is None else min(ran.ended, now)
        since = course.started if measured_at is None else max(measured_at, course.started)
        if measured_at is None and ran.ended is not None:
            since = max(since, now - _DAY)
        if since >= ends:
            continue
        untested += _rise(course, since, ends)
        of_the_day += _rise(course, max(since, now - _DAY), ends)
    mine = [dose for dose in by_hand if dose.at <= now and not any(ran.gave(dose.stock, dose.at) for ran in every)]
    since = now - _DAY if measured_at is None else measured_at
    untested += sum(dose.rise for dose in mine if dose.at > since)
    by_hand_today = sum(dose.rise for dose in mine if dose.at > now - _DAY)
    # A dose by hand before the reading and doses of a plan after it lie in the same 24 hours, and are not the same ones.
    return Outstanding(untested, by_hand_today + of_the_day if by_hand_today else 0.0)


def _rise(course: Course, since: datetime, until: datetime) -> float:
    """Return what a plan raised between two instants [canonical unit], less what was used; never below nothing."""
    if since >= until:
        return 0.0
    given = following.doses_until(course, until)[1] - following.doses_until(course, since)[1]
    return max(0.0, given * course.per_ml - course.use * ((until - since) / _DAY))
