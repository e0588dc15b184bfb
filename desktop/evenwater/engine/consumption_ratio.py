"""What two uses, or a use and a dose, say of each other: calcium against alkalinity, and the volume a dose was diluted in."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from evenwater.engine.caps import calcium_per_meq
from evenwater.engine.consumption_estimate import NORMAL_90, Span
from evenwater.engine.correction import Refused
from evenwater.engine.question import STRENGTH_UNCERTAINTY
from evenwater.engine.reasons import Reason

# By what factor the ratio may be off before something is wrong; common practice, no source.
FARTHEST = 1.25


@dataclass(frozen=True)
class Ratio:
    """Calcium used for each equivalent of alkalinity [mg per meq], against what skeletons take.

    ``span`` is None when the use of alkalinity is not surely above zero. ``departs`` says that the whole interval lies more than a
    factor ``FARTHEST`` away; ``reasons`` are then that fact and what may be behind it.
    """

    span: Span | None
    expected: float
    departs: bool
    reasons: tuple[Reason, ...]


@dataclass(frozen=True)
class Measured:
    """A test: its ``value`` and standard deviation ``sd`` [canonical unit]."""

    value: float
    sd: float


def ratio(alkalinity: Span, calcium: Span) -> Ratio:
    """Hold the use of calcium against that of alkalinity.

    Parameters
    ----------
    alkalinity : Span
        Use with its 90 % interval [meq/L per day].
    calcium : Span
        Use with its 90 % interval [mg/L per day].

    Returns
    -------
    Ratio
        The ratio with its 90 % interval (Fieller 1954, J. R. Stat. Soc. B 16:175), and the verdict.

    Notes
    -----
    Calcium carbonate takes both in the one ratio, also where it falls out by itself. What else takes or gives alkalinity: nitrification and
    the uptake of nitrate (Wolf-Gladrow et al. 2007, Marine Chemistry 106:287), magnesium in skeletons and magnesium hydroxide.
    """
    expected = calcium_per_meq()
    ends = fieller((calcium.value, _sd(calcium)), (alkalinity.value, _sd(alkalinity)))
    if ends is None or alkalinity.value <= 0.0:
        return Ratio(None, expected, False, (Reason("ratio_unknown"),))
    span = Span(calcium.value / alkalinity.value, *ends)
    low = span.high < expected / FARTHEST
    if not low and not span.low > expected * FARTHEST:
        return Ratio(span, expected, False, ())
    said = {"ratio": span.value, "low": span.low, "high": span.high, "expected": expected}
    reasons = [Reason("ratio_departs", said), Reason("ratio_wrong_test")]
    if low:
        reasons.append(Reason("ratio_precipitation"))
    reasons.append(Reason("ratio_another_sink", {"of_alkalinity": low}))
    return Ratio(span, expected, True, tuple(reasons))


def effective_volume(
    doses_ml: Sequence[float],
    per_ml: float,
    before: Measured,
    after: Measured,
    days: float,
    use: Span,
    strength_uncertainty: float = STRENGTH_UNCERTAINTY,
) -> Span | Refused:
    """Find the volume that doses were diluted in, from the rise they made: a correction is a tracer, too.

    Parameters
    ----------
    doses_ml : sequence of float
        All doses between the two tests [mL].
    per_ml : float
        What one millilitre of the stock carries [canonical unit times L, per mL].
    before, after : Measured
        The tests before the first and after the last dose, with their standard deviations [canonical unit].
    days : float
        Between the two tests [day].
    use : Span
        What was used meanwhile, with its 90 % interval [canonical unit per day].
    strength_uncertainty : float
        Half width of the 95 % interval of the strength, over the strength [1].

    Returns
    -------
    Span or Refused
        The volume with its 90 % interval (Fieller 1954) [L]; refused when the rise is lost in the scatter.
    """
    given = math.fsum(doses_ml) * per_ml
    raised = after.value - before.value + use.value * days
    sd = math.hypot(before.sd, after.sd, _sd(use) * days)
    ends = fieller((given, given * strength_uncertainty / 2.0), (raised, sd))
    if ends is None or raised <= 0.0 or given <= 0.0:
        return Refused((Reason("rise_not_seen", {"raised": raised, "sd": sd}),))
    return Span(given / raised, *ends)


def fieller(over: tuple[float, float], under: tuple[float, float]) -> tuple[float, float] | None:
    """Return the 90 % interval of a quotient of two independent figures.

    Parameters
    ----------
    over : tuple of (float, float)
        What is divided, and its standard deviation [any unit].
    under : tuple of (float, float)
        What it is divided by, and its standard deviation [any unit].

    Returns
    -------
    tuple of (float, float) or None
        The interval [unit over unit]; None when what is divided by may be nothing, and the quotient anything.
    """
    a, sa = over
    b, sb = under
    clear = b * b - (NORMAL_90 * sb) ** 2
    if not clear > 0.0:
        return None
    spread = NORMAL_90 * math.sqrt(max(0.0, (a * sb) ** 2 + (b * sa) ** 2 - (NORMAL_90 * sa * sb) ** 2))
    return (a * b - spread) / clear, (a * b + spread) / clear


def _sd(span: Span) -> float:
    """Return the standard deviation behind a 90 % interval."""
    return (span.high - span.low) / (2.0 * NORMAL_90)
