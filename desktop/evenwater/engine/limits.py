"""Limits: recommended bounds inside hard bounds, composed at one exit that says which one binds.

Everything that may slow a correction is a ``Cap`` on its pace; ``pace`` takes the smallest and
names it. Everything a keeper wants to see "how near" is a ``Nearness``.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import Enum

from evenwater.engine.reasons import Reason


class Standing(Enum):
    """Where a figure lies against a pair of bounds."""

    WITHIN = "within the recommended bound"
    BEYOND_RECOMMENDED = "beyond the recommended bound"
    BEYOND_HARD = "beyond the hard bound"


@dataclass(frozen=True)
class Guardrail:
    """A recommended upper bound inside a hard one, both [unit of what is bounded]."""

    recommended: float
    hard: float

    def __post_init__(self) -> None:
        if not (math.isfinite(self.recommended) and math.isfinite(self.hard) and 0.0 < self.recommended <= self.hard):
            raise ValueError(f"recommended {self.recommended} must lie above zero and inside hard {self.hard}")

    def standing(self, value: float) -> Standing:
        """Return where a figure lies; a figure that is not finite is beyond everything.

        Parameters
        ----------
        value : float
            The figure [unit of the bounds].

        Returns
        -------
        Standing
            Within, beyond the recommended, or beyond the hard bound.
        """
        if not value <= self.hard:
            return Standing.BEYOND_HARD
        return Standing.WITHIN if value <= self.recommended else Standing.BEYOND_RECOMMENDED


@dataclass(frozen=True)
class Cap:
    """One limit on the pace: the fastest rise it allows [canonical unit per day]."""

    code: str
    fastest: float
    reason: Reason


@dataclass(frozen=True)
class Nearness:
    """How near a plan comes to one limit: both figures [``unit``], ``share`` = value over bound [1].

    ``over`` says that the limit is passed; only limits that remark and do not refuse can be.
    """

    code: str
    value: float
    bound: float
    unit: str
    share: float
    over: bool = False


def nearness(code: str, value: float, bound: float, unit: str) -> Nearness:
    """Return how near a figure comes to its bound.

    Parameters
    ----------
    code : str
        Name of the limit.
    value : float
        The plan's figure [unit].
    bound : float
        The limit [unit], above zero.
    unit : str
        Id of the unit of both.

    Returns
    -------
    Nearness
        With the share [1] of the bound that is used.
    """
    share = value / bound
    # A bound that is met to within binary noise is met, not passed.
    return Nearness(code, value, bound, unit, share, share > 1.0 + 1e-9)


def pace(caps: Sequence[Cap]) -> Cap:
    """Return the cap that binds: the one exit through which every pace passes.

    Parameters
    ----------
    caps : sequence of Cap
        All limits on the pace, at least one. The first wins a tie.

    Returns
    -------
    Cap
        The slowest one; a cap whose figure is NaN binds before any number and allows nothing.

    Raises
    ------
    ValueError
        When no cap is given: a pace without limit does not exist.
    """
    if not caps:
        raise ValueError("a pace needs at least one limit")
    for cap in caps:
        if math.isnan(cap.fastest):
            return Cap(cap.code, 0.0, cap.reason)
    return min(caps, key=lambda cap: cap.fastest)


def passed(figures: Iterable[Nearness]) -> tuple[Nearness, ...]:
    """Return those limits that are passed.

    Parameters
    ----------
    figures : iterable of Nearness
        How near each limit is.

    Returns
    -------
    tuple of Nearness
        In the same order.
    """
    return tuple(f for f in figures if f.over)
