"""H6, H7 and H8: a volume that is not known, a reading that is old, a reading from the future.

Common practice, no source.
"""

from __future__ import annotations

from datetime import datetime, timedelta, timezone

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from evenwater.engine.correction import Answer
from tests.engine.asking import NOW, answered, ask, known, read, worked

# After so many days a reading is no basis for a correction; common practice, no source.
STALE = {
    "alkalinity": 3, "calcium": 7, "nitrate": 7, "phosphate": 7,
    "magnesium": 14, "potassium": 14, "strontium": 14, "iodide": 14, "salinity": 14,
}  # fmt: skip


@settings(max_examples=60)
@given(
    litres=st.integers(20, 5000),
    uncertainty=st.integers(1, 50),
    where=st.floats(0.0, 1.0),
    use=st.sampled_from(["0", "0.4", "0.9"]),
)
def test_H6_low_end_dose_is_at_most_the_dose_for_the_true_volume(
    litres: int, uncertainty: int, where: float, use: str
) -> None:
    fast_pump = {"pump__flow": "50000 mL/min", "change__daily_use": f"{use} dKH per day"}
    unknown = answered(
        worked(
            system__net_volume=f"{litres} L", system__volume_known="unknown",
            system__volume_uncertainty=f"{uncertainty} %", **fast_pump,
        )
    )  # fmt: skip
    low, high = litres * (1.0 - uncertainty / 100.0), litres * (1.0 + uncertainty / 100.0)
    true = low + where * (high - low)
    exact = answered(worked(system__net_volume=f"{max(true, low):.6f} L", **fast_pump))
    assert unknown.dose_ml_per_day <= exact.dose_ml_per_day * (1.0 + 1e-6)
    assert unknown.total_ml <= exact.total_ml * (1.0 + 1e-6)
    # What the low-end doses do in the true volume: never more than was allowed, whatever the animals take.
    in_true_volume = unknown.dose_ml_per_day * unknown.strength / true
    assert in_true_volume <= (unknown.pace + unknown.question.use) * (1.0 + 1e-6)


def test_H6_an_unknown_volume_has_a_wide_default_and_says_so() -> None:
    answer = answered(worked(system__volume_known="unknown"))
    assert answer.question.system.volume_l == pytest.approx(0.75 * 340.0)
    assert "low_end_volume" in {r.code for r in answer.remarks}
    filled = answered(worked(system__volume_known="measured by filling"))
    assert filled.question.system.volume_l == 340.0
    assert "low_end_volume" not in {r.code for r in filled.remarks}
    assert filled.band[1] - filled.band[0] < answer.band[1] - answer.band[0]


def _about(name: str, measured_at: datetime | str | None) -> dict[str, object]:
    p = known().parameters[name]
    low, high = p.target_hard
    raw = worked()
    raw["additive"] = {"label": {"dose": "5 mL", "water": "100 L", "raises": f"{p.rise_recommended} {p.display_unit}"}}
    raw["change"] = {
        "parameter": name,
        "measured": f"{low + 0.4 * (high - low):.5f} {p.display_unit}",
        "target": f"{low + 0.4 * (high - low) + p.rise_recommended:.5f} {p.display_unit}",
        "measured_at": measured_at,
    }
    return raw


@pytest.mark.parametrize("name", STALE)
def test_H7_a_reading_grows_old_as_the_clock_runs(name: str) -> None:
    measured_at = NOW
    raw = _about(name, measured_at)
    limit = timedelta(days=STALE[name])
    for hours in range(24 * 16):
        later = NOW + timedelta(hours=hours)
        result = ask(raw, later)
        if later - measured_at <= limit:
            assert isinstance(result, Answer), f"{hours} h: {result}"
        else:
            assert result == ("reading_stale",), f"{hours} h: {result}"


def test_H7_every_parameter_has_its_age() -> None:
    assert set(STALE) == set(known().parameters)


@pytest.mark.parametrize("name", STALE)
def test_H7_a_reading_of_unknown_age_is_remarked_on(name: str) -> None:
    answer = answered(_about(name, None))
    assert "age_unknown" in {r.code for r in answer.remarks}
    assert "age_unknown" not in {r.code for r in answered(_about(name, NOW)).remarks}


@pytest.mark.parametrize("minutes", [-1, 0, 1, 4, 5])
def test_H8_a_clock_that_runs_a_little_ahead_is_forgiven(minutes: int) -> None:
    assert isinstance(ask(_about("alkalinity", NOW + timedelta(minutes=minutes))), Answer)


@pytest.mark.parametrize(
    "ahead",
    [timedelta(minutes=5, seconds=1), timedelta(minutes=6), timedelta(hours=1), timedelta(hours=12), timedelta(days=1),
     timedelta(days=30), timedelta(days=365)],
)  # fmt: skip
def test_H8_a_reading_from_the_future_is_refused(ahead: timedelta) -> None:
    assert ask(_about("alkalinity", NOW + ahead)) == ("reading_in_the_future",)


def test_H8_the_clock_set_back_makes_a_reading_of_the_future() -> None:
    raw = _about("alkalinity", NOW)
    assert isinstance(ask(raw, NOW), Answer)
    assert ask(raw, NOW - timedelta(hours=1)) == ("reading_in_the_future",)


def test_H8_instants_are_compared_and_not_what_clocks_show() -> None:
    # 13:30 in a zone five hours ahead is 08:30 here; 08:30 five hours behind is 13:30 here.
    east, west = timezone(timedelta(hours=5)), timezone(timedelta(hours=-5))
    assert isinstance(ask(_about("alkalinity", datetime(2026, 11, 25, 13, 30, tzinfo=east))), Answer)
    assert ask(_about("alkalinity", datetime(2026, 11, 25, 8, 30, tzinfo=west))) == ("reading_in_the_future",)
    assert ask(_about("alkalinity", "2026-11-25T13:30:00+00:00")) == ("reading_in_the_future",)


@pytest.mark.parametrize("text", ["2026-11-25T08:00:00", "2026-11-25", "08:00", "25/11/2026 08:00", "yesterday"])
def test_H8_a_time_without_zone_or_sense_is_refused(text: str) -> None:
    result = ask(_about("alkalinity", text))
    assert isinstance(result, tuple)
    assert set(result) <= {"time_without_zone", "not_a_time"}


def test_H8_the_question_keeps_the_instant() -> None:
    east = timezone(timedelta(hours=5))
    question = read(_about("alkalinity", datetime(2026, 11, 25, 13, 30, tzinfo=east)))
    assert question.measured_at == datetime(2026, 11, 25, 8, 30, tzinfo=NOW.tzinfo)
