"""What a system's records and its log say for an exchange: values now with their age, use, dosing and jugs."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from evenwater.engine import quantities, stock_intake
from evenwater.engine.catalogue import Catalogue, Parameter
from evenwater.engine.exchange_question import Moved
from evenwater.engine.intake import water_of
from evenwater.engine.quantities import Typed, Water
from evenwater.engine.recipe import Bottle, StockQuestion
from evenwater.engine.stock import Dissolved
from evenwater.engine.units import KINDS
from evenwater.engine.upkeep import UpkeepAnswer
from evenwater.engine.upkeep_balance import amount, solutes_per_ml
from evenwater.screens import correct, foods_given, water_given
from evenwater.screens.shelf import additive_table
from evenwater.screens.when import instant_of

Values = Mapping[str, Typed]

# Where a value now comes from.
LOG, CORRECT, SYSTEM, ASSUMED = "log", "correct", "system", "assumed"
# What the system's own record says of its water.
_OF_SYSTEM = ("salinity", "alkalinity", "calcium")
_DIGITS = 9
# Less than this [canonical unit per day] is binary noise.
_NOTHING = 1e-12


@dataclass(frozen=True)
class Newest:
    """A value now: as typed, when it was measured (None where nobody said), and from where."""

    typed: Typed
    at: datetime | None
    source: str


@dataclass(frozen=True)
class Given:
    """Everything that is known of a system.

    ``readings`` are the newest of the log by parameter, ``learned`` the uses that the log tells where none was typed, ``batches`` the
    fields of what is in each value's jug. ``upkeep`` is the plan of the Upkeep sheet, None where it has none.
    """

    system: Values
    water: Values
    corrections: Mapping[str, Values] = field(default_factory=dict)
    readings: Mapping[str, Newest] = field(default_factory=dict)
    learned: Mapping[str, Typed] = field(default_factory=dict)
    batches: Mapping[str, Values] = field(default_factory=dict)
    upkeep: UpkeepAnswer | None = None
    foods: tuple[Values, ...] = ()


def newest(correction: Values, logged: Newest | None) -> Newest | None:
    """Return the newer of what stands on the Correct sheet and what the log has; one without a time only where there is no other."""
    typed = correction.get("measured", Typed(""))
    if not typed.text.strip():
        return logged
    entered = Newest(typed, instant_of(correction.get("measured_at", Typed("")).text), CORRECT)
    if logged is None or logged.at is None:
        return entered
    return entered if entered.at is not None and entered.at >= logged.at else logged


def raw_question(given: Given, catalogue: Catalogue) -> dict[str, Any]:
    """Return the question that the records make, as a question file of the kind ``exchange`` has it.

    Parameters
    ----------
    given : Given
        The records.
    catalogue : Catalogue
        Parameters and chemicals.

    Returns
    -------
    dict
        Tables ``system``, ``exchange``, ``new_water``, ``mixing`` and a list ``value``. Beside what a question has, each value says when
        it was read (``read_at``), from where (``read_from``), and whether its use is the log's (``use_learned``); ``way`` is how the
        flow is said.
    """
    system = correct.raw_question("", given.system, {}, {}, {})["system"]
    said = water_given.tables(given.system, given.water)
    raw: dict[str, Any] = {
        "kind": "exchange",
        "way": Typed(water_given.way(given.water)),
        "system": system,
        "exchange": {},
        **said,
    }
    raw["value"] = list(_values(given, catalogue, water_of(raw), raw.get("new_water", {})))
    return raw


def dosed(answer: UpkeepAnswer) -> dict[str, float]:
    """Return what the doses of an upkeep bring.

    Parameters
    ----------
    answer : UpkeepAnswer
        The plan, with its doses rounded as they are given.

    Returns
    -------
    dict of str to float
        By parameter [canonical unit per day]; also of what an additive raises besides.
    """
    q = answer.question
    out: dict[str, float] = {}
    for each in answer.doses:
        solutes = solutes_per_ml(each.item.additive, each.item.parameter, q.system.water)
        for p in q.others:
            brings = amount(p.name, solutes, q.system.water) * each.in_24_hours_ml / q.system.volume_l
            if brings > 0.0:
                out[p.name] = out.get(p.name, 0.0) + brings
    return out


def _stays(answer: UpkeepAnswer) -> dict[str, float]:
    """Return what the doses leave of values that nobody uses by themselves, less what goes along with the uses: salt, above all."""
    kept = {item.parameter.name for item in answer.question.items}
    return {drift.name: drift.gain for drift in answer.drifts if drift.name not in kept}


def _values(given: Given, catalogue: Catalogue, water: Water, new: Mapping[str, Typed]) -> Iterator[dict[str, Any]]:
    doses = {} if given.upkeep is None else dosed(given.upkeep)
    stays = {} if given.upkeep is None else _stays(given.upkeep)
    fed = _fed(given, catalogue, water)
    for p in catalogue.parameters.values():
        correction = given.corrections.get(p.name, {})
        now = newest(correction, given.readings.get(p.name)) or _of_system(given.system, p)
        if now is None:
            continue
        typed = correction.get("daily_use", Typed(""))
        use = typed if typed.text.strip() else given.learned.get(p.name)
        added = doses.get(p.name, 0.0)
        if use is None:
            # A use that was found by testing has in it what the foods bring, and what goes along with the uses of other values.
            moved = (stays.get(p.name, added), fed.get(p.name, 0.0))
            added = sum(max(0.0, each) for each in moved)
            takes = sum(max(0.0, -each) for each in moved)
            use = _per_day(p, takes) if takes > _NOTHING else None
        row: dict[str, Any] = {
            "parameter": p.name, "now": now.typed, "read_at": now.at, "read_from": now.source,
            "use_learned": not typed.text.strip() and p.name in given.learned,
        }  # fmt: skip
        loss = water_given.loss(given.water, p.name)
        optional = {
            "daily_use": use,
            "daily_addition": _per_day(p, added) if added > _NOTHING else None,
            "loss_per_day": loss,
            # The table of the new water says the salinity once for all.
            "new_water": new.get(p.name) if p.kind != "salinity" else None,
            "additive": _additive(given.batches.get(p.name, {}), p, catalogue, water),
        }
        yield row | {name: value for name, value in optional.items() if value is not None}


def _fed(given: Given, catalogue: Catalogue, water: Water) -> dict[str, float]:
    """Return what all foods bring together, less what nitrification takes [canonical unit per day]."""
    volume = correct.volume_l(given.system)
    out: dict[str, float] = {}
    for each in () if volume is None else foods_given.additions(given.foods, catalogue, water, volume):
        out[each.parameter] = out.get(each.parameter, 0.0) + each.per_day
    return out


def _of_system(system: Values, p: Parameter) -> Newest | None:
    typed = system.get(p.name, Typed(""))
    if p.name in _OF_SYSTEM and typed.text.strip():
        return Newest(typed, None, SYSTEM)
    # Without a salinity the water is taken for natural seawater everywhere, so the pair can be judged all the same.
    return (
        Newest(Typed(quantities.significant(p.natural, 3), p.display_unit), None, ASSUMED)
        if p.kind == "salinity"
        else None
    )


def _per_day(p: Parameter, value: float) -> Typed:
    return Typed(quantities.significant(value, _DIGITS), KINDS[f"{p.kind} per day"].canonical.id)


def _additive(batch: Values, p: Parameter, catalogue: Catalogue, water: Water) -> dict[str, Any] | None:
    """Return what is in a value's jug as a question has it; None where it cannot be read or does not raise the value."""
    table = additive_table(batch)
    if isinstance(table.get("label"), dict):
        table["label"] = {"parameter": Typed(p.name), **table["label"]}
    found = stock_intake.stock({"additive": table}, catalogue) if batch else None
    if not isinstance(found, StockQuestion) or not isinstance(found.batch, Dissolved | Bottle):
        return None
    raises = Moved(p, p.display_unit, 0.0, 0.0, batch=found.batch).per_ml(water) > 0.0
    return table if raises else None


def unread_foods(given: Given, catalogue: Catalogue) -> Iterable[str]:
    """Return the names of foods that are given and cannot be read, so that nobody takes them for nothing."""
    return foods_given.unread(given.foods, catalogue, correct.water(given.system))
