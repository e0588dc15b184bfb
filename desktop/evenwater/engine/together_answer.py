"""The answer when everything runs together: every value in time, and what moves it."""

from __future__ import annotations

import math
from dataclasses import dataclass

from evenwater.engine.exchange_question import Moved
from evenwater.engine.reasons import Reason
from evenwater.engine.together_question import TogetherQuestion
from evenwater.engine.together_range import Leaving

USE, LOSS, EXCHANGE = "use", "loss", "exchange"


@dataclass(frozen=True)
class Part:
    """One line of the budget of a value: what moves it by how much [canonical unit per day], and from when until when [day].

    ``sort`` is that of a source, or ``USE``, ``LOSS`` or ``EXCHANGE``; ``name`` what a source is called.
    """

    sort: str
    name: str
    per_day: float
    begins: float = 0.0
    ends: float = math.inf

    @property
    def runs_now(self) -> bool:
        """Whether it counts in the sum of now."""
        return self.begins <= 0.0 < self.ends


@dataclass(frozen=True)
class Outlook:
    """One value in time [canonical unit].

    ``points``, ``low``, ``high`` and ``alone`` stand at the answer's times: everything together, its band by the net volume, and the same
    without exchange. ``settles`` is the steady value once all that ends has ended; None where there is none. ``usual`` and ``hard`` say
    when it leaves the range usually kept and the one that no plan may aim outside of. ``rise`` and ``fall`` are the greatest in 24 hours.
    """

    moved: Moved
    known: bool
    points: tuple[float, ...]
    low: tuple[float, ...]
    high: tuple[float, ...]
    alone: tuple[float, ...]
    week: float
    month: float
    settles: float | None
    usual: Leaving | None
    hard: Leaving | None
    rise: float
    fall: float
    budget: tuple[Part, ...]

    @property
    def per_day(self) -> float:
        """What the value changes by now: the sum of the budget [canonical unit per day]."""
        return math.fsum(part.per_day for part in self.budget if part.runs_now)


@dataclass(frozen=True)
class TogetherAnswer:
    """What everything does together: ``times`` [day] are those of the outlooks' points, ``dangers`` what must not go on."""

    question: TogetherQuestion
    times: tuple[float, ...]
    outlooks: tuple[Outlook, ...]
    dangers: tuple[Reason, ...] = ()
    remarks: tuple[Reason, ...] = ()

    def outlook(self, name: str) -> Outlook | None:
        """Return the outlook of a parameter, or None where it is not followed.

        Parameters
        ----------
        name : str
            Name of the parameter.

        Returns
        -------
        Outlook or None
            Its outlook.
        """
        return next((each for each in self.outlooks if each.moved.parameter.name == name), None)
