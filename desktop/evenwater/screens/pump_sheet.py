"""The Pumps sheet without its widgets: a calibration as typed turned into the flow, its verdict and what follows."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from datetime import date, datetime
from typing import Any

from evenwater.engine import calibration_intake, fields, quantities
from evenwater.engine.calibration import FEWEST_RUNS, CalibrationAnswer, CalibrationQuestion, solve
from evenwater.engine.calibration_uncertainty import Needed, needed
from evenwater.engine.correction import Refused
from evenwater.engine.form import Unread
from evenwater.engine.quantities import Typed, to_canonical
from evenwater.engine.reader import Field, Ok, read
from evenwater.engine.reasons import Reason
from evenwater.screens import pump_fields, words
from evenwater.screens.calibration_words import flow as flow_words
from evenwater.screens.pump_words import BY_PUMP, CYLINDER, MOST_RUNS, PUMP_WORDS, SCALE
from evenwater.screens.shown import date_words, significant, with_unit
from evenwater.screens.views import Message
from evenwater.screens.when import instant_of
from evenwater.wording import say

__all__ = [
    "FEWEST_RUNS",
    "WANTED",
    "CalibrationRow",
    "Measured",
    "Values",
    "date_messages",
    "expected_ml",
    "first_lasted",
    "in_order",
    "measured",
    "method_of",
    "newest",
    "proposed",
    "quantity",
    "raw_calibration",
    "row",
    "run_needed",
    "runs_shown",
    "seconds_of",
    "sentences",
    "text_of",
]

Values = Mapping[str, Typed]

# How well a flow is to be known: a tenth of what makes a pump red.
WANTED = 0.01
# By how much the pump's own clock may be off, start and stop together [s]; common practice, no source.
_OWN_CLOCK = Typed("0.05", "s")
# Where the fields of a question stand on the sheet.
_PLACES = {
    "pump.setting": "pump.flow",
    "pump.hours": "calibration.hours",
    "pump.life": "pump.head_life",
    "line.bore": "pump.line_bore",
    "line.length": "pump.line_length",
    "cylinder.graduation": "calibration.graduation",
    "scale.readability": "calibration.readability",
    "conditions.water_temperature": "calibration.water_temperature",
    "conditions.air_pressure": "calibration.air_pressure",
}
# What only holds of the newest calibration: the pump has been set anew since the others.
_OF_TODAY = ("flow_off_amber", "flow_off_red", "dose_not_calibrated", "head_used_up")


@dataclass(frozen=True)
class Measured:
    """One calibration, read.

    ``at`` is None while the time cannot be read, ``question`` while something else cannot, ``answer`` while there is no flow to say.
    ``messages`` are what is missing or wrong, each with the path of its field; ``wrong`` says that one of them is more than an empty field.
    """

    record_id: str
    at: datetime | None
    values: Values
    question: CalibrationQuestion | None = None
    answer: CalibrationAnswer | None = None
    messages: tuple[Message, ...] = ()
    wrong: bool = False

    @property
    def hours(self) -> float | None:
        """Running hours of the head [h]; None where they are not said."""
        return None if self.question is None else self.question.hours


@dataclass(frozen=True)
class CalibrationRow:
    """One calibration in the list: its id, and what the keeper reads of it."""

    record_id: str
    words: str


def text_of(values: Values, name: str) -> str:
    """Return a field's text without the white around it."""
    return values.get(name, Typed("")).text.strip()


def quantity(values: Values, spec: Field) -> float | None:
    """Return a quantity of a record [canonical unit], or None while it cannot be read."""
    typed = values.get(spec.path.partition(".")[2], Typed(""))
    found = read(typed.text, spec, typed.unit or spec.unit)
    return to_canonical(float(found.entered.number), spec.kind, found.entered.unit) if isinstance(found, Ok) else None


def method_of(calibration: Values) -> str:
    """Return what the runs were measured with; a cylinder where nothing was chosen."""
    return SCALE if text_of(calibration, "method") == SCALE else CYLINDER


def seconds_of(calibration: Values, number: int) -> Typed:
    """Return how long a run lasted: what was typed, else what the run before it says."""
    typed = (calibration.get(f"run_{n}_seconds", Typed("")) for n in range(number, 0, -1))
    return next((each for each in typed if each.text.strip()), Typed(""))


def first_lasted(found: Measured) -> float | None:
    """Return how long the first run lasted [s]; None while it is not said."""
    return quantity(found.values, pump_fields.CALIBRATION_FIELDS["calibration.run_1_seconds"])


