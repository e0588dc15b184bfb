"""Whatever is asked is refused or answered, never an exception, and never answered with a not-a-number (H30).

Common practice, no source: a fuzz test.
"""

from __future__ import annotations

import dataclasses
import json
import math
from collections.abc import Mapping
from dataclasses import replace
from datetime import UTC, datetime, timedelta, timezone
from typing import Any

from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from evenwater.engine import correction, intake
from evenwater.engine.correction import Answer, Refused
from evenwater.engine.quantities import Typed
from evenwater.engine.question import CorrectionQuestion
from evenwater.engine.stock import Labelled, Portion, limewater
from evenwater.engine.units import KINDS
from evenwater.screens.answer_json import answered as as_json
from tests.engine.asking import NOW, known, read, worked

WORKED = read(worked())
LABELLED = replace(WORKED, additive=Labelled(5.0, 100.0, 0.4, "alkalinity"))
MIXED = replace(
    WORKED,
    additive=replace(WORKED.additive, also=(Portion(known().chemicals["sodium bicarbonate"], 20.0, 0.99),)),
    system=replace(WORKED.system, ph=8.2),
)
LIMED = replace(WORKED, additive=limewater(known().chemicals["calcium hydroxide"], 20.0))
QUESTIONS = {"WORKED": WORKED, "LABELLED": LABELLED, "MIXED": MIXED, "LIMED": LIMED}
# Where a figure stands in a question: the holder's field and its own.
FIGURES = [
    ("system", "volume_l"), ("system", "volume_uncertainty"), ("system", "ph"), ("system", "alkalinity"), ("system", "calcium"),
    ("system", "evaporation_l"), ("", "measured"), ("", "target"), ("", "use"),
    ("", "fastest"), ("pump", "flow_ml_per_min"), ("pump", "smallest_ml"), ("pump", "step_ml"), ("pump", "largest_share"),
    ("pump", "doses_per_day"), ("water", "salinity"), ("water", "temperature_c"),
]  # fmt: skip
_BAG = ("grams", "made_up_l", "purity", "coolest_c")
STOCK = {
    "WORKED": _BAG,
    "LABELLED": ("dose_ml", "water_l", "raises"),
    "MIXED": (*_BAG, "also.grams", "also.purity"),
    "LIMED": _BAG,
}
WILD = st.one_of(
    st.floats(),
    st.sampled_from([0.0, -0.0, math.nan, math.inf, -math.inf, 5e-324, -5e-324, 1e-9, 1e9, 1.7e308, -1.0, 1e-300]),
)


def _put(question: CorrectionQuestion, holder: str, field: str, value: float) -> CorrectionQuestion:
    if holder == "water":
        water = replace(question.system.water, **{field: value})
        return replace(question, system=replace(question.system, water=water))
    if field.startswith("also."):
        (bag,) = question.additive.also
        changed = replace(bag, **{field.removeprefix("also."): value})
        return replace(question, additive=replace(question.additive, also=(changed,)))
    if holder:
        return replace(question, **{holder: replace(getattr(question, holder), **{field: value})})
    return replace(question, **{field: value})


def _finite(value: object) -> bool:
    """Return whether every figure inside a value is finite."""
    if isinstance(value, float):
        return math.isfinite(value)
    if isinstance(value, Mapping):
        return all(_finite(v) for v in value.values())
    if isinstance(value, list | tuple):
        return all(_finite(v) for v in value)
    if dataclasses.is_dataclass(value) and not isinstance(value, type):
        return all(_finite(getattr(value, f.name)) for f in dataclasses.fields(value))
    return True


def _holds(result: object) -> None:
    """A refusal has reasons; an answer has only finite figures, can be written out, and its dose is a dose."""
    assert isinstance(result, Answer | Refused)
    if isinstance(result, Refused):
        assert result.reasons
        assert all(reason.code for reason in result.reasons)
        return
    assert _finite(result)
    assert result.doses.dose_ml > 0.0
    assert result.doses.count >= 1
    json.dumps(as_json(result), allow_nan=False)


@st.composite
def wild_questions(draw: st.DrawFn) -> CorrectionQuestion:
    """Return the worked example, or one like it, with one to three figures replaced by anything."""
    name = draw(st.sampled_from(sorted(QUESTIONS)))
    question = QUESTIONS[name]
    places = FIGURES + [("additive", field) for field in STOCK[name]]
    for holder, field in draw(st.lists(st.sampled_from(places), min_size=1, max_size=3, unique=True)):
        # A count is a whole number by its type; the reader gives no other.
        values = st.integers(-(2**63), 2**63) | st.integers(0, 1500) if field == "doses_per_day" else WILD
        question = _put(question, holder, field, draw(values))
    return question


@settings(max_examples=400, suppress_health_check=[HealthCheck.too_slow])
@given(question=wild_questions())
def test_any_figure_is_refused_or_answered(question: CorrectionQuestion) -> None:
    _holds(correction.solve(question))


def test_every_figure_that_is_not_finite_is_refused() -> None:
    for name, question in QUESTIONS.items():
        for holder, field in FIGURES + [("additive", field) for field in STOCK[name]]:
            for value in (math.nan, math.inf, -math.inf):
                result = correction.solve(_put(question, holder, field, value))
                assert isinstance(result, Refused), f"{holder}.{field} = {value} was answered"
                assert {r.code for r in result.reasons} <= {"not_a_number", "out_of_range"}, f"{holder}.{field}"


