"""What is said of a jug: every reason has a sentence with its figures, and every line is safe to read."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from evenwater.engine import jug
from evenwater.engine.correction import Refused
from evenwater.engine.jug import JugAnswer
from evenwater.engine.jug_causes import PRIOR
from evenwater.engine.jug_check import STEPS, LevelRead, Levels, check
from evenwater.engine.jug_siphon import CHECKLIST
from evenwater.engine.reasons import Reason
from evenwater.screens import jug_lines, jug_words, words
from tests.engine.simulated_pumps import CLEAR, UNCLEAR, case
from tests.engine.test_jug import NOW, answer, question
from tests.engine.test_jug_check import levels
from tests.screens.lint import faults
from tests.screens.test_sentences import check as is_safe

HOUR, DAY = timedelta(hours=1), timedelta(days=1)


def of(**changes: Any) -> list[Reason]:
    found = jug.solve(question(**changes))
    return list(found.reasons if isinstance(found, Refused) else found.remarks)


def of_levels(*drops: float, **more: Any) -> list[Reason]:
    found = check(levels(*drops, **more))
    return [found] if isinstance(found, Reason) else list(found.remarks)


def level(at: datetime, text: str) -> dict[str, object]:
    return {"at": at, "level": text}


FALLING = [level(NOW - 2 * DAY, "900 mL"), level(NOW, "200 mL")]
PUMP = [{"single_dose": "4.8 mL", "first_dose_at": NOW - 2 * DAY + HOUR}]
LATE = [{"single_dose": "4.8 mL", "first_dose_at": NOW + DAY}]
PRODUCED: dict[str, tuple[list[Reason], list[str]]] = {
    "no_level": (of(level=[]), ["level"]),
    "nothing_reachable": (of(jug={"holds": "1 L", "unreachable": "2 L"}), ["1 L"]),
    "level_above_full": (of(level=[level(NOW, "1.2 L")]), ["1.2 L", "1 L"]),
    "level_in_the_future": (of(level=[level(NOW + HOUR, "480 mL")]), ["still to come"]),
    "refill_in_the_future": (of(refill=[{"at": NOW + HOUR, "added": "100 mL"}]), ["still to come"]),
    "refill_above_full": (of(refill=[{"at": NOW, "added": "2 L"}]), ["2 L", "1 L"]),
    "back_already": (of(away_until=NOW - DAY), ["before now"]),
    "one_level_only": (of_levels(), ["One level"]),
    "too_many_levels": (of_levels(*[10.0] * 60), ["61", "60"]),
    "levels_at_one_time": (
        [r for r in [check(replace(levels(1.0), readings=(LevelRead(NOW, 1.0),) * 2))] if isinstance(r, Reason)], ["same time"],
    ),
    "no_dose_between": (of(level=[level(NOW - DAY, "480 mL"), level(NOW, "480 mL")], pump=LATE), ["No dose"]),
    "fell_without_doses": (of(level=FALLING, pump=LATE), ["at once"]),
    "siphon_possible": (of(level=FALLING, pump=PUMP), ["Stop at once"]),
    "nothing_fits": (of_levels(300, -150, 10, 420, -60, 250), ["No single cause"]),
    "several_pumps": (
        of(level=[level(NOW - 2 * DAY, "900 mL"), level(NOW, "440 mL")], pump=PUMP * 2), ["2 pumps"],
    ),
    "jug_ran_dry": (of(level=[level(NOW - 2 * DAY, "100 mL"), level(NOW, "0 mL")], pump=PUMP), ["dry"]),
    "level_rose": (of_levels(120, -900, 120), ["without a refill"]),
    "jug_above_outlet": (of(setting={"jug_below_outlet": False}), ["above its outlet"]),
    "outlet_under_water": (of(setting={"outlet_above_water": False}), ["air gap"]),
    "siphon_not_checked": (of(), ["outlet"]),
    "jug_empty": (of(level=[level(NOW, "3 mL")]), ["never make up"]),
    "jug_low": (of(), ["4 days 4 h"]),
    "jug_lasts_hours": (of(pump=[{"single_dose": "30 mL"}]), ["720 mL", "less than two days"]),
    "jug_would_harm": (of(), ["24.5 dKH", "14 dKH", "363 mL"]),
}  # fmt: skip


def test_every_code_of_a_jug_is_produced_below() -> None:
    assert PRODUCED.keys() == jug_words.SENTENCES.keys()


@pytest.mark.parametrize("code", PRODUCED)
def test_sentence_holds_its_figures(code: str) -> None:
    reasons, fragments = PRODUCED[code]
    found = {reason.code: reason for reason in reasons}
    assert code in found, found.keys()
    is_safe(words.sentence(found[code]), fragments)


def test_a_value_too_high_already_is_told_so() -> None:
    (found,) = (r for r in of(system={"net_volume": "340 L", "alkalinity": "14.2 dKH"}) if r.code == "jug_would_harm")
    is_safe(words.sentence(found), ["dose none"])


def test_every_name_of_the_engine_has_words() -> None:
    assert jug_words.CHECKS.keys() == set(CHECKLIST)
    assert jug_words.CAUSES.keys() == PRIOR.keys()
    assert jug_words.STEPS.keys() == STEPS.keys()
    tables = (jug_words.CHECKS, jug_words.CAUSES, jug_words.STEPS, jug_words.MARKS)
    texts = [text for table in tables for text in table.values()]
    assert not [fault for text in [*texts, jug_words.ADVICE, jug_words.NEVER_MADE_UP] for fault in faults(text)]


@pytest.mark.parametrize(("weight", "word"), [(0.99, "likely"), (0.7, "likely"), (0.5, "possible"), (0.05, "unlikely")])
def test_weights_are_said_in_words(weight: float, word: str) -> None:
    assert jug_words.likely(weight) == word


def lines(found: JugAnswer) -> list[str]:
    return list(jug_lines._lines(found, UTC))


def of_record(record: Levels) -> JugAnswer:
    """Return the answer of a jug with simulated levels."""
    last = max(reading.at for reading in record.readings)
    asked = question(jug={"holds": f"{record.holds_ml:.1f} mL"}, now=last, away_until=last + 20 * DAY)
    pump = replace(asked.pumps[0], draw=record.draws[0], hours=record.hours, flow_ml_per_min=24.0)
    found = jug.solve(
        replace(
            asked, levels=record.readings, refills=record.refills, pumps=(pump,), accuracy_ml=2.0 * record.reading_sd
        )
    )
    assert isinstance(found, JugAnswer), found
    return found


@pytest.mark.parametrize("truth", [*CLEAR, *UNCLEAR])
def test_every_line_is_safe_to_read(truth: str) -> None:
    for seed in range(4):
        said = lines(of_record(case(truth, seed).record))
        assert not [fault for line in said for fault in faults(line.removeprefix("Danger: ")) if line]


def test_cause_that_cannot_be_told_is_not_named() -> None:
    said = "\n".join(lines(of_record(case("low_once", 1).record)))
    assert "The levels cannot tell the cause. Possible: " in said
    assert "Likely: " not in said


def test_steps_are_numbered_from_the_safest() -> None:
    said = lines(of_record(case("siphon", 1).record))
    first = next(line for line in said if line.startswith("1. "))
    assert first == f"1. {jug_words.STEPS['lift_outlet']}"
    assert said[0].startswith("Danger: More left the jug")


def test_jug_that_lasts_is_said_without_a_date() -> None:
    said = lines(answer(pump=[{"single_dose": "0.001 mL", "doses_per_day": 1}]))
    assert "At that it lasts more than ten years." in said


def test_absence_that_a_full_jug_does_not_outlast_asks_for_somebody() -> None:
    said = lines(answer(away_until=NOW + 30 * DAY))
    assert any(line.startswith("Even full it lasts only until") for line in said)
    enough = lines(answer(away_until=NOW + 2 * DAY))
    assert any("and there is enough" in line for line in enough)
