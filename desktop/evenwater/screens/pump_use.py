"""What a pump is used for: the doses that corrections and upkeep make it give, and how long it runs for them in a day."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime

from evenwater.engine import correction, intake, upkeep, upkeep_intake
from evenwater.engine.catalogue import Catalogue
from evenwater.engine.form import Unread
from evenwater.engine.quantities import Typed
from evenwater.screens.correct import raw_question

Values = Mapping[str, Typed]


@dataclass(frozen=True)
class Corrected:
    """A correction that uses the pump: names of the system and the parameter, and the fields of all its records."""

    place: str
    parameter: str
    system: Values
    correction: Values
    batch: Values
    pump: Values


@dataclass(frozen=True)
class Use:
    """Doses of a pump: ``dose_ml`` [mL], ``per_day`` times, each ``run_time_s`` [s] long, where and for which parameter."""

    place: str
    parameter: str
    dose_ml: float
    per_day: int
    run_time_s: float


def uses(corrections: Iterable[Corrected], catalogue: Catalogue, now: datetime) -> tuple[Use, ...]:
    """Return the doses in use: what keeps a value, or what raises it where its use is not known.

    Parameters
    ----------
    corrections : iterable of Corrected
        The corrections that take the pump.
    catalogue : Catalogue
        Parameters and chemicals.
    now : datetime
        The present, with zone.

    Returns
    -------
    tuple of Use
        None for a correction that cannot be reckoned.
    """
    return tuple(_uses(corrections, catalogue, now))


def smallest(found: Sequence[Use]) -> Use | None:
    """Return the use with the smallest dose, which a pump gives least accurately; None where there is none."""
    return min(found, key=lambda use: use.dose_ml, default=None)


def hours_per_day(found: Iterable[Use]) -> float:
    """Return how long the pump runs in a day for all of them [h/d]."""
    return sum(use.per_day * use.run_time_s for use in found) / 3600.0


def _uses(corrections: Iterable[Corrected], catalogue: Catalogue, now: datetime) -> Iterator[Use]:
    for each in corrections:
        raw = raw_question(each.parameter, each.system, each.correction, each.batch, each.pump)
        found = _kept(raw, each, catalogue, now) or _raised(raw, each, catalogue, now)
        if found is not None:
            yield found


def _kept(raw: Mapping[str, object], each: Corrected, catalogue: Catalogue, now: datetime) -> Use | None:
    item = {"parameter": each.parameter, "additive": raw["additive"], "pump": raw["pump"]}
    item |= {name: each.correction[name] for name in ("measured", "daily_use") if name in each.correction}
    question = upkeep_intake.upkeep({"system": raw["system"], "item": [item]}, catalogue, now)
    answer = None if isinstance(question, Unread) else upkeep.solve(question)
    if not isinstance(answer, upkeep.UpkeepAnswer):
        return None
    dose = answer.doses[0]
    if dose.dose_ml <= 0.0:
        return None
    return Use(each.place, each.parameter, dose.dose_ml, dose.per_day, dose.run_time_s)


def _raised(raw: Mapping[str, object], each: Corrected, catalogue: Catalogue, now: datetime) -> Use | None:
    question = intake.correction(raw, catalogue, now)
    answer = None if isinstance(question, Unread) else correction.solve(question)
    if not isinstance(answer, correction.Answer):
        return None
    doses = answer.doses
    return Use(each.place, each.parameter, doses.dose_ml, answer.question.pump.doses_per_day, doses.run_time_s)