UNITS = [*sorted({unit.id for kind in KINDS.values() for unit in kind.units}), "", "gal", "cups", "mg/l", "\u00b5g"]
NUMBERS = st.one_of(
    st.decimals(allow_nan=True, allow_infinity=True).map(str),
    st.integers().map(str),
    st.floats().map(repr),
    st.sampled_from(
        ["0", "-1", "1,000", "1.000", "1e3", "1_000", "nan", "inf", "-inf", "0x10", ".5", "5.", "\u0661\u0662", "--"]
    ),
    st.text(max_size=8),
)
TEXTS = st.builds("{} {}".format, NUMBERS, st.sampled_from(UNITS))
INSTANTS = st.one_of(
    st.datetimes(),
    st.datetimes(timezones=st.sampled_from([UTC, timezone(timedelta(hours=14)), timezone(timedelta(hours=-12))])),
    st.sampled_from(
        ["0001-01-01T00:00:00+14:00", "9999-12-31T23:59:59-12:00", "2026-11-25", "2026-11-25T08:00:00Z", "yesterday"]
    ),
)
LEAVES = st.one_of(
    TEXTS,
    st.builds(Typed, st.one_of(NUMBERS, TEXTS), st.sampled_from(UNITS), st.sampled_from(UNITS)),
    st.sampled_from([*known().parameters, *known().chemicals, "calcium chloride", "unknown", "dimensions"]),
    INSTANTS,
    st.none(), st.booleans(), st.integers(), st.floats(), st.just([]), st.just({}), st.just(["6.8 dKH"]),
    st.builds(lambda chemical, grams: {"chemical": chemical, "dissolved": grams}, st.sampled_from(sorted(known().chemicals)), TEXTS),
)  # fmt: skip
PATHS = [
    "now", "system.name", "system.net_volume", "system.volume_known", "system.volume_uncertainty", "system.salinity",
    "system.temperature", "system.ph", "system.alkalinity", "system.calcium", "system.evaporation", "change.parameter", "change.measured", "change.measured_at", "change.target",
    "change.daily_use", "change.fastest_rise", "change.reason", "additive.chemical", "additive.dissolved",
    "additive.made_up_to", "additive.purity", "additive.temperature", "additive.saturated", "additive.also", "additive.label", "pump.flow", "pump.smallest_dose", "pump.step",
    "pump.largest_share", "pump.doses_per_day", "system", "change", "additive", "pump",
]  # fmt: skip
LABEL = {"dose": "5 mL", "water": "100 L", "raises": "1 dKH"}


@settings(max_examples=400, suppress_health_check=[HealthCheck.too_slow])
@given(changes=st.dictionaries(st.sampled_from(PATHS), LEAVES, min_size=1, max_size=4), label=st.booleans())
@example(changes={"change.measured": Typed("6.8", "mg/L")}, label=False)
@example(changes={"now": "0001-01-01T00:00:00+23:59"}, label=False)
@example(changes={"now": "9999-12-31T00:00:00+00:00"}, label=False)
def test_anything_in_any_field_is_refused_or_answered(changes: dict[str, Any], label: bool) -> None:
    raw: dict[str, Any] = worked()
    if label:
        raw["additive"] = {"label": dict(LABEL)}
    for path, value in changes.items():
        table, _, field = path.rpartition(".")
        if not table:
            raw[field] = value
        elif isinstance(raw.get(table), dict):
            raw[table][field] = value
    question = intake.correction(raw, known(), NOW)
    if isinstance(question, intake.Unread):
        assert question.reasons
        return
    _holds(correction.solve(question))


@settings(max_examples=200)
@given(
    raises=st.one_of(TEXTS, LEAVES), unit=st.sampled_from(UNITS), parameter=st.sampled_from(sorted(known().parameters))
)
def test_any_label_on_any_bottle_is_refused_or_answered(raises: object, unit: str, parameter: str) -> None:
    bounds = known().parameters[parameter]
    raw: dict[str, Any] = worked()
    low, high = bounds.target_hard
    raw["change"] = {
        "parameter": parameter,
        "measured": f"{low + 0.3 * (high - low):.5f} {bounds.display_unit}",
        "target": f"{low + 0.31 * (high - low):.5f} {bounds.display_unit}",
    }
    text = raises.text if isinstance(raises, Typed) else str(raises)
    raw["additive"] = {"label": {**LABEL, "raises": Typed(text, unit)}}
    question = intake.correction(raw, known(), NOW)
    if not isinstance(question, intake.Unread):
        _holds(correction.solve(question))


@settings(max_examples=60)
@given(moment=st.datetimes(min_value=datetime(1, 1, 1), max_value=datetime(9999, 12, 31)))  # noqa: DTZ001
def test_any_present_is_refused_or_answered(moment: datetime) -> None:
    question = intake.correction({**worked(), "now": moment.replace(tzinfo=UTC)}, known(), NOW)
    if isinstance(question, intake.Unread):
        assert {r.path for r in question.reasons} == {"now"}
    else:
        _holds(correction.solve(question))