def expected_ml(pump: Values, calibration: Values, number: int) -> float | None:
    """Return what a run should bring at the flow in use [mL]; None where flow or time is not known."""
    spec = pump_fields.CALIBRATION_FIELDS[f"calibration.run_{number}_seconds"]
    lasted = quantity({f"run_{number}_seconds": seconds_of(calibration, number)}, spec)
    set_to = quantity(pump, fields.FLOW)
    return None if lasted is None or set_to is None else set_to * lasted / 60.0 * _doses(calibration)


def _doses(calibration: Values) -> float:
    return quantity(calibration, pump_fields.CALIBRATION_FIELDS["calibration.doses"]) or 1.0


def runs_shown(found: Measured) -> int:
    """Return how many runs have fields: three, all that say something, and one more while they are to be repeated."""
    said = [n for n in range(1, MOST_RUNS + 1) if text_of(found.values, f"run_{n}_reads")]
    one_more = found.answer is not None and not found.answer.passed and len(said) >= FEWEST_RUNS
    return min(MOST_RUNS, max(FEWEST_RUNS, max(said, default=0) + one_more))


def raw_calibration(pump: Values, calibration: Values, dose_ml: float | None) -> tuple[dict[str, Any], tuple[int, ...]]:
    """Put a calibration together as a question file of the kind ``calibration`` has it.

    Parameters
    ----------
    pump, calibration : mapping of str to Typed
        The records' fields as typed; empty ones may be absent.
    dose_ml : float or None
        The dose in use [mL].

    Returns
    -------
    tuple of (dict, tuple of int)
        The tables, and which run of the sheet each row of ``run`` is.
    """
    method = method_of(calibration)
    numbers = tuple(n for n in range(1, MOST_RUNS + 1) if text_of(calibration, f"run_{n}_reads"))
    rows = []
    for number in numbers:
        amount = "mass" if method == SCALE else "volume"
        row = {"seconds": seconds_of(calibration, number), amount: calibration[f"run_{number}_reads"]}
        if text_of(calibration, "doses"):
            row["doses"] = calibration["doses"]
        rows.append({name: typed for name, typed in row.items() if typed.text.strip()})
    set_to = _filled(pump, (("setting", "flow"), ("life", "head_life")))
    if dose_ml:
        # As many digits as leave one reading only.
        set_to["dose"] = Typed(f"{dose_ml:.6f}", "mL")
    raw: dict[str, Any] = {
        "run": rows,
        "pump": {**set_to, **_filled(calibration, (("hours", "hours"),))},
        "conditions": _filled(calibration, tuple((name, name) for name in ("water_temperature", "air_pressure"))),
        "wanted": Typed(quantities.significant(100.0 * WANTED, 2), "%"),
    }
    if text_of(calibration, "timed") == BY_PUMP:
        raw["conditions"]["timing"] = _OWN_CLOCK
    line = _filled(pump, (("bore", "line_bore"), ("length", "line_length")))
    if len(line) == 2:
        raw["line"] = line
    table, name = ("scale", "readability") if method == SCALE else ("cylinder", "graduation")
    raw[table] = _filled(calibration, ((name, name),))
    return raw, numbers


def _filled(values: Values, names: Iterable[tuple[str, str]]) -> dict[str, Typed]:
    """Return the fields that are filled in, by what a question calls them."""
    return {asked: values[name] for asked, name in names if text_of(values, name)}


def measured(record_id: str, pump: Values, calibration: Values, dose_ml: float | None, now: datetime) -> Measured:
    """Read one calibration and reckon it.

    Parameters
    ----------
    record_id : str
        Id of its record.
    pump, calibration : mapping of str to Typed
        The records' fields as typed.
    dose_ml : float or None
        The dose in use [mL].
    now : datetime
        The present, with zone.

    Returns
    -------
    Measured
        The flow where there is one, and what is missing or wrong.
    """
    at = instant_of(text_of(calibration, "at"))
    raw, numbers = raw_calibration(pump, calibration, dose_ml)
    question = calibration_intake.calibration(raw, now)
    if isinstance(question, Unread):
        messages = tuple(_message(reason, numbers) for reason in question.reasons)
        return Measured(record_id, at, calibration, None, None, messages, bool(question.wrong))
    found = solve(question)
    if isinstance(found, Refused):
        messages = tuple(_message(reason, numbers) for reason in found.reasons)
        return Measured(record_id, at, calibration, question, None, messages, bool(numbers))
    return Measured(record_id, at, calibration, question, _numbered(found, numbers))


