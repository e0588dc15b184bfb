"""What is said of a record: every reason has a sentence with its figures, and the lines of an answer are safe to read."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC

import numpy as np
import pytest

from evenwater.engine.consumption import ConsumptionAnswer, ConsumptionQuestion, solve
from evenwater.engine.consumption_estimate import Span
from evenwater.engine.consumption_log import Dose, Exchange, Reading, Record
from evenwater.engine.consumption_ratio import Measured, effective_volume, ratio
from evenwater.engine.correction import Refused
from evenwater.engine.quantities import Water, to_canonical
from evenwater.engine.reasons import Reason
from evenwater.screens import consumption_lines, words
from evenwater.screens.consumption_words import OF_VALUES, SENTENCES
from evenwater.screens.shown import Shown
from tests.engine.asking import known
from tests.engine.consumption_tanks import at
from tests.screens.lint import faults
from tests.screens.test_sentences import check, codes

FALLING = [10.0 - 0.3 * day for day in range(12)]


def question(
    values: list[float], parameter: str = "alkalinity", later: float = 0.0, **log: tuple[Dose | Exchange, ...]
) -> ConsumptionQuestion:
    """Ask about daily readings in the parameter's display unit, so many days after the last."""
    p = known().parameters[parameter]
    sd = p.canonical(p.kit_accuracy) / 2.0
    readings = tuple(Reading(at(day + 0.5), p.canonical(value), sd) for day, value in enumerate(values))
    now = at(len(values) - 0.5 + later)
    return ConsumptionQuestion(now, p, p.display_unit, Water(), Record(readings, **log))  # type: ignore[arg-type]


def answered(asked: ConsumptionQuestion) -> ConsumptionAnswer:
    result = solve(asked)
    assert isinstance(result, ConsumptionAnswer), result
    return result


def said(asked: ConsumptionQuestion) -> list[Reason]:
    result = solve(asked)
    return list(result.reasons) if isinstance(result, Refused) else [*result.remarks, *result.odd]


def of_ratio(alkalinity: float, calcium: float, half: float = 0.01) -> list[Reason]:
    uses = (Span(value, value * (1.0 - half), value * (1.0 + half)) for value in (alkalinity, calcium))
    return list(ratio(*uses).reasons)


def of_volume() -> list[Reason]:
    found = effective_volume([10.0], 2.0, Measured(2.5, 0.05), Measured(2.52, 0.05), 1.0, Span(0.0, 0.0, 0.0))
    assert isinstance(found, Refused)
    return list(found.reasons)


def stopped() -> list[float]:
    return [*(10.0 - 0.5 * day for day in range(9)), *([6.0, 6.05, 5.95, 6.02, 6.0])]


# code: (what brings it up, what the sentence must hold)
PRODUCED: dict[str, tuple[Callable[[], list[Reason]], list[str]]] = {
    "too_few_readings": (lambda: said(question([8.0])), ["only one reading", "Test again tomorrow."]),
    "too_many_readings": (lambda: said(question([8.0] * 20_001, later=-18_000.0))[-1:], ["20001 readings", "20000"]),
    "readings_too_close": (
        lambda: said(ConsumptionQuestion(at(1), known().parameters["calcium"], "mg/L", Water(), Record((
            Reading(at(0.01), 400.0, 5.0), Reading(at(0.02), 410.0, 5.0))))),
        ["within 1 h"],
    ),
    "figure_unusable": (lambda: said(question([8.0, float("nan"), 7.0])), ["reading 2"]),
    "use_is_old": (lambda: said(question(FALLING, later=3.44)), ["3.4 days old", "more than 3 days"]),
    "rise_not_seen": (of_volume, ["scatter of the two tests"]),
    "ratio_departs": (lambda: of_ratio(0.4, 4.0), ["10 mg of calcium", "20 mg per meq"]),
    "ratio_wrong_test": (lambda: of_ratio(0.4, 4.0), ["with a standard"]),
    "ratio_precipitation": (lambda: of_ratio(0.4, 4.0), ["magnesium hydroxide"]),
    "ratio_another_sink": (lambda: of_ratio(0.4, 4.0), ["turns into nitrate"]),
    "ratio_unknown": (lambda: of_ratio(0.1, 4.0, 2.0), ["not known well enough"]),
    "reading_too_old": (lambda: said(question(FALLING, later=3700.0))[:1], ["Sun 1 Mar 2026 12:00", "10 years"]),
    "entry_in_the_future": (
        lambda: said(question(FALLING, exchanges=(Exchange(at(30.25), 0.1, 3.0),))), ["exchange of Tue 31 Mar 2026 06:00"],
    ),
    "odd_reading": (lambda: said(question([*FALLING[:6], 9.7, *FALLING[7:]])), ["9.7 dKH on Sat 7 Mar 2026 12:00 is 1.5 dKH above"]),
    "value_jumped": (lambda: said(question([*FALLING[:6], *(v + 2.0 for v in FALLING[6:])])), ["Sat 7 Mar 2026 12:00", "rose at once by 2 dKH"]),
    "use_changed": (lambda: said(question(stopped())), ["about Mon 9 Mar 2026, from 0.5"]),
    "flat_readings": (lambda: said(question([8.1, 8.0, 7.9, 7.9, 7.9])), ["last 3 readings all say 7.9 dKH"]),
    "made_in_the_tank": (lambda: said(question([2.0, 4.0, 6.0, 8.0], "nitrate")), ["nitrate is made", "2 mg per L as NO3 per day"]),
    "rises_by_itself": (lambda: said(question([400.0, 420.0, 440.0, 460.0], "calcium")), ["Calcium rises by 20 mg per L per day"]),
    "use_unclear": (lambda: said(question([8.0, 8.05, 7.95])), ["\u2212", "dKH per day"]),
}  # fmt: skip


