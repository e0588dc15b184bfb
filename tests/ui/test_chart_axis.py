"""Ticks: real dates, no two labels touching, from six hours to two hundred days."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import pytest

from evenwater.ui.chart_axis import Tick, moment_text, time_ticks, value_ticks

BERLIN = ZoneInfo("Europe/Berlin")
START = datetime(2026, 11, 25, 9, 17, tzinfo=UTC).timestamp()


def width(text: str) -> float:
    return 7.5 * len(text)


def gaps(ticks: list[Tick], start: float, per_second: float) -> list[float]:
    """Return the white between neighbouring labels [px]."""
    boxes = [((t.at - start) * per_second, width(t.text)) for t in ticks if t.text]
    return [(x2 - w2 / 2) - (x1 + w1 / 2) for (x1, w1), (x2, w2) in pairwise(boxes)]


@pytest.mark.parametrize("hours", [6, 12, 24, 38, 60, 24 * 5, 24 * 9, 24 * 14, 24 * 30, 24 * 75, 24 * 200])
@pytest.mark.parametrize("length", [380.0, 900.0, 1500.0])
@pytest.mark.parametrize("scale", [1.0, 1.5])
def test_labels_never_touch_and_there_are_enough(hours: int, length: float, scale: float) -> None:
    end = START + hours * 3600
    ticks = time_ticks(START, end, length, lambda text: scale * width(text), BERLIN)
    per_second = length / (end - START) / scale
    assert all(gap >= 4 for gap in gaps(ticks, START, per_second))
    labelled = [t for t in ticks if t.text]
    assert len(labelled) >= (2 if length < 900 else 3)
    assert all(START <= t.at <= end for t in ticks)
    assert any("Nov" in t.text or "Dec" in t.text or "Jan" in t.text for t in labelled), "a date is always there"


def test_midnights_carry_weekday_and_day() -> None:
    ticks = time_ticks(START, START + 60 * 3600, 900.0, width, BERLIN)
    assert [t.text for t in ticks if t.major] == ["Thu 26 Nov", "Fri 27 Nov"]
    assert {t.text for t in ticks if not t.major} <= {
        "",
        "00:00",
        "06:00",
        "12:00",
        "18:00",
        "03:00",
        "09:00",
        "15:00",
        "21:00",
    }


def test_without_a_midnight_the_first_label_has_the_date() -> None:
    ticks = time_ticks(START, START + 6 * 3600, 900.0, width, BERLIN)
    assert ticks[0].text.startswith("Wed 25 Nov ")
    assert ticks[0].dated
    assert not any(t.major for t in ticks)


@pytest.mark.parametrize(
    ("day", "hours"), [(datetime(2026, 10, 24, 12, tzinfo=BERLIN), 25), (datetime(2026, 3, 28, 12, tzinfo=BERLIN), 23)]
)
def test_H17_midnights_stay_midnights_when_the_clocks_change(day: datetime, hours: int) -> None:
    start = day.timestamp()
    ticks = time_ticks(start, start + 60 * 3600, 900.0, width, BERLIN)
    midnights = [t.at for t in ticks if t.major]
    assert [datetime.fromtimestamp(t, BERLIN).hour for t in midnights] == [0] * len(midnights)
    assert (midnights[1] - midnights[0]) / 3600 == hours


def test_ticks_stay_in_place_while_the_end_moves() -> None:
    for days in (30, 75, 150):
        first = {t.at for t in time_ticks(START, START + days * 86400, 900.0, width, BERLIN) if t.text}
        second = {t.at for t in time_ticks(START, START + (days + 0.3) * 86400, 900.0, width, BERLIN) if t.text}
        assert first <= second


def test_moments_in_words_do_not_depend_on_the_locale() -> None:
    when = datetime(2026, 11, 26, 14, 5, tzinfo=BERLIN)
    assert moment_text(when.timestamp(), BERLIN) == "Thu 26 Nov 14:05"
    assert moment_text((when + timedelta(hours=10)).timestamp(), BERLIN) == "Fri 27 Nov 00:05"


@pytest.mark.parametrize(
    ("low", "high", "texts"),
    [
        (4.2, 10.9, ["5", "6", "7", "8", "9", "10"]),
        (7.61, 8.29, ["7.7", "7.8", "7.9", "8.0", "8.1", "8.2"]),
        (300.0, 480.0, ["300", "350", "400", "450"]),
        (0.0, 0.011, ["0.000", "0.002", "0.004", "0.006", "0.008", "0.010"]),
    ],
)
def test_value_ticks_are_round_numbers(low: float, high: float, texts: list[str]) -> None:
    assert [t.text for t in value_ticks(low, high, 160.0, 20.0)] == texts


def test_an_axis_without_extent_has_no_ticks() -> None:
    assert time_ticks(START, START, 900.0, width) == []
    assert value_ticks(1.0, 1.0, 160.0, 24.0) == []