def _numbered(answer: CalibrationAnswer, numbers: tuple[int, ...]) -> CalibrationAnswer:
    """Let the reasons call the runs as the sheet does, where one in between was left empty."""
    return replace(
        answer,
        repeat=tuple(_renamed(reason, numbers) for reason in answer.repeat),
        remarks=tuple(_renamed(reason, numbers) for reason in answer.remarks),
    )


def _renamed(reason: Reason, numbers: tuple[int, ...]) -> Reason:
    rows = reason.params.get("runs")
    if not isinstance(rows, tuple):
        return reason
    return replace(reason, params={**reason.params, "runs": tuple(numbers[n - 1] for n in rows)})


def _message(reason: Reason, numbers: tuple[int, ...]) -> Message:
    """Return the sentence for a reason, at the field of the sheet that it is about."""
    path = _PLACES.get(reason.path, reason.path)
    table, _, rest = path.partition(".")
    if table == "run" and rest:
        row, _, field = rest.partition(".")
        name = f"run_{numbers[int(row) - 1]}_{'seconds' if field == 'seconds' else 'reads'}"
        path = f"calibration.{name}"
        if reason.code == "missing":
            return Message(
                say("Fill in {pump_words}.", pump_words=say(PUMP_WORDS[name], run=numbers[int(row) - 1])),
                path,
                reason.code,
            )
    return Message(words.sentence(reason), path, reason.code)


def sentences(found: Measured, newest: bool) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Return why a calibration is to be repeated, and what else is to be known of it.

    Parameters
    ----------
    found : Measured
        The calibration, with an answer.
    newest : bool
        Whether it is the newest of its pump: of an older one nothing is said about the flow in use now.

    Returns
    -------
    tuple of (tuple of str, tuple of str)
        Sentences.
    """
    if found.answer is None:
        return (), ()
    remarks = [r for r in found.answer.remarks if newest or r.code not in _OF_TODAY]
    return tuple(map(words.sentence, found.answer.repeat)), tuple(map(words.sentence, remarks))


def run_needed(found: Measured) -> Needed | None:
    """Return how long a run must be to know the flow as wanted, and what it brings; None where that cannot be said."""
    if found.question is None:
        return None
    flow = found.question.setting if found.answer is None else found.answer.chosen.summary.mean
    weighed = method_of(found.values) == SCALE
    return None if flow is None else needed(found.question.means, flow, WANTED, weighed)


def proposed(found: Measured) -> float | None:
    """Return the running time to propose for each run, rounded up to what a clock is set to [s]; None where none helps."""
    wanted = run_needed(found)
    if wanted is None:
        return None
    grain = 5.0 if wanted.seconds <= 120.0 else 15.0 if wanted.seconds <= 600.0 else 60.0
    up = grain * math.ceil(wanted.seconds / grain - 1e-9)
    return up if up <= pump_fields.LONGEST_S else None


def newest(found: Iterable[Measured]) -> Measured | None:
    """Return the newest calibration that has a flow; None where there is none."""
    dated = [each for each in found if each.answer is not None and each.at is not None]
    return max(dated, key=lambda each: each.at.timestamp() if each.at else 0.0, default=None)


def in_order(found: Iterable[Measured]) -> tuple[Measured, ...]:
    """Return calibrations as they stand in the list, the newest first; one without a time is only being written."""
    return tuple(sorted(found, key=lambda m: math.inf if m.at is None else m.at.timestamp(), reverse=True))


def row(found: Measured, now: datetime) -> CalibrationRow:
    """Return a calibration as it stands in the list: date, hours, flow, verdict.

    Parameters
    ----------
    found : Measured
        The calibration.
    now : datetime
        The present in the keeper's zone, which dates are written in.

    Returns
    -------
    CalibrationRow
        Its words.
    """
    hours = "" if found.hours is None else say("at {hours}", hours=with_unit(significant(found.hours, 4), "h"))
    when = say("no time yet") if found.at is None else date_words(found.at.astimezone(now.tzinfo))
    verdict, said = say("not complete"), ""
    if found.answer is not None:
        said = flow_words(found.answer.chosen.summary.mean)
        verdict = say("good") if found.answer.passed else say("repeat")
    used = say("flow used") if text_of(found.values, "flow_used") == "yes" else ""
    return CalibrationRow(found.record_id, " · ".join(part for part in (when, hours, said, verdict, used) if part))


def date_messages(pump: Values) -> tuple[Message, ...]:
    """Return what is wrong with the date a head was fitted; a date must never be turned round."""
    text = text_of(pump, "head_fitted")
    try:
        date.fromisoformat(text or "2000-01-01")
    except ValueError:
        said = say("“{text}” is not a date. Write it like 2026-11-25.", text=text)
        return (Message(said, "pump.head_fitted", "not_a_date"),)
    return ()
