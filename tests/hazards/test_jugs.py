"""H16 and H22 to H25 about jugs: a pump that drifts, a line that is not primed, a jug that runs dry, a jug that runs in.

H22's marks of 5 % and 10 % are those of the Generic Infusion Pump requirements (FDA and University of Pennsylvania, 2009); low below five days and a
jug of no more than two days' hard maximum are common practice, no source.
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from evenwater.engine.absence import AbsentJug, absence
from evenwater.engine.jug import JugAnswer
from evenwater.engine.jug_check import AMBER_MARK, RED_MARK, WITHIN_MARK, JugCheck, LevelRead, Levels, check
from evenwater.engine.jug_level import Draw, Filled, drawn_ml, forecast
from evenwater.engine.jug_siphon import CHECKLIST
from evenwater.screens import jug_lines
from evenwater.screens.rounds_jugs import Drawn, filled
from evenwater.screens.rounds_room import RUNS_OUT_AHEAD, Contents
from tests.engine.simulated_pumps import case
from tests.engine.test_jug import answer

NOW = datetime(2026, 11, 25, 8, tzinfo=UTC)
HOUR, DAY = timedelta(hours=1), timedelta(days=1)
HOURLY = Draw("", 5.0, 24, NOW + HOUR)


def drifting(share: float, days: int = 10) -> JugCheck:
    """Check a jug read finely each day, of which so much of the expected is really taken."""
    levels = tuple(LevelRead(NOW + day * DAY, 5000.0 - share * 120.0 * day) for day in range(days + 1))
    found = check(Levels(levels, (HOURLY,), 5000.0, 0.0, reading_sd=0.5, calibration_sd=0.005))
    assert isinstance(found, JugCheck)
    return found


def plain(found: JugAnswer) -> list[str]:
    return list(jug_lines.lines(found, UTC))


@pytest.mark.parametrize(
    ("share", "mark"),
    [(1.0, WITHIN_MARK), (0.955, WITHIN_MARK), (1.045, WITHIN_MARK), (0.945, AMBER_MARK), (1.055, AMBER_MARK), (0.905, AMBER_MARK),
     (0.895, RED_MARK), (1.105, RED_MARK), (0.0, RED_MARK)],
)  # fmt: skip
def test_H22_drift_shows_at_5_and_10_percent(share: float, mark: str) -> None:
    assert drifting(share).mark == mark


def test_H22_drift_of_20_percent_does_not_last_for_weeks() -> None:
    """Found with the levels of one week, each read to 25 mL of 5 L."""
    levels = tuple(LevelRead(NOW + day * DAY, 5000.0 - 0.8 * 120.0 * day) for day in (0, 3, 7))
    found = check(Levels(levels, (HOURLY,), 5000.0, 0.0, reading_sd=12.5, calibration_sd=0.025))
    assert isinstance(found, JugCheck)
    assert found.mark == RED_MARK
    assert "calibrate" in found.steps


def test_H22_no_setting_is_changed_by_a_check() -> None:
    """A factor is offered beside the record, and the record is what it was."""
    record = case("wrong_factor", 1).record
    before = repr(record)
    found = check(record)
    assert isinstance(found, JugCheck)
    assert found.factor is not None
    assert repr(record) == before


def test_H23_air_is_named_and_the_line_is_looked_at_first() -> None:
    levels = tuple(LevelRead(NOW + day * DAY, 5000.0 - 120.0 * min(day, 2)) for day in range(7))
    found = check(Levels(levels, (HOURLY,), 5000.0, 0.0, reading_sd=5.0, calibration_sd=0.025))
    assert isinstance(found, JugCheck)
    assert found.cause == "blocked"
    assert found.steps.index("watch_outlet") < found.steps.index("look_for_air")


def test_H23_priming_says_how_much_and_what_does_not_arrive() -> None:
    lines = plain(answer(line={"bore": "4 mm", "length": "2 m"}))
    (said,) = (line for line in lines if "prime" in line)
    assert "25.1 mL" in said
    # 25.13 mL in doses of 4.8 mL: five and a quarter.
    assert "the first 6 doses do not arrive whole" in said
    assert "line_primed" in CHECKLIST


def test_H24_days_left_are_instants_over_a_change_of_clocks() -> None:
    """100 hourly doses end 100 hours after the level, whatever the wall clock does on 29 March 2026 in Berlin."""
    berlin = ZoneInfo("Europe/Berlin")
    begin = datetime(2026, 3, 28, 12, tzinfo=berlin)
    found = forecast(Filled(begin, 480.0), [Draw("", 4.8, 24, begin.astimezone(UTC) + HOUR)], begin)
    assert found.last_full == begin.astimezone(UTC) + 100 * HOUR
    assert found.days_left == pytest.approx(100.0 / 24.0)


@pytest.mark.parametrize(("doses", "low"), [(119, True), (120, False), (121, False)])
def test_H24_low_below_five_days(doses: int, low: bool) -> None:
    assert forecast(Filled(NOW, 5.0 * doses), [HOURLY], NOW).low == low


def test_H24_jug_is_low_in_words_and_empty_is_said() -> None:
    assert any("The jug is low: it lasts 4 days 4 h." in line for line in plain(answer()))
    gone = plain(answer(now=NOW + 200 * HOUR))
    assert any("The jug is empty" in line and "never make up" in line for line in gone)


def test_H24_rounds_and_jug_tell_the_same() -> None:
    """Without a logged dose the rounds reckon at the daily rate, which ends within a dose of the last whole one."""
    shown = filled(Contents("a", "Ash", None), 480.0, NOW, [Drawn(115.2)], NOW)
    found = forecast(Filled(NOW, 480.0), [Draw("", 4.8, 24, NOW + HOUR)], NOW)
    assert shown.runs_out is not None
    assert found.last_full is not None
    assert abs(shown.runs_out - found.last_full) < HOUR
    assert timedelta(days=5) == RUNS_OUT_AHEAD


def test_H25_whole_jug_is_said_with_the_largest_that_does_no_harm() -> None:
    """A litre of this soda ash lifts 340 L by 16.5 dKH; 363 mL take it from 8 to 14 dKH."""
    found = answer()
    codes = [reason.code for reason in found.remarks]
    assert "jug_would_harm" in codes
    text = "\n".join(plain(found))
    assert "alkalinity would reach 24.5 dKH" in text
    assert "A jug of 363 mL or less would not." in text
    assert "Advised: 169 mL or less." in text
    small = answer(jug={"holds": "360 mL"}, level=[{"at": NOW, "level": "300 mL"}])
    assert "jug_would_harm" not in [reason.code for reason in small.remarks]


def test_H25_siphon_is_stopped_before_anything_else_is_said() -> None:
    levels = [{"at": NOW - 2 * DAY, "level": "900 mL"}, {"at": NOW, "level": "200 mL"}]
    pump = [{"single_dose": "4.8 mL", "first_dose_at": NOW - 2 * DAY + HOUR}]
    found = answer(level=levels, pump=pump)
    assert found.check is not None
    assert found.check.stop
    assert found.check.steps[0] == "lift_outlet"
    first = plain(found)[0]
    assert first.startswith("Danger: ")
    assert "Stop at once" in first
    assert not any(sign.isdigit() for sign in first)


def test_H25_every_simulated_siphon_is_stopped() -> None:
    for seed in range(60):
        found = check(case("siphon", seed).record)
        assert isinstance(found, JugCheck)
        assert found.stop


@pytest.mark.parametrize(
    ("setting", "said"),
    [
        ({"outlet_above_water": False, "jug_below_outlet": True}, "The outlet ends under water"),
        ({"outlet_above_water": True, "jug_below_outlet": False}, "The jug stands above its outlet"),
    ],
)
def test_H25_a_jug_that_can_run_in_is_a_danger(setting: dict[str, bool], said: str) -> None:
    assert plain(answer(setting=setting))[0].startswith(f"Danger: {said}")


def test_H25_nothing_said_is_asked_to_be_looked_at() -> None:
    assert any(line.startswith("Note: Look whether the outlet ends above") for line in plain(answer()))


def test_H33_handling_stands_before_every_number() -> None:
    lines = plain(answer())
    handling = [n for n, line in enumerate(lines) if line.startswith("Caution: ")]
    assert len(handling) >= 4
    assert not any(sign.isdigit() for line in lines[: handling[0]] for sign in line)
    assert min(n for n, line in enumerate(lines) if " mL" in line) > max(handling)


@pytest.mark.parametrize("gap_h", [1, 5, 30, 24 * 14])
def test_H16_a_jug_that_ran_dry_is_never_made_up_for(gap_h: int) -> None:
    """Refilled after a gap, any 24 hours hold the doses of a day and not one more."""
    dry = NOW + 10 * HOUR
    back = forecast(Filled(dry + gap_h * HOUR, 5000.0), [HOURLY], dry + gap_h * HOUR)
    assert back.per_day_ml == 120.0
    for hour in range(48):
        begin = dry + (gap_h + hour) * HOUR
        assert drawn_ml([HOURLY], begin, begin + DAY) == pytest.approx(120.0)


def test_H16_an_absence_leaves_out_what_it_misses() -> None:
    (found,) = absence([AbsentJug("", Filled(NOW, 100.0), 100.0, (HOURLY,), 0.0)], [], NOW, NOW + 2 * DAY).fillings
    assert found.missed == 28
    assert found.needed_ml == pytest.approx(240.0)
    full = absence([AbsentJug("", Filled(NOW, 100.0), 1000.0, (HOURLY,), 0.0)], [], NOW, NOW + 2 * DAY).fillings[0]
    assert (full.missed, full.add_ml) == (0, pytest.approx(140.0))