def test_every_code_of_a_record_is_produced_above() -> None:
    assert PRODUCED.keys() == SENTENCES.keys() | OF_VALUES.keys()
    assert codes() >= PRODUCED.keys()


@pytest.mark.parametrize("code", PRODUCED)
def test_sentence_holds_its_figures(code: str) -> None:
    produce, fragments = PRODUCED[code]
    (reason, *_) = (found for found in produce() if found.code == code)
    unit = {"made_in_the_tank": "nitrate", "rises_by_itself": "calcium"}.get(code, "alkalinity")
    p = known().parameters[unit]
    check(words.sentence(reason, Shown(p, p.display_unit, Water(), UTC)), fragments)


def test_no_reading_at_all_and_calcium_taken_besides_are_said_differently() -> None:
    (none,) = said(ConsumptionQuestion(at(1), known().parameters["calcium"], "mg/L", Water(), Record(())))
    assert words.sentence(none).startswith("There is no reading yet.")
    sink = of_ratio(0.4, 16.0)[-1]
    assert sink.code == "ratio_another_sink"
    assert "used up" in words.sentence(sink)


def test_values_below_nothing_and_falls_are_said_without_a_hyphen() -> None:
    fallen = [*FALLING[:6], *(v - 2.0 for v in FALLING[6:])]
    p = known().parameters["alkalinity"]
    shown = Shown(p, p.display_unit, Water(), UTC)
    (jump,) = (reason for reason in said(question(fallen)) if reason.code == "value_jumped")
    assert "fell at once by 2 dKH" in words.sentence(jump, shown).replace("\u00a0", " ")
    (odd,) = (reason for reason in said(question([*FALLING[:6], 6.0, *FALLING[7:]])) if reason.code == "odd_reading")
    assert "below what the others say" in words.sentence(odd, shown)


@pytest.mark.parametrize("parameter", list(known().parameters))
def test_lines_are_safe_to_read_for_every_parameter(parameter: str) -> None:
    """Two weeks in the range kept, with a bad test, a change and a rise that is in no log."""
    p = known().parameters[parameter]
    low, high = p.range_kept
    kit = p.kit_accuracy
    values = [(low + high) / 2.0 - 0.4 * kit * day for day in range(10)]
    values[4] += 8.0 * kit
    values += [values[-1] + 7.0 * kit + 0.1 * kit * (day % 2) for day in range(6)]
    answer = answered(question(values, parameter, later=p.stale_days + 1.0))
    lines = consumption_lines.lines(answer, UTC)
    assert any(line.startswith("Not believed: ") for line in lines)
    assert sum(line.startswith("Note: ") for line in lines) >= 2
    for line in lines:
        # An answer for people on a terminal has ordinary spaces; everything else is held to the rules.
        assert [fault for fault in faults(line) if not fault.startswith("L3 ordinary space")] == []


def test_lines_speak_in_the_keepers_unit_and_zone() -> None:
    asked = question(FALLING)
    answer = answered(ConsumptionQuestion(asked.now, asked.parameter, "ppm as CaCO3", asked.water, asked.record))
    lines = consumption_lines.lines(answer, UTC)
    assert lines[0].startswith("Alkalinity used now: 5.3")
    assert "ppm as CaCO3 per day" in lines[0]
    assert lines[2] == "From 12 readings, the last one just now."
    assert lines[3] == "In the last weeks use has been steady."
    assert "Mar 2026 to Thu 12 Mar 2026: 5.3" in lines[-1]


@pytest.mark.parametrize(("first", "last", "word"), [(0.2, 1.8, "grows"), (1.8, 0.2, "falls")])
def test_use_that_moves_week_by_week_is_said_so(first: float, last: float, word: str) -> None:
    used = np.cumsum(np.linspace(first, last, 60))
    found = answered(question((60.0 - used + np.random.default_rng(4).normal(0.0, 0.1, 60)).tolist()))
    assert consumption_lines.lines(found, UTC)[3].startswith(f"In a week use {word} by 0.")
    per_week = to_canonical((last - first) / 59.0 * 7.0, "alkalinity", "dKH")
    assert found.estimate.trend_per_week == pytest.approx(per_week, rel=0.35)


def test_a_week_is_needed_to_see_a_trend() -> None:
    lines = consumption_lines.lines(answered(question(FALLING[:6])), UTC)
    assert not any("steady" in line or "In a week" in line for line in lines)
