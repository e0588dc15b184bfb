"""The list of a long log and its chart: all of it in sight, zoomed and moved with the keys and the buttons."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings, Qt

from evenwater.engine.quantities import Typed
from evenwater.session import Entry
from evenwater.ui.log_chart import DAY, SPANS
from evenwater.ui.log_sheet import LINES, LogSheet
from evenwater.ui.main_window import MainWindow
from tests.ui.log_making import (
    Wall,
    begin,
    begin_dose,
    furnished,
    hung,
    kept,
    lines,
    living_in,
    log_of,
    pick,
    put,
    reading,
    whens,
)
from tests.ui.stocks_making import ASH, click, click_row, document_of, jug_named, press
from tests.ui.window_making import opened, room_of

MORNING = datetime(2026, 11, 25, 10, 30, tzinfo=UTC)


@pytest.fixture
def file(tmp_path: Path) -> Path:
    return furnished(tmp_path / "evenwater.sqlite")


@pytest.fixture
def wall(monkeypatch: pytest.MonkeyPatch) -> Iterator[Wall]:
    with living_in("UTC"):
        yield hung(monkeypatch, MORNING)


@pytest.fixture
def window(wall: Wall, file: Path, qtbot) -> MainWindow:
    QSettings().remove("who")
    return opened(file, qtbot)


@pytest.fixture
def log(window: MainWindow) -> LogSheet:
    return log_of(window)


def noted(log: LogSheet, text: str, who: str = "") -> Entry:
    """Note a reading and return it."""
    put(log, "value", text)
    if who:
        put(log, "who", who)
    click(log.form.log)
    return kept(log)[-1]


@pytest.fixture
def full(window: MainWindow) -> LogSheet:
    """The sheet with 1,500 readings, one in six hours."""
    document = document_of(window)
    entries = [
        reading(document, f"{7 + (n % 20) / 10:.1f}", (7 + (n % 20) / 10) / 2.8039, MORNING - timedelta(hours=6 * n))
        for n in range(1500)
    ]
    assert document.log.log(entries)
    return log_of(window)


def test_the_newest_thousand_stand_in_the_list_and_all_in_the_chart(full: LogSheet):
    assert len(lines(full)) == LINES == 1000
    assert whens(full)[0] == "Wed 25 Nov 2026 10:30"
    assert full._history is not None
    assert full._history.times.size == 1500
    first, last = full.chart.span
    assert first < (MORNING - timedelta(hours=6 * 1499)).timestamp()
    assert last > MORNING.timestamp()
    assert full.chart.reading_words().endswith("7.00 dKH")


def test_the_spans_show_so_many_days(full: LogSheet):
    for button, (name, days) in zip(full.spans, SPANS, strict=True):
        click(button)
        start, end = full.chart.span
        assert button.text() == name
        shown = (end - start) / DAY
        assert shown == pytest.approx(1.05 * min(days, 6 * 1499 / 24), rel=1e-6)
        assert start <= MORNING.timestamp() <= end


def test_the_chart_is_zoomed_and_moved_with_the_keys(full: LogSheet):
    full.chart.setFocus(Qt.FocusReason.TabFocusReason)
    press(Qt.Key.Key_Home)
    start, end = full.chart.span
    press(Qt.Key.Key_Plus)
    nearer = full.chart.span
    assert nearer[1] - nearer[0] == pytest.approx(0.7 * (end - start))
    press(Qt.Key.Key_Left)
    moved = full.chart.span
    assert moved[0] == pytest.approx(nearer[0] - 0.2 * (nearer[1] - nearer[0]))
    press(Qt.Key.Key_Right)
    assert full.chart.span == pytest.approx(nearer)
    press(Qt.Key.Key_Minus)
    assert full.chart.span[1] - full.chart.span[0] == pytest.approx(0.98 * (end - start))
    press(Qt.Key.Key_Home)
    assert full.chart.span == pytest.approx((start, end))


def test_however_often_the_keys_are_pressed_readings_stay_in_sight(full: LogSheet):
    full.chart.setFocus(Qt.FocusReason.TabFocusReason)
    for key in (Qt.Key.Key_Left, Qt.Key.Key_Plus, Qt.Key.Key_Right, Qt.Key.Key_Minus):
        for _ in range(60):
            press(key)
        start, end = full.chart.span
        assert end - start >= DAY
        assert start < full._history.times[-1]
        assert end > full._history.times[0]
        assert not full.chart.grab().isNull()


def test_another_parameter_is_shown_and_one_without_readings_says_so(full: LogSheet, window: MainWindow):
    document = document_of(window)
    assert document.log.log([reading(document, "420", 420.0, MORNING, "calcium")])
    pick(full.shown, "calcium")
    assert full.chart.reading_words().endswith("420 mg per L")
    pick(full.shown, "nitrate")
    assert full.chart.reading_words() == ""
    assert "No readings yet" in full.chart.accessibleDescription()


def test_the_chosen_entry_stays_chosen_when_the_list_grows(full: LogSheet, wall: Wall):
    click_row(full.list, 3)
    chosen = full.list.chosen()
    wall.on(minutes=1)
    noted(full, "8.0")
    assert full.list.chosen() == chosen
    assert full.list.currentIndex().row() == 4


def test_a_dose_stands_below_the_values_it_raises_and_an_exchange_above(log: LogSheet, window: MainWindow, wall: Wall):
    noted(log, "8.1")
    begin_dose(log, jug_named(window, ASH), "12.5")
    click(log.form.log)
    begin(log, "exchange")
    put(log, "litres", "34")
    click(log.form.log)
    assert log._history.doses_ml.tolist() == [12.5]
    assert log._history.exchanges_at.tolist() == [MORNING.timestamp()]
    assert "1 doses, 1 water exchanges" in log.chart.accessibleDescription()
    pick(log.shown, "calcium")
    assert log._history.doses_ml.size == 0, "soda ash does not raise calcium"


def test_the_rounds_begin_a_reading_of_what_is_due(log: LogSheet, window: MainWindow):
    room = room_of(window)
    room.log.begin_reading("calcium")
    assert log.form.said()["parameter"] == Typed("calcium")
    assert log.shown.current() == "calcium"
    put(log, "value", "420")
    click(log.form.log)
    assert lines(log) == [("Calcium", "420 mg per L")]
