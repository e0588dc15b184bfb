"""Undo and redo of the log, also after a restart; a disk that refuses; the nights on which clocks are changed."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, QSettings, Qt

from evenwater.engine.quantities import Typed
from evenwater.session import Document
from evenwater.store import Store
from evenwater.ui.log_sheet import LogSheet
from evenwater.ui.main_window import MainWindow
from tests.ui.log_making import (
    Wall,
    begin,
    begin_dose,
    furnished,
    held,
    hung,
    kept,
    line_of,
    lines,
    living_in,
    log_of,
    put,
    said_beside,
    when_field,
    whens,
)
from tests.ui.stocks_making import ASH, CONTROL, click, document_of, jug_named, press
from tests.ui.window_making import left, opened, room_of

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


def a_day(log: LogSheet, window: MainWindow, wall: Wall) -> list[tuple[list[tuple[str, str]], str]]:
    """Work for a day; return what the list said before each step, with what undo offers after it."""
    steps = []

    def after() -> None:
        steps.append((lines(log), log.header.undo.toolTip()))
        wall.on(minutes=20)

    after()
    put(log, "value", "7,9")
    click(log.form.log)
    after()
    begin_dose(log, jug_named(window, ASH), "12.5")
    click(log.form.log)
    after()
    begin(log, "exchange")
    put(log, "litres", "34")
    click(log.form.log)
    after()
    log.list.selectRow(1)
    click(log.change)
    put(log, "amount", "13")
    click(log.form.log)
    after()
    log.list.selectRow(2)
    click(log.remove)
    after()
    return steps


def test_undo_goes_back_step_by_step_and_redo_forth_again(log: LogSheet, window: MainWindow, wall: Wall):
    steps = a_day(log, window, wall)
    assert [words for _, words in steps[1:]] == [
        "Undo: logging a reading",
        "Undo: logging a dose",
        "Undo: logging a water exchange",
        "Undo: change of a dose",
        "Undo: removing a reading",
    ]
    for said, _ in reversed(steps[:-1]):
        press(Qt.Key.Key_Z, CONTROL)
        assert lines(log) == said
    assert lines(log) == []
    for said, _ in steps[1:]:
        click(log.header.redo)
        assert lines(log) == said
    assert not log.header.redo.isEnabled()


def test_undo_goes_on_after_a_restart(log: LogSheet, window: MainWindow, wall: Wall, file: Path, qtbot):
    steps = a_day(log, window, wall)
    press(Qt.Key.Key_Z, CONTROL)
    left(window)
    again = opened(file, qtbot)
    sheet = log_of(again)
    assert lines(sheet) == steps[-2][0]
    click(sheet.header.redo)
    assert lines(sheet) == steps[-1][0]
    for said, _ in reversed(steps[:-1]):
        click(sheet.header.undo)
        assert lines(sheet) == said
    left(again)


def test_undo_on_another_sheet_opens_the_log_that_it_changed(log: LogSheet, window: MainWindow):
    room, document = room_of(window), document_of(window)
    first, second = document.records("system")[:2]
    put(log, "value", "7.9")
    click(log.form.log)
    room.systems.choose(second)
    press(Qt.Key.Key_2, CONTROL)
    press(Qt.Key.Key_Z, CONTROL)
    assert log.isVisible(), "nothing changes unseen"
    assert log.header.name.text() == document.value(first, "name").text
    assert lines(log) == []


def test_undo_while_an_entry_is_changed_leaves_nothing_half_done(log: LogSheet):
    put(log, "value", "7.9")
    click(log.form.log)
    log.list.selectRow(0)
    click(log.change)
    put(log, "value", "8.3")
    click(log.header.undo)
    assert lines(log) == []
    if line_of(log.form, "value").text() == "":
        put(log, "value", "8.3")
    click(log.form.log)
    assert lines(log) == [("Alkalinity", "8.3 dKH")], "what was typed can be logged as new"


def test_typing_undone_elsewhere_does_not_empty_the_form(log: LogSheet, window: MainWindow):
    document = document_of(window)
    put(log, "value", "8.1")
    document.edit(log._system, "ph", Typed("8.2"), object())
    document.undo(object())
    assert line_of(log.form, "value").text() == "8.1"


# A disk that refuses


def test_H15_a_dose_that_could_not_be_saved_is_there_once_when_the_disk_is_back(
    log: LogSheet, window: MainWindow, wall: Wall, file: Path
):
    ash, document = jug_named(window, ASH), document_of(window)
    begin_dose(log, ash, "12.5")
    with held(file):
        for _ in range(3):
            click(log.form.log)
            wall.on(seconds=20)
        assert log.header.told.text().startswith("\u25b2"), "it is not said to be logged"
        assert lines(log) == [(f"Dose: {ASH}", "12.5 mL")], "what waits is shown, once"
        assert document.unsaved()
    click(log.form.log)
    wall.on(hours=2)
    begin_dose(log, ash, "20")
    click(log.form.log)
    assert document.unsaved() == 0
    with Store.open(file) as disk:
        assert [dose.value for dose in disk.entries(log._system, ("dose",))] == [12.5, 20.0]
    assert lines(log) == [(f"Dose: {ASH}", "20 mL"), (f"Dose: {ASH}", "12.5 mL")]


def test_H15_what_waits_for_the_disk_is_asked_about_too(log: LogSheet, window: MainWindow, wall: Wall, file: Path):
    ash = jug_named(window, ASH)
    with held(file):
        for _ in range(2):
            begin_dose(log, ash, "12.5")
            click(log.form.log)
            wall.on(minutes=2)
        assert len(kept(log)) == 1
    document_of(window).save()
    with Store.open(file) as disk:
        assert [dose.value for dose in disk.entries(log._system, ("dose",))] == [12.5]


def test_a_change_and_a_removal_wait_for_the_disk_and_are_shown(
    log: LogSheet, window: MainWindow, wall: Wall, file: Path
):
    for text in ("7.9", "8.3"):
        put(log, "value", text)
        click(log.form.log)
        wall.on(hours=1)
    with held(file):
        log.list.selectRow(0)
        click(log.change)
        put(log, "value", "8.5")
        click(log.form.log)
        log.list.selectRow(1)
        click(log.remove)
        assert lines(log) == [("Alkalinity", "8.5 dKH")]
    assert document_of(window).save()
    with Store.open(file) as disk:
        assert [e.fields["value"].text for e in disk.entries(log._system)] == ["8.5"]


def test_H15_a_double_click_is_one_entry(log: LogSheet, window: MainWindow):
    begin_dose(log, jug_named(window, ASH), "12.5")
    for _ in range(5):
        click(log.form.log)
    assert len(kept(log)) == 1


def test_H15_closing_right_after_the_press_loses_nothing(log: LogSheet, window: MainWindow, file: Path):
    begin_dose(log, jug_named(window, ASH), "12.5")
    click(log.form.log)
    system = log._system
    left(window)
    with Store.open(file) as disk:
        assert [dose.value for dose in disk.entries(system, ("dose",))] == [12.5]


def test_H15_a_log_that_cannot_be_read_is_not_taken_for_one_without_such_a_dose(
    log: LogSheet, window: MainWindow, monkeypatch: pytest.MonkeyPatch
):
    document = document_of(window)
    begin_dose(log, jug_named(window, ASH), "12.5")
    with monkeypatch.context() as patch:
        patch.setattr(document.log, "near_duplicates", lambda _entry: None)
        click(log.form.log)
        assert kept(log) == []
        assert line_of(log.form, "amount").text() == "12.5"
    click(log.form.log)
    assert len(kept(log)) == 1


# Clocks


@pytest.fixture
def berlin(monkeypatch: pytest.MonkeyPatch) -> Iterator[Wall]:
    with living_in("Europe/Berlin"):
        yield hung(monkeypatch, datetime(2026, 10, 25, 7, 0, tzinfo=UTC))


@pytest.fixture
def night(berlin: Wall, file: Path, qtbot) -> LogSheet:
    """The Log sheet on the morning after the clocks went back."""
    QSettings().remove("who")
    return log_of(opened(file, qtbot))


def test_H17_an_hour_that_comes_twice_is_asked_about_and_nothing_is_logged(night: LogSheet):
    put(night, "value", "8.1")
    put(night, "at", "02:30")
    click(night.form.log)
    assert kept(night) == []
    assert "comes twice" in said_beside(night, "at")
    for text, at in (("01:59", "2026-10-24 23:59"), ("03:00", "2026-10-25 02:00")):
        put(night, "value", "8.1")
        put(night, "at", text)
        click(night.form.log)
        assert kept(night)[-1].at == datetime.fromisoformat(at).replace(tzinfo=UTC)


def test_H17_an_hour_that_is_not_there_is_refused(night: LogSheet, berlin: Wall):
    berlin.at = datetime(2026, 3, 29, 7, 0, tzinfo=UTC)
    put(night, "value", "8.1")
    put(night, "at", "02:30")
    click(night.form.log)
    assert kept(night) == []
    assert "not at all" in said_beside(night, "at")


def test_H17_the_list_is_in_the_order_of_time_where_the_wall_clock_is_not(night: LogSheet, berlin: Wall):
    for minutes, text in ((0, "8.1"), (40, "8.2"), (80, "8.3")):
        berlin.at = datetime(2026, 10, 25, 0, 30, tzinfo=UTC) + timedelta(minutes=minutes)
        put(night, "value", text)
        click(night.form.log)
        assert said_beside(night, "at") == ""
    assert [amount for _, amount in lines(night)] == ["8.3 dKH", "8.2 dKH", "8.1 dKH"]
    assert [when[-5:] for when in whens(night)] == ["02:50", "02:10", "02:30"]


def test_H17_now_in_the_hour_that_comes_twice_is_now(night: LogSheet, berlin: Wall):
    # The second half past two: the first one, an hour ago, is past, and this one is not still to come.
    berlin.at = datetime(2026, 10, 25, 1, 10, tzinfo=UTC)
    put(night, "value", "8.1")
    click(when_field(night).now_button)
    click(night.form.log)
    assert [entry.at for entry in kept(night)] == [berlin.at]
    night.list.selectRow(0)
    click(night.change)
    put(night, "value", "8.2")
    click(night.form.log)
    assert [entry.at for entry in kept(night)] == [berlin.at], "a change leaves the instant alone"


def test_H17_an_entry_of_the_first_hour_can_be_changed_in_the_second(night: LogSheet, berlin: Wall):
    berlin.at = datetime(2026, 10, 25, 0, 50, tzinfo=UTC)  # 02:50, the first time
    put(night, "value", "8.1")
    click(night.form.log)
    berlin.at = datetime(2026, 10, 25, 1, 10, tzinfo=UTC)  # 02:10, the second time
    night.list.selectRow(0)
    click(night.change)
    put(night, "value", "8.2")
    click(night.form.log)
    assert said_beside(night, "at") == ""
    (entry,) = kept(night)
    assert (entry.fields["value"].text, entry.at) == ("8.2", datetime(2026, 10, 25, 0, 50, tzinfo=UTC))


@pytest.mark.parametrize("locale", ["de_DE.UTF-8", "ar_EG.UTF-8", "en_US.UTF-8"])
def test_H4_a_comma_is_a_decimal_sign_whatever_the_locale(wall: Wall, file: Path, qtbot, locale: str):
    before = QLocale()
    QLocale.setDefault(QLocale(locale.partition(".")[0]))
    try:
        QSettings().remove("who")
        sheet = log_of(opened(file, qtbot))
        for text in ("7,9", "8.3"):
            put(sheet, "value", text)
            click(sheet.form.log)
            wall.on(hours=1)
        assert [e.value for e in kept(sheet)] == pytest.approx([7.9 / 2.8039, 8.3 / 2.8039], rel=1e-4)
        assert [amount for _, amount in lines(sheet)] == ["8.3 dKH", "7,9 dKH"]
        assert all(letter.isascii() for when in whens(sheet) for letter in when)
    finally:
        QLocale.setDefault(before)


def test_two_windows_undo_only_what_is_there(log: LogSheet, file: Path):
    put(log, "value", "7.9")
    click(log.form.log)
    other = Document(Store.open(file))
    assert other.undo()
    other.close()
    log.refresh()
    assert lines(log) == []
    click(log.header.redo) if log.header.redo.isEnabled() else log._document.redo()
    log.refresh()
    assert lines(log) == [("Alkalinity", "7.9 dKH")]
