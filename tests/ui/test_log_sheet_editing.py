"""Entries of the log changed and removed, asked about before they are doubled, and written from two windows."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtWidgets import QApplication

from evenwater.engine.quantities import Typed
from evenwater.session import Document, Entry
from evenwater.store import Store
from evenwater.ui.log_questions import LogQuestions
from evenwater.ui.log_sheet import LogSheet
from evenwater.ui.main_window import MainWindow
from tests.ui.log_making import (
    Wall,
    begin,
    begin_dose,
    furnished,
    hung,
    kept,
    line_of,
    lines,
    living_in,
    log_of,
    put,
    reading,
    said_below,
)
from tests.ui.stocks_making import ASH, click, document_of, jug_named, press
from tests.ui.window_making import opened

MORNING = datetime(2026, 11, 25, 10, 30, tzinfo=UTC)
# A jug that no correction of the first system doses from.
BY_HAND = "Bicarbonate, blue jug"


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


@pytest.fixture
def other(file: Path, window: MainWindow) -> Iterator[Document]:
    """A second window on the same file."""
    document = Document(Store.open(file))
    yield document
    document.close()


def noted(log: LogSheet, text: str, who: str = "") -> Entry:
    """Note a reading and return it."""
    put(log, "value", text)
    if who:
        put(log, "who", who)
    click(log.form.log)
    return kept(log)[-1]


def offers(log: LogSheet) -> list[str]:
    rows = [row for row in log.form.messages._rows if row.isVisibleTo(log)]
    return [button.text() for row in rows for button in row.buttons()]


# Changing


def test_a_change_by_the_keys_keeps_everything_else_and_its_history(log: LogSheet, wall: Wall):
    put(log, "kit", "drops")
    put(log, "at", "yesterday 23:50")
    entry = noted(log, "7,9", "Ada")
    wall.on(hours=5)
    log.list.setFocus(Qt.FocusReason.TabFocusReason)
    press(Qt.Key.Key_Down)
    log.list.selectRow(0)
    log.change.setFocus(Qt.FocusReason.TabFocusReason)
    press(Qt.Key.Key_Space)
    assert QApplication.focusWidget() is line_of(log.form, "value")
    assert line_of(log.form, "value").text() == "7,9"
    assert line_of(log.form, "at").text() == "yesterday 23:50"
    assert not log.form.kind.isEnabled(), "a reading does not become a dose"
    put(log, "value", "8,1")
    click(log.form.log)
    (now,) = kept(log)
    assert now.id == entry.id
    assert (now.at, now.who, now.fields["kit"]) == (entry.at, "Ada", Typed("drops"))
    assert now.fields["value"] == Typed("8,1", "dKH")
    (before,) = log._document.log.history(entry.id)
    assert (before.entry.fields["value"], before.why, before.by) == (Typed("7,9", "dKH"), "change", "Ada")
    assert log.form.kind.isEnabled()
    assert log.form.log.text() == "&Log it"


def test_looking_at_an_entry_and_saving_it_unchanged_changes_nothing(log: LogSheet):
    entry = noted(log, "8.10")
    for _ in range(20):
        log.list.selectRow(0)
        click(log.change)
        for name in ("value", "at", "who"):
            line_of(log.form, name).setFocus(Qt.FocusReason.TabFocusReason)
        click(log.form.log)
    assert kept(log) == [entry]
    assert log._document.log.history(entry.id) == [], "no version was written (H28)"


def test_a_change_that_is_given_up_changes_nothing_and_the_next_entry_is_new(log: LogSheet, wall: Wall):
    entry = noted(log, "8.1")
    log.list.selectRow(0)
    click(log.change)
    put(log, "value", "9.9")
    click(log.form.drop)
    assert kept(log) == [entry]
    assert not log.form.drop.isVisible()
    wall.on(hours=1)
    noted(log, "8.2")
    assert lines(log) == [("Alkalinity", "8.2 dKH"), ("Alkalinity", "8.1 dKH")]


def test_an_implausible_change_is_refused_and_the_entry_stays(log: LogSheet):
    entry = noted(log, "8.1")
    log.list.selectRow(0)
    click(log.change)
    put(log, "value", "81")
    click(log.form.log)
    assert kept(log) == [entry]
    assert line_of(log.form, "value").text() == "81"
    assert log.form.log.text() == "Sa&ve the change"


def test_a_changed_dose_carries_what_it_carried_when_it_was_given(log: LogSheet, window: MainWindow, wall: Wall):
    document, ash = document_of(window), jug_named(window, ASH)
    begin_dose(log, ash, "10")
    click(log.form.log)
    before = kept(log)[0].fields["carries"]
    document.edit(document.batch_in_use(ash), "dissolved", Typed("150", "g"))
    wall.on(days=3)
    log.list.selectRow(0)
    click(log.change)
    put(log, "amount", "11")
    click(log.form.log)
    (dose,) = kept(log)
    assert dose.value == 11.0
    assert dose.fields["carries"] == before, "what went into the water three days ago was of the old strength"


def test_a_dose_of_a_jug_that_is_gone_can_still_be_corrected(log: LogSheet, window: MainWindow, wall: Wall):
    ash = jug_named(window, ASH)
    begin_dose(log, ash, "100")
    click(log.form.log)
    document_of(window).remove_record(ash)
    wall.on(days=1)
    log.list.selectRow(0)
    click(log.change)
    put(log, "amount", "10")
    click(log.form.log)
    assert [dose.value for dose in kept(log)] == [10.0]
    assert kept(log)[0].subject == ash


def test_a_removed_entry_comes_back_whole(log: LogSheet, wall: Wall):
    entry = noted(log, "8,1", "Ada")
    wall.on(hours=1)
    noted(log, "8,3")
    log.list.selectRow(1)
    click(log.remove)
    assert lines(log) == [("Alkalinity", "8,3 dKH")]
    click(log.header.undo)
    assert kept(log)[0] == entry


def test_nothing_chosen_nothing_can_be_pressed(log: LogSheet):
    assert not log.change.isEnabled()
    assert not log.remove.isEnabled()
    noted(log, "8.1")
    log.list.selectRow(0)
    assert log.change.isEnabled()
    click(log.remove)
    assert not log.remove.isEnabled()


def test_the_entry_that_is_being_changed_is_removed_and_what_was_typed_can_be_logged_anew(log: LogSheet):
    noted(log, "8.1")
    log.list.selectRow(0)
    click(log.change)
    put(log, "value", "8.3")
    click(log.remove)
    assert log.form.log.text() == "&Log it", "there is nothing left to change"
    if line_of(log.form, "value").text() == "":
        put(log, "value", "8.3")
    click(log.form.log)
    assert lines(log) == [("Alkalinity", "8.3 dKH")]


# Two windows


def test_H14_the_dose_of_another_window_is_asked_about_and_not_doubled(
    log: LogSheet, window: MainWindow, other: Document, wall: Wall
):
    ash = jug_named(window, ASH)
    given = Entry("theirs", log._system, "dose", ash, MORNING, "Ada", {"amount": Typed("12.5", "mL")}, 12.5)
    begin_dose(log, ash, "12,5")
    put(log, "who", "Bo")
    assert other.log.log([given])
    wall.on(minutes=4)
    click(log.form.log)
    assert [dose.id for dose in document_of(window).log.entries(log._system, ("dose",))] == ["theirs"]
    (question,) = said_below(log)
    for word in (ASH, "12.5 mL", "10:30", "by Ada"):
        assert word in question
    assert offers(log) == ["Yes, log it too"]
    # Asked again, and still not logged, as long as nobody says yes.
    click(log.form.log)
    assert len(kept(log)) == 1
    (yes,) = log.form.messages._rows[0].buttons()
    click(yes)
    assert sorted(dose.who for dose in kept(log)) == ["Ada", "Bo"]
    assert said_below(log) == []


def test_H14_a_dose_that_another_window_logs_at_the_moment_of_asking_is_asked_about(
    log: LogSheet, window: MainWindow, other: Document, monkeypatch: pytest.MonkeyPatch
):
    ash = jug_named(window, ASH)
    given = Entry("theirs", log._system, "dose", ash, MORNING, "Ada", {"amount": Typed("12.5", "mL")}, 12.5)
    before = LogQuestions.before

    def and_meanwhile(*asked: Any) -> Any:
        """Answer from the log as it is, in which the other window then logs."""
        answer = before(*asked)
        other.log.log([given])
        return answer

    begin_dose(log, ash, "12,5")
    put(log, "who", "Bo")
    monkeypatch.setattr(LogQuestions, "before", and_meanwhile)
    click(log.form.log)
    assert [dose.id for dose in kept(log)] == ["theirs"]
    (question,) = said_below(log)
    assert "by Ada" in question
    (yes,) = log.form.messages._rows[0].buttons()
    click(yes)
    assert sorted(dose.who for dose in kept(log)) == ["Ada", "Bo"]


@pytest.mark.parametrize(("minutes", "asked"), [(0, True), (9, True), (10, True), (11, False), (60 * 24, False)])
def test_H15_the_same_amount_is_asked_about_within_ten_minutes(
    log: LogSheet, window: MainWindow, wall: Wall, minutes: int, asked: bool
):
    by_hand = jug_named(window, BY_HAND)
    for wait in (0, minutes):
        wall.on(minutes=wait)
        begin_dose(log, by_hand, "12.5")
        click(log.form.log)
    assert bool(said_below(log)) is asked
    assert len(kept(log)) == (1 if asked else 2)


@pytest.mark.parametrize(("minutes", "asked"), [(1, True), (50, True), (56, False)])
def test_H14_any_amount_is_asked_about_before_the_next_dose_is_planned(
    log: LogSheet, window: MainWindow, wall: Wall, minutes: int, asked: bool
):
    ash = jug_named(window, ASH)  # its pump gives 24 doses a day in this system
    for wait, amount in ((0, "12.5"), (minutes, "3")):
        wall.on(minutes=wait)
        begin_dose(log, ash, amount)
        click(log.form.log)
    assert bool(said_below(log)) is asked
    assert [dose.value for dose in kept(log)] == ([12.5] if asked else [12.5, 3.0])
    if asked:
        assert "12.5 mL" in said_below(log)[0], "it names the dose that is there"


def test_H15_another_amount_of_a_jug_that_no_pump_empties_is_not_asked_about(log: LogSheet, window: MainWindow):
    for amount in ("12.5", "12.4"):
        begin_dose(log, jug_named(window, BY_HAND), amount)
        click(log.form.log)
    assert said_below(log) == []
    assert len(kept(log)) == 2


def test_H15_yes_is_for_what_was_asked_about_and_for_nothing_typed_since(log: LogSheet, window: MainWindow, wall: Wall):
    by_hand = jug_named(window, BY_HAND)
    for amount in ("12.5", "50"):
        begin_dose(log, by_hand, amount)
        click(log.form.log)
        wall.on(minutes=1)
    begin_dose(log, by_hand, "12.5")
    click(log.form.log)
    assert len(said_below(log)) == 1
    put(log, "amount", "50")
    # The question was about another amount. Either it is gone, or its yes asks again.
    for row in log.form.messages._rows:
        for button in row.buttons():
            if button.isVisible():
                click(button)
    assert [dose.value for dose in kept(log)] == [12.5, 50.0]
    click(log.form.log)
    assert [dose.value for dose in kept(log)] == [12.5, 50.0], "the second 50 mL within minutes is asked about too"


def test_H15_a_yes_that_could_not_be_taken_is_not_kept_for_later(log: LogSheet):
    noted(log, "8.1")
    put(log, "value", "8.1")
    click(log.form.log)
    (yes,) = log.form.messages._rows[0].buttons()
    put(log, "value", "")
    if yes.isVisible():
        click(yes)
    put(log, "value", "8.1")
    click(log.form.log)
    assert len(kept(log)) == 1
    assert said_below(log)


def test_the_same_note_twice_is_asked_about_in_words_that_name_it(log: LogSheet):
    for _ in range(2):
        begin(log, "note")
        put(log, "text", "The heater was off.")
        click(log.form.log)
    assert len(kept(log)) == 1
    (question,) = said_below(log)
    assert ", ," not in question
    assert question.startswith("Note")


def test_what_another_window_changed_meanwhile_is_not_overwritten(log: LogSheet, other: Document):
    entry = noted(log, "8.1")
    log.list.selectRow(0)
    click(log.change)
    theirs = Entry(
        entry.id, entry.system_id, "reading", "alkalinity", entry.at, "Ada", {"value": Typed("8.4", "dKH")}, 3.0
    )
    assert other.log.change_entry(theirs)
    put(log, "value", "8.2")
    click(log.form.log)
    assert log._document.log.entry(entry.id).fields["value"].text == "8.4"
    assert "another window" in log.header.told.text().casefold()
    assert line_of(log.form, "value").text() == "8.2", "what was typed stays"


def test_what_another_window_logs_is_in_the_list_when_the_sheet_is_shown_again(
    log: LogSheet, window: MainWindow, other: Document
):
    assert lines(log) == []
    assert other.log.log([reading(other, "8.0", 2.853, MORNING)])
    press(Qt.Key.Key_2, Qt.KeyboardModifier.ControlModifier)
    log_of(window)
    assert lines(log) == [("Alkalinity", "8.0 dKH")]


def test_an_entry_that_another_sheet_logs_is_shown_at_once(log: LogSheet, window: MainWindow):
    document = document_of(window)
    assert document.log.log([reading(document, "8.0", 2.853, MORNING)], object())
    assert lines(log) == [("Alkalinity", "8.0 dKH")]
